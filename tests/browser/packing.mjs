// Small archives and workbooks made for a test: nothing is compressed, and of a workbook only what a reader must have.

/** CRC-32 of ISO 3309, bit by bit. */
function crc32(bytes) {
  let sum = ~0;
  for (const byte of bytes) {
    sum ^= byte;
    for (let bit = 0; bit < 8; bit += 1) sum = (sum >>> 1) ^ (sum & 1 ? 0xedb88320 : 0);
  }
  return ~sum >>> 0;
}

/** A ZIP archive of files by name. */
export function zipOf(files) {
  const parts = [];
  const directory = [];
  let at = 0;
  for (const [name, content] of Object.entries(files)) {
    const [label, bytes] = [Buffer.from(name), Buffer.from(content)];
    const common = Buffer.alloc(26);
    common.writeUInt16LE(20, 0);
    common.writeUInt16LE(0x0800, 2);
    // 1 January 1980, the first day an archive knows.
    common.writeUInt16LE(33, 8);
    common.writeUInt32LE(crc32(bytes), 10);
    common.writeUInt32LE(bytes.length, 14);
    common.writeUInt32LE(bytes.length, 18);
    common.writeUInt16LE(label.length, 22);
    parts.push(Buffer.from("PK\x03\x04"), common, label, bytes);
    const where = Buffer.alloc(14);
    where.writeUInt32LE(at, 10);
    directory.push(Buffer.from("PK\x01\x02\x14\x00"), common, where, label);
    at += 30 + label.length + bytes.length;
  }
  const listed = Buffer.concat(directory);
  const end = Buffer.alloc(18);
  const n = Object.keys(files).length;
  end.writeUInt16LE(n, 4);
  end.writeUInt16LE(n, 6);
  end.writeUInt32LE(listed.length, 8);
  end.writeUInt32LE(at, 12);
  return Buffer.concat([...parts, listed, Buffer.from("PK\x05\x06"), end]);
}

const HEAD = '<?xml version="1.0" encoding="UTF-8"?>';
const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const RELATIONS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

function sheetXml(rows) {
  const letter = (at) => String.fromCharCode(65 + at);
  const cell = (value, row, at) =>
    typeof value === "number" ? `<c r="${letter(at)}${row}"><v>${value}</v></c>` : `<c r="${letter(at)}${row}" t="inlineStr"><is><t>${value}</t></is></c>`;
  const lines = rows.map((cells, at) => `<row r="${at + 1}">${cells.map((value, column) => cell(value, at + 1, column)).join("")}</row>`);
  return `${HEAD}<worksheet xmlns="${MAIN}"><sheetData>${lines.join("")}</sheetData></worksheet>`;
}

/** A workbook: sheets in their order, each `{ name, rows, hidden }`. */
export function workbookOf(sheets) {
  const of = (make) => sheets.map((sheet, at) => make(sheet, at + 1)).join("");
  const files = {
    "[Content_Types].xml": `${HEAD}<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/><Override PartName="/xl/workbook.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml"/>${of((_, n) => `<Override PartName="/xl/worksheets/sheet${n}.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml"/>`)}</Types>`,
    "_rels/.rels": `${HEAD}<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="${RELATIONS}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
    "xl/workbook.xml": `${HEAD}<workbook xmlns="${MAIN}" xmlns:r="${RELATIONS}"><sheets>${of((sheet, n) => `<sheet name="${sheet.name}" sheetId="${n}"${sheet.hidden ? ' state="hidden"' : ""} r:id="rId${n}"/>`)}</sheets></workbook>`,
    "xl/_rels/workbook.xml.rels": `${HEAD}<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${of((_, n) => `<Relationship Id="rId${n}" Type="${RELATIONS}/worksheet" Target="worksheets/sheet${n}.xml"/>`)}</Relationships>`,
  };
  sheets.forEach((sheet, at) => {
    files[`xl/worksheets/sheet${at + 1}.xml`] = sheetXml(sheet.rows);
  });
  return zipOf(files);
}
