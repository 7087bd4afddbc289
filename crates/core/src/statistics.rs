//! Tails, quantiles and tests of the ordinary distributions, with the same bits on every target.
