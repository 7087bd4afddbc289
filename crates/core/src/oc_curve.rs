//! The operating characteristic of a plan as a picture: how likely a lot is accepted against how many of its units are
//! nonconforming.
//!
//! Drawn as the ruler is: SVG text with fixed decimals, the same bytes everywhere; meaning never from colour alone.

use std::fmt::Write;

use crate::ruler::escape;
use crate::sampling::{RISK_POINTS, accepted, units_at};

/// What is drawn, and the words for it.
#[derive(Clone, Debug)]
pub struct OcCurve<'a> {
    /// Title for those who don't see it.
    pub title: &'a str,
    /// What stands between title and description where both are read as one.
    pub stop: &'a str,
    /// Description for those who don't see it.
    pub description: &'a str,
    /// What the axis along the bottom counts.
    pub across: &'a str,
    /// What the axis up the side counts.
    pub up: &'a str,
    /// Words of the curve for no nonconforming unit.
    pub zero: &'a str,
    /// Units in the lot.
    pub lot_size: u64,
    /// Units taken.
    pub n: u64,
    /// A second acceptance number, that of the tables, with its words.
    pub other: Option<(u32, &'a str)>,
}

const LEFT: f64 = 44.0;
const RIGHT: f64 = 348.0;
const TOP: f64 = 12.0;
const BOTTOM: f64 = 150.0;
/// Most places along the bottom at which the chance is worked out.
const STEPS: u64 = 60;

/// Draws the curve as SVG text.
pub fn draw(curve: &OcCurve<'_>) -> String {
    let lot_size = curve.lot_size.max(1);
    let largest_ac = curve.other.map_or(0, |(ac, _)| u64::from(ac));
    // To where even the more lenient curve has come down to one in twenty, and never past the lot.
    let to = units_at(lot_size, curve.n, largest_ac, 5).saturating_add(1).saturating_mul(5) / 4;
    let to = to.clamp(1, lot_size);
    let x = |units: u64| LEFT + (RIGHT - LEFT) * units as f64 / to as f64;
    let y = |chance: f64| BOTTOM - (BOTTOM - TOP) * chance;
    let mut svg = String::with_capacity(4096);
    // Writing to a String cannot fail, so the results are dropped.
    let _ = write!(
        svg,
        "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"oc-curve\" viewBox=\"0 0 360 198\" width=\"360\" height=\"198\" \
         role=\"img\" aria-label=\"{title}{stop}{description}\"><title>{title}</title><desc>{description}</desc>\
         <g font-size=\"9\" fill=\"currentColor\">",
        title = escape(curve.title),
        stop = escape(curve.stop),
        description = escape(curve.description)
    );
    for percent in [0_u8, 50, 100].into_iter().chain(RISK_POINTS.into_iter().filter(|point| *point != 50)) {
        let at = y(f64::from(percent) / 100.0);
        // 95 stands too near to 100 for a number of its own.
        if percent != 95 {
            let _ = write!(
                svg,
                "<text x=\"{:.1}\" y=\"{:.1}\" text-anchor=\"end\">{percent}\u{a0}%</text>",
                LEFT - 4.0,
                at + 3.0
            );
        }
        let _ = write!(
            svg,
            "<line x1=\"{LEFT:.1}\" y1=\"{at:.1}\" x2=\"{RIGHT:.1}\" y2=\"{at:.1}\" stroke=\"currentColor\" \
             stroke-width=\"0.5\" opacity=\"0.4\"/>"
        );
    }
    let _ = write!(
        svg,
        "<path d=\"M{LEFT:.1} {TOP:.1} V{BOTTOM:.1} H{RIGHT:.1}\" fill=\"none\" stroke=\"currentColor\" \
         stroke-width=\"1.5\"/>\
         <text x=\"{LEFT:.1}\" y=\"175\" text-anchor=\"middle\">0</text>\
         <text x=\"{RIGHT:.1}\" y=\"175\" text-anchor=\"end\">{to}</text>\
         <text x=\"{middle:.1}\" y=\"192\" text-anchor=\"middle\">{across}</text>\
         <text x=\"12\" y=\"{half:.1}\" text-anchor=\"middle\" transform=\"rotate(-90 12 {half:.1})\">{up}</text>",
        middle = f64::midpoint(LEFT, RIGHT),
        half = f64::midpoint(TOP, BOTTOM),
        across = escape(curve.across),
        up = escape(curve.up)
    );
    svg.push_str("</g>");
    let mut line = |ac: u64, dashes: &str| {
        let step = to.div_ceil(STEPS).max(1);
        let places = (0..to).step_by(step as usize).chain([to]);
        svg.push_str("<polyline points=\"");
        for units in places {
            let _ = write!(svg, "{:.1},{:.1} ", x(units), y(accepted(lot_size, units, curve.n, ac)));
        }
        let _ = write!(
            svg,
            "\" fill=\"none\" stroke=\"currentColor\" stroke-width=\"2\" stroke-dasharray=\"{dashes}\"/>"
        );
    };
    if let Some((ac, _)) = curve.other {
        line(u64::from(ac), "2 3");
    }
    line(0, "none");
    risk_points(&mut svg, curve, lot_size, &x, &y);
    key(&mut svg, curve);
    svg.push_str("</svg>");
    svg
}

/// The risk points of the curve for no nonconforming unit, as dots with how many units each is.
fn risk_points(
    svg: &mut String,
    curve: &OcCurve<'_>,
    lot_size: u64,
    x: &dyn Fn(u64) -> f64,
    y: &dyn Fn(f64) -> f64,
) {
    let mut free_from = 0.0_f64;
    for point in RISK_POINTS {
        let units = units_at(lot_size, curve.n, 0, point);
        let (across, up) = (x(units), y(accepted(lot_size, units, curve.n, 0)));
        let _ = write!(
            svg,
            "<circle cx=\"{across:.1}\" cy=\"{up:.1}\" r=\"3.5\" fill=\"currentColor\" stroke=\"Canvas\"/>\
             <line x1=\"{across:.1}\" y1=\"{up:.1}\" x2=\"{across:.1}\" y2=\"{BOTTOM:.1}\" stroke=\"currentColor\" \
             stroke-width=\"0.7\" stroke-dasharray=\"2 2\"/>"
        );
        // A number is left out where it would stand on the one before, or on an end of the axis.
        if across > free_from.max(LEFT + 12.0) && across < RIGHT - 40.0 {
            let _ = write!(
                svg,
                "<text x=\"{across:.1}\" y=\"163\" font-size=\"9\" text-anchor=\"middle\" fill=\"currentColor\" \
                 font-weight=\"600\">{units}</text>"
            );
            free_from = across + 8.0 + 5.0 * units.to_string().len() as f64;
        }
    }
}

fn key(svg: &mut String, curve: &OcCurve<'_>) {
    let lines = [Some((curve.zero, "none")), curve.other.map(|(_, words)| (words, "2 3"))];
    for (at, (words, dashes)) in lines.into_iter().flatten().enumerate() {
        let y = 24.0 + 14.0 * at as f64;
        let _ = write!(
            svg,
            "<line x1=\"196\" y1=\"{y:.1}\" x2=\"216\" y2=\"{y:.1}\" stroke=\"currentColor\" stroke-width=\"2\" \
             stroke-dasharray=\"{dashes}\"/><text x=\"221\" y=\"{:.1}\" font-size=\"9\" fill=\"currentColor\">{}</text>",
            y + 3.0,
            escape(words)
        );
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn drawn(lot_size: u64, n: u64, other: Option<(u32, &str)>) -> String {
        draw(&OcCurve {
            title: "plan <A>",
            stop: ". ",
            description: "x",
            across: "units",
            up: "accepted",
            zero: "Ac 0",
            lot_size,
            n,
            other,
        })
    }

    #[test]
    fn the_curve_starts_at_certain_and_comes_down() {
        let svg = drawn(480, 50, Some((1, "Ac 1")));
        assert!(svg.contains("plan &lt;A&gt;") && svg.contains("points=\"44.0,12.0 "));
        let curves: Vec<Vec<f64>> = svg
            .split("points=\"")
            .skip(1)
            .map(|rest| {
                let points = rest.split('"').next().unwrap().split_ascii_whitespace();
                points.map(|point| point.split(',').nth(1).unwrap().parse().unwrap()).collect()
            })
            .collect();
        assert_eq!(curves.len(), 2);
        for curve in curves {
            assert!(curve.is_sorted() && *curve.last().unwrap() > 140.0, "{curve:?}");
        }
    }

    #[test]
    fn odd_plans_are_drawn_without_odd_numbers() {
        for (lot_size, n) in
            [(0, 0), (1, 1), (2, 0), (5, 5), (9, 20), (1_000_000_000, 59), (1_000_000_000, 92_104)]
        {
            let svg = drawn(lot_size, n, None);
            assert!(!svg.contains("NaN") && !svg.contains("inf"), "{svg}");
        }
    }
}
