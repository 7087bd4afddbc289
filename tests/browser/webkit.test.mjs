// The main job in WebKit, where Debian's driver brings it: the page stands at file://, the findings are the command line's,
// every place shows itself, and axe-core finds nothing in it.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { test } from "node:test";
import { visitWebKit, whyNoWebKit } from "./drive-webkit.mjs";
import { cleanDelivery, writtenByCommandLine } from "./drive.mjs";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const PLACES = ["came-in", "trust", "says", "next", "write"];
const skip = whyNoWebKit() ?? false;

test("in WebKit a delivery is reviewed from file://, all five places show themselves clean, and the findings are the command line's", { skip }, async () => {
  const delivery = cleanDelivery();
  const visit = await visitWebKit();
  try {
    assert.match(await visit.evaluate(() => location.href), /^file:\/\/.*plumbline\.html/);
    assert.match(await visit.evaluate(() => navigator.userAgent), /AppleWebKit/);
    await visit.choose("Settings file", [delivery.settings]);
    await visit.event(/settings/i);
    await visit.choose("Result files", delivery.results);
    assert.match(await visit.reviewed(), /accept/i);
    const found = [];
    for (const place of PLACES) {
      await visit.goTo(place);
      assert.ok((await visit.text(`#place-${place}`)).length > 20, place);
      await visit.put(axe);
      found.push(
        ...(await visit.evaluate(async (where) => {
          const { violations } = await window.axe.run(document, { runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"], resultTypes: ["violations"] });
          return violations.map((one) => `${where}: ${one.id}: ${one.nodes.map((node) => node.target.join(" ")).slice(0, 3).join(" | ")}`);
        }, place)),
      );
    }
    assert.deepEqual(found, []);
    const theirs = writtenByCommandLine(delivery.results, delivery.settings);
    for (const file of ["findings.json", "report.html", "findings.csv"]) {
      const ours = await visit.downloaded(file, () => visit.click(`#save-${file.replace(".", "-")}`));
      assert.ok(ours.equals(theirs[file]), `${file} is what the command line writes`);
    }
    assert.equal(await visit.count("#troubles .trouble"), 0);
  } finally {
    await visit.close();
  }
});

test("in WebKit nothing beside the page can be fetched, as for a user", { skip }, async () => {
  const visit = await visitWebKit();
  try {
    assert.equal(await visit.evaluate(() => fetch("plumbline.html").then(() => "fetched", () => "refused")), "refused");
  } finally {
    await visit.close();
  }
});
