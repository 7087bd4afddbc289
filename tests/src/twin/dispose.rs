//! From verdicts to dispositions: items 10, 15 and 16 in their first form.

use std::collections::{BTreeMap, BTreeSet};

use super::given::Given;
use super::halogens::{Total, judge_alone, judge_total};
use super::judge::{Said, judge, judge_unknown};
use super::overlaps::{halogens_in_doubt, substance_in_doubt};
use super::table::{ELEMENTS, Row, Table};
use super::verdict::{Class, Halogen, Outcome, Substance, Verdict};

/// What to do.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Disposition {
    /// Accept.
    Accept,
    /// Hold.
    Hold,
    /// Not accept.
    NotAccept,
}

impl Disposition {
    /// The code of the contract.
    pub fn code(self) -> &'static str {
        match self {
            Disposition::Accept => "accept",
            Disposition::Hold => "hold",
            Disposition::NotAccept => "not_accept",
        }
    }
}

/// A reason: code, what it is about, what it does.
pub type Reason = (&'static str, String, Disposition);

/// One reading.
#[derive(Clone, Debug)]
pub struct ReadingOut {
    /// Physical line.
    pub line: u64,
    /// Its class.
    pub class: Class,
    /// Where the class came from.
    pub class_from: &'static str,
    /// The five verdicts.
    pub substances: [Verdict; 5],
    /// Verdicts under each banded class, for an unknown class.
    pub by_class: Option<[[Verdict; 3]; 5]>,
    /// Chlorine and bromine.
    pub halogens: [Verdict; 2],
    /// Their total.
    pub total: Total,
    /// Verdicts that an overlap puts in doubt: the substances, then chlorine, bromine and the total.
    pub in_doubt: ([bool; 5], [bool; 3]),
    /// A check.
    pub check: bool,
    /// Named as a check, and product all the same: it is over, and may be of what stands beside it.
    pub name_not_taken: bool,
}

/// One material.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct MaterialOut {
    /// Its disposition.
    pub disposition: Disposition,
    /// Its reasons.
    pub reasons: BTreeSet<Reason>,
    /// Worst outcome of each substance.
    pub worst: [Outcome; 5],
}

/// One lot.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LotOut {
    /// Its disposition.
    pub disposition: Disposition,
    /// Its reasons.
    pub reasons: BTreeSet<Reason>,
}

/// Supplier and lot.
pub type LotKey = (String, String);
/// Lot, part, name and, where the name is missing, class.
pub type MaterialKey = (LotKey, String, String, Option<Class>);

/// All that the twin says of one table.
#[derive(Clone, Debug)]
pub struct ReviewOut {
    /// The readings in file order.
    pub readings: Vec<ReadingOut>,
    /// The materials.
    pub materials: BTreeMap<MaterialKey, MaterialOut>,
    /// The parts.
    pub parts: BTreeMap<(LotKey, String), LotOut>,
    /// The lots.
    pub lots: BTreeMap<LotKey, LotOut>,
}

fn class_of(row: &Row, given: &Given) -> (Class, &'static str) {
    let word = row.class_word.to_lowercase();
    // A layer stays a layer whatever is set: the beam averages it with its base.
    if word == "plated" {
        return (Class::Plated, "declared");
    }
    // A person who names the part knows it better than the file's word.
    if let Some((_, class)) = given.part_class.as_ref().filter(|(part, _)| *part == row.part) {
        return (*class, "setting");
    }
    let (set, silent) = match word.as_str() {
        "polymer" | "plastic" => return (Class::Polymer, "declared"),
        "metal" => return (Class::Metal, "declared"),
        "composite" | "electronics" => return (Class::Composite, "declared"),
        // Item 10: glass and ceramic are unknown for the 2013 bands, whatever the default for the rest is.
        "glass" | "ceramic" | "unknown" => return (Class::Unknown, "not_in_book"),
        // The default is for readings that say nothing.
        "" => (given.file_class.or(given.class), "not_stated"),
        // A word that nobody here understands says something else than the default: only a person who looked at this
        // very file can say what.
        _ => (given.file_class, "not_understood"),
    };
    set.map_or((Class::Unknown, silent), |class| (class, "setting"))
}

fn read_one(row: &Row, given: &Given) -> ReadingOut {
    let (class, class_from) = class_of(row, given);
    read_as(class, class_from, row, given)
}

fn read_as(class: Class, class_from: &'static str, row: &Row, given: &Given) -> ReadingOut {
    let mut by_class = None;
    let substances = if class == Class::Unknown {
        let judged: [(Verdict, [Verdict; 3]); 5] =
            std::array::from_fn(|at| judge_unknown(Substance::ALL[at], &row.cells[at]));
        by_class = Some(judged.map(|(_, each)| each));
        judged.map(|(worst, _)| worst)
    } else {
        std::array::from_fn(|at| judge(Substance::ALL[at], class, &row.cells[at]))
    };
    let (bromine, chlorine) = (&row.cells[4], &row.cells[5]);
    let halogens = [judge_alone(Halogen::Cl, class, chlorine), judge_alone(Halogen::Br, class, bromine)];
    let total = judge_total(class, chlorine, bromine);
    let substances_in_doubt = std::array::from_fn(|at| {
        let each = by_class.as_ref().map(|each| &each[at]);
        substance_in_doubt(Substance::ALL[at], class, substances[at], each, &row.cells)
    });
    let in_doubt = (substances_in_doubt, halogens_in_doubt(halogens, &total, &row.cells));
    ReadingOut {
        line: row.line,
        class,
        class_from,
        substances,
        by_class,
        halogens,
        total,
        in_doubt,
        // Naming an id takes no reading away from a lot.
        check: row.lot.is_empty() && row.part.is_empty() && given.checks.contains(&row.id),
        name_not_taken: false,
    }
}

fn reason_of(outcome: Outcome) -> Option<&'static str> {
    match outcome {
        Outcome::NotApplicable | Outcome::Bl | Outcome::Ol => None,
        Outcome::X => Some("undecided"),
        Outcome::NotCapable => Some("not_capable"),
        Outcome::DetectionTooHigh => Some("detection_too_high"),
        Outcome::NoUncertainty => Some("no_uncertainty"),
        Outcome::NotMeasured => Some("not_measured"),
    }
}

fn reasons_of_reading(reading: &ReadingOut, given: &Given) -> BTreeSet<Reason> {
    let mut reasons = BTreeSet::new();
    for (at, substance) in Substance::ALL.into_iter().enumerate() {
        let about = substance.symbol().to_owned();
        if reading.substances[at].outcome == Outcome::Ol {
            let firm = reading
                .by_class
                .as_ref()
                .is_none_or(|by_class| by_class[at].iter().all(|verdict| verdict.outcome == Outcome::Ol));
            if firm {
                reasons.insert(("over_limit", about, Disposition::NotAccept));
            } else {
                reasons.insert(("over_in_some_classes", about, Disposition::Hold));
            }
        } else if let Some(code) = reason_of(reading.substances[at].outcome) {
            reasons.insert((code, about, Disposition::Hold));
        }
    }
    if given.halogen_book {
        let total = reading.total.verdict;
        for (of, verdict) in Halogen::ALL.into_iter().zip([reading.halogens[0], reading.halogens[1], total]) {
            let about = of.name().to_owned();
            match verdict.outcome {
                Outcome::NotApplicable | Outcome::Bl => {}
                // OL under polymer is not OL under metal, where halogens do not apply: an unknown class only holds.
                Outcome::Ol if reading.class == Class::Unknown => {
                    reasons.insert(("halogen_over_limit", about, Disposition::Hold));
                }
                Outcome::Ol => {
                    reasons.insert(("halogen_over_limit", about, Disposition::NotAccept));
                }
                _ => {
                    reasons.insert(("halogen_open", about, Disposition::Hold));
                }
            }
        }
    }
    let (substances, [_, bromine, total]) = reading.in_doubt;
    let mut doubt = |in_doubt: bool, verdict: Verdict, about: &str| match verdict.outcome {
        Outcome::Bl if in_doubt => {
            reasons.insert(("overlap_unresolved", about.to_owned(), Disposition::Hold));
        }
        Outcome::Ol if in_doubt => {
            reasons.insert(("over_may_be_overlap", about.to_owned(), Disposition::Hold));
        }
        _ => {}
    };
    for (at, substance) in Substance::ALL.into_iter().enumerate() {
        doubt(substances[at], reading.substances[at], substance.symbol());
    }
    if given.halogen_book {
        doubt(bromine, reading.halogens[1], "Br");
        doubt(total, reading.total.verdict, "total");
    }
    if reading.class == Class::Unknown {
        reasons.insert(("class_unknown", String::new(), Disposition::Hold));
    }
    let clear = |at: usize| reading.substances[at].outcome == Outcome::Bl;
    if reading.class == Class::Polymer && !given.thick && (clear(0) || clear(1)) {
        reasons.insert(("thickness_not_stated", String::new(), Disposition::Hold));
    }
    reasons
}

fn is_over(reading: &ReadingOut, given: &Given) -> bool {
    let halogens = reading.halogens.iter().chain([&reading.total.verdict]).filter(|_| given.halogen_book);
    reading.substances.iter().chain(halogens).any(|verdict| verdict.outcome == Outcome::Ol)
}

fn worst(reasons: &BTreeSet<Reason>) -> Disposition {
    reasons.iter().map(|(_, _, effect)| *effect).max().unwrap_or(Disposition::Accept)
}

/// What trust says of a lot. No check has a certified value here, so trust stays open: a certificate is missing where a
/// check of the class measured the element, and else a check.
fn trust(
    lot: &LotKey,
    table: &Table,
    readings: &[ReadingOut],
    given: &Given,
) -> BTreeSet<(&'static str, String)> {
    let rows = || table.rows.iter().zip(readings);
    if !readings.iter().any(|reading| reading.check) {
        return BTreeSet::from([("trust_none", String::new())]);
    }
    let matters =
        |verdict: Verdict| !matches!(verdict.outcome, Outcome::NotMeasured | Outcome::NotApplicable);
    // Per class: how many readings no check covers, element by element.
    let (mut any_with, mut without) = (false, BTreeMap::<&str, [u64; 6]>::new());
    for (row, reading) in rows().filter(|(_, reading)| !reading.check) {
        if (&row.supplier, &row.lot) != (&lot.0, &lot.1) {
            continue;
        }
        for at in 0..ELEMENTS.len() {
            let needed = match reading.substances.get(at) {
                Some(verdict) => matters(*verdict),
                None => given.halogen_book && matters(reading.halogens[0]),
            };
            let fits = rows().filter(|(_, check)| check.check).any(|(row, check)| {
                let unknown = [check.class, reading.class].contains(&Class::Unknown);
                let seen = !matches!(row.cells[at].said, Said::NoColumn | Said::Blank | Said::Text);
                seen && (unknown || check.class == reading.class)
            });
            match (needed, fits) {
                (true, true) => any_with = true,
                (true, false) => without.entry(reading.class.code()).or_default()[at] += 1,
                _ => {}
            }
        }
    }
    let mut found = BTreeSet::new();
    if any_with || without.is_empty() {
        found.insert(("trust_not_judged", String::new()));
    }
    for (class, counts) in without {
        for count in BTreeSet::from(counts).into_iter().filter(|count| *count > 0) {
            let same: Vec<&str> = (0..6).filter(|at| counts[*at] == count).map(|at| ELEMENTS[at]).collect();
            found.insert(("trust_none", format!("{}, –, –, {class}", same.join(" "))));
        }
    }
    found
}

/// Reviews one table that is the only source of its inspection.
pub fn review(table: &Table, given: &Given) -> ReviewOut {
    let mut readings: Vec<ReadingOut> = table.rows.iter().map(|row| read_one(row, given)).collect();
    // Beside product that states neither lot nor part, a name alone takes no reading away that is over.
    let loose = |row: &Row| row.lot.is_empty() && row.part.is_empty() && !given.checks.contains(&row.id);
    if table.rows.iter().any(loose) {
        for reading in readings.iter_mut().filter(|reading| reading.check && is_over(reading, given)) {
            (reading.check, reading.name_not_taken) = (false, true);
        }
    }
    let mut of_material: BTreeMap<MaterialKey, Vec<usize>> = BTreeMap::new();
    let mut measured: BTreeMap<(LotKey, String), BTreeSet<String>> = BTreeMap::new();
    for (at, (row, reading)) in table.rows.iter().zip(&readings).enumerate() {
        if reading.check {
            continue;
        }
        let lot: LotKey = (row.supplier.clone(), row.lot.clone());
        let stand_in = row.material.is_empty().then_some(reading.class);
        let key = (lot.clone(), row.part.clone(), row.material.clone(), stand_in);
        of_material.entry(key).or_default().push(at);
        measured.entry((lot, row.part.clone())).or_default().insert(row.material.clone());
    }
    let mut materials: BTreeMap<MaterialKey, MaterialOut> = BTreeMap::new();
    // Per lot: the units of its least sampled material, and whether any reading names none.
    let mut sampled: BTreeMap<LotKey, (usize, bool)> = BTreeMap::new();
    // Per lot and part: every different unit, of which a lot has no more than its size.
    let mut pieces: BTreeMap<(LotKey, String), BTreeSet<String>> = BTreeMap::new();
    for (key, rows) in of_material {
        let classes: BTreeSet<Class> = rows.iter().map(|at| readings[*at].class).collect();
        let mut material = MaterialOut {
            disposition: Disposition::Accept,
            reasons: BTreeSet::new(),
            worst: [Outcome::NotApplicable; 5],
        };
        for at in &rows {
            // Item 10: one material has one class; where its readings disagree, nobody knows which.
            let contested = classes.iter().filter(|class| **class != Class::Plated).count() > 1
                && readings[*at].class != Class::Plated;
            let reading = if contested {
                read_as(Class::Unknown, readings[*at].class_from, &table.rows[*at], given)
            } else {
                readings[*at].clone()
            };
            // Item 6: a layer is never the material's, nor is what lies under it judged through it.
            if classes.contains(&Class::Plated) && classes.len() > 1 {
                material.reasons.insert(("layer_among_classes", String::new(), Disposition::Hold));
            }
            material.reasons.extend(reasons_of_reading(&reading, given));
            for (worst, verdict) in material.worst.iter_mut().zip(&reading.substances) {
                *worst = (*worst).max(verdict.outcome);
            }
        }
        material.disposition = worst(&material.reasons);
        // Item 15: physical units, not readings, and only what the file itself calls one.
        let units: BTreeSet<String> =
            rows.iter().map(|at| unit_name(&table.rows[*at].unit)).filter(|unit| !unit.is_empty()).collect();
        let nameless = rows.iter().any(|at| table.rows[*at].unit.is_empty());
        pieces.entry((key.0.clone(), key.1.clone())).or_default().extend(units.iter().cloned());
        let of_lot = sampled.entry(key.0.clone()).or_insert((usize::MAX, false));
        *of_lot = (of_lot.0.min(units.len()), of_lot.1 || nameless);
        materials.insert(key, material);
    }
    let mut parts: BTreeMap<(LotKey, String), LotOut> = BTreeMap::new();
    for ((lot, part, ..), material) in &materials {
        let of_part = parts
            .entry((lot.clone(), part.clone()))
            .or_insert_with(|| LotOut { disposition: Disposition::Accept, reasons: BTreeSet::new() });
        of_part.reasons.extend(material.reasons.iter().cloned());
    }
    let weight = |advisory: bool| if advisory { Disposition::Accept } else { Disposition::Hold };
    for ((lot, part), of_part) in &mut parts {
        // Capitals and spaces make no other part and no other material.
        let alike = |one: &str, other: &str| {
            one.to_lowercase().split_whitespace().eq(other.to_lowercase().split_whitespace())
        };
        let respelled: Vec<_> = given.bills.iter().filter(|(of, _)| alike(of, part)).collect();
        let bill = given.bills.iter().find(|(of, _)| of == part).or(match respelled[..] {
            [one] => Some(one),
            _ => None,
        });
        let bill = bill.filter(|_| !part.is_empty());
        match bill {
            None => {
                let none = ("bill_of_materials_none", String::new(), weight(given.materials_advisory));
                of_part.reasons.insert(none);
            }
            Some((_, listed)) => {
                let found = measured.get(&(lot.clone(), part.clone()));
                for name in found.into_iter().flatten().filter(|name| !name.is_empty()) {
                    if !listed.iter().any(|one| alike(one, name)) {
                        of_part.reasons.insert(("material_not_listed", name.clone(), Disposition::Hold));
                    }
                }
                for name in listed {
                    if !found.is_some_and(|found| found.iter().any(|one| alike(one, name))) {
                        of_part.reasons.insert(("material_not_measured", name.clone(), Disposition::Hold));
                    }
                }
            }
        }
        of_part.disposition = worst(&of_part.reasons);
    }
    let mut lots: BTreeMap<LotKey, LotOut> = BTreeMap::new();
    for ((lot, _), part) in &parts {
        let of_lot = lots
            .entry(lot.clone())
            .or_insert_with(|| LotOut { disposition: Disposition::Accept, reasons: BTreeSet::new() });
        of_lot.reasons.extend(part.reasons.iter().cloned());
    }
    for (key, lot) in &mut lots {
        for (code, about) in trust(key, table, &readings, given) {
            lot.reasons.insert((code, about, weight(given.trust_advisory)));
        }
        let not_taken =
            table.rows.iter().zip(&readings).any(|(row, reading)| {
                reading.name_not_taken && (row.supplier.clone(), row.lot.clone()) == *key
            });
        if not_taken {
            lot.reasons.insert(("mark_not_taken", String::new(), Disposition::Accept));
        }
        match (given.lot_size, given.units_to_take) {
            (Some(size), Some(take)) => {
                let (units, nameless) = sampled.get(key).copied().unwrap_or((0, true));
                if nameless {
                    lot.reasons.insert(("units_not_stated", String::new(), Disposition::Hold));
                }
                if (units as u64) < take.min(size) {
                    lot.reasons.insert(("sampling_too_few", String::new(), Disposition::Hold));
                }
            }
            (None, Some(_)) => {
                lot.reasons.insert(("lot_size_missing", String::new(), Disposition::Hold));
            }
            (_, None) => {
                lot.reasons.insert(("sampling_none", String::new(), weight(given.sampling_advisory)));
            }
        }
        let most = pieces.iter().filter(|((of, _), _)| of == key).map(|(_, units)| units.len()).max();
        if given.lot_size.is_some_and(|size| most.is_some_and(|most| most as u64 > size)) {
            lot.reasons.insert(("lot_size_too_small", String::new(), Disposition::Hold));
        }
        lot.disposition = worst(&lot.reasons);
    }
    ReviewOut { readings, materials, parts, lots }
}

/// One piece written two ways is one piece: capitals and leading zeros of a number make no other.
fn unit_name(unit: &str) -> String {
    let mut name = unit.trim().to_lowercase();
    loop {
        let characters: Vec<char> = name.chars().collect();
        let digit = |at: usize| characters.get(at).is_some_and(char::is_ascii_digit);
        let zero = (0..characters.len())
            .find(|at| characters[*at] == '0' && digit(at + 1) && !(*at > 0 && digit(at - 1)));
        let Some(zero) = zero else { return name };
        name = characters.iter().enumerate().filter(|(at, _)| *at != zero).map(|(_, c)| *c).collect();
    }
}
