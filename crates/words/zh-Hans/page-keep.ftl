# Keeping: the recovery copy, the inspection file, leaving nothing behind.

## In the head of the page

page-keep-open = 保存
page-keep-state-file = 已于{ $time }保存到文件
page-keep-state-copy = 已存入恢复副本
page-keep-state-none = 未保存

## Steps, as they are named when they are taken back

page-keep-step-files = { $n ->
    [1] 载入{ $name }
   *[other] 载入{ $n }个文件
  }
page-keep-step-out = 移出{ $name }
page-keep-step-put-back = 放回{ $name }
page-keep-step-settings = { $name }中的设置
page-keep-step-rule-book = { $name }中的规则集
page-keep-step-mapping = { $name }中的各列含义
page-keep-step-history = { $name }中的历史文件
page-keep-step-bill = { $name }中的物料清单
page-keep-step-photos = 载入{ $n }张照片
page-keep-step-set-aside = 搁置{ $n }个读数
page-keep-step-and-more = { $act }以及另外{ $n }项
page-keep-taken-out = 已移出{ $name }。
page-keep-put-back = 放回
page-keep-event-put-back = 已放回{ $name }。

## The panel

page-keep-heading = 保存与恢复
page-keep-training = 这是使用虚构数据的练习：不为其建立恢复副本。
page-keep-off = 本次检验不在此计算机上保留任何内容。浏览器一关闭就没有了：要保留，请保存到文件。
page-keep-unsaved-full = 恢复副本已没有空间：从现在起的操作不在其中。您可以继续工作。请在下面将本次检验保存到文件。
page-keep-unsaved-refused = 此浏览器不允许本页面保留恢复副本：可能是无痕窗口，或此计算机的规定所致。您可以继续工作。请在下面将本次检验保存到文件。
page-keep-event-code = 已显示恢复码：请抄写下来。
page-keep-code-name = 恢复码
page-keep-code-new = 请抄下此码并随身保管。您在这里所做的一切会立即加密保存在此计算机上。崩溃之后，只有此码能将其恢复。
page-keep-code-again = 崩溃之后，用此码可恢复一切。
page-keep-code-hint = 本页面不在任何地方保存此码。没有它，谁也打不开副本，也没有人能再给您一个。若存为文件，请放在您的U盘上，不要放在此计算机上。
page-keep-noted = 我已抄下
page-keep-copy-code = 复制恢复码
page-keep-save-code = 存为文本文件
page-keep-code-file = 一次Plumbline检验的恢复码。它能在建立副本的浏览器中打开加密的副本。请与那台计算机分开保管。
page-keep-event-noted = 在“保存”中随时可以再看恢复码。
page-keep-event-code-copied = 已复制恢复码。
page-keep-event-code-marked = 已选中恢复码：请用键盘复制。
page-keep-file-what = 要在别处或改日继续，请保存本次检验：文件、设置和您记录的一切都在一个文件中。拿到该文件的人都能阅读其内容。
page-keep-file-kind = 检验文件
page-keep-save-as = 保存本次检验…
page-keep-download = 下载本次检验
page-keep-event-saved = 已保存{ $file }。
page-keep-close = 关闭并删除
page-keep-close-hint = 关闭会从此计算机删除此检验的恢复副本。只要本页面还开着，您仍可回到此检验。
page-keep-event-closed = 已关闭。其恢复副本已从此计算机删除。
page-keep-others = 此浏览器中还有{ $n }个其他恢复副本。
page-keep-remove-others = { $n ->
    [1] 删除
   *[other] 删除全部{ $n }个
  }

## What the copy is against, and what not

page-keep-threats = 副本能防什么，不能防什么
page-keep-threat-copied = 每一步都先存入副本，页面才显示已采用。崩溃、浏览器被强行结束或U盘被拔出之后，您可以从原处继续。
page-keep-threat-where = 副本在此计算机的此浏览器中，不在U盘上。未加密的只有保存时间，以及记录和文件的数量。
page-keep-threat-against = 它防止其他人或其他页面读取此浏览器保留的内容：没有恢复码就什么也看不到。记录若被更改、移动或缺失，会被发现并提示。
page-keep-threat-not-against = 它不能防范在旁观看的人、正在运行的有害程序、内存中的内容或系统写到磁盘上的内存内容，也不能防止有人删除副本或换成较旧的副本。
page-keep-threat-code = 谁找到您抄下的恢复码并能使用此计算机，谁就能打开副本。
page-keep-threat-size = 超过{ $size }的文件不复制，以免让人等待或占满磁盘：只记下名称、大小和摘要，之后会请您重新选择。
page-keep-threat-closed = “新检验”会保留副本，因为您可以回来。以下方式会删除副本：“关闭并删除”、“不在此计算机上留下任何内容”，或在首屏上删除。您下载的文件仍在浏览器存放的位置：本页面无法删除它们。

## Leave nothing

page-keep-leave-off = 这样就没有恢复副本，也不记住各列含义、语言和明暗；已保留的会立即删除。只保留这一要求本身。
page-keep-leave-on = 没有恢复副本，不记住各列含义，也不记住语言。只保留这一要求本身，它不透露您的工作内容。您下载的文件仍在浏览器存放的位置。

## Copies found

page-keep-found = 有{ $n }次检验可以恢复
page-keep-found-what = 此浏览器中有恢复副本。只有抄下的恢复码能打开。
page-keep-found-one = 保存于{ $when }：{ $records }条记录，{ $files }个文件
page-keep-found-many = 较旧的可能已不再需要。
page-keep-found-where = 此浏览器保留的内容
page-keep-code-typed-hint = 不区分大小写，空格和连字符可有可无。
page-keep-bring-back = 恢复
page-keep-remove = 删除
page-keep-remove-older = 删除较旧的{ $n }个
page-keep-removed = 已从此计算机删除{ $n }个恢复副本。
page-keep-event-copies-back = 已放回。
page-keep-work-opening = 正在打开恢复副本
page-keep-code-odd = 恢复码中没有“{ $sign }”。请查看抄写的内容：从不使用数字0、1、5、8和字母B、I、L、O、S、U、V、Z。
page-keep-code-length = 恢复码有{ $of }个字符，这里是{ $n }个。请查看是否漏写或重复。
page-keep-code-wrong = 此码打不开此浏览器中的任何副本。什么都没有丢失：请查看抄写的内容，再试一次。
page-keep-not-back-what = 无法打开恢复副本。
page-keep-browser-why = 浏览器不允许本页面访问其保留的内容。
page-keep-not-back-todo = 副本保持原样。请再试一次；如果仍然如此，请从您的文件重新开始。
page-keep-not-removed-what = 无法删除此浏览器保留的内容。
page-keep-not-removed-todo = 请再试一次，或在浏览器设置中清除其数据。
page-keep-event-recovered = { $n ->
    [1] 已恢复检验及其文件和操作。
   *[other] 已恢复{ $n }次检验。这里是最新的一次；按“回到上一次检验”可到其他检验。
  }
page-keep-lost-what = 恢复副本被更改或已损坏。
page-keep-lost-where = 保存于{ $when }的恢复副本
page-keep-lost-why = { $n ->
    [1] 有一条记录与写入时不同，或已缺失。在它之前的都已恢复。
   *[other] 有一条记录与写入时不同，或已缺失。它和其后的共{ $n }条无法使用。在它之前的都已恢复。
  }
page-keep-lost-todo = 请查看最后记录的内容，补做缺少的部分。损坏的副本保持原样，可在首屏上删除；已用同一恢复码开始新的副本。

## Inspection files

page-keep-event-opened = 已打开{ $name }中的检验及其文件和操作。
page-keep-event-changed = 一同选择的文件中有{ $n }个与当时不同：{ $names }。
page-keep-event-awaited = 有{ $n }个文件需要重新选择：见“保存”。
page-keep-changed-what = 保存检验之后，有一个文件被更改。
page-keep-changed-why = 一同选择的文件名称相同，但内容不同。检验仍使用当时的文件。
page-keep-changed-todo = 要改用更改后的文件，请在“收到了什么？”中移出旧文件，再把更改后的文件选为结果文件。
page-keep-acts-what = 检验未能全部恢复。
page-keep-acts-why = { $of }项操作中恢复了{ $n }项：这份Plumbline不接受其余操作。
page-keep-acts-todo = 请用保存它的那个版本的Plumbline打开。
page-keep-not-opened-what = 未打开该检验文件；没有任何更改。
page-keep-not-opened-newer-why = 它由较新的Plumbline写成（{ $schema }），此版本不认识其格式。
page-keep-not-opened-newer-todo = 请用较新的Plumbline打开。
page-keep-not-opened-damaged-why = 这一部分已损坏：与写入的内容不同。
page-keep-not-opened-damaged-todo = 请从来源处重新复制该文件。如果没有用，请从结果文件开始。
page-keep-not-opened-foreign-why = 它不是Plumbline写的内容（{ $schema }）。
page-keep-not-opened-foreign-todo = 请索取Plumbline保存的原文件。
page-keep-part-list = 开头
page-keep-part-head = 记录的内容
page-keep-part-file = 含有{ $name }的部分
page-keep-awaited = 以下文件太大，未与检验一起保留。请重新选择：
page-keep-choose-again = 选择
page-keep-without = 不用它，继续
page-keep-other-file-what = 这不是所等待的文件。
page-keep-other-file-why = 名称相同，但内容不同（{ $size }；所等待的文件为{ $meant }）。
page-keep-other-file-todo = 请选择当时的文件。要改用这个文件，请打开“保存”，不用旧文件继续，再选择这个文件。

page-trouble-kept-what = 文件已无法从原来的位置读取。
page-trouble-kept-why = 可能是U盘已拔出，或文件被移动、更改。读入时的内容保存在恢复副本中。
page-trouble-kept-todo = 没有丢失任何内容：工作以读入时的内容继续。如需使用更改后的文件，请先移除再重新选择。
