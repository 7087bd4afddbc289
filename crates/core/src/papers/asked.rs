//! What a reason of a lot asks of its supplier.

use crate::lot::{Disposition, LotReason, LotReasonCode};
use crate::reading::codes;

codes! {
    /// What a supplier is asked to do. (Our own choice; what a contract says stands above it.)
    Asked {
        /// Keep back what is still there of the lot.
        Contain => "contain",
        /// Send a laboratory's result.
        Laboratory => "laboratory",
        /// Say what the part is made of.
        Materials => "materials",
        /// Say which exemption is relied on, with its evidence.
        Exemption => "exemption",
        /// Say what was changed.
        Change => "change",
        /// Find the cause and say what is done about it.
        Correct => "correct",
        /// Replace the lot.
        Replace => "replace",
    }
}

/// What a reason asks of the supplier; nothing for what the inspector's own side has to bring: checks, plans, files.
pub(super) const fn asked(code: LotReasonCode) -> &'static [Asked] {
    use LotReasonCode as Code;
    match code {
        Code::OverLimit | Code::HalogenOverLimit | Code::LimitOver | Code::SetAsideOver => {
            &[Asked::Contain, Asked::Laboratory, Asked::Correct, Asked::Replace]
        }
        Code::LabOver | Code::Cr6Present => &[Asked::Contain, Asked::Correct, Asked::Replace],
        Code::ClaimExceeded | Code::ClaimExpired | Code::ClaimNotCovered => {
            &[Asked::Contain, Asked::Exemption, Asked::Correct]
        }
        Code::ClaimOpen => &[Asked::Exemption],
        Code::OverInSomeClasses | Code::OverMayBeOverlap => {
            &[Asked::Contain, Asked::Materials, Asked::Laboratory]
        }
        Code::Undecided
        | Code::NotCapable
        | Code::DetectionTooHigh
        | Code::HalogenOpen
        | Code::LimitOpen
        | Code::LabOpen
        | Code::Cr6Inconclusive
        | Code::SetAsideOpen
        | Code::OverlapUnresolved => &[Asked::Materials, Asked::Laboratory],
        Code::Cr6NoReport | Code::LabNotTraceable | Code::LabNoUncertainty | Code::LabGroupMissing => {
            &[Asked::Laboratory]
        }
        Code::MaterialNotMeasured
        | Code::BillOfMaterialsNone
        | Code::MaterialNotListed
        | Code::ClassUnknown
        | Code::LayerAmongClasses
        | Code::ClassContested
        | Code::ThicknessNotStated => &[Asked::Materials],
        Code::MaterialChanged => &[Asked::Change, Asked::Materials],
        _ => &[],
    }
}

/// True for a reason that keeps a lot from being accepted and that its supplier can do something about.
pub(super) fn concerns_supplier(reason: &LotReason) -> bool {
    reason.effect != Disposition::Accept && !asked(reason.code).is_empty()
}

/// What all reasons together ask, each once. A lot that is only held is never asked to be replaced: it is not decided.
pub(super) fn all_asked(reasons: &[LotReason], disposition: Disposition) -> Vec<Asked> {
    let mut all: Vec<Asked> = reasons
        .iter()
        .filter(|reason| reason.effect != Disposition::Accept)
        .flat_map(|reason| asked(reason.code))
        .copied()
        .filter(|one| *one != Asked::Replace || disposition == Disposition::NotAccept)
        .collect();
    all.sort_unstable();
    all.dedup();
    all
}

#[cfg(test)]
mod tests {
    use super::*;

    fn reason(code: LotReasonCode, effect: Disposition) -> LotReason {
        LotReason { code, effect, about: "Pb".into(), count: 1, of: 1 }
    }

    #[test]
    fn what_is_undecided_is_never_asked_to_be_replaced() {
        let open = [
            reason(LotReasonCode::Undecided, Disposition::Hold),
            reason(LotReasonCode::OverLimit, Disposition::Hold),
        ];
        let asked = all_asked(&open, Disposition::Hold);
        assert_eq!(asked, [Asked::Contain, Asked::Laboratory, Asked::Materials, Asked::Correct]);
        let over = [reason(LotReasonCode::OverLimit, Disposition::NotAccept)];
        assert!(all_asked(&over, Disposition::NotAccept).contains(&Asked::Replace));
    }

    #[test]
    fn a_supplier_is_asked_nothing_about_our_own_checks_and_plans() {
        let own = [
            LotReasonCode::TrustNone,
            LotReasonCode::SamplingNone,
            LotReasonCode::FileNotRead,
            LotReasonCode::NotMeasured,
        ];
        for code in own {
            assert!(!concerns_supplier(&reason(code, Disposition::Hold)), "{}", code.code());
        }
        // Nor about what is only printed.
        assert!(!concerns_supplier(&reason(LotReasonCode::OverLimit, Disposition::Accept)));
    }
}
