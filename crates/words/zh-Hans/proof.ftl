# Simplified Chinese: what is said of a report that was held against what it carries

# The verdict, in one line.
proof-verdict-agrees = 报告与由其自身数据得出的内容逐字节相同。
proof-verdict-line_ends = 报告与由其自身数据得出的内容相同。只有换行符不同，邮件和编辑器会改变它；看不出差别。
proof-verdict-findings_agree = 只验证了报告中的数据：由它们可得出报告所带的审查结果。您在报告中读到的文字未经验证，可能另有所说。
proof-verdict-differs = 报告与由其自身数据得出的内容不同。
proof-verdict-files_needed = 无法验证该报告：它所依据的文件太大，不能收入其中。请一并给出这些文件。
proof-verdict-evidence_missing = 无法验证该报告：每份报告都应带有的数据，这一份没有。
proof-verdict-not_a_report = 这不是本程序的报告。

# Why only the findings were compared.
proof-only-other_version = 它自称由{ $program } { $version }制作；这一点任何人都能写上。在依据其任何文字之前，请用那个版本验证。在此之前，以其数据在此得出的结果为准：
proof-only-language_not_here = 此处没有其语言的文字。在依据其任何文字之前，请在有这些文字之处验证。在此之前，以其数据在此得出的结果为准：

# What was shown, and what was not.
proof-shows-self = 这证明报告自身前后一致。它不证明数据从何而来：更改数据的人也能重新做出一份自身前后一致的报告。
proof-shows-data = 审查结果所依据的每个文件都已给出，且就是报告所指明的文件：报告的读数就是这些文件的读数。由人设定的内容和规则集不在这些文件中：报告已将其列出。
proof-shows-some = 审查结果所依据的文件有些没有给出。只对已给出的文件证明了报告含有其数据。
proof-shows-other_bytes = 给出的文件中，有一个与报告所依据的文件同名，但字节不同。或者这不是那个文件，或者报告不是由它做出的。
proof-shows-digest_same = 您给出的摘要就是这些审查结果的摘要：这就是有该摘要的报告。
proof-shows-digest_other = 您给出的摘要不是这些审查结果的摘要：这不是有该摘要的报告。
proof-digest = 由报告中的数据算出的审查结果的SHA-256：{ $digest }

# A file the report names.
proof-file-matched = { $file }：已给出，字节相同。
proof-file-other_bytes = { $file }：给出了同名的文件，但字节不同。报告所依据的文件，其SHA-256为{ $sha256 }。
proof-file-not_given = { $file }：未给出。SHA-256为{ $sha256 }。
proof-file-nothing_read = { $file }：没有从中读取任何内容。
proof-stranger = { $file }：已给出，但不是报告所指明的文件。

# Where something is another.
proof-where-top = 第一节之前
proof-where-top_row = 第一节之前，“{ $row }”处
proof-where-section = “{ $section }”一节
proof-where-row = “{ $section }”一节，“{ $row }”行
proof-where-cell = “{ $section }”一节，“{ $row }”行，“{ $column }”列
proof-where-frame = 报告所带的数据中
proof-where-program = 报告所带的数据中，程序的名称和版本
proof-where-report = 报告所带的数据中，报告的语言、篇幅或摘要
proof-where-act = 报告所带的数据中，操作{ $name }
proof-where-book = 报告所带的数据中，规则集{ $name }
proof-where-history = 报告所带的数据中，历史文件
proof-where-file = 报告所带的数据中，文件{ $name }
proof-where-source = 报告所带的数据中，{ $name }的读取情况
proof-where-photo = 报告所带的数据中，照片{ $name }
proof-where-canonical = 报告所带的数据中，审查结果
proof-where-end = 报告所带的数据中，结束行
proof-where-unknown = 报告所带的数据中，种类未知的一行

# What is another there.
proof-place-text = { $where }：报告写的是“{ $says }”，由其数据得出的是“{ $gives }”。
proof-place-missing = { $where }：报告中缺少。由其数据得出的是“{ $gives }”。
proof-place-extra = { $where }：报告写有“{ $says }”，而由其数据得不出此内容。
proof-place-markup = { $where }：报告的结构不同。报告中是{ $says }；程序写出的是{ $gives }。
proof-place-style = { $where }：样式不同。它可能隐藏或改变所看到的内容。
proof-place-active = { $where }：报告中有浏览器可能运行或获取的内容：{ $says }
proof-place-picture = { $where }：图片不是应在此处的那一张。它的SHA-256为{ $says }，而应为{ $gives }。
proof-place-changed = { $where }：写出之后被更改。
proof-place-part_missing = { $where }：缺少。
proof-place-not_usable = { $where }：不能使用。
proof-place-written_otherwise = { $where }：不是程序的写法。
proof-place-finding = 审查结果，{ $row }：报告所带的是“{ $says }”，由其数据得出的是“{ $gives }”。
proof-place-text_changed = 报告的文字在写出之后被更改。更改在何处，只有写出它的那个版本能够指出。
proof-place-digest_not_printed = 报告没有印出其所带审查结果的摘要{ $gives }。
proof-more = 另有{ $count }处。
proof-shows-digest_findings = 您给出的摘要就是这些审查结果的摘要。它不能说明本报告的文字，该文字未经验证。
proof-lot = 批次{ $lot }，供应商{ $supplier }：{ $disposition }
proof-more_lots = 另有{ $count }个批次，均不比以上各批更差。
proof-foreign_books = 判定所用的规则集并非都是本版本程序自带的：{ $books }。无论其名称如何，其限值都来自有人载入的文件，或来自另一版本。请将报告中的限值与法规或标准核对。
proof-nothing = 无

# On the command line.
proof-no_report = 未指明报告
proof-no_digest = “{ $found }”不是摘要：SHA-256由64个0至9和a至f的字符组成
proof-help =

    验证报告：
      plumbline prove REPORT [--source FILE-OR-FOLDER]... [--digest HEX]

    prove      由报告所带的数据重新算出报告，并指出不同之处
    --source PATH    制作报告所用的文件，或其文件夹：证明报告的数据就是它们的数据
    --digest HEX     签名纸件上的摘要：证明这就是所签的那份报告

    prove的退出状态：0 相同，且所给内容无一与之相悖；1 不同；2 无法验证；
    3 只能验证其中的审查结果，不能验证您读到的文字（另一版本或另一语言）；
    64 用法错误，或有文件无法读取。
