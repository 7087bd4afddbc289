# Simplified Chinese: help where one stands: terms, the guide, the tour, shortcuts, the diagnostic file.

page-words-here = 本页用语
page-term-close = 关闭
page-term-source = 来源：
page-term-guide = 在指南中查看全部用语

page-term-screening = 筛选
page-term-screening-is = 一种快速测试，把材料分为明显低于限值、明显超出限值和未定三类。未定的送实验室；它不作任何声明。
page-term-xrf = XRF（X射线荧光）
page-term-xrf-is = 分析仪向测点发射X射线，每种元素以自己的谱线回应。它测的是元素而不是化合物，而且只测到表面下的一薄层。
page-term-reading = 读数
page-term-reading-is = 在一个测点上的一次测量：每种元素的数值和不确定度，以及所用时间。
page-term-lot = 批次
page-term-lot-is = 一个供应商以一个名称一起交付的货物。整批接收、暂扣或不接收。
page-term-limit = 限值
page-term-limit-is = 规则允许材料中某物质的最大含量，例如铅1000 mg/kg。恰好等于限值是否允许，由各规则集写明。
page-term-band = 区间
page-term-band-is = 限值周围筛选不得作出判定的范围。它从下界到上界，并向两侧各再延伸3σ。
page-term-action-level = 行动水平
page-term-action-level-is = 接近限值、必须采取行动的含量。标准要求的是分析仪在该水平的重复性，而不是在零附近的重复性。
page-term-sigma = 1σ
page-term-sigma-is = 读数通常离散程度的大小：重复测量约三次中有两次落在1σ之内。分析仪给出1σ、2σ或3σ，因此必须知道倍数。
page-term-repeatability = 重复性
page-term-repeatability-is = 在不改变任何条件时，同一样品各次读数的离散程度。就区间而言，它指限值附近单次读数的离散程度。
page-term-bl = BL，低于限值
page-term-bl-is = 数值连同其3σ都在区间以下。只针对这种元素、这种材料、这个测点。
page-term-x = X，未定
page-term-x-is = 数值或其3σ触及区间。既不是通过，也不是不通过：须由别的方法来确定。
page-term-ol = OL，超出限值
page-term-ol-is = 数值减去3σ后仍在区间以上。溴和铬永远不会是OL：限值针对的是化合物，而XRF测不出化合物。
page-term-not-measured = 未测量
page-term-not-measured-is = 文件中没有该元素的数值，或没有单位已知的数值。这与未检出不同。
page-term-no-uncertainty = 无不确定度
page-term-no-uncertainty-is = 有数值但没有σ，因此无人能说它可信到什么程度。按未决处理。
page-term-detection-limit = 检出限
page-term-detection-limit-is = 分析仪能与“没有”区分开的最小含量，通常是几乎不含该元素的样品读数离散程度的3倍。
page-term-detection-too-high = 检出限过高或未注明
page-term-detection-too-high-is = 未检出，但分析仪不够灵敏，不能证明“低于限值”。请延长测量，或改用其他方法。
page-term-not-capable = 能力不足
page-term-not-capable-is = 仅3σ就已达到区间下界，即使洁净的样品也得不到BL。需要更小的σ。
page-term-not-applicable = 不适用
page-term-not-applicable-is = 规则没有涉及这种材料中的这种元素，例如金属中的溴。
page-term-class = 材料类别
page-term-class-is = 聚合物、金属、复合材料或电镀件：它决定采用哪个区间。类别未知时按每一类别判定，以最差者为准。
page-term-homogeneous = 均质材料
page-term-homogeneous-is = 用拧开、切割、研磨、刮削都不能再分成不同材料的材料。限值适用于每一种均质材料，而不是整个部件。
page-term-composite = 复合材料
page-term-composite-is = 射线束下有几种材料且无法分开测量，例如装有元器件的电路板。其区间更宽。
page-term-plated = 电镀或涂覆
page-term-plated-is = 另一种材料上的一层。射线束测到的是两者的平均，因此筛选对该层给出X。
page-term-halogens = 卤素总量
page-term-halogens-is = 氯加溴，“无卤”规则所要求的量。只有在您指定了规则集时，才会因它使批次暂扣。
page-term-accept = 接收
page-term-accept-is = 所要求的都已测量且低于限值，证据也齐全。它只涵盖测量过的部分。
page-term-hold = 暂扣
page-term-hold-is = 有未定或缺少的内容，该批须等待。这不是拒收；有了结果，暂扣即结束。
page-term-not-accept = 不接收
page-term-not-accept-is = 至少一种材料超出限值，且没有豁免涵盖它。
page-term-evidence = 证据
page-term-evidence-is = 接收之前，除读数以外必须具备的内容：核查、抽样、材料清单等。
page-term-trust = 可信性
page-term-trust-is = 核查是否表明测得某读数时分析仪是准确的。它列在判定结果旁边，从不改变判定结果。
page-term-check = 核查标准样品
page-term-check-is = 含量已知的样品，在测量货物之前和之后测量，以表明分析仪准确。
page-term-blank = 空白样品
page-term-blank-is = 洁净、必须测不出任何东西的样品。若测出什么，说明污物或分析仪给每个读数都加了一份。
page-term-certified = 认定值
page-term-certified-is = 证书上写明的核查标准样品含量，带有不确定度。
page-term-bracketed = 在两次良好的核查之间
page-term-bracketed-is = 读数之前最近一次和之后第一次核查都良好时，该读数可信。
page-term-chart = 控制图
page-term-chart-is = 按时间顺序排列的核查读数，带中心线和控制限。它在核查未通过之前就能显示漂移。
page-term-plan = 抽样方案
page-term-plan-is = 规定一批中测量多少件以及由此能说明什么的规则。没有测量的件仍然未知。
page-term-acceptance-number = 接收数
page-term-acceptance-number-is = 方案仍允许的不合格品件数。对限用物质，无论表中如何规定，此处都是0。
page-term-exemption = 豁免
page-term-exemption-is = 法律中的一个条目，允许某物质在指明的用途中使用到某一日期。须有人主张，并附证据和第二人签名。
page-term-placing = 投放市场
page-term-placing-is = 产品首次在市场上提供。豁免和有时限的限值以这一天为准。
page-term-category = 产品类别
page-term-category-is = 法律所列十一类设备之一。不同类别的豁免在不同日期到期。
page-term-next-step = 下一步
page-term-next-step-is = 可能解决未决问题的最省事的办法：延长测量、换测点、分离后再测，或送实验室。
page-term-reference = 参考方法
page-term-reference-is = 用化学方法分解样品，并测定限用物质本身的实验室方法。
page-term-declaration = 符合性声明
page-term-declaration-is = 制造商以技术文件为依据对产品作出的法律声明。筛选至多是这些文件之一。
page-term-decision-rule = 判定规则
page-term-decision-rule-is = 把数值与限值比较时如何考虑不确定度的规则。这里以方法的区间为规则。
page-term-guard-band = 保护带
page-term-guard-band-is = 与限值保持的一段距离，使错误的“限内”很少发生。区间中已经包含一段。
page-term-probability = 在限内的概率
page-term-probability-is = 若不确定度正确且完整，真值在限内的可能性有多大。它在这里不决定任何事。
page-term-margin = 余量
page-term-margin-is = 数值与区间较近的边界相距多少个自身的σ，两侧都算。越小，离另一种判定结果越近。
page-term-digest = 摘要（SHA-256）
page-term-digest-is = 文件的指纹，由64位字符组成。改动一个字母，指纹就不同；它不透露任何内容。
page-term-act = 操作
page-term-act-is = 您在这里设定、回答或撤回的内容。所有操作都带您的姓名缩写写入报告；读数从不被改动。
page-term-book = 规则集
page-term-book-is = 注明日期的限值、区间或豁免清单，每项都有来源和条款。报告写明用了哪些。
page-term-caution = 注意
page-term-caution-is = 使读数存疑的情况，例如另一元素的谱线。它不改变判定结果；严重的会使批次暂扣。

page-from-bands = IEC 62321-3-1:2013，筛选限值表
page-from-scope = IEC 62321-3-1:2013，范围
page-from-action = IEC 62321:2008，结果评定，以及6.5.4的性能试验
page-from-annex-ii = 指令2011/65/EU，附件II
page-from-homogeneous = 指令2011/65/EU，第3条第(20)项（条款号凭记忆）
page-from-categories = 指令2011/65/EU，附件I
page-from-exemptions = 指令2011/65/EU，附件III和附件IV；两人签名是我们自己的规则
page-from-placing = 指令2011/65/EU，第3条（凭记忆）
page-from-declaration = 指令2011/65/EU，第13条（凭记忆）；EN IEC 63000:2018
page-from-halogens = IEC 61249-2-21:2003（由二手来源转述）
page-from-detection = US EPA Method 6200，9.6
page-from-check = US EPA Method 6200，9.4
page-from-bracket = 我们自己的规则，依据US EPA Method 6200，9.4
page-from-score = ISO 13528
page-from-chart = ISO 7870-2
page-from-plan = MIL-STD-105E
page-from-zero = 我们自己的规则：法律没有规定允许的不合格品比例
page-from-disposition = 用词出自ISO 2859-1；得出各处置的条件是我们自己的规则
page-from-decision = ISO/IEC 17025:2017，7.8.6.1；ILAC-G8:09/2019
page-from-guard = ILAC-G8:09/2019，4.1；JCGM 106:2012
page-from-probability = JCGM 106:2012，7
page-from-reference = IEC 62321-4至IEC 62321-8以及IEC 62321-12
page-from-digest = FIPS 180-4（凭记忆）
page-from-gum = JCGM 100:2008（凭记忆）
page-from-own = 我们自己的用词
page-from-habit = 通行做法，无来源

page-ruler-heading = 我看到的是什么？
page-ruler-alt = 一条从左到右的横杆。限值周围是画有斜线的区间。读数所在处垂下一个铅锤，两侧各有一根须线。
page-ruler-bob = 铅锤：读数
page-ruler-whiskers = 须线：两侧各3σ
page-ruler-band = 限值周围的区间
page-ruler-left = 左：低于
page-ruler-right = 右：超出
page-ruler-rail = 横杆：mg/kg，从少到多
page-ruler-why = 对筛选来说，限值不是一条线：在限值周围的斜线区间内不作判定。
page-ruler-below = 铅锤和须线都在区间左侧
page-ruler-undecided = 有一部分触及区间
page-ruler-over = 铅锤和须线都在区间右侧
page-ruler-others = 虚线横杆、没有铅锤：未测量。只有一小段横杆：规则不适用。顶部有横杆的立柱：没有区间的限值。虚线：在该侧某处，或在两条竖线之间某处。

page-guide = 指南
page-guide-close = 关闭
page-guide-search = 搜索指南
page-guide-found = { $n ->
    [0] 没有找到。
   *[other] 找到{ $n }处。
  }
page-guide-go = 前往该处
page-guide-words = 用语
page-guide-keys = 按键
page-guide-tour = 带我看一遍
page-guide-bring = 载入文件
page-guide-bring-text =
    选择结果文件，或把文件、文件夹拖放到页面任意处。可读取CSV、TSV或文本表格、工作簿（XLSX、ODS）以及它们的ZIP压缩包。
    设置、列对应、规则集、历史文件和物料清单各有自己的入口。照片可以和结果一起载入。
    供应商从“发货前自查”进入：同样的审查，按客户的规则集进行自查。
    不向任何地方发送任何内容。文件只读取，从不更改。
page-guide-columns = 页面如何理解各列
page-guide-columns-text =
    每一行恰有一个去处：使用、核查、重复行、搁置或拒读。行数相符，每个拒读行都写明原因。
    每列都列在识别出的含义之下。有误处请改选，文件会立即重新读取。
    文件没有说明的内容（单位、σ倍数、日期顺序、类别）在上方提问。回答之前，按严格的理解处理。不作猜测。
page-guide-trust = 读数可信吗？
page-guide-trust-text =
    每张卡片是一种证据：有什么用、缺少什么、在哪里给出。“缺少”会使批次暂扣。
    核查读数需要认定值，否则不能证明任何事。在两次良好的核查之间的读数可信。
    姓名缩写输入一次即可，每项操作都会带上。任何操作都可以撤回，撤回也会记录。
page-guide-ruler = 读懂标尺
page-guide-ruler-text =
    看铅锤垂在哪里：在区间左侧为低于，右侧为超出，触及区间即未定。
    每个图形旁都有文字；颜色只是辅助。打开一个读数，可逐步查看判定结果是如何得出的。
    缺少数值时，页面会写明是哪一种情况：未测量、无不确定度、检出限过高、能力不足、不适用。都不算通过。
page-guide-materials = 材料、部件、批次
page-guide-materials-text =
    限值适用于每一种均质材料。以材料中最差的测点为准，测点之间从不取平均。
    部件的全部材料都查清，部件才算查清：请手工列出材料，或提供物料清单。整批以其最差的部件为准。
    批量和抽样方案规定要测量多少件。测量过的件，一件也不得超出限值。
page-guide-exemptions = 豁免
page-guide-exemptions-text =
    豁免绝不会自行适用。请针对一种材料主张，写明证据，并由第二人签名。
    它只对其用途、其类别有效，并且只到其日期为止。请填写投放市场的日期和产品类别。
    未查到的日期或仅凭记忆的日期都有标明。使用前请先查证。
page-guide-halogens = 卤素
page-guide-halogens-text =
    氯、溴及其总量总会计算。只有您在“卤素规则”中指定了规则集，才会因它们使批次暂扣。
    其中一项未检出时，总量是一个范围。只有其上端低于限值，才算低于。
    请先清洁表面：助焊剂、盐和标签都含氯。
page-guide-next = 接下来做什么
page-guide-next-text =
    所有未决内容按解决办法归类，最差的在前。每一步都通向有关读数，或待填的空栏。
    只有数值在区间边界之外时，延长测量才有用；页面会写明需要多久，或测多久都不行。
    实验室结果在“实验室结果”中输入。检测请求、通知和标签在“记录下来”中。
page-guide-report = 写报告
page-guide-report-text =
    填写何人、何处、何时。程序不读时钟：只有您填写，才会有日期。
    单页给作决定的人，完整报告留作记录，数据可取CSV、工作簿或JSON。报告可以用与页面不同的语言。
    请在打印出的页上签名：签名旁的摘要把纸面与数据联系在一起。
page-guide-prove = 验证报告
page-guide-prove-text =
    把报告拖回页面。程序用它所带的数据重新计算，并指出每一处不同。
    只有报告时，只能证明它自身前后一致。另有制作它所用的文件时，能证明数据出自这些文件；有签名纸件上的摘要时，能证明它就是所签的报告。
page-guide-keep = 保存，以及不留下任何内容
page-guide-keep-text =
    页面顶部写明您的工作是否已保存。按该处可将本次检验保存到文件；拿到该文件的人都能阅读其内容。
    此浏览器中有一份加密的恢复副本。崩溃之后只有向您显示的恢复码才能打开它，请抄写下来。
    按“不在此计算机上留下任何内容”就不保留副本，也不记住任何内容。在借来的计算机上请选用它，并清空下载文件夹。
page-guide-wrong = 出问题时
page-guide-wrong-text =
    消息写明出了什么问题、位置、原因和处理办法，并一直显示到您关闭为止。您的文件从不改变。
    程序若停止，会带着您的文件和操作重新启动，但不含使它停止的那个文件。
    诊断文件可帮助修复程序的人。其中没有测量数据，也没有名称；保存之前可以先看。
page-guide-safety = 安全
page-guide-safety-text =
    分析仪发出电离辐射。切勿对着人，切勿用手拿着样品放在它前面，请使用支架或防护罩。
    研磨、刮削和切割产生的粉尘可能含铅、镉或铬：请戴口罩和手套，吸除粉尘，洗手。
    请遵守现场规定和分析仪的文件。本页面对两者都不了解。
page-guide-law = 法律与许可
page-guide-law-text =
    在许多国家，只有受过培训或有许可的人才可使用X射线分析仪，并且只能在已登记的地点使用。测量之前请先询问。
    规则因国家而异，并会变化。这里的规则集有日期和来源；请核实它们是否适用于您。
    筛选不是符合性声明，这里的“接收”也不是。它只表明在所测范围内没有发现超出限值的情况。

page-tour-offer = 第一次来？六站，一分钟，使用虚构数据。
page-tour-start = 带我看一遍
page-tour-not = 不用，谢谢
page-tour-at = 第{ $n }站，共{ $of }站
page-tour-next = 下一站
page-tour-back = 上一站
page-tour-leave = 离开
page-tour-end = 回到首屏
page-tour-none = 这份页面没有可供展示的到货数据。
page-tour-steps = 五个问题
page-tour-steps-text = 每次到货都从左到右经过五个问题。数字表示哪里有事等您处理。这次到货是虚构的。
page-tour-came-in-text = 文件的每一行恰有一个去处，行数相符。文件没有说明的内容在下方提问。
page-tour-trust-text = 每张卡片是一种证据。写着“缺少”的，在给出之前，该批一直暂扣。
page-tour-says-text = 每批先列最差的理由。带点线的词有解释：指向它或点按它即可。
page-tour-next-stop-text = 所有未决内容，按解决办法归类。每个按钮通向相应的位置。
page-tour-write-text = 写明由谁审查了什么，然后取走报告。“撤销”可撤回您记录的任何内容。到此结束。

page-keys-heading = 本页面的按键
page-keys-what = 作用
page-keys-key = 按键
page-keys-anywhere = 任意处
page-keys-table = 在读数表中
page-keys-cards = 在卡片和列表中
page-keys-photo = 在照片上
page-keys-single = 使用不带Ctrl或Alt的按键（{ $keys }）
page-keys-single-hint = 若您用语音操作计算机，或常误按按键，请关闭。
page-key-guide = 打开指南
page-key-keys = 显示此列表
page-key-place = 前往“{ $place }”
page-key-next = 前往下一步
page-key-filter = 转到读数表的查找栏
page-key-rows = 上移或下移一行
page-key-cells = 左移或右移一格
page-key-heads = 从一个标题移到下一个
page-key-head-sort = 按此标题排序
page-key-head-term = 显示标题的含义
page-key-screens = 上移或下移一屏
page-key-ends = 第一行或最后一行
page-key-open = 打开读数
page-key-fold = 展开或收起分组
page-key-select = 选择各行
page-key-select-one = 选择或去除此行
page-key-select-all = 选择显示的所有行
page-key-copy = 复制所选内容到电子表格
page-key-select-none = 取消选择
page-key-close = 关闭已打开的内容
page-key-take = 记录所选内容
page-key-pick = 在列表各值间移动，不记录
page-key-spot = 移动标记；按住Shift可微调
page-key-spot-take = 记录标记

page-diagnostic = 诊断文件
page-diagnostic-save = 保存诊断文件
page-diagnostic-look = 文件中只有这些内容。没有名称、列标题、单元格内容或测得的数值，也没有您输入的任何内容。不会发送：请把文件交给为您维护Plumbline的人。
page-diagnostic-text = 诊断文件的内容
page-diagnostic-write = 保存此文件

page-trouble-raw = 供帮助您的人查看
page-trouble-crash-why = Plumbline自身有缺陷：遇到了编写者没有想到的情况。您的文件保持原样。
page-trouble-crash-no-answer-why = 计算部分五秒钟没有应答。计算机可能很忙，或内存不足。
page-trouble-page-why = Plumbline自身有缺陷。您的文件保持原样。
page-trouble-engine-why = 浏览器没有运行本页面的计算部分。可能内存不足，或被安全设置阻止。
page-trouble-gone-why = 它已不在选择时的位置：被移动、改名或删除，或者U盘被拔出。
page-trouble-locked-why = 计算机不让浏览器读取它：它在选择之后被更改，正被其他程序打开，或者U盘被拔出。
page-trouble-reading-why = 浏览器无法读取它。
page-trouble-not-text-why = 其中含有不属于普通文本的字符。它可能是另一种文件，或以另一种文本编码保存。
page-trouble-not-text-todo = 请选择作为设置、列对应、规则集或历史文件写成的文件。若是手工编写的，请保存为UTF-8。
page-keycap-enter = Enter
page-keycap-ctrl = Ctrl
page-keycap-space = 空格
page-keycap-escape = Esc
page-keycap-shift = Shift
page-keycap-pgup = Page Up
page-keycap-pgdn = Page Down
page-keycap-home = Home
page-keycap-end = End

page-step-ahead = 查看批次的后续情况
page-step-checks = 查看核查读数
page-step-shelf = 列出规则集
page-step-explained = 说明规则集
page-step-summary = 汇总审查结果
page-step-teach = 载入语言
page-step-speak = 切换语言
page-step-history = 读取历史文件
page-step-bill = 读取物料清单
