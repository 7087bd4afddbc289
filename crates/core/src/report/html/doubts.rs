//! What puts a result in doubt that is not open by itself: a BL beside a strong line of another element or on a thin
//! piece, and a composition that speaks against the class or suggests one.

use maud::{Markup, html};

use super::Report;
use crate::caution::Cautions;
use crate::inspection::MaterialFinding;
use crate::judging::Assessed;
use crate::material::{ClassFrom, MaterialClass};
use crate::outcome::Outcome;
use crate::quantity::MassFraction;
use crate::report::explain::About;
use crate::report::phrases;
use crate::substance::{Halogen, Substance};

/// Most doubts that are printed.
const DOUBTS: usize = 200;

/// A BL that something puts in doubt, by the reading that is most in doubt.
struct Doubt {
    about: About,
    reading: u32,
    strong: bool,
    value: MassFraction,
    cautions: Cautions,
    readings: u64,
}

/// What the compositions of a material's readings say, by the first that says it.
struct Described {
    from: ClassFrom,
    reading: u32,
    text: String,
    readings: u64,
}

impl Report<'_> {
    pub(super) fn doubts(&self) -> Markup {
        let (mut below, mut compositions) = (Vec::new(), Vec::new());
        for material in &self.findings.materials {
            let (doubts, described) = self.doubts_of(material);
            below.extend(doubts.into_iter().map(|one| (material, one)));
            compositions.extend(described.into_iter().map(|one| (material, one)));
        }
        html! {
            section {
                h2 { (self.say("report-doubts")) }
                @if below.is_empty() && compositions.is_empty() { p { (self.say("report-doubts_none")) } }
                @if !below.is_empty() {
                    h3 { (self.say("report-doubts_below")) }
                    (self.capped("report-doubts_capped", DOUBTS, below.len()))
                    @for (material, one) in below.iter().take(DOUBTS) { (self.doubt(material, one)) }
                }
                @if !compositions.is_empty() {
                    h3 { (self.say("report-compositions")) }
                    p class="sub keep" { (self.say("report-compositions_text")) }
                    (self.capped("report-doubts_capped", DOUBTS, compositions.len()))
                    @for (material, one) in compositions.iter().take(DOUBTS) {
                        div class="case" {
                            p { b { (self.material_name(material)) } }
                            (self.of_readings(one.reading, one.readings))
                            p { (one.text) }
                        }
                    }
                }
            }
        }
    }

    fn doubt(&self, material: &MaterialFinding, one: &Doubt) -> Markup {
        let Some((_, reviewer, row)) = self.place(one.reading as usize) else { return html! {} };
        let (symbol, name) = match one.about {
            About::Substance(of) => (of.symbol().to_owned(), self.say(&format!("substance-{}", of.symbol()))),
            About::Halogen(of) => {
                (self.say(&format!("halogen-{}", of.name())), self.say(&format!("substance-{}", of.name())))
            }
        };
        let said = phrases::doubts(self.words, reviewer, &one.cautions, Outcome::Below, &symbol, row);
        html! {
            div class="case" {
                p {
                    b { (symbol) (self.words.comma()) (name) (self.words.colon()) }
                    (self.outcome_twice(Outcome::Below)) (self.words.stop()) (self.material_name(material))
                }
                (self.strip_of(one.about, one.reading))
                (self.of_readings(one.reading, one.readings))
                @for text in said { p class="doubt" { b { (self.say("report-caution")) (self.words.colon()) } (text) } }
            }
        }
    }

    /// Names the reading something is shown by, and how many it is true of.
    fn of_readings(&self, reading: u32, readings: u64) -> Markup {
        html! {
            @if let Some((source, _, row)) = self.place(reading as usize) {
                p class="sub" {
                    (self.reading_name(source, row))
                    @if readings > 1 { (self.words.gap()) (self.with("report-also_more", &[("count", &(readings - 1).to_string())])) }
                }
            }
        }
    }

    fn doubts_of(&self, material: &MaterialFinding) -> (Vec<Doubt>, Vec<Described>) {
        let (mut doubts, mut described) = (Vec::new(), Vec::new());
        for reading in &material.readings {
            let Some((source, reviewer, row)) = self.place(*reading as usize) else { continue };
            let assessed = reviewer.assess(row);
            for (substance, (judged, cautions)) in
                Substance::ALL.into_iter().zip(assessed.substances.iter().zip(assessed.cautions))
            {
                if judged.outcome == Outcome::Below && !cautions.is_empty() {
                    let value = source.readings.cell(substance.element(), row).value;
                    add(&mut doubts, About::Substance(substance), *reading, value, cautions);
                }
            }
            for (of, cautions) in Halogen::ALL.into_iter().zip(assessed.halogen_cautions) {
                let below = assessed.halogen(of).outcome == Outcome::Below;
                if self.halogens_count() && below && !cautions.is_empty() {
                    let value = match phrases::element_of(of) {
                        Some(element) => source.readings.cell(element, row).value,
                        None => assessed.total.high.unwrap_or_default(),
                    };
                    add(&mut doubts, About::Halogen(of), *reading, value, cautions);
                }
            }
            if matters(&assessed) {
                let text = phrases::composition(self.words, reviewer, row);
                describe(&mut described, *reading, text, assessed.class_from);
            }
        }
        (doubts, described)
    }
}

/// A composition matters where it contradicts the class, where it could help to find one, and where the mode is wrong.
fn matters(assessed: &Assessed) -> bool {
    let unknown = assessed.class == MaterialClass::Unknown;
    unknown || assessed.class_from == ClassFrom::Contested || assessed.calibration.is_some()
}

fn add(doubts: &mut Vec<Doubt>, about: About, reading: u32, value: MassFraction, cautions: Cautions) {
    let strong = cautions.strong;
    match doubts.iter_mut().find(|one| one.about == about) {
        None => doubts.push(Doubt { about, reading, strong, value, cautions, readings: 1 }),
        Some(one) => {
            one.readings += 1;
            if (strong, value) > (one.strong, one.value) {
                (one.reading, one.strong, one.value, one.cautions) = (reading, strong, value, cautions);
            }
        }
    }
}

/// One entry for each way the class came about: the readings' numbers differ, what they say hardly does.
fn describe(described: &mut Vec<Described>, reading: u32, text: String, from: ClassFrom) {
    if text.is_empty() {
        return;
    }
    match described.iter_mut().find(|one| one.from == from) {
        None => described.push(Described { from, reading, text, readings: 1 }),
        Some(one) => one.readings += 1,
    }
}
