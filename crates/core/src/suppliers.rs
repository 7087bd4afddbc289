//! What is known of a supplier and a part over all inspections.
