//! How, where, when and by whom it was measured: what the readings state, and what a person stated for them.

use std::collections::BTreeSet;

use maud::{Markup, html};

use super::Report;
use crate::acts::{ActKind, in_force};
use crate::day::Day;
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
            (false, false) if one.trim() != other.trim() => self.words.series(&[one, other]),
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
                @for text in self.days_amiss(stated.days.as_ref().map(|days| days.3.as_str())) { p { b { (text) } } }
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

    /// Days that can't both be right: what is reviewed was received, sampled and measured before, and issued after.
    fn days_amiss(&self, last_reading: Option<&str>) -> Vec<String> {
        let day = |text: Option<&str>| text.and_then(Moment::read).map(|moment| moment.day);
        let Some(reviewed) = day(self.set(ActKind::ReviewedAt)) else { return Vec::new() };
        let mut amiss: Vec<String> = Vec::new();
        let mut look = |earlier: (&str, Day), later: (&str, Day)| {
            if later.1 < earlier.1 {
                let (first, second) = (self.words.day(later.1), self.words.day(earlier.1));
                let text = self.with(
                    "report-day_amiss",
                    &[
                        ("later", &self.say(later.0)),
                        ("later_day", &first),
                        ("earlier", &self.say(earlier.0)),
                        ("earlier_day", &second),
                    ],
                );
                if !amiss.contains(&text) {
                    amiss.push(text);
                }
            }
        };
        let of_review = ("report-reviewed", reviewed);
        if let Some(issued) = day(self.set(ActKind::IssuedOn)) {
            look(of_review, ("report-issued_on", issued));
        }
        if let Some(last) = day(last_reading) {
            look(("report-measured_when", last), of_review);
        }
        for lot in &self.findings.lots {
            for (kind, field, name) in
                [(ActKind::Received, "", "report-received"), (ActKind::Sampled, "date", "report-day_sampled")]
            {
                if let Some(stated) = day(self.stated_of(lot, kind, field).as_deref()) {
                    look((name, stated), of_review);
                }
            }
        }
        amiss
    }

    fn deviations(&self) -> String {
        let said = self.or_not_stated(self.set(ActKind::Deviations));
        let mut more = Vec::new();
        let aside = self.findings.set_aside.len();
        if aside > 0 {
            more.push(self.with("report-deviations_aside", &[("count", &aside.to_string())]));
        }
        let refused: u64 = self.inspection.sources.iter().map(|source| source.rows_refused).sum();
        if refused > 0 {
            more.push(self.with("report-deviations_refused", &[("count", &refused.to_string())]));
        }
        if more.is_empty() {
            return said;
        }
        // A sentence ends before the next begins; a person's words may end as they like.
        let ended = said.trim_end_matches(['.', '\u{3002}']);
        more.insert(0, self.with("report-deviations_said", &[("text", ended)]));
        self.words.sentences(&more)
    }

    fn external(&self) -> String {
        // Also those that no material of the tables belongs to: they were given.
        let given = |kind| matches!(kind, ActKind::Laboratory | ActKind::Cr6Area);
        let count = in_force(&self.inspection.acts).filter(|act| given(act.kind)).count();
        if count == 0 {
            return self.say("report-external_none");
        }
        self.with("report-external_count", &[("count", &count.to_string())])
    }
}
