# Simplified Chinese: trust, sampling, lots and laboratories

## Trust: checks and the readings between them

lot-reason-trust_failed = { $count }个读数旁的核查未通过：{ $about }。这些读数不可依赖。
    .remedy = 调整好分析仪，重复测量核查标准样品直到评判为“良好”，然后在两次良好的核查之间重新测量，再将这些读数搁置，并写明原因。
lot-reason-trust_not_bracketed = { $count }个读数不在两次良好的核查之间：{ $about }。只有具备“读数可信的条件”所要求的良好核查，读数才可信。
    .remedy = 如果此后没有任何改动，现在就测量核查标准样品；或在两次良好的核查之间重新测量，再将这些读数搁置，并写明原因。
lot-reason-trust_none = { $count ->
        [0] 未给出核查标准样品或空白样品，因此无从证明分析仪准确。
       *[other] { $of }个读数中有{ $count }个的{ $about }没有核查涵盖。没有为其测量相符的核查标准样品：仪器 { $instrument ->
            [none] 未注明
           *[other] { $instrument }
        }，模式 { $mode ->
            [none] 未注明
           *[other] { $mode }
        }，类别 { $class_name }。
    }
    .nothing = 有核查读数，但没有一个涵盖这些读数：在同一文件中或已知时间内，没有测量相同仪器、模式和类别的核查标准样品。未写明类别的核查不涵盖任何读数。
    .remedy = { $instrument ->
        [none] { "" }
       *[other] 用仪器{ $instrument }，
    }{ $mode ->
        [none] { "" }
       *[other] 以模式{ $mode }，
    }在这些读数前后各测量一次相同类别{ $class ->
        [none] { "" }
        [unknown] （须先写明类别）
       *[other] （{ $class_name }）
    }的核查标准样品。核查只有在同一文件中或时间已知时才算数；未写明类别的核查不涵盖任何读数。
lot-reason-trust_not_certified = 测量了相符的核查标准样品，但未写明其{ $about }的认定值：{ $of }个读数中有{ $count }个无从证明分析仪对{ $about }准确。
    .expired = 测量了核查标准样品{ $sample }，但其证书{ $certificate }已于{ $cause }到期：{ $of }个读数中有{ $count }个无从证明分析仪对{ $about }准确。
    .open = 测量了核查标准样品{ $sample }（证书{ $certificate }），但{ $of }个读数中有{ $count }个的{ $about }得不到任何证明：{ $cause }。
    .remedy = 写明核查标准样品证书上的认定值。如果证书上没有该值，请测量一个有该值的核查标准样品。
    .expired_remedy = 给出核查标准样品{ $sample }在测量当天有效的证书。证书过期时，重新测量无济于事。
    .open_remedy = 在文件或设置中给出核查标准样品{ $sample }的读数所缺的内容（不确定度、单位或日期）。以同样方式重新测量，不会证明更多。
lot-reason-trust_not_judged = 有{ $count }个核查读数单独列出，无法评判（见核查列表），因此无从证明分析仪准确。
    .alone = 有{ $count }个{ $about }未定的读数，仅凭名称或标记称为核查。没有证书说明该样品的含量，而且文件中的其他读数既未注明批次也未注明部件：它可能是本批的产品。
    .remedy = 给出核查标准样品的认定值。在文件中写明产品的批次或部件，可看出哪些读数不是产品。
lot-reason-check_times_differ = 有{ $count }个读数的测量时间长于同类别的核查，或不到其一半：核查所能证明的因此较少。
    .remedy = 核查的测量时间应与产品相同。
lot-reason-checks_far_apart = { $count }个读数的良好核查相隔超过一天：{ $about }。US EPA Method 6200（9.4）要求在每个工作日开始和结束时各做一次核查。
    .remedy = 在同一天的良好核查之间重新测量，再将这些读数搁置，并写明原因。
lot-reason-mark_not_taken = 有{ $count }个读数被命名或标记为核查，但仍作产品：命名或标记不能将读数移出批次或部件；样品没有证书时，也不能移出任何超出限值的读数。
    .remedy = 在文件中将核查读数的批次和部件留空，并给出核查标准样品的证书。
evidence-short-trust_failed = 核查未通过处读数的重新测量
evidence-short-trust_not_bracketed = 两次良好核查之间的读数
evidence-short-trust_none = 核查读数
evidence-short-trust_not_certified = 核查标准样品的认定值
evidence-short-trust_not_judged = 已评判的核查读数
evidence-short-check_times_differ = 核查的测量时间
evidence-short-checks_far_apart = 同一天的核查
evidence-short-mark_not_taken = 未被采用的标记
trust-ok = 在良好的核查之间
trust-none = 没有核查涵盖
trust-not_bracketed = 不在良好的核查之间
trust-failed = 旁边有核查未通过
trust-aside = 由人搁置
check-kind-check = 核查标准样品
check-kind-blank = 空白样品
check-verdict-good = 良好
check-verdict-warning = 良好，有警告（|zeta|大于2）
check-verdict-failed = 未通过
check-verdict-no_uncertainty = 未评判：无不确定度
check-verdict-not_measured = 未测量
check-verdict-not_seen = 未评判：未检出，或不确定度太大，可能完全测不到认定值
check-verdict-unit_unknown = 未评判：未注明单位
check-verdict-expired = 未采用：证书已过有效期
check-verdict-day_unknown = 未采用：证书有有效期，而读数的日期未知
check-verdict-no_certificate = 没有认定值
check-scores = zeta { $zeta }，E_n { $en }
report-trust = 可信性
report-trust_text = 读数{ $bracket ->
        [before] 在一次良好的核查之后
        [per_shift] 所在班次有良好的核查且没有未通过的核查时
       *[before_and_after] 在两次良好的核查之间
    }可信，按核查的每种元素、仪器、模式和类别分别计。核查标准样品是否良好，按ISO 13528的{ $rule ->
        [en] E_n评判（绝对值不大于1）
       *[zeta] zeta评判（绝对值不大于3；大于2为警告）
    }；无人注明倍数的误差，此处按3σ计。空白样品未测出任何东西即为良好：不大于3σ，或低于其检出限。核查未通过的标准样品，只能由它自己重新通过来解除；空白样品则由洁净的空白来解除。可信性核查未通过，一律使批次暂扣；缺少可信性也使其暂扣，除非下面有设置将其改为仅提示；良好的核查相隔超过一天（US EPA Method 6200，9.4）也同样处理。批量和抽样方案：见各批的理由。
report-trust_none = 没有收到核查读数。
report-trust_by_rows = { $names }：并非每个读数都有可识别的日期和时间，因此以行的顺序代替时间顺序，且只限于此文件之内。
report-trust_one_stream = 有些核查既未注明仪器也未注明模式：它们与同样未注明的读数一起，按同一仪器、同一模式计。
report-trust_capped = 共{ $total }个核查读数，印出前{ $shown }个；findings.json含全部。
report-trust_sample = 核查
report-trust_element = 元素
report-trust_measured = 测得值
report-trust_certified = 认定值，U
report-trust_bias = 偏倚
report-trust_recovery = 回收率，%
report-trust_zeta = zeta
report-trust_en = E_n
report-trust_verdict = 评判结果
report-trust_readings = 读数

## What a person says

target-lot_material = { $supplier }的批次{ $lot }中部件{ $part }的材料{ $material }
target-reading = { $name }第{ $line }行的读数

act-tube_anode = X射线管的阳极：{ $value }
act-limit_answer = { $book }的限值{ $row }：{ $answer ->
        [yes] 适用
       *[no] 不适用
    }
act-certificate = 核查标准样品{ $sample }：{ $element } { $value }，U { $u }（k = { $k }），证书{ $id }，{ $expires ->
        [none] 未注明有效期
       *[other] 有效期至{ $expires }
    }
act-blank_samples = 空白样品：{ $value }
act-bracket = 读数可信的条件：{ $value ->
        [before] 在一次良好的核查之后
        [per_shift] 所在班次有良好的核查且没有未通过的核查
       *[before_and_after] 在两次良好的核查之间
    }
act-shift_starts = 班次开始于{ $value }
act-check_rule = 核查读数良好的依据：{ $value ->
        [en] |E_n|（不大于1）
       *[zeta] |zeta|（不大于3）
    }
act-control_chart = 控制图：控制限来自{ $limits ->
        [baseline] 最初的若干点
        [certificate] 证书
       *[other] 最初的若干点，否则为证书
    }，基线取{ $points ->
        [none] 20
       *[other] { $points }
    }个点，{ $rules ->
        [nelson] Nelson判异准则
       *[other] Western Electric判异准则
    }
act-sampling_plan = 抽样方案：{ $rule ->
        [zero_acceptance] 接收数为零的方案，置信水平{ $confidence } %，检出{ $share } %的不合格品
       *[single] MIL-STD-105E一次抽样，检验水平{ $level ->
            [none] II
           *[other] { $level }
        }，{ $severity ->
            [none] 正常检验
            [normal] 正常检验
            [tightened] 加严检验
            [reduced] 放宽检验
           *[other] { $severity }
        }，AQL { $aql }
    }{ $seed ->
        [none] { "" }
       *[other] ，随机表的种子{ $seed }
    }
act-mark = 作为{ $value }
act-set_aside = 搁置：{ $value }
act-laboratory = 实验室结果：{ $analyte } { $value }{ $u ->
        [none] { "" }
       *[other] ，U { $u }（k = { $k }）
    }；方法：{ $method ->
        [none] 未写明
       *[other] { $method }
    }；实验室：{ $laboratory ->
        [none] 未写明
       *[other] { $laboratory }
    }；报告：{ $report ->
        [none] 未写明
       *[other] { $report }
    }；日期：{ $date ->
        [none] 未注明
       *[other] { $date }
    }
act-lift = 解除暂扣：{ $reason }{ $about ->
        [none] { "" }
       *[other] { " " }{ $about }
    }；理由：{ $why }；第一人：{ $by ->
        [none] 缺少
       *[other] { $by }
    }；第二人：{ $second ->
        [none] 缺少
       *[other] { $second }
    }
act-hold_ends = 暂扣的结束由：{ $who ->
        [none] 未指定人
       *[other] { $who }
    }；最迟：{ $until ->
        [none] 未定日期
       *[other] { $until }
    }；隔离：{ $quarantined ->
        [none] 未注明
       *[other] { $quarantined }件
    }{ $place ->
        [none] { "" }
       *[other] ，{ $place }
    }

## The history file

problem-history_version = “{ $found }”不是此处读取的历史文件的名称。
    .remedy = 选择由本程序写出的历史文件；其第一行为{ $expected }。名称更新，表示由更新版本的程序写出。
problem-history_line = 历史文件的此行被截断，或内容过多：{ $found }
    .remedy = 取一份完整的历史文件。每行一条记录，各字段之间以制表符隔开。
## Change of material

lot-reason-material_changed = { $of ->
        [0] “{ $about }”的类别与已接收的各批不同：这不是您批准的材料。
       *[other] “{ $about }”所比较的{ $of }种元素中，有{ $count }种偏离了已接收的各批：这不是您批准的材料。
    }
    .remedy = 询问供应商有何变化，并在使用前重新批准该材料。
lot-reason-change_not_compared = “{ $about }”未与以前接收的批次比较：{ $of ->
        [0] 供应商、部件或类别未知，或没有可比较的元素
       *[other] 需要{ $of }批，历史文件中有{ $count }批
    }。
    .remedy = 给出历史文件，其中至少有五个已接收的批次属于此供应商、部件和材料。
evidence-short-material_changed = 对已变化材料的重新批准
evidence-short-change_not_compared = 足够供比较的以前批次
## Sampling

lot-reason-lot_size_too_small = 测量了{ $count }件，而该批据称只有{ $of }件：两个数中有一个不对。
    .remedy = 更正批量，或更正单件的名称。
lot-reason-lot_size_missing = 给出了抽样方案而未给出批量，因此无人能说出它要求多少件。
    .remedy = 给出批量。
evidence-short-lot_size_too_small = 与所测件数相符的批量
evidence-short-lot_size_missing = 批量
sampling-title = 抽样方案：
sampling-plan_single = MIL-STD-105E一次抽样，检验水平{ $level }，{ $severity ->
        [normal] 正常检验
        [tightened] 加严检验
        [reduced] 放宽检验
       *[other] { $severity }
    }，AQL { $aql }（表{ $table }）{ $letter ->
        [none] { "" }
       *[other] ，样本量字码{ $letter }
    }{ $led ->
        [same] { "" }
       *[other] ，其箭头指向字码{ $led }
    }：{ $whole ->
        [yes] 取该批全部{ $size }件。
       *[no] 从{ $size }件中取{ $n }件。
    }
sampling-plan_zero = 接收数为零：{ $whole ->
        [yes] 取该批全部{ $size }件：少于此数，对{ $share } %的不合格品（此批中为{ $bad }件）达不到{ $confidence } %的置信水平。
       *[no] 从{ $size }件中取{ $n }件。若其中没有一件不合格，则以{ $confidence } %的置信水平证明，该批中不合格的少于{ $bad }件（{ $share } %）。
    }
sampling-table = 表中的数，仅用于其他特性：接收数{ $ac }，拒收数{ $re }。对限用物质，不论何种方案，接收数均为0。
sampling-units = 批量{ $size }件。每种材料要求：{ $take }件。测得最少的材料已测量：{ $measured }件。经筛选的{ $units }件不同单件中：{ $conforming }件符合，{ $undecided }件未定，{ $over }件超出。未定的单件绝不计为符合。
sampling-list = 应取的单件，从1至{ $size }中随机抽取（SplitMix64，种子{ $seed }；{ $n }件；按单件摆放的顺序编号，任何人都能抽出同一份列表）：
sampling-list_capped = 共应取{ $total }件，印出前{ $shown }件；findings.json含全部。
sampling-risk = 批量{ $size }，随机取{ $n }件且不允许任何一件超出时，此方案的风险（超几何分布）：不合格品至多{ $at95 }件时，接收概率至少95 %；至多{ $at50 }件时，至少50 %；至多{ $at10 }件时，至少10 %。
sampling-risk_none = 该批每一件都取：没有抽样的风险，只剩测量的风险。
sampling-risk_process = 对该批所出自的过程，或远大于样本的批（二项分布）：对应于上述各概率的不合格品率为{ $at95 } %、{ $at50 } %和{ $at10 } %。
sampling-zero_process = 对无限大的批，同样的置信水平需要{ $n }件。
sampling-at_most = 若各单件为随机抽取，则以{ $confidence } %的置信水平，{ $size }件中至多有{ $most }件不合格；每一件未被证明符合的单件都计为不合格。
sampling-isolated = 正常、加严和放宽检验及其转移规则用于连续系列的批，不适用于单独一批（孤立批见ISO 2859-2）。
sampling-proves = 方案只说明风险，仅此而已：法律按每一种均质材料规定限值，其中没有AQL；未测量的任何单件，均未得到证明。
sampling-curve = 批量{ $size }、取{ $n }件时的接收概率
sampling-curve_across = 批中的不合格品件数
sampling-curve_up = 接收概率
sampling-curve_zero = 无一超出（限用物质）
sampling-curve_table = 按表，接收数{ $ac }
## Control charts

report-charts = 核查读数随时间的变化
report-charts_text = 每台仪器、每种模式、每个核查样品和每种元素各一张控制图。它不评判任何读数，在此不决定任何事：它在单次核查仍良好时显示偏移或漂移。实心圆是本次检验的读数，圆环是以前的；带数字的菱形是信号，按该数字在图下说明。
report-charts_capped = 共{ $total }张图，印出前{ $shown }张，有情况的在前；全部在findings.json中。
report-charts_others = 另有{ $count }张图只依据历史文件，因为本次检验没有测量其样品；见findings.json。
report-signals_capped = 共{ $total }个信号，列出前{ $shown }个；全部在findings.json中。
report-history = 给出的历史文件：核查读数的数值{ $checks }个，批次记录{ $records }条。SHA-256：
report-history_none = 未给出历史文件：各图只显示本次检验。

chart-name = { $sample }中的{ $element }（{ $class }），仪器{ $instrument }
chart-values = 数值，mg/kg
chart-ranges = 移动极差，mg/kg
chart-upper = 上控制限{ $value }
chart-centre = 中心线{ $value }
chart-lower = 下控制限{ $value }
chart-largest = 最大{ $value }
chart-smallest = 最小{ $value }
chart-baseline = 基线：{ $points }个点
chart-no_time = 未注明时间
chart-limits-baseline = 中心线{ $centre } mg/kg，控制限{ $lower }至{ $upper } mg/kg（两侧各3σ，σ为{ $sigma }）：由最初{ $points }个点得出，取其平均值，并取平均移动极差除以1.128（ISO 7870-2）。
chart-limits-certificate = 中心线{ $centre } mg/kg，控制限{ $lower }至{ $upper } mg/kg（两侧各3σ）：来自证书。σ为{ $sigma }，由证书的不确定度与读数的重复性合成，后者{ $from ->
        [site_table] 取自现场重复性表
       *[stated] 按读数所注明
    }。
chart-none-too_few_points = 没有控制限：有{ $points }个点，而基线需要{ $needed }个。无法得知仪器是否受控。
chart-none-no_spread = 没有控制限：基线的各点全部相同。无法得知仪器是否受控。
chart-none-no_certificate = 没有控制限：控制限应来自证书，而在最新一点的当天有效的证书中，没有一份写明此元素。无法得知仪器是否受控。
chart-none-no_repeatability = 没有控制限：控制限应来自证书，而现场重复性表没有说明读数的重复性，也不是每个读数都有说明。无法得知仪器是否受控。
chart-rules-western_electric = Western Electric判异准则（NIST/SEMATECH e-Handbook of Statistical Methods, 6.3）
chart-rules-nelson = Nelson判异准则（Journal of Quality Technology 16, 1984）
chart-no_signal = 按{ $rules }，{ $points }个点中没有信号。
chart-signals = 按{ $rules }，{ $points }个点中有{ $count }处信号：
chart-signal_at = { $first }，{ $value } mg/kg：{ $codes }。
chart-signal_run = 从{ $first }到{ $last }的{ $count }个点，首个为{ $value } mg/kg：{ $codes }。
chart-drift = 数值每天漂移{ $slope } mg/kg（标准不确定度{ $sigma }；{ $span }天内{ $n }个点，95 %，t { $t }）：30天漂移其{ $percent } %。
chart-drift_short = 数值每天漂移{ $slope } mg/kg（标准不确定度{ $sigma }；{ $span }天内{ $n }个点，95 %，t { $t }）。不到一天，不能说明一个月的情况。
chart-no_drift = 未显示漂移：每天{ $slope } mg/kg，标准不确定度{ $sigma }（{ $span }天内{ $n }个点，95 %，t { $t }）。
chart-drift_unknown = 无法说明漂移：需要{ $n }个读数，分布在两个或更多时间。
chart-without_time = { $count }个读数未注明时间，无法排入顺序。
chart-not_drawn = 只绘出最新的各点；较早的{ $count }个未绘出。

signal-beyond_3s = 超出3σ
signal-two_of_three_beyond_2s = 三点中有两点在同一侧超出2σ
signal-four_of_five_beyond_1s = 五点中有四点在同一侧超出1σ
signal-eight_on_one_side = 连续八点在中心线同一侧
signal-nine_on_one_side = 连续九点在中心线同一侧
signal-six_rising_or_falling = 连续六点上升或下降
signal-fourteen_alternating = 连续十四点上下交替
signal-fifteen_within_1s = 连续十五点在1σ之内：对此控制限而言过于集中，不像是真的
signal-eight_none_within_1s = 连续八点分布在两侧，没有一点在1σ之内
signal-moving_range_beyond = 与前一点的跳变超过移动极差的控制限
change-changed = 这不是您批准的材料，与{ $lots }个已接收批次比较（比较了{ $elements }种元素）。
change-other_class = 这不是您批准的材料：已接收的{ $lots }个批次为{ $class }。
change-not_changed = 没有元素偏离已接收的{ $lots }个批次（比较了{ $elements }种）。这不能证明是同一材料。
change-too_few = 太少，不能比较：历史文件中此供应商、部件和材料的已接收批次有{ $lots }个；需要{ $fewest }个。
change-not_comparable = 未与已接收的批次比较：供应商、部件或类别未知，或没有可比较的元素。
change-moved = { $element }：由{ $from }变为{ $to } mg/kg（×{ $factor }），偏离{ $spreads }倍离散度，允许{ $allowed }倍。
change-not_measured = 在多数已接收批次中测量过，而现在未测量：{ $list }。
report-change = 材料的变化
report-change_text = 将每种元素相对于每千克中其余全部成分的量，与历史文件中相同供应商、部件、材料和类别的已接收批次比较。其中心为中位数，其离散度不计最远的五分之一。对没有变化的批次，全部元素合计至多有1 %被称为已变化（按正态离散模拟；此比率由我们自行选定）。未检出的元素可能在其检出限以下任何位置，绝不因此称为变化。批次少时只能显示大的变化。
report-change_says = 与已接收批次相比
report-change_capped = 共{ $total }项，印出前{ $shown }项；findings.json含全部。

## Suppliers

supplier-next = 下一批：{ $severity ->
        [normal] 正常检验
        [tightened] 加严检验
        [reduced] 放宽检验
       *[none] 暂停检验，直到供应商有所改进
    }（按MIL-STD-105E的转移规则，依据{ $lots }个已有结论且有日期的批次）。
supplier-may_reduce = 连续十批已接收：在生产稳定且有权决定者同意时，可要求放宽检验（凭记忆）。
supplier-no_series = 未注明供应商和部件，就没有系列批。
supplier-near_miss = { $substance }在{ $lots }个批次中低于限值，但余量不到1σ；最近的离界{ $nearest }σ。
supplier-trend = { $material }的{ $element }在{ $lots }个批次中持续变化，每批{ $percent } %：第一批{ $first } mg/kg，最后一批{ $last } mg/kg。
supplier-laboratory-over_was_within = { $class }：{ $count }个筛选为超出，实验室为限内（假阳性）。
supplier-laboratory-below_was_over = { $class }：{ $count }个筛选为低于，实验室为超出（假阴性）。
supplier-laboratory-open_was_within = { $class }：{ $count }个筛选为未定，实验室为限内。
supplier-laboratory-open_was_over = { $class }：{ $count }个筛选为未定，实验室为超出。
supplier-laboratory-agreed = { $class }：{ $count }个由实验室确认。
supplier-laboratory-open = { $class }：{ $count }个的实验室结果不能解决问题，或未被评判。
supplier-open_holds = 暂扣中：{ $list }。
supplier-without_day = { $count }个批次没有日期，未计入系列和趋势。
report-suppliers = 供应商和部件
report-suppliers_text = 本次检验的各部件，涵盖历史文件和此处的全部批次。两处都有的批次只计一次，以最近日期为准。这些都只供查看，不决定任何事：历史良好不会使任何批次变好。趋势是逐批取对数后的直线；就所查看的全部内容而言，偶然形成这样的直线的情形不到5 %。
report-suppliers_known = 所知
report-suppliers_capped = 共{ $total }项，印出前{ $shown }项；findings.json含全部。
## What laboratories found

lot-reason-lab_over = 实验室：{ $analyte } { $value }，超出{ $limit } mg/kg（方法{ $method ->
        [none] 未写明
       *[other] { $method }
    }；{ $laboratory ->
        [none] 未写明实验室
       *[other] { $laboratory }
    }，报告{ $report ->
        [none] 未写明
       *[other] { $report }
    }，{ $date ->
        [none] 未注明日期
       *[other] { $date }
    }）；筛选结果为{ $screen }。{ $effect ->
        [accept] 有主张的豁免涵盖此项。
        [hold] 该限值是否适用，或是否有豁免涵盖此项，尚未决。
       *[other] { "" }
    }
    .remedy = 隔离该批。只有数值涵盖实验室结果的有效豁免才能改变此结论。
lot-reason-lab_open = 实验室：{ $analyte } { $value }，既不能证明在{ $limit } mg/kg限内，也不能证明超出（方法{ $method ->
        [none] 未写明
       *[other] { $method }
    }，报告{ $report ->
        [none] 未写明
       *[other] { $report }
    }）；筛选结果为{ $screen }。{ $effect ->
        [accept] 其他结果已解决此项。
       *[other] { "" }
    }
    .remedy = 请实验室给出更小的不确定度、更低的检出限，或（对铬和溴）测定物质本身：Cr(VI)、PBB和PBDE。
lot-reason-lab_within = 实验室：{ $analyte } { $value }，在{ $limit } mg/kg限内（方法{ $method }；{ $laboratory }，报告{ $report }，{ $date }）；筛选结果为{ $screen }。
    .remedy = 将实验室报告与本报告一起保存。它只代表所测的样品：对有涂镀层或混合的样品，实验室报告必须说明测的是哪一层或哪种材料。
lot-reason-lab_no_uncertainty = 实验室：{ $analyte } { $value }没有附不确定度，因此既不能证明在{ $limit } mg/kg限内，也不能证明超出；筛选结果为{ $screen }。
    .remedy = 请实验室给出扩展不确定度及其包含因子k。
lot-reason-lab_not_traceable = 实验室：{ $analyte } { $value }无从查证，因此不解除任何暂扣（方法：{ $method ->
        [none] 缺少
       *[other] { $method }
    }；实验室：{ $laboratory ->
        [none] 缺少
       *[other] { $laboratory }
    }；报告：{ $report ->
        [none] 缺少
       *[other] { $report }
    }；日期：{ $date ->
        [none] 缺少
       *[other] { $date }
    }）；筛选结果为{ $screen }。
    .remedy = 按报告所写填入方法、实验室、报告编号和日期。晚于本次审查日期的日期按笔误处理。
lot-reason-lab_group_missing = 实验室只对PBB和PBDE之一给出了答案；{ $about }须两者都有才能解决。
    .remedy = 请实验室按IEC 62321-6或IEC 62321-12测定另一组，或证明总溴少到两者都不可能存在。
lot-reason-lab_not_placed = 有一个实验室结果在此不能解决任何问题：{ $analyte } { $value }（报告{ $report ->
        [none] 未写明
       *[other] { $report }
    }）所指的材料在本批中未测量或未列出，或同时指几种材料，或批次、供应商的写法不同。
    .remedy = 按读数文件的写法填写供应商、批次、部件和材料。

## What people did

lot-reason-set_aside = { $of }个读数中有{ $count }个由人搁置；此处没有任何结论以其为依据，审查结果中仍予保留。
    .remedy = 在备注中说明原因；剩余读数少于方案要求时，重新测量。
lot-reason-set_aside_over = 被搁置的{ $of }个读数中有{ $count }个{ $about ->
        [none] { "" }
       *[other] 的{ $about }
    }超出限值。搁置不能消除任何问题。
    .remedy = 将此样品送实验室检测，或将该读数恢复计入。
lot-reason-set_aside_open = 被搁置的{ $of }个读数中有{ $count }个{ $about ->
        [none] { "" }
       *[other] 的{ $about }
    }不是低于限值。搁置不能消除任何问题。
    .remedy = 将此样品送实验室检测，或将该读数恢复计入。
lifted-undecided = 判定结果未定
lifted-trust_none = 没有核查读数
lifted-trust_not_certified = 认定值未写明
lifted-trust_not_judged = 核查读数未评判
lifted-trust_not_bracketed = 不在两次良好的核查之间
lifted-checks_far_apart = 核查相隔超过一天
lifted-sampling_none = 没有抽样方案
lifted-lot_size_missing = 没有批量
lifted-sampling_too_few = 件数太少
lifted-units_not_stated = 未注明单件
lifted-material_changed = 材料已变化
lot-reason-lifted = { $about ->
        [none] { "" }
       *[other] { $about }的
    }暂扣“{ $reason }”已由{ $by }和{ $second }解除：{ $why }
    .remedy = 将此理由与本报告一起保存。
lot-reason-lift_not_allowed = { $by ->
        [none] 有人
       *[other] { $by }
    }要解除{ $about ->
        [none] { "" }
       *[other] { $about }的
    }“{ $reason }”（{ $why }）。任何人都不能解除：只有判定结果未定、缺少可信性、缺少抽样和材料已变化，可由两人解除。
    .remedy = 提供能结束它的测量、文件或实验室结果。
lot-reason-lift_not_countersigned = { $about ->
        [none] { "" }
       *[other] { $about }的
    }暂扣“{ $reason }”原要解除（{ $why }），但没有两个不同的人的姓名缩写（第一人：{ $by ->
        [none] 缺少
       *[other] { $by }
    }；第二人：{ $second ->
        [none] 缺少
       *[other] { $second }
    }）。暂扣继续有效。
    .remedy = 请第二人加上其姓名缩写。
lot-reason-lift_not_needed = { $about ->
        [none] { "" }
       *[other] { $about }的
    }暂扣“{ $reason }”被解除（{ $why }），但没有这样的暂扣；或此处有几个批次没有名称，该操作可能指其中任何一个。
    .remedy = 撤回该操作，或先在文件中写明批次。
lot-reason-hold_overdue = 暂扣最迟应在{ $about }结束，而该日已过。
    .remedy = 写明由谁结束，最迟何时。
lot-reason-quarantine_exceeds_lot = 据称隔离了{ $count }件，而该批只有{ $of }件。
    .remedy = 重新清点：批量或隔离的件数不对。
act-not_matched = { $act }：针对{ $target }，但此处没有该对象。此操作不能解决任何问题。
act-not_aside = { $act }：针对{ $target }，而它是核查读数：不计入任何批次，其对仪器的说明不变。
act-not_followed = { $act }：针对{ $target }，而证书或空白样品列表写有其样品。它仍作核查；如果它是产品，请从中删去该名称。

lab-verdict-within = 限内
lab-verdict-not_the_species = 该元素不能说明该物质
lab-verdict-no_uncertainty = 无不确定度
lab-verdict-open = 既非限内也非超出
lab-verdict-over = 超出

report-laboratory_results = 实验室结果
report-laboratory_screen = 筛选
report-laboratory_verdict = 结论
report-laboratory_value = 结果
report-laboratory_method = 方法
report-laboratory_source = 实验室、报告、日期
report-laboratory_text = 数值 + U在法定限值之内为限内，数值 - U在限值之外为超出；U的k取至少为2。每种物质以最差的结果为准，筛选的判定结果并列在旁。
report-laboratory_not_traceable = 无从查证：不能解决任何问题
report-laboratory_not_placed = 与几种材料相符：不能解决任何问题
report-set_aside = 被搁置的读数
report-set_aside_text = 有人搁置了这些读数。它们不计入任何结论，审查结果中仍连同其判定结果一起保留。
report-aside = 已搁置，不计入任何结论
report-set_aside_why = 原因
report-unmatched = 对象不在此处的操作
report-hold_what = 如何结束
report-hold_who = 由谁
report-hold_until = 最迟日期
report-hold_quarantined = 隔离（件）
report-hold_place = 地点
cli-set_aside = { $file }：有{ $count }个读数由人搁置；其行仍计入使用行。
cli-not_matched = 注：{ $text }

## Bills of materials

bill-merged = “{ $found }”出现两次，按一次计。
bill-respelled = “{ $found }”视为同一名称的两种写法。
bill-column_ignored = 列“{ $found }”与部件和材料无关，已略去。
problem-readings_not_bill = 列“{ $found }”含有测量值：这是读数表，不是物料清单。
    .remedy = 请给出列有该部件全部材料的表，包括无人测量的材料。
cli-bill = { $file }第{ $line }行，第{ $column }列：{ $text }
cli-bill_twice = { $file }：对于{ $target }，设置或另一份清单已有说明。请删去其中之一；没有写出任何内容。

## The summary

summary-lab_over = { $about }经实验室为超出
summary-lab_open = { $about }经实验室仍未决
summary-lab_within = { $about }经实验室为限内
summary-set_aside_over = 被搁置的读数中{ $about ->
        [none] { "" }
       *[other] { $about }
    }超出限值
summary-set_aside_open = 被搁置的读数中{ $about ->
        [none] { "" }
       *[other] { $about }
    }未决
evidence-short-lab_no_uncertainty = 实验室结果的不确定度
evidence-short-lab_not_traceable = 实验室结果的方法、实验室、报告和日期
evidence-short-lab_group_missing = PBB和PBDE两者
evidence-short-lab_not_placed = 实验室结果所指的材料
evidence-short-set_aside = 被搁置的读数
evidence-short-lifted = 已解除的暂扣
evidence-short-lift_not_allowed = 任何人都不能解除的暂扣
evidence-short-lift_not_countersigned = 第二人的姓名缩写
evidence-short-lift_not_needed = 没有对象的解除
evidence-short-hold_overdue = 结束暂扣的新日期
evidence-short-quarantine_exceeds_lot = 隔离的件数

supplier-counts = 已知批次：{ $accept }批接收，{ $hold }批暂扣，{ $not_accept }批不接收。
