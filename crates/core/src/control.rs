//! Control charts of check readings: individuals and moving ranges, run rules, drift.
