//! A whole invented delivery from a seed, to be opened and reviewed like any other.

use plumbline_core::rules::RuleBooks;

use crate::draw::Draw;
use crate::files::Delivery;
use crate::lot::{LotKind, lot};

/// Numbers for whole deliveries lie apart from those of all lessons.
const WHOLE: u32 = 1000;

/// The delivery of a seed: one lot of six to ten units. `None` where the rule book in force lacks what it is about.
pub fn whole(books: &RuleBooks, seed: u64) -> Option<Delivery> {
    let mut draw = Draw::new(seed, WHOLE, 1);
    let kind = draw.pick(&LotKind::ALL)?;
    let units = draw.between(6, 10);
    Some(lot(books, kind, &mut draw, &format!("invented-{seed}"), units)?.delivery)
}
