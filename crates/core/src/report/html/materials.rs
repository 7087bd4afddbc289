//! The worst outcomes of each material.

use maud::{Markup, html};

use super::{MATERIAL_ROWS, Report, halogen_head};
use crate::inspection::MaterialFinding;
use crate::substance::{Halogen, Substance};

impl Report<'_> {
    pub(super) fn materials(&self) -> Markup {
        let all = &self.findings.materials;
        html! {
            section {
                h2 { (self.say("report-results")) }
                p class="keep" {
                    (self.say("report-results_text")) " "
                    (self.with("report-annex_elsewhere", &[("file", crate::report::Length::Annex.file())]))
                }
                @if all.len() > MATERIAL_ROWS {
                    p { (self.words.with("report-materials_capped", &[
                        ("shown", &MATERIAL_ROWS.to_string()), ("total", &all.len().to_string()),
                    ])) }
                }
                table class="tight" data-element="7.8.2.1-m 63000-relation" {
                    thead { tr {
                        th { (self.say("report-material_head")) }
                        th { (self.say("report-class")) }
                        th class="n" { (self.say("report-readings")) }
                        @for substance in Substance::ALL { th { (substance.symbol()) } }
                        @for halogen in [Halogen::Cl, Halogen::Total] { th { (halogen_head(halogen)) } }
                        th { (self.say("report-disposition")) }
                    } }
                    tbody {
                        @for material in all.iter().take(MATERIAL_ROWS) { (self.material(material)) }
                    }
                }
            }
        }
    }

    fn material(&self, material: &MaterialFinding) -> Markup {
        let lot = self.findings.lots.get(material.lot).map(|lot| self.lot_name(lot)).unwrap_or_default();
        html! {
            tr {
                td class="id" {
                    b { (self.or_not_stated(material.name.as_deref())) } br;
                    (self.say("report-part")) " " (self.or_not_stated(material.part.as_deref())) br;
                    (self.say("report-lot")) " " (lot)
                }
                td { (self.say(&format!("class-{}", material.class.code()))) }
                td class="n" { (material.readings.len()) }
                @for substance in Substance::ALL { td { (self.outcome(material.tally.worst(substance))) } }
                @for halogen in [Halogen::Cl, Halogen::Total] { td { (self.outcome(material.tally.worst_halogen(halogen))) } }
                td { (self.material_disposition(material.disposition)) }
            }
        }
    }
}
