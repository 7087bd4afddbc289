// How the table of a million moves: frames while it scrolls, and how long sorting, filtering and grouping take.
//
//   node tests/browser/bench/scrolling.mjs [--rows 1000000] [--browser Chromium|Firefox] [--table FILE]
//
// It measures and prints, and asserts nothing: its figures are those of the machine it runs on. Frames are the intervals between
// animation frames, scripts the time the page itself worked in one (what a frame leaves to the browser), long tasks those that the
// browser calls so (over 50 ms; only Chromium tells). A bare list comes first: no table can be smoother than that on the same machine.
// With --only-scrolling, no questions are timed.

import { execFileSync } from "node:child_process";
import { existsSync } from "node:fs";
import { join } from "node:path";
import { browsers, buildPrograms, ownFolder, top } from "../drive.mjs";

const given = (name, otherwise) => {
  const at = process.argv.indexOf(`--${name}`);
  return at < 0 ? otherwise : process.argv[at + 1];
};
const rows = Number(given("rows", "1000000"));
const only = given("browser", "");
const PATIENCE = 600_000;

function table() {
  const named = given("table", "");
  if (named !== "" && existsSync(named)) return named;
  buildPrograms();
  const file = named !== "" ? named : join(ownFolder(), "table.csv");
  const tool = join(process.env.CARGO_TARGET_DIR || join(top, "target"), "debug", "plumbline-tool");
  execFileSync(tool, ["invent-table", "--rows", String(rows), "--out", file], { stdio: "inherit" });
  return file;
}

const quantile = (sorted, share) => sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0;
const figures = (list) => {
  const sorted = [...list].sort((a, b) => a - b);
  return `p50 ${quantile(sorted, 0.5).toFixed(1)}  p95 ${quantile(sorted, 0.95).toFixed(1)}  max ${(sorted.at(-1) ?? 0).toFixed(1)} ms`;
};

/** In the page: watches frames until told to stop. */
const watchFrames = () => {
  const seen = { frames: [], scripts: [], long: [], going: true };
  window.plumblineFrames = seen;
  let last = performance.now();
  const frame = (now) => {
    if (!seen.going) return;
    seen.frames.push(now - last);
    last = now;
    requestAnimationFrame(frame);
  };
  requestAnimationFrame(frame);
  // The page's own work of a frame: everything it does in the callbacks it asks for.
  if (window.plumblineReal === undefined) {
    window.plumblineReal = window.requestAnimationFrame.bind(window);
    window.requestAnimationFrame = (work) =>
      window.plumblineReal((now) => {
        const begun = performance.now();
        work(now);
        window.plumblineFrames?.scripts.push(performance.now() - begun);
      });
  }
  try {
    seen.observer = new PerformanceObserver((list) => seen.long.push(...list.getEntries().map((one) => one.duration)));
    seen.observer.observe({ type: "longtask" });
  } catch {
    seen.observer = null;
  }
};
const frames = () => {
  const seen = window.plumblineFrames;
  seen.going = false;
  seen.observer?.disconnect();
  const filled = [...document.querySelectorAll(".grid-body [role=row]:not(.grid-parked)")];
  return { frames: seen.frames.slice(2), scripts: seen.scripts, long: seen.long, empty: filled.filter((row) => row.dataset.full !== "yes").length, live: filled.length };
};

/** What the page's thread has worked so far, in seconds of processor time: other programs on the machine don't count. Only Chromium tells. */
async function worked(visit) {
  if (visit.page.context === undefined) return null;
  visit.devtools ??= await visit.page.context().newCDPSession(visit.page);
  if (visit.devtools.begun === undefined) {
    await visit.devtools.send("Performance.enable", { timeDomain: "threadTicks" });
    visit.devtools.begun = true;
  }
  const { metrics } = await visit.devtools.send("Performance.getMetrics");
  const of = (name) => metrics.find((one) => one.name === name)?.value ?? 0;
  return { all: of("TaskDuration"), script: of("ScriptDuration"), style: of("RecalcStyleDuration"), layout: of("LayoutDuration") };
}

async function moved(visit, name, move) {
  const before = await worked(visit);
  await visit.evaluate(watchFrames);
  await move();
  const seen = await visit.evaluate(frames);
  const after = await worked(visit);
  console.log(`  ${name.padEnd(26)} frames ${String(seen.frames.length).padStart(4)}: ${figures(seen.frames)} | scripts ${figures(seen.scripts)} | long tasks ${seen.long.length} | rows waiting at the end ${seen.empty} of ${seen.live}`);
  if (before === null || after === null) return;
  const each = (part) => (((after[part] - before[part]) * 1000) / Math.max(1, seen.frames.length)).toFixed(1);
  console.log(`  ${"".padEnd(26)} processor time a frame: ${each("all")} ms, of it scripts ${each("script")}, style ${each("style")}, layout ${each("layout")}`);
}

const pause = (ms) => new Promise((go) => setTimeout(go, ms));

async function wheel(visit, by) {
  if (visit.page.mouse.wheel.length >= 2) await visit.page.mouse.wheel(0, by);
  else await visit.page.mouse.wheel({ deltaY: by });
}

/** The floor on this machine: a list of plain text, nothing but what the browser scrolls by itself. */
async function bareList(open) {
  const visit = await open();
  try {
    await visit.page.goto("about:blank");
    await visit.evaluate(() => {
      const box = document.createElement("div");
      box.style.cssText = "position:fixed;inset:120px 17px auto;height:630px;overflow:auto;font:14px sans-serif";
      for (let row = 0; row < 3000; row += 1) {
        const line = document.createElement("div");
        line.style.cssText = "display:grid;grid-template-columns:repeat(13,132px);height:44px";
        for (let column = 0; column < 13; column += 1) {
          const cell = document.createElement("div");
          cell.textContent = `${row} ${column} BL 12 \u00b1 3`;
          line.append(cell);
        }
        box.append(line);
      }
      document.body.append(box);
    });
    await visit.page.mouse.move(600, 400);
    console.log(" a bare list of 3000 rows");
    await moved(visit, "wheel, 100 notches", () => notches(visit));
  } finally {
    await visit.close();
  }
}

async function notches(visit) {
  for (let notch = 0; notch < 100; notch += 1) {
    await wheel(visit, 120);
    await pause(16);
  }
}

async function scrolling(visit, about) {
  console.log(` ${about}`);
  const box = await visit.evaluate(() => {
    const scroll = document.querySelector(".grid-scroll");
    scroll.scrollIntoView({ block: "center" });
    const { x, y, width, height } = scroll.getBoundingClientRect();
    return { x, y, width, height };
  });
  await visit.page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await moved(visit, "wheel, 100 notches", () => notches(visit));
  await visit.evaluate(() => document.querySelector(".grid-body [role=row]:not(.grid-parked) [role=gridcell]").click());
  // A press on a reading opens it, which is another piece of work than moving through the table.
  await pause(1000);
  await visit.evaluate(() => document.getElementById("detail-close").click());
  await pause(500);
  await moved(visit, "keys, 60 arrows", async () => {
    for (let step = 0; step < 60; step += 1) await visit.press("ArrowDown");
  });
  await moved(visit, "keys, 30 pages", async () => {
    for (let step = 0; step < 30; step += 1) await visit.press("PageDown");
  });
  // A hand on the bar: the place it stands for is set in every frame, as a dragging does.
  await moved(visit, "the bar, end to end in 2 s", () =>
    visit.evaluate(
      () =>
        new Promise((done) => {
          const scroll = document.querySelector(".grid-scroll");
          const end = scroll.scrollHeight - scroll.clientHeight;
          const begun = performance.now();
          const step = () => {
            const share = (performance.now() - begun) / 2000;
            scroll.scrollTop = Math.min(1, share) * end;
            if (share < 1) setTimeout(step, 8);
            else setTimeout(done, 200);
          };
          step();
        }),
    ),
  );
}

/** From asking to the first answered row on the screen. */
async function timed(visit, name, change) {
  const took = await visit.evaluate(
    async ([id, value]) => {
      const control = document.getElementById(id);
      const before = window.plumblineOrders ?? 0;
      const begun = performance.now();
      control.value = value;
      control.dispatchEvent(new Event(control.tagName === "SELECT" ? "change" : "input", { bubbles: true }));
      while ((window.plumblineOrders ?? 0) === before) await new Promise((go) => setTimeout(go, 4));
      const answered = performance.now() - begun;
      const ready = () => [...document.querySelectorAll(".grid-body [role=row]:not(.grid-parked)")].every((row) => row.dataset.full === "yes");
      while (!ready()) await new Promise((go) => setTimeout(go, 4));
      return [answered, performance.now() - begun];
    },
    change,
  );
  console.log(`  ${name.padEnd(34)} answered ${took[0].toFixed(0).padStart(5)} ms, on the screen ${took[1].toFixed(0).padStart(5)} ms`);
}

const WATCH_ORDERS = `
  const Real = Worker;
  window.Worker = class extends Real {
    constructor(...all) {
      super(...all);
      this.addEventListener("message", ({ data }) => {
        if (data.kind === "order") window.plumblineOrders = (window.plumblineOrders ?? 0) + 1;
      });
    }
  };
`;

const file = table();
for (const { name, visit: open } of browsers) {
  if (only !== "" && only !== name) continue;
  console.log(name);
  await bareList(open);
  const visit = await open(name === "Chromium" ? { before: WATCH_ORDERS } : {});
  try {
    if (name === "Firefox") {
      await visit.page.evaluateOnNewDocument(WATCH_ORDERS);
      await visit.page.reload();
    }
    console.log(` ${rows} rows`);
    const begun = Date.now();
    await visit.choose("Result files", [file]);
    const end = Date.now() + PATIENCE;
    while (!(await visit.evaluate(() => document.querySelector("#summary-says").textContent !== "" && document.querySelector("#work").hidden))) {
      if (Date.now() > end) throw new Error("the review takes too long");
      await pause(200);
    }
    console.log(` read and reviewed in ${((Date.now() - begun) / 1000).toFixed(1)} s`);
    await visit.goTo("says");
    await visit.until("rows", () => document.querySelector('.grid-body [data-full="yes"]') !== null);
    await scrolling(visit, "no groups");
    if (!process.argv.includes("--only-scrolling")) console.log(" questions");
    for (const [what, ...change] of [
      ["sorted by sample", "filter-sort", "id"],
      ["sorted by part", "filter-sort", "part"],
      ["sorted by Pb", "filter-sort", "Pb"],
      ["sorted by the halogen total", "filter-sort", "total"],
      ["sorted by the worst outcome", "filter-sort", "worst"],
      ["text “S99”", "filter-text", "S99"],
      ["text “works 3 p12”", "filter-text", "works 3 p12"],
      ["no text", "filter-text", ""],
      ["part “p1”", "filter-part", "p1"],
      ["no part", "filter-part", ""],
      ["within 1 sigma of an edge", "filter-margin", "1"],
      ["no margin", "filter-margin", ""],
      ["outcome OL", "filter-outcome", "OL"],
      ["any outcome", "filter-outcome", ""],
      ["grouped by part", "filter-group", "part"],
      ["grouped by supplier", "filter-group", "supplier"],
      ["grouped by lot", "filter-group", "lot"],
    ]) {
      if (what === "grouped by lot" || !process.argv.includes("--only-scrolling")) await timed(visit, what, change);
    }
    await visit.click("#unfold-all");
    await visit.until("rows", () => document.querySelector('.grid-body [data-kind="reading"][data-full="yes"]') !== null);
    await scrolling(visit, "grouped by lot, all unfolded");
  } finally {
    await visit.close();
  }
}
