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
        let folded = word.trim().to_lowercase();
        CLASS_WORDS.iter().find(|(known, _)| *known == folded).map(|(_, class)| *class)
    }
}

/// Words of the screening table's headings and their everyday synonyms (common practice, no source).
const CLASS_WORDS: [(&str, MaterialClass); 40] = [
    ("polymer", MaterialClass::Polymer),
    ("polymers", MaterialClass::Polymer),
    ("plastic", MaterialClass::Polymer),
    ("plastics", MaterialClass::Polymer),
    ("rubber", MaterialClass::Polymer),
    ("elastomer", MaterialClass::Polymer),
    ("metal", MaterialClass::Metal),
    ("metals", MaterialClass::Metal),
    ("alloy", MaterialClass::Metal),
    ("alloys", MaterialClass::Metal),
    ("metal alloy", MaterialClass::Metal),
    ("composite", MaterialClass::Composite),
    ("composites", MaterialClass::Composite),
    ("composite material", MaterialClass::Composite),
    ("electronics", MaterialClass::Composite),
    ("electronic", MaterialClass::Composite),
    ("electronic component", MaterialClass::Composite),
    ("electronic components", MaterialClass::Composite),
    ("composite/electronics", MaterialClass::Composite),
    ("composite / electronics", MaterialClass::Composite),
    ("electronic assembly", MaterialClass::Composite),
    ("pcb", MaterialClass::Composite),
    ("pcba", MaterialClass::Composite),
    ("printed circuit board", MaterialClass::Composite),
    ("plated", MaterialClass::Plated),
    ("plating", MaterialClass::Plated),
    ("coated", MaterialClass::Plated),
    ("coating", MaterialClass::Plated),
    ("passivated", MaterialClass::Plated),
    ("plated metal", MaterialClass::Plated),
    ("plated/coated", MaterialClass::Plated),
    ("plated or coated", MaterialClass::Plated),
    ("coated metal", MaterialClass::Plated),
    ("painted", MaterialClass::Plated),
    ("metal plating", MaterialClass::Plated),
    ("glass", MaterialClass::Unknown),
    ("ceramic", MaterialClass::Unknown),
    ("ceramics", MaterialClass::Unknown),
    ("glass/ceramic", MaterialClass::Unknown),
    ("unknown", MaterialClass::Unknown),
];

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
