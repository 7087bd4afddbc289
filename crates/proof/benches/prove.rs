//! How long a report of a thousand materials takes to be made and to be proved. Run: `cargo bench`.
#![allow(missing_docs)]

use std::fmt::Write as _;
use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use plumbline_core::inspection::{self, Findings, Inspection};
use plumbline_core::report::{Length, html};
use plumbline_core::words::Words;
use plumbline_intake::SourceReader;
use plumbline_proof::{Verdict, prove};

const MATERIALS: u32 = 1000;
const READINGS_EACH: u32 = 8;

/// An invented table: ten elements with errors, a third of the cells below detection, a thousand materials of three classes.
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
    for row in 0..MATERIALS * READINGS_EACH {
        let material = row % MATERIALS;
        let class = ["polymer", "metal", "composite"][(material % 3) as usize];
        let _ = write!(
            text,
            "S{row},P{},M{material},{class},L{},Works {},2026-11-25 08:00,30",
            material % 50,
            material % 40,
            material % 7
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

fn report(inspection: &Inspection, findings: &Findings, words: &Words, length: Length) -> Vec<u8> {
    let mut report = Vec::new();
    html::write(inspection, findings, words, length, &mut report).expect("a Vec takes all bytes");
    report
}

fn steps(criterion: &mut Criterion) {
    let mut inspection = Inspection::new().expect("built-in books");
    let mut reader =
        SourceReader::new("invented.csv", &inspection.settings()).keeping(inspection.opened.room());
    reader.push(&table());
    let (file, sources) = reader.finish_opened(false);
    inspection.add_file(file, sources);
    let findings = inspection::review(&inspection);
    let words = Words::english();
    assert_eq!(findings.materials.len(), MATERIALS as usize);
    let english = |_: &str| Some(Words::english());

    let mut group = criterion.benchmark_group("a thousand materials");
    group.sample_size(10);
    for length in Length::ALL {
        let name = length.code();
        let whole = report(&inspection, &findings, &words, *length);
        println!("{}: {} bytes", length.file(), whole.len());
        assert_eq!(prove(&whole, &[], None, &english).verdict, Verdict::Agrees);
        group.bench_function(format!("report, {name}"), |bench| {
            bench.iter(|| black_box(report(&inspection, &findings, &words, *length)));
        });
        group.bench_function(format!("proof, {name}"), |bench| {
            bench.iter(|| black_box(prove(&whole, &[], None, &english)));
        });
        // One digit in the middle is another.
        let mut altered = whole.clone();
        let middle = altered.len() / 3;
        if let Some(digit) = altered[middle..].iter_mut().find(|byte| byte.is_ascii_digit()) {
            *digit = if *digit == b'9' { b'8' } else { *digit + 1 };
        }
        group.bench_function(format!("proof of a changed one, {name}"), |bench| {
            bench.iter(|| black_box(prove(&altered, &[], None, &english)));
        });
    }
    group.finish();
}

criterion_group!(benches, steps);
criterion_main!(benches);
