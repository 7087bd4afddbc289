// axe-core finds nothing in any place, light and dark, wide and narrow.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { test } from "node:test";
import { deliveries, oneDigitOther, reportOf, visitChromium, writtenFiles } from "./drive.mjs";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const PLACES = ["came-in", "trust", "says", "next", "write"];

async function faults(visit, where) {
  await visit.evaluate(axe);
  const found = await visit.evaluate(async () => {
    const { violations } = await window.axe.run(document, { runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"] });
    return violations.map((one) => `${one.id}: ${one.nodes.map((node) => node.target.join(" ")).slice(0, 3).join(" | ")}`);
  });
  return found.map((fault) => `${where}: ${fault}`);
}

/** Parts of the page that stick out of a window this narrow. */
const stickingOut = () => document.documentElement.scrollWidth - document.documentElement.clientWidth;

/** Things to press that a gloved finger would miss. */
const tooSmall = () =>
  [...document.querySelectorAll("button, a[href], select, summary, input:not([type=radio]):not([type=checkbox])")]
    .filter((one) => one.checkVisibility() && !one.classList.contains("skip") && one.closest("p") === null)
    .map((one) => ({ box: one.getBoundingClientRect(), name: one.id || one.textContent.trim() || one.tagName }))
    .filter(({ box }) => box.height < 43.5 || box.width < 43.5)
    .map(({ box, name }) => `${name} is ${Math.round(box.width)} by ${Math.round(box.height)}`);

/** A delivery with something open, so that every kind of control is on show. */
function openDelivery() {
  return deliveries().find((delivery) => !delivery.name.includes("clean")) ?? deliveries()[0];
}

/** One with certified check readings: its tables and charts are on show too. */
const checked = deliveries().find((delivery) => delivery.name.includes("check-standard"));

// Columns of every kind, a unit nobody stated, dates of two readings, ids to be cut.
const ODD = `Sample,Kxyz,Pb,Pb dev,Cd LOD,Date,Uxyz\n${[1, 2, 3, 4, 5, 6, 7, 8, 9, 10].map((n) => `P7-L13-${n},a,${n * 12},${n},2,0${(n % 9) + 1}/03/2026,fine`).join("\n")}\n`;
const HEADLESS = "alpha,beta\n1,2\n";

/** Opens every fold, and those that are made when another is opened. */
async function openFolds(visit) {
  await visit.until("every fold to be open", () => {
    const shut = [...document.querySelectorAll("details")].filter((fold) => !fold.open && fold.checkVisibility());
    for (const fold of shut) fold.open = true;
    return shut.length === 0 && document.querySelector("[data-place]:not([hidden]) [aria-busy]") === null;
  });
}

for (const scheme of ["light", "dark"]) {
  for (const width of [1280, 360]) {
    test(`every place is clean for axe-core, fits and can be pressed: ${scheme}, ${width} px wide`, async () => {
      const visit = await visitChromium({ scheme, width, height: 800, reducedMotion: "reduce" });
      try {
        const found = await faults(visit, "start");
        const small = await visit.evaluate(tooSmall);
        await visit.choose("Settings file", [checked.settings]);
        await visit.event(/settings/i);
        await visit.choose("Result files", [...openDelivery().results, ...checked.results, ...writtenFiles({ "odd.csv": ODD, "headless.csv": HEADLESS })]);
        await visit.until("the readings", () => /reading/.test(document.querySelector("#summary-counts").textContent) && document.querySelector("#work").hidden);
        for (const place of PLACES) {
          await visit.goTo(place);
          // Folds hide controls from the checker; all are opened, as a person may.
          await openFolds(visit);
          if (place === "came-in") {
            await visit.until("the rows of every table", () => [...document.querySelectorAll(".mapping tbody, [id^=act-pointed] tbody")].every((body) => body.rows.length > 0));
            assert.ok((await visit.count(".mapping")) >= 2);
          }
          if (place === "trust") assert.ok((await visit.count("#charts-shown svg.chart")) >= 5 && (await visit.count(".checks-say")) >= 3);
          if (place === "says") {
            await visit.click(".grid-body [role=gridcell]");
            await visit.until("the detail", () => !document.getElementById("detail").hidden);
          }
          found.push(...(await faults(visit, place)));
          small.push(...(await visit.evaluate(tooSmall)).map((one) => `${place}: ${one}`));
          assert.equal(await visit.evaluate(stickingOut), 0, `${place} is wider than the window`);
        }
        assert.deepEqual(found, []);
        assert.deepEqual(small, []);
        assert.deepEqual(visit.complaints, []);
      } finally {
        await visit.close();
      }
    });
  }
}

for (const scheme of ["light", "dark"]) {
  for (const width of [1280, 360]) {
    test(`the place that checks a report is clean for axe-core, fits and can be pressed in each of its states: ${scheme}, ${width} px wide`, async () => {
      const delivery = deliveries().find((one) => one.name.startsWith("03-"));
      const report = reportOf(delivery.results, delivery.settings);
      const visit = await visitChromium({ scheme, width, height: 800, reducedMotion: "reduce" });
      const found = [];
      const look = async (state) => {
        await openFolds(visit);
        found.push(...(await faults(visit, state)), ...(await visit.evaluate(tooSmall)).map((one) => `${state}: ${one}`));
        assert.equal(await visit.evaluate(stickingOut), 0, `${state} is wider than the window`);
      };
      const verdict = (word) => visit.until(word, (wanted) => document.querySelector(`.proved[data-word="${wanted}"]`) !== null && document.querySelector("#work").hidden, word);
      try {
        await visit.click("#enter-prove");
        await look("empty");
        await visit.choose("Files it was made from", writtenFiles({ "other.csv": "a,b\r\n1,2\r\n" }));
        await visit.until("the files that lie ready", () => /lies ready/.test(document.querySelector("#prove-results").textContent));
        await look("files ready");
        await visit.choose("Report to check", writtenFiles({ "report.html": report }));
        await verdict("self");
        await look("agrees with itself");
        await visit.type("#prove-digest", "0123");
        await visit.click("#prove-with-digest");
        await look("a digest refused");
        await visit.type("#prove-digest", "0123456789abcdef".repeat(4));
        await visit.click("#prove-with-digest");
        await verdict("contradicted");
        await look("contradicted");
        await visit.choose("Report to check", writtenFiles({ "changed.html": oneDigitOther(oneDigitOther(report, /<h1[^>]*>Valve BV-/.exec(report)[0]), '<td class="n">') }));
        await verdict("differs");
        await look("differs");
        await visit.choose("Report to check", writtenFiles({ "letter.html": "<p>A letter" }));
        await verdict("open");
        await look("no report");
        assert.deepEqual(found, []);
        assert.deepEqual(visit.complaints, []);
      } finally {
        await visit.close();
      }
    });
  }
}

test("at 200 % zoom every place still fits across", async () => {
  // Zooming a 1280 px window to 200 % gives the page 640 px to lay itself out in.
  const visit = await visitChromium({ width: 640, height: 450 });
  try {
    await visit.choose("Result files", openDelivery().results);
    await visit.reviewed();
    for (const place of PLACES) {
      await visit.goTo(place);
      assert.equal(await visit.evaluate(stickingOut), 0, `${place} is wider than the window`);
    }
  } finally {
    await visit.close();
  }
});

test("there is one status region, it stands from the start, and it holds the summary", async () => {
  const visit = await visitChromium();
  try {
    assert.equal(await visit.count('[role="status"]'), 1);
    await visit.choose("Result files", openDelivery().results);
    await visit.reviewed();
    assert.equal(await visit.count('[role="status"]'), 1);
    assert.ok((await visit.text('[role="status"] #summary-says')).length > 0);
    assert.ok((await visit.text('[role="status"] #summary-evidence')).length > 0);
  } finally {
    await visit.close();
  }
});
