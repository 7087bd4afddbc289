//! How long each step from bytes to files takes, on an invented table of ordinary width. Run: `cargo bench`.
#![allow(missing_docs)]

use std::fmt::Write as _;
use std::hint::black_box;
use std::io;

use criterion::{Criterion, Throughput, criterion_group, criterion_main};
use plumbline_core::inspection::{self, Inspection};
use plumbline_core::reading::Source;
use plumbline_core::report::{Length, csv, html, json};
use plumbline_core::words::Words;
use plumbline_intake::SourceReader;

const ROWS: u32 = 50_000;

/// An invented table: ten elements with errors, a third of the cells below detection, three classes.
fn table() -> Vec<u8> {
    let elements = ["Cd", "Pb", "Hg", "Cr", "Br", "Cl", "Cu", "Zn", "Fe", "Ti"];
    let mut text = String::from("Sample,Part,Material,Class,Lot,Supplier,Date,Seconds");
    for element in elements {
        let _ = write!(text, ",{element} mg/kg,{element} u (1s)");
    }
    text.push('\n');
    let mut seed = 1_u32;
    let mut next = |below: u32| {
        // A linear congruential sequence (constants of ISO/IEC 9899:1999, 7.20.2.2): the same table every time.
        seed = seed.wrapping_mul(1_103_515_245).wrapping_add(12_345);
        (seed >> 8) % below
    };
    for row in 0..ROWS {
        let class = ["polymer", "metal", "composite"][(row % 120 % 3) as usize];
        let _ = write!(
            text,
            "S{row},P{},M{},{class},L{},Works {},2026-11-25 08:00,30",
            row % 50,
            row % 120,
            row % 40,
            row % 7
        );
        for _ in elements {
            if next(3) == 0 {
                let _ = write!(text, ",<LOD,{}.{}", next(9), next(10));
            } else {
                let _ = write!(text, ",{}.{},{}.{:02}", next(900), next(10), next(20), next(100));
            }
        }
        text.push('\n');
    }
    text.into_bytes()
}

fn read(bytes: &[u8], inspection: &Inspection) -> Vec<Source> {
    let mut reader = SourceReader::new("invented.csv", &inspection.settings());
    for piece in bytes.chunks(4 * 1024 * 1024) {
        reader.push(piece);
    }
    reader.finish()
}

fn steps(criterion: &mut Criterion) {
    let bytes = table();
    let empty = Inspection::new().expect("built-in books");
    let mut whole = empty.clone();
    whole.add_sources(read(&bytes, &empty));
    let findings = inspection::review(&whole);
    let words = Words::english();

    let mut group = criterion.benchmark_group("pipeline");
    group.sample_size(10);
    group.throughput(Throughput::Elements(u64::from(ROWS)));
    group.bench_function("intake", |bench| bench.iter(|| black_box(read(&bytes, &empty))));
    group.bench_function("review", |bench| bench.iter(|| black_box(inspection::review(&whole))));
    group.bench_function("findings.json", |bench| {
        bench.iter(|| json::write(&whole, &findings, &words, &mut io::sink()));
    });
    group.bench_function("findings.csv", |bench| {
        bench.iter(|| csv::write(&whole, &findings, &mut io::sink()));
    });
    group.bench_function("report.html", |bench| {
        bench.iter(|| html::write(&whole, &findings, &words, Length::Full, &mut io::sink()));
    });
    group.finish();
}

/// An invented delivery of a thousand materials in forty lots, two readings each: one in seven over, one in five undecided.
fn thousand_materials() -> Vec<u8> {
    let mut text = String::from("Sample,Spot,Part,Material,Lot,Supplier,Class,Seconds");
    for element in ["Cd", "Pb", "Hg", "Cr", "Br"] {
        let _ = write!(text, ",{element} mg/kg,{element} u (1s)");
    }
    text.push('\n');
    for at in 0..1000 {
        let lead = if at % 7 == 0 { 1500 } else { 20 };
        let bromine = if at % 5 == 0 { 320 } else { 20 };
        for spot in ["a", "b"] {
            let _ = writeln!(
                text,
                "S{at},{spot},P{},Material {at},L{},Gorse Works,polymer,60,3,2,{lead},8,3,3,20,10,{bromine},6",
                at / 5,
                at / 25
            );
        }
    }
    text.into_bytes()
}

/// What a person waits for who asks for the report of a large delivery.
fn reports(criterion: &mut Criterion) {
    let empty = Inspection::new().expect("built-in books");
    let mut whole = empty.clone();
    whole.add_sources(read(&thousand_materials(), &empty));
    let findings = inspection::review(&whole);
    assert_eq!(findings.materials.len(), 1000);
    let words = Words::english();
    let mut group = criterion.benchmark_group("report of 1,000 materials");
    group.sample_size(10);
    for length in Length::ALL {
        group.bench_function(length.file(), |bench| {
            bench.iter(|| html::write(&whole, &findings, &words, *length, &mut io::sink()));
        });
    }
    group.finish();
}

criterion_group!(benches, steps, reports);
criterion_main!(benches);
