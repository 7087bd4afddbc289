// The page in every language it carries: nothing English is left over, nothing that was loaded or said is lost, the report is
// the command line's in that language, and what is data is the same bytes in all.

import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { test } from "node:test";
import { browsers, cleanDelivery, deliveries, ownFolder, top, visitChromium } from "./drive.mjs";

const words = join(top, "crates/words");
const tags = readdirSync(words, { withFileTypes: true })
  .filter((entry) => entry.isDirectory() && readdirSync(join(words, entry.name)).includes("core.ftl"))
  .map((entry) => entry.name);
const others = tags.filter((tag) => tag !== "en");
const PLACES = ["came-in", "trust", "says", "next", "write"];

/** The texts of a language that are one line without a choice in it, by room and key. */
function lines(tag) {
  const found = new Map();
  for (const file of readdirSync(join(words, tag))) {
    let message = "";
    const text = readFileSync(join(words, tag, file), "utf8");
    for (const [, key, attribute, value] of text.matchAll(/^(?:([a-z][\w-]*)|    \.(\w+)) =[ ]?(.*)$(?!\n +[^. ])/gm)) {
      if (key !== undefined) message = key;
      if (!value.includes("->") && value.trim() !== "") found.set(`${file} ${message}.${attribute ?? ""}`, value.trim());
    }
  }
  return found;
}

const english = lines("en");

/** What a person would read as English: a text of the catalogue, with anything for its arguments, that this language says otherwise. */
function leftovers(tag) {
  const translated = lines(tag);
  const escaped = (text) => text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
  const wordsOf = (text) => text.replace(/\{[^}]*\}/g, "").match(/[A-Za-z]{3,}/g) ?? [];
  return [...english]
    .filter(([key, text]) => translated.has(key) && translated.get(key) !== text && wordsOf(text).length >= 2)
    .map(([, text]) => new RegExp(`^${text.split(/\{[^}]*\}/).map(escaped).join(".+")}$`));
}

/** Every piece of text on the page, and what is only heard or hovered. */
function pieces() {
  const found = new Set();
  const walker = document.createTreeWalker(document.getElementById("page"), NodeFilter.SHOW_TEXT | NodeFilter.SHOW_ELEMENT);
  for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
    const texts = node.nodeType === Node.TEXT_NODE ? [node.textContent] : ["aria-label", "title", "placeholder"].map((name) => node.getAttribute(name) ?? "");
    for (const text of texts) if (text.trim() !== "") found.add(text.replace(/\s+/g, " ").trim());
  }
  return [...found];
}

/** What is read line by line in the place that is shown, and what is heard there. */
function shownLines() {
  const place = document.querySelector("main > [data-place]:not([hidden])");
  const heard = [...place.querySelectorAll("[aria-label], [title], [aria-description]")].flatMap((node) => ["aria-label", "title", "aria-description"].map((name) => node.getAttribute(name) ?? ""));
  return [...place.innerText.split("\n"), ...heard].map((line) => line.trim()).filter((line) => line !== "");
}

// As tests/tests/signs.rs has it for the report: a sign of Latin script next to a wide letter, where no number, name or citation has it for its own.
const WIDE = "[\\u3040-\\u30ff\\u3400-\\u9fff々」』”）】]";
const GLUED = new RegExp(`.{0,12}(?:${WIDE}[:;,.]|[:;,.] (?=${WIDE})|\\((?=${WIDE})|${WIDE}\\)).{0,12}`, "gu");

async function speak(visit, tag) {
  await visit.pick("#language", tag);
  await visit.until(`the page in ${tag}`, (wanted) => document.documentElement.lang === wanted, tag);
}

async function bring(visit, { settings, history, results }) {
  for (const [id, files] of [["settings-file", settings], ["history-file", history], ["result-files", results]]) {
    const given = [files].flat().filter((file) => file !== null && file !== undefined);
    if (given.length === 0) continue;
    const before = await visit.text("#summary-event");
    await visit.putFiles(await visit.page.$(`#${id}`), given);
    await visit.until(`an event after ${id}`, (was) => document.querySelector("#summary-event").textContent !== was, before);
  }
  await visit.reviewed();
}

function commandLine(delivery, ...more) {
  const out = ownFolder();
  const given = [...(delivery.settings === null ? [] : ["--settings", delivery.settings]), ...(delivery.history === null ? [] : ["--history", delivery.history])];
  try {
    execFileSync("cargo", ["run", "--quiet", "--locked", "-p", "plumbline", "--", "review", "--out", out, ...given, ...more, ...delivery.results], { cwd: top, stdio: "pipe" });
  } catch (error) {
    if (error.status !== 1) throw error;
  }
  return (name) => readFileSync(join(out, name));
}

const rich = () => deliveries().find((one) => one.name.includes("brass-valve"));

for (const tag of others) {
  for (const { name, visit: open } of browsers) {
    test(`in ${name} no English is left over in any place in ${tag}, and the files are the command line's`, async () => {
      const delivery = { history: null, ...(name === "Chromium" ? rich() : cleanDelivery()) };
      const visit = await open();
      try {
        await speak(visit, tag);
        const patterns = leftovers(tag);
        assert.ok(patterns.length > 400, `only ${patterns.length} texts differ from English`);
        const seen = new Map();
        const glued = new Set();
        let read = 0;
        const look = async (where) => {
          for (const line of tag === "de" ? [] : await visit.evaluate(shownLines)) {
            read += 1;
            for (const [found] of line.matchAll(GLUED)) glued.add(`${where}: ${found}`);
          }
          for (const piece of await visit.evaluate(pieces)) if (patterns.some((pattern) => pattern.test(piece))) seen.set(piece, where);
        };
        await look("start");
        await bring(visit, delivery);
        for (const place of PLACES) {
          await visit.goTo(place);
          await visit.evaluate(() => {
            for (const fold of document.querySelectorAll("details")) fold.open = true;
          });
          await visit.until("what was asked for", () => document.querySelector('[data-place]:not([hidden]) [aria-busy="true"]') === null);
          if (place === "says") {
            await visit.click('.grid-body [role=row][aria-rowindex="2"] [role=gridcell]');
            await visit.until("the detail", () => !document.getElementById("detail").hidden && document.querySelectorAll("#detail .finding").length > 0);
          }
          await look(place);
        }
        assert.deepEqual([...seen], [], "English texts");
        assert.ok(tag === "de" || read > 400, `only ${read} lines`);
        assert.deepEqual([...glued], [], "signs of Latin script between words");

        assert.equal(await visit.evaluate(() => document.getElementById("report-language").value), tag);
        const native = commandLine(delivery, "--report-language", tag);
        for (const [file, button] of [["report.html", "#save-report-html"], ["findings.json", "#save-findings-json"], ["findings.csv", "#save-findings-csv"]]) {
          const saved = await visit.downloaded(file, () => visit.click(button));
          assert.ok(saved.equals(native(file)), `${file} differs from the command line's`);
        }
        assert.ok(native("report.html").includes(`<html lang="${tag}">`));
        assert.ok(native("findings.json").equals(commandLine(delivery)("findings.json")), "data has no language");
        assert.deepEqual(visit.complaints, []);
        assert.deepEqual(visit.strangers(), []);
      } finally {
        await visit.close();
      }
    });
  }

  test(`changing to ${tag} and back loses nothing, and the choice is kept for another day`, async () => {
    const delivery = { history: null, ...cleanDelivery() };
    const visit = await visitChromium();
    try {
      await bring(visit, delivery);
      await visit.goTo("trust");
      await visit.type("#who-initials", "QA");
      await visit.press("Tab");
      const acts = async () => {
        await visit.goTo("write");
        return visit.count(".acts .act");
      };
      const before = await acts();
      const said = await visit.text("#summary-says");
      await speak(visit, tag);
      assert.notEqual(await visit.text("#summary-says"), said, "the summary is in the language");
      assert.equal(await acts(), before);
      await visit.goTo("trust");
      assert.equal(await visit.evaluate(() => document.getElementById("who-initials").value), "QA");
      await speak(visit, "en");
      assert.equal(await visit.text("#summary-says"), said);
      assert.equal(await acts(), before);
      // A report for a reader elsewhere, from a page in English.
      await visit.pick("#report-language", tag);
      const saved = await visit.downloaded("report.html", () => visit.click("#save-report-html"));
      assert.ok(saved.equals(commandLine(delivery, "--report-language", tag)("report.html")));
      await speak(visit, tag);
      await visit.reload();
      await visit.until(`the page in ${tag} again`, (wanted) => document.documentElement.lang === wanted && !document.getElementById("page").hidden, tag);
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });
}

test("the first language is the first of the browser's that there is, in its script", { skip: others.length === 0 }, async () => {
  const has = (tag) => (tags.includes(tag) ? tag : "en");
  const wishes = [
    [["de-AT", "en"], has("de")],
    [["fr", "ja-JP"], has("ja")],
    [["zh-CN"], has("zh-Hans")],
    [["zh-TW"], "en"],
    [["en-GB", "de"], "en"],
    [["fr"], "en"],
  ];
  for (const [wanted, given] of wishes) {
    const visit = await visitChromium({ before: `Object.defineProperty(navigator, "languages", { get: () => ${JSON.stringify(wanted)} });` });
    try {
      await visit.until(`${given} for ${wanted}`, (tag) => document.documentElement.lang === tag && !document.getElementById("page").hidden, given);
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  }
});

for (const tag of others) {
  test(`at 360 pixels nothing in ${tag} stands out at the side`, async () => {
    const visit = await visitChromium({ width: 360, height: 740 });
    try {
      await speak(visit, tag);
      await bring(visit, { history: null, ...rich() });
      for (const place of PLACES) {
        await visit.goTo(place);
        assert.ok((await visit.evaluate(() => document.documentElement.scrollWidth)) <= 360, place);
      }
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });
}
