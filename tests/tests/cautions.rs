//! Cautions and bounds in words, as the explanation of a reading gives them.

use plumbline_core::judging::SourceReview;
use plumbline_core::report::explain::{Explainer, StepKind};
use plumbline_core::substance::{Halogen, Substance};
use plumbline_tests::program::{inspect, with_words};

const THICK: &str = "schema = \"plumbline.settings/1\"\nthickness_mm = 1000\n";

/// What an explanation says in the steps of one kind.
fn said(table: &str, kind: StepKind, about: Result<Substance, Halogen>) -> String {
    let inspection = inspect(THICK, &[("one.csv", table.as_bytes())]);
    let settings = inspection.settings();
    let source = &inspection.sources[0];
    let reviewer = SourceReview::new(source, &inspection.books, &settings);
    with_words(|words| {
        let explainer = Explainer { inspection: &inspection, source, reviewer: &reviewer, words };
        let told = match about {
            Ok(substance) => explainer.substance(substance, 0),
            Err(halogen) => explainer.halogen(halogen, 0),
        };
        let text = told.of(words, kind);
        assert!(!text.contains('['), "a word is missing: {text}");
        text
    })
}

#[test]
fn an_overlap_names_lines_gap_amount_and_how_it_is_known() {
    let brass = "Sample,Class,As mg/kg,Pb mg/kg,Pb u (1s)\nS1,metal,1000,500,30\n";
    let text = said(brass, StepKind::Caution, Ok(Substance::Pb));
    for part in
        ["As (Ka1, 8 eV away)", "La1 line of Pb", "1800 mg/kg", "(derived)", "common practice, no source"]
    {
        assert!(text.contains(part), "{part} is not in: {text}");
    }
    assert!(text.contains("reference method"), "what a strong one asks for: {text}");
    let weak = brass.replace(",500,", ",100,");
    assert!(!said(&weak, StepKind::Caution, Ok(Substance::Pb)).contains("reference method"));
    let over = brass.replace(",500,", ",1500,");
    assert!(said(&over, StepKind::Caution, Ok(Substance::Pb)).contains("laboratory"));
    let none = brass.replace("1000", "10");
    assert_eq!(said(&none, StepKind::Caution, Ok(Substance::Pb)), "");
}

#[test]
fn every_kind_of_overlap_has_its_sentence() {
    for (table, substance, part) in [
        ("Pb mg/kg,Cd mg/kg,Cd u (1s)\nS1,metal,370000,20,5\n", Substance::Cd, "Two pulses of Pb"),
        ("Sn mg/kg,Cd mg/kg,Cd u (1s)\nS1,metal,990000,20,5\n", Substance::Cd, "escape peak of Sn"),
        ("Sb mg/kg,Cd mg/kg,Cd u (1s)\nS1,metal,20000,20,5\n", Substance::Cd, "by its Kb1 line"),
    ] {
        let text = said(&format!("Sample,Class,{table}"), StepKind::Caution, Ok(substance));
        assert!(text.contains(part), "{part} is not in: {text}");
    }
    let rubber = "Sample,Class,S mg/kg,Cl mg/kg,Cl u (1s)\nS1,polymer,20000,880,2\n";
    let text = said(rubber, StepKind::Caution, Err(Halogen::Cl));
    assert!(text.contains("S (Kb1, 157 eV away)") && text.contains("108 mg/kg"), "{text}");
}

#[test]
fn a_thin_piece_says_what_is_missing() {
    let sheet = "Sample,Class,Thickness mm,Cd mg/kg,Cd u (1s)\nS1,polymer,2,5,1\n";
    let text = said(sheet, StepKind::Caution, Ok(Substance::Cd));
    // 1 - exp(-4.605 x 2 / 58.3) = 0.146 of the signal is there.
    assert!(text.contains("86 %"), "{text}");
}

#[test]
fn bounds_say_at_most_and_name_the_other_law() {
    let plastic = "Sample,Class,Br mg/kg,Br u (1s),Cr mg/kg,Cr u (1s)\nS1,polymer,100,10,100,10\n";
    // 130 x 3.1176 = 405.29, 130 x 2.9174 = 379.26, 130 x 1.2004 = 156.05.
    let text = said(plastic, StepKind::Bound, Ok(Substance::Br));
    for part in ["At most 405.29", "379.26", "at most 156.05", "2019/1021", "10 mg/kg"] {
        assert!(text.contains(part), "{part} is not in: {text}");
    }
    let text = said(plastic, StepKind::Bound, Ok(Substance::Cr));
    assert!(text.contains("At most 130 mg/kg of Cr(VI)"), "{text}");
    assert_eq!(said(plastic, StepKind::Bound, Ok(Substance::Pb)), "", "the element is the substance");
    // Not detected below 1 mg/kg: 2 x 3.12 = 6.24, under the other law's limit.
    let clean = plastic.replace("S1,polymer,100,10", "S1,polymer,< 1,");
    assert!(!said(&clean, StepKind::Bound, Ok(Substance::Br)).contains("2019/1021"));
    let blank = plastic.replace("S1,polymer,100,10", "S1,polymer,,");
    assert_eq!(said(&blank, StepKind::Bound, Ok(Substance::Br)), "");
}
