//! Moments: date and time of a reading as numbers that can be put in order.
