//! `plumbline explain`: the working behind the outcomes of single readings.

use plumbline_core::inspection::Inspection;
use plumbline_core::judging::SourceReview;
use plumbline_core::reading::{Identity, NoticeCode, Source};
use plumbline_core::report::explain::{About, Explainer};
use plumbline_core::report::phrases;
use plumbline_core::substance::{Halogen, Substance};
use plumbline_core::words::Words;

use crate::arguments::{Explain, Which};
use crate::{complain, gather, say};

/// Exit status: no reading matches, or something named could not be read.
const NOTHING_FOUND: u8 = 2;

/// Explains every reading that matches, one block each.
pub(crate) fn run(words: &Words, wanted: &Explain) -> u8 {
    let (inspection, unreadable) = match gather(words, &wanted.given) {
        Ok(gathered) => gathered,
        Err(status) => return status,
    };
    let settings = inspection.settings();
    let mut found = 0;
    for (at, source) in inspection.sources.iter().enumerate() {
        let named = source.problem.filter(|problem| *problem != NoticeCode::Skipped);
        if named.is_some() {
            for notice in &source.refusals.kept {
                let text = phrases::notice(words, notice, Some(source));
                complain(&words.with("cli-source_problem", &[("file", &source.name), ("text", &text)]));
            }
        }
        let earlier = inspection.sources.get(..at).unwrap_or(&[]);
        if earlier.iter().any(|one| one.same_bytes_as(source)) {
            continue;
        }
        let rows: Vec<usize> =
            (0..source.readings.len()).filter(|row| is_meant(&wanted.which, source, *row)).collect();
        if rows.is_empty() {
            continue;
        }
        let reviewer = SourceReview::new(source, &inspection.books, &settings);
        for row in rows {
            if found > 0 {
                say("");
            }
            found += 1;
            print_block(words, &inspection, source, &reviewer, row, &wanted.of);
        }
    }
    if found == 0 {
        complain(&words.say("cli-no_reading"));
    }
    if found == 0 || unreadable { NOTHING_FOUND } else { 0 }
}

fn is_meant(which: &Which, source: &Source, row: usize) -> bool {
    match which {
        Which::Reading(id) => source.readings.identity(Identity::Id, row) == Some(id.as_str()),
        Which::Line(name, line) => source.name == *name && source.readings.line(row) == *line,
    }
}

/// What the reading is, then each outcome with the steps that led to it.
fn print_block(
    words: &Words,
    inspection: &Inspection,
    source: &Source,
    reviewer: &SourceReview<'_>,
    row: usize,
    of: &[About],
) {
    say(&phrases::reading_name(words, source, row));
    let explainer = Explainer { inspection, source, reviewer, words };
    let assessed = reviewer.assess(row);
    // Bromine as a halogen is explained where it is asked for or a total is made of it.
    let halogens = if inspection.books.halogens().is_some() { &Halogen::ALL[..] } else { &[] };
    let all = Substance::ALL.into_iter().map(About::Substance);
    let all: Vec<About> = all.chain(halogens.iter().copied().map(About::Halogen)).collect();
    for about in if of.is_empty() { &all } else { of } {
        let (name, outcome) = match about {
            About::Substance(of) => (
                words.say(&format!("substance-{}", of.symbol())),
                assessed.substances.get(*of as usize).map(|judged| judged.outcome),
            ),
            About::Halogen(of) => {
                (words.say(&format!("halogen-{}", of.name())), Some(assessed.halogen(*of).outcome))
            }
        };
        let Some(outcome) = outcome else { continue };
        say(&format!("  {name}: {}", phrases::outcome(words, outcome)));
        for step in explainer.explain(*about, row).steps {
            say(&format!("    {}", step.text));
        }
    }
}
