//! The ruler: one outcome as a picture. A log scale, the undecided band hatched, the reading a plumb bob with
//! whiskers of three sigma.
//!
//! Drawn as SVG text with fixed decimals, so that it is the same bytes everywhere; colours come from CSS classes
//! with fallbacks, and the meaning never from colour alone: the band is hatched, the bob has a shape and a word.

use std::fmt::Write;

use crate::locale::with_sign;
use crate::quantity::MassFraction;

/// What is drawn.
#[derive(Clone, Debug)]
pub struct Ruler<'a> {
    /// Title for those who don't see it.
    pub title: &'a str,
    /// Description for those who don't see it.
    pub description: &'a str,
    /// Word inside the band.
    pub band_word: &'a str,
    /// Low edge of the band in mg/kg.
    pub low: MassFraction,
    /// High edge; `None` where the band is open upwards.
    pub high: Option<MassFraction>,
    /// The mark on it.
    pub mark: Mark,
    /// A short code for the outcome, which chooses the bob's style class.
    pub outcome: &'a str,
    /// The sign between a whole number and its decimals.
    pub decimal: &'a str,
}

/// What the reading says, as a mark.
#[derive(Clone, Copy, Debug)]
pub enum Mark {
    /// A value with the half width of its whiskers (k s).
    Bob {
        /// The value.
        value: MassFraction,
        /// Half width of the whiskers.
        half: MassFraction,
    },
    /// Somewhere below a detection limit.
    Below(MassFraction),
    /// Somewhere above an upper end.
    Above(MassFraction),
}

const WIDTH: f64 = 360.0;
const LEFT: f64 = 12.0;
const RIGHT: f64 = 348.0;
const AXIS: f64 = 62.0;
const TOP: f64 = 14.0;

struct Scale {
    from: f64,
    to: f64,
}

impl Scale {
    /// Whole decades around everything that is drawn; at least from a tenth of the low edge to ten times the high.
    fn around(ruler: &Ruler<'_>) -> Scale {
        let low = ruler.low.to_mg_per_kg();
        let high = ruler.high.unwrap_or(ruler.low).to_mg_per_kg();
        let (mut smallest, mut largest) = (low / 10.0, high * 4.0);
        let mut include = |value: MassFraction| {
            let value = value.to_mg_per_kg();
            if value > 0.0 {
                smallest = smallest.min(value);
                largest = largest.max(value * 1.5);
            }
        };
        match ruler.mark {
            Mark::Bob { value, .. } | Mark::Below(value) | Mark::Above(value) => include(value),
        }
        Scale {
            from: libm::floor(libm::log10(smallest.max(0.01))),
            to: libm::ceil(libm::log10(largest.min(10_000_000.0))),
        }
    }

    /// Where a value stands; values at or below the left end stand on it.
    fn x(&self, value: MassFraction) -> f64 {
        let value = value.to_mg_per_kg();
        if value <= 0.0 {
            return LEFT;
        }
        let share = (libm::log10(value) - self.from) / (self.to - self.from);
        (LEFT + share * (RIGHT - LEFT)).clamp(LEFT, RIGHT)
    }
}

/// Draws the ruler as SVG text.
pub fn draw(ruler: &Ruler<'_>) -> String {
    let scale = Scale::around(ruler);
    let mut svg = String::with_capacity(2048);
    let class = ruler.outcome.replace('_', "-");
    // Writing to a String cannot fail, so the results are dropped.
    let _ = write!(
        svg,
        "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"ruler ruler-{}\" viewBox=\"0 0 360 92\" width=\"360\" \
         height=\"92\" role=\"img\" aria-label=\"{}. {}\"><title>{}</title><desc>{}</desc>",
        escape(&class),
        escape(ruler.title),
        escape(ruler.description),
        escape(ruler.title),
        escape(ruler.description)
    );
    let (band_from, band_to) = (scale.x(ruler.low), ruler.high.map_or(RIGHT, |high| scale.x(high)));
    let _ = write!(
        svg,
        "<rect class=\"ruler-band\" x=\"{band_from:.1}\" y=\"34\" width=\"{:.1}\" height=\"28\" fill=\"none\" \
         stroke=\"currentColor\" stroke-width=\"1\"/>",
        (band_to - band_from).max(0.5)
    );
    let mut hatch = band_from + 6.0;
    while hatch < band_to + 28.0 {
        let (x1, y1) = (hatch.min(band_to), if hatch > band_to { 34.0 + (hatch - band_to) } else { 34.0 });
        let (x2, y2) = (
            (hatch - 28.0).max(band_from),
            if hatch - 28.0 < band_from { 34.0 + (hatch - band_from) } else { 62.0 },
        );
        let _ = write!(
            svg,
            "<line class=\"ruler-hatch\" x1=\"{x1:.1}\" y1=\"{y1:.1}\" x2=\"{x2:.1}\" y2=\"{y2:.1}\" \
             stroke=\"currentColor\" stroke-width=\"0.6\" opacity=\"0.55\"/>"
        );
        hatch += 6.0;
    }
    let _ = write!(
        svg,
        "<line class=\"ruler-axis\" x1=\"{LEFT:.1}\" y1=\"{AXIS:.1}\" x2=\"{RIGHT:.1}\" y2=\"{AXIS:.1}\" \
         stroke=\"currentColor\" stroke-width=\"1.5\"/>"
    );
    decades(&mut svg, &scale, ruler.decimal);
    edge_labels(&mut svg, ruler, band_from, band_to);
    mark(&mut svg, ruler, &scale);
    svg.push_str("</svg>");
    svg
}

fn decades(svg: &mut String, scale: &Scale, decimal: &str) {
    let (from, to) = (scale.from as i32, scale.to as i32);
    for decade in from..=to {
        let share = f64::from(decade - from) / f64::from((to - from).max(1));
        let x = LEFT + share * (RIGHT - LEFT);
        let label = match decade {
            0.. => format!("1{}", "0".repeat(decade as usize)),
            _ => format!("0{}{}1", escape(decimal), "0".repeat((-decade - 1) as usize)),
        };
        let anchor = if decade == from {
            "start"
        } else if decade == to {
            "end"
        } else {
            "middle"
        };
        let x_text = if decade == from {
            1.0
        } else if decade == to {
            WIDTH - 1.0
        } else {
            x
        };
        let _ = write!(
            svg,
            "<line x1=\"{x:.1}\" y1=\"{AXIS:.1}\" x2=\"{x:.1}\" y2=\"67.0\" stroke=\"currentColor\"/>\
             <text x=\"{x_text:.1}\" y=\"88\" font-size=\"9\" text-anchor=\"{anchor}\" fill=\"currentColor\" \
             opacity=\"0.75\">{label}</text>"
        );
    }
}

fn edge_labels(svg: &mut String, ruler: &Ruler<'_>, band_from: f64, band_to: f64) {
    let edges = match ruler.high {
        Some(high) => format!("{} – {}", ruler.low, high),
        None => format!("{} –", ruler.low),
    };
    let middle = f64::midpoint(band_from, band_to).clamp(40.0, WIDTH - 40.0);
    let _ = write!(
        svg,
        "<text class=\"ruler-edges\" x=\"{middle:.1}\" y=\"77\" font-size=\"9\" text-anchor=\"middle\" \
         fill=\"currentColor\" font-weight=\"600\">{} {}</text>",
        escape(&with_sign(&edges, ruler.decimal)),
        escape(ruler.band_word)
    );
}

fn mark(svg: &mut String, ruler: &Ruler<'_>, scale: &Scale) {
    match ruler.mark {
        Mark::Bob { value, half } => {
            let x = scale.x(value);
            let from = scale.x(MassFraction::from_units(value.units() - half.units()));
            let to = scale.x(MassFraction::from_units(value.units() + half.units()));
            let _ = write!(
                svg,
                "<g class=\"ruler-mark\"><line x1=\"{x:.1}\" y1=\"2\" x2=\"{x:.1}\" y2=\"{TOP:.1}\" \
                 stroke=\"currentColor\" stroke-width=\"1\"/>\
                 <line x1=\"{from:.1}\" y1=\"28\" x2=\"{to:.1}\" y2=\"28\" stroke=\"currentColor\" stroke-width=\"2\"/>\
                 <line x1=\"{from:.1}\" y1=\"23\" x2=\"{from:.1}\" y2=\"33\" stroke=\"currentColor\" stroke-width=\"2\"/>\
                 <line x1=\"{to:.1}\" y1=\"23\" x2=\"{to:.1}\" y2=\"33\" stroke=\"currentColor\" stroke-width=\"2\"/>"
            );
            bob(svg, x);
            svg.push_str("</g>");
        }
        Mark::Below(limit) => arrow(svg, scale.x(limit), LEFT, 8.0),
        Mark::Above(limit) => arrow(svg, scale.x(limit), RIGHT, -8.0),
    }
}

/// A plumb bob: a round shoulder that ends in a point on the axis.
fn bob(svg: &mut String, x: f64) {
    let _ = write!(
        svg,
        "<path class=\"ruler-bob\" d=\"M{:.1} {TOP:.1} h8 v6 q4 6 0 14 l-4 {:.1} l-4 -{:.1} q-4 -8 0 -14 z\" \
         fill=\"currentColor\" stroke=\"Canvas\" stroke-width=\"1\"/>",
        x - 4.0,
        AXIS - TOP - 20.0,
        AXIS - TOP - 20.0
    );
}

/// An arrow from a bound towards an end: "somewhere below", "somewhere above".
fn arrow(svg: &mut String, from: f64, to: f64, head: f64) {
    let _ = write!(
        svg,
        "<g class=\"ruler-mark\"><line x1=\"{from:.1}\" y1=\"18\" x2=\"{from:.1}\" y2=\"{AXIS:.1}\" \
         stroke=\"currentColor\" stroke-width=\"2\"/><line x1=\"{from:.1}\" y1=\"26\" x2=\"{to:.1}\" y2=\"26\" \
         stroke=\"currentColor\" stroke-width=\"2\" stroke-dasharray=\"4 3\"/>\
         <path d=\"M{to:.1} 26 l{head:.1} -5 v10 z\" fill=\"currentColor\"/></g>"
    );
}

/// Escapes text for SVG and HTML.
pub fn escape(text: &str) -> String {
    let mut escaped = String::with_capacity(text.len());
    for character in text.chars() {
        match character {
            '&' => escaped.push_str("&amp;"),
            '<' => escaped.push_str("&lt;"),
            '>' => escaped.push_str("&gt;"),
            '"' => escaped.push_str("&quot;"),
            '\'' => escaped.push_str("&#39;"),
            other => escaped.push(other),
        }
    }
    escaped
}

#[cfg(test)]
mod tests {
    use super::*;

    fn ruler(mark: Mark, high: Option<i64>) -> String {
        draw(&Ruler {
            title: "lead <Pb>",
            description: "x",
            band_word: "undecided",
            low: MassFraction::from_mg_per_kg(700),
            high: high.map(MassFraction::from_mg_per_kg),
            mark,
            outcome: "BL",
            decimal: ".",
        })
    }

    #[test]
    fn text_is_escaped_and_the_drawing_is_the_same_every_time() {
        let mark =
            Mark::Bob { value: MassFraction::from_mg_per_kg(640), half: MassFraction::from_mg_per_kg(60) };
        let drawn = ruler(mark, Some(1300));
        assert!(drawn.contains("lead &lt;Pb&gt;"));
        assert_eq!(drawn, ruler(mark, Some(1300)));
    }

    #[test]
    fn odd_values_stay_on_the_ruler() {
        for value in [-500_000_000, 0, 1, 9_000_000_000_000] {
            for mark in [
                Mark::Bob { value: MassFraction::from_units(value), half: MassFraction::from_units(1) },
                Mark::Below(MassFraction::from_units(value)),
                Mark::Above(MassFraction::from_units(value)),
            ] {
                let drawn = ruler(mark, None);
                assert!(!drawn.contains("NaN") && !drawn.contains("inf"), "{drawn}");
            }
        }
    }
}
