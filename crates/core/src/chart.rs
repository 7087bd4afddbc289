//! Control charts drawn as SVG: individuals above, moving ranges below, one step to the right for each point.
//!
//! Like the [`crate::ruler`]: fixed decimals, so that it is the same bytes everywhere; colours from CSS classes with
//! fallbacks, and the meaning never from colour alone. A point of this inspection is a filled circle, an earlier one a ring, one
//! with a signal a diamond with a number; every line says what it is.

use std::fmt::Write;

use crate::control::{Limits, moving_ranges};
use crate::ruler::escape;

/// Most points that are drawn: the newest ones.
pub const MOST_POINTS: usize = 200;

/// What is drawn.
#[derive(Clone, Copy, Debug)]
pub struct ControlChart<'a> {
    /// Title for those who don't see it.
    pub title: &'a str,
    /// What stands between title and description where both are read as one.
    pub stop: &'a str,
    /// Description for those who don't see it.
    pub description: &'a str,
    /// The values in mg/kg, in order, at most [`MOST_POINTS`].
    pub values: &'a [f64],
    /// True for a point of an earlier inspection, for each value.
    pub earlier: &'a [bool],
    /// The number of the signal at each value; 0 where there is none. Neighbours with one number are labelled once.
    pub marks: &'a [usize],
    /// Centre and limits.
    pub limits: Option<Limits>,
    /// How many of the values are the baseline's; 0 where none is drawn.
    pub baseline: usize,
    /// The texts on it.
    pub labels: &'a Labels,
}

/// The texts on a chart, with their numbers.
#[derive(Clone, Debug, Default)]
pub struct Labels {
    /// Over the values.
    pub values: String,
    /// Over the moving ranges.
    pub ranges: String,
    /// Upper limit; the largest value where there are no limits.
    pub upper: String,
    /// Centre; empty where there are no limits.
    pub centre: String,
    /// Lower limit; the smallest value where there are no limits.
    pub lower: String,
    /// Upper limit of the ranges; the largest range where there are no limits.
    pub range_upper: String,
    /// Centre of the ranges; empty where there are no limits.
    pub range_centre: String,
    /// At the end of the baseline.
    pub baseline: String,
    /// When the first point was measured.
    pub first: String,
    /// When the last one was.
    pub last: String,
}

const LEFT: f64 = 14.0;
const RIGHT: f64 = 500.0;
/// Where the names of the lines begin.
const NAMES: f64 = 508.0;
const TOP: f64 = 34.0;
const BOTTOM: f64 = 176.0;
const RANGE_TOP: f64 = 212.0;
const RANGE_BOTTOM: f64 = 268.0;
/// Room that a number or the name of a line needs.
const LINE: f64 = 11.0;

/// A stretch of numbers on a stretch of the drawing.
struct Scale {
    low: f64,
    high: f64,
    top: f64,
    bottom: f64,
}

impl Scale {
    fn around(numbers: impl Iterator<Item = f64>, top: f64, bottom: f64) -> Scale {
        let (mut low, mut high) = (f64::INFINITY, f64::NEG_INFINITY);
        for number in numbers {
            (low, high) = (low.min(number), high.max(number));
        }
        if !(low.is_finite() && high.is_finite()) {
            (low, high) = (0.0, 1.0);
        }
        let spare = if high > low { (high - low) * 0.08 } else { 1.0 };
        Scale { low: low - spare, high: high + spare, top, bottom }
    }

    fn y(&self, number: f64) -> f64 {
        let share = (number - self.low) / (self.high - self.low);
        (self.bottom - share * (self.bottom - self.top)).clamp(self.top, self.bottom)
    }
}

/// Draws the chart as SVG text.
pub fn draw(chart: &ControlChart<'_>) -> String {
    let mut svg = String::with_capacity(4096 + chart.values.len() * 160);
    let [title, stop, description] = [chart.title, chart.stop, chart.description].map(escape);
    // Writing to a String cannot fail, so the results are dropped.
    let _ = write!(
        svg,
        "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"chart\" viewBox=\"0 0 640 292\" width=\"640\" height=\"292\" \
         role=\"img\" aria-label=\"{title}{stop}{description}\"><title>{title}</title><desc>{description}</desc>"
    );
    let count = chart.values.len();
    let step = (RIGHT - LEFT - 12.0) / count.saturating_sub(1).max(1) as f64;
    let x = |at: usize| LEFT + 6.0 + at as f64 * step;
    text(&mut svg, LEFT, TOP - 20.0, "start", true, &chart.labels.values);
    text(&mut svg, LEFT, RANGE_TOP - 8.0, "start", true, &chart.labels.ranges);

    let limits = chart.limits;
    let bounds = limits.iter().flat_map(|limits| [limits.lower, limits.upper]);
    let scale = Scale::around(chart.values.iter().copied().chain(bounds), TOP, BOTTOM);
    frame(&mut svg, TOP, BOTTOM);
    match limits {
        Some(limits) => {
            let [upper, centre, lower] =
                [limits.upper, limits.centre, limits.lower].map(|line| scale.y(line));
            line_across(&mut svg, upper, "6 3", (upper.min(centre - LINE), &chart.labels.upper));
            line_across(&mut svg, centre, "", (centre, &chart.labels.centre));
            line_across(&mut svg, lower, "6 3", (lower.max(centre + LINE), &chart.labels.lower));
        }
        None => ends(&mut svg, chart.values, &scale, &chart.labels.upper, &chart.labels.lower),
    }
    if chart.baseline > 0 && chart.baseline < count {
        let end = f64::midpoint(x(chart.baseline - 1), x(chart.baseline));
        let _ = write!(
            svg,
            "<line class=\"chart-baseline\" x1=\"{end:.1}\" y1=\"{TOP:.1}\" x2=\"{end:.1}\" y2=\"{BOTTOM:.1}\" \
             stroke=\"currentColor\" stroke-width=\"0.7\" stroke-dasharray=\"1 3\"/>"
        );
        let anchor = if end > 120.0 { "end" } else { "start" };
        let beside = if end > 120.0 { end - 4.0 } else { end + 4.0 };
        text(&mut svg, beside, TOP - 4.0, anchor, false, &chart.labels.baseline);
    }
    let places: Vec<(f64, f64)> =
        chart.values.iter().enumerate().map(|(at, value)| (x(at), scale.y(*value))).collect();
    joined(&mut svg, &places);
    points(&mut svg, chart, &places);

    let ranges = moving_ranges(chart.values);
    let bound = limits.iter().map(|limits| limits.range_upper);
    let range_scale =
        Scale::around(ranges.iter().copied().chain([0.0]).chain(bound), RANGE_TOP, RANGE_BOTTOM);
    frame(&mut svg, RANGE_TOP, RANGE_BOTTOM);
    if let Some(limits) = limits {
        let [upper, centre] = [limits.range_upper, limits.range_centre].map(|line| range_scale.y(line));
        line_across(&mut svg, upper, "6 3", (upper.min(centre - LINE), &chart.labels.range_upper));
        line_across(&mut svg, centre, "", (centre, &chart.labels.range_centre));
    } else {
        ends(&mut svg, &ranges, &range_scale, &chart.labels.range_upper, "");
    }
    // A range belongs to the later of its two points.
    let places: Vec<(f64, f64)> =
        ranges.iter().enumerate().map(|(at, range)| (x(at + 1), range_scale.y(*range))).collect();
    joined(&mut svg, &places);
    for ((at, y), range) in places.into_iter().zip(&ranges) {
        let beyond = limits.is_some_and(|limits| *range > limits.range_upper);
        let _ = if beyond {
            write!(svg, "<path d=\"M{at:.1} {:.1} l4 4 l-4 4 l-4 -4 z\" fill=\"currentColor\"/>", y - 4.0)
        } else {
            write!(svg, "<circle cx=\"{at:.1}\" cy=\"{y:.1}\" r=\"1.8\" fill=\"currentColor\"/>")
        };
    }
    text(&mut svg, LEFT, 286.0, "start", false, &chart.labels.first);
    text(&mut svg, RIGHT, 286.0, "end", false, &chart.labels.last);
    svg.push_str("</svg>");
    svg
}

fn text(svg: &mut String, x: f64, y: f64, anchor: &str, bold: bool, said: &str) {
    if said.is_empty() {
        return;
    }
    let weight = if bold { " font-weight=\"600\"" } else { "" };
    let _ = write!(
        svg,
        "<text x=\"{x:.1}\" y=\"{y:.1}\" font-size=\"10\" text-anchor=\"{anchor}\" fill=\"currentColor\"{weight}>{}</text>",
        escape(said)
    );
}

fn frame(svg: &mut String, top: f64, bottom: f64) {
    let _ = write!(
        svg,
        "<rect class=\"chart-frame\" x=\"{LEFT:.1}\" y=\"{top:.1}\" width=\"{:.1}\" height=\"{:.1}\" fill=\"none\" \
         stroke=\"currentColor\" stroke-width=\"0.5\" opacity=\"0.5\"/>",
        RIGHT - LEFT,
        bottom - top
    );
}

/// A line from side to side with its name beside it.
fn line_across(svg: &mut String, y: f64, dashes: &str, (name_y, name): (f64, &str)) {
    let dashed = if dashes.is_empty() { String::new() } else { format!(" stroke-dasharray=\"{dashes}\"") };
    let _ = write!(
        svg,
        "<line class=\"chart-limit\" x1=\"{LEFT:.1}\" y1=\"{y:.1}\" x2=\"{RIGHT:.1}\" y2=\"{y:.1}\" \
         stroke=\"currentColor\" stroke-width=\"1\"{dashed}/>"
    );
    text(svg, NAMES, name_y + 3.5, "start", false, name);
}

/// The largest and the smallest number by name, where no line says how high the drawing reaches.
fn ends(svg: &mut String, numbers: &[f64], scale: &Scale, largest: &str, smallest: &str) {
    let high = scale.y(numbers.iter().copied().fold(f64::NEG_INFINITY, f64::max));
    let low = scale.y(numbers.iter().copied().fold(f64::INFINITY, f64::min));
    text(svg, NAMES, high + 3.5, "start", false, largest);
    text(svg, NAMES, low.max(high + LINE) + 3.5, "start", false, smallest);
}

fn joined(svg: &mut String, places: &[(f64, f64)]) {
    svg.push_str("<polyline class=\"chart-line\" fill=\"none\" stroke=\"currentColor\" stroke-width=\"0.8\" opacity=\"0.6\" points=\"");
    for (at, (x, y)) in places.iter().enumerate() {
        let between = if at > 0 { " " } else { "" };
        let _ = write!(svg, "{between}{x:.1},{y:.1}");
    }
    svg.push_str("\"/>");
}

fn points(svg: &mut String, chart: &ControlChart<'_>, places: &[(f64, f64)]) {
    let mark_of = |at: usize| chart.marks.get(at).copied().unwrap_or(0);
    // Numbers that would run into each other climb.
    let (mut last, mut level) = (f64::NEG_INFINITY, 0.0);
    for (at, (x, y)) in places.iter().enumerate() {
        let earlier = chart.earlier.get(at).copied().unwrap_or(false);
        let fill = if earlier { "Canvas" } else { "currentColor" };
        let mark = mark_of(at);
        if mark == 0 {
            let _ = write!(
                svg,
                "<circle class=\"chart-point\" cx=\"{x:.1}\" cy=\"{y:.1}\" r=\"2.6\" fill=\"{fill}\" \
                 stroke=\"currentColor\" stroke-width=\"1\"/>"
            );
            continue;
        }
        let _ = write!(
            svg,
            "<path class=\"chart-signal\" d=\"M{x:.1} {:.1} l5 5 l-5 5 l-5 -5 z\" fill=\"{fill}\" \
             stroke=\"currentColor\" stroke-width=\"1.4\"/>",
            y - 5.0
        );
        if at > 0 && mark_of(at - 1) == mark {
            continue;
        }
        level = if x - last < 14.0 { level + 1.0 } else { 0.0 };
        last = *x;
        // On the side that the line doesn't come from.
        let from_above =
            at.checked_sub(1).and_then(|before| places.get(before)).is_some_and(|(_, before)| before < y);
        let number_y = if from_above {
            (y + 17.0 + level * 10.0).min(BOTTOM + 11.0)
        } else {
            (y - 8.0 - level * 10.0).max(TOP - 6.0)
        };
        let _ = write!(
            svg,
            "<text class=\"chart-number\" x=\"{x:.1}\" y=\"{number_y:.1}\" font-size=\"11\" font-weight=\"700\" \
             text-anchor=\"middle\" fill=\"currentColor\">{mark}</text>"
        );
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::control::{Certified, LimitsFrom};

    fn drawn(values: &[f64], limits: bool) -> String {
        let certified = Certified { value: 100.0, sigma: 0.0, repeatability: Some(2.0) };
        let limits = limits.then(|| Limits::of_certificate(Some(certified)).unwrap());
        assert!(limits.is_none_or(|limits| limits.from == LimitsFrom::Certificate));
        let labels = Labels { upper: "upper <106>".into(), last: "2026-11-25".into(), ..Labels::default() };
        let marks: Vec<usize> = values.iter().map(|value| usize::from(*value > 106.0)).collect();
        let earlier: Vec<bool> = values.iter().enumerate().map(|(at, _)| at < 2).collect();
        draw(&ControlChart {
            title: "Pb of CHK-1",
            stop: ". ",
            description: "x & y",
            values,
            earlier: &earlier,
            marks: &marks,
            limits,
            baseline: 2,
            labels: &labels,
        })
    }

    #[test]
    fn every_point_is_drawn_once_and_a_signal_has_a_shape_and_a_number() {
        let svg = drawn(&[100.0, 101.0, 99.0, 108.0], true);
        assert_eq!(svg.matches("class=\"chart-point\"").count(), 3);
        assert_eq!(svg.matches("class=\"chart-signal\"").count(), 1);
        assert_eq!(svg.matches("class=\"chart-number\"").count(), 1);
        assert_eq!(svg.matches("fill=\"Canvas\"").count(), 2, "earlier points are rings");
        assert_eq!(svg.matches("class=\"chart-limit\"").count(), 5);
        assert!(svg.contains("upper &lt;106&gt;") && svg.contains("<desc>x &amp; y</desc>"));
        assert_eq!(svg, drawn(&[100.0, 101.0, 99.0, 108.0], true));
    }

    #[test]
    fn neighbours_of_one_signal_are_numbered_once() {
        let svg = drawn(&[100.0, 107.0, 108.0, 109.0], true);
        assert_eq!(svg.matches("class=\"chart-signal\"").count(), 3);
        assert_eq!(svg.matches("class=\"chart-number\"").count(), 1);
    }

    #[test]
    fn odd_values_stay_on_the_drawing() {
        let lists: [&[f64]; 5] =
            [&[], &[5.0], &[5.0, 5.0], &[-1e13, 1e13], &[0.0, 1e-6, -1e-6, 100.0, 100.0, 100.0]];
        for values in lists {
            for limits in [false, true] {
                let svg = drawn(values, limits);
                assert!(!svg.contains("NaN") && !svg.contains("inf"), "{svg}");
            }
        }
    }
}
