//! Readings against the limits of a named rule book.
