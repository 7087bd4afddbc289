//! Check readings over time: each instrument, mode, sample, class and element is a stream, of this inspection and of the
//! history that was given, and each stream is a control chart.

use std::collections::{BTreeMap, BTreeSet};

use crate::acts::Settings;
use crate::control::{self, Certified, Chart};
use crate::day::Day;
use crate::history::CheckRecord;
use crate::inspection::{Findings, Inspection};
use crate::instant::Moment;
use crate::judging::{JUDGED, SourceReview};
use crate::material::MaterialClass;
use crate::quantity::{MassFraction, Sigma};
use crate::reading::{CellState, Identity, codes};
use crate::substance::Element;

/// Fewest points of a stream that is shown as a chart.
pub const FEWEST_POINTS: usize = 2;

codes! {
    /// Where a point of a chart comes from.
    PointFrom {
        /// A reading of this inspection.
        Now => "now",
        /// A record of the history that was given.
        History => "history",
    }
}

codes! {
    /// What the repeatability in limits from a certificate rests on.
    RepeatabilityFrom {
        /// The site's table, at the action level.
        SiteTable => "site_table",
        /// The uncertainties that the check readings state, as a mean square.
        Stated => "stated",
    }
}

/// What makes a stream.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct StreamKey {
    /// Instrument; empty where nothing says it.
    pub instrument: String,
    /// Measuring mode; empty where nothing says it.
    pub mode: String,
    /// The check sample.
    pub sample: String,
    /// Class of its matrix.
    pub class: MaterialClass,
    /// The element.
    pub element: Element,
}

/// One point of a stream.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Point {
    /// When, as the source says it; empty where it doesn't.
    pub time: String,
    /// The value in mg/kg.
    pub value: MassFraction,
    /// One sigma as stated.
    pub sigma: Option<MassFraction>,
    /// Where it comes from.
    pub from: PointFrom,
    /// SHA-256 of its file.
    pub source: String,
    /// Its line there.
    pub line: u32,
}

/// A stream with its chart.
#[derive(Clone, Debug, PartialEq)]
pub struct Stream {
    /// What makes it.
    pub key: StreamKey,
    /// Its points in the order of their times.
    pub points: Vec<Point>,
    /// Readings that have no place in the order, because they state no time.
    pub without_time: usize,
    /// What the repeatability rests on, where limits are from the certificate.
    pub repeatability_from: Option<RepeatabilityFrom>,
    /// The chart.
    pub chart: Chart,
}

impl Stream {
    /// True where this inspection measured it.
    pub fn is_of_now(&self) -> bool {
        self.points.iter().any(|point| point.from == PointFrom::Now)
    }

    /// True where something is said at one of the newest points: those of this inspection.
    pub fn signals_now(&self) -> bool {
        let now = |at: usize| self.points.get(at).is_some_and(|point| point.from == PointFrom::Now);
        self.chart.signals.iter().any(|signal| now(signal.at))
    }
}

/// The check readings of an inspection as records of a history: one for each number. A reading that a person set aside is
/// none of them.
pub fn records_of(inspection: &Inspection, findings: &Findings) -> BTreeSet<CheckRecord> {
    let settings = inspection.settings();
    let certificates = settings.certificates();
    let mut records = BTreeSet::new();
    for (at, source) in inspection.sources.iter().enumerate() {
        if findings.checks.get(at).is_none_or(|checks| *checks == 0) {
            continue;
        }
        let first = findings.first_reading.get(at).copied().unwrap_or(0);
        let reviewer = SourceReview::new(source, &inspection.books, &settings);
        for row in 0..source.readings.len() {
            let check = findings.verdicts.get(first + row).is_some_and(|verdicts| verdicts.check);
            let line = source.readings.line(row);
            if !check || settings.set_aside().any(|(name, at, _)| name == source.name && at == line) {
                continue;
            }
            let text = |identity| source.readings.identity(identity, row).unwrap_or("").to_owned();
            let sample = text(Identity::Id);
            let certified = certificates.iter().filter(|one| one.sample == sample).map(|one| one.element);
            let mut elements: Vec<Element> = JUDGED.into_iter().chain(certified).collect();
            elements.sort_unstable();
            elements.dedup();
            for element in elements {
                let cell = source.readings.cell(element, row);
                if cell.state != CellState::Number {
                    continue;
                }
                let sigma = reviewer.printed_sigma(element, &cell, row).map(Sigma::to_mass_fraction);
                records.insert(CheckRecord {
                    instrument: text(Identity::Instrument),
                    mode: text(Identity::Mode),
                    sample: sample.clone(),
                    class: reviewer.class(row).0,
                    element,
                    time: text(Identity::Time),
                    value: cell.value,
                    sigma: sigma.filter(|sigma| *sigma > MassFraction::ZERO),
                    source: source.sha256.clone(),
                    line,
                });
            }
        }
    }
    records
}

/// Every stream with at least two points, in the order of its key, with its chart.
pub fn streams(inspection: &Inspection, findings: &Findings) -> Vec<Stream> {
    let settings = inspection.settings();
    let mut gathered = gather(inspection, &records_of(inspection, findings));
    gathered.retain(|_, points| points.len() >= FEWEST_POINTS);
    let made = gathered.into_iter().map(|(key, points)| stream(&settings, key, points));
    made.filter(|stream| stream.points.len() >= FEWEST_POINTS).collect()
}

/// All points of every stream, those of this inspection and those of the history, in no order yet. What this inspection says
/// of a line of a file stands above what the history says of it: it may have been read under other settings.
pub fn gather(inspection: &Inspection, now: &BTreeSet<CheckRecord>) -> BTreeMap<StreamKey, Vec<Point>> {
    let mut gathered: BTreeMap<StreamKey, Vec<Point>> = BTreeMap::new();
    let place = |record: &CheckRecord| (record.source.clone(), record.line, record.element);
    let read_now: BTreeSet<_> = now.iter().map(place).collect();
    let known = now.iter().map(|record| (record, PointFrom::Now));
    let earlier = inspection.history.checks.iter().filter(|record| !read_now.contains(&place(record)));
    for (record, from) in known.chain(earlier.map(|record| (record, PointFrom::History))) {
        let key = StreamKey {
            instrument: record.instrument.clone(),
            mode: record.mode.clone(),
            sample: record.sample.clone(),
            class: record.class,
            element: record.element,
        };
        let points = gathered.entry(key).or_default();
        points.push(Point {
            time: record.time.clone(),
            value: record.value,
            sigma: record.sigma,
            from,
            source: record.source.clone(),
            line: record.line,
        });
    }
    for points in gathered.values_mut() {
        once(points);
    }
    gathered
}

/// The same reading stands in every file that an analyser's memory was copied to: one moment with one value is one reading.
/// So is one line of one file with one value, whatever its uncertainty was taken for. A day alone is no moment.
fn once(points: &mut Vec<Point>) {
    let mut moments: BTreeMap<(String, MassFraction), String> = BTreeMap::new();
    let mut lines: BTreeSet<(String, u32, MassFraction)> = BTreeSet::new();
    points.retain(|point| {
        if !lines.insert((point.source.clone(), point.line, point.value)) {
            return false;
        }
        if Moment::read(&point.time).is_none_or(|moment| moment.second.is_none()) {
            return true;
        }
        let key = (point.time.clone(), point.value);
        *moments.entry(key).or_insert_with(|| point.source.clone()) == point.source
    });
}

fn stream(settings: &Settings, key: StreamKey, points: Vec<Point>) -> Stream {
    let (mut timed, untimed): (Vec<_>, Vec<_>) =
        points.into_iter().map(|point| (seconds(&point.time), point)).partition(|(at, _)| at.is_some());
    // Without times, the lines of one file are the only order there is.
    let one_file = untimed.first().is_some_and(|(_, first)| {
        untimed.iter().all(|(_, point)| point.source == first.source && point.from == PointFrom::Now)
    });
    let mut without_time = untimed.len();
    if timed.is_empty() && one_file {
        timed = untimed;
        without_time = 0;
    }
    timed.sort_by(|(at, one), (other_at, other)| {
        (at, &one.source, one.line).cmp(&(other_at, &other.source, other.line))
    });
    let first = timed.first().and_then(|(at, _)| *at).unwrap_or(0);
    let days = |at: i64| (at - first) as f64 / 86_400.0;
    let values: Vec<_> = timed.iter().map(|(at, point)| (at.map(days), point.value.to_mg_per_kg())).collect();
    let points: Vec<Point> = timed.into_iter().map(|(_, point)| point).collect();
    let (certified, repeatability_from) = certified(settings, &key, &points);
    let chart = control::chart(&values, certified, settings.control_chart());
    let by_certificate = chart.limits.is_ok_and(|limits| limits.from == control::LimitsFrom::Certificate);
    let repeatability_from = repeatability_from.filter(|_| by_certificate);
    Stream { key, points, without_time, repeatability_from, chart }
}

/// What is certified for a stream on the day of its newest point, with the repeatability of one reading: the site's at the
/// action level, else what all readings state, as a mean square.
fn certified(
    settings: &Settings,
    key: &StreamKey,
    points: &[Point],
) -> (Option<Certified>, Option<RepeatabilityFrom>) {
    let newest = points.last().and_then(|point| day_of(&point.time));
    let found = settings.certificates().into_iter().find(|one| {
        let good = one.expires.is_none_or(|last| newest.is_none_or(|day| day <= last));
        // A reading that states no class says nothing against the certificate's.
        let class = key.class == MaterialClass::Unknown || one.class.is_none_or(|class| class == key.class);
        one.sample == key.sample && one.element == key.element && class && good
    });
    let Some((certificate, sigma)) = found.and_then(|one| Some((one.value, one.sigma()?))) else {
        return (None, None);
    };
    let rows = settings.site_sigmas.iter();
    let of_site = rows
        .filter(|row| row.element == key.element && row.class == key.class)
        .map(|row| row.sigma)
        .max()
        .map(|sigma| (sigma.to_mg_per_kg(), RepeatabilityFrom::SiteTable));
    let stated = || {
        let squares: Option<Vec<f64>> = points
            .iter()
            .map(|point| point.sigma.map(|sigma| sigma.to_mg_per_kg() * sigma.to_mg_per_kg()))
            .collect();
        let squares = squares.filter(|squares| !squares.is_empty())?;
        let mean = squares.iter().sum::<f64>() / squares.len() as f64;
        Some((mean.sqrt(), RepeatabilityFrom::Stated))
    };
    let own = of_site.or_else(stated);
    let certified = Certified {
        value: certificate.to_mg_per_kg(),
        sigma: sigma.to_mg_per_kg(),
        repeatability: own.map(|(sigma, _)| sigma),
    };
    (Some(certified), own.map(|(_, from)| from))
}

fn day_of(time: &str) -> Option<Day> {
    Moment::read(time).map(|moment| moment.day)
}

/// Where a time stands on the axis, in seconds: in UTC where it states an offset, else as it stands; a day alone at its
/// beginning, in the order of the lines.
fn seconds(time: &str) -> Option<i64> {
    let moment = Moment::read(time)?;
    Some(moment.seconds().unwrap_or_else(|| moment.day.number() * 86_400))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::acts::{Act, ActKind, Target};
    use crate::control::{LimitsFrom, NoLimits};

    fn record(time: &str, value: i64, source: char, line: u32) -> CheckRecord {
        CheckRecord {
            instrument: "XRF-1".into(),
            mode: "Plastics".into(),
            sample: "CHK-1".into(),
            class: MaterialClass::Polymer,
            element: Element::PB,
            time: time.into(),
            value: MassFraction::from_mg_per_kg(value),
            sigma: Some(MassFraction::from_mg_per_kg(4)),
            source: source.to_string().repeat(64),
            line,
        }
    }

    fn of(acts: &[(ActKind, &str)], now: &[CheckRecord], earlier: &[CheckRecord]) -> Vec<Stream> {
        let mut inspection = Inspection::new().unwrap();
        inspection.acts = acts
            .iter()
            .map(|(kind, value)| Act {
                kind: *kind,
                target: Target::Inspection,
                value: (*value).into(),
                by: String::new(),
                at: String::new(),
                note: String::new(),
            })
            .collect();
        inspection.history.checks = earlier.iter().cloned().collect();
        let settings = inspection.settings();
        let now: BTreeSet<CheckRecord> = now.iter().cloned().collect();
        let gathered = gather(&inspection, &now);
        gathered.into_iter().map(|(key, points)| stream(&settings, key, points)).collect()
    }

    fn values(stream: &Stream) -> Vec<String> {
        stream.points.iter().map(|point| point.value.to_string()).collect()
    }

    #[test]
    fn a_day_alone_stands_at_its_beginning() {
        assert_eq!(seconds("1970-01-02"), Some(86_400));
        assert_eq!(seconds("2026-11-25T08:00"), Some(1_795_593_600));
        assert_eq!(seconds("2026-11-25T09:30+01:30"), Some(1_795_593_600));
        assert_eq!(seconds("25/11/2026"), None);
        assert_eq!(seconds(""), None);
    }

    #[test]
    fn points_of_now_and_before_stand_in_the_order_of_their_times_and_each_once() {
        let again = record("2026-11-01T08:00", 100, 'b', 9);
        let now = [record("2026-11-03T08:00", 103, 'b', 2), again, record("2026-11-02T08:00", 102, 'b', 5)];
        let earlier = [
            record("2026-11-01T08:00", 100, 'a', 2),
            now[0].clone(),
            record("2026-11-02T09:00", 101, 'a', 3),
        ];
        let found = of(&[], &now, &earlier);
        assert_eq!(found.len(), 1);
        assert_eq!(values(&found[0]), ["100", "102", "101", "103"]);
        let from: Vec<_> = found[0].points.iter().map(|point| point.from.code()).collect();
        assert_eq!(from, ["now", "now", "history", "now"]);
    }

    /// The same stick, reviewed again after a person said what its uncertainties and its class are.
    #[test]
    fn what_this_inspection_says_of_a_line_stands_above_the_history() {
        let now = [record("2026-11-01T08:00", 100, 'b', 2), record("2026-11-02T08:00", 101, 'b', 3)];
        let mut earlier = now.clone();
        earlier[0].sigma = None;
        earlier[1].class = MaterialClass::Unknown;
        let found = of(&[], &now, &earlier);
        assert_eq!((found.len(), values(&found[0])), (1, vec!["100".to_owned(), "101".to_owned()]));
        // Both in the history: one line with one value is one reading.
        let twice = [earlier[0].clone(), now[0].clone(), now[1].clone()];
        assert_eq!(values(&of(&[], &[], &twice)[0]), ["100", "101"]);
    }

    #[test]
    fn a_reading_without_a_time_has_a_place_only_in_its_own_file() {
        let now = [record("", 100, 'b', 2), record("", 102, 'b', 3)];
        assert_eq!(values(&of(&[], &now, &[])[0]), ["100", "102"]);
        let found = of(&[], &now, &[record("2026-11-01T08:00", 99, 'a', 2), record("", 1, 'a', 3)]);
        assert_eq!((values(&found[0]), found[0].without_time), (vec!["99".to_owned()], 3));
    }

    #[test]
    fn limits_from_the_certificate_say_what_the_repeatability_is() {
        let certificate = "sample=CHK-1;element=Pb;value=100 mg/kg;u=6 mg/kg;k=2;id=C-7;expires=2026-11-30";
        let now = [record("2026-11-01T08:00", 100, 'b', 2), record("2026-11-02T08:00", 102, 'b', 3)];
        let found = &of(&[(ActKind::Certificate, certificate)], &now, &[])[0];
        let limits = found.chart.limits.unwrap();
        assert_eq!((limits.from, limits.centre, limits.sigma), (LimitsFrom::Certificate, 100.0, 5.0));
        assert_eq!(found.repeatability_from, Some(RepeatabilityFrom::Stated));
        let site = (ActKind::SiteSigma, "element=Pb;class=polymer;s=12 mg/kg");
        let found = &of(&[(ActKind::Certificate, certificate), site], &now, &[])[0];
        assert_eq!(found.repeatability_from, Some(RepeatabilityFrom::SiteTable));
        assert!((found.chart.limits.unwrap().sigma - 153.0_f64.sqrt()).abs() < 1e-12);
        let late = [now[0].clone(), record("2026-12-01T08:00", 102, 'b', 3)];
        let found = &of(&[(ActKind::Certificate, certificate)], &late, &[])[0];
        assert_eq!((found.chart.limits, found.repeatability_from), (Err(NoLimits::TooFewPoints), None));
    }
}
