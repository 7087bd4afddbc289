// What a person does: each act shows its effect at once, and can be undone and done again.

import assert from "node:assert/strict";
import { test } from "node:test";
import { cleanDelivery, deliveries, visitChromium, writtenFiles } from "./drive.mjs";

const WITHOUT_MULTIPLE = "Sample,Part,Material,Lot,Supplier,Class,Pb mg/kg,Pb u\r\nS-1,P-1,housing,A-1,Alder Works,polymer,650,40\r\n";

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
    await visit.until("the question to be gone", () => document.querySelectorAll(".question").length === 0);
    await visit.goTo("says");
    await visit.until("BL", () => document.querySelector('.grid-body [aria-rowindex="2"] [role=gridcell]:nth-child(3) strong')?.textContent === "BL");

    await visit.click("#undo");
    await visit.until("X again", () => document.querySelector('.grid-body [aria-rowindex="2"] [role=gridcell]:nth-child(3) strong')?.textContent === "X");
    assert.equal(await visit.evaluate(() => document.getElementById("undo").getAttribute("aria-disabled")), "true");
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
    await visit.choose("Result files", writtenFiles({ "r.csv": WITHOUT_MULTIPLE }));
    await visit.reviewed();
    await visit.goTo("trust");
    assert.match(await visit.text("#evidence-sampling"), /missing/);
    await visit.type("#who-initials", "RW");
    await visit.type("#act-lot_size--", "0");
    await visit.press("Enter");
    await visit.until("the refusal", () => document.getElementById("act-lot_size---refusal").checkVisibility());
    await visit.type("#act-lot_size--", "1");
    await visit.press("Enter");
    await visit.until("the act", () => document.getElementById("act-lot_size---back") !== null);
    await visit.type("#act-units_to_take--", "1");
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
    const first = await visit.text("#summary");
    await visit.goTo("write");
    const settings = await visit.downloaded("settings.toml", () => visit.click("#save-settings"));
    await visit.click("#start-again");
    await visit.until("the first screen", () => location.hash === "#start" && document.querySelector("#summary-says").textContent === "");
    await visit.choose("Settings file", writtenFiles({ "settings.toml": settings }));
    await visit.event(/settings/i);
    await visit.choose("Result files", delivery.results);
    await visit.reviewed();
    assert.equal(await visit.text("#summary"), first);
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
