# Simplified Chinese: physics: line overlaps, thickness, composition, stoichiometry

# Composition: what it suggests, why, and what it contradicts. A suggestion is never a decision.
composition-suggests = 成分提示为{ $what }（{ $numbers }）：{ $because }。
composition-suggests_perhaps = 成分提示为金属，可能是{ $what }（{ $numbers }）：{ $because }。
composition-class-metal = 金属
composition-class-polymer = 塑料
composition-class-composite = 复合材料
composition-reason-mostly_metal = 金属合计{ $metals } %
composition-reason-little_seen = 测到的元素合计{ $sum } %，而所有可能为主要成分的元素都已测量；轻元素测不到
composition-reason-much_chlorine = 氯是主要元素而金属不是，如PVC和其他含氯塑料
composition-reason-conductor_in_laminate = 有导体，且溴、硅、钙中至少有两种，如印制板
composition-contests-metals_in_polymer = 注明的类别是塑料，而金属合计{ $sum } %（{ $numbers }）。
composition-contests-no_metal_in_metal = 注明的类别是金属，但所有主要金属都已测量，却几乎没有测到任何金属。
composition-contests-halogen_in_metal = 注明的类别是金属，而溴或氯的含量与阻燃塑料或含氯塑料相当。
composition-calibration-pvc_in_polymer_mode = 氯是主要元素，而测量模式用于不含氯的塑料：其数值可能相差很远。
composition-calibration-metal_in_polymer_mode = 用塑料模式测量了金属：其数值可能相差很远。
composition-calibration-metal_in_soil_mode = 用土壤或矿石模式测量了金属：其数值可能相差很远。
composition-calibration-plastic_in_metal_mode = 用金属模式测量了塑料：其数值可能相差很远。
composition-calibration-plastic_in_soil_mode = 用土壤或矿石模式测量了塑料：其数值可能相差很远。
family-group-steel = 钢或其他铁合金
family-group-aluminium = 铝合金
family-group-copper = 铜合金
family-group-zinc = 锌合金
family-group-tin = 锡合金
family-group-lead = 铅合金
family-group-nickel = 镍合金
family-group-titanium = 钛合金
family-group-magnesium = 镁合金
family-group-precious = 贵金属
family-fits = 它在{ $name }的公布范围之内（{ $source }）。
family-may_be = 它可能是{ $name }（{ $source }）：某一边界在3σ之内，或有成分未测量。
family-near = 最接近的系列是{ $name }（{ $source }），{ $element }差{ $by } %。
family-also = 同样可能：{ $names }。
next-state_class_suggested = 注明材料类别；成分提示为{ $what }。
class-from-contested = 已注明，但与测得内容相矛盾
lot-reason-class_contested = { $of }个读数中有{ $count }个的测得内容与注明的类别明显矛盾；已按每一类别判定，以最差者为准。
    .remedy = 查看该部件，以及射线束照到了什么；更正类别、分离材料或重新测量。
lot-reason-calibration_doubtful = { $of }个读数中有{ $count }个所用的测量模式与材料不符，因此数值可能相差很远。
    .remedy = 用与材料相符的模式重新测量。
evidence-short-class_contested = 与测得内容相矛盾的类别
evidence-short-calibration_doubtful = 用相符模式测得的读数

## Cautions beside an outcome

doubt-line_overlap = { $partner }（{ $partner_line }，相距{ $gap } eV）落在{ $about }的{ $line }谱线上：若不校正，会表现为{ $apparent } mg/kg的{ $about }（{ $basis }）。
doubt-other_line = 如果{ $about }是用其{ $line }谱线测量的：{ $partner }（{ $partner_line }，相距{ $gap } eV）落在其上，会表现为{ $apparent } mg/kg的{ $about }（{ $basis }）。
doubt-sum_peak = { $partner }的两个脉冲被计为一个，即和峰（{ $partner_line }，相距{ $gap } eV），落在{ $about }的{ $line }谱线上：若不校正，会表现为{ $apparent } mg/kg的{ $about }（{ $basis }）。
doubt-escape_peak = { $partner }的逃逸峰（{ $partner_line }，相距{ $gap } eV）落在{ $about }的{ $line }谱线上：若不校正，会表现为{ $apparent } mg/kg的{ $about }（{ $basis }）。
doubt-tube_line = X射线管自身的{ $partner }谱线（{ $partner_line }，相距{ $gap } eV）落在{ $about }的{ $line }谱线上：若不校正，可能表现为{ $apparent } mg/kg的{ $about }（{ $basis }）。
doubt-thin_piece = 样品较薄：与厚样品相比缺少{ $percent } %的信号，因此{ $about }的读数偏低。
doubt-strong_below = 分析仪已对此作了校正；若残留其十分之一（假定：通行做法，无来源），数值就可能越过边界。此BL不足以下结论：用不受干扰的谱线测量，或使用参考方法。
doubt-strong_over = 若没有这一影响，数值就不会超出限值。在拒收任何东西之前，请实验室确认。

lot-reason-overlap_unresolved = { $of }个读数中有{ $count }个的{ $about }低于限值，但另一元素的强谱线落在其谱线上，校正后可能残留的部分足以达到边界。
    .remedy = 用不受干扰的谱线测量，或将样品送实验室按参考方法检测。
lot-reason-over_may_be_overlap = { $of }个读数中有{ $count }个的{ $about }超出限值，可能只是由于另一元素的强谱线落在其谱线上。
    .remedy = 隔离该批，并在拒收之前请实验室按参考方法确认。
evidence-short-overlap_unresolved = 不受重叠干扰的谱线
evidence-short-over_may_be_overlap = 实验室的结果

## What an element allows at most

bound-hexavalent = 若铬全部为六价，Cr(VI)至多{ $most } mg/kg。
bound-brominated = 若溴全部在含一个溴的同系物中，任何PBDE至多{ $pbde } mg/kg，任何PBB至多{ $pbb } mg/kg；若为十溴二苯醚（decaBDE），至多{ $deca } mg/kg。溴也同样可能来自指令不限制的阻燃剂，如TBBPA或DBDPE。
bound-pops = 这不能证明满足经(EU) 2025/1482修订的法规(EU) 2019/1021对PBDE的{ $limit } mg/kg限值（由二手来源转述），那是另一部法律。
