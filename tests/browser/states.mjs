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
  ["came-in", async (visit) => {
    await visit.goTo("came-in");
    await give(visit, "settings-file", [checked.settings]);
    await visit.until("the settings", () => document.querySelector("#summary-event").textContent !== "" && document.querySelector("#work").hidden);
    await give(visit, "result-files", [...open.results.slice(-1), ...checked.results, ...writtenFiles({ "odd.csv": ODD, "headless.csv": HEADLESS, "BR-001.png": PICTURE })]);
    await visit.until("the readings", () => /\d/.test(document.querySelector("#summary-counts").textContent) && document.querySelector("#work").hidden);
  }],
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
];
