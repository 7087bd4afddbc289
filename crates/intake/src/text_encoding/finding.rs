//! Which encoding a text is in: by its mark, by its bytes, by the words that stand in it, and only then by a guess.

use chardetng::{EncodingDetector, Iso2022JpDetection, Utf8Detection};

use super::utf16_pattern::utf16_by_zero_bytes;
use super::{Decoder, Found, KnownBy, TextEncoding};

/// Bytes that are looked at.
pub const LOOKED_AT: usize = 256 * 1024;

/// Encodings without a sure sign, the likeliest first. Windows-1252 leads: where several read a text alike, that is
/// its name.
const CANDIDATES: [TextEncoding; 8] = [
    TextEncoding::Windows1252,
    TextEncoding::Gb18030,
    TextEncoding::Big5,
    TextEncoding::ShiftJis,
    TextEncoding::EucKr,
    TextEncoding::EucJp,
    TextEncoding::Windows1250,
    TextEncoding::Windows1251,
];

/// Encodings in which two bytes make a letter: what they spell is no accident of one letter for another.
const DOUBLE_BYTE: [TextEncoding; 5] = [
    TextEncoding::Gb18030,
    TextEncoding::Big5,
    TextEncoding::ShiftJis,
    TextEncoding::EucKr,
    TextEncoding::EucJp,
];

/// Finds the encoding of a text from its first bytes; `whole` where they are all there is.
///
/// `known_words` counts the words of a decoded text that belong to result tables. It is given only the lines that
/// have a byte beyond ASCII, since the others read the same in every candidate.
pub fn find(head: &[u8], whole: bool, known_words: &dyn Fn(&str) -> usize) -> Found {
    let whole = whole && head.len() <= LOOKED_AT;
    let head = head.get(..head.len().min(LOOKED_AT)).unwrap_or(head);
    if let Some((encoding, bom_length)) = byte_order_mark(head) {
        return Found { encoding, known_by: KnownBy::ByteOrderMark, bom_length };
    }
    // Before UTF-8, of which a zero byte is a valid character.
    if let Some(encoding) = utf16_by_zero_bytes(head) {
        return found(encoding, KnownBy::ByteCounts);
    }
    let utf8 = Utf8Sequences::count(head, whole);
    if utf8.are_all_valid() && !utf8.could_be_double_byte() {
        return found(TextEncoding::Utf8, KnownBy::ValidUtf8);
    }
    let contest = Contest::hold(head, whole, known_words);
    if utf8.are_all_valid() || utf8.whole > utf8.broken {
        // In GBK the sign for lead is a valid UTF-8 sequence: only words can tell a few of those from UTF-8.
        let known_by = if utf8.are_all_valid() { KnownBy::ValidUtf8 } else { KnownBy::ByteCounts };
        let as_utf8 = known_words(&String::from_utf8_lossy(&contest.bytes));
        return match contest.found_by_words(as_utf8) {
            Some(encoding) if DOUBLE_BYTE.contains(&encoding) => found(encoding, KnownBy::WordsFound),
            _ => found(TextEncoding::Utf8, known_by),
        };
    }
    match contest.found_by_words(contest.words_in_any_case) {
        Some(encoding) => found(encoding, KnownBy::WordsFound),
        None => found(contest.guess(), KnownBy::Guess),
    }
}

fn found(encoding: TextEncoding, known_by: KnownBy) -> Found {
    Found { encoding, known_by, bom_length: 0 }
}

/// The encoding whose byte order mark stands in front, and the mark's length.
pub(super) fn byte_order_mark(head: &[u8]) -> Option<(TextEncoding, usize)> {
    const MARKS: [(&[u8], TextEncoding); 4] = [
        (b"\xEF\xBB\xBF", TextEncoding::Utf8),
        (b"\xFF\xFE", TextEncoding::Utf16Le),
        (b"\xFE\xFF", TextEncoding::Utf16Be),
        (b"\x84\x31\x95\x33", TextEncoding::Gb18030),
    ];
    MARKS.iter().find(|(mark, _)| head.starts_with(mark)).map(|(mark, encoding)| (*encoding, mark.len()))
}

/// Sequences of more than one byte, seen as UTF-8.
#[derive(Default)]
struct Utf8Sequences {
    whole: usize,
    broken: usize,
    /// Those that begin a letter of Western Europe, µ or ±, or that have more than two bytes: no accident.
    telling: usize,
}

impl Utf8Sequences {
    fn count(bytes: &[u8], whole: bool) -> Utf8Sequences {
        let mut sequences = Utf8Sequences::default();
        let mut rest = bytes;
        loop {
            let error = std::str::from_utf8(rest).err();
            let valid_to = error.map_or(rest.len(), |error| error.valid_up_to());
            let (valid, beyond) = rest.split_at_checked(valid_to).unwrap_or((rest, &[]));
            sequences.whole += valid.iter().filter(|byte| **byte >= 0xC0).count();
            sequences.telling += valid.iter().filter(|byte| matches!(byte, 0xC2 | 0xC3 | 0xE0..)).count();
            let Some(length) = error.and_then(|error| error.error_len()) else {
                // The last character is cut off; of a head that is no fault.
                sequences.broken += usize::from(whole && !beyond.is_empty());
                return sequences;
            };
            sequences.broken += 1;
            rest = beyond.get(length..).unwrap_or(&[]);
        }
    }

    const fn are_all_valid(&self) -> bool {
        self.broken == 0
    }

    const fn could_be_double_byte(&self) -> bool {
        self.whole > 0 && self.telling == 0
    }
}

/// The text decoded in every candidate encoding.
struct Contest {
    /// The lines that were decoded.
    bytes: Vec<u8>,
    whole: bool,
    /// Words that stand in those lines whatever the encoding.
    words_in_any_case: usize,
    readings: Vec<Reading>,
}

struct Reading {
    encoding: TextEncoding,
    text: String,
    words: usize,
    /// Nothing in it that no table has.
    clean: bool,
    /// Few such things: cells cut at a number of bytes, say.
    possible: bool,
}

impl Contest {
    fn hold(head: &[u8], whole: bool, known_words: &dyn Fn(&str) -> usize) -> Contest {
        // A line end is never part of a character in any candidate, so lines can be told apart before.
        let bytes: Vec<u8> = head
            .split_inclusive(|byte| matches!(byte, b'\n' | b'\r'))
            .filter(|line| !line.is_ascii())
            .flatten()
            .copied()
            .collect();
        let ascii: String =
            bytes.iter().map(|byte| if byte.is_ascii() { char::from(*byte) } else { '\u{FFFD}' }).collect();
        let readings =
            CANDIDATES.iter().map(|encoding| Reading::of(&bytes, whole, *encoding, known_words)).collect();
        Contest { words_in_any_case: known_words(&ascii), bytes, whole, readings }
    }

    /// The encoding in which more known words stand than in any other, and more than `at_least`.
    ///
    /// `µ` and `±` are the same bytes in all the alphabets of Europe: where words leave only those open, the statistics
    /// of letters may settle it for the Western one. Against it they stay a guess.
    fn found_by_words(&self, at_least: usize) -> Option<TextEncoding> {
        let leaders = self.leaders();
        let first = leaders.first()?;
        let settled = leaders.iter().all(|other| other.text == first.text)
            || (leaders.iter().all(|leader| !DOUBLE_BYTE.contains(&leader.encoding))
                && self.guess() == TextEncoding::Windows1252);
        (self.most_words() > at_least && settled).then_some(first.encoding)
    }

    fn most_words(&self) -> usize {
        self.readings
            .iter()
            .filter(|reading| reading.possible)
            .map(|reading| reading.words)
            .max()
            .unwrap_or(0)
    }

    /// The readings with the most words; a damaged one only where no clean one has as many.
    fn leaders(&self) -> Vec<&Reading> {
        let most = self.most_words();
        let leads = |reading: &&Reading| reading.possible && reading.words == most;
        let clean: Vec<_> = self.readings.iter().filter(leads).filter(|reading| reading.clean).collect();
        if clean.is_empty() { self.readings.iter().filter(leads).collect() } else { clean }
    }

    /// What the statistics of letters say, among the readings that words leave open.
    fn guess(&self) -> TextEncoding {
        let open: Vec<_> = self.leaders().iter().map(|reading| reading.encoding).collect();
        let mut detector = EncodingDetector::new(Iso2022JpDetection::Deny);
        detector.feed(&self.bytes, self.whole);
        let standard = detector.guess(None, Utf8Detection::Deny);
        let guessed = if standard == encoding_rs::GBK {
            Some(TextEncoding::Gb18030)
        } else {
            CANDIDATES.into_iter().find(|encoding| encoding.standard() == standard)
        };
        // Where neither the statistics nor words name one of them, Windows-1252: there every byte is a character.
        let by_words = open.first().filter(|_| self.most_words() > self.words_in_any_case);
        guessed
            .filter(|encoding| open.contains(encoding))
            .or(by_words.copied())
            .unwrap_or(TextEncoding::Windows1252)
    }
}

impl Reading {
    fn of(bytes: &[u8], whole: bool, encoding: TextEncoding, known_words: &dyn Fn(&str) -> usize) -> Reading {
        let mut decoder = Decoder::new(encoding);
        let mut text = Vec::new();
        decoder.push(bytes, &mut |piece| text.extend_from_slice(piece));
        if whole {
            decoder.finish(&mut |piece| text.extend_from_slice(piece));
        }
        let text = String::from_utf8(text).unwrap_or_default();
        let strange = text.chars().filter(|c| is_strange(*c)).count();
        let beyond_ascii = text.chars().filter(|c| !c.is_ascii()).count();
        Reading {
            encoding,
            words: known_words(&text),
            clean: strange == 0,
            possible: strange * 10 <= beyond_ascii,
            text,
        }
    }
}

/// Characters no table has: bytes that are none, controls, and places the encoding leaves to private use.
const fn is_strange(c: char) -> bool {
    matches!(c, '\u{FFFD}' | '\u{80}'..='\u{9F}' | '\u{E000}'..='\u{F8FF}')
}
