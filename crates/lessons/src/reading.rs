//! One invented reading: as a person sets it, or drawn so that an outcome is likely, at an edge on purpose where that teaches.

use plumbline_core::material::MaterialClass;
use plumbline_core::quantity::MassFraction;
use plumbline_core::rules::{LowEdge, RuleBooks};
use plumbline_core::substance::Substance;

use crate::draw::Draw;
use crate::files::{Delivery, Table};

/// One reading of one substance, each piece as it would stand in a cell of a file (mg/kg, one sigma, millimetres).
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct WhatIf {
    /// The class the file states. [`MaterialClass::Unknown`] stands there as glass, which the books have no bands for.
    pub class: MaterialClass,
    /// The substance.
    pub substance: Substance,
    /// The value's cell: `640`, `< 40`, `n.d.`, `-`.
    pub written: String,
    /// The cell of its uncertainty; empty for none.
    pub sigma: String,
    /// The cell of its detection limit; empty for none.
    pub detection: String,
    /// The thickness of the piece; empty for none stated.
    pub thickness: String,
}

impl WhatIf {
    /// The reading as a delivery of one row.
    pub fn delivery(&self) -> Delivery {
        let symbol = self.substance.symbol();
        let class = if self.class == MaterialClass::Unknown { "glass" } else { self.class.code() };
        let mut cells = vec![
            ("Sample", "T-1"),
            ("Part", "T-1 part"),
            ("Material", "invented"),
            ("Class", class),
            ("Lot", "T-1"),
            ("Supplier", "Gorse Works"),
        ]
        .into_iter()
        .map(|(heading, cell)| (heading.to_owned(), cell.to_owned()))
        .collect::<Vec<_>>();
        if !self.thickness.is_empty() {
            cells.push(("Thickness mm".to_owned(), self.thickness.clone()));
        }
        cells.push((format!("{symbol} mg/kg"), self.written.clone()));
        cells.push((format!("{symbol} u (1s)"), self.sigma.clone()));
        if !self.detection.is_empty() {
            cells.push((format!("{symbol} LOD mg/kg"), self.detection.clone()));
        }
        let (headings, row) = cells.into_iter().unzip();
        Delivery::new("invented-reading", &Table { headings, rows: vec![row] }, "")
    }
}

/// How a reading is drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ReadingKind {
    /// Far below the band.
    FarBelow,
    /// Value and three sigma end on the low edge.
    AtLowEdge,
    /// The same, one step higher.
    StepAboveLow,
    /// Between the edges.
    InBand,
    /// One step below the place where it would be over.
    StepBelowHigh,
    /// Value less three sigma is the high edge.
    AtHighEdge,
    /// Far over the band.
    FarOver,
    /// Below the band, with a sigma that reaches into it.
    WideBelow,
    /// Over the band, with a sigma that reaches into it.
    WideOver,
    /// Three sigma are more than the low edge.
    NotCapable,
    /// No uncertainty.
    NoSigma,
    /// Chromium or bromine, far below.
    OpenBelow,
    /// Chromium or bromine, ending on the edge.
    OpenAtEdge,
    /// The same, one step higher.
    OpenStepAbove,
    /// Chromium or bromine above the edge.
    OpenHigh,
    /// Percents of it.
    OpenFarHigh,
    /// Bromine in metal.
    BromineInMetal,
    /// Not detected, with a low limit.
    LimitLow,
    /// Not detected, with the largest limit that clears.
    LimitAtEdge,
    /// The same, one step higher.
    LimitStepAbove,
    /// Not detected, with a limit near the band.
    LimitHigh,
    /// Not detected, and no limit stated.
    BareNotDetected,
    /// A dash.
    Dash,
    /// Beyond the range of the instrument.
    AboveRange,
    /// Cadmium in a composite, not detected with a low limit.
    CompositeLimitLow,
    /// The same with a limit that is too high.
    CompositeLimitHigh,
    /// Cadmium in a composite: a low number without a stated limit.
    CompositeNumber,
    /// The same below a stated limit.
    CompositeBelowLimit,
    /// Something plated.
    Plated,
    /// A thin piece of plastic.
    ThinPiece,
    /// A thick one.
    ThickPiece,
    /// Glass, over the band of every class.
    GlassOver,
}

/// A band with fixed edges, in millionths of mg/kg.
#[derive(Clone, Copy, Debug)]
pub(crate) struct BandOf {
    class: MaterialClass,
    substance: Substance,
    low: i64,
    high: Option<i64>,
    /// The factor of sigma, in tenths.
    tenths: i64,
}

/// The bands of the book in force, in its order: class, substance, and whether it has a high edge; `None` where the low edge is
/// the reading's own detection limit or the substance does not apply.
pub fn bands(books: &RuleBooks) -> Vec<(MaterialClass, Substance, Option<bool>)> {
    let screening = books.screening().map(|(_, screening)| screening);
    let rows = screening.into_iter().flat_map(plumbline_core::rules::Screening::bands);
    rows.map(|(substance, class, band)| {
        let fixed = band.edges.filter(|edges| matches!(edges.low, LowEdge::Fixed(_)));
        (class, substance, fixed.map(|edges| edges.high.is_some()))
    })
    .collect()
}

fn fixed(books: &RuleBooks) -> Vec<BandOf> {
    let Some((_, screening)) = books.screening() else { return Vec::new() };
    let tenths = i64::from(screening.sigma_factor.tenths());
    let rows = screening.bands().filter_map(|(substance, class, band)| {
        let edges = band.edges?;
        let LowEdge::Fixed(low) = edges.low else { return None };
        Some(BandOf { class, substance, low: low.units(), high: edges.high.map(MassFraction::units), tenths })
    });
    rows.collect()
}

const MG: i64 = 1_000_000;

impl BandOf {
    /// Analysers print cadmium to a tenth and the rest to whole mg/kg (common practice, no source).
    const fn step(&self) -> i64 {
        if self.low < 200 * MG { MG / 10 } else { MG }
    }

    const fn times(&self, sigma: i64) -> i64 {
        sigma * self.tenths / 10
    }

    fn sigma(&self, draw: &mut Draw, from_percent: i64, to_percent: i64) -> i64 {
        draw.stepped(self.low * from_percent / 100, self.low * to_percent / 100, self.step()).max(self.step())
    }
}

fn text(units: i64) -> String {
    MassFraction::from_units(units).to_string()
}

/// Draws a reading of a kind from the bands of the book in force; `None` where the book has no band for it.
pub(crate) fn reading(books: &RuleBooks, kind: ReadingKind, draw: &mut Draw) -> Option<WhatIf> {
    use ReadingKind as K;
    let all = fixed(books);
    let of = |wanted: &dyn Fn(&BandOf) -> bool| {
        all.iter().copied().filter(|band| wanted(band)).collect::<Vec<_>>()
    };
    let plain = |band: BandOf, written: String, sigma: Option<i64>| WhatIf {
        class: band.class,
        substance: band.substance,
        written,
        sigma: sigma.map(text).unwrap_or_default(),
        detection: String::new(),
        thickness: String::new(),
    };
    let composite_cadmium = |written: String, sigma: Option<i64>, detection: Option<i64>| WhatIf {
        class: MaterialClass::Composite,
        substance: Substance::Cd,
        written,
        sigma: sigma.map(text).unwrap_or_default(),
        detection: detection.map(text).unwrap_or_default(),
        thickness: String::new(),
    };
    let open = matches!(kind, K::OpenBelow | K::OpenAtEdge | K::OpenStepAbove | K::OpenHigh | K::OpenFarHigh);
    let polymer = matches!(kind, K::ThinPiece | K::ThickPiece);
    let bands = if open {
        of(&|band| band.high.is_none())
    } else if polymer {
        of(&|band| {
            band.class == MaterialClass::Polymer && matches!(band.substance, Substance::Cd | Substance::Pb)
        })
    } else {
        of(&|band| band.high.is_some())
    };
    let band = draw.pick(&bands)?;
    let (low, step) = (band.low, band.step());
    let high = band.high.unwrap_or(low);
    let small = band.sigma(draw, 1, 6);
    let number = |value: i64, sigma: i64| Some(plain(band, text(value), Some(sigma)));
    let written = |cell: &str| Some(plain(band, cell.to_owned(), None));
    match kind {
        K::FarBelow | K::OpenBelow => number(draw.stepped(low / 20, low / 2, step), small),
        K::AtLowEdge | K::OpenAtEdge => number(low - band.times(small), small),
        K::StepAboveLow | K::OpenStepAbove => number(low - band.times(small) + step, small),
        K::InBand => number(draw.stepped(low, high, step), small),
        K::StepBelowHigh => number(high + band.times(small) - step, small),
        K::AtHighEdge => number(high + band.times(small), small),
        K::FarOver => number(draw.stepped(high * 2, high * 6, step), small),
        K::WideBelow => {
            // Three sigma stay below the edge itself, so that the measurement could have cleared a cleaner piece.
            let sigma = band.sigma(draw, 18, 30);
            number(draw.stepped(low - band.times(sigma) + step, low - step, step), sigma)
        }
        K::WideOver => {
            let sigma = band.sigma(draw, 15, 30);
            number(draw.stepped(high + step, high + band.times(sigma) - step, step), sigma)
        }
        K::NotCapable => number(draw.stepped(low / 20, low / 3, step), band.sigma(draw, 36, 60)),
        K::NoSigma => Some(plain(band, text(draw.stepped(low / 20, low * 9 / 10, step)), None)),
        K::OpenHigh => number(draw.stepped(low + step, low * 4, step), small),
        K::OpenFarHigh => number(draw.stepped(20_000 * MG, 90_000 * MG, 100 * MG), band.sigma(draw, 10, 25)),
        K::BromineInMetal => {
            let sigma = draw.between(4, 30) * MG;
            Some(WhatIf {
                class: MaterialClass::Metal,
                substance: Substance::Br,
                ..plain(band, text(draw.stepped(100 * MG, 2000 * MG, MG)), Some(sigma))
            })
        }
        K::LimitLow => written(&format!("< {}", text(draw.stepped(low / 20, low / 3, step)))),
        // A limit D stands for three sigma of the blank: D + 3 (D / 3) = 2 D ends on the edge.
        K::LimitAtEdge => written(&format!("< {}", text(low / 2))),
        K::LimitStepAbove => written(&format!("< {}", text(low / 2 + step))),
        K::LimitHigh => written(&format!("< {}", text(draw.stepped(low * 6 / 10, low * 9 / 10, step)))),
        K::BareNotDetected => written(if draw.between(0, 1) == 0 { "n.d." } else { "< LOD" }),
        K::Dash => written("-"),
        K::AboveRange => written(&format!("> {}", text(draw.stepped(high, high * 5, step)))),
        K::CompositeLimitLow => Some(composite_cadmium(format!("< {}", draw.between(8, 50)), None, None)),
        K::CompositeLimitHigh => Some(composite_cadmium(format!("< {}", draw.between(51, 90)), None, None)),
        K::CompositeNumber => {
            Some(composite_cadmium(text(draw.between(10, 60) * MG), Some(draw.between(2, 6) * MG), None))
        }
        K::CompositeBelowLimit => {
            let limit = draw.between(20, 48) * MG;
            let value = draw.stepped(limit / 4, limit, MG / 10);
            Some(composite_cadmium(text(value), Some(limit / 5), Some(limit)))
        }
        K::Plated => {
            let value = draw.stepped(low / 5, high * 3, step);
            Some(WhatIf { class: MaterialClass::Plated, ..plain(band, text(value), Some(small)) })
        }
        K::ThinPiece | K::ThickPiece => {
            let value = draw.stepped(low * 3 / 10, low / 2, step);
            let thin = kind == K::ThinPiece;
            // Tenths of a millimetre; what share of the signal that leaves is core's to say.
            let tenths = if thin { draw.between(2, 8) } else { draw.between(200, 400) };
            let thickness = MassFraction::from_units(tenths * MG / 10).to_string();
            Some(WhatIf { thickness, ..plain(band, text(value), Some(small)) })
        }
        K::GlassOver => {
            let value = draw.stepped(high * 3, high * 8, step);
            Some(WhatIf { class: MaterialClass::Unknown, ..plain(band, text(value), Some(small)) })
        }
    }
}
