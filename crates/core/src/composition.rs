//! What a composition says of a material: its class, its alloy family, and a calibration that does not fit.
