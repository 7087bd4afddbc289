//! Files nobody thought of: changed at random from a corpus, and what must hold of every one of them.

mod changes;
pub mod check;
pub mod input;
mod smaller;
pub mod tokens;

pub use changes::changed;
pub use smaller::smaller;
