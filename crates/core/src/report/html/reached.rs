//! The rule behind each outcome, once for each substance and class.

use maud::{Markup, html};

use super::{Report, halogen_head};
use crate::material::MaterialClass;
use crate::outcome::Outcome;
use crate::report::books;
use crate::substance::{Halogen, Substance};

/// How many readings are below, undecided, over, and anything else.
type Counts = [u64; 4];

const fn place(outcome: Outcome) -> usize {
    match outcome {
        Outcome::Below => 0,
        Outcome::Undecided => 1,
        Outcome::Over => 2,
        _ => 3,
    }
}

impl Report<'_> {
    pub(super) fn reached(&self) -> Markup {
        let mut classes: Vec<(MaterialClass, [Counts; 5])> = Vec::new();
        let mut halogens: [Counts; 3] = Default::default();
        for verdicts in self.findings.verdicts.iter().filter(|one| !one.check) {
            let at = classes.iter().position(|(class, _)| *class == verdicts.class).unwrap_or_else(|| {
                classes.push((verdicts.class, Default::default()));
                classes.len() - 1
            });
            for (counts, outcome) in classes[at].1.iter_mut().zip(verdicts.substances) {
                counts[place(outcome)] += 1;
            }
            for (counts, outcome) in halogens.iter_mut().zip(verdicts.halogens) {
                counts[place(outcome)] += 1;
            }
        }
        classes.sort_by_key(|(class, _)| class.code());
        let row = |about: &str, rule: String, counts: &Counts| {
            html! {
                tr {
                    td { (about) } td { (rule) }
                    @for count in counts { td class="n" { @if *count > 0 { (count) } } }
                }
            }
        };
        html! {
            section {
                h2 { (self.say("report-reached")) }
                p class="keep" { (self.say("report-reached_text")) }
                table class="tight" {
                    thead { tr {
                        th { (self.say("report-substance")) } th { (self.say("report-rule")) }
                        @for outcome in ["BL", "X", "OL"] { th class="n" { (self.say(&format!("outcome-{outcome}.short"))) } }
                        th class="n" { (self.say("report-other_outcomes")) }
                    } }
                    @for (class, counts) in &classes {
                        tbody {
                            tr class="who" { td colspan="6" { b { (self.class(*class)) } } }
                            @for (substance, counts) in Substance::ALL.iter().zip(counts) {
                                (row(substance.symbol(), self.rule_of(*substance, *class), counts))
                            }
                        }
                    }
                    @if let Some((_, rule)) = self.inspection.books.halogens() {
                        tbody {
                            tr class="who" { td colspan="6" { b { (self.say("report-halogens")) } } }
                            @for (of, counts) in Halogen::ALL.iter().zip(&halogens) {
                                (row(&halogen_head(*of), books::halogen(self.words, rule, *of), counts))
                            }
                        }
                    }
                }
            }
        }
    }

    fn rule_of(&self, substance: Substance, class: MaterialClass) -> String {
        let Some((book, rule)) = self.inspection.books.screening() else { return String::new() };
        match (class, rule.band(substance, class)) {
            (MaterialClass::Plated, _) => self.say("report-rule_plated"),
            (_, Some(band)) => books::band(self.words, rule, substance, class, band),
            (_, None) => self.with("explain-rule_every_class", &[("book", &book.title)]),
        }
    }
}
