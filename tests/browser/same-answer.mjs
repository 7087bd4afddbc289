// The two doors give one answer: for the same files, settings and rule books the page's downloads are, byte for byte,
// what the command line writes. Chromium takes every case; Firefox all but whole folders, and every third golden case.
// Each browser has a file of tests of its own, same-answer-in-*.test.mjs, so that they run side by side.

import assert from "node:assert/strict";
import { execFileSync, spawnSync } from "node:child_process";
import { existsSync, mkdirSync, readFileSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { before, test } from "node:test";
import { pathToFileURL } from "node:url";
import { buildPrograms, builtPage, deliveries, ownFolder, top } from "./drive.mjs";

const WRITTEN = ["findings.json", "report.html", "report-one-page.html", "report-annex.html", "findings.csv", "history.txt"];
const FIREFOX_TAKES_EVERY = 3;
// Chromium lets a page hand out ten files a second, and a case takes six: with two pages in turn, one waits while the other works.
const pagesOf = (browser) => (browser === "Chromium" ? 2 : 1);
const target = process.env.CARGO_TARGET_DIR || join(top, "target");
const program = (name) => join(target, "debug", process.platform === "win32" ? `${name}.exe` : name);
const pageUrl = pathToFileURL(builtPage).href;

// ---- cases: what is given, in the order it is given ----

const demoCases = () => deliveries().map(({ name, settings, history, results }) => ({ name: `demo-data/${name}`, rules: [], settings, history, results, folder: null }));

/** A golden case's folder `input` is read as a folder, with the settings and the rule book that lie beside it. */
function goldenCases() {
  return foldersIn(join(top, "tests/golden"))
    .flatMap(foldersIn)
    .filter((home) => existsSync(join(home, "input")))
    .map((home) => {
      const beside = (name) => (existsSync(join(home, name)) ? join(home, name) : null);
      return { name: relative(top, home), rules: [beside("rules.toml")].filter((path) => path !== null), settings: beside("settings.toml"), history: beside("history.txt"), results: [], folder: join(home, "input") };
    });
}

function foldersIn(home) {
  return readdirSync(home, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => join(home, entry.name))
    .sort();
}

/** The same case with its files chosen one by one; null where that is another case, since something lies deeper or is no table. */
function withoutFolder(one) {
  const entries = readdirSync(one.folder, { withFileTypes: true });
  if (entries.some((entry) => !entry.isFile() || !/\.(csv|tsv|txt)$/.test(entry.name))) return null;
  return { ...one, name: `${one.name}, its files chosen`, folder: null, results: entries.map((entry) => join(one.folder, entry.name)).sort() };
}

/** What deliveries seldom hold and doors may differ over: names, marks at the start of files, cuts, and files that are no tables. */
function awkwardCases() {
  const folder = ownFolder();
  const put = (name, content) => {
    const path = join(folder, name);
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, content);
    return path;
  };
  const table = (sample) => `Sample,Part,Material,Lot,Supplier,Class,Pb mg/kg,Pb u (1s),Cd mg/kg,Cd u (1s)\r\n${sample},P-1,housing,A-1,Alder Works,polymer,12,5,${"<LOD,2"}\r\n`;
  const settings = 'schema = "plumbline.settings/1"\r\ntitle = "G\u00e4rtnerei \u{1F331} <b>&amp;"\r\n';
  const book = readFileSync(join(top, "crates/core/rules/iec-62321-3-1-2013.toml"), "utf8");
  const many = join(folder, "many.csv");
  execFileSync(program("plumbline-tool"), ["invent-table", "--rows", "24000", "--out", many]);
  const whole = (name, given) => ({ name, rules: [], settings: null, history: null, results: [], folder: null, ...given });
  return [
    whole("two files of one name", { results: [put("one/r.csv", table("S-2")), put("two/r.csv", table("S-1"))] }),
    whole("one file under two names", { results: [put("b.csv", table("S-1")), put("a.csv", table("S-1"))] }),
    whole("names whose order differs by bytes and by letters", { results: ["\u{1F331}.csv", "\uFF5E.csv", "é.csv", "Z.csv", "a b.csv", "ä'&<.csv"].map((name, at) => put(`names/${name}`, table(`S-${at}`))) }),
    whole("files that are no tables", {
      results: [
        put("empty.csv", ""),
        put("blank.csv", "\r\n \r\n"),
        put("heading.csv", "Sample,Pb mg/kg,Pb u (1s)\r\n"),
        put("prose.txt", "No table here.\nOnly words.\n"),
        put("wide.csv", Buffer.from("\uFEFFSample,Pb mg/kg\r\nS-1,5\r\n", "utf16le")),
        put("book.xlsx", Buffer.from("PK\u0003\u0004 not really a workbook")),
        put("noise.csv", Buffer.from(Array.from({ length: 4096 }, (_, at) => (at * 31) % 256))),
      ],
    }),
    whole("a table with a mark at its start and bytes that are no letters", { results: [put("marks.csv", Buffer.concat([Buffer.from(`\uFEFF${table("S-1")}`), Buffer.from("S-2,P-\xE9,housing,A-1,Alder Works,polymer,12,5,1,1\r\n", "latin1")]))] }),
    whole("settings and rule book with a mark at their start", { settings: put("marked/settings.toml", `\uFEFF${settings}`), rules: [put("marked/rules.toml", `\uFEFF${book}`)], results: [put("marked/r.csv", table("S-1"))] }),
    whole("settings and rule book with the line ends of another system", { settings: put("crlf/settings.toml", settings), rules: [put("crlf/rules.toml", book.replaceAll("\n", "\r\n"))], results: [put("crlf/r.csv", table("S-1"))] }),
    whole("settings in another encoding", { settings: put("latin/settings.toml", Buffer.from('schema = "plumbline.settings/1"\ntitle = "G\u00e4rtnerei"\n', "latin1")), results: [put("latin/r.csv", table("S-1"))] }),
    whole("a rule book in another encoding", { rules: [put("latin/rules.toml", Buffer.from(`${book}\n# \u00e4\n`, "latin1"))], results: [put("latin/q.csv", table("S-1"))] }),
    whole("settings that are wrong", { settings: put("wrong/settings.toml", 'schema = "plumbline.settings/1"\nno_such_setting = "5"\n'), results: [put("wrong/r.csv", table("S-1"))] }),
    whole("an invented table of more than one slice", { results: [many] }),
  ];
}

/** A person may bring the files first and say later what they are. */
function lateCases() {
  const { name, settings, history, results } = deliveries().find((delivery) => delivery.settings !== null && delivery.results.length > 1);
  const rules = [join(top, "crates/core/rules/iec-62321-3-1-2013.toml")];
  return [{ name: `demo-data/${name}, its settings and a rule book given last`, rules, settings, history, results, folder: null, resultsFirst: true }];
}

/** A whole folder, chosen as a folder: names are paths inside it, and what is no table is skipped. */
const folderCases = () => [{ name: "demo-data chosen as one folder", rules: [], settings: null, history: null, results: [], folder: join(top, "demo-data") }];

// ---- the two doors ----

/** What the command line writes; null where it refuses the settings or the rule book. */
function byCommandLine({ rules, settings, history, results, folder }) {
  const out = ownFolder();
  const given = [...rules.flatMap((path) => ["--rules", path]), ...(settings === null ? [] : ["--settings", settings]), ...(history === null ? [] : ["--history", history])];
  const ran = spawnSync(program("plumbline"), ["review", "--length", "all", "--out", out, ...given, ...(folder === null ? results : [folder])], { encoding: "utf8", maxBuffer: 1 << 28 });
  if (ran.status === 64) return null;
  // 1: some lot is not accepted. 2: some file could not be read. The files are written all the same.
  assert.ok([0, 1, 2].includes(ran.status), `the command line ended with ${ran.status ?? ran.error}: ${ran.stderr}`);
  const files = Object.fromEntries(WRITTEN.map((name) => [name, readFileSync(join(out, name))]));
  rmSync(out, { recursive: true });
  return files;
}

/** What a person takes away from the page; null where it refuses the settings or the rule book. */
async function byPage(visit, { rules, settings, history, results, folder, resultsFirst = false }) {
  await visit.opens(pageUrl);
  const steps = [
    () => giveTexts(visit, [...rules.map((path) => ["Rule book file", path]), ...(settings === null ? [] : [["Settings file", settings]]), ...(history === null ? [] : [["History file", history]])]),
    () => (folder === null ? giveResults(visit, results) : visit.choose("Result folder", folder).then(() => true)),
  ];
  for (const step of resultsFirst ? steps.reverse() : steps) if (!(await step())) return null;
  await visit.reviewed();
  await visit.goTo("write");
  // Pressed in one breath: the downloads are the same, and hundreds of cases wait for them once instead of six times.
  const buttons = WRITTEN.map((name) => `save-${name.replace(".", "-")}`);
  const pressAll = (ids) => {
    for (const id of ids) document.getElementById(id).click();
  };
  return visit.allDownloaded(WRITTEN, () => visit.evaluate(pressAll, buttons));
}

const forgetEvent = (visit) => visit.evaluate(() => (document.querySelector("#summary-event").textContent = ""));

/** False where the page refuses one of them. */
async function giveTexts(visit, texts) {
  for (const [label, path] of texts) {
    await forgetEvent(visit);
    await visit.choose(label, [path]);
    const answer = await visit.until(`an answer to ${path}`, () => (document.querySelectorAll("#troubles .trouble").length > 0 ? "refused" : document.querySelector("#summary-event").textContent));
    if (answer === "refused") return false;
  }
  return true;
}

/** A chooser shows one folder at a time, so files of other folders are chosen one after another. */
async function giveResults(visit, results) {
  for (const some of byFolder(results)) {
    await forgetEvent(visit);
    await visit.choose("Result files", some);
    await visit.event(/files? read/);
  }
  return true;
}

function byFolder(paths) {
  const folders = {};
  for (const path of paths) (folders[dirname(path)] ??= []).push(path);
  return Object.values(folders);
}

// ---- comparing ----

const AROUND = 160;

/** The first place where two files part, with what stands around it; null where they are the same. */
function firstDifference(page, commandLine) {
  if (page.equals(commandLine)) return null;
  const end = Math.min(page.length, commandLine.length);
  let at = 0;
  while (at < end && page[at] === commandLine[at]) at += 1;
  const line = page.subarray(0, at).filter((byte) => byte === 10).length + 1;
  const around = (bytes) => JSON.stringify(bytes.subarray(Math.max(0, at - AROUND), at + AROUND).toString("utf8"));
  return `they part at byte ${at} (line ${line}); ${page.length} and ${commandLine.length} bytes\n  page:         ${around(page)}\n  command line: ${around(commandLine)}`;
}

function assertSame(page, commandLine) {
  if (commandLine === null || page === null) {
    assert.equal(page === null ? "refused" : "taken", commandLine === null ? "refused" : "taken", "page and command line, on settings and rule books");
    return;
  }
  const differences = WRITTEN.map((name) => [name, firstDifference(page[name], commandLine[name])]).filter(([, difference]) => difference !== null);
  assert.ok(differences.length === 0, `${differences.map(([name, difference]) => `${name}: ${difference}`).join("\n")}\n(both built from the same sources? scripts/build)`);
  for (const name of WRITTEN) assert.ok(page[name].length > 0, `${name} is not empty`);
}

// ---- the tests ----

/** The tests of one browser. */
export function testSameAnswer({ name: browser, visit: open }) {
  before(() => {
    buildPrograms();
    assert.ok(existsSync(builtPage), "the page is built");
  });

  test(`in ${browser} the page's files are the command line's, byte for byte`, async (t) => {
    const golden = goldenCases();
    // Firefox's driver can't choose a folder ("Is directory"), so there files are chosen, where that is the same case.
    const folders = browser === "Firefox" ? [] : [...folderCases(), ...golden];
    const flat = golden.map(withoutFolder).filter((one) => one !== null);
    const chosen = browser === "Firefox" ? flat.filter((_, at) => at % FIREFOX_TAKES_EVERY === 0) : [];
    const taken = browser === "Firefox" ? `${chosen.length} of ${golden.length} golden cases (every third of the ${flat.length} without deeper folders)` : `all ${golden.length} golden cases`;
    t.diagnostic(`${browser}: ${taken}, all ${deliveries().length} demo deliveries`);
    const cases = [...demoCases(), ...lateCases(), ...awkwardCases(), ...folders, ...chosen];
    const visits = [];
    try {
      for (let page = 0; page < pagesOf(browser); page += 1) visits.push(await open());
      for (const [at, one] of cases.entries()) {
        await t.test(`${one.name}, in ${browser}`, async () => {
          assertSame(await byPage(visits[at % visits.length], one), byCommandLine(one));
        });
      }
      await t.test(`nothing was asked for beside the page, in ${browser}`, () => assert.deepEqual(visits.flatMap((visit) => visit.strangers()), []));
    } finally {
      for (const visit of visits) await visit.close();
    }
  });
}
