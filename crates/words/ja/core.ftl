# Japanese: what the core says

# Words kept to in every file:
#
# homogeneous material    均質材料
# screening               スクリーニング
# restricted substance    規制物質
# limit                   限度値
# below limit (BL)        限度値未満
# over limit (OL)         限度値超過
# undecided (X)           未確定
# open                    未解決
# inconclusive (Cr(VI))   判断不能
# not applicable (n/a)    判定対象外、対象外（「適用除外」と紛れない語）
# not measured            未測定
# not detected            不検出
# detection limit         検出下限（JIS K 0119の語、from memory。検出限界ともいう）
# screening band          スクリーニング判定域
# undecided band          未確定域
# low / high edge         下端 / 上端
# lot                     ロット
# disposition             処置
# accept                  受入れ可
# hold                    保留
# not accept              受入れ不可
# lift / end a hold       保留を解除する / 解消する
# quarantine              隔離
# reading                 測定（1件の測定データ）
# check, check reading    点検、点検測定
# check standard          点検用標準試料
# blank                   ブランク（ブランク試料）
# certified value         認証値
# certificate             認証書
# expanded uncertainty    拡張不確かさ
# uncertainty (one sigma) 不確かさ（1シグマ）
# printed error           表示誤差
# multiple (of sigma)     倍数
# action level            アクションレベル
# repeatability           繰返し性
# repeats, spot           繰返し測定、測定箇所
# material class          材料区分
# composite / electronics 複合材料・電子部品
# plated, coated          めっき・被覆
# bill of materials       材料構成表
# rule book, clause       規則集、箇条
# decision rule           判定ルール
# guard band              ガードバンド
# exemption, entry        適用除外、項目
# to claim (an exemption) 主張する
# evidence                裏付け
# placing on the market   上市（上市日）
# declaration of conformity 適合宣言
# laboratory              試験所
# reference method        基準試験法
# sampling, sampling plan 抜取り、抜取検査方式
# acceptance number       合格判定個数
# inspection level        検査水準
# normal / tightened / reduced inspection  なみ検査 / きつい検査 / ゆるい検査
# code letter             サンプル文字
# unit, piece (physical)  個体
# (non)conforming         適合、不適合
# supplier                供給者
# control chart, limits   管理図、上側・下側管理限界
# act                     操作
# mapping                 列の対応付け
# set aside, refused (rows)  除外、取込み不可（ファイル全体は「読み取れず」）
# advisory                参考
# recovery copy           復元用コピー
# ruler, bob, whiskers    ものさし、下げ振り、ひげ
# version, edition        バージョン、版
# our own rule            このプログラム独自の規則
# trust                   信頼性
# zeta, E_n               ζスコア、Enスコア（ISO 13528。限度は絶対値について）
# shift                   勤務シフト（直）
# set by a person         入力による指定（署名の有無を問わない語）
# cable sheath            電線の外被（シース）

## Outcomes: the code's short form and its words

outcome-BL = 限度値未満
    .short = BL
outcome-X = 未確定
    .short = X
outcome-OL = 限度値超過
    .short = OL
outcome-not_measured = 未測定
    .short = 未測定
outcome-no_uncertainty = 不確かさなし
    .short = シグマなし
outcome-detection_too_high = 検出下限が高すぎる、または記載なし
    .short = 検出下限不備
outcome-not_capable = このシグマでは判定能力不足
    .short = 能力不足
outcome-not_applicable = 判定対象外
    .short = 対象外

## Reasons of an outcome

reason-no_column = ファイルに{ $about }の列がありません。
reason-cell_blank = { $about }のセルが空か、横線だけです。
reason-cell_not_understood = { $about }のセルの文字は測定値ではありません。
reason-unit_not_stated = { $about }の単位が示されていないため、数値はまだ質量分率とはいえません。
reason-detection_limit_above_band = 不検出ですが、検出下限が高すぎて「未満」を示せません。
reason-limit_not_stated = 不検出ですが、検出下限がどこにも示されていません。
reason-uncertainty_not_stated = 数値に不確かさが添えられていません（空欄か0）。
reason-three_sigma_reaches_band = 3シグマだけで判定域の下端に達するため、この測定では「未満」を示せません。この値なら、シグマが{ $enough } mg/kg以下であれば足ります。
reason-three_sigma_reaches_band-inside = 3シグマだけで判定域の下端に達し、値そのものも下端以上です。どれだけ長く測定しても「未満」は示せません。
reason-three_sigma_reaches_band-open = 3シグマだけで、ある判定域の下端に達するため、この測定では「未満」を示せません。
reason-inside_band = 測定値とその3シグマが未確定域にかかっています。
reason-element_only = 下端を上回っています。XRFで分かるのは元素であって物質ではないため、「超過」になることはありません。
reason-layer_not_resolved = めっき・被覆・不動態化処理された品目です。測定値は、層とその下にあるものの平均になります。
reason-above_range = 分析装置の測定範囲の上限を超えており、その上限は判定域の上端より低い値です。
reason-negative_beyond_error = 誤差では説明できないほど、0を大きく下回っています。何かが測定値を限度値ほども動かしており、同じだけの物質を隠しているかもしれません。
reason-composite_needs_detection_limit = 複合材料のカドミウムが「未満」となるのは、値が、記載された検出下限（50 mg/kg以下のもの）以下で、かつ3シグマが50 mg/kg以下のときだけです。
reason-repeats_disagree = この測定箇所の繰返し測定が、不確かさで許される以上に食い違うため、どの値もこの箇所の値とはしません。
reason-thin_sample = 薄すぎます。厚い試料なら加わるはずの信号が判定域に達します。
reason-not_applicable_in_metal = 金属には適用されません。
reason-around_limit = 限度値が測定値の3シグマの範囲内にあります。
reason-censored_part = 一方は検出下限より低いことしか分かりません。合計は限度値をまたぐ区間になります。
reason-part_not_measured = 合計の一方が測定されていません。
reason-part_without_uncertainty = 合計の一方に不確かさがありません。
reason-part_limit_not_stated = 合計の一方が不検出で、その検出下限が示されていません。
reason-one_part_alone = 一方だけで合計の限度値を超えています。
reason-copper_or_glass_in_beam = 限度値未満ですが、複合材料では、ビーム内の銅やガラスが樹脂を薄めます。

## Where the sigma came from

sigma-printed = 表示誤差。倍数はファイルに記載
sigma-printed_multiple_unknown = 表示誤差。倍数の記載なし。1シグマとみなすため、未確定域が広がる
sigma-printed_multiple_set = 表示誤差。倍数は入力による指定
sigma-site_table = アクションレベルにおける事業所の繰返し性
sigma-repeats = この箇所の繰返し測定から求めた値（表示より大きい）
sigma-detection_limit = 検出下限の3分の1
sigma-none = なし

## Material classes

class-polymer = ポリマー
class-metal = 金属
class-composite = 複合材料・電子部品
class-plated = めっき・被覆・不動態化
class-unknown = 材料区分不明
class-from-declared = ファイルに記載
class-from-setting = 入力による指定
class-from-not_stated = 誰も示していない
class-from-not_understood = ファイルの語は、ここで扱う区分ではない
class-from-not_in_book = 規則集にこの区分の判定域がない

## Substances

substance-Cd = カドミウム
substance-Pb = 鉛
substance-Hg = 水銀
substance-Cr = 全クロム
substance-Br = 全臭素
substance-Cl = 塩素
substance-total = 塩素+臭素
halogen-Cl = Cl
halogen-Br = Br（ハロゲンとして）
halogen-total = Cl + Br
stands-for-Cr = Cr(VI)の代わりの指標（XRFではCr(VI)そのものは測れない）
stands-for-Br = PBBとPBDEの代わりの指標（XRFではそのものは測れない）

## Dispositions

disposition-accept = スクリーニングした物質については受入れ可
material-disposition-accept = 受入れを妨げるものは見つからず
material-disposition-hold = 保留
material-disposition-not_accept = 受入れ不可
disposition-hold = 保留
disposition-not_accept = 受入れ不可

## Reasons of a disposition, worst first, each with what ends it

lot-reason-over_limit = { $about }が、{ $of }件の測定のうち{ $count }件で限度値超過です。
    .remedy = ロットを隔離してください。最も悪い結果の試料を試験所に送り、基準試験法（精密分析）で調べてください。これを変えられるのは、その結果か有効な適用除外だけです。
lot-reason-halogen_over_limit = { $about }が、{ $of }件の測定のうち{ $count }件でハロゲンの限度値を超過しています。
    .remedy = ロットを隔離してください。各測定に示された方法で確認してください。
lot-reason-over_in_some_classes = { $about }が、{ $of }件の測定のうち{ $count }件で、あり得る材料区分のいくつかにおいて限度値超過です。
    .remedy = 材料区分を指定してください。
lot-reason-not_measured = { $about }が、{ $of }件の測定のうち{ $count }件で未測定です。
    .remedy = 測定してください。数値に単位がない場合は単位を指定してください。
lot-reason-no_uncertainty = { $about }が、{ $of }件の測定のうち{ $count }件で不確かさを伴っていません。
    .remedy = 誤差の列を出力するか、事業所の繰返し性の表を入力してください。
lot-reason-detection_too_high = { $about }が、{ $of }件の測定のうち{ $count }件で、検出下限が高すぎるか、示されていません。
    .remedy = 長く測定して検出下限を下げるか、検出下限を出力してください。
lot-reason-not_capable = { $about }が、{ $of }件の測定のうち{ $count }件で、シグマが大きすぎて「未満」を示せません。
    .remedy = 長く測定するか、基準試験法を用いてください。
lot-reason-undecided = { $about }が、{ $of }件の測定のうち{ $count }件で未確定です。
    .remedy = 測定ごとの次の手順に従ってください：長く測定する、別の箇所を測定する、または基準試験法を用いる。
lot-reason-halogen_open = { $about }が、{ $of }件の測定のうち{ $count }件で、ハロゲン規則集において未解決です。
    .remedy = 測定ごとの次の手順に従ってください。
lot-reason-file_not_read = ファイル「{ $about }」、またはそのすべての行が読み取られていません。測定結果が含まれているかもしれません。
    .remedy = 「何が届いたか」でこのファイルを見てください。読み取れる形で入れ直すか、この検査から外してください。
lot-reason-units_not_stated = { $of }件の測定のうち{ $count }件に、どの個体で測定したかの記載がないため、抜取検査方式の個数を数えられません。
    .remedy = 各測定の個体をUnit列に記載してください。
lot-reason-rows_refused = 元のファイルの{ $count }行を取り込めませんでした。測定結果が抜けているかもしれません。
    .remedy = 取込み不可の行を見て、ファイルを直すか、測定し直してください。
lot-reason-layer_among_classes = この材料の測定は区分が一致しておらず、{ $of }件の測定のうち{ $count }件は層（めっき・被覆・不動態化）です。層を通して測定したものは未確定のままです。
    .remedy = ファイルで層と下地の材料に別々の名前を付けて読み込み直すか、両方をめっき(plated)と指定してください。
lot-reason-class_unknown = { $of }件の測定のうち{ $count }件の材料区分が不明であるか、同じ材料の測定の間で異なっています。すべての区分で判定し、最も悪い結果を採りました。
    .remedy = 材料区分を指定してください。別の材料であれば、別の名前を付けてください。
lot-reason-thickness_not_stated = 厚さが示されていないプラスチックまたは軽合金で、カドミウムまたは鉛が限度値未満です（{ $of }件の測定のうち{ $count }件）。薄いものは、実際の含有量より低く示されます。
    .remedy = 厚さをミリメートルで入力してください。
lot-reason-material_not_measured = 部品の材料「{ $about }」は未測定です（数に入る測定がありません）。
    .remedy = 測定してください。
lot-reason-bill_of_materials_none = { $count }点の部品に材料構成表がないため、測定されていない材料があるかもしれません。
    .remedy = 部品の均質材料を一覧にしてください。
lot-reason-material_not_listed = 「{ $about }」は測定されましたが、部品の材料構成表にありません。取り決めた材料ではないかもしれません。
    .remedy = それが何かを調べ、材料構成表を直すか、変更を拒否してください。
lot-reason-sampling_none = ロットの大きさ、または抜取検査方式が求める個数が示されていないため、十分に測定したことを示すものがありません。
    .remedy = ロットの大きさと求められる個数を入力してください。
lot-reason-sampling_too_few = 抜取りが最も少ない材料で測定されたのは{ $count }個です。抜取検査方式は{ $of }個を求めています。
    .remedy = 足りない個体を測定してください。
lot-reason-multiple_not_stated = { $of }件の測定のうち{ $count }件で、表示誤差の倍数が示されていません。1シグマとみなすため、未確定域が広がります。
    .remedy = 誤差の列が1、2、3シグマのどれかを指定してください。
lot-reason-halogen_book_not_loaded = この検査はハロゲン規則集「{ $about }」を指定していますが、読み込まれていません。
    .remedy = その規則集ファイルを読み込むか、読み込み済みのものを指定してください。
reason-advisory = （印字のみ。保留の理由にはならない）

## What screening does not answer

not-assessed-phthalates = フタル酸エステル（DEHP、BBP、DBP、DIBP）：XRFでは何も分かりません（IEC 62321-8）。
not-assessed-pbb_pbde = PBBとPBDE：臭素が少ないことで否定できるだけで、そのものを測定することはありません（IEC 62321-6）。ここで臭素が少なくても、規則 (EU) 2019/1021 のPBDEの限度値10 mg/kgを守っているかどうかは分かりません。
not-assessed-cr6 = Cr(VI)：全クロムが少ないことで否定できるだけで、そのものを測定することはありません（IEC 62321-7-1、-7-2）。不動態化またはめっきされた表面では、全クロムからは何もいえません。
not-assessed-exemptions = 誰も主張していない適用除外：裏付けと2人目の確認者のイニシャルを伴う主張がない限り、どの適用除外も適用しません。
not-assessed-change = 測定されていない材料、層、部品。

## Next steps

next-measure_element = { $about }を測定してください。
next-state_unit = { $about }の列の単位を指定してください。
next-read_cell_again = ファイルのセルを見て、直すか、測定し直してください。
next-state_uncertainty = { $about }の不確かさを出力するか、事業所の繰返し性の表を入力してください。
next-state_detection_limit = { $about }の検出下限を出力してください。
next-state_class = 材料区分を指定してください。
next-measure_longer = この箇所を合計約{ $seconds }秒（ビームの条件は記載なし）測定すると五分五分で、{ $surely }秒なら10回に9回は判定がつきます（推定）。
next-measure_longer_even_only = この箇所を合計約{ $seconds }秒（ビームの条件は記載なし）測定すると、五分五分で判定がつきます。10回に9回とするには{ $cap }秒を超える時間が必要です（推定）。
next-another_spot = 別の箇所を測定してください。材料が不均一かどうかが分かります。より多く見つかることはあっても、この箇所の結果が限度値未満に変わることはありません。
next-repeat_again = 測定箇所を清掃し、平らに置いて測定し直してください。測定が互いに食い違っています。
next-find_shift = 測定値をずらしたもの（校正、バックグラウンド、単位）を突き止めてから、測定箇所を測定し直してください。
next-lower_detection_limit = 長く測定してください。時間を4倍にすると検出下限は半分になります。
next-thicker_piece = 重ねるか、厚いものを測定してください。
next-separate_layers = 層をその下にあるものから分けるか、それぞれを別の材料として測定してください。
next-laboratory = 試験所に送ってください。規則集には方法が示されていません。
next-reference_method = 試験所：{ $method }、{ $technique }。

## Intake: what a column was taken for, and why

role-value = 値
role-uncertainty = 不確かさ
role-detection_limit = 検出下限
role-id = 試料または測定のID
role-unit = 個体
role-spot = 測定箇所
role-part = 部品
role-material = 材料名
role-lot = ロット
role-supplier = 供給者
role-class = 材料区分
role-time = 日時
role-seconds = 測定時間
role-instrument = 装置
role-mode = 測定モード
role-operator = 測定者
role-thickness = 厚さ
role-note = 備考
role-spectrum = スペクトルまたはフィルター
role-photo = 写真
role-element = 元素名
role-below_mark = 「検出下限未満」の印
role-error_multiple = 不確かさが何シグマに当たるか
role-time_of_day = 時刻
role-unit_of_measure = その行の測定単位
role-unused = 使用しない
evidence-element_heading = 見出しに元素名があり、ほかの語もすべて理解できた
evidence-element_in_another_case = 見出しは大文字・小文字の違う元素記号で、隣の見出しも同様
evidence-oxide_heading = 見出しは酸化物。数値は原子量により元素に換算される
evidence-holds_elements = セルが元素名である
evidence-oxide_beside_element = 独自の列をもつ元素の酸化物。その列が空のときだけ用いる
evidence-told = 人が指定した
evidence-follows_element = 元素の列のすぐ後にある誤差の見出し
evidence-known_heading = 見出しは既知の語
evidence-class_words_only = すべてのセルが材料区分を表す語
evidence-holds_units = セルが測定単位である
evidence-holds_seconds = 見出しは時間を表し、セルは小さな数値で日付ではない
evidence-unit_not_understood = 見出しに元素名があるが、単位がここで扱うものではないため、数値は文字のままとする
evidence-words_not_understood = 見出しは元素のように始まるが、理解できない語がある
evidence-already_taken = すでに別の列がこの意味をもつ
evidence-not_known = この見出しはここでは未知
confidence-sure = 確実
confidence-likely = おそらく
confidence-look = 要確認
layout-wide = 1行が1件の測定、1列が1元素
layout-long = 1行が1件の測定の1元素
layout-turned = 横向きの表：1列が1件の測定、1行が1元素
layout-joined = 1件の測定が数行。ここで結合
encoding-by-byte_order_mark = ファイル先頭のバイトに示されている
encoding-by-valid_utf8 = すべてのバイトが合う
encoding-by-byte_counts = ゼロバイトの位置から分かる
encoding-by-words_found = こう読むと結果表の語が現れる
encoding-by-guess = バイトだけからの推測。名前や記号が正しいか確認が必要
encoding-by-told = 人が指定した
id-template-no_field = まだ何も指定されていません。少なくとも1つの部分について、何を表すかを指定してください。
id-template-unknown_field = ここでは未知の名前が1つあります。
id-template-field_twice = 2つの部分に同じ名前が付いています。
id-template-nothing_between = 2つの部分の間に区切り文字がないため、どこで分かれるのか分かりません。
id-template-open_brace = IDに波括弧があり、パターンで表せません。
id-template-too_many_fields = IDの部分の数が、パターンの上限を超えています。
id-template-piece_not_in_id = IDの中にない部分があります。
id-template-separator_in_piece = 区切り文字が部分の中にもあるため、推測なしにはIDを分けられません。
relative-to-value = 値に対するパーセント
sigmas = { $multiple }シグマ
set-aside-blank = 空の行
set-aside-heading = 表の途中で繰り返された見出し
set-aside-remark = 試料ではない行（備考、項目名とその値、集計、限度値）
set-aside-unit_row = 単位の行

## Intake: notices and refusals, each with its remedy

notice-unreadable = ファイルを読み取れませんでした：{ $found }
    .remedy = USBメモリーからもう一度コピーして、やり直してください。
notice-empty_file = ファイルが空です。
    .remedy = もう一度出力してください。中身がなかったので、ここで失われたものはありません。
notice-header_only = ファイルには見出し行だけがあり、その下に行がありません。
    .remedy = 測定を含めてもう一度出力してください。
notice-not_text = 中身のバイトは文字ではありません。名前が何であれ、これは表ではありません。
    .remedy = 結果をCSVテキストとして出力してください。
notice-workbook_broken = { $found ->
        [no_sheet] ブックにセルのあるシートがありません。
       *[damaged] ブックが途中で切れているか、壊れているか、ブックではありません。
    }
    .remedy = 表計算ソフトで開き、XLSXまたはCSVで保存し直して、そのファイルを入れてください。
notice-workbook_not_read = ブックがパスワードで保護されているか、ここでは読めない古い形式です。
    .remedy = パスワードなしのXLSX、ODSまたはCSVで保存し、そのファイルを入れてください。
notice-workbook_too_large = ブックの中身が、ここで展開できる量を超えています：{ $found ->
        [ratio] セルとしてはあり得ないほど強く圧縮されています。
        [cells] 2000万セルを超えています。
       *[part_size] 1つの部分が256 MiBを超えています。
    }
    .remedy = 結果のあるシートをCSVで保存し、そのファイルを入れてください。
notice-other_sheets = シート「{ $found }」を読み取りました。ほかの{ $rows }枚のシートは読み取っていません。
    .remedy = 結果が別のシートにある場合は、このファイルでそのシートを選んでください。
notice-sheet_not_there = ブックにシート「{ $found }」がありません。
    .remedy = このファイルで、ブックにあるシートを選んでください。
notice-archive_broken = アーカイブが途中で切れているか、壊れているか、アーカイブではありません。
    .remedy = 展開してファイルを入れるか、送り直してもらってください。
notice-archive_too_large = ここで展開できる量を超えています：{ $found ->
        [ratio] 結果としてはあり得ないほど強く圧縮されています。
        [files] ファイルが20 000個を超えています。
        [entry_size] 512 MiBを超えるファイルがあります。
        [packed_size] 圧縮された状態で1 GiBを超えています。
       *[archive_size] 全体で2 GiBを超えています。
    }
    .remedy = 出どころを信用できる場合は、展開してファイルを入れてください。
notice-entry_not_read = アーカイブ内のファイルを展開できませんでした：{ $found ->
        [password] パスワードで保護されています。
        [method] ここでは読めない方式で圧縮されています。
       *[damaged] 壊れています。
    }
    .remedy = アーカイブをそのパスワードで展開し、ファイルを入れてください。
notice-archive_in_archive = アーカイブの中のアーカイブは展開しません。
    .remedy = 外側のアーカイブを展開し、内側のアーカイブを入れてください。
notice-encoding_inferred = 文字コードを{ $found }として読み取りました。ファイルには記載がありません。
    .remedy = 名前がおかしい場合は、このファイルの文字コードを選んでください。
notice-bytes_no_character = 使用した文字コードで文字にならないバイトがあります。最初はこの行で、全部で{ $rows }個あり、それぞれ「�」と表示します。
    .remedy = 名前がおかしい場合は、このファイルの文字コードを選んでください。
notice-no_element_column = "Pb (mg/kg)" のような元素の列が見つかりませんでした。全{ $rows }行が取込み不可です。
    .remedy = ファイルに元素記号のある見出し行が1行あり、その下に行があることを確かめてください。
notice-column_twice = 「{ $found }」：2つの列が同じ元素を名乗っています。両方に値があるセルは未測定として扱います。
    .remedy = どちらか一方を削除するか、名前を変えてください。
notice-heading_not_understood = 「{ $found }」は元素のように始まりますが、ほかの語が理解できないため使用しません。
    .remedy = 質量分率であれば、"Pb mg/kg" のような名前にしてください。
notice-quote_left_open = この行で引用符が開いたまま閉じられていないか、行とみられるものをいくつも挟んだ後の行で閉じられています。引用符の中に入った部分は取込み不可とし、その後から読み取りを続けます。
    .remedy = 引用符を閉じるか、取り除いてください。
notice-line_too_long = この行は表の行としては長すぎます（1 MiB超）。取込み不可とし、次の行から読み取りを続けます。
    .remedy = ファイルのその行を見てください。改行が抜けているのかもしれません。
notice-row_too_long = 行のセルが見出しより多く（最初は「{ $found }」）、セルが誤った列に入っているおそれがあります。この行は取込み不可とします。
    .remedy = 引用符で囲まれていないセルの中に区切り文字がないか見てください。
notice-under_unknown_heading = この行は理解できない見出しの下にあり、数値の意味が分かりません。この行は取込み不可とします。
    .remedy = 上の見出しを見てください。元素を "Pb mg/kg" のように書くか、この表を別のファイルにしてください。
notice-far_below_zero = 「{ $found }」は0より表示誤差の3倍を超えて低い値です。欠測を表す符号か、校正の誤りかもしれません。数値のまま残します。
    .remedy = セルを見てください。欠測を表すものであれば、空にしてください。
notice-row_short = { $rows }行のセルが見出しより少なくなっています。足りないセルは空として扱います。
    .remedy = 行が途中で切れていないか確かめてください。
notice-nothing_usable = この行には、使用する列に何もありません。
    .remedy = 行を削除するか、列に名前を付けてください。
notice-not_utf8 = { $rows }行の名前がUTF-8ではないため、Windows-1252として読み取りました（最初は「{ $found }」）。
    .remedy = 名前がおかしい場合は、ファイルをCSV（UTF-8）で保存し、読み込み直してください。
notice-cell_not_understood = 「{ $found }」は測定値ではありません。このセルは未測定として扱い、行の残りは使用します。
    .remedy = セルを直すか、測定し直してください。
notice-number_out_of_range = 「{ $found }」は質量分率としてあり得ない値です。このセルは未測定として扱い、行の残りは使用します。
    .remedy = 数値と単位を確かめてください。
notice-more_than_whole = 「{ $found }」は試料全体より多い値です（1 000 000 mg/kg超）。
    .remedy = 列の単位を確かめてください。
notice-mark_unclear = 「{ $found }」のコンマまたはピリオドは、小数点か桁区切りか分かりません。このセルは未測定として扱います。
    .remedy = 数値を桁区切りなしで書くか、このファイルの小数点を指定してください。
notice-error_not_understood = 不確かさ「{ $found }」は使える数値ではありません。値は不確かさなしとします。
    .remedy = セルを直してください。
notice-error_unit_unclear = { $rows }行で不確かさの単位が分かりません。パーセント記号は、値に対するパーセントを意味することもあります。値は不確かさなしとします。
    .remedy = 列名に単位を付けてください。例："Pb u mg/kg (1s)"
notice-unit_not_stated = { $rows }行で単位が示されていません（最初は「{ $found }」）。数値は文字のまま残し、未測定として扱います。
    .remedy = このファイルの単位を指定してください。
notice-unit_not_known = 「{ $found }」は、ここで扱う質量分率の単位ではありません。
    .remedy = mg/kg、ppm、%、g/kg、ug/g、ppbのどれかを用いてください。
notice-multiple_not_stated = 誤差の列が何シグマに当たるか示されていません（{ $rows }行）。1シグマとみなします。未確定域が広がるだけで、これによって限度値未満になるものはありません。
    .remedy = このファイルについて、1、2、3シグマのどれかを指定してください。
notice-limit_in_error_column = { $rows }行で、「不検出」なのに誤差の列に数値があります（最初は「{ $found }」）。この数値は次のとおり読み取りました：{ $reading ->
        [one_error] 1つ分の表示誤差。その3シグマを検出下限とする
       *[limit] 検出下限
    }。
    .remedy = 列がもう一方の意味であれば、このファイルについてそう指定してください。
notice-class_not_understood = 「{ $found }」は、ここで扱う材料区分ではありません（{ $rows }行）。区分は不明として扱います。
    .remedy = ポリマー（樹脂）、金属、複合材料、めっきのどれかを用いるか、区分を設定してください。
notice-same_as_another = このファイルは別のファイルと同じ内容（全バイト一致）のため、1つにまとめました。
    .remedy = 何もする必要はありません。
notice-too_many_columns = ある行に{ $found }列あり、結果表としては多すぎます。このファイルは読み取りません。
    .remedy = ファイルを見てください。もう一度出力するか、中の表を入れてください。
notice-element_not_understood = 「{ $found }」は、ここで扱う元素ではありません。この行は何かを測定したものなので、取込み不可とします。
    .remedy = 元素であれば、その列について指定するか、名前を直してください。
notice-element_twice = { $rows }行で、1件の測定に同じ元素が2回あります（「{ $found }」）。どちらを指すか分からないため、未測定として扱います。
    .remedy = どの列またはスペクトルを指すか示すか、もう一方を取り除いてください。
notice-summary_row = 「{ $found }」は試料の名前ではなく、ほかの値の集計か限度値の記載です（{ $rows }行または列）。除外し、測定とはしません。
    .remedy = 試料であれば、別の名前を付けてください。
notice-two_readings_in_row = この行には、同じ見出しの下に「{ $found }」もあります。2つの表が横に並んでいます。値が誤った試料に付くおそれがあるため、取込み不可とします。
    .remedy = 表を上下に並べるか、別々のファイルにしてください。
notice-stated_twice = 「{ $found }」は、前の行の記載と矛盾します。ここから先は、どちらも使用しません。
    .remedy = このファイルの単位、またはシグマの倍数を指定してください。
notice-oxide_converted = { $found }の数値は酸化物の質量分率です。原子量により元素に換算しました。
    .remedy = 見出しが正しければ、何もする必要はありません。
notice-date_order_unclear = { $rows }行で、「{ $found }」は日・月の順か月・日の順か分かりません。日付は書かれたまま残します。
    .remedy = このファイルの日と月の順序を指定してください。
notice-date_not_understood = { $rows }行で、「{ $found }」は、ここで扱う日付ではありません。書かれたまま残します。
    .remedy = 日付を直すか、日と月の順序を指定してください。
notice-id_pattern_differs = { $rows }行で、「{ $found }」は複合IDについて示されたパターンに合いません。IDは分けずに残します。
    .remedy = 別の例でパターンを示すか、IDを直してください。
notice-stated_above = 表の上に記載された「{ $found }」を、下の測定のうち記載のないものすべてに用います。
    .remedy = すべてに当てはまるのでなければ、列を手で設定してください。
notice-table_turned = 表が横向きです。1列が1件の測定、1行が1元素です。
    .remedy = これで正しければ、何もする必要はありません。
notice-rows_joined = スペクトルまたはフィルターごとの{ $rows }行を、試料と時刻が同じ測定に結合しました。
    .remedy = それぞれが独立した測定であれば、スペクトルの列を「使用しない」としてください。
notice-mapped_by_hand = この見出しの{ $rows }列は手で設定されました。
    .remedy = 設定なしで何が見つかるかを見るには、この操作を取り消してください。
notice-mapping_differs = 人が設定した列の対応付けが列または行{ $found }を指していますが、この表にはありません。使用しませんでした。
    .remedy = このファイルの列を見て、設定し直してください。
notice-duplicate_reading = { $rows }件の測定（最初のものはここ）は{ $found }にもあり、ここにはそこより多くの情報がありません。1回だけ数えました。
    .remedy = 何もする必要はありません。それぞれが独立した測定であれば、個別のID、測定箇所または時刻を付けてください。
notice-same_reading_in_parts = { $rows }件の測定（最初のものはここ）は{ $found }にもあり、それぞれが他方にない情報をもっています。すべて残すため、その測定は2回以上数えられます。
    .remedy = 全部が記載された1つのファイルを入れるか、誤っている方を外してください。それぞれが独立した測定であれば、個別のID、測定箇所または時刻を付けてください。
notice-new_header = ここから、列の異なる新しい見出し行が始まります。
    .remedy = その下の列が正しく理解されたか確かめてください。
notice-preamble = 見出し行の前の{ $found }行は、備考として残します。
    .remedy = 何もする必要はありません。
notice-skipped = 結果表ではないため、飛ばしました。
    .remedy = 何もする必要はありません。設定と規則集は、結果としてではなく、それぞれの場所で入れます。

## Settings, mapping and rule book files

problem-malformed = この行は読み取れません：{ $found }
    .remedy = 行を直してください。文字列は引用符で囲みます。
problem-wrong_schema = 「{ $found }」は、ここで読み取る種類のファイルではありません。
    .remedy = 最初の行は schema = "{ $expected }" でなければなりません。
problem-unknown_key = このようなキーはここにはありません：{ $found }
    .remedy = つづりを直すか、その行を取り除いてください。この表で使えるキーは括弧内に示します。
problem-wrong_kind = 「{ $found }」は、ここに置ける種類の値ではありません。
    .remedy = 文字列は引用符、リストは角括弧で囲み、表は波括弧で囲むか独自の見出しの下に置きます。
problem-unknown_unit = 「{ $found }」は、ここで扱う質量分率の単位ではありません。
    .remedy = mg/kg、%、g/kg、ug/kgのどれかを用いてください。
problem-not_a_quantity = 「{ $found }」は単位の付いた数値ではありません。
    .remedy = "700 mg/kg" のように書いてください。
problem-unknown_name = 「{ $found }」は、ここで扱う名前ではありません。
    .remedy = つづりを直してください。ページで設定して「設定」としてダウンロードすれば、名前はすべて正しく入ります。名前の一覧はcontract.mdにあります。
problem-band_upside_down = 判定域の下端が上端より低くありません：{ $found }。
    .remedy = 両端の値を直してください。
problem-not_above_zero = 「{ $found }」は0より大きくありません。
    .remedy = 限度値は0より大きくなければなりません。
problem-twice = 「{ $found }」が2回あります。
    .remedy = どちらかの行を取り除いてください。
problem-missing = 「{ $found }」がありません。
    .remedy = 追加してください。
problem-out_of_range = 「{ $found }」は、あり得る範囲の外です。
    .remedy = 数値の書き間違いがないか確かめてください。可能な範囲はcontract.mdにあります。
problem-nothing_in_book = 規則集「{ $found }」には、判定域もハロゲンの限度値もありません。
    .remedy = 表を追加してください。
problem-no_source = 出典または箇条のない行があります。
    .remedy = すべての値に、文書と箇条を示さなければなりません。
problem-aql_not_in_table = 「{ $found }」は、抜取表にあるAQLではありません。
    .remedy = 次のどれかを用いてください：0.010 0.015 0.025 0.040 0.065 0.10 0.15 0.25 0.40 0.65 1.0 1.5 2.5 4.0 6.5 10 15 25 40 65 100 150 250 400 650 1000

## Acts in words

act-class = 材料区分を{ $value }に設定
act-sigma_multiple = 表示誤差を{ $value }シグマとみなす
act-unit_of_measure = 単位のない値の単位を{ $value }に設定
act-decimal_mark = 小数点を「{ $value }」に設定
act-detection_in_error_column = 不検出の行の誤差の列にある数値：{ $value ->
        [one_error] 1つ分の表示誤差
       *[limit] 検出下限
    }
act-column_role = 列を手で設定：{ $value }
act-column_role_named = 列{ $column }「{ $heading }」を{ $role }とする
act-header_line = { $value ->
        [none] 見出し行なし。列は番号で呼ぶ
       *[other] 見出し行を{ $value }行目に設定
    }
act-text_encoding = 文字コードを{ $value }として読み取る
act-sheet = シート「{ $value }」を選択
act-date_order = 日付の順序を{ $value ->
        [ymd] 年・月・日
        [dmy] 日・月・年
       *[mdy] 月・日・年
    }に設定
act-id_pattern = 複合IDの構成：{ $value }
act-halogen_book = ハロゲンの判定に用いる規則集：{ $value }
act-trust = 点検測定がないとき：{ $value }
act-sampling = 抜取りの記載がないとき：{ $value }
act-materials = 部品の材料の一覧がないとき：{ $value }
act-thickness_mm = 厚さを{ $value } mmに設定
act-lot_size = ロットの大きさ { $value }
act-units_to_take = 抜取検査方式が求める個数：{ $value }
act-bill_of_materials = 均質材料の一覧：{ $value }
act-category = 製品カテゴリー { $value }
act-placing_date = 上市日 { $value }
act-reviewed_at = レビュー日 { $value }
act-inspector = 検査者 { $value }
act-place = 場所 { $value }
act-title = 表題 { $value }
act-check_samples = 点検用試料：{ $value }
act-site_sigma = 事業所の繰返し性：{ $value }
act-relative_sigma = 値の{ $value } %を、すべてのシグマに二乗和で加算
act-repeats = 箇所の繰返しとみなす測定：{ $value }
act-uncertainty_holds = 不確かさに含まれるもの：{ $value }
act-undo = 操作{ $value }を取消し
target-inspection = 検査全体
target-source = ファイル { $name }
target-header = 見出しが{ $name }の表
target-lot = { $supplier }のロット{ $lot }
target-lot_unnamed = 供給者とロットの記載がないもの
target-part = 部品{ $part }
target-material = 部品{ $part }の材料{ $material }

## Summary lines

summary-no_readings = 測定はまだありません。
summary-counts = { $lots }ロット、{ $readings }件の測定{ $aside ->
        [0] { "" }
       *[other] （うち{ $aside }件は人が除外）
    }{ $checks ->
        [0] { "" }
       *[other] 、ほかに点検測定{ $checks }件
    }：受入れ可（スクリーニングした物質について）{ $accept }、保留{ $hold }、受入れ不可{ $not_accept }。
summary-only_checks = すべての測定が点検とされています。ロットのものは何も測定されていません。
summary-all_set_aside = すべての測定が除外されています。ロットについて何も示していません。
summary-readings_below = 測定が示すこと：スクリーニングした物質は、すべて限度値未満または判定対象外です。
summary-readings_say = 測定が示すこと：{ $list }。
summary-over_limit = { $about }が限度値超過 { $count }件
summary-halogen_over_limit = { $about }がハロゲンの限度値超過 { $count }件
summary-over_in_some_classes = { $about }が一部の区分で限度値超過 { $count }件
summary-not_measured = { $about }が未測定 { $count }件
summary-no_uncertainty = { $about }が不確かさなし { $count }件
summary-detection_too_high = { $about }の検出下限が高すぎる、または記載なし { $count }件
summary-not_capable = { $about }が判定能力不足 { $count }件
summary-undecided = { $about }が未確定 { $count }件
summary-halogen_open = { $about }がハロゲン規則集で未解決 { $count }件
summary-evidence_none = 裏付け：不足によって保留となるロットはありません。
summary-evidence_advisory = 示されていないが、保留の理由にならないもの：{ $list }。
summary-evidence_missing = 受入れ可とするために足りない裏付け：{ $list }。
evidence-short-file_not_read = 読み取れなかったファイル
evidence-short-units_not_stated = 各測定の個体
evidence-short-rows_refused = 取込み不可の行の確認
evidence-short-layer_among_classes = 層と下地の材料の別々の名前
evidence-short-class_unknown = 材料区分
evidence-short-thickness_not_stated = 厚さ
evidence-short-material_not_measured = 未測定の材料
evidence-short-bill_of_materials_none = 材料構成表
evidence-short-material_not_listed = 材料構成表にない材料
evidence-short-sampling_none = ロットの大きさと抜取検査方式
evidence-short-sampling_too_few = 個数の追加
evidence-short-multiple_not_stated = シグマの倍数
evidence-short-halogen_book_not_loaded = ハロゲン規則集
not-stated = 記載なし
no-lot = ロットの記載なし

## Values

value-number = { $value } mg/kg ± { $sigma } (1s)
value-number_bare = { $value } mg/kg、不確かさなし
value-below = < { $value } mg/kg
value-above = > { $value } mg/kg
value-not_detected = 不検出
value-not_measured = –
value-text = 「{ $written }」
value-interval = { $low }～{ $high } mg/kg
value-at_least = { $low } mg/kg以上

## Working, in words

working-below = { $x } + { $k } × { $sigma } = { $end } mg/kgで、下端{ $low } mg/kg以下です。
working-over = { $x } − { $k } × { $sigma } = { $end } mg/kgで、上端{ $high } mg/kg以上です。
working-between = { $x } ± { $k } × { $sigma } mg/kgは{ $from }から{ $to }に及びます。未確定域は{ $low }～{ $high } mg/kgです。
working-between_open = { $x } ± { $k } × { $sigma } mg/kgは{ $from }から{ $to }に及びます。「未満」は{ $low } mg/kgまでで、「超過」はありません。
working-detection = 検出下限{ $x } mg/kgで不検出、その3分の1をシグマとします：{ $x } + { $k } × { $sigma } = { $end } mg/kg。下端は{ $low } mg/kgです。
working-detection_composite = 検出下限{ $x } mg/kgで不検出です。「未満」となるのは{ $low } mg/kg以下のときだけです。
working-composite = { $x } ± { $k } × { $sigma } mg/kgは{ $from }から{ $to }に及びます。「未満」には、{ $low } mg/kg以下の検出下限が示され、値がその検出下限以下であることが必要です。「超過」は{ $high } mg/kgからです。
working-thin = { $x } + { $k } × { $sigma } = { $end } mg/kg。この薄さのプラスチックでは、信号が本来の{ $share } %しか出ないことがあるため、「未満」は{ $low }ではなく{ $scaled } mg/kgまでとします。
working-not_capable = { $k } × { $sigma } = { $end } mg/kgで、下端{ $low } mg/kg以上です。

## Cautions

caution-declaration = スクリーニングは適合宣言ではなく、試験所の結果でもありません。
caution-homogeneous = 結果は、測定した箇所だけのものです。限度値は、層も含め、均質材料ごとに適用されます。
caution-radiation = X線分析装置は電離放射線を出します。現地の法令、許可条件、装置に関する教育訓練に従い、ビームの中で試料を絶対に手で持たないでください。
caution-dust = 試料を切る、削る、こすり取る作業では、有害な粉じん（鉛、カドミウム、クロム）が出ることがあります。集じん装置、手袋、マスクを用い、残りかすは現地の規則に従って処分してください。
caution-shipping = このページだけを根拠に、保留または受入れ不可のロットを出荷しないでください。決めるのは権限のある人です。
caution-items = 結果は、試験した品目だけに関するものです。

## Report

report-title = スクリーニング報告書
report-subtitle = 蛍光X線分析による規制物質
report-end = 報告書の終わり
report-id = 識別情報
report-program = 作成に用いたもの
report-number = 報告書番号
report-reviewed = レビュー日
report-inspector = 検査者
report-place = 場所
report-category = 製品カテゴリー（指令 2011/65/EU）
report-placing = 上市日
report-blank = ____________________
report-summary = 要約
report-lots = ロット
report-lot = ロット
report-supplier = 供給者
report-source = 出典
report-disposition = 処置
report-reasons = 理由（重い順）と、それぞれの解消方法
report-readings = 測定
report-materials = 材料
report-part = 部品
report-material = 材料
report-class = 区分
report-sources = 元のファイル
report-file = ファイル
report-rows = 受け取った行 = 使用 + 点検 + 重複 + 除外 + 取込み不可
report-digest = SHA-256
report-method = 方法、規則、判定ルール
report-method_text = 蛍光X線によるスクリーニング。各測定は、下記の規則集の判定域により判定しました。値は質量分率（mg/kg）、sは1シグマです。
report-rule_text = 限度値未満（BL）：x + { $k } s { $low_sign } 下端。限度値超過（OL）：x − { $k } s { $high_sign } 上端。未確定（X）：その間。CrとBrに「超過」はありません。検出下限Dで不検出のとき：s = D / 3とし、D + { $k } s { $low_sign } 下端ならBL。複合材料のカドミウム：値が、記載された検出下限（下記の上限以内のもの）以下のときだけBL。めっき・被覆・不動態化された品目：常にX。区分不明：すべての区分で判定し、最も悪い結果を採ります。判定域に残る誤判定のリスクは、ロットについては計算しません。個々の値が法定の限度値内にある確率は、その説明に示します。
report-rule_halogens = ハロゲン：x + { $k } s { $within_sign } 限度値ならBL、x − { $k } s { $over_sign } 限度値ならOL。複合材料または区分不明では、BLはXとします（ビーム内の銅やガラス）。金属は判定対象外です。合計では、両方のシグマを二乗和で合成します。一方が検出下限未満のとき、合計は区間になります。
report-halogens_moved = ハロゲンは{ $book }により処置に影響します。
report-halogens_shown = ハロゲンは参考として示します。ハロゲン規則集が指定されていないため、処置には影響しません。
report-uncertainty = 不確かさ：sは、表示誤差をそれが表す倍数で割ったものです。ただし、事業所の繰返し性の表がある場合はアクションレベルでのその値を、また、箇所の繰返し測定が示す値を、下回ることはありません。誰も示していない倍数は1とみなし、未確定の区間が広がります。どのsをどの倍数で用いたかは、附属書の各結果に添えてあります。
report-uncertainty_full = 検査者は、示された不確かさが校正、マトリックス、サンプリングを含む全体の不確かさであると表明しています。
report-probability = 真の値が限度値内にある確率は、値を中心とする正規分布によるものです（JCGM 106:2012）。限度値がその材料中の元素そのものに対するものである場合のCd、Pb、Hgについて示します。ここでは何も決めません。
report-thickness = 厚さ：厚さが示されている場合、プラスチック、または母材を測定した金属のBLは、欠けている信号を考慮しても成り立つときだけ有効です。プラスチックは、最もX線を通しやすいポリエチレンに、主要元素として測定された塩素を加えたものとみなします。したがって、充塡材入りのプラスチックには慎重な側の扱いです。
report-book = 規則集
report-edition = 版
report-confidence = 値の確かさ
report-bands = 用いた判定域（mg/kg）
report-substance = 物質
report-low = 下端
report-high = 上端
report-none = なし
report-detection_edge = その測定の検出下限、{ $limit }以下
report-limit = 限度値
report-clause = 箇条
report-results = 結果
report-results_text = 各材料の最も悪い結果と、それを最も高い値で示す測定の目盛り図です。個々の測定は附属書にあります。
report-open = 未解決の結果と次の手順
report-open_none = 未解決の結果はありません。ロットを保留にするものは、そのロットの欄にあります。
report-reading = 測定
report-outcome = 結果
report-why = 理由
report-next = 次の手順
report-material_head = 材料、部品、ロット
report-annex = 附属書：すべての測定
report-annex_values = 値はmg/kg ± 1シグマ。「<」は検出下限、「–」は未測定、引用符内の文字はファイルに書かれたままのもの。シグマ：pは表示誤差で倍数はファイルに記載、mは表示誤差で倍数は入力による指定（pまたはmの後の数字がその倍数。p2は2シグマの表示誤差）、uは表示誤差で倍数不明のため1とみなしたもの、tは事業所の表、rはその箇所の繰返し測定から求めた値。「!」：結果に疑いを生じさせるものがあり、結果に添えた疑義の欄、または未解決の結果の欄に示します。
report-also = 次についても同じ
report-also_more = ほか{ $count }件
report-annex_capped = { $total }件の測定のうち、最初の{ $shown }件を印字しています。すべてはfindings.csvにあります。
report-open_capped = { $total }件の未解決の結果のうち、悪い順に約{ $shown }件を印字しています。すべてはfindings.csvにあります。
report-materials_capped = { $total }件の材料のうち、最初の{ $shown }件を印字しています。すべてはfindings.jsonにあります。
report-line = 行
report-sample = 試料
report-columns_used = 使用した列
report-packed_in = { $name }に収納、SHA-256
report-sheet_read = シート「{ $name }」を読取り、ほか{ $others }枚
report-stated_above = { $line }行目「{ $text }」は表全体に当てはまる
report-notices = 通知
report-notices_none = なし。
report-check = 点検測定、製品ではない
report-rests_on = 根拠：ロットの大きさ{ $size }、抜取検査方式が求める個数{ $take }、抜取りが最も少ない材料で測定した個数{ $units }。
report-hold_ends = 保留の解消方法（各理由が求めるもののほか）
report-refused = 取込み不可の行
report-refused_none = 取込み不可の行はありません。
report-refused_capped = ほかに取込み不可の行が{ $left }行あり、数に含めていますが一覧にはありません。
report-column = 列
report-remedy = すべきこと
report-acts = 設定と操作
report-acts_none = なし。
report-by = 実施者
report-unsigned = イニシャルなし
report-at = 日付
report-act = 操作
report-target = 対象
report-note = 注記
report-not_assessed = 評価していないもの
report-cautions = 注意
report-signatures = 署名
report-sign_inspector = 検査者（氏名、日付、署名）
report-sign_second = 2人目の確認者（氏名、日付、署名）
report-findings_digest = 所見のSHA-256
report-total_rows = 全ファイル
report-rules_beside = 判定ルールの比較（測定の件数）。比較のためのもので、ここでは何も決めません。
report-rules_repeatability = 繰返し性だけです。校正、マトリックス、サンプリングによる分は含みません。
report-decision_rule = 判定ルール
report-rule_bands = スクリーニング判定域（この報告書のルール）
report-rule_not_applicable = 限度値に対するルールが当てはまらない（測定）
report-composition = 組成
report-caution = 注意
report-doubts = 結果に添える疑義
report-doubts_none = 測定されたものの中に、BLを疑わせるものはなく、区分と食い違う組成もありません。
report-doubts_below = 限度値未満だが疑わしい
report-doubts_capped = { $total }件のうち、最初の{ $shown }件を印字しています。すべてはfindings.jsonにあります。
report-compositions = 問題となる組成
report-compositions_text = 区分が不明な場合、または測定されたものと矛盾する場合です。組成から示唆されるものを区分とすることは決してありません。
report-repeats = 繰返しと測定箇所
report-repeats_text = 1つの箇所の繰返し測定は、互いに合い、どれも単独で限度値超過でないときに、まとめて判定します。箇所同士を平均することはありません。大きく外れた測定は名前を挙げますが、取り除きません。
report-repeats_none = 2回以上測定された箇所はなく、示された2箇所で測定された材料もありません。
report-repeats_capped = { $total }組の繰返しのうち、最初の{ $shown }組を印字しています。すべてはfindings.jsonにあります。
report-spot = 測定箇所
report-element = 元素
report-lines = 行
report-repeats_values = 測定（mg/kg）
report-together = まとめた値（± 1シグマ）
report-how = 方法
report-each_alone = それぞれ単独
report-one_is_over = 採らない：1件が単独で限度値超過であり、それが有効
report-spots_of = { $about }（{ $n }箇所、確率{ $p }）
report-spots_alike = { $list }では、箇所間の差は見られませんでした。同じであることの証明ではありません。最も悪い箇所を採ります。
report-limits = 指定された規則集の限度値
report-limits_text = 適用される各限度値についての、各材料の最も悪い結果です。処置に影響するのは、ロットの理由に挙がっているものだけです。
report-limits_none = これらの材料に適用される限度値はありません。
report-limits_capped = { $total }件のうち、最初の{ $shown }件を印字しています。すべてはfindings.jsonにあります。
report-worst_reading = 最も悪い測定
report-exemptions = 適用除外
report-exemptions_none = 適用除外の主張はなく、読み込まれた項目の中に、見つかったものを対象としうるものもありません。
report-claims = 主張されたもの
report-claims_capped = { $total }件のうち、最初の{ $shown }件を印字しています。すべてはfindings.jsonにあります。
report-candidates = 主張されていないが、結果を対象としうる項目
report-candidates_text = 対象としうる項目があるだけでは、適用除外にはなりません。誰かが裏付けと2人目の確認者のイニシャルを添えて主張する必要があります。
report-entry = 項目
report-scope = 項目の対象
report-text = 法令の条文
report-text_from = { $day }から有効。
report-number_said = 測定が示すこと
report-expires = 失効日
report-no_day = 規則集に記載なし
report-renewal = 更新
report-renewal_said = 出典：{ $source }、{ $state ->
        [not_filed] 日付
       *[other] 申請日
    }：{ $date }
report-group = 主張された合金または材料
report-evidence = 裏付け
report-initials = イニシャル/2人目
report-questions = 回答すべきこと
report-expiries = 失効日（全ロット）
report-cr6 = 面積当たりのクロム(VI)（IEC 62321-7-1）
report-cr6_area = µg/cm²
report-cr6_not_judged = 判定せず：読み込まれた規則集に定めがないか、材料が金属ではない
report-laboratory = 試験所、報告書
report-reached = 各結果に至った経緯
report-reached_text = 物質と区分ごとに規則を1回ずつ示し、未満、未確定、超過となった測定の件数を添えます。各測定の判定に用いたシグマと倍数は附属書に、未解決と超過の結果は上の個別の段落にあります。
report-rule = 規則
report-rule_plated = 層とその下にあるものは、一緒に測定されます。厚さとその下にあるものが分かるまでは、数値が何であれ未確定です。
report-other_outcomes = その他
report-halogens = ハロゲン
report-validity = 対象となる製品
report-in_use = 使用中
report-open_day = 期限なし
report-jurisdiction = 地域
report-legend = BL 限度値未満 · X 未確定 · OL 限度値超過 · 対象外 判定の対象ではない。これ以外の語は、これらの結果が出ない理由を示すもので、どれも限度値未満を意味しません。

## Ruler

ruler-title = { $about }：{ $outcome }
ruler-description = mg/kgの対数目盛。{ $value }。{ $edges }。
# 目盛りが何に対して描かれているか：何も判定されない帯、または帯のない限度値。
ruler-edges = { $low }から{ $high }までは未確定
ruler-edges_open = { $low }から上は未確定
ruler-edges_limit = 限度値{ $limit }
ruler-band = 未確定
ruler-limit = 限度値
ruler-strip = { $value }。{ $edges }
report-rulers = 結果の下にあるのはその目盛り図です。mg/kgの対数目盛の上に、測定値がkシグマのひげの付いた下げ振りで（判定域ではk = { $k }）、限度値の周りの判定域が斜線で描かれます。矢じりは、目盛りの外へ続くことを示します。
report-rulers_below = ひげまで含めて判定域の左：限度値未満
report-rulers_undecided = どこかが判定域にかかる：未確定
report-rulers_over = ひげまで含めて判定域の右：限度値超過
report-rulers_limit = 判定域のない限度値：横木のある柱
report-rulers_bound = 不検出：縦線から破線の側のどこか
report-rulers_between = 不検出の成分を含む合計：2本の縦線の間のどこか

join-list = {"、"}
join-series = {"；"}
join-sentences = {""}
join-colon = {"："}
join-stop = {"。"}
join-brackets = （{ $text }）

## Command line

cli-help = Plumblineは、電子材料の蛍光X線スクリーニング結果をオフラインでレビューします。

    使い方：
      plumbline review --out DIR [--papers] [--settings FILE]... [--mapping FILE]... [--rules FILE]... [--history FILE]... [--bill FILE]... PATH...
      plumbline explain [--settings FILE]... [--mapping FILE]... [--rules FILE]... [--bill FILE]... [--of NAME]...
                        (--reading ID | --line SOURCE:LINE) PATH...
      plumbline plan --lot-size N --rule single --aql AQL [--level LEVEL] [--severity SEVERITY] [--seed SEED]
      plumbline plan --lot-size N --rule zero_acceptance --confidence PERCENT --share PERCENT [--seed SEED]
      plumbline rules [ID | FILE]
      plumbline help
      plumbline version

    review     結果表（CSV、TSV。ファイルまたはフォルダー）を読み取り、DIRに次を書き出す：
                 findings.json   所見のすべて（プログラム用）
                 findings.csv    測定1件につき1行（表計算ソフト用）
                 report.html     報告書（人が読むため）。ブラウザーから印刷する
                 （1ページ版と附属書は--lengthを参照）
                 history.txt     渡された履歴と今回の検査を合わせたもの（次回用）
    --out DIR        書き出す先。なければ作る
    --papers         必要なものがあれば、次も書き出す：findings.xlsx、laboratory-request.html、
                     supplier-notice-N-NAME.html（保留または受入れ不可のロットの供給者ごとに1つ）、labels.html
    --length LENGTH  報告書の長さ：one_page（report-one-page.html）、full（report.html、通常）、
                     annex（report-annex.html、すべての測定）、またはall。繰り返し指定できる
    --settings FILE  区分、ロットの大きさ、厚さ、認証書、抜取検査方式など（contract.mdを参照）。
                     複数あるときは、後のものが前のものに優先する
    --mapping FILE   既知の見出しの下にある列の意味（ページで保存したもの）
    --bill FILE      材料構成表：PartとMaterial、任意でClassの列がある表
    --rules FILE     規則集：その判定域またはハロゲンの限度値は組込みのものに代わり、その他の限度値は並べて用いる
    --history FILE   以前の検査の所見（そのときのhistory.txt）。複数あれば統合する
    explain    該当する測定について、見つかったもの、規則とその箇条、結果に至る全段階を出力する
    --reading ID     この試料ID（ファイルに書かれたまま）の測定
    --line S:LINE    元のファイルS（報告書での名前）のこの行から始まる測定
    --of NAME        この結果だけ：Cd、Pb、Hg、Cr、Br、Clまたはtotal。繰り返し指定できる
    plan       ロットから抜き取る個数、--seedがあればどの個体か、残るリスクを示す。
               設定ファイルの[[sampling_plan]]と同じ
    rules      プログラムに付属する規則集を一覧にする。またはその1つかファイルを1行ずつ説明する

    終了コード：0 すべてのロットが、スクリーニングした物質について受入れ可。1 保留または受入れ不可のロットがある。
    2 読み取れない入力がある、測定がない（残りは書き出す）、または説明する測定がない。
    64 使い方の誤り、または設定・対応付け・規則集・履歴ファイルの不備（何も書き出さない）。74 出力を書き出せない。

    スクリーニングは適合宣言ではなく、試験所の結果でもありません。
cli-usage = plumbline: { $what }
    .remedy = "plumbline help" を見てください。
cli-missing_reading = どの測定かを指定してください：--reading IDまたは--line SOURCE:LINEを1回
cli-no_line = 「{ $found }」はSOURCE:LINEではありません。例：results.csv:12
cli-no_outcome = 「{ $found }」は結果の名前ではありません。使えるのはCd、Pb、Hg、Cr、Br、Cl、totalです
cli-no_reading = 該当する測定がありません。測定は、ファイルに書かれたままの試料ID、またはファイル名と開始行で指定します。
cli-unknown = 「{ $found }」は、ここでは未知です
cli-missing_out = --out DIRがありません
cli-missing_value = { $found }には値が必要です
cli-missing_path = ファイルまたはフォルダーが指定されていません
cli-bad_file = { $file }、{ $line }行目、列{ $column }：{ $text }
cli-unreadable = { $file }：{ $text }
cli-cannot_write = { $file }を書き出せませんでした：{ $text }
cli-source = { $file }：受け取った行 { $rows_in } = 使用 { $used } + 点検 { $check } + 重複 { $duplicate } + 除外 { $set_aside } + 取込み不可 { $refused }。測定 { $total }
cli-source_problem = { $file }：{ $text }
cli-refused = { $file }、{ $line }行目、列{ $column }：{ $text }
cli-refused_row = { $file }、{ $line }行目：{ $text }
cli-more_refused = { $file }：ほかに取込み不可の{ $left }行がfindings.jsonにあります
cli-lot = ロット：{ $lot } · 供給者：{ $supplier } · { $disposition }
cli-written = 書出し済み：{ $file }

## Questions a file leaves open

need-unit_not_stated = ファイルに値の単位が示されていません。どの単位ですか。
need-sigma_multiple_not_stated = ファイルに、誤差の列が何シグマに当たるか示されていません。1、2、3のどれですか。
need-decimal_mark_unclear = 小数点か桁区切りか分からないコンマまたはピリオドのある数値があります。小数点はどちらですか。
need-date_order_unclear = 日・月の順か月・日の順か分からない日付があります。どの順序ですか。
need-class_not_stated = { $count }件の測定に、ここで扱う材料区分の記載がありません。どの区分ですか。
