// Finding the way: the one next action until none is left, the supplier's way to the sheet, addresses that hold no names, back and
// forward, doors that can be changed, counts.

import assert from "node:assert/strict";
import { test } from "node:test";
import { execFileSync } from "node:child_process";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { browsers, deliveries, ownFolder, top, until, visitChromium, writtenFiles } from "./drive.mjs";

const HEAD = "Sample,Part,Material,Lot,Supplier,Class,Unit,Cd mg/kg,Cd u (1s),Pb mg/kg,Pb u (1s),Hg mg/kg,Hg u (1s),Cr mg/kg,Cr u (1s),Br mg/kg,Br u (1s)";
const CLEAN = "10,3,12,5,10,3,20,5,20,5";
const lines = (...rows) => `${[HEAD, ...rows].join("\r\n")}\r\n`;

/** Two lots, one over limit; names that no address may hold. */
const SECRET = lines(
  `S-1,P-1,housing,LOT-Quince,Birch Works,polymer,u1,${CLEAN}`,
  "S-2,P-2,sheath,LOT-Medlar,Cedar Works,polymer,u2,10,3,1800,20,10,3,20,5,20,5",
  `S-3,P-1,housing,LOT-Quince,Birch Works,polymer,u3,${CLEAN}`,
);

/** Every kind of thing that wants a person: no unit, no multiple, no class, a column nobody is sure of, no plan, no checks. */
const MESSY = "Sample,Part,Material,Lot,Supplier,Unit,Remark 2,Pb,Pb u,Cd mg/kg,Cd u (1s),Hg mg/kg,Hg u (1s),Cr mg/kg,Cr u (1s),Br mg/kg,Br u (1s)\r\n"
  + "CHK,,,,,,,300,5,100,5,100,5,100,5,100,5\r\nS-1,P-1,housing,A-1,Alder Works,u1,a,12,5,10,3,10,3,20,5,20,5\r\nS-2,P-1,housing,A-1,Alder Works,u2,b,900,30,10,3,10,3,20,5,20,5\r\nCHK,,,,,,,300,5,100,5,100,5,100,5,100,5\r\n";

const action = (visit) => visit.evaluate(() => document.getElementById("next-action").dataset.action);
const focused = (visit) => visit.evaluate(() => ({ id: document.activeElement.id, tag: document.activeElement.tagName, type: document.activeElement.type ?? "", place: document.activeElement.closest("[data-place]")?.dataset.place ?? "" }));

/** Presses the next action by keyboard and waits for the control it leads to. */
async function press(visit) {
  await visit.page.focus("#next-go");
  await visit.press("Enter");
  await visit.until("the control", () => document.activeElement.id !== "next-go" && document.activeElement !== document.body && !/^heading-/.test(document.activeElement.id));
  return focused(visit);
}

/** Does something that goes on record, and waits until the page has told it: that comes last of all. */
async function changes(visit, what, doing) {
  const before = await visit.text("#summary-event");
  await doing();
  await visit.until(`an answer to ${what}`, (was) => document.getElementById("summary-event").textContent !== was && document.getElementById("work").hidden, before);
}

/** Enter on the button that has the focus, and these files put where its chooser would put them. */
async function chooseByKey(visit, label, files) {
  // The chooser itself is the system's; without a screen it closes at once, as if nothing had been chosen.
  await visit.evaluate(() => document.addEventListener("click", (event) => event.target.matches("input[type=file]") && event.preventDefault(), true));
  await visit.press("Enter");
  await visit.choose(label, files);
}

async function tabTo(visit, wanted) {
  for (let step = 0; step < 40; step += 1) {
    if (await visit.evaluate((end) => document.activeElement.id.endsWith(end), wanted)) return;
    await visit.press("Tab");
  }
  throw new Error(`Tab does not reach ${wanted}`);
}

/** Settles what an action leads to with the very control that has the focus, by keys alone. */
async function settle(visit, id, at) {
  const keys = visit.page.keyboard;
  if (at.type === "radio") {
    await changes(visit, `${id} at ${JSON.stringify(at)}`, async () => {
      await visit.press(" ");
      await visit.press("Enter");
    });
  } else if (id.startsWith("columns:")) {
    await tabTo(visit, "-right");
    await changes(visit, `${id} at ${JSON.stringify(at)}`, () => visit.press("Enter"));
  } else if (at.id === "act-check_samples--") {
    await keys.type("CHK");
    await changes(visit, `${id} at ${JSON.stringify(at)}`, () => visit.press("Enter"));
  } else if (["evidence:trust_not_judged", "evidence:trust_not_certified"].includes(id)) {
    // A row of the certificate for each element, in the order of the list. Which sample it is stands there: it was just named.
    assert.match(at.id, /-element$/);
    visit.certified = (visit.certified ?? 0) + 1;
    for (let down = 0; down < visit.certified; down += 1) await visit.press("ArrowDown");
    for (const text of [visit.certified === 2 ? "300" : "100", "10", "2", "C-1"]) {
      await visit.press("Tab");
      await visit.evaluate(() => document.activeElement.select?.());
      await keys.type(text);
    }
    await changes(visit, `${id} at ${JSON.stringify(at)}`, () => visit.press("Enter"));
  } else if (at.type === "date") {
    // Each language and system types days in its own order; the button beside it knows the day.
    await tabTo(visit, "reviewed-today");
    await changes(visit, `${id} at ${JSON.stringify(at)}`, () => visit.press("Enter"));
  } else if (at.tag === "INPUT") {
    await keys.type(/thickness|lot_size|units/.test(at.id) ? "5" : "somebody");
    await changes(visit, `${id} at ${JSON.stringify(at)}`, () => visit.press("Enter"));
  } else if (at.tag === "BUTTON") {
    await changes(visit, `${id} at ${JSON.stringify(at)}`, () => visit.press("Enter"));
  } else throw new Error(`${id} leads to ${JSON.stringify(at)}`);
}

for (const { name, visit: open } of browsers) {
  test(`in ${name} the next action leads through a messy delivery, press by press, until none is left`, async () => {
    const visit = await open();
    try {
      assert.equal(await action(visit), "bring");
      const at = await press(visit);
      assert.equal(at.id, "result-files", "the first press leads to where files are chosen");
      await visit.choose("Result files", writtenFiles({ "messy.csv": MESSY }));
      await visit.event(/1 of 1 file read/);
      const done = [];
      for (let round = 0; round < 60; round += 1) {
        const id = await action(visit);
        if (id === "report") break;
        done.push(id);
        assert.ok(done.filter((one) => one === id).length <= 6, `${id} again and again: ${done.join(" ")}`);
        const there = await press(visit);
        // What only other readings settle leads to where they are brought; this stick has no more of them.
        if (there.id === "result-files" || there.type === "file") {
          await visit.click("#next-later");
          continue;
        }
        await settle(visit, id, there);
      }
      for (const kind of ["question:unit_not_stated", "question:sigma_multiple_not_stated", "question:class_not_stated", "evidence:thickness_not_stated", "evidence:bill_of_materials_none", "evidence:sampling_none", "evidence:trust_none", "evidence:trust_not_judged", "evidence:trust_not_certified", "field:inspector", "field:reviewed_at"]) {
        assert.ok(done.includes(kind), `${kind} among ${done.join(" ")}`);
      }
      assert.ok(done.some((id) => id.startsWith("lot:")), done.join(" "));
      assert.equal(await action(visit), "report");
      const last = await press(visit);
      assert.equal(last.id, "save-report-html");
      await visit.downloaded("report.html", () => visit.press("Enter"));
      await visit.until("what comes after", () => document.getElementById("next-action").dataset.action !== "report");
      // What was put off comes back once more, and is then left; there is no going round.
      const left = [];
      for (let round = 0; round < 10 && (await action(visit)) !== "again"; round += 1) {
        left.push(await action(visit));
        await visit.click("#next-later");
      }
      assert.equal(new Set(left).size, left.length, left.join(" "));
      assert.equal(await action(visit), "again");
      assert.equal((await press(visit)).id, "start-again");
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });

  test(`in ${name} a supplier comes from the first screen to the sheet in hand by keys`, async () => {
    const visit = await open();
    try {
      await visit.until("the doors", () => document.getElementById("enter-ship-rules") !== null);
      await visit.page.focus("#enter-ship-rules");
      // A customer's book: another's limits under a name of its own.
      const book = '\nschema = "plumbline.rules/1"\nid = "fernbrook-own"\ntitle = "Fernbrook Controls, own limits"\nedition = "1"\nsource = "invented"\nconfidence = "invented"\n[[limit]]\nid = "Pb"\nof = "Pb"\nlimit = "100 mg/kg"\noperator = "at most"\nclasses = ["polymer"]\nbasis = "homogeneous material"\nsource = "invented"\nclause = "1"\n';
      await chooseByKey(visit, "Rule book file", writtenFiles({ "customer.toml": book }));
      await visit.event(/customer\.toml/);
      assert.equal(await action(visit), "bring", "the book is there, so the readings come next");
      assert.equal((await press(visit)).id, "result-files");
      await visit.choose("Result files", writtenFiles({ "outgoing.csv": SECRET }));
      await visit.reviewed();
      await visit.until("the self-check on record", () => /Self-check/.test(document.getElementById("door-label").textContent));
      for (let round = 0; round < 40 && (await action(visit)) !== "sheet"; round += 1) await visit.click("#next-later");
      assert.equal(await action(visit), "sheet");
      const at = await press(visit);
      assert.deepEqual([at.id, at.place], ["save-self-check-html", "write"]);
      const first = await visit.evaluate(() => ({ file: document.querySelector(".takes > li").dataset.file, look: document.querySelector(".takes > li button").className }));
      assert.deepEqual(first, { file: "self-check.html", look: "primary" });
      const sheet = (await visit.downloaded("self-check.html", () => visit.press("Enter"))).toString("utf8");
      for (const text of ["not a declaration of conformity", "fernbrook-own", "given as a file", "LOT-Medlar", "do not ship it as it is"]) assert.ok(sheet.includes(text), text);
      await visit.until("the next one", () => document.getElementById("next-action").dataset.action !== "sheet");
      assert.equal(await action(visit), "report");
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });

  test(`in ${name} back and forward go through places, readings and filters, and no address holds a name`, async () => {
    const visit = await open();
    const hashes = new Set();
    const hash = async () => {
      const now = await visit.evaluate(() => location.hash);
      hashes.add(now);
      return now;
    };
    const here = (what, wanted) => visit.until(what, (pattern) => new RegExp(pattern).test(location.hash), wanted);
    const back = () => visit.evaluate(() => history.back());
    const forward = () => visit.evaluate(() => history.forward());
    try {
      await visit.choose("Result files", writtenFiles({ "LOT-Quince.csv": SECRET }));
      await visit.reviewed();
      for (const place of ["trust", "says", "next", "write", "says"]) await visit.goTo(place);
      await visit.pick("#filter-outcome", "OL");
      await here("the filter in the address", "outcome=OL");
      await visit.until("one reading", () => document.querySelectorAll(".grid-body [role=row]").length === 1);
      await hash();
      await visit.click('.grid-body [role=row] [role=gridcell]');
      await here("the reading in the address", "reading=1\\.0\\.3\\.[0-9a-f]{4}");
      await hash();
      await visit.until("the detail", () => !document.getElementById("detail").hidden);
      await visit.click("#detail-close");
      await here("no reading", "outcome=OL$");
      const before = await visit.evaluate(() => history.length);
      await visit.type("#filter-text", "Medlar");
      await here("a number for what was typed", "typed=\\d+");
      await visit.until("the readings", () => document.querySelectorAll(".grid-body [role=row]").length === 1);
      await hash();
      const after = await visit.evaluate(() => history.length);
      assert.ok(after - before <= 1, `typing made ${after - before} steps`);
      await visit.goTo("write");
      await hash();

      await back();
      await here("says again", "^#says/");
      await visit.until("what was typed", () => document.getElementById("filter-text").value === "Medlar" && !document.getElementById("place-says").hidden);
      await back();
      await here("the reading again", "reading=");
      await visit.until("the detail again", () => !document.getElementById("detail").hidden && document.getElementById("filter-text").value === "");
      await back();
      await visit.until("the filter alone", () => document.getElementById("detail").hidden && document.getElementById("filter-outcome").value === "OL");
      await back();
      await visit.until("no filter", () => document.getElementById("filter-outcome").value === "" && location.hash === "#says");
      for (const place of ["write", "next", "says", "trust", "came-in"]) {
        await back();
        await visit.until(place, (wanted) => !document.getElementById(`place-${wanted}`).hidden, place);
      }
      for (const place of ["trust", "says", "next", "write", "says"]) {
        await forward();
        await visit.until(place, (wanted) => !document.getElementById(`place-${wanted}`).hidden, place);
      }
      await forward();
      await visit.until("the filter once more", () => document.getElementById("filter-outcome").value === "OL");
      await forward();
      await visit.until("the reading once more", () => !document.getElementById("detail").hidden);

      // A step of the list of places keeps what is looked at; only the browser's steps take it away.
      await visit.goTo("next");
      await visit.goTo("says");
      await here("as it stood", "outcome=OL&reading=");
      for (const one of hashes) assert.doesNotMatch(decodeURIComponent(one), /Quince|Medlar|Birch|Cedar|housing|sheath|S-2|csv/i);
      assert.equal(await visit.evaluate(() => history.state), null, "what goes with an address is written to disk too");
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });

  test(`in ${name} an address that points at nothing here leads to the place and says so`, async () => {
    const visit = await open();
    const go = (to) => visit.evaluate((wanted) => { location.hash = wanted; }, to);
    try {
      await go("#says/outcome=OL&reading=1.0.3.ffff");
      await visit.event(/inspection that is not open here/);
      assert.equal(await visit.evaluate(() => document.getElementById("place-says").hidden), false);
      await visit.goTo("came-in");
      await visit.choose("Result files", writtenFiles({ "a.csv": SECRET }));
      await visit.reviewed();
      for (const nothing of ["#says/reading=1.0.3.ffff", "#says/reading=99.0.3.aaaa", "#says/lot=1.0000", "#says/outcome=%E0%A4%A", "#came-in/file=7.aaaa", "#next/lot=0.0000", "#nowhere"]) {
        await visit.goTo("trust");
        await visit.evaluate(() => { document.getElementById("summary-event").textContent = ""; });
        await go(nothing);
        await visit.until(`the line for ${nothing}`, () => /points at something that is not here/.test(document.getElementById("summary-event").textContent));
        const place = /#([a-z-]+)/.exec(nothing)[1];
        if (place !== "nowhere") assert.equal(await visit.evaluate((wanted) => document.getElementById(`place-${wanted}`).hidden, place), false, nothing);
        await visit.evaluate(() => { document.getElementById("summary-event").textContent = ""; });
      }
      await go("#says/typed=12");
      await visit.event(/gone/);
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });
}

test("the wrong door is changed without losing work, and undo changes it back", async () => {
  const visit = await visitChromium();
  try {
    await visit.choose("Result files", writtenFiles({ "a.csv": SECRET }));
    await visit.reviewed();
    await visit.click("#door-change");
    await visit.until("the first screen", () => !document.getElementById("place-start").hidden);
    assert.deepEqual(await visit.evaluate(() => ["inspect", "ship"].map((door) => document.getElementById(`go-on-${door}`).hidden)), [true, false]);
    await visit.click("#go-on-ship");
    await visit.event(/self-check/);
    assert.match(await visit.text("#door-label"), /Self-check/);
    assert.equal(await visit.evaluate(() => document.getElementById("self-check").hidden), false);
    assert.match(await visit.text("#summary-counts"), /3 readings/);
    await visit.goTo("write");
    assert.equal(await visit.evaluate(() => document.getElementById("act-title--").value), "Self-check before shipping");
    await visit.click("#undo");
    await visit.until("the inspection", () => document.getElementById("door-label").textContent === "Inspection");
    await visit.click("#redo");
    await visit.until("the self-check", () => document.getElementById("door-label").textContent === "Self-check" || /Self-check/.test(document.getElementById("door-label").textContent));
    await visit.click("#door-change");
    await visit.click("#go-on-inspect");
    await visit.event(/inspection of a delivery/);
    await visit.goTo("write");
    assert.equal(await visit.evaluate(() => document.getElementById("act-title--").value), "", "the title went with the door");
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("each place counts what wants a person, in words for one and for several, and after undo", async () => {
  const visit = await visitChromium();
  const needs = () => visit.evaluate(() => Object.fromEntries([...document.querySelectorAll("#steps a")].map((step) => [step.id.slice(5), step.querySelector(".step-needs")?.textContent ?? ""])));
  try {
    await visit.choose("Result files", writtenFiles({ "a.csv": SECRET }));
    await visit.reviewed();
    const first = await needs();
    assert.equal(first["came-in"], "");
    assert.equal(first.says, "1 lot not accept, 1 lot held");
    assert.equal(first.write, "4 fields empty");
    assert.match(first.trust, /^\d items missing$/);
    await visit.goTo("write");
    for (const [field, text] of [["title", "t"], ["inspector", "i"], ["place", "p"]]) {
      await visit.type(`#act-${field}--`, text);
      await visit.press("Enter");
      await visit.event(/^Taken/);
      await visit.until("it stands", (id) => document.querySelector(`#act-${id}---back`) !== null || document.querySelector(`[id^="act-${id}"][id$="-back"]`) !== null, field);
    }
    assert.equal((await needs()).write, "1 field empty");
    await visit.click("#undo");
    await visit.until("two", () => document.querySelector("#step-write .step-needs")?.textContent === "2 fields empty");
    await visit.click("#redo");
    await visit.until("one", () => document.querySelector("#step-write .step-needs")?.textContent === "1 field empty");
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("behind the trainer's door the next action is the next lesson", async () => {
  const visit = await visitChromium();
  try {
    await visit.click(`[data-delivery="${deliveries()[0].name}"]`);
    await visit.until("the review", () => document.querySelector("#summary-says").textContent !== "" && !document.getElementById("lesson-box").hidden);
    await visit.until("the lesson after", () => document.getElementById("next-action").dataset.action === "lesson" && document.getElementById("lesson-next").getAttribute("aria-disabled") === "false");
    assert.equal((await press(visit)).id, "lesson-next");
    assert.equal(await visit.evaluate(() => document.getElementById("door-change").hidden), true, "invented data is no delivery");
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("what happened last is told as news, and then quietly as what was", async () => {
  const visit = await visitChromium();
  const old = () => document.getElementById("summary-event").classList.contains("summary-event-old");
  try {
    await visit.choose("Result files", writtenFiles({ "a.csv": SECRET }));
    await visit.event(/1 of 1 file read/);
    assert.equal(await visit.evaluate(old), false, "the place that opens by itself is a part of it");
    await visit.page.waitForTimeout(3100);
    const said = await visit.text("#summary-event");
    await visit.goTo("says");
    assert.equal(await visit.evaluate(old), true);
    assert.equal(await visit.text("#summary-event"), said, "nothing is told again");
    assert.match(await visit.evaluate(() => getComputedStyle(document.getElementById("summary-event"), "::before").content), /Last:/);
    await visit.click("#undo");
    await visit.event(/^Undone/);
    assert.equal(await visit.evaluate(old), false);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("what is put off moves on, is counted, and can be taken up again", async () => {
  const visit = await visitChromium();
  try {
    await visit.choose("Result files", writtenFiles({ "a.csv": SECRET }));
    await visit.reviewed();
    const first = await action(visit);
    await visit.click("#next-later");
    await visit.event(/^Put off/);
    assert.notEqual(await action(visit), first);
    assert.match(await visit.text("#next-waiting"), /One thing was put off/);
    await visit.click("#next-later");
    assert.match(await visit.text("#next-waiting"), /2 things were put off/);
    await visit.click("#next-put-off");
    assert.equal(await action(visit), first);
    await until("no count", () => visit.evaluate(() => document.getElementById("next-waiting").hidden));
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("the next action is a pure function that comes to an end, whatever is put off", async () => {
  const bundle = join(ownFolder(), "next-action.mjs");
  execFileSync("node", [join(top, "web/node_modules/esbuild/bin/esbuild"), join(top, "web/src/page/next-action.ts"), "--bundle", "--format=esm", "--platform=node", `--outfile=${bundle}`, "--log-level=error"]);
  const { nextAction } = await import(pathToFileURL(bundle).href);
  const idOf = (kind, target) => `${kind}/${target}`;
  const reason = (code, kind, effect = "hold") => ({ code, kind, effect, about: "", liftable: false, text: `${code} said`, remedy: `${code} remedy` });
  const lot = (index, disposition, ...reasons) => ({ index, lot: `L-${index}`, supplier: "Alder Works", source: null, disposition, disposition_text: "", readings: 1, materials: 1, reasons, not_assessed: [] });
  const lots = [lot(0, "hold", reason("class_unknown", "evidence"), reason("sampling_none", "evidence"), reason("trust_none", "evidence"), reason("trust_failed", "evidence")), lot(1, "not_accept", reason("over_limit", "outcome", "not_accept"))];
  const summary = { readings: 3, sources: [{}], lots, materials: [], acts: [], totals: { rows_check: 0 } };
  const empty = { door: "inspect", summary: null, offers: null, bookGiven: false, unread: [], refused: [], questions: [], columns: [], fields: [], written: false, sheetTaken: false, lesson: "none", room: null };
  const full = { ...empty, summary, questions: [{ code: "unit_not_stated", files: 1, text: "" }], columns: [{ name: "a.csv", columns: 2, folds: ["f"], focus: "c" }], unread: [{ name: "b.csv", rows: 0, fold: "g", focus: "h" }], refused: [{ name: "a.csv", rows: 3, fold: "f", focus: "r" }], fields: ["inspector"] };
  const next = (of, off = new Map()) => nextAction(of, off, idOf);

  assert.equal(next(empty).action.id, "bring");
  assert.equal(next({ ...empty, door: "ship" }).action.id, "book");
  assert.equal(next({ ...empty, door: "ship", bookGiven: true }).action.id, "bring");
  assert.deepEqual(next(full), next(full), "the same for the same");

  // Everything put off once and then once more: each comes up twice at most, and then there is an end.
  const seen = [];
  const off = new Map();
  let of = full;
  for (let round = 0; round < 100; round += 1) {
    const { action: one, waiting } = next(of, off);
    seen.push(one.id);
    if (one.id === "report") {
      assert.ok(waiting > 5);
      of = { ...of, written: true };
    } else if (one.mayWait) off.set(one.id, (off.get(one.id) ?? 0) + 1);
    else break;
  }
  const once = ["unread:b.csv", "question:unit_not_stated", "columns:a.csv", "refused:a.csv", "evidence:trust_none", "evidence:class_unknown", "evidence:sampling_none", "evidence:trust_failed", "lot:lot:Alder Works|L-1", "lot:lot:Alder Works|L-0", "field:inspector"];
  assert.deepEqual(seen, [...once, "report", ...once, "again"]);

  // A check that nobody named is named; one of another class is no help, nor is its certificate; one that fits lacks only that.
  const trusted = (code, rows_check, acts = []) => next({ ...empty, summary: { ...summary, lots: [lot(0, "hold", reason(code, "evidence"))], totals: { rows_check }, acts } }).action;
  const named = { kind: "check_samples", target: "", value: "CHK", undone: false };
  assert.deepEqual([trusted("trust_none", 0), trusted("trust_none", 2), trusted("trust_none", 0, [named]), trusted("trust_not_certified", 2), trusted("trust_not_judged", 2)].map(({ place, focus }) => `${place} ${focus}`), ["trust act-check_samples--", "came-in result-files", "came-in result-files", "trust certificates-new", "trust certificates-new"]);

  // What a certificate lacks stands in its form, what a check reading lacks in its file.
  const lacks = (about) => next({ ...empty, summary: { ...summary, lots: [lot(0, "hold", { ...reason("trust_not_certified", "evidence"), about })], totals: { rows_check: 2 }, acts: [] } }).action.focus;
  assert.deepEqual(["Cd Pb", "Cd, CHK, C-7, 2025-01-31", "Pb, CHK, C-7, no_uncertainty"].map(lacks), ["certificates-new", "certificates-new", "result-files"]);
  // A layer beside another class is no question of which class: another thing is said, and put off it comes to an end.
  const layer = { ...empty, written: true, summary: { ...summary, lots: [lot(0, "hold", reason("layer_among_classes", "evidence"))], acts: [{ kind: "class", target: "material:P|m", value: "metal", undone: false }] } };
  const of_layer = [0, 1, 2].map((times) => next(layer, new Map([["evidence:layer_among_classes", times], ["lot:lot:Alder Works|L-0", 2]])).action);
  assert.deepEqual(of_layer.map(({ id, text }) => `${id} ${text.key}`), ["evidence:layer_among_classes page-do-evidence-layer", "evidence:layer_among_classes page-do-evidence-layer", "again page-do-again"]);
  assert.equal(of_layer[0].why, "layer_among_classes said");

  // A supplier decides about no hold, and takes the sheet before the report.
  const ship = { ...empty, door: "ship", bookGiven: true, summary: { ...summary, lots: [lots[1]] } };
  assert.deepEqual([next(ship).action.id, next({ ...ship, sheetTaken: true }).action.id, next({ ...ship, sheetTaken: true, written: true }).action.id], ["sheet", "report", "again"]);

  // The very field: a size that is there leads on to the next one.
  const sized = { ...full, unread: [], questions: [], columns: [], refused: [], summary: { ...summary, lots: [lot(0, "hold", reason("sampling_none", "evidence"))], acts: [{ kind: "lot_size", target: "lot:Alder Works|L-0", value: "5", undone: false }] } };
  assert.equal(next(sized).action.focus, "units_to_take/lot:Alder Works|L-0");
  assert.equal(next({ ...sized, summary: { ...sized.summary, acts: [{ ...sized.summary.acts[0], undone: true }] } }).action.focus, "lot_size/lot:Alder Works|L-0", "taken back, it is asked again");
  assert.equal(next({ ...full, lesson: "more" }).action.focus, "lesson-next");
  assert.equal(next({ ...full, lesson: "last" }).action.place, "start");

  // After a crash; somebody else's copy on a borrowed computer is put off.
  const found = { ...empty, found: 2 };
  assert.deepEqual([next(found).action.id, next(found).action.focus], ["found", "found-code"]);
  assert.equal(next(found, new Map([["found", 1]])).action.id, "bring");
  assert.equal(next({ ...full, found: 2 }).action.id, next(full).action.id, "with an inspection open, other copies wait");
  // In the trainer's room: the lesson, its exercises one after the other, and what comes after it.
  const inRoom = (view, exercise = 0) => next({ ...full, room: { view, exercise } }).action;
  assert.deepEqual([inRoom("home").place, inRoom("home").focus], ["train", "train-next"]);
  assert.deepEqual([inRoom("lesson", 2).focus, inRoom("lesson").focus, inRoom("other").focus], ["exercise-2", "train-after", "train-all"]);
  const fresh = next({ ...full, lesson: "fresh" }).action;
  assert.deepEqual([fresh.id, fresh.place], ["fresh", "train"], "a delivery of a seed is no lesson that another one follows");

  // What can be said comes before what has to be measured again, in whatever order the reasons stand.
  const short = lot(0, "hold", reason("sampling_too_few", "evidence"), reason("sampling_none", "evidence"), reason("trust_failed", "evidence"));
  const mixed = { ...full, unread: [], questions: [], columns: [], refused: [], summary: { ...summary, lots: [short] } };
  assert.equal(next(mixed).action.id, "evidence:sampling_none");
  assert.match(next({ ...mixed, summary: { ...mixed.summary, acts: ["lot_size", "units_to_take"].map((kind) => ({ kind, target: "lot:Alder Works|L-0", value: "5", undone: false })) } }).action.id, /sampling_none|trust_failed|sampling_too_few/);

  // Over its limit, and an entry may fit: before shipping that is looked into; at goods-in it is the supplier's to claim.
  const offers = { materials: [{ part: "P-1", material: "brass", substances: [{ substance: "Pb", over: true, entries: [{ row: 0, exceeded: false }] }, { substance: "Cd", over: true, entries: [{ row: 1, exceeded: true }] }], claims: [] }] };
  const claim = (of) => next({ ...of, summary: { ...summary, lots: [lots[1]] }, offers, unread: [], questions: [], columns: [], refused: [] }).action;
  assert.deepEqual([claim({ ...full, door: "ship", bookGiven: true }).id, claim({ ...full, door: "ship", bookGiven: true }).focus], ["claim:claim/material:P-1|brass", "claim/material:P-1|brass-form-entry"]);
  assert.match(claim(full).id, /^lot:/);
});
