//! One invented table in every form that people hand over.

pub mod amounts;
pub mod axes;
mod bytes;
mod covering;
pub mod damage;
mod grid;
mod said;
pub mod table;
pub mod words;

pub use axes::Form;
pub use covering::forms;
pub use said::differences;
