// What stands round the five places: the steps with their counts, the summary, work under way, troubles, undo, cautions.

import { controlId } from "./acts-given";
import { byId, el, redraw } from "./elements";
import { diagnosticButton } from "./help/diagnostic";
import { bringBack, losesActs, redo, startAgain, undo } from "./inspection";
import { stepText } from "./keep/steps";
import { forgetTrouble } from "./troubles";
import { goTo } from "./place";
import { cameInNeeds } from "./places/came-in";
import { nextNeeds } from "./places/next";
import { nothingReadText } from "./places/nothing-read";
import { saysNeeds } from "./places/says-lots";
import { lessonFrom, openDelivery } from "./places/start";
import { trustNeeds } from "./places/trust";
import { writeNeeds } from "./places/write";
import { state, watch, type PlaceName, type Trouble } from "./state";
import type { Summary } from "../shared/door";
import { between, ENGLISH, say } from "./words";

const STEPS: {
  place: PlaceName;
  /** What is waiting there, in words; empty where nothing is. */
  needs: (summary: Summary) => string;
}[] = [
  { place: "came-in", needs: cameInNeeds },
  { place: "trust", needs: trustNeeds },
  { place: "says", needs: saysNeeds },
  { place: "next", needs: nextNeeds },
  { place: "write", needs: writeNeeds },
];

// Work shorter than this shows no bar: a flash tells nobody anything.
const PATIENCE_MS = 350;

// How long what happened last is news, and how soon after it going elsewhere is a part of it (our choice).
const NEWS_MS = 20_000;
const WITH_IT_MS = 3000;

export function beginShell(): void {
  watch(["place", "summary"], drawSteps);
  watch(["summary", "event", "files"], drawSummary);
  watch(["event"], eventIsNews);
  watch(["place"], () => {
    if (performance.now() - toldAt > WITH_IT_MS) eventIsOld();
  });
  watch(["work"], drawWork);
  watch(["troubles"], drawTroubles);
  watch(["summary", "files", "steps", "undone", "putBy"], drawTools);
  watch(["door", "files", "language"], drawDoor);
  watch(["lesson"], drawLesson);
  watch(["summary"], drawCautions);
  watch(["version"], drawProgram);

  byId("undo").addEventListener("click", () => void undo());
  byId("redo").addEventListener("click", () => void redo());
  byId("start-again").addEventListener("click", () => {
    void startAgain().then(() => goTo("start"));
  });
  byId("bring-back").addEventListener("click", () => {
    void bringBack().then(() => goTo("says"));
  });
  byId("work-cancel").addEventListener("click", () => state.work?.cancel());
  addEventListener("beforeunload", (event) => {
    if (losesActs()) event.preventDefault();
  });
  for (const draw of [drawSteps, drawSummary, drawWork, drawTroubles, drawTools, drawDoor, drawCautions, drawProgram]) draw();
}

function drawSteps(): void {
  const { summary, place } = state;
  const here = STEPS.find((step) => step.place === place);
  // Seen in a narrow window only, where the steps have no room for words; read out there, it would be said twice.
  byId("steps-now").textContent = summary === null || here === undefined ? "" : here.needs(summary);
  redraw(
    byId("steps"),
    el(
      "ol",
      {},
      ...STEPS.map((step, at) => {
        const needs = summary === null ? "" : step.needs(summary);
        return el(
          "li",
          {},
          el(
            "a",
            { id: `step-${step.place}`, href: `#${step.place}`, "aria-current": step.place === place ? "step" : undefined },
            el("span", { class: "step-name" }, el("span", { class: "step-number", "aria-hidden": "true" }, at + 1), " ", el("span", { class: "step-question" }, say(`page-place-${step.place}`))),
            needs === "" ? null : el("span", { class: "step-needs" }, needs),
          ),
        );
      }),
    ),
  );
}

/** Only what changed is written, so that only what changed is read out. */
function put(id: string, text: string): void {
  const node = byId(id);
  if (node.textContent !== text) node.textContent = text;
  node.hidden = text === "";
}

function drawSummary(): void {
  const { summary, event } = state;
  const nothing = summary === null ? null : nothingReadText(summary);
  put("summary-counts", nothing === null ? (summary?.line_counts ?? "") : "");
  put("summary-says", nothing ?? summary?.line_says ?? "");
  put("summary-evidence", nothing === null ? (summary?.line_evidence ?? "") : "");
  put("summary-event", event);
  byId("summary").classList.toggle("summary-full", summary !== null || event !== "");
}

let toldAt = 0;
let ageing = 0;

function eventIsNews(): void {
  toldAt = performance.now();
  clearTimeout(ageing);
  ageing = window.setTimeout(eventIsOld, NEWS_MS);
  const node = byId("summary-event");
  node.classList.remove("summary-event-old");
  node.dataset["last"] = `${say("page-event-last")}${between("gap").replace(" ", "\u00a0")}`;
}

/** Told again it would be heard again: only how it looks changes, and the word before it is no part of what is read out. */
function eventIsOld(): void {
  byId("summary-event").classList.add("summary-event-old");
}

let patience = 0;

function drawWork(): void {
  const host = byId("work");
  const { work } = state;
  if (work === null) {
    clearTimeout(patience);
    patience = 0;
    host.hidden = true;
    return;
  }
  if (host.hidden && patience === 0) {
    patience = window.setTimeout(() => {
      host.hidden = state.work === null;
    }, PATIENCE_MS);
  }
  byId("work-text").textContent = work.text;
  const bar = byId("work-bar");
  if (work.total === null) {
    bar.removeAttribute("aria-valuenow");
    bar.classList.add("work-unknown");
    bar.style.removeProperty("--done");
  } else {
    const percent = Math.floor((100 * work.done) / Math.max(work.total, 1));
    bar.setAttribute("aria-valuenow", String(percent));
    bar.classList.remove("work-unknown");
    bar.style.setProperty("--done", `${percent}%`);
  }
}

function drawTroubles(): void {
  redraw(
    byId("troubles"),
    ...state.troubles.map((trouble) =>
      el(
        "article",
        { class: "trouble" },
        el("h2", { id: troubleId(trouble), tabindex: -1 }, trouble.what),
        el(
          "dl",
          { class: "facts" },
          el("dt", {}, say("page-trouble-where")), el("dd", {}, trouble.where),
          el("dt", {}, say("page-trouble-why")), el("dd", {}, trouble.why),
          el("dt", {}, say("page-trouble-todo")), el("dd", {}, trouble.todo),
        ),
        trouble.raw === undefined || trouble.raw === ""
          ? null
          : el("details", { id: `${troubleId(trouble)}-raw`, class: "fold fold-inner raw" }, el("summary", {}, say("page-trouble-raw"), el("span", { class: "heard" }, ` ${trouble.what}`)), el("p", { class: "raw-text", lang: "en" }, trouble.raw)),
        trouble.fault === true ? diagnosticButton(`${troubleId(trouble)}-diagnostic`) : null,
        el("button", { type: "button", class: "tool", on: { click: () => closeTrouble(trouble) } }, say("page-trouble-close"), el("span", { class: "heard" }, ` ${trouble.what}`)),
      ),
    ),
  );
  byId("troubles").hidden = state.troubles.length === 0;
  const fresh = state.troubles.find((trouble) => !told.has(trouble));
  told = new Set(state.troubles);
  if (fresh === undefined) return;
  // Whoever works further down would not see it come.
  const heading = byId(troubleId(fresh));
  heading.focus({ preventScroll: true });
  heading.scrollIntoView({ block: "center" });
}

let told = new Set<Trouble>();

function troubleId(trouble: Trouble): string {
  return controlId("trouble", trouble.key);
}

function closeTrouble(trouble: Trouble): void {
  forgetTrouble(trouble.key);
  const [next] = state.troubles;
  byId(next === undefined ? `heading-${state.place}` : troubleId(next)).focus({ preventScroll: next === undefined });
}

function drawTools(): void {
  const { summary, steps, undone } = state;
  const undoing = steps.at(-1);
  const undoButton = byId<HTMLButtonElement>("undo");
  const redoButton = byId<HTMLButtonElement>("redo");
  const none = summary === null && steps.length === 0 && undone.length === 0;
  undoButton.hidden = none;
  redoButton.hidden = none;
  // aria-disabled keeps the focus where it is when the last act has been undone.
  undoButton.setAttribute("aria-disabled", String(undoing === undefined));
  redoButton.setAttribute("aria-disabled", String(undone.length === 0));
  undoButton.title = undoing === undefined ? "" : stepText(undoing, summary?.acts ?? []);
  byId("start-again").hidden = state.files.length === 0 && none;
  byId("bring-back").hidden = !state.putBy;
}

function drawDoor(): void {
  const { door, files } = state;
  const label = byId("door-label");
  label.hidden = door === null && files.length === 0;
  const invented = files.some((file) => file.invented);
  label.textContent = say(`page-door-label-${invented ? "train" : (door ?? "inspect")}`);
  byId("door-change").hidden = files.length === 0 || invented;
  label.classList.toggle("door-label-plain", !invented && door !== "ship");
  byId("self-check").hidden = invented || door !== "ship";
}

function drawLesson(): void {
  const { lesson } = state;
  const fold = byId<HTMLDetailsElement>("lesson");
  byId("lesson-box").hidden = lesson === null;
  // One that was drawn from a seed has none before it and none after it.
  byId("lesson-steps").hidden = lesson?.fresh === true;
  fold.open = true;
  byId("lesson-title").textContent = lesson === null ? "" : say("page-lesson", { title: lesson.title });
  byId("lesson-story").replaceChildren(...(lesson?.story ?? []).map((paragraph) => el("p", { lang: ENGLISH }, paragraph)));
  const go = (steps: number): void => {
    const button = byId<HTMLButtonElement>(steps < 0 ? "lesson-before" : "lesson-next");
    button.setAttribute("aria-disabled", "true");
    void lessonFrom(steps).then((there) => {
      button.setAttribute("aria-disabled", String(there === null));
      button.onclick = () => {
        if (there !== null) void openDelivery(there);
      };
    });
  };
  if (lesson === null) return;
  for (const steps of [-1, 1]) go(steps);
}

function drawCautions(): void {
  const cautions = state.summary?.cautions ?? [];
  byId("cautions").hidden = cautions.length === 0;
  byId("cautions-list").replaceChildren(...cautions.map((caution) => el("li", {}, caution)));
}

function drawProgram(): void {
  byId("program").textContent = say("page-program", { version: state.version === "" ? "\u2026" : state.version });
}
