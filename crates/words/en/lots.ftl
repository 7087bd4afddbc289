# Trust, sampling, lots and laboratories.

## Trust: checks and the readings between them

lot-reason-trust_failed = A check beside { $count ->
        [one] one reading
       *[other] { $count } readings
    } failed: { $about }. What was measured there is not to be relied on.
    .remedy = Put the analyser right, measure the check standard until it is good, then measure these readings again between two good checks, and then set these readings aside, with the reason.
lot-reason-trust_not_bracketed = { $count ->
        [one] One reading lies
       *[other] { $count } readings lie
    } between no two good checks: { $about }. A reading is trusted only with the good checks that the bracket rule asks for.
    .remedy = Measure the check standard now if nothing was changed since, or measure these again between two good checks and then set these readings aside, with the reason.
lot-reason-trust_none = { $count ->
        [0] No check standard or blank is given, so nothing shows that the analyser was right.
        [one] No check covers { $about } in one reading ({ $of } in all). No check standard was measured for it that fits: instrument { $instrument ->
            [none] not stated
           *[other] { $instrument }
        }, mode { $mode ->
            [none] not stated
           *[other] { $mode }
        }, class { $class_name }.
       *[other] No check covers { $about } in { $count } of { $of } readings. No check standard was measured for them that fits: instrument { $instrument ->
            [none] not stated
           *[other] { $instrument }
        }, mode { $mode ->
            [none] not stated
           *[other] { $mode }
        }, class { $class_name }.
    }
    .nothing = Check readings are there, and none of them covers these readings: no check standard of the same instrument, mode and class was measured, in the same file or at a known time. One whose class nobody states covers nothing.
    .remedy = Measure a check standard of the same class before and after these readings{ $instrument ->
        [none] { "" }
       *[other] { " " }on instrument { $instrument }
    }{ $mode ->
        [none] { "" }
       *[other] { " " }in mode { $mode }
    }{ $class ->
        [none] { "" }
        [unknown] , once their class is stated
       *[other] { " " }({ $class_name })
    }. A check counts only in the same file or at a known time; one whose class nobody states covers nothing.
lot-reason-trust_not_certified = A check standard that fits was measured, and its certified value of { $about } is not stated: nothing shows that the analyser was right about { $about } in { $count ->
        [one] one reading ({ $of } in all)
       *[other] { $count } of { $of } readings
    }.
    .expired = Check standard { $sample } was measured, and its certificate { $certificate } ended { $cause }: nothing shows that the analyser was right about { $about } in { $count ->
        [one] one reading ({ $of } in all)
       *[other] { $count } of { $of } readings
    }.
    .open = Check standard { $sample } was measured (certificate { $certificate }), and shows nothing about { $about } in { $count ->
        [one] one reading ({ $of } in all)
       *[other] { $count } of { $of } readings
    }: { $cause }.
    .remedy = State the certified value from the certificate of the check standard. If the certificate has none, measure a check standard that has one.
    .expired_remedy = Give a certificate of check standard { $sample } that is valid on the day it was measured. Measuring it again does not help while its certificate is past its day.
    .open_remedy = Give what is missing of the readings of check standard { $sample } (their uncertainty, unit or day) in the file or in the settings. Measured again in the same way, it shows no more.
lot-reason-trust_not_judged = { $count ->
        [one] One check reading is
       *[other] { $count } check readings are
    } set apart and could not be judged (see the list of checks), so nothing shows that the analyser was right.
    .alone = { $count ->
        [one] One undecided reading of { $about } is
       *[other] { $count } undecided readings of { $about } are
    } called a check by name or mark alone. No certificate says what the sample holds, and other readings of the file state neither lot nor part: it may be product of this lot.
    .remedy = Give the certified values of the check standard. Lot or part of the product in the file shows which readings are no product.
lot-reason-check_times_differ = { $count ->
        [one] One reading
       *[other] { $count } readings
    } took longer than a check of the same class, or less than half as long: the check shows less of it than it could.
    .remedy = Measure checks for as long as product.
lot-reason-checks_far_apart = { $count ->
        [one] The good checks of one reading stand
       *[other] The good checks of { $count } readings stand
    } more than a day apart: { $about }. US EPA Method 6200 (9.4) asks for a check at the beginning and at the end of each working day.
    .remedy = Measure these again between good checks of one day, and then set these readings aside, with the reason.
lot-reason-mark_not_taken = { $count ->
        [one] One reading was named or marked as a check and stays product
       *[other] { $count } readings were named or marked as checks and stay product
    }: that takes no reading out of a lot or a part, and none that is over limit while no certificate names its sample.
    .remedy = Leave the lot and the part of check readings empty in the file, and give the certificate of the check standard.
evidence-short-trust_failed = new readings for those beside a failed check
evidence-short-trust_not_bracketed = readings between two good checks
evidence-short-trust_none = check readings
evidence-short-trust_not_certified = certified values of a check standard
evidence-short-trust_not_judged = judged check readings
evidence-short-check_times_differ = the time of a check
evidence-short-checks_far_apart = checks of the same day
evidence-short-mark_not_taken = a mark that was not taken
trust-ok = between good checks
trust-none = no check covers it
trust-not_bracketed = not between good checks
trust-failed = a check beside it failed
trust-aside = set aside by a person
check-kind-check = check standard
check-kind-blank = blank
check-verdict-good = good
check-verdict-warning = good, with a warning (|zeta| above 2)
check-verdict-failed = failed
check-verdict-no_uncertainty = not judged: no uncertainty
check-verdict-not_measured = not measured
check-verdict-not_seen = not judged: not detected, or so uncertain, that the certified value could be missed altogether
check-verdict-unit_unknown = not judged: the unit is not stated
check-verdict-expired = not taken: the certificate is past its day
check-verdict-day_unknown = not taken: the certificate has a last day, and the day of the reading is not known
check-verdict-no_certificate = no certified value
check-scores = zeta { $zeta }, E_n { $en }
report-trust = Trust
report-trust_text = Readings are trusted { $bracket ->
        [before] after a good check
        [per_shift] in a shift with a good check and no bad one
       *[before_and_after] between two good checks
    }, for each element, instrument, mode and class of the check. A check standard is good by { $rule ->
        [en] |E_n| (at most 1)
       *[zeta] |zeta| (at most 3; above 2 warns)
    } after ISO 13528; an error whose multiple nobody states counts as three sigma here. A blank is good where nothing is found: at most three sigma, or below its detection limit. A standard that failed is cleared only by itself, a blank by a clean blank. Failed trust always holds a lot; missing trust holds it unless a setting below makes it advisory, and so do good checks more than a day apart (US EPA Method 6200, 9.4). Lot size and sampling plan: see each lot's reasons.
report-trust_none = No check reading came in.
report-trust_by_rows = { $names }: not every reading has a date and a time that could be read, so the order of the rows stands in for the order of time, within this file only.
report-trust_one_stream = Some checks state neither instrument nor mode: with the readings that state none they count as one instrument in one mode.
report-trust_capped = The first { $shown } of { $total } check readings are printed; findings.json holds all of them.
report-trust_sample = Check
report-trust_element = Element
report-trust_measured = Measured
report-trust_certified = Certified, U
report-trust_bias = Bias
report-trust_recovery = Recovery, %
report-trust_zeta = zeta
report-trust_en = E_n
report-trust_verdict = Came out
report-trust_readings = Readings

## What a person says

target-lot_material = material { $material } of part { $part } in lot { $lot } of { $supplier }
target-reading = reading on line { $line } of { $name }

act-tube_anode = anode of the X-ray tube: { $value }
act-limit_answer = limit { $row } of { $book }: { $answer ->
        [yes] it applies
       *[no] it does not apply
    }
act-certificate = check standard { $sample }: { $element } { $value }, U { $u } (k = { $k }), certificate { $id }, { $expires ->
        [none] no expiry stated
       *[other] good until { $expires }
    }
act-blank_samples = blank samples: { $value }
act-bracket = a reading is trusted { $value ->
        [before] after a good check
        [per_shift] in a shift with a good check and no bad one
       *[before_and_after] between two good checks
    }
act-shift_starts = shifts start at { $value }
act-check_rule = a check reading is good by { $value ->
        [en] |E_n| (at most 1)
       *[zeta] |zeta| (at most 3)
    }
act-control_chart = control charts: limits from { $limits ->
        [baseline] the first points
        [certificate] the certificate
       *[other] the first points, else the certificate
    }, baseline of { $points ->
        [none] 20
       *[other] { $points }
    } points, { $rules ->
        [nelson] Nelson's rules
       *[other] Western Electric rules
    }
act-sampling_plan = sampling plan: { $rule ->
        [zero_acceptance] zero acceptance, confidence { $confidence } %, to detect { $share } % nonconforming
       *[single] MIL-STD-105E single sampling, level { $level ->
            [none] II
           *[other] { $level }
        }, { $severity ->
            [none] normal
           *[other] { $severity }
        }, AQL { $aql }
    }{ $seed ->
        [none] { "" }
       *[other] , random list from seed { $seed }
    }
act-mark = taken as { $value }
act-set_aside = set aside: { $value }
act-laboratory = laboratory result: { $analyte } { $value }{ $u ->
        [none] { "" }
       *[other] , U { $u } (k = { $k })
    }; method: { $method ->
        [none] not named
       *[other] { $method }
    }; laboratory: { $laboratory ->
        [none] not named
       *[other] { $laboratory }
    }; report: { $report ->
        [none] not named
       *[other] { $report }
    }; date: { $date ->
        [none] not stated
       *[other] { $date }
    }
act-lift = hold lifted: { $reason }{ $about ->
        [none] { "" }
       *[other] { " " }{ $about }
    }; why: { $why }; first person: { $by ->
        [none] missing
       *[other] { $by }
    }; second person: { $second ->
        [none] missing
       *[other] { $second }
    }
act-hold_ends = the hold ends by: { $who ->
        [none] nobody named
       *[other] { $who }
    }; until: { $until ->
        [none] no day set
       *[other] { $until }
    }; kept apart: { $quarantined ->
        [none] not stated
       *[other] { $quarantined } units
    }{ $place ->
        [none] { "" }
       *[other] , { $place }
    }

## The history file

problem-history_version = "{ $found }" is not the name of a history read here.
    .remedy = Choose a history that this program wrote; its first line reads { $expected }. A newer name means a newer program wrote it.
problem-history_line = This line of the history is cut or has too much in it: { $found }
    .remedy = Take a whole copy of the history. Each line is one record, with a tab between its fields.
## Change of material

lot-reason-material_changed = { $of ->
        [0] "{ $about }" is of another class than the accepted lots: this is not the material you approved.
       *[other] { $count } of { $of } compared { $of ->
            [one] element
           *[other] elements
        } of "{ $about }" moved away from the accepted lots: this is not the material you approved.
    }
    .remedy = Ask the supplier what changed, and have the material approved again before it is used.
lot-reason-change_not_compared = "{ $about }" was not compared with earlier accepted lots: { $of ->
        [0] the supplier, the part or the class is not known, or no element can be compared
       *[other] { $count } of the { $of } that are needed are in the history
    }.
    .remedy = Give a history with at least five accepted lots of this supplier, part and material.
evidence-short-material_changed = a new approval of a changed material
evidence-short-change_not_compared = enough earlier lots to compare with
## Sampling

lot-reason-lot_size_too_small = { $count } units were measured of a lot that is said to have { $of ->
        [one] one unit
       *[other] { $of } units
    }: one of the two numbers is wrong.
    .remedy = Correct the lot size, or the names of the units.
lot-reason-lot_size_missing = A sampling plan is given and the lot size is not, so nobody can say how many units it asks for.
    .remedy = Give the lot size.
evidence-short-lot_size_too_small = a lot size that fits the units measured
evidence-short-lot_size_missing = lot size
sampling-title = Sampling plan:
sampling-plan_single = single sampling of MIL-STD-105E, level { $level }, { $severity } inspection, AQL { $aql } (Table { $table }){ $letter ->
        [none] { "" }
       *[other] , code letter { $letter }
    }{ $led ->
        [same] { "" }
       *[other] , whose arrow leads to letter { $led }
    }: { $whole ->
        [yes] take all { $size } units of the lot.
       *[no] take { $n } of { $size } units.
    }
sampling-plan_zero = zero acceptance: { $whole ->
        [yes] take all { $size } units of the lot: fewer do not give { $confidence } % confidence against { $share } % nonconforming ({ $bad } in this lot).
       *[no] take { $n } of { $size } units. None nonconforming among them shows, with { $confidence } % confidence, that fewer than { $bad } units of the lot ({ $share } %) are.
    }
sampling-table = The table's numbers, for other characteristics only: accept on { $ac }, reject on { $re } or more. For restricted substances the acceptance number is 0 whatever the plan.
sampling-units = Lot of { $size } units. Wanted of every material: { $take } { $take ->
        [one] unit
       *[other] units
    }. Measured of the least sampled material: { $measured }. Of { $units } different { $units ->
        [one] unit
       *[other] units
    } seen, by screening: { $conforming } conforming, { $undecided } undecided, { $over } over. An undecided unit never counts as conforming.
sampling-list = Units to take, drawn at random from 1 to { $size } (SplitMix64, seed { $seed }; { $n } { $n ->
        [one] unit
       *[other] units
    }; number the units as they lie, and anybody can draw the same list again):
sampling-list_capped = The first { $shown } of { $total } units to take are printed; findings.json holds all of them.
sampling-risk = Risk of this plan for a lot of { $size }, once { $n } { $n ->
        [one] unit
       *[other] units
    } are taken at random, with none allowed over (hypergeometric distribution): accepted with at least 95 % chance where at most { $at95 } units are nonconforming, at least 50 % where at most { $at50 }, at least 10 % where at most { $at10 }.
sampling-risk_none = Every unit of the lot is taken: no risk of sampling is left, only that of measuring.
sampling-risk_process = For the process the lot came from, or a lot far larger than the sample (binomial distribution): the same chances at { $at95 } %, { $at50 } % and { $at10 } % nonconforming.
sampling-zero_process = In a lot without end the same confidence would need { $n } { $n ->
        [one] unit
       *[other] units
    }.
sampling-at_most = With { $confidence } % confidence, if the units were taken at random, at most { $most } of the { $size } units are nonconforming; each unit that was not shown to conform is counted as nonconforming.
sampling-isolated = Normal, tightened and reduced inspection and the rules for switching between them are for a continuing series of lots; they do not apply to a single lot (ISO 2859-2 is about isolated lots).
sampling-proves = A plan states a risk and nothing more: the law is per homogeneous material and knows no AQL, and nothing is shown of any single unit that was not measured.
sampling-curve = How likely a lot of { $size } is accepted with { $n } { $n ->
        [one] unit
       *[other] units
    } taken
sampling-curve_across = nonconforming units in the lot
sampling-curve_up = chance of acceptance
sampling-curve_zero = none over (restricted)
sampling-curve_table = table, accept on { $ac }
## Control charts

report-charts = Check readings over time
report-charts_text = A control chart for each instrument, mode, check sample and element. It judges no reading and decides nothing here: it shows a shift or a drift while single checks are still good. A filled circle is a reading of this inspection, a ring an earlier one; a diamond with a number is a signal, told below the chart under that number.
report-charts_capped = The first { $shown } of { $total } charts are printed, those with something to say first; all of them stand in findings.json.
report-charts_others = { $count ->
        [one] One more chart rests on the history alone, because this inspection didn't measure its sample; it stands
       *[other] { $count } more charts rest on the history alone, because this inspection didn't measure their samples; they stand
    } in findings.json.
report-signals_capped = The first { $shown } of { $total } signals are listed; all of them stand in findings.json.
report-history = History given: { $checks } numbers of check readings, { $records } records of lots. SHA-256:
report-history_none = No history was given: the charts show this inspection alone.

chart-name = { $element } in { $sample } ({ $class }), instrument { $instrument }
chart-values = Value, mg/kg
chart-ranges = Moving range, mg/kg
chart-upper = upper limit { $value }
chart-centre = centre { $value }
chart-lower = lower limit { $value }
chart-largest = largest { $value }
chart-smallest = smallest { $value }
chart-baseline = baseline: { $points } points
chart-no_time = no time stated
chart-limits-baseline = Centre { $centre } mg/kg, limits { $lower } to { $upper } mg/kg (three sigma on either side, sigma { $sigma }): from the first { $points } points, their mean and their mean moving range over 1.128 (ISO 7870-2).
chart-limits-certificate = Centre { $centre } mg/kg, limits { $lower } to { $upper } mg/kg (three sigma on either side): from the certificate. Sigma { $sigma } is its uncertainty together with the repeatability of a reading, { $from ->
        [site_table] from the site's table
       *[stated] as the readings state it
    }.
chart-none-too_few_points = No limits: there are { $points } points, and a baseline needs { $needed }. Whether the instrument is in control is not known.
chart-none-no_spread = No limits: all points of the baseline are alike. Whether the instrument is in control is not known.
chart-none-no_certificate = No limits: they are to come from the certificate, and none that is good on the day of the newest point states this element. Whether the instrument is in control is not known.
chart-none-no_repeatability = No limits: they are to come from the certificate, and neither the site's table nor every reading tells how well a reading repeats. Whether the instrument is in control is not known.
chart-rules-western_electric = the Western Electric rules (NIST/SEMATECH e-Handbook of Statistical Methods, 6.3)
chart-rules-nelson = Nelson's rules (Journal of Quality Technology 16, 1984)
chart-no_signal = No signal in { $points } points by { $rules }.
chart-signals = { $count ->
        [one] A signal
       *[other] Signals at { $count } places
    } in { $points } points by { $rules }:
chart-signal_at = { $first }, { $value } mg/kg: { $codes }.
chart-signal_run = { $count } points from { $first } to { $last }, the first { $value } mg/kg: { $codes }.
chart-drift = The value drifts by { $slope } mg/kg a day (standard uncertainty { $sigma }; { $n } points over { $span } days, 95 %, t { $t }): { $percent } % of it in 30 days.
chart-drift_short = The value drifts by { $slope } mg/kg a day (standard uncertainty { $sigma }; { $n } points over { $span } days, 95 %, t { $t }). Less than a day tells nothing of a month.
chart-no_drift = No drift shows: { $slope } mg/kg a day with a standard uncertainty of { $sigma } ({ $n } points over { $span } days, 95 %, t { $t }).
chart-drift_unknown = Drift is not told: it needs { $n } readings at two times or more.
chart-without_time = { $count ->
        [one] One reading states no time and has no place in the order
       *[other] { $count } readings state no time and have no place in the order
    }.
chart-not_drawn = The newest points are drawn; { $count } earlier ones are not.

signal-beyond_3s = beyond three sigma
signal-two_of_three_beyond_2s = two of three beyond two sigma on one side
signal-four_of_five_beyond_1s = four of five beyond one sigma on one side
signal-eight_on_one_side = eight on one side of the centre
signal-nine_on_one_side = nine on one side of the centre
signal-six_rising_or_falling = six in a row rising or falling
signal-fourteen_alternating = fourteen up and down by turns
signal-fifteen_within_1s = fifteen within one sigma: too good to be true of these limits
signal-eight_none_within_1s = eight on both sides, none within one sigma
signal-moving_range_beyond = the jump from the point before lies above the limit of the moving range
change-changed = This is not the material you approved, measured by { $lots } accepted { $lots ->
        [one] lot
       *[other] lots
    } ({ $elements } elements compared).
change-other_class = This is not the material you approved: the { $lots } accepted lots are { $class }.
change-not_changed = No element lies away from the { $lots } accepted lots ({ $elements } compared). That is no proof that it is the same material.
change-too_few = Too few to compare: the history has { $lots } accepted { $lots ->
        [one] lot
       *[other] lots
    } of this supplier, part and material; { $fewest } are needed.
change-not_comparable = Not compared with accepted lots: the supplier, the part or the class is not known, or no element can be compared.
change-moved = { $element }: { $from } to { $to } mg/kg (x { $factor }), { $spreads } spreads away, { $allowed } allowed.
change-not_measured = In most accepted lots, and not measured now: { $list }.
report-change = Change of material
report-change_text = Each element against everything else in the kilogram, beside the accepted lots of the same supplier, part, material and class in the history. Their centre is the median, their spread leaves out the furthest fifth. Of lots that have not changed, at most 1 % are called changed, for all elements together (simulated for normal scatter; our own choice of rate). What was not detected may lie anywhere below its limit and is never called a change for that. Few lots show only large changes.
report-change_says = Beside the accepted lots
report-change_capped = The first { $shown } of { $total } are printed; findings.json holds all of them.

## Suppliers

supplier-next = Next lot: { $severity ->
        [normal] normal inspection
        [tightened] tightened inspection
        [reduced] reduced inspection
       *[none] inspection is discontinued until the supplier has improved
    } (switching rules of MIL-STD-105E, over { $lots } settled { $lots ->
        [one] lot
       *[other] lots
    } with a day).
supplier-may_reduce = Ten in a row were accepted: reduced inspection may be asked for, with steady production and a person who may decide it (from memory).
supplier-no_series = Without supplier and part there is no series of lots.
supplier-near_miss = { $substance } was below limit by less than one sigma in { $lots } { $lots ->
        [one] lot
       *[other] lots
    }; the nearest lay { $nearest } sigma from the edge.
supplier-trend = { $element } of { $material } moves over { $lots } lots, by { $percent } % a lot: { $first } mg/kg in the first, { $last } mg/kg in the last.
supplier-laboratory-over_was_within = { $class }: { $count } over on the screen and within at the laboratory (false positive).
supplier-laboratory-below_was_over = { $class }: { $count } below on the screen and over at the laboratory (false negative).
supplier-laboratory-open_was_within = { $class }: { $count } undecided on the screen and within at the laboratory.
supplier-laboratory-open_was_over = { $class }: { $count } undecided on the screen and over at the laboratory.
supplier-laboratory-agreed = { $class }: { $count } confirmed by the laboratory.
supplier-laboratory-open = { $class }: { $count } with a laboratory result that settles nothing, or is not judged.
supplier-open_holds = On hold: { $list }.
supplier-without_day = { $count ->
        [one] One lot has
       *[other] { $count } lots have
    } no day and { $count ->
        [one] is
       *[other] are
    } left out of the series and the trends.
report-suppliers = Suppliers and parts
report-suppliers_text = The parts of this inspection over all lots in the history and here. A lot that stands in both counts once, as of its latest day. All of this is shown and decides nothing: a good history makes no lot better. A trend is a straight line through the logarithms, lot after lot, that chance would make in less than 5 % of cases over all that were looked at.
report-suppliers_known = What is known
report-suppliers_capped = The first { $shown } of { $total } are printed; findings.json holds all of them.
## What laboratories found

lot-reason-lab_over = Laboratory: { $analyte } { $value } is over { $limit } mg/kg (method { $method ->
        [none] not named
       *[other] { $method }
    }; { $laboratory ->
        [none] laboratory not named
       *[other] { $laboratory }
    }, report { $report ->
        [none] not named
       *[other] { $report }
    }, { $date ->
        [none] day not stated
       *[other] { $date }
    }); the screen said { $screen }.{ $effect ->
        [accept] { " " }A claimed exemption covers this.
        [hold] { " " }Whether the limit applies, or an exemption covers this, is open.
       *[other] { "" }
    }
    .remedy = Quarantine the lot. Only a valid exemption whose number covers the laboratory's value can change this.
lot-reason-lab_open = Laboratory: { $analyte } { $value } shows neither within nor over { $limit } mg/kg (method { $method ->
        [none] not named
       *[other] { $method }
    }, report { $report ->
        [none] not named
       *[other] { $report }
    }); the screen said { $screen }.{ $effect ->
        [accept] { " " }Other results settle this.
       *[other] { "" }
    }
    .remedy = Ask the laboratory for a smaller uncertainty, a lower detection limit, or (for chromium and bromine) the substance itself: Cr(VI), PBB and PBDE.
lot-reason-lab_within = Laboratory: { $analyte } { $value } is within { $limit } mg/kg (method { $method }; { $laboratory }, report { $report }, { $date }); the screen said { $screen }.
    .remedy = Keep the laboratory's report with this one. It speaks of the sample that was tested: of a coated or mixed piece the report must say which layer or material that was.
lot-reason-lab_no_uncertainty = Laboratory: { $analyte } { $value } comes without an uncertainty, so it shows neither within nor over { $limit } mg/kg; the screen said { $screen }.
    .remedy = Ask the laboratory for the expanded uncertainty and its k.
lot-reason-lab_not_traceable = Laboratory: { $analyte } { $value } cannot be looked up, so it lifts nothing (method: { $method ->
        [none] missing
       *[other] { $method }
    }; laboratory: { $laboratory ->
        [none] missing
       *[other] { $laboratory }
    }; report: { $report ->
        [none] missing
       *[other] { $report }
    }; day: { $date ->
        [none] missing
       *[other] { $date }
    }); the screen said { $screen }.
    .remedy = Enter method, laboratory, report number and day as the report states them. A day after that of this review is taken for a slip.
lot-reason-lab_group_missing = A laboratory answered for one of PBB and PBDE only; { $about } is settled by both.
    .remedy = Ask the laboratory for the other group by IEC 62321-6 or IEC 62321-12, or for so little total bromine that neither can be.
lot-reason-lab_not_placed = A laboratory result settles nothing here: { $analyte } { $value } (report { $report ->
        [none] not named
       *[other] { $report }
    }) is for a material that is not measured or listed in this lot, for several at once, or for a lot or supplier spelled otherwise.
    .remedy = Name supplier, lot, part and material as the file of readings does.

## What people did

lot-reason-set_aside = { $count } of { $of } { $of ->
        [one] reading
       *[other] readings
    } { $count ->
        [one] was
       *[other] were
    } set aside by a person; nothing here rests on { $count ->
        [one] it
       *[other] them
    }, and the findings keep { $count ->
        [one] it
       *[other] them
    }.
    .remedy = Say in the note why; measure again where fewer are left than the plan asks for.
lot-reason-set_aside_over = { $about ->
        [none] A reading
       *[other] { $about } in a reading
    } that was set aside is over limit ({ $count } of { $of } set aside). Setting it aside clears nothing.
    .remedy = Send this sample to a laboratory, or take the reading back in.
lot-reason-set_aside_open = { $about ->
        [none] A reading
       *[other] { $about } in a reading
    } that was set aside was not below limit ({ $count } of { $of } set aside). Setting it aside clears nothing.
    .remedy = Send this sample to a laboratory, or take the reading back in.
lifted-undecided = undecided outcome
lifted-trust_none = no check readings
lifted-trust_not_certified = certified values not stated
lifted-trust_not_judged = check readings not judged
lifted-trust_not_bracketed = not between two good checks
lifted-checks_far_apart = checks more than a day apart
lifted-sampling_none = no sampling plan
lifted-lot_size_missing = no lot size
lifted-sampling_too_few = too few units
lifted-units_not_stated = units not stated
lifted-material_changed = material changed
lot-reason-lifted = The hold "{ $reason }"{ $about ->
        [none] { "" }
       *[other] { " " }for { $about }
    } was lifted by { $by } and { $second }: { $why }
    .remedy = Keep the reason with this report.
lot-reason-lift_not_allowed = { $by ->
        [none] Somebody
       *[other] { $by }
    } wanted to lift "{ $reason }"{ $about ->
        [none] { "" }
       *[other] { " " }for { $about }
    } ({ $why }). Nobody can: only undecided outcomes, missing trust, missing sampling and a changed material are lifted by two people.
    .remedy = Bring the measurement, the file or the laboratory result that ends it.
lot-reason-lift_not_countersigned = The hold "{ $reason }"{ $about ->
        [none] { "" }
       *[other] { " " }for { $about }
    } was to be lifted ({ $why }), and the initials of two different people are not there (first: { $by ->
        [none] missing
       *[other] { $by }
    }; second: { $second ->
        [none] missing
       *[other] { $second }
    }). It goes on holding.
    .remedy = Have a second person put their initials to it.
lot-reason-lift_not_needed = The hold "{ $reason }"{ $about ->
        [none] { "" }
       *[other] { " " }for { $about }
    } was lifted ({ $why }), and there is no such hold, or several lots here have no name and the act may be meant for any of them.
    .remedy = Take the act back, or name the lots in their files first.
lot-reason-hold_overdue = The hold was to end by { $about }, and that day is past.
    .remedy = Say who ends it, and by when.
lot-reason-quarantine_exceeds_lot = { $count } units are said to be kept apart, and the lot has { $of }.
    .remedy = Count again: the lot size or the number kept apart is wrong.
act-not_matched = { $act }: for { $target }, which is not here. It settles nothing.
act-not_aside = { $act }: for { $target }, which is a check reading: it counts in no lot, and what it says of the analyser stays.
act-not_followed = { $act }: for { $target }, whose sample a certificate or the list of blanks names. It stays a check; take the name out there if it is product.

lab-verdict-within = within
lab-verdict-not_the_species = the element says nothing of the substance
lab-verdict-no_uncertainty = no uncertainty
lab-verdict-open = neither within nor over
lab-verdict-over = over

report-laboratory_results = Laboratory results
report-laboratory_screen = Screen
report-laboratory_verdict = Says
report-laboratory_value = Result
report-laboratory_method = Method
report-laboratory_source = Laboratory, report, day
report-laboratory_text = A result is within where value + U lies within the law's limit, over where value - U lies beyond it; U is taken with k of at least 2. The worst result of a substance counts, and the screen's outcome stays beside it.
report-laboratory_not_traceable = cannot be looked up: settles nothing
report-laboratory_not_placed = fits several materials: settles nothing
report-set_aside = Readings set aside
report-set_aside_text = A person set these readings aside. They count for nothing, and the findings keep them with their outcomes.
report-aside = set aside, counts for nothing
report-set_aside_why = Why
report-unmatched = Acts that speak of nothing that is here
report-hold_what = What ends it
report-hold_who = Who
report-hold_until = By when
report-hold_quarantined = Kept apart (units)
report-hold_place = Where
cli-set_aside = { $file }: { $count ->
        [one] one reading is
       *[other] { $count } readings are
    } set aside by a person; { $count ->
        [one] its row stays
       *[other] their rows stay
    } among the used ones.
cli-not_matched = note: { $text }

## Bills of materials

bill-merged = "{ $found }" stands twice and is taken once.
bill-respelled = "{ $found }" are taken for two spellings of one name.
bill-column_ignored = The column "{ $found }" says nothing of parts and materials and is left out.
problem-readings_not_bill = The column "{ $found }" holds measured values: this is a table of readings and no bill of materials.
    .remedy = Give a table that lists every material of the part, also those that nobody measured.
cli-bill = { $file } line { $line }, column { $column }: { $text }
cli-bill_twice = { $file }: for { $target } the settings or another bill say something already. Take one of the two out; nothing was written.

## The summary

summary-lab_over = { $about } over by the laboratory
summary-lab_open = { $about } open by the laboratory
summary-lab_within = { $about } within by the laboratory
summary-set_aside_over = { $about ->
        [none] over limit
       *[other] { $about } over limit
    } in what was set aside
summary-set_aside_open = { $about ->
        [none] open
       *[other] { $about } open
    } in what was set aside
evidence-short-lab_no_uncertainty = uncertainty of a laboratory result
evidence-short-lab_not_traceable = method, laboratory, report and day of a laboratory result
evidence-short-lab_group_missing = PBB and PBDE both
evidence-short-lab_not_placed = the material of a laboratory result
evidence-short-set_aside = readings set aside
evidence-short-lifted = lifted holds
evidence-short-lift_not_allowed = a hold that nobody can lift
evidence-short-lift_not_countersigned = a second person's initials
evidence-short-lift_not_needed = a lift of nothing
evidence-short-hold_overdue = a new day for the end of a hold
evidence-short-quarantine_exceeds_lot = the number kept apart

supplier-counts = Lots known: { $accept } accepted, { $hold } on hold, { $not_accept } not accepted.
