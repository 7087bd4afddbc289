//! What the page shows of how a table was understood, and what it needs to offer another meaning.

use std::collections::BTreeSet;

use plumbline_core::acts::Target;
use plumbline_core::data_file::{self, Written, WrittenTable};
use plumbline_core::id_template::{self, IdTemplate};
use plumbline_core::inspection::Inspection;
use plumbline_core::quantity::{DecimalMark, Rounding, SigmaMultiple, Unit};
use plumbline_core::reading::{
    Block, ColumnMeaning, Identity, Layout, RawRow, Source, StatedUse, TEXT_ENCODINGS,
};
use plumbline_core::settings_file;
use plumbline_core::substance::Element;
use plumbline_core::words::Words;
use plumbline_intake::cell::{self, CellText, Marks};
use serde::Serialize;

use crate::views::ActInput;

/// Kinds of table that are shown for one file; a file with more repeats itself.
const BLOCKS_SHOWN: usize = 40;
/// Lines that are named of headings that repeat themselves.
const LINES_SHOWN: usize = 12;
/// Texts of a column that stand for the rest of it.
const EXAMPLES: usize = 6;
/// Tables by their headings that a browser remembers; the oldest go first.
const HEADERS_KEPT: usize = 200;
/// Oxides that laboratories state: of the elements the limits speak of, then the major ones of a rock or glass analysis
/// (common practice, no source). Any other that a heading names is understood too.
const OXIDES: [&str; 16] = [
    "PbO", "CdO", "HgO", "Cr2O3", "CrO3", "SiO2", "Al2O3", "Fe2O3", "CaO", "MgO", "Na2O", "K2O", "TiO2",
    "P2O5", "ZnO", "Sb2O3",
];

#[derive(Serialize)]
pub(crate) struct ContainerView {
    name: String,
    sha256: String,
    bytes: f64,
}

#[derive(Serialize)]
pub(crate) struct SheetView {
    name: String,
    hidden: bool,
    rows: u32,
    columns: u32,
    element_columns: u32,
    read: bool,
    passed_over: bool,
}

#[derive(Serialize)]
pub(crate) struct StatedView {
    line: u32,
    key: String,
    value: String,
    used_as: Option<&'static str>,
    used_text: String,
}

#[derive(Serialize)]
pub(crate) struct ColumnView {
    column: u32,
    heading: String,
    role: &'static str,
    role_text: String,
    role_words: String,
    element: Option<&'static str>,
    oxide: Option<String>,
    unit: Option<&'static str>,
    relative: bool,
    sigma_multiple: Option<String>,
    confidence: &'static str,
    confidence_text: String,
    evidence: &'static str,
    why: String,
}

#[derive(Serialize)]
pub(crate) struct BlockView {
    index: usize,
    headers: usize,
    header_lines: Vec<u32>,
    fingerprint: String,
    layout: &'static str,
    layout_text: String,
    set_unit: Option<&'static str>,
    stated_multiple: Option<String>,
    decimal_mark: Option<&'static str>,
    columns: Vec<ColumnView>,
}

#[derive(Serialize)]
pub(crate) struct PreviewRow {
    line: Option<u32>,
    cells: Vec<String>,
}

#[derive(Serialize)]
pub(crate) struct CellsView {
    numbers: u32,
    lowest: String,
    highest: String,
    unclear: Vec<String>,
    examples: Vec<String>,
}

#[derive(Serialize)]
pub(crate) struct PreviewView {
    rows: Vec<PreviewRow>,
    rows_kept: usize,
    columns: Vec<CellsView>,
}

#[derive(Serialize)]
pub(crate) struct RoleChoice {
    code: &'static str,
    text: String,
    group: &'static str,
}

#[derive(Serialize)]
pub(crate) struct ChoicesView {
    roles: Vec<RoleChoice>,
    elements: Vec<&'static str>,
    oxides: Vec<&'static str>,
    units: Vec<&'static str>,
    multiples: Vec<String>,
    encodings: Vec<&'static str>,
}

#[derive(Serialize)]
pub(crate) struct NamedPiece {
    role_text: String,
    piece: String,
}

#[derive(Serialize)]
pub(crate) struct IdCut {
    id: String,
    pieces: Option<Vec<NamedPiece>>,
}

#[derive(Serialize)]
pub(crate) struct IdTemplateView {
    pieces: Vec<String>,
    pattern: String,
    problem: String,
    cuts: Vec<IdCut>,
}

#[derive(Serialize)]
pub(crate) struct MappingActs {
    pub(crate) acts: Vec<ActInput>,
    pub(crate) problems: Vec<crate::views::ProblemView>,
}

pub(crate) fn container(source: &Source) -> Option<ContainerView> {
    source.container.as_ref().map(|container| ContainerView {
        name: container.name.clone(),
        sha256: container.sha256.clone(),
        bytes: container.bytes as f64,
    })
}

pub(crate) fn sheets(source: &Source) -> Vec<SheetView> {
    source
        .sheets
        .iter()
        .map(|sheet| SheetView {
            name: sheet.name.clone(),
            hidden: sheet.hidden,
            rows: sheet.rows,
            columns: sheet.columns,
            element_columns: sheet.element_columns,
            read: sheet.read,
            passed_over: sheet.passed_over,
        })
        .collect()
}

pub(crate) fn stated(words: &Words, source: &Source) -> Vec<StatedView> {
    source
        .stated
        .iter()
        .map(|line| StatedView {
            line: line.line,
            key: line.key.clone(),
            value: line.value.clone(),
            used_as: line.used_as.map(StatedUse::code),
            used_text: line
                .used_as
                .map(|used| words.say(&format!("role-{}", used.code())))
                .unwrap_or_default(),
        })
        .collect()
}

/// The tables of a source that differ, each with every line its headings stand on.
fn differing(source: &Source) -> Vec<(usize, Vec<u32>)> {
    let same = |a: &Block, b: &Block| a.fingerprint == b.fingerprint && a.columns == b.columns;
    let mut found: Vec<(usize, Vec<u32>)> = Vec::new();
    for (at, block) in source.blocks.iter().enumerate() {
        let known = found
            .iter()
            .position(|(first, _)| source.blocks.get(*first).is_some_and(|earlier| same(earlier, block)));
        if let Some((_, lines)) = known.and_then(|known| found.get_mut(known)) {
            lines.push(block.header_line);
        } else if found.len() < BLOCKS_SHOWN {
            found.push((at, vec![block.header_line]));
        }
    }
    found
}

pub(crate) fn blocks_left_out(source: &Source) -> usize {
    source.blocks.len() - differing(source).iter().map(|(_, lines)| lines.len()).sum::<usize>()
}

pub(crate) fn blocks(words: &Words, source: &Source) -> Vec<BlockView> {
    differing(source)
        .into_iter()
        .filter_map(|(index, header_lines)| Some((index, header_lines, source.blocks.get(index)?)))
        .map(|(index, header_lines, block)| BlockView {
            index,
            headers: header_lines.len(),
            header_lines: header_lines.into_iter().take(LINES_SHOWN).collect(),
            fingerprint: block.fingerprint.clone(),
            layout: block.layout.code(),
            layout_text: words.say(&format!("layout-{}", block.layout.code())),
            set_unit: block.set_unit.map(Unit::sign),
            stated_multiple: block.stated_above.map(|multiple| multiple.to_string()),
            decimal_mark: block.mark.map(|mark| if mark == DecimalMark::Comma { "," } else { "." }),
            columns: block.columns.iter().map(|meaning| column(words, meaning)).collect(),
        })
        .collect()
}

fn column(words: &Words, meaning: &ColumnMeaning) -> ColumnView {
    let (of, error) = (meaning.role.of(), meaning.role.error());
    let confidence = meaning.evidence.confidence().code();
    ColumnView {
        column: meaning.column,
        heading: meaning.heading.clone(),
        role: meaning.role.code(),
        role_text: words.say(&format!("role-{}", meaning.role.code())),
        role_words: meaning.role.to_words(),
        element: of.map(|(element, _)| element.symbol()),
        oxide: of.and_then(|(_, oxide)| oxide).map(|oxide| oxide.to_string()),
        unit: meaning.role.unit().map(Unit::sign),
        relative: error.is_some_and(|error| error.relative),
        sigma_multiple: error.and_then(|error| error.multiple).map(|multiple| multiple.to_string()),
        confidence,
        confidence_text: words.say(&format!("confidence-{confidence}")),
        evidence: meaning.evidence.code(),
        why: words.say(&format!("evidence-{}", meaning.evidence.code())),
    }
}

/// What a person may say a column, a file or a table is.
pub(crate) fn choices(words: &Words) -> ChoicesView {
    let groups: [(&'static str, Vec<&'static str>); 5] = [
        ("measured", vec!["value", "uncertainty", "detection_limit"]),
        ("identity", Identity::ALL.iter().map(|identity| identity.code()).chain(["time_of_day"]).collect()),
        ("rows", vec!["element", "below_mark", "error_multiple"]),
        ("unit_of_measure", vec!["unit_of_measure"]),
        ("unused", vec!["unused"]),
    ];
    let screened = [Element::CD, Element::PB, Element::HG, Element::CR, Element::BR, Element::CL];
    let others =
        (1..=118).filter_map(Element::from_atomic_number).filter(|element| !screened.contains(element));
    let multiples = [100, 196, 200, 300];
    ChoicesView {
        roles: groups
            .into_iter()
            .flat_map(|(group, codes)| codes.into_iter().map(move |code| (group, code)))
            .map(|(group, code)| RoleChoice { code, text: words.say(&format!("role-{code}")), group })
            .collect(),
        elements: screened.into_iter().chain(others).map(Element::symbol).collect(),
        oxides: OXIDES.to_vec(),
        units: [Unit::MgPerKg, Unit::Percent, Unit::GramPerKg, Unit::MicrogramPerKg].map(Unit::sign).to_vec(),
        multiples: multiples
            .into_iter()
            .filter_map(SigmaMultiple::from_hundredths)
            .map(|multiple| multiple.to_string())
            .collect(),
        encodings: TEXT_ENCODINGS.to_vec(),
    }
}

/// The rows that were kept of one table of a source, its columns beside each other, and what stands in each. Of a source
/// in which no table was found, its first rows as they stand.
pub(crate) fn preview(source: &Source, index: usize, rows: usize) -> Option<PreviewView> {
    if index == 0 && source.blocks.is_empty() {
        let shown = source.preview.iter().take(rows);
        return Some(PreviewView {
            rows: shown.map(|row| PreviewRow { line: Some(row.line), cells: row.cells.clone() }).collect(),
            rows_kept: source.preview.len(),
            columns: Vec::new(),
        });
    }
    let block = source.blocks.get(index)?;
    let end = source.blocks.get(index + 1).map_or(u32::MAX, |next| next.header_line);
    let turned = block.layout == Layout::Turned;
    let blank = |row: &RawRow| row.cells.iter().all(|cell| cell.trim().is_empty());
    let kept: Vec<&RawRow> = source
        .preview
        .iter()
        .filter(|row| (block.header_line..end).contains(&row.line))
        // A table on its side counts only the rows in which something stands.
        .filter(|row| !(turned && blank(row)))
        .collect();
    let cells_of = |column: &ColumnMeaning| -> Vec<&str> {
        let at = (column.column as usize).saturating_sub(1);
        if turned {
            let Some(row) = kept.get(at) else { return Vec::new() };
            let label = row.cells.iter().position(|cell| cell.trim() == column.heading.trim()).unwrap_or(0);
            row.cells.iter().skip(label + 1).map(String::as_str).collect()
        } else {
            kept.iter().skip(1).filter_map(|row| row.cells.get(at)).map(String::as_str).collect()
        }
    };
    let columns: Vec<Vec<&str>> = block.columns.iter().map(cells_of).collect();
    let rows_kept =
        if turned { columns.iter().map(Vec::len).max().unwrap_or(0) } else { kept.len().saturating_sub(1) };
    let shown = (0..rows_kept.min(rows)).map(|row| PreviewRow {
        line: if turned { None } else { kept.get(row + 1).map(|kept| kept.line) },
        cells: columns.iter().map(|cells| cells.get(row).copied().unwrap_or("").to_owned()).collect(),
    });
    let marks = Marks { decimal: block.mark, told: false };
    Some(PreviewView {
        rows: shown.collect(),
        rows_kept,
        columns: columns.iter().map(|cells| what_stands(cells, marks)).collect(),
    })
}

fn what_stands(cells: &[&str], marks: Marks) -> CellsView {
    let mut numbers = 0;
    let mut lowest: Option<(i64, &str)> = None;
    let mut highest: Option<(i64, &str)> = None;
    let mut unclear = Vec::new();
    let mut examples: Vec<String> = Vec::new();
    for text in cells.iter().map(|cell| cell.trim()).filter(|text| !text.is_empty()) {
        if examples.len() < EXAMPLES && !examples.iter().any(|known| known == text) {
            examples.push(text.to_owned());
        }
        match cell::read(text.as_bytes(), marks) {
            CellText::Number(number, _) => {
                numbers += 1;
                // Six decimals tell any two mass fractions apart.
                let Some(size) = number.scaled(6, Rounding::Nearest) else { continue };
                if lowest.is_none_or(|(known, _)| size < known) {
                    lowest = Some((size, text));
                }
                if highest.is_none_or(|(known, _)| size > known) {
                    highest = Some((size, text));
                }
            }
            CellText::MarkUnclear
                if unclear.len() < EXAMPLES && !unclear.iter().any(|known| known == text) =>
            {
                unclear.push(text.to_owned());
            }
            _ => {}
        }
    }
    let written = |found: Option<(i64, &str)>| found.map(|(_, text)| text.to_owned()).unwrap_or_default();
    CellsView { numbers, lowest: written(lowest), highest: written(highest), unclear, examples }
}

/// The template that an example shows: an id and what each of its pieces is, by the code of an identity or nothing; and
/// how it cuts other ids.
pub(crate) fn id_template(words: &Words, example: &str, named: &[String], ids: &[String]) -> IdTemplateView {
    let pieces: Vec<String> = id_template::pieces(example).into_iter().map(str::to_owned).collect();
    let of_pieces: Vec<(Identity, &str)> = named
        .iter()
        .zip(&pieces)
        .filter_map(|(code, piece)| Some((Identity::from_code(code)?, piece.as_str())))
        .collect();
    let template = IdTemplate::from_example(example, &of_pieces);
    let cut = |template: &IdTemplate, id: &String| IdCut {
        id: id.clone(),
        pieces: template.split(id).map(|cut| {
            cut.as_slice()
                .iter()
                .map(|(identity, piece)| NamedPiece {
                    role_text: words.say(&format!("role-{}", identity.code())),
                    piece: (*piece).to_owned(),
                })
                .collect()
        }),
    };
    match template {
        Ok(template) => IdTemplateView {
            pieces,
            pattern: template.text(),
            problem: String::new(),
            cuts: ids.iter().map(|id| cut(&template, id)).collect(),
        },
        Err(problem) => IdTemplateView {
            pieces,
            pattern: String::new(),
            problem: words.say(&format!("id-template-{}", problem.code())),
            cuts: Vec::new(),
        },
    }
}

/// The acts of a mapping file, to be recorded one by one.
pub(crate) fn acts_of(words: &Words, name: &str, text: &str) -> MappingActs {
    match settings_file::parse_mapping(text, name) {
        Ok(list) => MappingActs {
            acts: list
                .into_iter()
                .map(|act| ActInput {
                    kind: act.kind.code().to_owned(),
                    target: act.target.to_text(),
                    value: act.value,
                    by: act.by,
                    at: act.at,
                    note: act.note,
                })
                .collect(),
            problems: Vec::new(),
        },
        Err(problems) => MappingActs {
            acts: Vec::new(),
            problems: crate::views::problems(words, name, &problems, settings_file::MAPPING_SCHEMA),
        },
    }
}

/// What a browser keeps for another day: what it kept before, with what is said here in place of what was said of the
/// same headings. Empty where nothing is left.
pub(crate) fn kept(inspection: &Inspection, before: &str) -> String {
    let now = settings_file::mapping_rows(&inspection.acts, &inspection.sources);
    // Headings that were only read here and never spoken of keep what was said of them another day.
    let here: BTreeSet<&str> = inspection
        .acts
        .iter()
        .filter_map(|act| match &act.target {
            Target::Header(fingerprint) => Some(fingerprint.as_str()),
            _ => None,
        })
        .collect();
    // What can't be read any more is of no use to anybody.
    let before = match settings_file::parse_mapping(before, "") {
        Ok(_) => data_file::rows(&data_file::parse(before), "header"),
        Err(_) => Vec::new(),
    };
    let of_other_headings =
        |row: &WrittenTable| !here.contains(row.get("fingerprint").map_or("", Written::text));
    let mut all: Vec<WrittenTable> = before.into_iter().filter(of_other_headings).collect();
    all.extend(now);
    if all.is_empty() {
        return String::new();
    }
    let first = all.len().saturating_sub(HEADERS_KEPT);
    settings_file::mapping_of_rows(all.split_off(first))
}

#[cfg(test)]
mod tests {
    use plumbline_core::acts::{Act, ActKind};
    use plumbline_core::column::ColumnRole;

    use super::*;
    use plumbline_core::oxide::Oxide;

    #[test]
    fn every_choice_of_a_role_is_one_that_the_core_reads() {
        let view = choices(&Words::english());
        for role in &view.roles {
            assert!(ColumnRole::from_words(role.code).is_some(), "{}", role.code);
            assert!(!role.text.starts_with("role-"), "{}", role.text);
        }
        let codes: BTreeSet<&str> = view.roles.iter().map(|role| role.code).collect();
        assert_eq!(codes.len(), ColumnRole::CODES.len() + Identity::ALL.len());
        assert_eq!(view.elements.get(..6).unwrap(), ["Cd", "Pb", "Hg", "Cr", "Br", "Cl"]);
        assert_eq!(view.elements.len(), 118);
        assert_eq!(view.multiples, ["1", "1.96", "2", "3"]);
        assert!(OXIDES.iter().all(|formula| Oxide::from_formula(formula).is_some()));
    }

    #[test]
    fn the_range_of_a_column_is_said_as_it_is_written() {
        let cells = ["12", " 3.5 ", "", "< 2", "1360", "n.d.", "3.5"];
        let found = what_stands(&cells, Marks { decimal: Some(DecimalMark::Point), told: false });
        assert_eq!((found.numbers, found.lowest.as_str(), found.highest.as_str()), (4, "3.5", "1360"));
        assert_eq!(found.examples, ["12", "3.5", "< 2", "1360", "n.d."]);
        let open = what_stands(&["1,234", "5,678", "1,234"], Marks { decimal: None, told: false });
        assert_eq!((open.numbers, open.unclear.len()), (0, 2));
    }

    #[test]
    fn an_example_id_becomes_a_template_that_cuts_the_others_or_says_why_not() {
        let words = Words::english();
        let named = ["part", "lot", ""].map(str::to_owned);
        let ids = ["P7-L13-2", "P7-L13"].map(str::to_owned);
        let view = id_template(&words, "P6-L12-1", &named, &ids);
        assert_eq!((view.pieces.len(), view.pattern.as_str()), (3, "{part}-{lot}-{*}"));
        let first = view.cuts[0].pieces.as_ref().unwrap();
        assert_eq!((first[1].role_text.as_str(), first[1].piece.as_str()), ("lot", "L13"));
        assert!(view.cuts[1].pieces.is_none());
        for problem in id_template::TemplateProblem::ALL {
            assert!(words.has(&format!("id-template-{}", problem.code())), "{}", problem.code());
        }
        assert!(!id_template(&words, "P6-L12", &[], &[]).problem.is_empty());
    }

    #[test]
    fn a_table_on_its_side_is_shown_upright_and_a_file_without_a_table_as_it_stands() {
        let read = |text: &[u8]| {
            let mut reader =
                plumbline_intake::SourceReader::new("one.csv", &Inspection::new().unwrap().settings());
            reader.push(text);
            reader.finish().pop().unwrap()
        };
        let turned = read(b"Sample,S-1,S-2\nPb mg/kg,12,13\nCd mg/kg,1,2\nBr mg/kg,7,8\n");
        assert_eq!(turned.blocks[0].layout, Layout::Turned);
        let view = preview(&turned, 0, 5).unwrap();
        let cells: Vec<&[String]> = view.rows.iter().map(|row| row.cells.as_slice()).collect();
        assert_eq!(cells, [["S-1", "12", "1", "7"], ["S-2", "13", "2", "8"]]);
        assert_eq!((view.columns[1].numbers, view.columns[1].highest.as_str()), (2, "13"));
        let headless = read(b"alpha,beta\n1,2\n");
        assert!(headless.blocks.is_empty());
        let view = preview(&headless, 0, 5).unwrap();
        assert_eq!((view.rows.len(), view.rows[0].line, view.columns.len()), (2, Some(1), 0));
        assert!(preview(&headless, 1, 5).is_none());
    }

    #[test]
    fn tables_that_are_alike_are_shown_once_with_every_line_of_their_headings() {
        let mut reader = plumbline_intake::SourceReader::new("b", &Inspection::new().unwrap().settings());
        reader.push(b"Sample,Pb mg/kg\nS1,1\nSample,Cd mg/kg,Pb %\nS2,2,3\nSample,Pb mg/kg\nS3,1\n");
        let source = reader.finish().pop().unwrap();
        assert_eq!(source.blocks.len(), 3);
        let view = blocks(&Words::english(), &source);
        assert_eq!(view.iter().map(|block| block.headers).collect::<Vec<_>>(), [2, 1]);
        assert_eq!(view[0].header_lines, [1, 5]);
        assert_eq!(blocks_left_out(&source), 0);
        assert_eq!(preview(&source, 1, 9).unwrap().rows_kept, 1, "only the rows of that table");
    }

    fn said(fingerprint: &str, value: &str) -> Act {
        Act {
            kind: ActKind::ColumnRole,
            target: Target::Header(fingerprint.into()),
            value: value.into(),
            by: String::new(),
            at: String::new(),
            note: String::new(),
        }
    }

    #[test]
    fn what_is_kept_replaces_the_same_headings_and_leaves_the_others() {
        let mut inspection = Inspection::new().unwrap();
        inspection.acts = vec![said("aaaa", "1|lot"), said("bbbb", "2|part")];
        let first = kept(&inspection, "");
        inspection.acts = vec![said("aaaa", "1|supplier")];
        let second = kept(&inspection, &first);
        let values: Vec<String> = settings_file::parse_mapping(&second, "kept")
            .unwrap()
            .into_iter()
            .map(|act| format!("{} {}", act.target.to_text(), act.value))
            .collect();
        assert_eq!(values, ["header:bbbb 2|part", "header:aaaa 1|supplier"]);
        let undo = Act { kind: ActKind::Undo, target: Target::Inspection, ..said("", "1") };
        inspection.acts.push(undo);
        let third = kept(&inspection, &second);
        assert!(third.contains("bbbb") && !third.contains("aaaa"), "taken back is forgotten: {third}");
        inspection.acts.clear();
        assert_eq!(kept(&inspection, &third), third);
        assert_eq!(kept(&inspection, "not TOML at all ["), "");
    }
}
