// One reading in full: what its composition says, each substance with its figure, its outcome in words, what is doubtful, what
// comes next and how it was worked out, the limits of named books, and the other readings of the same spot.

import type { ChancesView, CompositionView, DetailView, FindingView, RepeatsView } from "../shared/door";
import { materialTarget, partTarget } from "./act-kinds";
import { refusalLine, record, takeBackButton } from "./acts-given";
import { standing, targetName } from "./acts-in-force";
import { byId, el, type Child } from "./elements";
import { figure } from "./figures";
import { stillHere } from "./hand";
import { legendNear } from "./help/legend";
import { term } from "./help/term";
import { termOfCode } from "./help/terms";
import { outcomeTone } from "./marks";
import { ofReading } from "./of-reading";
import { cautionTag, outcomeTag, substanceName } from "./outcomes";
import { photosOf } from "./photos-of";
import { between, bracketed, count, inRow, say } from "./words";

function fact(term: string, value: string | null): Child {
  return value === null || value === "" ? null : [el("dt", {}, term), el("dd", {}, value)];
}

function settled(outcome: string): boolean {
  return ["below", "apart"].includes(outcomeTone(outcome));
}

/** Folds a person opened or closed, so that going from reading to reading leaves them as they are. */
const workings = new Map<string, boolean>();

/** The tag of an outcome; the first of each kind in one reading says what it means. */
function explained(of: FindingView, told: Set<string>): HTMLElement {
  const id = termOfCode(of.outcome);
  if (id === null || told.has(id)) return outcomeTag(of);
  told.add(id);
  return term(id, "detail", outcomeTag(of));
}

function finding(of: FindingView, key: string, told: Set<string>): HTMLElement {
  const drawing = figure(of.ruler);
  return el(
    "section",
    { class: "finding" },
    el(
      "header",
      { class: "finding-head" },
      el("h3", {}, el("abbr", { title: of.name }, substanceName(of.substance)), " ", el("span", { class: "quiet" }, of.name)),
      explained(of, told),
    ),
    drawing === null ? null : el("div", { class: "figure-frame" }, drawing),
    of.reason_text === "" ? null : el("p", {}, of.reason_text),
    ...of.cautions.map(caution),
    of.next_step === "" ? null : el("p", { class: "next-step" }, el("strong", {}, say("page-detail-next")), between("gap"), of.next_step),
    working(of, key),
  );
}

function caution(text: string): HTMLElement {
  return el("p", { class: "doubt" }, cautionTag(), " ", text);
}

/**
 * How the outcome came about, step by step; open where a number is not settled, since there it will be asked for. Of what was
 * not measured there is nothing to work out.
 */
function working(of: FindingView, key: string): Child {
  if (of.steps.length === 0 && of.chances === null) return null;
  const opened = workings.get(key) ?? !(settled(of.outcome) || outcomeTone(of.outcome) === "absent");
  const fold = el(
    "details",
    { class: "fold fold-inner working", open: opened },
    el("summary", {}, say("page-detail-working"), el("span", { class: "heard" }, ` ${of.name}`)),
    el(
      "dl",
      { class: "steps-told" },
      ...of.steps.map((step) => [el("dt", {}, say(`page-step-${step.kind.replaceAll("_", "-")}`)), el("dd", {}, step.text)]),
      of.chances === null
        ? null
        : [el("dt", {}, say("page-step-probability")), el("dd", {}, of.chances.within, of.chances.counts === "" ? null : [" ", el("span", { class: "quiet" }, of.chances.counts)])],
    ),
    of.chances === null ? null : otherRules(of.chances, of.name),
  );
  fold.addEventListener("toggle", () => {
    if (fold.open !== opened || workings.has(key)) workings.set(key, fold.open);
  });
  return fold;
}

function otherRules(of: ChancesView, name: string): HTMLElement {
  return el(
    "table",
    { class: "rules-say" },
    el("caption", {}, say("page-detail-other-rules"), el("span", { class: "heard" }, ` ${name}`)),
    el("thead", {}, el("tr", {}, ...["rule", "says", "risk"].map((column) => el("th", { scope: "col" }, say(`page-rules-${column}`))))),
    el(
      "tbody",
      {},
      ...of.rules.map((one) => el("tr", {}, el("th", { scope: "row" }, one.rule), el("td", {}, el("strong", {}, one.text)), el("td", {}, one.risk))),
    ),
  );
}

/** What is open or over stands before what is settled, each in the order given. */
function openFirst(findings: FindingView[]): FindingView[] {
  return [...findings.filter((one) => !settled(one.outcome)), ...findings.filter((one) => settled(one.outcome))];
}

export function readingTitle(detail: DetailView): string {
  const { id, line, part, material } = detail.row;
  return [id ?? say("page-line-name", { line: count(line) }), part, material].filter((name) => name !== null && name !== "").join(" \u00b7 ");
}

// ---- what it is made of ----

function composition(of: CompositionView, detail: DetailView): HTMLElement {
  return el(
    "section",
    { class: "composition", "aria-labelledby": "composition-heading" },
    el("h3", { id: "composition-heading" }, say("page-composition-heading")),
    of.doubtful ? caution(of.text) : el("p", {}, of.text),
    takeOver(of, detail),
  );
}

/** A class holds for a material or a part; a reading that names neither has no place where it could be said. */
function takeOver(of: CompositionView, detail: DetailView): Child {
  const { part, material } = detail.row;
  const target = material !== null ? materialTarget({ part, material }) : part !== null ? partTarget(part) : null;
  if (target === null) return of.suggests === "" ? null : el("p", { class: "hint" }, say("page-composition-no-place"));
  const given = standing("class", target);
  if (given !== null && given.value !== "") {
    return el("p", { class: "given" }, el("span", {}, say("page-composition-given", { about: targetName(target), class: detail.row.class_text })), takeBackButton(given, "composition-back", "detail-heading"));
  }
  if (of.suggests === "") return null;
  const refusal = refusalLine("composition");
  const take = async (): Promise<void> => {
    // The detail is drawn anew with the answer in force; its heading outlives that.
    const here = stillHere();
    if ((await record({ kind: "class", target, value: of.suggests }, refusal)) && here()) byId("detail-heading").focus({ preventScroll: true });
  };
  return el(
    "div",
    { class: "take-over" },
    el("button", { type: "button", id: "composition-take", class: "second", on: { click: () => void take() } }, say("page-composition-take", { class: of.suggests_text, about: targetName(target) })),
    el("p", { class: "hint" }, say("page-composition-take-hint")),
    refusal,
  );
}

// ---- the other readings of the spot ----

function repeats(of: RepeatsView, detail: DetailView, open: (index: number) => void): HTMLElement {
  const name = (one: RepeatsView["readings"][number]): string => say("page-at-line", { line: count(one.line) });
  return el(
    "section",
    { class: "finding repeats", "aria-labelledby": "repeats-heading" },
    el("h3", { id: "repeats-heading" }, say("page-repeats-heading", { n: of.readings.length })),
    el(
      "ul",
      { class: "repeat-readings" },
      ...of.readings.map((one) =>
        el(
          "li",
          {},
          one.index === detail.row.index
            ? el("span", { class: "repeat-this", "aria-current": "true" }, say("page-repeats-this", { name: name(one) }))
            : el("button", { type: "button", class: "tool", on: { click: () => open(one.index) } }, name(one), el("span", { class: "heard" }, ` ${one.id ?? ""}`)),
        ),
      ),
    ),
    el(
      "dl",
      { class: "facts" },
      ...of.elements.map((one) => [
        el("dt", {}, one.element),
        el("dd", {}, one.value === "" ? null : [el("strong", {}, one.value), between("stop")], one.how === "disagree" || one.how === "mixed" ? [cautionTag(), " "] : null, one.text),
      ]),
    ),
  );
}

// ---- limits of named books ----

function limits(list: FindingView[], told: Set<string>): Child {
  if (list.length === 0) return null;
  const idle = list.filter((one) => outcomeTone(one.outcome) === "apart");
  const speaking = list.filter((one) => !idle.includes(one));
  const key = (one: FindingView): string => `${one.name} ${one.substance}`;
  return el(
    "section",
    { class: "limits", "aria-labelledby": "limits-heading" },
    el("h3", { id: "limits-heading" }, say("page-limits-heading")),
    ...openFirst(speaking).map((one) => finding(one, key(one), told)),
    idle.length === 0
      ? null
      : el(
          "details",
          { class: "fold fold-inner" },
          el("summary", {}, say("page-limits-idle", { n: idle.length })),
          el("ul", { class: "by-class" }, ...idle.map((one) => el("li", {}, el("strong", {}, one.substance), between("list"), one.name, between("stop"), one.reason_text))),
        ),
  );
}

/** `open` shows another reading in place of this one. */
export function detailContent(detail: DetailView, open: (index: number) => void): Child[] {
  const { row, composition: made } = detail;
  // What it is made of stands first where it puts the class or the numbers in question; else it is for whoever wants to know.
  const told = new Set<string>();
  const asks = made !== null && (made.doubtful || made.suggests !== "");
  return [
    el(
      "dl",
      { class: "facts" },
      fact(say("page-column-file"), inRow([row.source, say("page-at-line", { line: count(row.line) })])),
      fact(say("page-detail-unit"), row.unit),
      fact(say("page-detail-spot"), row.spot),
      fact(say("page-detail-part"), row.part),
      fact(say("page-detail-material"), row.material),
      fact(say("page-detail-lot"), row.lot),
      fact(say("page-detail-supplier"), row.supplier),
      fact(say("page-column-class"), `${row.class_text}${bracketed(say(`page-class-from-${row.class_from.replaceAll("_", "-")}`))}`),
      fact(say("page-column-trust"), row.trust_text),
      fact(say("page-detail-instrument"), detail.instrument),
      fact(say("page-detail-time"), detail.time),
      fact(say("page-detail-seconds"), detail.seconds),
    ),
    photosOf(detail),
    detail.findings.some((one) => one.ruler !== "") ? legendNear("detail") : null,
    made !== null && asks ? composition(made, detail) : null,
    ...openFirst(detail.findings).map((one) => finding(one, one.substance, told)),
    limits(detail.limits, told),
    detail.repeats === null ? null : repeats(detail.repeats, detail, open),
    made !== null && !asks ? composition(made, detail) : null,
    ofReading(detail),
    detail.other_elements.length === 0
      ? null
      : el(
          "details",
          { id: "detail-others", class: "fold" },
          el("summary", {}, say("page-detail-others", { n: detail.other_elements.length })),
          el("dl", { class: "facts" }, ...detail.other_elements.map((one) => fact(one.symbol, one.text))),
        ),
  ];
}
