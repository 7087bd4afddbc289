//! Repeats of one spot as one value, and spots beside each other.
