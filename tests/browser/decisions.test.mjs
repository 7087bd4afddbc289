// Why an outcome is what it is, what other rules would say, what lies ahead of a lot, and the rule books in plain words.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { test } from "node:test";
import { browsers, deliveries, visitChromium, writtenFiles } from "./drive.mjs";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

// Invented. A brass nobody gave a class to, measured twice on one spot and once on another; a plastic near the limit.
const BRASS = `Sample,Spot,Part,Material,Lot,Class,Seconds,Pb ppm,Pb err (1s),Cd ppm,Cd err (1s),Cu %,Zn %,Fe %,Al %
S1,face,Valve,Body,L1,,30,20000,200,2,1,60,37,0.1,0.0
S1,face,Valve,Body,L1,,30,20100,200,2,1,60,37,0.1,0.0
S1,stem,Valve,Body,L1,,30,31000,200,2,1,59,36,0.1,0.0
S2,grip,Valve,Grip,L1,polymer,10,640,60,2,1,0.001,0.001,0.001,0.0
`;
const NAMED = `schema = "plumbline.settings/1"\nbooks = ["eu-rohs-annex-ii"]\ncategory = "11"\nplacing_date = "2026-03-01"\n`;

async function atTheReadings(visit, files = { "valve.csv": BRASS }, settings = NAMED) {
  await visit.choose("Settings file", writtenFiles({ "settings.toml": settings }));
  await visit.event(/settings/i);
  await visit.choose("Result files", writtenFiles(files));
  await visit.reviewed();
  await visit.goTo("says");
}

/** Opens one of the readings with this id. */
async function openReading(visit, id, at = 1) {
  await visit.type("#filter-text", id);
  await visit.until("the readings called so", (wanted) => {
    const rows = [...document.querySelectorAll(".grid-body [role=row]")];
    return rows.length > 0 && rows.every((row) => row.innerText.startsWith(wanted));
  }, id);
  await visit.click(`.grid-body [role=row][aria-rowindex="${at + 1}"] [role=gridcell]`);
  await visit.until("the detail", () => !document.getElementById("detail").hidden && document.querySelectorAll("#detail .finding").length > 0);
}

const findingOf = (name) => [...document.querySelectorAll("#detail .finding")].find((one) => one.querySelector("h3").textContent.startsWith(name));

for (const { name, visit: open } of browsers) {
  test(`in ${name} a reading explains its outcome with rule, clause and chances`, async () => {
    const visit = await open();
    try {
      await atTheReadings(visit);
      await openReading(visit, "S2");
      const told = await visit.evaluate(`(${findingOf})("Pb ").querySelector(".working").open`);
      assert.equal(told, true, "what is not settled shows its working at once");
      const lead = await visit.evaluate(`(${findingOf})("Pb ").innerText`);
      assert.match(lead, /undecided/);
      assert.match(lead, /Rule\s+IEC 62321-3-1.*table of screening limits, Pb, polymer.*700 mg\/kg.*1300 mg\/kg/s);
      assert.match(lead, /Value\s+The file states "640" for Pb, which is 640 mg\/kg\./);
      assert.match(lead, /Sigma\s+One sigma is 60/);
      assert.match(lead, /limit of 1000 mg\/kg: more than 99\.99 %|limit of 1000 mg\/kg: \d/);
      assert.match(lead, /simple acceptance/);
      assert.match(lead, /Next step:/);
      assert.equal(await visit.evaluate(`(${findingOf})("Pb ").querySelectorAll(".rules-say tbody tr").length`), 3);
      // Settled ones keep their working folded.
      assert.equal(await visit.evaluate(`(${findingOf})("Cd ").querySelector(".working").open`), false);
      // The named book's limits stand below, with their own clause.
      assert.match(await visit.text(".limits"), /Directive 2011\/65\/EU/);
      assert.deepEqual(visit.complaints, []);
      assert.deepEqual(visit.strangers(), []);
    } finally {
      await visit.close();
    }
  });

  test(`in ${name} a lot shows what other rules would say and what measuring longer would settle`, async () => {
    const visit = await open();
    try {
      await atTheReadings(visit);
      assert.equal(await visit.count("#says-lots .rules-say"), 0, "nothing is worked out before somebody asks");
      await visit.click("[id^=act-lot-ahead] > summary");
      await visit.until("what lies ahead", () => document.querySelector(".asked-for[aria-busy]") === null && document.querySelectorAll("#says-lots .rules-say").length > 0);
      const ahead = await visit.text("[id^=act-lot-ahead]");
      assert.match(ahead, /would settle \d+ of \d+ open outcomes|would settle none of the \d+ open outcomes|would not settle the one open outcome/);
      assert.match(ahead, /the screening bands used here/);
      assert.match(ahead, /guarded acceptance/);
      assert.match(ahead, /spots differ beyond what chance would show/);
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });
}

test("the class that a composition suggests is taken over as an act, and can be taken back", async () => {
  const visit = await visitChromium();
  try {
    await atTheReadings(visit);
    await openReading(visit, "S1");
    assert.match(await visit.text(".composition"), /The composition suggests .*a copper alloy/);
    assert.match(await visit.text("#composition-take"), /metal.*Body/);
    await visit.evaluate(() => document.getElementById("composition-take").focus());
    await visit.press("Enter");
    await visit.until("the class in force", () => document.getElementById("composition-back") !== null);
    assert.match(await visit.text("#detail .detail-content > .facts"), /metal.*set by a person/i);
    assert.equal(await visit.evaluate(() => document.activeElement.id), "detail-heading", "the focus stays with the reading");
    await visit.click("#composition-back");
    await visit.until("the offer again", () => document.getElementById("composition-take") !== null);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("repeats of a spot stand together, and each leads to the other", async () => {
  const visit = await visitChromium();
  try {
    await atTheReadings(visit);
    await openReading(visit, "S1");
    await visit.until("the repeats", () => document.querySelector(".repeats") !== null || document.querySelectorAll(".grid-body [role=row]").length > 0);
    if ((await visit.count(".repeats")) === 0) {
      // The worst spot stands first; one further down is repeated.
      await visit.click('.grid-body [role=row][aria-rowindex="3"] [role=gridcell]');
      await visit.until("the repeats", () => document.querySelector(".repeats") !== null);
    }
    const told = await visit.text(".repeats");
    assert.match(told, /2 readings of this spot/);
    assert.match(told, /agree within their uncertainties/);
    const title = await visit.text(".repeat-this");
    await visit.click(".repeat-readings button");
    await visit.until("the other reading", (before) => document.querySelector(".repeat-this")?.innerText !== before, title);
    assert.equal(await visit.evaluate(() => document.activeElement.id), "detail-heading");
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("the rule books in force and on the shelf explain themselves", async () => {
  const visit = await visitChromium();
  try {
    await atTheReadings(visit);
    await visit.click("#rule-books > summary");
    await visit.until("the shelf", () => document.querySelectorAll("#rule-books .books > .fold").length > 10);
    assert.match(await visit.text('#rule-books [aria-labelledby="shelf-used"]'), /Annex II/);
    await visit.click('#rule-books [aria-labelledby="shelf-used"] .fold > summary');
    await visit.until("the rows of a book", () => document.querySelectorAll("#rule-books .book-rows > li").length > 10);
    const rows = await visit.text("#rule-books .book-rows");
    assert.match(rows, /lead, polymer: below limit when value \+ 3 s is at or under 700 mg\/kg/);
    assert.match(rows, /Source: /);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("which exemptions run out stands in What next?, first day first", async () => {
  const visit = await visitChromium();
  try {
    const valve = deliveries().find((delivery) => delivery.name.includes("brass-valve"));
    await visit.choose("Result files", valve.results);
    await visit.reviewed();
    await visit.goTo("next");
    const days = await visit.evaluate(() => [...document.querySelectorAll(".expiries time")].map((day) => day.dateTime));
    assert.ok(days.length > 0, "leaded brass may rest on an exemption");
    assert.deepEqual(days, [...days].sort());
    assert.match(await visit.text(".expiries"), /6\(c\)/);
    assert.match(await visit.text(".expiries"), /not claimed/i);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

for (const [scheme, width] of [["light", 360], ["dark", 1280]]) {
  test(`with everything open there is nothing for axe-core to find: ${scheme}, ${width} px wide`, async () => {
    const visit = await visitChromium({ scheme, width, height: 800, reducedMotion: "reduce" });
    try {
      await atTheReadings(visit);
      await openReading(visit, "S1");
      await visit.until("every fold to be open and filled", () => {
        const shut = [...document.querySelectorAll("details")].filter((fold) => !fold.open && fold.checkVisibility());
        for (const fold of shut) fold.open = true;
        return shut.length === 0 && document.querySelector("[aria-busy]") === null;
      });
      await visit.evaluate(axe);
      const found = await visit.evaluate(async () => {
        const { violations } = await window.axe.run(document, { runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"] });
        return violations.map((one) => `${one.id}: ${one.nodes.map((node) => node.target.join(" ")).slice(0, 3).join(" | ")}`);
      });
      assert.deepEqual(found, []);
      assert.equal(await visit.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth), 0, "wider than the window");
      const small = await visit.evaluate(() =>
        [...document.querySelectorAll("#place-says button, #place-says summary")]
          .filter((one) => one.checkVisibility())
          .map((one) => one.getBoundingClientRect())
          .filter((box) => box.height < 43.5 || box.width < 43.5).length,
      );
      assert.equal(small, 0, "things too small for a glove");
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });
}
