//! Certified values of check standards: what a check reading is held against.

use crate::data_file::ProblemCode;
use crate::day::Day;
use crate::fields;
use crate::material::MaterialClass;
use crate::quantity::{self, MassFraction, Sigma, SigmaMultiple};
use crate::substance::Element;

/// One certified value of one check standard.
///
/// # Units
/// Value and expanded uncertainty in mg/kg; U = k u, with k as the certificate states it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Certificate {
    /// The sample id that check readings carry.
    pub sample: String,
    /// The element.
    pub element: Element,
    /// The certified value.
    pub value: MassFraction,
    /// Its expanded uncertainty U.
    pub expanded: MassFraction,
    /// The k of U.
    pub k: SigmaMultiple,
    /// The certificate's own number.
    pub id: String,
    /// The last day it is good for; `None` where it states none.
    pub expires: Option<Day>,
    /// The class of the standard's matrix; `None` where only the readings say it.
    pub class: Option<MaterialClass>,
}

impl Certificate {
    /// The fields of its act.
    pub const FIELDS: [&'static str; 8] = ["sample", "element", "value", "u", "k", "id", "expires", "class"];

    /// Reads `sample=CHK-1;element=Pb;value=965.5 mg/kg;u=6.6 mg/kg;k=2;id=...;expires=2028-01-31;class=polymer`; the last
    /// two may be left out. A certificate without an uncertainty certifies nothing and is refused.
    ///
    /// # Errors
    /// What is wrong with it.
    pub fn parse(text: &str) -> Result<Certificate, ProblemCode> {
        let found = fields::read(text, &Certificate::FIELDS)?;
        let needed = |name| match fields::field(&found, name) {
            "" => Err(ProblemCode::Missing),
            text => Ok(text),
        };
        let amount = |name| quantity::parse_with_unit(needed(name)?).map_err(|_| ProblemCode::NotAQuantity);
        let (value, expanded) = (amount("value")?, amount("u")?);
        let k = SigmaMultiple::from_text(needed("k")?).ok_or(ProblemCode::OutOfRange)?;
        let possible = expanded > MassFraction::ZERO && Sigma::is_possible(expanded, k);
        if value < MassFraction::ZERO || !possible {
            return Err(ProblemCode::OutOfRange);
        }
        Ok(Certificate {
            sample: needed("sample")?.to_owned(),
            element: Element::from_symbol(needed("element")?).ok_or(ProblemCode::UnknownName)?,
            value,
            expanded,
            k,
            id: needed("id")?.to_owned(),
            expires: match fields::field(&found, "expires") {
                "" => None,
                day => Some(Day::parse(day).ok_or(ProblemCode::OutOfRange)?),
            },
            class: match fields::field(&found, "class") {
                "" => None,
                class => Some(MaterialClass::from_code(class).ok_or(ProblemCode::UnknownName)?),
            },
        })
    }

    /// Its standard uncertainty U / k.
    pub fn sigma(&self) -> Option<Sigma> {
        Sigma::from_printed(self.expanded, self.k)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Certified lead of NMIJ CRM 8123-a (PVC pellets, high level): 965.5 ± 6.6 mg/kg, k = 2, as its certificate states.
    const LEAD: &str = "sample=CHK-1;element=Pb;value=965.5 mg/kg;u=6.6 mg/kg;k=2;id=8123-a;class=polymer";

    #[test]
    fn a_certificate_states_value_uncertainty_k_and_number() {
        let lead = Certificate::parse(LEAD).unwrap();
        assert_eq!((lead.value.to_string(), lead.expanded.to_string()), ("965.5".into(), "6.6".into()));
        assert_eq!(lead.sigma().unwrap().to_mass_fraction().to_string(), "3.3");
        assert_eq!((lead.expires, lead.class), (None, Some(MaterialClass::Polymer)));
        let dated = Certificate::parse(&format!("{LEAD};expires=2028-01-31")).unwrap();
        assert_eq!(dated.expires, Day::new(2028, 1, 31));
    }

    #[test]
    fn a_certificate_without_a_part_of_it_is_refused() {
        for (from, to, problem) in [
            ("sample=CHK-1;", "", ProblemCode::Missing),
            ("element=Pb", "element=Qq", ProblemCode::UnknownName),
            ("value=965.5 mg/kg", "value=965.5", ProblemCode::NotAQuantity),
            ("u=6.6 mg/kg;", "", ProblemCode::Missing),
            ("u=6.6 mg/kg", "u=0 mg/kg", ProblemCode::OutOfRange),
            ("k=2;", "", ProblemCode::Missing),
            ("k=2", "k=9", ProblemCode::OutOfRange),
            ("id=8123-a;", "", ProblemCode::Missing),
            ("class=polymer", "class=jelly", ProblemCode::UnknownName),
            ("class=polymer", "expires=2028-13-01", ProblemCode::OutOfRange),
        ] {
            assert_eq!(Certificate::parse(&LEAD.replace(from, to)), Err(problem), "{from} -> {to}");
        }
    }
}
