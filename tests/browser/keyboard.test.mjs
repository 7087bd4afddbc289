// Everything by keyboard alone, and the table's long reach.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { test } from "node:test";
import { browsers, deliveries, reportOf, top, until, visitChromium, writtenFiles } from "./drive.mjs";

/** A long table of invented readings, all alike but for their ids. */
export function longTable(rows) {
  const lines = ["Sample,Part,Material,Lot,Supplier,Class,Pb mg/kg,Pb u (1s),Cd mg/kg,Cd u (1s)"];
  for (let row = 1; row <= rows; row += 1) lines.push(`S-${row},P-1,housing,A-1,Alder Works,polymer,${(row % 90) + 10},5,10,3`);
  return `${lines.join("\r\n")}\r\n`;
}

const where = () => {
  const cell = document.activeElement;
  const row = cell.closest("[role=row]");
  const box = cell.getBoundingClientRect();
  const sight = cell.closest(".grid-scroll")?.getBoundingClientRect();
  return {
    row: Number(row?.getAttribute("aria-rowindex")),
    first: row?.firstElementChild?.textContent ?? "",
    inSight: sight !== undefined && box.top >= sight.top && box.bottom <= sight.bottom + 1,
    live: document.querySelectorAll(".grid-body [role=row]").length,
  };
};

for (const { name, visit: open } of browsers) {
  test(`in ${name} keys reach both ends of a table longer than any element may be high`, async () => {
    const rows = 410_000;
    const visit = await open();
    try {
      await visit.choose("Result files", writtenFiles({ "long.csv": longTable(rows) }));
      await visit.reviewed();
      await visit.goTo("says");
      await visit.evaluate(() => {
        const sort = document.getElementById("filter-sort");
        sort.value = "file";
        sort.dispatchEvent(new Event("change"));
      });
      await visit.until("file order", () => document.querySelector('.grid-body [aria-rowindex="2"]')?.textContent.includes("S-1"));
      await visit.click('.grid-body [role=row][aria-rowindex="2"] [role=gridcell]');

      await visit.press("End");
      await visit.until("the last row", (last) => document.activeElement.closest("[role=row]")?.textContent.includes(`S-${last}`), rows);
      const end = await visit.evaluate(where);
      assert.equal(end.row, rows + 1);
      assert.ok(end.inSight, "the last row is in sight");
      assert.ok(end.live < 80, `only rows in sight exist, not ${end.live}`);

      await visit.press("PageUp");
      const page = await visit.evaluate(where);
      assert.ok(page.row < rows + 1 && page.row > rows - 60, `a screenful up, at ${page.row}`);
      assert.ok(page.inSight);

      await visit.press("ArrowUp");
      assert.equal((await visit.evaluate(where)).row, page.row - 1);

      await visit.press("Home");
      await visit.until("the first row", () => document.activeElement.closest("[role=row]")?.textContent.includes("S-1"));
      assert.equal((await visit.evaluate(where)).row, 2);

      await visit.type("#go-to-row", "205000");
      await visit.press("Enter");
      await visit.until("row 205000", () => document.activeElement.closest("[role=row]")?.textContent.includes("S-205000"));
      assert.ok((await visit.evaluate(where)).inSight);
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });
}

test("one notch of the wheel moves a few rows of a scaled table, and dragging the bar leaps", async () => {
  const visit = await visitChromium();
  try {
    await visit.choose("Result files", writtenFiles({ "long.csv": longTable(410_000) }));
    await visit.reviewed();
    await visit.goTo("says");
    const topRow = () => {
      const sight = document.querySelector(".grid-scroll").getBoundingClientRect();
      const rows = [...document.querySelectorAll(".grid-body [role=row]:not(.grid-parked)")];
      return Math.min(...rows.filter((row) => row.getBoundingClientRect().top >= sight.top + 43).map((row) => Number(row.getAttribute("aria-rowindex"))));
    };
    // The recovery code comes when the copy is written, and takes the sight.
    await visit.event(/1 of 1 file read/);
    await visit.evaluate(() => document.querySelector(".grid-scroll").scrollIntoView({ block: "center" }));
    const before = await visit.evaluate(topRow);
    const box = await visit.page.locator(".grid-scroll").boundingBox();
    await visit.page.mouse.move(box.x + 200, box.y + 200);
    await visit.page.mouse.wheel(0, 132);
    await until("three rows", async () => (await visit.evaluate(topRow)) === before + 3);

    await visit.evaluate(() => {
      const scroll = document.querySelector(".grid-scroll");
      scroll.scrollTop = (scroll.scrollHeight - scroll.clientHeight) / 2;
    });
    await visit.until("the middle", () => [...document.querySelectorAll(".grid-body [role=row]")].some((row) => Math.abs(Number(row.getAttribute("aria-rowindex")) - 205_000) < 30));
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("a delivery can be reviewed and a reading opened without a mouse", async () => {
  const visit = await visitChromium();
  try {
    await visit.choose("Result files", writtenFiles({ "short.csv": longTable(12) }));
    await visit.reviewed();
    const focusedId = () => document.activeElement.id;

    await visit.page.focus("#step-says");
    await visit.press("Enter");
    await visit.until("the heading to have the focus", () => document.activeElement.id === "heading-says");

    // From the heading on, Tab alone must come to the table.
    let steps = 0;
    while (!(await visit.evaluate(() => document.activeElement.getAttribute("role") === "gridcell"))) {
      await visit.press("Tab");
      steps += 1;
      assert.ok(steps < 120, `Tab does not reach the table; it stands on ${await visit.evaluate(focusedId)}`);
    }
    await visit.press("ArrowDown");
    await visit.press("Enter");
    await visit.until("the detail's heading to have the focus", () => document.activeElement.id === "detail-heading");
    await visit.press("Escape");
    await visit.until("the focus back in the table", () => document.activeElement.closest("[role=row]")?.getAttribute("aria-rowindex") === "3");

    // Step by step: the reading was shut, before that opened, before that came the place.
    for (let back = 0; back < 3 && (await visit.evaluate(() => location.hash)) !== "#came-in"; back += 1) {
      await visit.page.goBack();
      await visit.evaluate(() => new Promise((go) => setTimeout(go, 500)));
    }
    await visit.until("the place before", () => location.hash === "#came-in" && !document.getElementById("place-came-in").hidden);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("arrow keys pass over answers without recording one, and after each answer the focus stands on the next question", async () => {
  const visit = await visitChromium();
  try {
    await visit.choose("Result files", writtenFiles({ "r.csv": "Sample,Part,Material,Lot,Supplier,Pb mg/kg,Pb u\r\nS-1,P-1,housing,A-1,Alder Works,650,40\r\n" }));
    await visit.reviewed();
    await visit.goTo("came-in");
    const open = () => document.querySelectorAll(".question[data-missing]").length;
    assert.equal(await visit.evaluate(open), 2, "the multiple and the class");
    await visit.page.focus(".question[data-missing] input[type=radio]");
    await visit.press("ArrowDown");
    await visit.press("ArrowDown");
    assert.equal(await visit.evaluate(open), 2, "nothing was recorded");
    assert.equal(await visit.evaluate(() => document.activeElement.type), "radio");
    const first = await visit.evaluate(() => document.activeElement.closest(".question").id);

    await visit.press("Enter");
    await visit.until("one question left, with the focus", () => document.querySelectorAll(".question[data-missing]").length === 1 && document.activeElement.closest(".question[data-missing]") !== null);
    assert.match(await visit.text(`#${first}`), /Answered: /);
    await visit.press("Space");
    await visit.press("Enter");
    await visit.until("the focus on taking the answer back", () => document.querySelectorAll(".question[data-missing]").length === 0 && /^Take back/.test(document.activeElement.textContent));
    await visit.press("Enter");
    await visit.until("the question open again, with the focus", () => document.activeElement.closest(".question[data-missing]") !== null);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("a row that is not there is said not to be, and one that is comes into sight", async () => {
  const visit = await visitChromium();
  try {
    await visit.choose("Result files", writtenFiles({ "short.csv": longTable(30) }));
    await visit.reviewed();
    await visit.goTo("says");
    await visit.type("#go-to-row", "31");
    await visit.press("Enter");
    assert.match(await visit.text("#go-to-row-refusal"), /There is no row “31”: 30 rows/);
    await visit.type("#go-to-row", "30");
    await visit.press("Enter");
    await visit.until("row 30", () => document.activeElement.closest("[role=row]")?.getAttribute("aria-rowindex") === "31");
    const box = await visit.evaluate(() => document.activeElement.getBoundingClientRect().toJSON());
    assert.ok(box.top >= 0 && box.bottom <= 900, `the row is in the window: ${JSON.stringify(box)}`);
    assert.equal(await visit.text("#go-to-row-refusal"), "");
  } finally {
    await visit.close();
  }
});

test("“Give it now” puts the focus into the field that is missing", async () => {
  const visit = await visitChromium();
  try {
    await visit.choose("Result files", writtenFiles({ "short.csv": longTable(3) }));
    await visit.reviewed();
    await visit.goTo("next");
    await visit.page.getByRole("button", { name: /Give it now.*Lot size/ }).first().click();
    await visit.until("the lot size field", () => document.activeElement.id.startsWith("act-lot_size-lot"));
    await visit.goTo("trust");
    await visit.page.getByRole("button", { name: /The measured one is its only material/ }).click();
    await visit.event(/^Taken: /);
    assert.equal(await visit.evaluate(() => document.activeElement.closest(".per-part") !== null), true, "the focus stays with the part");
  } finally {
    await visit.close();
  }
});

test("a report can be checked from the first screen on by keys alone, and the answer has the focus", async () => {
  const delivery = deliveries().find((one) => one.name.startsWith("03-"));
  const visit = await visitChromium();
  const tabTo = async (id) => {
    for (let steps = 0; (await visit.evaluate(() => document.activeElement.id)) !== id; steps += 1) {
      assert.ok(steps < 80, `Tab does not reach #${id}`);
      await visit.press("Tab");
    }
  };
  try {
    await tabTo("enter-prove");
    await visit.press("Enter");
    await visit.until("the heading to have the focus", () => document.activeElement.id === "heading-prove");
    await tabTo("prove-report");
    await visit.choose("Report to check", writtenFiles({ "report.html": reportOf(delivery.results, delivery.settings) }));
    await visit.until("the focus on the answer", () => document.activeElement.id === "prove-result-0" && document.querySelector(".proved") !== null);
    // Back to the digest, which Enter takes.
    await visit.page.focus("#prove-beside");
    await visit.press("Tab");
    assert.equal(await visit.evaluate(() => document.activeElement.id), "prove-digest");
    await visit.page.keyboard.type("a".repeat(64));
    await visit.press("Enter");
    await visit.until("the focus on the other answer", () => document.activeElement.id === "prove-result-0" && document.querySelector('.proved[data-word="contradicted"]') !== null);
    await tabTo("prove-another");
    await visit.press("Enter");
    assert.equal(await visit.evaluate(() => document.activeElement.id), "prove-report");
    await visit.page.goBack();
    await visit.until("the first screen", () => !document.getElementById("place-start").hidden);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

// ---- the written walk ----

/** The steps of tests/keyboard-walk.md. */
function walk() {
  const rows = readFileSync(join(top, "tests/keyboard-walk.md"), "utf8").split("\n").filter((line) => line.startsWith("| "));
  return rows.slice(2).map((row) => {
    const [id, keys, happens, hears] = row.split("|").slice(1, -1).map((cell) => cell.trim());
    return { id, keys, happens, hears };
  });
}

/** Role and name of what has the focus, as the browser gives them to a screen reader. */
async function heardOfFocus(visit) {
  const told = await visit.page.locator(":focus").ariaSnapshot();
  return told.split("\n")[0].replace(/^- '?/, "");
}

/** What must be so after each step. */
const AFTER = {
  skip: () => document.activeElement.getBoundingClientRect().top >= 0,
  bring: () => location.hash === "#came-in" && document.activeElement.id === "heading-came-in",
  heard: () => document.querySelector("#work").hidden,
  ask: () => document.querySelectorAll(".question[data-missing]").length === 2,
  over: () => document.querySelectorAll(".question[data-missing]").length === 2,
  answer: () => document.querySelectorAll(".question[data-missing]").length === 1 && document.activeElement.closest(".question[data-missing]") !== null,
  class: () => document.querySelectorAll(".question[data-missing]").length === 0,
  trust: () => document.activeElement.id === "heading-trust",
  who: () => document.getElementById("who-initials").value === "QA" && document.activeElement.closest("#who") !== null,
  advisory: () => document.querySelector("#work").hidden,
  undo: () => document.activeElement.id === "undo" && document.getElementById("redo").getAttribute("aria-disabled") === "false",
  redo: () => document.activeElement.id === "redo" && document.getElementById("redo").getAttribute("aria-disabled") === "true",
  says: () => document.activeElement.id === "heading-says",
  heads: () => document.activeElement.dataset.sort === "Cd" && document.querySelectorAll('.grid-head [tabindex="0"]').length === 1,
  table: () => document.activeElement.closest("[role=row]")?.getAttribute("aria-rowindex") === "2",
  along: () => document.querySelectorAll('[role=grid] [tabindex="0"]').length <= 2 && document.activeElement.getAttribute("aria-colindex") !== "1",
  detail: () => document.activeElement.id === "detail-heading",
  shut: () => document.activeElement.closest("[role=row]")?.getAttribute("aria-rowindex") === "2" && document.getElementById("detail").hidden,
  next: () => document.activeElement.id === "heading-next",
  give: () => document.activeElement.matches("input, select, button") && document.activeElement.closest("#place-trust") !== null,
  write: () => document.activeElement.id === "heading-write",
  report: () => document.querySelector("#work").hidden,
  home: () => document.activeElement.tagName === "H1" && location.hash !== "#write",
};

test("the walk as it is written is walked, key by key, and heard as it is written", async () => {
  const steps = walk();
  assert.deepEqual(steps.map((step) => step.id), Object.keys(AFTER), "every written step has its proof, and every proof its step");
  const [file] = writtenFiles({ "delivery.csv": "Sample,Part,Material,Lot,Supplier,Pb mg/kg,Pb u\r\nS-1,P-1,housing,A-1,Alder Works,650,40\r\n" });
  const visit = await visitChromium();
  const downloads = [];
  visit.page.on("download", (download) => downloads.push(download.suggestedFilename()));
  // Listened for from the start: a listener that comes with the key may come too late.
  const choosers = [];
  visit.page.on("filechooser", (chooser) => choosers.push(chooser));
  const tabUntil = async (key, what, there) => {
    for (let pressed = 0; pressed < 200; pressed += 1) {
      await visit.press(key);
      if (await there()) return;
    }
    assert.fail(`${key} does not come to ${what}`);
  };
  const named = (name) => async () => {
    // Past the last control the focus is the browser's own, and comes round again.
    const inPage = await visit.evaluate(() => document.activeElement !== document.body && document.querySelector(":focus") !== null);
    return inPage && (await heardOfFocus(visit)).includes(`"${name}`);
  };
  const press = async (key) => {
    const [, way, name] = /^(to|back to) "(.*)"$/.exec(key) ?? [];
    if (way !== undefined) return tabUntil(way === "to" ? "Tab" : "Shift+Tab", name, named(name));
    if (key === "to the table") return tabUntil("Tab", "the table", () => visit.evaluate(() => document.activeElement.getAttribute("role") === "gridcell"));
    const typed = /^type "(.*)"$/.exec(key);
    if (typed !== null) return visit.page.keyboard.type(typed[1]);
    // A key of the browser's own, which no headless window has.
    return key === "Alt+ArrowLeft" ? visit.page.goBack() : visit.press(key);
  };
  try {
    for (const { id, keys, happens, hears } of steps) {
      const all = keys === "" ? [] : keys.split(/, (?![^"]*"(?:, |$))/);
      for (const key of all) {
        if (key.startsWith("choose ")) await (await until("the window for files", () => choosers.shift())).setFiles([file]);
        else await press(key);
      }
      await visit.until(`${id}: ${happens}`, AFTER[id]);
      const status = /^status: "(.*)"$/.exec(hears);
      if (status !== null) await visit.until(`${id}, heard: ${status[1]}`, (words) => document.querySelector('[role="status"]').textContent.includes(words), status[1]);
      else if (hears !== "") assert.ok((await heardOfFocus(visit)).startsWith(hears.replace(/"$/, "")), `${id}: ${await heardOfFocus(visit)} is heard, not ${hears}`);
      // Wherever the focus stands, it is seen.
      assert.ok(await visit.evaluate(() => {
        const shown = (node) => node !== null && getComputedStyle(node).outlineStyle === "solid" && Number.parseFloat(getComputedStyle(node).outlineWidth) >= 2;
        return shown(document.activeElement) || shown(document.activeElement.closest(".choice"));
      }), `${id}: the focus is seen`);
    }
    assert.deepEqual(downloads, ["report.html"]);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});
