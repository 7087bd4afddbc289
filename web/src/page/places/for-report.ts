// What only a person can state for the report: who issues it and for whom, how the items came and looked, who signs.

import type { LotView, Summary } from "../../shared/door";
import { controlId, entry, listed } from "../acts-given";
import { fieldsIn, lotTarget } from "../act-kinds";
import { standing } from "../acts-in-force";
import { el, type Child } from "../elements";
import { lotName } from "../outcomes";
import { state } from "../state";
import { rowForm, rowsGiven, type Row } from "../row-form";
import { say } from "../words";
import { lazyFold } from "./lazy-fold";
import { worstFirst } from "./reasons";

const MOST = 60;

const ISSUER: Row = { kind: "issuer", once: true, fields: [{ name: "name", type: "text", needed: true }, { name: "address", type: "text" }] };
const CUSTOMER: Row = { kind: "customer", once: true, fields: [{ name: "name", type: "text", needed: true }, { name: "contact", type: "text" }] };
const AUTHORISED: Row = { kind: "authorised", once: true, fields: [{ name: "by", type: "text", needed: true }, { name: "second", type: "text" }] };
const ITEM: Row = { kind: "item", once: true, fields: [{ name: "description", type: "text" }, { name: "condition", type: "text" }] };
const SAMPLED: Row = { kind: "sampled", once: true, fields: [{ name: "date", type: "date" }, { name: "by", type: "text" }, { name: "place", type: "text" }, { name: "method", type: "text" }] };

export function statedForReport(summary: Summary): Child {
  return lazyFold("report-stated", "fold fold-inner", false, [say("page-stated")], () => [
    el("p", { class: "quiet" }, say("page-stated-why")),
    el(
      "div",
      { class: "controls" },
      entry({ kind: "issued_on" }, "date"),
      entry({ kind: "received" }, "date"),
      entry({ kind: "environment" }, "text"),
      entry({ kind: "deviations" }, "text"),
      entry({ kind: "instrument" }, "text"),
      entry({ kind: "records_kept" }, "text"),
      listed({ kind: "invented", none: say("page-stated-invented-none") }, ["yes", "no"]),
    ),
    ...[ISSUER, ...(state.door === "ship" ? [] : [CUSTOMER]), ITEM, SAMPLED, AUTHORISED].map((row) => stated(row, "", say("page-stated-all"))),
    perLot(summary),
  ]);
}

/** On the sheet of a supplier the customer stands at the head. */
export function customerStated(): HTMLElement {
  return stated(CUSTOMER, "", say("page-stated-all"));
}

function stated(row: Row, target: string, about: string): HTMLElement {
  const id = controlId("stated", target, row.kind);
  const now = standing(row.kind, target);
  return el(
    "div",
    { id },
    rowsGiven(row, target, id),
    lazyFold(`${id}-form`, "fold fold-inner", false, [say(`page-stated-${row.kind}`)], () => [rowForm(row, { target, about, where: id, now: now === null ? {} : fieldsIn(now.value) })]),
  );
}

/** Lots that came another day or looked otherwise. */
function perLot(summary: Summary): HTMLElement {
  const targets = new Set<string>();
  const lots = worstFirst(summary.lots).filter((lot) => !targets.has(lotTarget(lot)) && targets.add(lotTarget(lot)));
  if (lots.length < 2) return el("span", {});
  return lazyFold("stated-lots", "fold fold-inner", false, [say("page-stated-lots", { n: lots.length })], () => [
    ...lots.slice(0, MOST).map(block),
    lots.length > MOST ? el("p", { class: "quiet" }, say("page-evidence-lots-left", { n: lots.length - MOST })) : el("span", {}),
  ]);
}

function block(lot: LotView): HTMLElement {
  const target = lotTarget(lot);
  const about = lotName(lot);
  return el(
    "div",
    { class: "per-lot" },
    el("h3", {}, about, lot.supplier === null ? null : el("span", { class: "quiet" }, ` ${lot.supplier}`)),
    entry({ kind: "received", target, wider: [""], about, bare: true }, "date"),
    stated(ITEM, target, about),
    stated(SAMPLED, target, about),
  );
}
