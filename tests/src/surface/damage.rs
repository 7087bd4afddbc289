//! What happens to a table on its way: rows lost and doubled, cells emptied, headings again, quotes, remarks.

use proptest::collection::vec;
use proptest::prelude::*;
use proptest::sample::{Index, select};

use super::Form;
use super::axes::{Container, Layout};
use super::covering::forms;

/// One thing that went wrong. Places are taken modulo what is there.
#[derive(Clone, Debug)]
pub enum Damage {
    /// A row is lost.
    RowLost(Index),
    /// A row stands twice.
    RowTwice(Index),
    /// A row moved elsewhere.
    RowMoved(Index, Index),
    /// A cell is empty.
    CellEmptied(Index, Index),
    /// A cell holds something else.
    CellReplaced(Index, Index, &'static str),
    /// Cells too many.
    CellsAdded(Index, u8),
    /// Cells too few.
    RowCut(Index, Index),
    /// A row of nothing.
    RowBlank(Index),
    /// A row of anything.
    RowOf(Index, Vec<&'static str>),
    /// The first rows of the table once more.
    HeadingAgain(Index),
    /// From here on the table goes on in another form.
    GoesOnAs(Index, Index),
    /// A row of units.
    UnitRow(Index),
    /// A quotation mark somewhere in the text.
    Quote(Index),
    /// The text ends early.
    CutOff(Index),
    /// A byte is another one.
    Byte(Index, u8),
}

const WORDS: [&str; 24] = [
    "",
    " ",
    "-",
    "n.d.",
    "< 5",
    "> 7",
    "LOD: 3",
    "12 ppm",
    "1,250",
    "1.250",
    "5 ± 1",
    "\"",
    "a\"b",
    "a\nb",
    "Pb",
    "Sample",
    "mg/kg",
    "=1+1",
    "NaN",
    "1e400",
    "\u{0}",
    "äöü",
    "铅",
    "2026-13-45",
];

/// Damage of any kind.
pub fn damage() -> impl Strategy<Value = Damage> {
    let at = any::<Index>;
    prop_oneof![
        at().prop_map(Damage::RowLost),
        at().prop_map(Damage::RowTwice),
        (at(), at()).prop_map(|(from, to)| Damage::RowMoved(from, to)),
        (at(), at()).prop_map(|(row, cell)| Damage::CellEmptied(row, cell)),
        (at(), at(), select(WORDS.to_vec()))
            .prop_map(|(row, cell, word)| Damage::CellReplaced(row, cell, word)),
        (at(), 1_u8..4).prop_map(|(row, count)| Damage::CellsAdded(row, count)),
        (at(), at()).prop_map(|(row, cell)| Damage::RowCut(row, cell)),
        at().prop_map(Damage::RowBlank),
        (at(), vec(select(WORDS.to_vec()), 0..6)).prop_map(|(row, words)| Damage::RowOf(row, words)),
        at().prop_map(Damage::HeadingAgain),
        (at(), at()).prop_map(|(row, form)| Damage::GoesOnAs(row, form)),
        at().prop_map(Damage::UnitRow),
        at().prop_map(Damage::Quote),
        at().prop_map(Damage::CutOff),
        (at(), any::<u8>()).prop_map(|(place, byte)| Damage::Byte(place, byte)),
    ]
}

/// A form of this layout as text, and what happens to it.
pub fn damaged(layout: Layout) -> impl Strategy<Value = (Form, Vec<Damage>)> {
    let of_layout: Vec<Form> = forms()
        .iter()
        .filter(|form| form.layout == layout && form.container == Container::Plain)
        .copied()
        .collect();
    (select(of_layout), vec(damage(), 0..8))
}

/// The bytes of a form after all of it happened.
pub fn bytes_after(form: &Form, damages: &[Damage]) -> Vec<u8> {
    let mut rows = form.texts();
    let head = rows.clone();
    for damage in damages {
        change_rows(form, &head, &mut rows, damage);
    }
    let mut text = form.text_of(rows);
    for damage in damages {
        if let Damage::Quote(at) = damage {
            let mut places: Vec<usize> = text.char_indices().map(|(place, _)| place).collect();
            places.push(text.len());
            text.insert(*at.get(&places), '"');
        }
    }
    let mut bytes = form.bytes_of(&text);
    for damage in damages {
        match damage {
            Damage::CutOff(at) => bytes.truncate(at.index(bytes.len() + 1)),
            Damage::Byte(at, byte) if !bytes.is_empty() => {
                let place = at.index(bytes.len());
                bytes[place] = *byte;
            }
            _ => {}
        }
    }
    bytes
}

fn change_rows(form: &Form, head: &[Vec<String>], rows: &mut Vec<Vec<String>>, damage: &Damage) {
    if rows.is_empty() {
        return;
    }
    let place = |at: &Index| at.index(rows.len());
    match damage {
        Damage::RowLost(at) => {
            rows.remove(place(at));
        }
        Damage::RowTwice(at) => {
            let row = rows[place(at)].clone();
            rows.insert(place(at), row);
        }
        Damage::RowMoved(from, to) => {
            let to = place(to);
            let row = rows.remove(place(from));
            rows.insert(to, row);
        }
        Damage::CellEmptied(at, cell) => {
            let at = place(at);
            replace(&mut rows[at..], *cell, "");
        }
        Damage::CellReplaced(at, cell, word) => {
            let at = place(at);
            replace(&mut rows[at..], *cell, word);
        }
        Damage::CellsAdded(at, count) => {
            let at = place(at);
            rows[at].extend((0..*count).map(|more| format!("more {more}")));
        }
        Damage::RowCut(at, cell) => {
            let at = place(at);
            let length = cell.index(rows[at].len() + 1);
            rows[at].truncate(length);
        }
        Damage::RowBlank(at) => rows.insert(place(at), Vec::new()),
        Damage::RowOf(at, words) => {
            rows.insert(place(at), words.iter().map(|word| (*word).to_owned()).collect());
        }
        Damage::HeadingAgain(at) => {
            let above = head.iter().take(if form.preamble == super::axes::Preamble::None { 1 } else { 5 });
            let at = place(at);
            rows.splice(at..at, above.cloned());
        }
        Damage::GoesOnAs(at, other) => {
            let at = place(at);
            let other = other.get(forms()).texts();
            rows.splice(at..at, other.into_iter().take(12));
        }
        Damage::UnitRow(at) => {
            let at = place(at);
            let units = vec!["mg/kg".to_owned(); rows[at].len()];
            rows.insert(at, units);
        }
        Damage::Quote(_) | Damage::CutOff(_) | Damage::Byte(..) => {}
    }
}

fn replace(rows: &mut [Vec<String>], cell: Index, word: &str) {
    if let Some(row) = rows.first_mut().filter(|row| !row.is_empty()) {
        let at = cell.index(row.len());
        word.clone_into(&mut row[at]);
    }
}
