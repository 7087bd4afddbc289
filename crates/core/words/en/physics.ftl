# Physics: line overlaps, thickness, composition, stoichiometry.

## Cautions beside an outcome

doubt-line_overlap = { $partner } ({ $partner_line }, { $gap } eV away) lies on the { $line } line of { $about }: uncorrected, it would look like { $apparent } mg/kg of { $about } ({ $basis }).
doubt-other_line = If { $about } was measured by its { $line } line: { $partner } ({ $partner_line }, { $gap } eV away) lies on it and would look like { $apparent } mg/kg of { $about } ({ $basis }).
doubt-sum_peak = Two pulses of { $partner } counted as one ({ $partner_line }, { $gap } eV away) lie on the { $line } line of { $about }: uncorrected, they would look like { $apparent } mg/kg of { $about } ({ $basis }).
doubt-escape_peak = An escape peak of { $partner } ({ $partner_line }, { $gap } eV away) lies on the { $line } line of { $about }: uncorrected, it would look like { $apparent } mg/kg of { $about } ({ $basis }).
doubt-tube_line = The X-ray tube's own { $partner } line ({ $partner_line }, { $gap } eV away) lies on the { $line } line of { $about }: uncorrected, it may look like { $apparent } mg/kg of { $about } ({ $basis }).
doubt-thin_piece = The piece is thin: { $percent } % of a thick one's signal is missing, so { $about } reads too low.
doubt-strong_below = The analyser has corrected for this; if a tenth of it was left (assumed: common practice, no source), the value could lie over the edge. The BL does not settle it: measure by a line that is free, or use the reference method.
doubt-strong_over = Without this, the value would not be over limit. Have a laboratory confirm it before anything is rejected.

lot-reason-overlap_unresolved = { $about } is below limit in { $count } of { $of } { $of ->
        [one] reading
       *[other] readings
    }, but a strong line of another element lies on its line, and what a correction may have left of it reaches the edge.
    .remedy = Measure by a line that is free, or send a sample to a laboratory by the reference method.
lot-reason-over_may_be_overlap = { $about } is over limit in { $count } of { $of } { $of ->
        [one] reading
       *[other] readings
    }, perhaps only by a strong line of another element that lies on its line.
    .remedy = Quarantine the lot, and have a laboratory confirm by the reference method before it is rejected.
evidence-short-overlap_unresolved = a line free of overlaps
evidence-short-over_may_be_overlap = a laboratory's result

## What an element allows at most

bound-hexavalent = At most { $most } mg/kg of Cr(VI), if all of the chromium were hexavalent.
bound-brominated = At most { $pbde } mg/kg of any PBDE and { $pbb } mg/kg of any PBB, if all of the bromine were in the congener with one bromine; at most { $deca } mg/kg if it were decaBDE. It may as well come from a flame retardant that the directive does not restrict, such as TBBPA or DBDPE.
bound-pops = This does not show the limit of { $limit } mg/kg for PBDE of Regulation (EU) 2019/1021 as amended by (EU) 2025/1482 (restated by a secondary source), which is another law.
