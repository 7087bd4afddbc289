//! Rulers of outcomes: what each draws, and the figure with its words.

use crate::halogen::Total;
use crate::inspection::{Findings, Inspection, MaterialFinding};
use crate::interval::Interval;
use crate::judging::Assessed;
use crate::limit::Judged;
use crate::material::MaterialClass;
use crate::outcome::{Judgement, Outcome, Reason};
use crate::quantity::{Coverage, MassFraction, Sigma};
use crate::reading::{Cell, CellState, Source};
use crate::report::explain::About;
use crate::report::phrases;
use crate::ruler::{self, Mark, Picture, Ruler};
use crate::rules::{Halogens, Limit, LowEdge, Screening};
use crate::substance::{Element, Halogen, Substance};
use crate::words::Words;

/// What the ruler of a substance of a reading draws; `None` where there is none.
pub fn of_substance(
    inspection: &Inspection,
    source: &Source,
    assessed: &Assessed,
    substance: Substance,
    row: usize,
) -> Option<Picture> {
    let (_, rule) = inspection.books.screening()?;
    let judged = assessed.substances.get(substance as usize)?;
    let cell = source.readings.cell(substance.element(), row);
    pictured(rule, substance, assessed.class, &cell, judged)
}

/// The same of a halogen or the total.
pub fn of_halogen(
    inspection: &Inspection,
    source: &Source,
    assessed: &Assessed,
    of: Halogen,
    row: usize,
) -> Option<Picture> {
    let (_, rule) = inspection.books.halogens()?;
    match phrases::element_of(of) {
        Some(element) => {
            let cell = source.readings.cell(element, row);
            pictured_halogen(rule, of, &cell, &assessed.halogen(of))
        }
        None => pictured_total(rule, &assessed.total),
    }
}

/// The element that is read off; `None` for the total of the halogens.
pub const fn element_of(about: About) -> Option<Element> {
    match about {
        About::Substance(of) => Some(of.element()),
        About::Halogen(of) => phrases::element_of(of),
    }
}

/// The reading that shows the worst outcome of a material, of several such the highest, and the first of those; `None` where
/// none shows it in the material's own class.
pub fn worst_reading(
    inspection: &Inspection,
    findings: &Findings,
    material: &MaterialFinding,
    about: About,
) -> Option<u32> {
    let worst = match about {
        About::Substance(of) => material.tally.worst(of),
        About::Halogen(of) => material.tally.worst_halogen(of),
    };
    if matches!(worst, Outcome::NotApplicable | Outcome::NotMeasured)
        || material.class == MaterialClass::Unknown
    {
        return None;
    }
    let shows = |reading: &&u32| {
        findings.verdicts.get(**reading as usize).is_some_and(|verdicts| {
            let outcome = match about {
                About::Substance(of) => verdicts.substances.get(of as usize),
                About::Halogen(of) => verdicts.halogens.get(of as usize),
            };
            outcome == Some(&worst) && verdicts.class == material.class
        })
    };
    // Of a total its parts together: which is highest needs no judging.
    let height = |reading: u32| {
        let place = findings.place(reading as usize);
        let place = place.and_then(|(at, row)| Some((inspection.sources.get(at)?, row)));
        place.map_or(MassFraction::ZERO, |(source, row)| {
            let value = |element| source.readings.cell(element, row).value;
            element_of(about).map_or_else(|| value(Element::CL).plus(value(Element::BR)), value)
        })
    };
    material.readings.iter().rev().filter(shows).copied().max_by_key(|reading| height(*reading))
}

/// What the ruler of one substance of one reading draws; `None` where the class has no band, or there is no number.
pub fn pictured(
    rule: &Screening,
    substance: Substance,
    class: MaterialClass,
    cell: &Cell,
    judged: &Judgement,
) -> Option<Picture> {
    if class == MaterialClass::Unknown || class == MaterialClass::Plated {
        // No band of its own: the polymer's is drawn nowhere, so that nobody reads a verdict off it.
        return None;
    }
    let edges = rule.band(substance, class).and_then(|band| band.edges)?;
    let low = match edges.low {
        LowEdge::Fixed(low) => low,
        // Without a stated limit there is no low edge to draw.
        LowEdge::DetectionLimit { .. } => cell.detection_limit?,
    };
    let mark = drawn_mark(cell, judged, rule.sigma_factor)?;
    Some(Picture { low, high: edges.high, mark })
}

/// The same of a halogen: its limit is a band without width.
pub fn pictured_halogen(rule: &Halogens, of: Halogen, cell: &Cell, judged: &Judgement) -> Option<Picture> {
    // A limit that doesn't apply, or an answer that no number gave, has nothing to be read off.
    if matches!(judged.outcome, Outcome::NotApplicable | Outcome::NotMeasured)
        || judged.reason == Some(Reason::LayerNotResolved)
    {
        return None;
    }
    let limit = rule.limit(of);
    Some(Picture { low: limit, high: Some(limit), mark: drawn_mark(cell, judged, rule.sigma_factor)? })
}

/// The same of the total of the halogens.
pub fn pictured_total(rule: &Halogens, total: &Total) -> Option<Picture> {
    let (low, sigma) = (total.low?, total.sigma?);
    let ends = Ends {
        low,
        low_sigma: total.low_sigma.unwrap_or(sigma),
        high: total.high,
        high_sigma: sigma,
        censored: total.high != Some(low),
    };
    Some(on_limit(rule.limit(Halogen::Total), ends.mark(rule.sigma_factor)))
}

/// The same of a limit of a book: what was measured of its elements, together.
fn pictured_limit(row: &Limit, judged: &Judged) -> Option<Picture> {
    if judged.judgement.outcome == Outcome::NotApplicable {
        return None;
    }
    let Interval { low, low_sigma, high, high_sigma, censored, .. } = judged.sum?;
    let ends = Ends { low, low_sigma, high, high_sigma, censored };
    Some(on_limit(row.limit, ends.mark(row.sigma_factor)))
}

const fn on_limit(limit: MassFraction, mark: Mark) -> Picture {
    Picture { low: limit, high: Some(limit), mark }
}

/// A sum from what is at least there to what is at most there.
struct Ends {
    low: MassFraction,
    low_sigma: Sigma,
    high: Option<MassFraction>,
    high_sigma: Sigma,
    /// A part of it was not detected.
    censored: bool,
}

impl Ends {
    fn mark(&self, k: Coverage) -> Mark {
        let half = |sigma: Sigma| phrases::times(sigma.to_mass_fraction(), k.to_f64());
        match self.high {
            None => Mark::Above(self.low),
            Some(high) if high == self.low => Mark::Bob { value: high, half: half(self.high_sigma) },
            // Nothing of it was detected: a detection limit like any other.
            Some(high) if self.censored && self.low == MassFraction::ZERO && self.low_sigma.is_zero() => {
                Mark::Below(high)
            }
            Some(high) => Mark::Between {
                low: self.low,
                low_half: half(self.low_sigma),
                high,
                high_half: half(self.high_sigma),
            },
        }
    }
}

fn drawn_mark(cell: &Cell, judged: &Judgement, k: Coverage) -> Option<Mark> {
    Some(match cell.state {
        CellState::Number => Mark::Bob {
            value: cell.value,
            half: judged
                .used
                .sigma
                .map_or(MassFraction::ZERO, |sigma| phrases::times(sigma.to_mass_fraction(), k.to_f64())),
        },
        CellState::BelowDetection => Mark::Below(cell.value),
        CellState::AboveRange => Mark::Above(cell.value),
        // An empty scale says nothing that the words beside it don't.
        _ => return None,
    })
}

/// The ruler of one substance of one reading; empty where there is nothing to draw.
pub fn substance(
    words: &Words,
    rule: &Screening,
    substance: Substance,
    class: MaterialClass,
    cell: &Cell,
    judged: &Judgement,
) -> String {
    let Some(picture) = pictured(rule, substance, class, cell, judged) else { return String::new() };
    drawn(
        words,
        substance.symbol(),
        &phrases::value(words, cell, judged.used.sigma, ""),
        judged.outcome,
        picture,
    )
}

/// The ruler of a halogen, or of the total, of one reading; empty where there is nothing to draw.
pub fn halogen(
    words: &Words,
    rule: &Halogens,
    of: Halogen,
    source: &Source,
    assessed: &Assessed,
    row: usize,
) -> String {
    let judged = assessed.halogen(of);
    let (picture, value) = match phrases::element_of(of) {
        Some(element) => {
            let cell = source.readings.cell(element, row);
            (pictured_halogen(rule, of, &cell, &judged), phrases::value(words, &cell, judged.used.sigma, ""))
        }
        None => (pictured_total(rule, &assessed.total), phrases::total(words, &assessed.total)),
    };
    let name = words.say(&format!("substance-{}", of.name()));
    picture.map_or_else(String::new, |picture| drawn(words, &name, &value, judged.outcome, picture))
}

/// The same of a limit of a book.
pub fn limit(words: &Words, row: &Limit, judged: &Judged) -> String {
    let drawing = |(picture, value): (Picture, String)| {
        drawn(words, &row.id, &value, judged.judgement.outcome, picture)
    };
    of_limit(words, row, judged).map_or_else(String::new, drawing)
}

/// What that draws, and its value in words.
pub fn of_limit(words: &Words, row: &Limit, judged: &Judged) -> Option<(Picture, String)> {
    Some((pictured_limit(row, judged)?, sum_in_words(words, &judged.sum?)))
}

/// A sum in words, from end to end.
fn sum_in_words(words: &Words, sum: &Interval) -> String {
    let sigma = phrases::rounded(sum.high_sigma.to_mass_fraction());
    let (low, high) = (phrases::rounded(sum.low), sum.high.map(phrases::rounded));
    match high {
        None => words.with("value-at_least", &[("low", &low)]),
        Some(high) if sum.high == Some(sum.low) => {
            words.with("value-number", &[("value", &high), ("sigma", &sigma)])
        }
        Some(high) => words.with("value-interval", &[("low", &low), ("high", &high)]),
    }
}

/// What a ruler is drawn against, in few words: the edges of its band, or its limit.
pub fn edges(words: &Words, picture: &Picture) -> String {
    let low = picture.low.to_string();
    match picture.high {
        _ if picture.is_line() => words.with("ruler-edges_limit", &[("limit", &low)]),
        Some(high) => words.with("ruler-edges", &[("low", &low), ("high", &high.to_string())]),
        None => words.with("ruler-edges_open", &[("low", &low)]),
    }
}

fn drawn(words: &Words, about: &str, value: &str, said: Outcome, picture: Picture) -> String {
    let band_word = words.say(if picture.is_line() { "ruler-limit" } else { "ruler-band" });
    let description = [("value", value), ("edges", &edges(words, &picture))];
    ruler::draw(&Ruler {
        title: &words.with("ruler-title", &[("about", about), ("outcome", &phrases::outcome(words, said))]),
        description: &words.with("ruler-description", &description),
        band_word: &band_word,
        picture,
        outcome: said.code(),
        decimal: words.decimal(),
        stop: words.stop(),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::outcome::UsedSigma;

    fn mg(value: i64) -> MassFraction {
        MassFraction::from_mg_per_kg(value)
    }

    fn total(low: Option<i64>, high: Option<i64>, sigmas: Option<(i64, i64)>) -> Total {
        let sigma = |value| Sigma::from_one_sigma(mg(value)).unwrap();
        Total {
            judgement: Judgement::new(Outcome::Undecided, None, UsedSigma::NONE),
            low: low.map(mg),
            high: high.map(mg),
            low_sigma: sigmas.map(|(low, _)| sigma(low)),
            sigma: sigmas.map(|(_, high)| sigma(high)),
        }
    }

    fn drawn(total: &Total) -> Option<Mark> {
        let books = crate::rules::RuleBooks::built_in().unwrap();
        pictured_total(books.halogens().unwrap().1, total).map(|picture| picture.mark)
    }

    #[test]
    fn a_total_is_a_bob_an_interval_or_a_bound_as_it_is_known() {
        let whole = drawn(&total(Some(800), Some(800), Some((20, 20))));
        assert!(matches!(whole, Some(Mark::Bob { value, half }) if (value, half) == (mg(800), mg(60))));
        // Chlorine not detected at 400: at least the bromine, at most both.
        let interval = drawn(&total(Some(800), Some(1200), Some((20, 140))));
        let Some(Mark::Between { low, low_half, high, high_half }) = interval else { panic!("{interval:?}") };
        assert_eq!((low, low_half, high, high_half), (mg(800), mg(60), mg(1200), mg(420)));
        let nothing_detected = drawn(&total(Some(0), Some(500), Some((0, 140))));
        assert!(matches!(nothing_detected, Some(Mark::Below(limit)) if limit == mg(500)));
        let above_range = drawn(&total(Some(800), None, Some((20, 20))));
        assert!(matches!(above_range, Some(Mark::Above(limit)) if limit == mg(800)));
        assert!(drawn(&total(None, None, None)).is_none(), "without a sum there is nothing to draw");
    }

    #[test]
    fn the_words_beside_a_ruler_name_what_it_is_drawn_against() {
        let words = Words::english();
        let of = |low, high: Option<i64>| {
            edges(&words, &Picture { low: mg(low), high: high.map(mg), mark: Mark::Below(mg(5)) })
        };
        assert_eq!(of(700, Some(1300)), "Undecided from 700 to 1300");
        assert_eq!(of(700, None), "Undecided from 700 upwards");
        assert_eq!(of(900, Some(900)), "Limit 900");
    }
}
