//! Sums of parts of which some are only known to lie below a detection limit.
