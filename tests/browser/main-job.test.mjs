// The main job, as a person does it from a stick: choose files, read the summary, look closer, take the report away.

import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { test } from "node:test";
import { browsers, cleanDelivery, ownFolder, top } from "./drive.mjs";

/** What the command line writes for the same delivery. */
function commandLineFiles(delivery) {
  const out = ownFolder();
  try {
    execFileSync("cargo", ["run", "--quiet", "--locked", "-p", "plumbline", "--", "review", "--out", out, "--settings", delivery.settings, ...delivery.results], { cwd: top });
  } catch (error) {
    // 1 says that some lot is held or not accepted; the files are written all the same.
    if (error.status !== 1) throw error;
  }
  return Object.fromEntries(["findings.json", "findings.csv", "report.html"].map((name) => [name, readFileSync(join(out, name))]));
}

for (const { name, visit: open } of browsers) {
  test(`in ${name} a delivery is reviewed from file:// and its files are the command line's, byte for byte`, async () => {
    const delivery = cleanDelivery();
    const visit = await open();
    try {
      await visit.choose("Settings file", [delivery.settings]);
      await visit.event(/settings/i);
      await visit.choose("Result files", delivery.results);
      const summary = await visit.reviewed();
      assert.match(summary, /accept/i);

      await visit.goTo("came-in");
      assert.equal(await visit.count(".source"), delivery.results.length);
      assert.match(await visit.text("#came-in"), /add up/);

      await visit.goTo("says");
      const rows = Number(await visit.evaluate(() => document.querySelector("[role=grid]").getAttribute("aria-rowcount"))) - 1;
      assert.ok(rows > 0, "the table has readings");

      await visit.goTo("write");
      const expected = commandLineFiles(delivery);
      for (const [file, button] of [["report.html", "#save-report-html"], ["findings.csv", "#save-findings-csv"], ["findings.json", "#save-findings-json"]]) {
        const saved = await visit.downloaded(file, () => visit.click(button));
        assert.ok(saved.length > 0, `${file} is not empty`);
        assert.ok(saved.equals(expected[file]), `${file} differs from the command line's`);
      }
      assert.match(await visit.text("#written"), /Written down/);

      assert.deepEqual(visit.complaints, []);
      assert.deepEqual(visit.strangers(), []);
    } finally {
      await visit.close();
    }
  });

  test(`in ${name} the table filters, sorts, and opens one reading with its figures`, async () => {
    const delivery = cleanDelivery();
    const visit = await open();
    try {
      await visit.choose("Result files", delivery.results);
      await visit.reviewed();
      await visit.goTo("says");
      const whole = await visit.text("#readings-shown");

      await visit.click('.grid-sort[data-sort="Pb"]');
      await visit.until("the Pb column to be sorted", () => document.querySelector('[role=columnheader]:has([data-sort="Pb"])').getAttribute("aria-sort") === "ascending");
      await visit.click('.grid-sort[data-sort="Pb"]');
      await visit.until("the Pb column to be sorted the other way", () => document.querySelector('[role=columnheader]:has([data-sort="Pb"])').getAttribute("aria-sort") === "descending");

      await visit.type("#filter-text", "no reading is called this");
      await visit.until("an empty table", () => /^0 of/.test(document.querySelector("#readings-shown").innerText));
      await visit.event(/^0 of/);
      await visit.click("#filter-clear");
      await visit.until("all readings again", (wanted) => document.querySelector("#readings-shown").innerText === wanted, whole);

      await visit.click('.grid-body [role=row][aria-rowindex="2"] [role=gridcell]');
      await visit.until("the detail", () => !document.getElementById("detail").hidden && document.querySelectorAll("#detail .finding").length > 0);
      assert.equal(await visit.count("#detail .finding > header .outcome"), 8, "five substances, two halogens and their total");
      assert.ok((await visit.count("#detail .figure-frame svg")) >= 5, "figures are drawn");
      assert.equal(await visit.evaluate(() => document.activeElement.closest("[role=row]").getAttribute("aria-rowindex")), "2");

      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });

  test(`in ${name} nothing beside the page can be fetched, as for a user`, async () => {
    const neighbour = `neighbour-${process.pid}-${name}.txt`;
    writeFileSync(join(top, "dist", neighbour), "beside the page");
    const visit = await open();
    try {
      const outcome = await visit.evaluate((file) => fetch(file).then(() => "fetched", () => "refused"), neighbour);
      assert.equal(outcome, "refused");
    } finally {
      await visit.close();
      rmSync(join(top, "dist", neighbour));
    }
  });
}
