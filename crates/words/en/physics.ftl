# Physics: line overlaps, thickness, composition, stoichiometry.

# Composition: what it suggests, why, and what it contradicts. A suggestion is never a decision.
composition-suggests = The composition suggests { $what } ({ $numbers }): { $because }.
composition-suggests_perhaps = The composition suggests a metal, which may be { $what } ({ $numbers }): { $because }.
composition-class-metal = a metal
composition-class-polymer = a plastic
composition-class-composite = a composite
composition-reason-mostly_metal = metals add up to { $metals } %
composition-reason-little_seen = all that is seen adds up to { $sum } %, although every element that could be the main part was measured; light elements are not seen
composition-reason-much_chlorine = chlorine is a main element and metals are not, as in PVC and other chlorinated plastics
composition-reason-conductor_in_laminate = conductors beside at least two of bromine, silicon and calcium, as in a printed board
composition-contests-metals_in_polymer = The class stated is a plastic, and metals add up to { $sum } % ({ $numbers }).
composition-contests-no_metal_in_metal = The class stated is a metal, and next to nothing of any metal was found, although every main metal was measured.
composition-contests-halogen_in_metal = The class stated is a metal, and there is as much bromine or chlorine as in a flame-retarded or chlorinated plastic.
composition-calibration-pvc_in_polymer_mode = Chlorine is a main element, and the mode is one for plastics without chlorine: its numbers may be far off.
composition-calibration-metal_in_polymer_mode = A metal was measured in a mode for plastics: its numbers may be far off.
composition-calibration-metal_in_soil_mode = A metal was measured in a mode for soil or ore: its numbers may be far off.
composition-calibration-plastic_in_metal_mode = A plastic was measured in a mode for metals: its numbers may be far off.
composition-calibration-plastic_in_soil_mode = A plastic was measured in a mode for soil or ore: its numbers may be far off.
family-group-steel = a steel or other iron alloy
family-group-aluminium = an aluminium alloy
family-group-copper = a copper alloy
family-group-zinc = a zinc alloy
family-group-tin = a tin alloy
family-group-lead = a lead alloy
family-group-nickel = a nickel alloy
family-group-titanium = a titanium alloy
family-group-magnesium = a magnesium alloy
family-group-precious = a precious metal
family-fits = It lies inside the published ranges of { $name } ({ $source }).
family-may_be = It may be { $name } ({ $source }): an edge is within three sigma, or something was not measured.
family-near = The nearest family is { $name } ({ $source }), missed by { $by } % in { $element }.
family-also = As possible: { $names }.
next-state_class_suggested = State the material class; the composition suggests { $what }.
class-from-contested = stated, and contradicted by what was measured
lot-reason-class_contested = What was measured flatly contradicts the class stated for { $count } of { $of } { $of ->
        [one] reading
       *[other] readings
    }; they were judged under every class and the worst counts.
    .remedy = Look at the part and at what the beam met; correct the class, separate the materials or measure again.
lot-reason-calibration_doubtful = { $count } of { $of } { $of ->
        [one] reading was
       *[other] readings were
    } made in a measuring mode that does not fit the material, so the numbers may be far off.
    .remedy = Measure again in the mode that matches the material.
evidence-short-class_contested = a class that what was measured contradicts
evidence-short-calibration_doubtful = readings in the matching mode

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
