//! What only a person can state for a report: who issues it and for whom, how the items came and looked, who signs.
//!
//! No such statement moves an outcome or a disposition; a report prints each, and says where one is missing.

use crate::data_file::ProblemCode;
use crate::day::Day;
use crate::fields;

/// The fields of a statement: which there are, and whether the first has to be there. A field called `date` is a day.
#[derive(Clone, Copy, Debug)]
pub struct Form {
    /// The fields.
    pub fields: &'static [&'static str],
    /// True where the first says nothing if it is left out; else one of them is enough.
    pub first_needed: bool,
}

/// Who issues the report (ISO/IEC 17025:2017, 7.8.2.1 b).
pub const ISSUER: Form = Form { fields: &["name", "address"], first_needed: true };
/// For whom (7.8.2.1 e).
pub const CUSTOMER: Form = Form { fields: &["name", "contact"], first_needed: true };
/// How the items were taken (7.8.2.1 k, 7.8.5).
pub const SAMPLED: Form = Form { fields: &["date", "by", "place", "method"], first_needed: false };
/// What the items are and how they looked (7.8.2.1 g).
pub const ITEM: Form = Form { fields: &["description", "condition"], first_needed: false };
/// Who authorises the report (7.8.2.1 o), and the second person.
pub const AUTHORISED: Form = Form { fields: &["by", "second"], first_needed: true };

impl Form {
    /// Checks `name=Fernbrook Controls;address=goods-in`.
    ///
    /// # Errors
    /// What is wrong with it: an odd or repeated field, nothing said, or no day where a day belongs.
    pub fn check(&self, text: &str) -> Result<(), ProblemCode> {
        let found = fields::read(text, self.fields)?;
        let said = |name: &str| !fields::field(&found, name).is_empty();
        let enough = match self.fields.first() {
            Some(first) if self.first_needed => said(first),
            _ => self.fields.iter().any(|name| said(name)),
        };
        if !enough {
            return Err(ProblemCode::Missing);
        }
        match fields::field(&found, "date") {
            "" => Ok(()),
            day => Day::parse(day).map(|_| ()).ok_or(ProblemCode::OutOfRange),
        }
    }
}

/// One field of a statement; empty where it was left out.
pub fn field(text: &str, name: &str) -> String {
    fields::split(text)
        .into_iter()
        .find(|(known, _)| known == name)
        .map(|(_, value)| value)
        .unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_statement_says_what_it_has_to_and_nothing_odd() {
        assert_eq!(ISSUER.check("name=Fernbrook Controls;address=goods-in\\; gate 2"), Ok(()));
        assert_eq!(ISSUER.check("address=goods-in"), Err(ProblemCode::Missing));
        assert_eq!(ISSUER.check(""), Err(ProblemCode::Missing));
        assert_eq!(ISSUER.check("name=x;phone=1"), Err(ProblemCode::UnknownName));
        assert_eq!(ITEM.check("condition=two bags torn"), Ok(()));
        assert_eq!(ITEM.check("description="), Err(ProblemCode::Missing));
        assert_eq!(SAMPLED.check("by=MK;date=2026-11-17"), Ok(()));
        assert_eq!(SAMPLED.check("date=last week"), Err(ProblemCode::OutOfRange));
        assert_eq!(AUTHORISED.check("second=TS"), Err(ProblemCode::Missing));
        assert_eq!(CUSTOMER.check("name=a;name=b"), Err(ProblemCode::Twice));
    }

    #[test]
    fn a_field_comes_back_as_it_was_said() {
        assert_eq!(
            field("name=Fernbrook Controls;address=goods-in\\; gate 2", "address"),
            "goods-in; gate 2"
        );
        assert_eq!(field("name=Fernbrook Controls", "address"), "");
    }
}
