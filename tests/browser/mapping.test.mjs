// What each column means: shown with its evidence, changed with one pick, undone, remembered, and carried in a file.

import assert from "node:assert/strict";
import { test } from "node:test";
import { browsers, openColumns, visitChromium, writtenFiles } from "./drive.mjs";
import { workbookOf, zipOf } from "./packing.mjs";

// Headings of nobody's: no word that is known but Pb, and no unit is stated.
const ODD = `Kxyz;Wxyz;Pb;Pb dev;Qxyz;Uxyz\n${[1, 2, 3].map((n) => `P7-L13-${n};H-2;${n * 12};${n};${n * 700};fine`).join("\n")}\n`;

const COLUMN = (number) => `act-column-0-0-${number}`;
const rolesShown = () => [...document.querySelectorAll(".meaning-form select[id$='-role']")].map((list) => list.value);
const confidences = () => [...document.querySelectorAll(".meaning-form .confidence strong")].map((word) => word.textContent);

async function opened(visit, files) {
  await visit.choose("Result files", writtenFiles(files));
  await visit.reviewed();
  await visit.goTo("came-in");
  await openColumns(visit);
  await visit.until("the rows", () => document.querySelectorAll(".mapping tbody tr").length > 0);
}

/** Picks from a list, once it is there. */
async function pick(visit, id, value) {
  await visit.until(`#${id}`, (wanted) => document.getElementById(wanted) !== null, id);
  await visit.pick(`#${id}`, value);
}

async function findings(visit) {
  await visit.goTo("write");
  const found = JSON.parse(String(await visit.downloaded("findings.json", () => visit.click("#save-findings-json"))));
  await visit.goTo("came-in");
  return found;
}

for (const { name, visit: open } of browsers) {
  test(`in ${name} a column changed by hand shows its effect, is undone, travels in a file and means the same in a fresh page`, async () => {
    let visit = await open();
    let saved;
    try {
      await opened(visit, { "odd.csv": ODD });
      assert.deepEqual(await visit.evaluate(rolesShown), ["unused", "unused", "value", "uncertainty", "unused", "unused"]);
      const sure = await visit.evaluate(confidences);
      assert.deepEqual([sure[0], sure[2]], ["please look", "sure"]);
      assert.match(await visit.text(".look-list"), /columns to look at[\s\S]*5 Qxyz/);
      assert.equal(await visit.evaluate(() => document.querySelector(".mapping tbody tr").innerText.replace(/\s+/g, " ")), "2 P7-L13-1 H-2 12 1 700 fine");

      await pick(visit, `${COLUMN(5)}-role`, "value");
      await visit.until("the question which element", (id) => document.activeElement.id === `${id}-of`, COLUMN(5));
      assert.equal((await findings(visit)).acts.length, 0, "half a meaning is not recorded");
      await pick(visit, `${COLUMN(5)}-of`, "Br");
      await visit.event(/^Taken: column 5 "Qxyz" taken as value Br/);
      await pick(visit, `${COLUMN(5)}-unit`, "mg/kg");
      await visit.event(/taken as value Br mg\/kg/);
      await pick(visit, `${COLUMN(1)}-role`, "id");
      await visit.event(/column 1 "Kxyz" taken as sample or reading id/);
      assert.match(await visit.text(`#${COLUMN(5)}`), /a person said so/);
      const changed = await findings(visit);
      assert.deepEqual(changed.readings.map((reading) => [reading.id, reading.elements.Br.value_mg_kg]), [["P7-L13-1", 700], ["P7-L13-2", 1400], ["P7-L13-3", 2100]]);

      await visit.click("#undo");
      await visit.event(/^Undone: column 1/);
      assert.equal((await findings(visit)).readings[0].id, null);
      await visit.click("#redo");
      await visit.event(/^Done again: column 1/);
      saved = await visit.downloaded("mapping.toml", () => visit.click("#save-mapping"));
      assert.match(String(saved), /value Br mg\/kg/);
      assert.match(String(saved), /Kxyz/, "the headings stand in it for the reader");
      assert.doesNotMatch(String(saved), /P7-L13|700|odd\.csv/, "no measurement and no file travels with it");
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
    visit = await open();
    try {
      await visit.choose("Mapping file", writtenFiles({ "mapping.toml": saved }));
      await visit.event(/^Meanings of columns taken from mapping\.toml/);
      await opened(visit, { "another.csv": ODD.replaceAll("P7", "P8") });
      assert.deepEqual(await visit.evaluate(rolesShown), ["id", "unused", "value", "uncertainty", "value", "unused"]);
      assert.deepEqual((await findings(visit)).readings.map((reading) => [reading.id, reading.elements.Br.value_mg_kg]), [["P8-L13-1", 700], ["P8-L13-2", 1400], ["P8-L13-3", 2100]]);
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });

  test(`in ${name} a column changed by hand is remembered after a reload, forgotten at a press, and brought back`, async () => {
    const visit = await open();
    try {
      await opened(visit, { "odd.csv": ODD });
      await pick(visit, `${COLUMN(1)}-role`, "id");
      await visit.event(/^Taken: column 1/);
      await visit.until("the browser's memory", () => (localStorage.getItem("plumbline.mapping") ?? "").includes("id"));
      assert.equal(await visit.evaluate(() => /P7-L13|700/.test(localStorage.getItem("plumbline.mapping"))), false, "no measurement is kept");
      visit.page.on("dialog", (dialog) => void dialog.accept());
      await visit.reload();
      await opened(visit, { "next.csv": ODD.replaceAll("fine", "good") });
      assert.match(await visit.text("#came-in"), /Columns remembered for these headings are used\./);
      assert.equal((await visit.evaluate(rolesShown))[0], "id");
      assert.equal((await findings(visit)).acts[0].note, "remembered in this browser");

      await visit.click("#forget-columns");
      await visit.event(/^Forgotten/);
      assert.equal((await visit.evaluate(rolesShown))[0], "unused");
      await visit.until("nothing remembered", () => localStorage.getItem("plumbline.mapping") === null);
      await visit.click("#recall-columns");
      await visit.event(/used again/);
      assert.equal((await visit.evaluate(rolesShown))[0], "id");
      await visit.until("remembered again", () => (localStorage.getItem("plumbline.mapping") ?? "").includes("id"));

      await visit.click("#keep-nothing");
      await visit.until("nothing kept", () => localStorage.getItem("plumbline.mapping") === null);
      await visit.reload();
      await opened(visit, { "odd.csv": ODD });
      assert.equal(await visit.evaluate(() => document.getElementById("keep-nothing").checked), true);
      assert.equal((await visit.evaluate(rolesShown))[0], "unused");
      await pick(visit, `${COLUMN(1)}-role`, "id");
      await visit.event(/^Taken: column 1/);
      await visit.goTo("says");
      assert.equal(await visit.evaluate(() => localStorage.getItem("plumbline.mapping")), null, "nothing is kept while nothing is to be kept");
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });

  test(`in ${name} a question of the unit shows the range of the numbers, and is never answered by itself`, async () => {
    const visit = await open();
    try {
      await visit.choose("Result files", writtenFiles({ "odd.csv": ODD }));
      await visit.reviewed();
      await visit.goTo("came-in");
      await visit.until("the range", () => document.querySelector("#question-unit_not_stated .evidence-list") !== null);
      assert.match(await visit.text("#question-unit_not_stated"), /Pb 3 numbers from 12 to 36/);
      assert.match(await visit.text("#question-sigma_multiple_not_stated"), /Pb dev 3 numbers from 1 to 3/);
      const found = await findings(visit);
      assert.equal(found.readings[0].elements.Pb.state, "unit_unknown");
      assert.equal(found.readings[0].elements.Pb.value_mg_kg, null);
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });
}

test("an answer ticked for the headings is remembered with them", async () => {
  const visit = await visitChromium();
  try {
    await visit.choose("Result files", writtenFiles({ "odd.csv": ODD }));
    await visit.reviewed();
    await visit.goTo("came-in");
    await visit.page.locator("#question-unit_not_stated").getByLabel("ppm").check();
    await visit.page.locator("#question-unit_not_stated").getByLabel("Also for later files with these headings").check();
    await visit.page.locator("#question-unit_not_stated").getByRole("button", { name: /^Set/ }).click();
    await visit.event(/^Taken: unit of values/);
    assert.match(await visit.text("#question-unit_not_stated"), /Answered: ppm/);
    await visit.until("the browser's memory", () => (localStorage.getItem("plumbline.mapping") ?? "").includes("unit_of_measure"));
    visit.page.on("dialog", (dialog) => void dialog.accept());
    await visit.reload();
    await visit.choose("Result files", writtenFiles({ "later.csv": ODD }));
    await visit.reviewed();
    assert.equal((await findings(visit)).readings[0].elements.Pb.value_mg_kg, 12);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("by keys alone a meaning is passed over without being recorded, and taken with Enter", async () => {
  const visit = await visitChromium();
  try {
    await opened(visit, { "odd.csv": ODD });
    await visit.page.focus(`#${COLUMN(6)}-role`);
    const read = () => visit.evaluate(() => document.querySelectorAll(".mapping tbody tr").length);
    await visit.press("ArrowUp");
    await visit.press("ArrowUp");
    const passed = await visit.evaluate((id) => document.getElementById(`${id}-role`).value, COLUMN(6));
    assert.notEqual(passed, "unused");
    assert.ok((await read()) > 0);
    assert.equal((await findings(visit)).acts.length, 1, "leaving the list takes what was picked, once");
    await visit.page.focus(`#${COLUMN(2)}-role`);
    await visit.press("p");
    await visit.press("Enter");
    await visit.event(/^Taken: column 2 "Wxyz"/);
    assert.equal(await visit.evaluate(() => document.activeElement.id), `${COLUMN(2)}-role`, "the focus stays where it was");
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("headings that were not found are pointed at, and the table is read from there", async () => {
  const visit = await visitChromium();
  try {
    const table = "Lab sheet\nmade by hand\nalpha,beta,gamma\nS-1,12,1\nS-2,14,1\n";
    await visit.choose("Result files", writtenFiles({ "none.csv": table }));
    await visit.reviewed();
    await visit.goTo("came-in");
    await visit.until("the rows to point at", () => document.querySelectorAll("[id^=act-pointed] tbody tr").length === 5);
    await visit.page.getByRole("button", { name: /Headings are here line 3/ }).click();
    await visit.event(/heading row set to line 3/);
    await visit.until("the columns", () => document.querySelectorAll(".mapping tbody tr").length === 2);
    await pick(visit, `${COLUMN(1)}-role`, "id");
    await visit.event(/column 1 "alpha"/);
    await pick(visit, `${COLUMN(2)}-role`, "value");
    await pick(visit, `${COLUMN(2)}-of`, "Pb");
    await visit.event(/column 2 "beta" taken as value Pb/);
    await pick(visit, `${COLUMN(2)}-unit`, "mg/kg");
    await visit.event(/value Pb mg\/kg/);
    assert.deepEqual((await findings(visit)).readings.map((reading) => [reading.id, reading.elements.Pb.value_mg_kg]), [["S-1", 12], ["S-2", 14]]);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("an id that holds lot and spot is cut as one example shows, and one that does not fit stays whole", async () => {
  const visit = await visitChromium();
  try {
    const table = "Sample,Pb mg/kg,Pb u (1s)\nP7-L13-1,12,1\nP7-L14-2,13,1\nblank,14,1\n";
    await opened(visit, { "ids.csv": table });
    const fold = "details[id^='act-id_pattern']";
    await visit.until("the fold", (wanted) => document.querySelector(wanted) !== null, fold);
    await visit.click(`${fold} summary`);
    const piece = (at) => `act-id_pattern-0-0--piece-${at}`;
    await pick(visit, piece(0), "part");
    await visit.until("a pattern", () => document.querySelector(".id-pattern code + *, .id-pattern p code")?.textContent.includes("{part}"));
    await pick(visit, piece(1), "lot");
    await visit.until("two names", () => document.querySelector(".id-pattern p code")?.textContent === "{part}-{lot}-{*}");
    assert.match(await visit.text(".id-pattern"), /P7-L14-2 → part: P7 · lot: L14[\s\S]*blank → does not fit/);
    await visit.page.getByRole("button", { name: "Cut ids like this" }).click();
    await visit.event(/combined ids are made up as \{part\}-\{lot\}-\{\*\}/);
    const { readings } = await findings(visit);
    assert.deepEqual(readings.map((reading) => [reading.part, reading.lot]), [["P7", "L13"], ["P7", "L14"], [null, null]]);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("a mapping file with a wrong role changes nothing and names its line and column", async () => {
  const visit = await visitChromium();
  try {
    await visit.choose("Result files", writtenFiles({ "odd.csv": ODD }));
    await visit.reviewed();
    const bad = 'schema = "plumbline.mapping/1"\n[[header]]\nfingerprint = "0123"\n[header.columns]\n1 = "weight"\n';
    await visit.choose("Mapping file", writtenFiles({ "mapping.toml": bad }));
    await visit.until("the trouble", () => document.querySelectorAll("#troubles .trouble").length === 1);
    assert.match(await visit.text("#troubles"), /The mapping file was not taken[\s\S]*mapping\.toml, line 5, column \d/);
    assert.equal((await findings(visit)).acts.length, 0);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("a browser that refuses to keep anything says so, and the work goes on", async () => {
  const visit = await visitChromium({
    before: () => {
      Storage.prototype.setItem = () => {
        throw new DOMException("full", "QuotaExceededError");
      };
    },
  });
  try {
    await opened(visit, { "odd.csv": ODD });
    await pick(visit, `${COLUMN(1)}-role`, "id");
    await visit.event(/^Taken: column 1/);
    await visit.until("the words", () => document.querySelector(".remembered .hint").textContent.startsWith("This browser keeps nothing"));
    assert.equal((await findings(visit)).readings[0].id, "P7-L13-1");
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("the encoding of a text is shown with how it was found, and another can be chosen", async () => {
  const visit = await visitChromium();
  try {
    const bytes = Buffer.concat([Buffer.from("Sample,Supplier,Pb mg/kg,Pb u (1s)\nS-1,Erle "), Buffer.from([0xc4, 0xd6, 0xdc]), Buffer.from(",12,1\n")]);
    await opened(visit, { "west.csv": bytes });
    assert.match(await visit.text(".facts"), /Text encoding/);
    await visit.evaluate(() => {
      for (const fold of document.querySelectorAll("details[id^='act-correct']")) fold.open = true;
    });
    await pick(visit, "act-text_encoding-source_3a_west_2e_csv-", "windows-1251");
    await visit.event(/text read as windows-1251/);
    assert.match(await visit.text(".facts"), /Cyrillic \(Windows-1251\): a person said so/);
    assert.deepEqual((await findings(visit)).readings.map((reading) => reading.supplier), ["Erle ДЦЬ"]);
    await visit.click("#undo");
    await visit.event(/^Undone/);
    assert.doesNotMatch(await visit.text(".facts"), /Cyrillic/);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("all sheets of a workbook are listed, the one that was read is picked, and another is one press away", async () => {
  const visit = await visitChromium();
  try {
    const head = ["Sample", "Pb mg/kg", "Pb u (1s)", "Cd mg/kg"];
    const book = workbookOf([
      { name: "Notes", rows: [["made by hand"]] },
      { name: "Monday", rows: [head, ["M-1", 12, 1, 2], ["M-2", 13, 1, 2]] },
      { name: "Draft", hidden: true, rows: [["Sample", "Pb mg/kg", "Pb u (1s)"], ["D-1", 99, 1]] },
    ]);
    await visit.choose("Result files", writtenFiles({ "week.xlsx": book }));
    await visit.reviewed();
    await visit.goTo("came-in");
    const listed = await visit.evaluate(() => [...document.querySelectorAll("form[id^=act-sheet] .choice")].map((one) => [one.innerText, one.querySelector("input").checked]));
    assert.equal(listed.length, 3);
    assert.match(listed[1][0], /^Monday: 3 rows[\s\S]*read now$/);
    assert.match(listed[2][0], /^Draft[\s\S]*hidden/);
    assert.deepEqual(listed.map(([, picked]) => picked), [false, true, false]);
    await visit.click("form[id^=act-sheet] .choice:nth-child(3) input");
    await visit.click("form[id^=act-sheet] button");
    await visit.event(/sheet "Draft" chosen/);
    assert.deepEqual((await findings(visit)).readings.map((reading) => reading.id), ["D-1"]);
    await visit.click("#undo");
    await visit.event(/^Undone/);
    assert.deepEqual((await findings(visit)).readings.map((reading) => reading.id), ["M-1", "M-2"]);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

for (const { name, visit: open } of browsers) {
  test(`in ${name} each table of an archive is a file of its own that names the archive, and they are taken out together`, async () => {
    const visit = await open();
    try {
      const table = (id) => `Sample,Pb mg/kg,Pb u (1s)\n${id},12,1\n`;
      const packed = zipOf({ "a/one.csv": table("A-1"), "two.csv": table("B-1"), "read me.txt": "Dear inspector,\nsee inside.\n" });
      await visit.choose("Result files", writtenFiles({ "stick.zip": packed, "zz.csv": table("Z-1") }));
      await visit.event(/2 of 2 files read/);
      await visit.goTo("came-in");
      await visit.evaluate(() => {
        for (const fold of document.querySelectorAll("details.source")) fold.open = true;
      });
      await visit.until("the archive's name", () => document.querySelectorAll("details.source .facts").length >= 3);
      assert.match(await visit.evaluate(() => [...document.querySelectorAll("details.source")].find((one) => one.textContent.includes("one.csv")).innerText), /From the archive\s+stick\.zip/);
      assert.deepEqual((await findings(visit)).readings.map((reading) => reading.id).sort(), ["A-1", "B-1", "Z-1"]);
      await visit.evaluate(() => [...document.querySelectorAll("details.source button")].find((one) => one.textContent.startsWith("Take the whole archive stick.zip out")).click());
      await visit.event(/stick\.zip was taken out/);
      assert.deepEqual((await findings(visit)).readings.map((reading) => reading.id), ["Z-1"]);
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });
}
