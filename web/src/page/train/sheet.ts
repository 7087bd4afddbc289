// The score sheet: what was asked, answered and right, on paper to be signed. Right answers are asked of the core again.

import type { ExerciseView, SolvedView } from "../../shared/door";
import { byId, el } from "../elements";
import { change, state } from "../state";
import { between, say } from "../words";
import { askedText, factText, valueText } from "./exercises";
import { exercisesOf, solve } from "./ask";
import { lessonTitle } from "./lesson";
import { LESSONS, addressOf, answerOf, shownOf, training, type LessonName } from "./training";
import { verdictMark } from "./verdict";

interface Line {
  lesson: LessonName;
  of: ExerciseView;
  answer: string;
  solved: SolvedView;
}

async function lines(): Promise<Line[]> {
  const { seed } = training;
  const found: Line[] = [];
  for (const lesson of LESSONS) {
    const answered = Array.from({ length: shownOf(lesson) }, (_, at) => at + 1).filter((number) => answerOf(lesson, number) !== undefined);
    if (answered.length === 0) continue;
    const made = await exercisesOf(lesson, seed, shownOf(lesson));
    if (made === null || made === "wrong") continue;
    for (const number of answered) {
      const of = made[number - 1];
      const answer = answerOf(lesson, number)?.answer ?? "";
      const solved = await solve(lesson, seed, number, answer);
      if (of !== undefined && solved !== null) found.push({ lesson, of, answer, solved });
    }
  }
  return found;
}

function asked(of: ExerciseView): string {
  const { reading, lot } = of;
  if (reading !== null) {
    const thick = reading.thickness === "" ? "" : `${between("series")}${say("page-train-thickness")}${between("colon")}${reading.thickness}`;
    return `${askedText(of)}${between("gap")}${reading.class_text}${between("colon")}${valueText(reading)} mg/kg${thick}`;
  }
  return [askedText(of), ...(lot?.facts ?? []).map(factText)].join(between("gap"));
}

function row({ lesson, of, answer, solved }: Line): HTMLElement {
  const words = (code: string): string => of.choices.find((choice) => choice.code === code)?.text ?? code;
  return el(
    "tr",
    { class: solved.correct ? "sheet-right" : "sheet-wrong" },
    el("th", { scope: "row" }, `${LESSONS.indexOf(lesson) + 1}.${of.number}`),
    el("td", {}, asked(of)),
    el("td", {}, words(answer)),
    el("td", {}, words(solved.right)),
    el("td", { class: "sheet-result" }, verdictMark(solved.correct), " ", el("span", {}, say(solved.correct ? "page-train-right" : "page-train-wrong"))),
    el("td", {}, solved.source === "" ? say(`page-train-clause-${lesson}`) : solved.source),
  );
}

function sign(who: string): HTMLElement {
  return el("div", { class: "sheet-sign" }, el("span", { class: "sheet-line" }), el("span", {}, `${who} \u00b7 ${say("page-train-sheet-signature")}`));
}

export function drawSheet(host: HTMLElement): void {
  const nameOut = el("dd", { id: "sheet-name-out" }, training.trainee);
  const dayOut = el("dd", { id: "sheet-day-out" }, state.day);
  const name = el("input", {
    id: "sheet-name",
    type: "text",
    maxlength: 60,
    autocomplete: "off",
    value: training.trainee,
    on: {
      input: () => {
        training.trainee = name.value;
        nameOut.textContent = name.value;
      },
    },
  });
  // The day is the page's one day field, once more where it is needed.
  const day = el("input", {
    id: "sheet-day",
    type: "date",
    value: state.day,
    on: {
      change: () => {
        byId<HTMLInputElement>("who-day").value = day.value;
        change({ day: day.value });
        dayOut.textContent = day.value;
      },
    },
  });
  const body = el("div", { id: "sheet-body", "aria-busy": "true" });
  host.replaceChildren(
    el("header", { class: "train-head" }, el("a", { id: "train-all", class: "tool", href: addressOf("home") }, say("page-train-home"))),
    el("h2", { id: "train-view", class: "train-title", tabindex: -1 }, say("page-train-sheet")),
    el(
      "div",
      { class: "form-fields sheet-form" },
      el("div", { class: "form-field" }, el("label", { for: name.id }, say("page-train-sheet-name")), name),
      el("div", { class: "form-field" }, el("label", { for: day.id }, say("page-train-sheet-day")), day),
      el("button", { type: "button", id: "sheet-print", class: "primary", on: { click: () => print() } }, say("page-train-sheet-print")),
    ),
    body,
  );
  void lines().then((found) => {
    body.removeAttribute("aria-busy");
    if (found.length === 0) {
      body.replaceChildren(el("p", { class: "empty" }, say("page-train-sheet-empty")));
      return;
    }
    const right = found.filter((one) => one.solved.correct).length;
    const lessons = [...new Set(found.map((one) => one.lesson))];
    const heads = ["asked", "answered", "right", "result", "clause"];
    body.replaceChildren(
      el(
        "dl",
        { class: "facts sheet-facts" },
        el("dt", {}, say("page-train-sheet-trainee")), nameOut,
        el("dt", {}, say("page-train-sheet-day")), dayOut,
        el("dt", {}, say("page-train-seed")), el("dd", {}, training.seed),
      ),
      el("p", { class: "sheet-total" }, el("strong", {}, say("page-train-sheet-total", { right, of: found.length }))),
      el("ol", { class: "sheet-lessons" }, ...lessons.map((lesson) => el("li", {}, lessonTitle(lesson)))),
      el(
        "div",
        { class: "table-scroll", id: "sheet-table", tabindex: 0, role: "region", "aria-label": say("page-train-sheet") },
        el(
          "table",
          { class: "score-sheet" },
          el("thead", {}, el("tr", {}, el("th", { scope: "col" }, say("page-train-exercises")), ...heads.map((head) => el("th", { scope: "col" }, say(`page-train-sheet-${head}`))))),
          el("tbody", {}, ...found.map(row)),
        ),
      ),
      el("div", { class: "sheet-signs" }, sign(say("page-train-sheet-trainee")), sign(say("page-train-sheet-trainer"))),
      el("p", { class: "sheet-note" }, say("page-train-sheet-no-certificate"), between("gap"), say("page-not-a-declaration")),
    );
  });
}
