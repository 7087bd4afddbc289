# Simplified Chinese: what the core says

# Glossary. Keep to it in every file.
#   screening 筛选 · reading 读数 · measurement 测量 · value 数值 · mass fraction 质量分数
#   homogeneous material 均质材料 · material class 材料类别 · polymer 聚合物 · composite / electronics 复合材料/电子件
#   plated, coated or passivated 电镀、涂覆或钝化 · layer 层 · coating 镀层 (plating, Cr(VI) tests), 涂镀层 (in general) · cable sheath 电缆护套
#   below limit 低于限值 · over limit 超出限值 · undecided 未定 · open 未决 · not measured 未测量 · not detected 未检出
#   not applicable 不适用 · not capable 能力不足 · within 限内 (laboratory results, limits)
#   band 区间 · low edge 下界 · high edge 上界 · either edge 边界 · limit 限值 · decision rule 判定规则 · guard band 保护带 · outcome 判定结果
#   lot 批次 (with a number or 该/本/每/一: 批) · lot size 批量 · unit, piece 单件 (counted: 件) · unit of measure 单位 · part 部件 · bill of materials 物料清单
#   disposition 处置 · accept 接收 · hold 暂扣 · not accept 不接收 · lift a hold 解除暂扣 · quarantine, keep apart 隔离
#   sampling plan 抽样方案 · acceptance number 接收数 · reject number 拒收数 · nonconforming 不合格 · code letter 字码
#   inspection level 检验水平 · severity 宽严程度 · normal/tightened/reduced inspection 正常/加严/放宽检验 · isolated lot 孤立批
#   check standard 核查标准样品 · check reading 核查读数 · blank 空白样品 · certified value 认定值 · trust 可信性
#   detection limit 检出限 · uncertainty 不确定度 · one sigma 1σ · repeatability 重复性 · in quadrature 以方和根合成
#   printed error 所列误差 · multiple of sigma σ倍数 · chance 概率 · repeats (of a spot) 重复测量 · duplicate (row) 重复行 · spot 测点 · beam 射线束
#   exemption 豁免 · entry 条目 · claim 主张 · renewal 续期 · expire 到期 · placing on the market 投放市场
#   declaration of conformity 符合性声明 · laboratory 实验室 · reference method 参考方法 · screen (result) 筛选结果
#   analyser 分析仪 · instrument 仪器 · mode 测量模式 · line 谱线 · escape peak 逃逸峰 · sum peak 和峰 · drift 漂移
#   inspection 检验 · inspector 检验员 · delivery 到货 · bring in 载入 · restricted 限用 · run rules 判异准则
#   site repeatability 现场重复性 · action level 行动水平 · a check is good 良好, failed 未通过 (never 合格) · put off 推迟 · clear 查清, 排除
#   rule book 规则集 · settings 设置 · mapping 列对应 · history 历史文件 · act 操作 · review 审查 · digest 摘要
#   refused row 拒读行 · set aside 搁置 · notice 提示 · remedy 处理办法 · advisory 仅提示 · initials 姓名缩写 · stick U盘
#   report issued by 出具方 · date of issue 发布日期 · authorise 批准 · customer 客户 · item 物品 · condition 状态 · taking samples 取样
#   additions, deviations, exclusions 补充、偏离和删减 · opinions and interpretations 意见和解释 · external provider 外部提供方
#   length of a report 篇幅 · one page 单页 · full report 完整报告 · annex 附录 · invented 虚构 · prove 验证 · check of a text 校验值
#   coverage factor 包含因子 · limit of quantification 定量限 · chain of custody 样品交接记录 · laboratory request 实验室检测请求
#   check a report 核对 (prove 验证) · papers 文书 · notice to a supplier 致供应商的通知 (贵方/我方) · label 标签 · photograph 照片 · picture 图片 · join 关联 · mark the spot 标出测点

## Outcomes: the code's short form and its words

outcome-BL = 低于限值
    .short = BL
outcome-X = 未定
    .short = X
outcome-OL = 超出限值
    .short = OL
outcome-not_measured = 未测量
    .short = 未测量
outcome-no_uncertainty = 无不确定度
    .short = 无σ
outcome-detection_too_high = 检出限过高或未注明
    .short = 检出限过高或无
outcome-not_capable = 此σ下测量能力不足
    .short = 能力不足
outcome-not_applicable = 不适用
    .short = 不适用

## Reasons of an outcome

reason-no_column = 文件中没有{ $about }的列。
reason-cell_blank = { $about }的单元格为空或只有一横。
reason-cell_not_understood = { $about }的单元格中的文字不是测量值。
reason-unit_not_stated = 未注明{ $about }的单位，因此这个数还不能算质量分数。
reason-detection_limit_above_band = 未检出，但检出限过高，不能证明“低于限值”。
reason-limit_not_stated = 未检出，且任何地方都未注明检出限。
reason-uncertainty_not_stated = 数值旁没有不确定度（空白或为零）。
reason-three_sigma_reaches_band = 仅3σ就已达到区间下界，因此这次测量不能证明“低于限值”。对此数值，σ最大为{ $enough } mg/kg即可。
reason-three_sigma_reaches_band-inside = 仅3σ就已达到区间下界，而数值本身也等于或高于下界：测量多久都不能证明“低于限值”。
reason-three_sigma_reaches_band-open = 仅3σ就已达到某个区间的下界，因此这次测量不能证明“低于限值”。
reason-inside_band = 读数或其±3σ触及未定区间。
reason-element_only = 高于下界。XRF测的是元素，不是物质，因此永远不能判为“超出限值”。
reason-layer_not_resolved = 电镀、涂覆或钝化件：射线束测到的是表层与其下材料的平均值。
reason-above_range = 高于分析仪量程的上端，而该上端低于区间上界。
reason-negative_beyond_error = 比零低得太多，无法用其误差解释：读数因某种原因偏移了相当于限值的量，也就可能掩盖同样多的该物质。
reason-composite_needs_detection_limit = 复合材料中的镉，只有在注明的检出限不大于50 mg/kg、数值等于或低于该检出限、且3σ不大于50 mg/kg时，才是“低于限值”。
reason-repeats_disagree = 此测点各次重复测量之差超出其不确定度所允许的范围，因此不取其中任何一个作为该测点的数值。
reason-thin_sample = 太薄：若样品较厚，会多出的信号足以达到区间。
reason-not_applicable_in_metal = 不适用于金属。
reason-around_limit = 限值落在读数的3σ范围之内。
reason-censored_part = 其中一项只知道低于其检出限；总量是一个跨越限值的区间。
reason-part_not_measured = 总量中有一项未测量。
reason-part_without_uncertainty = 总量中有一项没有不确定度。
reason-part_limit_not_stated = 总量中有一项未检出，且未注明其检出限。
reason-one_part_alone = 仅其中一项就已超出总量的限值。
reason-copper_or_glass_in_beam = 低于限值，但在复合材料中，射线束里的铜或玻璃会稀释树脂。

## Where the sigma came from

sigma-printed = 所列误差，文件注明了倍数
sigma-printed_multiple_unknown = 所列误差，未注明倍数：按1σ计，这会加宽区间
sigma-printed_multiple_set = 所列误差，倍数由人设定
sigma-site_table = 现场在行动水平处的重复性
sigma-repeats = 该测点重复测量显示的σ，大于所列的σ
sigma-detection_limit = 检出限除以三
sigma-none = 无

## Material classes

class-polymer = 聚合物
class-metal = 金属
class-composite = 复合材料/电子件
class-plated = 电镀、涂覆或钝化
class-unknown = 类别未知
class-from-declared = 文件注明
class-from-setting = 由人设定
class-from-not_stated = 无人注明
class-from-not_understood = 文件中的词不是此处已知的类别
class-from-not_in_book = 规则集没有该类别的区间

## Substances

substance-Cd = 镉
substance-Pb = 铅
substance-Hg = 汞
substance-Cr = 铬（总铬）
substance-Br = 溴（总溴）
substance-Cl = 氯
substance-total = 氯+溴
halogen-Cl = Cl
halogen-Br = Br（作为卤素）
halogen-total = Cl + Br
stands-for-Cr = 代表XRF测不出的Cr(VI)
stands-for-Br = 代表XRF测不出的PBB和PBDE

## Dispositions

disposition-accept = 仅就所筛选的物质接收
material-disposition-accept = 未发现不利情况
material-disposition-hold = 暂扣
material-disposition-not_accept = 不接收
disposition-hold = 暂扣
disposition-not_accept = 不接收

## Reasons of a disposition, worst first, each with what ends it

lot-reason-over_limit = { $of }个读数中有{ $count }个的{ $about }超出限值。
    .remedy = 隔离该批。将最差的样品送实验室按参考方法检测；只有其结果或有效的豁免才能改变此结论。
lot-reason-halogen_over_limit = { $of }个读数中有{ $count }个的{ $about }超出卤素限值。
    .remedy = 隔离该批。按各读数所列的方法确认。
lot-reason-over_in_some_classes = { $of }个读数中有{ $count }个的{ $about }，在它可能所属的某些材料类别下超出限值。
    .remedy = 注明材料类别。
lot-reason-not_measured = { $of }个读数中有{ $count }个未测量{ $about }。
    .remedy = 补测；数值没有单位时注明单位。
lot-reason-no_uncertainty = { $of }个读数中有{ $count }个的{ $about }没有不确定度。
    .remedy = 导出误差列，或给出现场重复性表。
lot-reason-detection_too_high = { $about }：{ $of }个读数中有{ $count }个的检出限过高或未注明。
    .remedy = 延长测量以降低检出限，或将其一并导出。
lot-reason-not_capable = { $about }：{ $of }个读数中有{ $count }个的σ过大，不能证明“低于限值”。
    .remedy = 延长测量，或使用参考方法。
lot-reason-undecided = { $of }个读数中有{ $count }个的{ $about }未定。
    .remedy = 按各读数的下一步办理：延长测量、换测点，或用参考方法。
lot-reason-halogen_open = { $of }个读数中有{ $count }个的{ $about }在卤素规则集下未决。
    .remedy = 按各读数的下一步办理。
lot-reason-file_not_read = 文件“{ $about }”未读入，或没有读入其中任何一行；里面可能有测量结果。
    .remedy = 在“收到了什么？”中查看该文件：换成能读取的格式，或将它移出本次检验。
lot-reason-units_not_stated = { $of }个读数中有{ $count }个未注明测的是哪一单件，因此无法清点是否达到方案要求的件数。
    .remedy = 在Unit列（件号）中写明每个读数所测的单件。
lot-reason-rows_refused = 来源中有{ $count }行拒读；这里可能缺少测量结果。
    .remedy = 查看拒读行，改正文件或重新测量。
lot-reason-layer_among_classes = 该材料各读数的类别不一致，{ $of }个读数中有{ $count }个属于表层（电镀、涂覆或钝化）；透过表层测得的结果仍属未定。
    .remedy = 请在文件中为表层和裸材料分别命名后重新载入，或将两者均注明为电镀（plated）。
lot-reason-class_unknown = { $of }个读数中有{ $count }个的材料类别未知，或同一材料的读数所写类别不同；已按每一类别判定，以最差者为准。
    .remedy = 注明材料类别。若是两种材料，请用两个名称。
lot-reason-thickness_not_stated = 塑料或轻合金中的镉或铅低于限值，但未注明厚度（{ $of }个读数中有{ $count }个）；薄件显示的含量少于实际含量。
    .remedy = 以毫米注明厚度。
lot-reason-material_not_measured = 部件的材料“{ $about }”未测量：没有计入的读数。
    .remedy = 测量该材料。
lot-reason-bill_of_materials_none = 有{ $count }个部件未给出物料清单，因此可能有材料未测量。
    .remedy = 列出该部件的均质材料。
lot-reason-material_not_listed = 测量了“{ $about }”，但它不在该部件的物料清单上：这可能不是商定的材料。
    .remedy = 查明它是什么；更正物料清单，或拒绝这一变更。
lot-reason-sampling_none = 未给出批量，或未给出方案要求的件数，因此无从证明测量的数量足够。
    .remedy = 给出批量和方案要求的件数。
lot-reason-sampling_too_few = 测得最少的材料只测量了{ $count }件；方案要求{ $of }件。
    .remedy = 补测缺少的件数。
lot-reason-multiple_not_stated = { $of }个读数中有{ $count }个未注明所列误差的倍数；按1σ计，这会加宽区间。
    .remedy = 注明误差列是1σ、2σ还是3σ。
lot-reason-halogen_book_not_loaded = 本次检验指定了卤素规则集“{ $about }”，但它未载入。
    .remedy = 载入该规则集文件，或指定一个已载入的规则集。
reason-advisory = （印出，不致暂扣）

## What screening does not answer

not-assessed-phthalates = 邻苯二甲酸酯（DEHP、BBP、DBP、DIBP）：XRF完全不能给出答案（IEC 62321-8）。
not-assessed-pbb_pbde = PBB和PBDE：只能凭低溴排除，从未测量（IEC 62321-6）。此处的低溴不能证明满足法规(EU) 2019/1021对PBDE的10 mg/kg限值。
not-assessed-cr6 = Cr(VI)：只能凭低总铬排除，从未测量（IEC 62321-7-1、-7-2）。在钝化或电镀表面，总铬说明不了任何问题。
not-assessed-exemptions = 无人主张的豁免：除非有人针对该豁免提出主张，并附证据和第二人的姓名缩写，否则一概不适用。
not-assessed-change = 未测量的材料、层和部件。

## Next steps

next-measure_element = 测量{ $about }。
next-state_unit = 注明{ $about }列的单位。
next-read_cell_again = 查看文件中的该单元格：改正它，或重新测量。
next-state_uncertainty = 导出{ $about }的不确定度，或给出现场重复性表。
next-state_detection_limit = 导出{ $about }的检出限。
next-state_class = 注明材料类别。
next-measure_longer = 在此测点总共测量约{ $seconds } s（未注明射线束），有一半的概率得出判定；约{ $surely } s有九成概率；此为估计。
next-measure_longer_even_only = 在此测点总共测量约{ $seconds } s（未注明射线束），有一半的概率得出判定；要达到九成概率须超过{ $cap } s；此为估计。
next-another_spot = 测另一测点：可看出材料是否不均匀。它可能测得更多，但绝不能消除本测点的疑问。
next-repeat_again = 清洁测点，放平后重测：各读数相互矛盾。
next-find_shift = 查明使读数偏移的原因（校准、本底、单位），然后重测该测点。
next-lower_detection_limit = 延长测量：时间增至四倍，检出限减半。
next-thicker_piece = 叠放样品，或测量较厚的样品。
next-separate_layers = 将表层与其下的材料分开，或将各层作为单独的材料测量。
next-laboratory = 送实验室检测；规则集未指明方法。
next-reference_method = 实验室：{ $method }，{ $technique }。

## Intake: what a column was taken for, and why

role-value = 数值
role-uncertainty = 不确定度
role-detection_limit = 检出限
role-id = 样品或读数编号
role-unit = 单件
role-spot = 测点
role-part = 部件
role-material = 材料名称
role-lot = 批次
role-supplier = 供应商
role-class = 材料类别
role-time = 日期和时间
role-seconds = 测量时间
role-instrument = 仪器
role-mode = 测量模式
role-operator = 操作员
role-thickness = 厚度
role-note = 备注
role-spectrum = 谱图或滤光片
role-photo = 照片
role-element = 元素名称
role-below_mark = “低于检出限”的标记
role-error_multiple = 不确定度代表几倍σ
role-time_of_day = 时刻
role-unit_of_measure = 该行的计量单位
role-unused = 未使用
evidence-element_heading = 列标题写有元素，其余各词也都能识别
evidence-element_in_another_case = 列标题是大小写不同的元素符号，相邻的列标题也是
evidence-oxide_heading = 列标题是氧化物；其数值按原子量换算为元素
evidence-holds_elements = 其单元格写的是元素
evidence-oxide_beside_element = 该元素另有自己的列，这是它的氧化物；只在元素列为空时使用
evidence-told = 由人指定
evidence-follows_element = 紧跟在元素列之后的误差列标题
evidence-known_heading = 列标题是已知的词
evidence-class_words_only = 每个单元格都是表示材料类别的词
evidence-holds_units = 单元格中是计量单位
evidence-holds_seconds = 列标题为时间，单元格中是较小的数，没有日期
evidence-unit_not_understood = 列标题写有元素，但无法识别其单位，因此数值仍作文字
evidence-words_not_understood = 列标题以元素开头，但含有无法识别的词
evidence-already_taken = 另一列已有此含义
evidence-not_known = 无法识别该列标题
confidence-sure = 确定
confidence-likely = 很可能
confidence-look = 请查看
layout-wide = 每个读数一行，每种元素一列
layout-long = 一个读数的每种元素一行
layout-turned = 行列互换：每个读数一列，每种元素一行
layout-joined = 每个读数有几行，已在此合并
encoding-by-byte_order_mark = 由文件开头的字节注明
encoding-by-valid_utf8 = 每个字节都相符
encoding-by-byte_counts = 由零字节的位置判断
encoding-by-words_found = 这样读时出现结果表中的词
encoding-by-guess = 仅凭字节推测：请查看名称和符号是否正确
encoding-by-told = 由人指定
id-template-no_field = 尚未指定任何一段：请至少说明一段是什么。
id-template-unknown_field = 有一个名称无法识别。
id-template-field_twice = 有两段指定为同一名称。
id-template-nothing_between = 有两段之间没有分隔，因此无法看出前一段到哪里为止。
id-template-open_brace = 编号中含有花括号，模式无法表示。
id-template-too_many_fields = 编号的段数超过模式所能有的段数。
id-template-piece_not_in_id = 有一段不在编号中。
id-template-separator_in_piece = 分隔各段的字符也出现在某一段里，因此不靠猜测就无法拆分该编号。
relative-to-value = 以数值的百分数表示
sigmas = { $multiple }σ
set-aside-blank = 空行
set-aside-heading = 表内重复的标题
set-aside-remark = 不是样品：备注、键及其值、统计值或限值
set-aside-unit_row = 单位行

## Intake: notices and refusals, each with its remedy

notice-unreadable = 无法读取文件：{ $found }
    .remedy = 从U盘重新复制一次再试。
notice-empty_file = 文件为空。
    .remedy = 重新导出；文件里没有内容，所以这里没有丢失任何东西。
notice-header_only = 文件只有标题行，其下没有任何行。
    .remedy = 连同读数重新导出。
notice-not_text = 这些字节不是文本；不论文件名怎么写，这都不是表格。
    .remedy = 将结果导出为CSV文本。
notice-workbook_broken = { $found ->
        [no_sheet] 工作簿中没有含单元格的工作表。
       *[damaged] 工作簿不完整、已损坏，或根本不是工作簿。
    }
    .remedy = 用电子表格程序打开，重新保存为XLSX或CSV，再载入该文件。
notice-workbook_not_read = 工作簿有密码保护，或是此处不支持的旧格式。
    .remedy = 去掉密码后保存为XLSX、ODS或CSV，再载入该文件。
notice-workbook_too_large = 工作簿内容超过此处解包的上限：{ $found ->
        [ratio] 压缩程度远高于单元格应有的程度。
        [cells] 单元格超过2000万个。
       *[part_size] 某一部分超过256 MiB。
    }
    .remedy = 将含结果的工作表保存为CSV，再载入该文件。
notice-other_sheets = 已读取工作表“{ $found }”；另有{ $rows }张工作表未读取。
    .remedy = 如果结果在另一张工作表上，请为此文件选择它。
notice-sheet_not_there = 工作簿中没有工作表“{ $found }”。
    .remedy = 为此文件选择其中一张工作表。
notice-archive_broken = 压缩包不完整、已损坏，或根本不是压缩包。
    .remedy = 解压后载入其中的文件，或请对方重新发送。
notice-archive_too_large = 压缩包内容超过解压的上限：{ $found ->
        [ratio] 压缩程度远高于结果文件应有的程度。
        [files] 文件超过20 000个。
        [entry_size] 有一个文件超过512 MiB。
        [packed_size] 压缩状态下已超过1 GiB。
       *[archive_size] 总共超过2 GiB。
    }
    .remedy = 如果来源可靠，请解压后载入其中的文件。
notice-entry_not_read = 无法解压压缩包中的该文件：{ $found ->
        [password] 有密码保护。
        [method] 此处不支持其压缩方式。
       *[damaged] 已损坏。
    }
    .remedy = 用密码解压该压缩包，再载入其中的文件。
notice-archive_in_archive = 压缩包中的压缩包不会解压。
    .remedy = 解压外层压缩包，再载入内层压缩包。
notice-encoding_inferred = 文本按{ $found }读取；文件本身未注明编码。
    .remedy = 如果名称显示不对，请为此文件选择编码。
notice-bytes_no_character = 有字节在所用编码中不是字符，首次出现在此行；共{ $rows }处，各显示为“�”。
    .remedy = 如果名称显示不对，请为此文件选择编码。
notice-no_element_column = 未找到元素列，例如“Pb (mg/kg)”。全部{ $rows }行拒读。
    .remedy = 检查文件是否有一行含元素符号的标题，且其下有数据行。
notice-column_twice = “{ $found }”：有两列都自称同一元素。两列都有内容处，该单元格按未测量计。
    .remedy = 删除其中一列或改名。
notice-heading_not_understood = “{ $found }”以元素开头，但无法识别其余的词，因此未使用。
    .remedy = 如果它是质量分数，请把标题写成“Pb mg/kg”的样子。
notice-quote_left_open = 此行有一个引号打开后始终没有关闭，或隔了若干行才关闭，而中间像是完整的行。被它吞掉的内容拒读；从其后继续读取。
    .remedy = 补上或删除该引号。
notice-line_too_long = 此行比任何表格行都长（超过1 MiB）。该行拒读；从下一行继续读取。
    .remedy = 查看文件中的该行；可能缺少换行。
notice-row_too_long = 此行的单元格多于标题，多出的第一个是“{ $found }”，因此各单元格可能错列。该行拒读。
    .remedy = 查找未加引号的单元格中是否含有分隔符。
notice-under_unknown_heading = 此行位于无法识别的标题之下，其数值的含义不明。该行拒读。
    .remedy = 查看其上方的标题：元素写成“Pb mg/kg”的样子，或将该表单独存为一个文件。
notice-far_below_zero = “{ $found }”比零低三倍所列误差以上：可能是缺失值的代码，或校准有误。仍按数值保留。
    .remedy = 查看该单元格；如果它表示缺失值，请留空。
notice-row_short = 有{ $rows }行的单元格少于标题；缺少的单元格按空白计。
    .remedy = 检查这些行是否被截断。
notice-nothing_usable = 此行在所有被使用的列中都没有内容。
    .remedy = 删除该行，或为其各列命名。
notice-not_utf8 = 有{ $rows }行的名称不是UTF-8，已按Windows-1252读取（首个为“{ $found }”）。
    .remedy = 如果名称显示不对，请将文件保存为CSV（UTF-8）后重新载入。
notice-cell_not_understood = “{ $found }”不是测量值。该单元格按未测量计；该行其余部分照常使用。
    .remedy = 改正该单元格，或重新测量。
notice-number_out_of_range = “{ $found }”超出任何质量分数的可能范围。该单元格按未测量计；该行其余部分照常使用。
    .remedy = 检查该数及其单位。
notice-more_than_whole = “{ $found }”超过整个样品（大于1 000 000 mg/kg）。
    .remedy = 检查该列的单位。
notice-mark_unclear = “{ $found }”中的逗号或点可能是小数点，也可能是千位分隔符。该单元格按未测量计。
    .remedy = 书写数字时不用千位分隔符，或注明文件的小数点符号。
notice-error_not_understood = 不确定度“{ $found }”不是可用的数。该数值按无不确定度计。
    .remedy = 改正该单元格。
notice-error_unit_unclear = 有{ $rows }行无法看出不确定度的单位：百分号可能表示数值的百分数。这些数值按无不确定度计。
    .remedy = 在列标题中写明单位，如“Pb u mg/kg (1s)”。
notice-unit_not_stated = 有{ $rows }行未注明单位（首个为“{ $found }”）。这些数保留为文字，按未测量计。
    .remedy = 注明文件的单位。
notice-unit_not_known = “{ $found }”不是此处已知的质量分数单位。
    .remedy = 请用mg/kg、ppm、%、g/kg、ug/g或ppb。
notice-multiple_not_stated = 未注明误差列代表几倍σ（{ $rows }行）。按一倍计，这会加宽未定区间，绝不会因此使任何结果变为低于限值。
    .remedy = 为此文件注明1σ、2σ或3σ。
notice-limit_in_error_column = 有{ $rows }行写“未检出”，而误差列中有数（首个为“{ $found }”）：该数被读作{ $reading ->
        [one_error] 一倍所列误差，以其3σ作为检出限
       *[limit] 检出限
    }。
    .remedy = 如果该列在那里表示另一种含义，请为此文件说明。
notice-class_not_understood = “{ $found }”不是此处已知的材料类别（{ $rows }行）。类别按未知计。
    .remedy = 使用polymer、metal、composite或plated，或设定类别。
notice-same_as_another = 此文件与另一文件字节相同，已合并。
    .remedy = 无需处理。
notice-too_many_columns = 有一行含{ $found }列，多于任何结果表。该文件未读入。
    .remedy = 查看该文件；重新导出，或只载入其中的表格。
notice-element_not_understood = “{ $found }”不是此处已知的元素。此行有测量内容，因此拒读。
    .remedy = 如果它是元素，请为其列说明，或改正名称。
notice-element_twice = 同一元素在一个读数中出现两次（“{ $found }”），共{ $rows }行。无法看出指的是哪一个，因此按未测量计。
    .remedy = 说明以哪一列或哪一谱图为准，或删除另一个。
notice-summary_row = “{ $found }”不是样品：它是其他样品的汇总或限值，共{ $rows }行或列。已搁置，不作读数。
    .remedy = 如果它是样品，请换一个名称。
notice-two_readings_in_row = 此行在同名标题下还写有“{ $found }”：两张表并排放置。该行拒读，因为数值可能归到错误的样品。
    .remedy = 将两张表上下放置，或分存为各自的文件。
notice-stated_twice = “{ $found }”与其前面的一行相矛盾。从此处起两者都不使用。
    .remedy = 为此文件注明单位或σ倍数。
notice-oxide_converted = { $found }的数是氧化物的质量分数；已按原子量换算为元素。
    .remedy = 如果列标题正确，无需处理。
notice-date_order_unclear = “{ $found }”可能是日在前月在后，也可能是月在前日在后，共{ $rows }行。日期按原样保留。
    .remedy = 为此文件注明日与月的顺序。
notice-date_not_understood = “{ $found }”不是此处已知的日期，共{ $rows }行。按原样保留。
    .remedy = 改正日期，或注明日与月的顺序。
notice-id_pattern_differs = “{ $found }”与组合编号的示例模式不符，共{ $rows }行。编号整体保留。
    .remedy = 另举一例说明模式，或改正编号。
notice-stated_above = 表格上方注明的“{ $found }”，用于其下所有自己未注明的读数。
    .remedy = 如果它不适用于全部读数，请手动设定该列。
notice-table_turned = 表格行列互换：每列是一个读数，每行是一种元素。
    .remedy = 如果正确，无需处理。
notice-rows_joined = 有{ $rows }行（每个谱图或滤光片一行）已按相同的样品和时间合并为读数。
    .remedy = 如果它们各是独立的读数，请将谱图列标为未使用。
notice-mapped_by_hand = 已为这些标题手动设定{ $rows }列。
    .remedy = 撤回该操作，可查看不经设定时的识别结果。
notice-mapping_differs = 有人设定的列对应提到列或行{ $found }，而此表没有。未使用该设定。
    .remedy = 查看此文件的各列并重新设定。
notice-duplicate_reading = 有{ $rows }个读数（首个在此）也出现在{ $found }中，而此处的内容并不比那里更多。只计一次。
    .remedy = 无需处理。如果它们各是独立的测量，请给每个写上自己的编号、测点或时间。
notice-same_reading_in_parts = 有{ $rows }个读数（首个在此）也出现在{ $found }中，且两处各有对方没有的内容。全部保留，因此同一测量计了不止一次。
    .remedy = 给出一个内容齐全的文件，或移出有误的那个。如果它们各是独立的测量，请给每个写上自己的编号、测点或时间。
notice-new_header = 从此处开始有新的标题行，各列不同。
    .remedy = 检查其下各列是否理解正确。
notice-preamble = 标题行之前的{ $found }行作为备注保留。
    .remedy = 无需处理。
notice-skipped = 不是结果表；已跳过。
    .remedy = 无需处理。设置和规则集要单独给出，不作为结果。

## Settings, mapping and rule book files

problem-malformed = 无法读取此行：{ $found }
    .remedy = 改正该行；文字要放在引号中。
problem-wrong_schema = “{ $found }”不是此处可读取的文件种类。
    .remedy = 第一行必须是schema = "{ $expected }"。
problem-unknown_key = 此处没有这个键：{ $found }
    .remedy = 改正拼写，或删去该行。此表中已知的键列在括号里。
problem-wrong_kind = “{ $found }”不是此处应有的值类型。
    .remedy = 文字放在引号中，列表放在方括号中，表放在花括号中或自己的标题之下。
problem-unknown_unit = “{ $found }”不是此处已知的质量分数单位。
    .remedy = 请用mg/kg、%、g/kg或ug/kg。
problem-not_a_quantity = “{ $found }”不是带单位的数。
    .remedy = 请写成"700 mg/kg"的样子。
problem-unknown_name = “{ $found }”不是此处已知的名称。
    .remedy = 请改正拼写。在页面上设置后以“设置”下载，名称都会是对的；全部名称见contract.md。
problem-band_upside_down = 区间的下界不低于上界：{ $found }。
    .remedy = 改正上下界。
problem-not_above_zero = “{ $found }”不大于零。
    .remedy = 限值必须大于零。
problem-twice = “{ $found }”出现两次。
    .remedy = 删除其中一行。
problem-missing = 缺少“{ $found }”。
    .remedy = 补上它。
problem-out_of_range = “{ $found }”超出可能的范围。
    .remedy = 请看数字是否写错。可能的范围见contract.md。
problem-nothing_in_book = 规则集“{ $found }”既没有区间，也没有卤素限值。
    .remedy = 加入一个表。
problem-no_source = 有一行没有来源或条款。
    .remedy = 每个值都必须写明其文件和条款。
problem-aql_not_in_table = “{ $found }”不是抽样表中的AQL。
    .remedy = 请用下列之一：0.010 0.015 0.025 0.040 0.065 0.10 0.15 0.25 0.40 0.65 1.0 1.5 2.5 4.0 6.5 10 15 25 40 65 100 150 250 400 650 1000。

## Acts in words

act-class = 材料类别设为{ $value }
act-sigma_multiple = 所列误差按{ $value }σ计
act-unit_of_measure = 没有单位的数值，单位设为{ $value }
act-decimal_mark = 小数点符号设为“{ $value }”
act-detection_in_error_column = 未检出时误差列中的数：{ $value ->
        [one_error] 一倍所列误差
       *[limit] 检出限
    }
act-column_role = 手动设定列：{ $value }
act-column_role_named = 第{ $column }列“{ $heading }”作为{ $role }
act-header_line = { $value ->
        [none] 没有标题行；各列以序号命名
       *[other] 标题行设为第{ $value }行
    }
act-text_encoding = 文本按{ $value }读取
act-sheet = 选定工作表“{ $value }”
act-date_order = 日期顺序设为{ $value ->
        [ymd] 年、月、日
        [dmy] 日、月、年
       *[mdy] 月、日、年
    }
act-id_pattern = 组合编号的构成为{ $value }
act-halogen_book = 卤素按{ $value }计
act-trust = 缺少核查读数时：{ $value }
act-sampling = 缺少抽样方案时：{ $value }
act-materials = 缺少物料清单时：{ $value }
act-thickness_mm = 厚度设为{ $value } mm
act-lot_size = 批量{ $value }
act-units_to_take = 方案要求的件数：{ $value }
act-bill_of_materials = 已列均质材料：{ $value }
act-category = 产品类别{ $value }
act-placing_date = 投放市场日期{ $value }
act-reviewed_at = 审查日期{ $value }
act-inspector = 检验员{ $value }
act-place = 地点{ $value }
act-title = 标题{ $value }
act-check_samples = 核查样品：{ $value }
act-site_sigma = 现场重复性{ $value }
act-relative_sigma = 每个σ再加上数值的{ $value } %（以方和根合成）
act-repeats = 算作重复测量的读数：{ $value }
act-uncertainty_holds = 不确定度包含：{ $value }
act-undo = 撤回操作{ $value }
target-inspection = 整个检验
target-source = 文件{ $name }
target-header = 标题为{ $name }的表
target-lot = { $supplier }的批次{ $lot }
target-lot_unnamed = 未注明批次和供应商的部分
target-part = 部件{ $part }
target-material = 部件{ $part }的材料{ $material }

## Summary lines

summary-no_readings = 尚无读数。
summary-counts = { $lots }个批次，{ $readings }个读数{ $aside ->
        [0] { "" }
       *[other] （其中{ $aside }个由人搁置）
    }{ $checks ->
        [0] { "" }
       *[other] ，另有{ $checks }个核查读数
    }：{ $accept }批接收（仅就所筛选的物质），{ $hold }批暂扣，{ $not_accept }批不接收。
summary-only_checks = 所有读数都标为核查：没有测量任何批次的产品。
summary-all_set_aside = 所有读数均已搁置：没有读数能说明任何批次。
summary-readings_below = 读数所示：每种所筛选的物质都低于限值或不适用。
summary-readings_say = 读数所示：{ $list }。
summary-over_limit = { $about }超出限值{ $count }个
summary-halogen_over_limit = { $about }超出卤素限值{ $count }个
summary-over_in_some_classes = { $about }在某些类别下超出限值{ $count }个
summary-not_measured = { $about }未测量{ $count }个
summary-no_uncertainty = { $about }无不确定度{ $count }个
summary-detection_too_high = { $about }检出限过高或未注明{ $count }个
summary-not_capable = { $about }能力不足{ $count }个
summary-undecided = { $about }未定{ $count }个
summary-halogen_open = { $about }在卤素规则集下未决{ $count }个
summary-evidence_none = 证据：没有批次因缺少证据而暂扣。
summary-evidence_advisory = 未给出，但不致暂扣：{ $list }。
summary-evidence_missing = 接收尚缺的证据：{ $list }。
evidence-short-file_not_read = 未读入的文件
evidence-short-units_not_stated = 各读数所测的单件
evidence-short-rows_refused = 待查看的拒读行
evidence-short-layer_among_classes = 表层与裸材料分别命名
evidence-short-class_unknown = 材料类别
evidence-short-thickness_not_stated = 厚度
evidence-short-material_not_measured = 未测量的材料
evidence-short-bill_of_materials_none = 物料清单
evidence-short-material_not_listed = 不在清单上的材料
evidence-short-sampling_none = 批量和抽样方案
evidence-short-sampling_too_few = 补测的单件
evidence-short-multiple_not_stated = σ倍数
evidence-short-halogen_book_not_loaded = 卤素规则集
not-stated = 未注明
no-lot = 未注明批次

## Values

value-number = { $value } mg/kg ± { $sigma }（1σ）
value-number_bare = { $value } mg/kg，无不确定度
value-below = < { $value } mg/kg
value-above = > { $value } mg/kg
value-not_detected = 未检出
value-not_measured = –
value-text = “{ $written }”
value-interval = { $low }至{ $high } mg/kg
value-at_least = 至少{ $low } mg/kg

## Working, in words

working-below = { $x } + { $k } × { $sigma } = { $end } mg/kg，等于或低于下界{ $low } mg/kg。
working-over = { $x } − { $k } × { $sigma } = { $end } mg/kg，等于或高于上界{ $high } mg/kg。
working-between = { $x } ± { $k } × { $sigma } mg/kg的范围是{ $from }至{ $to }；未定区间是{ $low }至{ $high } mg/kg。
working-between_open = { $x } ± { $k } × { $sigma } mg/kg的范围是{ $from }至{ $to }；“低于限值”到{ $low } mg/kg为止，没有“超出限值”。
working-detection = 检出限{ $x } mg/kg，未检出，以其三分之一为σ：{ $x } + { $k } × { $sigma } = { $end } mg/kg，与下界{ $low } mg/kg比较。
working-detection_composite = 检出限{ $x } mg/kg，未检出；只有检出限等于或低于{ $low } mg/kg，才算低于限值。
working-composite = { $x } ± { $k } × { $sigma } mg/kg的范围是{ $from }至{ $to }；“低于限值”要求注明的检出限最大为{ $low } mg/kg，且数值等于或低于该检出限；“超出限值”从{ $high } mg/kg开始。
working-thin = { $x } + { $k } × { $sigma } = { $end } mg/kg。这样薄的塑料给出的信号可能只有全部信号的{ $share } %，因此此处“低于限值”到{ $scaled } mg/kg为止，而不是{ $low }。
working-not_capable = { $k } × { $sigma } = { $end } mg/kg，等于或高于下界{ $low } mg/kg。

## Cautions

caution-declaration = 筛选不是符合性声明，也不是实验室结果。
caution-homogeneous = 一个结果只代表所测的测点。限值适用于每一种均质材料，各层也不例外。
caution-radiation = X射线分析仪会发出电离辐射。请遵守当地法律、许可证和仪器的培训要求；绝不可用手拿着样品置于射线束中。
caution-dust = 切割、打磨或刮削样品会释放有毒粉尘（铅、镉、铬）。请使用抽风、手套和口罩，并按当地规定处置残余物。
caution-shipping = 不得仅凭本页面就发运暂扣或不接收的批次；由有权限的人决定。
caution-items = 结果仅与被检测的物品有关。

## Report

report-title = 筛选报告
report-subtitle = 以X射线荧光筛选限用物质
report-end = 报告结束
report-id = 标识
report-program = 制作程序
report-number = 报告编号
report-reviewed = 审查日期
report-inspector = 检验员
report-place = 地点
report-category = 产品类别（指令2011/65/EU）
report-placing = 投放市场
report-blank = ____________________
report-summary = 摘要
report-lots = 批次
report-lot = 批次
report-supplier = 供应商
report-source = 来源
report-disposition = 处置
report-reasons = 理由（最差者在前）及各自的解决办法
report-readings = 读数
report-materials = 材料
report-part = 部件
report-material = 材料
report-class = 类别
report-sources = 来源
report-file = 文件
report-rows = 读入行 = 使用 + 核查 + 重复行 + 搁置 + 拒读
report-digest = SHA-256
report-method = 方法、规则与判定规则
report-method_text = 以X射线荧光筛选；每个读数按下列规则集的区间判定。数值为质量分数，单位mg/kg；s为1σ。
report-rule_text = 低于限值（BL）：x + { $k } s { $low_sign } 下界。超出限值（OL）：x − { $k } s { $high_sign } 上界。未定（X）：两者之间。Cr和Br没有“超出限值”。检出限为D而未检出：s = D / 3，若D + { $k } s { $low_sign } 下界则为BL。复合材料中的镉：只有等于或低于已注明的检出限，且该检出限不超过下表所列的最大值，才为BL。电镀、涂覆或钝化件：一律为X。类别未知：按每一类别判定，以最差者为准。各区间所留的误判风险不按批计算；单个数值落在法定限值之内的概率见该数值的说明。
report-rule_halogens = 卤素：若x + { $k } s { $within_sign } 限值则为BL，若x − { $k } s { $over_sign } 限值则为OL；在复合材料或未知类别中，BL改为X（射线束中有铜或玻璃）；金属不适用；总量将两个σ的平方相加；其中一项低于检出限时，总量为一个区间。
report-halogens_moved = 卤素按{ $book }影响处置。
report-halogens_shown = 卤素仅供参考；未指定卤素规则集，因此不影响任何处置。
report-uncertainty = 不确定度：s为所列误差除以其所代表的倍数；若给出了现场重复性表，则不小于其在行动水平处的重复性，也不小于该测点重复测量所显示的σ。无人注明的倍数按一计，这会加宽未定区间。所用的s及其倍数列在附录各结果旁。
report-uncertainty_full = 检验员注明：所给的不确定度是完整的，包含校准、基体和抽样。
report-probability = 真值落在限值之内的概率，按以数值为中心的正态分布计算（JCGM 106:2012），只用于Cd、Pb和Hg，且该材料中的限值针对元素本身。它在此不决定任何事。
report-thickness = 厚度：注明了厚度时，塑料的BL，或测得了基体的金属的BL，只有计入所缺的信号之后仍成立才有效。塑料按对X射线最透明的聚乙烯计，若测得氯为主要元素则一并计入；因此对填充塑料偏于谨慎。
report-book = 规则集
report-edition = 版次
report-confidence = 其数值的可信程度
report-bands = 所用区间（mg/kg）
report-substance = 物质
report-low = 下界
report-high = 上界
report-none = 无
report-detection_edge = 读数的检出限，最大{ $limit }
report-limit = 限值
report-clause = 条款
report-results = 结果
report-results_text = 列出每种材料的最差判定结果，并附显示该结果的最高读数的标尺；各读数见附录。
report-open = 未决的判定结果与下一步
report-open_none = 没有未决的判定结果；使批次暂扣的原因列在该批次下。
report-reading = 读数
report-outcome = 判定结果
report-why = 原因
report-next = 下一步
report-material_head = 材料、部件、批次
report-annex = 附录：全部读数
report-annex_values = 数值以mg/kg ± 1σ表示；“<”为检出限；“–”为未测量；引号中的文字与文件中的原文相同。σ：p为所列误差，文件注明了倍数；m为所列误差，倍数由人设定（p或m后的数字即该倍数：p2为2σ的所列误差）；u为所列误差，倍数未知，按一计；t为现场重复性表；r为该测点重复测量所显示的σ。“!”：有情况使判定结果存疑；见“结果旁的疑点”，或与未决的判定结果列在一起。
report-also = 同样适用于
report-also_more = 另有{ $count }个
report-annex_capped = 共{ $total }个读数，印出前{ $shown }个；findings.csv含全部读数。
report-open_capped = 共{ $total }个未决的判定结果，印出约前{ $shown }个，最差者在前；findings.csv含全部。
report-materials_capped = 共{ $total }种材料，印出前{ $shown }种；findings.json含全部。
report-line = 行
report-sample = 样品
report-columns_used = 使用的列
report-packed_in = 压缩在{ $name }中，SHA-256
report-sheet_read = 已读取工作表“{ $name }”，另有{ $others }张
report-stated_above = 第{ $line }行“{ $text }”适用于整个表
report-notices = 提示
report-notices_none = 无。
report-check = 核查读数，不是产品
report-rests_on = 依据：批量{ $size }；方案要求{ $take }件；测得最少的材料测量了{ $units }件。
report-hold_ends = 除各理由的要求之外，暂扣如何结束
report-refused = 拒读行
report-refused_none = 没有拒读行。
report-refused_capped = 另有{ $left }个拒读行，只计数，未列出。
report-column = 列
report-remedy = 处理办法
report-acts = 设置与操作
report-acts_none = 无。
report-by = 操作人
report-unsigned = 没有姓名缩写
report-at = 日期
report-act = 操作
report-target = 对象
report-note = 备注
report-not_assessed = 未评估
report-cautions = 注意事项
report-signatures = 签名
report-sign_inspector = 检验人（姓名、日期、签名）
report-sign_second = 第二人复核（姓名、日期、签名）
report-findings_digest = 审查结果的SHA-256
report-total_rows = 全部文件
report-rules_beside = 各判定规则并列，以读数个数表示。仅供比较：在此不决定任何事。
report-rules_repeatability = 仅含重复性：不含校准、基体和抽样所带来的部分。
report-decision_rule = 判定规则
report-rule_bands = 筛选区间（本报告的规则）
report-rule_not_applicable = 没有适用的限值规则（读数个数）
report-composition = 成分
report-caution = 注意
report-doubts = 结果旁的疑点
report-doubts_none = 测得的内容没有使任何BL存疑，也没有成分与类别相矛盾。
report-doubts_below = 低于限值，但存疑
report-doubts_capped = 共{ $total }项，印出前{ $shown }项；findings.json含全部。
report-compositions = 需注意的成分
report-compositions_text = 列出类别未知，或测得内容与类别相矛盾之处。成分的提示绝不直接当作类别。
report-repeats = 重复测量与测点
report-repeats_text = 同一测点的重复测量，若彼此一致且没有一个单独超出限值，则一起判定；测点之间绝不取平均。偏离很远的读数会指明，但一个也不剔除。
report-repeats_none = 没有测点测量过一次以上，也没有材料测量了两个注明的测点。
report-repeats_capped = 共{ $total }组重复测量，印出前{ $shown }组；findings.json含全部。
report-spot = 测点
report-element = 元素
report-lines = 行
report-repeats_values = 读数（mg/kg）
report-together = 合并值（± 1σ）
report-how = 判定方式
report-each_alone = 各自判定
report-one_is_over = 不计入：其中一个单独超出限值，该结果有效
report-spots_of = { $about }（{ $n }个测点，概率{ $p }）
report-spots_alike = { $list }：未见测点之间有差异。这不能证明它们相同；以最差的测点为准。
report-limits = 所指定规则集的限值
report-limits_text = 每种材料在每个适用限值下的最差判定结果。只有批次理由中列出的才影响其处置。
report-limits_none = 没有限值适用于这些材料。
report-limits_capped = 共{ $total }项，印出前{ $shown }项；findings.json含全部。
report-worst_reading = 最差读数
report-exemptions = 豁免
report-exemptions_none = 没有主张豁免，且已载入的条目中没有可能涵盖所测结果的。
report-claims = 已主张
report-claims_capped = 共{ $total }项，印出前{ $shown }项；findings.json含全部。
report-candidates = 未主张；这些条目可能涵盖某个结果
report-candidates_text = 可能涵盖的条目还不是豁免：须有人主张，并附证据和第二人的姓名缩写。
report-entry = 条目
report-scope = 条目涵盖的范围
report-text = 法律条文
report-text_from = 自{ $day }起生效。
report-number_said = 读数所示
report-expires = 到期日
report-no_day = 规则集中没有
report-renewal = 续期
report-renewal_said = 来源：{ $source }；{ $state ->
        [not_filed] 日期
       *[other] 申请日期
    }：{ $date }
report-group = 所主张的合金或材料
report-evidence = 证据
report-initials = 姓名缩写/第二人
report-questions = 待回答
report-expiries = 到期日（全部批次）
report-cr6 = 按面积计的六价铬（IEC 62321-7-1）
report-cr6_area = µg/cm²
report-cr6_not_judged = 未判定：已载入的规则集没有相应规定，或材料不是金属
report-laboratory = 实验室、报告
report-reached = 各判定结果如何得出
report-reached_text = 每种物质和类别的规则各列一次，并列出按该规则低于限值、未定和超出限值的读数个数。各读数判定所用的σ及倍数见附录；未决和超出限值的判定结果在上文另有段落。
report-rule = 规则
report-rule_plated = 表层与其下的材料被一起测到：在知道厚度和其下的材料之前，不论数值多少均为未定。
report-other_outcomes = 其他
report-halogens = 卤素
report-validity = 适用的产品
report-in_use = 在用
report-open_day = 不限
report-jurisdiction = 适用地区
report-legend = BL 低于限值 · X 未定 · OL 超出限值 · 不适用 对该材料不判定。其余各词说明为何得不出上述结果，都不表示低于限值。

## Ruler

ruler-title = { $about }：{ $outcome }
ruler-description = 对数刻度，单位mg/kg。{ $value }。{ $edges }。
# 标尺所对照的：不作判定的区间，或没有区间的限值。
ruler-edges = { $low }至{ $high }为未定
ruler-edges_open = 从{ $low }起向上为未定
ruler-edges_limit = 限值{ $limit }
ruler-band = 未定
ruler-limit = 限值
ruler-strip = { $value }。{ $edges }
report-rulers = 判定结果下方是它的标尺：mg/kg的对数刻度，读数为铅锤，两侧须线为k倍σ（区间取k = { $k }），限值周围的区间画有斜线。箭头表示延伸到刻度之外。
report-rulers_below = 连同须线都在区间左侧：低于限值
report-rulers_undecided = 有任何部分触及区间：未定
report-rulers_over = 连同须线都在区间右侧：超出限值
report-rulers_limit = 没有区间的限值：顶部有横杆的立柱
report-rulers_bound = 未检出：在竖线的虚线一侧某处
report-rulers_between = 含未检出部分的总和：在两条竖线之间某处

## Command line

# Between things in a row, between longer pieces in a row, and between the sentences of a paragraph.
join-list = {"、"}
join-series = {"；"}
join-sentences = {""}
join-colon = {"："}
join-stop = {"。"}
join-brackets = （{ $text }）
cli-help = Plumbline离线审查电子材料的X射线荧光筛选结果。

    用法：
      plumbline review --out DIR [--papers] [--settings FILE]... [--mapping FILE]... [--rules FILE]... [--history FILE]... [--bill FILE]... PATH...
      plumbline explain [--settings FILE]... [--mapping FILE]... [--rules FILE]... [--bill FILE]... [--of NAME]...
                        (--reading ID | --line SOURCE:LINE) PATH...
      plumbline plan --lot-size N --rule single --aql AQL [--level LEVEL] [--severity SEVERITY] [--seed SEED]
      plumbline plan --lot-size N --rule zero_acceptance --confidence PERCENT --share PERCENT [--seed SEED]
      plumbline rules [ID | FILE]
      plumbline help
      plumbline version

    review     读取结果表（CSV、TSV；文件或文件夹），并写入DIR：
                 findings.json   全部审查结果，供程序使用
                 findings.csv    每个读数一行，供电子表格使用
                 report.html     报告，供人阅读；用浏览器打印
                 （其单页和附录见--length）
                 history.txt     所给历史文件与本次检验合并后的文件，供下次使用
    --out DIR        写入的位置；没有则新建
    --papers         另在需要时写出：findings.xlsx、laboratory-request.html、
                     supplier-notice-N-NAME.html（有暂扣或不接收批次的供应商各一份）、labels.html
    --length LENGTH  报告的篇幅：one_page（report-one-page.html）、full（report.html，默认）、annex
                     （report-annex.html，全部读数）或all；可重复给出
    --settings FILE  类别、批量、厚度、证书、方案……（见contract.md）；
                     给出多个时，后面的优先于前面的
    --mapping FILE   已知标题下各列的含义，由页面保存
    --bill FILE      物料清单：含Part和Material列的表，也可有Class列
    --rules FILE     规则集：其区间或卤素限值代替内置的，其限值与内置的并列
    --history FILE   以前检验的结果（各自的history.txt）；多个则合并
    explain    对匹配的读数，打印发现的内容、规则及其条款，以及得出判定结果的每一步
    --reading ID     样品编号与此相同（按文件中的写法）的读数
    --line S:LINE    从来源S的此行开始的读数，来源名称与报告中相同
    --of NAME        只看此项判定结果：Cd、Pb、Hg、Cr、Br、Cl或total；可重复给出
    plan       说明一批应取多少件，给出--seed时说明取哪些件，以及留下的风险；与设置文件中的
               “[[sampling_plan]]”相同
    rules      列出程序自带的规则集，或逐行说明其中一个或某个文件

    退出状态：0 每批均接收（仅就所筛选的物质）；1 有批次暂扣或不接收；
    2 有输入无法读取，或没有读数（其余仍写出），或没有可说明的读数；
    64 用法错误，或设置、列对应、规则集或历史文件有误（不写出任何内容）；74 无法写出结果。

    筛选不是符合性声明，也不是实验室结果。
cli-usage = plumbline: { $what }
    .remedy = 见“plumbline help”。
cli-missing_reading = 请指明哪些读数：用一次--reading ID或--line SOURCE:LINE
cli-no_line = “{ $found }”不是SOURCE:LINE的形式，如results.csv:12
cli-no_outcome = “{ $found }”不是判定项目；已知的有Cd、Pb、Hg、Cr、Br、Cl和total
cli-no_reading = 没有匹配的读数。读数以文件中所写的样品编号指明，或以文件名和其开始的行号指明。
cli-unknown = 无法识别“{ $found }”
cli-missing_out = 缺少--out DIR
cli-missing_value = { $found }需要一个值
cli-missing_path = 未指明文件或文件夹
cli-bad_file = { $file }，第{ $line }行，第{ $column }列：{ $text }
cli-unreadable = { $file }：{ $text }
cli-cannot_write = 无法写出{ $file }：{ $text }
cli-source = { $file }：读入行{ $rows_in } = 使用{ $used } + 核查{ $check } + 重复行{ $duplicate } + 搁置{ $set_aside } + 拒读{ $refused }；读数{ $total }
cli-source_problem = { $file }：{ $text }
cli-refused = { $file }，第{ $line }行，第{ $column }列：{ $text }
cli-refused_row = { $file }，第{ $line }行：{ $text }
cli-more_refused = { $file }：另有{ $left }个拒读行见findings.json
cli-lot = 批次：{ $lot } · 供应商：{ $supplier } · { $disposition }
cli-written = 已写出：{ $file }

## Questions a file leaves open

need-unit_not_stated = 文件未注明数值的单位。是哪个单位？
need-sigma_multiple_not_stated = 文件未注明误差列代表几倍σ。是一、二还是三？
need-decimal_mark_unclear = 有些数中的逗号或点可能是小数点，也可能是千位分隔符。哪个是小数点？
need-date_order_unclear = 有些日期可能是日在前，也可能是月在前。是什么顺序？
need-class_not_stated = 有{ $count }个读数未注明此处已知的材料类别。是哪个类别？
