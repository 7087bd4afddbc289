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
