# Japanese: the working behind an outcome, sentence by sentence
explain-class = { $class }として判定しました（{ $from }）。
explain-rule = { $book }、{ $clause }（{ $confidence }）：{ $about }は、値に{ $k }シグマを足して{ $low } mg/kg以下なら限度値未満、値から{ $k }シグマを引いて{ $high } mg/kg以上なら限度値超過、その間は未確定です。
explain-rule_open = { $book }、{ $clause }（{ $confidence }）：{ $about }は、値に{ $k }シグマを足して{ $low } mg/kg以下なら限度値未満です。それを上回れば未確定です。元素だけでは規制物質を示せないためです。
explain-rule_detection = { $book }、{ $clause }（{ $confidence }）：{ $about }は、その測定自身の検出下限以下のときだけ限度値未満、値から{ $k }シグマを引いて{ $high } mg/kg以上なら限度値超過、その間は未確定です。
explain-rule_none = { $book }、{ $clause }（{ $confidence }）：この区分では{ $about }を判定しません。
explain-rule_every_class = { $book }：区分が不明なため、すべての区分で判定し、最も悪い結果を採ります。
explain-rule_layers = { $book }には層についての判定域がありません。測定では、層とその下にあるものが混ざります。
explain-halogen_at_most = { $book }、{ $clause }（{ $confidence }）：{ $about }は、値に{ $k }シグマを足して{ $limit } mg/kg以下なら限度値内、値から{ $k }シグマを引いてこれを上回れば超過です。
explain-halogen_below = { $book }、{ $clause }（{ $confidence }）：{ $about }は、値に{ $k }シグマを足して{ $limit } mg/kg未満なら限度値内、値から{ $k }シグマを引いてこれ以上なら超過です。
explain-value = ファイルには{ $about }について「{ $written }」とあり、これは{ $value }です。
explain-value_plain = { $value } mg/kg
explain-value_none = ファイルには{ $about }について何も記載がありません。
explain-value_text = ファイルには{ $about }について「{ $written }」とありますが、使える測定値ではありません。
explain-total = 塩素と臭素の合計：{ $value }。
explain-sigma = 1シグマは{ $sigma } mg/kgです：{ $from }。
explain-sigma_printed = 1シグマは{ $sigma } mg/kgです：{ $from }（表示誤差は{ $multiple }シグマに当たる）。
explain-relative = 設定により、値の{ $percent } %を二乗和で加えます。
explain-under_class = { $class }として：{ $outcome }。{ $working }
explain-outcome = { $about }：{ $outcome }。
explain-outcome_because = { $about }：{ $outcome }。{ $reason }
explain-next = 次の手順：{ $list }
explain-not_the_cautions = 注意に書かれたことも含みません。値が実際より低くまたは高く出ていれば、この確率は誤りになります。
explain-rule_says = { $rule }：{ $statement }（誤りの確率{ $risk }）
explain-other_rules_agree = ほかの判定ルール（単純、ガードバンド付き、条件付き）では、比較のために示すと、いずれも次のようになります：{ $statement }（誤りの確率{ $risk }）。
explain-other_rules = ほかの判定ルールでは、比較のために示すと、次のようになります：{ $list }。
explain-repeats = この箇所の{ $n }件の測定のうちの1件です。{ $said }{ $counts }

# Repeats of one spot.
repeats-line = { $line }行目
repeats-sigma = それらの平均の1シグマ：{ $from }。
repeats-largest_limit = この箇所の{ $n }件の測定は、すべて不検出です。最も大きい検出下限で判定します。
repeats-mixed = この箇所の{ $n }件の測定には、不確かさの付いた数値であるものとないものがあります。平均はせず、それぞれ単独で見て、最も悪いものを採ります。
repeats-together = まとめて判定すると：{ $outcome }。材料についてはこれを採ります。
repeats-alone = まとめては判定しません。それぞれ単独で見て、最も悪いものを採ります。
explain-limit_sum = 数える対象の合計は{ $value } mg/kg、1シグマは{ $sigma } mg/kgです。
explain-limit_sum_between = 数える対象の合計は{ $low }～{ $value } mg/kg、1シグマは上の端で{ $sigma } mg/kgです。
explain-limit_sum_from = 数える対象の合計は{ $low } mg/kg以上、1シグマは{ $sigma } mg/kgです。
