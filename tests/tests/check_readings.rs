//! Check readings against other people's scores, and the readings between them against a slow form of the bracket rule.

use std::collections::BTreeMap;
use std::fs;

use plumbline_core::inspection::{Findings, Inspection, review};
use plumbline_core::lot::Disposition;
use plumbline_core::reading::Identity;
use plumbline_core::trust::{CheckVerdict, Trust};
use plumbline_tests::chance::Chance;
use plumbline_tests::places::in_tests;
use plumbline_tests::program::{findings_json, inspect, with_words};
use serde_json::Value as Json;

const HEAD: &str = "Sample,Part,Material,Lot,Supplier,Class,Date,Instrument,Mode,Remark,Cd mg/kg,Cd u (1s),\
                    Pb mg/kg,Pb u (1s),Hg mg/kg,Hg u (1s),Cr mg/kg,Cr u (1s),Br mg/kg,Br u (1s)\n";
const SETTINGS: &str = "schema = \"plumbline.settings/1\"\nthickness_mm = 9\nsampling = \"advisory\"\nmaterials = \"advisory\"\n";
const SYMBOLS: [&str; 5] = ["Cd", "Pb", "Hg", "Cr", "Br"];

fn vectors() -> Json {
    let text = fs::read_to_string(in_tests("vectors/check_readings.json")).expect("the vectors");
    serde_json::from_str(&text).expect("JSON")
}

fn certificate(sample: &str, element: &str, value: f64, expanded: f64, k: f64) -> String {
    format!(
        "[[certificate]]\nsample = \"{sample}\"\nelement = \"{element}\"\nvalue = \"{value} mg/kg\"\n\
         u = \"{expanded} mg/kg\"\nk = \"{k}\"\nid = \"C-1\"\nclass = \"polymer\"\n"
    )
}

/// Source: numpy and scipy in the formulas of ISO 13528; the sixth case is a certified value of NMIJ CRM 8123-a (PVC,
/// cadmium 95.62 ± 1.39 mg/kg, k = 2).
#[test]
fn scores_are_those_of_numpy_and_scipy() {
    let vectors = vectors();
    let cases = vectors["bias_scores"].as_array().expect("cases");
    assert_eq!(cases.len(), 7);
    for case in cases {
        let number = |key: &str| case[key].as_f64().unwrap_or_else(|| panic!("{key} in {case}"));
        let expanded = (number("u_ref") * number("k") * 1e6).round() / 1e6;
        let said = certificate("CHK", "Pb", number("X_ref"), expanded, number("k"));
        let text =
            format!("Sample,Class,Pb mg/kg,Pb u (1s)\nCHK,polymer,{},{}\n", number("x"), number("u_x"));
        for (rule, failed) in [("zeta", case["zeta_state"] == "action"), ("en", case["E_n_ok"] == false)] {
            let settings = format!("{SETTINGS}check_rule = \"{rule}\"\n{said}");
            let findings = review(&inspect(&settings, &[("c.csv", text.as_bytes())]));
            let element = &findings.trust.checks[0].elements[0];
            let scores = element.scores.expect("scores");
            let near = |found: f64, wanted: f64| {
                assert!((found - wanted).abs() <= 1e-12 * wanted.abs(), "{found} for {wanted} in {case}");
            };
            near(scores.zeta, number("zeta"));
            near(scores.en, number("E_n"));
            near(scores.recovery_percent.expect("a recovery"), number("recovery_pct"));
            near(scores.bias.to_mg_per_kg(), (number("delta") * 1e6).round() / 1e6);
            let warns = case["zeta_state"] != "ok";
            let wanted = match (failed, warns) {
                (true, _) => CheckVerdict::Failed,
                (false, true) => CheckVerdict::Warning,
                (false, false) => CheckVerdict::Good,
            };
            assert_eq!(element.verdict, wanted, "{rule}: {case}");
        }
    }
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum State {
    Good,
    Bad,
    Open,
    Nothing,
}

/// One row of a file.
#[derive(Clone, Debug)]
struct Row {
    mark: usize,
    /// Minutes after six in the morning.
    minute: usize,
    instrument: &'static str,
    class: &'static str,
    what: What,
}

#[derive(Clone, Copy, Debug)]
enum What {
    Product,
    Standard(usize, [State; 5]),
    Blank([State; 5]),
}

#[derive(Clone, Debug)]
struct File {
    name: &'static str,
    timed: bool,
    rows: Vec<Row>,
}

#[derive(Clone, Debug)]
struct Day {
    files: Vec<File>,
    rule: &'static str,
    trust: &'static str,
}

const STANDARDS: [&str; 2] = ["CHK-1", "CHK-2"];

impl Row {
    fn text(&self, timed: bool) -> String {
        let time = if timed {
            format!("2026-11-17 {:02}:{:02}", 6 + self.minute / 60, self.minute % 60)
        } else {
            String::new()
        };
        let (id, lot, part) = match self.what {
            What::Product => (format!("S{}", self.mark), "L-1", "P-1"),
            What::Standard(at, _) => (STANDARDS[at].to_owned(), "", ""),
            What::Blank(_) => ("BLK".to_owned(), "", ""),
        };
        let (class, instrument, mark) = (self.class, self.instrument, self.mark);
        let supplier = if lot.is_empty() { "" } else { "Cedar Works" };
        let mut text = format!("{id},{part},,{lot},{supplier},{class},{time},{instrument},,no {mark}");
        for at in 0..5 {
            text += match self.what {
                What::Product => ",5,1",
                What::Standard(_, states) => match states[at] {
                    State::Good => ",1000,10",
                    State::Bad => ",900,10",
                    State::Open => ",1000,",
                    State::Nothing => ",,",
                },
                What::Blank(states) => match states[at] {
                    State::Good => ",< 3,",
                    State::Bad => ",9,1",
                    State::Open => ",9,",
                    State::Nothing => ",,",
                },
            };
        }
        text + "\n"
    }

    /// What it says of an element of a class; a standard with an empty cell could not be judged.
    fn says(&self, element: usize, class: &str) -> Option<(usize, State)> {
        let (sample, state) = match self.what {
            What::Standard(sample, states) if self.class == class => {
                (sample, if states[element] == State::Nothing { State::Open } else { states[element] })
            }
            What::Blank(states) => (9, states[element]),
            What::Product | What::Standard(..) => return None,
        };
        let nothing = state == State::Nothing || (sample == 9 && state == State::Open);
        (!nothing).then_some((sample, state))
    }
}

impl Day {
    fn settings(&self) -> String {
        let mut settings = format!(
            "{SETTINGS}trust = \"{}\"\nbracket = \"{}\"\nshift_starts = [\"00:00\", \"07:00\", \"08:00\"]\n\
             blank_samples = [\"BLK\"]\n",
            self.trust, self.rule
        );
        for (standard, element) in STANDARDS.iter().flat_map(|one| SYMBOLS.map(|element| (one, element))) {
            // No class: the reading's own.
            settings +=
                &certificate(standard, element, 1000.0, 20.0, 2.0).replace("class = \"polymer\"\n", "");
        }
        settings
    }

    fn inspection(&self) -> Inspection {
        let texts: Vec<(&str, String)> = self
            .files
            .iter()
            .map(|file| {
                let rows: String = file.rows.iter().map(|row| row.text(file.timed)).collect();
                (file.name, HEAD.to_owned() + &rows)
            })
            .collect();
        let files: Vec<(&str, &[u8])> = texts.iter().map(|(name, text)| (*name, text.as_bytes())).collect();
        inspect(&self.settings(), &files)
    }

    fn reviewed(&self) -> Seen {
        let inspection = self.inspection();
        let findings = review(&inspection);
        let mut of = BTreeMap::new();
        for index in 0..findings.verdicts.len() {
            let (source, row) = findings.place(index).expect("a place");
            let readings = &inspection.sources[source].readings;
            let name = readings.identity(Identity::Id, row).expect("an id").to_owned();
            if name.starts_with('S') {
                of.insert(name, findings.trust.of(index)[..5].try_into().expect("five"));
            }
        }
        Seen { disposition: findings.lots.iter().map(|lot| lot.disposition).max(), of, inspection, findings }
    }

    fn with(&self, change: impl FnOnce(&mut Day)) -> Day {
        let mut other = self.clone();
        change(&mut other);
        other
    }

    fn products(&self) -> impl Iterator<Item = (&File, &Row)> {
        let rows = self.files.iter().flat_map(|file| file.rows.iter().map(move |row| (file, row)));
        rows.filter(|(_, row)| matches!(row.what, What::Product))
    }
}

struct Seen {
    disposition: Option<Disposition>,
    /// By sample.
    of: BTreeMap<String, [Option<Trust>; 5]>,
    inspection: Inspection,
    findings: Findings,
}

/// The bracket rule as it is written down, by looking at every check for every reading.
fn slow(day: &Day, file: &File, product: &Row, element: usize) -> Trust {
    let place = |of: &File, row: usize| of.rows[row].minute;
    let mut events: Vec<(usize, &str, usize, &Row)> = Vec::new();
    for other in &day.files {
        let seen = if file.timed { other.timed } else { other.name == file.name };
        for (at, row) in other.rows.iter().enumerate().filter(|_| seen) {
            let says = row.says(element, product.class);
            // A failure of no named instrument may be any one's, and any one's failure that of a reading that names none.
            let unnamed = row.instrument.is_empty() || product.instrument.is_empty();
            let accuses = unnamed && says.is_some_and(|(_, state)| state == State::Bad);
            if says.is_some() && (row.instrument == product.instrument || accuses) {
                events.push((if file.timed { place(other, at) } else { at }, other.name, at, row));
            }
        }
    }
    events.sort_by_key(|(place, name, at, _)| (*place, *name, *at));
    let own = file.rows.iter().position(|row| row.mark == product.mark).expect("in its file");
    let here = if file.timed { product.minute } else { own };
    // Of one standard at the same minute in several files the worst reading speaks for all.
    let said = |(place, name, _, row): &(usize, &str, usize, &Row)| -> Option<(usize, State)> {
        let (sample, own) = row.says(element, product.class)?;
        let same = events.iter().filter(|(at, ..)| at == place);
        let same = same.filter_map(|(_, name, _, row)| Some((*name, row.says(element, product.class)?)));
        let same: Vec<(&str, State)> =
            same.filter(|(_, (of, _))| *of == sample).map(|(name, (_, state))| (name, state)).collect();
        let alone = same.iter().all(|(other, _)| other == name);
        let has = |wanted| same.iter().any(|(_, state)| *state == wanted);
        Some((
            sample,
            if alone {
                own
            } else if has(State::Bad) {
                State::Bad
            } else if has(State::Open) {
                State::Open
            } else {
                State::Good
            },
        ))
    };
    let states = |events: &mut dyn Iterator<Item = &(usize, &str, usize, &Row)>| {
        // From near to far; what could not be judged hides no failure behind it.
        let mut found: BTreeMap<usize, Vec<State>> = BTreeMap::new();
        for (sample, state) in events.filter_map(&said) {
            found.entry(sample).or_default().push(state);
        }
        let judged = |states: &Vec<State>| states.iter().copied().find(|state| *state != State::Open);
        let bad = found.values().any(|states| judged(states) == Some(State::Bad));
        let good = found.iter().any(|(sample, states)| *sample != 9 && states.first() == Some(&State::Good));
        (good, bad)
    };
    let covered = events.iter().any(|(.., row)| matches!(row.what, What::Standard(..)));
    let of = |good: bool, bad: bool| match (bad, good) {
        (true, _) => Trust::Failed,
        (false, true) => Trust::Ok,
        _ if covered => Trust::NotBracketed,
        _ => Trust::None,
    };
    if day.rule == "per_shift" {
        let shift = |minute: usize| (minute + 360) / 60;
        let mut same =
            events.iter().filter(|(place, ..)| !file.timed || shift(*place).min(8) == shift(here).min(8));
        let (mut good, mut bad) = (false, false);
        for (.., row) in same.by_ref() {
            if let Some((sample, state)) = row.says(element, product.class) {
                good |= state == State::Good && sample != 9;
                bad |= state == State::Bad;
            }
        }
        return of(good && file.timed, bad);
    }
    let first = events.iter().filter(|(place, ..)| *place < here).count();
    let last = events.iter().filter(|(place, ..)| *place <= here).count();
    let cuts = if events[first..last].iter().all(|(_, name, ..)| *name == file.name) {
        let before = events[first..last].iter().filter(|(_, _, at, _)| *at < own).count();
        vec![first + before]
    } else {
        (first..=last).collect()
    };
    let at = |cut: usize| {
        let before = states(&mut events[..cut].iter().rev());
        let after = states(&mut events[cut..].iter());
        if day.rule == "before" {
            of(before.0, before.1 || after.1)
        } else {
            of(before.0 && after.0, before.1 || after.1)
        }
    };
    cuts.into_iter().map(at).max().expect("a cut")
}

fn states(chance: &mut Chance) -> [State; 5] {
    let mostly = if chance.once_in(3) { 4 } else { 40 };
    std::array::from_fn(|_| {
        if chance.once_in(mostly) {
            *chance.pick(&[State::Bad, State::Bad, State::Open, State::Nothing])
        } else {
            State::Good
        }
    })
}

fn day(seed: u64) -> Day {
    let mut chance = Chance::new(seed);
    let mut mark = 0;
    let several = if chance.once_in(2) { 3 + chance.below(2) } else { 1 };
    let files = ["a.csv", "b.csv", "c.csv"][..=chance.below(3)]
        .iter()
        .map(|name| {
            let timed = !chance.once_in(3);
            // Within a file no two rows have the same time, so that their order in it says nothing more.
            let mut minutes: Vec<usize> = (0..180).collect();
            let rows = (0..4 + chance.below(12))
                .map(|_| {
                    mark += 1;
                    let what = match chance.below(8) {
                        0..=3 => What::Product,
                        4..=5 => What::Standard(0, states(&mut chance)),
                        6 => What::Standard(1, states(&mut chance)),
                        _ => What::Blank(states(&mut chance)),
                    };
                    Row {
                        mark,
                        minute: minutes.swap_remove(chance.below(minutes.len().min(40))),
                        instrument: ["X-1", "X-1", "X-2", ""][chance.below(several)],
                        class: ["polymer", "polymer", "metal"][chance.below(several.min(3))],
                        what,
                    }
                })
                .collect();
            File { name, timed, rows }
        })
        .collect();
    let rule = *chance.pick(&["before_and_after", "before_and_after", "before", "per_shift"]);
    Day { files, rule, trust: if chance.once_in(3) { "advisory" } else { "holding" } }
}

/// Days with at least one product reading and one check.
fn days(count: u64) -> impl Iterator<Item = (u64, Day)> {
    (0..count)
        .map(|seed| (seed, day(seed)))
        .filter(|(_, day)| day.products().next().is_some() && !checks(day).is_empty())
}

#[test]
fn brackets_are_those_of_the_published_timelines() {
    let vectors = vectors();
    let cases = vectors["brackets"].as_array().expect("cases");
    assert_eq!(cases.len(), 5);
    for (case, timed) in cases.iter().flat_map(|case| [(case, true), (case, false)]) {
        let events = case["events"].as_array().expect("events");
        let rows = events.iter().enumerate().map(|(at, event)| Row {
            mark: at,
            minute: at * 7,
            instrument: "",
            class: "polymer",
            what: match event.as_str().expect("an event") {
                "R" => What::Product,
                "C+" => What::Standard(0, [State::Good; 5]),
                "C-" => What::Standard(0, [State::Bad; 5]),
                other => panic!("{other}"),
            },
        });
        let files = vec![File { name: "a.csv", timed, rows: rows.collect() }];
        let seen = Day { files, rule: "before_and_after", trust: "holding" }.reviewed();
        for reading in case["readings"].as_array().expect("readings") {
            let wanted = match reading["status"].as_str().expect("a status") {
                "bracketed, in control" => Trust::Ok,
                "bracketed, check failed" => Trust::Failed,
                "not bracketed" => Trust::NotBracketed,
                other => panic!("{other}"),
            };
            assert_eq!(seen.of[&format!("S{}", reading["index"])], [Some(wanted); 5], "{case}");
        }
    }
}

#[test]
fn the_fast_form_of_the_bracket_rule_says_what_the_slow_one_says() {
    let mut counts = [0; 4];
    for (seed, day) in days(300) {
        let seen = day.reviewed();
        for (file, product) in day.products() {
            let found = seen.of[&format!("S{}", product.mark)];
            for (at, found) in found.into_iter().enumerate() {
                // Bromine doesn't apply to a metal.
                let wanted = (at != 4 || product.class != "metal").then(|| slow(&day, file, product, at));
                assert_eq!(found, wanted, "seed {seed}, S{} {}\n{day:?}", product.mark, SYMBOLS[at]);
                if let Some(trust) = wanted {
                    counts[trust as usize] += 1;
                }
            }
        }
    }
    assert!(counts.iter().all(|count| *count > 200), "{counts:?}");
}

fn never_better(before: &Seen, after: &Seen, about: &dyn Fn() -> String) {
    assert!(after.disposition >= before.disposition, "{}", about());
    // Without any check reading there is no trust to compare.
    let judged = !after.findings.trust.of_readings.is_empty();
    for (name, old) in before.of.iter().filter(|_| judged) {
        // No check at all, or none on one side, is alike: neither is trusted.
        let rank = |trust: &Option<Trust>| match trust {
            None | Some(Trust::Ok) => 0,
            Some(Trust::None | Trust::NotBracketed) => 1,
            Some(Trust::Failed) => 2,
        };
        for (old, new) in old.iter().zip(&after.of[name]) {
            assert!(rank(new) >= rank(old), "{name}: {old:?} became {new:?}: {}", about());
        }
    }
}

fn checks(day: &Day) -> Vec<(usize, usize)> {
    let files = day.files.iter().enumerate();
    let rows = files.flat_map(|(at, file)| (0..file.rows.len()).map(move |row| (at, row)));
    rows.filter(|(at, row)| !matches!(day.files[*at].rows[*row].what, What::Product)).collect()
}

/// A check that failed is another matter: without it nobody would know.
#[test]
fn without_a_good_check_nothing_is_better() {
    let mut worse = 0;
    for (seed, day) in days(100) {
        let before = day.reviewed();
        let good = |(at, row): &(usize, usize)| match day.files[*at].rows[*row].what {
            What::Product => false,
            What::Standard(_, states) | What::Blank(states) => {
                states.iter().all(|state| *state == State::Good)
            }
        };
        for (at, row) in checks(&day).into_iter().filter(good).take(4) {
            let after = day.with(|day| {
                day.files[at].rows.remove(row);
            });
            let after = after.reviewed();
            never_better(&before, &after, &|| format!("seed {seed}, without {at}:{row}\n{day:?}"));
            worse += u32::from(after.of != before.of);
        }
    }
    assert!(worse > 25, "{worse}");
}

#[test]
fn a_check_that_fails_or_cannot_be_judged_makes_nothing_better() {
    let mut worse = 0;
    for (seed, day) in days(100) {
        let before = day.reviewed();
        let mut chance = Chance::new(seed);
        for (at, row) in checks(&day).into_iter().take(4) {
            let element = chance.below(5);
            let after = day.with(|day| {
                let (What::Standard(_, states) | What::Blank(states)) = &mut day.files[at].rows[row].what
                else {
                    return;
                };
                states[element] = match states[element] {
                    State::Good => *chance.pick(&[State::Bad, State::Open, State::Nothing]),
                    _ => State::Bad,
                };
            });
            let after = after.reviewed();
            never_better(&before, &after, &|| format!("seed {seed}, {at}:{row} {element}\n{day:?}"));
            worse += u32::from(after.of != before.of);
        }
    }
    assert!(worse > 25, "{worse}");
}

#[test]
fn the_order_of_files_and_of_timed_rows_says_nothing() {
    let mut timed = 0;
    for (seed, day) in days(100) {
        let before = day.reviewed();
        let mut chance = Chance::new(seed);
        let after = day.with(|day| {
            day.files.reverse();
            for file in day.files.iter_mut().filter(|file| file.timed) {
                for at in (1..file.rows.len()).rev() {
                    file.rows.swap(at, chance.below(at + 1));
                }
                timed += 1;
            }
            let names: Vec<&'static str> = day.files.iter().map(|file| file.name).collect();
            for (file, name) in day.files.iter_mut().zip(names.iter().rev()) {
                file.name = name;
            }
        });
        let after = after.reviewed();
        assert_eq!(after.of, before.of, "seed {seed}\n{day:?}");
        assert_eq!(after.disposition, before.disposition, "seed {seed}");
    }
    assert!(timed > 60, "{timed}");
}

/// Without a certificate nothing is judged; an advisory setting then accepts what a judged check may hold.
#[test]
fn trust_changes_no_outcome_and_improves_no_disposition() {
    let mut held = 0;
    for (seed, day) in days(60) {
        let judged = day.reviewed();
        let mut blind = judged.inspection.clone();
        blind.acts.retain(|act| !matches!(act.kind.code(), "certificate" | "trust" | "blank_samples"));
        let more = inspect(
            "schema = \"plumbline.settings/1\"\ntrust = \"advisory\"\ncheck_samples = [\"CHK-1\", \"CHK-2\", \"BLK\"]\n",
            &[],
        );
        blind.acts.extend(more.acts);
        let unjudged = review(&blind);
        let outcomes = |findings: &Findings| -> Vec<_> {
            findings.verdicts.iter().map(|one| (one.substances, one.halogens)).collect()
        };
        assert_eq!(outcomes(&judged.findings), outcomes(&unjudged), "seed {seed}");
        let without = unjudged.lots.iter().map(|lot| lot.disposition).max();
        assert!(judged.disposition >= without, "seed {seed}\n{day:?}");
        held += u32::from(judged.disposition > without);
        let json: Json =
            serde_json::from_slice(&findings_json(&judged.inspection, &judged.findings)).expect("JSON");
        assert_eq!(json["checks"].as_array().map(Vec::len), Some(checks(&day).len()), "seed {seed}");
    }
    assert!(held > 12, "{held}");
}

/// Classes, each with a check standard of that name.
const CHECKED: [&str; 3] = ["polymer", "metal", "composite"];

/// A check reading or a product: sample, class, instrument, and which elements were measured.
struct Measured {
    check: bool,
    class: &'static str,
    instrument: &'static str,
    elements: [bool; 5],
}

fn some_measured(chance: &mut Chance) -> Vec<Measured> {
    let count = 2 + chance.below(9);
    // All readings of one standard measure the same elements, and these its certificate states.
    let of_checks: [[bool; 5]; 3] = std::array::from_fn(|_| std::array::from_fn(|_| !chance.once_in(4)));
    let one = |_| {
        let (check, class) = (chance.once_in(2), chance.below(3));
        let own = std::array::from_fn(|_| !chance.once_in(4));
        Measured {
            check,
            class: CHECKED[class],
            instrument: ["X-1", "X-2"][chance.below(2)],
            elements: if check { of_checks[class] } else { own },
        }
    };
    (0..count).map(one).collect()
}

/// What trust says of the lots: code, about, count.
fn said_of_lots(measured: &[Measured], certified: &[&str]) -> Vec<(String, String, u64)> {
    let mut text = HEAD.to_owned();
    let mut settings = format!("{SETTINGS}check_samples = {CHECKED:?}\n");
    for (at, one) in measured.iter().enumerate() {
        let (sample, part, lot) = if one.check { (one.class, "", "") } else { ("S", "P-1", "L-1") };
        text +=
            &[sample, part, "", lot, "", one.class, "", one.instrument, "", &format!("no {at}")].join(",");
        for measured in one.elements {
            text += if measured { ",100,2" } else { ",," };
        }
        text += "\n";
    }
    for sample in CHECKED.into_iter().filter(|sample| certified.contains(sample)) {
        let check = measured.iter().find(|one| one.check && one.class == sample);
        let measured = check.map_or([false; 5], |check| check.elements);
        for (element, _) in SYMBOLS.into_iter().zip(measured).filter(|(_, measured)| *measured) {
            settings += &certificate(sample, element, 100.0, 4.0, 2.0)
                .replace("class = \"polymer\"", &format!("class = \"{sample}\""));
        }
    }
    let findings = review(&inspect(&settings, &[("t.csv", text.as_bytes())]));
    let reasons = findings.lots.iter().flat_map(|lot| &lot.reasons);
    reasons
        .map(|reason| (reason.code.code().to_owned(), reason.about.clone(), reason.count))
        .filter(|(code, ..)| code.starts_with("trust_"))
        .collect()
}

/// What asks for another check is not helped by any certificate, and what asks for a certificate is.
#[test]
fn a_certificate_is_asked_for_exactly_where_it_helps() {
    let mut seen = BTreeMap::new();
    for seed in 0..400 {
        let measured = some_measured(&mut Chance::new(seed));
        let some: &[&str] = if seed % 2 == 0 { &[] } else { &["metal"] };
        let (before, after) = (said_of_lots(&measured, some), said_of_lots(&measured, &CHECKED));
        let none = |said: &[(String, String, u64)]| -> Vec<(String, u64)> {
            let of_none = said.iter().filter(|(code, ..)| code == "trust_none");
            of_none.map(|(_, about, count)| (about.clone(), *count)).collect()
        };
        assert_eq!(none(&before), none(&after), "{seed}: {before:?} {after:?}");
        let asks = |code: &str| ["trust_not_judged", "trust_not_certified"].contains(&code);
        assert!(after.iter().all(|(code, ..)| !asks(code)), "{seed}: {after:?}");
        for (code, ..) in before {
            *seen.entry(code).or_insert(0) += 1;
        }
    }
    for code in ["trust_none", "trust_not_judged", "trust_not_certified"] {
        assert!(seen[code] > 50, "{seen:?}");
    }
}

/// Words that ask for a measurement ask for nothing else.
#[test]
fn where_no_check_fits_no_word_is_about_a_certificate() {
    let said = |id: &str| with_words(|words| words.say(id));
    for id in ["lot-reason-trust_none", "lot-reason-trust_none.nothing", "lot-reason-trust_none.remedy"] {
        assert!(!said(id).to_lowercase().contains("certif"), "{id}: {}", said(id));
    }
    assert!(said("lot-reason-trust_none.remedy").starts_with("Measure a check standard of the same class"));
    assert!(said("lot-reason-trust_not_certified.expired_remedy").starts_with("Give a certificate"));
    assert!(said("lot-reason-trust_not_certified.remedy").starts_with("State the certified value"));
}
