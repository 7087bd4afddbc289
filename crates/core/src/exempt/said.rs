//! What a person says of exemptions: a claim, where a renewal stands, whether a child could mouth a part.

use super::entry::Group;
use crate::data_file::ProblemCode;
use crate::day::Day;
use crate::fields;
use crate::reading::codes;
use crate::substance::Substance;

/// A claim that an entry covers one substance in a material.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Claim {
    /// The entry as the law writes it: `6(c)`.
    pub entry: String,
    /// The substance, and no other.
    pub substance: Substance,
    /// What shows it (a certificate, a drawing); empty where nobody said.
    pub evidence: String,
    /// Initials of who claims; empty where nobody said.
    pub by: String,
    /// Initials of the second person; empty where nobody said.
    pub second: String,
    /// What the material is, where the claim says so.
    pub group: Option<Group>,
}

impl Claim {
    /// The fields of its act.
    pub const FIELDS: [&'static str; 6] = ["entry", "substance", "group", "evidence", "by", "second"];

    /// Reads `entry=6(c);substance=Pb;group=copper;evidence=...;by=CD;second=AB`; all but the first two may be left out.
    ///
    /// # Errors
    /// What is wrong with it.
    pub fn parse(text: &str) -> Result<Claim, ProblemCode> {
        let found = fields::read(text, &Claim::FIELDS)?;
        let field = |name| fields::field(&found, name).to_owned();
        Ok(Claim {
            entry: entry_of(&field("entry"))?,
            substance: match field("substance").as_str() {
                "" => return Err(ProblemCode::Missing),
                symbol => Substance::from_symbol(symbol).ok_or(ProblemCode::UnknownName)?,
            },
            evidence: field("evidence"),
            by: field("by"),
            second: field("second"),
            group: match field("group").as_str() {
                "" => None,
                code => Some(Group::from_code(code).ok_or(ProblemCode::UnknownName)?),
            },
        })
    }

    /// The claim as its act says it.
    pub fn to_text(&self) -> String {
        let group = self.group.map_or("", Group::code);
        let values = [&self.entry, self.substance.symbol(), group, &self.evidence, &self.by, &self.second];
        fields::join(&Claim::FIELDS.into_iter().zip(values).collect::<Vec<_>>())
    }

    /// True where two persons put initials to it, and not the first person twice (`AB`, `A.B.`). Where nobody says who
    /// claims, nobody knows that the second is another.
    pub fn is_countersigned(&self) -> bool {
        fields::two_people(&self.by, &self.second)
    }
}

/// An entry's name: no spaces, so that it can stand among other words.
fn entry_of(text: &str) -> Result<String, ProblemCode> {
    match text {
        "" => Err(ProblemCode::Missing),
        name if name.contains(char::is_whitespace) => Err(ProblemCode::UnknownName),
        name => Ok(name.to_owned()),
    }
}

codes! {
    /// Where the renewal of an entry stands.
    RenewalState {
        /// Applied for, and the Commission has not decided.
        Pending => "pending",
        /// Refused.
        Refused => "refused",
        /// Nobody asked for it.
        NotFiled => "not_filed",
    }
}

/// What a person says of the renewal of an entry.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Renewal {
    /// The entry.
    pub entry: String,
    /// Where it stands.
    pub state: RenewalState,
    /// Where that is written; empty where nobody said.
    pub source: String,
    /// The day of the application; `None` where nobody said.
    pub date: Option<Day>,
}

impl Renewal {
    /// The fields of its act.
    pub const FIELDS: [&'static str; 4] = ["entry", "state", "source", "date"];

    /// Reads `entry=6(c);state=pending;source=...;date=2025-12-01`; the last two may be left out.
    ///
    /// # Errors
    /// What is wrong with it.
    pub fn parse(text: &str) -> Result<Renewal, ProblemCode> {
        let found = fields::read(text, &Renewal::FIELDS)?;
        let field = |name| fields::field(&found, name);
        let state = field("state");
        if state.is_empty() {
            return Err(ProblemCode::Missing);
        }
        Ok(Renewal {
            entry: entry_of(field("entry"))?,
            state: *RenewalState::ALL
                .iter()
                .find(|known| known.code() == state)
                .ok_or(ProblemCode::UnknownName)?,
            source: field("source").to_owned(),
            date: match field("date") {
                "" => None,
                date => Some(Day::parse(date).ok_or(ProblemCode::OutOfRange)?),
            },
        })
    }
}

codes! {
    /// The answer to the question of starred entries: could a child put the part, or one that comes off it, in its mouth?
    Mouthing {
        /// No, or the product is not for the general public.
        Cannot => "cannot",
        /// Yes.
        Can => "can",
        /// It could, and a test shows that no more lead is released than the entry allows.
        ReleaseShown => "release_shown",
    }
}

impl Mouthing {
    /// The answer of a code.
    pub fn from_code(code: &str) -> Option<Mouthing> {
        Mouthing::ALL.iter().copied().find(|answer| answer.code() == code)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_claim_names_its_entry_and_substance() {
        let claim =
            Claim::parse("entry=6(c);substance=Pb;group=copper;evidence=EV-1;by=CD;second=AB").unwrap();
        assert_eq!((claim.entry.as_str(), claim.substance), ("6(c)", Substance::Pb));
        assert_eq!((claim.evidence.as_str(), claim.group), ("EV-1", Some(Group::Copper)));
        assert_eq!(claim.to_text(), "entry=6(c);substance=Pb;group=copper;evidence=EV-1;by=CD;second=AB");
        let bare = Claim::parse("entry=6(c);substance=Pb").unwrap();
        assert_eq!(bare.to_text(), "entry=6(c);substance=Pb");
        assert_eq!((bare.evidence.as_str(), bare.second.as_str(), bare.group), ("", "", None));
        for (text, problem) in [
            ("substance=Pb", ProblemCode::Missing),
            ("entry=6(c)", ProblemCode::Missing),
            ("entry=6 (c);substance=Pb", ProblemCode::UnknownName),
            ("entry=6(c);substance=Au", ProblemCode::UnknownName),
            ("entry=6(c);substance=Pb;group=wood", ProblemCode::UnknownName),
            ("entry=6(c);substance=Pb;colour=red", ProblemCode::UnknownName),
        ] {
            assert_eq!(Claim::parse(text), Err(problem), "{text}");
        }
    }

    #[test]
    fn nobody_signs_for_a_second_person() {
        let signed =
            |text: &str| Claim::parse(&format!("entry=6(c);substance=Pb{text}")).unwrap().is_countersigned();
        assert!(signed(";by=CD;second=AB"));
        assert!(!signed(";second=AB"));
        assert!(!signed(";by=AB;second=ab"));
        assert!(!signed(";by=A.B.;second=AB"));
        assert!(!signed(";by=AB;second=-"));
        assert!(!signed(";by=AB"));
        assert!(!signed(""));
    }

    #[test]
    fn a_renewal_names_its_entry_and_state() {
        let said = |text: &str| Renewal::parse(&format!("entry=6(c);state=pending{text}"));
        let whole = said(";source=list of requests;date=2025-12-01").unwrap();
        assert_eq!((whole.source.as_str(), whole.date), ("list of requests", Day::new(2025, 12, 1)));
        assert_eq!(said("").unwrap().date, None);
        assert_eq!(said(";date=2026-02-30"), Err(ProblemCode::OutOfRange));
        for (text, problem) in [
            ("entry=6(c)", ProblemCode::Missing),
            ("state=pending", ProblemCode::Missing),
            ("entry=6(c);state=perhaps", ProblemCode::UnknownName),
            ("entry=6(c);state=pending;odd=1", ProblemCode::UnknownName),
        ] {
            assert_eq!(Renewal::parse(text), Err(problem), "{text}");
        }
        for state in RenewalState::ALL {
            let text = format!("entry=7(a);state={}", state.code());
            assert_eq!(Renewal::parse(&text).unwrap().state, *state);
        }
    }

    #[test]
    fn answers_have_codes() {
        for answer in Mouthing::ALL {
            assert_eq!(Mouthing::from_code(answer.code()), Some(*answer));
        }
        assert_eq!(Mouthing::from_code("maybe"), None);
    }
}
