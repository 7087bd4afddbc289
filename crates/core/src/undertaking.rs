//! What people take upon themselves: lifting a hold with two initials, how a hold ends, whether a limit applies.

use crate::data_file::ProblemCode;
use crate::day::Day;
use crate::fields;

/// A hold that two people lift. Only a hold for X, trust or sampling can be lifted; OL never.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Lift {
    /// The code of the lot reason.
    pub reason: String,
    /// What the reason is about (`Pb`); empty: all of that code.
    pub about: String,
    /// Why it is lifted.
    pub why: String,
    /// Initials of the first person.
    pub by: String,
    /// Initials of the second person.
    pub second: String,
}

impl Lift {
    /// The fields of its act.
    pub const FIELDS: [&'static str; 5] = ["reason", "about", "why", "by", "second"];

    /// Reads `reason=undecided;about=Pb;why=...;by=AB;second=CD`. Reason and why must be there.
    ///
    /// # Errors
    /// What is wrong with it.
    pub fn parse(text: &str) -> Result<Lift, ProblemCode> {
        let found = fields::read(text, &Lift::FIELDS)?;
        let field = |name| fields::field(&found, name).to_owned();
        let lift = Lift {
            reason: field("reason"),
            about: field("about"),
            why: field("why"),
            by: field("by"),
            second: field("second"),
        };
        if lift.reason.is_empty() || fields::says_nothing(&lift.why) {
            return Err(ProblemCode::Missing);
        }
        Ok(lift)
    }

    /// The act's value.
    pub fn to_text(&self) -> String {
        let values = [&self.reason, &self.about, &self.why, &self.by, &self.second].map(String::as_str);
        fields::join(&Lift::FIELDS.into_iter().zip(values).collect::<Vec<_>>())
    }

    /// True where two people put their initials to it.
    pub fn is_countersigned(&self) -> bool {
        fields::two_people(&self.by, &self.second)
    }
}

/// Who ends a hold, by when, and how much waits for it.
#[derive(Clone, Debug, PartialEq, Eq, Default)]
pub struct HoldEnds {
    /// Who brings what is missing; empty where nobody said.
    pub who: String,
    /// By which day; `None` where nobody said.
    pub until: Option<Day>,
    /// How many units are kept apart; `None` where nobody said.
    pub quarantined: Option<u64>,
    /// Where they are kept; empty where nobody said.
    pub place: String,
}

impl HoldEnds {
    /// The fields of its act.
    pub const FIELDS: [&'static str; 4] = ["who", "until", "quarantined", "place"];

    /// Reads `who=incoming inspection;until=2026-12-05;quarantined=480;place=cage 2`; each may be left out, not all.
    ///
    /// # Errors
    /// What is wrong with it.
    pub fn parse(text: &str) -> Result<HoldEnds, ProblemCode> {
        let found = fields::read(text, &HoldEnds::FIELDS)?;
        let field = |name| fields::field(&found, name);
        let ends = HoldEnds {
            who: field("who").to_owned(),
            until: match field("until") {
                "" => None,
                day => Some(Day::parse(day).ok_or(ProblemCode::OutOfRange)?),
            },
            quarantined: match field("quarantined") {
                "" => None,
                units => Some(units.parse().map_err(|_| ProblemCode::OutOfRange)?),
            },
            place: field("place").to_owned(),
        };
        if ends == HoldEnds::default() { Err(ProblemCode::Missing) } else { Ok(ends) }
    }
}

/// A person's answer to the question of a limit.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LimitAnswer {
    /// The book's id.
    pub book: String,
    /// The row's id.
    pub row: String,
    /// Yes: the limit applies.
    pub applies: bool,
}

impl LimitAnswer {
    /// The fields of its act.
    pub const FIELDS: [&'static str; 3] = ["book", "row", "answer"];

    /// Reads `book=eu-reach-xvii-63;row=mouthing;answer=yes`.
    ///
    /// # Errors
    /// What is wrong with it.
    pub fn parse(text: &str) -> Result<LimitAnswer, ProblemCode> {
        let found = fields::read(text, &LimitAnswer::FIELDS)?;
        let field = |name| fields::field(&found, name);
        if field("book").is_empty() || field("row").is_empty() {
            return Err(ProblemCode::Missing);
        }
        let applies = match field("answer") {
            "yes" => true,
            "no" => false,
            "" => return Err(ProblemCode::Missing),
            _ => return Err(ProblemCode::UnknownName),
        };
        Ok(LimitAnswer { book: field("book").to_owned(), row: field("row").to_owned(), applies })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_lift_names_its_reason_and_why_and_two_different_people() {
        let text = "reason=undecided;about=Pb;why=drawing 4\\; page 2;by=AB;second=CD";
        let lift = Lift::parse(text).unwrap();
        assert_eq!((lift.why.as_str(), lift.to_text().as_str()), ("drawing 4; page 2", text));
        assert!(lift.is_countersigned());
        let alone = Lift::parse("reason=undecided;why=x;by=A.B.;second=ab").unwrap();
        assert!(!alone.is_countersigned());
        assert_eq!(Lift::parse("reason=undecided"), Err(ProblemCode::Missing));
        assert_eq!(Lift::parse("why=x"), Err(ProblemCode::Missing));
    }

    #[test]
    fn an_answer_is_yes_or_no_and_names_its_limit() {
        let yes = LimitAnswer::parse("book=b;row=r;answer=yes").unwrap();
        assert_eq!((yes.book.as_str(), yes.row.as_str(), yes.applies), ("b", "r", true));
        assert!(!LimitAnswer::parse("book=b;row=r;answer=no").unwrap().applies);
        assert_eq!(LimitAnswer::parse("book=b;row=r;answer=maybe"), Err(ProblemCode::UnknownName));
        assert_eq!(LimitAnswer::parse("book=b;answer=no"), Err(ProblemCode::Missing));
        assert_eq!(LimitAnswer::parse("book=b;row=r"), Err(ProblemCode::Missing));
    }

    #[test]
    fn how_a_hold_ends_says_at_least_one_thing() {
        let ends = HoldEnds::parse("who=AB;until=2026-12-05;quarantined=480;place=cage 2").unwrap();
        assert_eq!((ends.until, ends.quarantined), (Day::new(2026, 12, 5), Some(480)));
        assert_eq!(HoldEnds::parse(""), Err(ProblemCode::Missing));
        assert_eq!(HoldEnds::parse("until=soon"), Err(ProblemCode::OutOfRange));
        assert_eq!(HoldEnds::parse("quarantined=many"), Err(ProblemCode::OutOfRange));
    }
}
