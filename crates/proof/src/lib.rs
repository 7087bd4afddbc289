//! A report held against what it carries: everything is recomputed and compared, and what differs is named by place.
