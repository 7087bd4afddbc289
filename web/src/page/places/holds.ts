// Lots on hold: who ends the hold and by when, and what two people may lift.

import type { LotView, ReasonView, Summary } from "../../shared/door";
import { controlId } from "../acts-given";
import { lotTarget } from "../act-kinds";
import { standing } from "../acts-in-force";
import { el, type Child } from "../elements";
import { fieldsIn } from "../act-kinds";
import { dispositionTag, lotName } from "../outcomes";
import { HOLD_ENDS, lift } from "../rows";
import { rowForm, rowsGiven } from "../row-form";
import { between, say } from "../words";
import { lazyFold } from "./lazy-fold";
import { worstFirst } from "./reasons";

const MOST = 60;
const FEW = 3;

export function holdsGiven(summary: Summary): Child {
  const targets = new Set<string>();
  const held = worstFirst(summary.lots).filter((lot) => (lot.disposition !== "accept" || given(lot)) && !targets.has(lotTarget(lot)) && targets.add(lotTarget(lot)));
  if (held.length === 0) return el("p", { class: "quiet" }, say("page-holds-none"));
  return el(
    "details",
    { id: "holds-lots", class: "fold fold-inner", open: held.length <= FEW },
    el("summary", {}, say("page-holds-lots", { n: held.length })),
    ...held.slice(0, MOST).map(block),
    held.length > MOST ? el("p", { class: "quiet" }, say("page-evidence-lots-left", { n: held.length - MOST })) : null,
  );
}

function given(lot: LotView): boolean {
  return ["lift", "hold_ends"].some((kind) => standing(kind, lotTarget(lot)) !== null);
}

function block(lot: LotView): HTMLElement {
  const target = lotTarget(lot);
  const id = controlId("holds", target);
  const ends = standing("hold_ends", target);
  const others = lot.reasons.filter((reason) => reason.effect !== "accept" && !reason.liftable);
  const liftable = lot.reasons.filter((reason) => reason.effect === "hold" && reason.liftable);
  return el(
    "div",
    { id, class: "per-lot" },
    el("h3", {}, lotName(lot), lot.supplier === null ? null : el("span", { class: "quiet" }, ` ${lot.supplier}`), " ", dispositionTag(lot.disposition, lot.disposition_text)),
    rowsGiven(HOLD_ENDS, target, id),
    rowsGiven({ kind: "lift" }, target, id),
    others.length === 0 ? null : el("ul", { class: "reasons" }, ...others.map((reason) => el("li", {}, reason.text))),
    lot.disposition === "accept"
      ? null
      : lazyFold(`${id}-ends`, "fold fold-inner", false, [say("page-holds-ends")], () => [rowForm(HOLD_ENDS, { target, about: lotName(lot), now: ends === null ? {} : fieldsIn(ends.value) })]),
    ...liftable.map((reason) => liftOne(lot, reason)),
  );
}

// Named by what it lifts: else the next hold would step into the place, and the focus, of the one just lifted.
function liftOne(lot: LotView, reason: ReasonView): HTMLElement {
  const id = controlId("lift", lotTarget(lot), `${reason.code} ${reason.about}`);
  return lazyFold(
    id,
    "fold fold-inner",
    false,
    // In one box: a fold sets its boxes side by side, and two of them are too narrow on a phone.
    [el("span", {}, say("page-holds-lift"), between("gap"), el("span", { class: "quiet" }, reason.text))],
    () => [el("p", { class: "hint" }, say("page-holds-lift-hint")), rowForm(lift(reason.code, reason.about), { target: lotTarget(lot), about: `${lotName(lot)}${between("colon")}${reason.text}`, where: id })],
  );
}
