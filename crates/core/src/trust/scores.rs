//! One check reading against its certificate, or against nothing where it is a blank.

use super::{CheckKind, CheckVerdict};
use crate::acts::{CheckRule, same_name};
use crate::certificate::Certificate;
use crate::day::Day;
use crate::judging::SourceReview;
use crate::material::MaterialClass;
use crate::quantity::{Coverage, MassFraction, Sigma, SigmaMultiple};
use crate::reading::{Cell, CellState, Source};
use crate::rules::JUDGED;
use crate::substance::Element;

/// How far a check reading is from its certified value.
///
/// # Source
/// ISO 13528 as NIST's Dataplot manual restates it: `zeta = (x - X) / sqrt(u² + v²)` with the standard uncertainties u of
/// the reading and v = V / k of the certificate, warning above 2, action above 3; `E_n = (x - X) / sqrt(U² + V²)` with the
/// expanded ones, good up to 1. U of the reading is 2 u.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Scores {
    /// x - X.
    pub bias: MassFraction,
    /// The zeta score.
    pub zeta: f64,
    /// The `E_n` number.
    pub en: f64,
    /// 100 x / X; `None` where X is zero.
    pub recovery_percent: Option<f64>,
}

/// One element of a check reading.
#[derive(Clone, Copy, Debug)]
pub struct CheckElement {
    /// The element.
    pub element: Element,
    /// The class of the matrix it speaks for: the certificate's, else the reading's. One of unknown class speaks for no
    /// reading, unless it failed: then it may be any.
    pub class: MaterialClass,
    /// What was measured.
    pub cell: Cell,
    /// Its standard uncertainty; a printed error of unknown multiple counts as three sigma, which is the strict reading
    /// here.
    pub sigma: Option<Sigma>,
    /// The certificate, by its place in the list.
    pub certificate: Option<usize>,
    /// The scores, of a number with an uncertainty and a certificate.
    pub scores: Option<Scores>,
    /// How it came out.
    pub verdict: CheckVerdict,
}

/// What a check reading is judged by.
pub(super) struct Judge<'a> {
    pub(super) certificates: &'a [Certificate],
    pub(super) rule: CheckRule,
    /// The day of the review, which is not before that of any reading.
    pub(super) reviewed: Option<Day>,
}

/// One check reading.
pub(super) struct CheckReading<'a> {
    pub(super) kind: CheckKind,
    pub(super) sample: &'a str,
    pub(super) source: &'a Source,
    pub(super) reviewer: &'a SourceReview<'a>,
    pub(super) row: usize,
    pub(super) class: MaterialClass,
    pub(super) day: Option<Day>,
}

impl Judge<'_> {
    /// Every element that is certified for a check reading, and every judged one it measured.
    pub(super) fn elements(&self, check: &CheckReading<'_>) -> Vec<CheckElement> {
        let certified =
            self.certificates.iter().enumerate().filter(|(_, one)| same_name(&one.sample, check.sample));
        // A later act stands above an earlier one, for whatever it was said.
        let mut of: Vec<(Element, Option<usize>)> = if check.kind == CheckKind::Blank {
            Vec::new()
        } else {
            certified.map(|(at, one)| (one.element, Some(at))).collect()
        };
        of.reverse();
        of.extend(JUDGED.map(|element| (element, None)));
        of.sort_by_key(|(element, _)| *element);
        of.dedup_by_key(|(element, _)| *element);
        of.into_iter()
            .filter_map(|(element, certificate)| self.element(check, element, certificate))
            .collect()
    }

    fn element(
        &self,
        check: &CheckReading<'_>,
        element: Element,
        certificate: Option<usize>,
    ) -> Option<CheckElement> {
        let cell = check.source.readings.cell(element, check.row);
        let measured = !matches!(cell.state, CellState::NoColumn | CellState::Blank);
        let certified = certificate.and_then(|at| self.certificates.get(at));
        if !measured && certified.is_none() {
            return None;
        }
        let class = certified.and_then(|one| one.class).unwrap_or(check.class);
        let sigma = check.reviewer.check_sigma(element, &cell, class, check.row);
        let (verdict, scores) = match (check.kind, certified) {
            (CheckKind::Blank, _) => (of_blank(&cell, sigma), None),
            (CheckKind::Standard, None) => (CheckVerdict::NoCertificate, None),
            (CheckKind::Standard, Some(one)) => {
                let verdict = self.of_standard(&cell, sigma, one);
                let number = cell.state == CellState::Number;
                (
                    self.on_its_day(verdict, one, check.day),
                    sigma.filter(|_| number).and_then(|u| scores(cell.value, u, one)),
                )
            }
        };
        Some(CheckElement { element, class, cell, sigma, certificate, scores, verdict })
    }

    fn of_standard(&self, cell: &Cell, sigma: Option<Sigma>, certified: &Certificate) -> CheckVerdict {
        match cell.state {
            CellState::NoColumn | CellState::Blank | CellState::Text => CheckVerdict::NotMeasured,
            CellState::UnitUnknown => CheckVerdict::UnitUnknown,
            CellState::Number => match sigma.filter(|u| both(*u, certified).is_some()) {
                None => CheckVerdict::NoUncertainty,
                Some(u) => self.of_number(cell.value, u, certified),
            },
            CellState::BelowDetection => self.unseen(Some(cell.value), certified),
            CellState::NotDetected => self.unseen(cell.detection_limit, certified),
            // At least so much: that alone may be too much.
            CellState::AboveRange => {
                let over = cell.value > certified.value;
                if over && self.is_off(cell.value, Sigma::ZERO, certified) {
                    CheckVerdict::Failed
                } else {
                    CheckVerdict::NotSeen
                }
            }
        }
    }

    /// A reading so uncertain that nothing at all would be within the rule as well shows nothing good: a blind analyser would
    /// pass.
    fn of_number(&self, x: MassFraction, u: Sigma, certified: &Certificate) -> CheckVerdict {
        if self.is_off(x, u, certified) {
            CheckVerdict::Failed
        } else if !self.is_off(MassFraction::ZERO, u, certified) {
            CheckVerdict::NotSeen
        } else if beyond(x, u, certified, TWO) {
            CheckVerdict::Warning
        } else {
            CheckVerdict::Good
        }
    }

    /// A standard that was not detected failed where even its detection limit, with the third of it that stands for one
    /// sigma, lies too far below the certified value. Otherwise the element may be there and unseen, which shows nothing.
    fn unseen(&self, limit: Option<MassFraction>, certified: &Certificate) -> CheckVerdict {
        let third = limit.and_then(|limit| Sigma::from_printed(limit, SigmaMultiple::THREE));
        match limit.zip(third) {
            Some((limit, u)) if limit < certified.value && self.is_off(limit, u, certified) => {
                CheckVerdict::Failed
            }
            _ => CheckVerdict::NotSeen,
        }
    }

    /// True beyond what the rule allows: |zeta| above 3, or |`E_n`| above 1. On the edge it is within. Exact.
    fn is_off(&self, x: MassFraction, u: Sigma, certified: &Certificate) -> bool {
        match self.rule {
            CheckRule::Zeta => beyond(x, u, certified, Coverage::THREE),
            CheckRule::En => match expanded(u, certified) {
                Some(both) => both.compare_times(ONE, apart(x, certified.value)).is_lt(),
                None => beyond(x, u, certified, TWO),
            },
        }
    }

    /// A certificate past its day makes nothing good; what failed by it stays failed.
    fn on_its_day(&self, verdict: CheckVerdict, certified: &Certificate, day: Option<Day>) -> CheckVerdict {
        let good = matches!(verdict, CheckVerdict::Good | CheckVerdict::Warning);
        match (certified.expires, day) {
            (Some(last), Some(day)) if good && day > last => CheckVerdict::Expired,
            // Nothing is measured after it is reviewed.
            (Some(last), None) if good && self.reviewed.is_none_or(|reviewed| reviewed > last) => {
                CheckVerdict::DayUnknown
            }
            _ => verdict,
        }
    }
}

const TWO: Coverage = match Coverage::from_tenths(20) {
    Some(two) => two,
    None => Coverage::THREE,
};
const ONE: Coverage = match Coverage::from_tenths(10) {
    Some(one) => one,
    None => Coverage::THREE,
};

/// |x - X|; both are bounded, so it cannot overflow.
fn apart(x: MassFraction, certified: MassFraction) -> MassFraction {
    MassFraction::from_units((x.units() - certified.units()).abs())
}

/// True where |x - X| is more than `k sqrt(u² + v²)`. Exact.
fn beyond(x: MassFraction, u: Sigma, certified: &Certificate, k: Coverage) -> bool {
    both(u, certified).is_some_and(|both| both.compare_times(k, apart(x, certified.value)).is_lt())
}

fn both(u: Sigma, certified: &Certificate) -> Option<Sigma> {
    Sigma::total([u, certified.sigma()?])
}

/// `sqrt((2 u)² + V²)`.
fn expanded(u: Sigma, certified: &Certificate) -> Option<Sigma> {
    Sigma::total([u, u, u, u, Sigma::from_one_sigma(certified.expanded)?])
}

fn scores(x: MassFraction, u: Sigma, certified: &Certificate) -> Option<Scores> {
    let bias = MassFraction::from_units(x.units() - certified.value.units());
    let over = |sigma: Sigma| bias.to_mg_per_kg() / sigma.to_mg_per_kg();
    Some(Scores {
        bias,
        zeta: over(both(u, certified)?),
        en: over(expanded(u, certified)?),
        recovery_percent: (certified.value > MassFraction::ZERO)
            .then(|| 100.0 * x.to_mg_per_kg() / certified.value.to_mg_per_kg()),
    })
}

/// A blank is good where nothing is found: not detected, at or below a stated detection limit, or at most 3 u.
fn of_blank(cell: &Cell, sigma: Option<Sigma>) -> CheckVerdict {
    match cell.state {
        CellState::NoColumn | CellState::Blank | CellState::Text => CheckVerdict::NotMeasured,
        CellState::UnitUnknown => CheckVerdict::UnitUnknown,
        CellState::BelowDetection | CellState::NotDetected => CheckVerdict::Good,
        CellState::AboveRange => CheckVerdict::Failed,
        CellState::Number => {
            let x = cell.value;
            let unseen = x <= MassFraction::ZERO || cell.detection_limit.is_some_and(|limit| x <= limit);
            match sigma {
                _ if unseen => CheckVerdict::Good,
                None => CheckVerdict::NoUncertainty,
                Some(u) if u.compare_times(Coverage::THREE, x).is_ge() => CheckVerdict::Good,
                Some(_) => CheckVerdict::Failed,
            }
        }
    }
}
