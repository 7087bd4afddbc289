// The built page beside a JavaScript pipeline and the native core, on one invented table, in one run.
//
//   node tests/browser/bench.mjs [--rows N] [--rounds N] [--starts N]
//
// The rounds are interleaved and medians are printed, because a shared machine drifts; compare only figures of one run.

import assert from "node:assert/strict";
import { copyFileSync, mkdirSync, statSync, writeFileSync } from "node:fs";
import { cpus, loadavg } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { parseArgs } from "node:util";
import { asTable, median, summed } from "./bench/figures.mjs";
import { buildTool, inventTable, reviewNatively } from "./bench/native-run.mjs";
import { coldStart, reviewInPage } from "./bench/page-run.mjs";
import { makeYardstick, reviewInYardstick } from "./bench/yardstick-run.mjs";
import { builtPage, top } from "./drive.mjs";

const { values } = parseArgs({ options: { rows: { type: "string", default: "1000000" }, rounds: { type: "string", default: "3" }, starts: { type: "string", default: "5" } } });
const [rows, rounds, starts] = ["rows", "rounds", "starts"].map((name) => {
  const number = Number(values[name]);
  if (!Number.isInteger(number) || number < 1) {
    console.error(`--${name} wants a whole number above nothing, not ${values[name]}`);
    process.exit(64);
  }
  return number;
});

const folder = join(top, "target/bench");
mkdirSync(folder, { recursive: true });
// A copy, so that a build meanwhile can't change what is measured.
const page = join(folder, "plumbline.html");
copyFileSync(builtPage, page);
const pageUrl = pathToFileURL(page).href;
const yardstickUrl = makeYardstick(join(folder, "yardstick.html"));
buildTool();
const table = join(folder, `invented-${rows}.csv`);
inventTable(rows, table);
const { size: bytes } = statSync(table);
const busy = () => loadavg()[0].toFixed(1);
console.log(`Invented table: ${rows.toLocaleString("en")} rows, ${(bytes / 1e6).toFixed(0)} MB. ${cpus().length} processors, load before: ${busy()}.`);

const begun = [];
for (let at = 0; at < starts; at += 1) begun.push(await coldStart(pageUrl));
const [shown, usable] = ["shown", "usable"].map((mark) => Math.round(median(begun.map((start) => start[mark]))));
console.log(`Cold start of the page (median of ${starts}): shown after ${shown} ms, ready to read after ${usable} ms.`);

const runners = [
  { name: "page in Chromium", run: () => reviewInPage(pageUrl, table), rounds: [] },
  { name: "JavaScript (Papa Parse) in Chromium", run: () => reviewInYardstick(yardstickUrl, table), rounds: [] },
  { name: "native core", run: () => reviewNatively(table), rounds: [] },
];
for (let round = 0; round < rounds; round += 1) {
  for (let at = 0; at < runners.length; at += 1) {
    // Another one begins each round, so that none is always the one after a rest.
    const runner = runners[(at + round) % runners.length];
    const made = await runner.run();
    runner.rounds.push(made);
    console.log(`  round ${round + 1}: ${runner.name}: ${Math.round(made.total)} ms`);
  }
}

sameAnswer(...runners.map((runner) => runner.rounds));
const lines = runners.map((runner) => summed(runner.name, runner.rounds, { bytes, rows }));
console.log(`\nMedians of ${rounds} rounds, load after: ${busy()}. Readings, SHA-256 and all counts of outcomes are the same in all three.`);
console.log(asTable(lines));
console.log("The page also keeps every text as written and disposes of materials, parts and lots; the yardstick decides, counts and hashes.");
writeFileSync(join(folder, "figures.json"), `${JSON.stringify({ rows, bytes, rounds, coldStart: { shown, usable }, lines }, null, 2)}\n`);

/** A pipeline that answers otherwise is no yardstick. */
function sameAnswer(inPage, inYardstick, natively) {
  const native = natively[0];
  for (const made of [...inPage, ...inYardstick, ...natively]) {
    assert.equal(made.readings, rows, "every row is a reading");
    assert.equal(made.sha256, native.sha256, "the same bytes were hashed");
  }
  for (const made of [...inYardstick, ...natively]) assert.deepEqual(made.counts, native.counts, "the yardstick counts as the core does");
  // The page lists the substances, Cl and the total; bromine as a halogen has no line of its own there.
  const listed = { ...native.counts.substances, Cl: native.counts.halogens.Cl, total: native.counts.halogens.total };
  for (const made of inPage) assert.deepEqual(made.counts, listed, "the page counts as the native core does");
}
