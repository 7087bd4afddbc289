# Simplified Chinese: the papers that go out beside a report: request to a laboratory, notice to a supplier, labels

paper-end = { $number }到此结束
paper-invented = 虚构数据，供练习用。本文书不涉及任何真实事物：请勿发送，也不要据此行事。
paper-determine_cr6 = Cr(VI)，六价铬（筛选测的是总铬）
paper-determine_pbb_pbde = PBB和PBDE，分别测定（筛选测的是总溴）
paper-contact = 联系人
paper-capped = 共{ $total }项，印出前{ $shown }项；findings.json含全部。
paper-band = 区间{ $low }至{ $high } mg/kg
paper-band_open = 从{ $low } mg/kg起为未定
paper-band_detection = 区间从检出限至{ $high } mg/kg
paper-limit = 限值{ $limit } mg/kg
paper-line = 第{ $line }行

## Self-check sheet of a supplier

paper-self_check = 发货前自查
paper-self_check-is = 供应商的自查：按下列规则集，客户根据同样的读数会接收、暂扣或不接收什么。它不是符合性声明，也不是客户的决定：客户以自己的检验来决定。
paper-self_check-full = 这些读数的完整报告编号为{ $number }。请将report.html随本单一并发送，或备好待查：客户可凭编号找到并核对该报告。
paper-self_check-books = 所依据的规则集
paper-self_check-books_given = 以文件给出的已注明。给出者对其限值负责：请凭摘要向客户询问这是否为其规则集。
paper-self_check-books_built_in = 未使用任何客户的规则集：下列为本程序自带的规则集。客户的规则集可能不同。请向客户索取，并在发货前重新自查。
paper-self_check-whose = 来自
paper-self_check-given = 以文件给出
paper-self_check-built_in = 本程序自带
paper-self_check-would-accept = 未发现不利情况
paper-self_check-would-hold = 会暂扣
paper-self_check-would-not_accept = 不会接收
paper-self_check-group-accept = 未发现会致暂扣之处：{ $count }批
paper-self_check-group-accept-is = 就所筛选的物质，这些读数中没有会妨碍客户接收之处。这不是保证：未评估的内容见下文。
paper-self_check-group-hold = 会暂扣：发货前请做以下事项。{ $count }批
paper-self_check-group-hold-is = 有的内容既未得出在限值之内，也未得出在限值之外；或超出限值而豁免主张或疑问尚未了结；或尚缺作结论所需的内容。每一项都写明如何了结，按有用的先后排列。
paper-self_check-group-not_accept = 不会接收：请勿就此发货。{ $count }批
paper-self_check-group-not_accept-is = 发现有超出限值之处。在此处所列各项解决之前，请留存该批。
paper-self_check-noted = 仅作记录。按本次自查的设置不会致该批暂扣，按客户的设置则可能：
paper-self_check-settles = 如何了结
paper-self_check-sampling = 抽样：
paper-self_check-sampling_none = 未写明批量和应取的件数，因此这些读数只代表所测的单件。
paper-self_check-units = 批量{ $size }件；每种材料要求：{ $take }件。
paper-self_check-claims_none = 未主张任何豁免。
paper-self_check-claim = 主张
paper-self_check-in_force = 投放市场之日是否有效
paper-self_check-in_force_on = 有效（{ $day }）
paper-self_check-trust = 读数按其旁的核查：在良好的核查之间{ $ok }个；没有核查涵盖{ $none }个；不在良好的核查之间{ $not_bracketed }个；旁边有核查未通过{ $failed }个。核查读数：{ $checks }个。
paper-self_check-signed = 签名者只说明这些是这些批次的读数，此外不作任何说明。
paper-self_check-checked = 自查人
paper-self_check-released = 负责人

## Request to a laboratory

paper-laboratory = 实验室检测请求
paper-laboratory-is = 请实验室测定X射线荧光筛选留下的未决项目，或筛选为超出限值的项目。它不是订单，也不含任何实验室结果。
paper-samples = 样品
paper-samples_none = 没有等待实验室检测的样品。
paper-samples_order = { $count ->
    [1] { $count }个样品。
   *[other] { $count }个样品，最紧急者在前：先按暂扣最迟应结束的日期，再将不接收的批次排在暂扣的批次之前。
}
paper-sample = 样品{ $number }，共{ $total }个
paper-class = 材料类别
paper-needed_by = 最迟需要日期
paper-piece = 所测的物件
paper-amount = 送样量及其标记
paper-of_id = 样品
paper-of_unit = 单件
paper-of_spot = 测点
paper-determine = 测定
paper-by_method = 参考方法
paper-no_method = 规则集未指明方法：由实验室提出。
paper-why = 原因
paper-asked_back = 请实验室写明的内容
paper-back-result = 所送材料本身的结果：不是几种材料混合物的结果。
paper-back-unit = 结果的单位；按均质材料的mg/kg，方法另有规定时按镀层面积。
paper-back-u = 其扩展不确定度U。
paper-back-k = 该不确定度的包含因子k。
paper-back-lod = 检出限。
paper-back-loq = 定量限。
paper-back-method = 方法，写明部分和版本，以及对该方法的任何偏离。
paper-back-date = 分析日期和实验室报告的编号。
paper-fill-result = 结果
paper-fill-unit = 单位
paper-fill-u = U
paper-fill-k = k
paper-fill-lod = 检出限
paper-fill-loq = 定量限
paper-fill-method = 方法、版本
paper-fill-date = 日期、报告
paper-safety = 安全
paper-safety_text = 样品的铅、镉、汞、铬或溴含量可能超出法定限值。切割和研磨只能在通风条件下进行。
paper-custody = 样品交接记录
paper-custody_text = 每次交接填写一行。在“状态”栏写明封签是否完整、包装是否无损。
paper-custody-number = 序号
paper-custody-by = 交出人
paper-custody-to = 接收人
paper-custody-when = 日期和时间
paper-custody-seal = 封签号
paper-custody-condition = 状态

## Notice to a supplier

paper-notice = 致供应商的通知
paper-notice-is = 告知供应商筛选在其批次中发现了什么，以及请其做什么。
paper-to = 致
paper-reply_by = 请最迟于此日答复
paper-notice_facts = 下列批次已在来料检验时以X射线荧光筛选。本通知写明所测得的内容，不指责任何人，也不对责任作任何认定。
paper-notice_undecided = 暂扣的内容为未定：既未得出在限值之内，也未得出在限值之外，或者尚缺作此结论所需的内容。
paper-lot_counts = { $readings }个读数；该批的材料：{ $materials }
paper-found = 发现的情况
paper-substance = 物质
paper-worst = 最差读数中的最高者，以及与之比较的数值
paper-reasons = 该批尚未接收的理由
paper-own_reasons = 另有一些理由须由检验方自行解决，不需要贵方为此做任何事。
paper-asked = 请贵方办理
paper-asked_nothing = 目前没有。本通知供贵方知悉。
paper-ask-contain = 请留存贵方仍持有的本批货物，并告知还有哪些已交付的货物可能含有同一材料。
paper-ask-laboratory = 请提供上述物质按参考方法得出的实验室结果，附不确定度和实验室报告的编号；没有则请说明没有。
paper-ask-materials = 请提供该部件的均质材料清单，写明每种材料的类别和厚度，包括涂镀层。
paper-ask-exemption = 请说明依据哪一项豁免，写明其条目和条文，并提供其适用的证据。
paper-ask-change = 请说明是否变更过材料、配方或下级供应商，从何时起，涉及哪些批次。
paper-ask-correct = 查明原因后请告知，并说明采取什么措施防止再次发生。
paper-ask-replace = 请告知何时能够更换该批，以及现有这批如何处理。
paper-answer = 贵方的答复
paper-answer_text = 请以书面答复，并注明上面的报告编号。如发现我方有误，请告知。
paper-answer_by = 答复人
paper-answer_date = 日期
paper-answer_signature = 签名

## Labels

paper-labels = 须等待的批次的标签
paper-labels-is = 每个暂扣或不接收的批次一张标签。沿虚线剪开。标签写明该批在标签所列报告中的状态；如有较晚的报告，以较晚的为准。
paper-labels_none = 没有暂扣或不接收的批次。
paper-word-hold = 暂扣
paper-word-not_accept = 不接收
paper-label_more_parts = 及另外{ $count }个
paper-label_more_reasons = 另有{ $count }个理由见报告。
paper-label_lift_two = 只能由新的报告或两人的姓名缩写解除。
paper-label_lift_result = 只能由上述各项已解决的新报告解除。

## Acts

act-reply_by = 请供应商最迟于{ $value }答复
act-requested_action = 请供应商办理：{ $value }
act-contact = 联系人：{ $value }

## The workbook

workbook-lots = 批次
workbook-materials = 材料
workbook-readings = 读数
workbook-checks = 核查
workbook-about = 说明
workbook-program = 程序
workbook-rule_book = 规则集
workbook-readings_all = 全部{ $count }个读数都在读数工作表上。
workbook-readings_capped = 共{ $total }个读数，前{ $shown }个在读数工作表上；findings.csv含全部。
workbook-cut = 长度超过单元格上限而被截断的文字：{ $count }处。findings.json含其全文。
workbook-columns = 各列的名称和含义与findings.csv和findings.json相同。含量为质量分数，单位mg/kg；不确定度为1σ。

## Command line

cli-no_notice = 有{ $count }个暂扣或不接收的批次未注明供应商：没有给它们的通知。
