// The trainer's room: a lesson by keyboard alone, a ruler that is dragged, exercises right and wrong, the sheet on paper, and the same
// exercises for the same seed, here and on the command line.

import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { readFileSync, readdirSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { test } from "node:test";
import { pathToFileURL } from "node:url";
import { browsers, buildPrograms, builtPage, cleanDelivery, ownFolder, top, visitChromium, writtenByCommandLine } from "./drive.mjs";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const at = (fragment) => `${pathToFileURL(builtPage).href}${fragment}`;
const SEED = "4711";
/** What the native program says of the same seed: lesson, number, answer. */
const ON_RECORD = readFileSync(join(top, "tests/vectors/lessons_seed_4711.txt"), "utf8").trim().split("\n").map((line) => {
  const [lesson, number, answer, ...row] = line.split(" ");
  return { lesson, number: Number(number), answer, row: row.join(" ") };
});
const answersOf = (lesson) => ON_RECORD.filter((one) => one.lesson === lesson).map((one) => one.answer);

const exercisesThere = () => document.querySelectorAll(".train-exercise").length >= 3 && document.querySelector(".train-list[aria-busy]") === null;

async function enter(visit, lesson, seed = SEED) {
  await visit.evaluate((hash) => {
    location.hash = hash;
  }, `#train/${lesson}/${seed}`);
  await visit.until("the exercises", exercisesThere);
}

/** Picks an answer and checks it. */
async function answer(visit, number, code) {
  await visit.click(`#exercise-${number} input[value="${code}"]`);
  await visit.click(`#exercise-${number}-check`);
  await visit.until("the answer to be checked", (n) => !document.getElementById(`exercise-${n}-result`).hidden, number);
}

const onRuler = (id) => ({
  text: document.querySelector(`.ruler-outcome`).textContent,
  value: document.getElementById(`move-${id}-value`).value,
  sigma: document.getElementById(`move-${id}-sigma`).value,
  heard: document.getElementById(`move-${id}-heard`).textContent,
});

for (const { name, visit: open } of browsers) {
  test(`in ${name} a trainee takes a lesson by keyboard alone, from the door to the next lesson`, async () => {
    const visit = await open({ start: at(`#train/home/${SEED}`) });
    try {
      const tabTo = async (wanted) => {
        for (let presses = 0; presses < 80; presses += 1) {
          if (await visit.evaluate((selector) => document.activeElement.matches(selector), wanted)) return;
          await visit.press("Tab");
        }
        throw new Error(`no way to ${wanted} by Tab`);
      };
      const seen = () => visit.evaluate(() => {
        const box = document.activeElement.getBoundingClientRect();
        return box.bottom > 0 && box.top < innerHeight && getComputedStyle(document.activeElement).outlineStyle !== "none";
      });
      await visit.until("the room", () => document.getElementById("train-next") !== null);
      assert.match(await visit.text("#train-next"), /lesson 1/);
      await tabTo("#train-next");
      assert.ok(await seen());
      await visit.press("Enter");
      await visit.until("the exercises", exercisesThere);
      assert.equal(await visit.evaluate(() => document.activeElement.id), "train-view");

      // The ruler, by the arrow keys of its slider.
      await tabTo("#move-band-value-slide");
      const before = await visit.evaluate(onRuler, "band");
      assert.match(before.text, /BL/);
      for (let presses = 0; presses < 5; presses += 1) await visit.press("PageUp");
      await visit.until("another outcome", () => !/BL/.test(document.querySelector(".ruler-outcome").textContent));
      const after = await visit.evaluate(onRuler, "band");
      assert.ok(Number(after.value) > Number(before.value));
      assert.match(after.heard, /^Now: /);

      for (const [index, right] of answersOf("band").entries()) {
        const number = index + 1;
        await tabTo(`#exercise-${number} input[type=radio]`);
        for (let presses = 0; presses < 12; presses += 1) {
          await visit.press("ArrowDown");
          if (await visit.evaluate((code) => document.activeElement.value === code && document.activeElement.checked, right)) break;
        }
        await tabTo(`#exercise-${number}-check`);
        assert.ok(await seen());
        await visit.press("Enter");
        await visit.until("the answer to be checked", (n) => !document.getElementById(`exercise-${n}-result`).hidden, number);
        assert.equal(await visit.evaluate(() => document.activeElement.id), `exercise-${number}-result`);
        assert.match(await visit.text(`#exercise-${number}-result`), /^\s*Right/);
      }
      assert.match(await visit.text("#lesson-progress"), /3 of 3/);
      await tabTo(".train-onwards .primary");
      await visit.press("Enter");
      await visit.until("the second lesson", () => location.hash.startsWith("#train/sigma/"));
      await visit.until("its exercises", exercisesThere);
      assert.deepEqual(visit.complaints, []);
      assert.deepEqual(visit.strangers(), []);
    } finally {
      await visit.close();
    }
  });

  test(`in ${name} the bob and the whisker are dragged and the words follow`, async () => {
    const visit = await open({ start: at(`#train/ruler/${SEED}`) });
    try {
      await visit.until("the ruler", () => document.querySelector(".ruler-drawing svg") !== null);
      const spot = () => visit.evaluate(() => {
        document.querySelector(".ruler-pad").scrollIntoView({ block: "center" });
        const middle = (one) => {
          const box = document.querySelector(one).getBoundingClientRect();
          return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
        };
        const pad = document.querySelector(".ruler-pad").getBoundingClientRect();
        return { bob: middle(".ruler-drawing .ruler-bob"), whisker: middle(".grip-whisker"), left: pad.left, right: pad.right };
      });
      const drag = async (from, toX) => {
        await visit.page.mouse.move(from.x, from.y);
        await visit.page.mouse.down();
        for (let step = 1; step <= 8; step += 1) await visit.page.mouse.move(from.x + ((toX - from.x) * step) / 8, from.y);
        await visit.page.mouse.up();
      };
      const first = await visit.evaluate(onRuler, "ruler");
      assert.match(first.text, /BL/);
      let there = await spot();
      // To the right, through the band and out of it.
      await drag(there.bob, there.left + (there.right - there.left) * 0.9);
      await visit.until("over limit", () => /OL/.test(document.querySelector(".ruler-outcome").textContent));
      const over = await visit.evaluate(onRuler, "ruler");
      assert.ok(Number(over.value) > Number(first.value) && over.sigma === first.sigma);
      assert.match(over.heard, /Now: over limit/);
      // Bob and pointer are at one place.
      there = await spot();
      assert.ok(Math.abs(there.bob.x - (there.left + (there.right - there.left) * 0.9)) < 6);
      // Back below, then the whisker is drawn out until it reaches the band.
      await drag(there.bob, there.left + (there.right - there.left) * 0.45);
      await visit.until("below limit", () => /BL/.test(document.querySelector(".ruler-outcome").textContent));
      there = await spot();
      await drag(there.whisker, there.left + (there.right - there.left) * 0.8);
      await visit.until("no longer below", () => !/BL|OL/.test(document.querySelector(".ruler-outcome").textContent));
      const wide = await visit.evaluate(onRuler, "ruler");
      assert.ok(Number(wide.sigma) > Number(over.sigma));
      // Bromine is never over.
      await visit.pick("#move-ruler-substance", "Br");
      await visit.type("#move-ruler-sigma", "50");
      await visit.type("#move-ruler-value", "90000");
      await visit.until("undecided", () => /^X|undecided/.test(document.querySelector(".ruler-outcome").textContent));
      // So much of it is no metal, whatever the file says; a little is, and then it does not apply.
      await visit.pick("#move-ruler-class", "metal");
      await visit.until("the contradiction", () => /contradict/.test(document.querySelector(".movable").textContent));
      await visit.type("#move-ruler-value", "900");
      await visit.until("not applicable", () => /not applicable/.test(document.querySelector(".ruler-outcome").textContent));
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });

  test(`in ${name} exercises are answered right and wrong, an answer stays, and a reload shows the same exercises`, async () => {
    const visit = await open({ start: at(`#train/home/${SEED}`) });
    try {
      await visit.until("the room", () => document.getElementById("train-next") !== null);
      for (const lesson of [...new Set(ON_RECORD.map((one) => one.lesson))]) {
        await enter(visit, lesson);
        const [first, second] = answersOf(lesson);
        await answer(visit, 1, first);
        assert.match(await visit.text("#exercise-1-result"), /^\s*Right/, `${lesson} 1`);
        const wrong = await visit.evaluate((right) => [...document.querySelectorAll("#exercise-2 input")].map((one) => one.value).find((code) => code !== right), second);
        await answer(visit, 2, wrong);
        assert.match(await visit.text("#exercise-2-result"), /^\s*Not right[^]*Your answer: [^]*The tool says:\s*\S/, `${lesson} 2`);
      }
      const state = await visit.evaluate(() => ({ shut: document.querySelector("#exercise-2 fieldset").disabled, check: document.getElementById("exercise-2-check") }));
      assert.deepEqual(state, { shut: true, check: null });
      // Going away and coming back changes no answer.
      await enter(visit, "band");
      await visit.until("the earlier answers", () => !document.getElementById("exercise-2-result").hidden);
      assert.match(await visit.text("#exercise-2-result"), /^\s*Not right/);
      await visit.click("#exercise-more");
      await visit.until("a fourth", () => document.getElementById("exercise-4") !== null);

      const texts = () => visit.evaluate(() => [...document.querySelectorAll(".train-exercise .facts")].slice(0, 3).map((one) => one.textContent));
      const before = await texts();
      await visit.page.reload();
      await visit.until("the exercises", exercisesThere);
      assert.deepEqual(await texts(), before);
      for (const { number, row } of ON_RECORD.filter((one) => one.lesson === "band")) {
        const written = row.split(",").at(-2);
        assert.match(await visit.text(`#exercise-${number} .facts`), new RegExp(written.replace(".", "\\.")), `the numbers of the native program in exercise ${number}`);
      }
      await enter(visit, "band", "4712");
      await visit.until("other numbers", (old) => document.querySelector(".train-exercise .facts")?.textContent !== old, before[0]);
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });

  test(`in ${name} the delivery of a seed is that of the command line, and an open inspection is put by and comes back`, async () => {
    buildPrograms();
    const folder = join(ownFolder(), "made");
    const target = process.env.CARGO_TARGET_DIR || join(top, "target");
    execFileSync(join(target, "debug", process.platform === "win32" ? "plumbline-tool.exe" : "plumbline-tool"), ["invent-exercise", "--seed", SEED, "--out", folder]);
    assert.deepEqual(readdirSync(folder).sort(), ["README.md", `invented-${SEED}.csv`, "settings.toml"]);
    const visit = await open();
    try {
      const real = cleanDelivery();
      await visit.choose("Result files", real.results);
      await visit.reviewed();
      const says = await visit.text("#summary-counts");
      await visit.evaluate((hash) => {
        location.hash = hash;
      }, `#train/home/${SEED}`);
      await visit.until("the room", () => document.getElementById("train-fresh-open") !== null);
      // The room shows nothing of it, and keeps it.
      assert.equal(await visit.evaluate(() => document.getElementById("summary").checkVisibility()), false);
      await visit.click("#step-says");
      assert.equal(await visit.text("#summary-counts"), says);
      await visit.page.goBack();
      await visit.until("the room", () => document.getElementById("train-fresh-open")?.checkVisibility());
      await visit.click("#train-fresh-open");
      await visit.until("the exercise", (seed) => document.getElementById("lesson-title").textContent.includes(seed), SEED);
      await visit.reviewed();
      assert.match(await visit.text("#door-label"), /invented/);
      await visit.goTo("write");
      assert.match(await visit.text("#lesson"), /seed 4711/i);
      const made = await visit.downloaded("findings.csv", () => visit.click("#save-findings-csv"));
      // The same bytes as the command line's for the tool's files: what the page drew from the seed is what the tool wrote.
      const native = writtenByCommandLine([join(folder, `invented-${SEED}.csv`)], join(folder, "settings.toml"));
      assert.equal(made.toString("utf8"), native["findings.csv"].toString("utf8"));
      await visit.click("#bring-back");
      await visit.until("the inspection before", (text) => document.getElementById("summary-counts").textContent === text, says);
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });
}

test("the score sheet prints on A4 and Letter with name, day, seed, answers in words and lines to sign", async () => {
  const visit = await visitChromium({ start: at(`#train/home/${SEED}`) });
  try {
    await visit.until("the room", () => document.getElementById("train-next") !== null);
    for (const lesson of ["band", "exemption", "sampling"]) {
      await enter(visit, lesson);
      const right = answersOf(lesson);
      await answer(visit, 1, right[0]);
      await answer(visit, 2, lesson === "band" ? (right[1] === "X" ? "BL" : "X") : right[1] === "hold" ? "accept" : "hold");
    }
    await visit.evaluate((hash) => {
      location.hash = hash;
    }, `#train/sheet/${SEED}`);
    await visit.until("the sheet", () => document.querySelector(".score-sheet") !== null);
    await visit.type("#sheet-name", "Q. Invented");
    await visit.evaluate(() => {
      const day = document.getElementById("sheet-day");
      day.value = "2026-11-26";
      day.dispatchEvent(new Event("change"));
    });
    const folder = ownFolder();
    for (const format of ["A4", "Letter"]) {
      const path = join(folder, `${format}.pdf`);
      writeFileSync(path, await visit.page.pdf({ format, margin: { top: "12mm", bottom: "12mm", left: "12mm", right: "12mm" } }));
      const text = execFileSync("pdftotext", ["-layout", path, "-"], { encoding: "utf8" });
      const plain = text.replace(/\s+/g, " ");
      for (const wanted of ["Score sheet", "Q. Invented", "2026-11-26", SEED, "of 6 right", "Not right", "below limit", "Trainer", "no certificate of competence", "invented", "IEC 62321-3-1:2013"]) {
        assert.ok(plain.includes(wanted), `${format}: ${wanted} in\n${text}`);
      }
      for (const unwanted of ["Print the score sheet", "Cancel", "What came in"]) assert.ok(!plain.includes(unwanted), `${format}: ${unwanted}`);
      const pages = text.split("\f").length - 1;
      assert.ok(pages <= 2, `${format}: ${pages} pages`);
    }
    // What was typed is nowhere but on the sheet.
    await visit.page.reload();
    assert.equal(await visit.evaluate(() => Object.values({ ...localStorage, ...sessionStorage }).join().includes("Q. Invented")), false);
  } finally {
    await visit.close();
  }
});

test("the sheet of no answers says so, and a seed that is none is refused where it is typed", async () => {
  const visit = await visitChromium({ start: at("#train") });
  try {
    await visit.until("the room with a seed of its own", () => /^#train\/home\/\d{6}$/.test(location.hash));
    await visit.type("#train-seed", "12a");
    await visit.press("Enter");
    await visit.until("the refusal", () => !document.getElementById("train-seed-refusal").hidden);
    assert.equal(await visit.evaluate(() => document.activeElement.id), "train-seed");
    await visit.type("#train-seed", "18446744073709551615");
    await visit.press("Enter");
    await visit.until("the seed in the address", () => location.hash === "#train/home/18446744073709551615");
    await visit.click("#train-sheet");
    await visit.until("the empty sheet", () => /Nothing answered yet/.test(document.getElementById("sheet-body")?.textContent));
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

const stickingOut = () => document.documentElement.scrollWidth - document.documentElement.clientWidth;
const tooSmall = () =>
  [...document.querySelectorAll("#place-train :is(button, a[href], select, summary, input:not([type=radio]):not([type=checkbox]))")]
    .filter((one) => one.checkVisibility() && one.closest("p") === null)
    .map((one) => ({ box: one.getBoundingClientRect(), name: one.id || one.textContent.trim() }))
    .filter(({ box }) => box.height < 43.5 || box.width < 43.5)
    .map(({ box, name }) => `${name} is ${Math.round(box.width)} by ${Math.round(box.height)}`);

test("the terms of a lesson are linked where its text first names them, or stand below it, in every language", async () => {
  const visit = await visitChromium({ start: at(`#train/home/${SEED}`) });
  try {
    for (const language of ["en", "de", "ja", "zh-Hans"]) {
      if (language !== "en") {
        await visit.pick("#language", language);
        await visit.until(language, (wanted) => document.documentElement.lang === wanted, language);
      }
      let within = 0;
      for (const lesson of ["band", "sigma", "element", "censored", "material", "exemption", "trust", "sampling"]) {
        await visit.evaluate((hash) => {
          location.hash = hash;
        }, `#train/${lesson}/${SEED}`);
        await visit.until(lesson, (wanted) => document.getElementById("train").dataset.view === wanted && document.querySelector(".train-text") !== null, lesson);
        const told = await visit.evaluate(() => {
          const words = [...document.querySelectorAll(".train-text .term-word")];
          const first = document.querySelector(".train-text .term-word");
          first.click();
          const card = document.getElementById("term-card-is")?.textContent ?? "";
          document.getElementById("term-card-close").click();
          return { within: words.filter((one) => one.closest(".words-here") === null).length, ids: words.map((one) => one.dataset.term), text: document.querySelector(".train-text > p").textContent, card };
        });
        assert.ok(told.ids.length >= 3 && new Set(told.ids).size === told.ids.length, `${language}, ${lesson}: ${told.ids}`);
        assert.ok(told.card.length > 10, `${language}, ${lesson}`);
        within += told.within;
      }
      assert.ok(within >= 20, `${language}: only ${within} in the texts themselves`);
    }
    // Joined again, a text is what the catalogue says.
    await visit.pick("#language", "en");
    await visit.until("en", () => document.documentElement.lang === "en");
    await visit.evaluate((hash) => {
      location.hash = hash;
    }, `#train/band/${SEED}`);
    await visit.until("the lesson", () => document.getElementById("train").dataset.view === "band" && document.documentElement.lang === "en");
    assert.equal(await visit.evaluate(() => document.querySelector(".train-text > p").textContent), "A reading is never exact. Around a limit lies a band in which a quick XRF reading cannot tell good from bad.");
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("the next action of the room leads on from every view of it", async () => {
  const visit = await visitChromium({ start: at(`#train/home/${SEED}`) });
  try {
    // In a lesson the next thing is its first exercise that is open.
    for (const [view, wayOn] of [["home", "train-next"], ["sigma", "exercise-1"], ["sampling", "exercise-1"], ["ruler", "train-all"], ["sheet", "train-all"]]) {
      await visit.evaluate((hash) => {
        location.hash = hash;
      }, `#train/${view}/${SEED}`);
      await visit.until(view, (wanted) => document.getElementById("train").dataset.view === wanted && document.querySelector("#next-go").checkVisibility(), view);
      await visit.until(`what leads on from ${view}`, (wanted) => document.getElementById(wanted) !== null, wayOn);
      await visit.page.focus("#next-go");
      await visit.press("Enter");
      await visit.until(`the way on from ${view}`, (wanted) => document.activeElement.closest(`[id="${wanted}"]`) !== null, wayOn);
    }
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

for (const scheme of ["light", "dark"]) {
  for (const width of [1280, 360]) {
    test(`every view of the room is clean for axe-core, fits and can be pressed: ${scheme}, ${width} px wide`, async () => {
      const visit = await visitChromium({ scheme, width, height: 800, reducedMotion: "reduce", start: at(`#train/home/${SEED}`) });
      try {
        const found = [];
        const look = async (where) => {
          await visit.evaluate(() => {
            for (const fold of document.querySelectorAll("#place-train details")) fold.open = true;
          });
          await visit.evaluate(axe);
          const faults = await visit.evaluate(async () => {
            const { violations } = await window.axe.run(document, { runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"] });
            return violations.map((one) => `${one.id}: ${one.nodes.map((node) => node.target.join(" ")).slice(0, 3).join(" | ")}`);
          });
          found.push(...faults.map((fault) => `${where}: ${fault}`), ...(await visit.evaluate(tooSmall)).map((one) => `${where}: ${one}`));
          assert.equal(await visit.evaluate(stickingOut), 0, `${where} is wider than the window`);
        };
        await visit.until("the room", () => document.querySelectorAll("#train .delivery").length > 0);
        await look("home");
        for (const lesson of ["band", "censored", "exemption"]) {
          await enter(visit, lesson);
          await answer(visit, 1, answersOf(lesson)[0]);
          await answer(visit, 2, answersOf(lesson)[0]);
          await look(lesson);
        }
        for (const view of ["ruler", "sheet"]) {
          await visit.evaluate((hash) => {
            location.hash = hash;
          }, `#train/${view}/${SEED}`);
          await visit.until(view, (wanted) => document.querySelector(wanted === "ruler" ? ".ruler-drawing svg" : ".score-sheet") !== null, view);
          await look(view);
        }
        assert.deepEqual(found, []);
      } finally {
        await visit.close();
      }
    });
  }
}
