//! Our own HTML cut into the pieces a person can find on paper: rows, paragraphs, terms, figures, and the tags around them.
//!
//! It is no reader of HTML in general: it cuts what `report::html` writes, and whatever else it is given into pieces that
//! lie side by side and together are all bytes.

use std::ops::Range;

/// What a piece is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Kind {
    /// A row of a table.
    Row,
    /// A paragraph, an item, a heading, a caption, a figure.
    Text,
    /// A value under a term.
    Value,
    /// A tag by itself.
    Tag,
    /// The style sheet.
    Style,
    /// An element whose content is no text: the one with the evidence, or one that may run.
    Script,
}

/// A piece, with where it stands.
#[derive(Clone, Debug)]
pub(crate) struct Piece {
    pub(crate) kind: Kind,
    pub(crate) bytes: Range<usize>,
    /// Which heading it is under: an index into [`Cut::sections`].
    pub(crate) section: usize,
    /// Which head its table has: an index into [`Cut::heads`].
    pub(crate) head: usize,
    /// What names it: the term of a value, the first row of a group of rows.
    pub(crate) label: usize,
}

/// A report in pieces.
pub(crate) struct Cut {
    pub(crate) pieces: Vec<Piece>,
    pub(crate) sections: Vec<String>,
    pub(crate) heads: Vec<Vec<String>>,
    pub(crate) labels: Vec<String>,
}

/// Elements that are one piece with all that is in them.
const WHOLE: [&str; 17] = [
    "tr",
    "p",
    "li",
    "h1",
    "h2",
    "h3",
    "h4",
    "dt",
    "dd",
    "caption",
    "figure",
    "svg",
    "title",
    "summary",
    "style",
    "script",
    "blockquote",
];

/// Cuts a report.
pub(crate) fn cut(text: &[u8]) -> Cut {
    let mut cut = Cut {
        pieces: Vec::new(),
        sections: vec![String::new()],
        heads: vec![Vec::new()],
        labels: vec![String::new()],
    };
    let (mut section, mut head, mut label) = (0, 0, 0);
    let (mut in_head, mut group) = (false, 0);
    let mut at = 0;
    while at < text.len() {
        let rest = text.get(at..).unwrap_or(&[]);
        let name = opened(rest);
        let (kind, length) = match name {
            Some(name) if WHOLE.contains(&name) => {
                let close = [b"</", name.as_bytes(), b">"].concat();
                let inside = memchr::memmem::find(rest, &close);
                let kind = match name {
                    "tr" => Kind::Row,
                    "dd" => Kind::Value,
                    "style" => Kind::Style,
                    "script" => Kind::Script,
                    _ => Kind::Text,
                };
                (kind, inside.map_or(rest.len(), |inside| inside + close.len()))
            }
            _ if rest.first() == Some(&b'<') => {
                (Kind::Tag, memchr::memchr(b'>', rest).map_or(rest.len(), |end| end + 1))
            }
            _ => (Kind::Text, memchr::memchr(b'<', rest).unwrap_or(rest.len())),
        };
        let piece = rest.get(..length).unwrap_or(rest);
        match name {
            Some("h2") => {
                cut.sections.push(visible(piece));
                section = cut.sections.len() - 1;
                (head, label) = (0, 0);
            }
            Some("table") => (head, label) = (0, 0),
            Some("thead") => {
                in_head = true;
                cut.heads.push(Vec::new());
                head = cut.heads.len() - 1;
            }
            Some("tbody") => (in_head, label, group) = (false, 0, 0),
            Some("dt") => {
                cut.labels.push(visible(piece));
                label = cut.labels.len() - 1;
            }
            Some("tr") if in_head => {
                if let Some(head) = cut.heads.get_mut(head) {
                    *head = cells(piece).into_iter().flat_map(|cell| vec![cell.text; cell.columns]).collect();
                }
            }
            Some("tr") => {
                // The second row of a group is named by the first.
                if group == 0 && piece.starts_with(b"<tr class=\"who\"") {
                    cut.labels.push(visible(piece));
                    group = cut.labels.len() - 1;
                }
                label = group;
            }
            _ if piece == b"</thead>" => in_head = false,
            _ if piece == b"</tbody>" || piece == b"</table>" || piece == b"</dl>" => (label, group) = (0, 0),
            _ => {}
        }
        cut.pieces.push(Piece { kind, bytes: at..at + length, section, head, label });
        at += length.max(1);
    }
    cut
}

/// The name of the element that opens here.
fn opened(rest: &[u8]) -> Option<&str> {
    let inside = rest.strip_prefix(b"<")?;
    let length = inside.iter().take_while(|byte| byte.is_ascii_alphanumeric()).count();
    let ends = matches!(inside.get(length), Some(b'>' | b' '));
    let name = std::str::from_utf8(inside.get(..length)?).ok()?;
    (ends && length > 0).then_some(name)
}

/// A cell of a row.
pub(crate) struct Cell {
    pub(crate) text: String,
    /// Over how many columns it reaches.
    pub(crate) columns: usize,
    /// Its bytes inside the row.
    pub(crate) bytes: Range<usize>,
}

/// The cells of a row.
pub(crate) fn cells(row: &[u8]) -> Vec<Cell> {
    let starts = |name: &[u8]| {
        let open = [b"<", name].concat();
        memchr::memmem::find_iter(row, &open)
            .filter(|at| matches!(row.get(at + open.len()), Some(b'>' | b' ')))
            .collect::<Vec<usize>>()
    };
    let mut starts: Vec<usize> = [starts(b"td"), starts(b"th")].concat();
    starts.sort_unstable();
    let ends = starts.iter().skip(1).copied().chain([row.len()]);
    starts
        .iter()
        .zip(ends)
        .map(|(start, end)| {
            let bytes = row.get(*start..end).unwrap_or(&[]);
            let tag = bytes.split(|byte| *byte == b'>').next().unwrap_or(&[]);
            let tag = String::from_utf8_lossy(tag);
            let columns =
                tag.split("colspan=\"").nth(1).and_then(|rest| rest.split('"').next()?.parse().ok());
            // What a file says must not make a wide table of one cell.
            let columns = columns.unwrap_or(1).clamp(1, 50);
            Cell { text: visible(bytes), columns, bytes: *start..end }
        })
        .collect()
}

/// The text of a piece as it is read: without tags, entities as their characters, white space as one space.
pub(crate) fn visible(bytes: &[u8]) -> String {
    let text = String::from_utf8_lossy(bytes);
    let mut plain = String::with_capacity(text.len());
    let mut rest = text.as_ref();
    while let Some(open) = rest.find('<') {
        plain.push_str(rest.get(..open).unwrap_or(""));
        let tag = rest.get(open..).unwrap_or("");
        let end = tag.find('>').map_or(tag.len(), |end| end + 1);
        // Between cells and lines there is a space to the eye.
        let inline =
            ["<b>", "</b>", "<i>", "</i>", "<s>", "</s>", "</span>"].iter().any(|one| tag.starts_with(one));
        if !inline && !tag.starts_with("<span") {
            plain.push(' ');
        }
        rest = tag.get(end..).unwrap_or("");
    }
    plain.push_str(rest);
    let plain = plain.replace("&lt;", "<").replace("&gt;", ">").replace("&quot;", "\"").replace("&amp;", "&");
    plain.split_ascii_whitespace().collect::<Vec<_>>().join(" ")
}

#[cfg(test)]
mod tests {
    use super::*;

    const TEXT: &str = "<body><h1>A</h1><dl><dt>Date</dt><dd>today</dd></dl><section><h2>Lots</h2><table><thead><tr><th>Name</th>\
        <th colspan=\"2\">Both</th></tr></thead><tbody><tr><td>x &lt; y</td><td>1</td><td>2<br>3</td></tr></tbody></table>after</section>";

    #[test]
    fn pieces_lie_side_by_side_and_are_all_bytes() {
        for text in [TEXT, "", "<", "<tr", "<tr><td>", "x<p>y", "\u{fffd}<style>", "<td></tr>"] {
            let cut = cut(text.as_bytes());
            let mut at = 0;
            for piece in &cut.pieces {
                assert_eq!(piece.bytes.start, at, "{text}");
                assert!(piece.bytes.end > at, "{text}");
                at = piece.bytes.end;
            }
            assert_eq!(at, text.len());
        }
    }

    #[test]
    fn a_piece_knows_its_section_its_heads_and_its_term() {
        let cut = cut(TEXT.as_bytes());
        let found = |wanted: &str| {
            let is = |piece: &&Piece| visible(&TEXT.as_bytes()[piece.bytes.clone()]) == wanted;
            let piece = cut.pieces.iter().find(is).expect("a piece");
            (
                cut.sections[piece.section].as_str(),
                cut.heads[piece.head].clone(),
                cut.labels[piece.label].as_str(),
            )
        };
        assert_eq!(found("today"), ("", vec![], "Date"));
        let heads = ["Name", "Both", "Both"].map(str::to_owned).to_vec();
        assert_eq!(found("x < y 1 2 3"), ("Lots", heads, ""));
        let row = cut.pieces.iter().filter(|piece| piece.kind == Kind::Row).nth(1).expect("a row");
        let texts: Vec<String> =
            cells(&TEXT.as_bytes()[row.bytes.clone()]).into_iter().map(|cell| cell.text).collect();
        assert_eq!(texts, ["x < y", "1", "2 3"]);
    }
}
