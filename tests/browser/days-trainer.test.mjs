// The trainer's whole day, by keys: lessons, exercises that are decided first, a delivery out of a seed, the score sheet, while a
// real inspection waits. Everything is invented.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { test } from "node:test";
import { Person, everywhere, onTheStick } from "./days/person.mjs";
import { top, until, writtenFiles } from "./drive.mjs";

const SEED = "4711";
/** What the native program answers to the first lesson's exercises of this seed. */
const RIGHT = readFileSync(join(top, "tests/vectors/lessons_seed_4711.txt"), "utf8").split("\n").map((line) => line.split(" ")).filter(([lesson]) => lesson === "band").map(([, , answer]) => answer);
const WRONG = ["BL", "X", "OL"].find((one) => one !== RIGHT[0]);

const exercises = (visit) => visit.evaluate(() => [...document.querySelectorAll(".train-exercise .facts")].map((one) => one.innerText));

for (const { name, visit: open, why = null } of everywhere) {
  test(`in ${name} a trainer's day: lessons and exercises, a delivery out of a seed, the score sheet, and the inspection that was begun is as it was`, { skip: why ?? false }, async () => {
    let shared = [];
    const visit = await open();
    const trainer = new Person(visit);
    const hash = (pattern) => visit.until(`the address ${pattern}`, (source) => new RegExp(source).test(location.hash), pattern.source);
    const focusIsOn = (what, selector) => visit.until(what, (wanted) => document.activeElement.matches(wanted), selector);
    const presses = async (selector) => {
      await trainer.focuses(selector);
      await visit.press("Enter");
    };
    const opensLesson = () => visit.until("the exercises", () => document.querySelectorAll(".train-exercise").length >= 3 && document.querySelector(".train-list[aria-busy]") === null);
    const answers = async (number, value) => {
      await trainer.chooses(`#exercise-${number}`, value);
      await focusIsOn("the working", `#exercise-${number}-result`);
      return visit.text(`#exercise-${number}-result`);
    };
    try {
      // An inspection was begun this morning; the trainees come, and it has to wait.
      await trainer.brings("Result files", writtenFiles({ "alder-housing.csv": onTheStick("alder-housing.csv") }));
      await trainer.pressesByKey("I have written it down");
      const begun = { counts: await visit.text("#summary-counts"), says: await visit.text("#summary-says") };
      await trainer.pressesByKey("Plumbline", ".masthead");
      await visit.until("the doors", () => !document.getElementById("place-start").hidden);
      await trainer.walksTo("#enter-train");
      await visit.press("Enter");
      await hash(/^#train\/home\/\d{6}$/);
      assert.equal(await visit.evaluate(() => document.getElementById("summary").checkVisibility()), false, "nothing of the inspection is seen in the room");

      // Everybody is to have the same exercises: one seed for all of them.
      await trainer.focuses("#train-seed");
      await visit.evaluate(() => document.getElementById("train-seed").select());
      await trainer.types(SEED);
      await hash(/^#train\/home\/4711$/);

      // Lesson 1. The bob is moved into the band and past it, then the whisker is drawn out, by keys; the words follow.
      assert.equal((await trainer.goesOn(/^room$/)).id, "train-next");
      await visit.press("Enter");
      await hash(/^#train\/band\/4711$/);
      await opensLesson();
      const outcome = () => visit.text(".movable");
      await trainer.sees(/BL[\s\S]*400 \+ 3 × 20 = 460 mg\/kg, at or under the low edge 700/, ".movable");
      // A step at a time, and a look at what the words say now: inside the band they stay the same.
      const moves = async (what, pattern) => {
        await trainer.focuses(`#move-band-${what}-slide`);
        for (let steps = 0; steps < 30; steps += 1) {
          const before = await outcome();
          if (pattern.test(before)) break;
          await visit.press("PageUp");
          await until("other words", async () => (await outcome()) !== before, 2000).catch(() => undefined);
        }
        await trainer.sees(pattern, ".movable");
      };
      await moves("value", /touch the undecided band/);
      await moves("value", /OL\s[\s\S]*at or over the high edge 1300/);
      await moves("sigma", /X\s+undecided/);
      await trainer.sees(/Now: undecided/, ".movable");

      shared = (await exercises(visit)).slice(0, 3);

      // The exercises, one after the other as the page asks for them: decided first, and the working is shown, right or wrong.
      assert.match((await trainer.goesOn(/^exercise:1$/)).id, /^$|exercise-1/);
      const wrong = await answers(1, WRONG);
      assert.match(wrong, /^\s*Not right\s+Your answer: [\s\S]*The tool says:[\s\S]*Rule[\s\S]*Value[\s\S]*Sigma[\s\S]*Comparison/);
      for (const number of [2, 3]) {
        await trainer.goesOn(new RegExp(`^exercise:${number}$`));
        assert.match(await answers(number, RIGHT[number - 1]), /^\s*Right[\s\S]*The tool says:/);
      }
      await trainer.sees(/3 of 3 exercises answered/, "#lesson-progress");
      assert.equal((await trainer.goesOn(/^after$/)).id, "train-after");
      await visit.press("Enter");
      await hash(/^#train\/sigma\/4711$/);
      await opensLesson();
      await trainer.sees(/Why three sigma/, "#train-view");

      // Back and forward go through the room like through the places; answers stay.
      const sigma = await exercises(visit);
      await visit.evaluate(() => history.back());
      await hash(/^#train\/band\/4711$/);
      await visit.until("the earlier answers", () => document.getElementById("exercise-1-result")?.hidden === false);
      assert.match(await visit.text("#exercise-1-result"), /Not right/);
      await visit.evaluate(() => history.forward());
      await hash(/^#train\/sigma\/4711$/);
      await opensLesson();
      assert.deepEqual(await exercises(visit), sigma);

      // A delivery out of the seed, reviewed like a real one; its next step leads back to the room.
      await presses("#train .train-head a");
      await hash(/^#train\/home\/4711$/);
      await presses("#train-fresh-open");
      await visit.until("what it says", () => document.activeElement.id === "heading-says");
      await trainer.sees(/seed 4711/, "#lesson-box");
      await trainer.sees(/Training with invented data/, "#door-label");
      assert.notEqual(await visit.text("#summary-counts"), begun.counts);
      const rows = await trainer.addsUp();
      assert.ok(rows.came > 5);
      const lots = Object.values(await trainer.lots());
      assert.equal(lots.length, 1);
      assert.match(lots[0].is, /accept|hold/i);
      await trainer.goesByKeyTo("trust");
      await trainer.goesByKeyTo("write");
      const report = String(await trainer.takesAway("report.html"));
      assert.match(report, /invented/i, "every page printed of an exercise says so");
      assert.equal((await trainer.goesOn(/^fresh$/)).id, "train-fresh-open");
      await hash(/^#train\/home\/4711$/);

      // The score sheet, on paper.
      await presses("#train-sheet");
      await hash(/^#train\/sheet\/4711$/);
      await visit.until("the sheet", () => document.querySelector(".score-sheet") !== null);
      await trainer.focuses("#sheet-name");
      await visit.keys("Q. Invented");
      await trainer.setsDay("#sheet-day", "2026-11-26");
      await trainer.sees(/Q\. Invented[\s\S]*2026-11-26[\s\S]*4711[\s\S]*2 of 3 right/, "#sheet-body");
      if (visit.paper !== undefined) {
        const pages = await visit.paper();
        const text = pages.join(" ").normalize("NFKC").replace(/\s+/g, " ");
        for (const wanted of ["Score sheet", "Q. Invented", "2026-11-26", SEED, "2 of 3 right", "Not right", "over limit", "Trainer", "no certificate of competence", "IEC 62321-3-1:2013"]) assert.ok(text.includes(wanted), `${wanted} on paper: ${text}`);
        for (const unwanted of ["Print the score sheet", "New inspection", "All lessons", "What came in", "Next"]) assert.ok(!text.includes(unwanted), `${unwanted} on paper: ${text}`);
        assert.equal(pages.length, 1);
      }

      // The trainees have gone. The inspection stands as it was left, and nothing of theirs is in it.
      await trainer.pressesByKey("Back to the inspection before", ".masthead");
      await visit.until("the inspection", (wanted) => document.getElementById("summary-counts").textContent === wanted.counts && document.getElementById("summary-says").textContent === wanted.says, begun);
      await trainer.sees(/^Inspection/, "#door-label");
      await visit.until("what it says", () => document.activeElement.id === "heading-says");
      await trainer.goesByKeyTo("came-in");
      await trainer.sees(/alder-housing\.csv/, "#came-in");
      await trainer.doesNotSee(/invented-4711/, "#came-in");
      const { sources, acts } = await (await trainer.goesByKeyTo("write"), trainer.findings());
      assert.deepEqual([sources.map((one) => one.name), acts], [["alder-housing.csv"], []]);
      trainer.isContent();
    } finally {
      await visit.close();
    }

    // A trainee elsewhere types the address that was read out, and has the same exercises.
    const elsewhere = await open();
    try {
      await elsewhere.evaluate((wanted) => (location.hash = wanted), `#train/band/${SEED}`);
      await elsewhere.until("the exercises", () => document.querySelectorAll(".train-exercise").length >= 3);
      assert.deepEqual((await exercises(elsewhere)).slice(0, 3), shared);
    } finally {
      await elsewhere.close();
    }
  });
}
