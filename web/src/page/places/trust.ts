// Can we trust it? What was not given, what that does to the lots, and the control that gives it.

import type { Summary } from "../../shared/door";
import { choice, controlId, entry } from "../acts-given";
import { EVIDENCE, lotTarget, type Evidence } from "../act-kinds";
import { el, redraw, type Child } from "../elements";
import { lotName, namesOf } from "../outcomes";
import { goTo } from "../place";
import { state } from "../state";
import { say } from "../words";
import { gatherReasons, isOpen, worstFirst, type GatheredReason } from "./reasons";
import { partsGiven } from "./parts-given";
import { siteTable } from "./site-table";

const MOST_LOTS = 100;

/** How many kinds of evidence are missing. */
export function trustNeeds(summary: Summary): number {
  return new Set(gatherReasons(summary, "evidence").filter(isOpen).map((reason) => reason.code)).size;
}

export function drawTrust(host: HTMLElement): void {
  const { summary } = state;
  if (summary === null) {
    redraw(host, el("p", { class: "empty" }, say("page-nothing-yet")));
    return;
  }
  const missing = gatherReasons(summary, "evidence");
  const told = new Set<string>();
  const cards = EVIDENCE.map((evidence) => {
    const reasons = missing.filter((reason) => evidence.reasons.includes(reason.code));
    for (const reason of reasons) told.add(reason.code);
    return card(evidence, reasons, summary);
  });
  const others = missing.filter((reason) => !told.has(reason.code));
  redraw(
    host,
    el("div", { class: "cards" }, ...cards),
    others.length === 0
      ? null
      : el(
          "section",
          { class: "card card-open" },
          el("h2", {}, say("page-trust-others")),
          el("ul", { class: "reasons" }, ...others.map(effect)),
          others.some((reason) => reason.code === "rows_refused") ? el("div", {}, el("button", { type: "button", class: "second", on: { click: () => goTo("came-in") } }, say("page-next-files"))) : null,
        ),
    books(summary),
  );
}

function effect(reason: GatheredReason): HTMLElement {
  return el(
    "li",
    {},
    el("p", {}, ...[...new Set(reason.said.map((one) => one.text))].slice(0, 3).map((text) => el("span", { class: "sentence" }, text))),
    el("p", { class: "quiet" }, reason.remedy, " ", say("page-trust-lots", { n: reason.lots.length, names: namesOf(reason.lots) })),
  );
}

function card(evidence: Evidence, reasons: GatheredReason[], summary: Summary): HTMLElement {
  const open = reasons.some(isOpen);
  const id = `evidence-${evidence.id}`;
  return el(
    "section",
    { class: open ? "card card-open" : "card", id, "aria-labelledby": `${id}-heading` },
    el(
      "header",
      {},
      el("h2", { id: `${id}-heading`, tabindex: -1 }, say(`page-evidence-${evidence.id}`)),
      el("span", { class: open ? "flag flag-strong" : "flag flag-quiet" }, say(open ? "page-evidence-missing" : reasons.length > 0 ? "page-evidence-advisory" : "page-evidence-nothing-missing")),
    ),
    el("p", { class: "quiet" }, say(`page-evidence-${evidence.id}-why`, { check: summary.totals.rows_check })),
    reasons.length > 0 ? el("ul", { class: "reasons" }, ...reasons.map(effect)) : null,
    el("div", { class: "controls" }, ...evidence.acts.map((act) => ("values" in act ? choice({ kind: act.kind }, act.values) : entry({ kind: act.kind }, act.type, act.traits)))),
    evidence.perLot.length > 0 && summary.lots.length > 1 ? perLot(evidence, summary) : null,
    evidence.id === "materials" ? partsGiven(summary) : null,
    evidence.id === "sigma" ? siteTable(summary) : null,
    evidence.id === "halogens" ? halogenBook(summary) : null,
  );
}

function halogenBook(summary: Summary): HTMLElement {
  const names = Object.fromEntries(summary.rule_books.filter((book) => book.has_halogens).map((book) => [book.id, book.title]));
  return choice({ kind: "halogen_book" }, Object.keys(names), names);
}

function perLot(evidence: Evidence, summary: Summary): HTMLElement {
  const lots = worstFirst(summary.lots).slice(0, MOST_LOTS);
  return el(
    "details",
    { id: `evidence-${evidence.id}-lots`, class: "fold fold-inner" },
    el("summary", {}, say("page-evidence-per-lot", { n: summary.lots.length })),
    ...lots.map((lot) =>
      el(
        "div",
        { class: "per-lot" },
        el("h3", {}, lotName(lot), lot.supplier === null ? null : el("span", { class: "quiet" }, ` ${lot.supplier}`)),
        el("div", { class: "controls" }, ...evidence.perLot.map((act) => entry({ kind: act.kind, target: lotTarget(lot), about: lotName(lot), bare: true }, act.type, act.traits))),
      ),
    ),
    summary.lots.length > lots.length ? el("p", { class: "quiet" }, say("page-evidence-lots-left", { n: summary.lots.length - lots.length })) : null,
  );
}

function books(summary: Summary): Child {
  return el(
    "section",
    { class: "books", "aria-labelledby": "books-heading" },
    el("h2", { id: "books-heading" }, say("page-books-heading", { n: summary.rule_books.length })),
    ...summary.rule_books.map((book) =>
      el(
        "details",
        { id: controlId("book", book.id), class: "fold" },
        el("summary", {}, el("span", { class: "source-name" }, book.title), el("span", { class: "quiet" }, book.edition)),
        el(
          "dl",
          { class: "facts" },
          el("dt", {}, say("page-book-source")), el("dd", {}, book.source),
          el("dt", {}, say("page-book-confidence")), el("dd", {}, book.confidence),
          el("dt", {}, say("page-book-id")), el("dd", {}, el("code", {}, book.id)),
          el("dt", {}, say("page-source-digest")), el("dd", { class: "digest" }, el("code", {}, book.sha256)),
        ),
      ),
    ),
  );
}
