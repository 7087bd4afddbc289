# Simplified Chinese: exemptions and claims

## What a person says

act-claim = 主张豁免：{ $entry }，针对{ $substance }；证据：{ $evidence ->
        [none] 未写明
       *[other] { $evidence }
    }；第二人：{ $second ->
        [none] 缺少
       *[other] { $second }
    }
act-renewal = { $entry }的续期：{ $state ->
        [pending] 待批
        [refused] 已驳回
       *[not_filed] 未申请
    }；来源：{ $source ->
        [none] 未写明
       *[other] { $source }
    }；{ $state ->
        [not_filed] 日期
       *[other] 申请日期
    }：{ $date ->
        [none] 未注明
       *[other] { $date }
    }
act-mouthing = 儿童能否将它放入口中？{ $value ->
        [cannot] 不能，或不面向公众
        [can] 能
       *[release_shown] 能，且有试验证明其释放量足够低
    }
act-cr6_area = 按面积计的六价铬：{ $area }；实验室：{ $laboratory ->
        [none] 未写明
       *[other] { $laboratory }
    }；报告：{ $report ->
        [none] 未写明
       *[other] { $report }
    }

## Reasons of a disposition

lot-reason-claim_covers = { $of }个读数中有{ $count }个的{ $about }由所主张的豁免{ $entry }涵盖，并附证据和第二人的姓名缩写。
    .remedy = 将证据与报告一起保存。留意豁免的到期日。
lot-reason-claim_open = 对{ $about }主张了豁免{ $entry }，但尚有未决：{ $why }
    .remedy = 回答该问题；在此之前，该主张使该批暂扣。
lot-reason-claim_exceeded = 对{ $about }主张了豁免{ $entry }，但读数超出其数值的部分大于kσ的保护带。
    .remedy = 该豁免不涵盖此项。隔离该批，或按参考方法确认含量。
lot-reason-claim_expired = 对{ $about }主张了豁免{ $entry }；它在产品投放市场之前已到期，且续期已被驳回或从未申请。
    .remedy = 该豁免不涵盖此项。隔离该批。
lot-reason-claim_not_covered = 对{ $about }主张了豁免{ $entry }，但它不涵盖此项：{ $why }
    .remedy = 撤回该主张，或主张适用的条目；读数仍然有效。
lot-reason-cr6_negative = 按面积计的六价铬为阴性，有实验室报告，因此这一镀层中未决的铬有了结论。
    .remedy = 将该报告与本报告一起保存。
lot-reason-cr6_inconclusive = 按面积计的六价铬既非阴性也非阳性（0.10至0.13 ug/cm2，或所给的上下限两者都不能证明）。
    .remedy = 按IEC 62321-7-1再检测更多试样。
lot-reason-cr6_present = 按面积计的六价铬为阳性：镀层中存在六价铬。它是否超过该层的0.1 %，须由实验室回答；此试验不给出mg/kg。
    .remedy = 隔离该批。请实验室测定该层的含量，或请供应商提供不含六价铬的镀层。
lot-reason-cr6_no_report = 据称按面积计的六价铬为阴性，但未写明实验室或其报告。
    .remedy = 写明实验室及其报告。
lot-reason-cr6_other_class = 为非金属材料注明了按面积计的六价铬；按面积的试验（IEC 62321-7-1）用于金属上的镀层，因此对此处不能说明任何问题。
    .remedy = 塑料和电子件须用IEC 62321-7-2。

summary-claim_covers = { $about }由所主张的豁免涵盖{ $count }个
summary-claim_exceeded = { $about }超出所主张豁免的数值{ $count }个
summary-claim_expired = { $about }所依的豁免已到期{ $count }个
summary-claim_not_covered = { $about }未被所主张的豁免涵盖{ $count }个
summary-cr6_negative = 按面积计的六价铬为阴性
summary-cr6_inconclusive = 按面积计的六价铬不能判定
summary-cr6_present = 按面积计存在六价铬
evidence-short-claim_open = 对所主张豁免的回答
evidence-short-cr6_no_report = 六价铬的实验室报告
evidence-short-cr6_other_class = 为非金属注明的按面积计的六价铬

## What became of a claim

claim-covered = 涵盖
claim-open = 未决
claim-exceeded = 超出数值
claim-expired = 已到期
claim-not_covered = 不涵盖
claim-not_needed = 不需要：没有读数超出限值或未定

number-within = 该豁免规定了上限，读数加上kσ后仍不超过该上限
number-within_minimum = 该豁免规定了下限，读数减去kσ后仍达到该下限
number-no_number = 该豁免没有规定上限，因此不存在读数会超过的上限
number-open = 豁免的数值在某个读数的kσ之内
number-not_stated = 有读数不是带不确定度的数值
number-exceeded = 超出豁免的数值，且大于kσ

direction-at_most = 最大{ $limit } mg/kg
direction-at_least = 至少{ $limit } mg/kg
direction-none = 没有数值
claims-guard = 对豁免的限值没有公布的筛选区间，此处也不自行编造：以限值两侧各k = { $k }σ的保护带判定。

question-status_not_found = 未查到该条目是否仍然有效
question-category_not_stated = 属于哪个产品类别（指令2011/65/EU）？
question-category_unclear = 该条目只涵盖该类别的一部分：是工业用（9i）还是其他（9o），是体外诊断（8ivd）还是其他医疗器械（8o）？
question-entry_categories_not_found = 未查到该条目涵盖哪些产品类别
question-placing_date_not_stated = 产品何时投放市场？
question-earlier_text = 在条目的此条文生效之前投放市场；以先前的条文为准，而已载入的规则集都没有它
question-day_of_expiry = 恰在到期当天投放市场，而法律没有说明当天是否包含在内
question-renewal_unknown = 在到期日之后投放市场；续期申请是否待批？
question-renewal_not_sourced = 据称续期申请待批；出处在哪里，是哪天申请的？
question-renewal_after_review = 据称续期申请日期晚于审查日期，或未写明审查日期；哪些日期是对的？
question-renewal_late = 续期申请晚于到期日前18个月的期限（指令2011/65/EU第5条第5款）；该条目是否仍然有效？
question-mouthing_not_answered = 儿童能否将该部件，或从它上面脱落的部件放入口中？
question-class_not_known = 是哪一类材料？
question-layer_not_resolved = 测到的是表层与其下材料的平均，因此读数不是该材料自身的；请将它们分开
question-not_homogeneous = 复合材料：读数不是一种均质材料的；请分离
question-group_not_known = 是什么合金（或玻璃、陶瓷）？读数看不出，主张中也未写明
question-number_not_stated = 有读数不是带不确定度的数值
question-bound_within_sigma = 条目的数值在某个读数的kσ之内；请延长测量，或送检确认
question-evidence_missing = 哪份文件证明该条目适用？
question-second_missing = 缺少两个不同的人的姓名缩写

refusal-entry_not_in_book = 已载入的规则集都没有此条目
refusal-entry_near = 已载入的规则集没有这样写的条目；最接近的是{ $entry }
refusal-other_substance = 该条目针对另一种物质
refusal-other_class = 该条目针对另一类材料
refusal-other_group = 该条目针对另一种合金，或读数与主张所说的不同
refusal-other_category = 该条目不涵盖此产品的类别
refusal-child_could_mouth = 该条目不涵盖儿童可能放入口中的物品

group-steel = 钢
group-aluminium = 铝
group-copper = 铜合金
group-zinc = 锌
group-tin = 锡
group-lead = 铅
group-nickel = 镍
group-titanium = 钛
group-magnesium = 镁
group-precious = 贵金属
group-glass_ceramic = 玻璃或陶瓷
group-any = 任何材料

renewal-pending = 续期待批
renewal-refused = 续期已驳回
renewal-not_filed = 未申请续期
renewal-unknown = 续期情况未知

cr6-negative = 阴性：未检出六价铬
cr6-inconclusive = 不能判定
cr6-positive = 阳性：存在六价铬

expiries-title = 哪些豁免将到期，何时到期
expiries-none = 此处所主张的或可能的豁免都没有到期日。
expiry-claimed = { $day }：针对{ $about }的豁免{ $entry }到期（{ $renewal }）。已为{ $count }种材料主张，见于：{ $names }。
expiry-candidate = { $day }：针对{ $about }的豁免{ $entry }到期（{ $renewal }）。未主张；可为{ $count }种材料主张，见于：{ $names }。
expiry-undated = { $day }：针对{ $about }的豁免{ $entry }到期（{ $renewal }）。未主张；能否主张取决于投放市场的日期，而该日期未写明。涉及{ $count }种材料，见于：{ $names }。
