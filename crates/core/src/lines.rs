//! X-ray line energies, a resolution model, and the overlaps that matter for a reading.
//!
//! An analyser has taken its overlaps apart before it writes a number. What is left over is known to nobody here, so a
//! partner that is strong enough puts a *caution* on the outcome, and it works both ways: something hidden under the
//! partner, or the partner taken for something.
//!
//! # Source
//! The rows are data (`data/overlaps.tsv`), computed from the Elam, Ravel and Sieber tables as carried by the xraydb
//! library 4.5.8. That an instrument can't fully compensate for overlaps, and that As and Pb can't be told apart beyond
//! 10:1: US EPA Method 6200, 4.7. The three fractions below are ours.

use crate::quantity::{self, Coverage, LARGEST_UNITS, MassFraction, Sigma};
use crate::reading::codes;
use crate::substance::Element;

const TABLE: &str = include_str!("../data/overlaps.tsv");

/// A caution is shown when what the partner would add reaches this part of the band's low edge: one tenth (our own
/// choice).
const SHOWN_FROM: i64 = 10;

/// The analyser has corrected; what is left of the partner's contribution is taken as one tenth (common practice, no
/// source).
const RESIDUAL: i64 = 10;

codes! {
    /// What makes an outcome doubtful.
    CautionCode {
        /// A line of the partner lies on the line that is usually measured.
        LineOverlap => "line_overlap",
        /// Something of the partner lies on another line, which only some analysers measure.
        OtherLine => "other_line",
        /// Two pulses of the partner, counted as one.
        SumPeak => "sum_peak",
        /// The partner's line less what the detector's silicon keeps.
        EscapePeak => "escape_peak",
        /// A scattered line of the X-ray tube.
        TubeLine => "tube_line",
        /// No line at all: the piece is thin, and part of its signal is missing.
        ThinPiece => "thin_piece",
    }
}

/// One row of the table: something that lies on a line of a screened element.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Overlap {
    /// The element that is screened.
    pub analyte: Element,
    /// Its line, in Siegbahn's letters.
    pub line: &'static str,
    /// Energy of the line, in electronvolts.
    pub energy: u32,
    /// Width of the line by the resolution model, in electronvolts.
    pub width: u32,
    /// The element (or tube anode) whose line lies there.
    pub partner: Element,
    /// The partner's line that gives most, or the two whose pulses add up.
    pub partner_line: &'static str,
    /// Energy of the partner's line less that of the analyte's, in electronvolts.
    pub gap: i32,
    /// What the partner does.
    pub code: CautionCode,
    /// How the row is known.
    pub basis: &'static str,
    looks_like: LooksLike,
}

#[derive(Clone, Copy, Debug, PartialEq)]
enum LooksLike {
    /// Millionths of the partner's mass fraction.
    PerMillion(u32),
    /// This much whatever is in the sample.
    Fixed(MassFraction),
}

impl Overlap {
    fn parse(line: &'static str) -> Option<Overlap> {
        let mut cells = line.split('\t');
        let mut next = || cells.next();
        let analyte = Element::from_symbol(next()?)?;
        let (line, energy, width) = (next()?, next()?.parse().ok()?, next()?.parse().ok()?);
        let usual = match next()? {
            "usual" => true,
            "other" => false,
            _ => return None,
        };
        let partner = Element::from_symbol(next()?)?;
        let (partner_line, _, gap) = (next()?, next()?, next()?.parse().ok()?);
        let kind = next()?;
        let (part, fixed) = (next()?, next()?);
        let code = match (kind, usual) {
            ("line" | "sum" | "escape", false) => CautionCode::OtherLine,
            ("line", true) => CautionCode::LineOverlap,
            ("sum", true) => CautionCode::SumPeak,
            ("escape", true) => CautionCode::EscapePeak,
            ("tube", true) => CautionCode::TubeLine,
            _ => return None,
        };
        let looks_like = match code {
            CautionCode::TubeLine => LooksLike::Fixed(MassFraction::from_mg_per_kg(fixed.parse().ok()?)),
            _ => LooksLike::PerMillion(part.parse().ok()?),
        };
        let basis = next()?;
        Some(Overlap { analyte, line, energy, width, partner, partner_line, gap, code, basis, looks_like })
    }

    /// What this much of the partner would look like as the analyte if nothing were corrected, rounded up.
    pub fn apparent(&self, partner: MassFraction) -> MassFraction {
        match self.looks_like {
            LooksLike::Fixed(fixed) => fixed,
            LooksLike::PerMillion(part) => {
                let product = i128::from(partner.units().max(0)) * i128::from(part);
                let rounded = (product + 999_999) / 1_000_000;
                MassFraction::from_units(i64::try_from(rounded).unwrap_or(LARGEST_UNITS).min(LARGEST_UNITS))
            }
        }
    }

    /// The least of the partner that could be worth a caution under a band that begins at `low`, rounded down: less of
    /// it never is. Nothing is too little for a tube's line.
    pub fn least(&self, low: MassFraction) -> MassFraction {
        match self.looks_like {
            LooksLike::Fixed(_) => MassFraction::from_units(i64::MIN),
            LooksLike::PerMillion(part) => {
                let worth = i128::from(low.units().max(0)) / i128::from(SHOWN_FROM);
                let least = (worth - 1).max(0) * 1_000_000 / i128::from(part.max(1));
                MassFraction::from_units(i64::try_from(least).unwrap_or(i64::MAX))
            }
        }
    }

    /// True where the analyser's own correction is all that stands between partner and outcome: a row for a line
    /// that only some analysers measure warns and decides nothing.
    pub const fn may_decide(&self) -> bool {
        !matches!(self.code, CautionCode::OtherLine)
    }
}

/// A caution on one outcome.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Caution {
    /// What the partner does.
    pub code: CautionCode,
    /// The partner.
    pub partner: Element,
    /// What it would look like as the analyte if nothing were corrected.
    pub apparent: MassFraction,
}

/// The cautions on one outcome as a set of rows of the table, small enough to keep for every reading.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Shown {
    rows: u32,
    /// What all partners that may decide would look like together.
    pub together: MassFraction,
}

impl Shown {
    /// True where there is nothing to say.
    pub const fn is_empty(self) -> bool {
        self.rows == 0
    }

    /// True where this row of the table is one of them.
    pub const fn has(self, row: usize) -> bool {
        row < 32 && self.rows >> row & 1 == 1
    }

    /// One row alone, as if it decided.
    #[must_use]
    pub const fn alone(row: usize, apparent: MassFraction) -> Shown {
        Shown { rows: if row < 32 { 1 << row } else { 0 }, together: apparent }
    }

    /// Without the rows of another set; what decides is the same.
    #[must_use]
    pub const fn without(self, other: Shown) -> Shown {
        Shown { rows: self.rows & !other.rows, together: self.together }
    }

    /// All rows of both, and the larger contribution: one analyte judged under several classes.
    #[must_use]
    pub fn or(self, other: Shown) -> Shown {
        Shown { rows: self.rows | other.rows, together: self.together.max(other.together) }
    }

    /// Both together: the parts of a total.
    #[must_use]
    pub fn and(self, other: Shown) -> Shown {
        let sum = self.together.units().saturating_add(other.together.units());
        Shown { rows: self.rows | other.rows, together: MassFraction::from_units(sum.min(LARGEST_UNITS)) }
    }
}

/// The table of overlaps.
#[derive(Clone, Debug)]
pub struct Overlaps {
    rows: Vec<Overlap>,
}

impl Overlaps {
    /// The table the program carries.
    pub fn built_in() -> Overlaps {
        Overlaps { rows: data_lines(TABLE).filter_map(Overlap::parse).collect() }
    }

    /// Its rows, with places that [`Shown`] speaks of.
    pub fn rows(&self) -> &[Overlap] {
        &self.rows
    }

    /// What there is to say about an analyte whose band begins at `low`.
    ///
    /// `partner` gives the mass fraction of the element of a row where the reading has one; `tube` is the anode where
    /// somebody stated it.
    pub fn shown(
        &self,
        analyte: Element,
        low: MassFraction,
        partner: impl Fn(usize, &Overlap) -> Option<MassFraction>,
        tube: Option<Element>,
    ) -> Shown {
        let mut shown = Shown::default();
        for (at, row) in self.rows.iter().enumerate() {
            if row.analyte != analyte {
                continue;
            }
            let present = match row.code {
                CautionCode::TubeLine => (tube == Some(row.partner)).then_some(MassFraction::ZERO),
                _ => partner(at, row),
            };
            let Some(apparent) = present.map(|present| row.apparent(present)) else { continue };
            if !matters(apparent, low) {
                continue;
            }
            shown.rows |= 1 << at;
            if row.may_decide() {
                let sum = shown.together.units().saturating_add(apparent.units());
                shown.together = MassFraction::from_units(sum.min(LARGEST_UNITS));
            }
        }
        shown
    }

    /// The cautions of an analyte whose band begins at `low`, for readings one at a time.
    pub fn cautions(
        &self,
        analyte: Element,
        low: MassFraction,
        partners: impl Fn(Element) -> Option<MassFraction>,
        tube: Option<Element>,
    ) -> Vec<Caution> {
        let shown = self.shown(analyte, low, |_, row| partners(row.partner), tube);
        self.list(shown, partners)
    }

    /// A set of rows written out.
    pub fn list(&self, shown: Shown, partners: impl Fn(Element) -> Option<MassFraction>) -> Vec<Caution> {
        self.rows
            .iter()
            .enumerate()
            .filter(|(at, _)| shown.has(*at))
            .map(|(_, row)| Caution {
                code: row.code,
                partner: row.partner,
                apparent: row.apparent(partners(row.partner).unwrap_or(MassFraction::ZERO)),
            })
            .collect()
    }
}

/// True where a contribution is worth a caution under a band that begins at `low`.
fn matters(apparent: MassFraction, low: MassFraction) -> bool {
    apparent > MassFraction::ZERO
        && i128::from(apparent.units()) * i128::from(SHOWN_FROM) >= i128::from(low.units())
}

/// What an analyser's correction may have left of a contribution, rounded up.
pub fn residual(apparent: MassFraction) -> MassFraction {
    MassFraction::from_units((apparent.units().max(0) + RESIDUAL - 1) / RESIDUAL)
}

/// What an outcome was compared with: value, sigma and factor. Without a sigma the value alone is compared.
#[derive(Clone, Copy, Debug)]
pub struct Compared {
    /// The value, or the bound that was compared.
    pub x: MassFraction,
    /// One sigma; `None` where the rule has none.
    pub sigma: Option<Sigma>,
    /// The rule's factor of sigma.
    pub k: Coverage,
}

/// True where what is left of the partners could lift a "below" over its edge: `x + residual + k s > low`.
pub fn below_in_doubt(compared: &Compared, shown: Shown, low: MassFraction, equal_is_below: bool) -> bool {
    if shown.together <= MassFraction::ZERO {
        return false;
    }
    let x = compared.x.plus(residual(shown.together));
    let sigma = compared.sigma.unwrap_or(Sigma::ZERO);
    !quantity::upper_end_within(x, compared.k, sigma, low, equal_is_below)
}

/// True where taking all of the partners away would leave no "over": `x - apparent - k s < high`.
pub fn over_in_doubt(compared: &Compared, shown: Shown, high: MassFraction, equal_is_over: bool) -> bool {
    if shown.together <= MassFraction::ZERO {
        return false;
    }
    let x = MassFraction::from_units(compared.x.units().saturating_sub(shown.together.units()));
    let sigma = compared.sigma.unwrap_or(Sigma::ZERO);
    !quantity::lower_end_beyond(x, compared.k, sigma, high, equal_is_over)
}

/// Full width at half maximum of a line on a silicon detector, in electronvolts, at an energy in electronvolts:
/// FWHM² = N² + 5.546 F e E, 140 eV at manganese's K-alpha line.
///
/// # Source
/// F = 0.115 and e = 3.66 eV for silicon: from memory. 140 eV: common practice, no source.
pub fn width_at(energy: f64) -> f64 {
    const SLOPE: f64 = 5.546 * 0.115 * 3.66;
    (140.0 * 140.0 + SLOPE * (energy - 5898.75)).sqrt()
}

/// The lines of a table that hold data: no remarks, no head.
pub(crate) fn data_lines(table: &'static str) -> impl Iterator<Item = &'static str> {
    table.lines().filter(|line| !line.starts_with('#') && !line.is_empty()).skip(1)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::SigmaMultiple;

    fn mg(whole: i64) -> MassFraction {
        MassFraction::from_mg_per_kg(whole)
    }

    fn element(symbol: &str) -> Element {
        Element::from_symbol(symbol).unwrap()
    }

    fn row(analyte: &str, partner: &str) -> Overlap {
        *Overlaps::built_in()
            .rows()
            .iter()
            .find(|row| row.analyte.symbol() == analyte && row.partner.symbol() == partner)
            .unwrap()
    }

    fn cautions(analyte: &str, low: i64, partner: &str, of: i64) -> Vec<Caution> {
        Overlaps::built_in().cautions(
            element(analyte),
            mg(low),
            |asked| (asked.symbol() == partner).then(|| mg(of)),
            None,
        )
    }

    fn shown(units: i64) -> Shown {
        Shown { rows: 1, together: MassFraction::from_units(units) }
    }

    fn compared(x: i64, s: i64) -> Compared {
        Compared {
            x: mg(x),
            sigma: (s > 0).then(|| Sigma::from_printed(mg(s), SigmaMultiple::ONE).unwrap()),
            k: Coverage::THREE,
        }
    }

    #[test]
    fn every_line_of_the_table_is_read_and_the_table_fits_its_set() {
        let rows = Overlaps::built_in().rows;
        assert_eq!(rows.len(), data_lines(TABLE).count());
        assert_eq!(rows.len(), 32, "a set has 32 places");
        let first = row("Cl", "S");
        assert_eq!((first.line, first.energy, first.width), ("Ka1", 2622, 109));
        assert_eq!((first.partner_line, first.gap, first.basis), ("Kb1", -157, "derived"));
        for broken in [
            "Cl\tKa1\t2622\t109\tsometimes\tS\tKb1\t2465\t-157\tline\t5400\t-\tderived",
            "Cl\tKa1\t2622\t109\tother\tRh\tLa1\t2697\t75\ttube\t-\t900\tours",
            "Cl\tKa1\t2622\t109\tusual\tS\tKb1\t2465\t-157\tguess\t5400\t-\tderived",
            "Cl\tKa1\t2622\t109\tusual\tS\tKb1\t2465\t-157\tline\t-\t5\tderived",
            "Cl\tKa1\t2622\t109\tusual\tS\tKb1\t2465\t-157\tline\t5400\t-",
        ] {
            assert_eq!(Overlap::parse(broken), None, "{broken}");
        }
    }

    #[test]
    fn kinds_and_use_make_the_codes() {
        use CautionCode::{EscapePeak, LineOverlap, OtherLine, SumPeak, TubeLine};
        for (analyte, partner, code) in [
            ("Pb", "As", LineOverlap),
            ("Cd", "Pb", SumPeak),
            ("Cd", "Sn", EscapePeak),
            ("Cd", "Sb", OtherLine),
            ("Pb", "Fe", OtherLine),
            ("Cl", "Rh", TubeLine),
        ] {
            let row = row(analyte, partner);
            assert_eq!(row.code, code, "{analyte}/{partner}");
            assert_eq!(row.may_decide(), code != OtherLine);
        }
    }

    /// The widths of the facts the table was planned with: 109 eV at 2.6 keV to 245 eV at 23.2 keV.
    #[test]
    fn the_resolution_model_gives_the_widths_of_the_table() {
        for row in Overlaps::built_in().rows() {
            let width = width_at(f64::from(row.energy));
            assert!((width - f64::from(row.width)).abs() <= 0.51, "{row:?} {width}");
        }
        assert!((width_at(5898.75) - 140.0).abs() < 1e-9);
        assert!((width_at(10_550.0) - 174.5).abs() < 0.1);
    }

    #[test]
    fn arsenic_and_lead_are_one_line_for_the_detector() {
        let arsenic = row("Pb", "As");
        assert_eq!((arsenic.gap, arsenic.code), (-8, CautionCode::LineOverlap));
        // US EPA Method 6200, 4.7: As can't be computed where Pb : As is 10 : 1. The mirror case: ten times as much
        // arsenic as lead looks like more lead than there is.
        assert!(arsenic.apparent(mg(1000)) > mg(100 * 10));
    }

    #[test]
    fn what_a_partner_looks_like_is_rounded_up_and_never_below_zero() {
        let zinc = row("Hg", "Zn");
        assert_eq!(zinc.apparent(mg(1_000_000)), mg(54));
        assert_eq!(zinc.apparent(MassFraction::from_units(1)), MassFraction::from_units(1));
        assert_eq!(zinc.apparent(MassFraction::from_units(1_000_000)), MassFraction::from_units(54));
        assert_eq!(zinc.apparent(MassFraction::from_units(1_000_001)), MassFraction::from_units(55));
        assert_eq!(zinc.apparent(mg(-5)), MassFraction::ZERO);
        assert_eq!(zinc.apparent(MassFraction::ZERO), MassFraction::ZERO);
        let antimony = row("Cd", "Sb");
        assert_eq!(antimony.apparent(MassFraction::from_units(LARGEST_UNITS)).units(), LARGEST_UNITS);
        assert_eq!(row("Cl", "Rh").apparent(MassFraction::ZERO), mg(900));
    }

    #[test]
    fn a_caution_is_shown_from_a_tenth_of_the_low_edge() {
        // 49 000 millionths: 1429 mg/kg of bismuth look like 70.02 mg/kg of lead.
        assert_eq!(cautions("Pb", 700, "Bi", 1428), []);
        let found = cautions("Pb", 700, "Bi", 1429);
        assert_eq!(found.len(), 1);
        assert_eq!(found[0].partner.symbol(), "Bi");
        assert_eq!(found[0].code, CautionCode::LineOverlap);
        assert_eq!(found[0].apparent, MassFraction::from_units(70_021_000));
        // Exactly a tenth counts: 54 mg/kg under a low edge of 540.
        assert_eq!(cautions("Hg", 540, "Zn", 1_000_000).len(), 1);
        assert_eq!(cautions("Hg", 541, "Zn", 1_000_000), []);
        assert_eq!(cautions("Cr", 700, "V", 20_000)[0].apparent, mg(2200));
        assert_eq!(cautions("Cr", 700, "Bi", 1_000_000), [], "no row");
    }

    /// A quick look at the partner alone must never hide what the full rule would show.
    #[test]
    fn less_than_the_least_of_a_partner_is_never_worth_a_caution() {
        for row in Overlaps::built_in().rows().iter().filter(|row| row.code != CautionCode::TubeLine) {
            for low in [0, 50, 70, 250, 300, 541, 700, 900] {
                let least = row.least(mg(low));
                let less = row.apparent(MassFraction::from_units(least.units() - 1));
                assert!(!matters(less, mg(low)), "{row:?} {low}: {less}");
                // And it is not idle: a little more than the least is worth one.
                let more = row.apparent(MassFraction::from_units(least.units() + 40_000));
                assert!(matters(more, mg(low)), "{row:?} {low}: {more}");
            }
        }
        assert!(row("Cl", "Rh").least(mg(900)) < MassFraction::ZERO);
    }

    #[test]
    fn nothing_is_said_of_a_partner_that_is_not_there() {
        let table = Overlaps::built_in();
        assert_eq!(table.cautions(element("Pb"), mg(700), |_| None, None), []);
        assert_eq!(table.cautions(element("Pb"), MassFraction::ZERO, |_| Some(MassFraction::ZERO), None), []);
        assert!(Shown::default().is_empty() && !shown(1).is_empty());
    }

    /// Zinc die-cast never reaches a tenth of the band: a row that is kept to say so.
    #[test]
    fn partners_that_are_too_weak_stay_silent() {
        assert_eq!(cautions("Hg", 700, "Zn", 1_000_000), []);
        assert_eq!(row("Cd", "Sn").apparent(mg(1_000_000)), mg(25));
        assert_eq!(cautions("Cd", 70, "Sn", 270_000), []);
        assert_eq!(cautions("Cd", 70, "Pb", 4_000), []);
        assert_eq!(cautions("Cd", 70, "Pb", 370_000)[0].apparent, mg(74));
    }

    #[test]
    fn the_tube_speaks_only_where_somebody_named_it() {
        let table = Overlaps::built_in();
        let tube = |tube| table.cautions(element("Cl"), mg(900), |_| None, tube);
        assert_eq!(tube(None), []);
        assert_eq!(tube(Some(element("W"))), []);
        let rhodium = tube(Some(element("Rh")));
        assert_eq!(
            rhodium,
            [Caution { code: CautionCode::TubeLine, partner: element("Rh"), apparent: mg(900) }]
        );
        let in_the_sample = table.cautions(
            element("Cl"),
            mg(900),
            |asked| (asked == element("Rh")).then(|| mg(500_000)),
            None,
        );
        assert_eq!(in_the_sample, [], "rhodium in the sample is not the tube");
    }

    #[test]
    fn partners_add_up_and_those_on_other_lines_only_warn() {
        let table = Overlaps::built_in();
        let both = |_: usize, row: &Overlap| match row.partner.symbol() {
            "As" | "Bi" => Some(mg(10_000)),
            "Fe" => Some(mg(900_000)),
            _ => None,
        };
        let found = table.shown(element("Pb"), mg(700), both, None);
        assert_eq!(found.together, mg(18_000 + 490));
        assert_eq!(found.rows.count_ones(), 3);
        let at = table.rows().iter().position(|row| row.partner.symbol() == "Fe").unwrap();
        assert!(found.has(at) && !found.has(0) && !found.has(32) && !found.has(64));
        let with = found.and(Shown { rows: 1, together: mg(10) });
        assert_eq!((with.together, with.rows.count_ones()), (mg(18_500), 4));
        assert!(with.has(0));
        let alone = Shown::alone(at, mg(108));
        assert_eq!(alone, Shown { rows: 1 << at, together: mg(108) });
        assert!(Shown::alone(32, mg(1)).is_empty());
        let fewer = found.without(alone);
        assert_eq!((fewer.together, fewer.rows.count_ones()), (found.together, 2));
        assert!(!fewer.has(at) && !fewer.without(found).has(at));
        let either = found.or(Shown { rows: 1, together: mg(10) });
        assert_eq!((either.together, either.rows), (found.together, with.rows), "the larger, not the sum");
        assert_eq!(found.or(found), found);
        // The same row twice stays one row.
        assert_eq!(found.and(found).rows, found.rows);
    }

    #[test]
    fn a_tenth_is_left_and_rounded_up() {
        assert_eq!(residual(mg(100)), mg(10));
        assert_eq!(residual(MassFraction::from_units(11)).units(), 2);
        assert_eq!(residual(MassFraction::from_units(10)).units(), 1);
        assert_eq!(residual(MassFraction::from_units(1)).units(), 1);
        assert_eq!(residual(MassFraction::ZERO), MassFraction::ZERO);
        assert_eq!(residual(mg(-1)), MassFraction::ZERO);
    }

    #[test]
    fn a_below_is_in_doubt_where_the_residual_reaches_the_edge() {
        // 500 + 3 x 30 = 590; 110 are left to 700.
        let x = compared(500, 30);
        let doubt = |apparent: i64, equal| below_in_doubt(&x, shown(apparent), mg(700), equal);
        assert!(!doubt(1_100_000_000, true));
        assert!(doubt(1_100_000_000, false), "strict rules don't take the tie");
        assert!(doubt(1_100_000_001, true));
        assert!(!doubt(0, true));
        // Without a sigma the value alone is compared (cadmium in a composite).
        assert!(!below_in_doubt(&compared(40, 0), shown(100_000_000), mg(50), true));
        assert!(below_in_doubt(&compared(40, 0), shown(100_000_001), mg(50), true));
    }

    #[test]
    fn an_over_is_in_doubt_where_it_would_not_stand_without_the_partner() {
        // 1500 - 3 x 30 = 1410; 110 above 1300.
        let x = compared(1500, 30);
        let doubt = |apparent: i64, equal| over_in_doubt(&x, shown(apparent), mg(1300), equal);
        assert!(!doubt(110_000_000, true));
        assert!(doubt(110_000_000, false));
        assert!(doubt(110_000_001, true));
        assert!(!doubt(0, false));
        assert!(!over_in_doubt(&compared(1500, 0), shown(200_000_000), mg(1300), true));
        assert!(over_in_doubt(&compared(1500, 0), shown(200_000_001), mg(1300), true));
    }

    #[test]
    fn without_a_partner_nothing_is_in_doubt_even_at_the_edge() {
        assert!(!below_in_doubt(&compared(800, 30), Shown::default(), mg(700), true));
        assert!(!over_in_doubt(&compared(800, 30), Shown::default(), mg(1300), true));
    }
}
