//! Product categories of Directive 2011/65/EU, Annex I, with the two that exemptions divide further.

/// A set of product categories. A product's own category may be a set too: "9" alone leaves open which half of it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Categories(u16);

/// Codes and what they hold: 8 is divided into in vitro diagnostic (`8ivd`) and other medical (`8o`), 9 into industrial
/// (`9i`) and other monitoring and control (`9o`).
const CODES: [(&str, u16); 15] = [
    ("1", 1),
    ("2", 1 << 1),
    ("3", 1 << 2),
    ("4", 1 << 3),
    ("5", 1 << 4),
    ("6", 1 << 5),
    ("7", 1 << 6),
    ("8o", 1 << 7),
    ("8ivd", 1 << 8),
    ("8", 0b11 << 7),
    ("9o", 1 << 9),
    ("9i", 1 << 10),
    ("9", 0b11 << 9),
    ("10", 1 << 11),
    ("11", 1 << 12),
];

/// How a product's category stands to those of an entry.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum CategoryFit {
    /// The entry covers it.
    Covered,
    /// It does not.
    NotCovered,
    /// It covers one half of a divided category, and nobody said which half the product is of.
    Unclear,
}

impl Categories {
    /// Every category.
    pub const ALL: Categories = Categories((1 << 13) - 1);

    /// The category of a product by its code: `1` to `11`, `8ivd`, `8o`, `9i`, `9o`.
    pub fn from_code(code: &str) -> Option<Categories> {
        CODES.iter().find(|(known, _)| *known == code).map(|(_, bits)| Categories(*bits))
    }

    /// Both sets together.
    #[must_use]
    pub const fn and(self, other: Categories) -> Categories {
        Categories(self.0 | other.0)
    }

    /// How a product of this category stands to the categories of an entry.
    pub const fn fit(self, entry: Categories) -> CategoryFit {
        match self.0 & entry.0 {
            0 => CategoryFit::NotCovered,
            both if both == self.0 => CategoryFit::Covered,
            _ => CategoryFit::Unclear,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn of(codes: &[&str]) -> Categories {
        codes.iter().map(|code| Categories::from_code(code).unwrap()).reduce(Categories::and).unwrap()
    }

    #[test]
    fn each_code_is_a_set_of_its_own() {
        for (code, bits) in CODES {
            assert_eq!(Categories::from_code(code).unwrap().0, bits);
            let overlaps = CODES.iter().filter(|(_, other)| other & bits != 0).count();
            let expected = match code {
                "8" | "9" => 3,
                "8o" | "8ivd" | "9o" | "9i" => 2,
                _ => 1,
            };
            assert_eq!(overlaps, expected, "{code}");
        }
        for code in ["", "0", "12", "8x", "9I", "all", "01", " 1"] {
            assert_eq!(Categories::from_code(code), None, "{code}");
        }
        let every = CODES.map(|(code, _)| code);
        assert_eq!(of(&every), Categories::ALL);
    }

    #[test]
    fn a_divided_category_is_covered_whole_or_it_is_unclear() {
        let fit = |code: &str, entry: &[&str]| Categories::from_code(code).unwrap().fit(of(entry));
        assert_eq!(fit("9", &["9i", "11"]), CategoryFit::Unclear);
        assert_eq!(fit("9i", &["9i", "11"]), CategoryFit::Covered);
        assert_eq!(fit("9o", &["9i", "11"]), CategoryFit::NotCovered);
        assert_eq!(fit("9", &["9i", "9o"]), CategoryFit::Covered);
        assert_eq!(fit("8ivd", &["1", "8"]), CategoryFit::Covered);
        assert_eq!(fit("8", &["8o"]), CategoryFit::Unclear);
        assert_eq!(fit("8", &["9"]), CategoryFit::NotCovered);
        assert_eq!(fit("4", &["1", "2"]), CategoryFit::NotCovered);
        for (code, _) in CODES {
            assert_eq!(fit(code, &CODES.map(|(code, _)| code)), CategoryFit::Covered);
        }
    }
}
