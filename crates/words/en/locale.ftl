### How English writes numbers and dates in text. Data never follows it: JSON, CSV, TOML and the history keep the point and
### ISO 8601. Numbers are not grouped: a sign between thousands is a decimal sign to half the world.

# The language's own name for itself, in the list of languages.
language-name = English
# The sign between a whole number and its decimals.
locale-decimal = {"."}
# yes: one-digit months and days get a zero in front. no: they stand as they are.
locale-two_digits = yes
# English keeps the order of ISO 8601, which no reader takes for another day (our own choice).
locale-day = { $year }-{ $month }-{ $day }
locale-moment = { $day } { $time }

# A line of a file in a row of names, after " · " or a comma.
line-name = line { $line }
# At the foot of every printed page of the report.
report-page_number = Page { $page } of { $pages }
# How sure a value of a rule book is, in brackets within a sentence.
sure-confirmed = confirmed
sure-restated = restated by a secondary source
sure-memory = from memory
sure-derived = derived

cli-help_language =
    Every command takes also:
    --language TAG         the language of its messages: { $list }
    --report-language TAG  the language of the report, where that is another one (review)
    Findings and history are the same bytes in every language.
cli-no_language = "{ $found }" is no language of this program; there are { $list }
