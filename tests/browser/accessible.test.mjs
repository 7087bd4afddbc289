// Every place in every state, on one load for each browser: axe-core finds nothing, everything fits and can be pressed,
// the focus is seen wherever it goes, and wider spacing of the text loses none of it.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { test } from "node:test";
import { browsers, deliveries, visitChromium } from "./drive.mjs";
import { STATES } from "./states.mjs";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const ALL = { type: "tag", values: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"] };
// What another theme can change; everything else was asked already.
const COLOUR = { type: "rule", values: ["color-contrast", "link-in-text-block"] };

const PHONE = 360;
// A window of 1280 px at 200 % zoom.
const ZOOMED = 640;
const WIDE = 1280;

// And what another width can.
const WIDTH = { type: "rule", values: ["target-size", "scrollable-region-focusable", "aria-hidden-focus", "button-name", "select-name", "label", "link-name", "heading-order", "empty-heading", "region"] };

// What is new in a state; the rest was judged in the state before, and what lies under an open card is covered as long as a person wants it so.
const NEW = {
  term: "#term-card",
  "keep-code": "#keep",
  "door-change": "#doors",
  ship: ".masthead, #next-action, #self-check",
  keep: "#keep",
  "keep-nothing": "#keep",
  found: "#place-start, #next-action",
  "found-refused": "#found",
  "not-kept": "#keep",
  tour: "#tour",
  "tour-trust": "#tour",
  "tour-end": "#tour",
  "train-refused": "#exercise-1",
};

async function faults(visit, runOnly, within = null) {
  if (!(await visit.evaluate(() => "axe" in window))) await visit.evaluate(axe);
  return visit.evaluate(async ([wanted, part]) => {
    const { violations } = await window.axe.run(part === null ? document : { include: part.split(", ").map((one) => [one]) }, { runOnly: wanted, resultTypes: ["violations"] });
    return violations.map((one) => `${one.id}: ${one.nodes.map((node) => `${node.target.join(" ")} ${node.any[0]?.message ?? ""}`).slice(0, 3).join(" | ")}`);
  }, [runOnly, within]);
}

// The card of a term closes where the window changes its width, and what keys come to must not lie under the card of the tour.
const beside = (state) => (["term", "tour-trust"].includes(state) ? null : (NEW[state] ?? null));

// With its folds open a place shows all that it shows with them shut; what is measured is measured in both.
const SHUT = new Set(["guide-shut", "came-in", "trust", "says", "next", "write", "prove-agrees", "ship-write", "taken-back", "restored", "train-begun", "train-delivery"]);
// Between them they show every kind of thing that has a colour. That every pair of colours has its contrast, looks.test.mjs computes.
const COLOURFUL = new Set(["start", "guide", "keys", "came-in-open", "trouble", "says-detail", "term", "write-open", "prove-differs", "keep-code", "found-refused", "not-kept", "tour", "train-decided", "train-lots"]);

/** How far parts of the page stick out of the window. */
const stickingOut = () => document.documentElement.scrollWidth - document.documentElement.clientWidth;

/** Things to press that a gloved finger would miss. */
const tooSmall = () =>
  [...document.querySelectorAll("button, a[href], select, summary, input:not([type=radio]):not([type=checkbox])")]
    .filter((one) => one.checkVisibility() && !one.classList.contains("skip") && one.closest("p") === null)
    .map((one) => ({ box: one.getBoundingClientRect(), name: one.id || one.textContent.trim() || one.tagName }))
    .filter(({ box }) => box.height < 43.5 || box.width < 43.5)
    .map(({ box, name }) => `${name} is ${Math.round(box.width)} by ${Math.round(box.height)}`);

/** Boxes to tick are small; what goes with them is not. */
const tooSmallToTick = () =>
  [...document.querySelectorAll("input[type=radio], input[type=checkbox]")]
    .filter((one) => one.checkVisibility())
    .map((one) => ({ name: one.id || one.name, box: (one.closest("label") ?? one.labels[0])?.closest("label, .field-check")?.getBoundingClientRect() }))
    .filter(({ box }) => box === undefined || box.height < 43.5 || box.width < 43.5)
    .map(({ name, box }) => `${name}: ${box === undefined ? "no label" : `${Math.round(box.width)} by ${Math.round(box.height)}`}`);

/** Everything that takes the focus shows it, by a solid line of 2 px or more on itself or on what wraps it, and in sight. */
const unseenFocus = (within) => {
  const can = "a[href], button, input, select, textarea, summary, [tabindex]";
  const faults = [];
  for (const one of [...document.querySelectorAll(can)].filter((each) => within === null || each.closest(within) !== null)) {
    if (!one.checkVisibility({ visibilityProperty: true }) || one.disabled || one.tabIndex < -1) continue;
    if (one.tabIndex < 0 && !/^H[1-6]$/.test(one.tagName)) continue;
    one.focus();
    if (document.activeElement !== one) continue;
    const name = `${one.tagName.toLowerCase()}#${one.id} ${one.textContent.trim().slice(0, 30)}`;
    const shown = [one, one.closest(".choice"), one.parentElement].some((node) => {
      if (node === null) return false;
      const style = getComputedStyle(node);
      return style.outlineStyle === "solid" && Number.parseFloat(style.outlineWidth) >= 2;
    });
    if (!shown) faults.push(`${name} shows no focus`);
    const box = one.getBoundingClientRect();
    const [x, y] = [box.left + Math.min(box.width / 2, 12), box.top + Math.min(box.height / 2, 12)];
    const on = document.elementFromPoint(x, y);
    const label = one.labels?.[0] ?? null;
    if (on === null || !(one.contains(on) || on.contains(one) || label?.contains(on))) faults.push(`${name} lies under ${on === null ? "the window's edge" : `${on.tagName.toLowerCase()}.${on.className}`}`);
  }
  document.activeElement?.blur();
  scrollTo(0, 0);
  return faults;
};

/** WCAG 2.2, 1.4.12: lines 1.5, paragraphs 2, letters 0.12, words 0.16 of the type's size. Gives what is then cut. */
const cutByWiderText = () => {
  const style = document.createElement("style");
  style.textContent = "* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important; } p { margin-bottom: 2em !important; }";
  document.head.append(style);
  const cut = [];
  for (const one of document.querySelectorAll("#page *")) {
    // The cells of the table of readings are cut by design: the whole of each stands in the reading's detail.
    if (one.textContent.trim() === "" || one.closest("svg, .heard, .grid, select, .step-needs, [hidden], [aria-hidden=true]") !== null || !one.checkVisibility()) continue;
    const { overflowX, overflowY, clipPath } = getComputedStyle(one);
    if (clipPath !== "none") continue;
    const hides = (way) => way === "hidden" || way === "clip";
    if ((hides(overflowX) && one.scrollWidth > one.clientWidth + 1) || (hides(overflowY) && one.scrollHeight > one.clientHeight + 1)) cut.push(`${one.tagName.toLowerCase()}.${one.className}: ${one.textContent.trim().slice(0, 40)}`);
  }
  const wide = document.documentElement.clientWidth;
  if (document.documentElement.scrollWidth > wide) {
    const out = [...document.querySelectorAll("#page *")].filter((one) => one.getBoundingClientRect().right > wide + 1 && one.closest(".table-scroll, .grid-scroll, .heard") === null).at(-1);
    cut.push(`the page is wider than the window by ${out?.tagName}.${out?.className} ${out?.textContent.trim().slice(0, 30)}`);
  }
  style.remove();
  return cut;
};

/** In forced colours a drawing that keeps a colour of ours may be drawn in that of the ground. */
const unseenDrawings = () => {
  const ground = getComputedStyle(document.body).backgroundColor;
  const canvas = Object.assign(document.createElement("i"), { style: "color: Canvas" });
  document.body.append(canvas);
  const own = getComputedStyle(canvas).color;
  canvas.remove();
  const unseen = new Set();
  for (const shape of document.querySelectorAll("main svg :is(path, rect, line, circle, polygon, polyline, text)")) {
    if (!shape.checkVisibility() || shape.closest("defs, pattern, clipPath") !== null) continue;
    const { stroke, fill } = getComputedStyle(shape);
    if ([stroke, fill].every((colour) => colour === "none" || colour === own || colour === ground)) unseen.add(`${shape.closest("svg").getAttribute("class")} ${shape.tagName}.${shape.getAttribute("class")}`);
  }
  return [...unseen];
};

/** One thing is to be done next: one button is filled, that of the next action, or that of what stands over the page. */
const notOneFilled = () => {
  const wanted = document.querySelector("#tour .primary") ?? document.getElementById("next-go");
  const colour = getComputedStyle(wanted).backgroundColor;
  const filled = [...document.querySelectorAll("button, a")].filter((one) => one.checkVisibility() && getComputedStyle(one).backgroundColor === colour);
  return filled.length === 1 ? [] : [`filled are ${filled.slice(0, 4).map((one) => one.id || one.textContent.trim())}`];
};

async function everyCheck(visit, state, width, add) {
  add(`${width} px`, await visit.evaluate(tooSmall));
  add(`${width} px`, await visit.evaluate(tooSmallToTick));
  add(`${width} px`, await visit.evaluate(notOneFilled));
  const out = await visit.evaluate(stickingOut);
  if (out !== 0) add(`${width} px`, [`${out} px wider than the window`]);
}

/** Collects what is found, so that one run tells all. */
function collector() {
  const found = new Set();
  return { found, adding: (state) => (where, list) => list.forEach((one) => found.add(`${state}, ${where}: ${one}`)) };
}

test("in Chromium every state is clean, light, dark and in forced colours, on a desk, zoomed and on a phone", async () => {
  const visit = await visitChromium({ reducedMotion: "reduce" });
  const { found, adding } = collector();
  const size = (width) => visit.page.setViewportSize({ width, height: 800 });
  try {
    for (const [state, come] of STATES) {
      const add = adding(state);
      await size(WIDE);
      await come(visit);
      await everyCheck(visit, state, WIDE, add);
      if (!SHUT.has(state)) add("axe", await faults(visit, ALL, NEW[state] ?? null));
      if (COLOURFUL.has(state)) {
        await visit.page.emulateMedia({ colorScheme: "dark" });
        add("axe, dark", await faults(visit, COLOUR, beside(state)));
        // The system's own colours have the contrast the system gives them.
        await visit.page.emulateMedia({ forcedColors: "active" });
        add("forced colours", await visit.evaluate(unseenDrawings));
        await visit.page.emulateMedia({ colorScheme: "light", forcedColors: "none" });
      }
      // A key, so that the browser shows the focus as it does to those who use keys.
      await visit.press("Shift");
      if (!SHUT.has(state)) add("focus", await visit.evaluate(unseenFocus, beside(state)));
      await size(ZOOMED);
      await everyCheck(visit, state, ZOOMED, add);
      await size(PHONE);
      await everyCheck(visit, state, PHONE, add);
      if (SHUT.has(state)) continue;
      add("wider text", await visit.evaluate(cutByWiderText));
      add("axe, phone", await faults(visit, WIDTH, beside(state)));
      add("focus, phone", await visit.evaluate(unseenFocus, beside(state)));
    }
    assert.deepEqual([...found], []);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("in Firefox the fullest states are clean, light and dark", async () => {
  const visit = await browsers.find((one) => one.name === "Firefox").visit();
  const { found, adding } = collector();
  const looked = new Set(["start", "came-in-open", "says-detail", "write-open", "prove-contradicted", "found-refused", "tour", "train-decided"]);
  try {
    for (const [state, come] of STATES) {
      const add = adding(state);
      await come(visit);
      if (!looked.has(state)) continue;
      add("axe", await faults(visit, ALL));
      await visit.pick("#theme", "dark");
      add("axe, dark", await faults(visit, COLOUR));
      await visit.page.setViewport({ width: PHONE, height: 800 });
      await everyCheck(visit, state, PHONE, add);
      await visit.page.setViewport({ width: WIDE, height: 900 });
      await visit.pick("#theme", "system");
    }
    assert.deepEqual([...found], []);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("on a phone the head of the page leaves most of the window to the work, in every language", async () => {
  const visit = await visitChromium({ width: PHONE, height: 640 });
  try {
    await visit.choose("Result files", deliveries()[1].results);
    await visit.reviewed();
    for (const language of ["en", "de", "ja", "zh-Hans"]) {
      await visit.pick("#language", language);
      await visit.until(language, (wanted) => document.documentElement.lang === wanted, language);
      const high = await visit.evaluate(() => document.querySelector(".masthead").getBoundingClientRect().height);
      assert.ok(high < 640 * 0.36, `${language}: ${high} of 640 px`);
      assert.equal(await visit.evaluate(stickingOut), 0, language);
    }
  } finally {
    await visit.close();
  }
});

test("there is one status region, it stands from the start, holds the summary, and tells each event once", async () => {
  const visit = await visitChromium();
  try {
    assert.equal(await visit.count('[role="status"], [role="alert"]'), 1);
    await visit.choose("Result files", deliveries()[1].results);
    await visit.reviewed();
    assert.equal(await visit.count('[role="status"], [role="alert"]'), 1);
    // What a table or a picture says of itself stays short, and apart from what happened to the inspection.
    assert.equal(await visit.count('[role="status"] [aria-live], [aria-live] [role="status"]'), 0);
    assert.ok((await visit.text('[role="status"] #summary-says')).length > 0);
    assert.ok((await visit.text('[role="status"] #summary-evidence')).length > 0);
    // What is not atomic is read out by what was added to it; so the words of an event may be put there only once.
    await visit.evaluate(() => {
      window.told = [];
      new MutationObserver((records) => {
        for (const record of records) {
          const text = record.target.textContent;
          if (text !== "") window.told.push(text);
        }
      }).observe(document.getElementById("summary"), { childList: true, characterData: true, subtree: true });
    });
    await visit.goTo("write");
    await visit.type("#who-initials", "QA");
    await visit.press("Tab");
    const send = await visit.page.$('input[id^="act-inspector"]');
    await send.fill("A. Inspector");
    await visit.press("Enter");
    await visit.event(/./);
    await visit.until("the act", () => window.told.length > 0 && document.querySelector("#work").hidden);
    const told = await visit.evaluate(() => window.told);
    assert.deepEqual([...new Set(told)], told, "nothing was said twice");
  } finally {
    await visit.close();
  }
});
