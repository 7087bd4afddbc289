//! Text of others where people read it: nothing invisible in it, and nothing that turns its neighbours around.
//!
//! Names come from files and from keyboards, and may hold anything. A control character, a character without width or a mark
//! that changes the direction of writing could make two names look alike or a number read backwards, so it is shown as a
//! sign: a control character as its picture (U+2400 and on), any other as its number in brackets, `⟨U+202E⟩`. Words of a script
//! that is written from right to left are set apart from their neighbours by Unicode's isolates (UAX #9).

use std::borrow::Cow;
use std::fmt::Write as _;

const ISOLATE: char = '\u{2068}';
const END_ISOLATE: char = '\u{2069}';

/// What a character is to a reader.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Kind {
    /// Seen as it is.
    Seen,
    /// A control character, with a picture of its own.
    Control,
    /// Not seen, or turning others around.
    Unseen,
    /// Joins or parts letters of some scripts and signs: seen by what it does there.
    Joiner,
    /// A letter of a script written from right to left.
    RightToLeft,
}

const fn kind(character: char) -> Kind {
    match character {
        '\t' | '\n' => Kind::Seen,
        '\0'..='\u{1f}' | '\u{7f}' => Kind::Control,
        '\u{200c}' | '\u{200d}' => Kind::Joiner,
        '\u{80}'..='\u{9f}'
        | '\u{ad}'
        | '\u{61c}'
        | '\u{115f}'
        | '\u{1160}'
        | '\u{17b4}'
        | '\u{17b5}'
        | '\u{180b}'..='\u{180f}'
        | '\u{200b}'
        | '\u{200e}'
        | '\u{200f}'
        | '\u{2028}'..='\u{202e}'
        | '\u{2060}'..='\u{206f}'
        | '\u{3164}'
        | '\u{fdd0}'..='\u{fdef}'
        | '\u{feff}'
        | '\u{ffa0}'
        | '\u{fff0}'..='\u{fffb}'
        | '\u{e0000}'..='\u{e0fff}' => Kind::Unseen,
        '\u{590}'..='\u{8ff}'
        | '\u{fb1d}'..='\u{fdcf}'
        | '\u{fdf0}'..='\u{fdff}'
        | '\u{fe70}'..='\u{fefe}'
        | '\u{10800}'..='\u{10fff}'
        | '\u{1e800}'..='\u{1efff}' => Kind::RightToLeft,
        // The last two of every plane are no characters at all (nor are U+FDD0 to U+FDEF).
        _ if character as u32 & 0xfffe == 0xfffe => Kind::Unseen,
        _ => Kind::Seen,
    }
}

/// The sign that stands for a character that can't be shown.
pub fn sign(character: char) -> String {
    let mut out = String::new();
    push_sign(&mut out, character);
    out
}

fn push_sign(out: &mut String, character: char) {
    let picture = match character {
        '\u{7f}' => Some('\u{2421}'),
        '\0'..='\u{1f}' => char::from_u32(0x2400 + character as u32),
        _ => None,
    };
    match picture {
        Some(picture) => out.push(picture),
        None => {
            let _ = write!(out, "⟨U+{:04X}⟩", character as u32);
        }
    }
}

/// A text with a sign in the place of everything that is not seen; tabs and line ends stay.
pub fn visible(text: &str) -> Cow<'_, str> {
    if text.chars().all(|character| matches!(kind(character), Kind::Seen | Kind::RightToLeft)) {
        return Cow::Borrowed(text);
    }
    let mut out = String::with_capacity(text.len() + 16);
    let mut before = None;
    let mut rest = text.chars().peekable();
    while let Some(character) = rest.next() {
        let joins =
            |other: Option<char>| other.is_some_and(|other| !other.is_ascii() && kind(other) != Kind::Unseen);
        match kind(character) {
            Kind::Seen | Kind::RightToLeft => out.push(character),
            // Between letters that it shapes, or signs that it makes one, it is seen by what it does.
            Kind::Joiner if joins(before) && joins(rest.peek().copied()) => out.push(character),
            Kind::Control | Kind::Unseen | Kind::Joiner => push_sign(&mut out, character),
        }
        before = Some(character);
    }
    Cow::Owned(out)
}

/// The same on one line: tabs and line ends are shown as signs too.
pub fn on_one_line(text: &str) -> Cow<'_, str> {
    let seen = visible(text);
    if !seen.contains(['\t', '\n']) {
        return seen;
    }
    Cow::Owned(
        seen.chars()
            .map(|one| match one {
                '\t' => '\u{2409}',
                '\n' => '\u{240a}',
                other => other,
            })
            .collect(),
    )
}

/// Finished markup, whose own marks are ASCII and never hold any of this: signs for what is not seen, and isolates around
/// every run of words written from right to left.
pub fn in_markup(markup: &str) -> Cow<'_, str> {
    let seen = visible(markup);
    if !seen.chars().any(|character| kind(character) == Kind::RightToLeft) {
        return seen;
    }
    let mut out = String::with_capacity(seen.len() + 64);
    // A run goes from its first letter to its last; what may stand between two of its letters waits.
    let (mut inside, mut waiting) = (false, String::new());
    for character in seen.chars() {
        if kind(character) == Kind::RightToLeft {
            if !inside {
                out.push(ISOLATE);
            }
            inside = true;
            out.push_str(&waiting);
            waiting.clear();
            out.push(character);
        } else if inside
            && (matches!(character, ' ' | '-' | '.' | ',' | '/' | '0'..='9')
                || kind(character) == Kind::Joiner)
        {
            waiting.push(character);
        } else {
            if inside {
                out.push(END_ISOLATE);
            }
            inside = false;
            out.push_str(&waiting);
            waiting.clear();
            out.push(character);
        }
    }
    if inside {
        out.push(END_ISOLATE);
    }
    out.push_str(&waiting);
    Cow::Owned(out)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ordinary_text_is_left_alone() {
        for text in
            ["Alder Works", "Gehäuse µ – ± ≤ \u{a0}", "零件 部品", "👩\u{200d}🔧", "e\u{301}", "a\tb\nc"]
        {
            assert!(matches!(visible(text), Cow::Borrowed(_)) || visible(text) == text, "{text}");
            assert_eq!(in_markup(text), text);
        }
    }

    #[test]
    fn what_is_not_seen_is_shown_as_a_sign() {
        assert_eq!(visible("a\0b\rc\u{7f}"), "a␀b␍c␡");
        assert_eq!(visible("PA\u{202e}5-66"), "PA⟨U+202E⟩5-66");
        assert_eq!(visible("a\u{200d}b"), "a⟨U+200D⟩b");
        assert_eq!(visible("x\u{fffe}\u{feff}\u{85}"), "x⟨U+FFFE⟩⟨U+FEFF⟩⟨U+0085⟩");
        assert_eq!(on_one_line("a\tb\r\nc"), "a␉b␍␊c");
    }

    #[test]
    fn words_from_right_to_left_stand_apart() {
        assert_eq!(in_markup("<td>אב גד 12 mg</td>"), "<td>\u{2068}אב גד\u{2069} 12 mg</td>");
        assert_eq!(in_markup("Lot א"), "Lot \u{2068}א\u{2069}");
        // Isolates of the text's own are shown, and close nothing of ours.
        assert_eq!(in_markup("א\u{2069}ב"), "\u{2068}א\u{2069}⟨U+2069⟩\u{2068}ב\u{2069}");
    }
}
