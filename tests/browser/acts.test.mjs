// What a person does: each act shows its effect at once, and can be undone and done again.

import assert from "node:assert/strict";
import { test } from "node:test";
import { cleanDelivery, deliveries, visitChromium, writtenFiles } from "./drive.mjs";

const WITHOUT_MULTIPLE = "Sample,Part,Material,Lot,Supplier,Class,Pb mg/kg,Pb u\r\nS-1,P-1,housing,A-1,Alder Works,polymer,650,40\r\n";

const SETTINGS = 'schema = "plumbline.settings/1"\n[[lot]]\nsupplier = "Alder Works"\nlot = "A-1"\nlot_size = 480\nunits_to_take = 8\n[[material]]\npart = "P-1"\nmaterial = "housing"\nthickness_mm = 0.2\n';
const THIN = "Sample,Part,Material,Lot,Supplier,Class,Unit,Cd mg/kg,Cd u (1s),Pb mg/kg,Pb u (1s)\r\nS-1,P-1,housing,A-1,Alder Works,polymer,one,10,3,12,5\r\n";

// The controls of the lot of that table, and of its material.
const LOT_SIZE = "act-lot_size-lot_3a_Alder_20_Works_7c_A-1-";
const UNITS_TO_TAKE = "act-units_to_take-lot_3a_Alder_20_Works_7c_A-1-";
const THICKNESS = "act-thickness_mm-material_3a_P-1_7c_housing-";

/** The acts on record, as the page lists them. */
async function recorded(visit) {
  await visit.goTo("write");
  return visit.evaluate(() => [...document.querySelectorAll("#write .acts > .act .act-text")].map((act) => act.innerText));
}

test("the sigma multiple is asked for, answered on the spot, undone and done again", async () => {
  const visit = await visitChromium();
  try {
    await visit.choose("Result files", writtenFiles({ "r.csv": WITHOUT_MULTIPLE }));
    await visit.reviewed();
    await visit.goTo("came-in");
    assert.equal(await visit.count(".question"), 1);
    const outcome = () => visit.evaluate(() => document.querySelector('.grid-body [aria-rowindex="2"] [role=gridcell]:nth-child(3) strong')?.textContent ?? "");

    await visit.goTo("says");
    await visit.until("the reading", () => document.querySelector('.grid-body [aria-rowindex="2"] strong') !== null);
    assert.equal(await outcome(), "X", "650 + 3 x 40 reaches the band");

    await visit.goTo("came-in");
    await visit.page.getByLabel("3 sigma").first().check();
    assert.equal(await visit.count(".question .given"), 0, "picking alone records nothing");
    await visit.click(".question .choices button");
    await visit.event(/^Taken: printed errors taken as 3 sigma/);
    assert.equal(await visit.count(".question"), 1, "the question stays, with its answer");
    assert.match(await visit.text(".question"), /How|how many sigma[\s\S]*Answered: 3 sigma/);
    await visit.goTo("says");
    await visit.until("BL", () => document.querySelector('.grid-body [aria-rowindex="2"] [role=gridcell]:nth-child(3) strong')?.textContent === "BL");

    await visit.click("#undo");
    await visit.until("X again", () => document.querySelector('.grid-body [aria-rowindex="2"] [role=gridcell]:nth-child(3) strong')?.textContent === "X");
    assert.match(await visit.evaluate(() => document.getElementById("undo").title), /brought in$/, "what could be taken back next is the file");
    await visit.click("#redo");
    await visit.until("BL again", () => document.querySelector('.grid-body [aria-rowindex="2"] [role=gridcell]:nth-child(3) strong')?.textContent === "BL");
    assert.equal(await visit.evaluate(() => document.getElementById("redo").getAttribute("aria-disabled")), "true");

    await visit.goTo("write");
    assert.equal(await visit.count("#write .acts > .act"), 3, "the answer, its undo and the redo: the list only grows");
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("a lot size that is none is refused beside its field, and a good one lifts the hold reason", async () => {
  const visit = await visitChromium();
  try {
    await visit.choose("Result files", writtenFiles({ "r.csv": THIN }));
    await visit.reviewed();
    await visit.goTo("trust");
    assert.match(await visit.text("#evidence-sampling"), /missing/);
    await visit.type("#who-initials", "RW");
    const size = `#${LOT_SIZE}`;
    await visit.type(size, "0");
    await visit.press("Enter");
    await visit.until("the refusal", (id) => document.getElementById(`${id}-refusal`).checkVisibility(), LOT_SIZE);
    await visit.type(size, "1");
    await visit.press("Enter");
    await visit.until("the act", (id) => document.getElementById(`${id}-back`) !== null, LOT_SIZE);
    await visit.type(`#${UNITS_TO_TAKE}`, "1");
    await visit.press("Enter");
    await visit.until("nothing missing", () => document.querySelector("#evidence-sampling .flag").textContent.startsWith("nothing"));
    assert.match(await visit.text("#evidence-sampling"), /Given by RW/);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("the settings taken away and given back make the same review", async () => {
  const delivery = cleanDelivery();
  const visit = await visitChromium();
  try {
    await visit.choose("Settings file", [delivery.settings]);
    await visit.event(/settings/i);
    await visit.choose("Result files", delivery.results);
    await visit.reviewed();
    // What happened last stands there too, and grows old; only what the review says is compared.
    const says = async () => [await visit.text("#summary-counts"), await visit.text("#summary-says"), await visit.text("#summary-evidence")];
    const first = await says();
    assert.notEqual(first[0], "");
    await visit.goTo("write");
    const settings = await visit.downloaded("settings.toml", () => visit.click("#save-settings"));
    await visit.click("#start-again");
    await visit.until("the first screen", () => location.hash === "#start" && document.querySelector("#summary-says").textContent === "");
    await visit.choose("Settings file", writtenFiles({ "settings.toml": settings }));
    await visit.event(/settings/i);
    await visit.choose("Result files", delivery.results);
    await visit.reviewed();
    assert.deepEqual(await says(), first);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("each of the three doors does something, and the supplier's says what it is not", async () => {
  const visit = await visitChromium();
  try {
    const [chooser] = await Promise.all([visit.page.waitForEvent("filechooser"), visit.click("#enter-ship")]);
    await chooser.setFiles(writtenFiles({ "r.csv": WITHOUT_MULTIPLE }));
    await visit.reviewed();
    assert.match(await visit.text("#door-label"), /Self-check, not a declaration of conformity/);
    await visit.goTo("write");
    await visit.until("the title on record", () => document.getElementById("act-title--").value === "Self-check before shipping");

    await visit.click("#start-again");
    await visit.until("the first screen", () => location.hash === "#start" && document.querySelector("#summary-says").textContent === "");
    const [again] = await Promise.all([visit.page.waitForEvent("filechooser"), visit.click("#enter-inspect")]);
    await again.setFiles(writtenFiles({ "r.csv": WITHOUT_MULTIPLE }));
    await visit.reviewed();
    assert.equal(await visit.text("#door-label"), "Inspection");

    await visit.click("#start-again");
    await visit.until("the first screen", () => location.hash === "#start" && document.querySelector("#summary-says").textContent === "");
    assert.ok((await visit.count(".delivery")) > 0, "there are deliveries to train on");
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("every training delivery opens, is marked invented, and adds up", async () => {
  const visit = await visitChromium();
  try {
    await visit.until("the deliveries", () => document.querySelectorAll(".delivery").length > 0);
    const folders = await visit.evaluate(() => [...document.querySelectorAll(".delivery")].map((one) => one.dataset.delivery));
    assert.deepEqual(folders, deliveries().map((one) => one.name).sort());
    for (const folder of folders) {
      await visit.click(`.delivery[data-delivery="${folder}"]`);
      await visit.until(`the review of ${folder}`, () => location.hash === "#says" && document.querySelector("#summary-says").textContent !== "");
      assert.match(await visit.text("#door-label"), /invented/);
      await visit.goTo("came-in");
      assert.match(await visit.text("#came-in"), /The rows add up/);
      assert.equal(await visit.count("#troubles .trouble"), 0);
      await visit.click("#start-again");
      await visit.until("the first screen", () => location.hash === "#start" && document.querySelector("#summary-says").textContent === "");
    }
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("leaving an inspection for a training delivery is undone with one press", async () => {
  const visit = await visitChromium();
  try {
    await visit.choose("Result files", writtenFiles({ "r.csv": WITHOUT_MULTIPLE }));
    await visit.reviewed();
    await visit.goTo("write");
    await visit.type("#act-title--", "Mine");
    await visit.press("Enter");
    await visit.until("the title", () => document.getElementById("act-title---back") !== null);
    await visit.click(".wordmark");
    await visit.click(".delivery");
    await visit.until("the training review", () => /invented/.test(document.getElementById("door-label").textContent) && location.hash === "#says");
    await visit.click("#bring-back");
    await visit.event(/is back/);
    assert.equal(await visit.text("#door-label"), "Inspection");
    assert.match(await visit.text("#readings-shown"), /^1 of 1/);
    await visit.goTo("write");
    assert.equal(await visit.evaluate(() => document.getElementById("act-title--").value), "Mine");
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("reading can be cancelled, and everything stands as before", async () => {
  const visit = await visitChromium();
  try {
    await visit.choose("Result files", writtenFiles({ "r.csv": WITHOUT_MULTIPLE }));
    await visit.reviewed();
    const before = await visit.text("#summary-says");
    const line = "S-1,P-1,housing,B-1,Birch Works,polymer,650,40\r\n";
    const large = Buffer.from(`Sample,Part,Material,Lot,Supplier,Class,Pb mg/kg,Pb u\r\n${line.repeat(2_000_000)}`);
    await visit.choose("Result files", writtenFiles({ "z-large.csv": large }));
    await visit.until("the progress bar", () => document.querySelector("#work").checkVisibility() && document.querySelector("[role=progressbar]").getAttribute("aria-valuenow") !== null);
    await visit.click("#work-cancel");
    await visit.event(/Cancelled/);
    await visit.until("the table as before", () => /^1 of 1/.test(document.querySelector("#readings-shown").textContent));
    assert.equal(await visit.text("#summary-says"), before);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("what is typed over a settings file is what counts, in the page and in the findings, and taking it back brings the file's value again", async () => {
  const visit = await visitChromium();
  try {
    await visit.choose("Settings file", writtenFiles({ "mine.toml": SETTINGS }));
    await visit.event(/settings/i);
    await visit.choose("Result files", writtenFiles({ "r.csv": THIN }));
    await visit.reviewed();
    await visit.goTo("trust");
    const sampling = () => visit.text("#evidence-sampling");
    assert.match(await sampling(), /Counts now: 480\. Given by mine\.toml/);
    assert.match(await sampling(), /Counts now: 8\. Given by mine\.toml/);
    assert.match(await visit.text("#evidence-thickness"), /Counts now: 0\.2 mm\. Given by mine\.toml/);
    assert.match(await visit.text("#evidence-sampling .flag"), /missing/);

    await visit.type("#who-initials", "RW");
    await visit.type(`#${UNITS_TO_TAKE}`, "1");
    await visit.press("Enter");
    await visit.until("the plan to be met", () => document.querySelector("#evidence-sampling .flag").textContent.startsWith("nothing"));
    assert.match(await sampling(), /Counts now: 1\. Given by RW/);
    await visit.goTo("write");
    const findings = JSON.parse(String(await visit.downloaded("findings.json", () => visit.click("#save-findings-json"))));
    assert.deepEqual(findings.lots[0].reasons.filter((reason) => reason.code.startsWith("sampling")), []);
    assert.equal(findings.acts.at(-1).target, "lot:Alder Works|A-1");
    assert.match((await recorded(visit)).at(-1), /lot A-1 of Alder Works/);

    await visit.goTo("trust");
    await visit.click(`#${UNITS_TO_TAKE}-back`);
    await visit.event(/^Undone: /);
    assert.match(await sampling(), /Counts now: 8\. Given by mine\.toml/);
    assert.equal(await visit.evaluate(() => document.activeElement.id), UNITS_TO_TAKE);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("a number may have a comma or a point, is said back, and anything else is refused in words beside the field", async () => {
  const visit = await visitChromium();
  try {
    await visit.choose("Result files", writtenFiles({ "r.csv": THIN }));
    await visit.reviewed();
    await visit.goTo("trust");
    const state = () => visit.evaluate((id) => ({ invalid: document.getElementById(id).getAttribute("aria-invalid"), why: document.getElementById(`${id}-refusal`).innerText, typed: document.getElementById(id).value }), THICKNESS);
    for (const wrong of ["about 2", "1,2,3", "1.000,5", "-1"]) {
      await visit.type(`#${THICKNESS}`, wrong);
      await visit.press("Enter");
      const { invalid, why, typed } = await state();
      assert.equal(invalid, "true", wrong);
      assert.ok(why.includes(wrong) && /is no number/.test(why), why);
      assert.equal(typed, wrong);
    }
    await visit.page.getByLabel("Do not hold; print it").first().check();
    await visit.click("#evidence-trust .choices button");
    await visit.event(/^Taken: /);
    assert.equal((await state()).invalid, "true", "another act leaves the field marked");
    assert.equal((await state()).typed, "-1");

    await visit.type(`#${THICKNESS}`, "0,5");
    await visit.press("Enter");
    await visit.event(/^Taken: thickness set to 0\.5 mm/);
    assert.match(await visit.text("#evidence-thickness"), /Counts now: 0\.5 mm/);
    assert.deepEqual(await state(), { invalid: null, why: "", typed: "0.5" });

    await visit.type(`#${LOT_SIZE}`, "1,5");
    await visit.press("Enter");
    assert.match(await visit.text(`#${LOT_SIZE}-refusal`), /no whole number/);
    assert.equal((await recorded(visit)).length, 2);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("a typed act is recorded once, whether by Enter, by the button, or by leaving the field", async () => {
  const visit = await visitChromium();
  try {
    await visit.choose("Result files", writtenFiles({ "r.csv": THIN }));
    await visit.reviewed();
    await visit.goTo("write");
    const ways = { title: () => visit.press("Enter"), inspector: () => visit.click("#act-inspector---set"), place: () => visit.press("Tab") };
    for (const [kind, commit] of Object.entries(ways)) {
      await visit.type(`#act-${kind}--`, `my ${kind}`);
      await commit();
      await visit.event(new RegExp(`^Taken: ${kind} my ${kind}`));
    }
    assert.deepEqual(await recorded(visit), ["title my title", "inspector my inspector", "place my place"]);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("no number of training deliveries pushes real work out, and real work never joins a training delivery", async () => {
  const visit = await visitChromium();
  try {
    await visit.choose("Result files", writtenFiles({ "mine.csv": THIN }));
    await visit.reviewed();
    for (const at of [0, 1, 2]) {
      await visit.click(".wordmark");
      await visit.page.locator(".delivery").nth(at).click();
      await visit.until("the training review", () => location.hash === "#says" && /invented/.test(document.getElementById("door-label").textContent) && document.querySelector("#summary-says").textContent !== "");
    }
    const said = () => document.querySelector("#lesson-title").textContent;
    const third = await visit.evaluate(said);
    await visit.until("the way to the next lesson", () => document.getElementById("lesson-next").getAttribute("aria-disabled") === "false");
    await visit.click("#lesson-next");
    await visit.until("the next lesson", (before) => document.querySelector("#lesson-title").textContent !== before && document.querySelector("#summary-says").textContent !== "", third);

    await visit.click("#bring-back");
    await visit.event(/is back/);
    await visit.goTo("came-in");
    const names = () => [...document.querySelectorAll(".source-name")].map((name) => name.textContent);
    assert.deepEqual(await visit.evaluate(names), ["mine.csv"]);

    await visit.click(".wordmark");
    await visit.click(".delivery");
    await visit.until("a training review", () => location.hash === "#says" && document.querySelector("#summary-says").textContent !== "");
    await visit.goTo("came-in");
    await visit.choose("Result files", writtenFiles({ "other.csv": THIN }));
    await visit.until("a real inspection", () => document.getElementById("door-label").textContent === "Inspection" && document.querySelectorAll(".source-name").length === 1);
    assert.deepEqual(await visit.evaluate(names), ["other.csv"]);
    await visit.click("#bring-back");
    await visit.until("the first one", () => document.querySelector(".source-name")?.textContent === "mine.csv");
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("inspecting a delivery while a self-check is open starts another inspection, and the self-check can be come back to", async () => {
  const visit = await visitChromium();
  try {
    const enter = async (door, files) => {
      const [chooser] = await Promise.all([visit.page.waitForEvent("filechooser"), visit.click(`#enter-${door}`)]);
      await chooser.setFiles(files);
    };
    await enter("ship", writtenFiles({ "before.csv": THIN }));
    await visit.until("the self-check", () => !document.getElementById("self-check").hidden && document.querySelector("#summary-says").textContent !== "");
    assert.match(await visit.text("#self-check"), /not a declaration of conformity/);
    await visit.goTo("write");
    await visit.until("the title on record", () => document.getElementById("act-title--").value === "Self-check before shipping");
    await visit.click(".wordmark");
    await enter("inspect", writtenFiles({ "delivery.csv": THIN }));
    const names = () => [...document.querySelectorAll(".source-name")].map((name) => name.textContent);
    await visit.until("the inspection alone", () => document.getElementById("door-label").textContent === "Inspection" && document.querySelector("#summary-says").textContent !== "" && document.querySelectorAll(".source-name").length === 1);
    assert.deepEqual(await visit.evaluate(names), ["delivery.csv"]);
    assert.equal(await visit.evaluate(() => document.getElementById("self-check").hidden), true);
    await visit.click("#bring-back");
    await visit.event(/is back/);
    await visit.goTo("came-in");
    assert.deepEqual(await visit.evaluate(names), ["before.csv"]);
    assert.match(await visit.text("#door-label"), /Self-check/);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("a question that was answered stays answered in sight, with its notice, and is not counted again", async () => {
  const visit = await visitChromium();
  try {
    await visit.choose("Result files", writtenFiles({ "r.csv": "Sample;Part;Material;Lot;Supplier;Class;Pb mg/kg;Pb u (1s)\r\nS-1;P-1;housing;A-1;Alder Works;polymer;1,234;1\r\n" }));
    await visit.reviewed();
    await visit.goTo("came-in");
    assert.match(await visit.text("#step-came-in"), /1 thing to look at/);
    await visit.page.getByLabel("Comma, as in 1,5").first().check();
    await visit.click(".question .choices button");
    await visit.event(/^Taken: decimal mark set to "," \(file r\.csv\)/);
    assert.match(await visit.text(".questions"), /1 question, answered[\s\S]*Which is the decimal mark\?[\s\S]*Answered: Comma/);
    assert.doesNotMatch(await visit.text("#step-came-in"), /thing/);
    await visit.click(".question .given button");
    await visit.event(/^Undone: decimal mark set to "," \(file r\.csv\)/);
    await visit.click("#redo");
    await visit.event(/^Done again: decimal mark set to "," \(file r\.csv\)/);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("a column whose heading is not known is named beside its file, and a step counts each material once", async () => {
  const visit = await visitChromium();
  try {
    const table = "Sample,Part,Material,Lot,Supplier,Class,Pb mg/kg,Pb u (1s),Cd mg/kg,Cd u (1s),Cr mg/kg,Cr u (1s),Wobble\r\nS-1,P-1,housing,A-1,Alder Works,polymer,1000,5,10,3,1000,5,9\r\n";
    await visit.choose("Result files", writtenFiles({ "r.csv": table }));
    await visit.reviewed();
    await visit.goTo("came-in");
    assert.match(await visit.text(".source > summary"), /1 column not used: Wobble/);
    await visit.goTo("next");
    const steps = await visit.evaluate(() => [...document.querySelectorAll("#next .todo-what > .quiet")].map((line) => line.innerText));
    assert.ok(steps.length > 0 && steps.every((line) => line === "1 material"), steps.join("; "));
    await visit.goTo("says");
    assert.match(await visit.text("#step-says"), /1 lot held/);
    await visit.click(".grid-body [role=gridcell]");
    await visit.until("the detail", () => document.querySelectorAll("#detail .finding").length > 0);
    assert.equal(await visit.text("#detail-heading"), "S-1 · P-1 · housing");
    const order = await visit.evaluate(() => [...document.querySelectorAll("#detail .finding > header .outcome")].map((tag) => tag.classList.contains("tone-below") || tag.classList.contains("tone-apart")));
    assert.ok(order.includes(true) && order.includes(false) && order.lastIndexOf(false) < order.indexOf(true), "what is open stands first");
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

const CHECKS = `Sample,Part,Material,Lot,Supplier,Class,Seconds,Instrument,Pb mg/kg,Pb u (1s)
${[1016, 1002, 1040, 991, 1012].map((lead) => `CHK-1,,,,,polymer,60,XRF-A,${lead},11`).join("\n")}
${[20011, 20230].map((lead) => `CHK-2,,,,,metal,60,XRF-A,${lead},90`).join("\n")}
S-1,P-1,housing,A-1,Alder Works,polymer,60,XRF-A,990,20
`;

test("a row of the site's table is worked out from check readings, said honestly, taken over and taken back", async () => {
  const visit = await visitChromium();
  try {
    await visit.choose("Result files", writtenFiles({ "r.csv": CHECKS }));
    await visit.reviewed();
    await visit.goTo("trust");
    assert.equal(await visit.count(".site-offer"), 0, "nobody said which samples are checks");
    await visit.type("#act-check_samples--", "CHK-1|CHK-2");
    await visit.press("Enter");
    await visit.until("the rows", () => document.querySelectorAll(".site-offer").length === 2);
    await visit.evaluate(() => (document.getElementById("site-table").open = true));
    const rows = await visit.evaluate(() => [...document.querySelectorAll(".site-offer")].map((row) => row.innerText));
    assert.match(rows[0], /Pb, polymer: 1 sigma [\d.]+ mg\/kg[\s\S]*from 5 readings of CHK-1, mean 1012[\s\S]*5 readings are few/);
    assert.doesNotMatch(rows[0], /far from the limit/);
    assert.match(rows[1], /Pb, metal[\s\S]*far from the limit/);
    await visit.click(".site-offer button");
    await visit.event(/^Taken: site repeatability Pb in polymer: one sigma [\d.]+ mg\/kg/);
    assert.match(await visit.text(".site-offer"), /taken over/);
    assert.match(await visit.text("#site-table"), /1 row/);
    await visit.click("#undo");
    await visit.event(/^Undone/);
    assert.equal(await visit.count(".site-offer button"), 2);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("rule books are named with what is known of them, and named no more", async () => {
  const visit = await visitChromium();
  try {
    await visit.choose("Result files", writtenFiles({ "r.csv": THIN }));
    await visit.reviewed();
    await visit.goTo("trust");
    await visit.evaluate(() => (document.getElementById("books-to-name").open = true));
    assert.match(await visit.text("#evidence-books"), /0 of \d+ further rule books chosen/);
    const elv = await visit.evaluate(() => document.getElementById("act-book-named-eu-elv-2000-53--about").innerText);
    assert.match(elv, /European Union[\s\S]*from memory/i);
    await visit.click("#act-book-named-eu-rohs-annex-ii-");
    await visit.click("#act-book-named-eu-elv-2000-53-");
    await visit.click("#books-send");
    await visit.event(/^Taken: rule books: eu-rohs-annex-ii, eu-elv-2000-53/);
    assert.match(await visit.text("#evidence-books"), /2 of \d+ further rule books chosen/);
    await visit.click("#act-book-named-eu-rohs-annex-ii-");
    await visit.click("#books-send");
    await visit.event(/^Taken: rule books: eu-elv-2000-53/);
    await visit.click("#act-book-named-eu-elv-2000-53-");
    await visit.click("#books-send");
    await visit.event(/No rule book is named/);
    assert.match(await visit.text("#evidence-books"), /0 of \d+ further rule books chosen/);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("a book that is named and not here, or another file than the one named, is settled with one press each", async () => {
  const visit = await visitChromium();
  try {
    const settings = 'schema = "plumbline.settings/1"\nbooks = ["gone", "eu-elv-2000-53@0123456789ab"]\n';
    await visit.choose("Settings file", writtenFiles({ "settings.toml": settings }));
    await visit.event(/settings/i);
    await visit.choose("Result files", writtenFiles({ "r.csv": THIN }));
    await visit.reviewed();
    await visit.goTo("trust");
    assert.match(await visit.text("#evidence-books"), /missing[\s\S]*named by its digest, and the book here is another file[\s\S]*gone is named and not here/);
    await visit.click("#act-book-take-eu-elv-2000-53-");
    await visit.event(/^Taken: rule books: gone, eu-elv-2000-53$/);
    await visit.click("#act-book-strike-gone-");
    await visit.event(/^Taken: rule books: eu-elv-2000-53$/);
    assert.match(await visit.text("#evidence-books"), /nothing missing/);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("more uncertainty, what is a repeat and what the uncertainties hold are set where the uncertainties are", async () => {
  const visit = await visitChromium();
  try {
    await visit.choose("Result files", writtenFiles({ "r.csv": THIN }));
    await visit.reviewed();
    await visit.goTo("trust");
    await visit.type("#act-relative_sigma--", "5 %");
    await visit.press("Enter");
    await visit.event(/^Taken: .*5/);
    assert.match(await visit.text("#act-relative_sigma---control"), /Counts now: 5 %/);
    await visit.type("#act-relative_sigma--", "80");
    await visit.press("Enter");
    await visit.until("the refusal", () => document.getElementById("act-relative_sigma---refusal").checkVisibility());
    await visit.click("#act-repeats--never");
    assert.doesNotMatch(await visit.text("#act-repeats---control"), /Counts now/, "picking alone records nothing");
    await visit.click("#act-repeats---set");
    await visit.until("the act", () => document.getElementById("act-repeats---back") !== null);
    await visit.click("#act-uncertainty_holds--everything");
    await visit.click("#act-uncertainty_holds---set");
    await visit.until("the act", () => document.getElementById("act-uncertainty_holds---back") !== null);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

// A plastic measured in a mode for metals: nothing but other readings settles that.
const WRONG_MODE = "Sample,Part,Material,Lot,Supplier,Class,Mode,Pb mg/kg,Pb u (1s),Cl %,Cl u (1s)\nS-1,P-1,hose,A-1,Alder Works,polymer,Alloy,20,2,1,0.1\n";

test("doubtful readings are answered with other readings, one press away", async () => {
  const visit = await visitChromium();
  try {
    await visit.choose("Result files", writtenFiles({ "r.csv": WRONG_MODE }));
    await visit.reviewed();
    await visit.goTo("trust");
    assert.match(await visit.text("#evidence-doubtful"), /missing[\s\S]*mode that does not fit/);
    await visit.click("#doubtful-bring");
    await visit.until("the files", () => location.hash === "#came-in" && document.activeElement?.id === "result-files");
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});
