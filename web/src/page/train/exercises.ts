// Exercises: the trainee decides first, then the tool shows its working. A checked answer stays; other numbers are another exercise.

import type { AskedLot, AskedReading, ExerciseView, SolvedView } from "../../shared/door";
import { el, type Child } from "../elements";
import { figure } from "../figures";
import { dispositionMark, outcomeMark } from "../marks";
import { outcomeTag, dispositionTag } from "../outcomes";
import { tellTrouble } from "../troubles";
import { say } from "../words";
import { exercisesOf, solve } from "./ask";
import { verdictMark } from "./verdict";
import { workingOf } from "./told";
import { addressOf, answerOf, keepAnswer, showMore, shownOf, training, type LessonName } from "./training";
import type { Disposition } from "../../shared/door";

/** The question of an exercise in words. */
export function askedText({ reading }: ExerciseView): string {
  return reading === null ? say("page-train-ask-disposition") : say("page-train-ask-outcome", { substance: say(`page-train-substance-${reading.substance.toLowerCase()}`) });
}

export function factText(fact: AskedLot["facts"][number]): string {
  const given = Object.fromEntries(fact.arguments.map(([name, value]) => [name, name === "n" ? Number(value) : value]));
  return say(`page-train-fact-${fact.code.replaceAll("_", "-")}`, given);
}

export function valueText({ written, sigma, detection }: AskedReading): string {
  const value = sigma === "" ? written : `${written} \u00b1 ${sigma}`;
  return detection === "" ? value : `${value} (< ${detection})`;
}

function readingFacts(of: AskedReading): HTMLElement {
  const fact = (term: string, text: string): Child => [el("dt", {}, say(term)), el("dd", {}, text)];
  return el(
    "dl",
    { class: "facts train-facts" },
    fact("page-train-class", of.class_text),
    fact("page-train-value", of.written),
    fact("page-train-sigma", of.sigma === "" ? say("page-train-none-stated") : of.sigma),
    of.detection === "" ? null : fact("page-train-limit", of.detection),
    of.thickness === "" ? null : fact("page-train-thickness", of.thickness),
    of.rule === "" ? null : fact("page-step-rule", of.rule),
  );
}

function lotFacts(of: AskedLot, id: string): HTMLElement {
  const heading = (name: string): string => (["sample", "unit", "material"].includes(name) ? say(`page-train-column-${name}`) : name);
  return el(
    "div",
    { class: "train-lot" },
    el("ul", { class: "train-told" }, ...of.facts.map((fact) => el("li", {}, factText(fact)))),
    el(
      "div",
      { class: "table-scroll", id: `${id}-table`, tabindex: 0, role: "region", "aria-labelledby": `${id}-heading ${id}-caption` },
      el(
        "table",
        {},
        el("caption", { id: `${id}-caption` }, say("page-train-readings")),
        el("thead", {}, el("tr", {}, ...of.headings.map((name) => el("th", { scope: "col" }, heading(name))))),
        el("tbody", {}, ...of.rows.map((row) => el("tr", {}, ...row.map((cell, at) => (at === 0 ? el("th", { scope: "row" }, cell) : el("td", {}, cell)))))),
      ),
    ),
  );
}

function solution(of: ExerciseView, solved: SolvedView, answer: string): Child {
  const said = of.choices.find((choice) => choice.code === answer)?.text ?? answer;
  const drawing = figure(solved.finding?.ruler ?? "");
  return [
    el("p", { class: "train-verdict" }, verdictMark(solved.correct), el("strong", {}, say(solved.correct ? "page-train-right" : "page-train-wrong")), " ", solved.correct ? null : say("page-train-you-said", { answer: said })),
    el("p", { class: "train-says" }, say("page-train-tool-says"), " ", solved.finding === null ? dispositionTag(solved.right as Disposition, solved.right_text) : outcomeTag(solved.finding)),
    solved.finding === null ? null : solved.why === "" ? null : el("p", {}, solved.why),
    drawing === null ? null : el("div", { class: "figure-frame" }, drawing),
    solved.finding === null ? el("ul", { class: "reasons" }, ...solved.reasons.map((reason) => el("li", {}, reason))) : workingOf(solved.finding),
  ];
}

interface Told {
  progress: () => void;
}

function exercise(lesson: LessonName, of: ExerciseView, told: Told): HTMLElement {
  const { seed } = training;
  const id = `exercise-${of.number}`;
  const choice = (one: ExerciseView["choices"][number]): HTMLElement =>
    el(
      "label",
      { class: "choice" },
      el("input", { type: "radio", name: id, value: one.code }),
      of.reading === null ? dispositionMark(one.code) : outcomeMark(one.code),
      el("span", {}, one.text),
    );
  const refusal = el("p", { id: `${id}-refusal`, class: "refusal", role: "alert", hidden: true }, say("page-train-choose"));
  const choices = el("fieldset", { class: "train-choices", "aria-describedby": refusal.id }, el("legend", {}, askedText(of)), el("div", { class: "choices" }, ...of.choices.map(choice)));
  const check = el("button", { type: "submit", id: `${id}-check`, class: "primary" }, say("page-train-check"), el("span", { class: "heard" }, ` ${say("page-train-exercise", { n: of.number })}`));
  const result = el("div", { id: `${id}-result`, class: "train-result", tabindex: -1, hidden: true });
  const form = el(
    "form",
    {
      novalidate: true,
      on: {
        submit: (event) => {
          event.preventDefault();
          const picked = choices.querySelector<HTMLInputElement>("input:checked");
          refusal.hidden = picked !== null;
          if (picked === null) {
            choices.querySelector<HTMLInputElement>("input")?.focus();
            return;
          }
          void show(picked.value, true);
        },
      },
    },
    choices,
    refusal,
    check,
  );
  // Once: a second press while the first is on its way must not count another answer.
  let given = false;
  const show = async (answer: string, fresh: boolean): Promise<void> => {
    if (given) return;
    given = true;
    choices.disabled = true;
    const solved = await solve(lesson, seed, of.number, answer);
    if (solved === null) {
      given = false;
      choices.disabled = false;
      return;
    }
    keepAnswer(lesson, of.number, answer, solved.correct);
    const picked = choices.querySelector<HTMLInputElement>(`input[value="${answer}"]`);
    if (picked !== null) picked.checked = true;
    check.remove();
    result.replaceChildren(...el("div", {}, solution(of, solved, answer), again(of)).childNodes);
    result.hidden = false;
    told.progress();
    if (fresh) result.focus();
  };
  const earlier = answerOf(lesson, of.number);
  if (earlier !== undefined) void show(earlier.answer, false);
  return el(
    "section",
    { id, class: "card train-exercise", "aria-labelledby": `${id}-heading` },
    el("h3", { id: `${id}-heading`, tabindex: -1 }, say("page-train-exercise", { n: of.number })),
    of.reading === null ? null : readingFacts(of.reading),
    of.lot === null ? null : lotFacts(of.lot, id),
    form,
    result,
  );
}

/** The numbers of a reading, on the ruler where they can be moved. */
function again({ reading }: ExerciseView): Child {
  if (reading === null || reading.thickness !== "" || /[>-]|LOD/.test(reading.written)) return null;
  const { class: material, substance, written, sigma, detection, thickness } = reading;
  return el(
    "button",
    {
      type: "button",
      class: "tool",
      on: {
        click: () => {
          training.rulers.set("ruler", { class: material, substance, written, sigma, detection, thickness });
          location.hash = addressOf("ruler");
        },
      },
    },
    say("page-train-move"),
  );
}

/** The exercises of a lesson, filled as soon as they are made. */
export function exercisesBox(lesson: LessonName, told: Told): HTMLElement {
  const list = el("div", { class: "train-list" });
  const more = el(
    "button",
    {
      type: "button",
      id: "exercise-more",
      class: "tool",
      hidden: true,
      on: {
        click: () => {
          showMore(lesson);
          void fill(true);
        },
      },
    },
    say("page-train-more"),
  );
  const fill = async (fresh: boolean): Promise<void> => {
    const { seed } = training;
    list.setAttribute("aria-busy", "true");
    const made = await exercisesOf(lesson, seed, shownOf(lesson));
    list.removeAttribute("aria-busy");
    if (made === null) return;
    if (made === "wrong") {
      tellTrouble({ key: "seed", about: "seed", what: say("page-train-seed-wrong"), where: say("page-train-where"), why: seed, todo: say("page-train-seed-new") });
      return;
    }
    // What stands there stays: a half-chosen answer is not lost when one more comes.
    for (const one of made.slice(list.children.length)) list.append(exercise(lesson, one, told));
    more.hidden = false;
    told.progress();
    if (fresh) list.lastElementChild?.querySelector<HTMLElement>("h3")?.focus();
  };
  void fill(false);
  return el("section", { class: "train-exercises", "aria-labelledby": "exercises-heading" }, el("h2", { id: "exercises-heading" }, say("page-train-exercises")), list, more);
}
