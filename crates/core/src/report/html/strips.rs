//! The ruler of an outcome as a strip for a cell of a table, and the legend that teaches it.
//!
//! A thousand readings have seven of them each, so a strip is few bytes: whole numbers in one small drawing, and what all strips
//! have in common in the style sheet. All of it is drawn with lines, because browsers print no backgrounds; what only the picture
//! shows stands in its title.

use std::fmt::Write;

use maud::{Markup, PreEscaped, html};

use super::Report;
use crate::inspection::MaterialFinding;
use crate::quantity::MassFraction;
use crate::reading::Identity;
use crate::report::explain::About;
use crate::report::{phrases, rulers};
use crate::ruler::{self, Mark, Picture, Strip};

/// Room beside the scale for a bob that hangs on its end, and for an arrowhead.
const SIDE: u32 = 8;
/// Length of the scale.
const SPAN: u32 = 150;
/// Height of the drawing; its rail is the lower border.
const HEIGHT: u32 = 30;

impl Report<'_> {
    /// The strip of one value of one reading as the reading was judged by itself; nothing where it has no ruler.
    pub(super) fn strip_of(&self, about: About, reading: u32) -> Markup {
        self.pictured(about, reading).map_or_else(Markup::default, |picture| self.strip(&picture))
    }

    pub(super) fn strip(&self, picture: &Picture) -> Markup {
        drawn(picture, &rulers::edges(self.words, picture))
    }

    /// The strip of a table that prints no value: its title names it.
    pub(super) fn strip_valued(&self, picture: &Picture, value: &str) -> Markup {
        let edges = rulers::edges(self.words, picture);
        drawn(picture, &self.with("ruler-strip", &[("value", value), ("edges", &edges)]))
    }

    fn pictured(&self, about: About, reading: u32) -> Option<Picture> {
        let (source, reviewer, row) = self.place(reading as usize)?;
        let assessed = reviewer.assess(row);
        match about {
            About::Substance(of) => rulers::of_substance(self.inspection, source, &assessed, of, row),
            About::Halogen(of) => rulers::of_halogen(self.inspection, source, &assessed, of, row),
        }
    }

    /// The strip of the reading that shows the worst outcome of a material.
    pub(super) fn strip_of_worst(&self, material: &MaterialFinding, about: About) -> Markup {
        let found = rulers::worst_reading(self.inspection, self.findings, material, about);
        let picture = found.and_then(|reading| Some((reading, self.pictured(about, reading)?)));
        picture.map_or_else(Markup::default, |(reading, picture)| {
            self.strip_valued(&picture, &self.named_value(about, reading))
        })
    }

    /// A value with the name of its reading.
    fn named_value(&self, about: About, reading: u32) -> String {
        let Some((source, reviewer, row)) = self.place(reading as usize) else { return String::new() };
        let assessed = reviewer.assess(row);
        let value = match (rulers::element_of(about), about) {
            (Some(element), About::Substance(of)) => {
                let sigma = assessed.substances.get(of as usize).and_then(|judged| judged.used.sigma);
                phrases::value(self.words, &source.readings.cell(element, row), sigma, "")
            }
            (Some(element), About::Halogen(of)) => {
                let sigma = assessed.halogen(of).used.sigma;
                phrases::value(self.words, &source.readings.cell(element, row), sigma, "")
            }
            (None, _) => phrases::total(self.words, &assessed.total),
        };
        let name = source.readings.identity(Identity::Id, row);
        let name =
            name.map_or_else(|| phrases::line_name(self.words, source.readings.line(row)), str::to_owned);
        format!("{name}{}{value}", self.words.colon())
    }

    /// What a strip shows, in a list of strips; of nothing measured.
    pub(super) fn rulers_legend(&self) -> Markup {
        let Some((_, rule)) = self.inspection.books.screening() else { return html! {} };
        let mg = MassFraction::from_mg_per_kg;
        // An invented band, and what can be seen of it: numbers that show each mark plainly.
        let band = |mark| Picture { low: mg(60), high: Some(mg(150)), mark };
        let limit = |mark| Picture { low: mg(100), high: Some(mg(100)), mark };
        let bob = |value, half| Mark::Bob { value: mg(value), half: mg(half) };
        let between = Mark::Between { low: mg(40), low_half: mg(0), high: mg(240), high_half: mg(110) };
        let ways: [(&str, Picture); 6] = [
            ("below", band(bob(20, 10))),
            ("undecided", band(bob(160, 70))),
            ("over", band(bob(500, 180))),
            ("limit", limit(bob(30, 12))),
            ("bound", band(Mark::Below(mg(30)))),
            ("between", limit(between)),
        ];
        html! {
            p class="sub keep" { (self.with("report-rulers", &[("k", &rule.sigma_factor.to_string())])) }
            ul class="rulers" {
                @for (way, picture) in &ways {
                    li { (unnamed(picture)) (self.say(&format!("report-rulers_{way}"))) }
                }
            }
        }
    }
}

fn drawn(picture: &Picture, title: &str) -> Markup {
    let name = format!(" role=\"img\"><title>{}</title>", ruler::escape(title));
    PreEscaped(svg(&ruler::strip(picture), &name))
}

/// A strip that its text stands beside.
fn unnamed(picture: &Picture) -> Markup {
    PreEscaped(svg(&ruler::strip(picture), " aria-hidden=\"true\">"))
}

fn svg(strip: &Strip, name: &str) -> String {
    let x = |per_mille: u16| SIDE + (u32::from(per_mille) * SPAN + 500) / 1000;
    let (low, high) = (x(strip.low), x(strip.high));
    let (at, until, from, to) = (x(strip.at), x(strip.until), x(strip.from), x(strip.to));
    let width = SPAN + 2 * SIDE;
    let mut out = format!("<svg class=\"s\" viewBox=\"0 0 {width} {HEIGHT}\"{name}");
    let mut lines = String::new();
    // Writing to a String cannot fail, so the results are dropped.
    // A limit is a post with a crossbar, so that it is not taken for an upright of what is known only by its bounds.
    let _ = if strip.low == strip.high && !strip.open {
        write!(lines, "M{low} {HEIGHT}V13m-5 0h10")
    } else {
        let _ = write!(out, "<path class=\"b\" d=\"M{low} 21H{high}\"/>");
        let _ = write!(lines, "M{low} {HEIGHT}V12H{high}");
        if strip.open { Ok(()) } else { write!(lines, "V{HEIGHT}") }
    };
    // An arrowhead beyond an end, or the end of a whisker; and where the line to it begins.
    let left_arrow = || (1, "M7 1l-6 5l6 5".to_owned());
    let right_arrow = || (width - 1, format!("M{} 1l6 5l-6 5", width - 7));
    let (left, left_end) = if strip.cut_left { left_arrow() } else { (from, format!("M{from} 1v10")) };
    let (right, right_end) = if strip.cut_right { right_arrow() } else { (to, format!("M{to} 1v10")) };
    let dashed = match strip.mark {
        "below" => {
            let (end, arrow) = left_arrow();
            let _ = write!(lines, "M{at} 1V{HEIGHT}{arrow}");
            Some((at, end))
        }
        "above" => {
            let (end, arrow) = right_arrow();
            let _ = write!(lines, "M{at} 1V{HEIGHT}{arrow}");
            Some((at, end))
        }
        // A log scale has no place for nothing: what may be as little as that goes on beyond the left end.
        "between" if strip.cut_left && strip.at == 0 => {
            let _ = write!(lines, "{left_end}{right_end}M{until} 6H{right}M{until} 1V{HEIGHT}");
            Some((left, until))
        }
        "between" => {
            let _ = write!(lines, "{left_end}{right_end}M{left} 6H{at}M{until} 6H{right}");
            let _ = write!(lines, "M{at} 1V{HEIGHT}M{until} 1V{HEIGHT}");
            Some((at, until))
        }
        _ => {
            let _ = write!(lines, "{left_end}{right_end}M{left} 6H{right}");
            None
        }
    };
    let _ = write!(out, "<path d=\"{lines}\"/>");
    let _ = match dashed {
        Some((from, to)) => write!(out, "<path class=\"d\" d=\"M{from} 6H{to}\"/>"),
        None => write!(out, "<path class=\"p\" d=\"M{} 5h16v8l-8 17l-8-17z\"/>", at - 8),
    };
    out.push_str("</svg>");
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    fn mg(value: i64) -> MassFraction {
        MassFraction::from_mg_per_kg(value)
    }

    fn drawn(mark: Mark, high: Option<i64>) -> String {
        svg(&ruler::strip(&Picture { low: mg(700), high: high.map(mg), mark }), " aria-hidden=\"true\">")
    }

    #[test]
    fn a_strip_is_whole_numbers_inside_its_drawing_whatever_the_value() {
        for value in [-500_000_000, 0, 1, 700_000_000, 1_000_000_000, 9_000_000_000_000] {
            let value = MassFraction::from_units(value);
            let half = mg(200);
            for mark in [
                Mark::Bob { value, half },
                Mark::Below(value),
                Mark::Above(value),
                Mark::Between { low: value, low_half: mg(0), high: value.plus(mg(500)), high_half: half },
            ] {
                for high in [None, Some(700), Some(1300)] {
                    let out = drawn(mark, high);
                    let paths = out.split(" d=\"").skip(1).filter_map(|rest| rest.split('"').next());
                    for number in paths.flat_map(|path| path.split(|one: char| !one.is_ascii_digit())) {
                        let inside = number.parse::<u32>().is_ok_and(|number| number <= SPAN + 2 * SIDE);
                        assert!(number.is_empty() || inside, "{number} in {out}");
                    }
                    assert!(!out.contains('.'), "{out}");
                }
            }
        }
    }

    #[test]
    fn a_strip_is_few_bytes() {
        let wide = Mark::Bob { value: mg(640), half: mg(60) };
        assert!(drawn(wide, Some(1300)).len() < 200, "{}", drawn(wide, Some(1300)));
    }

    #[test]
    fn a_value_has_a_bob_and_what_is_known_by_its_bounds_alone_has_none() {
        let has_bob = |mark| drawn(mark, Some(1300)).contains("class=\"p\"");
        assert!(has_bob(Mark::Bob { value: mg(640), half: mg(60) }));
        assert!(!has_bob(Mark::Below(mg(640))));
        assert!(!has_bob(Mark::Above(mg(640))));
        assert!(!has_bob(Mark::Between { low: mg(10), low_half: mg(0), high: mg(640), high_half: mg(9) }));
    }
}
