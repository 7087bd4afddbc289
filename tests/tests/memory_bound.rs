//! What a file costs in memory while it is read: at most a multiple of its bytes. Of a workbook or an archive the bytes
//! it unpacks to are meant, which intake bounds.
//!
//! One test, because the allocator counts for the whole process.

use flate2::read::DeflateDecoder;
use peak_alloc::PeakAlloc;
use plumbline_core::acts::Settings;
use plumbline_core::reading::Source;
use plumbline_intake::SourceReader;
use plumbline_tests::chance::Chance;
use plumbline_tests::packed::zip::{Entry, archive};
use plumbline_tests::packed::{Sheet, SheetCell, open_document, xlsx};

#[global_allocator]
static MEMORY: PeakAlloc = PeakAlloc;

/// Bytes in use for each byte of a file. Numbers with errors take 4, a sheet of blank cells on its side takes 65.
const MULTIPLE: usize = 80;
/// Bytes in use whatever the size: what is looked at before a table is known, tables of words, rows for the preview.
const ALWAYS: usize = 4 << 20;
/// About how large each file is.
const SIZE: usize = 1 << 20;

/// Files, the bytes that count (unpacked), and whether anything is expected to be read.
struct Case {
    name: &'static str,
    files: Vec<(String, Vec<u8>)>,
    counted: usize,
}

impl Case {
    fn of(name: &'static str, bytes: Vec<u8>) -> Case {
        let counted = bytes.len();
        Case { name, files: vec![("file.csv".to_owned(), bytes)], counted }
    }

    fn packed(name: &'static str, bytes: Vec<u8>, unpacked: usize) -> Case {
        let counted = bytes.len() + unpacked;
        Case { name, files: vec![("file.bin".to_owned(), bytes)], counted }
    }
}

/// Repeats a line with a number in it until the file is large.
fn lines(head: &str, mut line: impl FnMut(usize) -> String) -> Vec<u8> {
    let mut text = head.to_owned();
    let mut at = 0;
    while text.len() < SIZE {
        text += &line(at);
        at += 1;
    }
    text.into_bytes()
}

const ELEMENTS: [&str; 20] = [
    "Cd", "Pb", "Hg", "Cr", "Br", "Cl", "As", "Se", "Sb", "Sn", "Ba", "Ni", "Cu", "Zn", "Bi", "Fe", "Ti",
    "Rb", "Sr", "Zr",
];

fn wide_head(with_errors: bool) -> String {
    let columns = ELEMENTS.map(|element| {
        if with_errors { format!("{element} mg/kg,{element} u (1s)") } else { format!("{element} mg/kg") }
    });
    format!("Sample,{}\n", columns.join(","))
}

/// A reading a column: its name, and one cell for each element.
fn turned(cell: &str) -> Vec<u8> {
    // As many as a sheet may have columns, nearly.
    let readings = 16_000;
    let row = |label: &str, cell: &dyn Fn(usize) -> String| {
        (0..readings).fold(label.to_owned(), |row, at| row + "," + &cell(at)) + "\n"
    };
    let mut text = row("Sample", &|at| format!("S{at}"));
    for element in ELEMENTS {
        text +=
            &row(&format!("{element} mg/kg"), &|at| if at == 0 { "5".to_owned() } else { cell.to_owned() });
    }
    text.into_bytes()
}

fn sheet_rows() -> Vec<Vec<SheetCell>> {
    let text = |text: String| SheetCell::Text(text);
    let mut head = vec![text("Sample".to_owned())];
    head.extend(ELEMENTS.map(|element| text(format!("{element} mg/kg"))));
    let mut rows = vec![head];
    rows.extend((0..2000).map(|row| {
        let mut cells = vec![text(format!("S{row}"))];
        cells.extend((0..ELEMENTS.len()).map(|at| SheetCell::Number((row % 97 + at).to_string())));
        cells
    }));
    rows
}

fn unpacked_parts(parts: &[Entry]) -> usize {
    let unpacked = |entry: &Entry| {
        if entry.method == 0 {
            return entry.packed.len();
        }
        let mut sink = std::io::sink();
        std::io::copy(&mut DeflateDecoder::new(entry.packed.as_slice()), &mut sink).expect("packed here")
            as usize
    };
    parts.iter().map(unpacked).sum()
}

fn cases() -> Vec<Case> {
    let mut cases = vec![
        Case::of(
            "numbers with errors",
            lines(&wide_head(true), |at| format!("S{at}{}\n", ",12.5,1.25".repeat(20))),
        ),
        Case::of("one digit in a cell", lines(&wide_head(false), |_| format!("S{}\n", ",5".repeat(20)))),
        Case::of("nothing in a cell", lines(&wide_head(false), |_| format!("S{},7\n", ",".repeat(19)))),
        Case::of(
            "below detection",
            lines(&wide_head(false), |at| format!("S{}\n", format!(",<{}", at % 900 + 1).repeat(20))),
        ),
        Case::of(
            "cells that are no number",
            lines(&wide_head(false), |at| format!("S{}\n", format!(",x{at}").repeat(20))),
        ),
        Case::of("a name of its own in every row", lines("Sample,Pb mg/kg\n", |at| format!("{at},5\n"))),
        Case::of(
            "a long table",
            lines("Sample,Element,Value,Unit\n", |at| format!("S{},{},5,ppm\n", at / 20, ELEMENTS[at % 20])),
        ),
        Case::of(
            "a long table of one reading a row",
            lines("Sample,Element,Value,Unit\n", |at| format!("{at},Pb,5,ppm\n")),
        ),
        Case::of(
            "spectra",
            lines("Sample,Spectrum,Pb mg/kg,Cd mg/kg,Cr mg/kg\n", |at| {
                let cells = if at % 2 == 0 { "5,6," } else { ",,7" };
                format!("{},{},{cells}\n", at / 2, at % 2)
            }),
        ),
        Case::of("a table on its side", turned("5")),
        Case::of("a table on its side with hardly a number", turned("")),
        Case::of("rows without a heading", lines("", |at| format!("{at},7,8,9\n"))),
        Case::of("blank lines", lines("Sample,Pb mg/kg\nS,5\n", |_| "\n".to_owned())),
        Case::of("rows that are too long", lines("Sample,Pb mg/kg\nS,5\n", |_| "S,5,6,7\n".to_owned())),
        Case::of("remarks above", lines("", |at| format!("Remark {at}: nothing\n"))),
        Case::of(
            "a new heading all the time",
            lines("Sample,Pb mg/kg\nS,5\n", |at| {
                if at % 2 == 0 {
                    "Sample,Cd mg/kg,Cr mg/kg\nS,5,6\n".to_owned()
                } else {
                    "Sample,Pb mg/kg\nS,5\n".to_owned()
                }
            }),
        ),
        Case::of("one cell", [b"Sample,Pb mg/kg\nS,".as_slice(), &b"5".repeat(SIZE)].concat()),
        Case::of("an open quote", [b"Sample,Pb mg/kg\nS,\"".as_slice(), &b"5,\n".repeat(SIZE / 3)].concat()),
        Case::of("commas", b",".repeat(SIZE)),
        Case::of("names of columns", lines("Sample", |at| format!(",c{at}"))),
        Case::of("quotes", b"\"".repeat(SIZE)),
        Case::of("zeros", vec![0; SIZE]),
        Case::of("noise", {
            let mut chance = Chance::new(1);
            (0..SIZE / 8).flat_map(|_| chance.bits().to_le_bytes()).collect()
        }),
        Case::of("UTF-16", {
            let text = lines(&wide_head(false), |_| format!("S{}\n", ",5".repeat(20)));
            String::from_utf8_lossy(&text[..SIZE / 2]).encode_utf16().flat_map(u16::to_le_bytes).collect()
        }),
        Case::of("Chinese", {
            let text = lines("样品,铅 mg/kg,镉 mg/kg,备注\n", |at| format!("样品{at},5,6,表面清洁\n"));
            encoding_rs::GB18030.encode(&String::from_utf8_lossy(&text)).0.into_owned()
        }),
    ];
    let sheets = [Sheet { name: "Results".to_owned(), rows: sheet_rows() }];
    let workbook = xlsx::workbook(&sheets);
    cases.push(Case::packed("a workbook", workbook.clone(), unpacked_parts(&xlsx::parts(&sheets, None))));
    let document = open_document::spreadsheet(&sheets);
    // About as long as the workbook's cells are; less than it is.
    let cells = sheets[0].rows.iter().map(|row| row.len() * 60).sum();
    cases.push(Case::packed("an open document", document, cells));
    let table = lines(&wide_head(true), |at| format!("S{at}{}\n", ",12.5,1.25".repeat(20)));
    let size = table.len();
    let packed = archive(&[Entry::deflated("a.csv", &table), Entry::deflated("b.csv", &table)]);
    cases.push(Case::packed("an archive", packed, size * 2));
    let packed = archive(&[Entry::stored("a.xlsx", &workbook)]);
    cases.push(Case::packed("a workbook in an archive", packed, unpacked_parts(&xlsx::parts(&sheets, None))));
    // Refused by what the directory says or as soon as it is passed: nothing is unpacked that counts.
    let liar = Entry { size: 1000, ..Entry::zeros("liar.csv", 200) };
    cases.push(Case::packed("a bomb", archive(&[Entry::zeros("tight.csv", 500), liar]), 0));
    let many = (0..500).map(|at| {
        let text = format!("Sample,Class,Pb mg/kg,Pb u (1s)\n{}", format!("S{at},metal,5,1\n").repeat(60));
        (format!("{at}.csv"), text.into_bytes())
    });
    let files: Vec<_> = many.collect();
    let counted = files.iter().map(|(_, bytes)| bytes.len()).sum();
    cases.push(Case { name: "five hundred files", files, counted });
    cases
}

fn read(files: &[(String, Vec<u8>)]) -> Vec<Source> {
    let settings = Settings::default();
    let mut sources = Vec::new();
    for (name, bytes) in files {
        let mut reader = SourceReader::new(name, &settings);
        for piece in bytes.chunks(64 * 1024) {
            reader.push(piece);
        }
        sources.extend(reader.finish());
    }
    sources
}

#[test]
fn a_file_costs_a_bounded_multiple_of_its_bytes() {
    // Tables of words are made once.
    read(&[("warm.csv".to_owned(), b"Sample,Pb mg/kg\nS,5\n".to_vec())]);
    let mut over = Vec::new();
    for case in cases() {
        let before = MEMORY.current_usage();
        MEMORY.reset_peak_usage();
        let sources = read(&case.files);
        let most = MEMORY.peak_usage().saturating_sub(before);
        let kept = MEMORY.current_usage().saturating_sub(before);
        let readings: usize = sources.iter().map(|source| source.readings.len()).sum();
        let times = most as f64 / case.counted.max(1) as f64;
        println!(
            "{:34} {:>9} bytes, at most {most:>10} in use ({times:.1} times), {kept:>10} kept, {readings} readings",
            case.name, case.counted
        );
        if most > case.counted * MULTIPLE + ALWAYS {
            over.push(format!("{}: {most} bytes for {}", case.name, case.counted));
        }
        drop(sources);
    }
    assert!(over.is_empty(), "{over:#?}");
}
