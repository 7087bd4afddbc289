# Trust, sampling, lots and laboratories.

## What a person says

target-lot_material = material { $material } of part { $part } in lot { $lot } of { $supplier }
target-reading = reading on line { $line } of { $name }

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
        [en] E_n (at most 1)
       *[zeta] zeta (at most 3)
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
act-lift = hold lifted: { $reason } { $about ->
        [none] { "" }
       *[other] { $about }
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
