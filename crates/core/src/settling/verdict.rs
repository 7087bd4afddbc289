//! One laboratory result, or several together, against one limit.

use crate::laboratory::{Analyte, LabResult, LabValue};
use crate::quantity::MassFraction;
use crate::reading::codes;
use crate::rules::Limit;
use crate::substance::Element;

codes! {
    /// What a laboratory's result says of a limit, best first.
    LabVerdict {
        /// x + U within the limit, or nothing found down to a limit within it.
        Within => "within",
        /// The element is beyond the limit of a species of it, which shows nothing of the species.
        NotTheSpecies => "not_the_species",
        /// A number without uncertainty.
        NoUncertainty => "no_uncertainty",
        /// The interval holds the limit, or nothing was found down to a limit beyond it.
        Open => "open",
        /// x - U beyond the limit.
        Over => "over",
    }
}

/// A limit as a law states it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Bound {
    /// The limit.
    pub limit: MassFraction,
    /// "At most": the limit itself is within; false for "below".
    pub equal_is_within: bool,
}

/// The least and the most a result allows, in millionths of mg/kg.
type Ends = (i128, i128);

/// The least coverage a result is taken with. A report may state U for k = 1; x + U would then lie below the truth one time
/// in six. Our own choice; k = 2 is common practice.
const LEAST_K_HUNDREDTHS: i128 = 200;

/// What a result allows at least and at most; `None` where it is a number without uncertainty.
fn ends(result: &LabResult) -> Option<Ends> {
    match result.value {
        LabValue::Below(limit) => Some((0, i128::from(limit.units()))),
        LabValue::Number(x) => {
            let (u, k) = result.expanded?;
            let (x, u, k) = (i128::from(x.units()), i128::from(u.units()), i128::from(k.hundredths().max(1)));
            let u = if k < LEAST_K_HUNDREDTHS { (u * LEAST_K_HUNDREDTHS + k - 1) / k } else { u };
            Some((x - u, x + u))
        }
    }
}

fn judge_ends((low, high): Ends, nothing_found: bool, bound: Bound) -> LabVerdict {
    let limit = i128::from(bound.limit.units());
    // What was not found down to the limit lies below it, also where the limit itself is no longer within.
    let strict = !bound.equal_is_within && !nothing_found;
    if high < limit || (high == limit && !strict) {
        LabVerdict::Within
    } else if low > limit || (low == limit && !bound.equal_is_within) {
        LabVerdict::Over
    } else {
        LabVerdict::Open
    }
}

/// Judges one result.
///
/// # Decision
/// Within if x + U <= L, over if x - U > L (both as the law's operator has it), else open; U is taken with k at least 2.
/// `< D` is within if D <= L. A number without uncertainty is neither.
pub fn judge(result: &LabResult, bound: Bound) -> LabVerdict {
    match ends(result) {
        None => LabVerdict::NoUncertainty,
        Some(both) => judge_ends(both, matches!(result.value, LabValue::Below(_)), bound),
    }
}

/// What results say of one row of a book.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct RowSays {
    /// What they come to together: the worst of them.
    pub settled: LabVerdict,
    /// Each result by its place, with what it says alone.
    pub each: Vec<(usize, LabVerdict)>,
    /// Of several species that the row forbids, only some were answered.
    pub species_missing: bool,
}

impl Analyte {
    /// The analyte that is this element as a whole.
    fn of_element(element: Element) -> Option<Analyte> {
        Analyte::ALL.iter().copied().find(|analyte| analyte.code() == element.symbol())
    }
}

/// The worst of some results of one analyte; one that nobody can look up settles nothing.
pub(super) fn worst(results: &[&LabResult], each: &[(usize, LabVerdict)], of: Analyte) -> Option<LabVerdict> {
    let counted = each.iter().filter_map(|(at, verdict)| {
        let result = results.get(*at).filter(|result| result.analyte == of)?;
        let settles = result.is_traceable() || *verdict == LabVerdict::Over;
        Some(if settles { *verdict } else { (*verdict).max(LabVerdict::Open) })
    });
    counted.max()
}

/// Judges all results of a material by one row: an element, a species behind it, or a sum. `None` where no result speaks of
/// the row, or not of all it adds up.
pub fn judge_row(row: &Limit, results: &[&LabResult]) -> Option<RowSays> {
    let bound = Bound { limit: row.limit, equal_is_within: row.equal_is_within };
    match row.of[..] {
        [] => None,
        [element] => {
            let whole = Analyte::of_element(element)?;
            let species: &[Analyte] = match (whole, row.species_of(element)) {
                (_, None) => &[],
                (Analyte::Cr, Some(_)) => &[Analyte::Cr6],
                (Analyte::Br, Some(_)) => &[Analyte::Pbb, Analyte::Pbde],
                _ => return None,
            };
            judge_element(row, bound, whole, species, results)
        }
        _ => judge_sum(row, bound, results),
    }
}

fn judge_element(
    row: &Limit,
    bound: Bound,
    whole: Analyte,
    species: &[Analyte],
    results: &[&LabResult],
) -> Option<RowSays> {
    let of_species = Bound { limit: row.species_limit.unwrap_or(row.limit), ..bound };
    let judged = results.iter().enumerate().filter_map(|(at, result)| {
        if species.contains(&result.analyte) {
            return Some((at, judge(result, of_species)));
        }
        let verdict = (result.analyte == whole).then(|| judge(result, bound))?;
        // So much of the element allows too much of the species, and doesn't show that it is there.
        let shows_nothing = !species.is_empty() && matches!(verdict, LabVerdict::Open | LabVerdict::Over);
        Some((at, if shows_nothing { LabVerdict::NotTheSpecies } else { verdict }))
    });
    let each: Vec<(usize, LabVerdict)> = judged.collect();
    if each.is_empty() {
        return None;
    }
    let element = worst(results, &each, whole);
    let found: Vec<Option<LabVerdict>> = species.iter().map(|one| worst(results, &each, *one)).collect();
    let all_within = !species.is_empty() && found.iter().all(|one| *one == Some(LabVerdict::Within));
    let worst_of_species = found.iter().flatten().copied().max();
    let species_missing = found.iter().any(Option::is_some) && found.iter().any(Option::is_none);
    let settled = match (worst_of_species, element) {
        (Some(worse), _) if worse > LabVerdict::Within => worse,
        // The species themselves were looked for: how much of the element there is, no longer matters.
        _ if all_within => LabVerdict::Within,
        (_, Some(element)) => element,
        _ => LabVerdict::NotTheSpecies,
    };
    Some(RowSays { settled, each, species_missing: species_missing && settled != LabVerdict::Within })
}

/// A sum: every one of its elements must have a result, and the errors are taken to go the same way.
fn judge_sum(row: &Limit, bound: Bound, results: &[&LabResult]) -> Option<RowSays> {
    let parts = row.of.iter().map(|element| {
        let whole = Analyte::of_element(*element)?;
        match (whole, row.species_of(*element)) {
            (_, None) => Some((whole, whole)),
            (Analyte::Cr, Some(_)) => Some((whole, Analyte::Cr6)),
            _ => None,
        }
    });
    add_up(&parts.collect::<Option<Vec<_>>>()?, bound, results)
}

/// A sum of elements, each as a whole.
pub(super) fn judge_parts(parts: &[Analyte], bound: Bound, results: &[&LabResult]) -> Option<RowSays> {
    add_up(&parts.iter().map(|part| (*part, *part)).collect::<Vec<_>>(), bound, results)
}

/// Adds up elements, or the species that count of them.
fn add_up(parts: &[(Analyte, Analyte)], bound: Bound, results: &[&LabResult]) -> Option<RowSays> {
    let (mut low, mut high) = (0, 0);
    let (mut each, mut settled) = (Vec::new(), LabVerdict::Within);
    for &(whole, species) in parts {
        let of = |analyte: Analyte| {
            results.iter().enumerate().filter(move |(_, result)| result.analyte == analyte)
        };
        let wanted = if of(species).next().is_some() { species } else { whole };
        // The least of an element bounds no species of it from below.
        let bounds_below = wanted == species;
        let (mut least, mut most): (i128, Option<i128>) = (0, None);
        for (at, result) in of(wanted) {
            each.push((at, LabVerdict::Within));
            if !result.is_traceable() {
                settled = settled.max(LabVerdict::Open);
            }
            let Some((low, high)) = ends(result) else {
                settled = settled.max(LabVerdict::NoUncertainty);
                most = most.or(Some(0));
                continue;
            };
            if bounds_below {
                least = least.max(low);
            }
            most = Some(most.map_or(high, |known| known.max(high)));
        }
        low += least;
        high += most?;
    }
    let sum = judge_ends((low, high), false, bound);
    let settled = if sum == LabVerdict::Over { sum } else { settled.max(sum) };
    for (_, verdict) in &mut each {
        *verdict = settled;
    }
    Some(RowSays { settled, each, species_missing: false })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::rules::legal_limits;
    use crate::stoichiometry::{Family, most_brominated};

    const TRACE: &str = "method=IEC 62321-5:2013;laboratory=Gorse Works;report=R-1;date=2026-11-20";

    fn result(text: &str) -> LabResult {
        LabResult::parse(&format!("{text};{TRACE}")).unwrap()
    }

    fn at_most(limit: i64) -> Bound {
        Bound { limit: MassFraction::from_mg_per_kg(limit), equal_is_within: true }
    }

    fn row(id: &str) -> &'static Limit {
        legal_limits().iter().find(|row| row.id == id).unwrap()
    }

    fn says(id: &str, texts: &[&str]) -> Option<LabVerdict> {
        let results: Vec<LabResult> = texts.iter().map(|text| result(text)).collect();
        judge_row(row(id), &results.iter().collect::<Vec<_>>()).map(|says| says.settled)
    }

    #[test]
    fn a_result_is_within_or_over_by_its_whole_uncertainty_to_the_last_digit() {
        for (value, u, expected) in [
            ("970", "30", LabVerdict::Within),
            ("970.000001", "30", LabVerdict::Open),
            ("1030", "30", LabVerdict::Open),
            ("1030.000001", "30", LabVerdict::Over),
        ] {
            let one = result(&format!("analyte=Pb;value={value} mg/kg;u={u} mg/kg;k=2"));
            assert_eq!(judge(&one, at_most(1000)), expected, "{value}");
        }
        let below = Bound { equal_is_within: false, ..at_most(1000) };
        let tie =
            |value: &str| judge(&result(&format!("analyte=Pb;value={value} mg/kg;u=30 mg/kg;k=2")), below);
        assert_eq!(tie("970"), LabVerdict::Open, "x + U on a limit that must not be reached");
        assert_eq!(tie("969.999999"), LabVerdict::Within);
        assert_eq!(tie("1030"), LabVerdict::Over, "equal to or more is forbidden");
        assert_eq!(tie("1029.999999"), LabVerdict::Open);
    }

    #[test]
    fn nothing_found_is_within_only_down_to_the_limit_itself() {
        let found = |text: &str, bound| judge(&result(&format!("analyte=Cd;value=<{text} mg/kg")), bound);
        assert_eq!(found("100", at_most(100)), LabVerdict::Within);
        assert_eq!(found("100", Bound { equal_is_within: false, ..at_most(100) }), LabVerdict::Within);
        assert_eq!(found("100.000001", at_most(100)), LabVerdict::Open);
    }

    #[test]
    fn a_number_without_uncertainty_is_neither_and_one_sigma_is_taken_twice() {
        assert_eq!(judge(&result("analyte=Pb;value=1 mg/kg"), at_most(1000)), LabVerdict::NoUncertainty);
        assert_eq!(judge(&result("analyte=Pb;value=90000 mg/kg"), at_most(1000)), LabVerdict::NoUncertainty);
        let one = |value: &str| {
            judge(&result(&format!("analyte=Pb;value={value} mg/kg;u=30 mg/kg;k=1")), at_most(1000))
        };
        assert_eq!(one("940"), LabVerdict::Within);
        assert_eq!(one("940.000001"), LabVerdict::Open);
        assert_eq!(one("1060.000001"), LabVerdict::Over);
        let three = result("analyte=Pb;value=970 mg/kg;u=30 mg/kg;k=3");
        assert_eq!(judge(&three, at_most(1000)), LabVerdict::Within);
    }

    #[test]
    fn of_two_results_the_worst_counts() {
        let (low, high) =
            ("analyte=Pb;value=400 mg/kg;u=30 mg/kg;k=2", "analyte=Pb;value=1400 mg/kg;u=30 mg/kg;k=2");
        let open = "analyte=Pb;value=990 mg/kg;u=30 mg/kg;k=2";
        assert_eq!(says("Pb", &[low]), Some(LabVerdict::Within));
        assert_eq!(says("Pb", &[low, high]), Some(LabVerdict::Over));
        assert_eq!(says("Pb", &[open, low]), Some(LabVerdict::Open));
        assert_eq!(says("Pb", &["analyte=Cd;value=<5 mg/kg"]), None);
    }

    #[test]
    fn what_nobody_can_look_up_settles_nothing_unless_it_is_over() {
        let untraced = |text: &str| {
            let one = LabResult::parse(text).unwrap();
            judge_row(row("Pb"), &[&one]).unwrap().settled
        };
        assert_eq!(untraced("analyte=Pb;value=4 mg/kg;u=1 mg/kg;k=2"), LabVerdict::Open);
        assert_eq!(untraced("analyte=Pb;value=4000 mg/kg;u=1 mg/kg;k=2"), LabVerdict::Over);
    }

    #[test]
    fn chromium_is_cleared_by_its_species_or_by_so_little_of_it_and_condemned_by_the_species_alone() {
        let total = |value: &str| format!("analyte=Cr;value={value} mg/kg;u=10 mg/kg;k=2");
        let (little, much) = (total("900"), total("90000"));
        let (clear, over) = ("analyte=Cr6;value=<5 mg/kg", "analyte=Cr6;value=2000 mg/kg;u=50 mg/kg;k=2");
        assert_eq!(says("Cr(VI)", &[&little]), Some(LabVerdict::Within));
        assert_eq!(says("Cr(VI)", &[&much]), Some(LabVerdict::NotTheSpecies));
        assert_eq!(says("Cr(VI)", &[clear]), Some(LabVerdict::Within));
        assert_eq!(says("Cr(VI)", &[&much, clear]), Some(LabVerdict::Within));
        assert_eq!(says("Cr(VI)", &[&little, over]), Some(LabVerdict::Over));
        assert_eq!(says("Cr(VI)", &[&little, &much]), Some(LabVerdict::NotTheSpecies));
        assert_eq!(says("Cr(VI)", &["analyte=Cr;value=4 mg/kg"]), Some(LabVerdict::NoUncertainty));
    }

    #[test]
    fn bromine_needs_both_groups_or_so_little_of_it_that_neither_can_be() {
        let (pbb, pbde) = ("analyte=PBB;value=<5 mg/kg", "analyte=PBDE;value=<5 mg/kg");
        let total = |value: &str| format!("analyte=Br;value={value} mg/kg;u=10 mg/kg;k=2");
        assert_eq!(says("PBB, PBDE", &[pbb]), Some(LabVerdict::NotTheSpecies));
        assert_eq!(says("PBB, PBDE", &[pbde]), Some(LabVerdict::NotTheSpecies));
        assert_eq!(says("PBB, PBDE", &[pbb, pbde]), Some(LabVerdict::Within));
        let over = "analyte=PBDE;value=2000 mg/kg;u=100 mg/kg;k=2";
        assert_eq!(says("PBB, PBDE", &[pbb, over]), Some(LabVerdict::Over));
        assert_eq!(says("PBB, PBDE", &[&total("310")]), Some(LabVerdict::Within));
        assert_eq!(says("PBB, PBDE", &[&total("310.000001")]), Some(LabVerdict::NotTheSpecies));
        assert_eq!(says("PBB, PBDE", &[&total("310"), over]), Some(LabVerdict::Over));
        assert_eq!(says("PBB, PBDE", &[&total("90000"), pbb, pbde]), Some(LabVerdict::Within));
        assert_eq!(says("PBB, PBDE", &[&total("90000"), pbb]), Some(LabVerdict::NotTheSpecies));
        let one = [&result(pbb)];
        assert!(judge_row(row("PBB, PBDE"), &one).unwrap().species_missing);
        let row = row("PBB, PBDE");
        let species = row.species_limit.unwrap();
        assert_eq!(species, MassFraction::from_mg_per_kg(1000), "Directive 2011/65/EU, Annex II: 0.1 % each");
        for family in [Family::Pbb, Family::Pbde] {
            assert!(most_brominated(family, row.limit) <= species, "so little bromine allows no more");
        }
    }

    #[test]
    fn a_sum_needs_every_part_and_adds_the_uncertainties() {
        let packaging =
            crate::rules::library().iter().find(|book| book.id == "eu-packaging-2025-40").unwrap();
        let row = &packaging.limits[0];
        assert_eq!((row.of.len(), row.limit), (4, MassFraction::from_mg_per_kg(100)));
        let sum = |texts: &[&str]| {
            let results: Vec<LabResult> = texts.iter().map(|text| result(text)).collect();
            judge_row(row, &results.iter().collect::<Vec<_>>()).map(|says| says.settled)
        };
        let parts = ["analyte=Cd;value=<5 mg/kg", "analyte=Hg;value=<5 mg/kg", "analyte=Cr6;value=<5 mg/kg"];
        let with = |lead: &str| sum(&[parts[0], parts[1], parts[2], lead]);
        assert_eq!(sum(&parts), None);
        assert_eq!(with("analyte=Pb;value=80 mg/kg;u=5 mg/kg;k=2"), Some(LabVerdict::Within));
        assert_eq!(with("analyte=Pb;value=80.1 mg/kg;u=5 mg/kg;k=2"), Some(LabVerdict::Open));
        assert_eq!(with("analyte=Pb;value=80 mg/kg"), Some(LabVerdict::NoUncertainty));
        assert_eq!(with("analyte=Pb;value=106 mg/kg;u=5 mg/kg;k=2"), Some(LabVerdict::Over));
        let total = "analyte=Cr;value=500 mg/kg;u=5 mg/kg;k=2";
        let lead = "analyte=Pb;value=1 mg/kg;u=1 mg/kg;k=2";
        assert_eq!(sum(&[parts[0], parts[1], total, lead]), Some(LabVerdict::Open));
    }
}
