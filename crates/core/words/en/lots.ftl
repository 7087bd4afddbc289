# Trust, sampling, lots and laboratories.

## Trust: checks and the readings between them

lot-reason-trust_failed = A check beside { $count ->
        [one] one reading
       *[other] { $count } readings
    } failed: { $about }. What was measured there is not to be relied on.
    .remedy = Put the analyser right, measure the check standard until it is good, then measure these readings again between two good checks.
lot-reason-trust_not_bracketed = { $count ->
        [one] One reading lies
       *[other] { $count } readings lie
    } between no two good checks: { $about }. A reading is trusted only with the good checks that the bracket rule asks for.
    .remedy = Measure the check standard now if nothing was changed since, or measure these again between two good checks, or set trust to advisory; the report prints that.
lot-reason-trust_none = { $count ->
        [0] No check standard or blank is given, so nothing shows that the analyser was right.
        [one] No check covers { $about } in one of { $of } readings: no check of the same instrument, mode and class certifies it.
       *[other] No check covers { $about } in { $count } of { $of } readings: no check of the same instrument, mode and class certifies it.
    }
    .nothing = Check readings are there, and none of them covers these readings: no check of the same instrument, mode and class, in the same file or at a known time.
    .remedy = Measure a check standard of the same class before and after, with its certificate, or set trust to advisory; the report prints that.
lot-reason-trust_not_judged = { $count ->
        [one] One check reading is
       *[other] { $count } check readings are
    } set apart and could not be judged (see the list of checks), so nothing shows that the analyser was right.
    .remedy = Give the certified values of the check standard, or set trust to advisory; the report prints that.
lot-reason-check_times_differ = { $count ->
        [one] One reading
       *[other] { $count } readings
    } took longer than a check of the same class, or less than half as long: the check shows less of it than it could.
    .remedy = Measure checks for as long as product.
lot-reason-mark_not_taken = { $count ->
        [one] One reading was
       *[other] { $count } readings were
    } marked as a check and stay product: a mark takes no reading out of a lot or a part, and none that is over limit unless a certificate names its sample.
    .remedy = Leave the lot and the part of check readings empty in the file, and give the certificate of the check standard.
evidence-short-trust_failed = new readings for those beside a failed check
evidence-short-trust_not_bracketed = readings between two good checks
evidence-short-trust_none = check readings
evidence-short-trust_not_judged = judged check readings
evidence-short-check_times_differ = the time of a check
evidence-short-mark_not_taken = a mark that was not taken
trust-ok = between good checks
trust-none = no check covers it
trust-not_bracketed = not between good checks
trust-failed = a check beside it failed
check-kind-check = check standard
check-kind-blank = blank
check-verdict-good = good
check-verdict-warning = good, with a warning (zeta above 2)
check-verdict-failed = failed
check-verdict-no_uncertainty = not judged: no uncertainty
check-verdict-not_measured = not measured
check-verdict-not_seen = not judged: not detected, and the certified value may lie that low
check-verdict-unit_unknown = not judged: the unit is not stated
check-verdict-expired = not taken: the certificate is past its day
check-verdict-day_unknown = not taken: the certificate has a last day, and the day of the reading is not known
check-verdict-no_certificate = no certified value
report-trust = Trust
report-trust_text = Readings are trusted { $bracket ->
        [before] after a good check
        [per_shift] in a shift with a good check and no bad one
       *[before_and_after] between two good checks
    }, for each element, instrument, mode and class of the check. A check standard is good by { $rule ->
        [en] E_n (at most 1)
       *[zeta] zeta (at most 3; above 2 warns)
    } after ISO 13528; an error whose multiple nobody states counts as three sigma here. A blank is good where nothing is found: at most three sigma, or below its detection limit. A standard that failed is cleared only by itself, a blank by a clean blank. Failed trust always holds a lot; missing trust holds it unless a setting below makes it advisory. Lot size and sampling plan: see each lot's reasons.
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
