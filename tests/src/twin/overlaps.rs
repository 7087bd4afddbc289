//! Doubt by overlaps: design section 4, item 11, for the partners that are among the twin's own elements.

use num_bigint::BigInt;
use num_rational::BigRational;
use num_traits::Zero;

use super::fraction::{ten_to, whole};
use super::halogens::Total;
use super::judge::{Measured, Said, sigma_of_limit};
use super::limits::{self, LowEdge};
use super::verdict::{Class, Halogen, Outcome, Substance, Verdict};

/// Analyte, partner (places among the twin's elements) and what a million mg/kg of the partner would look like.
///
/// Typed in from the table's remarks: Hg Lb1 and Pb Lb6 lie near Br Ka, two pulses of Pb on Cd Ka, an escape peak of Br
/// near Hg La (xraydb 4.5.8; one count in a thousand for the sum).
const PARTNERS: [(usize, usize, i64); 4] = [(4, 2, 280_000), (4, 1, 1_000), (0, 1, 200), (2, 4, 300)];
const BROMINE: usize = 4;

fn rounded_up(value: &BigRational) -> BigRational {
    (value * ten_to(6)).ceil() / ten_to(6)
}

/// What all partners that reach a tenth of the low edge would look like together.
fn together(analyte: usize, low: &BigRational, cells: &[Measured; 6]) -> BigRational {
    let mut sum = BigRational::zero();
    for (_, partner, per_million) in PARTNERS.iter().filter(|(of, ..)| *of == analyte) {
        if let Said::Number(present) | Said::Above(present) = &cells[*partner].said
            && *present > BigRational::zero()
        {
            let apparent = rounded_up(
                &(present * BigRational::new(BigInt::from(*per_million), BigInt::from(1_000_000))),
            );
            if &apparent * whole(10) >= *low {
                sum += apparent;
            }
        }
    }
    sum
}

/// What was compared: the value or bound, and one sigma where there is one.
fn compared(cell: &Measured) -> Option<(BigRational, BigRational)> {
    match &cell.said {
        Said::Number(x) => Some((x.clone(), cell.sigma.clone()?)),
        Said::Below(limit) => Some((limit.clone(), sigma_of_limit(limit))),
        Said::Above(upper) => Some((upper.clone(), BigRational::zero())),
        _ => None,
    }
}

fn below_in_doubt(x: &BigRational, guard: &BigRational, sum: &BigRational, low: &BigRational) -> bool {
    !sum.is_zero() && x + rounded_up(&(sum / whole(10))) + guard > *low
}

/// True where a verdict on a substance in one class is in doubt.
fn in_class(substance: Substance, class: Class, verdict: Verdict, cells: &[Measured; 6]) -> bool {
    let at = substance as usize;
    let (Some(band), Some((x, sigma))) = (limits::band(substance, class), compared(&cells[at])) else {
        return false;
    };
    let guard = whole(limits::SIGMAS) * sigma;
    match (verdict.outcome, band.low, band.high) {
        (Outcome::Bl, LowEdge::At(low), _) => {
            let low = whole(low);
            below_in_doubt(&x, &guard, &together(at, &low, cells), &low)
        }
        (Outcome::Bl, LowEdge::DetectionLimit, _) => {
            let low = whole(limits::COMPOSITE_CADMIUM_LIMIT_AT_MOST);
            below_in_doubt(&x, &BigRational::zero(), &together(at, &low, cells), &low)
        }
        (Outcome::Ol, low, Some(high)) => {
            let low = match low {
                LowEdge::At(low) => whole(low),
                LowEdge::DetectionLimit => whole(limits::COMPOSITE_CADMIUM_LIMIT_AT_MOST),
            };
            let sum = together(at, &low, cells);
            !sum.is_zero() && x - sum - guard < whole(high)
        }
        _ => false,
    }
}

/// True where the verdict on a substance is in doubt; of an unknown class, where it is in any class.
pub fn substance_in_doubt(
    substance: Substance,
    class: Class,
    verdict: Verdict,
    by_class: Option<&[Verdict; 3]>,
    cells: &[Measured; 6],
) -> bool {
    match by_class {
        None => in_class(substance, class, verdict, cells),
        Some(each) => Class::BANDED
            .into_iter()
            .zip(each)
            .any(|(class, verdict)| in_class(substance, class, *verdict, cells)),
    }
}

/// True where the verdict on chlorine, bromine or their total is in doubt. Chlorine has no partner among the elements.
pub fn halogens_in_doubt(verdicts: [Verdict; 2], total: &Total, cells: &[Measured; 6]) -> [bool; 3] {
    let doubted = |verdict: Verdict, of: Halogen, ends: Option<[BigRational; 2]>, variance: &BigRational| {
        let limit = whole(limits::halogen_limit(of));
        let sum = together(BROMINE, &limit, cells);
        let Some([low, high]) = ends else { return false };
        let nine = whole(limits::SIGMAS * limits::SIGMAS);
        if sum.is_zero() {
            return false;
        }
        // Squares are compared, so that no root is taken: room² against 9 s².
        match verdict.outcome {
            Outcome::Bl => {
                let room = limit - high - rounded_up(&(sum / whole(10)));
                room < BigRational::zero() || &room * &room < nine * variance
            }
            Outcome::Ol => {
                let room = low - sum - limit;
                // "At most": at the limit itself it is no longer over.
                room <= BigRational::zero() || &room * &room <= nine * variance
            }
            _ => false,
        }
    };
    let bromine = match compared(&cells[BROMINE]) {
        Some((x, sigma)) => doubted(verdicts[1], Halogen::Br, Some([x.clone(), x]), &(&sigma * &sigma)),
        None => false,
    };
    let ends = |first: &Option<BigRational>, second: &Option<BigRational>| first.clone().or(second.clone());
    let both = match (ends(&total.low, &total.high), ends(&total.high, &total.low)) {
        (Some(low), Some(high)) => Some([low, high]),
        _ => None,
    };
    let of_total = match both {
        // One part alone is over: it is as doubtful as that part.
        None => total.verdict.outcome == Outcome::Ol && bromine,
        some => {
            let variance = total.variance.clone().unwrap_or_else(BigRational::zero);
            doubted(total.verdict, Halogen::Total, some, &variance)
        }
    };
    [false, bromine, of_total]
}
