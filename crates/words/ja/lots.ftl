# Japanese: trust, sampling, lots and laboratories

## Trust: checks and the readings between them

lot-reason-trust_failed = { $count }件の測定に対応する点検が不良でした：{ $about }。これらの測定は信頼できません。
    .remedy = 分析装置を正し、良好になるまで点検用標準試料を測定し、その後、2つの良好な点検の間でこれらを測定し直し、それからここに挙げた測定を、理由を付けて除外してください。
lot-reason-trust_not_bracketed = { $count }件の測定が、2つの良好な点検の間にありません：{ $about }。測定は、点検条件が求める良好な点検があるときだけ信頼します。
    .remedy = その後何も変わっていなければ、今、点検用標準試料を測定してください。または、2つの良好な点検の間で測定し直してから、ここに挙げた測定を、理由を付けて除外してください。
lot-reason-trust_none = { $count ->
        [0] 点検用標準試料もブランクもないため、分析装置が正しかったことを示すものがありません。
       *[other] { $of }件の測定のうち{ $count }件で、{ $about }を対象とする点検がありません。合う点検用標準試料が測定されていません：装置 { $instrument ->
            [none] 記載なし
           *[other] { $instrument }
        }、測定モード { $mode ->
            [none] 記載なし
           *[other] { $mode }
        }、区分 { $class_name }。
    }
    .nothing = 点検測定はありますが、これらの測定を対象とするものがありません。同じファイルにあるか時刻の分かる、同じ装置、測定モード、区分の点検用標準試料の測定がありません。区分の分からないものは、どの測定の点検にもなりません。
    .remedy = 同じ区分{ $class ->
        [none] { "" }
        [unknown] （先に区分の指定が必要）
       *[other] （{ $class_name }）
    }の点検用標準試料を、{ $instrument ->
        [none] { "" }
       *[other] 装置{ $instrument }、
    }{ $mode ->
        [none] { "" }
       *[other] 測定モード{ $mode }で、
    }これらの測定の前後に測定してください。点検は、同じファイルにあるか時刻の分かるときだけ数えます。区分の分からない点検は、どの測定の点検にもなりません。
lot-reason-trust_not_certified = 合う点検用標準試料は測定されていますが、その{ $about }の認証値が示されていません。{ $of }件の測定のうち{ $count }件で、{ $about }について分析装置が正しかったことを示すものがありません。
    .expired = 点検用標準試料{ $sample }は測定されていますが、その認証書{ $certificate }の期限は{ $cause }でした。{ $of }件の測定のうち{ $count }件で、{ $about }について分析装置が正しかったことを示すものがありません。
    .open = 点検用標準試料{ $sample }は測定されていますが（認証書{ $certificate }）、{ $of }件の測定のうち{ $count }件で、{ $about }について何も示していません：{ $cause }。
    .remedy = 点検用標準試料の認証書にある認証値を入力してください。認証書に値がない場合は、値のある点検用標準試料を測定してください。
    .expired_remedy = 点検用標準試料{ $sample }について、測定日に有効な認証書を入力してください。認証書の期限が過ぎている限り、測定し直しても解決しません。
    .open_remedy = 点検用標準試料{ $sample }の測定に欠けているもの（不確かさ、単位または日付）をファイルか設定で示してください。同じように測定し直しても、それ以上は分かりません。
lot-reason-trust_not_judged = { $count }件の点検測定が別に置かれ、判定できませんでした（点検の一覧を参照）。分析装置が正しかったことを示すものがありません。
    .alone = { $about }が未確定の測定{ $count }件が、名前または印だけで点検とされています。試料の含有量を示す認証書がなく、同じファイルのほかの測定にはロットも部品も記載がないため、このロットの製品かもしれません。
    .remedy = 点検用標準試料の認証値を入力してください。ファイルに製品のロットまたは部品の記載があれば、どの測定が製品でないかが分かります。
lot-reason-check_times_differ = { $count }件の測定時間が、同じ区分の点検より長いか、その半分より短くなっています。点検が、それについて示せるはずのことを示しきれていません。
    .remedy = 点検は製品と同じ時間、測定してください。
lot-reason-checks_far_apart = { $count }件の測定で、良好な点検が1日を超えて離れています：{ $about }。US EPA Method 6200（9.4）は、作業日ごとに始めと終わりの点検を求めています。
    .remedy = 同じ日の良好な点検の間でこれらを測定し直し、それからここに挙げた測定を、理由を付けて除外してください。
lot-reason-mark_not_taken = { $count }件の測定に点検という名前または印が付いていますが、製品のままとします。それによって測定がロットや部品から外れることはなく、試料の認証書がない限り、限度値超過の測定が外れることもありません。
    .remedy = ファイルでは点検測定のロットと部品を空のままにし、点検用標準試料の認証書を入力してください。
evidence-short-trust_failed = 不良な点検に対応する測定のやり直し
evidence-short-trust_not_bracketed = 2つの良好な点検の間での測定
evidence-short-trust_none = 点検測定
evidence-short-trust_not_certified = 点検用標準試料の認証値
evidence-short-trust_not_judged = 判定された点検測定
evidence-short-check_times_differ = 点検の測定時間
evidence-short-checks_far_apart = 同じ日の点検
evidence-short-mark_not_taken = 採らなかった印
trust-ok = 良好な点検の間
trust-none = 対象とする点検なし
trust-not_bracketed = 良好な点検の間にない
trust-failed = 対応する点検が不良
trust-aside = 人が除外
check-kind-check = 点検用標準試料
check-kind-blank = ブランク
check-verdict-good = 良好
check-verdict-warning = 良好、警告あり（ζスコアの絶対値が2を超える）
check-verdict-failed = 不良
check-verdict-no_uncertainty = 判定せず：不確かさなし
check-verdict-not_measured = 未測定
check-verdict-not_seen = 判定せず：不検出、または不確かさが大きく、認証値があっても全く見えない可能性がある
check-verdict-unit_unknown = 判定せず：単位の記載なし
check-verdict-expired = 採らない：認証書の期限切れ
check-verdict-day_unknown = 採らない：認証書に期限があり、測定の日付が分からない
check-verdict-no_certificate = 認証値なし
check-scores = ζスコア { $zeta }、Enスコア { $en }
report-trust = 信頼性
report-trust_text = { $bracket ->
        [before] 良好な点検の後
        [per_shift] 良好な点検があり、不良な点検がない勤務シフト
       *[before_and_after] 2つの良好な点検の間
    }の測定だけを、点検の元素、装置、測定モード、区分ごとに信頼します。点検用標準試料を良好とするのは、ISO 13528による{ $rule ->
        [en] Enスコア（絶対値が1以下）
       *[zeta] ζスコア（絶対値が3以下。2を超えると警告）
    }によります。誰も倍数を示していない誤差は、ここでは3シグマとみなします。ブランクは、何も見つからないとき、すなわち3シグマ以下か検出下限未満のときに良好とします。不良だった標準試料は、その標準試料自身が良好となるまで不良のままです。ブランクは、清浄なブランクによってだけ良好に戻ります。点検の不良は常にロットを保留にします。点検の不足も、下の設定で「保留にせず、印字する」とされない限り、ロットを保留にします。良好な点検どうしが1日を超えて離れている場合（US EPA Method 6200、9.4）も同じです。ロットの大きさと抜取検査方式：各ロットの理由を参照。
report-trust_none = 点検測定は届いていません。
report-trust_by_rows = { $names }：読み取れる日付と時刻のない測定があるため、このファイルの中に限り、行の順序を時刻の順序の代わりとします。
report-trust_one_stream = 装置も測定モードも記載のない点検があります。同じく記載のない測定とともに、1台の装置の1つの測定モードとみなします。
report-trust_capped = { $total }件の点検測定のうち、最初の{ $shown }件を印字しています。すべてはfindings.jsonにあります。
report-trust_sample = 点検
report-trust_element = 元素
report-trust_measured = 測定値
report-trust_certified = 認証値、U
report-trust_bias = かたより
report-trust_recovery = 回収率、%
report-trust_zeta = ζスコア
report-trust_en = Enスコア
report-trust_verdict = 判定
report-trust_readings = 測定

## What a person says

target-lot_material = { $supplier }のロット{ $lot }、部品{ $part }の材料{ $material }
target-reading = { $name }の{ $line }行目の測定

act-tube_anode = X線管の陽極：{ $value }
act-limit_answer = { $book }の限度値{ $row }：{ $answer ->
        [yes] 適用される
       *[no] 適用されない
    }
act-certificate = 点検用標準試料{ $sample }：{ $element } { $value }、U { $u }（k = { $k }）、認証書{ $id }、{ $expires ->
        [none] 期限の記載なし
       *[other] 有効期限{ $expires }
    }
act-blank_samples = ブランク試料：{ $value }
act-bracket = 測定を信頼する条件：{ $value ->
        [before] 良好な点検の後
        [per_shift] 良好な点検があり、不良な点検がない勤務シフト
       *[before_and_after] 2つの良好な点検の間
    }
act-shift_starts = 勤務シフトの開始時刻：{ $value }
act-check_rule = 点検測定を良好とする条件：{ $value ->
        [en] Enスコア（絶対値が1以下）
       *[zeta] ζスコア（絶対値が3以下）
    }
act-control_chart = 管理図：管理限界は{ $limits ->
        [baseline] 最初の点から
        [certificate] 認証書から
       *[other] 最初の点から、なければ認証書から
    }、基準とする点は{ $points ->
        [none] 20
       *[other] { $points }
    }点、{ $rules ->
        [nelson] Nelsonのルール
       *[other] Western Electricのルール
    }
act-sampling_plan = 抜取検査方式：{ $rule ->
        [zero_acceptance] 合格判定個数0、信頼水準{ $confidence } %、検出すべき不適合{ $share } %
       *[single] MIL-STD-105Eの1回抜取り、検査水準{ $level ->
            [none] II
           *[other] { $level }
        }、{ $severity ->
            [none] なみ検査
            [normal] なみ検査
            [tightened] きつい検査
            [reduced] ゆるい検査
           *[other] { $severity }
        }、AQL { $aql }
    }{ $seed ->
        [none] { "" }
       *[other] 、シード{ $seed }による乱数の一覧
    }
act-mark = 次のものとみなす：{ $value }
act-set_aside = 除外：{ $value }
act-laboratory = 試験所の結果：{ $analyte } { $value }{ $u ->
        [none] { "" }
       *[other] 、U { $u }（k = { $k }）
    }。方法：{ $method ->
        [none] 記載なし
       *[other] { $method }
    }。試験所：{ $laboratory ->
        [none] 記載なし
       *[other] { $laboratory }
    }。報告書：{ $report ->
        [none] 記載なし
       *[other] { $report }
    }。日付：{ $date ->
        [none] 記載なし
       *[other] { $date }
    }
act-lift = 保留を解除：{ $reason }{ $about ->
        [none] { "" }
       *[other] { " " }{ $about }
    }。理由：{ $why }。1人目：{ $by ->
        [none] なし
       *[other] { $by }
    }。2人目：{ $second ->
        [none] なし
       *[other] { $second }
    }
act-hold_ends = 保留を解消する人：{ $who ->
        [none] 記載なし
       *[other] { $who }
    }。期限：{ $until ->
        [none] 定めなし
       *[other] { $until }
    }。隔離：{ $quarantined ->
        [none] 記載なし
       *[other] { $quarantined }個
    }{ $place ->
        [none] { "" }
       *[other] 、{ $place }
    }

## The history file

problem-history_version = 「{ $found }」は、ここで読み取る履歴の名前ではありません。
    .remedy = このプログラムが書いた履歴を選んでください。最初の行は{ $expected }です。これより新しい名前は、新しいプログラムが書いたものです。
problem-history_line = 履歴のこの行は、途中で切れているか、余分なものがあります：{ $found }
    .remedy = 履歴の完全なコピーを使ってください。1行が1件の記録で、項目の間はタブです。
## Change of material

lot-reason-material_changed = { $of ->
        [0] 「{ $about }」は、受け入れたロットと区分が異なります。承認された材料ではありません。
       *[other] 「{ $about }」で比べた{ $of }元素のうち{ $count }元素が、受け入れたロットの値から離れました。承認された材料ではありません。
    }
    .remedy = 何が変わったかを供給者に尋ね、使う前に材料の承認を取り直してください。
lot-reason-change_not_compared = 「{ $about }」を、以前に受け入れたロットと比べていません：{ $of ->
        [0] 供給者、部品または区分が分からないか、比べられる元素がありません
       *[other] 必要な{ $of }ロットのうち、履歴にあるのは{ $count }ロットです
    }。
    .remedy = この供給者、部品、材料の、受け入れたロットが5つ以上ある履歴を入力してください。
evidence-short-material_changed = 変わった材料の新たな承認
evidence-short-change_not_compared = 比べるのに十分な以前のロット
## Sampling

lot-reason-lot_size_too_small = { $of }個とされているロットで、{ $count }個が測定されました。どちらかの数が誤っています。
    .remedy = ロットの大きさ、または個体の名前を直してください。
lot-reason-lot_size_missing = 抜取検査方式はありますが、ロットの大きさがないため、何個求められるのか誰にも分かりません。
    .remedy = ロットの大きさを入力してください。
evidence-short-lot_size_too_small = 測定した個数に合うロットの大きさ
evidence-short-lot_size_missing = ロットの大きさ
sampling-title = 抜取検査方式：
sampling-plan_single = MIL-STD-105Eの1回抜取り、検査水準{ $level }、{ $severity ->
        [normal] なみ検査
        [tightened] きつい検査
        [reduced] ゆるい検査
       *[other] { $severity }
    }、AQL { $aql }（表{ $table }）{ $letter ->
        [none] { "" }
       *[other] 、サンプル文字{ $letter }
    }{ $led ->
        [same] { "" }
       *[other] （矢印の先は文字{ $led }）
    }：{ $whole ->
        [yes] ロットの{ $size }個すべてを抜き取ります。
       *[no] { $size }個から{ $n }個を抜き取ります。
    }
sampling-plan_zero = 合格判定個数0：{ $whole ->
        [yes] ロットの{ $size }個すべてを抜き取ります。それより少ないと、不適合{ $share } %（このロットでは{ $bad }個）に対して信頼水準{ $confidence } %が得られません。
       *[no] { $size }個から{ $n }個を抜き取ります。その中に不適合がなければ、信頼水準{ $confidence } %で、ロットの不適合が{ $bad }個（{ $share } %）より少ないことが示されます。
    }
sampling-table = 表の数値（ほかの特性だけに用いる）：{ $ac }個以下で合格、{ $re }個以上で不合格。規制物質については、どの抜取検査方式でも合格判定個数は0です。
sampling-units = ロットは{ $size }個。各材料について求める個数：{ $take }個。抜取りが最も少ない材料で測定した個数：{ $measured }個。調べた個体{ $units }個のうち、スクリーニングで適合{ $conforming }、未確定{ $undecided }、超過{ $over }。未確定の個体を適合に数えることは決してありません。
sampling-list = 抜き取る個体。1から{ $size }までの中から無作為に選んだもの（SplitMix64、シード{ $seed }、{ $n }個。置かれた順に個体へ番号を付ければ、誰でも同じ一覧を作り直せます）：
sampling-list_capped = 抜き取る{ $total }個のうち、最初の{ $shown }個を印字しています。すべてはfindings.jsonにあります。
sampling-risk = 大きさ{ $size }のロットから無作為に{ $n }個を抜き取り、超過を1個も認めない場合の、この方式のリスク（超幾何分布）：不適合が{ $at95 }個以下なら95 %以上、{ $at50 }個以下なら50 %以上、{ $at10 }個以下なら10 %以上の確率で受け入れられます。
sampling-risk_none = ロットのすべての個体を抜き取るため、抜取りのリスクは残りません。残るのは測定のリスクだけです。
sampling-risk_process = ロットの元となった工程、またはサンプルよりはるかに大きいロットについて（二項分布）：同じ確率となるのは、不適合が{ $at95 } %、{ $at50 } %、{ $at10 } %のときです。
sampling-zero_process = 無限に大きいロットでは、同じ信頼水準に{ $n }個が必要です。
sampling-at_most = 個体を無作為に抜き取っていれば、信頼水準{ $confidence } %で、{ $size }個のうち不適合は最大{ $most }個です。適合が示されなかった個体は、すべて不適合に数えています。
sampling-isolated = なみ検査、きつい検査、ゆるい検査とその切替えルールは、連続したロットのためのものです。単独のロットには適用されません（孤立ロットについてはISO 2859-2）。
sampling-proves = 抜取検査方式が示すのはリスクだけで、それ以上のものではありません。法令は均質材料ごとに定められ、AQLを認めておらず、測定していない個体については、どの1個についても何も示されません。
sampling-curve = 大きさ{ $size }のロットから{ $n }個を抜き取るときに、受け入れられる確率
sampling-curve_across = ロット中の不適合の個数
sampling-curve_up = 受け入れられる確率
sampling-curve_zero = 超過0個（規制物質）
sampling-curve_table = 表、{ $ac }個以下で合格
## Control charts

report-charts = 点検測定の推移
report-charts_text = 装置、測定モード、点検用試料、元素ごとに1枚の管理図です。測定を判定することはなく、ここでは何も決めません。個々の点検がまだ良好なうちに、ずれやドリフトを示します。塗りつぶした丸は今回の検査の測定、輪は以前の測定、番号付きのひし形はシグナルで、図の下の同じ番号のところに説明があります。
report-charts_capped = { $total }枚の図のうち、示すことのあるものから順に、最初の{ $shown }枚を印字しています。すべてはfindings.jsonにあります。
report-charts_others = ほか{ $count }枚の図は、その試料が今回の検査で測定されなかったため、履歴だけによるものです。findings.jsonにあります。
report-signals_capped = { $total }件のシグナルのうち、最初の{ $shown }件を挙げています。すべてはfindings.jsonにあります。
report-history = 入力された履歴：点検測定の数値{ $checks }個、ロットの記録{ $records }件。SHA-256：
report-history_none = 履歴は入力されていません。管理図は今回の検査だけを示します。

chart-name = { $sample }（{ $class }）中の{ $element }、装置{ $instrument }
chart-values = 値、mg/kg
chart-ranges = 移動範囲、mg/kg
chart-upper = 上側管理限界 { $value }
chart-centre = 中心線 { $value }
chart-lower = 下側管理限界 { $value }
chart-largest = 最大 { $value }
chart-smallest = 最小 { $value }
chart-baseline = 基準：{ $points }点
chart-no_time = 時刻の記載なし
chart-limits-baseline = 中心{ $centre } mg/kg、管理限界{ $lower }～{ $upper } mg/kg（両側に3シグマ、シグマ{ $sigma }）：最初の{ $points }点の平均と、平均移動範囲を1.128で割ったものから（ISO 7870-2）。
chart-limits-certificate = 中心{ $centre } mg/kg、管理限界{ $lower }～{ $upper } mg/kg（両側に3シグマ）：認証書から。シグマ{ $sigma }は、認証書の不確かさと測定の繰返し性（{ $from ->
        [site_table] 事業所の表から
       *[stated] 測定に記載されたとおり
    }）を合わせたものです。
chart-none-too_few_points = 管理限界なし：{ $points }点しかなく、基準には{ $needed }点必要です。装置が管理状態にあるかどうかは分かりません。
chart-none-no_spread = 管理限界なし：基準の点がすべて同じです。装置が管理状態にあるかどうかは分かりません。
chart-none-no_certificate = 管理限界なし：認証書から求める設定ですが、最も新しい点の日に有効で、この元素を記載した認証書がありません。装置が管理状態にあるかどうかは分かりません。
chart-none-no_repeatability = 管理限界なし：認証書から求める設定ですが、測定の繰返し性が、事業所の表にも、すべての測定にも示されているわけではありません。装置が管理状態にあるかどうかは分かりません。
chart-rules-western_electric = Western Electricのルール（NIST/SEMATECH e-Handbook of Statistical Methods, 6.3）
chart-rules-nelson = Nelsonのルール（Journal of Quality Technology 16, 1984）
chart-no_signal = { $points }点に、{ $rules }によるシグナルはありません。
chart-signals = { $points }点のうち{ $count }か所に、{ $rules }によるシグナルがあります：
chart-signal_at = { $first }、{ $value } mg/kg：{ $codes }。
chart-signal_run = { $first }から{ $last }までの{ $count }点、最初は{ $value } mg/kg：{ $codes }。
chart-drift = 値は1日当たり{ $slope } mg/kgドリフトしています（標準不確かさ{ $sigma }、{ $span }日間の{ $n }点、95 %、t { $t }）。30日間で値の{ $percent } %に当たります。
chart-drift_short = 値は1日当たり{ $slope } mg/kgドリフトしています（標準不確かさ{ $sigma }、{ $span }日間の{ $n }点、95 %、t { $t }）。1日に満たない期間からは、1か月のことは何もいえません。
chart-no_drift = ドリフトは見られません：1日当たり{ $slope } mg/kg、標準不確かさ{ $sigma }（{ $span }日間の{ $n }点、95 %、t { $t }）。
chart-drift_unknown = ドリフトは示せません。2つ以上の時刻での測定が{ $n }件必要です。
chart-without_time = { $count }件の測定に時刻の記載がなく、順序に入れられません。
chart-not_drawn = 新しい点を描いています。以前の{ $count }点は描いていません。

signal-beyond_3s = 3シグマの外
signal-two_of_three_beyond_2s = 3点中2点が同じ側で2シグマの外
signal-four_of_five_beyond_1s = 5点中4点が同じ側で1シグマの外
signal-eight_on_one_side = 中心の同じ側に8点連続
signal-nine_on_one_side = 中心の同じ側に9点連続
signal-six_rising_or_falling = 6点連続で上昇または下降
signal-fourteen_alternating = 14点が交互に上下
signal-fifteen_within_1s = 15点連続で1シグマ以内。この管理限界にしては良すぎる
signal-eight_none_within_1s = 8点が両側にあり、1シグマ以内の点がない
signal-moving_range_beyond = 前の点からの跳びが移動範囲の管理限界を超える
change-changed = 受け入れた{ $lots }ロットに照らすと、これは承認された材料ではありません（{ $elements }元素を比較）。
change-other_class = これは承認された材料ではありません。受け入れた{ $lots }ロットは{ $class }です。
change-not_changed = 受け入れた{ $lots }ロットから離れた元素はありません（{ $elements }元素を比較）。同じ材料であることの証明ではありません。
change-too_few = 比べるには少なすぎます：この供給者、部品、材料で受け入れたロットは、履歴に{ $lots }ロットです。{ $fewest }ロット必要です。
change-not_comparable = 受け入れたロットと比べていません：供給者、部品または区分が分からないか、比べられる元素がありません。
change-moved = { $element }：{ $from }から{ $to } mg/kgへ（{ $factor }倍）、ばらつきの{ $spreads }倍離れ、許容は{ $allowed }倍。
change-not_measured = 受け入れたロットの大半にあり、今回は未測定：{ $list }。
report-change = 材料の変化
report-change_text = 1 kg中の残りすべてに対する各元素の割合を、履歴にある同じ供給者、部品、材料、区分の受け入れたロットと比べます。その中心は中央値で、ばらつきは最も離れた5分の1を除いて求めます。変わっていないロットのうち、変わったとされるのは、全元素を合わせて最大1 %です（正規分布のばらつきについてのシミュレーション。この率はこのプログラム独自の選択）。不検出のものは検出下限未満のどこにあるか分からないため、それを理由に変化とすることは決してありません。ロットが少ないと、大きな変化しか分かりません。
report-change_says = 受け入れたロットとの比較
report-change_capped = { $total }件のうち、最初の{ $shown }件を印字しています。すべてはfindings.jsonにあります。

## Suppliers

supplier-next = 次のロット：{ $severity ->
        [normal] なみ検査
        [tightened] きつい検査
        [reduced] ゆるい検査
       *[none] 供給者が改善するまで検査を中止
    }（MIL-STD-105Eの切替えルール。日付があり決着した{ $lots }ロットによる）。
supplier-may_reduce = 10ロット連続で受け入れられました。生産が安定し、決定権のある人が認めれば、ゆるい検査を求めることができます（記憶による）。
supplier-no_series = 供給者と部品がなければ、連続したロットになりません。
supplier-near_miss = { $substance }は、{ $lots }ロットで、限度値未満ではあるものの余裕が1シグマより小さくなっています。最も近いものは端から{ $nearest }シグマです。
supplier-trend = { $material }の{ $element }が、{ $lots }ロットにわたり1ロット当たり{ $percent } %動いています：最初は{ $first } mg/kg、最後は{ $last } mg/kg。
supplier-laboratory-over_was_within = { $class }：スクリーニングで超過、試験所で限度値内が{ $count }件（偽陽性）。
supplier-laboratory-below_was_over = { $class }：スクリーニングで未満、試験所で超過が{ $count }件（偽陰性）。
supplier-laboratory-open_was_within = { $class }：スクリーニングで未確定、試験所で限度値内が{ $count }件。
supplier-laboratory-open_was_over = { $class }：スクリーニングで未確定、試験所で超過が{ $count }件。
supplier-laboratory-agreed = { $class }：試験所が裏付けたものが{ $count }件。
supplier-laboratory-open = { $class }：試験所の結果では何も決着しないもの、または判定されていないものが{ $count }件。
supplier-open_holds = 保留中：{ $list }。
supplier-without_day = { $count }ロットに日付がなく、一連のロットと傾向には含めていません。
report-suppliers = 供給者と部品
report-suppliers_text = 今回の検査の部品について、履歴と今回のすべてのロットを通して見たものです。両方にあるロットは、最も新しい日付のものとして1回だけ数えます。これらはすべて示すだけで、何も決めません。履歴が良くても、ロットが良くなることはありません。傾向とは、ロットの順に対数に当てはめた直線で、見たものすべてを通して偶然に生じる場合が5 %より少ないものです。
report-suppliers_known = 分かっていること
report-suppliers_capped = { $total }件のうち、最初の{ $shown }件を印字しています。すべてはfindings.jsonにあります。
## What laboratories found

lot-reason-lab_over = 試験所：{ $analyte } { $value }は{ $limit } mg/kgを超過しています（方法{ $method ->
        [none] 記載なし
       *[other] { $method }
    }、{ $laboratory ->
        [none] 試験所の記載なし
       *[other] { $laboratory }
    }、報告書{ $report ->
        [none] 記載なし
       *[other] { $report }
    }、{ $date ->
        [none] 日付の記載なし
       *[other] { $date }
    }）。スクリーニングでは{ $screen }でした。{ $effect ->
        [accept] 主張された適用除外がこれを対象としています。
        [hold] 限度値が適用されるかどうか、または適用除外がこれを対象とするかどうかは、未解決です。
       *[other] { "" }
    }
    .remedy = ロットを隔離してください。これを変えられるのは、その数値が試験所の値に及ぶ有効な適用除外だけです。
lot-reason-lab_open = 試験所：{ $analyte } { $value }は、{ $limit } mg/kg以内とも超過とも示していません（方法{ $method ->
        [none] 記載なし
       *[other] { $method }
    }、報告書{ $report ->
        [none] 記載なし
       *[other] { $report }
    }）。スクリーニングでは{ $screen }でした。{ $effect ->
        [accept] ほかの結果がこれを決着させています。
       *[other] { "" }
    }
    .remedy = 試験所に、より小さい不確かさ、より低い検出下限、または（クロムと臭素では）物質そのもの、すなわちCr(VI)、PBB、PBDEの測定を依頼してください。
lot-reason-lab_within = 試験所：{ $analyte } { $value }は{ $limit } mg/kg以内です（方法{ $method }、{ $laboratory }、報告書{ $report }、{ $date }）。スクリーニングでは{ $screen }でした。
    .remedy = 試験所の報告書をこの報告書とともに保管してください。結果は、試験した試料についてのものです。被覆されたものや混ざったものでは、どの層または材料かが報告書に書かれていなければなりません。
lot-reason-lab_no_uncertainty = 試験所：{ $analyte } { $value }には不確かさがないため、{ $limit } mg/kg以内とも超過とも示していません。スクリーニングでは{ $screen }でした。
    .remedy = 試験所に拡張不確かさとそのkを尋ねてください。
lot-reason-lab_not_traceable = 試験所：{ $analyte } { $value }は照合できないため、何も解除しません（方法：{ $method ->
        [none] なし
       *[other] { $method }
    }、試験所：{ $laboratory ->
        [none] なし
       *[other] { $laboratory }
    }、報告書：{ $report ->
        [none] なし
       *[other] { $report }
    }、日付：{ $date ->
        [none] なし
       *[other] { $date }
    }）。スクリーニングでは{ $screen }でした。
    .remedy = 方法、試験所、報告書番号、日付を、報告書の記載どおりに入力してください。今回のレビュー日より後の日付は、誤記とみなします。
lot-reason-lab_group_missing = 試験所の回答は、PBBとPBDEの一方についてだけです。{ $about }は両方がそろって決着します。
    .remedy = 試験所に、もう一方のIEC 62321-6またはIEC 62321-12による測定か、どちらもあり得ないほど少ない全臭素の測定を依頼してください。
lot-reason-lab_not_placed = ここで何も決着させない試験所の結果があります：{ $analyte } { $value }（報告書{ $report ->
        [none] 記載なし
       *[other] { $report }
    }）は、このロットで測定も記載もされていない材料、同時に複数の材料、またはつづりの異なるロットか供給者のものです。
    .remedy = 供給者、ロット、部品、材料を、測定のファイルと同じ名前にしてください。

## What people did

lot-reason-set_aside = { $of }件の測定のうち{ $count }件が、人により除外されました。ここではこれらを何の根拠にもしませんが、所見には残します。
    .remedy = 理由を注記に書いてください。抜取検査方式が求めるより少なくなったときは、測定し直してください。
lot-reason-set_aside_over = { $about ->
        [none] 除外された測定が
       *[other] 除外された測定で{ $about }が
    }限度値超過です（除外{ $of }件のうち{ $count }件）。除外しても、限度値未満になるわけではありません。
    .remedy = この試料を試験所に送るか、除外した測定を元に戻してください。
lot-reason-set_aside_open = 除外された測定が{ $about ->
        [none] { "" }
       *[other] { $about }について
    }限度値未満ではありませんでした（除外{ $of }件のうち{ $count }件）。除外しても、限度値未満になるわけではありません。
    .remedy = この試料を試験所に送るか、除外した測定を元に戻してください。

lifted-undecided = 未確定の結果
lifted-trust_none = 点検測定なし
lifted-trust_not_certified = 認証値の記載なし
lifted-trust_not_judged = 判定されていない点検測定
lifted-trust_not_bracketed = 2つの良好な点検の間にない
lifted-checks_far_apart = 1日を超えて離れた点検
lifted-sampling_none = 抜取検査方式なし
lifted-lot_size_missing = ロットの大きさなし
lifted-sampling_too_few = 個体数の不足
lifted-units_not_stated = 個体の記載なし
lifted-material_changed = 材料の変化

lot-reason-lifted = { $about ->
        [none] { "" }
       *[other] { $about }についての
    }保留「{ $reason }」が、{ $by }と{ $second }により解除されました：{ $why }
    .remedy = その理由をこの報告書とともに保管してください。
lot-reason-lift_not_allowed = { $by ->
        [none] 誰か
       *[other] { $by }
    }が{ $about ->
        [none] { "" }
       *[other] { $about }についての
    }「{ $reason }」を解除しようとしました（{ $why }）。誰にも解除できません。2人で解除できるのは、未確定の結果、点検の不足、抜取りの不足、材料の変化だけです。
    .remedy = これを解消する測定、ファイルまたは試験所の結果を用意してください。
lot-reason-lift_not_countersigned = { $about ->
        [none] { "" }
       *[other] { $about }についての
    }保留「{ $reason }」を解除しようとしましたが（{ $why }）、異なる2人のイニシャルがそろっていません（1人目：{ $by ->
        [none] なし
       *[other] { $by }
    }、2人目：{ $second ->
        [none] なし
       *[other] { $second }
    }）。保留は続きます。
    .remedy = 2人目のイニシャルを入れてもらってください。
lot-reason-lift_not_needed = { $about ->
        [none] { "" }
       *[other] { $about }についての
    }保留「{ $reason }」が解除されましたが（{ $why }）、そのような保留はないか、ここには名前のないロットが複数あり、どのロットへの操作か分かりません。
    .remedy = 操作を取り消すか、先にファイルでロットに名前を付けてください。
lot-reason-hold_overdue = 保留は{ $about }までに解消されるはずでしたが、その日を過ぎています。
    .remedy = 誰がいつまでに解消するかを入力してください。
lot-reason-quarantine_exceeds_lot = { $count }個を隔離したとされていますが、ロットは{ $of }個です。
    .remedy = 数え直してください。ロットの大きさか隔離した個数が誤っています。
act-not_matched = { $act }：対象{ $target }がここにありません。何も決着させません。
act-not_aside = { $act }：対象は{ $target }ですが、点検測定です。どのロットにも数えず、装置について示すことは変わりません。
act-not_followed = { $act }：対象は{ $target }ですが、その試料が認証書またはブランクの一覧に挙がっています。点検のままとします。製品であれば、そちらから名前を取り除いてください。

lab-verdict-within = 限度値内
lab-verdict-not_the_species = 元素からは物質について何もいえない
lab-verdict-no_uncertainty = 不確かさなし
lab-verdict-open = 限度値内とも超過とも示されない
lab-verdict-over = 超過

report-laboratory_results = 試験所の結果
report-laboratory_screen = スクリーニング
report-laboratory_verdict = 判定
report-laboratory_value = 結果
report-laboratory_method = 方法
report-laboratory_source = 試験所、報告書、日付
report-laboratory_text = 値 + Uが法定の限度値以内なら限度値内、値 − Uが限度値を超えれば超過とします。Uは、kを2以上としたものを用います。物質ごとに最も悪い結果を採り、スクリーニングの結果も並べて残します。
report-laboratory_not_traceable = 照合できない：何も決着させない
report-laboratory_not_placed = 複数の材料に当てはまる：何も決着させない
report-set_aside = 除外された測定
report-set_aside_text = 人がこれらの測定を除外しました。何にも数えませんが、所見には結果とともに残します。
report-aside = 除外、何にも数えない
report-set_aside_why = 理由
report-unmatched = ここにないものを対象とする操作
report-hold_what = 解消方法
report-hold_who = 担当
report-hold_until = 期限
report-hold_quarantined = 隔離（個数）
report-hold_place = 場所
cli-set_aside = { $file }：人が{ $count }件の測定を除外。その行は、使用した行に含まれたまま。
cli-not_matched = 注記：{ $text }

## Bills of materials

bill-merged = 「{ $found }」が2回あり、1回として扱います。
bill-respelled = 「{ $found }」は、1つの名前の2通りのつづりとみなします。
bill-column_ignored = 列「{ $found }」は部品と材料に関するものではないため、用いません。
problem-readings_not_bill = 列「{ $found }」に測定値があります。これは測定の表であって、材料構成表ではありません。
    .remedy = 測定されていないものも含め、部品の材料をすべて並べた表を入れてください。
cli-bill = { $file }、{ $line }行目、列{ $column }：{ $text }
cli-bill_twice = { $file }：{ $target }については、設定または別の材料構成表がすでに定めています。どちらか一方を外してください。何も書き出していません。

## The summary

summary-lab_over = { $about }が試験所で超過
summary-lab_open = { $about }が試験所で未解決
summary-lab_within = { $about }が試験所で限度値内
summary-set_aside_over = 除外されたもので{ $about ->
        [none] { "" }
       *[other] { $about }が
    }限度値超過
summary-set_aside_open = 除外されたもので{ $about ->
        [none] { "" }
       *[other] { $about }が
    }未解決
evidence-short-lab_no_uncertainty = 試験所の結果の不確かさ
evidence-short-lab_not_traceable = 試験所の結果の方法、試験所、報告書、日付
evidence-short-lab_group_missing = PBBとPBDEの両方
evidence-short-lab_not_placed = 試験所の結果の材料
evidence-short-set_aside = 除外された測定
evidence-short-lifted = 解除された保留
evidence-short-lift_not_allowed = 誰にも解除できない保留
evidence-short-lift_not_countersigned = 2人目のイニシャル
evidence-short-lift_not_needed = 存在しない保留の解除
evidence-short-hold_overdue = 保留の新しい期限
evidence-short-quarantine_exceeds_lot = 隔離した個数

supplier-counts = 分かっているロット：受入れ可{ $accept }、保留{ $hold }、受入れ不可{ $not_accept }。
