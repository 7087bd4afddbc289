// What next? Everything that is still open, gathered by what would settle it.

import type { LotView, Summary } from "../../shared/door";
import { EVIDENCE } from "../act-kinds";
import { el, redraw, type Child } from "../elements";
import { goTo } from "../place";
import { showOrder } from "../looking";
import { ANY_READING, state } from "../state";
import { MEASURED_AGAIN, RESULTS } from "../next-action";
import { lotName, namesOf } from "../outcomes";
import { say } from "../words";
import { nothingRead } from "./nothing-read";
import { TRUST_OF, gatherReasons, isOpen, type GatheredReason } from "./reasons";

const LOTS_AT_ONCE = 4;
const MOST_LOTS = 60;
const MOST_SAID = 6;

export function nextNeeds(summary: Summary): string {
  const n = openReasons(summary, "outcome").length + openReasons(summary, "evidence").length;
  return n === 0 ? "" : say("page-needs-next", { n });
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
  const nothing = nothingRead(summary);
  if (nothing !== null) {
    redraw(host, nothing);
    return;
  }
  const outcomes = openReasons(summary, "outcome");
  const evidence = openReasons(summary, "evidence");
  redraw(
    host,
    outcomes.length + evidence.length === 0 ? el("p", { class: "lead" }, say("page-next-nothing")) : null,
    group("outcomes", say("page-next-outcomes", { n: outcomes.length }), outcomes),
    group("evidence", say("page-next-evidence", { n: evidence.length }), evidence),
    expiries(summary),
  );
}

function group(id: string, heading: string, reasons: GatheredReason[]): Child {
  if (reasons.length === 0) return null;
  return el(
    "section",
    { class: "todo-group", "aria-labelledby": `next-${id}` },
    el("h2", { id: `next-${id}` }, heading),
    el("ol", { class: "todos" }, ...reasons.map(todo)),
  );
}

/** Days nobody can move, so they are no steps of anyone: a list of their own, first day first. */
function expiries(summary: Summary): Child {
  if (summary.expiries.length === 0) return null;
  return el(
    "section",
    { class: "todo-group", "aria-labelledby": "next-expiries" },
    el("h2", { id: "next-expiries" }, say("page-next-expiries")),
    el("p", { class: "quiet" }, say("page-next-expiries-why")),
    el(
      "ol",
      { class: "expiries" },
      ...summary.expiries.map((one) =>
        el(
          "li",
          {},
          el("time", { datetime: one.day }, one.day_text),
          el("strong", { class: "expiry-kind" }, say(one.claimed ? "page-next-expiry-claimed" : "page-next-expiry-candidate")),
          // The sentence begins with the day, which stands in front already.
          el("span", {}, one.text.startsWith(one.day_text) ? one.text.slice(one.day_text.length).replace(/^\s*[:：]\s*/, "") : one.text),
        ),
      ),
    ),
  );
}

/** The same thing said of several lots is said once. */
function byText(reason: GatheredReason): [string, LotView[]][] {
  const lots = new Map<string, LotView[]>();
  for (const { lot, text } of reason.said) lots.set(text, [...(lots.get(text) ?? []), lot]);
  return [...lots];
}

function todo(reason: GatheredReason, at: number): HTMLElement {
  const where = EVIDENCE.find((evidence) => evidence.reasons.includes(reason.code));
  // What only other readings settle has nothing to type. Where the check beside a reading is missing, a setting stands beside them.
  const brought = MEASURED_AGAIN.includes(reason.code) && !["trust_not_bracketed", "checks_far_apart"].includes(reason.code);
  return el(
    "li",
    { class: "todo" },
    el(
      "div",
      { class: "todo-what" },
      el("h3", {}, reason.remedy === "" ? (reason.said[0]?.text ?? reason.code) : reason.remedy),
      el("div", { class: "todo-why" }, ...byText(reason).slice(0, MOST_SAID).map(([text, lots]) => el("p", {}, el("strong", {}, namesOf(lots)), " ", text))),
      reason.materials.size > 0 ? el("p", { class: "quiet" }, say("page-next-materials", { n: reason.materials.size })) : null,
    ),
    el(
      "div",
      { class: "todo-steps" },
      where === undefined
        ? null
        : el(
            "button",
            { type: "button", class: "primary", on: { click: () => (brought ? goTo("came-in", RESULTS) : giveNow(where.id)) } },
            say(brought ? "page-do-bring" : where.id === "files" ? "page-next-files" : "page-next-give"),
            el("span", { class: "heard" }, ` ${say(`page-evidence-${where.id}`)}`),
          ),
      ...reason.lots.slice(0, LOTS_AT_ONCE).map((lot) => showLot(reason, lot)),
      reason.lots.length > LOTS_AT_ONCE
        ? el(
            "details",
            { id: `next-more-${reason.kind}-${reason.code}-${at}`, class: "fold more-steps" },
            el("summary", {}, say("page-next-lots-left", { n: reason.lots.length - LOTS_AT_ONCE })),
            el("div", { class: "todo-steps" }, ...reason.lots.slice(LOTS_AT_ONCE, MOST_LOTS).map((lot) => showLot(reason, lot))),
            reason.lots.length > MOST_LOTS ? el("p", { class: "quiet" }, say("page-lots-left", { n: reason.lots.length - MOST_LOTS })) : null,
          )
        : null,
    ),
  );
}

function giveNow(evidence: string): void {
  if (evidence === "files") goTo("came-in");
  else goTo("trust", `evidence-${evidence}`);
}

function showLot(reason: GatheredReason, lot: LotView): HTMLElement {
  return el(
    "button",
    {
      type: "button",
      class: "tool",
      "data-lot": lot.index,
      on: {
        click: () => {
          void showOrder({ ...ANY_READING, lot: lot.index, outcome: reason.kind === "outcome" ? "open" : "", trust: TRUST_OF[reason.code] ?? "" });
          goTo("says", "readings-heading");
        },
      },
    },
    say("page-next-show", { lot: lotName(lot) }),
  );
}
