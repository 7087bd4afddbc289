# The working behind an outcome, sentence by sentence.
explain-class = Judged as { $class } ({ $from }).
explain-rule = { $book }, { $clause } ({ $confidence }): { $about } is below limit where the value plus { $k } sigma is at or under { $low } mg/kg, over limit where the value minus { $k } sigma is at or over { $high } mg/kg, and undecided between.
explain-rule_open = { $book }, { $clause } ({ $confidence }): { $about } is below limit where the value plus { $k } sigma is at or under { $low } mg/kg; above that it is undecided, because the element alone cannot show the restricted substance.
explain-rule_detection = { $book }, { $clause } ({ $confidence }): { $about } is below limit only at or under the reading's own detection limit, over limit where the value minus { $k } sigma is at or over { $high } mg/kg, and undecided between.
explain-rule_none = { $book }, { $clause } ({ $confidence }): { $about } is not judged in this class.
explain-rule_every_class = { $book }: the class is not known, so the reading is judged under every class and the worst counts.
explain-rule_layers = { $book } has no band for a layer: a reading mixes it with what lies under it.
explain-halogen_at_most = { $book }, { $clause } ({ $confidence }): { $about } is within the limit where the value plus { $k } sigma is at most { $limit } mg/kg, over where the value minus { $k } sigma is above it.
explain-halogen_below = { $book }, { $clause } ({ $confidence }): { $about } is within the limit where the value plus { $k } sigma is below { $limit } mg/kg, over where the value minus { $k } sigma is at or above it.
explain-value = The file states "{ $written }" for { $about }, which is { $value }.
explain-value_plain = { $value } mg/kg
explain-value_none = The file states nothing for { $about }.
explain-value_text = The file states "{ $written }" for { $about }, which is no usable measurement.
explain-total = The total of chlorine and bromine: { $value }.
explain-sigma = One sigma is { $sigma } mg/kg: { $from }.
explain-sigma_printed = One sigma is { $sigma } mg/kg: { $from } (printed errors stand for { $multiple } sigma).
explain-relative = { $percent } % of the value is added in quadrature, as set.
explain-under_class = As { $class }: { $outcome }. { $working }
explain-outcome = { $about }: { $outcome }.
explain-outcome_because = { $about }: { $outcome }. { $reason }
explain-next = Next: { $list }
explain-not_the_cautions = Nor does it count what the cautions say: a value that is read too low or too high makes it wrong.
explain-rule_says = { $rule }: { $statement } (chance of being wrong { $risk })
explain-other_rules_agree = Other decision rules (simple, guarded, with conditional statements), for comparison, would all say: { $statement } (chance of being wrong { $risk }).
explain-other_rules = Other decision rules, for comparison, would say: { $list }.
explain-repeats = One of { $n } readings of this spot. { $said } { $counts }

# Repeats of one spot.
repeats-line = of line { $line }
repeats-sigma = One sigma of their mean: { $from }.
repeats-largest_limit = None of the { $n } readings of this spot detects it; the largest detection limit is judged.
repeats-mixed = Some of the { $n } readings of this spot are numbers with an uncertainty and some are not: they are not averaged, each stands for itself and the worst governs.
repeats-together = Judged together they are: { $outcome }; that is what counts for the material.
repeats-alone = They are not judged together: each stands for itself and the worst governs.
explain-limit_sum = What it counts adds up to { $value } mg/kg, one sigma { $sigma } mg/kg.
explain-limit_sum_between = What it counts adds up to between { $low } and { $value } mg/kg, one sigma { $sigma } mg/kg at the upper end.
explain-limit_sum_from = What it counts adds up to at least { $low } mg/kg, one sigma { $sigma } mg/kg.
