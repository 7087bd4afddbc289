// Help where one stands: the cards of terms, the guide and its search, the tour, the keys, and the diagnostic file that holds none
// of the data.

import assert from "node:assert/strict";
import { readFileSync, readdirSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { test } from "node:test";
import { addedToWorker, browsers, deliveries, top, visitChromium, writtenFiles } from "./drive.mjs";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const words = join(top, "crates/words");
const tags = readdirSync(words, { withFileTypes: true }).filter((entry) => entry.isDirectory() && readdirSync(join(words, entry.name)).includes("page-help.ftl")).map((entry) => entry.name);
const source = (file) => readFileSync(join(top, "web/src", file), "utf8");

const brass = deliveries().find((one) => one.name.startsWith("03-"));

async function open(visit, delivery = brass) {
  await visit.choose("Settings file", [delivery.settings]);
  await visit.event(/settings/i);
  await visit.choose("Result files", delivery.results);
  await visit.until("the readings", () => /reading/.test(document.querySelector("#summary-counts").textContent) && document.querySelector("#work").hidden);
}

const cardText = () => document.getElementById("term-card")?.textContent ?? "";
const noCard = () => document.getElementById("term-card") === null;
const focusId = () => document.activeElement.id;

// ---- words ----

test("every term has a name, a meaning and a source in every language", () => {
  const terms = [...source("page/help/terms.ts").matchAll(/^ {2}"?([a-z-]+)"?: "([a-z-]+)",$/gm)].filter(([, , from]) => from !== undefined);
  const list = source("page/help/terms.ts").split("export const TERMS = {")[1].split("} as const")[0];
  const own = [...list.matchAll(/^ {2}"?([a-z-]+)"?: "([a-z-]+)",$/gm)];
  assert.ok(own.length >= 45, `${own.length} terms`);
  assert.ok(terms.length >= own.length);
  assert.deepEqual(tags.sort(), ["de", "en", "ja", "zh-Hans"]);
  for (const tag of tags) {
    const catalogue = readFileSync(join(words, tag, "page-help.ftl"), "utf8");
    assert.doesNotMatch(catalogue, /^# translate/m, tag);
    const text = (key) => new RegExp(`^${key} = (.+)$`, "m").exec(catalogue)?.[1] ?? "";
    for (const [, id, from] of own) {
      for (const key of [`page-term-${id}`, `page-term-${id}-is`, `page-from-${from}`]) assert.ok(text(key).length > 0, `${tag}: ${key}`);
      assert.ok(text(`page-term-${id}-is`).length >= (tag === "en" || tag === "de" ? 30 : 12), `${tag}: ${id} says what it is`);
    }
  }
});

test("guide and terms together stay short", () => {
  assert.ok(readFileSync(join(words, "en/page-help.ftl")).length < 30_000);
});

test("every question the worker can be asked has words for a crash in it", () => {
  const kinds = [...source("shared/messages.ts").split("export interface Questions {")[1].split("\n}")[0].matchAll(/^ {2}([a-z_]+):/gm)].map((match) => match[1]);
  assert.ok(kinds.length > 30);
  const english = readdirSync(join(words, "en")).filter((name) => name.startsWith("page")).map((name) => readFileSync(join(words, "en", name), "utf8")).join("\n");
  assert.deepEqual(kinds.filter((kind) => !new RegExp(`^page-step-${kind.replaceAll("_", "-")} =`, "m").test(english)), []);
});

// ---- cards ----

for (const { name, visit: go } of browsers) {
  test(`in ${name} a term says what it is to a mouse that rests on it, stays under the mouse, and Escape sends it away`, async () => {
    const visit = await go();
    try {
      await visit.page.hover("#term-start-screening");
      await visit.until("the card", () => document.getElementById("term-card") !== null);
      assert.match(await visit.evaluate(cardText), /sorts materials[\s\S]*IEC 62321-3-1:2013/);
      // It came by the mouse alone, so the focus is where it was.
      assert.equal(await visit.evaluate(() => document.getElementById("term-card").contains(document.activeElement)), false);
      const box = await visit.evaluate(() => document.getElementById("term-card").getBoundingClientRect().toJSON());
      await visit.page.mouse.move(box.left + box.width / 2, box.top + 20, { steps: 4 });
      await new Promise((wait) => setTimeout(wait, 700));
      assert.notEqual(await visit.evaluate(cardText), "", "it stays while the mouse is on it");
      await visit.press("Escape");
      assert.ok(await visit.evaluate(noCard));

      await visit.page.hover("#term-start-lot");
      await visit.until("another card", () => /Goods delivered/.test(document.getElementById("term-card")?.textContent ?? ""));
      await visit.page.mouse.move(5, 700, { steps: 3 });
      await visit.until("no card once the mouse has left", () => document.getElementById("term-card") === null);

      // Pressed, it stays; one at a time.
      await visit.click("#term-start-lot");
      await visit.page.mouse.move(5, 700, { steps: 3 });
      await new Promise((wait) => setTimeout(wait, 700));
      assert.match(await visit.evaluate(cardText), /Goods delivered/);
      await visit.click("#term-start-xrf");
      assert.match(await visit.evaluate(cardText), /X-ray/);
      assert.equal(await visit.count(".term-card"), 1);
      await visit.click("#heading-start");
      assert.ok(await visit.evaluate(noCard));
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });

  test(`in ${name} a term is read by keys alone: Enter goes into the card, Tab through it, Escape back to the word`, async () => {
    const visit = await go();
    try {
      await visit.page.focus("#term-start-xrf");
      assert.ok(await visit.evaluate(noCard), "passing by shows nothing");
      await visit.press("Enter");
      await visit.until("the focus in the card", () => document.activeElement.id === "term-card");
      const told = await visit.evaluate(() => {
        const card = document.getElementById("term-card");
        const of = (name) => document.getElementById(card.getAttribute(name)).textContent;
        return { role: card.getAttribute("role"), name: of("aria-labelledby"), is: of("aria-describedby"), expanded: document.getElementById("term-start-xrf").getAttribute("aria-expanded") };
      });
      assert.equal(told.role, "dialog");
      assert.equal(told.name, "XRF");
      assert.match(told.is, /X-ray fluorescence/);
      assert.equal(told.expanded, "true");
      await visit.press("Escape");
      assert.equal(await visit.evaluate(focusId), "term-start-xrf");
      assert.equal(await visit.evaluate(() => document.getElementById("term-start-xrf").getAttribute("aria-expanded")), "false");

      await visit.press("Enter");
      await visit.press("Tab");
      await visit.press("Tab");
      assert.equal(await visit.evaluate(focusId), "term-card-close");
      await visit.press("Tab");
      assert.ok(await visit.evaluate(noCard));
      assert.equal(await visit.evaluate(focusId), "term-start-lot", "Tab goes on to what follows the word");

      await visit.press(" ");
      await visit.until("the card", () => document.activeElement.id === "term-card");
      await visit.press("Tab");
      await visit.press("Enter");
      await visit.until("the guide at the term", () => document.activeElement.id === "guide-word-lot");
      await visit.press("Escape");
      await visit.until("the focus back at the word", () => document.activeElement.id === "term-start-lot");
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });
}

test("a finger opens a term and closes it again beside it", async () => {
  const visit = await visitChromium({ touch: true, width: 360, height: 700 });
  try {
    await visit.page.tap("#term-start-limit");
    await visit.until("the card", () => /most of a substance/.test(document.getElementById("term-card")?.textContent ?? ""));
    await new Promise((wait) => setTimeout(wait, 900));
    assert.notEqual(await visit.evaluate(cardText), "", "it stays though no finger is on it");
    await visit.page.tap("#heading-start");
    assert.ok(await visit.evaluate(noCard));
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("every term on the page has a card that fits a window of 360 px, and every place has terms", async () => {
  const visit = await visitChromium({ width: 360, height: 640 });
  try {
    await open(visit);
    for (const place of ["start", "came-in", "trust", "says", "next", "write", "prove"]) {
      await visit.evaluate((wanted) => {
        location.hash = wanted;
      }, place);
      await visit.until(place, (wanted) => !document.getElementById(`place-${wanted}`).hidden, place);
      const odd = await visit.evaluate(async (wanted) => {
        const found = [];
        const shown = [...document.getElementById(`place-${wanted}`).querySelectorAll(".term-word")].filter((word) => word.checkVisibility());
        if (shown.length === 0) found.push(`${wanted} has no term`);
        const ids = shown.map((word) => word.id);
        if (new Set(ids).size !== ids.length) found.push(`${wanted}: two terms with one id`);
        for (const word of shown) {
          word.scrollIntoView({ block: "center" });
          word.click();
          const box = document.getElementById("term-card")?.getBoundingClientRect();
          if (box === undefined) found.push(`${word.id}: no card`);
          else if (box.left < 0 || box.top < 0 || box.right > innerWidth || box.bottom > innerHeight) found.push(`${word.id}: ${JSON.stringify(box)}`);
          document.getElementById("term-card-close")?.click();
        }
        return found;
      }, place);
      assert.deepEqual(odd, []);
    }
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("a card goes with its word: it follows a scroll, ends out of sight, and its word may be drawn anew", async () => {
  const visit = await visitChromium({ height: 700 });
  try {
    await open(visit);
    await visit.goTo("says");
    await visit.click(".counts .term-word");
    const gap = () => {
      const word = document.querySelector(".counts .term-word").getBoundingClientRect();
      return Math.round(document.getElementById("term-card").getBoundingClientRect().top - word.bottom);
    };
    const before = await visit.evaluate(gap);
    await visit.evaluate(() => scrollBy({ top: 60, behavior: "instant" }));
    await visit.until("the card to follow", (wanted) => Math.abs(Math.round(document.getElementById("term-card").getBoundingClientRect().top - document.querySelector(".counts .term-word").getBoundingClientRect().bottom) - wanted) < 3, before);
    await visit.evaluate(() => scrollTo({ top: document.body.scrollHeight, behavior: "instant" }));
    await visit.until("no card", () => document.getElementById("term-card") === null);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

// ---- guide ----

for (const { name, visit: go } of browsers) {
  test(`in ${name} the guide opens by F1, finds as one types, marks what it found, and leads to the place`, async () => {
    const visit = await go();
    try {
      await visit.page.focus("#open-guide");
      await visit.press("F1");
      await visit.until("the guide", () => document.querySelector("dialog#guide[open]") !== null && document.activeElement.id === "guide-search");
      assert.equal(await visit.count("#guide-results > details"), 15, "fourteen chapters and the words");
      await visit.page.keyboard.type("bromine");
      await visit.until("places found", () => /^\d+ places found\.$/.test(document.getElementById("guide-found").textContent));
      const found = await visit.evaluate(() => ({
        n: Number(/\d+/.exec(document.getElementById("guide-found").textContent)[0]),
        shown: document.querySelectorAll("#guide-results > details:not(#guide-words), .guide-word").length,
        marks: [...document.querySelectorAll("#guide mark")].map((mark) => mark.textContent.toLowerCase()),
        open: [...document.querySelectorAll("#guide-results > details")].every((fold) => fold.open),
        live: document.getElementById("guide-found").getAttribute("aria-live"),
      }));
      assert.equal(found.n, found.shown);
      assert.ok(found.marks.length >= 3 && found.marks.every((mark) => mark === "bromine"), JSON.stringify(found.marks));
      assert.ok(found.open);
      assert.equal(found.live, "polite");
      await visit.type("#guide-search", "zzzz");
      await visit.until("nothing", () => document.getElementById("guide-found").textContent === "Nothing found.");
      await visit.type("#guide-search", "second person evidence");
      await visit.until("the chapter that holds all three words", () => document.querySelector("#guide-exemptions[open]") !== null && document.querySelector("#guide-safety") === null);
      await visit.evaluate(() => document.querySelector("#guide-exemptions button").click());
      await visit.until("the place", () => document.querySelector("#guide") === null && location.hash === "#trust" && !document.getElementById("place-trust").hidden);
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });
}

test("the guide speaks the language of the page and finds pieces of words that stand without spaces", async () => {
  const visit = await visitChromium();
  try {
    for (const [tag, piece] of [["ja", "検出下限"], ["zh-Hans", "检出限"], ["de", "NACHWEISGRENZE"]]) {
      await visit.pick("#language", tag);
      await visit.until(tag, (wanted) => document.documentElement.lang === wanted, tag);
      await visit.click("#open-guide");
      await visit.page.fill("#guide-search", piece);
      const marks = await visit.evaluate(() => [...document.querySelectorAll("#guide mark")].map((mark) => mark.textContent));
      assert.ok(marks.length >= 3 && marks.every((mark) => mark.toLowerCase() === piece.toLowerCase()), `${tag}: ${marks}`);
      await visit.press("Escape");
      await visit.until("the focus back on the button", () => document.activeElement.id === "open-guide");
    }
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("every link of the guide leads to a place that is there", async () => {
  const visit = await visitChromium();
  try {
    await open(visit);
    await visit.click("#open-guide");
    const chapters = await visit.evaluate(() => [...document.querySelectorAll("#guide-results > details:not(#guide-words)")].map((fold) => fold.id));
    let led = 0;
    for (const id of chapters) {
      if ((await visit.count("dialog#guide")) === 0) await visit.click("#open-guide");
      const link = await visit.evaluate((wanted) => {
        const button = [...document.querySelectorAll(`#${wanted} > button`)].at(-1);
        if (!button || button.id === "guide-diagnostic") return false;
        button.click();
        return true;
      }, id);
      if (!link) continue;
      led += 1;
      await visit.until(`a place for ${id}`, () => document.querySelector("dialog") === null && document.querySelector("[data-place]:not([hidden])") !== null && document.activeElement !== document.body);
    }
    assert.ok(led >= 11);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

// ---- the picture ----

test("the picture of the ruler has its names on it, stands open at the table until it was closed, and none of its words leaves it", async () => {
  for (const width of [1280, 360]) {
    const visit = await visitChromium({ width });
    try {
      await open(visit);
      await visit.goTo("says");
      for (const tag of tags) {
        await visit.pick("#language", tag);
        await visit.until(tag, (wanted) => document.documentElement.lang === wanted, tag);
        const said = await visit.evaluate(() => {
          const svg = document.querySelector("#legend .legend-ruler");
          const frame = svg.getBoundingClientRect();
          const boxes = [...svg.querySelectorAll("text")].map((text) => ({ text: text.textContent, box: text.getBoundingClientRect() }));
          const out = boxes.filter(({ box }) => box.left < frame.left - 1 || box.right > frame.right + 1).map(({ text }) => text);
          const over = boxes.flatMap((a, at) => boxes.slice(at + 1).filter((b) => a.box.left < b.box.right && b.box.left < a.box.right && a.box.top + 3 < b.box.bottom && b.box.top + 3 < a.box.bottom).map((b) => `${a.text} / ${b.text}`));
          return { open: document.getElementById("legend").open, n: boxes.length, out, over, ways: document.querySelectorAll("#legend .legend-way .mark").length };
        });
        assert.deepEqual(said, { open: true, n: 6, out: [], over: [], ways: 3 }, `${tag}, ${width}`);
      }
      await visit.click("#legend > summary");
      await visit.pick("#language", "en");
      await visit.until("English", () => document.documentElement.lang === "en");
      assert.equal(await visit.evaluate(() => document.getElementById("legend").open), false, "closed once, it stays closed");
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  }
});

// ---- the tour ----

for (const { name, visit: go } of browsers) {
  for (const width of [1280, 360]) {
    test(`in ${name}, ${width} px wide, the tour goes by keys from stop to stop and leaves everything as it was`, async () => {
      const visit = await go({ width, height: 800, reducedMotion: "reduce" });
      try {
        await visit.page.focus("#tour-start");
        await visit.press("Enter");
        for (let stop = 1; stop <= 6; stop += 1) {
          await visit.until(`stop ${stop}`, (wanted) => document.getElementById("tour")?.textContent.includes(`Stop ${wanted} of 6`) && document.activeElement.id === "tour-heading", stop);
          const seen = await visit.evaluate(() => {
            const card = document.getElementById("tour").getBoundingClientRect();
            const target = document.querySelector(".tour-target")?.getBoundingClientRect();
            return { fits: card.left >= 0 && card.right <= innerWidth && card.bottom <= innerHeight, seen: target !== undefined && target.top < card.top - 20 && target.bottom > 0, wide: document.documentElement.scrollWidth - document.documentElement.clientWidth };
          });
          assert.deepEqual(seen, { fits: true, seen: true, wide: 0 }, `stop ${stop}`);
          if (stop === 3) {
            await visit.press("Tab");
            await visit.press("Tab");
            assert.equal(await visit.evaluate(focusId), "tour-back");
            await visit.press("Enter");
            await visit.until("the stop before", () => document.getElementById("tour").textContent.includes("Stop 2 of 6") && document.activeElement.id === "tour-heading");
            await visit.press("Tab");
            await visit.press("Enter");
            await visit.until("stop 3 again", () => document.getElementById("tour").textContent.includes("Stop 3 of 6") && document.activeElement.id === "tour-heading");
          }
          await visit.press("Tab");
          await visit.press("Enter");
        }
        await visit.until("the first screen", () => document.getElementById("tour") === null && !document.getElementById("place-start").hidden && document.getElementById("summary-counts").textContent === "");
        assert.equal(await visit.evaluate(() => document.getElementById("tour-offer").hidden), true, "offered once");
        assert.deepEqual(visit.complaints, []);
      } finally {
        await visit.close();
      }
    });
  }
}

test("Escape leaves the tour, and an inspection that stood open stands open again", async () => {
  const visit = await visitChromium();
  try {
    await open(visit);
    const before = await visit.text("#summary-counts");
    await visit.click("#open-guide");
    await visit.click("#guide-tour");
    await visit.until("the tour", () => document.activeElement.id === "tour-heading");
    await visit.press("Escape");
    await visit.until("the inspection", (counts) => document.getElementById("tour") === null && document.getElementById("summary-counts").innerText === counts, before);
    assert.match(await visit.text("#door-label"), /Inspection/);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("the offer of the tour is declined once, and remembered only where something may be kept", async () => {
  for (const nothing of [false, true]) {
    const visit = await visitChromium();
    try {
      if (nothing) await visit.evaluate(() => localStorage.setItem("plumbline.keep-nothing", "yes"));
      await visit.page.reload();
      await visit.until("the offer", () => document.getElementById("tour-not") !== null);
      await visit.click("#tour-not");
      assert.equal(await visit.evaluate(() => document.getElementById("tour-offer").hidden), true);
      await visit.page.reload();
      await visit.until("the page", () => document.getElementById("open-guide")?.textContent === "Guide");
      assert.equal(await visit.evaluate(() => document.getElementById("tour-offer").hidden), !nothing);
      assert.equal(await visit.evaluate(() => Object.keys(localStorage).some((key) => key.startsWith("plumbline.help"))), !nothing);
    } finally {
      await visit.close();
    }
  }
});

// ---- keys ----

async function withCtrl(visit, key) {
  await visit.page.keyboard.down("Control");
  await visit.press(key);
  await visit.page.keyboard.up("Control");
}

// What each key of the list does, seen from outside. A key without a line here fails the test.
const WORKS = {
  guide: async (visit) => {
    await visit.press("F1");
    await visit.until("the guide", () => document.querySelector("dialog#guide") !== null);
    await visit.press("Escape");
  },
  keys: async (visit) => {
    await visit.press("?");
    await visit.until("the keys", () => document.querySelector("dialog#keys") !== null);
    await visit.press("Escape");
  },
  ...Object.fromEntries(
    ["came-in", "trust", "says", "next", "write"].map((place, at) => [
      `place-${place}`,
      async (visit) => {
        await visit.page.keyboard.down("Alt");
        await visit.page.keyboard.down("Shift");
        await visit.press(`Digit${at + 1}`);
        await visit.page.keyboard.up("Shift");
        await visit.page.keyboard.up("Alt");
        await visit.until(place, (wanted) => !document.getElementById(`place-${wanted}`).hidden && document.activeElement.id === `heading-${wanted}`, place);
      },
    ]),
  ),
  // It types nothing and is heard in fields too: after something was typed one goes on.
  next: async (visit) => {
    await visit.goTo("write");
    await visit.page.focus("#act-place--");
    const typed = await visit.evaluate(() => document.activeElement.value);
    await visit.page.keyboard.down("Alt");
    await visit.page.keyboard.down("Shift");
    await visit.press("Digit0");
    await visit.page.keyboard.up("Shift");
    await visit.page.keyboard.up("Alt");
    await visit.until("the next thing to do", () => document.activeElement.id === "next-go");
    assert.equal(await visit.evaluate(() => document.getElementById("act-place--").value), typed);
  },
  filter: async (visit) => {
    await visit.goTo("says");
    await visit.press("/");
    await visit.until("the search field", () => document.activeElement.id === "filter-text" && document.activeElement.value === "");
  },
  close: async (visit) => {
    await visit.press("Escape");
    await visit.click("#open-guide");
    await visit.press("Escape");
    await visit.until("nothing open", () => document.querySelector("dialog") === null);
  },
  heads: async (visit) => {
    await visit.goTo("says");
    await visit.until("the headings", () => document.querySelector(".grid-sort") !== null);
    await visit.page.focus(".grid-sort");
    await visit.press("ArrowRight");
    assert.equal(await visit.evaluate(() => document.activeElement.dataset.sort), "Cd");
    await visit.press("ArrowLeft");
    assert.equal(await visit.evaluate(() => document.activeElement.dataset.sort), "id");
  },
  "head-sort": async (visit) => {
    const sorted = () => document.activeElement.closest("[role=columnheader]")?.getAttribute("aria-sort");
    assert.equal(await visit.evaluate(sorted), "none");
    await visit.press("Enter");
    await visit.until("the order", () => document.activeElement.closest("[role=columnheader]")?.getAttribute("aria-sort") === "ascending");
  },
  "head-term": async (visit) => {
    await visit.press("ArrowRight");
    await visit.press("F2");
    await visit.until("the card", () => document.activeElement.id === "term-card");
    await visit.press("Escape");
    await visit.until("the focus back on the heading", () => document.getElementById("term-card") === null && document.activeElement.dataset.sort === "Cd");
  },
  rows: async (visit) => {
    await visit.goTo("says");
    await visit.click('.grid-body [role=row][aria-rowindex="2"] [role=gridcell]');
    await visit.press("ArrowDown");
    await visit.until("row 3", () => document.activeElement.closest("[role=row]")?.getAttribute("aria-rowindex") === "3");
    await visit.press("ArrowUp");
    await visit.until("row 2", () => document.activeElement.closest("[role=row]")?.getAttribute("aria-rowindex") === "2");
  },
  cells: async (visit) => {
    const column = () => [...document.activeElement.parentElement.children].indexOf(document.activeElement);
    const before = await visit.evaluate(column);
    await visit.press("ArrowRight");
    assert.equal(await visit.evaluate(column), before + 1);
    await visit.press("ArrowLeft");
  },
  screens: async (visit) => {
    await visit.press("PageDown");
    await visit.until("further down", () => Number(document.activeElement.closest("[role=row]")?.getAttribute("aria-rowindex")) > 5);
    await visit.press("PageUp");
  },
  ends: async (visit) => {
    await visit.press("End");
    await visit.until("the last row", () => document.activeElement.closest("[role=row]")?.getAttribute("aria-rowindex") === "18");
    await visit.press("Home");
    await visit.until("the first row", () => document.activeElement.closest("[role=row]")?.getAttribute("aria-rowindex") === "2");
  },
  fold: async (visit) => {
    await visit.pick("#filter-group", "part");
    await visit.until("a group", () => document.querySelector(".grid-body [aria-expanded]") !== null);
    await visit.click(".grid-body [aria-expanded] [role=gridcell]");
    const open = () => document.activeElement.closest("[role=row]").getAttribute("aria-expanded");
    await visit.press("ArrowLeft");
    await visit.until("the group shut", () => document.activeElement.closest("[role=row]").getAttribute("aria-expanded") === "false");
    await visit.press("ArrowRight");
    await visit.until("the group open", () => document.activeElement.closest("[role=row]").getAttribute("aria-expanded") === "true");
    assert.equal(await visit.evaluate(open), "true");
    await visit.pick("#filter-group", "");
    await visit.until("no group", () => document.querySelector(".grid-body [aria-expanded]") === null);
    await visit.click('.grid-body [role=row][aria-rowindex="2"] [role=gridcell]');
  },
  select: async (visit) => {
    await visit.page.keyboard.down("Shift");
    await visit.press("ArrowDown");
    await visit.page.keyboard.up("Shift");
    await visit.until("two rows", () => /^2 /.test(document.getElementById("readings-selected").textContent));
  },
  "select-one": async (visit) => {
    await visit.press(" ");
    await visit.until("one row", () => /^1 |^One /i.test(document.getElementById("readings-selected").textContent));
  },
  "select-all": async (visit) => {
    await withCtrl(visit, "a");
    await visit.until("all rows", () => /^17 /.test(document.getElementById("readings-selected").textContent));
  },
  copy: async (visit) => {
    await withCtrl(visit, "c");
    await visit.until("what came of it", () => document.getElementById("copy-told").textContent !== "");
  },
  "select-none": async (visit) => {
    await visit.press("Escape");
    await visit.until("nothing selected", () => !/^17 /.test(document.getElementById("readings-selected").textContent));
  },
  undo: async (visit) => {
    await visit.goTo("write");
    await visit.type("#act-title--", "Valves");
    await visit.press("Enter");
    await visit.event(/^Taken/);
    await visit.page.focus("#heading-write");
    await withCtrl(visit, "z");
    await visit.event(/^Undone/);
  },
  redo: async (visit) => {
    await withCtrl(visit, "y");
    await visit.event(/^Done again/);
  },
  open: async (visit) => {
    await visit.press("Enter");
    await visit.until("the reading", () => document.activeElement.id === "detail-heading");
    await visit.press("Escape");
  },
  pick: async (visit) => {
    await visit.goTo("write");
    await visit.page.focus("#act-category--");
    const acts = await visit.evaluate(() => document.querySelectorAll(".act").length);
    await visit.press("ArrowDown");
    assert.equal(await visit.evaluate(() => document.querySelectorAll(".act").length), acts, "nothing was recorded");
  },
  take: async (visit) => {
    const acts = await visit.evaluate(() => document.querySelectorAll(".act").length);
    await visit.press("Enter");
    await visit.until("the act", (before) => document.querySelectorAll(".act").length === before + 1, acts);
  },
  // photos.test.mjs moves and records the mark by these keys.
  spot: null,
  "spot-take": null,
};

for (const { name, visit: go } of browsers) {
  test(`in ${name} the list of keys holds every key that is declared, and each does what it says`, async () => {
    const visit = await go();
    try {
      await open(visit);
      await visit.goTo("trust");
      await visit.press("?");
      await visit.until("the keys", () => document.querySelector("dialog#keys") !== null);
      const listed = await visit.evaluate(() => [...document.querySelectorAll("#keys [data-key]")].map((row) => ({ id: row.dataset.key, caps: row.cells[0].textContent.trim(), words: row.cells[1].textContent.trim() })));
      await visit.press("Escape");
      assert.deepEqual(listed.filter(({ caps, words: said }) => caps === "" || said === "" || /page-/.test(caps + said)), []);
      const declared = [...source("page/help/keys.ts").matchAll(/(?:heard\(|\bid: )"([a-z-]+)"/g)].map((match) => match[1]).filter((id) => !["single-keys", "single-keys-hint"].includes(id));
      assert.deepEqual(declared.filter((id) => !listed.some((one) => one.id === id)), []);
      for (const { id } of listed) {
        assert.ok(id in WORKS, `this test has no line for the key "${id}"`);
        await WORKS[id]?.(visit);
      }
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });
}

test("a sign typed into a field is only typed, and single keys can be switched off", async () => {
  const visit = await visitChromium();
  try {
    await open(visit);
    await visit.goTo("says");
    await visit.page.focus("#filter-text");
    await visit.page.keyboard.type("a/?");
    assert.equal(await visit.evaluate(() => document.getElementById("filter-text").value), "a/?");
    assert.equal(await visit.count("dialog"), 0);
    await visit.page.focus("#heading-says");
    await visit.press("?");
    await visit.click("#single-keys");
    await visit.press("Escape");
    await visit.page.focus("#heading-says");
    await visit.press("?");
    await visit.press("/");
    assert.equal(await visit.count("dialog"), 0);
    assert.equal(await visit.evaluate(focusId), "heading-says");
    await visit.press("F1");
    await visit.until("the guide all the same", () => document.querySelector("dialog#guide") !== null);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("where Alt and a digit are free, they are the keys of the five places", async () => {
  const visit = await visitChromium({ before: 'Object.defineProperty(navigator, "platform", { get: () => "Win32" });' });
  try {
    await visit.press("Alt+Digit4");
    await visit.until("the fourth place", () => !document.getElementById("place-next").hidden);
    await visit.press("?");
    assert.equal(await visit.evaluate(() => document.querySelector('[data-key="place-next"] td').textContent.trim()), "Alt + 4");
  } finally {
    await visit.close();
  }
});

// ---- troubles and the diagnostic file ----

const PLAIN = "Sample,Part,Material,Lot,Supplier,Class,Pb mg/kg,Pb u (1s)\r\nS-1,P-1,housing,A-1,Alder Works,polymer,12,5\r\n";

// As in crash.test.mjs, with a panic's own text before it: it holds what such a text may hold of the data.
const TRAP = addedToWorker(`
  const { push } = wasm_bindgen.Session.prototype;
  wasm_bindgen.Session.prototype.push = function (bytes) {
    const text = new TextDecoder().decode(bytes);
    if (text.includes("TRAP")) {
      console.error('panicked at crates/core/src/pool.rs:675:9:\\ncalled Option::unwrap() on a None value for "' + text.slice(0, 40) + '" Quuxmarkpanic 918273645 \\u201eQuuxmarkquoted\\u201c');
      trap();
    }
    return push.call(this, bytes);
  };
`);

/** Everything a person or a file can bring in, marked so that it is found again wherever it goes. */
const MARK = "Quuxmark";
const NUMBERS = ["7316498", "5820917", "918273645", "4711.25"];

test("the diagnostic file holds nothing of the data: no name, no heading, no cell, no act, no setting, no digest", async () => {
  const visit = await visitChromium({ before: TRAP });
  try {
    const table = `${MARK}sample,Part,Material,Lot,Supplier,Class,Pb mg/kg,Pb u (1s),${MARK}heading\r\n${MARK}id,${MARK}part,${MARK}material,${MARK}lot,${MARK}supplier,polymer,4711.25,5820917,${MARK}cell\r\n`;
    await visit.choose("Settings file", writtenFiles({ [`${MARK}settings.toml`]: `schema = "plumbline.settings/1"\ntitle = "${MARK}title"\nplace = "${MARK}place"\n` }));
    await visit.event(/settings/i);
    await visit.choose("Result files", writtenFiles({ [`${MARK}name.csv`]: table, [`plain.${MARK}ending`]: PLAIN, [`${MARK}crash.csv`]: PLAIN.replace("S-1", `TRAP ${MARK}row`) }));
    await visit.until("the crash", () => document.querySelectorAll("#troubles .trouble").length === 1 && document.querySelector("#work").hidden);
    await visit.event(/files read/);
    // A refused settings file, a refused act, a typed filter, initials: troubles and typed texts.
    await visit.choose("Settings file", writtenFiles({ [`${MARK}bad.toml`]: `schema = "plumbline.settings/1"\n${MARK}key = "${MARK}value"\n` }));
    await visit.until("the refusal", () => document.querySelectorAll("#troubles .trouble").length === 2);
    await visit.goTo("write");
    await visit.type("#who-initials", `${MARK}QX`);
    await visit.type("#act-title--", `${MARK}typed`);
    await visit.press("Enter");
    await visit.event(/^Taken/);
    await visit.goTo("trust");
    await visit.type("input[id^=act-lot_size-lot]", "7316498");
    await visit.press("Enter");
    await visit.event(/Taken: lot size 7316498/);
    await visit.goTo("says");
    await visit.type("#filter-text", `${MARK}filter`);

    await visit.click("#troubles [id$=-diagnostic]");
    const shown = await visit.text("#diagnostic-text");
    const saved = (await visit.downloaded("plumbline-diagnostic.json", () => visit.click("#diagnostic-write"))).toString("utf8");
    assert.equal(saved.trim(), shown.trim(), "what is saved is what was shown");
    const content = JSON.parse(saved);
    assert.doesNotMatch(saved, new RegExp(MARK, "i"));
    for (const number of NUMBERS) assert.ok(!saved.includes(number), number);
    assert.doesNotMatch(saved, /[0-9a-f]{16}/i, "no digest");
    assert.doesNotMatch(saved, /housing|Alder|P-1|file:\/\//);

    // And it holds what helps.
    assert.equal(content.schema, "plumbline.diagnostic/1");
    assert.deepEqual(content.files.map((file) => file.ending).sort(), ["csv", "other"]);
    assert.ok(content.files.every((file) => file.bytes > 0));
    assert.equal(content.review.readings, 2);
    assert.equal(content.review.acts.title, 2);
    const crash = content.troubles.find((trouble) => trouble.code === "crash chunk");
    assert.match(crash.said, /^core\/src\/pool\.rs:675:9 .*unwrap.*none value/);
    assert.match(crash.said, /unreachable/);
    assert.ok(content.troubles.some((trouble) => trouble.code === "settings unknown_key"));
    assert.ok(content.steps.some(([, kind]) => kind === "review") && content.steps.some(([, kind]) => kind === "place trust"));
    assert.deepEqual(visit.complaints.filter((text) => !/panicked/.test(text)), []);
  } finally {
    await visit.close();
  }
});

test("a crash is told in plain words, with the program's own words in a fold for whoever helps", async () => {
  const visit = await visitChromium({ before: TRAP });
  try {
    await visit.choose("Result files", writtenFiles({ "a.csv": PLAIN, "crash.csv": PLAIN.replace("S-1", "TRAP") }));
    await visit.until("the crash", () => document.querySelectorAll("#troubles .trouble").length === 1);
    const told = await visit.text("#troubles");
    assert.match(told, /Plumbline itself has a fault/);
    assert.doesNotMatch(told, /panicked|unreachable|\.rs/);
    await visit.click("#troubles .raw > summary");
    assert.match(await visit.text("#troubles"), /panicked at crates\/core\/src\/pool\.rs:675:9[\s\S]*unreachable/);
  } finally {
    await visit.close();
  }
});

test("a fault of the page itself is told in plain words and offers the diagnostic file", async () => {
  const visit = await visitChromium();
  try {
    await visit.evaluate(() => setTimeout(() => { throw new TypeError("reading 'Quuxmark' of undefined 918273645"); }));
    await visit.until("the trouble", () => document.querySelectorAll("#troubles .trouble").length === 1);
    assert.match(await visit.text("#troubles"), /Something in the page itself went wrong[\s\S]*Plumbline itself has a fault/);
    assert.doesNotMatch(await visit.text("#troubles"), /TypeError/);
    await visit.click("#troubles [id$=-diagnostic]");
    const shown = await visit.text("#diagnostic-text");
    assert.match(shown, /typeerror/);
    assert.doesNotMatch(shown, /Quuxmark|918273645|file:\/\//i);
  } finally {
    await visit.close();
  }
});

test("a settings file that is no text says so in plain words", async () => {
  const visit = await visitChromium();
  try {
    await visit.choose("Settings file", writtenFiles({ "s.toml": Buffer.from([0x73, 0xff, 0xfe, 0x00, 0x3d]) }));
    await visit.until("the trouble", () => document.querySelectorAll("#troubles .trouble").length === 1);
    const told = await visit.text("#troubles");
    assert.match(told, /no plain text[\s\S]*save it as UTF-8/);
    assert.doesNotMatch(told, /TypeError|encoded data/i);
  } finally {
    await visit.close();
  }
});

// ---- access ----

async function faults(visit, where) {
  await visit.evaluate(axe);
  const found = await visit.evaluate(async () => {
    const { violations } = await window.axe.run(document, { runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"] });
    return violations.map((one) => `${one.id}: ${one.nodes.map((node) => node.target.join(" ")).slice(0, 3).join(" | ")}`);
  });
  return found.map((fault) => `${where}: ${fault}`);
}

const tooSmall = () =>
  [...document.querySelectorAll("#term-card button, dialog button, dialog summary, dialog input:not([type=checkbox]), #tour button, #tour-offer button, #legend summary, .counts .term-word, .lot-head .term-word, .finding-head .term-word")]
    .filter((one) => one.checkVisibility())
    .map((one) => ({ box: one.getBoundingClientRect(), name: one.id || one.textContent }))
    .filter(({ box }) => box.height < 43.5 || box.width < 43.5)
    .map(({ box, name }) => `${name} is ${Math.round(box.width)} by ${Math.round(box.height)}`);

for (const scheme of ["light", "dark"]) {
  for (const width of [1280, 360]) {
    test(`help is clean for axe-core, fits and can be pressed in each of its states: ${scheme}, ${width} px wide`, async () => {
      const visit = await visitChromium({ scheme, width, height: 800, reducedMotion: "reduce", before: TRAP });
      const found = [];
      const look = async (state) => {
        found.push(...(await faults(visit, state)), ...(await visit.evaluate(tooSmall)).map((one) => `${state}: ${one}`));
        assert.equal(await visit.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth), 0, `${state} is wider than the window`);
        assert.equal(await visit.evaluate(() => [...document.querySelectorAll("dialog")].filter((one) => one.scrollWidth > one.clientWidth).length), 0, `${state}: a sheet is wider than itself`);
      };
      try {
        await look("the offer of the tour");
        await visit.click("#term-start-xrf");
        await look("a card");
        await visit.press("Escape");
        await visit.click("#tour-start");
        await visit.until("the tour", () => document.activeElement.id === "tour-heading");
        await look("the tour");
        await visit.press("Escape");
        await visit.until("no tour", () => document.getElementById("tour") === null && document.getElementById("summary-counts").textContent === "");
        await visit.click("#open-guide");
        await look("the guide");
        await visit.page.fill("#guide-search", "detection");
        await look("the guide, searched");
        await visit.click("#guide-keys");
        await look("the keys");
        await visit.press("Escape");
        await visit.choose("Result files", [...brass.results, ...writtenFiles({ "crash.csv": PLAIN.replace("S-1", "TRAP") })]);
        await visit.until("the crash", () => document.querySelectorAll("#troubles .trouble").length === 1 && document.querySelector("#work").hidden && document.querySelector("#summary-says").textContent !== "");
        await visit.click("#troubles .raw > summary");
        await visit.goTo("says");
        await visit.click(".grid-body [role=gridcell]");
        await visit.until("the detail", () => !document.getElementById("detail").hidden);
        await look("a crash told, the picture of the ruler and a reading with terms");
        await visit.click("#troubles [id$=-diagnostic]");
        await look("the diagnostic file");
        assert.deepEqual(found, []);
      } finally {
        await visit.close();
      }
    });
  }
}
