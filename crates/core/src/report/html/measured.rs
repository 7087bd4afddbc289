//! How, where, when and by whom it was measured: what the readings state, and what a person stated for them.

use std::collections::BTreeSet;

use maud::{Markup, html};

use super::Report;
use crate::acts::ActKind;
use crate::instant::Moment;
use crate::reading::Identity;

/// Most names of one kind that are printed.
const NAMES: usize = 12;

/// What the readings state of themselves.
#[derive(Default)]
struct Stated {
    instruments: BTreeSet<String>,
    modes: BTreeSet<String>,
    operators: BTreeSet<String>,
    /// First and last day.
    days: Option<(i64, String, i64, String)>,
    undated: u64,
    /// Shortest and longest measuring time in seconds, as written.
    seconds: Option<(f64, String, f64, String)>,
}

impl Stated {
    fn add_day(&mut self, text: Option<&str>) {
        let Some(moment) = text.and_then(Moment::read) else {
            self.undated += 1;
            return;
        };
        let (number, day) = (moment.day.number(), moment.day.to_string());
        match &mut self.days {
            None => self.days = Some((number, day.clone(), number, day)),
            Some((first, first_day, last, last_day)) => {
                if number < *first {
                    (*first, *first_day) = (number, day);
                } else if number > *last {
                    (*last, *last_day) = (number, day);
                }
            }
        }
    }

    fn add_seconds(&mut self, text: Option<&str>) {
        let Some(text) = text else { return };
        let Ok(number) = text.trim().replace(',', ".").parse::<f64>() else { return };
        match &mut self.seconds {
            None => self.seconds = Some((number, text.to_owned(), number, text.to_owned())),
            Some((least, least_text, most, most_text)) => {
                if number.total_cmp(least).is_lt() {
                    (*least, *least_text) = (number, text.to_owned());
                } else if number.total_cmp(most).is_gt() {
                    (*most, *most_text) = (number, text.to_owned());
                }
            }
        }
    }
}

impl Report<'_> {
    fn stated_by_readings(&self) -> Stated {
        let mut stated = Stated::default();
        for (at, source) in self.inspection.sources.iter().enumerate() {
            if self.findings.same_as.get(at).copied().flatten().is_some() {
                continue;
            }
            for row in 0..source.readings.len() {
                let said = |identity| source.readings.identity(identity, row);
                for (identity, names) in [
                    (Identity::Instrument, &mut stated.instruments),
                    (Identity::Mode, &mut stated.modes),
                    (Identity::Operator, &mut stated.operators),
                ] {
                    if let Some(name) = said(identity)
                        && !names.contains(name)
                    {
                        names.insert(name.to_owned());
                    }
                }
                stated.add_day(said(Identity::Time));
                stated.add_seconds(said(Identity::Seconds));
            }
        }
        stated
    }

    /// The first names of a set, and how many more there are; empty where there are none.
    fn names(&self, names: &BTreeSet<String>) -> String {
        let list = self.words.series(&names.iter().take(NAMES).collect::<Vec<_>>());
        match names.len().saturating_sub(NAMES) {
            0 => list,
            more => self.with("report-and_more", &[("list", &list), ("count", &more.to_string())]),
        }
    }

    pub(super) fn measured(&self) -> Markup {
        let stated = self.stated_by_readings();
        let or_not = |text: String| if text.is_empty() { self.say("not-stated") } else { text };
        let said = |kind| self.set(kind).unwrap_or("").to_owned();
        let both = |one: String, other: String| match (one.is_empty(), other.is_empty()) {
            (false, false) if one != other => format!("{one}; {other}"),
            (true, _) => other,
            _ => one,
        };
        let mut when = match &stated.days {
            Some((first, day, last, _)) if first == last => self.words.moment(day),
            Some((_, from, _, until)) => self.with(
                "report-measured_days",
                &[("from", &self.words.moment(from)), ("until", &self.words.moment(until))],
            ),
            None => String::new(),
        };
        if stated.undated > 0 {
            let undated = self.with("report-measured_undated", &[("count", &stated.undated.to_string())]);
            when = both(when, undated);
        }
        let seconds = match &stated.seconds {
            Some((least, text, most, _)) if least.total_cmp(most).is_eq() => {
                self.with("report-seconds_one", &[("from", &self.words.number(text))])
            }
            Some((_, from, _, until)) => self.with(
                "report-seconds_range",
                &[("from", &self.words.number(from)), ("until", &self.words.number(until))],
            ),
            None => String::new(),
        };
        let instruments = both(self.names(&stated.instruments), said(ActKind::Instrument));
        let operators = both(self.names(&stated.operators), said(ActKind::Inspector));
        html! {
            section {
                h2 { (self.say("report-measured")) }
                dl class="key" {
                    dt { (self.say("report-measured_when")) }
                    dd data-element="7.8.2.1-i 62321-1-4.8-tested" { (or_not(when)) }
                    dt { (self.say("report-place")) }
                    dd data-element="7.8.2.1-c 62321-1-4.8-location" { (or_not(said(ActKind::Place))) }
                    dt { (self.say("report-operators")) }
                    dd data-element="62321-1-4.8-operator" { (or_not(operators)) }
                    dt { (self.say("report-instruments")) }
                    dd data-element="7.8.2.1-f-instrument" { (or_not(instruments)) }
                    dt { (self.say("report-modes")) } dd { (or_not(self.names(&stated.modes))) }
                    dt { (self.say("report-seconds")) } dd { (or_not(seconds)) }
                    dt { (self.say("report-environment")) }
                    dd data-element="7.8.3-conditions 7.8.5-environment" { (or_not(said(ActKind::Environment))) }
                    dt { (self.say("report-deviations")) }
                    dd data-element="7.8.2.1-n 62321-1-4.8-details" { (self.deviations()) }
                    dt { (self.say("report-external")) }
                    dd data-element="7.8.2.1-p" { (self.external()) }
                    dt { (self.say("report-records_kept")) }
                    dd data-element="63000-kept" { (or_not(said(ActKind::RecordsKept))) }
                }
            }
        }
    }

    fn deviations(&self) -> String {
        let said = self.or_not_stated(self.set(ActKind::Deviations));
        // A sentence ends before the next begins; a person's words may end as they like.
        let mut parts =
            vec![self.with("report-deviations_said", &[("text", said.trim_end_matches(['.', '\u{3002}']))])];
        let aside = self.findings.set_aside.len();
        if aside > 0 {
            parts.push(self.with("report-deviations_aside", &[("count", &aside.to_string())]));
        }
        let refused: u64 = self.inspection.sources.iter().map(|source| source.rows_refused).sum();
        if refused > 0 {
            parts.push(self.with("report-deviations_refused", &[("count", &refused.to_string())]));
        }
        self.words.sentences(&parts)
    }

    fn external(&self) -> String {
        let materials = &self.findings.materials;
        let count: usize =
            materials.iter().map(|material| material.laboratory.len() + material.claims.cr6.len()).sum();
        if count == 0 {
            return self.say("report-external_none");
        }
        self.with("report-external_count", &[("count", &count.to_string())])
    }
}
