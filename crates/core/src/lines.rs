//! X-ray line energies, a resolution model, and the overlaps that matter for a reading.
