use std::fmt::Write;

use super::*;
use crate::container::{self, Container};
use crate::test_package::{FLAGS, LOCKED, SIZE, change_record, pack};

const TYPES: &str = "<Types/>";
const ROOT: &str = "<Relationships><Relationship Id='r' Type='http://x/relationships/officeDocument' \
    Target='xl/workbook.xml'/></Relationships>";
const RELATIONS: &str = "<Relationships>\
    <Relationship Id='r1' Type='http://x/worksheet' Target='worksheets/sheet1.xml'/>\
    <Relationship Id='r2' Type='http://x/worksheet' Target='/xl/worksheets/sheet2.xml'/>\
    <Relationship Id='r3' Type='http://x/chartsheet' Target='chartsheets/sheet1.xml'/>\
    <Relationship Id='r4' Type='http://x/sharedStrings' Target='sharedStrings.xml'/>\
    <Relationship Id='r5' Type='http://x/styles' Target='styles.xml'/></Relationships>";
const LIST: &str = "<workbook xmlns:r='x'><sheets><sheet name='Results &amp; more' sheetId='1' r:id='r1'/>\
    <sheet name='Chart' sheetId='2' r:id='r3'/><sheet name='Old' sheetId='3' state='veryHidden' r:id='r2'/>\
    </sheets></workbook>";
const LIST_1904: &str = "<workbook><workbookPr date1904='1'/><sheets>\
    <sheet name='Results' sheetId='1' r:id='r1'/></sheets></workbook>";
const STRINGS: &str = "<sst count='9' uniqueCount='999999999999999999'><si><t>plain</t></si>\
    <si><r><t>Pb </t></r><r><rPr/><t xml:space='preserve'>(ppm)</t></r><rPh sb='0' eb='1'><t>spoken</t></rPh></si>\
    <si><t>a, \"b\"</t></si><si><t>two&#10;lines_x000D_</t></si><si/><si><t> trimmed </t></si></sst>";
const STYLES: &str = "<styleSheet><numFmts count='4'><numFmt numFmtId='164' formatCode='0.000%'/>\
    <numFmt numFmtId='165' formatCode='yyyy\\-mm\\-dd\\ hh:mm'/><numFmt numFmtId='166' formatCode='0.0&quot;%&quot;'/>\
    <numFmt numFmtId='167' formatCode='[h]:mm'/></numFmts>\
    <cellStyleXfs count='1'><xf numFmtId='10'/></cellStyleXfs>\
    <cellXfs count='8'><xf numFmtId='0'/><xf numFmtId='10'/><xf numFmtId='164'/><xf numFmtId='14'/><xf numFmtId='165'/>\
    <xf numFmtId='166'/><xf numFmtId='167'/><xf numFmtId='2'/></cellXfs></styleSheet>";

fn sheet(rows: &str) -> String {
    format!(
        "<worksheet><dimension ref='A1:XFD1048576'/><sheetData>{rows}</sheetData><mergeCells/></worksheet>"
    )
}

fn package(list: &str, first: &str) -> Vec<u8> {
    let second = sheet("<row r='1'><c r='A1'><v>2</v></c></row>");
    pack(&[
        ("[Content_Types].xml", TYPES.as_bytes()),
        ("_rels/.rels", ROOT.as_bytes()),
        ("xl/workbook.xml", list.as_bytes()),
        ("xl/_rels/workbook.xml.rels", RELATIONS.as_bytes()),
        ("xl/sharedStrings.xml", STRINGS.as_bytes()),
        ("xl/styles.xml", STYLES.as_bytes()),
        ("xl/worksheets/sheet1.xml", first.as_bytes()),
        ("xl/worksheets/sheet2.xml", second.as_bytes()),
    ])
}

fn write(bytes: &[u8], index: usize) -> Result<(String, Written), WorkbookProblem> {
    let mut workbook = Workbook::open(bytes)?;
    let mut text = Vec::new();
    let written = workbook.write_sheet(index, &mut |piece| {
        text.extend_from_slice(piece);
        ControlFlow::Continue(())
    })?;
    Ok((String::from_utf8(text).expect("UTF-8"), written))
}

fn text_of(rows: &str) -> String {
    write(&package(LIST, &sheet(rows)), 0).expect("a sound sheet").0
}

fn problem_of(rows: &str) -> Option<WorkbookProblem> {
    write(&package(LIST, &sheet(rows)), 0).err()
}

#[test]
fn sheets_are_listed_with_hidden_ones_said_so_and_charts_left_out() {
    let bytes = package(LIST, &sheet(""));
    let workbook = Workbook::open(&bytes).expect("a sound workbook");
    let sheets: Vec<_> = workbook.sheets().iter().map(|sheet| (sheet.name.as_str(), sheet.hidden)).collect();
    assert_eq!(sheets, [("Results & more", false), ("Old", true)]);
    assert_eq!(write(&bytes, 1).map(|(text, _)| text), Ok("2\n".to_owned()));
    assert_eq!(write(&bytes, 0), Ok((String::new(), Written { rows: 0, columns: 0, whole: true })));
    assert_eq!(write(&bytes, 2).err(), Some(WorkbookProblem::Broken));
}

#[test]
fn a_percentage_is_written_as_it_shows() {
    let rows = "<row r='1'><c r='A1' s='1'><v>5.1999999999999998E-3</v></c><c r='B1' s='2'><v>0.00052</v></c>\
        <c r='C1'><v>5.1999999999999998E-3</v></c><c r='D1' s='5'><v>0.52</v></c><c r='E1' s='1'><v>0</v></c>\
        <c r='F1' s='1' t='str'><v>n.d.</v></c><c r='G1' s='7'><v>0.0052</v></c></row>";
    assert_eq!(text_of(rows), "0.52%,0.052%,0.0052,0.52%,0%,n.d.,0.0052\n");
}

#[test]
fn dates_count_from_1900_or_1904_as_the_workbook_says() {
    let rows = "<row r='1'><c r='A1' s='3'><v>46351</v></c><c r='B1' s='4'><v>46351.416666666664</v></c>\
        <c r='C1' s='6'><v>1.5</v></c><c r='D1' t='d'><v>2026-11-25T00:00:00</v></c></row>";
    assert_eq!(text_of(rows), "2026-11-25,2026-11-25T10:00:00,36:00:00,2026-11-25\n");
    let rows = "<row r='1'><c r='A1' s='3'><v>44889</v></c></row>";
    assert_eq!(write(&package(LIST_1904, &sheet(rows)), 0).expect("sound").0, "2026-11-25\n");
}

#[test]
fn strings_are_read_shared_inline_and_in_runs_without_how_they_are_spoken() {
    let rows = "<row r='1'><c r='A1' t='s'><v>0</v></c><c r='B1' t='s'><v>1</v></c><c r='C1' t='s'><v>2</v></c>\
        <c r='D1' t='s'><v>3</v></c><c r='E1' t='s'><v>4</v></c><c r='F1' t='s'><v>5</v></c>\
        <c r='G1' t='inlineStr'><is><r><t>in</t></r><r><t>line</t></r><rPh><t>x</t></rPh></is></c>\
        <c r='H1' t='str'><f>A1&amp;\"x\"</f><v>5 &lt; 6</v></c><c r='I1' t='inlineStr'><is><t>0012</t></is></c></row>";
    assert_eq!(text_of(rows), "plain,Pb(ppm),\"a, \"\"b\"\"\",two lines ,,trimmed,inline,5 < 6,0012\n");
    assert_eq!(problem_of("<row r='1'><c r='A1' t='s'><v>99</v></c></row>"), Some(WorkbookProblem::Broken));
}

#[test]
fn formulas_give_what_they_last_gave_and_errors_their_text_even_new_ones() {
    let rows = "<row r='1'><c r='A1'><f>1+1</f><v>2</v></c><c r='B1' t='e'><f>1/0</f><v>#DIV/0!</v></c>\
        <c r='C1' t='e'><v>#SPILL!</v></c><c r='D1' t='b'><v>1</v></c><c r='E1' t='b'><v>0</v></c>\
        <c r='F1'><f>NOW()</f></c><c r='G1' t='e'><v>#N/A</v></c></row>";
    assert_eq!(text_of(rows), "2,#DIV/0!,#SPILL!,TRUE,FALSE,,#N/A\n");
}

#[test]
fn a_line_is_a_row_whatever_is_blank_and_whatever_the_sheet_claims_to_be() {
    let rows = "<row r='2'><c r='B2'><v>1</v></c><c r='C2' s='1'/></row><row r='3'/><row r='5'><c r='A5'><v>2</v></c></row>\
        <row r='9'><c r='D9'/></row>";
    assert_eq!(text_of(rows), "\n,1\n\n\n2\n");
    let (text, written) = write(
        &package(LIST, &sheet("<row><c><v>1</v></c><c><v>2</v></c></row><row><c/><c><v>3</v></c></row>")),
        0,
    )
    .expect("places may be left out");
    assert_eq!((text.as_str(), written), ("1,2\n,3\n", Written { rows: 2, columns: 2, whole: true }));
}

#[test]
fn a_cell_far_out_costs_its_line_and_no_more() {
    let text = text_of(
        "<row r='1'><c r='XFD1'><v>1</v></c></row><row r='1048576'><c r='A1048576'><v>2</v></c></row>",
    );
    assert_eq!(text.len(), 16_383 + 2 + 1_048_574 + 2);
    assert_eq!(text.lines().count(), 1_048_576);
    assert_eq!(problem_of("<row r='1'><c r='XFE1'><v>1</v></c></row>"), Some(WorkbookProblem::TooManyCells));
    assert_eq!(
        problem_of("<row r='1048577'><c r='A1048577'><v>1</v></c></row>"),
        Some(WorkbookProblem::TooManyCells)
    );
    let mut far = String::new();
    for row in 1..=1300 {
        write!(far, "<row r='{row}'><c r='XFD{row}'><v>1</v></c></row>").expect("a String takes any text");
    }
    assert_eq!(problem_of(&far), Some(WorkbookProblem::TooManyCells));
}

#[test]
fn a_sheet_out_of_order_is_damage() {
    let back = "<row r='2'><c r='A2'><v>1</v></c></row><row r='1'><c r='A1'><v>2</v></c></row>";
    assert_eq!(problem_of(back), Some(WorkbookProblem::Broken));
    let twice = "<row r='1'><c r='B1'><v>1</v></c><c r='B1'><v>2</v></c></row>";
    assert_eq!(problem_of(twice), Some(WorkbookProblem::Broken));
    assert_eq!(problem_of("<row r='0'><c><v>1</v></c></row>"), Some(WorkbookProblem::Broken));
}

#[test]
fn a_sink_may_look_at_the_beginning_and_come_back_for_the_whole() {
    let mut rows = String::new();
    for row in 1..=40_000 {
        write!(rows, "<row r='{row}'><c r='A{row}'><v>{row}</v></c></row>").expect("a String takes any text");
    }
    let bytes = package(LIST, &sheet(&rows));
    let mut workbook = Workbook::open(&bytes).expect("sound");
    let mut seen = 0;
    let written = workbook.write_sheet(0, &mut |piece| {
        seen += piece.len();
        ControlFlow::Break(())
    });
    assert!(written.is_ok_and(|written| !written.whole));
    assert!((60_000..70_000).contains(&seen));
    let (text, written) = write(&bytes, 0).expect("sound");
    assert_eq!((text.lines().last(), written.rows), (Some("40000"), 40_000));
}

#[test]
fn prefixes_backslashes_and_letter_case_of_other_writers_are_read() {
    let list =
        "<x:workbook xmlns:x='m' xmlns:r='x'><x:sheets><x:sheet name='A' r:id='r1'/></x:sheets></x:workbook>";
    let relations = RELATIONS.replace("worksheets/sheet1.xml", "worksheets\\Sheet1.xml");
    let bytes = pack(&[
        ("_RELS\\.rels", ROOT.as_bytes()),
        ("XL\\workbook.xml", list.as_bytes()),
        ("xl\\_rels\\workbook.xml.rels", relations.as_bytes()),
        (
            "xl\\worksheets\\sheet1.xml",
            b"<x:worksheet xmlns:x='m'><x:sheetData><x:row r='1'><x:c r='A1'><x:v>1</x:v></x:c></x:row></x:sheetData></x:worksheet>",
        ),
    ]);
    assert_eq!(container::look(&bytes), Container::Workbook);
    assert_eq!(write(&bytes, 0).map(|(text, _)| text), Ok("1\n".to_owned()));
}

const CONTENT: &str = "<office:document-content><office:automatic-styles><style:style style:name='ta1'>\
    <style:table-properties table:display='true'/></style:style><style:style style:name='ta2'>\
    <style:table-properties table:display='false'/></style:style></office:automatic-styles><office:body>\
    <office:spreadsheet><table:dde-links><table:table table:name='no sheet'/></table:dde-links>";
const CONTENT_ENDS: &str = "</office:spreadsheet></office:body></office:document-content>";

fn spreadsheet(tables: &str) -> Vec<u8> {
    pack(&[
        ("mimetype", b"application/vnd.oasis.opendocument.spreadsheet"),
        ("META-INF/manifest.xml", b"<manifest:manifest/>"),
        ("content.xml", format!("{CONTENT}{tables}{CONTENT_ENDS}").as_bytes()),
    ])
}

fn table(rows: &str) -> String {
    format!("<table:table table:name='T' table:style-name='ta1'><table:table-column/>{rows}</table:table>")
}

fn ods_text(rows: &str) -> String {
    write(&spreadsheet(&table(rows)), 0).expect("a sound table").0
}

fn ods_problem(rows: &str) -> Option<WorkbookProblem> {
    write(&spreadsheet(&table(rows)), 0).err()
}

#[test]
fn an_open_document_lists_its_sheets_and_writes_each() {
    let tables = "<table:table table:name='One' table:style-name='ta1'><table:shapes><table:table/></table:shapes>\
        <table:table-row><table:table-cell office:value-type='float' office:value='1'/></table:table-row></table:table>\
        <table:table table:name='Two' table:style-name='ta2'><table:table-row><table:table-cell office:value-type='float' \
        office:value='2'/></table:table-row></table:table>";
    let bytes = spreadsheet(tables);
    assert_eq!(container::look(&bytes), Container::Workbook);
    let workbook = Workbook::open(&bytes).expect("sound");
    let sheets: Vec<_> = workbook.sheets().iter().map(|sheet| (sheet.name.as_str(), sheet.hidden)).collect();
    assert_eq!(sheets, [("One", false), ("Two", true)]);
    assert_eq!(write(&bytes, 0).map(|(text, _)| text), Ok("1\n".to_owned()));
    assert_eq!(write(&bytes, 1).map(|(text, _)| text), Ok("2\n".to_owned()));
    assert_eq!(Workbook::open(&spreadsheet("")).err(), Some(WorkbookProblem::NoSheet));
}

#[test]
fn open_document_cells_are_written_as_they_show() {
    let rows = "<table:table-row>\
        <table:table-cell office:value-type='percentage' office:value='0.0052'><text:p>0.52%</text:p></table:table-cell>\
        <table:table-cell office:value-type='float' office:value='5.1999999999999998E-3'><text:p>0,01</text:p></table:table-cell>\
        <table:table-cell office:value-type='date' office:date-value='2026-11-25T10:00:00'><text:p>x</text:p></table:table-cell>\
        <table:table-cell office:value-type='time' office:time-value='PT10H30M00S'><text:p>x</text:p></table:table-cell>\
        <table:table-cell office:value-type='boolean' office:boolean-value='true'><text:p>WAHR</text:p></table:table-cell>\
        <table:table-cell office:value-type='string'><office:annotation><text:p>a note</text:p></office:annotation>\
        <text:p>Pb<text:s text:c='2'/><text:span>(ppm)</text:span>\n   end</text:p><text:p>second</text:p></table:table-cell>\
        <table:table-cell table:formula='of:=1/0' office:value-type='string' office:string-value='' calcext:value-type='error'>\
        <text:p>#DIV/0!</text:p></table:table-cell>\
        <table:table-cell office:value-type='string' office:string-value='stored'/>\
        <table:covered-table-cell office:value-type='float' office:value='9'/>\
        <table:table-cell office:value-type='float' office:value='3'/></table:table-row>";
    assert_eq!(
        ods_text(rows),
        "0.52%,0.0052,2026-11-25T10:00:00,10:30:00,TRUE,Pb  (ppm) end second,#DIV/0!,stored,,3\n"
    );
}

#[test]
fn open_document_repeats_are_written_where_filled_and_dropped_where_empty() {
    let one = "<table:table-cell office:value-type='float' office:value='1'";
    let rows = format!(
        "<table:table-header-rows><table:table-row>{one}/><table:table-cell table:number-columns-repeated='2'/>\
         {one} table:number-columns-repeated='2'/><table:table-cell table:number-columns-repeated='16379'/></table:table-row>\
         </table:table-header-rows><table:table-row table:number-rows-repeated='2'><table:table-cell/></table:table-row>\
         <table:table-row-group><table:table-row table:number-rows-repeated='3'>{one}/></table:table-row></table:table-row-group>\
         <table:table-row table:number-rows-repeated='1048570'><table:table-cell table:number-columns-repeated='16384'/></table:table-row>"
    );
    assert_eq!(ods_text(&rows), "1,,,1,1\n\n\n1\n1\n1\n");
}

#[test]
fn open_document_repeats_beyond_any_sheet_are_refused_before_they_are_made() {
    let one = "<table:table-cell office:value-type='float' office:value='1'";
    let wide =
        format!("<table:table-row>{one} table:number-columns-repeated='4000000000'/></table:table-row>");
    assert_eq!(ods_problem(&wide), Some(WorkbookProblem::TooManyCells));
    let tall =
        format!("<table:table-row table:number-rows-repeated='99999999999999'>{one}/></table:table-row>");
    assert_eq!(ods_problem(&tall), Some(WorkbookProblem::TooManyCells));
    let both = format!(
        "<table:table-row table:number-rows-repeated='1000000'>{one} table:number-columns-repeated='16384'/></table:table-row>"
    );
    assert_eq!(ods_problem(&both), Some(WorkbookProblem::TooManyCells));
    let far = format!(
        "<table:table-row table:number-rows-repeated='4000000000'><table:table-cell/></table:table-row>\
         <table:table-row>{one}/></table:table-row>"
    );
    assert_eq!(ods_problem(&far), Some(WorkbookProblem::TooManyCells));
    let empty = "<table:table-row table:number-rows-repeated='4000000000'>\
        <table:table-cell table:number-columns-repeated='4000000000'/></table:table-row>";
    assert_eq!(ods_text(empty), "");
}

#[test]
fn passwords_and_old_formats_have_their_own_answers() {
    let ole = |name: &str| {
        let mut bytes = b"\xD0\xCF\x11\xE0\xA1\xB1\x1A\xE1".to_vec();
        bytes.extend(vec![0; 512]);
        bytes.extend(name.encode_utf16().flat_map(u16::to_le_bytes));
        bytes
    };
    assert_eq!(Workbook::open(&ole("EncryptedPackage")).err(), Some(WorkbookProblem::Locked));
    assert_eq!(Workbook::open(&ole("Workbook")).err(), Some(WorkbookProblem::OldFormat));
    let binary_root = ROOT.replace("workbook.xml", "workbook.bin");
    let binary = pack(&[("_rels/.rels", binary_root.as_bytes()), ("xl/workbook.bin", b"\0")]);
    assert_eq!(container::look(&binary), Container::Workbook);
    assert_eq!(Workbook::open(&binary).err(), Some(WorkbookProblem::OldFormat));
    let locked = pack(&[
        ("mimetype", b"application/vnd.oasis.opendocument.spreadsheet"),
        ("META-INF/manifest.xml", b"<manifest:manifest><manifest:file-entry><manifest:encryption-data/></manifest:file-entry></manifest:manifest>"),
        ("content.xml", b"\x01\x02\x03"),
    ]);
    assert_eq!(Workbook::open(&locked).err(), Some(WorkbookProblem::Locked));
    let mut zipped = package(LIST, &sheet(""));
    change_record(&mut zipped, 2, FLAGS, &LOCKED);
    assert_eq!(Workbook::open(&zipped).err(), Some(WorkbookProblem::Locked));
    assert_eq!(Workbook::open(b"id,Pb\n").err(), Some(WorkbookProblem::Broken));
}

#[test]
fn a_part_that_unpacks_beyond_its_bounds_is_refused() {
    let rows = format!(
        "<row r='1'><c r='A1' t='inlineStr'><is><t>{}</t></is></c></row>",
        "0".repeat(4 * 1024 * 1024)
    );
    assert_eq!(problem_of(&rows), Some(WorkbookProblem::PackedTooTight));
    let mut bytes = package(LIST, &sheet(""));
    change_record(&mut bytes, 6, SIZE, &(300_u32 * 1024 * 1024).to_le_bytes());
    assert_eq!(write(&bytes, 0).err(), Some(WorkbookProblem::TooLarge));
    // A claim that is too small is a lie, found out while the part is read.
    let mut bytes = package(LIST, &sheet("<row r='1'><c r='A1'><v>1</v></c></row>"));
    change_record(&mut bytes, 6, SIZE, &10_u32.to_le_bytes());
    assert_eq!(write(&bytes, 0).err(), Some(WorkbookProblem::Broken));
}

#[test]
fn packed_files_are_told_by_what_is_in_them() {
    assert_eq!(container::look(&package(LIST, &sheet(""))), Container::Workbook);
    assert_eq!(container::look(&pack(&[("a.csv", b"1")])), Container::Archive);
    let document = "<Types><Default ContentType='application/vnd.openxmlformats-officedocument.spreadsheetml.sheet'/>\
        <Override ContentType='x.wordprocessingml.document.main+xml'/></Types>";
    assert_eq!(container::look(&pack(&[("[Content_Types].xml", document.as_bytes())])), Container::Archive);
    let elsewhere = "<Types><Override ContentType='x.spreadsheetml.sheet.main+xml'/></Types>";
    assert_eq!(container::look(&pack(&[("[Content_Types].xml", elsewhere.as_bytes())])), Container::Workbook);
    let text = pack(&[("mimetype", b"application/vnd.oasis.opendocument.text"), ("content.xml", b"<a/>")]);
    assert_eq!(container::look(&text), Container::Archive);
    assert_eq!(Workbook::open(&text).err(), Some(WorkbookProblem::NoSheet));
    assert_eq!(container::look(b"\x1F\x8B\x08\0"), Container::OtherPacked);
    assert_eq!(container::look(b"PK,Pb\n1,2\n"), Container::Plain);
    assert_eq!(container::look(b""), Container::Plain);
    assert!(container::needs_whole(b"PK\x03\x04\x14\0\0\0") && !container::needs_whole(b"PK,Pb\n1,"));
    let cut = &package(LIST, &sheet(""))[..200];
    assert_eq!(container::look(cut), Container::Workbook);
}

#[test]
fn a_workbook_cut_anywhere_is_told_and_never_stops_the_program() {
    let xlsx = package(
        LIST,
        &sheet("<row r='1'><c r='A1' t='s'><v>1</v></c><c r='B1' s='4'><v>46351.5</v></c></row>"),
    );
    let ods = spreadsheet(&table(
        "<table:table-row><table:table-cell office:value-type='float' office:value='1'/></table:table-row>",
    ));
    for bytes in [&xlsx, &ods] {
        for cut in 0..bytes.len() {
            assert!(Workbook::open(&bytes[..cut]).is_err(), "cut at {cut}");
        }
    }
}

#[test]
fn a_workbook_damaged_anywhere_never_stops_the_program() {
    let xlsx = package(
        LIST,
        &sheet("<row r='1'><c r='A1' t='s'><v>1</v></c><c r='B1' s='4'><v>46351.5</v></c></row>"),
    );
    let sound = write(&xlsx, 0).expect("sound");
    let mut told = 0;
    for at in 0..xlsx.len() {
        let mut damaged = xlsx.clone();
        damaged[at] = damaged[at].wrapping_add(1);
        told += usize::from(write(&damaged, 0).as_ref() != Ok(&sound));
    }
    assert!(told > xlsx.len() / 4);
}

#[test]
fn a_part_cut_anywhere_is_damage_and_never_half_a_sheet() {
    let whole = sheet("<row r='1'><c r='A1' t='s'><v>1</v></c></row><row r='2'><c r='A2'><v>2</v></c></row>");
    let data_ends = whole.find("</sheetData>").expect("it is there") + "</sheetData>".len();
    for cut in 0..data_ends {
        let cut_short = whole.get(..cut).expect("ASCII");
        assert_eq!(write(&package(LIST, cut_short), 0).err(), Some(WorkbookProblem::Broken), "cut at {cut}");
    }
    let content =
        format!("{CONTENT}{}{CONTENT_ENDS}", table("<table:table-row><table:table-cell/></table:table-row>"));
    let sheets_end =
        content.find("</office:spreadsheet>").expect("it is there") + "</office:spreadsheet>".len();
    for cut in 0..sheets_end {
        let bytes = pack(&[
            ("mimetype", b"application/vnd.oasis.opendocument.spreadsheet"),
            ("content.xml", content.as_bytes().get(..cut).expect("in it")),
        ]);
        assert_eq!(Workbook::open(&bytes).err(), Some(WorkbookProblem::Broken), "cut at {cut}");
    }
}

#[test]
fn an_open_document_of_equal_results_is_no_bomb_and_one_of_spaces_is() {
    let cell =
        "<table:table-cell table:style-name='ce1' office:value-type='string' calcext:value-type='string'>\
        <text:p>n.d.</text:p></table:table-cell>"
            .repeat(40);
    let rows = format!("<table:table-row>{cell}</table:table-row>").repeat(400);
    let (text, written) = write(&spreadsheet(&table(&rows)), 0).expect("wordy, but sound");
    assert_eq!((text.lines().count(), written.columns), (400, 40));
    let spaces = " ".repeat(8 * 1024 * 1024);
    assert_eq!(ods_problem(&spaces), Some(WorkbookProblem::PackedTooTight));
}
