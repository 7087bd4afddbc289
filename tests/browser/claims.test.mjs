// Exemptions on the page: a delivery of leaded brass goes from not accept to covered step by step, and back by undo.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { test } from "node:test";
import { deliveries, visitChromium, writtenFiles } from "./drive.mjs";

const brass = deliveries().find((one) => one.name.includes("brass"));
const whole = readFileSync(join(brass.folder, "cedar-brass-valve.csv"), "utf8");
// Without the analyser that only says "more than": its readings are no numbers, so a number of an exemption stays open.
const NUMBERS = whole.split("\n").filter((line) => !line.includes("XRF-B")).join("\n");

// All the evidence but what an exemption asks for.
const SETTINGS = `schema = "plumbline.settings/1"
trust = "advisory"
[[lot]]
supplier = "Cedar Works"
lot = "CE-0917"
lot_size = 90
units_to_take = 5
[[part]]
part = "BV-20 valve"
materials = ["leaded brass", "EPDM black"]
[[material]]
part = "BV-20 valve"
material = "EPDM black"
thickness_mm = 4
`;

const TARGET = "material_3a_BV-20_20_valve_7c_leaded_20_brass";
const NEW = `act-claim-${TARGET}-Pb`;
const CLAIMED = `act-claimed-${TARGET}-Pb_20_6_28_c_29_`;

async function opened(text, options = {}) {
  const visit = await visitChromium(options);
  await visit.choose("Settings file", writtenFiles({ "settings.toml": SETTINGS }));
  await visit.event(/settings/i);
  await visit.choose("Result files", writtenFiles({ "brass.csv": text }));
  await visit.reviewed();
  await visit.goTo("trust");
  return visit;
}

const open = (visit, id) => visit.evaluate((wanted) => (document.getElementById(wanted).open = true), id);
const state = (visit) => visit.evaluate((id) => document.querySelector(`#${id} > h4 .flag`)?.textContent ?? "", CLAIMED);
const missing = (visit) => visit.evaluate((id) => [...document.querySelectorAll(`#${id} > .claim-why li`)].map((one) => one.textContent), CLAIMED);
const says = async (visit) => (await visit.text("#summary-counts")) + (await visit.text("#summary-says"));

test("leaded brass goes from not accept to covered by a claim, step by step, and back by undo", async () => {
  const visit = await opened(NUMBERS);
  try {
    assert.match(await says(visit), /1 not accept/);
    assert.match(await visit.text("#evidence-claims"), /Claim an exemption for Pb/);
    await open(visit, `${NEW}-fold`);
    await visit.until("the form", (id) => document.getElementById(`${id}-form-entry`) !== null, NEW);

    // Nothing is recorded while something that only a person can say is missing.
    await visit.click(`#${NEW}-form-send`);
    assert.match(await visit.text(`#${NEW}-form-refusal`), /Pick the entry/);
    await visit.pick(`#${NEW}-form-entry`, "6(c)");
    assert.match(await visit.text(`#${NEW}-form .exemption-rows`), /copper alloys[\s\S]*40000 mg\/kg[\s\S]*2027-06-30[\s\S]*secondary source/);
    await visit.click(`#${NEW}-form-send`);
    assert.match(await visit.text(`#${NEW}-form-refusal`), /initials/);
    await visit.type(`#${NEW}-form-own`, "RW");
    assert.equal(await visit.evaluate(() => document.getElementById("who-initials").value), "RW");
    await visit.type(`#${NEW}-form-second`, "rw");
    await visit.click(`#${NEW}-form-send`);
    assert.match(await visit.text(`#${NEW}-form-refusal`), /somebody else/);
    assert.equal(await visit.count(`#${CLAIMED}`), 0);

    // The claim alone: every question is listed, and the lot is held, no longer refused.
    await visit.type(`#${NEW}-form-second`, "");
    await visit.click(`#${NEW}-form-send`);
    await visit.event(/^Taken: exemption claimed: 6\(c\) for Pb/);
    assert.equal(await state(visit), "open");
    assert.equal((await missing(visit)).length, 5, (await missing(visit)).join("; "));
    assert.match(await visit.text("#evidence-claims"), /missing/);
    assert.match(await says(visit), /1 hold, 0 not accept/);

    await visit.pick("#trust-act-category--", "9i");
    await visit.event(/^Taken: product category 9, industrial monitoring/);
    assert.equal((await missing(visit)).length, 4);
    await visit.type("#trust-act-placing_date--", "12012026");
    await visit.press("Enter");
    await visit.event(/^Taken: .*2026-12-01/);
    assert.equal((await missing(visit)).length, 3);
    await visit.click(`#${CLAIMED} .choice input[value="cannot"]`);
    await visit.click(`#${CLAIMED} .choices button`);
    await visit.event(/^Taken: could a child/);
    assert.equal((await missing(visit)).length, 2);
    await visit.type(`#${CLAIMED}-form-evidence`, "certificate CW-77");
    await visit.type(`#${CLAIMED}-form-second`, "KL");
    await visit.click(`#${CLAIMED}-form-send`);
    await visit.event(/^Taken: exemption claimed: .*CW-77/);
    assert.equal(await state(visit), "covers");
    assert.deepEqual(await missing(visit), []);
    assert.match(await visit.text(`#${CLAIMED}`), /certificate CW-77\. Claimed by RW, second person KL/);
    assert.match(await says(visit), /1 accept .*0 not accept/);
    await visit.goTo("says");
    assert.match(await visit.text("#says-lots"), /Accept/i);

    // Back step by step.
    await visit.click("#undo");
    await visit.event(/^Undone: exemption claimed/);
    await visit.goTo("trust");
    assert.equal(await state(visit), "open");
    assert.equal((await missing(visit)).length, 2);
    await visit.click("#redo");
    await visit.event(/^Done again/);
    assert.equal(await state(visit), "covers");
    await visit.click(`#${CLAIMED}-back`);
    await visit.event(/^Undone: exemption claimed/);
    assert.equal(await visit.count(`#${CLAIMED}`), 0, "however often it was changed, taking it back takes it away");
    assert.match(await says(visit), /1 not accept/);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("after its day an entry covers only with a renewal that somebody can look up", async () => {
  const visit = await opened(NUMBERS);
  try {
    await visit.type("#who-initials", "RW");
    await visit.pick("#trust-act-category--", "9i");
    await visit.until("the category", () => document.getElementById("trust-act-category---back") !== null);
    await visit.type("#trust-act-placing_date--", "08012027");
    await visit.press("Enter");
    await visit.event(/^Taken: .*2027-08-01/);
    await open(visit, `${NEW}-fold`);
    await visit.until("the form", (id) => document.getElementById(`${id}-form-entry`) !== null, NEW);
    await visit.pick(`#${NEW}-form-entry`, "6(c)");
    await visit.type(`#${NEW}-form-evidence`, "certificate; \\ CW-77");
    await visit.type(`#${NEW}-form-second`, "KL");
    await visit.click(`#${NEW}-form-send`);
    await visit.event(/^Taken: exemption claimed/);
    assert.match(await visit.text(`#${CLAIMED}`), /certificate; \\ CW-77/);
    assert.match((await missing(visit)).join("; "), /is a renewal pending/);
    await visit.click(`#${CLAIMED}-renewal-send`);
    assert.match(await visit.text(`#${CLAIMED}-renewal-refusal`), /Pick where/);
    await visit.pick(`#${CLAIMED}-renewal-state`, "pending");
    await visit.click(`#${CLAIMED}-renewal-send`);
    await visit.event(/^Taken: renewal of 6\(c\)/);
    assert.match((await missing(visit)).join("; "), /where is that written/);
    await visit.type(`#${CLAIMED}-renewal-source`, "list of pending renewals");
    await visit.type(`#${CLAIMED}-renewal-day`, "01102026");
    await visit.click(`#${CLAIMED}-renewal-send`);
    await visit.event(/^Taken: renewal of 6\(c\).*2026-01-10/);
    assert.match((await missing(visit)).join("; "), /later than 18 months before the day of expiry/);
    await visit.type(`#${CLAIMED}-renewal-day`, "12012025");
    await visit.click(`#${CLAIMED}-renewal-send`);
    await visit.event(/^Taken: renewal of 6\(c\).*2025-12-01/);
    assert.match((await missing(visit)).join("; "), /the day of this review is not stated/);
    await visit.pick(`#${CLAIMED}-renewal-state`, "refused");
    await visit.click(`#${CLAIMED}-renewal-send`);
    await visit.event(/^Taken: renewal of 6\(c\): refused/);
    assert.equal(await state(visit), "expired");
    assert.match(await says(visit), /1 not accept/);
    await visit.click(`#${CLAIMED}-renewal-back`);
    await visit.event(/^Undone: renewal/);
    assert.match((await missing(visit)).join("; "), /is a renewal pending/);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("an entry that does not fit says why not, and a reading without a number keeps a claim open", async () => {
  const visit = await opened(whole);
  try {
    await visit.type("#who-initials", "RW");
    await open(visit, `${NEW}-fold`);
    await visit.until("the form", (id) => document.getElementById(`${id}-form-entry`) !== null, NEW);
    await visit.pick(`#${NEW}-form-entry`, "6(a)-I");
    await visit.click(`#${NEW}-form-send`);
    await visit.event(/^Taken: exemption claimed: 6\(a\)-I/);
    const steel = `act-claimed-${TARGET}-Pb_20_6_28_a_29_-I`;
    assert.match(await visit.text(`#${steel}`), /does not cover[\s\S]*Why not[\s\S]*another alloy/);
    assert.match(await says(visit), /1 not accept/);
    await visit.click(`#${steel}-back`);
    await visit.event(/^Undone/);
    await open(visit, `${NEW}-fold`);
    await visit.pick(`#${NEW}-form-entry`, "6(c)");
    await visit.click(`#${NEW}-form-send`);
    await visit.event(/^Taken: exemption claimed: 6\(c\)/);
    assert.match((await missing(visit)).join("; "), /no number with an uncertainty/);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

const PLATED = "Sample,Part,Material,Lot,Supplier,Class,Unit,Cr mg/kg,Cr u (1s),Cd mg/kg,Cd u (1s)\nS-1,P-1,screw,A-1,Alder Works,plated,one,2400,60,5,1\n";
const CR6 = "act-cr6_area-material_3a_P-1_7c_screw-";

test("chromium(VI) by area is given with its laboratory and report, and is refused in any other unit", async () => {
  const visit = await visitChromium();
  try {
    await visit.choose("Result files", writtenFiles({ "r.csv": PLATED }));
    await visit.reviewed();
    await visit.goTo("trust");
    await visit.type(`#${CR6}-area`, "0,08 mg/kg");
    await visit.click(`#${CR6}-send`);
    assert.match(await visit.text(`#${CR6}-refusal`), /no amount by area/);
    await visit.type(`#${CR6}-area`, "< 0,08 µg/cm²");
    await visit.click(`#${CR6}-send`);
    await visit.event(/^Taken: chromium\(VI\) by area: <0\.08 ug\/cm2/);
    assert.match(await visit.text("#evidence-cr6"), /missing[\s\S]*laboratory or its report is not named/);
    await visit.type(`#${CR6}-laboratory`, "Fir Works laboratory");
    await visit.type(`#${CR6}-report`, "7");
    await visit.click(`#${CR6}-send`);
    await visit.event(/^Taken: chromium.*report: 7/);
    assert.match(await visit.text("#evidence-cr6"), /negative: no chromium\(VI\) found/);
    assert.match(await visit.text("#evidence-cr6"), /nothing missing/);
    assert.match(await visit.text("#summary-says"), /chromium\(VI\) by area negative/);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});
