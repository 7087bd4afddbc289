//! What kind of calibration a measuring mode is, by the words the trade uses for it.

use super::CalibrationDoubt;
use crate::material::MaterialClass;

/// A kind of calibration.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum ModeKind {
    /// For plastics without chlorine.
    Polymer,
    /// For plastics with chlorine, or for both.
    Pvc,
    /// For metals.
    Metal,
    /// For soil, minerals or ore.
    Soil,
}

impl ModeKind {
    const ALL: [ModeKind; 4] = [ModeKind::Polymer, ModeKind::Pvc, ModeKind::Metal, ModeKind::Soil];

    /// The code used in the data file.
    const fn code(self) -> &'static str {
        match self {
            ModeKind::Polymer => "polymer",
            ModeKind::Pvc => "pvc",
            ModeKind::Metal => "metal",
            ModeKind::Soil => "soil",
        }
    }

    pub(super) fn from_code(code: &str) -> Option<ModeKind> {
        ModeKind::ALL.into_iter().find(|kind| kind.code() == code)
    }

    /// Why a reading in this mode has a doubtful calibration, by the class it has and what its composition shows.
    pub(super) fn doubt(self, class: MaterialClass, shows: Shows) -> Option<CalibrationDoubt> {
        let metal = shows.metal || class == MaterialClass::Metal;
        let plastic = shows.plastic || class == MaterialClass::Polymer;
        match self {
            ModeKind::Polymer | ModeKind::Pvc if metal => Some(CalibrationDoubt::MetalInPolymerMode),
            ModeKind::Polymer if shows.chlorine => Some(CalibrationDoubt::PvcInPolymerMode),
            ModeKind::Metal if plastic => Some(CalibrationDoubt::PlasticInMetalMode),
            ModeKind::Soil if metal => Some(CalibrationDoubt::MetalInSoilMode),
            ModeKind::Soil if plastic => Some(CalibrationDoubt::PlasticInSoilMode),
            _ => None,
        }
    }
}

/// What a composition shows by itself.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(super) struct Shows {
    /// Mostly metals.
    pub(super) metal: bool,
    /// A plastic.
    pub(super) plastic: bool,
    /// Chlorine is a main element.
    pub(super) chlorine: bool,
}

/// Words for modes, the longest first.
#[derive(Clone, Debug, Default)]
pub(super) struct ModeWords(Vec<(String, ModeKind)>);

impl ModeWords {
    /// Adds words with ` | ` between; `None` for no words, or one that is known already.
    pub(super) fn add(&mut self, kind: ModeKind, words: &str) -> Option<()> {
        for word in words.split(" | ") {
            if word.is_empty() || self.0.iter().any(|(known, _)| known == word) {
                return None;
            }
            let at = self.0.partition_point(|(known, _)| known.len() >= word.len());
            self.0.insert(at, (word.to_owned(), kind));
        }
        Some(())
    }

    /// The kind of a mode; `None` where its text says none, or more than one.
    pub(super) fn kind(&self, text: &str) -> Option<ModeKind> {
        let mut rest = text.to_lowercase();
        let (mut polymer, mut pvc, mut other) = (false, false, Vec::new());
        for (word, kind) in &self.0 {
            let mut from = 0;
            while let Some(at) =
                rest.get(from..).and_then(|text| text.find(word.as_str())).map(|at| from + at)
            {
                let end = at + word.len();
                if !stands_alone(&rest, at, end) {
                    from = end;
                    continue;
                }
                // What was understood is not read again as a shorter word ("non pvc").
                rest.replace_range(at..end, " ");
                from = at;
                match kind {
                    ModeKind::Polymer => polymer = true,
                    ModeKind::Pvc => pvc = true,
                    _ if other.contains(kind) => {}
                    _ => other.push(*kind),
                }
            }
        }
        match (polymer, pvc, &other[..]) {
            (_, true, []) => Some(ModeKind::Pvc),
            (true, false, []) => Some(ModeKind::Polymer),
            (false, false, [kind]) => Some(*kind),
            _ => None,
        }
    }
}

/// True where no letter touches a word; scripts without spaces have no such borders.
fn stands_alone(text: &str, at: usize, end: usize) -> bool {
    let joins = |c: Option<char>| c.is_some_and(|c| c.is_alphabetic() && c < '\u{2e80}');
    let spaced = |c: Option<char>| c.is_some_and(|c| c < '\u{2e80}');
    let word = text.get(at..end).unwrap_or("");
    if !spaced(word.chars().next()) {
        return true;
    }
    !joins(text.get(..at).and_then(|before| before.chars().next_back()))
        && !joins(text.get(end..).and_then(|after| after.chars().next()))
}

#[cfg(test)]
mod tests {
    use super::super::built_in;
    use super::*;

    #[test]
    fn a_mode_is_known_by_its_words() {
        for (text, kind) in [
            ("Plastics", Some(ModeKind::Polymer)),
            ("PE", Some(ModeKind::Polymer)),
            ("RoHS_PLASTIC_2", Some(ModeKind::Polymer)),
            ("plastic (non-PVC)", Some(ModeKind::Polymer)),
            ("Non PVC", Some(ModeKind::Polymer)),
            ("PVC", Some(ModeKind::Pvc)),
            ("Polymer PVC", Some(ModeKind::Pvc)),
            ("plastics/PVC", Some(ModeKind::Pvc)),
            ("general metals", Some(ModeKind::Metal)),
            ("Alloy", Some(ModeKind::Metal)),
            ("metal alloy", Some(ModeKind::Metal)),
            ("Kunststoff", Some(ModeKind::Polymer)),
            ("Mining", Some(ModeKind::Soil)),
            ("土壤模式", Some(ModeKind::Soil)),
            ("合金", Some(ModeKind::Metal)),
            ("metal and plastic", None),
            ("soil, heavy metals", None),
            ("PVC or metal", None),
            ("non PVC, metal", None),
            ("speed", None),
            ("apex", None),
            ("apex, PE", Some(ModeKind::Polymer)),
            ("metallic metal, PVC-free plastic PVC", None),
            ("plastic, plastic", Some(ModeKind::Polymer)),
            ("metallic", None),
            ("bimetal", None),
            ("", None),
            ("beam 2", None),
        ] {
            assert_eq!(built_in().modes.kind(text), kind, "{text}");
        }
    }

    #[test]
    fn every_kind_has_words() {
        for kind in ModeKind::ALL {
            assert!(built_in().modes.0.iter().any(|(_, known)| *known == kind), "{kind:?}");
            assert_eq!(ModeKind::from_code(kind.code()), Some(kind));
        }
        assert_eq!(ModeKind::from_code("liquid"), None);
        let lengths: Vec<usize> = built_in().modes.0.iter().map(|(word, _)| word.len()).collect();
        assert!(lengths.is_sorted_by(|a, b| a >= b));
    }

    #[test]
    fn each_mode_doubts_what_it_is_not_made_for() {
        use CalibrationDoubt::{
            MetalInPolymerMode, MetalInSoilMode, PlasticInMetalMode, PlasticInSoilMode, PvcInPolymerMode,
        };
        let nothing = Shows::default();
        let metal = Shows { metal: true, ..nothing };
        let plastic = Shows { plastic: true, ..nothing };
        let pvc = Shows { plastic: true, chlorine: true, ..nothing };
        // By polymer, PVC, metal and soil mode.
        for (class, shows, doubts) in [
            (MaterialClass::Unknown, nothing, [None; 4]),
            (MaterialClass::Composite, nothing, [None; 4]),
            (MaterialClass::Plated, nothing, [None; 4]),
            (
                MaterialClass::Unknown,
                metal,
                [Some(MetalInPolymerMode), Some(MetalInPolymerMode), None, Some(MetalInSoilMode)],
            ),
            (
                MaterialClass::Metal,
                nothing,
                [Some(MetalInPolymerMode), Some(MetalInPolymerMode), None, Some(MetalInSoilMode)],
            ),
            (
                MaterialClass::Polymer,
                metal,
                [
                    Some(MetalInPolymerMode),
                    Some(MetalInPolymerMode),
                    Some(PlasticInMetalMode),
                    Some(MetalInSoilMode),
                ],
            ),
            (
                MaterialClass::Unknown,
                plastic,
                [None, None, Some(PlasticInMetalMode), Some(PlasticInSoilMode)],
            ),
            (
                MaterialClass::Polymer,
                nothing,
                [None, None, Some(PlasticInMetalMode), Some(PlasticInSoilMode)],
            ),
            (
                MaterialClass::Polymer,
                pvc,
                [Some(PvcInPolymerMode), None, Some(PlasticInMetalMode), Some(PlasticInSoilMode)],
            ),
        ] {
            assert_eq!(ModeKind::ALL.map(|mode| mode.doubt(class, shows)), doubts, "{class:?} {shows:?}");
        }
    }
}
