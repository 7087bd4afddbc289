// The reports on paper: printed on A4 and Letter in both browsers, and read back from the PDF with poppler's pdftotext.

import assert from "node:assert/strict";
import { execFileSync, spawnSync } from "node:child_process";
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { after, before, test } from "node:test";
import { pathToFileURL } from "node:url";
import { browsers, buildPrograms, deliveries, ownFolder, top, visitChromium, writtenFiles } from "./drive.mjs";

const PAPERS = ["A4", "Letter"];
// Sentences are longer in one and wider in the others.
const LANGUAGES = ["de", "ja", "zh-Hans"];
const FILES = { one: "report-one-page.html", full: "report.html", annex: "report-annex.html" };
const target = process.env.CARGO_TARGET_DIR || join(top, "target");
const program = join(target, "debug", process.platform === "win32" ? "plumbline.exe" : "plumbline");
const home = ownFolder();

/** Many materials with long names in many lots, all invented. */
function manyMaterials(count) {
  const head = "Sample,Spot,Part,Material,Lot,Supplier,Class,Date,Seconds,Instrument,Cd mg/kg,Cd u (1s),Pb mg/kg,Pb u (1s),Hg mg/kg,Hg u (1s),Cr mg/kg,Cr u (1s),Br mg/kg,Br u (1s)\n";
  const row = (at) => `S-${at},a,Part ${Math.floor(at / 5)},Material ${at} of a name that is rather long,L-${Math.floor(at / 25)},Gorse Works,polymer,2026-11-17 10:00,60,XRF-A,3,2,${at % 7 === 0 ? 1500 : 20},8,3,3,20,10,${at % 5 === 0 ? 320 : 20},6\n`;
  return head + Array.from({ length: count }, (_, at) => row(at)).join("");
}

/** Names that are long, and wide, and without a place to break. */
function longNames() {
  const long = (text) => text.repeat(40);
  const settings = `schema = "plumbline.settings/1"\ninvented = "yes"\ntitle = "${long("Title")}"\ninspector = "${long("W")}"\n[[issuer]]\nname = "${long("Fernbrook ")}"\n[[item]]\ndescription = "${long("外壳")}"\n`;
  const row = (at) => `${long("S")}${at},${long("Part ")},${long("M")},${long("批")}${at},${long("Alder")},polymer,${at * 400},8,3,2\n`;
  return { settings, table: `Sample,Part,Material,Lot,Supplier,Class,Pb mg/kg,Pb u (1s),Cd mg/kg,Cd u (1s)\n${[1, 2, 3, 4, 5, 6].map(row).join("")}` };
}

const cases = [];
before(() => {
  const found = spawnSync("pdftotext", ["-v"]);
  assert.equal(found.error, undefined, "pdftotext is needed: install poppler-utils");
  buildPrograms();
  const { settings, table } = longNames();
  const [many, longSettings, long] = writtenFiles({ "many.csv": manyMaterials(1000), "settings.toml": settings, "long.csv": table });
  const given = [
    ...deliveries(),
    { name: "a thousand materials", settings: null, history: null, results: [many] },
    { name: "long names", settings: longSettings, history: null, results: [long] },
  ];
  for (const one of given) {
    const out = join(home, one.name);
    mkdirSync(out);
    const more = [...(one.settings === null ? [] : ["--settings", one.settings]), ...(one.history === null ? [] : ["--history", one.history])];
    const ran = spawnSync(program, ["review", "--out", out, "--length", "all", ...more, ...one.results], { encoding: "utf8", maxBuffer: 1 << 28 });
    assert.ok([0, 1, 2].includes(ran.status), `${one.name}: ${ran.stderr}`);
    const number = />(PL-[0-9A-F-]+)</.exec(readFileSync(join(out, FILES.full), "utf8"))[1];
    const others = LANGUAGES.map((tag) => {
      const folder = join(home, `${one.name} ${tag}`);
      const told = spawnSync(program, ["review", "--out", folder, "--length", "one_page", "--report-language", tag, ...more, ...one.results], { encoding: "utf8", maxBuffer: 1 << 28 });
      assert.ok([0, 1, 2].includes(told.status), `${one.name} ${tag}: ${told.stderr}`);
      return { tag, file: join(folder, FILES.one) };
    });
    cases.push({ name: one.name, out, number, others });
  }
});

/** The pages of a printed report, each as its lines. */
async function printed(visit, file, paper) {
  const pdf = join(home, "printed.pdf");
  await visit.page.goto(pathToFileURL(file).href);
  const margin = visit.margin;
  await visit.page.pdf({ path: pdf, format: paper, printBackground: false, ...(margin === undefined ? {} : { margin }) });
  const text = execFileSync("pdftotext", ["-layout", pdf, "-"], { encoding: "utf8", maxBuffer: 1 << 28 });
  const pages = text.split("\f").slice(0, -1);
  return pages.map((page) => page.split("\n").map((line) => line.replace(/\s+/g, " ").trim()).filter((line) => line !== ""));
}

/** The headings of a report as they stand in print. */
const headings = (visit) =>
  visit.evaluate(() => {
    const said = [...document.querySelectorAll("h2, h3")].map((one) => one.textContent.replace(/\s+/g, " ").trim());
    return said.filter((text) => text !== "");
  });

for (const { name: browser, visit: open } of browsers) {
  let visit;
  test(`reports print as they should in ${browser}`, async (t) => {
    visit = await open({ start: "about:blank" });
    // What a person's browser takes from the style sheet, this one's driver asks for.
    if (browser === "Firefox") visit.margin = { top: "15mm", bottom: "17mm", left: "12mm", right: "12mm" };
    for (const one of cases) {
      for (const paper of PAPERS) {
        await t.test(`${one.name}: one page is one page of ${paper} in ${browser}`, async () => {
          const pages = await printed(visit, join(one.out, FILES.one), paper);
          assert.equal(pages.length, 1);
          const text = pages[0].join(" ");
          assert.ok(text.includes(`End of report ${one.number}, part 1 of 3`), text);
          assert.match(text, /Decided by \(name, date, signature\)/);
        });
      }
    }
    // Of the quicker browser: how long a sentence is does not hang on it.
    for (const one of browser === "Chromium" ? cases : []) {
      await t.test(`${one.name}: one page is one page in every language in ${browser}`, async () => {
        for (const { tag, file } of one.others) {
          for (const paper of PAPERS) {
            const pages = await printed(visit, file, paper);
            assert.equal(pages.length, 1, `${tag} on ${paper}`);
            assert.ok(pages[0].join(" ").includes(one.number), `${tag} on ${paper}`);
          }
        }
      });
    }
    const few = cases.filter(({ name }) => /^(01|05|08|11|15)|materials|names/.test(name));
    for (const one of few) {
      for (const paper of PAPERS) {
        for (const [length, part] of [["full", 2], ["annex", 3]]) {
          // The thousand are there for their annex, and in the quicker browser.
          if (one.name.includes("materials") && (length === "full" || browser === "Firefox")) continue;
          await t.test(`${one.name}: every page of the ${length} on ${paper} in ${browser}`, async () => {
            const pages = await printed(visit, join(one.out, FILES[length]), paper);
            const said = await headings(visit);
            assert.ok(pages.length > 1 && said.length > 3);
            pages.forEach((lines, at) => assertPage({ lines, at, count: pages.length, number: one.number, part, said, browser }));
            assert.ok(pages.at(-1).join(" ").includes(`End of report ${one.number}, part ${part} of 3`), "the end stands on the last page");
            for (const lines of pages.slice(0, -1)) assert.ok(!lines.join(" ").includes("— End of report"), "and nowhere before");
            if (length === "annex") assertHeadsRepeat(pages);
          });
        }
      }
    }
  });
  after(() => visit?.close());
}

function assertPage({ lines, at, count, number, part, said, browser }) {
  const where = `page ${at + 1} of ${count}`;
  const foot = lines.at(-1);
  assert.ok(foot.includes(number), `${where} has the number at its foot: ${foot}`);
  if (browser === "Chromium") {
    assert.ok(foot.includes(`Page ${at + 1} of ${count}`), `${where}: ${foot}`);
    assert.ok(foot.includes(`part ${part} of 3`), `${where}: ${foot}`);
  }
  // Above the foot: no heading is left alone.
  const last = lines.at(-2) ?? "";
  const bare = (line) => line.replace(/^\d+\. /, "");
  // The list of contents is made of headings; elsewhere two never follow each other without a word, but for those of two depths.
  const contents = lines.some((line) => line.includes("in this order, and ends with")) && lines.slice(-5, -1).every((line) => said.some((one) => line.includes(one)));
  assert.ok(contents || !said.includes(bare(last)), `${where} ends with a heading: ${last}`);
}

/** Where the list of readings goes on over a page's head, its own head stands there again. */
function assertHeadsRepeat(pages) {
  const head = /^Class Cd Pb Hg Cr Br Cl Cl\+Br$/;
  const first = pages.findIndex((lines) => lines.some((line) => head.test(line)));
  assert.ok(first >= 0, "the list of readings has a head");
  const last = pages.findLastIndex((lines) => lines.some((line) => head.test(line)));
  for (const lines of pages.slice(first, last + 1)) assert.equal(lines.filter((line) => head.test(line)).length, 1);
  // A reading is its line of names and its line of values: none is torn apart.
  for (const lines of pages.slice(first + 1, last + 1)) {
    const at = lines.findIndex((line) => head.test(line));
    assert.match(lines[at + 1], /·/, `after the head comes a reading's line of names: ${lines[at + 1]}`);
  }
}

/** The words of a printed page with their places in points, as [text, left, right], and the page's width. */
function placedWords(pdf) {
  const text = execFileSync("pdftotext", ["-bbox", pdf, "-"], { encoding: "utf8", maxBuffer: 1 << 28 });
  return text.split("<page ").slice(1).map((page) => ({
    width: Number(/width="([\d.]+)"/.exec(page)[1]),
    words: [...page.matchAll(/<word xMin="([\d.-]+)" yMin="[\d.-]+" xMax="([\d.-]+)" yMax="[\d.-]+">([^<]*)</g)].map(([, left, right, word]) => [word, Number(left), Number(right)]),
  }));
}

const HOSE = () => deliveries().find(({ name }) => name.includes("pvc-hose"));

async function atTheTable(visit, tag, settings, results) {
  await visit.pick("#language", tag);
  await visit.until(`the page in ${tag}`, (wanted) => document.documentElement.lang === wanted, tag);
  if (settings !== null) {
    await visit.putFiles(await visit.page.$("#settings-file"), [settings]);
    await visit.until("the settings", () => document.querySelector("#summary-event").textContent !== "");
  }
  await visit.putFiles(await visit.page.$("#result-files"), results);
  await visit.reviewed();
  await visit.goTo("says");
  await visit.until("rows", () => document.querySelectorAll('.grid-row[data-full="yes"]').length > 8);
}

/** The names of the table's columns, those on the sheet and those that are not, and what is said of the latter. */
const columnsOnPaper = (visit) =>
  visit.evaluate(() => {
    const names = (selector) => [...document.querySelectorAll(`.grid-headings > ${selector} .grid-name`)].map((node) => node.textContent);
    return { on: names(":not(.off-paper)"), off: names(".off-paper"), said: document.getElementById("readings-paper").textContent };
  });

for (const tag of ["en", ...LANGUAGES]) {
  for (const paper of PAPERS) {
    test(`the table of readings on the page is not cut at the edge of ${paper} in ${tag}`, async () => {
      const visit = await visitChromium();
      try {
        const { settings, results } = HOSE();
        await atTheTable(visit, tag, settings, results);
        const pdf = join(home, "table.pdf");
        await visit.page.pdf({ path: pdf, format: paper, margin: { left: "10mm", right: "10mm", top: "10mm", bottom: "10mm" } });
        const { on, off, said } = await columnsOnPaper(visit);
        // The sample, six substances, bromine as a halogen, and the total.
        assert.ok(on.length >= 9 && off.length > 0, `${on} | ${off}`);
        for (const name of off) assert.ok(said.includes(name), `${name}: ${said}`);
        assert.ok(said.includes("report-annex.html"));
        const pages = placedWords(pdf);
        for (const { width, words } of pages) for (const [word, left, right] of words) assert.ok(left >= 27 && right <= width - 27, `${word} from ${left} to ${right} of ${width}`);
        // Every reading with all nine values of its row: nothing of a row is on another sheet, none is lost.
        const all = pages.flatMap(({ words }) => words.map(([word]) => word));
        for (const id of ["EC-001", "EH-001", "EH-006", "FL-004"]) assert.equal(all.filter((word) => word === id).length, 1, id);
        assert.ok(all.includes("163.2") || all.includes("163,2"), "the last of its outcomes");
        assert.equal(await visit.evaluate(() => matchMedia("print").matches), false);
      } finally {
        await visit.close();
      }
    });
  }
}

test("of many readings, the sheet says which lines are on it", async () => {
  const [many] = writtenFiles({ "many.csv": manyMaterials(400) });
  const visit = await visitChromium();
  try {
    await atTheTable(visit, "en", null, [many]);
    await visit.page.pdf({ path: join(home, "many.pdf"), format: "A4" });
    const { said } = await columnsOnPaper(visit);
    const [, from, to] = /lines (\d+) to (\d+) of 400/.exec(said) ?? [];
    assert.ok(Number(from) === 1 && Number(to) > 8 && Number(to) < 400, said);
  } finally {
    await visit.close();
  }
});

for (const { name: browser, visit: open } of browsers) {
  test(`no sheet of a place is left empty because what follows was moved on whole, in ${browser}`, async () => {
    const visit = await open();
    try {
      await visit.choose("Result files", HOSE().results);
      await visit.reviewed();
      for (const place of ["came-in", "trust", "says", "next", "write"]) {
        await visit.goTo(place);
        const pdf = join(home, "place.pdf");
        writeFileSync(pdf, await visit.page.pdf({ format: "A4" }));
        const text = execFileSync("pdftotext", ["-bbox", pdf, "-"], { encoding: "utf8", maxBuffer: 1 << 28 });
        const sheets = text.split("<page ").slice(1).map((sheet) => {
          const height = Number(/height="([\d.]+)"/.exec(sheet)[1]);
          return Math.max(0, ...[...sheet.matchAll(/yMax="([\d.]+)"/g)].map(([, low]) => Number(low) / height));
        });
        assert.ok(sheets.length > 0);
        for (const [at, low] of sheets.slice(0, -1).entries()) assert.ok(low > 0.6, `${place}: sheet ${at + 1} of ${sheets.length} ends at ${Math.round(low * 100)} % of its height`);
      }
    } finally {
      await visit.close();
    }
  });
}
