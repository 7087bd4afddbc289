//! Golden cases: folders of text that say what comes in and what must come out, run on every door.
//!
//! `tests/golden/<area>/<case>/` holds `about.txt` (one line), `input/` (read as a folder), where wanted
//! `settings.toml`, `rules.toml` and `history.txt`, and `expected.json`, checked by hand against the design.

pub mod compare;
pub mod load;
pub mod run;
pub mod view;

pub use compare::differences;
pub use load::{Case, cases};
pub use run::view_of;
pub use view::Expected;
