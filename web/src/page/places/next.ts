// What next? Everything that is still open, gathered by what would settle it.

import type { LotView, Summary } from "../../shared/door";
import { EVIDENCE } from "../act-kinds";
import { el, redraw, type Child } from "../elements";
import { goTo } from "../place";
import { showOrder } from "../looking";
import { ANY_READING, state } from "../state";
import { lotName, namesOf } from "../outcomes";
import { count, say } from "../words";
import { gatherReasons, isOpen, type GatheredReason } from "./reasons";

const MOST_LOTS = 12;
const MOST_SAID = 6;

export function nextNeeds(summary: Summary): number {
  return openReasons(summary, "outcome").length + openReasons(summary, "evidence").length;
}

function openReasons(summary: Summary, kind: GatheredReason["kind"]): GatheredReason[] {
  return gatherReasons(summary, kind).filter(isOpen);
}

export function drawNext(host: HTMLElement): void {
  const { summary } = state;
  if (summary === null) {
    redraw(host, el("p", { class: "empty" }, say("page-nothing-yet")));
    return;
  }
  const outcomes = openReasons(summary, "outcome");
  const evidence = openReasons(summary, "evidence");
  redraw(
    host,
    outcomes.length + evidence.length === 0 ? el("p", { class: "lead" }, say("page-next-nothing")) : null,
    group("outcomes", say("page-next-outcomes", { n: outcomes.length }), outcomes, summary),
    group("evidence", say("page-next-evidence", { n: evidence.length }), evidence, summary),
  );
}

function group(id: string, heading: string, reasons: GatheredReason[], summary: Summary): Child {
  if (reasons.length === 0) return null;
  return el(
    "section",
    { class: "todo-group", "aria-labelledby": `next-${id}` },
    el("h2", { id: `next-${id}` }, heading),
    el("ol", { class: "todos" }, ...reasons.map((reason) => todo(reason, summary))),
  );
}

/** The same thing said of several lots is said once. */
function byText(reason: GatheredReason): [string, LotView[]][] {
  const lots = new Map<string, LotView[]>();
  for (const { lot, text } of reason.said) lots.set(text, [...(lots.get(text) ?? []), lot]);
  return [...lots];
}

function todo(reason: GatheredReason, summary: Summary): HTMLElement {
  const where = EVIDENCE.find((evidence) => evidence.reasons.includes(reason.code));
  return el(
    "li",
    { class: "todo" },
    el(
      "div",
      { class: "todo-what" },
      el("h3", {}, reason.remedy === "" ? (reason.said[0]?.text ?? reason.code) : reason.remedy),
      el("div", { class: "todo-why" }, ...byText(reason).slice(0, MOST_SAID).map(([text, lots]) => el("p", {}, el("strong", {}, namesOf(lots)), " ", text))),
      reason.materials > 0 ? el("p", { class: "quiet" }, say("page-next-materials", { n: reason.materials })) : null,
    ),
    el(
      "div",
      { class: "todo-steps" },
      where === undefined
        ? null
        : el(
            "button",
            { type: "button", class: "primary", on: { click: () => goTo("trust", `evidence-${where.id}-heading`) } },
            say("page-next-give"),
            el("span", { class: "heard" }, ` ${say(`page-evidence-${where.id}`)}`),
          ),
      reason.code === "rows_refused" ? el("button", { type: "button", class: "primary", on: { click: () => goTo("came-in") } }, say("page-next-files")) : null,
      ...reason.lots.slice(0, MOST_LOTS).map((lot) =>
        el(
          "button",
          {
            type: "button",
            class: "tool",
            on: {
              click: () => {
                void showOrder({ ...ANY_READING, lot: lot.index, outcome: reason.kind === "outcome" ? "open" : "" });
                goTo("says", "readings-heading");
              },
            },
          },
          say("page-next-show", { lot: lotName(lot) }),
        ),
      ),
      reason.lots.length > MOST_LOTS ? el("span", { class: "quiet" }, say("page-next-lots-left", { n: reason.lots.length - MOST_LOTS, of: count(summary.lots.length) })) : null,
    ),
  );
}
