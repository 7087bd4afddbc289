// A panicked instance is never called again: the page says which file and step, starts a new one, and reads the rest.

import assert from "node:assert/strict";
import { test } from "node:test";
import { addedToWorker, visitChromium, writtenFiles } from "./drive.mjs";

const GOOD = "Sample,Part,Material,Lot,Supplier,Class,Pb mg/kg,Pb u (1s)\r\nS-1,P-1,housing,A-1,Alder Works,polymer,12,5\r\n";

// The product has no way to be made to panic, so the worker's text is given one: a chunk that holds the word, or a
// review asked for while the word is on the page, hits a real trap of a real module.
const TRAPS = `
  const RealWorker = Worker;
  window.workersStarted = 0;
  window.Worker = class extends RealWorker {
    constructor(url) {
      super(url);
      window.workersStarted += 1;
    }
  };
  ${addedToWorker(`
    const { push, detail, rows } = wasm_bindgen.Session.prototype;
    wasm_bindgen.Session.prototype.rows = function (...asked) {
      const views = rows.apply(this, asked);
      if (views.some((view) => view.id === "TRAP-ON-ROWS")) trap();
      return views;
    };
    wasm_bindgen.Session.prototype.push = function (bytes) {
      if (new TextDecoder().decode(bytes).includes("TRAP-ON-PUSH")) trap();
      return push.call(this, bytes);
    };
    wasm_bindgen.Session.prototype.detail = function (index) {
      const view = detail.call(this, index);
      if (view.row.id === "TRAP-ON-DETAIL") trap();
      return view;
    };
  `)}
`;

test("a crash while reading names the file and the step, and the other files are there", async () => {
  const visit = await visitChromium({ before: TRAPS });
  try {
    await visit.choose("Result files", writtenFiles({ "a.csv": GOOD, "crash.csv": GOOD.replace("S-1", "TRAP-ON-PUSH"), "z.csv": GOOD.replace("S-1", "S-9") }));
    await visit.until("the trouble", () => document.querySelectorAll("#troubles .trouble").length === 1);
    const told = await visit.text("#troubles");
    assert.match(told, /reading a file/);
    assert.match(told, /crash\.csv/);
    // What the program itself said is for whoever helps, and stands in a fold.
    assert.match(await visit.evaluate(() => document.querySelector("#troubles .raw-text").textContent), /unreachable/);
    await visit.event(/2 of 3 files read/);
    await visit.goTo("says");
    assert.match(await visit.text("#readings-shown"), /^2 of 2/);
    assert.equal(await visit.evaluate(() => window.workersStarted), 2);
  } finally {
    await visit.close();
  }
});

test("a crash that comes back whenever the table is shown ends, and the inspection is kept to go back to", async () => {
  const visit = await visitChromium({ before: TRAPS });
  try {
    await visit.choose("Result files", writtenFiles({ "a.csv": GOOD.replace("S-1", "TRAP-ON-ROWS") }));
    await visit.goTo("says");
    await visit.until("the trouble", () => /A few at a time|a few at a time/.test(document.querySelector("#troubles").textContent));
    assert.match(await visit.text("#troubles"), /showing readings/);
    assert.ok((await visit.evaluate(() => window.workersStarted)) <= 4);
    assert.equal(await visit.evaluate(() => document.getElementById("bring-back").hidden), false);
  } finally {
    await visit.close();
  }
});

test("a crash while looking at a reading brings back all files and acts", async () => {
  const visit = await visitChromium({ before: TRAPS });
  try {
    await visit.choose("Result files", writtenFiles({ "a.csv": GOOD, "b.csv": GOOD.replace("S-1", "TRAP-ON-DETAIL") }));
    await visit.reviewed();
    await visit.goTo("write");
    await visit.type("#act-title--", "Before the crash");
    await visit.press("Enter");
    await visit.until("the title", () => document.getElementById("act-title---back") !== null);
    await visit.goTo("says");
    const row = await visit.until("the row", () => [...document.querySelectorAll(".grid-body [role=row]")].find((one) => one.textContent.includes("TRAP-ON-DETAIL"))?.getAttribute("aria-rowindex"));
    await visit.click(`.grid-body [role=row][aria-rowindex="${row}"] [role=gridcell]`);
    await visit.until("the trouble", () => document.querySelectorAll("#troubles .trouble").length === 1);
    assert.match(await visit.text("#troubles"), /showing one reading/);
    assert.equal(await visit.evaluate(() => document.getElementById("detail").hidden), true);
    await visit.until("the table to be back", () => document.querySelector("#work").hidden && /^2 of 2/.test(document.querySelector("#readings-shown").textContent));
    await visit.goTo("write");
    assert.equal(await visit.evaluate(() => document.getElementById("act-title--").value), "Before the crash");
    assert.equal(await visit.evaluate(() => window.workersStarted), 2);
  } finally {
    await visit.close();
  }
});
