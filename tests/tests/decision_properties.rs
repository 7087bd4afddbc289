//! What must hold of decisions whatever was measured, with repeats of a spot, thicknesses, an extra relative term and rule
//! books in play: worse evidence never makes anything better.

// Tables are written out here for people to read, and elements are places in several lists at once.
#![allow(clippy::format_push_string, clippy::needless_range_loop)]

use std::collections::BTreeMap;

use plumbline_core::inspection::{Findings, Inspection, review};
use plumbline_core::judging::{Assessed, PooledHow, SourceReview};
use plumbline_core::longer::{self, Longer, Timed};
use plumbline_core::lot::Disposition;
use plumbline_core::material::MaterialClass;
use plumbline_core::outcome::{Judgement, Outcome, SigmaFrom};
use plumbline_core::quantity::{Coverage, MassFraction, Sigma};
use plumbline_core::reading::Identity;
use plumbline_core::rules::JUDGED;
use plumbline_core::substance::{Halogen, Substance};
use plumbline_tests::chance::Chance;
use plumbline_tests::program::{findings_json, inspect};
use plumbline_tests::tables::Units;
use serde_json::Value as Json;

const MG: i64 = 1_000_000;
const ELEMENTS: [&str; 6] = ["Cd", "Pb", "Hg", "Cr", "Br", "Cl"];
const CLASSES: [&str; 3] = ["polymer", "metal", "composite"];

/// A cell in millionths of mg/kg; an uncertainty of `None` was not stated.
#[derive(Clone, Copy, Debug)]
enum Cell {
    Number(i64, Option<i64>),
    Below(i64),
    Above(i64),
    Blank,
}

#[derive(Clone, Debug)]
struct Row {
    /// Different in every row, so that none is a copy of another.
    mark: usize,
    id: usize,
    spot: &'static str,
    piece: &'static str,
    material: &'static str,
    class: &'static str,
    thickness: &'static str,
    seconds: &'static str,
    cells: [Cell; 6],
}

/// Invented readings of one lot, and what a person says of them.
#[derive(Clone, Debug)]
struct Readings {
    rows: Vec<Row>,
    settings: String,
    columns: Vec<usize>,
    units: Units,
}

impl Readings {
    fn text(&self) -> String {
        let unit = self.units.word();
        let mut text =
            "Sample,Spot,Piece,Part,Material,Lot,Supplier,Class,Thickness mm,Seconds,Comment".to_owned();
        for at in &self.columns {
            let element = ELEMENTS[*at];
            text += &format!(",{element} {unit},{element} u (1s)");
        }
        text.push('\n');
        let amount = |units| self.units.write(units, '.');
        for row in &self.rows {
            let Row { mark, id, spot, piece, material, class, thickness, seconds, .. } = row;
            text += &format!(
                "S{id},{spot},{piece},P-1,{material},L-1,Cedar Works,{class},{thickness},{seconds},no {mark}"
            );
            for at in &self.columns {
                text += &match row.cells[*at] {
                    Cell::Number(x, sigma) => {
                        format!(",{},{}", amount(x), sigma.map_or(String::new(), amount))
                    }
                    Cell::Below(limit) => format!(",< {},", amount(limit)),
                    Cell::Above(upper) => format!(",> {},", amount(upper)),
                    Cell::Blank => ",,".to_owned(),
                };
            }
            text.push('\n');
        }
        text
    }

    fn reviewed(&self) -> Reviewed {
        let inspection = inspect(&self.settings, &[("lot.csv", self.text().as_bytes())]);
        let findings = review(&inspection);
        assert_eq!(inspection.sources[0].readings.len(), self.rows.len(), "{}", self.text());
        Reviewed { inspection, findings }
    }

    fn with(&self, change: impl Fn(&mut Readings)) -> Readings {
        let mut other = self.clone();
        change(&mut other);
        other
    }

    fn shown(&self) -> String {
        format!("\n{}\n{}", self.text(), self.settings)
    }
}

struct Reviewed {
    inspection: Inspection,
    findings: Findings,
}

/// What is judged of one reading: the five substances, then Cl, Br and the total.
type Outcomes = [Judgement; 8];

fn outcomes(assessed: &Assessed) -> Outcomes {
    std::array::from_fn(|at| match at {
        0..5 => assessed.substances[at],
        _ => assessed.halogen(Halogen::ALL[at - 5]),
    })
}

struct Looked {
    /// By itself.
    own: Outcomes,
    /// As it counts in its material.
    counted: Outcomes,
    /// Repeats of its spot disagree, for each of the eight.
    disagree: [bool; 8],
    /// Outcomes of the limits of the books in force.
    limits: Vec<Outcome>,
}

impl Reviewed {
    fn look(&self) -> Vec<Looked> {
        let settings = self.inspection.settings();
        let source = &self.inspection.sources[0];
        let reviewer = SourceReview::new(source, &self.inspection.books, &settings);
        (0..source.readings.len())
            .map(|row| {
                let own = reviewer.assess(row);
                let group = reviewer
                    .repeats()
                    .group_of(row)
                    .map(|group| reviewer.assess_group(group, own.class, own.class_from));
                let counted = group.as_ref().map_or(own, |group| group.counted(&own));
                let apart = |at: usize| {
                    group.as_ref().is_some_and(|group| matches!(group.elements[at].how, PooledHow::Disagree))
                };
                let disagree = std::array::from_fn(|at| match at {
                    0..5 => apart(at),
                    5 => apart(5),
                    6 => apart(4),
                    _ => apart(4) || apart(5),
                });
                let limits = reviewer.limits_as(own.class, row);
                Looked {
                    own: outcomes(&own),
                    counted: outcomes(&counted),
                    disagree,
                    limits: limits.iter().map(|one| one.judged.judgement.outcome).collect(),
                }
            })
            .collect()
    }

    fn disposition(&self) -> Disposition {
        self.findings.lots.iter().map(|lot| lot.disposition).max().expect("a lot")
    }

    fn json(&self) -> Json {
        serde_json::from_slice(&findings_json(&self.inspection, &self.findings)).expect("JSON")
    }
}

const ADVISORY: &str = "schema = \"plumbline.settings/1\"\ntrust = \"advisory\"\nsampling = \"advisory\"\nmaterials = \"advisory\"\n";

/// Edges and limits of IEC 62321-3-1:2013 and IEC 61249-2-21:2003, in mg/kg, so that much lies near one.
const EDGES: [&[i64]; 6] =
    [&[70, 130, 150], &[700, 1300, 500], &[700, 1300, 500], &[700, 500], &[300, 250, 900], &[900, 1500]];

fn number(chance: &mut Chance, at: usize) -> (i64, i64) {
    let sigma = *chance.pick(&[500_000, 2 * MG, 5_000_001, 8 * MG, 15 * MG, 24 * MG]);
    let x = match chance.below(4) {
        0 | 1 => chance.below(30) as i64 * MG,
        2 => *chance.pick(EDGES[at]) * MG + (chance.below(9) as i64 - 4) * sigma,
        _ => chance.below(1_700) as i64 * MG,
    };
    (x, sigma)
}

fn cell(chance: &mut Chance, at: usize) -> Cell {
    let (x, sigma) = number(chance, at);
    match chance.below(16) {
        0 => Cell::Below((x / 2).max(1)),
        1 => Cell::Above(x.max(1)),
        2 => Cell::Number(x, None),
        3 => Cell::Blank,
        _ => Cell::Number(x, Some(sigma)),
    }
}

/// Readings of a lot. `tame` ones are mostly far below every limit, so that lots are accepted.
fn readings(seed: u64, tame: bool) -> Readings {
    let mut chance = Chance::new(seed);
    let mut rows: Vec<Row> = Vec::new();
    let thick = ["9", "1", "0.2", ""];
    for id in 0..=chance.below(3) {
        let class = *chance.pick(&CLASSES);
        let thickness = if tame { "9" } else { *chance.pick(&thick) };
        let tight = chance.once_in(2);
        let mut first: [Cell; 6] = std::array::from_fn(|at| cell(&mut chance, at));
        if tame {
            let low = [52, 450, 450, 350, 170, 250];
            first = std::array::from_fn(|at| {
                let x = low[at] * MG - chance.below(40) as i64 * MG / 4;
                Cell::Number(x, Some(*chance.pick(&[MG, MG, 3 * MG, 8 * MG])))
            });
        }
        for _ in 0..=chance.below(4) {
            let cells = std::array::from_fn(|at| match first[at] {
                Cell::Number(x, sigma) if tight || tame => {
                    let off = sigma.unwrap_or(2 * MG) / 2 * (chance.below(3) as i64 - 1);
                    Cell::Number((x + off).max(0), sigma)
                }
                _ if chance.once_in(3) => cell(&mut chance, at),
                same => same,
            });
            let material = ["body", "cap", "pin"][id];
            let spot = if chance.once_in(8) { "" } else { *chance.pick(&["1", "1", "2"]) };
            let seconds = if chance.once_in(5) { "" } else { *chance.pick(&["30", "60"]) };
            rows.push(Row {
                mark: rows.len(),
                id,
                spot,
                piece: "1",
                material,
                class,
                thickness,
                seconds,
                cells,
            });
        }
    }
    let mut settings = ADVISORY.to_owned();
    if !tame && chance.once_in(2) {
        settings += &format!("relative_sigma = {}\n", chance.pick(&["0.5", "3", "12.5"]));
    }
    if chance.once_in(3) {
        settings += "halogen_book = \"iec-61249-2-21-2003\"\n";
    }
    if chance.once_in(4) {
        settings += "repeats = \"same_id\"\n";
    }
    Readings { rows, settings, columns: (0..6).collect(), units: Units::MgPerKg }
}

fn tries(count: u64) -> impl Iterator<Item = (u64, Readings)> {
    (0..count).map(|seed| (seed, readings(seed, seed % 2 == 0)))
}

/// Repeats that disagree are open for that alone; wider sigmas may make them agree, which is the one way round.
#[test]
fn a_wider_sigma_never_makes_below_or_over_of_what_was_not() {
    let mut kept = 0;
    for (seed, before) in tries(160) {
        let more = Chance::new(seed).below(40) as i64 * MG + 1;
        let after = before.with(|after| {
            for cell in after.rows.iter_mut().flat_map(|row| &mut row.cells) {
                if let Cell::Number(_, Some(sigma)) = cell {
                    *sigma += more;
                }
            }
        });
        for (old, new) in before.reviewed().look().iter().zip(after.reviewed().look()) {
            for at in 0..8 {
                for (old_one, new_one) in [(old.own[at], new.own[at]), (old.counted[at], new.counted[at])] {
                    let settled = matches!(new_one.outcome, Outcome::Below | Outcome::Over);
                    let was = old_one.outcome == new_one.outcome || old.disagree[at];
                    kept += u32::from(settled && was);
                    assert!(
                        !settled || was,
                        "{at}: {old_one:?} became {new_one:?} by {more}{}",
                        before.shown()
                    );
                }
            }
        }
    }
    assert!(kept > 500, "{kept} settled outcomes were looked at");
}

/// One element at a time: more chlorine makes a thin plastic less transparent, and so cadmium in it rightly surer.
#[test]
fn a_higher_value_never_improves_an_outcome_of_its_element() {
    let mut worse = 0;
    for (seed, before) in tries(160) {
        let mut chance = Chance::new(seed);
        let (element, more) = (chance.below(6), chance.below(700) as i64 * MG + 1);
        let after = before.with(|after| {
            for row in &mut after.rows {
                match &mut row.cells[element] {
                    Cell::Number(x, _) | Cell::Below(x) | Cell::Above(x) => *x += more,
                    Cell::Blank => {}
                }
            }
        });
        let own: &[usize] = match element {
            4 => &[4, 6, 7],
            5 => &[5, 7],
            0 => &[0],
            1 => &[1],
            2 => &[2],
            _ => &[3],
        };
        for (old, new) in before.reviewed().look().iter().zip(after.reviewed().look()) {
            for at in own {
                for (old, new) in [(old.own[*at], new.own[*at]), (old.counted[*at], new.counted[*at])] {
                    worse += u32::from(new.outcome > old.outcome);
                    assert!(
                        new.outcome >= old.outcome,
                        "{at}: {old:?} became {new:?} by {more}{}",
                        before.shown()
                    );
                }
            }
        }
    }
    assert!(worse > 50, "{worse} outcomes became worse");
}

/// A column that is not judged may contest a class, and then its absence does accept; those that are judged are never
/// missing without a word.
#[test]
fn taking_an_element_away_never_accepts() {
    let mut accepted = 0;
    for (_, before) in tries(100) {
        let first = before.reviewed().disposition();
        accepted += u32::from(first == Disposition::Accept);
        for at in 0..6 {
            let without = before.with(|after| after.columns.retain(|column| *column != at));
            let now = without.reviewed().disposition();
            assert!(
                now != Disposition::Accept || first == Disposition::Accept,
                "{}{}",
                ELEMENTS[at],
                before.shown()
            );
        }
    }
    assert!(accepted > 5, "{accepted} of the lots were accepted");
}

/// Where repeats of the spot scatter, what they show stands in for the uncertainty that is missing, with the t factor.
#[test]
fn taking_an_uncertainty_away_never_accepts() {
    let (mut accepted, mut stood_in) = (0, 0);
    for (seed, before) in tries(160) {
        let mut chance = Chance::new(seed);
        let row = chance.below(before.rows.len());
        let first = before.reviewed();
        accepted += u32::from(first.disposition() == Disposition::Accept);
        for at in 0..6 {
            let Cell::Number(x, Some(_)) = before.rows[row].cells[at] else { continue };
            let without = before.with(|after| after.rows[row].cells[at] = Cell::Number(x, None)).reviewed();
            let looked = &without.look()[row];
            let judged = if at == 5 { looked.counted[5] } else { looked.counted[at] };
            let shown = judged.used.from == SigmaFrom::Repeats;
            stood_in += u32::from(shown);
            if matches!(judged.outcome, Outcome::Below | Outcome::Over) {
                // Cadmium in a composite is cleared by its limit; what pools keeps the largest stated one whole.
                let kept = judged.used.sigma.is_some();
                assert!(kept, "{} {judged:?} without any uncertainty{}", ELEMENTS[at], before.shown());
            }
            let now = without.disposition();
            let allowed = now != Disposition::Accept || first.disposition() == Disposition::Accept || shown;
            assert!(allowed, "{} of row {row}: {judged:?}{}", ELEMENTS[at], before.shown());
        }
    }
    assert!(accepted > 10 && stood_in > 20, "{accepted} accepted, {stood_in} stood in for");
}

/// A reading that is over by itself, taken alone.
#[test]
fn more_repeats_of_a_spot_leave_over_what_was_over() {
    let mut over = 0;
    for (seed, before) in tries(160) {
        let alone = before.with(|alone| {
            alone.settings = alone.settings.replace("repeats = \"same_id\"\n", "") + "repeats = \"never\"\n";
        });
        let alone = alone.reviewed().look();
        let mut chance = Chance::new(seed);
        let of = chance.below(before.rows.len());
        let after = before.with(|after| {
            let mut chance = Chance::new(seed);
            let of = chance.below(before.rows.len());
            for _ in 0..=chance.below(5) {
                let mut more = before.rows[of].clone();
                more.mark = after.rows.len();
                more.cells = std::array::from_fn(|at| cell(&mut chance, at));
                after.rows.push(more);
            }
        });
        let reviewed = after.reviewed();
        let material = reviewed
            .findings
            .materials
            .iter()
            .find(|material| material.name.as_deref() == Some(before.rows[of].material))
            .expect("its material");
        for substance in Substance::ALL {
            if alone[of].own[substance as usize].outcome == Outcome::Over {
                over += 1;
                assert_eq!(material.tally.worst(substance), Outcome::Over, "{substance:?}{}", after.shown());
                assert_eq!(reviewed.disposition(), Disposition::NotAccept, "{substance:?}{}", after.shown());
            }
        }
    }
    assert!(over > 20, "{over} were over");
}

/// Lists of a lot's findings that no order of rows may change, with places in the file taken out.
fn without_places(reviewed: &Reviewed) -> Vec<String> {
    fn clean(value: &mut Json) {
        match value {
            Json::Object(map) => {
                map.remove("outlier");
                if map.get("readings").is_some_and(Json::is_array) {
                    map.remove("readings");
                }
                map.values_mut().for_each(clean);
            }
            Json::Array(list) => list.iter_mut().for_each(clean),
            // The last digits of a float hang on the order of a sum.
            Json::Number(number) => {
                if let Some(float) = number.as_f64().filter(|_| number.is_f64()) {
                    *value = Json::String(format!("{float:.6e}"));
                }
            }
            _ => {}
        }
    }
    let json = reviewed.json();
    ["repeats", "materials", "parts", "lots"]
        .iter()
        .flat_map(|of| json[*of].as_array().expect("a list").clone())
        .map(|mut one| {
            clean(&mut one);
            one.to_string()
        })
        .collect()
}

#[test]
fn the_unit_of_columns_changes_nothing_that_is_found() {
    let mut groups = 0;
    for (_, before) in tries(30) {
        let first = before.reviewed();
        let wanted = without_places(&first);
        groups += first.json()["repeats"].as_array().map_or(0, Vec::len);
        for units in Units::ALL {
            let other = before.with(|other| other.units = units);
            assert_eq!(wanted, without_places(&other.reviewed()), "{units:?}{}", before.shown());
        }
    }
    assert!(groups > 15, "{groups} groups of repeats");
}

#[test]
fn the_order_of_rows_changes_nothing_that_is_found() {
    for (seed, before) in tries(60) {
        let mut order: Vec<usize> = (0..before.rows.len()).collect();
        let mut chance = Chance::new(seed);
        for at in (1..order.len()).rev() {
            order.swap(at, chance.below(at + 1));
        }
        let after =
            before.with(|after| after.rows = order.iter().map(|at| before.rows[*at].clone()).collect());
        let (first, second) = (before.reviewed(), after.reviewed());
        let said = |looked: &Looked| -> Vec<_> {
            let both = looked.own.iter().chain(&looked.counted);
            both.map(|judged| (judged.outcome, judged.reason.map(plumbline_core::outcome::Reason::code)))
                .collect()
        };
        let (old, new) = (first.look(), second.look());
        for (at, from) in order.iter().enumerate() {
            assert_eq!(said(&old[*from]), said(&new[at]), "row {from}{}", before.shown());
            assert_eq!(old[*from].limits, new[at].limits, "row {from}{}", before.shown());
        }
        let sorted = |reviewed: &Reviewed| {
            let mut lines = without_places(reviewed);
            lines.sort();
            lines
        };
        assert_eq!(sorted(&first), sorted(&second), "{}", before.shown());
    }
}

/// The books that come with the program.
const BOOKS: [&str; 17] = [
    "eu-elv-2000-53",
    "eu-packaging-2025-40",
    "eu-packaging-94-62",
    "eu-reach-xvii-23",
    "eu-reach-xvii-63",
    "eu-rohs-annex-ii",
    "gb-26572-2025",
    "gb-t-26572-2011",
    "iec-61249-2-21-2003",
    "iec-62321-3-1-2013",
    "iec-62321-7-1-2015",
    "js709b-2015",
    "rohs-annex-iii-2025",
    "uk-rohs-2012",
    "us-16-cfr-1303",
    "us-cpsia-101",
    "a-book-nobody-has",
];

#[test]
fn an_unknown_class_is_never_laxer_than_any_class() {
    let named: Vec<String> = BOOKS.iter().map(|id| format!("\"{id}\"")).collect();
    let mut limits = 0;
    for (_, before) in tries(50) {
        let with_books = before.with(|one| one.settings += &format!("books = [{}]\n", named.join(", ")));
        let of_class = |class| with_books.with(|one| one.rows.iter_mut().for_each(|row| row.class = class));
        let unknown = of_class("glass").reviewed();
        assert!(unknown.findings.verdicts.iter().all(|one| one.class == MaterialClass::Unknown));
        let unknown = unknown.look();
        for class in CLASSES {
            for (unknown, known) in unknown.iter().zip(of_class(class).reviewed().look()) {
                for at in 0..8 {
                    for (unknown, known) in
                        [(unknown.own[at], known.own[at]), (unknown.counted[at], known.counted[at])]
                    {
                        assert!(
                            unknown.outcome >= known.outcome,
                            "{at} {class}: {unknown:?}, {known:?}{}",
                            before.shown()
                        );
                    }
                }
                limits += known.limits.len();
                assert_eq!(unknown.limits.len(), known.limits.len());
                for (at, (unknown, known)) in unknown.limits.iter().zip(&known.limits).enumerate() {
                    assert!(unknown >= known, "limit {at} {class}: {unknown:?}, {known:?}{}", before.shown());
                }
            }
        }
    }
    assert!(limits > 1_000, "{limits} limits");
}

#[test]
fn one_more_rule_book_never_improves_a_disposition() {
    let mut stricter = BTreeMap::new();
    for (seed, before) in tries(100) {
        let mut chance = Chance::new(seed);
        let mut named: Vec<&str> = Vec::new();
        let mut last = before.reviewed().disposition();
        for _ in 0..3 {
            named.push(*chance.pick(&BOOKS));
            let list: Vec<String> = named.iter().map(|id| format!("\"{id}\"")).collect();
            let now = before
                .with(|one| one.settings += &format!("books = [{}]\n", list.join(", ")))
                .reviewed()
                .disposition();
            assert!(now >= last, "{named:?} made {now:?} of {last:?}{}", before.shown());
            *stricter.entry(now > last).or_insert(0) += 1;
            last = now;
        }
    }
    assert!(stricter.get(&true).is_some_and(|count| *count > 5), "{stricter:?}");
}

fn seconds(longer: Longer) -> (u32, u32) {
    (longer.even().unwrap_or(u32::MAX), longer.surely().unwrap_or(u32::MAX))
}

/// With the same sigma a reading that took longer counts slower, so it needs longer; one that took less does not.
#[test]
fn more_sigma_or_a_slower_measurement_never_shortens_measuring_longer() {
    let mut chance = Chance::new(62_321);
    let mut finite = 0;
    for _ in 0..20_000 {
        let mut milli = |below: usize| MassFraction::from_units(chance.below(below) as i64 * 1_000);
        let (value, counting, constant) = (milli(2_000_000), milli(90_000), milli(20_000));
        let (low, high) = (MassFraction::from_units(700 * MG), MassFraction::from_units(1_300 * MG));
        let more = milli(50_000);
        let deciseconds = 1 + chance.below(1_200) as u16;
        let sigma = |units: MassFraction| Sigma::from_one_sigma(units).expect("a sigma");
        let grown = |units: MassFraction| MassFraction::from_units(units.units() + more.units());
        if counting.units() == 0 {
            continue;
        }
        let timed = Timed { value, counting: sigma(counting), constant, deciseconds };
        let longer_ones = [
            Timed { counting: sigma(grown(counting)), ..timed },
            Timed { constant: grown(constant), ..timed },
            Timed { deciseconds: deciseconds + 1 + chance.below(600) as u16, ..timed },
        ];
        let ask = |timed| {
            [
                seconds(longer::for_band(timed, low, Some(high), Coverage::THREE, 3_600)),
                seconds(longer::for_limit(timed, high, Coverage::THREE, 3_600)),
            ]
        };
        let first = ask(timed);
        finite += u32::from(first[0].0 < u32::MAX);
        for other in longer_ones {
            for (before, after) in first.iter().zip(ask(other)) {
                assert!(
                    after.0 >= before.0 && after.1 >= before.1,
                    "{timed:?}: {before:?}; {other:?}: {after:?}"
                );
            }
        }
    }
    assert!(finite > 2_000, "{finite} had a time");
}

const CLAIM: &str = "category = 4\nplacing_date = 2026-12-01\nmouthing = \"cannot\"\n[[claim]]\npart = \"valve\"\nmaterial = \"body\"\nentry = \"6(c)\"\nsubstance = \"Pb\"\ngroup = \"copper\"\nevidence = \"EV-12, certificate of the bar\"\nby = \"CD\"\nsecond = \"AB\"\n";

/// Lines of what a person says, any of them left out.
#[test]
fn leaving_out_evidence_initials_or_a_date_never_accepts_a_claim() {
    let text = "Sample,Part,Material,Lot,Supplier,Class,Cd mg/kg,Cd u (1s),Pb mg/kg,Pb u (1s),Hg mg/kg,Hg u (1s),Cr mg/kg,Cr u (1s),Br mg/kg,Br u (1s)\n\
        S1,valve,body,D-7,Dogwood Works,metal,10,2,31000,200,10,2,10,2,10,2\n";
    let accepted = |settings: &str| {
        let inspection = inspect(settings, &[("lot.csv", text.as_bytes())]);
        review(&inspection).lots.iter().all(|lot| lot.disposition == Disposition::Accept)
    };
    let whole = format!("{ADVISORY}{CLAIM}");
    assert!(accepted(&whole), "with all of it the claim covers");
    let evidence = ["category", "placing_date", "mouthing", "evidence", "second"];
    for line in evidence {
        let without: Vec<&str> = whole.lines().filter(|one| !one.starts_with(line)).collect();
        assert!(!accepted(&(without.join("\n") + "\n")), "accepted without {line}");
    }
}

#[test]
fn the_readings_have_what_the_properties_speak_of() {
    let (mut pooled, mut limit, mut apart, mut sources) = (0, 0, 0, BTreeMap::new());
    for (_, one) in tries(100) {
        let reviewed = one.reviewed();
        let settings = reviewed.inspection.settings();
        let source = &reviewed.inspection.sources[0];
        let reviewer = SourceReview::new(source, &reviewed.inspection.books, &settings);
        for (group, rows) in reviewer.repeats().groups().iter().enumerate() {
            let (class, from) = reviewer.class(rows[0] as usize);
            assert!(source.readings.identity(Identity::Id, rows[0] as usize).is_some());
            let assessed = reviewer.assess_group(group, class, from);
            for at in 0..JUDGED.len() {
                match assessed.elements[at].how {
                    PooledHow::Pooled => pooled += 1,
                    PooledHow::LargestLimit => limit += 1,
                    PooledHow::Disagree => apart += 1,
                    PooledHow::Mixed => {}
                }
            }
        }
        for looked in reviewed.look() {
            for judged in looked.counted {
                *sources.entry(judged.outcome.code()).or_insert(0) += 1;
            }
        }
    }
    assert!(pooled > 100 && limit > 2 && apart > 20, "{pooled} pooled, {limit} limits, {apart} apart");
    assert!(sources.len() == 8, "{sources:?}");
}
