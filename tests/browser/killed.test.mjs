// The browser is killed, its whole tree of processes at once, at random moments of an inspector's day. Opened again, every
// step that the page had told as taken is there, in its order.
//
// PLUMBLINE_KILLS says how often (5 unless told otherwise); PLUMBLINE_KILL_SEED repeats a run.

import assert from "node:assert/strict";
import { rmSync } from "node:fs";
import { test } from "node:test";
import { cleanDelivery, ownFolder, until, visitChromium, visitChromiumKept, writtenFiles } from "./drive.mjs";

const KILLS = Number(process.env.PLUMBLINE_KILLS || 5);
const SEED = Number(process.env.PLUMBLINE_KILL_SEED || (Date.now() & 0xffffff));

/** Numbers from a seed (mulberry32), so that a run can be repeated. */
function randomFrom(seed) {
  let at = seed >>> 0;
  return () => {
    at = (at + 0x6d2b79f5) >>> 0;
    let t = Math.imul(at ^ (at >>> 15), at | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

// The page tells what it tells to whoever drives it, at the moment it tells it.
const TELLS = `
  addEventListener("DOMContentLoaded", () => {
    const tell = (id, mark) => {
      const node = document.getElementById(id);
      let last = "";
      const look = () => {
        const text = node.textContent;
        if (text !== "" && text !== last) console.log(mark + (last = text));
      };
      new MutationObserver(look).observe(node, { childList: true, characterData: true, subtree: true });
    };
    tell("summary-event", "TOLD ");
    tell("keep-body", "PANEL ");
  });
`;

const EXTRA = "Sample,Part,Material,Lot,Supplier,Class,Pb mg/kg,Pb u (1s)\r\nS-1,P-1,housing,G-1,Gorse Works,polymer,12,1\r\nS-2,P-2,clip,G-1,Gorse Works,polymer,900,40\r\n";

/** The day: each step is pressed as a person would, without waiting for what becomes of it. */
async function day(visit, random) {
  const delivery = cleanDelivery();
  await visit.choose("Settings file", [delivery.settings]);
  await visit.event(/settings/i);
  await visit.choose("Result files", delivery.results);
  await visit.event(/read/);
  await until("the code", async () => visit.code !== null);
  await visit.evaluate(() => document.getElementById("keep-noted")?.click());
  await visit.choose("Result files", writtenFiles({ "extra.csv": EXTRA }));
  await visit.event(/read/);
  await visit.goTo("write");
  for (let n = 1; ; n += 1) {
    const kind = Math.floor(random() * 8);
    const typed = async (act, text) => {
      await visit.goTo("write");
      await visit.type(`#act-${act}--`, text);
      await visit.press("Enter");
    };
    if (kind === 0) await typed("place", `Dock ${n}`);
    else if (kind === 1) await typed("inspector", `Inspector ${n}`);
    else if (kind === 2) await visit.evaluate(() => document.getElementById("undo").click());
    else if (kind === 3) await visit.evaluate(() => document.getElementById("redo").click());
    else if (kind === 4) {
      // Taken out, or put back where it was taken out.
      await visit.goTo("came-in");
      await visit.evaluate(() => (document.querySelector("#taken-out button") ?? [...document.querySelectorAll(".source button")].find((one) => /^Take this file out extra/.test(one.textContent)))?.click());
    } else await typed("title", `Title ${n}`);
    await new Promise((go) => setTimeout(go, random() * 60));
  }
}

/** The acts that the settings file of the day brings, as they are listed. */
async function actsOfSettings() {
  const visit = await visitChromium();
  try {
    const delivery = cleanDelivery();
    await visit.choose("Settings file", [delivery.settings]);
    await visit.event(/settings/i);
    await visit.choose("Result files", delivery.results);
    await visit.reviewed();
    await visit.goTo("write");
    return await visit.evaluate(listedActs);
  } finally {
    await visit.close();
  }
}

const listedActs = () => [...document.querySelectorAll("#write .act-text")].map((one) => one.firstChild.textContent);

/** The acts that must be there after these steps were told, in their order. */
function actsAfter(told, ofSettings) {
  const acts = [];
  const TOOK_BACK = null;
  for (const text of told) {
    const taken = /^Taken: (.*)$/s.exec(text)?.[1];
    if (/^Settings taken/.test(text)) acts.push(...ofSettings);
    else if (taken !== undefined) acts.push(taken);
    // Going back or forth over acts makes acts; over files it makes none.
    else if (/^(Undone|Done again): (title|place|inspector) /.test(text)) acts.push(TOOK_BACK);
    else if (/^(Undone|Done again): settings /.test(text)) acts.push(...ofSettings.map(() => TOOK_BACK));
  }
  return acts;
}

/** What was told must be the beginning of what is found; what is found may be further, by what was finished and not yet told. */
function compare(told, found, ofSettings, where) {
  const wanted = actsAfter(told, ofSettings);
  const tale = `told: ${told.join(" | ")}\nfound: ${found.acts.join(" | ")}`;
  for (const [at, want] of wanted.entries()) {
    const got = found.acts[at] ?? "not there";
    assert.ok(want === null ? got.startsWith("took back") : got === want, `${where}: act ${at + 1}, told as “${want ?? "taken back"}”, is “${got}”\n${tale}`);
  }
  const brought = told.filter((text) => /files? read/.test(text)).length;
  const outs = told.filter((text) => /extra\.csv (was )?taken out/.test(text)).length;
  if (brought > 0 && !told.some((text) => /^Undone: alder/.test(text))) assert.ok(found.files.some((file) => file.startsWith("alder")), `${where}: the delivery's file is lost\n${tale}`);
  if (brought > 1 && outs === 0 && found.acts.length === wanted.length && !told.some((text) => /^Undone: extra/.test(text))) assert.ok(found.files.includes("extra.csv") || found.takenOut, `${where}: the second file is lost\n${tale}`);
  return found.acts.length - wanted.length;
}

test(`no finished step is lost when the browser is killed at ${KILLS} random moments (seed ${SEED})`, async (context) => {
  const random = randomFrom(SEED);
  const ofSettings = await actsOfSettings();
  context.diagnostic(`PLUMBLINE_KILLS=${KILLS} PLUMBLINE_KILL_SEED=${SEED}`);
  let toldInAll = 0;
  let more = 0;
  let beforeAll = 0;
  for (let kill = 0; kill < KILLS; kill += 1) {
    const profile = ownFolder();
    const visit = await visitChromiumKept(profile, { before: TELLS });
    const told = [];
    visit.code = null;
    visit.page.on("console", (message) => {
      const text = message.text();
      if (text.startsWith("TOLD ")) told.push(text.slice(5));
      if (text.startsWith("PANEL ")) visit.code ??= /[2-9A-Y]{4}-[2-9A-Y]{4}-[2-9A-Y]{4}/.exec(text)?.[0] ?? null;
    });
    // Some kills fall into the first steps, most into the work that follows.
    const early = random() < 0.1;
    const after = random() * (early ? 1500 : 6000);
    const working = day(visit, random).catch(() => undefined);
    if (!early) await until("the code", () => visit.code !== null);
    await new Promise((go) => setTimeout(go, after));
    await visit.kill();
    await working;
    await visit.close().catch(() => undefined);

    const steps = told.filter((text) => /^(Taken|Undone|Done again|Settings taken)|was (taken out|put back)|files? read/.test(text));
    toldInAll += steps.length;
    if (visit.code === null) {
      // Nothing was told yet that a code belongs to.
      assert.equal(steps.length, 0, `seed ${SEED}, kill ${kill}: a step was told before the code was shown`);
      beforeAll += 1;
      rmSync(profile, { recursive: true, force: true });
      continue;
    }
    const again = await visitChromiumKept(profile);
    try {
      await again.until("the offer", () => document.getElementById("found-code") !== null);
      await again.type("#found-code", visit.code);
      await again.click("#found-bring-back");
      await again.event(/^The inspection is back/);
      assert.equal(await again.count("#troubles .trouble"), 0, `seed ${SEED}, kill ${kill}: ${await again.text("#troubles")}`);
      await again.goTo("came-in");
      const files = await again.evaluate(() => [...document.querySelectorAll(".source-name")].map((one) => one.textContent));
      // Acts are listed with what they are about: where no file was brought in yet, one is.
      if (files.length === 0) {
        await again.choose("Result files", cleanDelivery().results);
        await again.event(/read/);
      }
      const takenOut = (await again.count("#taken-out")) > 0;
      await again.goTo("write");
      more += compare(told, { files, takenOut, acts: await again.evaluate(listedActs) }, ofSettings, `seed ${SEED}, kill ${kill}, ${Math.round(after)} ms ${early ? "from the start" : "after the code was shown"}`);
    } finally {
      await again.close();
      rmSync(profile, { recursive: true, force: true });
    }
  }
  context.diagnostic(`${KILLS} kills, ${toldInAll} steps told before them, none lost; ${more} acts more were finished and not yet told; ${beforeAll} kills before the first step`);
});
