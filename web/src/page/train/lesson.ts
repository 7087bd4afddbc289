// One lesson: a few paragraphs with their source, a ruler to move, a delivery to look at, exercises, and what comes next.

import { demoDeliveries } from "../demo";
import { el, redraw } from "../elements";
import { withTerms } from "../help/in-text";
import { wordsHere } from "../help/term";
import type { TermId } from "../help/terms";
import { openDelivery } from "../places/start";
import { between, say } from "../words";
import { exercisesBox } from "./exercises";
import { movableRuler } from "./ruler";
import { movableSample } from "./sample";
import { LESSONS, SHOWN_BY, addressOf, nextLesson, progressOf, training, type LessonName } from "./training";

/** The terms each lesson is about: linked where its text names them first, and listed below it where it does not. */
const TERMS_OF: Record<LessonName, TermId[]> = {
  band: ["reading", "xrf", "limit", "band", "bl", "ol", "x"],
  sigma: ["sigma", "band", "bl", "ol", "not-capable", "no-uncertainty"],
  element: ["xrf", "x", "not-applicable"],
  censored: ["detection-limit", "sigma", "bl", "detection-too-high", "composite"],
  material: ["limit", "homogeneous", "not-accept", "plated"],
  exemption: ["exemption", "ol", "category", "placing", "not-accept"],
  trust: ["check", "bracketed", "hold", "sigma"],
  sampling: ["lot", "plan", "not-accept", "hold", "accept", "declaration"],
};

export function lessonTitle(lesson: LessonName): string {
  return say("page-train-titled", { n: LESSONS.indexOf(lesson) + 1, title: say(`page-train-${lesson}-title`) });
}

export function progressText(lesson: LessonName): string {
  const { done, right, of } = progressOf(lesson);
  return done === 0 ? say("page-train-not-begun") : say("page-train-progress", { done, of, right });
}

function onwards(lesson: LessonName): HTMLElement {
  const at = LESSONS.indexOf(lesson);
  const before = LESSONS[at - 1];
  const after = LESSONS[at + 1];
  const link = (to: string, look: string, text: string): HTMLElement => el("a", { id: look === "primary" ? "train-after" : undefined, class: look, href: to }, text);
  return el(
    "nav",
    { class: "train-onwards", "aria-label": say("page-train-lessons") },
    before === undefined ? null : link(addressOf(before), "tool", say("page-train-before")),
    link(addressOf("home"), "tool", say("page-train-home")),
    after === undefined ? link(addressOf("sheet"), "primary", say("page-train-to-sheet")) : link(addressOf(after), "primary", say("page-train-after", { title: say(`page-train-${after}-title`) })),
  );
}

export function drawLesson(host: HTMLElement, lesson: LessonName, answered: () => void): void {
  const progress = el("p", { class: "hint", id: "lesson-progress" });
  const look = el("div", { class: "train-look" });
  void demoDeliveries().then((all) => {
    const delivery = all.find((one) => one.folder.startsWith(SHOWN_BY[lesson]));
    if (delivery === undefined) return;
    look.append(
      el("h2", {}, say("page-train-look")),
      el("button", { type: "button", class: "tool", on: { click: () => void openDelivery(delivery) } }, say("page-train-open", { title: delivery.title })),
      el("p", { class: "hint" }, say("page-train-deliveries-hint", { back: say("page-bring-back") })),
    );
  });
  const told = withTerms([1, 2, 3].map((n) => say(`page-train-${lesson}-${n}`)), `lesson-${lesson}`, TERMS_OF[lesson]);
  redraw(
    host,
    el("header", { class: "train-head" }, el("a", { class: "tool", href: addressOf("home") }, say("page-train-home")), progress, el("p", { class: "hint" }, say("page-train-seed-now", { seed: training.seed }))),
    el("h2", { id: "train-view", class: "train-title", tabindex: -1 }, lessonTitle(lesson)),
    el(
      "div",
      { class: "train-top" },
      el("div", { class: "train-text" }, ...told.texts.map((parts) => el("p", {}, parts)), told.left.length === 0 ? null : wordsHere(`lesson-${lesson}`, told.left), el("p", { class: "hint" }, el("strong", {}, say("page-train-source"), between("colon")), say(`page-train-${lesson}-source`))),
      el("section", { class: "card", "aria-labelledby": "lesson-ruler-heading" }, el("h2", { id: "lesson-ruler-heading" }, say("page-train-ruler")), el("p", {}, say(`page-train-${lesson}-try`)), movableRuler(lesson)),
    ),
    lesson === "sampling" ? movableSample() : null,
    exercisesBox(lesson, {
      progress: () => {
        progress.textContent = progressText(lesson);
        answered();
      },
    }),
    look,
    onwards(lesson),
  );
}

/** The one thing to do next. */
export function nextStep(): HTMLElement {
  const next = nextLesson();
  if (next === null) return el("a", { id: "train-next", class: "primary", href: addressOf("sheet") }, say("page-train-to-sheet"));
  const n = LESSONS.indexOf(next) + 1;
  const fresh = n === 1 && progressOf(next).done === 0;
  return el("a", { id: "train-next", class: "primary", href: addressOf(next) }, fresh ? say("page-train-begin") : say("page-train-go-on", { n, title: say(`page-train-${next}-title`) }));
}
