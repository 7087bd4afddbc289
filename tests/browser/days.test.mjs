// The inspector's whole day, as a person has it: one story from the first look to the last paper. Everything is invented.

import assert from "node:assert/strict";
import { test } from "node:test";
import { deflateSync, crc32 } from "node:zlib";
import { Person, everywhere, onTheStick } from "./days/person.mjs";
import { writtenFiles } from "./drive.mjs";

/** A picture of one colour, as small as a picture can be made by hand. */
function picture(width, height) {
  const rows = Buffer.alloc((width * 3 + 1) * height, 90);
  for (let y = 0; y < height; y += 1) rows[y * (width * 3 + 1)] = 0;
  const chunk = (name, body) => {
    const named = Buffer.concat([Buffer.from(name), body]);
    const [size, sum] = [Buffer.alloc(4), Buffer.alloc(4)];
    size.writeUInt32BE(body.length);
    sum.writeUInt32BE(crc32(named));
    return Buffer.concat([size, named, sum]);
  };
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head.set([8, 2], 8);
  return Buffer.concat([Buffer.from("\x89PNG\r\n\x1a\n", "latin1"), chunk("IHDR", head), chunk("IDAT", deflateSync(rows)), chunk("IEND", Buffer.alloc(0))]);
}

for (const { name, visit: open, why = null } of everywhere) {
  test(`in ${name} an inspector's day: a stick comes, is settled, questioned, signed and filed, and the report is proved the next morning`, { skip: why ?? false }, async () => {
    const stick = ["alder-housing.csv", "cedar-pins.csv", "canteen.txt"];
    const papers = {};
    const first = await open();
    const inspector = new Person(first);
    try {
      // 07:50, goods-in. Somebody brought a stick, with more on it than was asked for.
      await inspector.sees(/Does the delivery hang true\?/);
      await inspector.brings("Result files", writtenFiles({ ...Object.fromEntries(stick.map((file) => [file, onTheStick(file)])), "AH-3.png": picture(640, 480) }));
      const came = await inspector.addsUp();
      assert.deepEqual(came, { came: 12, used: 8, check: 0, duplicate: 0, "set aside": 0, refused: 4 }, "one row of Alder's is cut short, and nobody measured the soup");
      await inspector.sees(/canteen\.txt/, "#came-in");
      await inspector.sees(/AH-3\.png is named as the sample of this reading/, "#photos-in");

      // What came in is settled, by keys. Cedar's table states neither unit nor multiple, and one of its headings is nobody's.
      await inspector.pressesByKey("I have written it down");
      await inspector.putsOff(/^unread:canteen\.txt$/);
      for (const [question, value] of [["sigma_multiple_not_stated", "1"], ["unit_not_stated", "ppm"]]) {
        await inspector.goesOn(new RegExp(`^question:${question}$`));
        await inspector.chooses(`#question-${question}`, value);
        await inspector.sees(/Answered: /, `#question-${question}`);
      }
      const unclear = (await inspector.goesOn(/^columns:cedar-pins\.csv$/)).id;
      assert.equal(unclear, await inspector.columnHeaded("Kxyz"), "the page leads to the very column");
      await inspector.picksByKey(`#${unclear}`, "id");
      await first.press("Enter");
      await inspector.hears(/^Taken: column 1 "Kxyz" taken as sample or reading id/);
      await inspector.focuses("#photos-take-all");
      await first.press("Enter");
      await inspector.hears(/photograph/i);

      // Can it be trusted? The disc is named as the check standard, and its certificate is typed in.
      await inspector.goesByKeyTo("trust");
      await inspector.writesByKey("#who-initials", "RW");
      await inspector.writesByKey("#act-check_samples--", "CHK-1");
      await inspector.hears(/^Taken: .*CHK-1/);
      await inspector.opensFold("#certificates");
      await inspector.givesCertificate("CHK-1", "C-7", { Cd: ["100", "4"], Pb: ["1000", "20"], Hg: ["1000", "20"], Cr: ["1000", "20"], Br: ["1000", "20"] });
      await inspector.opensFold("#checks-shown");
      await inspector.sees(/Pb\s+good\s+1004[\s\S]*Pb\s+good\s+995/, "#checks-shown");

      // What does it say? Eight in ten are quick to see; the one that is over is looked at closely.
      const found = await inspector.lots();
      assert.deepEqual(Object.keys(found).sort(), ["A-1", "B-1", "C-1"]);
      assert.match(found["A-1"].is, /not accept/i);
      assert.match(found["B-1"].is, /hold/i);
      await inspector.goesByKeyTo("says");
      await first.press("/");
      await first.until("the filter", () => document.activeElement.id === "filter-text");
      await first.keys("AH");
      await inspector.sees(/^3 of 8/, "#readings-shown");
      await inspector.picksByKey("#filter-outcome", "OL");
      await first.press("Enter");
      await inspector.sees(/^1 of 8/, "#readings-shown");
      await inspector.opensReading("AH-3");
      await inspector.sees(/1500\.5[\s\S]*3/, "#detail");
      assert.ok((await first.count("#detail .figure-frame svg")) > 0, "the ruler is there");
      await first.press("Escape");
      await inspector.pressesByKey("Show all", "#says-table");

      // Class, lot size, and who says so.
      await inspector.goesByKeyTo("trust");
      for (const [lot, supplier, size] of [["A-1", "Alder", "40"], ["B-1", "Birch", "12"], ["C-1", "Cedar", "200"]]) {
        await inspector.writesByKey(`#act-lot_size-lot_3a_${supplier}_20_Works_7c_${lot}-`, size);
        await inspector.hears(new RegExp(`^Taken: lot size .*${size}`));
      }

      // The clip lay askew: its reading is set aside, which clears nothing; and taken back, since it did not.
      await inspector.opensReading("BC-1");
      await inspector.writesByKey("#of-reading input[type=text]", "the clip lay askew under the beam");
      await inspector.hears(/^Taken: set aside: the clip lay askew/);
      const aside = (await inspector.lots())["B-1"];
      assert.match(aside.is, /hold/i);
      assert.match(aside.text, /set aside was not below limit[\s\S]*clears nothing/);
      assert.equal((await inspector.addsUp()).came, 12, "no row is gone for it");
      await inspector.focuses("#undo");
      await first.press("Enter");
      await inspector.hears(/^Undone: set aside/);
      assert.doesNotMatch((await inspector.lots())["B-1"].text, /set aside was/);

      // Signed, and taken away: the report in three lengths, the laboratory's request, the labels.
      await inspector.goesByKeyTo("write");
      await inspector.writesByKey("#act-title--", "Stick of Wednesday");
      await inspector.hears(/^Taken: title/);
      await inspector.writesByKey("#act-inspector--", "R. W., incoming inspection");
      await inspector.hears(/^Taken: inspector/);
      for (const file of ["report.html", "report-one-page.html", "report-annex.html", "laboratory-request.html", "labels.html"]) {
        papers[file] = await inspector.takesAway(file);
        assert.match(String(papers[file]), /<html/);
      }
      const { sources, lots, acts } = await inspector.findings();
      const all = sources.flatMap((source) => Object.entries(source.rows ?? {}));
      assert.ok(acts.length >= 12 && lots.length === 3 && all !== null);
      inspector.isContent();
    } finally {
      await first.close();
    }

    // The next morning, at another desk: what was filed is proved, with the files that lie beside it.
    const second = await open();
    const colleague = new Person(second);
    try {
      await colleague.walksTo("#enter-prove");
      await second.press("Enter");
      await second.until("the place", () => !document.getElementById("place-prove").hidden);
      await colleague.brings("Files it was made from", writtenFiles(Object.fromEntries(stick.map((file) => [file, onTheStick(file)]))));
      await colleague.brings("Report to check", writtenFiles({ "report.html": papers["report.html"] }));
      await colleague.sees(/Agrees/, "#prove-results");
      await colleague.sees(/alder-housing\.csv/, "#prove-results");
      colleague.isContent();
    } finally {
      await second.close();
    }
  });
}
