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
