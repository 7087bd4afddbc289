//! The worst outcomes of each material.

use maud::{Markup, html};

use super::{MATERIAL_ROWS, Report, halogen_head};
use crate::inspection::MaterialFinding;
use crate::outcome::Outcome;
use crate::report::explain::About;
use crate::substance::{Halogen, Substance};

impl Report<'_> {
    pub(super) fn materials(&self) -> Markup {
        let all = &self.findings.materials;
        html! {
            section {
                h2 { (self.say("report-results")) }
                p class="keep" {
                    (self.say("report-results_text")) (self.words.gap())
                    (self.with("report-annex_elsewhere", &[("file", crate::report::Length::Annex.file())]))
                }
                @if all.len() > MATERIAL_ROWS {
                    p { (self.words.with("report-materials_capped", &[
                        ("shown", &MATERIAL_ROWS.to_string()), ("total", &all.len().to_string()),
                    ])) }
                }
                @if !self.halogens_count() && all.iter().any(|one| self.halogens_open(one)) {
                    p { (self.say("report-halogens_shown")) }
                }
                @if !all.is_empty() { (self.rulers_legend()) }
                table class="tight materials" data-element="7.8.2.1-m 63000-relation" {
                    thead { tr {
                        th { (self.say("report-material_head")) }
                        th { (self.say("report-class")) }
                        th class="n" { (self.say("report-readings")) }
                        @for substance in Substance::ALL { th { (substance.symbol()) } }
                        @for halogen in self.halogen_columns() { th { (self.halogen_column(*halogen)) } }
                        th { (self.say("report-disposition")) }
                    } }
                    tbody {
                        @for material in all.iter().take(MATERIAL_ROWS) { (self.material(material)) }
                    }
                }
            }
        }
    }

    /// Bromine has a limit of its own as a halogen, which moves a disposition only where a halogen book is named; its column as
    /// a substance says nothing of it.
    fn halogen_columns(&self) -> &'static [Halogen] {
        if self.halogens_count() { &Halogen::ALL } else { &[Halogen::Cl, Halogen::Total] }
    }

    fn halogen_column(&self, halogen: Halogen) -> String {
        if halogen == Halogen::Br { self.say("halogen-Br") } else { halogen_head(halogen) }
    }

    fn halogens_open(&self, material: &MaterialFinding) -> bool {
        self.halogen_columns().iter().any(|of| {
            let worst = material.tally.worst_halogen(*of);
            matches!(worst, Outcome::Over | Outcome::Undecided)
        })
    }

    fn worst_of(&self, material: &MaterialFinding, about: About, worst: Outcome) -> Markup {
        html! { td { (self.outcome(worst)) (self.strip_of_worst(material, about)) } }
    }

    fn material(&self, material: &MaterialFinding) -> Markup {
        html! {
            tr {
                td class="id" {
                    b { (self.or_not_stated(material.name.as_deref())) } br;
                    (self.say("report-part")) " " (self.or_not_stated(material.part.as_deref())) br;
                    (self.called_lot(material))
                }
                td { (self.say(&format!("class-{}", material.class.code()))) }
                td class="n" { (material.readings.len()) }
                @for substance in Substance::ALL {
                    (self.worst_of(material, About::Substance(substance), material.tally.worst(substance)))
                }
                @for halogen in self.halogen_columns() {
                    (self.worst_of(material, About::Halogen(*halogen), material.tally.worst_halogen(*halogen)))
                }
                td { (self.material_disposition(material.disposition)) }
            }
        }
    }
}
