# The report: what standards ask it to hold, its three lengths, and how acts read in it.

## What a person states for the report

act-issuer = report issued by { $name }{ $address ->
        [none] { "" }
       *[other] , { $address }
    }
act-customer = report for { $name }{ $contact ->
        [none] { "" }
       *[other] , { $contact }
    }
act-received = received on { $value }
act-sampled = samples taken: date { $date ->
        [none] not stated
       *[other] { $date }
    }; by { $by ->
        [none] nobody named
       *[other] { $by }
    }; place { $place ->
        [none] not stated
       *[other] { $place }
    }; method { $method ->
        [none] not stated
       *[other] { $method }
    }
act-item = items: { $description ->
        [none] not described
       *[other] { $description }
    }; condition: { $condition ->
        [none] not stated
       *[other] { $condition }
    }
act-issued_on = report issued on { $value }
act-environment = conditions where it was measured: { $value }
act-deviations = additions, deviations and exclusions: { $value }
act-instrument = instrument: { $value }
act-authorised = report authorised by { $by }; second person: { $second ->
        [none] not named
       *[other] { $second }
    }
act-records_kept = records are kept: { $value }
act-invented = { $value ->
        [yes] the data are invented, for training
       *[no] the data are not invented
    }

## Values of acts, in words

said-trust-holding = they hold the lot
said-trust-advisory = said, and hold nothing
said-sampling-holding = it holds the lot
said-sampling-advisory = said, and holds nothing
said-materials-holding = it holds the lot
said-materials-advisory = said, and holds nothing
said-repeats-same_spot = the same sample id on the same stated spot
said-repeats-same_id = the same sample id, also where no spot is stated
said-repeats-never = none; every reading stands for itself
said-uncertainty_holds-repeatability = repeatability only
said-uncertainty_holds-everything = all there is, calibration, matrix and sampling included
said-mark-check = a check standard
said-mark-blank = a blank
said-mark-product = goods, no check
said-category-8 = 8, which half is not stated
said-category-8ivd = 8, in vitro diagnostic medical devices
said-category-8o = 8, other medical devices
said-category-9 = 9, which half is not stated
said-category-9i = 9, industrial monitoring and control
said-category-9o = 9, other monitoring and control
said-site_sigma = { $element } in { $class }: one sigma { $s }, { $seconds ->
        [none] measuring time not stated
       *[other] for { $seconds } s
    }, of which { $constant ->
        [none] nothing is constant
       *[other] { $constant } is constant
    }

## Lengths and parts

length-one_page = One page
length-full = Full report
length-annex = Annex
report-parts = Part { $part } of 3 of report { $number }: { $name }. The other parts, under the same number: { $others }.
report-part_named = part { $part }, { $name } ({ $file })
report-part_short = part { $part } of 3
report-contents = This part holds these sections, in this order, and ends with "{ $end }":
report-invented = Invented data, for training. This report is about nothing real.
report-invented_short = INVENTED DATA
report-annex_elsewhere = Every reading with its file and line stands in the annex, part 3 of this report ({ $file }).

## Who, for whom, when

report-issuer = Issued by
report-customer = For
report-issued_on = Date of issue
report-authorised = Authorised by
report-authorised_second = Second person
report-relates = Results relate only to the items tested. This report may be copied only whole, in all its parts, unless the issuer agrees in writing.

## Items

report-items = Items, their condition and how they were taken
report-items_text = As the people named in the acts stated it. Every lot is identified by supplier and lot, its parts and materials by their names in the results.
report-items_capped = The first { $shown } of { $total } lots are printed; findings.json holds all of them.
report-description = Description
report-condition = Condition
report-received = Received
report-sampled = Samples taken (date, by, place)
report-sampled_method = Plan or method of sampling
report-sampled_plan = the plan stands with the lot
report-none_stated_plan = no plan stated

## How it was measured

report-measured = How, where, when and by whom it was measured
report-measured_when = Readings made
report-measured_days = { $from } to { $until }
report-measured_undated = { $count ->
        [one] one reading has no date that could be read
       *[other] { $count } readings have no date that could be read
    }
report-operators = Measured by
report-instruments = Instrument
report-modes = Mode of measurement
report-seconds = Measuring time
report-seconds_range = { $from } to { $until } s
report-seconds_one = { $from } s
report-environment = Conditions
report-deviations = Additions, deviations, exclusions
report-deviations_aside = { $count ->
        [one] One reading was set aside by a person
       *[other] { $count } readings were set aside by a person
    }, with the reason; see the section on readings set aside.
report-deviations_refused = { $count ->
        [one] One row was refused
       *[other] { $count } rows were refused
    } and counts for nothing; see the section on sources.
report-deviations_said = { $text }.
report-external = Results of external providers
report-external_none = None: no laboratory result was given.
report-external_count = { $count ->
        [one] One laboratory result
       *[other] { $count } laboratory results
    }; see the section on laboratory results.
report-external_text = Results of external providers: laboratories found these, not the issuer of this report.
report-records_kept = Records are kept
report-and_more = { $list } and { $count } more

## Decision rule and opinions

report-inherent = Decision rule: the bands of the method are the rule. They hold a guard band of their own (from the limit down to the low edge, up to the high edge, and { $k } s beyond), so no other guard band is added (ISO/IEC 17025:2017, 7.8.6.1; ILAC-G8:09/2019).
report-risk = Risk of the rule: where s is right, readings scatter normally about the true value and nothing else is wrong, a reading of a material whose content is the low edge comes out below limit with a chance of { $chance } %, and one whose content is the high edge comes out over limit with a chance of { $chance } %. So a content at or above the limit comes out below limit, and one at or below the limit comes out over limit, with a smaller chance still. Where few repeats give s, a larger factor keeps that chance. What calibration, matrix, homogeneity and sampling add is not in it. This is computed from the normal distribution; the edges of the bands are the standard's.
report-opinions = What ends a reason, next steps, cautions, comparisons with other rules and entries that may cover are opinions and interpretations, not results.
report-standards = Made to hold what ISO/IEC 17025:2017 (7.8), IEC 62321-1:2013 (4.8) and EN IEC 63000:2018 ask of a report of screening. It is one of the documents of a technical file and no such file by itself, and it claims no accreditation.
report-settled_by_laboratory = none is left here: a laboratory settled it. { $text }
report-sign_authorised = Authorised by (name, function, date, signature)

## One page

report-page_lots = Lots, worst first
report-page_reasons = Leading reasons
report-page_next = What must happen next
report-page_by = By whom
report-page_until = by when
report-page_more_reasons = { $count ->
        [one] and one more reason
       *[other] and { $count } more reasons
    }
report-page_nothing = Nothing holds it.
report-page_more_lots = { $count ->
        [one] One more lot stands
       *[other] { $count } more lots stand
    } in the full report: accept { $accept }, hold { $hold }, not accept { $not_accept }.
report-page_inspected = What was inspected
report-page_decided = Decided by (name, date, signature)
report-page_checked = Second person (name, date, signature)

# Days that can't both be right.
report-day_sampled = Samples taken
report-day_amiss = Dates that do not fit each other: “{ $later }” is { $later_day }, which is before “{ $earlier }”, { $earlier_day }. One of them is wrong.

# A rule book that does not come with the program may bear the name of one that does, and hold other limits.
report-foreign_book = This book does not come with the program: somebody loaded it from a file. What it says of its source and of the confidence in its values is that file's word.
report-foreign_books = Judged also by a rule book that does not come with the program: { $books }. Its limits are the word of the file that was loaded.

## Command line

cli-no_length = "{ $found }" is no length of a report; known are one_page, full, annex and all
