# Japanese: the papers that go out beside a report: request to a laboratory, notice to a supplier, labels

paper-end = { $number }の終わり
paper-invented = 教育訓練用の架空のデータです。この書類は、実在するものについては何も述べていません。送付せず、これに基づいて行動しないでください。
paper-determine_cr6 = Cr(VI)、六価クロム（スクリーニングで測ったのは全クロム）
paper-determine_pbb_pbde = PBB及びPBDE、それぞれ別に（スクリーニングで測ったのは全臭素）
paper-contact = 問合せ先
paper-capped = { $total }件のうち、最初の{ $shown }件を印字しています。すべてはfindings.jsonにあります。
paper-band = 判定域 { $low }～{ $high } mg/kg
paper-band_open = { $low } mg/kgから上は未確定
paper-band_detection = 判定域 検出下限～{ $high } mg/kg
paper-limit = 限度値 { $limit } mg/kg
paper-line = { $line }行目

## Self-check sheet of a supplier

paper-self_check = 出荷前の自己点検
paper-self_check-is = 供給者の自己点検です。同じ測定に下記の規則集を当てはめると、顧客の側で受入れ可、保留、受入れ不可のどれになるかを示します。適合宣言ではなく、顧客の決定でもありません。顧客は自らの検査によって決めます。
paper-self_check-full = これらの測定の報告書全体の番号は{ $number }です。report.htmlをこのシートとともに送るか、すぐ出せるようにしておいてください。顧客はこの番号で報告書を探し、確かめることができます。
paper-self_check-books = 当てはめた規則集
paper-self_check-books_given = ファイルとして渡されたものには、その旨を記しています。その限度値の責任は渡した人にあります。顧客の規則集かどうかを、ダイジェストを示して顧客に尋ねてください。
paper-self_check-books_built_in = 顧客の規則集は使われていません。下記はこのプログラムに付属する規則集です。顧客の規則集とは異なることがあります。顧客に求めて、出荷前にもう一度点検してください。
paper-self_check-whose = 出どころ
paper-self_check-given = ファイルとして渡されたもの
paper-self_check-built_in = このプログラムに付属
paper-self_check-would-accept = 何も見つからず
paper-self_check-would-hold = 保留となる
paper-self_check-would-not_accept = 受入れ不可となる
paper-self_check-group-accept = 保留の理由となるものは見つからず：{ $count }ロット
paper-self_check-group-accept-is = スクリーニングした物質については、これらの測定に、顧客の受入れを妨げるものは見つかりませんでした。これは保証ではありません。評価しなかったものは下に記しています。
paper-self_check-group-hold = 保留となる：出荷前に次のことをしてください。{ $count }ロット
paper-self_check-group-hold-is = 限度値内とも超過とも認められていないもの、超過していて適用除外の主張や疑義が未解決のもの、または判断に必要なものが足りないものがあります。それぞれに、何で決着するかを、役に立つ順に記しています。
paper-self_check-group-not_accept = 受入れ不可となる：このまま出荷しないでください。{ $count }ロット
paper-self_check-group-not_accept-is = 限度値を超えるものが見つかりました。ここに挙げたことが決着するまで、ロットを留め置いてください。
paper-self_check-noted = 記すだけのもの。この点検の設定では保留の理由になりませんが、顧客の設定ではなることがあります：
paper-self_check-settles = 決着させるもの
paper-self_check-sampling = 抜取検査：
paper-self_check-sampling_none = ロットの大きさと抜き取る個数が示されていないため、これらの測定は、測定した個体だけのものです。
paper-self_check-units = ロットは{ $size }個。各材料について求める個数：{ $take }個。
paper-self_check-claims_none = 適用除外は主張されていません。
paper-self_check-claim = 主張
paper-self_check-in_force = 上市日に有効か
paper-self_check-in_force_on = 有効（{ $day }）
paper-self_check-trust = 対応する点検による測定の内訳：良好な点検の間{ $ok }件、対象とする点検なし{ $none }件、良好な点検の間にない{ $not_bracketed }件、対応する点検が不良{ $failed }件。点検測定：{ $checks }件。
paper-self_check-signed = 署名する人は、これらがこれらのロットの測定であることだけを述べるもので、それ以上のことは述べません。
paper-self_check-checked = 点検者
paper-self_check-released = 責任者

## Request to a laboratory

paper-laboratory = 試験所への依頼書
paper-laboratory-is = 蛍光X線スクリーニングで未解決のもの、または限度値超過とされたものについて、測定を試験所に依頼するものです。発注書ではなく、試験所の結果は含みません。
paper-samples = 試料
paper-samples_none = 試験所に送るものはありません。
paper-samples_order = { $count ->
    [1] 試料は1点です。
   *[other] 試料は{ $count }点で、急ぐものから順に並べています：保留を解消する期限の順、次に、受入れ不可のロット、保留のロットの順。
}
paper-sample = 試料 { $number } / { $total }
paper-class = 材料区分
paper-needed_by = 必要な期日
paper-piece = 測定した個体
paper-amount = 送付する量、付けた表示
paper-of_id = 試料
paper-of_unit = 個体
paper-of_spot = 測定箇所
paper-determine = 測定対象
paper-by_method = 基準試験法（精密分析）
paper-no_method = 規則集に方法が示されていません。試験所が提案してください。
paper-why = 理由
paper-asked_back = 試験所に記載を求める事項
paper-back-result = 送付したままの材料についての結果。複数の材料の混合物についてのものではないこと。
paper-back-unit = その単位。均質材料についてのmg/kg、または方法に定めがある場合は皮膜の面積当たりの量。
paper-back-u = その拡張不確かさU。
paper-back-k = その不確かさの包含係数k。
paper-back-lod = 検出下限。
paper-back-loq = 定量下限。
paper-back-method = 方法（部と版を含む）と、そこから外れた点。
paper-back-date = 分析の日付と、試験所の報告書の番号。
paper-fill-result = 結果
paper-fill-unit = 単位
paper-fill-u = U
paper-fill-k = k
paper-fill-lod = LOD
paper-fill-loq = LOQ
paper-fill-method = 方法、版
paper-fill-date = 日付、報告書
paper-safety = 安全
paper-safety_text = 試料には、鉛、カドミウム、水銀、クロムまたは臭素が、法定の限度値を超えて含まれているおそれがあります。切断や粉砕は、必ず換気のある所で行ってください。
paper-custody = 受渡しの記録
paper-custody_text = 受け渡す人がそれぞれ1行ずつ記入してください。状態の欄には、封印が破れていないか、包装に損傷がないかを書いてください。
paper-custody-number = 番号
paper-custody-by = 渡した人
paper-custody-to = 受け取った人
paper-custody-when = 日時
paper-custody-seal = 封印番号
paper-custody-condition = 状態

## Notice to a supplier

paper-notice = 供給者への通知
paper-notice-is = 供給者のロットについて、スクリーニングで分かったことと、供給者にお願いすることを知らせるものです。
paper-to = 宛先
paper-reply_by = 回答期限
paper-notice_facts = 下記のロットを、受入検査で蛍光X線によりスクリーニングしました。この通知は、測定の結果を述べるものです。責任を追及するものではなく、責任の所在については何も判断していません。
paper-notice_undecided = 保留のものは未確定です。限度値内とも超過とも認められていないか、どちらかを示すのに必要なものがまだ足りていません。
paper-lot_counts = 測定{ $readings }件、ロットの材料：{ $materials }
paper-found = 分かったこと
paper-substance = 物質
paper-worst = 最も悪い測定のうち最も高い値と、比べた判定域または限度値
paper-reasons = ロットをまだ受け入れていない理由
paper-own_reasons = ほかに、検査する側が自ら解決すべき理由もあります。それについてお願いすることはありません。
paper-asked = お願いすること
paper-asked_nothing = 今のところありません。この通知はお知らせです。
paper-ask-contain = このロットのうち手元にまだあるものを出荷せずに留め置き、同じ材料を含むおそれのあるほかの納入品をお知らせください。
paper-ask-laboratory = 上記の物質について、基準試験法による試験所の結果を、その不確かさと試験所の報告書の番号とともにお送りください。ない場合は、その旨をお知らせください。
paper-ask-materials = 部品の均質材料の一覧を、皮膜も含め、それぞれの区分と厚さとともにお送りください。
paper-ask-exemption = どの適用除外によるものか、その項目と条文を示し、適用されることの裏付けをお送りください。
paper-ask-change = 材料、配合または再委託先を変更したかどうか、変更した場合は、いつから、どのロットについてかをお知らせください。
paper-ask-correct = 原因が分かり次第、その原因と、再発を防ぐために行うことをお知らせください。
paper-ask-replace = ロットをいつ交換できるか、また、このロットをどうするかをお知らせください。
paper-answer = ご回答
paper-answer_text = 上記の報告書番号を示して、書面でご回答ください。当方の誤りにお気付きの場合は、お知らせください。
paper-answer_by = 回答者
paper-answer_date = 日付
paper-answer_signature = 署名

## Labels

paper-labels = 留め置くロットのラベル
paper-labels-is = 保留または受入れ不可のロットごとに1枚のラベルです。破線に沿って切ってください。ラベルは、そこに記された報告書の時点でのロットの状態を示します。後の報告書があれば、そちらが優先します。
paper-labels_none = 保留または受入れ不可のロットはありません。
paper-word-hold = 保留
paper-word-not_accept = 受入れ不可
paper-label_more_parts = ほか{ $count }点
paper-label_more_reasons = ほか{ $count }件の理由が報告書にあります。
paper-label_lift_two = 解除は、新しい報告書または2人のイニシャルによる場合に限ります。
paper-label_lift_result = 解除は、上に挙げた点が決着した新しい報告書による場合に限ります。

## Acts

act-reply_by = 供給者に求める回答の期限 { $value }
act-requested_action = 供給者にお願いすること：{ $value }
act-contact = 問合せ先 { $value }

## The workbook

workbook-lots = ロット
workbook-materials = 材料
workbook-readings = 測定
workbook-checks = 点検
workbook-about = このブックについて
workbook-program = プログラム
workbook-rule_book = 規則集
workbook-readings_all = 全{ $count }件の測定が、測定のシートにあります。
workbook-readings_capped = { $total }件の測定のうち、最初の{ $shown }件が測定のシートにあります。すべてはfindings.csvにあります。
workbook-cut = 1つのセルに入る長さを超え、途中で切った文字列：{ $count }件。全体はfindings.jsonにあります。
workbook-columns = 列の名前と意味は、findings.csvおよびfindings.jsonと同じです。量は質量分率（mg/kg）、不確かさは1シグマです。

## Command line

cli-no_notice = 保留または受入れ不可のロットのうち、{ $count }ロットに供給者の記載がないため、それについての通知はありません。
