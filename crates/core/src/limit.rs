//! One reading against one limit of a book.
//!
//! A limit is decided by a guard band of k sigma on both sides. What a reading can't show stays open: a species behind
//! its element, the source of a halogen, one material in a mixture, a question only a person can answer.

use crate::day::Day;
use crate::interval::{Gap, Interval, Part, Term, Threshold};
use crate::material::MaterialClass;
use crate::outcome::{Judgement, Outcome, Reason, SigmaFrom, UsedSigma};
use crate::quantity::MassFraction;
use crate::reading::CellState;
use crate::rules::{Basis, Limit};
use crate::screen::{self, Measured};

/// A judgement with the sum it rests on.
#[derive(Clone, Copy, Debug)]
pub struct Judged {
    /// The judgement.
    pub judgement: Judgement,
    /// OL under every class the reading may have.
    pub firm_over: bool,
    /// The sum, where there is one.
    pub sum: Option<Interval>,
}

impl Judged {
    const fn without_sum(outcome: Outcome, reason: Reason) -> Judged {
        let judgement = Judgement::new(outcome, Some(reason), UsedSigma::NONE);
        Judged { judgement, firm_over: false, sum: None }
    }

    fn open(self, reason: Reason) -> Judged {
        let judgement = Judgement::new(Outcome::Undecided, Some(reason), self.judgement.used);
        Judged { judgement, ..self }
    }
}

/// Judges a reading against a limit. `measured` gives what is known of the row's elements under a class, in the row's
/// order.
///
/// # Units
/// mg/kg with one sigma; `placed` is the day of placing on the market; `answer` is what a person said to the row's question.
///
/// # Decision
/// With k the row's factor: BL if the upper end + k s is within the limit, OL if the lower end - k s is beyond it, both
/// as the row's operator says; X between. Where k s alone reaches the limit it is *not capable*. A class the row
/// doesn't speak of, or a day it doesn't hold for, is *not applicable*. Of an unknown class the worst of all classes
/// counts.
pub fn judge(
    row: &Limit,
    class: MaterialClass,
    placed: Option<Day>,
    answer: Option<bool>,
    measured: &dyn Fn(MaterialClass) -> Vec<Measured>,
) -> Judged {
    if class != MaterialClass::Unknown {
        return judge_as(row, class, placed, answer, &measured(class));
    }
    let each = MaterialClass::BANDED.map(|class| judge_as(row, class, placed, answer, &measured(class)));
    let firm_over = each.iter().all(|judged| judged.firm_over);
    let worst = each.into_iter().max_by_key(|judged| judged.judgement.outcome).unwrap_or(each[0]);
    Judged { firm_over, ..worst }
}

fn judge_as(
    row: &Limit,
    class: MaterialClass,
    placed: Option<Day>,
    answer: Option<bool>,
    measured: &[Measured],
) -> Judged {
    if !row.classes.contains(&class) {
        return Judged::without_sum(Outcome::NotApplicable, Reason::ClassNotCovered);
    }
    if placed.is_some_and(|day| !row.validity.holds_on(day)) {
        return Judged::without_sum(Outcome::NotApplicable, Reason::OutsideValidity);
    }
    // A coating measured through what lies under it is still a coating: that "no" settles nothing.
    if answer == Some(false) && !row.question.is_empty() && row.basis != Basis::Coating {
        return Judged::without_sum(Outcome::NotApplicable, Reason::AnsweredNo);
    }
    let yes = answer == Some(true);
    let judged = by_readings(row, class, measured);
    let dated_otherwise = row.validity.is_dated() && placed.is_none();
    let settled = matches!(judged.judgement.outcome, Outcome::Below | Outcome::Over | Outcome::Undecided);
    let judged = match judged.judgement.outcome {
        // Nobody said when it is placed on the market, so nobody knows whether this row is the one that counts.
        _ if dated_otherwise && settled => judged.open(Reason::PlacingDateNotStated),
        Outcome::Over if row.source_unknown => judged.open(Reason::SourceNotSeen),
        Outcome::Over if !row.question.is_empty() && !yes => judged.open(Reason::QuestionOpen),
        // What lies under a coating may dilute it: below means nothing until somebody says it was measured alone.
        Outcome::Below if row.basis == Basis::Coating && !yes => judged.open(Reason::QuestionOpen),
        Outcome::Below if class == MaterialClass::Composite && row.basis.is_one_material() => {
            judged.open(Reason::MixedMaterials)
        }
        Outcome::Below if !survives_thickness(row, measured, &judged) => judged.open(Reason::ThinSample),
        _ => judged,
    };
    Judged { firm_over: judged.judgement.outcome == Outcome::Over, ..judged }
}

fn threshold(row: &Limit, limit: MassFraction) -> Threshold {
    Threshold { limit, k: row.sigma_factor, equal_is_within: row.equal_is_within }
}

fn by_readings(row: &Limit, class: MaterialClass, measured: &[Measured]) -> Judged {
    let terms: Vec<Term> = row
        .of
        .iter()
        .zip(measured)
        .map(|(element, measured)| (Part::of(measured), row.species_of(*element).is_some()))
        .collect();
    let threshold = threshold(row, row.limit);
    let sum = Interval::of(&terms);
    let missing = terms.len() < row.of.len() || matches!(sum, Err(Gap::NotMeasured));
    if class == MaterialClass::Plated {
        return if missing {
            not_measured(measured)
        } else {
            Judged::without_sum(Outcome::Undecided, Reason::LayerNotResolved)
        };
    }
    let over_anyway = threshold.is_beyond_by_what_is_known(&terms);
    let alone = Judged {
        judgement: Judgement::new(Outcome::Over, Some(Reason::OnePartAlone), UsedSigma::NONE),
        firm_over: true,
        sum: None,
    };
    let sum = match sum {
        _ if missing && over_anyway => return alone,
        _ if missing => return not_measured(measured),
        Ok(sum) => sum,
        Err(_) if over_anyway => return alone,
        Err(Gap::LimitNotStated) => {
            return Judged::without_sum(
                Outcome::DetectionTooHigh,
                if row.of.len() == 1 { Reason::LimitNotStated } else { Reason::PartLimitNotStated },
            );
        }
        Err(_) => {
            return Judged::without_sum(
                Outcome::NoUncertainty,
                if row.of.len() == 1 { Reason::UncertaintyNotStated } else { Reason::PartWithoutUncertainty },
            );
        }
    };
    Judged {
        judgement: by_sum(row, &threshold, &terms, &sum, measured, over_anyway),
        firm_over: false,
        sum: Some(sum),
    }
}

/// Why a reading with a part that was not measured has no sum: the part's own reason where there is only one.
fn not_measured(measured: &[Measured]) -> Judged {
    let own = match measured {
        [one] => screen::not_measured(one.cell.state),
        _ => None,
    };
    Judged::without_sum(Outcome::NotMeasured, own.unwrap_or(Reason::PartNotMeasured))
}

fn by_sum(
    row: &Limit,
    threshold: &Threshold,
    terms: &[Term],
    sum: &Interval,
    measured: &[Measured],
    over_anyway: bool,
) -> Judgement {
    let used = match measured {
        [one] if one.cell.state == CellState::Number => one.used,
        _ => UsedSigma { sigma: sum.high.map(|_| sum.high_sigma), from: sigma_from(measured, sum) },
    };
    let open = |outcome, reason| Judgement::new(outcome, Some(reason), used);
    if threshold.is_beyond(sum) {
        return Judgement::new(Outcome::Over, None, used);
    }
    if sum.high.is_none() {
        return if over_anyway {
            Judgement::new(Outcome::Over, Some(Reason::OnePartAlone), used)
        } else if beyond_but_for_the_species(threshold, terms) {
            open(Outcome::Undecided, Reason::ElementOnly)
        } else {
            open(Outcome::Undecided, Reason::AboveRange)
        };
    }
    let one_not_detected = sum.censored && row.of.len() == 1;
    if !sum.censored && sum.high_sigma.compare_times(row.sigma_factor, row.limit).is_ge() {
        return open(Outcome::NotCapable, Reason::ThreeSigmaReachesBand);
    }
    // A part over the limit by itself is not cleared by another far below zero: no material holds less than nothing.
    if threshold.has_within(sum) {
        if over_anyway {
            return open(Outcome::Undecided, Reason::AroundLimit);
        }
        if measured.iter().any(|part| part.is_shifted(row.sigma_factor, row.limit)) {
            return open(Outcome::Undecided, Reason::NegativeBeyondError);
        }
        Judgement::new(Outcome::Below, None, used)
    } else if one_not_detected {
        open(Outcome::DetectionTooHigh, Reason::DetectionLimitAboveBand)
    } else if beyond_but_for_the_species(threshold, terms) {
        open(Outcome::Undecided, Reason::ElementOnly)
    } else if sum.censored {
        open(Outcome::Undecided, Reason::CensoredPart)
    } else {
        open(Outcome::Undecided, Reason::AroundLimit)
    }
}

/// True where the elements are beyond the limit, and only that one of them stands for a species keeps it open.
fn beyond_but_for_the_species(threshold: &Threshold, terms: &[Term]) -> bool {
    let counted_whole: Vec<Term> = terms.iter().map(|(part, _)| (*part, false)).collect();
    terms.iter().any(|(_, may_be_less)| *may_be_less) && threshold.is_beyond_by_what_is_known(&counted_whole)
}

fn sigma_from(measured: &[Measured], sum: &Interval) -> SigmaFrom {
    let unknown = |one: &Measured| {
        one.cell.state == CellState::Number && one.used.from == SigmaFrom::PrintedMultipleUnknown
    };
    match measured {
        _ if sum.high.is_none() => SigmaFrom::None,
        [_] => SigmaFrom::DetectionLimit,
        _ if measured.iter().any(unknown) => SigmaFrom::PrintedMultipleUnknown,
        _ => SigmaFrom::Printed,
    }
}

/// A thin piece shows only a share of the signal of a thick one. The smallest share of the parts is taken for all:
/// `sum / share + k s / share` is within L where `sum + k s` is within share x L.
fn survives_thickness(row: &Limit, measured: &[Measured], judged: &Judged) -> bool {
    let Some(share) = measured.iter().filter_map(|one| one.thickness_share).min() else { return true };
    let scaled = i128::from(row.limit.units()) * i128::from(share) / 1_000_000;
    let scaled = MassFraction::from_units(i64::try_from(scaled).unwrap_or(0));
    judged.sum.is_some_and(|sum| threshold(row, scaled).has_within(&sum))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::Sigma;
    use crate::reading::Cell;
    use crate::rules::RuleBook;

    /// A row of an invented book: Pb, 1000 mg/kg at most, polymer and metal, one homogeneous material, no date.
    fn row(changes: &[(&str, &str)]) -> Limit {
        let mut keys = vec![
            ("id", "\"a\""),
            ("of", "\"Pb\""),
            ("limit", "\"1000 mg/kg\""),
            ("operator", "\"at most\""),
            ("classes", "[\"polymer\", \"metal\", \"composite\", \"plated\"]"),
            ("basis", "\"homogeneous material\""),
            ("source", "\"invented\""),
            ("clause", "\"1\""),
        ];
        keys.retain(|(key, _)| changes.iter().all(|(changed, _)| changed != key));
        keys.extend(changes);
        let keys: Vec<String> = keys.iter().map(|(key, value)| format!("{key} = {value}")).collect();
        let keys = keys.join("\n");
        let text = format!(
            "schema = \"plumbline.rules/1\"\nid = \"b\"\ntitle = \"t\"\nedition = \"e\"\nsource = \"s\"\n\
             confidence = \"invented\"\n[[limit]]\n{keys}"
        );
        RuleBook::parse(&text).unwrap_or_else(|problems| panic!("{problems:?}")).limits.remove(0)
    }

    const SUM: [(&str, &str); 3] =
        [("of", "[\"Pb\", \"Cd\", \"Cr\"]"), ("limit", "\"100 mg/kg\""), ("species", "{ Cr = \"Cr(VI)\" }")];

    fn cell(state: CellState, value: i64, sigma: Option<i64>) -> Measured {
        let sigma = sigma.and_then(|s| Sigma::from_one_sigma(MassFraction::from_mg_per_kg(s)));
        let from = if sigma.is_some() { SigmaFrom::Printed } else { SigmaFrom::None };
        Measured {
            cell: Cell {
                state,
                value: MassFraction::from_mg_per_kg(value),
                printed_error: None,
                detection_limit: None,
            },
            used: UsedSigma { sigma, from },
            thickness_share: None,
        }
    }

    fn number(value: i64, sigma: i64) -> Measured {
        cell(CellState::Number, value, Some(sigma))
    }

    fn below(limit: i64) -> Measured {
        cell(CellState::BelowDetection, limit, None)
    }

    fn judged(row: &Limit, class: MaterialClass, placed: Option<&str>, measured: &[Measured]) -> Judged {
        let placed = placed.map(|day| Day::parse(day).unwrap());
        judge(row, class, placed, None, &|_| measured.to_vec())
    }

    fn said(row: &Limit, class: MaterialClass, placed: Option<&str>, measured: &[Measured]) -> String {
        let judgement = judged(row, class, placed, measured).judgement;
        let reason = judgement.reason.map_or(String::new(), |reason| format!(" {}", reason.code()));
        format!("{}{reason}", judgement.outcome.code())
    }

    fn polymer(row: &Limit, measured: &[Measured]) -> String {
        said(row, MaterialClass::Polymer, None, measured)
    }

    #[test]
    fn at_most_and_below_differ_at_the_limit() {
        let at_most = row(&[]);
        for (value, expected) in
            [(970, "BL"), (971, "X around_limit"), (1030, "X around_limit"), (1031, "OL")]
        {
            assert_eq!(polymer(&at_most, &[number(value, 10)]), expected, "{value}");
        }
        let below = row(&[("operator", "\"below\"")]);
        for (value, expected) in
            [(969, "BL"), (970, "X around_limit"), (1029, "X around_limit"), (1030, "OL")]
        {
            assert_eq!(polymer(&below, &[number(value, 10)]), expected, "{value}");
        }
    }

    #[test]
    fn what_is_missing_never_passes() {
        let lead = row(&[]);
        assert_eq!(polymer(&lead, &[cell(CellState::Blank, 0, None)]), "not_measured cell_blank");
        assert_eq!(polymer(&lead, &[cell(CellState::NoColumn, 0, None)]), "not_measured no_column");
        assert_eq!(
            polymer(&lead, &[cell(CellState::Number, 1, None)]),
            "no_uncertainty uncertainty_not_stated"
        );
        assert_eq!(polymer(&lead, &[number(1, 0)]), "no_uncertainty uncertainty_not_stated");
        assert_eq!(
            polymer(&lead, &[cell(CellState::NotDetected, 0, None)]),
            "detection_too_high limit_not_stated"
        );
        assert_eq!(polymer(&lead, &[]), "not_measured part_not_measured");
        assert_eq!(polymer(&lead, &[number(1, 334)]), "not_capable three_sigma_reaches_band");
        assert_eq!(polymer(&lead, &[number(-5000, 334)]), "not_capable three_sigma_reaches_band");
        assert_eq!(polymer(&lead, &[number(2003, 334)]), "OL");
        assert_eq!(polymer(&lead, &[number(1, 333)]), "BL");
    }

    #[test]
    fn not_detected_counts_with_the_sigma_of_its_limit() {
        let lead = row(&[]);
        assert_eq!(polymer(&lead, &[below(500)]), "BL");
        assert_eq!(polymer(&lead, &[below(501)]), "detection_too_high detection_limit_above_band");
        assert_eq!(
            judged(&lead, MaterialClass::Polymer, None, &[below(5)]).judgement.used.from,
            SigmaFrom::DetectionLimit
        );
        let mut stated = cell(CellState::NotDetected, 0, None);
        stated.cell.detection_limit = Some(MassFraction::from_mg_per_kg(500));
        assert_eq!(polymer(&lead, &[stated]), "BL");
    }

    #[test]
    fn above_the_range_is_over_from_the_limit_on() {
        let lead = row(&[]);
        assert_eq!(polymer(&lead, &[cell(CellState::AboveRange, 1000, None)]), "OL one_part_alone");
        assert_eq!(polymer(&lead, &[cell(CellState::AboveRange, 1001, None)]), "OL");
        assert_eq!(polymer(&lead, &[cell(CellState::AboveRange, 999, None)]), "X above_range");
        let from = |one| judged(&lead, MaterialClass::Polymer, None, &[one]).judgement.used.from;
        assert_eq!(from(cell(CellState::AboveRange, 999, None)), SigmaFrom::None);
        assert_eq!(from(number(999, 10)), SigmaFrom::Printed);
    }

    #[test]
    fn a_species_is_never_over_by_its_element() {
        let chromium = row(&[("of", "\"Cr\""), ("species", "{ Cr = \"Cr(VI)\" }")]);
        assert_eq!(polymer(&chromium, &[number(900, 10)]), "BL");
        assert_eq!(polymer(&chromium, &[number(1000, 10)]), "X around_limit");
        assert_eq!(polymer(&chromium, &[number(180_000, 10)]), "X element_only");
        assert_eq!(polymer(&chromium, &[cell(CellState::AboveRange, 5000, None)]), "X element_only");
        assert_eq!(polymer(&chromium, &[cell(CellState::AboveRange, 500, None)]), "X above_range");
    }

    /// Total chromium is at least Cr(VI): a sum with all of it at most 100 mg/kg shows conformity, above it the
    /// chromium keeps the question open, unless the other metals alone are beyond.
    #[test]
    fn a_sum_clears_with_all_of_the_chromium_and_fails_with_none_of_it() {
        let metals = row(&SUM);
        // s = sqrt(4 + 4 + 1) = 3.
        let three = |lead, cadmium, chromium| [number(lead, 2), number(cadmium, 2), number(chromium, 1)];
        assert_eq!(polymer(&metals, &three(30, 31, 30)), "BL");
        assert_eq!(polymer(&metals, &three(30, 31, 31)), "X around_limit");
        assert_eq!(polymer(&metals, &three(30, 31, 500)), "X element_only");
        // The others: 109 - 3 sqrt(8) = 100.5.
        assert_eq!(polymer(&metals, &three(60, 49, 0)), "OL");
        assert_eq!(polymer(&metals, &three(60, 48, 0)), "X around_limit");
        let mut of = three(30, 31, 30);
        of[1] = below(10);
        let sum = judged(&metals, MaterialClass::Polymer, None, &of);
        assert_eq!(sum.judgement.outcome, Outcome::Below);
        assert_eq!(sum.judgement.used.from, SigmaFrom::Printed);
        let sum = sum.sum.unwrap();
        assert_eq!(sum.low, MassFraction::from_mg_per_kg(30));
        assert_eq!(sum.high, Some(MassFraction::from_mg_per_kg(70)));
        of[1] = below(60);
        assert_eq!(polymer(&metals, &of), "X censored_part");
        of[0].used.from = SigmaFrom::PrintedMultipleUnknown;
        let from = judged(&metals, MaterialClass::Polymer, None, &of).judgement.used.from;
        assert_eq!(from, SigmaFrom::PrintedMultipleUnknown);
    }

    #[test]
    fn a_sum_with_a_part_missing_is_open_unless_the_rest_is_beyond() {
        let metals = row(&SUM);
        let blank = cell(CellState::Blank, 0, None);
        let bare = cell(CellState::Number, 3, None);
        let nothing = cell(CellState::NotDetected, 0, None);
        assert_eq!(polymer(&metals, &[number(1, 1), blank, number(1, 1)]), "not_measured part_not_measured");
        assert_eq!(polymer(&metals, &[number(900, 1), blank, number(1, 1)]), "OL one_part_alone");
        assert_eq!(polymer(&metals, &[number(1, 1), number(1, 1)]), "not_measured part_not_measured");
        assert_eq!(
            polymer(&metals, &[number(1, 1), blank, number(900, 1)]),
            "not_measured part_not_measured"
        );
        assert_eq!(
            polymer(&metals, &[number(1, 1), bare, number(1, 1)]),
            "no_uncertainty part_without_uncertainty"
        );
        assert_eq!(
            polymer(&metals, &[number(1, 1), nothing, number(1, 1)]),
            "detection_too_high part_limit_not_stated"
        );
        assert_eq!(polymer(&metals, &[number(900, 1), nothing, number(1, 1)]), "OL one_part_alone");
        assert_eq!(polymer(&metals, &[number(900, 1), bare, number(1, 1)]), "OL one_part_alone");
        assert_eq!(
            polymer(&metals, &[number(1, 20), number(1, 20), number(1, 20)]),
            "not_capable three_sigma_reaches_band"
        );
    }

    #[test]
    fn the_source_of_a_halogen_is_never_seen() {
        let bromine = row(&[("of", "\"Br\""), ("operator", "\"below\""), ("source_unknown", "true")]);
        assert_eq!(polymer(&bromine, &[number(969, 10)]), "BL");
        assert_eq!(polymer(&bromine, &[number(1000, 10)]), "X around_limit");
        assert_eq!(polymer(&bromine, &[number(90_000, 10)]), "X source_not_seen");
    }

    #[test]
    fn an_answer_lets_a_limit_apply_or_not() {
        let said = |row: &Limit, answer, value| {
            let measured = [number(value, 10)];
            let judged = judge(row, MaterialClass::Polymer, None, answer, &|_| measured.to_vec());
            let reason = judged.judgement.reason.map_or("", Reason::code);
            format!("{} {reason}", judged.judgement.outcome.code()).trim_end().to_owned()
        };
        let mouth = row(&[("question", "\"Can a child put it in the mouth?\"")]);
        assert_eq!(said(&mouth, Some(true), 5000), "OL");
        assert_eq!(said(&mouth, Some(false), 5000), "not_applicable answered_no");
        assert_eq!(said(&mouth, Some(true), 5), "BL");
        let paint = row(&[("basis", "\"coating alone\""), ("question", "\"Was it measured alone?\"")]);
        assert_eq!(said(&paint, Some(true), 1), "BL");
        assert_eq!(said(&paint, Some(true), 5000), "OL");
        assert_eq!(said(&paint, Some(false), 1), "X question_open");
        assert_eq!(said(&paint, Some(false), 5000), "X question_open");
        assert_eq!(said(&row(&[]), Some(false), 5000), "OL", "a row without a question takes no answer");
    }

    #[test]
    fn a_question_keeps_over_open_and_leaves_below_as_it_is() {
        let mouth = row(&[("question", "\"Can a child put it in the mouth?\"")]);
        assert_eq!(polymer(&mouth, &[number(900, 10)]), "BL");
        assert_eq!(polymer(&mouth, &[number(5000, 10)]), "X question_open");
    }

    #[test]
    fn a_coating_is_open_either_way_until_it_is_known_to_be_alone() {
        let paint = row(&[("basis", "\"coating alone\""), ("question", "\"Was it measured alone?\"")]);
        assert_eq!(polymer(&paint, &[number(1, 1)]), "X question_open");
        assert_eq!(polymer(&paint, &[number(5000, 1)]), "X question_open");
    }

    #[test]
    fn a_row_speaks_of_its_classes_only() {
        let plastics = row(&[("classes", "[\"polymer\"]")]);
        let high = [number(5000, 10)];
        assert_eq!(said(&plastics, MaterialClass::Metal, None, &high), "not_applicable class_not_covered");
        assert_eq!(said(&plastics, MaterialClass::Polymer, None, &high), "OL");
    }

    #[test]
    fn below_in_a_mixture_clears_none_of_its_materials() {
        let composite = |row: &Limit, value| said(row, MaterialClass::Composite, None, &[number(value, 10)]);
        let one = row(&[]);
        assert_eq!(composite(&one, 1), "X mixed_materials");
        assert_eq!(composite(&one, 5000), "OL");
        let whole = row(&[("basis", "\"article\"")]);
        assert_eq!(composite(&whole, 1), "BL");
    }

    #[test]
    fn a_layer_is_never_below_or_over() {
        let plated = |measured: Measured| said(&row(&[]), MaterialClass::Plated, None, &[measured]);
        assert_eq!(plated(number(1, 1)), "X layer_not_resolved");
        assert_eq!(plated(number(90_000, 1)), "X layer_not_resolved");
        assert_eq!(plated(cell(CellState::Number, 1, None)), "X layer_not_resolved");
        assert_eq!(plated(cell(CellState::Blank, 1, None)), "not_measured cell_blank");
    }

    #[test]
    fn a_dated_row_holds_on_its_days_only() {
        let dated = row(&[("valid_from", "2026-08-12"), ("valid_until", "\"2027\"")]);
        let on = |day, value| said(&dated, MaterialClass::Polymer, day, &[number(value, 10)]);
        assert_eq!(on(Some("2026-08-11"), 5000), "not_applicable outside_validity");
        assert_eq!(on(Some("2026-08-12"), 5000), "OL");
        assert_eq!(on(Some("2027-12-31"), 1), "BL");
        assert_eq!(on(Some("2028-01-01"), 5000), "not_applicable outside_validity");
        assert_eq!(on(None, 1), "X placing_date_not_stated");
        assert_eq!(on(None, 1000), "X placing_date_not_stated");
        assert_eq!(on(None, 5000), "X placing_date_not_stated");
        let blank = [cell(CellState::Blank, 0, None)];
        assert_eq!(said(&dated, MaterialClass::Polymer, None, &blank), "not_measured cell_blank");
        let undated = row(&[]);
        assert_eq!(said(&undated, MaterialClass::Polymer, Some("1999-01-01"), &[number(1, 1)]), "BL");
    }

    #[test]
    fn a_thin_piece_keeps_only_the_below_that_survives() {
        let mut thin = number(290, 10);
        thin.thickness_share = Some(320_000);
        assert_eq!(polymer(&row(&[]), &[thin]), "BL");
        thin.thickness_share = Some(319_999);
        assert_eq!(polymer(&row(&[]), &[thin]), "X thin_sample");
        let mut other = number(1, 1);
        other.thickness_share = Some(100);
        assert_eq!(polymer(&row(&SUM), &[other, number(1, 1), number(1, 1)]), "X thin_sample");
    }

    #[test]
    fn an_unknown_class_is_as_bad_as_the_worst_it_may_be() {
        let unknown = |row: &Limit, value| judged(row, MaterialClass::Unknown, None, &[number(value, 10)]);
        let every = row(&[]);
        assert!(unknown(&every, 5000).firm_over);
        assert_eq!(unknown(&every, 1).judgement.reason, Some(Reason::MixedMaterials));
        let plastics = row(&[("classes", "[\"polymer\"]")]);
        let one = unknown(&plastics, 5000);
        assert_eq!((one.judgement.outcome, one.firm_over), (Outcome::Over, false));
        assert_eq!(unknown(&plastics, 1).judgement.outcome, Outcome::Below);
        let coats = row(&[("classes", "[\"plated\"]")]);
        assert_eq!(unknown(&coats, 1).judgement.outcome, Outcome::NotApplicable);
    }
}
