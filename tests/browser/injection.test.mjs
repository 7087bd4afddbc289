// Hostile names in every field: in stock browsers nothing of them runs, nothing is asked for, and no element appears that
// harmless names don't have, neither in the page nor in what is written.

import assert from "node:assert/strict";
import { spawnSync } from "node:child_process";
import { mkdirSync, readFileSync, readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { before, test } from "node:test";
import { pathToFileURL } from "node:url";
import { browsers, ownFolder, top } from "./drive.mjs";

const target = process.env.CARGO_TARGET_DIR || join(top, "target");
const plumbline = join(target, "debug", process.platform === "win32" ? "plumbline.exe" : "plumbline");

// A text with a NUL makes a file no text at all, and rows that are full of line ends are refused; the native tests hold what becomes
// of them.
const corpus = JSON.parse(readFileSync(join(top, "tests/injection/texts.json"), "utf8"))
  .map(({ text, times }) => text.repeat(times ?? 1))
  .filter((text) => !/[\0\r\n]/.test(text) && text.length < 5000);

const quoted = (text) => `"${text.replaceAll('"', '""')}"`;
const toml = (text) => JSON.stringify(text).replaceAll("\u007f", "\\u007F");

/** One table and one settings file that hold every text in every field; `tame` makes the harmless twin. */
function delivery(tame) {
  const folder = ownFolder();
  const named = corpus.map((text, at) => (tame ? `harmless-${at}` : `${text}~${at}`));
  const rows = named.flatMap((name) => {
    const same = Array(7).fill(quoted(name)).join(",");
    return [`${same},metal,${quoted(name)},1360,20`, `${same},metal,${quoted(name)},900,80`];
  });
  const heading = quoted(tame ? "harmless" : corpus[0]);
  const table = join(folder, "names.csv");
  writeFileSync(table, `Sample,Unit,Spot,Part,Material,Lot,Supplier,Class,Operator,Pb mg/kg,Pb u (1s),${heading}\r\n${rows.map((row) => `${row},${heading}`).join("\r\n")}\r\n`);
  const all = named.join(" ");
  // A cell is read without the spaces around it, a settings file as it stands: the lot has to be named as it was read.
  const lots = named.slice(0, 40).map((name) => name.replace(/^[\s\p{White_Space}]+/u, "")).map((name) => `[[hold_ends]]\nsupplier = ${toml(name)}\nlot = ${toml(name)}\nwho = ${toml(name)}\nplace = ${toml(name)}\n`);
  const settings = join(folder, "settings.toml");
  const plain = ["title", "inspector", "place", "contact", "requested_action", "halogen_book"].map((key) => `${key} = ${toml(all)}\n`).join("");
  writeFileSync(settings, `schema = "plumbline.settings/1"\n${plain}${lots.join("")}`);
  const out = join(folder, "out");
  mkdirSync(out);
  const run = spawnSync(plumbline, ["review", "--out", out, "--papers", "--settings", settings, table], { encoding: "utf8", maxBuffer: 1 << 28 });
  assert.equal(run.status, 1, run.stderr);
  return { table, settings, out };
}

/** A written page by what it is, whatever the supplier in its name is called. */
const written = (out) =>
  readdirSync(out)
    .filter((name) => name.endsWith(".html"))
    .map((name) => ({ name, kind: /^supplier-notice-/.test(name) ? "supplier-notice" : name, url: pathToFileURL(join(out, name)).href }));

/** How many elements there are of each kind, and what must never be there. */
const look = () => {
  const all = [...document.querySelectorAll("*")];
  const kinds = {};
  for (const one of all) kinds[one.localName] = (kinds[one.localName] ?? 0) + 1;
  return {
    kinds,
    hit: globalThis.hit ?? null,
    running: all.filter((one) => [...one.attributes].some((attribute) => attribute.name.startsWith("on"))).length,
    strange: all.filter((one) => ["iframe", "object", "embed", "base", "img", "math", "frame", "animate"].includes(one.localName) || one.id === "injected").length,
    scripts: document.querySelectorAll('script:not(#plumbline-evidence[type="text/plain"])').length,
    refreshing: document.querySelectorAll("meta[http-equiv=refresh]").length,
  };
};

let hostile;
let harmless;
before(() => {
  assert.ok(corpus.length > 70, `${corpus.length}`);
  hostile = delivery(false);
  harmless = delivery(true);
});

function quietly(visit) {
  const dialogs = [];
  visit.page.on("dialog", (dialog) => {
    dialogs.push(dialog.message());
    void dialog.dismiss();
  });
  return dialogs;
}

for (const { name, visit: open } of browsers) {
  test(`in ${name} every written page has the elements it has with harmless names, and nothing runs`, async () => {
    const visit = await open();
    const dialogs = quietly(visit);
    try {
      const seen = async (out) => {
        const found = [];
        // One notice for each name: a sample of them, the first and every tenth.
        let notices = 0;
        for (const page of written(out).filter((page) => page.kind !== "supplier-notice" || notices++ % 10 === 0)) {
          await visit.page.goto(page.url);
          found.push({ ...page, ...(await visit.evaluate(look)) });
        }
        return found;
      };
      const [ours, theirs] = [await seen(hostile.out), await seen(harmless.out)];
      assert.ok(ours.length >= 8, ours.map((page) => page.name).join(" "));
      assert.deepEqual(ours.map((page) => page.kind).sort(), theirs.map((page) => page.kind).sort());
      for (const page of ours) {
        // What a report carries stands in one element that no browser runs.
        const inert = page.kind.startsWith("report") ? 1 : 0;
        assert.deepEqual([page.hit, page.running, page.strange, page.refreshing, page.scripts], [null, 0, 0, 0, 0], page.name);
        assert.equal(page.kinds.script ?? 0, inert, page.name);
        if (page.kind !== "supplier-notice") assert.deepEqual(page.kinds, theirs.find((other) => other.kind === page.kind).kinds, page.name);
      }
      assert.deepEqual(dialogs, []);
      const strangers = visit.strangers().filter((url) => !url.startsWith("file:"));
      assert.deepEqual(strangers, []);
    } finally {
      await visit.close();
    }
  });

  test(`in ${name} the page itself shows every name as text in all its places`, async () => {
    const visit = await open();
    const dialogs = quietly(visit);
    try {
      await visit.choose("Settings file", [hostile.settings]);
      await visit.choose("Result files", [hostile.table]);
      await visit.reviewed();
      for (const place of ["came-in", "trust", "says", "next", "write"]) {
        await visit.goTo(place);
        await visit.evaluate(() => {
          for (const fold of document.querySelectorAll("details")) fold.open = true;
        });
        await visit.until("the folds to be drawn", () => document.querySelector("#work").hidden);
        const found = await visit.evaluate(look);
        assert.deepEqual([found.hit, found.running, found.strange, found.refreshing], [null, 0, 0, 0], place);
      }
      const scripts = await visit.count("script[src], script:not([type]):not(:first-of-type) ~ b#injected");
      assert.equal(scripts, 0);
      assert.deepEqual(dialogs, []);
      assert.deepEqual(visit.strangers(), []);
    } finally {
      await visit.close();
    }
  });
}
