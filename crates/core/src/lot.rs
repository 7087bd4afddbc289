//! From outcomes to dispositions: a material, a part and a lot are as good as their worst, and never better than what
//! nobody measured.

use crate::outcome::Outcome;
use crate::reading::codes;
use crate::substance::{Halogen, Substance};

/// What to do with a material, part or lot. *Accept* always means "for the substances screened".
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Disposition {
    /// Nothing speaks against it.
    Accept,
    /// Something is open.
    Hold,
    /// Something is over limit.
    NotAccept,
}

impl Disposition {
    /// All of them.
    pub const ALL: [Disposition; 3] = [Disposition::Accept, Disposition::Hold, Disposition::NotAccept];

    /// The code used in findings.
    pub const fn code(self) -> &'static str {
        match self {
            Disposition::Accept => "accept",
            Disposition::Hold => "hold",
            Disposition::NotAccept => "not_accept",
        }
    }
}

codes! {
    /// Why a disposition is what it is, worst first.
    LotReasonCode {
        /// Over limit under the class, or under every class where it is unknown.
        OverLimit => "over_limit",
        /// A laboratory's result lies beyond a limit.
        LabOver => "lab_over",
        /// A halogen over the limit of the book the inspection names.
        HalogenOverLimit => "halogen_over_limit",
        /// Over a limit of a book that the inspection goes by.
        LimitOver => "limit_over",
        /// Over limit under some classes of an unknown class.
        OverInSomeClasses => "over_in_some_classes",
        /// A substance was not measured.
        NotMeasured => "not_measured",
        /// A number without uncertainty.
        NoUncertainty => "no_uncertainty",
        /// Not detected, but the limit clears nothing.
        DetectionTooHigh => "detection_too_high",
        /// The measurement can't show "below".
        NotCapable => "not_capable",
        /// Inconclusive.
        Undecided => "undecided",
        /// A halogen open under the book the inspection names.
        HalogenOpen => "halogen_open",
        /// Open under a limit of a book that the inspection goes by.
        LimitOpen => "limit_open",
        /// A laboratory's result shows neither within nor beyond.
        LabOpen => "lab_open",
        /// A laboratory's result lies within a limit; printed.
        LabWithin => "lab_within",
        /// A reading lies beyond the number of the exemption that is claimed.
        ClaimExceeded => "claim_exceeded",
        /// The exemption that is claimed is past its day.
        ClaimExpired => "claim_expired",
        /// The exemption that is claimed does not cover this.
        ClaimNotCovered => "claim_not_covered",
        /// Hexavalent chromium is present in the coating, by area.
        Cr6Present => "cr6_present",
        /// The result by area is neither negative nor positive.
        Cr6Inconclusive => "cr6_inconclusive",
        /// A claimed exemption covers what is over limit or undecided; printed.
        ClaimCovers => "claim_covers",
        /// A negative result by area settles the chromium; printed.
        Cr6Negative => "cr6_negative",
        /// A claimed exemption may cover this once something is answered.
        ClaimOpen => "claim_open",
        /// A negative result by area without its laboratory and report.
        Cr6NoReport => "cr6_no_report",
        /// A result by area for a material that is no metal; printed.
        Cr6OtherClass => "cr6_other_class",
        /// A laboratory's result without uncertainty.
        LabNoUncertainty => "lab_no_uncertainty",
        /// A laboratory's result without method, laboratory, report or day: it lifts nothing.
        LabNotTraceable => "lab_not_traceable",
        /// Of PBB and PBDE a laboratory found one within, and the other is not answered.
        LabGroupMissing => "lab_group_missing",
        /// A laboratory's result for a material that is not here, or for several at once.
        LabNotPlaced => "lab_not_placed",
        /// A reading over limit was set aside.
        SetAsideOver => "set_aside_over",
        /// A reading that says neither below nor over was set aside.
        SetAsideOpen => "set_aside_open",
        /// Readings were set aside; printed.
        SetAside => "set_aside",
        /// A file of the inspection could not be read, or none of its rows, so something measured may be missing.
        FileNotRead => "file_not_read",
        /// Rows of the source were refused, so something measured may be missing here.
        RowsRefused => "rows_refused",
        /// The composition flatly contradicts the class that was stated.
        ClassContested => "class_contested",
        /// Readings state different classes, one of them a layer.
        LayerAmongClasses => "layer_among_classes",
        /// The class is not known.
        ClassUnknown => "class_unknown",
        /// Cd or Pb below limit in plastic or light alloy of unstated thickness.
        ThicknessNotStated => "thickness_not_stated",
        /// The measuring mode does not fit the material.
        CalibrationDoubtful => "calibration_doubtful",
        /// Below limit, but what is left of a strong partner's line could lift it over the edge.
        OverlapUnresolved => "overlap_unresolved",
        /// Over limit, but perhaps only by a strong partner's line.
        OverMayBeOverlap => "over_may_be_overlap",
        /// A material of the bill was not measured.
        MaterialNotMeasured => "material_not_measured",
        /// No bill of materials.
        BillOfMaterialsNone => "bill_of_materials_none",
        /// A measured material is not on the bill.
        MaterialNotListed => "material_not_listed",
        /// A check beside readings failed.
        TrustFailed => "trust_failed",
        /// Readings lie between no two good checks.
        TrustNotBracketed => "trust_not_bracketed",
        /// Readings lie between good checks that stand more than a day apart.
        ChecksFarApart => "checks_far_apart",
        /// The composition is not that of the part's accepted lots.
        MaterialChanged => "material_changed",
        /// There are lots in the history, and too few accepted ones of this material, or nothing to compare by.
        ChangeNotCompared => "change_not_compared",
        /// No check reading covers readings, or an element of them.
        TrustNone => "trust_none",
        /// A check standard that fits was measured, and its certified value is not stated.
        TrustNotCertified => "trust_not_certified",
        /// Check readings are there, and none could be judged.
        TrustNotJudged => "trust_not_judged",
        /// No lot size or plan.
        SamplingNone => "sampling_none",
        /// A lot smaller than the units that were measured of it.
        LotSizeTooSmall => "lot_size_too_small",
        /// Units or a plan are asked for, and the lot size is not given.
        LotSizeMissing => "lot_size_missing",
        /// Fewer units than the plan asks for.
        SamplingTooFew => "sampling_too_few",
        /// A plan is given, and readings don't say which unit they were made on.
        UnitsNotStated => "units_not_stated",
        /// The multiple of the printed uncertainties is not stated; taken as one.
        MultipleNotStated => "multiple_not_stated",
        /// Readings took longer than the checks beside them, or less than half as long; printed.
        CheckTimesDiffer => "check_times_differ",
        /// Readings of a lot or a part, or over limit and certified by nothing, were marked as checks and stay product; printed.
        MarkNotTaken => "mark_not_taken",
        /// The named halogen book is not loaded.
        HalogenBookNotLoaded => "halogen_book_not_loaded",
        /// A named rule book is not there, or another stands in for what it holds.
        BookNotLoaded => "book_not_loaded",
        /// A rule book whose bands or halogen limits count does not hold on the day that counts, or nobody says which day that is.
        BookNotInUse => "book_not_in_use",
        /// A named rule book is another file than the one that was named by its digest.
        BookDiffers => "book_differs",
        /// Two people lifted a hold; printed.
        Lifted => "lifted",
        /// A hold was to be lifted that only a result ends; printed, and it holds.
        LiftNotAllowed => "lift_not_allowed",
        /// A hold was to be lifted without the initials of two people; printed, and it holds.
        LiftNotCountersigned => "lift_not_countersigned",
        /// A hold was lifted that is not there; printed.
        LiftNotNeeded => "lift_not_needed",
        /// The day by which the hold was to end is past; printed.
        HoldOverdue => "hold_overdue",
        /// More units are said to be kept apart than the lot has; printed.
        QuarantineExceedsLot => "quarantine_exceeds_lot",
    }
}

/// Which kind of thing a reason is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum ReasonKind {
    /// What the readings say.
    Outcome,
    /// What evidence is missing for an accept.
    Evidence,
}

impl ReasonKind {
    /// The code used in findings.
    pub const fn code(self) -> &'static str {
        match self {
            ReasonKind::Outcome => "outcome",
            ReasonKind::Evidence => "evidence",
        }
    }
}

impl LotReasonCode {
    /// Which kind of thing it is.
    pub const fn kind(self) -> ReasonKind {
        match self {
            LotReasonCode::OverLimit
            | LotReasonCode::HalogenOverLimit
            | LotReasonCode::LimitOver
            | LotReasonCode::LimitOpen
            | LotReasonCode::LabOver
            | LotReasonCode::LabOpen
            | LotReasonCode::LabWithin
            | LotReasonCode::SetAsideOver
            | LotReasonCode::SetAsideOpen
            | LotReasonCode::OverInSomeClasses
            | LotReasonCode::NotMeasured
            | LotReasonCode::NoUncertainty
            | LotReasonCode::DetectionTooHigh
            | LotReasonCode::NotCapable
            | LotReasonCode::Undecided
            | LotReasonCode::HalogenOpen
            | LotReasonCode::ClaimExceeded
            | LotReasonCode::ClaimExpired
            | LotReasonCode::ClaimNotCovered
            | LotReasonCode::Cr6Present
            | LotReasonCode::Cr6Inconclusive
            | LotReasonCode::ClaimCovers
            | LotReasonCode::Cr6Negative => ReasonKind::Outcome,
            _ => ReasonKind::Evidence,
        }
    }

    /// True where its count is a number of readings.
    pub const fn counts_readings(self) -> bool {
        // Readings that a person set aside are not among those that count.
        let set_aside = matches!(self, LotReasonCode::SetAsideOver | LotReasonCode::SetAsideOpen);
        (matches!(self.kind(), ReasonKind::Outcome) && !set_aside)
            || matches!(
                self,
                LotReasonCode::ClassContested
                    | LotReasonCode::LayerAmongClasses
                    | LotReasonCode::ClassUnknown
                    | LotReasonCode::ThicknessNotStated
                    | LotReasonCode::CalibrationDoubtful
                    | LotReasonCode::OverlapUnresolved
                    | LotReasonCode::OverMayBeOverlap
                    | LotReasonCode::MultipleNotStated
                    | LotReasonCode::TrustFailed
                    | LotReasonCode::TrustNotBracketed
                    | LotReasonCode::CheckTimesDiffer
                    | LotReasonCode::ChecksFarApart
                    | LotReasonCode::MarkNotTaken
            )
    }

    /// True for the holds that two people may lift: an undecided outcome, missing trust, missing sampling. What was not
    /// measured, what cannot show "below", what was refused or not read, and a check that failed end by a result alone.
    pub const fn may_be_lifted(self) -> bool {
        matches!(
            self,
            LotReasonCode::Undecided
                | LotReasonCode::TrustNone
                | LotReasonCode::TrustNotCertified
                | LotReasonCode::TrustNotJudged
                | LotReasonCode::TrustNotBracketed
                | LotReasonCode::ChecksFarApart
                | LotReasonCode::SamplingNone
                | LotReasonCode::LotSizeMissing
                | LotReasonCode::SamplingTooFew
                | LotReasonCode::UnitsNotStated
                | LotReasonCode::MaterialChanged
        )
    }

    /// True for what only tells what people or laboratories did: it never stands for evidence that was set advisory.
    pub const fn is_told(self) -> bool {
        matches!(
            self,
            LotReasonCode::Cr6Negative
                | LotReasonCode::LabOver
                | LotReasonCode::LabOpen
                | LotReasonCode::LabWithin
                | LotReasonCode::LabNotPlaced
                | LotReasonCode::SetAside
                | LotReasonCode::Lifted
                | LotReasonCode::LiftNotAllowed
                | LotReasonCode::LiftNotCountersigned
                | LotReasonCode::LiftNotNeeded
                | LotReasonCode::HoldOverdue
                | LotReasonCode::QuarantineExceedsLot
        )
    }

    /// The reason an outcome of a substance gives.
    pub const fn of_outcome(outcome: Outcome) -> Option<LotReasonCode> {
        match outcome {
            Outcome::Below | Outcome::NotApplicable => None,
            Outcome::Over => Some(LotReasonCode::OverLimit),
            Outcome::NotMeasured => Some(LotReasonCode::NotMeasured),
            Outcome::NoUncertainty => Some(LotReasonCode::NoUncertainty),
            Outcome::DetectionTooHigh => Some(LotReasonCode::DetectionTooHigh),
            Outcome::NotCapable => Some(LotReasonCode::NotCapable),
            Outcome::Undecided => Some(LotReasonCode::Undecided),
        }
    }
}

/// One reason with what it is about.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LotReason {
    /// The code.
    pub code: LotReasonCode,
    /// What it does to the disposition; [`Disposition::Accept`] for a reason that is only printed.
    pub effect: Disposition,
    /// The substance, halogen or name it is about; empty where none.
    pub about: String,
    /// How many readings (or rows, units) show it.
    pub count: u64,
    /// Out of how many.
    pub of: u64,
}

/// Reasons in order (worst effect first, then the table's order, then name), without repeats: repeats add up.
#[derive(Clone, Debug, Default)]
pub struct Reasons {
    list: Vec<LotReason>,
}

impl Reasons {
    /// Adds a reason, or adds to the one already there.
    pub fn add(&mut self, reason: LotReason) {
        let same = |known: &&mut LotReason| {
            known.code == reason.code && known.about == reason.about && known.effect == reason.effect
        };
        if let Some(known) = self.list.iter_mut().find(same) {
            known.count += reason.count;
            known.of += reason.of;
        } else {
            self.list.push(reason);
        }
    }

    /// Takes away the reasons of these codes about one thing.
    pub fn remove(&mut self, codes: &[LotReasonCode], about: &str) {
        self.list.retain(|reason| !(codes.contains(&reason.code) && reason.about == about));
    }

    /// Takes away the reasons of a code whose name ends so.
    pub fn remove_ending(&mut self, code: LotReasonCode, ending: &str) {
        self.list.retain(|reason| !(reason.code == code && reason.about.ends_with(ending)));
    }

    /// Lets the reasons of a code about one thing hold and no more.
    pub fn only_hold(&mut self, code: LotReasonCode, about: &str) {
        for reason in self.list.iter_mut().filter(|reason| reason.code == code && reason.about == about) {
            reason.effect = reason.effect.min(Disposition::Hold);
        }
    }

    /// Takes away the reasons of these codes whose name begins so.
    pub fn remove_starting(&mut self, codes: &[LotReasonCode], start: &str) {
        self.list.retain(|reason| !(codes.contains(&reason.code) && reason.about.starts_with(start)));
    }

    /// True where a reason of one of these codes about one thing is there.
    pub fn has(&self, codes: &[LotReasonCode], about: &str) -> bool {
        self.list.iter().any(|reason| codes.contains(&reason.code) && reason.about == about)
    }

    /// What there is so far, in no order.
    pub fn list(&self) -> &[LotReason] {
        &self.list
    }

    /// Lets the holds that fit be printed and hold no more; true where there was one.
    pub fn lift(&mut self, fits: impl Fn(&LotReason) -> bool) -> bool {
        let mut lifted = false;
        for reason in self.list.iter_mut().filter(|reason| reason.effect == Disposition::Hold) {
            if fits(reason) {
                reason.effect = Disposition::Accept;
                lifted = true;
            }
        }
        lifted
    }

    /// States out of how many readings the reasons that count readings speak.
    pub fn set_readings(&mut self, readings: u64) {
        for reason in &mut self.list {
            if reason.code.counts_readings() {
                reason.of = readings;
            }
        }
    }

    /// Adds all of another list.
    pub fn add_all(&mut self, others: &[LotReason]) {
        for reason in others {
            self.add(reason.clone());
        }
    }

    /// The reasons, worst first, and the disposition they lead to.
    pub fn close(mut self) -> (Disposition, Vec<LotReason>) {
        self.list.sort_by(|a, b| {
            (b.effect, a.code.kind(), a.code, place_of(&a.about), &a.about).cmp(&(
                a.effect,
                b.code.kind(),
                b.code,
                place_of(&b.about),
                &b.about,
            ))
        });
        let disposition = self.list.iter().map(|reason| reason.effect).max().unwrap_or(Disposition::Accept);
        (disposition, self.list)
    }
}

/// What the readings of one material add up to.
#[derive(Clone, Debug, Default)]
pub struct MaterialTally {
    /// How many readings it has.
    pub readings: u64,
    /// Per substance: how many readings have each outcome, indexed by badness.
    pub counts: [[u64; 8]; 5],
    /// Per substance: how many readings are OL under every class they may have.
    pub firm_over: [u64; 5],
    /// Per halogen: how many readings have each outcome.
    pub halogen_counts: [[u64; 8]; 3],
    /// Per halogen: how many readings of a known class are OL.
    pub halogen_firm_over: [u64; 3],
    /// How many readings have a class that their composition contradicts.
    pub class_contested: u64,
    /// How many readings are of a layer.
    pub layers: u64,
    /// How many readings have an unknown class.
    pub class_unknown: u64,
    /// How many readings of plastic or light alloy have a Cd or Pb BL and no thickness.
    pub thickness_missing: u64,
    /// How many readings were made in a mode that does not fit them.
    pub calibration_doubtful: u64,
    /// How many readings used a printed uncertainty whose multiple nobody stated.
    pub multiple_unknown: u64,
    /// Per substance: how many readings are BL or OL under a strong overlap.
    pub doubtful: [Doubtful; 5],
    /// Per halogen: the same.
    pub halogen_doubtful: [Doubtful; 3],
}

/// How many readings of one substance have an outcome that a strong overlap puts in doubt.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Doubtful {
    /// BL that may not be.
    pub below: u64,
    /// OL that may not be.
    pub over: u64,
}

impl Doubtful {
    /// Counts one outcome.
    pub fn count(&mut self, outcome: Outcome, in_doubt: bool) {
        self.below += u64::from(in_doubt && outcome == Outcome::Below);
        self.over += u64::from(in_doubt && outcome == Outcome::Over);
    }

    /// Adds those of other readings.
    pub fn add(&mut self, more: Doubtful) {
        self.below += more.below;
        self.over += more.over;
    }
}

impl MaterialTally {
    /// The worst outcome of a substance.
    pub fn worst(&self, substance: Substance) -> Outcome {
        worst_of(self.counts.get(substance as usize))
    }

    /// The worst outcome of a halogen.
    pub fn worst_halogen(&self, halogen: Halogen) -> Outcome {
        worst_of(self.halogen_counts.get(halogen as usize))
    }

    /// Doubts by name. Bromine has one name as a substance and as a halogen: the larger count speaks for both.
    fn doubts(&self, halogens_count: bool) -> impl Iterator<Item = (&'static str, Doubtful)> {
        let [chlorine, bromine, total] =
            if halogens_count { self.halogen_doubtful } else { [Doubtful::default(); 3] };
        let mut substances = self.doubtful;
        if let Some(own) = substances.get_mut(Substance::Br as usize) {
            own.below = own.below.max(bromine.below);
            own.over = own.over.max(bromine.over);
        }
        Substance::ALL
            .map(Substance::symbol)
            .into_iter()
            .zip(substances)
            .chain([(Halogen::Cl.name(), chlorine), (Halogen::Total.name(), total)])
    }

    /// Reasons that come from the readings of one material.
    ///
    /// `halogens_count` is true where the inspection names a halogen book for it.
    pub fn reasons(&self, halogens_count: bool) -> Reasons {
        let mut reasons = Reasons::default();
        let mut add = |code, effect, about: &str, count, of| {
            reasons.add(LotReason { code, effect, about: about.to_owned(), count, of });
        };
        for substance in Substance::ALL {
            let (Some(counts), Some(&firm)) =
                (self.counts.get(substance as usize), self.firm_over.get(substance as usize))
            else {
                continue;
            };
            for (outcome, &count) in Outcome::ALL.iter().zip(counts) {
                let Some(code) = LotReasonCode::of_outcome(*outcome) else { continue };
                if *outcome == Outcome::Over {
                    if firm > 0 {
                        add(code, Disposition::NotAccept, substance.symbol(), firm, self.readings);
                    }
                    if count > firm {
                        let some = LotReasonCode::OverInSomeClasses;
                        add(some, Disposition::Hold, substance.symbol(), count - firm, self.readings);
                    }
                } else if count > 0 {
                    add(code, Disposition::Hold, substance.symbol(), count, self.readings);
                }
            }
        }
        if halogens_count {
            for halogen in Halogen::ALL {
                let Some(counts) = self.halogen_counts.get(halogen as usize) else { continue };
                let over = counts.get(Outcome::Over as usize).copied().unwrap_or(0);
                let open: u64 = Outcome::ALL
                    .iter()
                    .zip(counts)
                    .filter(|(outcome, _)| !outcome.is_settled() && **outcome != Outcome::Over)
                    .map(|(_, count)| count)
                    .sum();
                let firm = self.halogen_firm_over.get(halogen as usize).copied().unwrap_or(0);
                if firm > 0 {
                    add(
                        LotReasonCode::HalogenOverLimit,
                        Disposition::NotAccept,
                        halogen.name(),
                        firm,
                        self.readings,
                    );
                }
                if over > firm {
                    add(
                        LotReasonCode::HalogenOverLimit,
                        Disposition::Hold,
                        halogen.name(),
                        over - firm,
                        self.readings,
                    );
                }
                if open > 0 {
                    add(LotReasonCode::HalogenOpen, Disposition::Hold, halogen.name(), open, self.readings);
                }
            }
        }
        let contested = self.class_contested;
        if contested > 0 {
            add(LotReasonCode::ClassContested, Disposition::Hold, "", contested, self.readings);
        }
        if (1..self.readings).contains(&self.layers) {
            add(LotReasonCode::LayerAmongClasses, Disposition::Hold, "", self.layers, self.readings);
        }
        if self.class_unknown > 0 {
            add(LotReasonCode::ClassUnknown, Disposition::Hold, "", self.class_unknown, self.readings);
        }
        if self.thickness_missing > 0 {
            add(
                LotReasonCode::ThicknessNotStated,
                Disposition::Hold,
                "",
                self.thickness_missing,
                self.readings,
            );
        }
        let doubtful = self.calibration_doubtful;
        if doubtful > 0 {
            add(LotReasonCode::CalibrationDoubtful, Disposition::Hold, "", doubtful, self.readings);
        }
        for (about, doubtful) in self.doubts(halogens_count) {
            for (code, count) in [
                (LotReasonCode::OverlapUnresolved, doubtful.below),
                (LotReasonCode::OverMayBeOverlap, doubtful.over),
            ] {
                if count > 0 {
                    add(code, Disposition::Hold, about, count, self.readings);
                }
            }
        }
        if self.multiple_unknown > 0 {
            add(
                LotReasonCode::MultipleNotStated,
                Disposition::Accept,
                "",
                self.multiple_unknown,
                self.readings,
            );
        }
        reasons
    }
}

/// How many readings of a material are over or open under one limit.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct LimitTally {
    /// OL under every class the reading may have.
    pub firm_over: u64,
    /// OL under some class only.
    pub over: u64,
    /// Neither within nor over, and not left out by the limit.
    pub open: u64,
}

impl LimitTally {
    /// Counts one judgement.
    pub fn add(&mut self, outcome: Outcome, firm_over: bool) {
        match outcome {
            Outcome::Over if firm_over => self.firm_over += 1,
            Outcome::Over => self.over += 1,
            outcome if outcome.is_settled() => {}
            _ => self.open += 1,
        }
    }

    /// Counts those of another list of the same limits.
    pub fn add_all(list: &mut Vec<LimitTally>, others: &[LimitTally]) {
        list.resize(list.len().max(others.len()), LimitTally::default());
        for (one, other) in list.iter_mut().zip(others) {
            one.firm_over += other.firm_over;
            one.over += other.over;
            one.open += other.open;
        }
    }

    /// What the limits say of a material; `names` are the limits' own, in the order of the tallies.
    pub fn reasons(list: &[LimitTally], names: &[String], readings: u64, reasons: &mut Reasons) {
        for (tally, about) in list.iter().zip(names) {
            for (code, effect, count) in [
                (LotReasonCode::LimitOver, Disposition::NotAccept, tally.firm_over),
                (LotReasonCode::LimitOver, Disposition::Hold, tally.over),
                (LotReasonCode::LimitOpen, Disposition::Hold, tally.open),
            ] {
                if count > 0 {
                    reasons.add(LotReason { code, effect, about: about.clone(), count, of: readings });
                }
            }
        }
    }
}

/// Where a substance or halogen stands in the usual order; other names come after.
fn place_of(about: &str) -> usize {
    // A claim is about a substance first, then its entry; a laboratory's result about a substance, then what it says.
    let about = about.split_once([' ', '|']).map_or(about, |(first, _)| first);
    let names = Substance::ALL.iter().map(|substance| substance.symbol()).chain(["Cl", "total"]);
    names.into_iter().position(|name| name == about).unwrap_or(usize::MAX)
}

fn worst_of(counts: Option<&[u64; 8]>) -> Outcome {
    let worst = counts.and_then(|counts| {
        Outcome::ALL.iter().zip(counts).filter(|(_, count)| **count > 0).map(|(outcome, _)| *outcome).max()
    });
    worst.unwrap_or(Outcome::NotMeasured)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn tally(substance: Substance, outcome: Outcome, firm: bool) -> MaterialTally {
        let mut tally = MaterialTally { readings: 1, ..MaterialTally::default() };
        for other in Substance::ALL {
            let at = if other == substance { outcome } else { Outcome::Below };
            tally.counts[other as usize][at as usize] = 1;
        }
        tally.firm_over[substance as usize] = u64::from(firm);
        tally
    }

    #[test]
    fn only_below_and_not_applicable_accept() {
        for outcome in Outcome::ALL {
            let (disposition, reasons) =
                tally(Substance::Pb, outcome, outcome == Outcome::Over).reasons(false).close();
            let expected = match outcome {
                Outcome::Below | Outcome::NotApplicable => Disposition::Accept,
                Outcome::Over => Disposition::NotAccept,
                _ => Disposition::Hold,
            };
            assert_eq!(disposition, expected, "{outcome:?}");
            assert_eq!(reasons.is_empty(), outcome.is_settled());
        }
    }

    #[test]
    fn over_under_some_classes_only_holds() {
        let (disposition, reasons) = tally(Substance::Pb, Outcome::Over, false).reasons(false).close();
        assert_eq!(disposition, Disposition::Hold);
        assert_eq!(reasons[0].code, LotReasonCode::OverInSomeClasses);
    }

    #[test]
    fn halogens_move_a_disposition_only_where_a_book_is_named() {
        let mut one = tally(Substance::Pb, Outcome::Below, false);
        one.halogen_counts[Halogen::Total as usize][Outcome::Over as usize] = 1;
        one.halogen_firm_over[Halogen::Total as usize] = 1;
        assert_eq!(one.reasons(false).close().0, Disposition::Accept);
        assert_eq!(one.reasons(true).close().0, Disposition::NotAccept);
    }

    #[test]
    fn a_limit_holds_unless_it_is_over_under_every_class() {
        let mut list = vec![LimitTally::default(); 2];
        for (outcome, firm) in [
            (Outcome::Over, true),
            (Outcome::Over, true),
            (Outcome::Over, false),
            (Outcome::Undecided, false),
            (Outcome::NotMeasured, false),
            (Outcome::NotCapable, false),
            (Outcome::Below, false),
            (Outcome::NotApplicable, false),
        ] {
            list[1].add(outcome, firm);
        }
        let one = LimitTally { firm_over: 2, over: 1, open: 3 };
        assert_eq!(list, [LimitTally::default(), one]);
        let mut twice = Vec::new();
        LimitTally::add_all(&mut twice, &list);
        LimitTally::add_all(&mut twice, &list[..1]);
        LimitTally::add_all(&mut twice, &list);
        assert_eq!(twice[1], LimitTally { firm_over: 4, over: 2, open: 6 });
        let mut reasons = Reasons::default();
        LimitTally::reasons(&list, &["a: Cd".to_owned(), "a: Pb".to_owned()], 8, &mut reasons);
        let (disposition, reasons) = reasons.close();
        assert_eq!(disposition, Disposition::NotAccept);
        let said: Vec<_> =
            reasons.iter().map(|r| (r.effect, r.code.code(), r.about.as_str(), r.count, r.of)).collect();
        assert_eq!(
            said,
            [
                (Disposition::NotAccept, "limit_over", "a: Pb", 2, 8),
                (Disposition::Hold, "limit_over", "a: Pb", 1, 8),
                (Disposition::Hold, "limit_open", "a: Pb", 3, 8),
            ]
        );
        let mut open = Reasons::default();
        let only_open = LimitTally { open: 1, ..LimitTally::default() };
        LimitTally::reasons(&[only_open], &["a: Cd".to_owned()], 1, &mut open);
        assert_eq!(open.close().0, Disposition::Hold);
    }

    #[test]
    fn reasons_are_taken_away_or_softened_by_code_and_by_what_they_are_about() {
        let all = || {
            let mut reasons = tally(Substance::Cd, Outcome::Over, true).reasons(false);
            reasons.add_all(&tally(Substance::Pb, Outcome::Over, true).reasons(false).list);
            reasons.add_all(&tally(Substance::Pb, Outcome::Undecided, false).reasons(false).list);
            reasons
        };
        let say = |reasons: &Reasons| {
            let one = |reason: &LotReason| {
                format!("{} {} {}", reason.effect.code(), reason.code.code(), reason.about)
            };
            reasons.list.iter().map(one).collect::<Vec<_>>()
        };
        let mut fewer = all();
        fewer.remove(&[LotReasonCode::OverLimit], "Pb");
        assert_eq!(say(&fewer), ["not_accept over_limit Cd", "hold undecided Pb"]);
        let mut softer = all();
        softer.only_hold(LotReasonCode::OverLimit, "Pb");
        assert_eq!(say(&softer), ["not_accept over_limit Cd", "hold over_limit Pb", "hold undecided Pb"]);
        let mut ended = all();
        ended.remove_ending(LotReasonCode::OverLimit, "d");
        assert_eq!(say(&ended), ["not_accept over_limit Pb", "hold undecided Pb"]);
        let mut printed = Reasons::default();
        let code = LotReasonCode::OverLimit;
        printed.add(LotReason { code, effect: Disposition::Accept, about: "Pb".into(), count: 1, of: 1 });
        printed.only_hold(code, "Pb");
        assert_eq!(say(&printed), ["accept over_limit Pb"]);
    }

    #[test]
    fn a_below_under_a_strong_overlap_holds_and_an_over_stays_over() {
        let mut one = tally(Substance::Pb, Outcome::Below, false);
        one.doubtful[Substance::Pb as usize].count(Outcome::Below, true);
        one.doubtful[Substance::Hg as usize].count(Outcome::Below, false);
        one.doubtful[Substance::Cd as usize].count(Outcome::Undecided, true);
        let (disposition, reasons) = one.reasons(false).close();
        assert_eq!(disposition, Disposition::Hold);
        assert_eq!(reasons.len(), 1);
        assert_eq!((reasons[0].code, reasons[0].about.as_str()), (LotReasonCode::OverlapUnresolved, "Pb"));
        let mut one = tally(Substance::Pb, Outcome::Over, true);
        one.doubtful[Substance::Pb as usize].count(Outcome::Over, true);
        let (disposition, reasons) = one.reasons(false).close();
        assert_eq!(disposition, Disposition::NotAccept);
        assert_eq!(reasons[1].code, LotReasonCode::OverMayBeOverlap);
        assert!(reasons[1].code.counts_readings() && reasons[1].code.kind() == ReasonKind::Evidence);
    }

    #[test]
    fn doubts_of_halogens_count_where_the_halogens_do_and_bromine_once() {
        let mut one = tally(Substance::Pb, Outcome::Below, false);
        for of in Halogen::ALL {
            one.halogen_doubtful[of as usize].count(Outcome::Below, true);
        }
        one.doubtful[Substance::Br as usize].add(Doubtful { below: 1, over: 0 });
        let about = |counted: bool| {
            let (_, reasons) = one.reasons(counted).close();
            reasons.into_iter().map(|reason| (reason.about, reason.count)).collect::<Vec<_>>()
        };
        assert_eq!(about(false), [("Br".to_owned(), 1)]);
        assert_eq!(about(true), [("Br".to_owned(), 1), ("Cl".to_owned(), 1), ("total".to_owned(), 1)]);
    }

    #[test]
    fn reasons_come_worst_first() {
        let mut one = tally(Substance::Cd, Outcome::Over, true);
        one.counts[Substance::Pb as usize] = [0, 0, 1, 0, 0, 0, 0, 0];
        one.class_unknown = 1;
        let (_, reasons) = one.reasons(false).close();
        let codes: Vec<_> = reasons.iter().map(|reason| reason.code.code()).collect();
        assert_eq!(codes, ["over_limit", "undecided", "class_unknown"]);
    }
}
