//! The ruler: one outcome as a picture. A log scale, the undecided band hatched, the reading a plumb bob with
//! whiskers of three sigma.
//!
//! Drawn as SVG text with fixed decimals, so that it is the same bytes everywhere; colours come from CSS classes
//! with fallbacks, and the meaning never from colour alone: the band is hatched, the bob has a shape and a word.
//! [`strip`] gives the same picture as positions alone, for a table that draws a thousand of them.

use std::fmt::Write;

use crate::locale::with_sign;
use crate::quantity::{Coverage, MassFraction, Sigma};

/// What is drawn.
#[derive(Clone, Debug)]
pub struct Ruler<'a> {
    /// Title for those who don't see it.
    pub title: &'a str,
    /// Description for those who don't see it.
    pub description: &'a str,
    /// Word beside the edges of the band, or beside the limit.
    pub band_word: &'a str,
    /// What is drawn of the numbers.
    pub picture: Picture,
    /// A short code for the outcome, which chooses the bob's style class.
    pub outcome: &'a str,
    /// The sign between a whole number and its decimals.
    pub decimal: &'a str,
    /// What stands between title and description where both are read as one.
    pub stop: &'a str,
}

/// The numbers of a ruler.
#[derive(Clone, Copy, Debug)]
pub struct Picture {
    /// Low edge of the band in mg/kg.
    pub low: MassFraction,
    /// High edge; `None` where the band is open upwards. A limit without a band has both edges in one place.
    pub high: Option<MassFraction>,
    /// The mark on it.
    pub mark: Mark,
}

impl Picture {
    /// True for a limit without a band.
    pub fn is_line(&self) -> bool {
        self.high == Some(self.low)
    }

    /// True for a value that lies within `k` times the sigma that judged it of an edge of the band, on either side. What is no
    /// number, or has no sigma, is near nothing.
    ///
    /// # Units
    /// Exact: `|x - edge| <= k s` in whole millionths of mg/kg and squares of them. A tie is near.
    ///
    /// # Source
    /// Our own choice, for finding readings that a little more or less would have judged otherwise; it decides nothing.
    pub fn is_near_an_edge(&self, k: Coverage, sigma: Option<Sigma>) -> bool {
        let (Mark::Bob { value, .. }, Some(sigma)) = (self.mark, sigma.filter(|sigma| !sigma.is_zero()))
        else {
            return false;
        };
        let near = |edge: MassFraction| {
            let away = (value.units() - edge.units()).abs();
            sigma.compare_times(k, MassFraction::from_units(away)).is_ge()
        };
        near(self.low) || self.high.is_some_and(near)
    }
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
    /// Somewhere between two ends: a sum of which a part was not detected.
    Between {
        /// Lower end.
        low: MassFraction,
        /// Half width of the whisker below it.
        low_half: MassFraction,
        /// Upper end.
        high: MassFraction,
        /// Half width of the whisker above it.
        high_half: MassFraction,
    },
}

impl Mark {
    /// The ends of the whiskers, where there are any.
    fn whiskers(&self) -> Option<(MassFraction, MassFraction)> {
        let (low, low_half, high, high_half) = match *self {
            Mark::Bob { value, half } => (value, half, value, half),
            Mark::Between { low, low_half, high, high_half } => (low, low_half, high, high_half),
            Mark::Below(_) | Mark::Above(_) => return None,
        };
        let end = MassFraction::from_units;
        Some((
            end(low.units().saturating_sub(low_half.units())),
            end(high.units().saturating_add(high_half.units())),
        ))
    }
}

const WIDTH: f64 = 360.0;
const LEFT: f64 = 12.0;
const RIGHT: f64 = 348.0;
const AXIS: f64 = 62.0;
const TOP: f64 = 14.0;

/// The log scale of a drawing: a value stands at `(log10(value) - from) / (to - from)` of the way between [`Scale::ENDS`].
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Scale {
    /// The decade at the left end: the exponent of ten, mg/kg.
    pub from: f64,
    /// The decade at the right end.
    pub to: f64,
}

impl Scale {
    /// Where the ends stand, as shares of the drawing's width.
    pub const ENDS: (f64, f64) = (LEFT / WIDTH, RIGHT / WIDTH);

    /// Whole decades around everything that is drawn; at least from a tenth of the low edge to ten times the high.
    pub fn around(picture: &Picture) -> Scale {
        let low = picture.low.to_mg_per_kg();
        let high = picture.high.unwrap_or(picture.low).to_mg_per_kg();
        let (mut smallest, mut largest) = (low / 10.0, high * 4.0);
        let mut include = |value: MassFraction| {
            let value = value.to_mg_per_kg();
            if value > 0.0 {
                smallest = smallest.min(value);
                largest = largest.max(value * 1.5);
            }
        };
        match picture.mark {
            Mark::Bob { value, .. } | Mark::Below(value) | Mark::Above(value) => include(value),
            Mark::Between { low, high, .. } => {
                include(low);
                include(high);
            }
        }
        Scale {
            from: libm::floor(libm::log10(smallest.max(0.01))),
            to: libm::ceil(libm::log10(largest.min(10_000_000.0))),
        }
    }

    /// Where a value stands between the ends, 0 to 1; one outside stands beyond its end.
    fn share(&self, value: MassFraction) -> f64 {
        let value = value.to_mg_per_kg();
        if value <= 0.0 {
            return -1.0;
        }
        (libm::log10(value) - self.from) / (self.to - self.from)
    }

    /// The same on the drawing; what lies outside stands on the end.
    fn x(&self, value: MassFraction) -> f64 {
        LEFT + self.share(value).clamp(0.0, 1.0) * (RIGHT - LEFT)
    }
}

/// Where everything on a ruler stands.
///
/// # Units
/// Per mille of the way from the left end of the scale to the right one.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Strip {
    /// `bob`, `below`, `above` or `between`.
    pub mark: &'static str,
    /// The value, or the bound that it lies below or above; of `between` the lower end.
    pub at: u16,
    /// The upper end of `between`; of all others the same as `at`.
    pub until: u16,
    /// Left end of the whiskers; where there are none, the value itself. Of a bound: the end that it points to.
    pub from: u16,
    /// Right end of the whiskers, in the same way.
    pub to: u16,
    /// Low edge of the band.
    pub low: u16,
    /// High edge of the band; the right end of the scale where the band is open.
    pub high: u16,
    /// The band is open upwards.
    pub open: bool,
    /// What is drawn of the reading goes on beyond the left end of the scale.
    pub cut_left: bool,
    /// The same of the right end.
    pub cut_right: bool,
}

/// The picture that [`draw`] makes, as positions on the same scale.
pub fn strip(picture: &Picture) -> Strip {
    let scale = Scale::around(picture);
    let place = |share: f64| libm::round(share.clamp(0.0, 1.0) * 1000.0) as u16;
    let (at, until, mark) = match picture.mark {
        Mark::Bob { value, .. } => (value, value, "bob"),
        Mark::Below(limit) => (limit, limit, "below"),
        Mark::Above(limit) => (limit, limit, "above"),
        Mark::Between { low, high, .. } => (low, high, "between"),
    };
    let (at, until) = (scale.share(at), scale.share(until));
    let (from, to) = match (picture.mark.whiskers(), picture.mark) {
        (Some((from, to)), _) => (scale.share(from), scale.share(to)),
        (None, Mark::Below(_)) => (0.0, at),
        (None, _) => (at, 1.0),
    };
    Strip {
        mark,
        at: place(at),
        until: place(until),
        from: place(from),
        to: place(to),
        low: place(scale.share(picture.low)),
        high: picture.high.map_or(1000, |high| place(scale.share(high))),
        open: picture.high.is_none(),
        cut_left: from < 0.0,
        cut_right: to > 1.0,
    }
}

/// Draws the ruler as SVG text.
pub fn draw(ruler: &Ruler<'_>) -> String {
    let picture = &ruler.picture;
    let scale = Scale::around(picture);
    let mut svg = String::with_capacity(2048);
    let class = ruler.outcome.replace('_', "-");
    // Writing to a String cannot fail, so the results are dropped.
    let _ = write!(
        svg,
        "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"ruler ruler-{}\" viewBox=\"0 0 360 95\" width=\"360\" \
         height=\"95\" role=\"img\" aria-label=\"{}{}{}\"><title>{}</title><desc>{}</desc>",
        escape(&class),
        escape(ruler.title),
        escape(ruler.stop),
        escape(ruler.description),
        escape(ruler.title),
        escape(ruler.description)
    );
    let (band_from, band_to) = (scale.x(picture.low), picture.high.map_or(RIGHT, |high| scale.x(high)));
    // A limit without a band is a post with a crossbar.
    let is_line = picture.is_line();
    let _ = write!(
        svg,
        "<rect class=\"ruler-band\" x=\"{band_from:.1}\" y=\"34\" width=\"{:.1}\" height=\"28\" fill=\"none\" \
         stroke=\"currentColor\" stroke-width=\"1\"/>",
        (band_to - band_from).max(0.5)
    );
    if is_line {
        let (left, right) = (band_from - 6.0, band_from + 6.5);
        let _ = write!(
            svg,
            "<line class=\"ruler-post\" x1=\"{left:.1}\" y1=\"34\" x2=\"{right:.1}\" y2=\"34\" stroke=\"currentColor\" \
             stroke-width=\"2\"/>"
        );
    }
    let mut hatch = band_from + 6.0;
    while !is_line && hatch < band_to + 28.0 {
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
    mark(&mut svg, picture.mark, &scale);
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
             <text x=\"{x_text:.1}\" y=\"91\" font-size=\"9\" text-anchor=\"{anchor}\" fill=\"currentColor\" \
             opacity=\"0.75\">{label}</text>"
        );
    }
}

fn edge_labels(svg: &mut String, ruler: &Ruler<'_>, band_from: f64, band_to: f64) {
    let edges = match ruler.picture.high {
        Some(_) if ruler.picture.is_line() => ruler.picture.low.to_string(),
        Some(high) => format!("{} – {}", ruler.picture.low, high),
        None => format!("{} –", ruler.picture.low),
    };
    let middle = f64::midpoint(band_from, band_to).clamp(40.0, WIDTH - 40.0);
    let _ = write!(
        svg,
        "<text class=\"ruler-edges\" x=\"{middle:.1}\" y=\"76\" font-size=\"9\" text-anchor=\"middle\" \
         fill=\"currentColor\" font-weight=\"600\">{} {}</text>",
        escape(&with_sign(&edges, ruler.decimal)),
        escape(ruler.band_word)
    );
}

fn mark(svg: &mut String, mark: Mark, scale: &Scale) {
    match mark {
        Mark::Bob { value, .. } => {
            let x = scale.x(value);
            let _ = write!(
                svg,
                "<g class=\"ruler-mark\"><line x1=\"{x:.1}\" y1=\"2\" x2=\"{x:.1}\" y2=\"{TOP:.1}\" \
                 stroke=\"currentColor\" stroke-width=\"1\"/>"
            );
            whiskers(svg, mark, scale);
            bob(svg, x);
            svg.push_str("</g>");
        }
        Mark::Below(limit) => arrow(svg, scale.x(limit), LEFT, 8.0),
        Mark::Above(limit) => arrow(svg, scale.x(limit), RIGHT, -8.0),
        Mark::Between { low, high, .. } => {
            svg.push_str("<g class=\"ruler-mark\">");
            whiskers(svg, mark, scale);
            // A log scale has no place for nothing: what may be as little as that goes on beyond the left end.
            between(svg, (low.units() > 0).then(|| scale.x(low)), scale.x(high));
            svg.push_str("</g>");
        }
    }
}

fn whiskers(svg: &mut String, mark: Mark, scale: &Scale) {
    let Some((from, to)) = mark.whiskers() else { return };
    let (from, to) = (scale.x(from), scale.x(to));
    // What lies between two ends is no whisker: it is dashed.
    let lines = match mark {
        Mark::Between { low, high, .. } => {
            [(low.units() > 0).then(|| (from, scale.x(low))), Some((scale.x(high), to))]
        }
        _ => [Some((from, to)), None],
    };
    let has_left = lines[0].is_some();
    for (from, to) in lines.into_iter().flatten() {
        let _ = write!(
            svg,
            "<line x1=\"{from:.1}\" y1=\"28\" x2=\"{to:.1}\" y2=\"28\" stroke=\"currentColor\" stroke-width=\"2\"/>"
        );
    }
    for end in [Some(from).filter(|_| has_left), Some(to)].into_iter().flatten() {
        let _ = write!(
            svg,
            "<line x1=\"{end:.1}\" y1=\"23\" x2=\"{end:.1}\" y2=\"33\" stroke=\"currentColor\" stroke-width=\"2\"/>"
        );
    }
}

/// Two uprights that stand on the axis and a dashed line from one to the other: "somewhere in between".
fn between(svg: &mut String, low: Option<f64>, high: f64) {
    for x in [low, Some(high)].into_iter().flatten() {
        let _ = write!(
            svg,
            "<line x1=\"{x:.1}\" y1=\"18\" x2=\"{x:.1}\" y2=\"{AXIS:.1}\" stroke=\"currentColor\" stroke-width=\"2\"/>"
        );
    }
    let left = low.unwrap_or(LEFT);
    if low.is_none() {
        let _ = write!(svg, "<path d=\"M{LEFT:.1} 28 l8 -5 v10 z\" fill=\"currentColor\"/>");
    }
    let _ = write!(
        svg,
        "<line x1=\"{left:.1}\" y1=\"28\" x2=\"{high:.1}\" y2=\"28\" stroke=\"currentColor\" stroke-width=\"2\" \
         stroke-dasharray=\"4 3\"/>"
    );
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

    fn picture(mark: Mark, high: Option<i64>) -> Picture {
        Picture { low: MassFraction::from_mg_per_kg(700), high: high.map(MassFraction::from_mg_per_kg), mark }
    }

    fn ruler(mark: Mark, high: Option<i64>) -> String {
        draw(&Ruler {
            title: "lead <Pb>",
            description: "x",
            band_word: "undecided",
            picture: picture(mark, high),
            outcome: "BL",
            decimal: ".",
            stop: ". ",
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
                Mark::Between {
                    low: MassFraction::ZERO,
                    low_half: MassFraction::from_units(1),
                    high: MassFraction::from_units(value),
                    high_half: MassFraction::from_units(1),
                },
            ] {
                let drawn = ruler(mark, None);
                assert!(!drawn.contains("NaN") && !drawn.contains("inf"), "{drawn}");
            }
        }
    }

    /// Every number after `name="` in the first tag that holds `within`.
    fn number_of(svg: &str, within: &str, name: &str) -> f64 {
        let tag = svg.split('<').find(|tag| tag.contains(within)).unwrap();
        let text = tag.split_once(&format!("{name}=\"")).unwrap().1;
        text.split('"').next().unwrap().parse().unwrap()
    }

    #[test]
    fn the_strip_of_a_table_stands_where_the_drawing_stands() {
        let x = |per_mille: u16| LEFT + f64::from(per_mille) / 1000.0 * (RIGHT - LEFT);
        // Half of a per mille and half of the last decimal that is drawn.
        let same =
            |per_mille, drawn: f64| assert!((x(per_mille) - drawn).abs() < 0.25, "{per_mille} {drawn}");
        for value in [1, 40, 640, 701, 1299, 5000, 90_000, 1_000_000] {
            for half in [0, 5, 60, 900] {
                for high in [None, Some(1300)] {
                    let mark = Mark::Bob {
                        value: MassFraction::from_mg_per_kg(value),
                        half: MassFraction::from_mg_per_kg(half),
                    };
                    let (strip, drawn) = (strip(&picture(mark, high)), ruler(mark, high));
                    same(strip.at, number_of(&drawn, "y1=\"2\"", "x1"));
                    same(strip.from, number_of(&drawn, "y1=\"28\"", "x1"));
                    same(strip.to, number_of(&drawn, "y1=\"28\"", "x2"));
                    same(strip.low, number_of(&drawn, "ruler-band", "x"));
                    let width = number_of(&drawn, "ruler-band", "width");
                    same(strip.high, number_of(&drawn, "ruler-band", "x") + width);
                    assert_eq!(strip.open, high.is_none());
                    assert_eq!(strip.cut_left, value <= half);
                }
            }
        }
    }

    #[test]
    fn a_strip_says_which_end_of_it_is_cut_off() {
        let mg = MassFraction::from_mg_per_kg;
        let of = |mark| strip(&picture(mark, Some(1300)));
        let inside = of(Mark::Bob { value: mg(900), half: mg(60) });
        assert!(!inside.cut_left && !inside.cut_right);
        let below_zero = of(Mark::Bob { value: mg(-5), half: mg(60) });
        assert!(below_zero.cut_left && below_zero.at == 0 && below_zero.to > 0);
        let wide = of(Mark::Bob { value: mg(6600), half: mg(6500) });
        assert!(wide.cut_right && wide.to == 1000);
        let below = of(Mark::Below(mg(50)));
        assert_eq!((below.mark, below.from, below.to), ("below", 0, below.at));
        let above = of(Mark::Above(mg(2000)));
        assert_eq!((above.mark, above.from, above.to), ("above", above.at, 1000));
    }

    #[test]
    fn a_limit_without_a_band_is_a_post_and_nothing_is_hatched() {
        let mg = MassFraction::from_mg_per_kg;
        let bob = Mark::Bob { value: mg(640), half: mg(60) };
        let (limit, band) = (ruler(bob, Some(700)), ruler(bob, Some(1300)));
        assert!(limit.contains("ruler-post") && !limit.contains("ruler-hatch"));
        assert!(limit.contains(">700 undecided<"), "one number, not from 700 to 700: {limit}");
        assert!(band.contains("ruler-hatch") && !band.contains("ruler-post"));
    }

    #[test]
    fn a_sum_between_two_ends_has_its_whiskers_beyond_them_and_no_bob() {
        let mg = MassFraction::from_mg_per_kg;
        let mark = Mark::Between { low: mg(800), low_half: mg(40), high: mg(1200), high_half: mg(400) };
        let drawn = ruler(mark, Some(700));
        assert!(!drawn.contains("ruler-bob") && drawn.contains("stroke-dasharray"), "{drawn}");
        let strip = strip(&picture(mark, Some(700)));
        assert_eq!(strip.mark, "between");
        assert!(strip.from < strip.at && strip.at < strip.until && strip.until < strip.to, "{strip:?}");
        assert!(!strip.cut_left && !strip.cut_right);
        let from_nothing = Mark::Between { low: mg(0), low_half: mg(0), high: mg(1200), high_half: mg(400) };
        let open_below = super::strip(&picture(from_nothing, Some(700)));
        assert!(open_below.cut_left && open_below.at == 0);
        let drawn = ruler(from_nothing, Some(700));
        assert_eq!(
            drawn.matches("y1=\"18\"").count(),
            1,
            "one upright, and an arrowhead for the other end: {drawn}"
        );
        // It is no number that a little more or less would have judged otherwise.
        let sigma = Sigma::from_one_sigma(mg(100));
        assert!(!picture(mark, Some(1200)).is_near_an_edge(Coverage::THREE, sigma));
    }

    #[test]
    fn near_an_edge_is_decided_exactly_and_a_tie_is_near() {
        let mg = MassFraction::from_mg_per_kg;
        let sigma = Sigma::from_one_sigma(mg(20));
        let near = |value: i64, high, tenths| {
            let mark = Mark::Bob { value: MassFraction::from_units(value), half: mg(60) };
            picture(mark, high).is_near_an_edge(Coverage::from_tenths(tenths).unwrap(), sigma)
        };
        assert!(near(660_000_000, None, 20));
        assert!(!near(659_999_999, None, 20));
        assert!(near(740_000_000, Some(1300), 20));
        assert!(!near(740_000_001, Some(1300), 20));
        assert!(near(1_340_000_000, Some(1300), 20));
        assert!(!near(1_340_000_000, None, 20));
        let below = picture(Mark::Below(mg(700)), Some(1300));
        assert!(!below.is_near_an_edge(Coverage::THREE, sigma));
        let value = picture(Mark::Bob { value: mg(700), half: mg(0) }, Some(1300));
        assert!(!value.is_near_an_edge(Coverage::THREE, None));
        assert!(!value.is_near_an_edge(Coverage::THREE, Some(Sigma::ZERO)));
    }
}
