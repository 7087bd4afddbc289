# Finding the way: doors, places, the next action, the self-check sheet, the look.

# The look
page-theme = 外观
page-theme-system = 跟随系统
page-theme-light = 浅色
page-theme-dark = 深色

## Addresses

page-address-nothing = 该地址所指的内容不在这里。它可能属于其他文件。
page-address-no-data = 该地址属于此处未打开的检验。请重新载入其文件，或回到该检验。
page-address-typed-gone = 在筛选条件中键入的文字不保存在地址里，现已没有。其余部分已按地址显示。

## Doors

page-door-change = 换入口
page-door-inspect-go-on = 以已打开的文件作为检验继续
page-door-ship-go-on = 以已打开的文件作为自查继续
page-event-door-inspect = 现在是到货检验。没有丢失任何内容，仍可换回另一个入口。
page-event-door-ship = 现在是供应商自查。没有丢失任何内容，仍可换回另一个入口。

## The self-check sheet

page-take-self-check = 自查单
page-take-self-check-why = 供存档和交给客户：写明客户会暂扣或不接收什么，以及发货前应做什么。它不是符合性声明。
page-take-self-check-count = { $n }批。
page-take-self-check-none = 没有批次，因此没有内容可写。

## The next action

page-do = 下一步
page-do-later = 稍后
page-do-later-done = 已推迟：{ $what }。最后会再次出现。
page-do-waiting = 已推迟{ $n }项。
page-do-put-off = 处理已推迟的内容
page-event-last = 上一次：
page-do-book = 载入客户的规则集
page-do-book-why = 自查以您客户自己的限值为准。没有客户的规则集文件时，使用本程序自带的规则集。
page-do-bring = 载入结果文件
page-do-bring-why = 尚未收到任何内容：请按原样选取U盘上的文件。
page-do-bring-why-ship = 请载入待发货物的读数。
page-do-unread = 查看{ $name }
page-do-unread-why = { $name }未能读入，因此可能缺少某些测量结果。
page-do-question-why = 文件没有说明这一点。
page-do-question-unit-not-stated = 说明单位
page-do-question-sigma-multiple-not-stated = 说明误差是几倍σ
page-do-question-decimal-mark-unclear = 说明小数点符号
page-do-question-date-order-unclear = 说明日期的顺序
page-do-question-class-not-stated = 说明材料类别
page-do-columns = 查看{ $n }列
page-do-columns-why = { $name }中有些列的含义无法确定。
page-do-refused = 查看{ $n }个拒读行
page-do-refused-why = { $name }中有些行无法使用，每行都写明原因。请改正文件后重新载入，或保持现状。
page-do-evidence-class = 说明材料类别
page-do-evidence-layer = 为表层和裸材料分别命名，或将两者均注明为电镀
page-do-evidence-sigma = 说明误差是几倍σ
page-do-evidence-thickness = 给出厚度
page-do-evidence-materials = 说明部件由什么组成
page-do-evidence-lot-size = { $named ->
    [yes] 给出批次{ $lot }的批量
   *[no] 给出未命名批次的批量
  }
page-do-evidence-units-to-take = { $named ->
    [yes] 说明批次{ $lot }应取的件数
   *[no] 说明未命名批次应取的件数
  }
page-do-evidence-sampling = 查看抽样
page-do-evidence-trust = 指明核查样品
page-do-evidence-certificate = 给出核查标准样品的证书
page-do-evidence-doubtful = 对存疑的内容载入其他读数
page-do-evidence-claims = 补全豁免的主张
page-do-claim = 查看是否有豁免适用
page-do-claim-why = { $material }中的{ $substance }超过限值，且尚无人主张豁免。
page-do-evidence-cr6 = 补全按面积的结果
page-do-evidence-laboratory = 补全实验室结果
page-do-evidence-books = 确定以哪些规则集为准
page-do-evidence-halogens = 确定以哪个卤素规则集为准
page-do-evidence-holds = 查看暂扣
page-do-again-trust-failed = 重新测量并载入，再搁置旧读数
page-do-again-trust-none = 为这些读数测量核查标准样品并载入读数
page-do-again-check = 补全核查标准样品的读数
page-do-again-trust-not-bracketed = 在两次核查之间测量并载入，再搁置旧读数
page-do-again-sampling-too-few = 测量更多单件并载入读数
page-do-again-material-not-measured = 测量所缺的材料并载入读数
page-do-lot-hold = { $named ->
    [yes] 说明由谁结束批次{ $lot }的暂扣
   *[no] 说明由谁结束未命名批次的暂扣
  }
page-do-lot-not-accept = { $named ->
    [yes] 说明由谁决定批次{ $lot }如何处理
   *[no] 说明由谁决定未命名批次如何处理
  }
page-do-field-title = 给报告加标题
page-do-field-inspector = 写明由谁测量
page-do-field-place = 写明在何处测量
page-do-field-reviewed-at = 写明日期
page-do-field-contact = 写明由谁解答问题
page-do-field-customer = 写明报告交给谁
page-do-field-why = 报告开头的该处为空。
page-do-sheet = 取走自查单
page-do-sheet-why = 它写明客户会暂扣什么，以及发货前应做什么。
page-do-report = 取走报告
page-do-report-why = 现在没有其他事项。报告尚未保存。
page-do-again = 开始下一批到货
page-do-again-why = 全部完成并已保存。
page-do-again-why-left = 有{ $n }项未了结，报告已写明。全部已保存。
page-do-lesson = 进入下一批到货
page-do-lesson-why = 此次到货想看多久都可以。
page-do-lesson-last = 选择现在做什么
page-do-lesson-last-why = 这是最后一批到货。
page-do-fresh = 返回练习室
page-do-fresh-why = 请像对待真实批次一样审查此批。换一个种子会得到另一批。
page-do-room = 进入课程
page-do-room-why = 此处显示您上次停在哪里。
page-do-lessons = 返回课程
page-do-exercise = 回答练习题{ $n }
page-do-exercise-why = 先由您判断，然后工具显示它的推算过程。
page-do-after = 本课之后继续
page-do-after-why = 本页的练习题都已回答。
