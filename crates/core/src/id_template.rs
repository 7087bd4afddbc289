//! Ids that hold several things at once, such as `PN 4711-L12-3` for part, lot and spot, taken apart by a template.
//!
//! A template is text with fields in braces: `{part}-{lot}-{spot}`. A field is an identity by its code, or `{*}` for a
//! piece that is of no use. What stands between two fields must stand in an id exactly as often as the template shows:
//! where a part number itself holds a hyphen, cutting at one of three would be a guess, and the id stays whole.

use crate::reading::Identity;

/// More fields than this no id has: one for each identity, and as many pieces to leave out.
pub const MOST_FIELDS: usize = 30;

/// What is wrong with the text of a template.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TemplateProblem {
    /// No field that names an identity.
    NoField,
    /// A field whose name is no identity.
    UnknownField,
    /// An identity named twice.
    FieldTwice,
    /// Two fields with nothing between them, so that nobody can tell where the one ends.
    NothingBetween,
    /// An opening brace without a closing one, or the other way round.
    OpenBrace,
    /// More fields than [`MOST_FIELDS`].
    TooManyFields,
    /// The pieces of an example don't stand in its id, in their order.
    PieceNotInId,
    /// A piece of an example holds what also stands between pieces, so that the id can't be cut without a guess.
    SeparatorInPiece,
}

impl TemplateProblem {
    /// All of them.
    pub const ALL: [TemplateProblem; 8] = [
        TemplateProblem::NoField,
        TemplateProblem::UnknownField,
        TemplateProblem::FieldTwice,
        TemplateProblem::NothingBetween,
        TemplateProblem::OpenBrace,
        TemplateProblem::TooManyFields,
        TemplateProblem::PieceNotInId,
        TemplateProblem::SeparatorInPiece,
    ];

    /// The code its words go by.
    pub const fn code(self) -> &'static str {
        match self {
            TemplateProblem::NoField => "no_field",
            TemplateProblem::UnknownField => "unknown_field",
            TemplateProblem::FieldTwice => "field_twice",
            TemplateProblem::NothingBetween => "nothing_between",
            TemplateProblem::OpenBrace => "open_brace",
            TemplateProblem::TooManyFields => "too_many_fields",
            TemplateProblem::PieceNotInId => "piece_not_in_id",
            TemplateProblem::SeparatorInPiece => "separator_in_piece",
        }
    }
}

/// A field, and the text that stands between it and the next.
#[derive(Clone, Debug, PartialEq, Eq)]
struct Field {
    /// `None`: a piece to leave out.
    identity: Option<Identity>,
    after: String,
    /// Number of this `after` among the different ones between fields; counted once an id.
    separator: usize,
}

/// A template that was read without a problem.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct IdTemplate {
    before: String,
    fields: Vec<Field>,
    /// Texts between fields, each once, with how often the template shows them there.
    separators: Vec<(String, usize)>,
}

/// The pieces of one id, kept without allocating.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Pieces<'a> {
    found: [(Identity, &'a str); Identity::ALL.len()],
    len: usize,
}

impl<'a> Pieces<'a> {
    /// The pieces in the order of the template, those to leave out left out.
    pub fn as_slice(&self) -> &[(Identity, &'a str)] {
        self.found.get(..self.len).unwrap_or(&[])
    }

    /// The piece of an identity.
    pub fn get(&self, identity: Identity) -> Option<&'a str> {
        self.as_slice().iter().find(|(own, _)| *own == identity).map(|(_, piece)| *piece)
    }
}

impl IdTemplate {
    /// Reads the text of a template. Braces can't stand in it for themselves.
    ///
    /// # Errors
    /// What is wrong with it, the first thing from the left.
    pub fn parse(text: &str) -> Result<IdTemplate, TemplateProblem> {
        let mut fields: Vec<(Option<Identity>, String)> = Vec::new();
        let (before, mut rest) = match text.find(['{', '}']) {
            Some(at) => text.split_at(at),
            None => return Err(TemplateProblem::NoField),
        };
        while !rest.is_empty() {
            let inside = rest.strip_prefix('{').ok_or(TemplateProblem::OpenBrace)?;
            let (name, behind) = inside.split_once('}').ok_or(TemplateProblem::OpenBrace)?;
            if name.contains('{') {
                return Err(TemplateProblem::OpenBrace);
            }
            let identity = match name.trim() {
                "*" => None,
                name => Some(Identity::from_code(name).ok_or(TemplateProblem::UnknownField)?),
            };
            if identity.is_some() && fields.iter().any(|(other, _)| *other == identity) {
                return Err(TemplateProblem::FieldTwice);
            }
            let (after, next) = behind.split_at(behind.find(['{', '}']).unwrap_or(behind.len()));
            if after.is_empty() && !next.is_empty() {
                return Err(if next.starts_with('}') {
                    TemplateProblem::OpenBrace
                } else {
                    TemplateProblem::NothingBetween
                });
            }
            fields.push((identity, after.to_owned()));
            if fields.len() > MOST_FIELDS {
                return Err(TemplateProblem::TooManyFields);
            }
            rest = next;
        }
        if fields.iter().all(|(identity, _)| identity.is_none()) {
            return Err(TemplateProblem::NoField);
        }
        Ok(IdTemplate::of(before.to_owned(), fields))
    }

    fn of(before: String, fields: Vec<(Option<Identity>, String)>) -> IdTemplate {
        let last = fields.len().saturating_sub(1);
        let mut separators: Vec<(String, usize)> = Vec::new();
        let fields = fields
            .into_iter()
            .enumerate()
            .map(|(at, (identity, after))| {
                if at == last {
                    return Field { identity, after, separator: usize::MAX };
                }
                let separator = separators.iter().position(|(text, _)| *text == after).unwrap_or_else(|| {
                    separators.push((after.clone(), 0));
                    separators.len() - 1
                });
                Field { identity, after, separator }
            })
            .collect();
        let mut template = IdTemplate { before, fields, separators };
        // A separator may also stand inside another (`-` in `--`): the template's own literals say how often it is met.
        let literals: Vec<String> =
            template.fields.iter().take(last).map(|field| field.after.clone()).collect();
        for (text, times) in &mut template.separators {
            *times = literals.iter().map(|literal| literal.matches(text.as_str()).count()).sum();
        }
        template
    }

    /// Makes a template of an example: an id and the pieces a person named in it, in their order.
    ///
    /// Separators become literal, and so does text that touches a named piece: in `L12` with `12` named, every lot begins
    /// with `L`. Text between separators (or between a separator and an end of the id) in which nothing was named is a
    /// piece that may differ from id to id, and becomes `{*}`.
    ///
    /// # Errors
    /// [`TemplateProblem::PieceNotInId`] where a piece is empty or stands nowhere after the one before it,
    /// [`TemplateProblem::SeparatorInPiece`] where the template would not cut its own example as the person did, and the
    /// problems of [`IdTemplate::parse`].
    pub fn from_example(id: &str, named: &[(Identity, &str)]) -> Result<IdTemplate, TemplateProblem> {
        let mut text = String::new();
        let mut rest = id.trim();
        for (at, (identity, piece)) in named.iter().enumerate() {
            let piece = piece.trim();
            let found = find_piece(rest, piece).ok_or(TemplateProblem::PieceNotInId)?;
            let (between, from) = rest.split_at(found);
            write_unnamed(&mut text, between, at > 0, true);
            text.push('{');
            text.push_str(identity.code());
            text.push('}');
            rest = from.get(piece.len()..).unwrap_or("");
        }
        write_unnamed(&mut text, rest, !named.is_empty(), false);
        if id.contains(['{', '}']) {
            return Err(TemplateProblem::OpenBrace);
        }
        let template = IdTemplate::parse(&text)?;
        let cut = template.split(id);
        let same = named
            .iter()
            .all(|(identity, piece)| cut.as_ref().and_then(|cut| cut.get(*identity)) == Some(piece.trim()));
        if same { Ok(template) } else { Err(TemplateProblem::SeparatorInPiece) }
    }

    /// The text of the template, which [`IdTemplate::parse`] reads back.
    pub fn text(&self) -> String {
        let mut text = self.before.clone();
        for field in &self.fields {
            text.push('{');
            text.push_str(field.identity.map_or("*", Identity::code));
            text.push('}');
            text.push_str(&field.after);
        }
        text
    }

    /// The identities it gives, in its order.
    pub fn identities(&self) -> impl Iterator<Item = Identity> {
        self.fields.iter().filter_map(|field| field.identity)
    }

    /// Takes an id apart; `None` where it doesn't fit the template without a guess.
    ///
    /// Every piece is trimmed and not empty, and the whole id is used up.
    pub fn split<'a>(&self, id: &'a str) -> Option<Pieces<'a>> {
        let last = self.fields.last()?;
        let inside = id.trim().strip_prefix(self.before.trim_start())?;
        let inside = inside.strip_suffix(last.after.trim_end())?;
        for (separator, times) in &self.separators {
            if inside.matches(separator.as_str()).count() != *times {
                return None;
            }
        }
        let mut pieces = Pieces { found: [(Identity::Id, ""); Identity::ALL.len()], len: 0 };
        let mut rest = inside;
        for (at, field) in self.fields.iter().enumerate() {
            let piece = if at + 1 == self.fields.len() {
                rest
            } else {
                let (piece, behind) = rest.split_once(field.after.as_str())?;
                rest = behind;
                piece
            };
            let piece = piece.trim();
            if piece.is_empty() {
                return None;
            }
            if let Some(identity) = field.identity {
                *pieces.found.get_mut(pieces.len)? = (identity, piece);
                pieces.len += 1;
            }
        }
        Some(pieces)
    }
}

/// What cuts an id for a person to point at its pieces.
const SEPARATORS: [char; 8] = ['-', '_', '/', '.', ':', '#', ' ', '|'];

/// An id cut at every separator, empty pieces left out: what a page offers to point at.
pub fn pieces(id: &str) -> Vec<&str> {
    id.split(SEPARATORS).filter(|piece| !piece.is_empty()).collect()
}

/// Where a piece stands in a text: first as a whole piece between separators, else anywhere.
fn find_piece(text: &str, piece: &str) -> Option<usize> {
    if piece.is_empty() {
        return None;
    }
    let ends = |rest: &str| rest.is_empty() || rest.starts_with(SEPARATORS);
    let begins = |before: &str| before.is_empty() || before.ends_with(SEPARATORS);
    let whole = text.match_indices(piece).map(|(at, _)| at).find(|at| {
        let (before, from) = text.split_at(*at);
        begins(before) && ends(from.get(piece.len()..).unwrap_or(""))
    });
    whole.or_else(|| text.find(piece))
}

/// Writes what stands before, between or after the pieces a person named. `after_piece` and `before_piece` say whether
/// a named piece touches its ends.
fn write_unnamed(template: &mut String, unnamed: &str, after_piece: bool, before_piece: bool) {
    let mut rest = unnamed;
    let mut touches = after_piece;
    while !rest.is_empty() {
        let (piece, behind) = rest.split_at(rest.find(SEPARATORS).unwrap_or(rest.len()));
        touches |= before_piece && behind.is_empty();
        if touches {
            template.push_str(piece);
        } else if !piece.is_empty() {
            template.push_str("{*}");
        }
        let separators = behind.len() - behind.trim_start_matches(SEPARATORS).len();
        let (literal, next) = behind.split_at(separators);
        template.push_str(literal);
        touches = false;
        rest = next;
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn template(text: &str) -> IdTemplate {
        IdTemplate::parse(text).unwrap_or_else(|problem| panic!("{text}: {problem:?}"))
    }

    fn cut<'a>(template: &IdTemplate, id: &'a str) -> Option<Vec<(&'static str, &'a str)>> {
        let pieces = template.split(id)?;
        Some(pieces.as_slice().iter().map(|(identity, piece)| (identity.code(), *piece)).collect())
    }

    #[test]
    fn an_id_is_cut_where_the_template_shows() {
        let plain = template("{part}-{lot}-{spot}");
        let expected = vec![("part", "PN4711"), ("lot", "L12"), ("spot", "3")];
        assert_eq!(cut(&plain, "PN4711-L12-3"), Some(expected.clone()));
        assert_eq!(cut(&plain, "  PN4711 - L12 - 3 "), Some(expected), "pieces are trimmed");
        let mixed = template("PN {part}/{lot}#{spot} (front)");
        assert_eq!(
            cut(&mixed, "PN 4711/L-12#3 (front)"),
            Some(vec![("part", "4711"), ("lot", "L-12"), ("spot", "3")])
        );
        assert_eq!(cut(&mixed, "PN 4711/L-12#3 (back)"), None);
        assert_eq!(template("{lot}").split("L12").and_then(|found| found.get(Identity::Lot)), Some("L12"));
    }

    #[test]
    fn a_separator_that_stands_more_or_less_often_than_shown_leaves_the_id_whole() {
        let plain = template("{part}-{lot}-{spot}");
        assert_eq!(cut(&plain, "PN-4711-L12-3"), None, "which hyphen belongs to the part is a guess");
        assert_eq!(cut(&plain, "PN4711-L12"), None);
        assert_eq!(cut(&plain, ""), None);
        let two = template("{part}-{lot}/{spot}");
        assert_eq!(cut(&two, "A-B/C"), Some(vec![("part", "A"), ("lot", "B"), ("spot", "C")]));
        assert_eq!(cut(&two, "A-B-1/C"), None);
        assert_eq!(cut(&two, "A/B-C"), None, "the right separators in the wrong order");
    }

    #[test]
    fn an_empty_piece_is_no_piece() {
        let plain = template("{part}-{lot}-{spot}");
        for id in ["PN--3", "-L12-3", "PN-L12-", "PN- -3"] {
            assert_eq!(cut(&plain, id), None, "{id}");
        }
    }

    #[test]
    fn a_separator_inside_another_is_counted_with_it() {
        let nested = template("{part}-L{lot}-{spot}");
        assert_eq!(cut(&nested, "7-L12-3"), Some(vec![("part", "7"), ("lot", "12"), ("spot", "3")]));
        assert_eq!(cut(&nested, "7-L12-3-1"), None);
        assert_eq!(cut(&nested, "7-M12-3"), None);
    }

    #[test]
    fn a_starred_piece_is_read_over() {
        let starred = template("{*}_{part}_{*}");
        assert_eq!(cut(&starred, "2026_PN7_x"), Some(vec![("part", "PN7")]));
        assert_eq!(cut(&starred, "2026__x"), None);
        assert_eq!(starred.identities().collect::<Vec<_>>(), [Identity::Part]);
    }

    #[test]
    fn a_template_that_can_not_work_is_refused_with_its_problem() {
        for (text, problem) in [
            ("", TemplateProblem::NoField),
            ("part-lot", TemplateProblem::NoField),
            ("{*}-{*}", TemplateProblem::NoField),
            ("{part}-{colour}", TemplateProblem::UnknownField),
            ("{part}-{}", TemplateProblem::UnknownField),
            ("{part}-{part}", TemplateProblem::FieldTwice),
            ("{part}{lot}", TemplateProblem::NothingBetween),
            ("{part}{*}", TemplateProblem::NothingBetween),
            ("{part", TemplateProblem::OpenBrace),
            ("{part}-lot}", TemplateProblem::OpenBrace),
            ("part}", TemplateProblem::OpenBrace),
            ("{part-{lot}", TemplateProblem::OpenBrace),
            (&"{*}-".repeat(MOST_FIELDS + 1), TemplateProblem::TooManyFields),
        ] {
            assert_eq!(IdTemplate::parse(text), Err(problem), "{text}");
        }
    }

    #[test]
    fn a_template_is_made_from_one_example() {
        let made =
            |id, named: &[(Identity, &str)]| IdTemplate::from_example(id, named).map(|made| made.text());
        let (part, lot, spot) = (Identity::Part, Identity::Lot, Identity::Spot);
        for (id, named, text) in [
            ("PN4711-L12-3", vec![(part, "PN4711"), (lot, "L12"), (spot, "3")], "{part}-{lot}-{spot}"),
            ("PN4711-L12-3", vec![(part, "4711"), (lot, "12"), (spot, "3")], "PN{part}-L{lot}-{spot}"),
            ("PN4711-L12-3", vec![(lot, "L12")], "{*}-{lot}-{*}"),
            ("PN4711-A-L12", vec![(part, "PN4711"), (lot, "L12")], "{part}-{*}-{lot}"),
            ("4711mm / 12", vec![(part, "4711"), (lot, "12")], "{part}mm / {lot}"),
            ("1-11-1", vec![(part, "1"), (lot, "1")], "{part}-{*}-{lot}"),
            ("Ω7_β", vec![(part, "7"), (lot, "β")], "Ω{part}_{lot}"),
        ] {
            assert_eq!(made(id, &named).as_deref(), Ok(text), "{id}");
        }
        assert_eq!(made("A-B", &[(lot, "B"), (part, "A")]), Err(TemplateProblem::PieceNotInId));
        assert_eq!(made("A-B", &[(lot, " ")]), Err(TemplateProblem::PieceNotInId));
        assert_eq!(made("A-B", &[]), Err(TemplateProblem::NoField));
        assert_eq!(made("AB", &[(part, "A"), (lot, "B")]), Err(TemplateProblem::NothingBetween));
        assert_eq!(
            made("PN-4711-L12", &[(part, "PN-4711"), (lot, "L12")]),
            Err(TemplateProblem::SeparatorInPiece)
        );
        assert_eq!(made("{A}-B", &[(part, "A")]), Err(TemplateProblem::OpenBrace));
    }

    #[test]
    fn a_template_comes_back_from_its_own_text_and_cuts_its_example_as_it_was_named() {
        for id in ["PN4711-L12-3", "a_b-c", "x / y # z", "1.2.3:4|5"] {
            let named: Vec<(Identity, &str)> = Identity::ALL.into_iter().zip(pieces(id)).collect();
            let made = IdTemplate::from_example(id, &named).unwrap_or_else(|problem| panic!("{problem:?}"));
            assert_eq!(IdTemplate::parse(&made.text()).as_ref(), Ok(&made));
            assert_eq!(made.split(id).map(|cut| cut.as_slice().to_vec()), Some(named));
        }
    }

    #[test]
    fn an_id_is_offered_in_pieces() {
        assert_eq!(pieces("PN 4711/L-12#3"), ["PN", "4711", "L", "12", "3"]);
        assert_eq!(pieces("a_b.c:d|e--f"), ["a", "b", "c", "d", "e", "f"]);
        assert!(pieces(" - ").is_empty());
    }
}
