# Simplified Chinese: the working behind an outcome, sentence by sentence
explain-class = 按{ $class }判定（{ $from }）。
explain-rule = { $book }，{ $clause }（{ $confidence }）：数值加{ $k }σ等于或低于{ $low } mg/kg时，{ $about }低于限值；数值减{ $k }σ等于或高于{ $high } mg/kg时，超出限值；两者之间为未定。
explain-rule_open = { $book }，{ $clause }（{ $confidence }）：数值加{ $k }σ等于或低于{ $low } mg/kg时，{ $about }低于限值；高于此则为未定，因为仅凭该元素不能证明存在限用物质。
explain-rule_detection = { $book }，{ $clause }（{ $confidence }）：只有等于或低于读数自身的检出限时，{ $about }才低于限值；数值减{ $k }σ等于或高于{ $high } mg/kg时，超出限值；两者之间为未定。
explain-rule_none = { $book }，{ $clause }（{ $confidence }）：在此类别中不判定{ $about }。
explain-rule_every_class = { $book }：类别未知，因此该读数按每一类别判定，以最差者为准。
explain-rule_layers = { $book }没有针对层的区间：读数把该层与其下的材料混在一起。
explain-halogen_at_most = { $book }，{ $clause }（{ $confidence }）：数值加{ $k }σ不大于{ $limit } mg/kg时，{ $about }在限值之内；数值减{ $k }σ高于该限值时，超出。
explain-halogen_below = { $book }，{ $clause }（{ $confidence }）：数值加{ $k }σ低于{ $limit } mg/kg时，{ $about }在限值之内；数值减{ $k }σ等于或高于该限值时，超出。
explain-value = 文件对{ $about }写的是“{ $written }”，即{ $value }。
explain-value_plain = { $value } mg/kg
explain-value_none = 文件对{ $about }没有写任何内容。
explain-value_text = 文件对{ $about }写的是“{ $written }”，不是可用的测量值。
explain-total = 氯与溴的总量：{ $value }。
explain-sigma = 1σ为{ $sigma } mg/kg：{ $from }。
explain-sigma_printed = 1σ为{ $sigma } mg/kg：{ $from }（所列误差为{ $multiple }σ）。
explain-relative = 按设定，以方和根再加上数值的{ $percent } %。
explain-under_class = 按{ $class }：{ $outcome }。{ $working }
explain-outcome = { $about }：{ $outcome }。
explain-outcome_because = { $about }：{ $outcome }。{ $reason }
explain-next = 下一步：{ $list }
explain-not_the_cautions = 它也不计入各注意事项所说的影响：若数值读得过低或过高，此概率就不正确。
explain-rule_says = { $rule }：{ $statement }（错误的概率{ $risk }）
explain-other_rules_agree = 其他判定规则（简单、带保护带、带条件）仅供比较，结论均为：{ $statement }（错误的概率{ $risk }）。
explain-other_rules = 其他判定规则仅供比较，结论为：{ $list }。
explain-repeats = 此测点{ $n }个读数之一。{ $said }{ $counts }

# Repeats of one spot.
repeats-line = 第{ $line }行
repeats-sigma = 其平均值的1σ：{ $from }。
repeats-largest_limit = 此测点的{ $n }个读数都未检出；以最大的检出限判定。
repeats-mixed = 此测点的{ $n }个读数有的是带不确定度的数值，有的不是：不取平均，各自独立，以最差者为准。
repeats-together = 一起判定为：{ $outcome }；对该材料以此为准。
repeats-alone = 不一起判定：各自独立，以最差者为准。
explain-limit_sum = 它所计入的合计为{ $value } mg/kg，1σ为{ $sigma } mg/kg。
explain-limit_sum_between = 它所计入的合计在{ $low }与{ $value } mg/kg之间，上端的1σ为{ $sigma } mg/kg。
explain-limit_sum_from = 它所计入的合计至少为{ $low } mg/kg，1σ为{ $sigma } mg/kg。
