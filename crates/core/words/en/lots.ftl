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
    .remedy = Enter method, laboratory, report number and day as the report states them.
lot-reason-lab_group_missing = A laboratory answered for one of PBB and PBDE only; { $about } is settled by both.
    .remedy = Ask the laboratory for the other group by IEC 62321-6 or IEC 62321-12, or for so little total bromine that neither can be.
lot-reason-lab_not_placed = A laboratory result settles nothing here: { $analyte } { $value } (report { $report ->
        [none] not named
       *[other] { $report }
    }) is for a material that is not measured or listed in this lot, or for several at once.
    .remedy = Name lot, part and material as the file of readings does.

## What people did

lot-reason-set_aside = { $count } of { $of } { $of ->
        [one] reading was
       *[other] readings were
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
    } ({ $why }). Nobody can: only undecided outcomes, missing trust and missing sampling are lifted by two people.
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
    } was lifted ({ $why }), and there is no such hold.
    .remedy = Take the act back.
lot-reason-hold_overdue = The hold was to end by { $about }, and that day is past.
    .remedy = Say who ends it, and by when.
lot-reason-quarantine_exceeds_lot = { $count } units are said to be kept apart, and the lot has { $of }.
    .remedy = Count again: the lot size or the number kept apart is wrong.
act-not_matched = { $act }: for { $target }, which is not here. Nothing came of it.

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
