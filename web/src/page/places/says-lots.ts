// What does it say, for whole lots: dispositions with their reasons, worst first, and how often each outcome came up.

import type { LotView, OutcomeCount, PartView, ReasonView, Summary } from "../../shared/door";
import { controlId } from "../acts-given";
import { el, redraw, type Child } from "../elements";
import { stripMark } from "../grid-strip";
import { legendNear } from "../help/legend";
import { term } from "../help/term";
import { termOfCode } from "../help/terms";
import { fetchWorst, showOrder } from "../looking";
import { outcomeTone } from "../marks";
import { dispositionTag, lotName, outcomeTag, substanceName } from "../outcomes";
import { goTo } from "../place";
import { ANY_READING, state } from "../state";
import { between, count, inRow, say } from "../words";
import { booksFold } from "./books";
import { lazyFold } from "./lazy-fold";
import { nothingRead } from "./nothing-read";
import { worstFirst } from "./reasons";
import { lotAhead } from "./says-ahead";

const LOTS_AT_ONCE = 4;
const MOST_LOTS = 60;
const MOST_PARTS = 100;
const REASONS_AT_ONCE = 3;
const STRIP_WIDTH = 84;

export function saysNeeds(summary: Summary): string {
  const among = (disposition: string): number => summary.lots.filter((lot) => lot.disposition === disposition).length;
  const held = among("hold");
  const refused = among("not_accept");
  return inRow([refused > 0 ? say("page-needs-says-not-accept", { n: refused }) : "", held > 0 ? say("page-needs-says-held", { n: held }) : ""].filter((part) => part !== ""));
}

export function drawSaysLots(host: HTMLElement): void {
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
  const lots = worstFirst(summary.lots);
  redraw(
    host,
    el("p", { class: "caution-line" }, say("page-not-a-declaration"), between("gap"), el("a", { href: "#cautions", on: { click: openCautions } }, say("page-cautions-read", { n: summary.cautions.length }))),
    el("div", {}, el("button", { type: "button", id: "to-readings", class: "tool", on: { click: () => goTo("says", "readings-heading") } }, say("page-to-readings"))),
    el(
      "div",
      { class: "says-top" },
      el(
        "section",
        { class: "lots", "aria-labelledby": "lots-heading" },
        el("h2", { id: "lots-heading" }, say("page-lots-heading", { n: summary.lots.length })),
        ...lots.slice(0, LOTS_AT_ONCE).map((lot) => lotCard(lot, summary)),
        moreLots(lots.slice(LOTS_AT_ONCE), summary),
        el("details", { id: "not-assessed", class: "fold" }, el("summary", {}, say("page-lots-not-assessed")), notAssessed([...new Set(lots.flatMap((lot) => lot.not_assessed))])),
        booksFold(),
      ),
      matrix(summary),
    ),
  );
}

function notAssessed(list: string[]): Child {
  if (list.length === 0) return null;
  return el("div", { class: "not-assessed" }, el("p", {}, say("page-lot-not-assessed")), el("ul", {}, ...list.map((one) => el("li", {}, one))));
}

// The readings stand below: a long row of lots must not push them out of reach.
function moreLots(lots: LotView[], summary: Summary): Child {
  if (lots.length === 0) return null;
  const left = lots.length - MOST_LOTS;
  return lazyFold("more-lots", "fold more-lots", false, [say("page-lots-more", { n: lots.length })], () => [
    ...lots.slice(0, MOST_LOTS).map((lot) => lotCard(lot, summary)),
    left > 0 ? el("p", { class: "quiet" }, say("page-lots-left", { n: left })) : null,
  ]);
}

export function openCautions(event: Event): void {
  event.preventDefault();
  const fold = document.getElementById("cautions");
  if (!(fold instanceof HTMLDetailsElement)) return;
  fold.open = true;
  fold.querySelector("summary")?.focus();
  fold.scrollIntoView({ block: "start" });
}

function showReadings(patch: Partial<typeof ANY_READING>): void {
  void showOrder({ ...ANY_READING, ...patch });
  goTo("says", "readings-heading");
}

function lotCard(lot: LotView, summary: Summary): HTMLElement {
  const reasons = lot.reasons.map((reason) => el("li", { class: `reason reason-${reason.kind}` }, reason.text));
  const parts = summary.parts.filter((part) => part.lot_index === lot.index);
  return el(
    "article",
    { class: `lot lot-${lot.disposition}` },
    el(
      "header",
      { class: "lot-head" },
      el("h3", {}, lotName(lot), lot.supplier === null ? null : el("span", { class: "quiet" }, ` ${lot.supplier}`)),
      explained(lot.disposition, controlId("lot-term", lotKey(lot)), dispositionTag(lot.disposition, lot.disposition_text)),
    ),
    reasons.length === 0 ? null : el("ul", { class: "reasons" }, ...reasons.slice(0, REASONS_AT_ONCE)),
    reasons.length > REASONS_AT_ONCE
      ? el(
          "details",
          { id: controlId("lot-reasons", String(lot.index)), class: "fold fold-inner" },
          el("summary", {}, say("page-lot-more-reasons", { n: reasons.length - REASONS_AT_ONCE })),
          el("ul", { class: "reasons" }, ...reasons.slice(REASONS_AT_ONCE)),
        )
      : null,
    el(
      "div",
      { class: "lot-foot" },
      el("span", { class: "quiet" }, say("page-lot-size", { readings: lot.readings, materials: lot.materials })),
      el("button", { type: "button", class: "tool", id: controlId("lot-show", String(lot.index)), on: { click: () => showReadings({ lot: lot.index }) } }, say("page-lot-show"), el("span", { class: "heard" }, ` ${lotName(lot)}`)),
    ),
    parts.length === 0
      ? null
      : lazyFold(controlId("lot-parts", lotKey(lot)), "fold fold-inner", false, [say("page-lot-parts", { parts: parts.length, materials: lot.materials })], () => [
          legendNear(controlId("parts", lotKey(lot))),
          rulersOf(lot.index, parts.slice(0, MOST_PARTS).map((part) => partBlock(part, summary))),
          parts.length > MOST_PARTS ? el("p", { class: "quiet" }, say("page-parts-in-report", { n: parts.length - MOST_PARTS })) : null,
        ]),
    lazyFold(controlId("lot-ahead", lotKey(lot)), "fold fold-inner", false, [el("span", {}, say("page-ahead"), el("span", { class: "heard" }, ` ${lotName(lot)}`))], () => [lotAhead(lot.index)]),
    // An accept reaches only as far as what was looked at, so it never stands without this list.
    lot.disposition === "accept" ? notAssessed(lot.not_assessed) : null,
  );
}

/** A name that stays with the lot when others come in before it. */
function lotKey(lot: LotView): string {
  return [lot.supplier, lot.lot, lot.source].map((name) => name ?? "").join("|");
}

function partBlock(part: PartView, summary: Summary): HTMLElement {
  const materials = summary.materials.filter((material) => material.lot_index === part.lot_index && material.part === part.part);
  return el(
    "section",
    { class: "part" },
    el("div", { class: "material-head" }, el("h4", {}, part.part ?? say("page-part-unnamed")), dispositionTag(part.disposition, part.disposition_text)),
    reasonList(part.reasons),
    el("ul", { class: "materials" }, ...materials.map(materialLine)),
  );
}

/** The ruler of the reading that shows the worst takes the place of the mark that only says which way; it is asked for. */
function rulersOf(lot: number, blocks: HTMLElement[]): HTMLElement {
  const host = el("div", {}, ...blocks);
  void fetchWorst(lot).then((found) => {
    const outcomes = new Map([...host.querySelectorAll<HTMLElement>("[data-of]")].map((one) => [one.dataset["of"], one]));
    for (const one of found ?? []) {
      const outcome = outcomes.get(`${one.material} ${one.substance}`);
      if (outcome === undefined) continue;
      outcome.title = one.value;
      outcome.querySelector("svg")?.replaceWith(stripMark(one.strip, outcome.dataset["says"] ?? "", STRIP_WIDTH));
      outcome.append(el("span", { class: "heard" }, ` ${one.value}`));
    }
  });
  return host;
}

function reasonList(reasons: ReasonView[]): Child {
  return reasons.length === 0 ? null : el("ul", { class: "reasons" }, ...reasons.map((reason) => el("li", { class: `reason reason-${reason.kind}` }, reason.text)));
}

function materialLine(material: Summary["materials"][number]): HTMLElement {
  return el(
    "li",
    { class: "material" },
    el(
      "div",
      { class: "material-head" },
      el("span", {}, el("strong", {}, material.material ?? material.class_text), " ", el("span", { class: "quiet" }, say("page-material-size", { class: material.class_text, n: material.readings }))),
      dispositionTag(material.disposition, material.disposition_text),
    ),
    el("div", { class: "material-outcomes" }, ...material.outcomes.map((outcome) => el("span", { class: "material-outcome", "data-of": `${material.index} ${outcome.substance}`, "data-says": outcome.outcome }, el("span", { class: "symbol" }, outcome.substance), outcomeTag(outcome)))),
    reasonList(material.reasons),
  );
}

/** A tag that says what it means, where there is a term for it. */
function explained(code: string, where: string, tag: HTMLElement): HTMLElement {
  const id = termOfCode(code);
  return id === null ? tag : term(id, where, tag);
}

/** Outcomes down, substances across; each count shows its readings. */
function matrix(summary: Summary): Child {
  const outcomes = new Map<string, OutcomeCount>();
  for (const row of summary.outcome_counts) {
    for (const one of row.counts) if (one.count > 0 && !outcomes.has(one.outcome)) outcomes.set(one.outcome, one);
  }
  if (outcomes.size === 0) return null;
  const codes = [...VERDICTS.filter((code) => outcomes.has(code)), ...[...outcomes.keys()].filter((code) => !VERDICTS.includes(code))];
  return el(
    "section",
    { class: "matrix", "aria-labelledby": "matrix-heading" },
    el("h2", { id: "matrix-heading" }, say("page-matrix-heading")),
    el(
      "div",
      { class: "table-scroll", tabindex: 0, role: "group", "aria-labelledby": "matrix-heading" },
      el(
        "table",
        { class: "counts" },
        el(
          "thead",
          {},
          el(
            "tr",
            {},
            el("th", { scope: "col" }, say("page-matrix-outcome")),
            ...summary.outcome_counts.map((row) => el("th", { scope: "col" }, substanceName(row.substance))),
          ),
        ),
        el("tbody", {}, ...codes.map((code) => matrixRow(code, outcomes.get(code), summary))),
      ),
    ),
  );
}

const VERDICTS = ["OL", "X", "BL"];

function matrixRow(code: string, words: OutcomeCount | undefined, summary: Summary): HTMLElement {
  return el(
    "tr",
    {},
    el("th", { scope: "row" }, words === undefined ? code : explained(code, "matrix", outcomeTag(words))),
    ...summary.outcome_counts.map((row) => {
      const found = row.counts.find((one) => one.outcome === code);
      if (found === undefined || found.count === 0) return el("td", { class: "count-none" }, el("span", { "aria-hidden": "true" }, "\u00b7"), el("span", { class: "heard" }, count(0)));
      return el(
        "td",
        { class: `tone-${outcomeTone(code)}` },
        el(
          "button",
          {
            type: "button",
            class: "count",
            "aria-label": say("page-matrix-show", { n: found.count, substance: substanceName(row.substance), outcome: found.text }),
            on: { click: () => showReadings({ substance: row.substance, outcome: code }) },
          },
          count(found.count),
        ),
      );
    }),
  );
}
