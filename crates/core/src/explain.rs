//! The working behind an outcome: rule, inputs, arithmetic and clause, as data and as one readable paragraph.
