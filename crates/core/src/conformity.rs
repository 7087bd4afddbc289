//! The probability that the true value lies within a limit, and decision rules side by side.
