# Simplified Chinese: the report: what standards ask it to hold, its three lengths, and how acts read in it

## What a person states for the report

act-issuer = 报告出具方：{ $name }{ $address ->
        [none] { "" }
       *[other] ，{ $address }
    }
act-customer = 报告的客户：{ $name }{ $contact ->
        [none] { "" }
       *[other] ，{ $contact }
    }
act-received = 收到日期{ $value }
act-sampled = 取样：日期{ $date ->
        [none] 未注明
       *[other] { $date }
    }；取样人{ $by ->
        [none] 未指明
       *[other] { $by }
    }；地点{ $place ->
        [none] 未注明
       *[other] { $place }
    }；方法{ $method ->
        [none] 未注明
       *[other] { $method }
    }
act-item = 物品：{ $description ->
        [none] 未描述
       *[other] { $description }
    }；状态：{ $condition ->
        [none] 未注明
       *[other] { $condition }
    }
act-issued_on = 报告发布日期{ $value }
act-environment = 测量处的环境条件：{ $value }
act-deviations = 补充、偏离和删减：{ $value }
act-instrument = 仪器：{ $value }
act-authorised = 报告批准人：{ $by }；第二人：{ $second ->
        [none] 未指明
       *[other] { $second }
    }
act-records_kept = 记录的保存：{ $value }
act-invented = { $value ->
        [yes] 数据为虚构，供练习用
       *[no] 数据不是虚构的
    }

## Values of acts, in words

said-trust-holding = 暂扣该批
said-trust-advisory = 印出，不致暂扣
said-sampling-holding = 暂扣该批
said-sampling-advisory = 印出，不致暂扣
said-materials-holding = 暂扣该批
said-materials-advisory = 印出，不致暂扣
said-repeats-same_spot = 样品编号相同，且注明的测点相同
said-repeats-same_id = 样品编号相同，未注明测点的也算
said-repeats-never = 没有；每个读数各自独立
said-uncertainty_holds-repeatability = 仅重复性
said-uncertainty_holds-everything = 全部，包括校准、基体和抽样
said-mark-check = 核查标准样品
said-mark-blank = 空白样品
said-mark-product = 货物，不是核查
said-category-8 = 8，未注明是其中哪一部分
said-category-8ivd = 8，体外诊断医疗器械
said-category-8o = 8，其他医疗器械
said-category-9 = 9，未注明是其中哪一部分
said-category-9i = 9，工业监视和控制仪器
said-category-9o = 9，其他监视和控制仪器
said-site_sigma = { $class }中的{ $element }：1σ为{ $s }，{ $seconds ->
        [none] 未注明测量时间
       *[other] 测量{ $seconds } s
    }，其中{ $constant ->
        [none] 没有恒定部分
       *[other] 恒定部分为{ $constant }
    }

## Lengths and parts

length-one_page = 单页
length-full = 完整报告
length-annex = 附录
report-parts = 报告{ $number }共3部分，此为第{ $part }部分：{ $name }。同一编号下的其他部分：{ $others }。
report-part_named = 第{ $part }部分，{ $name }（{ $file }）
report-part_short = 第{ $part }部分，共3部分
report-contents = 本部分依次包含以下各节，以“{ $end }”结束：
report-invented = 虚构数据，供练习用。本报告不涉及任何真实事物。
report-invented_short = 虚构数据
report-annex_elsewhere = 每个读数及其文件和行见附录，即本报告的第3部分（{ $file }）。

## Who, for whom, when

report-issuer = 出具方
report-customer = 客户
report-issued_on = 发布日期
report-authorised = 批准人
report-authorised_second = 第二人
report-relates = 结果仅与被检测的物品有关。未经出具方书面同意，本报告只可连同其所有部分全文复制。

## Items

report-items = 物品、其状态及取样方式
report-items_text = 按各操作中所指明的人的说明。每一批以供应商和批次标识，其部件和材料以结果中的名称标识。
report-items_capped = 共{ $total }个批次，印出前{ $shown }个；findings.json含全部。
report-description = 描述
report-condition = 状态
report-received = 收到日期
report-sampled = 取样（日期、取样人、地点）
report-sampled_method = 抽样方案或方法
report-sampled_plan = 抽样方案列在该批次下
report-none_stated_plan = 未注明方案

## How it was measured

report-measured = 如何、在何处、何时、由谁测量
report-measured_when = 读数的测量日期
report-measured_days = { $from }至{ $until }
report-measured_undated = 有{ $count }个读数没有可读出的日期
report-operators = 测量人
report-instruments = 仪器
report-modes = 测量模式
report-seconds = 测量时间
report-seconds_range = { $from }至{ $until } s
report-seconds_one = { $from } s
report-environment = 环境条件
report-deviations = 补充、偏离和删减
report-deviations_aside = 有{ $count }个读数由人搁置，并附原因；见“被搁置的读数”一节。
report-deviations_refused = 有{ $count }行拒读，不计入任何结论；见“来源”一节。
report-deviations_said = { $text }。
report-external = 外部提供方的结果
report-external_none = 无：未给出实验室结果。
report-external_count = 有{ $count }个实验室结果；见“实验室结果”一节。
report-external_text = 外部提供方的结果：由实验室得出，不是本报告出具方得出的。
report-records_kept = 记录的保存
report-and_more = { $list }，另有{ $count }个

## Decision rule and opinions

report-inherent = 判定规则：方法的区间就是规则。区间自身已含保护带（从限值向下到下界，向上到上界，再向外{ $k } s），因此不再另加保护带（ISO/IEC 17025:2017, 7.8.6.1；ILAC-G8:09/2019）。
report-risk = 规则的风险：若s正确，读数围绕真值正态分布，且没有其他差错，则含量为下界的材料，其读数判为低于限值的概率为{ $chance } %；含量为上界的材料，其读数判为超出限值的概率为{ $chance } %。因此，含量等于或高于限值而判为低于限值，或含量等于或低于限值而判为超出限值，其概率更小。s由少数重复读数得出时，以较大的倍数保持该概率。其中不含校准、基体、均匀性和抽样所带来的部分。这是按正态分布计算的；区间的上下界取自标准。
report-foreign_book = 本规则集不是程序自带的：有人从文件载入了它。其中关于来源及其数值可信程度的说法，只是该文件自己的说法。
report-foreign_books = 还依据了程序未自带的规则集来判定：{ $books }。其限值只是所载入文件的说法。
report-day_sampled = 取样
report-day_amiss = 日期彼此不符：“{ $later }”为{ $later_day }，早于“{ $earlier }”{ $earlier_day }。其中之一有误。
report-opinions = 各理由的解决办法、下一步、注意事项、与其他规则的比较以及可能涵盖的条目，属于意见和解释，不是结果。
report-standards = 本报告旨在包含ISO/IEC 17025:2017 (7.8)、IEC 62321-1:2013 (4.8)和EN IEC 63000:2018对筛选报告所要求的内容。它是技术文件所含的文件之一，本身不是技术文件，也不声称获得认可。
report-settled_by_laboratory = 此处不再需要：实验室已解决此项。{ $text }
report-sign_authorised = 批准人（姓名、职务、日期、签名）

## One page

report-page_lots = 批次，最差者在前
report-page_reasons = 主要理由
report-page_next = 接下来必须做什么
report-page_by = 由谁
report-page_until = 最迟日期
report-page_more_reasons = 另有{ $count }个理由
report-page_nothing = 没有使其暂扣的理由。
report-page_more_lots = 另有{ $count }个批次见完整报告：接收{ $accept }批，暂扣{ $hold }批，不接收{ $not_accept }批。
report-page_inspected = 检验的内容
report-page_decided = 决定人（姓名、日期、签名）
report-page_checked = 第二人（姓名、日期、签名）

## Command line

cli-no_length = “{ $found }”不是报告的篇幅；已知的有one_page、full、annex和all
