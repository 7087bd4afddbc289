//! A slow exact twin of the program's decisions: rationals, one row after the other, written from the design and the
//! published limits alone. It shares no line with the program it is held against.
//!
//! What it covers: design section 4, items 1 to 4, plated items of 6, 7, 10, 11 among the six elements, and the first form of 15 and 16. What it
//! leaves out: thickness corrections, site tables of repeatability, pooling.

pub mod dispose;
pub mod fraction;
pub mod given;
pub mod halogens;
pub mod judge;
pub mod limits;
pub mod overlaps;
pub mod table;
pub mod verdict;

pub use dispose::{Disposition, LotOut, MaterialOut, Reason, ReviewOut, review};
pub use given::{FILE_NAME, Given};
pub use table::{Table, read};
