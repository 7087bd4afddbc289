# Decisions: sigma, repeats, probabilities, decision rules, time, next steps and working.

## Repeats of one spot

pooled-from-stated = the uncertainty the readings state, over the root of their number
pooled-from-scatter = the scatter of the readings, over the root of their number
pooled-from-scatter_of_few = the scatter of { $n } readings, over the root of their number; so few that { $t } stands in for { $k } sigma
pooled-disagree = The { $n } readings of this spot disagree beyond their uncertainties (chance { $p }): the worst of them governs, not their mean.
pooled-agree = The { $n } readings of this spot agree within their uncertainties (chance { $p }).
pooled-outlier = Reading { $which } lies { $g } standard deviations from the mean of all, more than the { $critical } that chance would pass once in twenty (Grubbs). It stays in the record.

## Spots beside each other

spots-differ = The { $n } spots differ beyond what chance would show (chance { $p }): the worst spot governs.
spots-no-difference = No difference between the { $n } spots was seen (chance { $p }). That does not prove they are alike; the worst spot governs.
