## What is said of a report that was held against what it carries.

# The verdict, in one line.
proof-verdict-agrees = The report is, byte for byte, what its own data give.
proof-verdict-line_ends = The report is what its own data give. Only its line ends are others, as mail and editors change them; nobody sees a difference.
proof-verdict-findings_agree = Only the data inside the report were checked: they give the findings it carries. The text you read in it was NOT checked and may say something else.
proof-verdict-differs = The report is not what its own data give.
proof-verdict-files_needed = The report could not be proved: the files it rests on are too large to stand in it. Give them beside it.
proof-verdict-evidence_missing = The report could not be proved: the data that every report carries are missing from this one.
proof-verdict-not_a_report = This is no report of this program.

# Why only the findings were compared.
proof-only-other_version = It says it was made by { $program } { $version }; anybody can write that. Have it proved by that version before you rely on a word of it. What counts until then is what its data give, here:
proof-only-language_not_here = The words of its language are not here. Have it proved where they are before you rely on a word of it. What counts until then is what its data give, here:
# What its data give of each lot, where the text was not checked.
proof-lot = Lot { $lot }, supplier { $supplier }: { $disposition }
proof-more_lots = { $count ->
    [one] And { $count } lot more, none worse than these.
   *[other] And { $count } lots more, none worse than these.
}

# What was shown, and what was not.
proof-foreign_books = Not every rule book it was judged by comes with this version of the program: { $books }. Whatever name it bears, its limits are those of a file that somebody loaded, or of another version. Hold the limits in the report against the law or standard.
proof-shows-self = This shows that the report agrees with itself. It does not show where its data come from: whoever changes the data can make a report again that agrees with itself too.
proof-shows-data = Every file the findings rest on was given and is the one the report names: its readings are the readings of these files. What people set, and the rule books, stand in no such file: the report lists them.
proof-shows-some = Some of the files the findings rest on were not given. Only for those given it was shown that the report holds their data.
proof-shows-other_bytes = A file that was given has the name of one the report rests on, and other bytes. Either this is not the file, or the report was not made from it.
proof-shows-digest_same = The digest you gave is the digest of these findings: this is the report with that digest.
proof-shows-digest_findings = The digest you gave is the digest of these findings. It says nothing of the text of this report, which was not checked.
proof-shows-digest_other = The digest you gave is not the digest of these findings: this is not the report with that digest.
proof-digest = SHA-256 of the findings, computed from the data in the report: { $digest }

# A file the report names.
proof-file-matched = { $file }: given, and the same bytes.
proof-file-other_bytes = { $file }: a file of this name was given and has other bytes. The report rests on the one with SHA-256 { $sha256 }.
proof-file-not_given = { $file }: not given. SHA-256 { $sha256 }.
proof-file-nothing_read = { $file }: nothing was read from it.
proof-stranger = { $file }: given, and not a file this report names.

# Where something is another.
proof-where-top = Above the first section
proof-where-top_row = Above the first section, at “{ $row }”
proof-where-section = Section “{ $section }”
proof-where-row = Section “{ $section }”, row “{ $row }”
proof-where-cell = Section “{ $section }”, row “{ $row }”, column “{ $column }”
proof-where-frame = In the data the report carries
proof-where-program = In the data the report carries, name and version of the program
proof-where-report = In the data the report carries, its language, length or digest
proof-where-act = In the data the report carries, act { $name }
proof-where-book = In the data the report carries, rule book { $name }
proof-where-history = In the data the report carries, the history
proof-where-file = In the data the report carries, file { $name }
proof-where-source = In the data the report carries, what became of { $name }
proof-where-photo = In the data the report carries, photograph { $name }
proof-where-canonical = In the data the report carries, the findings
proof-where-end = In the data the report carries, the closing line
proof-where-unknown = In the data the report carries, a line of no known kind

# What is another there.
proof-place-text = { $where }: the report says “{ $says }”, its data give “{ $gives }”.
proof-place-missing = { $where }: missing from the report. Its data give “{ $gives }”.
proof-place-extra = { $where }: the report says “{ $says }”, and its data give no such thing.
proof-place-markup = { $where }: the report is built in another way. It has { $says }; the program writes { $gives }.
proof-place-style = { $where }: the style is another. It may hide or change what is seen.
proof-place-active = { $where }: the report has something a browser may run or fetch: { $says }
proof-place-picture = { $where }: the picture is not the one that belongs there. Its SHA-256 is { $says }, and it should be { $gives }.
proof-place-changed = { $where }: changed after it was written.
proof-place-part_missing = { $where }: missing.
proof-place-not_usable = { $where }: can't be used.
proof-place-written_otherwise = { $where }: not as the program writes it.
proof-place-finding = Findings, { $row }: the report carries “{ $says }”, its data give “{ $gives }”.
proof-place-text_changed = The text of the report was changed after it was written. Where, only the version that wrote it can tell.
proof-place-digest_not_printed = The report does not print the digest of the findings it carries, { $gives }.
proof-more = { $count ->
    [one] And { $count } place more.
   *[other] And { $count } places more.
}
proof-nothing = nothing

# On the command line.
proof-no_report = no report is named
proof-no_digest = "{ $found }" is no digest: a SHA-256 has 64 digits of 0 to 9 and a to f
proof-help =

    Proving a report:
      plumbline prove REPORT [--source FILE-OR-FOLDER]... [--digest HEX]

    prove      computes a report again from the data it carries and says where it is another
    --source PATH    the files it was made from, or their folder: shows that its data are theirs
    --digest HEX     the digest on the signed paper: shows that it is the report that was signed

    Exit status of prove: 0 it agrees, and nothing given says otherwise; 1 it differs; 2 it could not be proved;
    3 only the findings in it could be proved, not the text you read (another version or language);
    64 wrong usage, or a file that can't be read.
