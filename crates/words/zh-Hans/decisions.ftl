# Simplified Chinese: decisions: sigma, repeats, probabilities, decision rules, time, next steps and working

## Repeats of one spot

pooled-from-stated = 读数所注明的不确定度，除以读数个数的平方根
pooled-from-scatter = 各读数的离散程度，除以读数个数的平方根
pooled-from-scatter_of_few = { $n }个读数的离散程度，除以读数个数的平方根；个数太少，因此以{ $t }代替{ $k }σ
pooled-disagree = 此测点的{ $n }个读数之差超出其不确定度（概率{ $p }）：以其中最差者为准，不以平均值为准。
pooled-agree = 此测点的{ $n }个读数在其不确定度范围内一致（概率{ $p }）。
pooled-not_asked = 此测点的{ $n }个读数已合并；它们是否一致，无法判断。
pooled-largest_limit = 此测点的{ $n }个读数都未检出：以最大的检出限为准。
pooled-mixed = 此测点的{ $n }个读数有的检出，有的未检出：各自独立，以最差者为准。
pooled-sigma = 平均值的1σ：{ $from }。
pooled-outlier = 读数{ $which }偏离全部读数的平均值{ $g }倍标准偏差，大于临界值{ $critical }（偶然超过该值的概率为二十分之一，Grubbs检验）。它仍保留在记录中。

## Spots beside each other

spots-differ = { $n }个测点之差超出偶然所能出现的程度（概率{ $p }）：以最差的测点为准。
spots-no-difference = 未见{ $n }个测点之间有差异（概率{ $p }）。这不能证明它们相同；以最差的测点为准。

## Probability within a limit, and decision rules side by side

probability-about = { $percent } %
probability-more_than = 大于{ $percent } %
probability-less_than = 小于{ $percent } %
conformity-within = 真值在{ $limit } mg/kg限值之内的概率：{ $chance }。
conformity-beyond = 真值在限值之外的概率：{ $chance }。
conformity-repeatability_only = 此处只计重复性：不含校准、基体和抽样所带来的部分。
conformity-risk = 对此数值，这一陈述错误的概率：{ $chance }。
rule-simple_acceptance = 简单接受（到限值为止）
rule-guarded_acceptance = 带保护带的接受（到限值减{ $k }σ为止）
rule-non_binary = 非二元判定，带条件（限值两侧各{ $k }σ）
statement-pass = 通过
statement-conditional_pass = 有条件通过
statement-conditional_fail = 有条件不通过
statement-fail = 不通过

rule-bands = 此处所用的筛选区间

## Measuring longer

longer-seconds = 约{ $even } s有一半的概率得出判定，约{ $surely } s有90 %的概率（估计）。
longer-seconds_even_only = 约{ $even } s有一半的概率得出判定；要达到90 %的概率须超过{ $cap } s（估计）。
longer-never-inside_edges = 测量多久都不能得出判定：数值本身处于本规则不作判定的范围。
longer-never-constant_part = 测量多久都不能得出判定：不确定度中不随时间减小的部分本身已过大。
longer-never-too_long = 在一个测点上须超过{ $cap } s。
longer-never-not_known = 无法说出多久才够：测量时间或不确定度未知。
longer-plan = { $readings ->
    [1] 1个{ $longest } s的读数
   *[other] { $readings }个读数，每个至多{ $longest } s，共{ $total } s，
  }可解决{ $of }个未决判定结果中的{ $settles }个，每个有90 %的概率（估计）。
longer-plan-none = { $of ->
        [1] 延长测量不能解决这一个未决判定结果。
       *[other] { $of }个未决判定结果，延长测量一个也不能解决。
    }
longer-plan_even = { $readings ->
    [1] 1个{ $longest } s的读数
   *[other] { $readings }个读数，每个至多{ $longest } s，共{ $total } s，
  }可解决{ $of }个未决判定结果中的{ $settles }个，每个有一半的概率（估计）。
longer-plan-nothing_open = 没有未定或能力不足的判定结果，因此没有可以靠延长测量解决的问题。
