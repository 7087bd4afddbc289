//! Words that name an element: symbols, names in several languages, oxides, isotopes; and symbols that lost their case.

use plumbline_core::oxide::Oxide;
use plumbline_core::substance::Element;

use super::folding;
use super::vocabulary;

/// What a column's numbers are mass fractions of.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct Of {
    pub(crate) element: Element,
    pub(crate) oxide: Option<Oxide>,
}

/// How a word names it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum By {
    Symbol,
    Name,
    Oxide,
    Isotope,
}

/// The element of a symbol as chemistry writes it. Past uranium nothing is measured, and `No` is a number before it is
/// nobelium.
pub(crate) fn symbol(token: &str) -> Option<Element> {
    Element::from_symbol(token).filter(|element| element.atomic_number() <= 92)
}

/// What one word names, and how.
pub(crate) fn named(token: &str) -> Option<(Of, By)> {
    let plain = |element| Of { element, oxide: None };
    if let Some(element) = symbol(token) {
        return Some((plain(element), By::Symbol));
    }
    if token.len() > 1
        && let Some(element) = vocabulary::element_named(&folding::word(token))
    {
        return Some((plain(element), By::Name));
    }
    if let Some(oxide) = oxide(token) {
        return Some((Of { element: oxide.element(), oxide: Some(oxide) }, By::Oxide));
    }
    isotope(token).map(|element| (plain(element), By::Isotope))
}

/// An oxide, also where it is marked as the sum of the element's oxides (`FeOT`, `Fe2O3*`).
///
/// An oxide of an element of one letter has a digit: `SO`, `PO` and `WO` are orders before they are oxides.
fn oxide(token: &str) -> Option<Oxide> {
    let formula = token.trim_end_matches(['*', 'T', 't']);
    let letters = formula.chars().take_while(char::is_ascii_alphabetic).count();
    let digit = formula.contains(|c: char| c.is_ascii_digit());
    Oxide::from_formula(formula).filter(|oxide| digit || letters > 2 && oxide.element().symbol().len() == 2)
}

/// The element of an isotope, `Pb208` or `208Pb`: only two-letter symbols from mass 40 on, since `C12` is a well and
/// `B10` a box, and only masses an element of that number can have.
fn isotope(token: &str) -> Option<Element> {
    let digits = |text: &str| !text.is_empty() && text.bytes().all(|byte| byte.is_ascii_digit());
    let (name, mass) = if let Some(at) = token.find(|c: char| c.is_ascii_alphabetic()).filter(|at| *at > 0) {
        let (mass, name) = token.split_at(at);
        (name, mass)
    } else {
        token.split_at(token.find(|c: char| c.is_ascii_digit())?)
    };
    let element = symbol(name).filter(|_| name.len() == 2 && digits(mass))?;
    let (mass, number) =
        (mass.parse::<u32>().ok().filter(|mass| *mass < 1000)?, u32::from(element.atomic_number()));
    // Between twice the protons and 2.7 times: 40 is calcium's lightest, 238 uranium's heaviest.
    (mass >= 40 && mass >= 2 * number && mass * 10 <= number * 27).then_some(element)
}

/// True for an X-ray line behind a symbol: `K`, `Ka`, `Kα1`, `L`, `Lb2`, `M`.
pub(crate) fn is_xray_line(token: &str) -> bool {
    let Some(rest) = token.strip_prefix(['K', 'L', 'M']) else { return false };
    let series = ["alpha", "beta", "a", "b", "α", "β", "A", "B"];
    let number = series.iter().find_map(|name| rest.strip_prefix(name)).unwrap_or(rest);
    number.is_empty()
        || number.len() == 1 && number.bytes().all(|byte| (b'1'..=b'6').contains(&byte)) && number != rest
}

/// A symbol and the X-ray line glued to it: `PbLa1`, `CrKα`. The line must name its series, since `CdK` may be a code.
pub(crate) fn with_line(token: &str) -> Option<(&str, &str)> {
    let at = token.char_indices().skip(1).find(|(_, c)| matches!(c, 'K' | 'L' | 'M'))?.0;
    let (name, line) = token.split_at(at);
    (symbol(name).is_some() && line.chars().count() > 1 && is_xray_line(line)).then_some((name, line))
}

/// The cases a symbol is found in when it isn't chemistry's.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum Casing {
    Upper,
    Lower,
}

/// A symbol or an oxide in one case throughout, as chemistry writes it.
pub(crate) fn in_chemistry_case(token: &str) -> Option<(String, Casing)> {
    let letters = || token.chars().filter(char::is_ascii_alphabetic);
    if !token.is_ascii() || token.len() > 8 || letters().count() == 0 {
        return None;
    }
    let casing = if letters().all(|c| c.is_ascii_uppercase()) {
        Casing::Upper
    } else if letters().all(|c| c.is_ascii_lowercase()) {
        Casing::Lower
    } else {
        return None;
    };
    let title = |text: &str| {
        let mut chars = text.chars();
        chars
            .next()
            .map(|first| first.to_ascii_uppercase())
            .into_iter()
            .chain(chars.map(|c| c.to_ascii_lowercase()))
            .collect::<String>()
    };
    let as_symbol = title(token);
    if token.len() <= 2 && symbol(&as_symbol).is_some() {
        return Some((as_symbol, casing));
    }
    let body = token.strip_suffix(['T', 't']).unwrap_or(token);
    let o_at = body.rfind(['O', 'o']).filter(|at| *at > 0)?;
    let (head, tail) = body.split_at(o_at);
    let formula = format!("{}{}", title(head), tail.to_ascii_uppercase());
    oxide(&formula).map(|_| (formula, casing))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn element(token: &str) -> Option<&'static str> {
        named(token).filter(|(of, _)| of.oxide.is_none()).map(|(of, _)| of.element.symbol())
    }

    #[test]
    fn the_six_elements_are_known_by_their_names_in_many_languages() {
        for (symbol, names) in [
            ("Cd", vec!["Cadmium", "cadmium", "Kadmium", "cadmio", "镉", "鎘", "カドミウム", "카드뮴"]),
            ("Pb", vec!["Lead", "Blei", "plomb", "Plomo", "铅", "鉛", "납"]),
            ("Hg", vec!["Mercury", "Quecksilber", "mercure", "mercurio", "汞", "水银", "水銀", "수은"]),
            ("Cr", vec!["Chromium", "Chrom", "chrome", "cromo", "铬", "鉻", "クロム", "크롬", "크로뮴"]),
            ("Br", vec!["Bromine", "Brom", "brome", "bromo", "溴", "臭素", "브롬", "브로민"]),
            ("Cl", vec!["Chlorine", "Chlor", "chlore", "cloro", "氯", "塩素", "염소"]),
            ("Sb", vec!["Antimony", "Antimon", "antimoine", "antimonio", "锑", "銻", "アンチモン", "안티몬"]),
            ("Sn", vec!["Tin", "Zinn", "étain", "etain", "estaño", "锡", "錫", "スズ"]),
        ] {
            for name in names {
                assert_eq!(element(name), Some(symbol), "{name}");
            }
        }
        for other in ["or", "radio", "주석", "No", "Am", "Leads", "化", "六价铬"] {
            assert_eq!(element(other), None, "{other}");
        }
    }

    #[test]
    fn oxides_are_no_orders_and_no_gases() {
        for formula in ["Cr2O3", "PbO", "FeOT", "Fe2O3*", "SiO2", "K2O", "SO3", "CdO", "Fe2O3t"] {
            assert!(matches!(named(formula), Some((_, By::Oxide))), "{formula}");
        }
        for other in ["CO", "PO", "SO", "WO", "NO", "IO", "CO2", "H2O", "LOI", "Total"] {
            assert!(!matches!(named(other), Some((_, By::Oxide))), "{other}");
        }
    }

    #[test]
    fn isotopes_are_masses_an_element_can_have() {
        for (token, symbol) in
            [("Pb208", "Pb"), ("208Pb", "Pb"), ("Cr52", "Cr"), ("111Cd", "Cd"), ("Ca40", "Ca")]
        {
            assert_eq!(element(token), Some(symbol), "{token}");
        }
        for token in ["C12", "B10", "Pb2", "Cr6", "Cd500", "K40", "40", "Pb"] {
            assert!(isotope(token).is_none(), "{token}");
        }
    }

    #[test]
    fn lines_stand_behind_a_symbol() {
        for line in ["K", "L", "M", "Ka", "Kα", "Kα1", "La", "Lb2", "LA", "Kalpha", "Lbeta1", "Ma"] {
            assert!(is_xray_line(line), "{line}");
        }
        for other in ["Mg", "Lu", "Kx", "K12", "k", "Lα9", "L1", "MA2B"] {
            assert!(!is_xray_line(other), "{other}");
        }
        assert_eq!(with_line("PbLa1"), Some(("Pb", "La1")));
        assert_eq!(with_line("CrKα"), Some(("Cr", "Kα")));
        for other in ["CdK", "PbX", "Kalium", "LaLa", "SnLimit"] {
            assert!(with_line(other).is_none() || other == "LaLa", "{other}");
        }
    }

    #[test]
    fn a_symbol_in_one_case_throughout_is_put_into_chemistrys() {
        for (token, written) in [
            ("PB", Some("Pb")),
            ("pb", Some("Pb")),
            ("CR2O3", Some("Cr2O3")),
            ("cr2o3", Some("Cr2O3")),
            ("SIO2", Some("SiO2")),
            ("PBO", Some("PbO")),
            ("FEOT", Some("FeO")),
            ("pB", None),
            ("lot", None),
            ("pox", None),
        ] {
            assert_eq!(in_chemistry_case(token).map(|(text, _)| text).as_deref(), written, "{token}");
        }
    }
}
