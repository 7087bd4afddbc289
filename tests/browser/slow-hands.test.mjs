// Hands are slower than a driver: keys come one after the other, and a finger stays down while the page goes on.

import assert from "node:assert/strict";
import { test } from "node:test";
import { browsers, openColumns, writtenFiles } from "./drive.mjs";

const TABLE = "Sample,Part,Material,Lot,Supplier,Class,Pb mg/kg,Pb u (1s)\r\nS-1,P-1,housing,A-1,Alder Works,polymer,12,5\r\n";
const ODD = "Kxyz,Pb mg/kg,Pb u (1s)\nS-1,12,1\nS-2,14,1\n";
// Neither unit nor multiple of sigma is stated: two questions.
const ASKS = "Sample,Part,Material,Lot,Supplier,Class,Pb,Pb u\r\nS-1,P-1,housing,A-1,Alder Works,polymer,12,5\r\n";
const DATE = "act-reviewed_at--";
const KEY_MS = 300;
/** Firefox waits a second for the second digit. */
const KEY_WAITS = 800;

async function dateField(visit) {
  await visit.choose("Result files", writtenFiles({ "a.csv": TABLE }));
  await visit.reviewed();
  await visit.goTo("write");
  await visit.until("the field", (id) => document.getElementById(id) !== null, DATE);
  await visit.evaluate((id) => {
    for (let fold = document.getElementById(id).closest("details"); fold !== null; fold = fold.parentElement.closest("details")) fold.open = true;
    document.getElementById(id).focus();
  }, DATE);
}

/** The page with the two questions that a file left open. */
async function atTwoQuestions(open) {
  const visit = await open();
  await visit.choose("Result files", writtenFiles({ "asks.csv": ASKS }));
  await visit.reviewed();
  await visit.goTo("came-in");
  const asked = await visit.until("two questions", () => {
    const all = [...document.querySelectorAll(".questions .question[data-missing]")];
    return all.length < 2 ? null : all.map((one) => one.id);
  });
  return { visit, asked };
}

// What a hand does between two drawings of the page, at the one moment that counts.
const answer = (id) => {
  const form = document.querySelector(`#${id} form`);
  const [first] = form.querySelectorAll("input[type=radio]");
  first.focus();
  first.click();
  form.requestSubmit();
};

for (const { name, visit: open } of browsers) {
  test(`in ${name} a date typed key by key is taken once and whole, on leaving the field`, async () => {
    const visit = await open();
    try {
      await dateField(visit);
      // A browser ends a month by itself when the second digit is long in coming: on a busy machine the hand begins again.
      for (let slowest = KEY_WAITS; slowest >= KEY_WAITS; ) {
        slowest = 0;
        await visit.evaluate((id) => {
          const field = document.getElementById(id);
          field.value = "";
          field.blur();
          field.focus();
        }, DATE);
        for (const key of "12012026") {
          const begun = performance.now();
          await visit.press(key);
          await new Promise((go) => setTimeout(go, KEY_MS));
          slowest = Math.max(slowest, performance.now() - begun);
        }
      }
      assert.equal(await visit.evaluate((id) => document.activeElement.id === id && document.activeElement.value, DATE), "2026-12-01");
      assert.equal(await visit.count(`#${DATE}-back`), 0, "nothing is taken while the field is being filled");
      await visit.evaluate(() => document.activeElement.blur());
      await visit.event(/^Taken: .*2026-12-01/);
      const { acts } = JSON.parse(String(await visit.downloaded("findings.json", () => visit.click("#save-findings-json"))));
      assert.deepEqual(acts.map((act) => act.value), ["2026-12-01"], "it was one act");
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });

  test(`in ${name} a press goes through although what was pressed is drawn anew while the finger is down`, async () => {
    const visit = await open();
    try {
      await visit.choose("Result files", writtenFiles({ "odd.csv": ODD }));
      await visit.reviewed();
      await visit.goTo("came-in");
      await openColumns(visit);
      const list = "act-column-0-0-1-role";
      await visit.until("the list", (id) => document.getElementById(id) !== null, list);
      await visit.evaluate((id) => document.getElementById(id).focus(), list);
      await visit.press("ArrowUp");
      const { x, y, width, height } = await visit.evaluate(() => {
        document.getElementById("step-write").scrollIntoView({ block: "center" });
        return document.getElementById("step-write").getBoundingClientRect().toJSON();
      });
      await visit.page.mouse.move(x + width / 2, y + height / 2);
      await visit.page.mouse.down();
      await visit.event(/^Taken: column 1/);
      await visit.page.mouse.up();
      await visit.until("the place that was pressed", () => !document.getElementById("place-write").hidden);
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });

  test(`in ${name} who moves on while an answer is being recorded is not fetched back to the next question`, async () => {
    const { visit, asked } = await atTwoQuestions(open);
    try {
      const moveOn = () => {
        document.getElementById("next-go").focus();
        document.activeElement.dispatchEvent(new KeyboardEvent("keydown", { key: "Shift", bubbles: true }));
      };
      const answered = (id) => document.querySelectorAll(`#${id}[data-missing]`).length === 0;
      await visit.evaluate(`(${answer})(${JSON.stringify(asked[0])}); (${moveOn})();`);
      await visit.until("the first answer", answered, asked[0]);
      await visit.event(/^Taken/);
      await visit.evaluate(() => new Promise((go) => setTimeout(go, 300)));
      assert.equal(await visit.evaluate(() => document.activeElement.id), "next-go", "the focus stays where the person put it");
      await visit.evaluate(`(${answer})(${JSON.stringify(asked[1])});`);
      await visit.until("the second answer", answered, asked[1]);
      await visit.until("the focus on what can be taken back", () => document.activeElement.id.endsWith("-back"));
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });

  test(`in ${name} a tick beside an answer stands although the page is drawn anew before the answer is given`, async () => {
    const { visit, asked } = await atTwoQuestions(open);
    try {
      const UNIT = "question-unit_not_stated";
      const other = asked.find((id) => id !== UNIT);
      const ticked = () => visit.evaluate((unit) => document.querySelector(`#${unit} input[type=checkbox]`).checked, UNIT);
      await visit.evaluate((unit) => document.querySelector(`#${unit} input[type=checkbox]`).click(), UNIT);
      await visit.evaluate(`(${answer})(${JSON.stringify(other)})`);
      await visit.event(/^Taken/);
      assert.equal(await ticked(), true, "nobody took it away");
      await visit.evaluate(`(${answer})(${JSON.stringify(UNIT)})`);
      await visit.until("its answer", (unit) => document.querySelectorAll(`#${unit}[data-missing]`).length === 0, UNIT);
      await visit.goTo("write");
      const { acts } = JSON.parse(String(await visit.downloaded("findings.json", () => visit.click("#save-findings-json"))));
      const unit = acts.find((act) => act.kind === "unit_of_measure");
      assert.match(unit.target, /^header:/, `it is said of every file with these headings: ${JSON.stringify(acts)}`);
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });
}
