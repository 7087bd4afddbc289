# The trainer's room: lessons, exercises, the score sheet.
page-train-enter = 練習室に入る
page-train-heading = 練習室
page-train-invented = この部屋のものは、会社、供給者、ロット、数値のすべてが架空です。開いている検査はそのまま残ります。
page-train-lead = XRFの測定から判断するための、8つの短いレッスンです。まず自分で判断し、その後、プログラムが計算の筋道を示します。
page-train-lessons = レッスン
page-train-titled = レッスン{ $n }：{ $title }
page-train-progress = { $of }問中{ $done }問に回答、正解{ $right }問
page-train-not-begun = 未着手
page-train-begin = レッスン1から始める
page-train-go-on = レッスン{ $n }へ進む：{ $title }
page-train-to-sheet = 成績表へ
page-train-home = レッスン一覧
page-train-before = 前のレッスン
page-train-after = 次のレッスン：{ $title }
page-train-source = 出典
page-train-look = 見てみる架空の納入品
page-train-open = { $title }を開く
page-train-deliveries = レビューする納入品
page-train-deliveries-hint = 開くと、開いている検査は脇に置かれます。上の「{ $back }」で戻せます。
page-train-fresh = 新しい納入品
page-train-fresh-hint = 上のシードから作る1ロットです。本物と同じようにレビューします。何を示しているか、何が足りないか、誰が署名するか。
page-train-fresh-open = このシードの納入品を開く
page-train-fresh-title = 架空の納入品、シード{ $seed }
page-train-fresh-story = シード{ $seed }から作った架空のロットです。本物と同じようにレビューしてください。各測定の結果はなぜそうなりますか。何が足りませんか。あなたなら署名しますか。
page-train-seed = 問題のシード
page-train-seed-hint = 同じシードからは、どのコンピューターでも同じ問題ができます。
page-train-seed-use = このシードを使う
page-train-seed-new = 新しいシード
page-train-seed-wrong = シードは0から18446744073709551615までの整数で、数字だけで入力します。
page-train-seed-now = シード{ $seed }の問題（架空）

# The ruler that can be moved.
page-train-ruler = ものさしを動かす
page-train-ruler-lead = 材料区分と物質を選び、下げ振りか、ひげの端をドラッグしてください。下の言葉がそれに従います。
page-train-ruler-figure = 動かせるものさし。下の欄でも同じことができます
page-train-ruler-none = これには描くものさしがありません。理由は下の言葉のとおりです。
page-train-class = 材料区分
page-train-class-polymer = ポリマー
page-train-class-metal = 金属
page-train-class-composite = 複合材料・電子部品
page-train-class-plated = めっき・被覆
page-train-class-unknown = ガラス・セラミック
page-train-substance = 物質
page-train-substance-cd = カドミウム（Cd）
page-train-substance-pb = 鉛（Pb）
page-train-substance-hg = 水銀（Hg）
page-train-substance-cr = クロム（Cr）
page-train-substance-br = 臭素（Br）
page-train-kind = ファイルの記載
page-train-kind-number = 数値
page-train-kind-below = 検出下限未満
page-train-kind-none = 不検出、検出下限の記載なし
page-train-value = 値（mg/kg）
page-train-limit = 検出下限（mg/kg）
page-train-sigma = 1シグマ（mg/kg）
page-train-slide-value = 値を動かす
page-train-slide-limit = 検出下限を動かす
page-train-slide-sigma = シグマを動かす
page-train-slid = { $value } mg/kg
page-train-thickness = 厚さ（mm）
page-train-now = 現在：{ $outcome }

# Exercises.
page-train-exercises = 問題
page-train-exercise = 問題{ $n }
page-train-ask-outcome = この測定は、{ $substance }について何を示していますか。
page-train-ask-disposition = このロットはどうなりますか。
page-train-none-stated = 記載なし
page-train-readings = ファイルの測定（mg/kg ± 1シグマ）
page-train-column-sample = 試料
page-train-column-unit = 個体
page-train-column-material = 材料
page-train-fact-size = ロットの大きさは{ $n }個です。
page-train-fact-size-none = ロットの大きさは示されていません。
page-train-fact-take = 測定することになっていた個数は{ $n }個です。
page-train-fact-materials = 部品の材料：{ $list }。
page-train-fact-trust-advisory = この問題では、点検測定は参考とするだけです。
page-train-fact-certificate = { $sample }は点検用の円板です。認証書の値は、Cdが{ $cadmium } mg/kg、Pb、Hg、Cr、Brがそれぞれ{ $others } mg/kgです。
page-train-fact-seconds = どの測定も{ $seconds }秒でした。
page-train-fact-category = 製品はカテゴリー{ $category }（監視・制御機器）です。子どもが部品を口に入れるおそれはありません。
page-train-fact-placed = 製品の上市日は{ $day }です。
page-train-fact-placed-none = 製品の上市日は示されていません。
page-train-fact-claim = 供給者は、書面を添えて適用除外{ $entry }（鉛{ $percent } %以下、{ $day }まで）を主張しています。主張には2人のイニシャルがあります。
page-train-fact-claim-one = 供給者は、書面を添えて適用除外{ $entry }（鉛{ $percent } %以下、{ $day }まで）を主張しています。主張には1人のイニシャルしかありません。
page-train-fact-claim-none = 適用除外の主張はありません。
page-train-fact-renewal-none = 適用除外{ $entry }の更新は、誰も申請していません。
page-train-check = 答えを確かめる
page-train-choose = まず答えを1つ選んでください。
page-train-right = 正解
page-train-wrong = 不正解
page-train-you-said = あなたの答え：{ $answer }。
page-train-tool-says = プログラムの答え：
page-train-move = この数値をものさしで動かす
page-train-more = 別の数値でもう1問

# The score sheet.
page-train-sheet = 成績表
page-train-sheet-empty = まだ回答がありません。問題に答えると、ここに並びます。
page-train-sheet-name = 練習した人の氏名またはイニシャル（任意。保存されません）
page-train-sheet-day = 日付
page-train-sheet-print = 成績表を印刷する
page-train-sheet-asked = 問い
page-train-sheet-answered = 回答
page-train-sheet-right = 正しい答え
page-train-sheet-result = 結果
page-train-sheet-clause = 出典
page-train-sheet-total = { $of }問中{ $right }問正解
page-train-sheet-trainee = 練習した人
page-train-sheet-trainer = 指導した人
page-train-sheet-signature = 日付と署名
page-train-sheet-no-certificate = 測定もロットもすべて架空です。この表は練習の記録であり、力量の証明書ではありません。
page-train-where = 練習室
page-step-what-if = 仮の測定の判定
page-step-exercises = 問題の作成
page-step-solved = 問題の計算
page-step-invented-delivery = 架空の納入品の作成

# The lessons.
page-train-band-title = 判定域とは何か
page-train-band-1 = 測定には必ず不正確さがあります。限度値の周りには、短時間のXRF測定では良否を区別できない判定域があります。
page-train-band-2 = ポリマーの鉛について、法令は1000 mg/kgまで認めており、判定域は700から1300までです。それより明らかに低ければ「限度値未満」（BL）、明らかに高ければ「限度値超過」（OL）です。その間は「未確定」（X）で、試験所が決めます。
page-train-band-3 = 未確定は失敗ではなく、次に何をすべきかを示す答えです。
page-train-band-source = 判定域：IEC 62321-3-1:2013、スクリーニング限度値の表。限度値：指令2011/65/EU、附属書II（いずれも確認済み）。
page-train-band-try = 下げ振りを左から右へドラッグしてください。言葉はどこで変わりますか。

page-train-sigma-title = なぜ3シグマか
page-train-sigma-1 = 同じ箇所をもう一度測ると、数値は少し変わります。1シグマは、それがふつうどのくらいかを表します。
page-train-sigma-2 = ひげの長さは3シグマです。「限度値未満」にはひげ全体が判定域より下に、「限度値超過」には全体が上にある必要があります。端にちょうど触れていれば足ります。
page-train-sigma-3 = 3シグマだけで判定域の下端に達するなら、どんな値でも「未満」を示せません。もっと長く測定します。不確かさのない数値では何も決められません。
page-train-sigma-source = IEC 62321:2008：3シグマは、アクションレベルにおける分析装置の繰返し性を信頼水準99.7 %で表す（確認済み）。
page-train-sigma-try = 下げ振りはそのままにして、ひげを伸ばしてください。答えは、限度値未満から未確定へ、さらに判定能力不足へと変わります。

page-train-element-title = なぜ臭素とクロムは「超過」にならないか
page-train-element-1 = 法令が制限しているのは、臭素を含むPBBとPBDE、そして六価クロムです。XRFに見えるのは元素だけです。
page-train-element-2 = 臭素が少なければPBBとPBDEも少ないため、「限度値未満」となります。臭素が多くても、許されたものに由来するかもしれません。数値がどれほど大きくても未確定であり、試験所が物質そのものを調べます。クロムも同じです。
page-train-element-3 = PBBとPBDEは金属には含まれないため、金属の臭素は判定対象外です。
page-train-element-source = IEC 62321-3-1:2013、スクリーニング限度値の表：BrとCrには上端がない。指令2011/65/EU、附属書II：限度値はPBB、PBDE、Cr(VI)に対するもの（いずれも確認済み）。
page-train-element-try = 下げ振りを右端までドラッグしてください。「超過」になることはありません。

page-train-censored-title = 検出下限未満の値
page-train-censored-1 = 「< 40」は、40あれば装置に見えたはずだが、見えなかったという意味です。0という意味ではありません。
page-train-censored-2 = 検出下限Dは3シグマに当たるため、真の値はDの2倍まで達することがあります。それが判定域より下にとどまるときだけ限度値未満で、そうでなければ検出下限が高すぎます。
page-train-censored-3 = 検出下限のない「n.d.」では、何も「未満」になりません。横線は測定ではありません。複合材料のカドミウムは、50 mg/kg以下の検出下限が示されているときだけ「未満」になります。
page-train-censored-source = 3シグマとしての検出下限：IUPAC 1978（記憶による）、US EPA Method 6200、9.6（確認済み）。複合材料のカドミウム：IEC 62321-3-1:2013、スクリーニング限度値の表（確認済み）。50 mg/kgはこのプログラム独自の規則。
page-train-censored-try = 「未満」でなくなるまで検出下限を上げてください。次に「不検出、検出下限の記載なし」を選んでください。

page-train-material-title = 材料は1つずつ
page-train-material-1 = 限度値は均質材料ごとに適用されます。ねじを外す、切る、砕く、削るなどの作業で分けられないものが1つの均質材料です。ケーブルは複数の材料からなり、めっきもそれぞれ1つの材料です。
page-train-material-2 = 1つの材料が限度値を超えれば、部品全体が受入れ不可です。誰も測定していない材料があれば未解決で、ロットは保留です。
page-train-material-3 = めっきされたものでは、層と下地が混ざって測定されるため、判定しません。薄いものでは戻る信号が少なすぎるため、小さな数値でも未確定です。薄いものは重ねて測ります。
page-train-material-source = 指令2011/65/EU、第3条(20)（条番号は記憶による）。IEC 62321-2:2021、4.6（確認済み）。層を判定しないこと、厚さの補正は、このプログラム独自の規則。
page-train-material-try = 下げ振りを動かさずに、材料区分を金属からめっきに変え、また戻してください。

page-train-exemption-title = 適用除外
page-train-exemption-1 = 用途によっては、より多くが認められます。銅合金は、項目6(c)により、その最終日まで鉛を4 %まで含むことができます。適用除外が結果を変えることはありません。鉛は限度値超過であり、主張がそれを対象とするかしないかです。
page-train-exemption-2 = 主張が認められるのは、すべてがそろったときだけです：正しい材料、項目の限度値より明らかに内側の値、製品カテゴリー、上市日、裏付け、2人のイニシャル。
page-train-exemption-3 = 項目の限度値を明らかに超えるか、更新されないまま最終日を過ぎれば、受入れ不可です。何かが足りないか、際どいときは保留です。
page-train-exemption-source = 指令2011/65/EU、附属書III、項目6(c)、2025年改正（二次資料による）。その限度値での余裕と2人目のイニシャルは、このプログラム独自の規則。
page-train-exemption-try = 黄銅中の鉛27 000 mg/kgは2.7 %です。ものさしは「超過」を示します。それを対象とできるのは、ロットについての主張だけです。

page-train-trust-title = 今日の装置は信頼できるか
page-train-trust-1 = 測定の前と後に、含有量の分かっている円板を測定します。どちらも正しければ、その間の測定は有効です。
page-train-trust-2 = 点検がない、点検が不良である、または最後の測定の後に点検がないときは、数値はそのままですが、ロットは保留です。限度値を超えた測定は、点検がどうであれ超過のままです。
page-train-trust-3 = 時間も大切です。4倍の時間でシグマは半分になります。ごく短い測定は粗すぎて、「未満」を示せないことがあります。
page-train-trust-source = US EPA Method 6200、9.4（開始時、途中、終了時の点検）と9.5（4倍の時間で2倍の精度）（確認済み）。2つの良好な点検の間の測定だけを有効とするのは、このプログラム独自の規則。
page-train-trust-try = ここのシグマは5秒の測定のものです。半分にするには4倍の時間が必要です。「未満」になるまで何秒かかりますか。

page-train-sampling-title = 抜取りと、受入れ可の意味
page-train-sampling-1 = ロットは、測定した個体によって判断します。何個測定するかは測定の前に決めます。数えるのは個体であって測定ではありません。1個の4か所を測っても1個です。
page-train-sampling-2 = 1個でも限度値を超えれば、ロットは受入れ不可です。未確定か一部が未測定の個体が1個でもあるとき、個数が足りないとき、ロットの大きさが不明のときは、保留です。
page-train-sampling-3 = 「受入れ可」とは、スクリーニングした物質について、これらの個体に、ロットに不利なものが見つからなかったという意味です。適合宣言ではなく、フタル酸エステルはXRFには決して見えません。
page-train-sampling-source = IEC 62321-2:2021、4.6：どこか1か所の結果が限度値を超えれば、全体が不適合（確認済み）。「保留」とその条件は、このプログラム独自の規則。
page-train-sampling-try = 未確定の1個がロットを保留にします。保留でなくなる値と、受入れ不可になる値を探してください。

page-train-sample = 超過が出なかった抜取りでも残る可能性
page-train-sample-size = ロットの個数
page-train-sample-taken = 測定した個数
page-train-sample-told = { $n ->
    [0] 測定した{ $taken }個に限度値を超えたものはありません。信頼水準95 %で、ロットの{ $size }個にも超えるものはないといえます。
   *[other] 測定した{ $taken }個に限度値を超えたものはありません。それでも信頼水準95 %で、ロットの{ $size }個のうち{ $n }個までは超えている可能性があります。
 }
page-train-sample-none = ロットの個数より多くは測定できません。
page-step-clean-sample = 抜取りで残る可能性の計算

# The same in short, for the score sheet.
page-train-clause-material = IEC 62321-2:2021、4.6。層と薄いものについては、このプログラム独自の規則
page-train-clause-exemption = 指令2011/65/EU、附属書III、項目6(c)（二次資料による）
page-train-clause-trust = US EPA Method 6200、9.4と9.5。2つの良好な点検は、このプログラム独自の規則
page-train-clause-sampling = IEC 62321-2:2021、4.6。保留の条件は、このプログラム独自の規則

page-delivery-01 = 問題のない筐体
page-delivery-02 = 赤いケーブル
page-delivery-03 = 黄銅のバルブ
page-delivery-04 = 難燃剤
page-delivery-05 = PVCホース
page-delivery-06 = 短い測定
page-delivery-07 = 点検用標準試料
page-delivery-08 = すり替わった材料
page-delivery-09 = 手薄な抜取検査方式
page-delivery-10 = 小数点のコンマ
page-delivery-11 = めっきしたねじ
page-delivery-12 = 薄いフィルム
page-delivery-13 = 鋼のピン
page-delivery-14 = 繰返し測定
page-delivery-15 = 変わった配合
