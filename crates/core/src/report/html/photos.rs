//! Photographs with the spot that was measured.

use std::io::{self, Write};

use base64::display::Base64Display;
use base64::engine::general_purpose::STANDARD;
use maud::{PreEscaped, html};

use super::{Report, add_markup};
use crate::outcome::Outcome;
use crate::photo::{Photo, Picture, Size, Spot};
use crate::report::photos::{self, Join};
use crate::report::phrases;
use crate::substance::Substance;

/// The box that a picture is fitted into, in tenths of a millimetre: two stand side by side on A4 and on Letter.
const BOX: (u64, u64) = (850, 800);

impl Report<'_> {
    /// One figure a photograph, however many readings it shows; nothing where nobody named one.
    pub(super) fn photos(&self, sink: &mut dyn Write) -> io::Result<()> {
        let joins = photos::joins(self.inspection, self.findings);
        if joins.is_empty() {
            return Ok(());
        }
        let head = html! {
            (PreEscaped("<section class=\"photos\">"))
            div class="whole" {
                h2 { (self.say("report-photos")) }
                p class="sub" { (self.say("report-photos_text")) }
            }
            (PreEscaped("<div class=\"shots\">"))
        };
        add_markup(sink, &head)?;
        let together = photos::by_photo(&joins);
        for of in &together {
            let photo = of.first().and_then(|join| self.inspection.photos.get(join.photo?));
            if let Some((photo, picture)) =
                photo.and_then(|photo| Some((photo, photo.picture.as_ref().ok()?)))
            {
                self.photo(photo, picture, of, sink)?;
            }
        }
        sink.write_all(b"</div>")?;
        let missing: Vec<&&Join> = together.iter().flatten().filter(|join| join.photo.is_none()).collect();
        if !missing.is_empty() {
            let list = html! {
                h3 { (self.say("report-photos_missing")) }
                ul {
                    @for join in missing {
                        li {
                            (photos::shown(self.inspection, self.findings, self.words, join)) (self.words.colon())
                            (photos::state(self.words, &join.said.file, join.state)) (self.words.gap()) (photos::remedy(self.words, join.state))
                            @if !join.said.sha256.is_empty() {
                                " " span class="mono" { "SHA-256 " (join.said.sha256) }
                            }
                        }
                    }
                }
            };
            add_markup(sink, &list)?;
        }
        sink.write_all(b"</section>")
    }

    fn photo(&self, photo: &Photo, picture: &Picture, of: &[&Join], sink: &mut dyn Write) -> io::Result<()> {
        let size = picture.print.size;
        write!(
            sink,
            "<figure class=\"shot\"><div style=\"width:min(100%,{}mm);aspect-ratio:{}/{}\"><img src=\"data:{};base64,{}\"",
            tenths(width_of(size)),
            size.width,
            size.height,
            picture.print.media_type.code(),
            Base64Display::new(&picture.print.bytes, &STANDARD)
        )?;
        let numbered = of.len() > 1;
        let rest = html! {
            (PreEscaped(" alt=\"")) (self.alternative(photo, of)) (PreEscaped("\">"))
            (PreEscaped(marks(size, of)))
            (PreEscaped("</div>"))
            figcaption {
                @for (at, join) in of.iter().enumerate() {
                    p class="shows" {
                        @if numbered { b { (at + 1) ". " } }
                        b { (photos::shown(self.inspection, self.findings, self.words, join)) }
                        @let said = self.outcomes_shown(join);
                        @if !said.is_empty() { br; (said) }
                        @if !join.is_placed() { br; i { (self.say("report-photos_no_reading")) } }
                        br; (self.spot(join.said.spot))
                    }
                }
                p class="sub" {
                    (self.with("report-photos_file", &[
                        ("file", &photo.name),
                        ("width", &picture.size.width.to_string()), ("height", &picture.size.height.to_string()),
                    ]))
                    br; (self.say("report-photos_original")) " " span class="mono" { (photo.sha256) }
                    br; (self.say("report-photos_print")) " " span class="mono" { (picture.print.sha256) }
                }
            }
            (PreEscaped("</figure>"))
        };
        add_markup(sink, &rest)
    }

    fn alternative(&self, photo: &Photo, of: &[&Join]) -> String {
        let shows: Vec<String> =
            of.iter().map(|join| photos::shown(self.inspection, self.findings, self.words, join)).collect();
        let marked = of.iter().filter(|join| join.said.spot.is_some()).count();
        let arguments =
            [("file", photo.name.as_str()), ("of", &self.words.series(&shows)), ("n", &marked.to_string())];
        self.with("report-photos_alt", &arguments)
    }

    fn spot(&self, spot: Option<Spot>) -> String {
        match spot {
            None => self.say("report-photos_no_spot"),
            Some(Spot { x, y }) => {
                let (x, y) = (tenths(u64::from(x)), tenths(u64::from(y)));
                self.with("report-photos_spot", &[("x", &x), ("y", &y)])
            }
        }
    }

    /// What was found there, in words, worst first: each outcome once, with its substances.
    fn outcomes_shown(&self, join: &Join) -> String {
        let found: Vec<(Substance, Outcome)> = match (join.reading, join.material) {
            (Some(reading), _) => match self.findings.verdicts.get(reading) {
                Some(verdicts) => Substance::ALL.into_iter().zip(verdicts.substances).collect(),
                None => return String::new(),
            },
            (None, Some(material)) => match self.findings.materials.get(material) {
                Some(material) => {
                    Substance::ALL.into_iter().map(|one| (one, material.tally.worst(one))).collect()
                }
                None => return String::new(),
            },
            (None, None) => return String::new(),
        };
        let mut kinds: Vec<Outcome> = found.iter().map(|(_, outcome)| *outcome).collect();
        kinds.sort_unstable_by(|one, other| other.cmp(one));
        kinds.dedup();
        let said = kinds.into_iter().map(|kind| {
            let of: Vec<&str> =
                found.iter().filter(|(_, outcome)| *outcome == kind).map(|(one, _)| one.symbol()).collect();
            let outcome = phrases::outcome(self.words, kind);
            self.with(
                "report-photos_outcome",
                &[("substances", &self.words.list(&of)), ("outcome", &outcome)],
            )
        });
        self.words.series(&said.collect::<Vec<_>>())
    }
}

/// How wide a picture is printed, in tenths of a millimetre, so that it lies within the box.
fn width_of(size: Size) -> u64 {
    let (width, height) = (u64::from(size.width), u64::from(size.height).max(1));
    BOX.0.min(BOX.1 * width / height).max(1)
}

fn tenths(number: u64) -> String {
    format!("{}.{}", number / 10, number % 10)
}

/// Rings and cross-hairs over a picture, in thousandths of its width and height as the picture lies: a black line on a white
/// one, so that they are seen on any ground and without colour. Their place is where somebody said, to a thousandth.
fn marks(size: Size, of: &[&Join]) -> String {
    use std::fmt::Write;
    // A tenth of a thousandth of the longer side is the unit, so that whole numbers will do.
    let (width, height) = (u64::from(size.width), u64::from(size.height));
    let longer = width.max(height).max(1);
    let scaled = |side: u64| 10_000 * side / longer;
    let (wide, high) = (scaled(width), scaled(height));
    let mut out =
        format!("<svg viewBox=\"0 0 {wide} {high}\" preserveAspectRatio=\"none\" aria-hidden=\"true\">");
    for (at, join) in of.iter().enumerate() {
        let Some(spot) = join.said.spot else { continue };
        let (x, y) = (u64::from(spot.x) * wide / 1000, u64::from(spot.y) * high / 1000);
        // Signed, because a mark near the edge reaches beyond it.
        let (x, y) = (x as i64, y as i64);
        let path = format!(
            "M{} {y}a320 320 0 1 0 640 0a320 320 0 1 0 -640 0M{} {y}h480M{} {y}h480M{x} {}v480M{x} {}v480",
            x - 320,
            x - 640,
            x + 160,
            y - 640,
            y + 160
        );
        // Writing to a String cannot fail.
        let _ = write!(out, "<path class=\"w\" d=\"{path}\"/><path class=\"b\" d=\"{path}\"/>");
        if of.len() > 1 {
            let across = if x > wide as i64 - 1200 { x - 900 } else { x + 480 };
            let down = if y < 900 { y + 900 } else { y - 400 };
            let _ = write!(out, "<text x=\"{across}\" y=\"{down}\">{}</text>", at + 1);
        }
    }
    out.push_str("</svg>");
    out
}
