//! Thousands of changed reports: each change is seen, and the place that is named is where it was made.
//!
//! `TAMPER_EDITS=20000` makes more of them, `TAMPER_SEED=7` others.

use std::collections::BTreeMap;
use std::fmt::Write as _;
use std::ops::Range;

use plumbline_core::acts::{Act, ActKind, Target};
use plumbline_core::photo::{Photo, Picture};
use plumbline_core::reading::sha256_hexadecimal;
use plumbline_core::report::evidence::{CLOSES, OPENS, check_of};
use plumbline_core::report::{Length, PROGRAM, Program};
use plumbline_proof::{Part, PartKind, Place, PlaceKind, Proof, Prover, Verdict, said};
use plumbline_tests::chance::Chance;
use plumbline_tests::delivery::{delivery, english, report_of};
use plumbline_tests::program::{inspect, with_words};

/// Deliveries with much in them: lots held and not accepted, checks, charts, exemptions, plans, a history.
const DELIVERIES: [&str; 6] = [
    "02-red-cable",
    "05-pvc-hose",
    "07-check-standard",
    "09-thin-sample-plan",
    "11-plated-screws",
    "15-changed-compound",
];

/// A change: this range of the report becomes these bytes.
#[derive(Debug)]
struct Edit {
    what: &'static str,
    at: Range<usize>,
    becomes: Vec<u8>,
    /// Pieces of the report were taken out, put in or exchanged: where many are alike, any of them may be named.
    moves: bool,
}

/// The report as this test sees it: nothing here is the program's own reading of it.
struct Map {
    report: Vec<u8>,
    /// Where each section begins, with its heading.
    sections: Vec<(usize, String)>,
    style: Range<usize>,
    evidence: Range<usize>,
    /// Where each record of the evidence begins, with its kind.
    records: Vec<(usize, String)>,
}

fn positions(text: &[u8], wanted: &[u8]) -> Vec<usize> {
    memchr::memmem::find_iter(text, wanted).collect()
}

fn after(text: &[u8], at: usize, wanted: &[u8]) -> usize {
    at + memchr::memmem::find(&text[at..], wanted).unwrap_or_else(|| panic!("no {wanted:?}")) + wanted.len()
}

fn unescaped(text: &str) -> String {
    text.replace("&lt;", "<").replace("&gt;", ">").replace("&quot;", "\"").replace("&amp;", "&")
}

impl Map {
    fn of(report: Vec<u8>) -> Map {
        let sections = positions(&report, b"<h2>")
            .into_iter()
            .map(|at| {
                let end = after(&report, at, b"</h2>");
                let heading = String::from_utf8(report[at + 4..end - 5].to_vec()).expect("UTF-8");
                // A heading belongs to its own section, and so do the tags right before it.
                (at, unescaped(&heading))
            })
            .collect();
        let style = positions(&report, b"<style>")[0];
        let style = style..after(&report, style, b"</style>");
        let script = positions(&report, b"<script")[0];
        let start = after(&report, script, b"\n");
        let evidence = start..after(&report, start, b"</script>") - b"</script>".len();
        let mut records = Vec::new();
        let mut at = after(&report, start, b"\n");
        while at < evidence.end {
            let end = after(&report, at, b"\n");
            if report[at] != b' ' {
                let line = String::from_utf8_lossy(&report[at..end]).into_owned();
                records.push((at, line.split('\t').next().expect("a kind").to_owned()));
            }
            at = end;
        }
        Map { report, sections, style, evidence, records }
    }

    fn section_at(&self, at: usize) -> &str {
        let found = self.sections.iter().rev().find(|(start, _)| *start <= at);
        found.map_or("", |(_, heading)| heading)
    }

    fn record_at(&self, at: usize) -> Option<&str> {
        let found = self.records.iter().rev().find(|(start, _)| *start <= at);
        found.map(|(_, kind)| kind.as_str())
    }

    fn body(&self) -> Range<usize> {
        after(&self.report, 0, b"<main>")..after(&self.report, 0, b"</main>") - b"</main>".len()
    }

    /// Places of text a reader sees that a predicate likes.
    fn text_bytes(&self, likes: impl Fn(u8) -> bool) -> Vec<usize> {
        let (body, mut inside, mut found) = (self.body(), false, Vec::new());
        for at in body {
            match self.report[at] {
                b'<' => inside = true,
                b'>' => inside = false,
                byte if !inside && likes(byte) => found.push(at),
                _ => {}
            }
        }
        found
    }

    /// Whole elements without an element of the same name inside.
    fn elements(&self, name: &str) -> Vec<Range<usize>> {
        let (body, open) = (self.body(), format!("<{name}"));
        let close = format!("</{name}>");
        positions(&self.report[..body.end], open.as_bytes())
            .into_iter()
            .filter(|at| *at >= body.start && matches!(self.report[at + open.len()], b'>' | b' '))
            .map(|at| at..after(&self.report, at, close.as_bytes()))
            .collect()
    }

    fn records_as_ranges(&self) -> Vec<Range<usize>> {
        let ends = self.records.iter().skip(1).map(|(at, _)| *at).chain([self.evidence.end]);
        self.records.iter().zip(ends).map(|((start, _), end)| *start..end).collect()
    }
}

fn byte(what: &'static str, at: usize, becomes: u8) -> Edit {
    Edit { what, at: at..at + 1, becomes: vec![becomes], moves: false }
}

fn put(what: &'static str, at: usize, becomes: &[u8]) -> Edit {
    Edit { what, at: at..at, becomes: becomes.to_vec(), moves: false }
}

fn other_digit(digit: u8, chance: &mut Chance) -> u8 {
    b'0' + (digit - b'0' + 1 + chance.below(9) as u8) % 10
}

/// Takes two different pieces of a list and puts each in the other's place.
fn swapped(what: &'static str, map: &Map, list: &[Range<usize>], chance: &mut Chance) -> Option<Edit> {
    let (one, other) = (chance.pick(list).clone(), chance.pick(list).clone());
    let (first, second) = if one.start < other.start { (one, other) } else { (other, one) };
    let text = |range: &Range<usize>| map.report[range.clone()].to_vec();
    if text(&first) == text(&second) || first.end > second.start {
        return None;
    }
    let becomes = [text(&second), text(&(first.end..second.start)), text(&first)].concat();
    Some(Edit { what, at: first.start..second.end, becomes, moves: true })
}

/// The kinds of change; each gives one, or nothing where the report has no place for it.
fn edit(kind: usize, map: &Map, chance: &mut Chance) -> Option<Edit> {
    let report = &map.report;
    let list = |found: Vec<Range<usize>>| if found.is_empty() { None } else { Some(found) };
    let some = |found: Vec<usize>| if found.is_empty() { None } else { Some(found) };
    match kind {
        0 => {
            let at = *chance.pick(&map.text_bytes(|byte| byte.is_ascii_digit()));
            Some(byte("a digit", at, other_digit(report[at], chance)))
        }
        1 => {
            let at = *chance.pick(&some(
                [positions(report, b"<span class=\"o o-"), positions(report, b"<span class=\"d d-")].concat(),
            )?);
            let start = after(report, at, b">");
            let end = after(report, start, b"<") - 1;
            let words = ["BL", "OL", "X", "accept", "hold", "not accept", "below limit"];
            let word = *chance.pick(&words);
            (&report[start..end] != word.as_bytes()).then(|| Edit {
                what: "a verdict",
                at: start..end,
                becomes: word.into(),
                moves: false,
            })
        }
        2 => {
            // The digits of month and day behind the year.
            let year = *chance.pick(&some(positions(&report[..map.evidence.start], b"2026-"))?);
            let at = year + chance.pick(&[5, 6, 8, 9]);
            report[at].is_ascii_digit().then(|| byte("a date", at, other_digit(report[at], chance)))
        }
        3 => {
            let digits = map.text_bytes(|byte| byte.is_ascii_hexdigit());
            let run =
                |at: &usize| report[*at..at + 64.min(report.len() - at)].iter().all(u8::is_ascii_hexdigit);
            let starts: Vec<usize> = digits.into_iter().filter(run).collect();
            let at = chance.pick(&some(starts)?) + chance.below(64);
            let other = if report[at] == b'7' { b'8' } else { b'7' };
            Some(byte("a digest", at, other))
        }
        4 => {
            let lines = positions(&report[map.evidence.clone()], b"\n ");
            let line = map.evidence.start + chance.pick(&lines) + 2;
            let end = after(report, line, b"\n") - 1;
            let at = line + chance.below(end - line);
            let letters = b"ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
            let other = *chance.pick(letters);
            (other != report[at]).then(|| byte("embedded data", at, other))
        }
        5 => {
            let start = *chance.pick(&map.records.iter().map(|(at, _)| *at).collect::<Vec<_>>());
            let end = after(report, start, b"\n") - 1;
            let at = start + chance.below(end - start);
            let other = b' ' + chance.below(95) as u8;
            (other != report[at]).then(|| byte("a record", at, other))
        }
        6 => {
            let tags = positions(&report[..map.evidence.start], b"<");
            let start = *chance.pick(&tags);
            let end = after(report, start, b">");
            let at = start + chance.below(end - start);
            let other = b' ' + chance.below(95) as u8;
            (other != report[at]).then(|| byte("a tag", at, other))
        }
        7 => {
            let at = map.style.start + chance.below(map.style.len());
            let other = b' ' + chance.below(95) as u8;
            (other != report[at]).then(|| byte("the style", at, other))
        }
        8 => {
            let places = positions(&report[map.body()], b"<");
            let at = map.body().start + chance.pick(&places);
            let active = [
                "<script>alert(1)</script>",
                "<img src=\"https://example.invalid/x.png\">",
                "<iframe src=\"data:text/html,x\"></iframe>",
                "<p onclick=\"alert(1)\">click</p>",
                "<style>.o-OL{display:none}</style>",
                "<a href=\"https://example.invalid/\">x</a>",
            ];
            Some(put("something active", at, chance.pick(&active).as_bytes()))
        }
        9 => {
            let at = chance.pick(&map.elements("tr")).clone();
            Some(Edit { what: "a row taken out", at, becomes: Vec::new(), moves: true })
        }
        10 => {
            let row = chance.pick(&map.elements("tr")).clone();
            Some(Edit { moves: true, ..put("a row twice", row.end, &report[row.clone()]) })
        }
        11 => swapped("two rows exchanged", map, &map.elements("tr"), chance),
        12 => {
            let row = chance.pick(&map.elements("tr")).clone();
            let cells: Vec<Range<usize>> =
                map.elements("td").into_iter().filter(|cell| row.contains(&cell.start)).collect();
            swapped("two cells exchanged", map, &list(cells)?, chance)
        }
        13 => {
            let name = *chance.pick(&["p", "li", "dd", "h2", "h3", "caption", "svg", "section"]);
            let at = chance.pick(&list(map.elements(name))?).clone();
            Some(Edit { what: "an element taken out", at, becomes: Vec::new(), moves: true })
        }
        14 => {
            let at = chance.below(report.len());
            let other = chance.below(256) as u8;
            (other != report[at] && other != b'\r').then(|| byte("any byte", at, other))
        }
        15 => {
            let at = chance.below(report.len());
            let end = (at + 1 + chance.below(200)).min(report.len());
            Some(Edit { what: "a few bytes taken out", at: at..end, becomes: Vec::new(), moves: true })
        }
        16 => {
            let other = 33 + chance.below(90) as u8;
            Some(Edit { moves: true, ..put("a byte put in", chance.below(report.len()), &[other]) })
        }
        17 => {
            let at = chance.pick(&map.records_as_ranges()).clone();
            Some(Edit { what: "a record taken out", at, becomes: Vec::new(), moves: true })
        }
        18 => {
            let record = chance.pick(&map.records_as_ranges()).clone();
            Some(Edit { moves: true, ..put("a record twice", record.end, &report[record.clone()]) })
        }
        19 => swapped("two records exchanged", map, &map.records_as_ranges(), chance),
        _ => {
            let at = *chance.pick(&map.text_bytes(|byte| byte.is_ascii_alphabetic()));
            let other = report[at] ^ 0x20;
            Some(byte("a letter", at, other))
        }
    }
}

const KINDS: usize = 21;

/// What a person would look for: in a table with a heading for each column, the heading over the changed cell and the first
/// cell of its row.
fn cell_at(map: &Map, at: usize) -> Option<(String, String)> {
    let text = &map.report;
    let row = map.elements("tr").into_iter().find(|row| row.contains(&at))?;
    let table = map.elements("table").into_iter().find(|table| table.contains(&at))?;
    let head = positions(&text[table.clone()], b"<thead>");
    let [head] = head[..] else { return None };
    let head = table.start + head..after(text, table.start + head, b"</thead>");
    let cells = |range: &Range<usize>, name: &str| -> Vec<Range<usize>> {
        map.elements(name).into_iter().filter(|cell| range.contains(&cell.start)).collect()
    };
    let (heads, own) = (cells(&head, "th"), cells(&row, "td"));
    let wide = |range: &Range<usize>| memchr::memmem::find(&text[range.clone()], b"colspan").is_some();
    if head.contains(&at) || wide(&row) || wide(&head) || heads.len() != own.len() {
        return None;
    }
    let column = own.iter().position(|cell| cell.contains(&at))?;
    let said = |range: &Range<usize>| {
        let mut text = String::from_utf8_lossy(&text[range.clone()]).into_owned();
        while let (Some(open), Some(close)) = (text.find('<'), text.find('>')) {
            text.replace_range(open..=close, if text[open..].starts_with("<br>") { " " } else { "" });
        }
        unescaped(text.trim())
    };
    Some((said(&heads[column]), said(&own[0])))
}

/// Changes of a text that no tag is touched by: one place, and in a table its row and column.
const IN_TEXT: [&str; 5] = ["a digit", "a verdict", "a date", "a digest", "a letter"];

/// Why the one place of a changed text is not exactly it.
fn inexact(map: &Map, edit: &Edit, proof: &Proof) -> Option<String> {
    if !IN_TEXT.contains(&edit.what) || !map.body().contains(&edit.at.start) {
        return None;
    }
    let [place] = proof.places.list.as_slice() else {
        return Some(format!("{} places", proof.places.list.len()));
    };
    if place.kind != PlaceKind::Text || place.says == place.gives {
        return Some(format!("a place of kind {}", place.kind.code()));
    }
    let (column, row) = cell_at(map, edit.at.start)?;
    let own: String = row.chars().take(20).collect();
    let right = place.column == column && place.row.contains(&own);
    (!right).then(|| {
        format!("wanted column {column:?} and row {row:?}, named {:?} and {:?}", place.column, place.row)
    })
}

fn applied(map: &Map, edit: &Edit) -> Vec<u8> {
    [&map.report[..edit.at.start], &edit.becomes, &map.report[edit.at.end..]].concat()
}

/// Why the places that were named don't cover the edit; nothing where they do.
fn uncovered(map: &Map, edit: &Edit, proof: &Proof) -> Option<String> {
    if proof.verdict == Verdict::EvidenceMissing {
        // Only what takes tag and first line away hides the evidence.
        let hidden = edit.at.start < map.evidence.start && edit.at.end > map.evidence.start;
        return (!hidden).then(|| "the evidence is called missing".to_owned());
    }
    if proof.verdict != Verdict::Differs {
        return Some(format!("called {}", proof.verdict.code()));
    }
    let touched = edit.at.start..edit.at.start + edit.becomes.len();
    let touches = |place: &Place| place.bytes.start <= touched.end && touched.start <= place.bytes.end;
    let list = &proof.places.list;
    if map.evidence.contains(&edit.at.start) {
        // In the evidence: the part of the record, or a neighbour where records were moved.
        let kinds: Vec<Option<&str>> =
            [edit.at.start, edit.at.end.max(1) - 1, edit.at.end].map(|at| map.record_at(at)).to_vec();
        let named = |part: &Part| {
            let kind = part.kind;
            matches!(kind, PartKind::Frame | PartKind::Unknown | PartKind::End)
                || kinds.contains(&Some(kind.code()))
        };
        let covers = |place: &Place| place.part.as_ref().is_some_and(named) && (edit.moves || touches(place));
        return (!list.iter().any(covers)).then(|| format!("no place in {kinds:?}"));
    }
    if edit.at.end > map.evidence.start.saturating_sub(60) {
        // The tags around the evidence, and what follows it.
        return (!list.iter().any(|place| touches(place) || place.part.is_some()))
            .then(|| "the frame is not named".to_owned());
    }
    if map.style.contains(&edit.at.start) && map.style.contains(&edit.at.end) {
        let covers =
            |place: &Place| place.section.is_empty() && (touches(place) || place.kind == PlaceKind::Style);
        return (!list.iter().any(covers)).then(|| "the style is not named".to_owned());
    }
    // In the text: a section that the edit reaches into, or the one right before it, since what stands between two may be
    // counted to either; and the very bytes, where nothing was moved.
    let sections: Vec<&str> = [edit.at.start, edit.at.start.saturating_sub(40), edit.at.end.max(1) - 1]
        .map(|at| map.section_at(at))
        .to_vec();
    let covers = |place: &Place| {
        place.part.is_none() && sections.contains(&place.section.as_str()) && (edit.moves || touches(place))
    };
    (!list.iter().any(covers)).then(|| format!("no place in {sections:?}"))
}

#[test]
fn every_change_of_a_report_is_seen_and_named_where_it_was_made() {
    let number =
        |name: &str, or: u64| std::env::var(name).ok().and_then(|text| text.parse().ok()).unwrap_or(or);
    let edits = number("TAMPER_EDITS", 4000) as usize;
    let mut chance = Chance::new(number("TAMPER_SEED", 2026));
    let (mut made, mut exact, mut wrong) = (BTreeMap::new(), BTreeMap::new(), Vec::new());
    let lengths: Vec<(&str, Length)> =
        DELIVERIES.iter().flat_map(|name| Length::ALL.iter().map(move |length| (*name, *length))).collect();
    let each = edits.div_ceil(lengths.len());
    for (name, length) in lengths {
        let map = Map::of(delivery(name).report(length));
        let mut prover = Prover::new(&english);
        assert_eq!(prover.prove(&map.report, &[], None).verdict, Verdict::Agrees, "{name}");
        let mut at = 0;
        while at < each {
            let Some(edit) = edit(at % KINDS, &map, &mut chance) else {
                at += usize::from(chance.once_in(3));
                continue;
            };
            at += 1;
            let altered = applied(&map, &edit);
            if altered == map.report {
                continue;
            }
            *made.entry(edit.what).or_insert(0_usize) += 1;
            let proof = prover.prove(&altered, &[], None);
            if let Some(why) = uncovered(&map, &edit, &proof).or_else(|| inexact(&map, &edit, &proof)) {
                let was = String::from_utf8_lossy(&map.report[edit.at.clone()])
                    .chars()
                    .take(120)
                    .collect::<String>();
                let is = String::from_utf8_lossy(&edit.becomes).chars().take(120).collect::<String>();
                let said = with_words(|words| said::places(words, &proof).join("\n    "));
                let places: Vec<_> =
                    proof.places.list.iter().map(|place| (place.kind.code(), place.bytes.clone())).collect();
                wrong.push(format!(
                    "{name} {}: {} at {:?} ({was:?} -> {is:?}): {why}\n    {said}\n    {places:?}",
                    length.code(),
                    edit.what,
                    edit.at
                ));
            }
            *exact.entry(cell_at(&map, edit.at.start).is_some()).or_insert(0_usize) +=
                usize::from(IN_TEXT.contains(&edit.what));
        }
    }
    println!("{made:#?} {exact:?}");
    assert!(wrong.is_empty(), "{} of {edits}:\n{}", wrong.len(), wrong[..wrong.len().min(25)].join("\n"));
    assert_eq!(made.len(), KINDS, "every kind of change was made");
    assert!(made.values().sum::<usize>() >= 3000, "{made:?}");
    assert!(exact.get(&true).is_some_and(|cells| *cells > 100), "cells of tables were changed: {exact:?}");
}

// ---- pictures ----

/// A PNG by its parts; what it shows does not matter here.
fn png(shade: u8) -> Vec<u8> {
    let chunk = |name: &[u8], body: &[u8]| {
        [&u32::try_from(body.len()).expect("short").to_be_bytes()[..], name, body, b"sum."].concat()
    };
    let head = [&400_u32.to_be_bytes()[..], &300_u32.to_be_bytes(), &[8, 0, 0, 0, 0]].concat();
    let parts = [chunk(b"IHDR", &head), chunk(b"IDAT", &[shade; 7]), chunk(b"IEND", b"")].concat();
    [b"\x89PNG\r\n\x1A\n", &parts[..]].concat()
}

/// A report with two photographs of these shades.
fn with_photos(shades: [u8; 2]) -> String {
    let table = "Sample,Lot,Part,Material,Class,Pb mg/kg,Pb u (1s)\nA-1,L-1,P-1,sheath,polymer,5400,40\nA-2,L-1,P-1,core,metal,20,4\n";
    let mut inspection = inspect("", &[("results.csv", table.as_bytes())]);
    for (at, (name, shade)) in ["A-1.png", "A-2.png"].into_iter().zip(shades).enumerate() {
        inspection.add_photo(Photo::of_file(name, &png(shade)));
        inspection.acts.push(Act {
            kind: ActKind::Photo,
            target: Target::Reading("results.csv".into(), at as u32 + 2),
            value: format!("file={name};x=250;y=500"),
            by: "AB".into(),
            at: String::new(),
            note: String::new(),
        });
    }
    String::from_utf8(report_of(&inspection, Length::Full)).expect("UTF-8")
}

/// The addresses of the pictures that stand in it.
fn addresses(report: &str) -> Vec<&str> {
    report.split("<img src=\"").skip(1).filter_map(|rest| rest.split('"').next()).collect()
}

/// The digest of the copy that is printed of a picture.
fn digest_of_copy(picture: &[u8]) -> String {
    let Ok(Picture { print, .. }) = Photo::of_file("x.png", picture).picture else { panic!("a picture") };
    print.sha256
}

/// What is carried made to fit an altered text: its digest, and every check that rests on it.
fn sealed(report: &str) -> String {
    let (above, rest) = report.split_once(OPENS).expect("what it carries");
    let (lines, below) = rest.split_once(CLOSES).expect("its end");
    let mut out = String::new();
    for line in lines.lines() {
        let fields = line.rsplit_once('\t').map_or("", |(fields, _)| fields);
        let fields = match line.split('\t').next() {
            Some("report") => {
                let kept = fields.rsplit_once('\t').expect("the digest of the text").0;
                format!("{kept}\t{}", sha256_hexadecimal(above.as_bytes()))
            }
            Some("end") => {
                let kept = fields.rsplit_once('\t').expect("the digest of the lines").0;
                format!("{kept}\t{}", sha256_hexadecimal(out.as_bytes()))
            }
            _ => {
                out.push_str(line);
                out.push('\n');
                continue;
            }
        };
        writeln!(out, "{fields}\t{}", check_of(&fields, "")).expect("a text takes every text");
    }
    format!("{above}{OPENS}{out}{CLOSES}{below}")
}

/// Where another picture stands, what it is, and what belongs there.
fn pictures_named(proof: &Proof) -> Vec<(&str, &str, &str)> {
    let of_kind = proof.places.list.iter().filter(|place| place.kind == PlaceKind::Picture);
    of_kind.map(|place| (place.row.as_str(), place.says.as_str(), place.gives.as_str())).collect()
}

const LATER: Program = Program { name: PROGRAM.name, version: "999.0.0" };

#[test]
fn a_picture_exchanged_beside_its_true_digest_is_named_by_what_it_is() {
    let report = with_photos([0, 1]);
    let [first, second] = addresses(&report)[..] else { panic!("two pictures") };
    let of_first = digest_of_copy(&png(0));
    assert!(report.contains(&of_first), "its digest stands beside it");
    let of_other = digest_of_copy(&png(9));
    let foreign = report.replacen(first, addresses(&with_photos([9, 1]))[0], 1);
    let swapped =
        report.replacen(first, "<first>", 1).replacen(second, first, 1).replacen("<first>", second, 1);
    assert_ne!(swapped, report);

    for (version, names_itself) in [(PROGRAM, true), (LATER, false)] {
        let mut prover = Prover::new(&english).as_program(version);
        let agrees = prover.prove(report.as_bytes(), &[], None);
        assert!(agrees.nothing_differs() && agrees.holds() == names_itself);
        assert!(prover.prove(sealed(&report).as_bytes(), &[], None).nothing_differs(), "sealed as it was");
        // Even where whoever exchanged it made everything fit that rests on the text.
        for altered in [foreign.clone(), sealed(&foreign)] {
            let proof = prover.prove(altered.as_bytes(), &[], None);
            assert_eq!(proof.verdict, Verdict::Differs);
            let named = pictures_named(&proof);
            let [(row, says, gives)] = named[..] else { panic!("{named:?}") };
            assert!(row.starts_with("A-1"), "{row}");
            assert_eq!((says, gives), (of_other.as_str(), of_first.as_str()));
            let said = with_words(|words| said::places(words, &proof));
            assert!(said.iter().any(|line| line.contains(&of_other) && line.contains(&of_first)), "{said:?}");
            assert!(proof.places.list.iter().any(|place| place.section == "Photographs"), "{said:?}");
        }
        // Both belong to the report, each in the place of the other.
        let proof = prover.prove(sealed(&swapped).as_bytes(), &[], None);
        let named = pictures_named(&proof);
        assert_eq!(named.len(), 2, "{named:?}");
        assert_eq!(named[0].1, named[1].2);
        assert_eq!(named[0].2, named[1].1);
    }
}

#[test]
fn a_picture_that_would_be_fetched_is_named_as_active() {
    let report = with_photos([0, 1]);
    let [first, _] = addresses(&report)[..] else { panic!("two pictures") };
    let altered = sealed(&report.replacen(first, "https://example.invalid/x.png", 1));
    for version in [PROGRAM, LATER] {
        let proof = Prover::new(&english).as_program(version).prove(altered.as_bytes(), &[], None);
        let active: Vec<&Place> =
            proof.places.list.iter().filter(|place| place.kind == PlaceKind::Active).collect();
        assert_eq!(active.len(), 1, "{:?}", proof.places.list);
        assert!(active[0].says.contains("example.invalid"));
    }
}

#[test]
fn a_strip_that_is_moved_or_says_other_edges_is_named_in_its_cell() {
    let report = String::from_utf8(delivery("05-pvc-hose").report(Length::Annex)).expect("UTF-8");
    let strip = report.find("<svg class=\"s\" viewBox=\"0 0 166 30\" role").expect("a strip");
    let inside = |wanted: &str| strip + report[strip..].find(wanted).expect("a part of it") + wanted.len();
    for (at, kind) in
        [(inside("<title>Undecided from "), PlaceKind::Text), (inside("<path d=\"M"), PlaceKind::Markup)]
    {
        let mut altered = report.clone().into_bytes();
        altered[at] = if altered[at] == b'9' { b'8' } else { b'9' };
        let proof = Prover::new(&english).prove(&altered, &[], None);
        assert_eq!(proof.verdict, Verdict::Differs);
        let [place] = &proof.places.list[..] else { panic!("{:?}", proof.places.list) };
        assert_eq!((place.kind, place.column.as_str()), (kind, "Cd"), "{place:?}");
        assert!(place.bytes.contains(&at), "{place:?}");
    }
}
