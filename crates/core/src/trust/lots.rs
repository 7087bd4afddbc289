//! What trust says of a lot: which readings, of which element, when, by which instrument.

use std::collections::BTreeMap;

use super::brackets::{Asked, Between, second_of};
use super::{CheckVerdict, ELEMENTS, Judged, Trust};
use crate::identity::Identity;
use crate::instant::{Clock, Moment};
use crate::lot::{Disposition, LotReason, LotReasonCode};
use crate::material::MaterialClass;
use crate::reading::Source;
use crate::rules::JUDGED;
use crate::text_pool::TextId;

/// Windows of one element that are named one by one; more are put together, one an instrument.
const WINDOWS_NAMED: usize = 8;

/// Second (or row), source and row of a reading.
type Place = (i64, usize, usize);

/// A run of readings that lie between the same checks.
#[derive(Clone, Debug)]
struct Window {
    count: u64,
    first: Place,
    last: Place,
}

impl Window {
    fn join(&mut self, other: &Window) {
        self.count += other.count;
        self.first = self.first.min(other.first);
        self.last = self.last.max(other.last);
    }
}

/// Element, trust, instrument and mode, class, run.
type WindowKey = (usize, Trust, usize, usize, u32);

/// Trust, first and last reading, instrument and mode.
type SharedKey = (Trust, Place, Place, usize);

/// Source, instrument and mode as it writes them, and class of readings that no check covers.
type NoneKey = (usize, TextId, TextId, MaterialClass);

/// Puts the window of one reading to those of its run. Trusted readings have one only where their checks stand far apart.
fn add_window(
    windows: &mut BTreeMap<WindowKey, Window>,
    (element, trust): (usize, Trust),
    between: &Between,
    judged: &Judged,
    own: &Window,
) {
    let run = judged.brackets.run(*between, element, trust).unwrap_or_default();
    windows
        .entry((element, trust, between.station, between.class as usize, run))
        .and_modify(|window| window.join(own))
        .or_insert_with(|| own.clone());
}

fn count(counts: &mut [u64; ELEMENTS], element: usize) {
    if let Some(count) = counts.get_mut(element) {
        *count += 1;
    }
}

/// The elements with the same count, each count once.
fn together(counts: &[u64; ELEMENTS]) -> Vec<(String, u64)> {
    let mut found: Vec<(String, u64)> = Vec::new();
    for (element, count) in JUDGED.iter().zip(*counts).filter(|(_, count)| *count > 0) {
        if let Some((elements, _)) = found.iter_mut().find(|(_, known)| *known == count) {
            elements.push(' ');
            elements.push_str(element.symbol());
        } else {
            found.push((element.symbol().to_owned(), count));
        }
    }
    found
}

/// The trust of the readings of one lot, added up.
pub struct Lots<'a> {
    judged: &'a Judged,
    sources: &'a [Source],
    place: &'a dyn Fn(usize) -> Option<(usize, usize)>,
}

impl<'a> Lots<'a> {
    /// Ready to add up lots; `place` gives source and row of a reading.
    pub fn new(
        judged: &'a Judged,
        sources: &'a [Source],
        place: &'a dyn Fn(usize) -> Option<(usize, usize)>,
    ) -> Lots<'a> {
        Lots { judged, sources, place }
    }

    /// The reasons of a lot with these readings. `missing` is what missing trust does; failed trust holds whatever that is.
    pub fn reasons(&self, readings: &mut dyn Iterator<Item = u32>, missing: Disposition) -> Vec<LotReason> {
        let judged = self.judged;
        let trust = &judged.findings;
        let mut total = 0;
        // Not covered: with a standard that only lacks its certificate, and without any that fits.
        let (mut uncertified, mut covered) = ([0_u64; ELEMENTS], false);
        let mut none: BTreeMap<NoneKey, [u64; ELEMENTS]> = BTreeMap::new();
        // Between checks of which something is lacking that no measurement brings.
        let mut lacking: BTreeMap<usize, [u64; ELEMENTS]> = BTreeMap::new();
        let may_be_certified = judged.brackets.has_uncertified();
        let may_be_far = judged.brackets.has_far();
        let (mut other_times, mut marks) = (0, 0);
        let mut windows: BTreeMap<WindowKey, Window> = BTreeMap::new();
        let mut asked = None;
        for reading in readings {
            total += 1;
            if trust.of_readings.is_empty() && judged.marks_not_taken.is_empty() {
                continue;
            }
            marks += u64::from(judged.marks_not_taken.binary_search(&reading).is_ok());
            other_times += u64::from(judged.other_times.binary_search(&reading).is_ok());
            let of = trust.of(reading as usize);
            let (mut found, mut fits, mut far) = (None, None, None);
            for (element, trust) in of.into_iter().enumerate() {
                match trust {
                    None => {}
                    Some(Trust::Ok) => {
                        covered = true;
                        if !may_be_far {
                            continue;
                        }
                        found = found.or_else(|| self.find(&mut asked, reading));
                        let Some((between, own)) = &found else { continue };
                        let far = *far.get_or_insert_with(|| {
                            let (_, at, row) = own.first;
                            judged.brackets.far(*between, self.moment(at, row).map(second_of))
                        });
                        if far.get(element).is_some_and(|far| *far) {
                            add_window(&mut windows, (element, Trust::Ok), between, judged, own);
                        }
                    }
                    Some(Trust::None) => {
                        let fits = *fits.get_or_insert_with(|| {
                            let between =
                                may_be_certified.then(|| self.between(&mut asked, reading)).flatten();
                            between.map_or([false; ELEMENTS], |(between, ..)| {
                                judged.brackets.uncertified(between)
                            })
                        });
                        let counts = if fits.get(element).is_some_and(|fits| *fits) {
                            &mut uncertified
                        } else {
                            let Some(key) = self.none_key(reading) else { continue };
                            none.entry(key).or_default()
                        };
                        count(counts, element);
                    }
                    Some(trust) => {
                        covered = true;
                        found = found.or_else(|| self.find(&mut asked, reading));
                        let Some((between, own)) = &found else { continue };
                        if trust == Trust::NotBracketed
                            && let Some(check) = judged.brackets.lacking(*between, element)
                        {
                            count(lacking.entry(check).or_default(), element);
                            continue;
                        }
                        add_window(&mut windows, (element, trust), between, judged, own);
                    }
                }
            }
        }
        let mut reasons = Vec::new();
        let mut add = |code, effect, about: String, count| {
            reasons.push(LotReason { code, effect, about, count, of: total });
        };
        for ((trust, ..), (elements, window)) in same_for_several(merged(windows)) {
            let about = self.name(&elements, &window);
            match trust {
                Trust::Failed => add(LotReasonCode::TrustFailed, Disposition::Hold, about, window.count),
                Trust::Ok => add(LotReasonCode::ChecksFarApart, missing, about, window.count),
                _ => add(LotReasonCode::TrustNotBracketed, missing, about, window.count),
            }
        }
        let (any_judged, none_fits) = (trust.any_judged(), !none.is_empty());
        let some = uncertified.iter().any(|count| *count > 0);
        if trust.checks.is_empty() {
            add(LotReasonCode::TrustNone, missing, String::new(), 0);
        } else if total > 0 && !covered && !none_fits && any_judged && !some {
            add(LotReasonCode::TrustNone, missing, String::new(), total);
        } else if !covered && !any_judged && (some || !none_fits) {
            // Where nothing at all could be judged, one sentence says it of every element.
            let count = trust.checks.len() as u64;
            add(LotReasonCode::TrustNotJudged, missing, String::new(), count);
            uncertified = [0; ELEMENTS];
        }
        for (tail, counts) in self.named(none, lacking, uncertified) {
            let code = if tail.0 { LotReasonCode::TrustNotCertified } else { LotReasonCode::TrustNone };
            for (elements, count) in together(&counts) {
                add(code, missing, elements + &tail.1, count);
            }
        }
        for (code, count) in
            [(LotReasonCode::CheckTimesDiffer, other_times), (LotReasonCode::MarkNotTaken, marks)]
        {
            if count > 0 {
                add(code, Disposition::Accept, String::new(), count);
            }
        }
        reasons
    }

    fn none_key(&self, reading: u32) -> Option<NoneKey> {
        let (at, row) = (self.place)(reading as usize)?;
        let readings = &self.sources.get(at)?.readings;
        let [instrument, mode] =
            [Identity::Instrument, Identity::Mode].map(|identity| readings.identity_id(identity, row));
        Some((at, instrument, mode, *self.judged.classes.get(reading as usize)?))
    }

    /// What each element lacks, put together by what is said of it beside the elements: whether a certificate (or what a
    /// check was judged by) is what is missing, and then which; or else the instrument, the mode and the class of a check.
    fn named(
        &self,
        none: BTreeMap<NoneKey, [u64; ELEMENTS]>,
        lacking: BTreeMap<usize, [u64; ELEMENTS]>,
        uncertified: [u64; ELEMENTS],
    ) -> BTreeMap<(bool, String), [u64; ELEMENTS]> {
        let mut found = BTreeMap::from([((true, String::new()), uncertified)]);
        let many = none.len() > WINDOWS_NAMED;
        for ((at, instrument, mode, class), counts) in none {
            let pool = self.sources.get(at).map(|source| &source.readings.pool);
            let text = |id| pool.and_then(|pool| pool.get(id)).filter(|_| !many).unwrap_or("–");
            let tail = [", ", text(instrument), ", ", text(mode), ", ", class.code()].concat();
            let known = found.entry((false, tail)).or_default();
            for (known, count) in known.iter_mut().zip(counts) {
                *known += count;
            }
        }
        for (check, counts) in lacking {
            let Some(check) = self.judged.findings.checks.get(check) else { continue };
            for (at, (element, number)) in JUDGED.iter().zip(counts).enumerate().filter(|(_, (_, n))| *n > 0)
            {
                let Some(one) = check.elements.iter().find(|one| one.element == *element) else { continue };
                let certificate = one.certificate.and_then(|at| self.judged.findings.certificates.get(at));
                let Some(certificate) = certificate else { continue };
                let day = certificate.expires.filter(|_| one.verdict == CheckVerdict::Expired);
                let cause = day.map_or_else(|| one.verdict.code().to_owned(), |day| day.to_string());
                let tail = [", ", &check.sample, ", ", &certificate.id, ", ", &cause].concat();
                let known = found.entry((true, tail)).or_default();
                if let Some(known) = known.get_mut(at) {
                    *known += number;
                }
            }
        }
        found
    }

    /// Between which checks a reading lies, and its source and row.
    fn between(
        &self,
        asked: &mut Option<(usize, Asked<'a>)>,
        reading: u32,
    ) -> Option<(Between, usize, usize)> {
        let (at, row) = (self.place)(reading as usize)?;
        if asked.as_ref().is_none_or(|(known, _)| *known != at) {
            *asked = Some((at, self.judged.brackets.of_source(at, self.sources.get(at)?)));
        }
        let class = *self.judged.classes.get(reading as usize)?;
        Some((asked.as_mut()?.1.between(row, class)?, at, row))
    }

    /// Between which checks a reading lies, and the window that it makes alone.
    fn find(&self, asked: &mut Option<(usize, Asked<'a>)>, reading: u32) -> Option<(Between, Window)> {
        let (between, at, row) = self.between(asked, reading)?;
        let position = self.moment(at, row).and_then(Moment::seconds).unwrap_or(row as i64);
        let place = (position, at, row);
        Some((between, Window { count: 1, first: place, last: place }))
    }

    fn moment(&self, at: usize, row: usize) -> Option<Moment> {
        Moment::read(self.sources.get(at)?.readings.identity(Identity::Time, row)?)
    }

    /// `Pb 2026-11-17 08:10–10:45, XRF-A`; of a file that goes by its rows, `Cd Pb lot.csv:12–30, XRF-A`.
    fn name(&self, elements: &[usize], window: &Window) -> String {
        let symbols: Vec<&str> =
            elements.iter().filter_map(|at| JUDGED.get(*at)).map(|element| element.symbol()).collect();
        let symbol = symbols.join(" ");
        let ((_, at, first), (_, end, last)) = (window.first, window.last);
        let Some(source) = self.sources.get(at) else { return symbol };
        let times = (self.moment(at, first), self.moment(end, last));
        let span = match times {
            (Some(from), Some(to)) if !self.judged.brackets.goes_by_rows(at) => span(from, to),
            _ => {
                let (from, to) = (source.readings.line(first), source.readings.line(last));
                if from == to {
                    format!("{}:{from}", source.name)
                } else {
                    format!("{}:{from}–{to}", source.name)
                }
            }
        };
        let mut name = format!("{symbol} {span}");
        for identity in [Identity::Instrument, Identity::Mode] {
            if let Some(text) = source.readings.identity(identity, first) {
                name.push_str(", ");
                name.push_str(text);
            }
        }
        name
    }
}

/// Windows that several elements share, each once; what fails for one element mostly fails for all. Of readings that were
/// not measured for all of them, the largest count speaks.
fn same_for_several(windows: BTreeMap<WindowKey, Window>) -> BTreeMap<SharedKey, (Vec<usize>, Window)> {
    let mut found: BTreeMap<_, (Vec<usize>, Window)> = BTreeMap::new();
    for ((element, trust, station, ..), window) in windows {
        let shared = found
            .entry((trust, window.first, window.last, station))
            .or_insert_with(|| (Vec::new(), window.clone()));
        shared.0.push(element);
        shared.1.count = shared.1.count.max(window.count);
    }
    found
}

fn span(from: Moment, to: Moment) -> String {
    match (from.second, to.second) {
        _ if from == to => from.to_string(),
        (Some(begin), Some(end)) if from.day == to.day && begin / 60 == end / 60 => from.to_string(),
        (Some(_), Some(end)) if from.day == to.day => format!("{from}–{}", Clock(end)),
        _ => format!("{from} – {to}"),
    }
}

/// Many windows of one element put together, one an instrument and mode.
fn merged(windows: BTreeMap<WindowKey, Window>) -> BTreeMap<WindowKey, Window> {
    let mut counts: BTreeMap<(usize, Trust), usize> = BTreeMap::new();
    for (element, trust, ..) in windows.keys() {
        *counts.entry((*element, *trust)).or_default() += 1;
    }
    let mut found: BTreeMap<WindowKey, Window> = BTreeMap::new();
    for ((element, trust, station, class, run), window) in windows {
        let many = counts.get(&(element, trust)).is_some_and(|count| *count > WINDOWS_NAMED);
        let key = if many { (element, trust, station, 0, 0) } else { (element, trust, station, class, run) };
        found.entry(key).and_modify(|known| known.join(&window)).or_insert(window);
    }
    found
}

#[cfg(test)]
mod tests {
    use super::*;

    fn window(at: i64, count: u64) -> Window {
        Window { count, first: (at, 0, at as usize), last: (at + 9, 0, at as usize + 9) }
    }

    #[test]
    fn a_span_names_a_day_once() {
        let moment = |text| Moment::read(text).unwrap();
        for (from, to, said) in [
            ("2026-11-17T08:10", "2026-11-17T10:45:30", "2026-11-17 08:10–10:45"),
            ("2026-11-17T08:10:01", "2026-11-17T08:10:59", "2026-11-17 08:10"),
            ("2026-11-17T23:50", "2026-11-18T00:10", "2026-11-17 23:50 – 2026-11-18 00:10"),
            ("2026-11-17", "2026-11-17", "2026-11-17"),
            ("2026-11-17", "2026-11-18", "2026-11-17 – 2026-11-18"),
        ] {
            assert_eq!(span(moment(from), moment(to)), said);
        }
    }

    #[test]
    fn a_few_windows_are_named_and_many_are_put_together() {
        let windows = |count: u32| -> BTreeMap<WindowKey, Window> {
            (0..count).map(|run| ((1, Trust::Failed, 0, 0, run), window(i64::from(run) * 100, 2))).collect()
        };
        assert_eq!(merged(windows(8)).len(), 8);
        let mut many = windows(9);
        many.insert((1, Trust::NotBracketed, 0, 0, 9), window(5, 1));
        let merged = merged(many);
        assert_eq!(merged.len(), 2, "one of each kind");
        let failed = &merged[&(1, Trust::Failed, 0, 0, 0)];
        assert_eq!((failed.count, failed.first.0, failed.last.0), (18, 0, 809));
    }

    #[test]
    fn elements_that_share_a_window_share_a_reason() {
        let windows = BTreeMap::from([
            ((0, Trust::Failed, 0, 0, 0), window(0, 3)),
            ((1, Trust::Failed, 0, 0, 0), window(0, 4)),
            ((2, Trust::Failed, 0, 0, 0), window(1, 4)),
            ((3, Trust::NotBracketed, 0, 0, 0), window(0, 4)),
        ]);
        let shared: Vec<(Vec<usize>, u64)> = same_for_several(windows)
            .into_values()
            .map(|(elements, window)| (elements, window.count))
            .collect();
        assert_eq!(shared, [(vec![3], 4), (vec![0, 1], 4), (vec![2], 4)]);
    }
}
