//! One sheet: rows of typed cells under a frozen head.

use std::io::{self, Write};

use plumbline_core::instant::Moment;
use plumbline_core::quantity::MassFraction;
use plumbline_core::report::csv::guarded;
use plumbline_core::text_pool::TextPool;
use plumbline_core::visible_text::sign;

/// Most UTF-16 units that spreadsheet programs keep of one cell (from memory: their published limit).
const LONGEST_TEXT: usize = 32_767;

/// How a cell looks; the number is its place among the formats of `styles.xml`.
#[derive(Clone, Copy)]
pub(crate) enum Style {
    Text,
    Head,
    Amount,
    Count,
    Number,
    Day,
    Moment,
    Wrapped,
}

/// The texts of all sheets, each kept once.
#[derive(Default)]
pub(crate) struct Texts {
    pool: TextPool,
    /// The number of cells that hold a text.
    used: u64,
    /// How many cells hold less than their whole text.
    pub(crate) cut: u64,
}

impl Texts {
    /// Writes `sharedStrings.xml`, without its first line.
    pub(crate) fn write(&self, out: &mut dyn Write) -> io::Result<()> {
        let unique = self.pool.len();
        write!(
            out,
            "<sst xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\" count=\"{}\" uniqueCount=\"{unique}\">",
            self.used
        )?;
        for text in self.pool.texts() {
            let mut escaped = String::with_capacity(text.len() + 8);
            push_text(&mut escaped, text);
            write!(out, "<si><t xml:space=\"preserve\">{escaped}</t></si>")?;
        }
        out.write_all(b"</sst>")
    }
}

/// One character as XML text or attribute. What XML 1.0 forbids is shown by a sign; a carriage return would be read as a line
/// feed, so it is written by its number.
pub(crate) fn push_escaped(out: &mut String, character: char) {
    match character {
        '&' => out.push_str("&amp;"),
        '<' => out.push_str("&lt;"),
        '>' => out.push_str("&gt;"),
        '"' => out.push_str("&quot;"),
        '\r' => out.push_str("&#13;"),
        '\t' | '\n' => out.push(character),
        '\0'..='\u{1f}' | '\u{fffe}' | '\u{ffff}' => out.push_str(&sign(character)),
        other => out.push(other),
    }
}

/// A text of a cell. `_x0041_` would be read as the character of that number (`ST_Xstring`, ECMA-376 part 1, clause 22.9.2.19), so
/// its first line is written by its own.
fn push_text(out: &mut String, text: &str) {
    for (at, character) in text.char_indices() {
        let named = character == '_'
            && text.as_bytes().get(at + 1).is_some_and(|one| *one == b'x')
            && text
                .as_bytes()
                .get(at + 2..at + 6)
                .is_some_and(|digits| digits.iter().all(u8::is_ascii_hexdigit))
            && text.as_bytes().get(at + 6) == Some(&b'_');
        if named {
            out.push_str("_x005F_");
        } else {
            push_escaped(out, character);
        }
    }
}

/// A sheet that is being written.
pub(crate) struct Sheet<'a> {
    out: &'a mut dyn Write,
    texts: &'a mut Texts,
    columns: usize,
    row: u32,
    column: usize,
}

/// The letters of a column, from 0.
fn letters(column: usize) -> String {
    let (mut left, mut found) = (column + 1, Vec::new());
    while left > 0 {
        found.push(char::from(b'A' + ((left - 1) % 26) as u8));
        left = (left - 1) / 26;
    }
    found.iter().rev().collect()
}

impl<'a> Sheet<'a> {
    /// Begins a sheet with its columns, each a heading and a width in characters; no heading at all: no head.
    pub(crate) fn begin(
        out: &'a mut dyn Write,
        texts: &'a mut Texts,
        columns: &[(String, u32)],
        first: bool,
    ) -> io::Result<Sheet<'a>> {
        let headed = columns.iter().any(|(heading, _)| !heading.is_empty());
        out.write_all(
            b"<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><sheetViews><sheetView",
        )?;
        if first {
            out.write_all(b" tabSelected=\"1\"")?;
        }
        out.write_all(b" workbookViewId=\"0\">")?;
        if headed {
            out.write_all(
                b"<pane ySplit=\"1\" topLeftCell=\"A2\" activePane=\"bottomLeft\" state=\"frozen\"/>",
            )?;
        }
        out.write_all(b"</sheetView></sheetViews><sheetFormatPr defaultRowHeight=\"15\"/><cols>")?;
        for (at, (_, width)) in columns.iter().enumerate() {
            let number = at + 1;
            write!(out, "<col min=\"{number}\" max=\"{number}\" width=\"{width}\" customWidth=\"1\"/>")?;
        }
        out.write_all(b"</cols><sheetData>")?;
        let mut sheet = Sheet { out, texts, columns: columns.len(), row: 0, column: 0 };
        if headed {
            sheet.begin_row()?;
            for (heading, _) in columns {
                sheet.styled(heading, Style::Head)?;
            }
            sheet.end_row()?;
        }
        Ok(sheet)
    }

    pub(crate) fn begin_row(&mut self) -> io::Result<()> {
        self.row += 1;
        self.column = 0;
        write!(self.out, "<row r=\"{}\">", self.row)
    }

    pub(crate) fn end_row(&mut self) -> io::Result<()> {
        self.out.write_all(b"</row>")
    }

    pub(crate) fn rows(&self) -> u32 {
        self.row
    }

    fn cell(&mut self, style: Style, kind: &str, value: std::fmt::Arguments<'_>) -> io::Result<()> {
        let (column, row) = (letters(self.column), self.row);
        self.column += 1;
        write!(self.out, "<c r=\"{column}{row}\" s=\"{}\"{kind}><v>{value}</v></c>", style as u8)
    }

    /// Nothing.
    pub(crate) fn blank(&mut self) {
        self.column += 1;
    }

    /// A text of somebody else's. It carries the same guard as in `findings.csv`: as a cell it is text anyway, but a
    /// workbook is saved as CSV every day, and there the type is lost.
    pub(crate) fn text(&mut self, text: &str) -> io::Result<()> {
        self.styled(&guarded(text), Style::Text)
    }

    /// Our own text, or one that is guarded.
    pub(crate) fn styled(&mut self, text: &str, style: Style) -> io::Result<()> {
        if text.is_empty() {
            self.blank();
            return Ok(());
        }
        let mut units = 0;
        let cut = text.char_indices().find(|(_, character)| {
            units += character.len_utf16();
            units > LONGEST_TEXT
        });
        let id = match cut {
            None => self.texts.pool.intern(text),
            Some((at, _)) => {
                self.texts.cut += 1;
                let mut kept: String = text.get(..at).unwrap_or("").to_owned();
                kept.pop();
                kept.push('…');
                self.texts.pool.intern(&kept)
            }
        };
        self.texts.used += 1;
        let index = id.number().saturating_sub(1);
        self.cell(style, " t=\"s\"", format_args!("{index}"))
    }

    pub(crate) fn count(&mut self, count: u64) -> io::Result<()> {
        self.cell(Style::Count, "", format_args!("{count}"))
    }

    /// An amount in mg/kg with all its digits.
    pub(crate) fn amount(&mut self, amount: Option<MassFraction>) -> io::Result<()> {
        if let Some(amount) = amount {
            return self.cell(Style::Amount, "", format_args!("{amount}"));
        }
        self.blank();
        Ok(())
    }

    /// A plain number.
    pub(crate) fn number(&mut self, number: Option<f64>) -> io::Result<()> {
        if let Some(number) = number.filter(|number| number.is_finite()) {
            return self.cell(Style::Number, "", format_args!("{number}"));
        }
        self.blank();
        Ok(())
    }

    /// A day or a moment as a date, where that is all its text says; a text with an offset, a fraction of a second, or that was
    /// not understood, stays a text.
    pub(crate) fn moment(&mut self, text: &str) -> io::Result<()> {
        let moment = Moment::read(text).filter(|moment| {
            moment.offset.is_none() && matches!((text.len(), moment.second), (10, None) | (16 | 19, Some(_)))
        });
        // Day 61 is 1 March 1900; before it, programs count a day that there never was.
        let Some((moment, serial)) =
            moment.map(|moment| (moment, moment.day.number() + 25_569)).filter(|(_, serial)| *serial >= 61)
        else {
            return self.text(text);
        };
        match moment.second {
            None => self.cell(Style::Day, "", format_args!("{serial}")),
            Some(second) => {
                let share = (u64::from(second) * 1_000_000_000_000 + 43_200) / 86_400;
                self.cell(Style::Moment, "", format_args!("{serial}.{share:012}"))
            }
        }
    }

    /// Ends the sheet; where it has a head, all its rows can be filtered.
    pub(crate) fn finish(self, filtered: bool) -> io::Result<()> {
        self.out.write_all(b"</sheetData>")?;
        if filtered {
            let (last, row) = (letters(self.columns.saturating_sub(1)), self.row.max(1));
            write!(self.out, "<autoFilter ref=\"A1:{last}{row}\"/>")?;
        }
        self.out.write_all(b"</worksheet>")
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn columns_are_lettered_as_spreadsheets_do() {
        for (column, found) in
            [(0, "A"), (25, "Z"), (26, "AA"), (51, "AZ"), (52, "BA"), (701, "ZZ"), (702, "AAA")]
        {
            assert_eq!(letters(column), found);
        }
    }

    #[test]
    fn what_xml_forbids_is_shown_and_what_it_would_change_is_numbered() {
        let escaped = |text: &str| {
            let mut out = String::new();
            push_text(&mut out, text);
            out
        };
        assert_eq!(escaped("a\0b\u{fffe}"), "a␀b⟨U+FFFE⟩");
        assert_eq!(escaped("]]><a b=\"c\">&\r"), "]]&gt;&lt;a b=&quot;c&quot;&gt;&amp;&#13;");
        assert_eq!(escaped("_x0041_ _x41_"), "_x005F_x0041_ _x41_");
    }

    fn cells(fill: impl FnOnce(&mut Sheet<'_>)) -> String {
        let (mut out, mut texts) = (Vec::new(), Texts::default());
        let mut sheet = Sheet::begin(&mut out, &mut texts, &[], false).unwrap();
        sheet.begin_row().unwrap();
        fill(&mut sheet);
        let text = String::from_utf8(out).unwrap();
        text.split_once("<row r=\"1\">").unwrap().1.to_owned()
    }

    #[test]
    fn only_a_date_in_full_is_a_date() {
        let one = |text: &str| cells(|sheet| sheet.moment(text).unwrap());
        assert_eq!(one("2026-11-25"), "<c r=\"A1\" s=\"5\"><v>46351</v></c>");
        assert_eq!(one("2026-11-25T12:00:00"), "<c r=\"A1\" s=\"6\"><v>46351.500000000000</v></c>");
        for text in ["2026-11-25T12:00:00Z", "2026-11-25T12:00:00.5", "25.11.2026", "1899-12-31", "noon"] {
            assert_eq!(one(text), "<c r=\"A1\" s=\"0\" t=\"s\"><v>0</v></c>", "{text}");
        }
        assert_eq!(one(""), "");
    }

    #[test]
    fn a_text_is_cut_where_programs_would_refuse_it() {
        let (mut out, mut texts) = (Vec::new(), Texts::default());
        let mut sheet = Sheet::begin(&mut out, &mut texts, &[], false).unwrap();
        sheet.begin_row().unwrap();
        sheet.text(&"x".repeat(LONGEST_TEXT)).unwrap();
        sheet.text(&"👩".repeat(20_000)).unwrap();
        assert_eq!(texts.cut, 1);
        let kept: Vec<usize> = texts.pool.texts().map(|text| text.encode_utf16().count()).collect();
        assert_eq!(kept, [LONGEST_TEXT, LONGEST_TEXT - 2]);
    }
}
