# Japanese: what is said of a report that was held against what it carries

# The verdict, in one line.
proof-verdict-agrees = 報告書は、そのデータから得られるものと、1バイトの違いもなく一致します。
proof-verdict-line_ends = 報告書は、そのデータから得られるものと一致します。違うのは行末（改行コード）だけです。メールやエディターで変わるもので、見た目の違いはありません。
proof-verdict-findings_agree = 確かめたのは報告書に含まれるデータだけです。データからは、報告書が持つ所見が得られます。報告書に書かれている文章は確かめておらず、別のことが書かれているかもしれません。
proof-verdict-differs = 報告書は、そのデータから得られるものと一致しません。
proof-verdict-files_needed = 報告書を検証できませんでした。根拠となるファイルが大きすぎて、報告書に収められていません。ファイルを一緒に渡してください。
proof-verdict-evidence_missing = 報告書を検証できませんでした。どの報告書にもあるはずのデータが、これにはありません。
proof-verdict-not_a_report = これは、このプログラムの報告書ではありません。

# Why only the findings were compared.
proof-only-other_version = { $program } { $version }で作られたと書かれていますが、それは誰にでも書けます。文言を頼りにする前に、そのバージョンで検証してもらってください。それまでは、データからここで得られる次の結果によってください。
proof-only-language_not_here = その言語の文言がここにありません。文言を頼りにする前に、文言があるところで検証してもらってください。それまでは、データからここで得られる次の結果によってください。

# What was shown, and what was not.
proof-shows-self = これが示すのは、報告書がそれ自身と食い違わないことです。データの出どころは示していません。データを変えた人は、それ自身と食い違わない報告書を作り直すこともできます。
proof-shows-data = 所見の根拠となるファイルがすべて渡され、どれも報告書に記載されたものです。報告書の測定は、これらのファイルの測定です。人が定めたことと規則集は、これらのファイルにはありません。報告書に記載されています。
proof-shows-some = 所見の根拠となるファイルのうち、渡されていないものがあります。報告書にそのデータがあると示されたのは、渡されたファイルだけです。
proof-shows-other_bytes = 渡されたファイルの中に、報告書の根拠となるファイルと同じ名前で、中身のバイトが異なるものがあります。別のファイルであるか、報告書がこのファイルから作られていないかのどちらかです。
proof-shows-digest_same = 入力されたダイジェストは、これらの所見のダイジェストです。これは、そのダイジェストの報告書です。
proof-shows-digest_other = 入力されたダイジェストは、これらの所見のダイジェストではありません。これは、そのダイジェストの報告書ではありません。
proof-digest = 報告書のデータから計算した所見のSHA-256：{ $digest }

# A file the report names.
proof-file-matched = { $file }：渡され、全バイト一致。
proof-file-other_bytes = { $file }：この名前のファイルが渡されましたが、中身のバイトが異なります。報告書の根拠は、SHA-256が{ $sha256 }のものです。
proof-file-not_given = { $file }：渡されていません。SHA-256：{ $sha256 }。
proof-file-nothing_read = { $file }：ここからは何も読み取っていません。
proof-stranger = { $file }：渡されましたが、この報告書に記載されたファイルではありません。

# Where something is another.
proof-where-top = 最初の欄より前
proof-where-top_row = 最初の欄より前、「{ $row }」
proof-where-section = 欄「{ $section }」
proof-where-row = 欄「{ $section }」、行「{ $row }」
proof-where-cell = 欄「{ $section }」、行「{ $row }」、列「{ $column }」
proof-where-frame = 報告書に含まれるデータ
proof-where-program = 報告書に含まれるデータ、プログラムの名前とバージョン
proof-where-report = 報告書に含まれるデータ、その言語、長さまたはダイジェスト
proof-where-act = 報告書に含まれるデータ、操作{ $name }
proof-where-book = 報告書に含まれるデータ、規則集{ $name }
proof-where-history = 報告書に含まれるデータ、履歴
proof-where-file = 報告書に含まれるデータ、ファイル{ $name }
proof-where-source = 報告書に含まれるデータ、{ $name }の処理の記録
proof-where-photo = 報告書に含まれるデータ、写真{ $name }
proof-where-canonical = 報告書に含まれるデータ、所見
proof-where-end = 報告書に含まれるデータ、末尾の行
proof-where-unknown = 報告書に含まれるデータ、種類の分からない行

# What is another there.
proof-place-text = { $where }：報告書には「{ $says }」とありますが、そのデータから得られるのは「{ $gives }」です。
proof-place-missing = { $where }：報告書にありません。そのデータから得られるのは「{ $gives }」です。
proof-place-extra = { $where }：報告書には「{ $says }」とありますが、そのデータからは得られません。
proof-place-markup = { $where }：報告書の作りが異なります。報告書にあるもの：{ $says }。プログラムが書くもの：{ $gives }。
proof-place-style = { $where }：表示スタイルが異なります。見えるものが隠されたり、変えられたりしているおそれがあります。
proof-place-active = { $where }：ブラウザーが実行または取得するおそれのあるものが報告書にあります：{ $says }
proof-place-picture = { $where }：画像が、そこにあるべきものと異なります。画像のSHA-256は{ $says }ですが、{ $gives }でなければなりません。
proof-place-changed = { $where }：書き出された後に変更されています。
proof-place-part_missing = { $where }：ありません。
proof-place-not_usable = { $where }：使えません。
proof-place-written_otherwise = { $where }：プログラムの書き方と異なります。
proof-place-finding = 所見、{ $row }：報告書には「{ $says }」とありますが、そのデータから得られるのは「{ $gives }」です。
proof-place-text_changed = 報告書の本文が、書き出された後に変更されています。どこかが分かるのは、書き出したバージョンだけです。
proof-place-digest_not_printed = 報告書に含まれる所見のダイジェスト{ $gives }が、報告書に印字されていません。
proof-more = ほか{ $count }か所。
proof-shows-digest_findings = 入力されたダイジェストは、これらの所見のダイジェストです。確かめていないこの報告書の文章については、何も示しません。
proof-lot = ロット{ $lot }、供給者{ $supplier }：{ $disposition }
proof-more_lots = ほかに{ $count }ロット。これらより悪いものはありません。
proof-foreign_books = 判定に使われた規則集のうち、このバージョンのプログラムに付属しないものがあります：{ $books }。どのような名前であっても、その限度値は、誰かが読み込んだファイルのもの、または別のバージョンのものです。報告書の限度値を、法令または規格と照らし合わせてください。
proof-nothing = なし

# On the command line.
proof-no_report = 報告書が指定されていません
proof-no_digest = 「{ $found }」はダイジェストではありません。SHA-256は0～9とa～fの64桁です
proof-help =

    報告書の検証：
      plumbline prove REPORT [--source FILE-OR-FOLDER]... [--digest HEX]

    prove      報告書を、それに含まれるデータから計算し直し、異なるところを示す
    --source PATH    元になったファイル、またはそのフォルダー。データがこれらのものであることを示す
    --digest HEX     署名した紙にあるダイジェスト。署名した報告書であることを示す

    proveの終了コード：0 一致し、渡されたものにも食い違いがない。1 異なる。2 検証できなかった。
    3 含まれる所見だけを検証でき、文章は検証できなかった（別のバージョンまたは言語）。
    64 使い方の誤り、または読み取れないファイル。
