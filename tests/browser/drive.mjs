// Drives the built page as a person would, in the installed Chromium and Firefox, from file://.
//
// The two browsers are reached by two libraries; `Visit` is the little that the tests need of both.

import { execFileSync, spawnSync } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";
import { after } from "node:test";
import { fileURLToPath, pathToFileURL } from "node:url";
import { chromium } from "playwright-core";
import puppeteer from "puppeteer-core";

export const top = resolve(dirname(fileURLToPath(import.meta.url)), "../..");
export const builtPage = join(top, "dist/plumbline.html");
const pageUrl = pathToFileURL(builtPage).href;

const CHROMIUM_FLAGS = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

const chromiumPath = () => process.env.PLUMBLINE_CHROMIUM || "/usr/bin/chromium";
const firefoxPath = () => process.env.PLUMBLINE_FIREFOX || "/usr/bin/firefox-esr";

const PATIENCE = 30_000;

/** The page's words in English, of all its rooms. */
export function pageWords() {
  const home = join(top, "crates/words/en");
  return readdirSync(home).filter((name) => /^page(-[a-z]+)?\.ftl$/.test(name)).map((name) => readFileSync(join(home, name), "utf8")).join("\n");
}

/** Waits until `ask` gives something, or says what was waited for. */
export async function until(what, ask, patience = PATIENCE) {
  const end = Date.now() + patience;
  for (;;) {
    const got = await ask();
    if (got) return got;
    if (Date.now() > end) throw new Error(`waited in vain for ${what}`);
    await new Promise((go) => setTimeout(go, 25));
  }
}

const ownFolders = [];
process.on("exit", () => {
  for (const folder of ownFolders) rmSync(folder, { recursive: true, force: true });
});

/** A folder of this test's own, gone when the process ends. */
export function ownFolder() {
  const folder = mkdtempSync(join(tmpdir(), "plumbline-browser-"));
  ownFolders.push(folder);
  return folder;
}

/** Writes files into a folder of their own and gives their paths. */
export function writtenFiles(files) {
  const folder = ownFolder();
  return Object.entries(files).map(([name, content]) => {
    const path = join(folder, name);
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, content);
    return path;
  });
}

/** The invented deliveries: for each its folder's name, its result files and its settings file. */
export function deliveries() {
  const home = join(top, "demo-data");
  return readdirSync(home, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => {
      const folder = join(home, entry.name);
      const files = readdirSync(folder).sort();
      return {
        name: entry.name,
        folder,
        results: files.filter((file) => !["settings.toml", "history.txt", "README.md"].includes(file)).map((file) => join(folder, file)),
        settings: files.includes("settings.toml") ? join(folder, "settings.toml") : null,
        history: files.includes("history.txt") ? join(folder, "history.txt") : null,
      };
    });
}

export function cleanDelivery() {
  const clean = deliveries().find((delivery) => delivery.name.includes("clean") && delivery.settings !== null);
  if (clean === undefined) throw new Error("demo-data has no clean delivery with a settings file");
  return clean;
}

/** What is asked of every browser in the same way, whatever drives it: `evaluate` and `click` are the driver's. */
export class AnyVisit {
  complaints = [];

  text(selector) {
    return this.evaluate((wanted) => document.querySelector(wanted)?.innerText ?? "", selector);
  }

  count(selector) {
    return this.evaluate((wanted) => document.querySelectorAll(wanted).length, selector);
  }

  until(what, ask, argument) {
    return until(what, () => this.evaluate(ask, argument));
  }

  standing() {
    return this.until("the page to stand", () => {
      const page = document.getElementById("page");
      return document.readyState === "complete" && (page === null || !page.hidden || document.documentElement.dataset.cannotRun === "yes");
    });
  }

  /** Goes to one of the five places by its step. */
  async goTo(place) {
    await this.click(`#step-${place}`);
    await this.until(place, (wanted) => !document.getElementById(`place-${wanted}`).hidden, place);
  }

  /** Waits until reading and reviewing are over and the summary stands. */
  async reviewed() {
    await this.until("the summary", () => document.querySelector("#summary-says").textContent !== "" && document.querySelector("#work").hidden);
    return this.text("#summary");
  }

  /** What the status region says about the last thing done. */
  /** What the page says went wrong, with what lies folded beneath it. */
  async troubles() {
    const told = await this.evaluate(() => document.getElementById("troubles")?.textContent ?? "");
    return told.trim() === "" ? "" : `; in trouble: ${told.replace(/\s+/g, " ").trim()}`;
  }

  async event(pattern) {
    let said = "";
    const matches = async () => pattern.test((said = await this.evaluate(() => document.querySelector("#summary-event").textContent)));
    await until(`an event like ${pattern}`, matches).catch(async (error) => {
      throw new Error(`${error.message}; the page says "${said}"${await this.troubles()}`);
    });
    return this.text("#summary-event");
  }
}

/** One visit to the page in one browser. */
class Visit extends AnyVisit {
  requests = [];

  constructor(page, leave) {
    super();
    this.page = page;
    this.close = leave;
    page.on("request", (request) => this.requests.push(request.url()));
    page.on("console", (message) => {
      if (message.type() === "error") this.complaints.push(message.text());
    });
    page.on("pageerror", (error) => this.complaints.push(String(error)));
  }

  evaluate(work, argument) {
    return this.page.evaluate(work, argument);
  }

  click(selector) {
    return this.page.click(selector);
  }

  press(key) {
    return this.page.keyboard.press(key);
  }

  /** What the page puts on A4 paper, page by page, as text. */
  async paper() {
    const path = join(ownFolder(), "paper.pdf");
    writeFileSync(path, await this.page.pdf({ format: "A4" }));
    return execFileSync("pdftotext", ["-layout", path, "-"], { encoding: "utf8" }).split("\f").slice(0, -1);
  }

  /** Types where the focus is. */
  keys(text) {
    return this.page.keyboard.type(text);
  }

  async type(selector, text) {
    await this.page.focus(selector);
    await this.page.evaluate((wanted) => document.querySelector(wanted).select?.(), selector);
    await this.page.keyboard.press("Delete");
    await this.page.keyboard.type(text);
  }

  /** Opens an address, or the same one again. The load event comes before the page has unpacked itself and can be used. */
  async opens(address) {
    await this.page.goto(address);
    await this.standing();
  }

  async reload() {
    await this.page.reload();
    await this.standing();
  }

  async choose(label, files) {
    const input = await this.inputNamed(label);
    await this.putFiles(input, files);
  }

  /** The addresses asked for besides the page itself and what it made in memory. */
  strangers() {
    return this.requests.filter((url) => url.split("#")[0] !== pageUrl && !url.startsWith("blob:") && !url.startsWith("data:"));
  }
}

// Chromium drops the eleventh download of a page within a second, without a word. No hand is that quick; this one waits.
const BURST = 10;
const BURST_MS = 1100;

class ChromiumVisit extends Visit {
  taken = [];

  /** Waits until so many more are no more than a page may hand out within a second. */
  async pace(more) {
    const since = this.taken.at(more - BURST - 1) ?? -Infinity;
    const left = since + BURST_MS - Date.now();
    if (left > 0) await new Promise((go) => setTimeout(go, left));
  }

  // Found by its accessible name, as a person with a screen reader would find it.
  inputNamed(label) {
    return this.page.getByLabel(label, { exact: true });
  }

  putFiles(input, files) {
    return input.setInputFiles(files);
  }

  pick(selector, value) {
    return this.page.selectOption(selector, value);
  }

  async downloaded(name, doing) {
    await this.pace(1);
    const [download] = await Promise.all([this.page.waitForEvent("download"), doing()]);
    this.taken.push(Date.now());
    if (download.suggestedFilename() !== name) throw new Error(`${download.suggestedFilename()} came instead of ${name}`);
    return readFileSync(await download.path());
  }

  /** Several files that come of one thing done, by name; they arrive in any order. */
  async allDownloaded(names, doing) {
    await this.pace(names.length);
    const came = new Map();
    const take = (download) => came.set(download.suggestedFilename(), download);
    this.page.on("download", take);
    try {
      await doing();
      await until(`the downloads ${names}`, () => names.every((name) => came.has(name)));
    } finally {
      this.page.off("download", take);
      // When they were asked for lies before this; the later time only makes the next one wait longer.
      for (const _ of names) this.taken.push(Date.now());
    }
    return filesOf(names, async (name) => readFileSync(await came.get(name).path()));
  }
}

/** In the page: what lies out of sight, or under something that stays in it, is brought out, and what moves is waited for, as a hand does. */
export async function broughtOutAndAtRest(wanted) {
  let before = "";
  for (let looks = 0; looks < 60; looks += 1) {
    const one = document.querySelector(wanted);
    if (one === null) return;
    const { left, top, width, height } = one.getBoundingClientRect();
    const there = document.elementFromPoint(left + width / 2, top + height / 2);
    const free = there !== null && (there === one || one.contains(there) || there.contains(one));
    if (free && before === `${left} ${top}`) return;
    if (!free) one.scrollIntoView({ block: "center", behavior: "instant" });
    before = free ? `${left} ${top}` : "";
    await new Promise((go) => requestAnimationFrame(go));
  }
}

class FirefoxVisit extends Visit {
  /** Its driver knows no "Shift+Tab": the keys go down one after the other, and up again. */
  async press(chord) {
    const names = chord.length > 1 ? chord.split("+") : [chord];
    const last = names.pop();
    for (const name of names) await this.page.keyboard.down(name);
    await this.page.keyboard.press(last);
    for (const name of names.reverse()) await this.page.keyboard.up(name);
  }

  /**
   * What was drawn anew between being found and being pressed is found again. Its driver presses where it is told to, whatever lies
   * or has come to lie there by then.
   */
  async click(selector) {
    await until(selector, async () => {
      await this.page.evaluate(broughtOutAndAtRest, selector);
      return this.page.click(selector).then(
        () => true,
        (error) => {
          if (!/detached|No element found|not clickable/.test(error.message)) throw error;
          return false;
        },
      );
    });
  }

  async inputNamed(label) {
    const id = await this.until(`the label ${label}`, (wanted) => [...document.querySelectorAll("label")].find((one) => one.textContent === wanted)?.htmlFor, label);
    return this.page.$(`#${id}`);
  }

  putFiles(input, files) {
    return input.uploadFile(...files);
  }

  pick(selector, value) {
    return this.page.select(selector, value);
  }

  async downloaded(name, doing) {
    return (await this.allDownloaded([name], doing))[name];
  }

  /** Several files that come of one thing done, by name. */
  async allDownloaded(names, doing) {
    const pathOf = (name) => join(this.downloads, name);
    for (const name of names) rmSync(pathOf(name), { force: true });
    await doing();
    return filesOf(names, async (name) => {
      // The name appears at once and empty; the bytes gather beside it until the download is whole.
      await until(`the download ${name}`, () => existsSync(pathOf(name)) && statSync(pathOf(name)).size > 0 && !existsSync(`${pathOf(name)}.part`));
      return readFileSync(pathOf(name));
    });
  }
}

async function filesOf(names, read) {
  return Object.fromEntries(await Promise.all(names.map(async (name) => [name, await read(name)])));
}

// ---- one browser for a file of tests ----

// Starting a browser takes longer than most tests. A visit is a context of its own in one browser: its storage, its
// downloads and its permissions are nobody else's, and gone with it, as in a browser started for the first time.
const running = new Map();
// Who comes without the test runner has nobody to tell when the last visit is over.
const underRunner = process.env.NODE_TEST_CONTEXT !== undefined;
if (underRunner) after(endBrowsers);

async function browserFor(name, launch, alive) {
  const known = await running.get(name);
  if (known !== undefined && alive(known)) return known;
  running.set(name, launch());
  return running.get(name);
}

async function endBrowsers() {
  const ending = [...running.values()];
  running.clear();
  // One that a test ended itself has nothing left to close.
  await Promise.allSettled(ending.map(async (browser) => (await browser).close()));
}

const leaving = (context) => async () => {
  await context.close();
  if (!underRunner) await endBrowsers();
};

const launchChromium = () => chromium.launch({ executablePath: chromiumPath(), args: CHROMIUM_FLAGS });

/** Opens the page in Chromium. `before` is put into the page ahead of its own scripts. */
export async function visitChromium({ width = 1280, height = 900, scheme = "light", before = null, reducedMotion = "no-preference", touch = false, start = pageUrl } = {}) {
  const browser = await browserFor("Chromium", launchChromium, (one) => one.isConnected());
  const context = await browser.newContext({ viewport: { width, height }, colorScheme: scheme, reducedMotion, hasTouch: touch, acceptDownloads: true });
  const page = await context.newPage();
  if (before !== null) await page.addInitScript(before);
  const visit = new ChromiumVisit(page, leaving(context));
  await visit.opens(start);
  return visit;
}

/** Opens the page in Chromium with a profile that stays on the disk, so that it can be killed and opened again. */
export async function visitChromiumKept(profile, { before = null, start = pageUrl, width = 1280, height = 900 } = {}) {
  const context = await chromium.launchPersistentContext(profile, { executablePath: chromiumPath(), args: CHROMIUM_FLAGS, viewport: { width, height }, acceptDownloads: true });
  if (before !== null) await context.addInitScript(before);
  const page = await context.newPage();
  const visit = new ChromiumVisit(page, () => context.close());
  visit.kill = () => killAll(processesOf(profile));
  visit.secondPage = async () => new ChromiumVisit(await context.newPage(), () => undefined);
  await visit.opens(start);
  return visit;
}

/** The processes that a command line names by this folder, with all that come of them. */
function processesOf(folder) {
  const all = readdirSync("/proc")
    .filter((name) => /^[0-9]+$/.test(name))
    .flatMap((pid) => {
      try {
        const parent = Number(/^PPid:\s*([0-9]+)/m.exec(readFileSync(`/proc/${pid}/status`, "utf8"))?.[1]);
        return [{ pid: Number(pid), parent, named: readFileSync(`/proc/${pid}/cmdline`, "utf8").includes(folder) }];
      } catch {
        return [];
      }
    });
  const found = new Set(all.filter((one) => one.named && one.pid !== process.pid).map((one) => one.pid));
  for (let more = true; more; ) {
    const children = all.filter((one) => found.has(one.parent) && !found.has(one.pid));
    for (const child of children) found.add(child.pid);
    more = children.length > 0;
  }
  return [...found];
}

/** Kills without a warning, as a power cut does, and waits until they are gone. */
async function killAll(pids) {
  for (const pid of pids) {
    try {
      process.kill(pid, "SIGKILL");
    } catch {
      // Gone with the others.
    }
  }
  const lives = (pid) => {
    try {
      return !/^State:\s*Z/m.test(readFileSync(`/proc/${pid}/status`, "utf8"));
    } catch {
      return false;
    }
  };
  await until("the browser's end", () => !pids.some(lives));
}

// With the strict file policy that a user has and the library's own profile switches off.
async function launchFirefox(profile = null) {
  const downloads = ownFolder();
  const browser = await puppeteer.launch({
    browser: "firefox",
    ...(profile === null ? {} : { userDataDir: profile }),
    executablePath: firefoxPath(),
    headless: true,
    extraPrefsFirefox: {
      "security.fileuri.strict_origin_policy": true,
      "browser.download.dir": downloads,
      "browser.download.folderList": 2,
      "browser.download.useDownloadDir": true,
      "browser.helperApps.neverAsk.saveToDisk": "text/html,text/csv,text/plain,application/json,application/toml,application/vnd.openxmlformats-officedocument.spreadsheetml.sheet,application/octet-stream",
      "browser.download.always_ask_before_handling_new_types": false,
      // The list of downloads would open and take the keys.
      "browser.download.alwaysOpenPanel": false,
    },
  });
  return Object.assign(browser, { downloads });
}

/** Opens the page in Firefox. */
export async function visitFirefox({ width = 1280, height = 900, start = pageUrl } = {}) {
  const browser = await browserFor("Firefox", () => launchFirefox(), (one) => one.connected);
  const context = await browser.createBrowserContext();
  const page = await context.newPage();
  await page.setViewport({ width, height });
  const visit = new FirefoxVisit(page, leaving(context));
  visit.downloads = browser.downloads;
  await visit.opens(start);
  return visit;
}

/** The same in Firefox: a browser of its own with a profile that stays. */
export async function visitFirefoxKept(profile, { start = pageUrl } = {}) {
  const browser = await launchFirefox(profile);
  const page = await browser.newPage();
  const visit = new FirefoxVisit(page, () => browser.close());
  visit.downloads = browser.downloads;
  visit.kill = () => killAll(processesOf(profile));
  await visit.opens(start);
  return visit;
}

export const browsers = [
  { name: "Chromium", visit: visitChromium, kept: visitChromiumKept },
  { name: "Firefox", visit: visitFirefox, kept: visitFirefoxKept },
];

const target = process.env.CARGO_TARGET_DIR || join(top, "target");
const plumbline = join(target, "debug", process.platform === "win32" ? "plumbline.exe" : "plumbline");

let programsBuilt = false;

/** The programs as the sources are now: one that is missing or old would answer for another version. */
export function buildPrograms() {
  if (!programsBuilt) execFileSync("cargo", ["build", "--locked", "--quiet", "-p", "plumbline", "-p", "plumbline-tool"], { cwd: top, stdio: "inherit" });
  programsBuilt = true;
}

/** What the command line writes of these files, by name. */
export function writtenByCommandLine(results, settings, ...options) {
  buildPrograms();
  const out = ownFolder();
  const ran = spawnSync(plumbline, ["review", "--out", out, ...options, "--settings", settings, ...results], { encoding: "utf8", maxBuffer: 1 << 28 });
  if (![0, 1].includes(ran.status)) throw new Error(`the command line ended with ${ran.status ?? ran.error}: ${ran.stderr}`);
  return Object.fromEntries(readdirSync(out).map((name) => [name, readFileSync(join(out, name))]));
}

/** The report the command line writes of these files. */
export function reportOf(results, settings) {
  return writtenByCommandLine(results, settings)["report.html"].toString("utf8");
}

/** One digit of a report exchanged for another, the first after `mark`. */
export function oneDigitOther(text, mark) {
  const at = text.indexOf(mark);
  if (at < 0) throw new Error(`the report has no ${mark}`);
  const digit = at + mark.length + text.slice(at + mark.length).search(/[0-9]/);
  return text.slice(0, digit) + ((Number(text[digit]) + 1) % 10) + text.slice(digit + 1);
}

/** Opens what a file holds and its columns: both are made when they are opened. */
export async function openColumns(visit) {
  const opened = (folds) => {
    for (const fold of document.querySelectorAll(folds)) fold.open = true;
  };
  await visit.evaluate(opened, "details.source");
  const columns = "details.source details[id^=act-columns]";
  await visit.until("the columns' fold", (folds) => document.querySelector(folds) !== null, columns);
  await visit.evaluate(opened, columns);
}

/** A day is typed in the order of the browser's own language; the value it holds is the same in all. */
export function fillDay(visit, selector, day) {
  return visit.evaluate(
    ([wanted, value]) => {
      const input = document.querySelector(wanted);
      input.value = value;
      input.dispatchEvent(new Event("input", { bubbles: true }));
      input.dispatchEvent(new Event("change", { bubbles: true }));
    },
    [selector, day],
  );
}

/** A script that goes ahead of the page's own and adds a text to the worker's; there `trap()` is a real trap of a real module. */
export function addedToWorker(text) {
  const trap = "const trap = () => new WebAssembly.Instance(new WebAssembly.Module(new Uint8Array([0,97,115,109,1,0,0,0,1,4,1,96,0,0,3,2,1,0,7,5,1,1,116,0,0,10,5,1,3,0,0,11]))).exports.t();";
  return `
    const RealBlob = Blob;
    window.Blob = class extends RealBlob {
      constructor(parts, options) {
        super(options?.type === "text/javascript" ? [...parts, ${JSON.stringify(`${trap}\n${text}`)}] : parts, options);
      }
    };
  `;
}
