// Trust, sampling and lots on the page: what a person gives, what it does to a lot, and how each is taken back.

import assert from "node:assert/strict";
import { test } from "node:test";
import { browsers, fillDay, writtenFiles } from "./drive.mjs";

const HEAD = "Sample,Unit,Part,Material,Class,Lot,Supplier,Date,Seconds,Instrument,Cd mg/kg,Cd u (1s),Pb mg/kg,Pb u (1s),Hg mg/kg,Hg u (1s),Cr mg/kg,Cr u (1s),Br mg/kg,Br u (1s)";
const LOW = "< 4,,< 8,,3,1";
const check = (time, lead) => `CHK-1,,,PE disc,polymer,,,2026-11-25 ${time},60,XRF-A,101,3,${lead},10,1003,10,1005,15,998,9`;
const piece = (id, unit, lot, supplier, time, lead) => `${id},${unit},P-1,housing,polymer,${lot},${supplier},2026-11-25 ${time},60,XRF-A,< 5,,${lead},${LOW}`;

/** One lot over limit, one undecided, between two readings of a check disc. */
const TABLE = [
  HEAD,
  check("08:00", 1004),
  piece("S-1", "one", "A-1", "Alder Works", "08:10", "1500,20"),
  piece("S-2", "two", "B-1", "Birch Works", "08:20", "1000,30"),
  piece("S-3", "three", "B-1", "Birch Works", "08:30", "60,6"),
  check("09:00", 995),
  "",
].join("\n");

/** All the evidence there is but for what a test gives. */
const settings = (trust, sampling) => `schema = "plumbline.settings/1"
reviewed_at = 2026-11-25
trust = "${trust}"
sampling = "${sampling}"
check_samples = ["CHK-1"]
[[lot]]
supplier = "Alder Works"
lot = "A-1"
lot_size = 40
[[lot]]
supplier = "Birch Works"
lot = "B-1"
lot_size = 40
[[part]]
part = "P-1"
materials = ["housing"]
[[material]]
part = "P-1"
material = "housing"
thickness_mm = 5
`;

async function opened(kind, table, trust = "advisory", sampling = "advisory") {
  const visit = await kind.visit();
  await visit.choose("Settings file", writtenFiles({ "settings.toml": settings(trust, sampling) }));
  await visit.event(/settings/i);
  await visit.choose("Result files", writtenFiles({ "r.csv": table }));
  await visit.until("the lots", () => /reading/.test(document.querySelector("#summary-counts").textContent) && document.querySelector("#work").hidden);
  await visit.goTo("trust");
  return visit;
}

async function openFold(visit, selector) {
  await visit.until(selector, (wanted) => document.querySelector(wanted) !== null, selector);
  await visit.evaluate((wanted) => (document.querySelector(wanted).open = true), selector);
}

const lots = async (visit) => {
  await visit.goTo("says");
  const cards = await visit.evaluate(() => Object.fromEntries([...document.querySelectorAll("#says-lots .lot")].map((lot) => [lot.querySelector("h3").innerText.split(" ")[0], { is: lot.querySelector(".disposition").innerText, text: lot.innerText }])));
  await visit.goTo("trust");
  return cards;
};

const undone = (visit) => visit.click("#undo").then(() => visit.event(/^Undone: /));

const A = "lot_3a_Alder_20_Works_7c_A-1";
const B = "lot_3a_Birch_20_Works_7c_B-1";
const bringsFocusTo = (visit, id) => visit.until(`the focus in ${id}`, (wanted) => document.activeElement?.id.endsWith(wanted), id);

async function send(visit, form, fields) {
  for (const [name, value] of Object.entries(fields)) {
    const control = `${form} [id$="-${name}"]`;
    const type = await visit.evaluate((wanted) => document.querySelector(wanted).type, control);
    if (type === "select-one") await visit.pick(control, value);
    else if (type === "date") await fillDay(visit, control, value);
    else await visit.type(control, value);
  }
  await visit.click(`${form} button[type=submit]`);
}

const refusal = (visit, form) => visit.text(`${form} .refusal`);
const asked = (visit, form) => visit.evaluate((wanted) => [...document.querySelectorAll(`${wanted} .form-field`)].filter((one) => one.checkVisibility()).map((one) => one.querySelector("label").innerText), form);

for (const kind of browsers) {
  test(`${kind.name}: a certified value makes a check reading prove something, and taken back it proves nothing`, async () => {
    const visit = await opened(kind, TABLE, "holding");
    try {
      assert.match((await lots(visit))["B-1"].text, /2 check readings are set apart and could not be judged/);
      await openFold(visit, "#checks-shown");
      await visit.until("the checks", () => document.querySelectorAll("#checks-shown .checks-say").length === 2);
      assert.match(await visit.text("#checks-shown"), /CHK-1 · 2026-11-25 08:00 · XRF-A[\s\S]*Pb\s+no certified value\s+1004 mg\/kg ± 10/);
      await openFold(visit, "#certificates");
      const form = "#certificates form";
      await visit.click(`${form} button[type=submit]`);
      assert.match(await refusal(visit, form), /Element.* is missing/, "which sample it is was said just before");
      await send(visit, form, { sample: "CHK-1", element: "Pb", value: "1 000", u: "20", id: "C-7" });
      assert.match(await refusal(visit, form), /“1 000” is no number/);
      assert.equal(await visit.count("#certificates .rows-given li"), 0);
      await send(visit, form, { value: "1000,0" });
      await visit.event(/^Taken: check standard CHK-1: Pb 1000.0 mg\/kg, U 20 mg\/kg \(k = 2\), certificate C-7/);
      await visit.until("the verdict", () => /Pb\s+good\s+1004[^\n]*\s+1000 ± 20 \(k = 2\)\s+zeta 0\.28/.test(document.querySelector("#checks-shown")?.innerText));
      // What the certificate says once stands there already; the next element is asked.
      await bringsFocusTo(visit, "-element");
      assert.equal(await visit.evaluate((wanted) => document.querySelector(`${wanted} [id$="-id"]`).value, form), "C-7");
      assert.equal(await visit.evaluate((wanted) => document.querySelector(`${wanted} [id$="-value"]`).value, form), "", "the form waits for the next line of the certificate");
      // Lead is certified now; the lot says which elements are not.
      assert.match((await lots(visit))["B-1"].text, /its certified value of Cd, Hg, Cr, Br is not stated/);
      await undone(visit);
      assert.equal(await visit.count("#certificates .rows-given li"), 0);
      assert.match((await lots(visit))["B-1"].text, /could not be judged/);
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });

  test(`${kind.name}: a sampling plan says how many pieces and which, another takes its place, and none is left when it is taken back`, async () => {
    const visit = await opened(kind, TABLE, "advisory", "holding");
    try {
      assert.match((await lots(visit))["B-1"].text, /nothing shows that enough was measured/);
      await openFold(visit, `#act-sampling_plan-${B}-new`);
      const form = `#act-sampling_plan-${B}-new form`;
      await visit.pick(`${form} [id$="-rule"]`, "single");
      assert.ok((await asked(visit, form)).includes("AQL") && !(await asked(visit, form)).includes("Confidence, %"));
      await visit.pick(`${form} [id$="-rule"]`, "zero_acceptance");
      assert.ok(!(await asked(visit, form)).includes("AQL") && (await asked(visit, form)).includes("Confidence, %"));
      await send(visit, form, { confidence: "80", share: "40", seed: "7" });
      await visit.event(/^Taken: sampling plan: zero acceptance, confidence 80 %/);
      // Of 40 with 16 bad, three all good have the chance C(24,3)/C(40,3) = 20.5 %, four C(24,4)/C(40,4) = 11.6 %.
      assert.match((await lots(visit))["B-1"].text, /2 units were measured of the least sampled material; the plan asks for 4\./);
      await openFold(visit, `#act-sampling_plan-${B}-shown`);
      await visit.until("the list and the curve", () => document.querySelector("#evidence-sampling .oc-frame svg") !== null);
      const units = (await visit.text("#evidence-sampling .unit-list")).split(": ").at(-1).split(" ").map(Number);
      assert.equal(new Set(units).size, 4);
      assert.ok(units.every((unit) => unit >= 1 && unit <= 40), units.join(" "));
      await send(visit, form, { rule: "single", aql: "1.0" });
      await visit.event(/^Taken: sampling plan: MIL-STD-105E single sampling, level II, normal, AQL 1\.0/);
      assert.equal(await visit.count("#evidence-sampling .rows-given li"), 1);
      assert.match((await lots(visit))["B-1"].text, /the plan asks for 13\./);
      await visit.click("#evidence-sampling .rows-given button");
      await visit.event(/^Undone: sampling plan: MIL-STD-105E/);
      assert.equal(await visit.count("#evidence-sampling .rows-given li"), 0);
      assert.match((await lots(visit))["B-1"].text, /nothing shows that enough was measured/);
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });

  test(`${kind.name}: a laboratory's result lifts what the screen found over, two people lift what is undecided, and both come back by undo`, async () => {
    const visit = await opened(kind, TABLE);
    try {
      const before = await lots(visit);
      assert.match(before["A-1"].is, /not accept/i);
      assert.match(before["B-1"].is, /hold/i);
      const block = "#act-laboratory-lot_material_3a_Alder_20_Works_7c_A-1_7c_P-1_7c_housing-";
      await openFold(visit, `${block} > details`);
      const form = `${block} form`;
      const named = { method: "IEC 62321-5:2013", laboratory: "Gorse Works", report: "R-1", date: "2026-11-24" };
      // Nobody can look it up: it stands there and lifts nothing. Without a U there is no k.
      await send(visit, form, { analyte: "Pb", value: "<5" });
      await visit.event(/^Taken: laboratory result: Pb <\s?5 mg\/kg; method: not named/);
      assert.match((await lots(visit))["A-1"].is, /not accept/i);
      await visit.click(`${block} .rows-given button`);
      await visit.event(/^Undone: laboratory result/);
      await send(visit, form, { analyte: "Pb", value: "412", u: "30", ...named });
      await visit.event(/^Taken: laboratory result: Pb 412 mg\/kg, U 30 mg\/kg \(k = 2\).*R-1/);
      const after = (await lots(visit))["A-1"];
      assert.match(after.is, /^accept/i);
      assert.match(after.text, /412 ± 30 mg\/kg \(k = 2\) is within 1000 mg\/kg[\s\S]*the screen said OL/);
      await undone(visit);
      assert.match((await lots(visit))["A-1"].is, /not accept/i);

      // What is over limit nobody lifts; what is undecided two people do.
      assert.equal(await visit.count(`#act-holds-${A}- [id^="act-lift-"]`), 0);
      const fold = `#act-lift-${B}-undecided_20_Pb`;
      await openFold(visit, fold);
      await visit.click(`${fold} button[type=submit]`);
      assert.match(await refusal(visit, fold), /Why it may be lifted.* is missing/);
      await send(visit, fold, { why: "drawing 4; page 2", second: "ab", own: "AB" });
      assert.match(await refusal(visit, fold), /somebody else/);
      await send(visit, fold, { second: "CD" });
      await visit.event(/^Taken: hold lifted: undecided outcome Pb; why: drawing 4; page 2; first person: AB; second person: CD/);
      await visit.until("the fold to be gone", (wanted) => document.querySelector(wanted) === null, fold);
      assert.ok(await visit.evaluate((wanted) => document.activeElement.closest(wanted) !== null, `#act-holds-${B}- .rows-given`), "the focus is where it can be taken back, not in the next hold's form");
      assert.match((await lots(visit))["B-1"].is, /^accept/i);
      await undone(visit);
      assert.match((await lots(visit))["B-1"].is, /hold/i);

      // Who ends the hold: a later word takes the place of the earlier.
      const ends = `#act-holds-${A}--ends`;
      await openFold(visit, ends);
      await visit.click(`${ends} button[type=submit]`);
      assert.match(await refusal(visit, ends), /Fill in something/);
      await send(visit, ends, { who: "incoming inspection", until: "2026-12-05", quarantined: "40", place: "cage 2" });
      await visit.event(/^Taken: the hold ends by: incoming inspection/);
      await send(visit, ends, { who: "quality" });
      await visit.event(/^Taken: the hold ends by: quality/);
      assert.match(await visit.text(`#act-holds-${A}- .rows-given`), /quality[\s\S]*2026-12-05[\s\S]*cage 2/);
      assert.equal(await visit.count(`#act-holds-${A}- .rows-given li`), 1);
      await visit.click(`#act-holds-${A}- .rows-given button`);
      await visit.event(/^Undone: the hold ends/);
      assert.equal(await visit.count(`#act-holds-${A}- .rows-given li`), 0);
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });

  test(`${kind.name}: one reading is set aside and clears nothing, another is said to be a check, and both come back`, async () => {
    const visit = await opened(kind, `${TABLE}X-9,,,PE disc,polymer,,,2026-11-25 09:10,60,XRF-A,101,3,990,10,1003,10,1005,15,998,9\n`);
    const look = async (id) => {
      await visit.goTo("says");
      await visit.until(`the row ${id}`, (wanted) => [...document.querySelectorAll(".grid-body .grid-row")].some((row) => row.innerText.includes(wanted)), id);
      await visit.evaluate((wanted) => [...document.querySelectorAll(".grid-body .grid-row")].find((row) => row.innerText.includes(wanted)).querySelector("[role=gridcell]").click(), id);
      await visit.until("the detail", (wanted) => document.querySelector("#detail-heading")?.innerText.includes(wanted) && document.querySelector("#of-reading") !== null, id);
      await openFold(visit, "#of-reading");
    };
    try {
      assert.equal(Object.keys(await lots(visit)).length, 3, "a lot without a name, of the reading that names none");
      await look("S-2");
      assert.equal(await visit.count("#of-reading input[type=radio]"), 0, "nobody takes goods out of a lot by calling them a check");
      await visit.type("#of-reading input[type=text]", "the bag lay under the beam");
      await visit.press("Enter");
      await visit.event(/^Taken: set aside: the bag lay under the beam \(reading at line 4 of r\.csv\)/);
      await visit.until("what counts now", () => /Counts now: the bag lay/.test(document.querySelector("#of-reading")?.innerText));
      const aside = (await lots(visit))["B-1"];
      assert.match(aside.is, /hold/i);
      assert.match(aside.text, /set aside was not below limit[\s\S]*clears nothing/);
      await undone(visit);
      assert.doesNotMatch((await lots(visit))["B-1"].text, /set aside was/);

      await look("X-9");
      await visit.click("#of-reading input[value=check]");
      assert.doesNotMatch(await visit.text("#of-reading"), /Counts now/, "picking alone records nothing");
      await visit.click("#of-reading .choices button");
      await visit.event(/^Taken: taken as a check standard \(reading at line 7 of r\.csv\)/);
      assert.deepEqual(Object.keys(await lots(visit)), ["A-1", "B-1"]);
      await undone(visit);
      assert.equal(Object.keys(await lots(visit)).length, 3);
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });

  test(`${kind.name}: a history comes out, goes in again, and gives charts, suppliers and a bill; a bill comes from a file too`, async () => {
    const visit = await opened(kind, TABLE.replace("1500,20", "80,6"));
    try {
      await visit.goTo("write");
      const written = (await visit.downloaded("history.txt", () => visit.click("#save-history-txt"))).toString();
      const lines = written.trimEnd().split("\n");
      assert.equal(lines[0], "plumbline.history/1");
      const lead = lines.find((line) => line.startsWith("check\t") && line.includes("\tPb\t")).split("\t");
      const good = lines.find((line) => line.startsWith("lot\tAlder Works\t")).split("\t");
      assert.deepEqual([good[6], good[7]], ["2026-11-25", "accept"]);
      // Nine earlier days of the same disc, and three earlier lots of two materials each.
      const days = [1, 2, 3, 4, 5, 6, 7, 8, 9].map((day) => Object.assign([...lead], { 6: `2026-11-0${day}T08:00`, 7: `${996 + day} mg/kg`, 9: String(day).repeat(64), 10: "2" }).join("\t"));
      const before = [1, 2, 3].flatMap((n) => ["housing", "lid"].map((material) => Object.assign([...good], { 3: material, 4: `A-0${n}`, 6: `2026-10-0${n}`, 14: String(n).repeat(64) }).join("\t")));
      await visit.goTo("came-in");
      await visit.choose("History file", writtenFiles({ "history.txt": [...lines, ...days, ...before, ""].join("\n") }));
      await visit.event(/^History taken from history\.txt/);
      await visit.goTo("trust");

      await openFold(visit, "#charts-shown");
      await visit.until("the chart", () => document.querySelector("#charts-shown svg.chart") !== null);
      assert.match(await visit.text("#charts-shown"), /Pb in CHK-1 \(polymer\), instrument XRF-A/);
      const points = () => Math.max(...[...document.querySelectorAll("#charts-shown svg.chart")].map((svg) => svg.querySelectorAll(".chart-point, .chart-signal").length));
      assert.equal(await visit.evaluate(points), 11, "nine earlier points and two of this file, each once");
      await openFold(visit, "#chart-rules");
      await send(visit, "#chart-rules form", { limits: "baseline", points: "8", rules: "nelson" });
      await visit.event(/^Taken: /);
      await visit.until("the other rules", () => /Nelson/i.test(document.querySelector("#charts-shown")?.innerText) || /8/.test(document.querySelector("#charts-shown")?.innerText));
      await undone(visit);

      await openFold(visit, "#suppliers-shown");
      await visit.until("the suppliers", () => document.querySelectorAll("#suppliers-shown .per-lot").length >= 2);
      assert.match(await visit.text("#suppliers-shown"), /Alder Works P-1[\s\S]*Birch Works P-1/);

      // The accepted lots before had a lid too: one press takes their bill over, and says where it comes from.
      await openFold(visit, "#parts-given");
      await visit.click("#act-bill_of_materials-part_3a_P-1--back");
      await visit.until("the learned bill", () => document.querySelector("#parts-given [id^=act-learned]") !== null);
      assert.match(await visit.text("#parts-given"), /As the accepted lot A-03 had them \(2026-10-03\): housing, lid/);
      await visit.click("#parts-given [id^=act-learned]");
      await visit.event(/^Taken: homogeneous materials listed: housing, lid \(part P-1\)/);
      assert.match(await visit.text("#parts-given"), /Counts now: housing\|lid\. Given by accepted lot A-03 of 2026-10-03/);
      assert.match((await lots(visit))["A-1"].text, /^A-1[^]*hold[^]*Material "lid" of the part was not measured/);
      await undone(visit);
      await visit.goTo("came-in");
      await visit.choose("Bill of materials", writtenFiles({ "bill.csv": "Part;Material\nP-1;housing\nP-1;gasket\n" }));
      await visit.event(/^Bill of materials taken from bill\.csv/);
      assert.match((await lots(visit))["A-1"].text, /Material "gasket" of the part was not measured/);
      await undone(visit);
      assert.doesNotMatch((await lots(visit))["A-1"].text, /gasket/);
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });

  test(`${kind.name}: whether a limit applies is answered where its book is named, once, and taken back`, async () => {
    const visit = await opened(kind, TABLE);
    try {
      await openFold(visit, "#books-to-name");
      await visit.click("#act-book-named-eu-reach-xvii-63-");
      await visit.click("#books-send");
      await visit.event(/^Taken: rule books: eu-reach-xvii-63/);
      const question = "#evidence-books .per-lot > div";
      assert.match(await visit.text(question), /Can a child put the article, or this part of it, in the mouth\?/);
      await visit.click(`${question} button[type=submit]`);
      assert.match(await refusal(visit, question), /Answer.* is missing/);
      const open = /Open under the limit "eu-reach-xvii-63: mouthing"/;
      assert.match((await lots(visit))["B-1"].text, open);
      await send(visit, question, { answer: "yes" });
      await visit.event(/^Taken: limit mouthing of eu-reach-xvii-63: it applies/);
      assert.match((await lots(visit))["B-1"].text, open);
      await send(visit, question, { answer: "no" });
      await visit.event(/^Taken: limit mouthing of eu-reach-xvii-63: it does not apply/);
      assert.doesNotMatch((await lots(visit))["B-1"].text, open);
      assert.equal(await visit.count(`${question} .rows-given li`), 1);
      await visit.click(`${question} .rows-given button`);
      await visit.event(/^Undone: /);
      assert.equal(await visit.count(`${question} .rows-given li`), 0);
      assert.match((await lots(visit))["B-1"].text, open);
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });
}
