# Trust, sampling, lots and laboratories.

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
evidence-short-material_changed = a material that is not the one that was approved
evidence-short-change_not_compared = enough earlier lots to compare with
