//! Material classes: what kind of thing the beam met, which decides the band.

/// The class of a homogeneous material.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum MaterialClass {
    /// Plastics, rubber, resins.
    Polymer,
    /// Metals and alloys, bare.
    Metal,
    /// Composites and electronics: parts that cannot be taken apart into materials.
    Composite,
    /// A plated, coated or passivated item: the beam averages a layer and what lies under it.
    Plated,
    /// Not stated, not understood, or a class the rule book has no bands for.
    Unknown,
}

impl MaterialClass {
    /// All classes.
    pub const ALL: [MaterialClass; 5] = [
        MaterialClass::Polymer,
        MaterialClass::Metal,
        MaterialClass::Composite,
        MaterialClass::Plated,
        MaterialClass::Unknown,
    ];

    /// The classes a screening book has bands for; an unknown class is judged under each.
    pub const BANDED: [MaterialClass; 3] =
        [MaterialClass::Polymer, MaterialClass::Metal, MaterialClass::Composite];

    /// The code used in findings and files.
    pub const fn code(self) -> &'static str {
        match self {
            MaterialClass::Polymer => "polymer",
            MaterialClass::Metal => "metal",
            MaterialClass::Composite => "composite",
            MaterialClass::Plated => "plated",
            MaterialClass::Unknown => "unknown",
        }
    }

    /// The class of a code.
    pub fn from_code(code: &str) -> Option<MaterialClass> {
        MaterialClass::ALL.into_iter().find(|class| class.code() == code)
    }

    /// The class a word in a file declares.
    ///
    /// Words for a class only: a material's own name (`brass`, `ABS`) is not one, since a name says nothing about a
    /// layer on top. `Some(Unknown)` is a word that is understood but has no bands (glass, ceramic).
    pub fn from_word(word: &str) -> Option<MaterialClass> {
        match said_by(word)? {
            GLASS_OR_CERAMIC => Some(MaterialClass::Unknown),
            class => MaterialClass::from_code(class),
        }
    }
}

/// One line a word: its class, and the word (its head says what is in it).
const CLASS_WORDS: &str = include_str!("../data/class_words.tsv");

const GLASS_OR_CERAMIC: &str = "glass_ceramic";

/// Whether a word for a class says glass or ceramic.
pub fn is_glass_or_ceramic(word: &str) -> bool {
    said_by(word) == Some(GLASS_OR_CERAMIC)
}

fn said_by(word: &str) -> Option<&'static str> {
    let folded = word.trim().to_lowercase();
    class_words().find(|(_, known)| *known == folded).map(|(class, _)| class)
}

fn class_words() -> impl Iterator<Item = (&'static str, &'static str)> {
    CLASS_WORDS.lines().filter(|line| !line.starts_with('#')).filter_map(|line| line.split_once('\t'))
}

/// Where the class of a reading came from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum ClassFrom {
    /// The file's own class column.
    Declared,
    /// A person's setting.
    Setting,
    /// Nobody said.
    NotStated,
    /// The file says a word that is no class here.
    NotUnderstood,
    /// The file says a class the rule book has no bands for.
    NotInBook,
    /// Stated, and what was measured flatly contradicts it.
    Contested,
}

impl ClassFrom {
    /// The code used in findings.
    pub const fn code(self) -> &'static str {
        match self {
            ClassFrom::Declared => "declared",
            ClassFrom::Setting => "setting",
            ClassFrom::NotStated => "not_stated",
            ClassFrom::NotUnderstood => "not_understood",
            ClassFrom::NotInBook => "not_in_book",
            ClassFrom::Contested => "contested",
        }
    }

    /// All of them, for the contract's list.
    pub const ALL: [ClassFrom; 6] = [
        ClassFrom::Declared,
        ClassFrom::Setting,
        ClassFrom::NotStated,
        ClassFrom::NotUnderstood,
        ClassFrom::NotInBook,
        ClassFrom::Contested,
    ];
}

#[cfg(test)]
mod tests {
    use super::{MaterialClass, class_words};
    use MaterialClass::{Composite, Metal, Plated, Polymer, Unknown};

    #[test]
    fn a_class_is_understood_in_eight_languages_and_a_material_is_none() {
        for (class, words) in [
            (Polymer, "Plastic|KUNSTSTOFF|plastique|plástico|plastica|塑料|樹脂|플라스틱"),
            (Metal, "metal alloy|Legierung|alliage|aleación|lega|合金|금속"),
            (
                Composite,
                "Electronics|Leiterplatte|circuit imprimé|componente electrónico|电子元件|電子部品|전자부품",
            ),
            (Plated, " plated |verzinkt|revêtu|galvanizado|zincato|镀层|めっき|도금"),
            (Unknown, "glass|Keramik|verre|vidrio|vetro|陶瓷|ガラス|유리"),
        ] {
            for word in words.split('|') {
                assert_eq!(MaterialClass::from_word(word), Some(class), "{word}");
            }
        }
        // A name says nothing of a layer on top; two classes at once are none.
        for other in ["", "brass", "Messing", "ABS", "黄铜", "metal/plastic", "Metall, verzinkt", "# English"]
        {
            assert_eq!(MaterialClass::from_word(other), None, "{other}");
        }
    }

    #[test]
    fn every_word_stands_once_in_small_letters_with_a_class_that_there_is() {
        let all: Vec<_> = class_words().collect();
        for (at, (class, word)) in all.iter().enumerate() {
            assert!(MaterialClass::from_word(word).is_some(), "{class} {word}");
            assert_eq!(word.trim().to_lowercase(), *word);
            assert!(all.iter().take(at).all(|(_, before)| before != word), "{word} stands twice");
        }
        assert!(all.len() > 200);
    }
}
