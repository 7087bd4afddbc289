// Nothing lost, nothing left behind: the recovery copy and its code, leaving nothing, the inspection file, back and forth.

import assert from "node:assert/strict";
import { readFileSync, readdirSync, statSync, truncateSync, unlinkSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { test } from "node:test";
import { browsers, cleanDelivery, ownFolder, visitChromium, visitChromiumKept, writtenFiles } from "./drive.mjs";

// Invented. The values are long, so that finding them anywhere is no accident.
const TABLE = "Sample,Part,Material,Lot,Supplier,Class,Pb mg/kg,Pb u (1s),Cd mg/kg,Cd u (1s)\r\nS-1,P-1,housing,GORSELOT-7731,Gorse Works,polymer,12.345678,1.5,2,1\r\nS-2,P-2,clip,GORSELOT-7732,Gorse Works,metal,23.456789,2.5,2,1\r\n";
const OTHER = TABLE.replaceAll("GORSELOT", "ELMLOT").replaceAll("Gorse", "Elm");

const code = (visit) => visit.until("the code", () => document.getElementById("keep-code")?.textContent ?? "");

async function titled(visit, title) {
  await visit.goTo("write");
  await visit.type("#act-title--", title);
  await visit.press("Enter");
  await visit.event(new RegExp(`^Taken: .*${title}`));
}

async function begun(visit, files = { "gorse.csv": TABLE }) {
  await visit.choose("Result files", writtenFiles(files));
  await visit.event(/files? read/);
  return code(visit);
}

const noted = (visit) => visit.click("#keep-noted");

/** Reloads as after a crash: no question whether to leave may stand in the way. */
async function again(visit) {
  if (!visit.mayLeave) visit.page.on("dialog", (dialog) => void dialog.accept());
  visit.mayLeave = true;
  await visit.page.reload();
  await visit.until("the page", () => document.getElementById("program")?.textContent.match(/\d/) !== null);
}

async function bringBack(visit, typed) {
  await visit.until("the offer", () => document.getElementById("found-code") !== null && !document.getElementById("place-start").hidden);
  await visit.type("#found-code", typed);
  await visit.click("#found-bring-back");
}

const back = async (visit, typed) => {
  await bringBack(visit, typed);
  await visit.event(/^The inspection is back/);
};

const acts = async (visit) => {
  await visit.goTo("write");
  return visit.evaluate(() => [...document.querySelectorAll("#write .act-text")].map((one) => one.textContent));
};

/** Everything this page keeps in the browser, as one text in which bytes stand as characters. */
const keptByBrowser = (visit) =>
  visit.evaluate(async () => {
    const told = [JSON.stringify(localStorage), JSON.stringify(sessionStorage), window.name, location.href, JSON.stringify(history.state)];
    for (const { name, version } of await indexedDB.databases()) {
      const base = await new Promise((settle) => {
        const request = indexedDB.open(name, version);
        request.onsuccess = () => settle(request.result);
      });
      for (const store of base.objectStoreNames) {
        const rows = await new Promise((settle) => {
          const request = base.transaction(store).objectStore(store).getAll();
          request.onsuccess = () => settle(request.result);
        });
        const plain = (value) => (value instanceof Uint8Array ? Array.from(value, (byte) => String.fromCharCode(byte)).join("") : value);
        for (const row of rows) told.push(JSON.stringify(plain(row), (_, value) => plain(value)), row?.constructor?.name ?? "");
      }
      base.close();
    }
    return told.join("\n");
  });

/** Changes the stored records; `how` is the body of a function of the object store and the keys in order. */
const tamper = (visit, how) =>
  visit.evaluate(async (body) => {
    const base = await new Promise((settle) => {
      const request = indexedDB.open("plumbline.recovery");
      request.onsuccess = () => settle(request.result);
    });
    const transaction = base.transaction("records", "readwrite");
    const store = transaction.objectStore("records");
    const got = (request) => new Promise((settle) => (request.onsuccess = () => settle(request.result)));
    const work = {
      change: async (keys) => {
        const at = keys[keys.length - 2];
        const record = await got(store.get(at));
        record[record.length - 20] ^= 1;
        store.put(record, at);
      },
      swap: async (keys) => {
        const [a, b] = [keys[keys.length - 1], keys[keys.length - 2]];
        const [first, second] = [await got(store.get(a)), await got(store.get(b))];
        store.put(second, a);
        store.put(first, b);
      },
      drop: async (keys) => store.delete(keys[keys.length - 2]),
      dropLast: async (keys) => store.delete(keys[keys.length - 1]),
      repeat: async (keys) => {
        const last = keys[keys.length - 1];
        store.put(await got(store.get(last)), [last[0], last[1] + 1]);
      },
    };
    await work[body](await got(store.getAllKeys()));
    await new Promise((settle) => (transaction.oncomplete = settle));
    base.close();
  }, how);

function* filesIn(folder) {
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) yield* filesIn(path);
    else if (entry.isFile() && statSync(path).size < 200_000_000) yield path;
  }
}

/** The files of a browser's profile that hold one of these words, as UTF-8 or as UTF-16. */
function heldInClear(profile, words) {
  const wanted = words.flatMap((word) => [Buffer.from(word), Buffer.from(word, "utf16le")]);
  return [...filesIn(profile)].filter((path) => {
    const bytes = readFileSync(path);
    return wanted.some((word) => bytes.includes(word));
  });
}

for (const { name, visit: open, kept } of browsers) {
  test(`in ${name} an inspection is brought back by its code after the page was left, and goes on being saved`, async () => {
    const visit = await open();
    try {
      const shown = await begun(visit);
      assert.match(shown, /^[2-9A-Y]{4}-[2-9A-Y]{4}-[2-9A-Y]{4}$/);
      assert.match(await visit.text("#summary-event"), /recovery code is shown/);
      await noted(visit);
      assert.equal(await visit.text("#written"), "In the recovery copy");
      await titled(visit, "First title");
      await titled(visit, "Second title");
      await visit.click("#undo");
      await visit.event(/^Undone: .*Second title/);

      await again(visit);
      await bringBack(visit, "2222-2222-2222");
      await visit.until("the refusal", () => /opens no copy/.test(document.getElementById("found-refusal").textContent));
      assert.match(await visit.text("#found-refusal"), /Nothing was lost/);
      await bringBack(visit, "2222-2222-222O");
      await visit.until("the odd sign", () => /“O” stands in no code/.test(document.getElementById("found-refusal").textContent));
      await bringBack(visit, "222");
      await visit.until("the length", () => /12 signs/.test(document.getElementById("found-refusal").textContent));
      assert.doesNotMatch(await visit.text("#found"), /gorse/i, "no name without the code");
      assert.match(await visit.text("#found"), /Saved .*: \d+ records, 1 file/);

      await back(visit, ` ${shown.toLowerCase().replaceAll("-", " ")} `);
      await visit.until("the place", () => location.hash === "#write");
      const brought = await acts(visit);
      assert.equal(brought.length, 3);
      assert.match(brought[0], /First title/);
      assert.equal(await visit.evaluate(() => document.getElementById("act-title--").value), "First title");
      await visit.click("#redo");
      await visit.event(/^Done again: .*Second title/);
      await titled(visit, "Third title");

      await again(visit);
      await back(visit, shown);
      const all = await acts(visit);
      const named = (texts) => texts.slice(0, 3).map((text) => text.replace(/ \(undone\)$/, ""));
      assert.deepEqual(named(all), named(brought));
      assert.match(all.at(-1), /Third title/);
      assert.equal(await visit.count("#found .found"), 0, "what was brought back is not offered again");
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });

  test(`in ${name} nothing of an inspection stands in clear in what the browser keeps or on its disk, and it survives a kill`, async () => {
    const profile = ownFolder();
    let visit = await kept(profile);
    let shown;
    try {
      shown = await begun(visit);
      await noted(visit);
      await visit.goTo("trust");
      await visit.type("#who-initials", "QXZQ");
      await titled(visit, "Wobblethorpe review");
      const words = ["GORSELOT-7731", "Gorse Works", "12.345678", "gorse.csv", "Wobblethorpe", "QXZQ", shown, shown.replaceAll("-", "")];
      const there = await keptByBrowser(visit);
      for (const word of words) assert.ok(!there.includes(word), `${word} stands in clear in the browser's storage`);
      assert.ok(!there.includes("CryptoKey"), "no key is kept");
      assert.match(there, /"records":\d+,"files":1/, "the copy is there");
      await visit.kill();
      assert.deepEqual(heldInClear(profile, words), [], "nothing in clear in the profile");
    } finally {
      await visit.close().catch(() => undefined);
    }
    visit = await kept(profile);
    try {
      await back(visit, shown);
      assert.deepEqual((await acts(visit)).map((text) => /Wobblethorpe/.test(text)), [true]);
      assert.equal(await visit.evaluate(() => document.getElementById("who-initials").value), "QXZQ");
    } finally {
      await visit.close();
    }
  });

  test(`in ${name} leaving nothing leaves nothing but the wish, and a copy left behind is removed and put back at a press`, async () => {
    const visit = await open();
    try {
      const shown = await begun(visit);
      await noted(visit);
      await visit.pick("#language", "de");
      await visit.until("the language", () => document.documentElement.lang === "de");
      await visit.pick("#language", "en");
      await visit.until("the language kept", () => document.documentElement.lang === "en" && localStorage.getItem("plumbline.language") === "en");
      await again(visit);
      await visit.until("the offer", () => document.querySelectorAll("#found-list li").length === 1);
      await visit.click("#found-list button");
      await visit.until("it to be gone", async () => (await indexedDB.databases()).length === 0);
      await visit.click("#found-put-back");
      await visit.until("the offer again", () => document.querySelectorAll("#found-list li").length === 1);

      await begun(visit, { "elm.csv": OTHER });
      await visit.click("#keep-remove-others");
      await visit.until("the other gone", () => document.getElementById("keep-remove-others") === null);
      await visit.until("the control in the panel", () => document.querySelector("#keep #keep-nothing") !== null);
      await visit.click("#keep-nothing");
      await visit.event(/^Nothing is kept/);
      const left = () =>
        visit.evaluate(async () => ({
          databases: (await indexedDB.databases()).map((one) => one.name),
          local: { ...localStorage },
          session: { ...sessionStorage },
          caches: await globalThis.caches?.keys().catch(() => []) ?? [],
        }));
      const nothing = { databases: [], local: { "plumbline.keep-nothing": "yes" }, session: {}, caches: [] };
      assert.deepEqual(await left(), nothing);
      assert.match(await visit.text("#written"), /Not saved/);
      await titled(visit, "Unkept");
      assert.deepEqual(await left(), nothing, "nor is anything kept from then on");
      await again(visit);
      await visit.goTo("came-in");
      await visit.click(".wordmark");
      assert.equal(await visit.evaluate(() => document.getElementById("keep-nothing").checked), true);
      assert.equal(await visit.evaluate(() => document.getElementById("found").hidden), true);
      await visit.choose("Result files", writtenFiles({ "gorse.csv": TABLE }));
      await visit.event(/1 of 1 file read/);
      assert.deepEqual(await left(), nothing);
      await visit.click("#keep-open");
      assert.match(await visit.text("#keep"), /if the browser closes, it is gone/i);
      await visit.click("#keep-nothing");
      await visit.event(/are kept in this browser again/);
      assert.notEqual(await code(visit), shown, "a new visit has its own code");
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });

  test(`in ${name} an inspection file brings everything back to the byte, in another browser that knows nothing of it`, async () => {
    const delivery = cleanDelivery();
    const visit = await open();
    let saved;
    const before = {};
    const taken = async (at) => {
      await at.goTo("write");
      for (const file of ["findings.json", "report.html"]) before[file] = await at.downloaded(file, () => at.click(`#save-${file.replace(".", "-")}`));
    };
    try {
      await visit.choose("Settings file", [delivery.settings]);
      await visit.event(/settings/i);
      await visit.choose("Result files", [...delivery.results, ...writtenFiles({ "gorse.csv": TABLE })]);
      await visit.reviewed();
      await noted(visit);
      await titled(visit, "To be carried");
      await titled(visit, "To be carried on");
      await visit.click("#undo");
      await visit.event(/^Undone/);
      await taken(visit);
      await visit.click("#keep-open");
      saved = await visit.downloaded("inspection.plumbline", () => visit.click("#keep-download"));
      await visit.until("the time", () => /Saved to a file at \d/.test(document.getElementById("written").textContent));
      await titled(visit, "After it");
      assert.match(await visit.text("#written"), /In the recovery copy/);
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
    assert.ok(saved.toString("latin1").startsWith("plumbline.inspection/1\n"));
    const expected = { ...before };
    const other = await open();
    try {
      await begun(other, { "elm.csv": OTHER });
      await noted(other);
      await other.choose("Result files", writtenFiles({ "any name.bin": saved, "gorse.csv": TABLE }));
      await other.event(/^The inspection in any name\.bin is open/);
      await other.until("the place", () => location.hash === "#write");
      assert.equal(await other.evaluate(() => document.getElementById("act-title--").value), "To be carried");
      await taken(other);
      for (const file of Object.keys(expected)) assert.ok(before[file].equals(expected[file]), `${file} is another than before`);
      await other.click("#redo");
      await other.event(/^Done again: .*To be carried on/);
      await other.click("#bring-back");
      await other.event(/is back/);
      await other.goTo("came-in");
      assert.deepEqual(await other.evaluate(() => [...document.querySelectorAll(".source-name")].map((one) => one.textContent)), ["elm.csv"], "what was open was put by");
      assert.deepEqual(other.complaints, []);
    } finally {
      await other.close();
    }
  });
}

test("a record that was changed, moved, doubled or dropped is noticed and told, and all before it is back", async () => {
  for (const how of ["change", "swap", "drop", "dropLast", "repeat"]) {
    const visit = await visitChromium();
    try {
      const shown = await begun(visit);
      await noted(visit);
      for (const title of ["One", "Two", "Three", "Four"]) await titled(visit, title);
      await again(visit);
      await visit.until("the offer", () => document.getElementById("found-code") !== null);
      await tamper(visit, how);
      await bringBack(visit, shown);
      await visit.until(`the trouble of ${how}`, () => document.querySelectorAll("#troubles .trouble").length === 1);
      assert.match(await visit.text("#troubles"), /changed or damaged[\s\S]*All before it is back/, how);
      const texts = (await acts(visit)).join("; ");
      assert.match(texts, /One; .*Two/, how);
      if (how !== "repeat") assert.doesNotMatch(texts, /Four/, how);
      await visit.click(".wordmark");
      await visit.until("the damaged copy to be offered still", () => document.querySelectorAll("#found-list li").length === 1);
      await titled(visit, "Afterwards");
      assert.equal(await visit.text("#written"), "In the recovery copy", "a new copy was begun");
    } finally {
      await visit.close();
    }
  }
});

// What a browser does that keeps nothing for a page, and one whose disk is full after the first records.
const REFUSES = `Object.defineProperty(IDBFactory.prototype, "open", { value() { throw new DOMException("not here", "SecurityError"); } });`;
const MISSING = `Object.defineProperty(globalThis, "indexedDB", { value: undefined });`;
const FULL = `
  const { add } = IDBObjectStore.prototype;
  let room = 3;
  IDBObjectStore.prototype.add = function (...given) {
    if ((room -= 1) < 0) throw new DOMException("no room", "QuotaExceededError");
    return add.apply(this, given);
  };
`;

test("storage that is refused, missing or full is said once; work goes on and saving to a file is offered there", async () => {
  for (const [before, said] of [[REFUSES, /does not let the page keep/], [MISSING, /does not let the page keep/], [FULL, /no room left/]]) {
    const visit = await visitChromium({ before });
    try {
      await visit.choose("Result files", writtenFiles({ "gorse.csv": TABLE }));
      await visit.event(/1 of 1 file read/);
      if (before === FULL) await noted(visit);
      await titled(visit, "One");
      await titled(visit, "Two");
      await visit.until("the words", () => document.getElementById("keep-unsaved") !== null);
      assert.match(await visit.text("#keep-unsaved"), said);
      assert.equal(await visit.text("#written"), "Not saved");
      assert.equal(await visit.count("#troubles .trouble"), 0);
      assert.equal((await acts(visit)).length, 2);
      await visit.click("#keep-open");
      await titled(visit, "Three");
      assert.equal(await visit.evaluate(() => document.getElementById("keep").hidden), true, "said once");
      await visit.click("#keep-open");
      const saved = await visit.downloaded("inspection.plumbline", () => visit.click("#keep-download"));
      assert.ok(saved.length > 500);
      await visit.until("the time", () => /Saved to a file/.test(document.getElementById("written").textContent));
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  }
});

test("an inspection file that is damaged, cut, newer or not ours is refused in words, and what is open stays", async () => {
  const visit = await visitChromium();
  try {
    await begun(visit);
    await noted(visit);
    await titled(visit, "Stays");
    await visit.click("#keep-open");
    const saved = await visit.downloaded("inspection.plumbline", () => visit.click("#keep-download"));
    const text = saved.toString("latin1");
    const listAt = text.indexOf("{");
    const bodies = text.indexOf("\n", listAt) + 1;
    const headEnd = bodies + JSON.parse(text.slice(listAt, bodies)).parts[0].stored;
    const flipped = (at) => Buffer.concat([saved.subarray(0, at), Buffer.from([saved[at] ^ 4]), saved.subarray(at + 1)]);
    for (const [what, bytes, told] of [
      ["list", flipped(listAt + 12), /the beginning[\s\S]*damaged/],
      ["head", flipped(bodies + 9), /what was recorded[\s\S]*damaged/],
      ["file", flipped(headEnd + 9), /the part that holds gorse\.csv[\s\S]*damaged/],
      ["cut", saved.subarray(0, saved.length - 5), /the part that holds gorse\.csv[\s\S]*damaged/],
      ["newer", Buffer.from(text.replace("inspection/1", "inspection/2"), "latin1"), /newer Plumbline \(plumbline\.inspection\/2\)/],
      ["empty", Buffer.from("plumbline.inspection/"), /the beginning[\s\S]*damaged/],
    ]) {
      await visit.choose("Result files", writtenFiles({ [`${what}.plumbline`]: bytes }));
      await visit.until(`the words about ${what}`, (wanted) => document.querySelector("#troubles").textContent.includes(`${wanted}.plumbline`), what);
      assert.match(await visit.text("#troubles"), told, what);
      await visit.click("#troubles .trouble:last-child button");
      assert.match((await acts(visit)).join(), /Stays/, what);
    }
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("files brought beside an inspection file: the same ask nothing, changed ones are named, others come in as new", async () => {
  const visit = await visitChromium();
  try {
    await begun(visit, { "gorse.csv": TABLE, "elm.csv": OTHER });
    await noted(visit);
    await visit.click("#keep-open");
    const saved = await visit.downloaded("inspection.plumbline", () => visit.click("#keep-download"));
    await visit.click("#keep-close");
    await visit.event(/^Closed/);
    await visit.until("no copy", async () => (await indexedDB.databases()).length === 0);
    await visit.choose("Result files", writtenFiles({ "x.plumbline": saved, "gorse.csv": TABLE.replace("12.345678", "99"), "elm.csv": OTHER, "fir.csv": TABLE.replaceAll("GORSELOT", "FIRLOT") }));
    await visit.event(/1 of 1 file read/);
    assert.match(await visit.text("#troubles"), /changed since[\s\S]*gorse\.csv/);
    assert.equal(await visit.count("#troubles .trouble"), 1);
    await visit.goTo("came-in");
    assert.deepEqual(await visit.evaluate(() => [...document.querySelectorAll(".source-name")].map((one) => one.textContent)), ["elm.csv", "fir.csv", "gorse.csv"]);
    await visit.goTo("write");
    assert.match((await visit.downloaded("findings.json", () => visit.click("#save-findings-json"))).toString(), /12\.345678/);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("a file over the bound is not copied; it is asked for again, another one is not taken for it, and the right one is", async () => {
  const rows = ["Sample,Part,Material,Lot,Supplier,Class,Pb mg/kg,Pb u (1s),Remark"];
  const remark = "r".repeat(8000);
  for (let at = 0; at < 8500; at += 1) rows.push(`S-${at},P-1,housing,L-1,Fir,polymer,12,1,${remark}`);
  const [large] = writtenFiles({ "large.csv": rows.join("\n") });
  const [wrong] = writtenFiles({ "large.csv": "Sample,Pb mg/kg\nX,1\n" });
  assert.ok(statSync(large).size > 64 * 1024 * 1024);
  const visit = await visitChromium();
  try {
    await visit.choose("Result files", [large, ...writtenFiles({ "gorse.csv": TABLE })]);
    await visit.event(/2 of 2 files read/);
    const shown = await code(visit);
    await noted(visit);
    await titled(visit, "Large");
    assert.ok((await keptByBrowser(visit)).length < 2_000_000, "its bytes are not in the copy");
    await again(visit);
    await bringBack(visit, shown);
    await visit.event(/is back[\s\S]*1 file has to be chosen again|One file has to be chosen again/);
    await visit.click("#keep-open");
    assert.match(await visit.text("#keep"), /large\.csv/);
    await visit.goTo("came-in");
    await visit.choose("Result files", [wrong]);
    await visit.until("the words", () => /not the file that is waited for/.test(document.querySelector("#troubles").textContent));
    await visit.choose("Result files", [large]);
    await visit.event(/1 of 1 file read/);
    assert.equal(await visit.count("#troubles .trouble"), 0);
    await visit.goTo("came-in");
    assert.deepEqual(await visit.evaluate(() => [...document.querySelectorAll(".source-name")].map((one) => one.textContent)), ["gorse.csv", "large.csv"]);
    assert.match((await acts(visit)).join(), /Large/);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("every step goes back and forth: files in and out, a rule book, settings, acts; by keys, but not while typing", async () => {
  const visit = await visitChromium();
  try {
    const names = () => visit.evaluate(() => [...document.querySelectorAll(".source-name")].map((one) => one.textContent));
    await visit.choose("Settings file", writtenFiles({ "settings.toml": 'schema = "plumbline.settings/1"\ntitle = "From a file"\nplace = "Dock 4"\n' }));
    await visit.event(/^Settings taken/);
    await begun(visit, { "gorse.csv": TABLE });
    await noted(visit);
    await visit.goTo("came-in");
    await visit.choose("Result files", writtenFiles({ "elm.csv": OTHER }));
    await visit.event(/1 of 1 file read/);
    await titled(visit, "By hand");
    await visit.goTo("came-in");
    await visit.evaluate(() => {
      for (const fold of document.querySelectorAll("details.source")) fold.open = true;
    });
    await visit.evaluate(() => [...document.querySelectorAll(".source button")].find((one) => /Take this file out elm/.test(one.textContent)).click());
    await visit.event(/^elm\.csv was taken out/);
    assert.deepEqual(await names(), ["gorse.csv"]);
    assert.match(await visit.text("#taken-out"), /elm\.csv was taken out/);
    await visit.click("#taken-out button");
    await visit.event(/^elm\.csv was put back/);
    assert.deepEqual(await names(), ["elm.csv", "gorse.csv"]);

    await visit.evaluate(() => document.getElementById("heading-came-in").focus());
    const key = async (keys, event) => {
      await visit.press(keys);
      await visit.event(event);
    };
    await key("Control+z", /^Undone: elm\.csv put back/);
    await key("Control+z", /^Undone: elm\.csv taken out/);
    assert.deepEqual(await names(), ["elm.csv", "gorse.csv"]);
    await key("Control+z", /^Undone: title By hand/);
    await key("Control+z", /^Undone: elm\.csv brought in/);
    assert.deepEqual(await names(), ["gorse.csv"]);
    await key("Control+z", /^Undone: gorse\.csv brought in/);
    assert.equal(await visit.text("#summary-says"), "");
    await key("Control+z", /^Undone: settings from settings\.toml/);
    assert.equal(await visit.evaluate(() => document.getElementById("undo").getAttribute("aria-disabled")), "true");
    await key("Control+y", /^Done again: settings from/);
    await key("Control+Shift+z", /^Done again: gorse\.csv brought in/);
    await key("Control+y", /^Done again: elm\.csv/);
    await key("Control+y", /^Done again: title By hand/);
    const made = await acts(visit);
    assert.equal(await visit.evaluate(() => document.getElementById("act-title--").value), "By hand");
    assert.equal(await visit.evaluate(() => document.getElementById("act-place--").value), "Dock 4");
    await visit.page.focus("#act-inspector--");
    await visit.page.keyboard.type("abc");
    await visit.press("Control+z");
    await new Promise((go) => setTimeout(go, 300));
    assert.deepEqual(await acts(visit), made, "while typing, the keys are the field's");
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("a rule book and a photograph go back and forth too, and after bringing back as well", async () => {
  const visit = await visitChromium();
  try {
    const shown = await begun(visit, { "gorse.csv": TABLE });
    await noted(visit);
    const picture = await visit.evaluate(() => {
      const canvas = document.createElement("canvas");
      canvas.width = 40;
      canvas.height = 30;
      canvas.getContext("2d").fillRect(5, 5, 9, 9);
      return canvas.toDataURL("image/png").split(",")[1];
    });
    await visit.goTo("came-in");
    await visit.choose("Result files", writtenFiles({ "S-1.png": Buffer.from(picture, "base64") }));
    await visit.event(/photograph/);
    assert.equal(await visit.count(".photo-card"), 1);
    await visit.click("#undo");
    await visit.event(/^Undone: one photograph brought in/);
    assert.equal(await visit.count(".photo-card"), 0);
    await visit.click("#redo");
    await visit.event(/^Done again: one photograph/);
    await visit.click(".photo-card > .tool");
    await visit.event(/^S-1\.png was taken out/);
    await again(visit);
    await back(visit, shown);
    await visit.goTo("came-in");
    assert.equal(await visit.count(".photo-card"), 0);
    await visit.click("#undo");
    await visit.event(/^Undone: S-1\.png taken out/);
    assert.equal(await visit.count(".photo-card"), 1);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("saving asks the browser first, falls back to a download, and leaves it where the person does", async () => {
  const picker = (does) => `window.showSaveFilePicker = async (wishes) => { window.asked = wishes.suggestedName; ${does} };`;
  const works = picker(`return { createWritable: async () => ({ write: async (blob) => { window.wrote = blob.size; }, close: async () => undefined }) };`);
  for (const [before, outcome] of [[works, "saved"], [picker(`throw new DOMException("no", "AbortError");`), "left"], [picker(`throw new DOMException("no", "NotAllowedError");`), "downloaded"], [picker(`return { createWritable: async () => { throw new Error("stick pulled"); } };`), "downloaded"]]) {
    const visit = await visitChromium({ before });
    try {
      await begun(visit);
      if (outcome === "downloaded") {
        assert.ok((await visit.downloaded("inspection.plumbline", () => visit.click("#keep-save-as"))).length > 500);
      } else {
        await visit.click("#keep-save-as");
        await visit.until("the question", () => window.asked === "inspection.plumbline");
        if (outcome === "saved") {
          await visit.event(/inspection\.plumbline was saved/);
          assert.ok((await visit.evaluate(() => window.wrote)) > 500);
        } else {
          assert.match(await visit.text("#written"), /In the recovery copy/);
        }
      }
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  }
});

test("inspections that were put by are brought back with the newest, and closing one removes its copy alone", async () => {
  const visit = await visitChromium();
  try {
    const shown = await begun(visit, { "gorse.csv": TABLE });
    await noted(visit);
    await titled(visit, "Older");
    await visit.click("#start-again");
    await visit.until("the first screen", () => location.hash === "#start");
    await begun(visit, { "elm.csv": OTHER }).catch(() => undefined);
    await titled(visit, "Newer");
    await again(visit);
    await visit.until("both", () => document.querySelectorAll("#found-list li").length === 2);
    await bringBack(visit, shown);
    await visit.event(/^2 inspections are back/);
    assert.match((await acts(visit)).join(), /Newer/);
    await visit.click("#bring-back");
    await visit.event(/inspection before is back/);
    assert.match((await acts(visit)).join(), /Older/);
    await visit.click("#keep-open");
    await visit.click("#keep-close");
    await visit.event(/^Closed/);
    await again(visit);
    await visit.until("the other", () => document.querySelectorAll("#found-list li").length === 1);
    await back(visit, shown);
    assert.match((await acts(visit)).join(), /Newer/);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("two windows that bring back one inspection do not overwrite each other", async () => {
  const profile = ownFolder();
  const visit = await visitChromiumKept(profile);
  try {
    const shown = await begun(visit);
    await noted(visit);
    await titled(visit, "Common");
    await again(visit);
    const second = await visit.secondPage();
    await second.page.goto(visit.page.url().split("#")[0]);
    await back(second, shown);
    await back(visit, shown);
    await titled(visit, "Window one");
    await titled(second, "Window two");
    assert.equal(await second.text("#written"), "In the recovery copy");
    await second.page.close();
    await again(visit);
    await visit.until("both", () => document.querySelectorAll("#found-list li").length === 2);
    await bringBack(visit, shown);
    await visit.event(/^2 inspections are back/);
    assert.match((await acts(visit)).join(), /Common.*Window two/);
    await visit.click("#bring-back");
    await visit.event(/inspection before is back/);
    assert.match((await acts(visit)).join(), /Common.*Window one/);
  } finally {
    await visit.close();
  }
});

for (const { name, visit: open } of browsers) {
  test(`in ${name} a stick that is pulled takes nothing with it that came in`, async () => {
    const visit = await open();
    try {
      const [pulled, cut] = writtenFiles({ "gorse.csv": TABLE, "elm.csv": OTHER });
      await visit.choose("Result files", [pulled, cut]);
      await visit.event(/2 of 2 files read/);
      await visit.until("the copy", () => document.getElementById("keep-code") !== null);
      await noted(visit);
      unlinkSync(pulled);
      truncateSync(cut, 90);
      // A settings file has every file read again.
      await visit.choose("Settings file", writtenFiles({ "settings.toml": 'schema = "plumbline.settings/1"\n' }));
      await visit.event(/settings\.toml/);
      await visit.goTo("came-in");
      await visit.until("a notice for each", () => document.querySelectorAll("#troubles .trouble").length === 2);
      for (const said of [/no longer be read from where it came from/, /gorse\.csv/, /elm\.csv/]) assert.match(await visit.text("#troubles"), said);
      const counts = await visit.evaluate(() => document.querySelector("#summary-counts").textContent);
      assert.match(counts, /4 readings/, counts);
      assert.equal(await visit.evaluate(() => /could not be read/.test(document.body.innerText)), false, "nothing is called unreadable");
    } finally {
      await visit.close();
    }
  });
}

test("what stands about keeping is clean for axe-core, fits a narrow window and can be pressed with gloves, light and dark", async () => {
  const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
  for (const scheme of ["light", "dark"]) {
    const visit = await visitChromium({ width: 360, scheme });
    const clean = async (where) => {
      await visit.evaluate(axe);
      const found = await visit.evaluate(async () => (await window.axe.run(document, { resultTypes: ["violations"] })).violations.map((one) => `${one.id}: ${one.nodes.map((node) => node.target.join(" ")).slice(0, 3).join(" | ")}`));
      assert.deepEqual(found, [], `${where}, ${scheme}`);
      const small = await visit.evaluate(() => [...document.querySelectorAll("#keep button, #keep summary, #found button, #found input, #leave label")].filter((one) => one.checkVisibility()).map((one) => [one.id || one.textContent, one.getBoundingClientRect()]).filter(([, box]) => box.height < 43.5 || box.width < 43.5).map(([name]) => name));
      assert.deepEqual(small, [], `${where}, ${scheme}`);
      assert.ok((await visit.evaluate(() => document.documentElement.scrollWidth)) <= 360, `${where} fits`);
    };
    try {
      await begun(visit);
      await visit.until("the code in sight", () => {
        const box = document.getElementById("keep-code").getBoundingClientRect();
        return box.top >= 0 && box.bottom <= innerHeight;
      });
      await clean("a new code");
      await noted(visit);
      assert.equal(await visit.evaluate(() => document.activeElement.id), "keep-open");
      await visit.press("Enter");
      await visit.until("the panel", () => document.activeElement.id === "keep-heading");
      await visit.evaluate(() => (document.getElementById("keep-threats").open = true));
      await clean("the panel");
      await again(visit);
      await bringBack(visit, "222");
      await visit.until("the refusal", () => document.activeElement.id === "found-code" && !document.getElementById("found-refusal").hidden);
      await clean("the first screen");
    } finally {
      await visit.close();
    }
  }
});
