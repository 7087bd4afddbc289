// Every place of the page in every state a person meets, on one load, in an order in which each follows from the last.
// Screenshots and the accessibility specs walk the same list.

import { deliveries, oneDigitOther, writtenFiles } from "./drive.mjs";

/** One with something open, and one with certified check readings: their tables and charts are on show too. */
const open = deliveries().find((delivery) => delivery.name.startsWith("02-"));
const checked = deliveries().find((delivery) => delivery.name.includes("check-standard"));

// Columns of every kind, a unit nobody stated, dates of two readings, ids to be cut.
const ODD = `Sample,Kxyz,Pb,Pb dev,Cd LOD,Date,Uxyz\n${[1, 2, 3, 4, 5, 6, 7, 8, 9, 10].map((n) => `P7-L13-${n},a,${n * 12},${n},2,0${(n % 9) + 1}/03/2026,fine`).join("\n")}\n`;
const HEADLESS = "alpha,beta\n1,2\n";

// One grey point: the smallest picture there is.
const PICTURE = Buffer.from("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNoAAAAggCBd81ytgAAAABJRU5ErkJggg==", "base64");

/** Gives files to an input by its id, whatever the language of its name. */
export async function give(visit, id, files) {
  await visit.putFiles(await visit.page.$(`#${id}`), files);
}

const quiet = (visit) => visit.until("the work to be over", () => document.querySelector("#summary-says").textContent !== "" && document.querySelector("#work").hidden);

/** Opens every fold, and those that are made when another is opened. */
export async function openFolds(visit) {
  await visit.until("every fold to be open", () => {
    const shut = [...document.querySelectorAll("details")].filter((fold) => !fold.open && fold.checkVisibility());
    for (const fold of shut) fold.open = true;
    return shut.length === 0 && document.querySelector("[data-place]:not([hidden]) [aria-busy]") === null;
  });
}

async function shutFolds(visit) {
  await visit.evaluate(() => {
    for (const fold of document.querySelectorAll("details[open]")) fold.open = false;
  });
}

const proved = (visit, word) => visit.until(word, (wanted) => document.querySelector(`.proved[data-word="${wanted}"]`) !== null && document.querySelector("#work").hidden, word);

let report = "";
let code = "";

const event = (visit) => visit.text("#summary-event");

/** Does it, and waits until the page has said that it is done. */
async function told(visit, doing) {
  const before = await event(visit);
  await doing();
  await visit.until("word of it", (was) => document.querySelector("#summary-event").textContent !== was && document.querySelector("#work").hidden, before);
}

/** The same exercises on every visit. */
const SEED = "4711";

async function inRoom(visit, view) {
  await visit.evaluate((hash) => {
    location.hash = hash;
  }, `#train/${view}/${SEED}`);
  await visit.until(view, (wanted) => document.getElementById("train").dataset.view === wanted && document.querySelector("#train [aria-busy]") === null, view);
  // Made one after another, all of them with an answer of the program.
  await visit.until("what is made", () => document.querySelector(".train-exercises") === null || (!document.getElementById("exercise-more").hidden && document.querySelector(".movable .outcome") !== null && document.querySelector(".train-look h2") !== null));
}

/** Answers what stands open, the first choice first, and waits for each to be checked. */
async function answerAll(visit) {
  for (const id of await visit.evaluate(() => [...document.querySelectorAll(".train-exercise")].map((one) => one.id))) {
    await visit.evaluate((of) => document.querySelector(`#${of} input[type=radio]`).click(), id);
    await visit.click(`#${id}-check`);
    await visit.until(`${id} to be checked`, (of) => !document.getElementById(`${of}-result`).hidden, id);
  }
}

/** Loads the page anew, as after a crash: no question whether to leave stands in the way. */
async function loadAgain(visit) {
  visit.page.on("dialog", (dialog) => void dialog.accept());
  await visit.reload();
}

/** Each state by its name, and how a person comes to it from the one before. */
export const STATES = [
  ["start", async () => {}],
  ["guide", async (visit) => {
    await visit.click("#open-guide");
    await visit.until("the guide", () => document.querySelector("dialog[open]") !== null);
    await openFolds(visit);
  }],
  ["keys", (visit) => visit.click("#guide-keys")],
  ["guide-shut", async (visit) => {
    while ((await visit.count("dialog[open]")) > 0) await visit.press("Escape");
  }],
  ["came-in-empty", (visit) => visit.goTo("came-in")],
  ["trust-empty", (visit) => visit.goTo("trust")],
  ["says-empty", (visit) => visit.goTo("says")],
  ["next-empty", (visit) => visit.goTo("next")],
  ["write-empty", (visit) => visit.goTo("write")],
  ["keep-code", async (visit) => {
    await visit.goTo("came-in");
    await give(visit, "settings-file", [checked.settings]);
    await visit.until("the settings", () => document.querySelector("#summary-event").textContent !== "" && document.querySelector("#work").hidden);
    await give(visit, "result-files", [...open.results.slice(-1), ...checked.results, ...writtenFiles({ "odd.csv": ODD, "headless.csv": HEADLESS, "BR-001.png": PICTURE })]);
    await visit.until("the readings", () => /\d/.test(document.querySelector("#summary-counts").textContent) && document.querySelector("#work").hidden);
    await visit.until("the code", () => document.getElementById("keep-noted") !== null);
    code = await visit.text("#keep-code");
  }],
  // Not by the mouse: it would rest on what comes into its place.
  ["came-in", (visit) => visit.evaluate(() => document.getElementById("keep-noted").click())],
  ["came-in-open", async (visit) => {
    await openFolds(visit);
    await visit.until("the rows of every table", () => [...document.querySelectorAll(".mapping tbody, [id^=act-pointed] tbody")].every((body) => body.rows.length > 0));
  }],
  ["work", async (visit) => {
    await shutFolds(visit);
    // Held still: real work is over before it could be looked at.
    await visit.evaluate(() => {
      document.getElementById("work").hidden = false;
      document.getElementById("work-text").textContent = "readings.csv: 43 000";
      document.getElementById("work-bar").style.setProperty("--done", "43%");
      document.getElementById("work-bar").setAttribute("aria-valuenow", "43");
    });
  }],
  ["trouble", async (visit) => {
    await visit.evaluate(() => {
      document.getElementById("work").hidden = true;
    });
    await give(visit, "settings-file", writtenFiles({ "settings.toml": 'schema = "plumbline.settings/1"\nlots = [\n' }));
    await visit.until("the trouble", () => document.querySelector(".trouble") !== null);
  }],
  ["trust", async (visit) => {
    await visit.click(".trouble button");
    await visit.goTo("trust");
    await shutFolds(visit);
  }],
  ["trust-open", openFolds],
  ["says", async (visit) => {
    await visit.goTo("says");
    await shutFolds(visit);
  }],
  ["says-detail", async (visit) => {
    await visit.click(".grid-body [role=gridcell]");
    await visit.until("the detail", () => !document.getElementById("detail").hidden);
    await openFolds(visit);
  }],
  ["term", async (visit) => {
    await visit.click(".lot .term-word");
    await visit.until("the term's card", () => document.getElementById("term-card") !== null);
  }],
  ["next", async (visit) => {
    await visit.press("Escape");
    await visit.goTo("next");
    await shutFolds(visit);
  }],
  ["next-open", openFolds],
  ["write", async (visit) => {
    await visit.goTo("write");
    await shutFolds(visit);
  }],
  ["write-open", async (visit) => {
    await openFolds(visit);
    report = (await visit.downloaded("report.html", () => visit.click("#save-report-html"))).toString("utf8");
  }],
  ["after-undo", async (visit) => {
    const before = await visit.text("#summary-event");
    await visit.click("#undo");
    await visit.until("the undoing", (was) => document.querySelector("#summary-event").textContent !== was && document.querySelector("#work").hidden, before);
    await quiet(visit);
  }],
  // An act taken back is struck through, and the taking back stands below it.
  ["taken-back", async (visit) => {
    await told(visit, () => visit.click("#write .act button"));
    await visit.until("the act", () => document.querySelector(".act-undone") !== null);
  }],
  ["prove", async (visit) => {
    await visit.evaluate(() => {
      location.hash = "#prove";
    });
    await visit.until("the place", () => !document.getElementById("place-prove").hidden);
  }],
  ["prove-agrees", async (visit) => {
    await give(visit, "prove-report", writtenFiles({ "report.html": report }));
    await proved(visit, "self");
    await openFolds(visit);
  }],
  ["prove-refused", async (visit) => {
    await visit.type("#prove-digest", "0123");
    await visit.click("#prove-with-digest");
    await visit.until("the refusal", () => !document.getElementById("prove-digest-refusal").hidden);
  }],
  ["prove-contradicted", async (visit) => {
    await visit.type("#prove-digest", "0123456789abcdef".repeat(4));
    await visit.click("#prove-with-digest");
    await proved(visit, "contradicted");
    await openFolds(visit);
  }],
  ["prove-differs", async (visit) => {
    await give(visit, "prove-report", writtenFiles({ "changed.html": oneDigitOther(report, '<td class="n">') }));
    await proved(visit, "differs");
    await openFolds(visit);
  }],
  ["door-change", async (visit) => {
    await visit.goTo("came-in");
    await visit.click("#door-change");
    await visit.until("the doors", () => !document.getElementById("go-on-ship").hidden);
  }],
  ["ship", async (visit) => {
    await told(visit, () => visit.click("#go-on-ship"));
    await visit.until("the place", () => !document.getElementById("place-came-in").hidden && !document.getElementById("self-check").hidden);
    await shutFolds(visit);
  }],
  ["ship-write", async (visit) => {
    await visit.goTo("write");
    await visit.until("the sheet first", () => document.querySelector(".takes > li")?.dataset.file === "self-check.html");
  }],
  ["keep", async (visit) => {
    await visit.click("#door-change");
    await told(visit, () => visit.click("#go-on-inspect"));
    await visit.click("#keep-open");
    await openFolds(visit);
  }],
  ["keep-nothing", async (visit) => {
    await told(visit, () => visit.click("#keep-nothing"));
  }],
  ["found", async (visit) => {
    await told(visit, () => visit.click("#keep-nothing"));
    await visit.until("a copy", () => document.getElementById("keep-code") !== null);
    code = await visit.text("#keep-code");
    await loadAgain(visit);
    await visit.until("the offer", () => document.getElementById("found-code") !== null);
  }],
  ["found-refused", async (visit) => {
    await visit.type("#found-code", "A2CD-EFGH-JKMN");
    await visit.click("#found-bring-back");
    await visit.until("the refusal", () => !document.getElementById("found-refusal").hidden);
  }],
  ["restored", async (visit) => {
    await visit.type("#found-code", code);
    await told(visit, () => visit.click("#found-bring-back"));
    await visit.until("a place of the inspection", () => document.getElementById("place-start").hidden);
    await shutFolds(visit);
  }],
  ["not-kept", async (visit) => {
    await visit.evaluate(() => {
      IDBObjectStore.prototype.add = () => {
        throw new DOMException("no room", "QuotaExceededError");
      };
    });
    await told(visit, () => visit.click("#undo"));
    await visit.until("what is not kept", () => document.getElementById("keep-unsaved") !== null);
  }],
  ["tour", async (visit) => {
    await visit.click("#keep-open");
    await visit.click("#open-guide");
    await visit.click("#guide-tour");
    await visit.until("the first stop", () => document.getElementById("tour-next") !== null && document.querySelector("#work").hidden);
  }],
  ["tour-trust", async (visit) => {
    await visit.click("#tour-next");
    await visit.click("#tour-next");
    await visit.until("the third stop", () => !document.getElementById("place-trust").hidden && document.querySelector(".tour-target") !== null);
  }],
  ["tour-end", async (visit) => {
    while ((await visit.count("#tour-end")) === 0) {
      const before = await visit.text("#tour");
      await visit.click("#tour-next");
      await visit.until("the next stop", (was) => (document.getElementById("tour")?.innerText ?? was) !== was, before);
    }
  }],
  ["train", async (visit) => {
    await visit.click("#tour-end");
    await visit.until("the first screen", () => !document.getElementById("place-start").hidden && document.querySelector("#work").hidden);
    await inRoom(visit, "home");
  }],
  ["train-lesson", async (visit) => {
    await inRoom(visit, "sigma");
    await openFolds(visit);
  }],
  ["train-refused", async (visit) => {
    await visit.click("#exercise-1-check");
    await visit.until("the refusal", () => !document.getElementById("exercise-1-refusal").hidden);
  }],
  ["train-decided", answerAll],
  ["train-lots", async (visit) => {
    await inRoom(visit, "sampling");
    await answerAll(visit);
  }],
  ["train-ruler", (visit) => inRoom(visit, "ruler")],
  ["train-sheet", async (visit) => {
    await inRoom(visit, "sheet");
    await visit.until("the sheet", () => document.querySelector(".score-sheet") !== null);
    await visit.type("#sheet-name", "T. Trainee");
  }],
  ["train-begun", (visit) => inRoom(visit, "home")],
  ["train-delivery", async (visit) => {
    await visit.click("#train-fresh-open");
    await visit.until("the delivery", () => !document.getElementById("place-says").hidden && document.querySelector("#summary-says").textContent !== "" && document.querySelector("#work").hidden);
  }],
];
