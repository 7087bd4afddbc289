//! How long a measurement would have to take to decide.
