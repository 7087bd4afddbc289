// What can be taken away: each has the bytes that the command line writes, what there is no cause for is not offered, and what
// opens runs nothing.

import assert from "node:assert/strict";
import { test } from "node:test";
import { inflateRawSync } from "node:zlib";
import { pathToFileURL } from "node:url";
import { browsers, deliveries, visitChromium, writtenByCommandLine, writtenFiles } from "./drive.mjs";

const named = (start) => deliveries().find((one) => one.name.startsWith(start));

/** The files that are offered, in their order, and what is said not to be there. */
const offered = () => ({
  files: [...document.querySelectorAll(".take[data-file]")].map((one) => one.dataset.file),
  none: [...document.querySelectorAll(".take[data-none]")].map((one) => one.dataset.none),
});

async function reviewed(visit, delivery) {
  if (delivery.settings !== null) {
    await visit.choose("Settings file", [delivery.settings]);
    await visit.event(/settings/i);
  }
  await visit.choose("Result files", delivery.results);
  await visit.reviewed();
  await visit.goTo("write");
  await visit.until("the papers", () => document.querySelector(".takes") !== null && document.querySelector(".takes [aria-busy]") === null);
}

/** The entries of a ZIP archive by name, read by its central directory. */
function unzipped(bytes) {
  const end = bytes.lastIndexOf(Buffer.from("PK\u0005\u0006", "latin1"));
  assert.ok(end >= 0, "the archive has an end");
  const entries = {};
  let at = bytes.readUInt32LE(end + 16);
  for (let left = bytes.readUInt16LE(end + 10); left > 0; left -= 1) {
    const [packedSize, nameLength, extra, comment, local] = [bytes.readUInt32LE(at + 20), bytes.readUInt16LE(at + 28), bytes.readUInt16LE(at + 30), bytes.readUInt16LE(at + 32), bytes.readUInt32LE(at + 42)];
    const name = bytes.toString("utf8", at + 46, at + 46 + nameLength);
    const start = local + 30 + bytes.readUInt16LE(local + 26) + bytes.readUInt16LE(local + 28);
    const packed = bytes.subarray(start, start + packedSize);
    entries[name] = (bytes.readUInt16LE(at + 10) === 0 ? packed : inflateRawSync(packed)).toString("utf8");
    at += 46 + nameLength + extra + comment;
  }
  return entries;
}

const ORDER = ["report-one-page.html", "report.html", "report-annex.html", "laboratory-request.html", "supplier-notice-", "labels.html", "self-check.html", "findings.xlsx", "findings.csv", "findings.json", "history.txt", "settings.toml"];
const place = (file) => ORDER.findIndex((one) => file === one || (one.endsWith("-") && file.startsWith(one)));

for (const { name, visit: open } of browsers) {
  test(`in ${name} everything that can be taken away has the bytes of the command line, and a workbook opens`, async () => {
    const delivery = named("04-");
    const visit = await open();
    try {
      await reviewed(visit, delivery);
      const theirs = writtenByCommandLine(delivery.results, delivery.settings, "--papers", "--length", "all");
      const { files, none } = await visit.evaluate(offered);
      assert.deepEqual(files.map(place), files.map(place).toSorted((a, b) => a - b), files.join(" "));
      assert.ok(files.some((file) => file.startsWith("supplier-notice-1-")) && files.includes("laboratory-request.html") && files.includes("labels.html"), files.join(" "));
      assert.deepEqual(none, []);
      for (const file of files.filter((one) => one !== "settings.toml")) {
        const ours = await visit.downloaded(file, () => visit.click(`#save-${file.replace(".", "-")}`));
        assert.ok(ours.equals(theirs[file] ?? Buffer.alloc(0)), `${file} is what the command line writes`);
        await visit.event(new RegExp(`^${file.replace(".", "\\.")} was handed`));
        if (file !== "findings.xlsx") continue;
        const entries = unzipped(ours);
        assert.ok(entries["xl/workbook.xml"].includes("<sheet "), Object.keys(entries).join(" "));
        assert.ok(Object.keys(entries).filter((entry) => /^xl\/worksheets\/sheet\d+\.xml$/.test(entry)).length >= 4);
      }
      assert.deepEqual(Object.keys(theirs).filter((file) => !files.includes(file)), []);
      assert.deepEqual(visit.complaints, []);
      assert.deepEqual(visit.strangers(), []);
    } finally {
      await visit.close();
    }
  });

  test(`in ${name} request, notice, labels and the three lengths open, run nothing and fetch nothing`, async () => {
    const delivery = named("04-");
    const visit = await open();
    try {
      const theirs = writtenByCommandLine(delivery.results, delivery.settings, "--papers", "--length", "all");
      for (const [file, bytes] of Object.entries(theirs).filter(([one]) => one.endsWith(".html"))) {
        const [path] = writtenFiles({ [file]: bytes });
        await visit.page.goto(pathToFileURL(path).href);
        const seen = await visit.evaluate(() => ({
          title: document.title,
          text: document.body.innerText.length,
          scripts: [...document.scripts].filter((one) => one.type !== "text/plain").length,
          listening: [...document.querySelectorAll("*")].filter((one) => [...one.attributes].some((attribute) => attribute.name.startsWith("on"))).length,
          policy: document.querySelector('meta[http-equiv="Content-Security-Policy"]')?.content ?? "",
        }));
        assert.ok(seen.title.length > 3 && seen.text > 100, file);
        assert.deepEqual([seen.scripts, seen.listening], [0, 0], file);
        assert.match(seen.policy, /default-src 'none'/, file);
      }
      assert.deepEqual(visit.strangers().filter((url) => !url.startsWith("file:")), []);
    } finally {
      await visit.close();
    }
  });
}

test("what these findings give no cause for is not offered, and why is said", async () => {
  const visit = await visitChromium();
  try {
    await reviewed(visit, named("01-"));
    const { files, none } = await visit.evaluate(offered);
    assert.deepEqual(none, ["laboratory", "notices", "labels"]);
    assert.deepEqual(files.filter((file) => /^(supplier|laboratory|labels)/.test(file)), []);
    assert.match(await visit.text(".take[data-none=labels]"), /No lot is held or not accepted: no labels/);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("a held lot that names no supplier has a label and no notice, and that is said", async () => {
  const visit = await visitChromium();
  try {
    const results = writtenFiles({ "r.csv": "Sample,Part,Material,Lot,Supplier,Class,Pb mg/kg,Pb u (1s)\r\nS-1,P-1,pin,A-1,Alder Works,metal,1500,20\r\nS-2,P-1,pin,A-2,,metal,1500,20\r\n" });
    await reviewed(visit, { results, settings: null });
    const { files, none } = await visit.evaluate(offered);
    assert.deepEqual(none, ["notices"]);
    assert.match(await visit.text(".take[data-none=notices]"), /1 lot that is held or not accepted names no supplier/);
    assert.ok(files.includes("supplier-notice-1-alder-works.html"), files.join(" "));
    assert.match(await visit.text('.take[data-file="labels.html"]'), /2 labels/);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("a report opens in a tab of its own, where it can be printed", async () => {
  const visit = await visitChromium();
  try {
    await reviewed(visit, named("01-"));
    const [tab] = await Promise.all([visit.page.context().waitForEvent("page"), visit.click("#open-report-one-page-html")]);
    await tab.waitForLoadState();
    assert.match(await tab.title(), /PL-/);
    assert.equal(await tab.evaluate(() => [...document.scripts].filter((one) => one.type !== "text/plain").length), 0);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});
