# Simplified Chinese: rule books and limits: what they say and how they are explained

## Reasons of a disposition

lot-reason-limit_over = { $of }个读数中有{ $count }个超出限值“{ $about }”。
    .remedy = 隔离该批。将最差的样品送实验室按参考方法检测；只有其结果才能改变此结论。
lot-reason-limit_open = { $of }个读数中有{ $count }个在限值“{ $about }”下未决。
    .remedy = 见该限值自身的说明：延长测量、分离材料、给出投放市场日期、送实验室检测，或回答其问题。
lot-reason-book_not_loaded = 本次检验指定了规则集“{ $about }”，但它不在此处，或有另一规则集代替了它的内容。
    .remedy = 给出该规则集文件，改为指定此处已有的规则集，或移出代替它的那个。
lot-reason-book_not_in_use = 规则集“{ $about }”在所依据的日期（投放市场日，否则为检验日）无效，或该日期未写明。
    .remedy = 载入在该日有效的规则集，或写明投放市场的日期。
lot-reason-book_differs = 本次检验按摘要指定了规则集“{ $about }”，而此处以此为标识的规则集是另一个文件。
    .remedy = 给出所指的文件，或在查看有何变化之后，指定此处的规则集。
summary-limit_over = 超出限值“{ $about }”{ $count }个
summary-limit_open = 在限值“{ $about }”下未决{ $count }个
evidence-short-book_not_loaded = 所指定的规则集
evidence-short-book_not_in_use = 在该日有效的规则集
evidence-short-book_differs = 所指的那个规则集
act-books = 规则集：{ $value }

## Why a limit is open, or does not apply

reason-answered_no = 有人回答此限值不适用。
reason-class_not_covered = 此限值不涉及这一材料类别。
reason-outside_validity = 此限值在投放市场之日无效。
reason-placing_date_not_stated = 此限值只对特定的投放市场日期有效，而该日期未注明。
reason-question_open = 若此限值适用，则超出；是否适用，须由人回答。
reason-source_not_seen = 等于或高于限值。该限值只计特定来源的该元素，而X射线看不出它来自哪里。
reason-mixed_materials = 几种材料合在一起低于限值：其中一种可能高于限值。

## Rule books explained

rules-edition = 版次{ $edition }
rules-days-any = 任何日期投放市场
rules-days-from = 自{ $from }起投放市场
rules-days-until = 截至{ $until }（含当日）投放市场
rules-days-both = 自{ $from }至{ $until }投放市场
rules-digest = SHA-256 { $digest }
rules-holds-bands = { $count }个区间
rules-holds-halogens = { $count }个卤素限值
rules-holds-limits = { $count }个限值
rules-holds-exemptions = { $count }项豁免
rules-holds-areas = { $count }条按面积计的六价铬规则
rules-holds-routes = { $count }种参考方法
confidence-confirmed = 已在法律或标准的文本中核实。
confidence-restated = 由二手来源转述；未见法律或标准本身的此条款。
confidence-memory = 凭记忆；使用前请在法律或标准中核对。
confidence-derived = 由计算或由文字推导得出，如该行所述。
confidence-own = 规则集自己的说法：{ $words }。
rules-screening = 筛选区间；s为1σ。
rules-halogens = 卤素限值；s为1σ。
rules-cited = { $text }来源：{ $source }，{ $clause }。{ $confidence }
rules-band = { $about }，{ $class }：{ $low }；{ $high }；两者之间为未定。
rules-band-none = { $about }，{ $class }：不适用。
rules-low = 数值 + { $k } s{ $equal ->
        [yes] 等于或低于
       *[no] 低于
    }{ $limit } mg/kg时，低于限值
rules-low-detection = 数值等于或低于读数自身的检出限，且该检出限最大为{ $limit } mg/kg时，低于限值
rules-high = 数值 - { $k } s{ $equal ->
        [yes] 等于或高于
       *[no] 高于
    }{ $limit } mg/kg时，超出限值
rules-high-none = 永远不判为超出限值，因为该元素不能证明存在该物质
rules-within = 数值 + { $k } s{ $equal ->
        [yes] 等于或低于
       *[no] 低于
    }{ $limit } mg/kg时，在限值之内
rules-over = 数值 - { $k } s{ $equal ->
        [yes] 高于
       *[no] 等于或高于
    }{ $limit } mg/kg时，超出
rules-over-without = 仅{ $about } - { $k } s{ $equal ->
        [yes] 高于
       *[no] 等于或高于
    }{ $limit } mg/kg时，超出
rules-over-never = 永远不凭读数判为超出
rules-halogen = { $about }：{ $rule }。
rules-limit = { $id }：{ $about }，以在{ $basis }中所占的份额计：{ $rule }。适用于：{ $classes }。
rules-species = { $about }只是代表{ $species }：在限值之内，可排除后者含量过多；高于限值，不能说明后者有无。
rules-source_unknown = 该元素只计来自特定来源的部分，而X射线看不出来源：等于或高于限值为未定。
rules-mixed = 几种材料合在一起在限值之内为未定，因为其中一种可能高于限值。
rules-scope = 所涉范围：{ $scope }。
rules-question = 须由人回答：{ $question } 在此之前，超出也只判为未定。
rules-dated = 适用于{ $days }的产品。
rules-exemption = { $entry }：{ $scope }；{ $bound ->
        [at_most] 至{ $limit } mg/kg为止，等于该数值也符合。
        [at_least] 自{ $limit } mg/kg起，等于该数值也符合。
       *[none] 没有数值。
    } 其条文起始：{ $from ->
        [none] 未注明
       *[other] { $from }
    }。到期：{ $until ->
        [none] 未注明
       *[other] { $until }
    }。
rules-exemption-starred = 不适用于面向公众、儿童可能放入口中的部件，除非有试验证明其铅释放量足够低。
rules-exemption-not_found = 未查到它是否仍然有效，或适用于哪些产品类别：若主张它，则暂扣。
rules-area = 金属上的六价铬，按面积计：低于{ $below } µg/cm²为阴性，高于{ $above } µg/cm²为阳性，从前者到后者之间不能判定。
rules-route = 未定的{ $about }送检：{ $method }，{ $technique }。适用于：{ $classes }。来源：{ $source }。{ $confidence }
rules-route-halogens = 氯或溴
basis-homogeneous_material = 一种均质材料
basis-plastic = 塑料
basis-coating_alone = 单独的涂镀层，从其所附的基体上取下（在确知它是单独的层之前，低于也判为未定）
basis-article = 物品或其部件
basis-packaging_component = 包装或其组件
cli-rules_unknown = 没有标识为“{ $found }”的规则集，也没有这样的文件
