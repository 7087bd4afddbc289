//! Repeats of one spot and spots beside each other, for each material that has them.

use std::collections::BTreeMap;

use maud::{Markup, html};

use super::Report;
use crate::inspection::MaterialFinding;
use crate::judging::{GroupAssessed, JUDGED, PooledElement};
use crate::material::MaterialClass;
use crate::outcome::Judgement;
use crate::pool::Spots;
use crate::reading::{CellState, Identity};
use crate::report::{phrases, repeats, rulers};
use crate::ruler::Picture;
use crate::substance::{Element, Halogen, Substance};

/// Most groups of repeats that are printed.
const GROUPS: usize = 200;
/// Most repeats of a group whose values are printed.
const VALUES: usize = 12;

/// The repeats of one spot: the source and the group in it.
type Place = (usize, usize);

impl Report<'_> {
    pub(super) fn repeats(&self) -> Markup {
        let groups = self.groups_by_material();
        let total: usize = groups.values().map(Vec::len).sum();
        let mut left = GROUPS;
        let mut parts = Vec::new();
        for (at, material) in self.findings.materials.iter().enumerate() {
            let own = groups.get(&at).map_or(&[][..], Vec::as_slice);
            let own = own.get(..own.len().min(left)).unwrap_or(&[]);
            left -= own.len();
            let spots = repeats::spots(self.inspection, self.findings, &self.reviewers, material);
            if !own.is_empty() || !spots.is_empty() {
                parts.push(self.repeats_of(material, own, &spots));
            }
        }
        html! {
            section {
                h2 { (self.say("report-repeats")) }
                @if parts.is_empty() {
                    p { (self.say("report-repeats_none")) }
                } @else {
                    p class="sub" { (self.say("report-repeats_text")) }
                    (self.capped("report-repeats_capped", GROUPS, total))
                    @for part in parts { (part) }
                }
            }
        }
    }

    /// The groups of repeats of every material; check readings are of none.
    fn groups_by_material(&self) -> BTreeMap<usize, Vec<Place>> {
        let mut by_reading: BTreeMap<u32, Place> = BTreeMap::new();
        for (at, reviewer) in self.reviewers.iter().enumerate() {
            let first = self.findings.first_reading.get(at).copied().unwrap_or(0);
            let same = self.findings.same_as.get(at).copied().flatten().is_some();
            for (group, rows) in reviewer.repeats().groups().iter().enumerate().filter(|_| !same) {
                if let Some(row) = rows.first() {
                    by_reading.insert(first as u32 + row, (at, group));
                }
            }
        }
        let mut groups: BTreeMap<usize, Vec<Place>> = BTreeMap::new();
        if by_reading.is_empty() {
            return groups;
        }
        for (at, material) in self.findings.materials.iter().enumerate() {
            for place in material.readings.iter().filter_map(|reading| by_reading.get(reading)) {
                groups.entry(at).or_default().push(*place);
            }
        }
        groups
    }

    fn repeats_of(&self, material: &MaterialFinding, groups: &[Place], spots: &[(Element, Spots)]) -> Markup {
        html! {
            h3 { (self.material_name(material)) }
            @if !groups.is_empty() {
                table class="tight" {
                    thead { tr {
                        th { (self.say("report-spot")) } th { (self.say("report-element")) }
                        th { (self.say("report-repeats_values")) } th { (self.say("report-together")) }
                        th { (self.say("report-how")) }
                    } }
                    @for (at, group) in groups { (self.group(*at, *group)) }
                }
            }
            @if !spots.is_empty() { (self.spots(spots)) }
        }
    }

    fn spots(&self, spots: &[(Element, Spots)]) -> Markup {
        let p = |found: &Spots| repeats::chance(self.words, found.p());
        let alike: Vec<String> = spots
            .iter()
            .filter(|(_, found)| !found.differ())
            .map(|(element, found)| {
                let arguments =
                    [("about", element.symbol()), ("n", &found.spots.to_string()), ("p", &p(found))];
                self.with("report-spots_of", &arguments)
            })
            .collect();
        html! {
            ul {
                @for (element, found) in spots.iter().filter(|(_, found)| found.differ()) {
                    li {
                        b { (element.symbol()) (self.words.colon()) }
                        (self.with("spots-differ", &[("n", &found.spots.to_string()), ("p", &p(found))]))
                    }
                }
                @if !alike.is_empty() { li { (self.with("report-spots_alike", &[("list", &self.words.list(&alike))])) } }
            }
        }
    }

    fn group(&self, at: usize, group: usize) -> Markup {
        let place = self.inspection.sources.get(at).zip(self.reviewers.get(at));
        let Some((source, reviewer)) = place else { return html! {} };
        let Some(rows) = reviewer.repeats().groups().get(group) else { return html! {} };
        let Some(first) = rows.first().map(|row| *row as usize) else { return html! {} };
        let (class, class_from) = reviewer.class(first);
        let assessed = reviewer.assess_group(group, class, class_from);
        let spot: Vec<&str> = [Identity::Id, Identity::Unit, Identity::Spot]
            .iter()
            .filter_map(|identity| source.readings.identity(*identity, first))
            .collect();
        let lines: Vec<String> =
            rows.iter().map(|row| source.readings.line(*row as usize).to_string()).collect();
        let name = |index: usize| {
            let line = lines.get(index).cloned().unwrap_or_default();
            self.with("repeats-line", &[("line", &line)])
        };
        let measured = |element: &Element| {
            rows.iter().any(|row| {
                let state = source.readings.cell(*element, *row as usize).state;
                !matches!(state, CellState::NoColumn | CellState::Blank)
            })
        };
        let elements: Vec<(usize, Element)> =
            JUDGED.into_iter().enumerate().filter(|(_, element)| measured(element)).collect();
        html! {
            tbody class="one" {
                tr class="who" { td colspan="5" {
                    b { (spot.join(" · ")) } " · " (source.name) (self.words.comma()) (self.say("report-lines")) " " (self.words.list(&lines))
                } }
                @for (at, element) in elements {
                    @if let Some(one) = assessed.elements.get(at) {
                        tr {
                            td {}
                            td { (element.symbol()) }
                            td {
                                @for (index, row) in rows.iter().take(VALUES).enumerate() {
                                    @if index > 0 { "; " }
                                    (phrases::cell_short(
                                        self.words,
                                        &source.readings.cell(element, *row as usize),
                                        &phrases::written_of(source, element, *row as usize),
                                    ))
                                }
                                @if rows.len() > VALUES { "; …" }
                            }
                            td { (self.together(&assessed, at, one, class)) }
                            td { (repeats::told(self.words, &self.inspection.books, one, rows.len(), &name)) }
                        }
                    }
                }
            }
        }
    }

    /// What the ruler of repeats that are judged together draws.
    fn pooled(
        &self,
        at: usize,
        one: &PooledElement,
        class: MaterialClass,
        judged: &Judgement,
    ) -> Option<Picture> {
        let books = &self.inspection.books;
        let (cell, _) = one.judged?;
        match Substance::ALL.get(at) {
            Some(substance) => rulers::pictured(books.screening()?.1, *substance, class, &cell, judged),
            None => rulers::pictured_halogen(books.halogens()?.1, Halogen::Cl, &cell, judged),
        }
    }

    /// What the repeats are judged as together: value and outcome, or that each stands for itself.
    fn together(
        &self,
        assessed: &GroupAssessed,
        at: usize,
        one: &PooledElement,
        class: MaterialClass,
    ) -> Markup {
        let counted: Option<&Judgement> = match assessed.substances.get(at) {
            Some(true) => assessed.together.substances.get(at),
            None if assessed.halogens[0] => assessed.together.halogens.first(),
            _ => None,
        };
        let value = one.judged.map(|(cell, used)| {
            let value = phrases::cell_short(self.words, &cell, "");
            match used.sigma {
                Some(sigma) => {
                    let sigma = self.words.number(&phrases::rounded(sigma.to_mass_fraction()));
                    format!("{value}\u{a0}±\u{a0}{sigma}")
                }
                None => value,
            }
        });
        html! {
            @match (counted, value) {
                (Some(judged), Some(value)) => {
                    (self.outcome(judged.outcome)) br; (value)
                    @if let Some(picture) = self.pooled(at, one, class, judged) { (self.strip(&picture)) }
                }
                (None, Some(value)) => { (value) br; (self.say("report-one_is_over")) }
                _ => (self.say("report-each_alone")),
            }
        }
    }
}
