# Japanese: help where one stands: terms, the guide, the tour, shortcuts, the diagnostic file.

page-words-here = ここで使う用語
page-term-close = 閉じる
page-term-source = 出典：
page-term-guide = 手引きで全用語を見る

page-term-screening = スクリーニング
page-term-screening-is = 材料を「明らかに限度値未満」「明らかに限度値超過」「未確定」に分ける、短時間の試験です。未確定のものは試験所に回します。これで何かを宣言するものではありません。
page-term-xrf = XRF（蛍光X線分析）
page-term-xrf-is = 分析装置が測定箇所にX線を当てると、元素ごとに決まった線が返ってきます。見えるのは元素であって化合物ではなく、表面近くの薄い層だけです。
page-term-reading = 測定
page-term-reading-is = 1か所での1回の測定データです。元素ごとの値と不確かさ、測定時間を含みます。
page-term-lot = ロット
page-term-lot-is = 1社の供給者から1つの名前でまとめて納入された品物です。全体として受入れ可、保留、受入れ不可のいずれかになります。
page-term-limit = 限度値
page-term-limit-is = 規則が材料中に許す物質の上限です（例：鉛 1000 mg/kg）。ちょうど限度値のときに許されるかどうかは、規則集ごとに決まっています。
page-term-band = 判定域
page-term-band-is = 限度値の周りの、スクリーニングで決めてはならない範囲です。下端から上端まで、さらに両側へ3シグマ広がります。
page-term-action-level = アクションレベル（対処が必要な水準）
page-term-action-level-is = 何らかの対処が必要になる、限度値付近の含有量です。規格が問うのは、ゼロではなくこの水準での繰返し性です。
page-term-sigma = 1シグマ
page-term-sigma-is = 測定の通常のばらつきの大きさです。繰り返すと、およそ3回に2回は1シグマ以内に入ります。分析装置は1倍、2倍、3倍のどれかを表示するので、何倍かを知る必要があります。
page-term-repeatability = 繰返し性
page-term-repeatability-is = 何も変えずに同じ試料を測ったときのばらつきです。判定域では、限度値付近での1回ごとの測定のばらつきを指します。
page-term-bl = BL（限度値未満）
page-term-bl-is = 値とその3シグマが判定域より下にあります。この元素、この材料、この箇所についてだけ言えることです。
page-term-x = X（未確定）
page-term-x-is = 値またはその3シグマが判定域にかかっています。合格でも不合格でもなく、ほかの方法で決める必要があります。
page-term-ol = OL（限度値超過）
page-term-ol-is = 値から3シグマを引いても判定域より上にあります。臭素とクロムがOLになることはありません。限度値は化合物に対するもので、XRFには化合物が見えないからです。
page-term-not-measured = 未測定
page-term-not-measured-is = この元素の値がファイルにないか、単位の分かる値がありません。不検出とは別のことです。
page-term-no-uncertainty = 不確かさなし
page-term-no-uncertainty-is = 数値はありますがシグマがないため、どこまで信じてよいか分かりません。未解決として扱います。
page-term-detection-limit = 検出下限（検出限界）
page-term-detection-limit-is = 分析装置が「ない」と区別できる最小の量です。通常は、ほとんど含まない試料でのばらつきの3倍です。
page-term-detection-too-high = 検出下限が高すぎる、または記載なし
page-term-detection-too-high-is = 何も見つかりませんでしたが、「限度値未満」を示せるほどには見えていません。測定時間を延ばすか、別の方法で測ってください。
page-term-not-capable = 能力不足
page-term-not-capable-is = 3シグマだけで判定域の下端に届くため、含まない試料でもBLと判定できません。シグマを小さくする必要があります。
page-term-not-applicable = 判定対象外
page-term-not-applicable-is = この材料中のこの元素について、規則に定めがありません（例：金属中の臭素）。
page-term-class = 材料区分
page-term-class-is = ポリマー、金属、複合材料、めっき品の別で、どの判定域を使うかが決まります。不明な場合はすべての区分で調べ、最も悪い結果を採ります。
page-term-homogeneous = 均質材料
page-term-homogeneous-is = ねじを外す、切る、研削する、削るといった操作で別々の材料に分けられない材料です。限度値は部品全体ではなく、その一つ一つに適用されます。
page-term-composite = 複合材料
page-term-composite-is = 実装基板のように、ビームの下に複数の材料があり、別々に測れないものです。判定域は広くなります。
page-term-plated = めっき・被覆
page-term-plated-is = 別の材料の上にある層です。ビームは両方を平均するため、スクリーニングでは層はXになります。
page-term-halogens = ハロゲン合計
page-term-halogens-is = 塩素と臭素の合計で、「ハロゲンフリー」の規則が求めるものです。指定した規則集がある場合にだけ、ロットを保留にします。
page-term-accept = 受入れ可
page-term-accept-is = 求められたものがすべて測定され、限度値未満で、裏付けもそろっています。言えるのは測定した範囲までです。
page-term-hold = 保留
page-term-hold-is = 未確定のもの、または不足しているものがあるため、ロットを待たせています。不合格ではなく、結果が出れば解消されます。
page-term-not-accept = 受入れ不可
page-term-not-accept-is = 少なくとも1つの材料が限度値を超え、それを対象とする適用除外がありません。
page-term-evidence = 裏付け
page-term-evidence-is = 受け入れる前に、測定のほかにそろえておくものです。点検、抜取り、材料の一覧などがあります。
page-term-trust = 信頼性
page-term-trust-is = 測定のときに分析装置が正しかったことを、点検が示しているかどうかです。結果の横に示され、結果を変えることはありません。
page-term-check = 点検用標準試料
page-term-check-is = 含有量の分かっている試料です。品物の前後に測り、分析装置が正しいことを示します。
page-term-blank = ブランク
page-term-blank-is = 何も検出されないはずの清浄な試料です。何か検出されれば、汚れか分析装置がすべての測定に上乗せしています。
page-term-certified = 認証値
page-term-certified-is = 点検用標準試料の含有量として認証書に書かれた値で、不確かさが付いています。
page-term-bracketed = 良好な点検の間
page-term-bracketed-is = 直前の点検と直後の点検がどちらも良好なとき、その測定は信頼できます。
page-term-chart = 管理図
page-term-chart-is = 点検測定を時間順に並べ、中心線と管理限界線を引いた図です。点検が不良になる前に、ずれの進み方が分かります。
page-term-plan = 抜取検査方式
page-term-plan-is = ロットの何個を測り、それで何が言えるかを決める規則です。見ていない個体のことは分からないままです。
page-term-acceptance-number = 合格判定個数
page-term-acceptance-number-is = 方式が許す不適合の個体の数です。規制物質では、表の値にかかわらず、ここでは0です。
page-term-exemption = 適用除外
page-term-exemption-is = 特定の用途に限り、期日まで物質の使用を認める法令の項目です。裏付けと2人目の確認を添えて、誰かが主張しなければなりません。
page-term-placing = 上市
page-term-placing-is = 製品が市場で初めて提供されることです。適用除外と期日のある限度値は、その日を基準にします。
page-term-category = 製品カテゴリー
page-term-category-is = 法令にある11の機器区分の1つです。適用除外の終わる日は区分によって異なります。
page-term-next-step = 次の手順
page-term-next-step-is = 未解決のものを決着させうる、最も手間の少ない方法です。長く測る、別の箇所を測る、分離して測る、試験所に出す、のいずれかです。
page-term-reference = 基準試験法（精密分析）
page-term-reference-is = 試料を化学的に分解し、規制物質そのものを測る試験所の方法です。
page-term-declaration = 適合宣言
page-term-declaration-is = 技術文書に基づいて製造者自身が行う、製品についての法的な表明です。スクリーニングは、せいぜいその文書の1つです。
page-term-decision-rule = 判定ルール
page-term-decision-rule-is = 値を限度値と比べるとき、不確かさをどう扱うかを決める規則です。ここでは方法の判定域がその規則です。
page-term-guard-band = ガードバンド
page-term-guard-band-is = 誤って「以内」とすることを減らすため、限度値から離しておく幅です。判定域にはすでに含まれています。
page-term-probability = 限度値以内の確率
page-term-probability-is = 不確かさが正しく漏れがないとして、真の値が限度値以内にある確率です。ここでは何も決めません。
page-term-margin = 余裕
page-term-margin-is = 値が判定域の近いほうの端から、自身のシグマの何倍離れているかです。どちら側でも数え、小さいほど別の結果に近くなります。
page-term-digest = ダイジェスト（SHA-256）
page-term-digest-is = 64桁で表したファイルの指紋です。1文字でも変われば別の値になり、内容は何も分かりません。
page-term-act = 操作
page-term-act-is = ここで設定し、答え、取り消したことです。すべてイニシャルとともに報告書に載り、測定が変えられることはありません。
page-term-book = 規則集
page-term-book-is = 限度値、判定域、適用除外を、出典と箇条とともに日付付きでまとめたものです。使ったものは報告書に記載されます。
page-term-caution = 注意
page-term-caution-is = ほかの元素の線など、測定を疑わしくするものです。結果は変えませんが、強い注意はロットを保留にします。

page-from-bands = IEC 62321-3-1:2013、スクリーニング限度値の表
page-from-scope = IEC 62321-3-1:2013、適用範囲
page-from-action = IEC 62321:2008、結果の評価、および6.5.4の性能試験
page-from-annex-ii = 指令2011/65/EU、附属書II
page-from-homogeneous = 指令2011/65/EU、第3条(20)（条の番号は記憶による）
page-from-categories = 指令2011/65/EU、附属書I
page-from-exemptions = 指令2011/65/EU、附属書IIIおよびIV。2人で署名することはこのプログラム独自の規則
page-from-placing = 指令2011/65/EU、第3条（記憶による）
page-from-declaration = 指令2011/65/EU、第13条（記憶による）、EN IEC 63000:2018
page-from-halogens = IEC 61249-2-21:2003（二次資料による）
page-from-detection = US EPA Method 6200、9.6
page-from-check = US EPA Method 6200、9.4
page-from-bracket = US EPA Method 6200、9.4に基づくこのプログラム独自の規則
page-from-score = ISO 13528
page-from-chart = ISO 7870-2
page-from-plan = MIL-STD-105E
page-from-zero = このプログラム独自の規則。法令に、許容される不適合の割合の定めはない
page-from-disposition = 語はISO 2859-1。そこに至る条件はこのプログラム独自の規則
page-from-decision = ISO/IEC 17025:2017、7.8.6.1、ILAC-G8:09/2019
page-from-guard = ILAC-G8:09/2019、4.1、JCGM 106:2012
page-from-probability = JCGM 106:2012、7
page-from-reference = IEC 62321-4からIEC 62321-8まで、およびIEC 62321-12
page-from-digest = FIPS 180-4（記憶による）
page-from-gum = JCGM 100:2008（記憶による）
page-from-own = このプログラム独自の語
page-from-habit = 一般の慣行、出典なし

page-ruler-heading = この図の見方
page-ruler-alt = 左から右へのびるレールです。限度値の周りに斜線の判定域があります。測定値の位置に下げ振りが下がり、左右にひげが出ています。
page-ruler-bob = 下げ振り：測定値
page-ruler-whiskers = ひげ：左右に3シグマずつ
page-ruler-band = 限度値の周りの判定域
page-ruler-left = 左：未満
page-ruler-right = 右：超過
page-ruler-rail = レール：mg/kg、右ほど多い
page-ruler-why = スクリーニングにとって限度値は線ではありません。周りの斜線の判定域では何も決めません。
page-ruler-below = 下げ振りもひげも判定域の左
page-ruler-undecided = どこかが判定域にかかる
page-ruler-over = 下げ振りもひげも判定域の右
page-ruler-others = 破線のレールで下げ振りなし：未測定。短いレールだけ：規則の対象外。横木のある柱：判定域のない限度値。破線：その側のどこか、または2本の縦線の間のどこか。

page-guide = 手引き
page-guide-close = 閉じる
page-guide-search = 手引きを検索
page-guide-found = { $n ->
    [0] 見つかりません。
   *[other] { $n }件見つかりました。
  }
page-guide-go = その場所へ移動
page-guide-words = 用語
page-guide-keys = キー操作
page-guide-tour = ひととおり案内
page-guide-bring = ファイルを取り込む
page-guide-bring-text =
    結果ファイルを選ぶか、ファイルやフォルダーをページのどこかにドロップしてください。CSV、TSV、テキストの表、ブック（XLSX、ODS）、それらのZIPを読み取ります。
    設定、列の対応付け、規則集、履歴、材料構成表には専用の欄があります。写真は結果と一緒に取り込めます。
    供給者は「出荷前に確かめる」から入ります。同じレビューを、顧客の規則集に照らした自己点検として行います。
    どこにも送信しません。ファイルは読むだけで、変更しません。
page-guide-columns = 列の読み取り方
page-guide-columns-text =
    どの行も、使用、点検、重複、除外、取込み不可のうち1つに分かれます。行数は合い、取込み不可の行には理由が示されます。
    各列は、見つけた意味の下に並びます。違っていれば別の意味を選んでください。ファイルはすぐ読み直されます。
    ファイルで分からないこと（単位、シグマの倍数、日付の順、材料区分）は上で尋ねます。答えるまでは厳しい側で読みます。推測はしません。
page-guide-trust = 測定は信頼できるか
page-guide-trust-text =
    カードごとに、裏付けの種類、その目的、不足しているもの、入力する場所が示されます。「不足」はロットを保留にします。
    点検測定には認証値が必要です。ないと何も示せません。2つの良好な点検の間にある測定が信頼できます。
    イニシャルは一度入れれば、すべての操作に付きます。どの操作も取り消せ、取消しも記録されます。
page-guide-ruler = ものさしの読み方
page-guide-ruler-text =
    下げ振りの位置を見ます。判定域の左なら未満、右なら超過、少しでもかかれば未確定です。
    どの印にも言葉が添えてあり、色は補助にすぎません。測定を開くと、結果の導き方が順に分かります。
    数値が足りないときは、未測定、不確かさなし、検出下限が高すぎる、能力不足、判定対象外のどれかを示します。どれも合格ではありません。
page-guide-materials = 材料、部品、ロット
page-guide-materials-text =
    限度値は均質材料ごとに適用されます。材料の中で最も悪い箇所を採り、箇所の間で平均しません。
    部品が限度値未満といえるのは、すべての材料がそういえるときだけです。材料は手で入力するか、材料構成表で渡してください。ロットは最も悪い部品で決まります。
    ロットの大きさと抜取検査方式で、測る個数が決まります。測った個体が1つでも超過してはいけません。
page-guide-exemptions = 適用除外
page-guide-exemptions-text =
    適用除外が自動的に適用されることはありません。材料ごとに主張し、裏付けを挙げ、2人目が署名します。
    その用途、カテゴリー、期日までに限って有効です。上市日とカテゴリーを入力してください。
    見つからなかった期日や、記憶によるだけの期日には、その旨が示されます。頼る前に確かめてください。
page-guide-halogens = ハロゲン
page-guide-halogens-text =
    塩素、臭素、その合計は常に計算します。「ハロゲン規則」で規則を指定したときだけ、ロットを保留にします。
    一方が不検出なら、合計は範囲になります。その上端が未満のときだけ、未満とします。
    先に表面を清掃してください。フラックス、塩、ラベルには塩素が含まれます。
page-guide-next = 次にすること
page-guide-next-text =
    未解決のものを、決着させる方法ごとに、悪いものから並べます。どの項目からも、その測定か、足りない欄へ移れます。
    長く測って役立つのは、判定域の端の外側だけです。必要な時間、またはいくら測っても無理なことを示します。
    試験所の結果は「試験所の結果」に入力します。依頼書、通知、ラベルは「書き残す」にあります。
page-guide-report = 報告書を作る
page-guide-report-text =
    誰が、どこで、いつを入力します。プログラムは時計を読みません。日付は入力したときだけ入ります。
    決める人には1ページ、記録には完全な報告書、データはCSV、ブック、JSONで取り出せます。報告書はページと別の言語にもできます。
    印刷したページに署名してください。署名の横のダイジェストが、紙とデータを結び付けます。
page-guide-prove = 報告書を検証する
page-guide-prove-text =
    報告書をページにドロップしてください。報告書が持つデータから計算し直し、違いをすべて示します。
    報告書だけなら、それ自身と一致することしか分かりません。元のファイルがあればデータがその内容であること、署名した紙のダイジェストがあれば署名された報告書であることが分かります。
page-guide-keep = 残すこと、何も残さないこと
page-guide-keep-text =
    作業が保存されているかは、ページの上部に示されます。そこを押すと、検査をファイルに保存できます。そのファイルを持つ人は誰でも読めます。
    暗号化した復元用コピーがこのブラウザーにあります。異常終了の後は、示されたコードでしか開けないので、書き留めてください。
    「このコンピューターに何も残さない」を選ぶと、コピーも記憶も残しません。借りたコンピューターではこれを選び、ダウンロードフォルダーも空にしてください。
page-guide-wrong = うまくいかないとき
page-guide-wrong-text =
    メッセージには、何が、どこで、なぜ起き、どうすればよいかが書かれ、閉じるまで残ります。ファイルが変わることはありません。
    プログラムが停止したときは、原因になったファイルを除き、ファイルと操作を引き継いで起動し直します。
    診断ファイルは、プログラムを直す人の手がかりになります。測定も名前も含みません。保存する前に中身を見られます。
page-guide-safety = 安全
page-guide-safety-text =
    分析装置は電離放射線を出します。決して人に向けず、試料を手で持って前にかざさず、スタンドや遮へいを使ってください。
    研削、削り、切断で出る粉じんには、鉛、カドミウム、クロムが含まれることがあります。マスクと手袋を着け、粉じんを吸引し、手を洗ってください。
    現場の規則と分析装置の書類に従ってください。このページはどちらも確認できません。
page-guide-law = 法令と資格
page-guide-law-text =
    多くの国では、X線分析装置は、訓練を受けた人または資格のある人が、届け出た場所でしか使えません。測る前に確かめてください。
    規則は国によって異なり、変わります。ここの規則集には日付と出典があります。自分に当てはまるものか確かめてください。
    スクリーニングは適合宣言ではなく、ここでの「受入れ可」も適合宣言ではありません。測った範囲で限度値を超えるものが見つからなかったことを示すだけです。

page-tour-offer = 初めての方へ。架空のデータで6か所を1分ほどで案内します。
page-tour-start = ひととおり案内
page-tour-not = 今はしない
page-tour-at = { $of }か所中{ $n }か所目
page-tour-next = 次へ
page-tour-back = 戻る
page-tour-leave = やめる
page-tour-end = 最初の画面に戻る
page-tour-none = このページには、見せられる納入例が入っていません。
page-tour-steps = 5つの問い
page-tour-steps-text = どの納入も、左から右へ5つの問いを通ります。数字は、確認を待つものがある場所を示します。この納入は架空です。
page-tour-came-in-text = ファイルのどの行も行き先は1つで、行数が合います。ファイルで分からなかったことは、下で尋ねます。
page-tour-trust-text = カードごとに裏付けの種類が1つです。「不足」とあるものは、入力されるまでロットを保留にします。
page-tour-says-text = ロットごとに、最も悪い理由から並びます。点線の付いた語には説明があります。指すか、タップしてください。
page-tour-next-stop-text = 未解決のものを、決着させる方法ごとにまとめています。ボタンを押すと、その場所へ移ります。
page-tour-write-text = 誰が何をレビューしたかを入力し、報告書を取り出します。「元に戻す」で、記録したことは何でも取り消せます。案内は以上です。

page-keys-heading = このページのキー操作
page-keys-what = 動作
page-keys-key = キー
page-keys-anywhere = どこでも
page-keys-table = 測定の表の中
page-keys-cards = カードと一覧の中
page-keys-photo = 写真の上
page-keys-single = CtrlやAltなしのキーを使う（{ $keys }）
page-keys-single-hint = 音声で操作する場合や、誤って押してしまう場合は、オフにしてください。
page-key-guide = 手引きを開く
page-key-keys = この一覧を表示
page-key-place = 「{ $place }」へ移動
page-key-next = 次にすることへ移動
page-key-filter = 表の検索欄へ移動
page-key-rows = 1行上または下へ
page-key-cells = 1セル横へ
page-key-heads = 見出しから次の見出しへ移動する
page-key-head-sort = この見出しで並べ替える
page-key-head-term = 見出しの意味を表示する
page-key-screens = 1画面上または下へ
page-key-ends = 先頭または末尾の行へ
page-key-open = 測定を開く
page-key-fold = グループを開く、閉じる
page-key-select = 行を選択
page-key-select-one = この行を選択、または外す
page-key-select-all = 表示中の行をすべて選択
page-key-copy = 選択したものを表計算用にコピー
page-key-select-none = 選択を解除
page-key-close = 開いているものを閉じる
page-key-take = 選んだものを記録
page-key-pick = 記録せずに一覧の値を順に移動
page-key-spot = 印を動かす（Shiftで細かく）
page-key-spot-take = 印を記録

page-diagnostic = 診断ファイル
page-diagnostic-save = 診断ファイルを保存
page-diagnostic-look = ファイルに入るのはこれだけです。名前、見出し、セル、測定した数値、入力した文字は入りません。何も送信しません。Plumblineを管理している人にファイルを渡してください。
page-diagnostic-text = 診断ファイルの内容
page-diagnostic-write = このファイルを保存

page-trouble-raw = 対応する人のための情報
page-trouble-crash-why = Plumbline自体に不具合があります。作成者の想定していない状況になりました。ファイルは元のままです。
page-trouble-crash-no-answer-why = 計算部分が5秒間応答しませんでした。コンピューターがとても忙しいか、メモリーが足りない可能性があります。
page-trouble-page-why = Plumbline自体に不具合があります。ファイルは元のままです。
page-trouble-engine-why = ブラウザーがこのページの計算部分を動かしませんでした。メモリーが足りないか、セキュリティ設定で止められている可能性があります。
page-trouble-gone-why = 選んだときの場所にありません。移動、名前の変更、削除があったか、USBメモリーが抜かれました。
page-trouble-locked-why = コンピューターがブラウザーに読取りを許していません。選んだ後に変更されたか、ほかのプログラムで開かれているか、USBメモリーが抜かれました。
page-trouble-reading-why = ブラウザーが読み取れませんでした。
page-trouble-not-text-why = 普通のテキストではない文字が含まれています。別の種類のファイルか、別の文字コードで保存された可能性があります。
page-trouble-not-text-todo = 設定、列の対応付け、規則集、履歴として書かれたファイルを選んでください。手で書いたものなら、UTF-8で保存してください。
page-keycap-enter = Enter
page-keycap-ctrl = Ctrl
page-keycap-space = スペース
page-keycap-escape = Esc
page-keycap-shift = Shift
page-keycap-pgup = Page Up
page-keycap-pgdn = Page Down
page-keycap-home = Home
page-keycap-end = End

page-step-ahead = ロットの見通しの表示
page-step-checks = 点検測定の表示
page-step-shelf = 規則集の一覧作成
page-step-explained = 規則集の説明
page-step-summary = 所見のとりまとめ
page-step-teach = 言語の読込み
page-step-speak = 言語の切替え
page-step-history = 履歴の読取り
page-step-bill = 材料構成表の読取り
