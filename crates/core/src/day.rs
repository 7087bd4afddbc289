//! Calendar days: read, compared, moved by months.
