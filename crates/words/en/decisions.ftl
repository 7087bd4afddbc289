# Decisions: sigma, repeats, probabilities, decision rules, time, next steps and working.

## Repeats of one spot

pooled-from-stated = the uncertainty the readings state, over the root of their number
pooled-from-scatter = the scatter of the readings, over the root of their number
pooled-from-scatter_of_few = the scatter of { $n } readings, over the root of their number; so few that { $t } stands in for { $k } sigma
pooled-disagree = The { $n } readings of this spot disagree beyond their uncertainties (chance { $p }): the worst of them governs, not their mean.
pooled-agree = The { $n } readings of this spot agree within their uncertainties (chance { $p }).
pooled-not_asked = The { $n } readings of this spot were put together; whether they agree can't be asked.
pooled-largest_limit = None of the { $n } readings of this spot detected it: the largest detection limit governs.
pooled-mixed = Detected in some of the { $n } readings of this spot and not in others: each stands for itself, and the worst governs.
pooled-sigma = One sigma of the mean: { $from }.
pooled-outlier = Reading { $which } lies { $g } standard deviations from the mean of all, more than the { $critical } that chance would pass once in twenty (Grubbs). It stays in the record.

## Spots beside each other

spots-differ = The { $n } spots differ beyond what chance would show (chance { $p }): the worst spot governs.
spots-no-difference = No difference between the { $n } spots was seen (chance { $p }). That does not prove they are alike; the worst spot governs.

## Probability within a limit, and decision rules side by side

probability-about = { $percent } %
probability-more_than = more than { $percent } %
probability-less_than = less than { $percent } %
conformity-within = Chance that the true value lies within the limit of { $limit } mg/kg: { $chance }.
conformity-beyond = Chance that it lies beyond: { $chance }.
conformity-repeatability_only = This counts repeatability only: what calibration, matrix and sampling add is not in it.
conformity-risk = Chance that this statement is wrong for this value: { $chance }.
rule-simple_acceptance = simple acceptance (up to the limit)
rule-guarded_acceptance = guarded acceptance (up to the limit less { $k } sigma)
rule-non_binary = with conditional statements ({ $k } sigma on both sides of the limit)
statement-pass = pass
statement-conditional_pass = conditional pass
statement-conditional_fail = conditional fail
statement-fail = fail

rule-bands = the screening bands used here

## Measuring longer

longer-seconds = About { $even } s for an even chance to decide, about { $surely } s for a chance of 90 % (estimate).
longer-seconds_even_only = About { $even } s for an even chance to decide; for a chance of 90 % more than { $cap } s (estimate).
longer-never-inside_edges = No measuring time can decide: the value itself lies where this rule leaves it undecided.
longer-never-constant_part = No measuring time can decide: the part of the uncertainty that time does not remove is too large by itself.
longer-never-too_long = It would take longer than { $cap } s on one spot.
longer-never-not_known = How long would be enough can't be told: the measuring time or the uncertainty is not known.
longer-plan = { $readings ->
    [one] 1 reading of { $longest } s
   *[other] { $readings } readings of at most { $longest } s, { $total } s together,
} would settle { $settles } of { $of } open outcomes with a chance of 90 % each (estimate).
longer-plan-none = { $of ->
        [one] Measuring longer would not settle the one open outcome.
       *[other] Measuring longer would settle none of the { $of } open outcomes.
    }
longer-plan_even = { $readings ->
    [one] 1 reading of { $longest } s
   *[other] { $readings } readings of at most { $longest } s, { $total } s together,
} would settle { $settles } of { $of } open outcomes with an even chance each (estimate).
longer-plan-nothing_open = No outcome is undecided or not capable, so there is nothing that measuring longer could settle.
