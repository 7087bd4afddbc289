// The table of readings: filters, groups, columns, selection and what is copied, by hand and by keyboard alone.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { test } from "node:test";
import { browsers, deliveries, visitChromium, writtenByCommandLine, writtenFiles } from "./drive.mjs";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** Invented readings: of every tenth sample the lead lies near the low edge of its band (700 mg/kg for polymers). */
function table(rows) {
  const lines = ["Sample,Spot,Part,Material,Lot,Supplier,Class,Cd mg/kg,Cd u (1s),Pb mg/kg,Pb u (1s),As mg/kg,Sb %"];
  for (let row = 1; row <= rows; row += 1) {
    const lead = row % 10 === 0 ? 690 : row % 7 === 0 ? 2500 : row * 2;
    const sample = row === 3 ? "=1+1" : `S-${row}`;
    lines.push(`${sample},${row % 4},${["Clip", "Housing", "Lid"][row % 3]},shell,L-${row % 5},${["Alder Works", "Birch Works"][row % 2]},polymer,${row % 20},2,${lead},20,${row},0.${row % 9}1`);
  }
  return `${lines.join("\r\n")}\r\n`;
}

async function atTheTable(open, { rows = 60, ...how } = {}) {
  const visit = await open(how);
  const files = writtenFiles({ "invented.csv": table(rows) });
  await visit.choose("Result files", files);
  await visit.reviewed();
  await visit.goTo("says");
  await settled(visit);
  return { visit, files };
}

/** Every row in sight is there. */
const settled = (visit) =>
  visit.until("the rows", () => {
    const rows = [...document.querySelectorAll(".grid-body [role=row]:not(.grid-parked)")];
    return (rows.length > 0 || !document.querySelector("#readings-shown").textContent.includes("60 of")) && rows.every((row) => row.dataset.full === "yes");
  });

const shows = (visit, text) => visit.until(`“${text}”`, (wanted) => document.querySelector("#readings-shown").textContent === wanted, text);

const here = () => {
  const row = document.activeElement.closest("[role=row]");
  return { text: row?.innerText ?? "", index: Number(row?.getAttribute("aria-rowindex")), level: row?.getAttribute("aria-level"), expanded: row?.getAttribute("aria-expanded"), selected: row?.getAttribute("aria-selected") };
};

async function firstRow(visit) {
  await visit.click('.grid-body [role=row][aria-rowindex="2"] [role=gridcell]');
}

for (const { name, visit: open } of browsers) {
  test(`in ${name} what is typed narrows the table at once, and what was taken away comes back`, async () => {
    const { visit } = await atTheTable(open);
    try {
      await visit.click("#more-filters > summary");
      await visit.type("#filter-part", "hous");
      await shows(visit, "20 of 60 readings");
      await visit.type("#filter-supplier", "BIRCH");
      await shows(visit, "10 of 60 readings");
      await visit.type("#filter-lot-name", "l-1");
      await shows(visit, "2 of 60 readings");
      assert.match(await visit.text("#more-filters > summary"), /3 in use/);

      await visit.click("#filter-clear");
      await shows(visit, "60 of 60 readings");
      assert.equal(await visit.evaluate(() => document.activeElement.id), "filter-back");
      await visit.press("Enter");
      await shows(visit, "2 of 60 readings");
      assert.equal(await visit.evaluate(() => document.getElementById("filter-part").value), "hous");
      await visit.click("#filter-clear");

      // 690 is half a sigma from 700; its neighbours are far from every edge.
      await visit.type("#filter-margin", "0,5");
      await visit.pick("#filter-substance", "Pb");
      await shows(visit, "6 of 60 readings");
      await visit.type("#filter-margin", "9");
      assert.match(await visit.text("#filter-margin-refusal"), /“9” is not a number of sigma from 0.1 to 5/);
      await visit.type("#filter-margin", "0.4");
      await shows(visit, "0 of 60 readings");
      assert.equal(await visit.text("#filter-margin-refusal"), "");
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });

  test(`in ${name} the strip of a cell shows what the ruler of the reading shows`, async () => {
    const { visit } = await atTheTable(open);
    try {
      await visit.pick("#filter-sort", "file");
      for (const index of [2, 8, 11]) {
        await visit.until(`row ${index}`, (at) => document.querySelector(`.grid-body [aria-rowindex="${at}"][data-full="yes"]`) !== null, index);
        await settled(visit);
        const strip = await visit.evaluate((at) => {
          const cell = document.querySelector(`.grid-body [aria-rowindex="${at}"]`).children[2];
          const svg = cell.querySelector("svg.strip");
          const number = (of, pattern) => Number(pattern.exec(svg.querySelector(of).getAttribute("d"))[1]);
          const width = Number(svg.getAttribute("width")) - 14;
          const share = (x) => (x - 7) / width;
          return { low: share(number(".strip-band", /^M([\d.-]+) /)), high: share(number(".strip-band", /H([\d.-]+)V/)), at: share(number(".strip-bob", /L([\d.-]+) 16L/)), from: share(number(".strip-lines", /^M([\d.-]+) /)), words: cell.innerText };
        }, index);
        await visit.click(`.grid-body [role=row][aria-rowindex="${index}"] [role=gridcell]`);
        await visit.until("the ruler", (id) => document.querySelector("#detail-heading").textContent.includes(id) && document.querySelectorAll("#detail svg.ruler").length > 1, `S-${index - 1}`);
        const ruler = await visit.evaluate(() => {
          const svg = [...document.querySelectorAll("#detail svg.ruler")].find((one) => /lead|Pb/.test(one.getAttribute("aria-label")));
          const share = (x) => (Number(x) - 12) / 336;
          const band = svg.querySelector(".ruler-band");
          const lines = svg.querySelectorAll(".ruler-mark line");
          return { low: share(band.getAttribute("x")), high: share(Number(band.getAttribute("x")) + Number(band.getAttribute("width"))), at: share(lines[0].getAttribute("x1")), from: share(lines[1].getAttribute("x1")) };
        });
        // Half a pixel of the strip.
        for (const part of ["low", "high", "at", "from"]) assert.ok(Math.abs(strip[part] - ruler[part]) < 0.006, `${part} of row ${index}: ${strip[part]} and ${ruler[part]}`);
        await visit.click("#detail-close");
      }
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });

  test(`in ${name} halogens, their total and the worst of each material have rulers, and what a ruler is is one press away`, async () => {
    const visit = await open();
    try {
      const head = "Sample,Part,Material,Lot,Supplier,Class,Pb mg/kg,Pb u (1s),Br mg/kg,Br u (1s),Cl mg/kg,Cl u (1s)";
      const rows = ["S-1,Clip,shell,L-1,Elm Works,polymer,640,60,803,14,< 394,", "S-2,Clip,shell,L-1,Elm Works,polymer,20,5,10,2,30,9"];
      await visit.choose("Result files", writtenFiles({ "halogens.csv": `${[head, ...rows].join("\r\n")}\r\n` }));
      await visit.reviewed();
      await visit.goTo("says");
      await visit.click("[id^=act-lot-parts] > summary");
      await visit.until("the rulers of the worst", () => document.querySelectorAll(".material-outcome svg.strip").length === 2);
      const worst = await visit.evaluate(() => [...document.querySelectorAll(".material-outcome")].filter((one) => one.querySelector("svg.strip") !== null).map((one) => [one.querySelector(".symbol").textContent, one.title]));
      assert.deepEqual(worst.map(([symbol]) => symbol), ["Pb", "Br"]);
      assert.match(worst[0][1], /^640 mg\/kg ± 60 \(1s\) · S-1/, "the reading that shows it highest");
      await visit.click("[id^=legend-act-parts] > summary");
      await visit.until("the legend of the lots", () => document.querySelector("[id^=legend-act-parts] .legend-ruler") !== null);

      await settled(visit);
      await visit.click('.grid-body [role=row][aria-rowindex="2"] [role=gridcell]');
      await visit.until("the detail", () => document.querySelectorAll("#detail svg.ruler").length === 5);
      const said = await visit.evaluate(() => [...document.querySelectorAll("#detail svg.ruler")].map((one) => one.getAttribute("aria-label")));
      for (const wanted of [/< 394 mg\/kg\. Limit 900/, /803 mg\/kg ± 14 \(1s\)\. Limit 900/, /803 to 1197 mg\/kg\. Limit 1500/]) assert.ok(said.some((label) => wanted.test(label)), `${wanted}: ${said.join("\n")}`);
      const marks = await visit.evaluate(() => [...document.querySelectorAll("#detail svg.ruler")].map((one) => [one.querySelector(".ruler-bob") !== null, one.querySelector(".ruler-post") !== null]));
      assert.equal(marks.filter(([bob]) => !bob).length, 2, "what was not detected, and the sum with it, have no bob");
      assert.equal(marks.filter(([, post]) => post).length, 3, "the three limits");
      await visit.click("#legend-detail > summary");
      await visit.until("the legend of the detail", () => document.querySelector("#legend-detail .legend-ruler") !== null);
      await visit.evaluate(axe);
      const found = await visit.evaluate(() => window.axe.run(document.getElementById("detail")).then(({ violations }) => violations.map((one) => one.id)));
      assert.deepEqual(found, []);
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });

  test(`in ${name} readings stand in groups that are folded and unfolded by key, and say so`, async () => {
    const { visit } = await atTheTable(open);
    try {
      await visit.pick("#filter-group", "part");
      await visit.until("groups", () => document.querySelectorAll(".grid-group[data-full=yes]").length === 3);
      assert.equal(await visit.evaluate(() => document.querySelector(".grid").getAttribute("role")), "treegrid");
      assert.equal(await visit.evaluate(() => document.querySelector(".grid").getAttribute("aria-rowcount")), "4");
      const heads = await visit.evaluate(() => [...document.querySelectorAll(".grid-group")].map((row) => row.innerText.replace(/\s+/g, " ")));
      for (const head of heads) assert.match(head, /(Clip|Housing|Lid) 20 readings Worst: OL/);
      await firstRow(visit);
      let at = await visit.evaluate(here);
      assert.deepEqual([at.level, at.expanded], ["1", "true"], "a press unfolds");
      await visit.press("ArrowLeft");
      assert.equal((await visit.evaluate(here)).expanded, "false");
      await visit.press("Enter");
      assert.equal((await visit.evaluate(here)).expanded, "true");
      await visit.press("ArrowRight");
      at = await visit.evaluate(here);
      assert.deepEqual([at.level, at.index], ["2", 3], "right leads into the group");
      await visit.press("End");
      at = await visit.evaluate(here);
      assert.deepEqual([at.level, at.index], ["1", 24], "the last head stands below the unfolded group");
      await visit.press("Home");
      await visit.press("ArrowDown");
      await visit.press("ArrowLeft");
      assert.equal((await visit.evaluate(here)).index, 2, "left leads back to the head");

      // The order changes, what is unfolded stays.
      await visit.click("#filter-direction");
      await visit.until("the same group unfolded", () => document.querySelector(".grid").getAttribute("aria-rowcount") === "24");
      await visit.click("#fold-all");
      assert.equal(await visit.evaluate(() => document.querySelector(".grid").getAttribute("aria-rowcount")), "4");
      await visit.click("#unfold-all");
      assert.equal(await visit.evaluate(() => document.querySelector(".grid").getAttribute("aria-rowcount")), "64");
      await visit.click("#fold-all");
      await visit.type("#go-to-row", "30");
      await visit.press("Enter");
      at = await visit.evaluate(here);
      assert.deepEqual([at.level, at.index], ["2", 2 + 1 + 1 + 9], "its group is unfolded on the way");

      await visit.pick("#filter-group", "lot");
      await visit.until("lots", () => document.querySelectorAll(".grid-group .disposition").length === 10);
      assert.match(await visit.evaluate(() => document.querySelector(".grid-group").innerText.replace(/\s+/g, " ")), /L-\d (Alder|Birch) Works 6 readings/);
      await visit.pick("#filter-group", "");
      await visit.until("no groups", () => document.querySelector(".grid").getAttribute("role") === "grid");
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });

  test(`in ${name} the columns are chosen by keyboard and stand as at first again`, async () => {
    const { visit } = await atTheTable(open);
    try {
      const headings = () => visit.evaluate(() => [...document.querySelectorAll(".grid-headings [role=columnheader]")].map((one) => one.innerText.replace(/\s+/g, " ").trim()));
      const first = await headings();
      assert.equal(first.length, 14);
      await visit.evaluate(() => document.querySelector("#columns > summary").focus());
      await visit.press("Enter");
      await visit.evaluate(() => document.querySelector("#column-shown-Hg").focus());
      await visit.press(" ");
      await visit.evaluate(() => document.querySelector("#column-shown-element-Sb").focus());
      await visit.press(" ");
      await visit.evaluate(() => document.querySelector("#column-shown-element-As").focus());
      await visit.press(" ");
      const chosen = await headings();
      assert.ok(!chosen.some((one) => one.startsWith("Hg")));
      assert.deepEqual(chosen.slice(-2), ["As", "Sb"], "in their own order, whichever was chosen first");
      assert.equal(await visit.evaluate(() => document.activeElement.id), "column-shown-element-As");
      await visit.until("arsenic and antimony as written", () => [...document.querySelectorAll(".grid-body [role=row]")].some((row) => /^\d+ mg\/kg/.test(row.children[row.children.length - 2].textContent) && /^\d+100 mg\/kg/.test(row.lastElementChild.textContent)));
      await visit.click("#columns-as-at-first");
      assert.deepEqual(await headings(), first);
      await visit.press("Escape");
      assert.equal(await visit.evaluate(() => document.querySelector("#columns").open), false);
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });

  test(`in ${name} rows are selected by keyboard and copied as findings.csv has them`, async () => {
    const { visit, files } = await atTheTable(open);
    try {
      await visit.pick("#filter-sort", "file");
      await visit.until("file order", () => document.querySelector('.grid-body [aria-rowindex="2"]')?.textContent.includes("S-1"));
      await firstRow(visit);
      await visit.until("the reading", () => !document.querySelector("#detail").hidden);
      await visit.press("Escape");
      const chosen = () => visit.text("#readings-selected");
      await visit.page.keyboard.down("Shift");
      await visit.press("ArrowDown");
      await visit.press("ArrowDown");
      await visit.page.keyboard.up("Shift");
      assert.equal(await chosen(), "3 readings selected");
      await visit.press("ArrowDown");
      await visit.press(" ");
      assert.equal(await chosen(), "4 readings selected");
      assert.equal((await visit.evaluate(here)).selected, "true");
      await visit.press(" ");
      assert.equal(await chosen(), "3 readings selected");
      assert.equal(await visit.evaluate(() => document.querySelector("#readings-selected").getAttribute("aria-live")), "polite");

      await visit.page.keyboard.down("Control");
      await visit.press("c");
      await visit.page.keyboard.up("Control");
      await visit.until("the clipboard", () => /3 readings are on the clipboard/.test(document.querySelector("#copy-told").textContent));
      const copied = await pasted(visit);
      same(copied, files, [0, 1, 2]);
      assert.ok(copied.includes("'=1+1"), "a text that would run as a formula is made harmless");

      await visit.click("#selection-none");
      assert.equal(await chosen(), "");
      await firstRow(visit);
      await visit.page.keyboard.down("Control");
      await visit.press("a");
      await visit.page.keyboard.up("Control");
      assert.equal(await chosen(), "60 readings selected");
      await visit.press("Escape");
      assert.equal(await chosen(), "");

      // With the pointer: a run by Shift, one more by Ctrl.
      await visit.click('.grid-body [role=row][aria-rowindex="3"] [role=gridcell]');
      await visit.page.keyboard.down("Shift");
      await visit.click('.grid-body [role=row][aria-rowindex="6"] [role=gridcell]');
      await visit.page.keyboard.up("Shift");
      assert.equal(await chosen(), "4 readings selected");
      await visit.page.keyboard.down("Control");
      await visit.click('.grid-body [role=row][aria-rowindex="8"] [role=gridcell]');
      await visit.page.keyboard.up("Control");
      assert.equal(await chosen(), "5 readings selected");

      // What a filter takes away is no longer meant.
      await visit.type("#filter-text", "S-5");
      await visit.until("what is left", () => document.querySelector("#readings-selected").textContent === "1 reading selected");
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });

  test(`in ${name} a browser that refuses the clipboard leaves another press and a file`, async () => {
    const { visit, files } = await atTheTable(open);
    try {
      await visit.evaluate(() => {
        const refuse = () => Promise.reject(new DOMException("not allowed", "NotAllowedError"));
        Object.defineProperty(navigator, "clipboard", { value: { write: refuse, writeText: refuse }, configurable: true });
        document.execCommand = () => false;
      });
      await visit.pick("#filter-sort", "file");
      await visit.click("#selection-all");
      await visit.click("#selection-copy");
      await visit.until("what to do", () => /did not let the page write to the clipboard/.test(document.querySelector("#copy-told").textContent));
      const bytes = await visit.downloaded("readings.tsv", () => visit.click("#copy-file"));
      same(bytes.toString("utf8"), files, [...Array(60).keys()]);
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });

  test(`in ${name} the whole table is worked by keyboard alone, from the search field on`, async () => {
    const { visit } = await atTheTable(open);
    try {
      await visit.evaluate(() => document.querySelector("#readings-heading").focus());
      await visit.press("/");
      assert.equal(await visit.evaluate(() => document.activeElement.id), "filter-text");
      await visit.page.keyboard.type("lid/");
      await shows(visit, "0 of 60 readings");
      await visit.press("Backspace");
      await shows(visit, "20 of 60 readings");
      for (let tabs = 0; tabs < 40 && !(await visit.evaluate(() => document.activeElement.matches("[role=gridcell]"))); tabs += 1) await visit.press("Tab");
      assert.equal((await visit.evaluate(here)).index, 2, "Tab leads to one cell of the table");
      assert.ok(await visit.evaluate(() => document.activeElement.matches(":focus-visible") && getComputedStyle(document.activeElement).outlineStyle !== "none"));
      await visit.press("PageDown");
      assert.ok((await visit.evaluate(here)).index > 8);
      await visit.page.keyboard.down("Control");
      await visit.press("Home");
      assert.equal((await visit.evaluate(here)).index, 2);
      await visit.press("End");
      await visit.page.keyboard.up("Control");
      assert.equal((await visit.evaluate(here)).index, 21);
      await visit.press("Enter");
      await visit.until("the reading", () => document.activeElement.id === "detail-heading");
      await visit.press("Escape");
      assert.equal((await visit.evaluate(here)).index, 21, "back where it was opened");
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });
}

/** What is on the clipboard, as a person gets it: pasted. */
async function pasted(visit) {
  await visit.evaluate(() => {
    const field = document.createElement("textarea");
    field.id = "paste-here";
    document.body.append(field);
    field.focus();
  });
  await visit.page.keyboard.down("Control");
  await visit.press("v");
  await visit.page.keyboard.up("Control");
  await visit.until("what was pasted", () => document.getElementById("paste-here").value !== "");
  return visit.evaluate(() => {
    const field = document.getElementById("paste-here");
    field.remove();
    return field.value;
  });
}

/** A table with quotes, as rows of cells. */
function cells(text, delimiter) {
  return text.split(/\r?\n/).filter((line) => line !== "").map((line) => line.split(delimiter));
}

/** Copied rows say what findings.csv says of the same readings. */
function same(copied, files, rows) {
  const [settings] = writtenFiles({ "settings.toml": 'schema = "plumbline.settings/1"\n' });
  const [heads, ...findings] = cells(writtenByCommandLine(files, settings)["findings.csv"].toString("utf8"), ",");
  const [own, ...got] = cells(copied, "\t");
  assert.equal(got.length, rows.length);
  assert.ok(own.includes("Pb_value_mg_kg") && own.includes("Pb_outcome") && own.includes("supplier") && own.length > 40, own.join());
  for (const [at, row] of rows.entries()) {
    for (const [column, head] of own.entries()) assert.equal(got[at][column], findings[row][heads.indexOf(head)], `${head} of row ${row}`);
  }
}

test("the headings are one stop of Tab, and each that stands for a term tells it to a pointer that rests on it", async () => {
  const { visit } = await atTheTable(visitChromium);
  try {
    const stops = () => [...document.querySelectorAll('.grid-head [tabindex="0"], .grid-head button:not([tabindex])')].map((one) => one.dataset.head);
    assert.deepEqual(await visit.evaluate(stops), ["id"]);
    await visit.page.focus(".grid-sort");
    await visit.press("End");
    const last = await visit.evaluate(() => document.activeElement.dataset.head);
    assert.notEqual(last, "id");
    assert.deepEqual(await visit.evaluate(stops), [last]);
    assert.ok(await visit.evaluate(() => {
      const [head, sight] = [document.activeElement, document.querySelector(".grid-scroll")].map((one) => one.getBoundingClientRect());
      return head.left >= sight.left && head.right <= sight.right + 1;
    }), "the heading with the focus is in sight");
    await visit.press("Tab");
    assert.equal(await visit.evaluate(() => document.activeElement.getAttribute("role")), "gridcell", "one Tab leaves the headings");
    await visit.page.keyboard.press("Shift+Tab");
    assert.equal(await visit.evaluate(() => document.activeElement.dataset.head), last, "and comes back to where it was");
    await visit.press("Home");
    await visit.press("Enter");
    await visit.until("the order", () => document.activeElement.dataset.sort === "id" && document.activeElement.closest("[aria-sort=ascending]") !== null);
    assert.deepEqual(await visit.evaluate(stops), ["id"], "drawn anew, the stop is where it was");

    const spot = await visit.page.locator(".grid-sort[data-sort=lot]").boundingBox();
    await visit.page.mouse.move(spot.x + 20, spot.y + 20);
    await visit.until("the card", () => document.getElementById("term-card-name")?.textContent === "Lot");
    await visit.page.mouse.move(5, 5);
    await visit.until("no card", () => document.getElementById("term-card") === null);
    await visit.click("#columns > summary");
    await visit.click("#term-columns-halogens");
    await visit.until("the card, for a finger", () => document.getElementById("term-card-name")?.textContent === "Halogen total");
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

for (const { name, visit: open } of browsers) {
  test(`in ${name} the readings beside a failed check are shown, selected and set aside together, and one press brings them back`, async () => {
    const { settings, results } = deliveries().find((one) => one.name === "07-check-standard");
    const visit = await open();
    const lot = () => visit.evaluate(() => document.querySelector(".lots article").innerText);
    try {
      await visit.choose("Settings file", [settings]);
      await visit.event(/settings\.toml/);
      await visit.choose("Result files", results);
      await visit.reviewed();
      await visit.goTo("trust");
      await visit.click("#trust-show-failed");
      await shows(visit, "12 of 15 readings");
      assert.match(await visit.text("#more-filters > summary"), /1 in use/);
      assert.equal(await visit.evaluate(() => document.getElementById("filter-trust").value), "failed");
      assert.match(await visit.evaluate(() => location.hash), /^#says\/trust=failed/, "the address holds a code of ours and no name");
      assert.equal(await visit.evaluate(() => document.getElementById("selection-aside").hidden), true, "nothing is selected yet");
      const before = await lot();
      assert.match(before, /check beside 12 readings failed/);

      await visit.click("#selection-all");
      await visit.click("#selection-aside-give");
      await visit.until("why not", () => document.getElementById("selection-why-refusal").textContent === "Write why first: the report prints it.");
      assert.equal(await visit.evaluate(() => document.activeElement.id), "selection-why", "without a reason nothing is set aside");
      assert.equal(await lot(), before);

      await visit.type("#selection-why", "check failed at noon; measured again");
      await visit.press("Enter");
      await visit.event(/^Taken: 12 readings set aside/);
      assert.equal(await visit.text("#readings-selected"), "");
      assert.equal(await visit.evaluate(() => document.activeElement.id), "selection-all");
      assert.doesNotMatch(await lot(), /check beside/);
      assert.match(await visit.text("#summary"), /12 readings in one lot \(12 set aside by a person\)[^]*Every reading is set aside: none says anything of a lot/);
      assert.match(await visit.evaluate(() => document.getElementById("undo").title), /12 readings set aside/);

      await shows(visit, "0 of 15 readings");
      await visit.pick("#filter-trust", "aside");
      await shows(visit, "12 of 15 readings");
      await visit.click("#filter-clear");
      await shows(visit, "15 of 15 readings");
      await visit.until("the mark", () => [...document.querySelectorAll(".grid-body [role=row]")].filter((row) => /set aside by a person/.test(row.textContent)).length >= 3);
      await visit.type("#filter-text", "CHK");
      await shows(visit, "3 of 15 readings");
      await visit.click("#selection-all");
      await visit.type("#selection-why", "it failed");
      await visit.press("Enter");
      await visit.until("no", () => /Check readings are in no lot/.test(document.getElementById("selection-why-refusal").textContent));

      await visit.click("#undo");
      await visit.event(/^Undone: 12 readings set aside/);
      assert.equal(await lot(), before, "one press for all of them");
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });
}

for (const scheme of ["light", "dark"]) {
  for (const width of [1280, 360]) {
    test(`groups, chosen columns and a selection are clean for axe-core and fit: ${scheme}, ${width} px wide`, async () => {
      const { visit } = await atTheTable(visitChromium, { scheme, width, height: 800, reducedMotion: "reduce" });
      try {
        const found = [];
        const look = async (state) => {
          await settled(visit);
          await visit.evaluate(axe);
          found.push(
            ...(await visit.evaluate(async () => {
              const { violations } = await window.axe.run(document, { runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"] });
              return violations.map((one) => `${one.id}: ${one.nodes.map((node) => node.target.join(" ")).slice(0, 3).join(" | ")}`);
            })).map((fault) => `${state}: ${fault}`),
          );
          assert.equal(await visit.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth), 0, `${state} is wider than the window`);
        };
        await visit.click("#more-filters > summary");
        await visit.click("#columns > summary");
        await visit.click("#column-shown-element-As");
        await look("filters and columns");
        await visit.pick("#filter-group", "lot");
        await visit.until("groups", () => document.querySelectorAll(".grid-group").length > 4);
        await look("folded groups");
        await visit.click("#unfold-all");
        await visit.click("#selection-all");
        await look("unfolded groups, all selected");
        await visit.click("#selection-copy");
        await visit.until("copied", () => document.querySelector("#copy-told").textContent !== "");
        await look("copied");
        assert.deepEqual(found, []);
        assert.deepEqual(visit.complaints, []);
      } finally {
        await visit.close();
      }
    });
  }
}
