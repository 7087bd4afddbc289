# The trainer's room: lessons, exercises, the score sheet.
page-train-enter = 进入练习室
page-train-heading = 练习室
page-train-invented = 此处的一切都是虚构的：公司、供应商、批次和数值。已打开的检验保持不变。
page-train-lead = 八节短课，讲如何根据XRF读数作决定。先由您判断，然后工具显示它的推算过程。
page-train-lessons = 课程
page-train-titled = 第{ $n }课：{ $title }
page-train-progress = { $of }题中已答{ $done }题，答对{ $right }题
page-train-not-begun = 未开始
page-train-begin = 从第1课开始
page-train-go-on = 继续第{ $n }课：{ $title }
page-train-to-sheet = 查看成绩单
page-train-home = 全部课程
page-train-before = 上一课
page-train-after = 下一课：{ $title }
page-train-source = 来源
page-train-look = 可供查看的虚构到货
page-train-open = 打开{ $title }
page-train-deliveries = 供审查的到货
page-train-deliveries-hint = 打开后，已打开的检验会放到一边；用上方的“{ $back }”可以取回。
page-train-fresh = 一份新的到货
page-train-fresh-hint = 由上面的种子生成的一批。请像真实批次一样审查：它说明什么，缺少什么，由谁签字。
page-train-fresh-open = 打开此种子的到货
page-train-fresh-title = 虚构到货，种子{ $seed }
page-train-fresh-story = 由种子{ $seed }生成的虚构批次。请像真实批次一样审查：每个读数为何得出这样的结果，缺少什么，您愿意签上自己的名字吗？
page-train-seed = 练习题的种子
page-train-seed-hint = 同一种子在任何计算机上都生成同样的练习题。
page-train-seed-use = 使用此种子
page-train-seed-new = 新种子
page-train-seed-wrong = 种子是0到18446744073709551615之间的整数，只用数字。
page-train-seed-now = 种子{ $seed }的练习题，均为虚构

# The ruler that can be moved.
page-train-ruler = 移动标尺
page-train-ruler-lead = 选择类别和物质，然后拖动铅锤或须线的一端。下面的文字会随之变化。
page-train-ruler-figure = 可移动的标尺；下面的输入框作用相同
page-train-ruler-none = 这种情况没有可画的标尺。原因见下面的文字。
page-train-class = 类别
page-train-class-polymer = 聚合物
page-train-class-metal = 金属
page-train-class-composite = 复合材料或电子件
page-train-class-plated = 电镀或涂覆
page-train-class-unknown = 玻璃或陶瓷
page-train-substance = 物质
page-train-substance-cd = 镉（Cd）
page-train-substance-pb = 铅（Pb）
page-train-substance-hg = 汞（Hg）
page-train-substance-cr = 铬（Cr）
page-train-substance-br = 溴（Br）
page-train-kind = 文件中的内容
page-train-kind-number = 数值
page-train-kind-below = 低于检出限
page-train-kind-none = 未检出，未注明检出限
page-train-value = 数值，mg/kg
page-train-limit = 检出限，mg/kg
page-train-sigma = 1σ，mg/kg
page-train-slide-value = 移动数值
page-train-slide-limit = 移动检出限
page-train-slide-sigma = 移动σ
page-train-slid = { $value } mg/kg
page-train-thickness = 厚度，mm
page-train-now = 现在：{ $outcome }

# Exercises.
page-train-exercises = 练习题
page-train-exercise = 练习题{ $n }
page-train-ask-outcome = 这个读数对{ $substance }说明什么？
page-train-ask-disposition = 这一批该如何处理？
page-train-none-stated = 未注明
page-train-readings = 文件中的读数，mg/kg ± 1σ
page-train-column-sample = 样品
page-train-column-unit = 件
page-train-column-material = 材料
page-train-fact-size = 该批共{ $n }件。
page-train-fact-size-none = 无人说明该批有多少件。
page-train-fact-take = 应测{ $n }件。
page-train-fact-materials = 部件的材料：{ $list }。
page-train-fact-trust-advisory = 本题中核查读数仅供参考。
page-train-fact-certificate = { $sample }是核查片。其证书值为：Cd { $cadmium } mg/kg，Pb、Hg、Cr、Br各{ $others } mg/kg。
page-train-fact-seconds = 每个读数测{ $seconds }秒。
page-train-fact-category = 产品属第{ $category }类（监视和控制仪器）。儿童不可能把该部件放入口中。
page-train-fact-placed = 产品于{ $day }投放市场。
page-train-fact-placed-none = 无人说明产品何时投放市场。
page-train-fact-claim = 供应商附函主张豁免{ $entry }（铅最大{ $percent } %，至{ $day }）。该主张有两人签署姓名缩写。
page-train-fact-claim-one = 供应商附函主张豁免{ $entry }（铅最大{ $percent } %，至{ $day }）。该主张只有一人签署姓名缩写。
page-train-fact-claim-none = 无人主张豁免。
page-train-fact-renewal-none = 无人申请豁免{ $entry }的续期。
page-train-check = 核对我的答案
page-train-choose = 请先选择一个答案。
page-train-right = 正确
page-train-wrong = 不正确
page-train-you-said = 您的答案：{ $answer }。
page-train-tool-says = 工具的答案：
page-train-move = 在标尺上移动这些数值
page-train-more = 换一组数值，再来一题

# The score sheet.
page-train-sheet = 成绩单
page-train-sheet-empty = 尚未作答。回答一些练习题后，会列在这里。
page-train-sheet-name = 学员姓名或缩写（可不填，绝不保存）
page-train-sheet-day = 日期
page-train-sheet-print = 打印成绩单
page-train-sheet-asked = 题目
page-train-sheet-answered = 作答
page-train-sheet-right = 正确答案
page-train-sheet-result = 结果
page-train-sheet-clause = 来源
page-train-sheet-total = { $of }题中答对{ $right }题
page-train-sheet-trainee = 学员
page-train-sheet-trainer = 培训人
page-train-sheet-signature = 日期和签名
page-train-sheet-no-certificate = 所有读数和批次都是虚构的。本单记录一次练习，不是能力证明。
page-train-where = 练习室
page-step-what-if = 推算假设的读数
page-step-exercises = 生成练习题
page-step-solved = 推算练习题
page-step-invented-delivery = 生成虚构到货

# The lessons.
page-train-band-title = 什么是区间
page-train-band-1 = 读数从来不是完全准确的。限值周围有一个区间，快速XRF读数在其中分不出好坏。
page-train-band-2 = 对聚合物中的铅，法律允许1000 mg/kg，区间为700至1300。明显低于区间是“低于限值”（BL），明显高于区间是“超出限值”（OL）。介于其间，读数为“未定”（X），由实验室确定。
page-train-band-3 = 未定也是一个答案，不是失败：它说明下一步该做什么。
page-train-band-source = 区间：IEC 62321-3-1:2013，筛选限值表。限值：指令2011/65/EU，附件II（均已核实）。
page-train-band-try = 把铅锤从左拖到右。文字在哪里变化？

page-train-sigma-title = 为什么是3σ
page-train-sigma-1 = 对同一测点再测一次，数值会略有不同。1σ说明通常相差多少。
page-train-sigma-2 = 须线长3σ。“低于限值”要求整条须线都在区间之下，“超出限值”要求整条须线都在区间之上。刚好碰到边界也算。
page-train-sigma-3 = 如果仅3σ就已达到区间下界，那么任何数值都不能证明“低于限值”：请延长测量。没有不确定度的数值什么也不能决定。
page-train-sigma-source = IEC 62321:2008：3σ表示分析仪在行动水平处的重复性，置信水平99.7 %（已核实）。
page-train-sigma-try = 铅锤不动，把须线拉长。答案会从低于限值变为未定，再变为能力不足。

page-train-element-title = 为什么溴和铬从不“超出”
page-train-element-1 = 法律限制的是含溴的PBB和PBDE，以及六价铬。XRF只能测出元素。
page-train-element-2 = 溴少就意味着PBB和PBDE少：可以排除。溴多可能来自允许的物质：无论数值多大都是未定，由实验室检测物质本身。铬也一样。
page-train-element-3 = PBB和PBDE不会出现在金属中，因此金属中的溴不适用。
page-train-element-source = IEC 62321-3-1:2013，筛选限值表：Br和Cr没有上界。指令2011/65/EU，附件II：限值针对PBB、PBDE和Cr(VI)（均已核实）。
page-train-element-try = 把铅锤尽量拖到最右。它从不显示“超出”。

page-train-censored-title = 低于检出限的值
page-train-censored-1 = “< 40”的意思是：没有测到，而如果有40，仪器是能测到的。它不等于零。
page-train-censored-2 = 检出限D相当于3σ，因此真值仍可能达到D的两倍。只有两倍D仍在区间之下，读数才是低于限值；否则就是检出限过高。
page-train-censored-3 = 没有检出限的“n.d.”什么也不能排除。短横线不是测量。在复合材料中，镉只有在注明的检出限最大50 mg/kg时才能排除。
page-train-censored-source = 以3σ为检出限：IUPAC 1978（凭记忆）；US EPA Method 6200，9.6（已核实）。复合材料中的镉：IEC 62321-3-1:2013，筛选限值表（已核实）；50 mg/kg是我们自己的规则。
page-train-censored-try = 把检出限调高，直到不能再排除。然后选择“未检出，未注明检出限”。

page-train-material-title = 一次一种材料
page-train-material-1 = 限值适用于每一种均质材料：即不能再用拧开、切割、压碎或研磨等方法分开的东西。一根电缆有多种材料，每一层镀层也是一种。
page-train-material-2 = 一种材料超出限值，整个部件就不接收。没有人测过的材料仍是未决：该批暂扣。
page-train-material-3 = 对电镀件，射线束把镀层和基体混在一起，因此不作判定。薄件返回的信号太少：数值小也是未定。薄件应叠放测量。
page-train-material-source = 指令2011/65/EU，第3条(20)（条号凭记忆）；IEC 62321-2:2021，4.6（已核实）。对层不作判定以及厚度修正，是我们自己的规则。
page-train-material-try = 不动铅锤，把类别从金属改为电镀，再改回来。

page-train-exemption-title = 豁免
page-train-exemption-1 = 有些用途允许更高含量。按条目6(c)，铜合金可含最多4 %的铅，到该条目到期日为止。豁免从不改变判定结果：铅仍是超出限值；主张或能涵盖它，或不能。
page-train-exemption-2 = 只有样样齐备，主张才能涵盖：正确的材料、明显在条目限值之内的数值、产品类别、投放市场日期、证据，以及两人的姓名缩写。
page-train-exemption-3 = 明显高于条目限值，或已到期而未续期：不接收。缺少任何一项，或过于接近而无法判定：暂扣。
page-train-exemption-source = 指令2011/65/EU，附件III，条目6(c)，2025年修订（由二手来源转述）。其限值处的余量和第二人的姓名缩写是我们自己的规则。
page-train-exemption-try = 黄铜中27 000 mg/kg的铅就是2.7 %。标尺显示超出；只有对该批的主张才能涵盖它。

page-train-trust-title = 今天的仪器可信吗？
page-train-trust-1 = 在读数之前和之后，各测一次含量已知的核查片。两次都正确，其间的读数才算数。
page-train-trust-2 = 没有核查、核查未通过，或最后一个读数之后没有核查：数值照样保留，但该批暂扣。超出限值的读数，无论核查如何，仍是超出。
page-train-trust-3 = 时间也重要：时间增至四倍，σ减半。测得太短的读数可能过于粗略，什么也不能排除。
page-train-trust-source = US EPA Method 6200，9.4（开始、中间和结束时的核查）和9.5（时间四倍，精密度两倍）（已核实）。只有两次良好的核查之间的读数才算数，是我们自己的规则。
page-train-trust-try = 这里的σ是测5秒的结果。把它减半需要四倍时间。要测多久才能排除？

page-train-sampling-title = 抽样，以及接收的含义
page-train-sampling-1 = 一批的判定依据所测的件。取多少件在测量之前确定，数的是件，不是读数：一件上测四处仍是一件。
page-train-sampling-2 = 一件超出限值：该批不接收。一件未定或未测全、件数太少，或批量不明：暂扣。
page-train-sampling-3 = “接收”的意思是：就所筛选的物质而言，在这些件上没有发现不利于该批的情况。它不是符合性声明，而且XRF根本测不出邻苯二甲酸酯。
page-train-sampling-source = IEC 62321-2:2021，4.6：任何部件中有一个结果超出限值，整体即不符合（已核实）。“暂扣”及其条件是我们自己的规则。
page-train-sampling-try = 一件未定就使该批暂扣。找出不致暂扣的数值，以及会使该批不接收的数值。

page-train-sample = 样本无一超出限值时，仍可能的情况
page-train-sample-size = 该批件数
page-train-sample-taken = 所测件数
page-train-sample-told = { $n ->
    [0] 所测{ $taken }件中没有超出限值的：以95 %的置信水平，该批{ $size }件中也没有。
   *[other] 所测{ $taken }件中没有超出限值的：以95 %的置信水平，该批{ $size }件中仍可能有最多{ $n }件超出。
 }
page-train-sample-none = 所测件数不能多于该批件数。
page-step-clean-sample = 推算样本之外仍有的可能

# The same in short, for the score sheet.
page-train-clause-material = IEC 62321-2:2021，4.6；对层和薄件是我们自己的规则
page-train-clause-exemption = 指令2011/65/EU，附件III，条目6(c)（由二手来源转述）
page-train-clause-trust = US EPA Method 6200，9.4和9.5；两次良好的核查是我们自己的规则
page-train-clause-sampling = IEC 62321-2:2021，4.6；导致暂扣的条件是我们自己的规则

page-delivery-01 = 干净的外壳
page-delivery-02 = 红色电缆
page-delivery-03 = 黄铜阀
page-delivery-04 = 阻燃剂
page-delivery-05 = PVC软管
page-delivery-06 = 时间短的读数
page-delivery-07 = 核查标准样品
page-delivery-08 = 被调换的材料
page-delivery-09 = 过薄的抽样方案
page-delivery-10 = 小数逗号
page-delivery-11 = 镀层螺钉
page-delivery-12 = 薄膜
page-delivery-13 = 钢销
page-delivery-14 = 重复读数
page-delivery-15 = 变更的配方
