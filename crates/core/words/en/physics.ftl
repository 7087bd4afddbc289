# Physics: line overlaps, thickness, composition, stoichiometry.
