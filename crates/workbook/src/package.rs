//! The archive that a workbook is, and the parts around its sheets (ECMA-376, part 1, clause 18, and part 2).

use std::fmt::Write as _;
use std::io::{self, Write};

use flate2::Compression;
use flate2::write::DeflateEncoder;
use rawzip::{CompressionMethod, ZipArchiveWriter};

const HEAD: &str = "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n";
const MAIN: &str = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const RELATIONS: &str = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const PACKAGE_RELATIONS: &str = "http://schemas.openxmlformats.org/package/2006/relationships";
const SPREADSHEET: &str = "application/vnd.openxmlformats-officedocument.spreadsheetml";

/// An archive that is being written, part after part, without going back.
pub(crate) struct Package<W: Write> {
    archive: ZipArchiveWriter<W>,
}

impl<W: Write> Package<W> {
    pub(crate) fn new(sink: W) -> Package<W> {
        Package { archive: ZipArchiveWriter::new(sink) }
    }

    /// Writes one part. No time is stated, so that the same findings give the same bytes.
    pub(crate) fn part(
        &mut self,
        name: &str,
        fill: impl FnOnce(&mut dyn Write) -> io::Result<()>,
    ) -> io::Result<()> {
        let new = self.archive.new_file(name).compression_method(CompressionMethod::DEFLATE);
        let (mut entry, config) = new.start().map_err(io::Error::other)?;
        let encoder = DeflateEncoder::new(&mut entry, Compression::new(4));
        let mut data = config.wrap(encoder);
        {
            let mut buffered = io::BufWriter::with_capacity(64 * 1024, &mut data);
            buffered.write_all(HEAD.as_bytes())?;
            fill(&mut buffered)?;
            buffered.flush()?;
        }
        let (encoder, written) = data.finish().map_err(io::Error::other)?;
        encoder.finish()?;
        entry.finish(written).map_err(io::Error::other)?;
        Ok(())
    }

    /// Writes the parts that name the sheets, and ends the archive.
    pub(crate) fn finish(mut self, sheets: &[String]) -> io::Result<()> {
        let text = |text: String| move |out: &mut dyn Write| out.write_all(text.as_bytes());
        self.part("xl/styles.xml", text(styles()))?;
        self.part("xl/workbook.xml", text(workbook(sheets)))?;
        self.part("xl/_rels/workbook.xml.rels", text(workbook_relations(sheets.len())))?;
        self.part("_rels/.rels", text(format!(
            "<Relationships xmlns=\"{PACKAGE_RELATIONS}\"><Relationship Id=\"rId1\" Type=\"{RELATIONS}/officeDocument\" \
             Target=\"xl/workbook.xml\"/></Relationships>"
        )))?;
        self.part("[Content_Types].xml", text(content_types(sheets.len())))?;
        self.archive.finish().map_err(io::Error::other)?.flush()
    }
}

fn content_types(sheets: usize) -> String {
    let mut out = String::from(
        "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\">\
         <Default Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/>\
         <Default Extension=\"xml\" ContentType=\"application/xml\"/>",
    );
    let mut part = |name: &str, kind: &str| {
        let _ =
            write!(out, "<Override PartName=\"/xl/{name}.xml\" ContentType=\"{SPREADSHEET}.{kind}+xml\"/>");
    };
    part("workbook", "sheet.main");
    part("styles", "styles");
    part("sharedStrings", "sharedStrings");
    for number in 1..=sheets {
        part(&format!("worksheets/sheet{number}"), "worksheet");
    }
    out.push_str("</Types>");
    out
}

fn workbook(sheets: &[String]) -> String {
    let mut out = format!(
        "<workbook xmlns=\"{MAIN}\" xmlns:r=\"{RELATIONS}\"><bookViews><workbookView/></bookViews><sheets>"
    );
    for (at, name) in sheets.iter().enumerate() {
        let number = at + 1;
        out.push_str("<sheet name=\"");
        // A name of a sheet has at most 31 characters and none of these (ECMA-376 leaves it to programs; common practice).
        for character in name.chars().filter(|one| !"[]:*?/\\'".contains(*one)).take(31) {
            crate::sheet::push_escaped(&mut out, character);
        }
        let _ = write!(out, "\" sheetId=\"{number}\" r:id=\"rId{number}\"/>");
    }
    out.push_str("</sheets></workbook>");
    out
}

fn workbook_relations(sheets: usize) -> String {
    let mut out = format!("<Relationships xmlns=\"{PACKAGE_RELATIONS}\">");
    let mut add = |number: usize, kind: &str, target: &str| {
        let _ =
            write!(out, "<Relationship Id=\"rId{number}\" Type=\"{RELATIONS}/{kind}\" Target=\"{target}\"/>");
    };
    for number in 1..=sheets {
        add(number, "worksheet", &format!("worksheets/sheet{number}.xml"));
    }
    add(sheets + 1, "styles", "styles.xml");
    add(sheets + 2, "sharedStrings", "sharedStrings.xml");
    out.push_str("</Relationships>");
    out
}

/// The formats, in the order of [`crate::sheet::Style`].
fn styles() -> String {
    let formats = [
        "<xf numFmtId=\"49\" fontId=\"0\" fillId=\"0\" borderId=\"0\" xfId=\"0\" applyNumberFormat=\"1\"/>",
        "<xf numFmtId=\"49\" fontId=\"1\" fillId=\"0\" borderId=\"0\" xfId=\"0\" applyNumberFormat=\"1\" applyFont=\"1\"/>",
        "<xf numFmtId=\"164\" fontId=\"0\" fillId=\"0\" borderId=\"0\" xfId=\"0\" applyNumberFormat=\"1\"/>",
        "<xf numFmtId=\"1\" fontId=\"0\" fillId=\"0\" borderId=\"0\" xfId=\"0\" applyNumberFormat=\"1\"/>",
        "<xf numFmtId=\"0\" fontId=\"0\" fillId=\"0\" borderId=\"0\" xfId=\"0\"/>",
        "<xf numFmtId=\"165\" fontId=\"0\" fillId=\"0\" borderId=\"0\" xfId=\"0\" applyNumberFormat=\"1\"/>",
        "<xf numFmtId=\"166\" fontId=\"0\" fillId=\"0\" borderId=\"0\" xfId=\"0\" applyNumberFormat=\"1\"/>",
        "<xf numFmtId=\"49\" fontId=\"0\" fillId=\"0\" borderId=\"0\" xfId=\"0\" applyNumberFormat=\"1\" applyAlignment=\"1\">\
         <alignment vertical=\"top\" wrapText=\"1\"/></xf>",
    ];
    format!(
        "<styleSheet xmlns=\"{MAIN}\">\
         <numFmts count=\"3\"><numFmt numFmtId=\"164\" formatCode=\"0.0##&quot; mg/kg&quot;\"/>\
         <numFmt numFmtId=\"165\" formatCode=\"yyyy\\-mm\\-dd\"/>\
         <numFmt numFmtId=\"166\" formatCode=\"yyyy\\-mm\\-dd\\ hh:mm:ss\"/></numFmts>\
         <fonts count=\"2\"><font><sz val=\"11\"/><name val=\"Calibri\"/></font>\
         <font><b/><sz val=\"11\"/><name val=\"Calibri\"/></font></fonts>\
         <fills count=\"2\"><fill><patternFill patternType=\"none\"/></fill><fill><patternFill patternType=\"gray125\"/></fill></fills>\
         <borders count=\"1\"><border><left/><right/><top/><bottom/><diagonal/></border></borders>\
         <cellStyleXfs count=\"1\"><xf numFmtId=\"0\" fontId=\"0\" fillId=\"0\" borderId=\"0\"/></cellStyleXfs>\
         <cellXfs count=\"{}\">{}</cellXfs>\
         <cellStyles count=\"1\"><cellStyle name=\"Normal\" xfId=\"0\" builtinId=\"0\"/></cellStyles></styleSheet>",
        formats.len(),
        formats.concat()
    )
}
