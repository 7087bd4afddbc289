// What a laboratory found, material by material of each lot. The screen's outcome stays beside it.

import type { MaterialView, Summary } from "../../shared/door";
import { controlId } from "../acts-given";
import { lotMaterialTarget } from "../act-kinds";
import { standing } from "../acts-in-force";
import { el, type Child } from "../elements";
import { LABORATORY } from "../rows";
import { rowForm, rowsGiven } from "../row-form";
import { state } from "../state";
import { inRow, say } from "../words";
import { lazyFold } from "./lazy-fold";

const MOST = 60;
const FEW = 3;

/** Materials with something open or over first; any may have a result. */
export function laboratoryGiven(summary: Summary): Child {
  // One name may stand for several materials (of two classes, say): they share one target, and so one block.
  const alike = new Map<string, MaterialView[]>();
  for (const one of summary.materials) alike.set(lotMaterialTarget(one), [...(alike.get(lotMaterialTarget(one)) ?? []), one]);
  const all = [...alike];
  const open = all.filter(([target, of]) => of.some((one) => one.disposition !== "accept") || standing("laboratory", target) !== null);
  const rest = all.filter((one) => !open.includes(one));
  return [open, rest].map((list, at) =>
    list.length === 0
      ? null
      : lazyFold(
          `laboratory-${at === 0 ? "open" : "rest"}`,
          "fold fold-inner",
          at === 0 && list.length <= FEW,
          [say(at === 0 ? "page-laboratory-open" : "page-laboratory-rest", { n: list.length })],
          () => [...list.slice(0, MOST).map(([target, of]) => block(target, of)), list.length > MOST ? el("p", { class: "quiet" }, say("page-evidence-materials-left", { n: list.length - MOST })) : null],
        ),
  );
}

function block(target: string, all: MaterialView[]): Child {
  const [of] = all;
  if (of === undefined) return null;
  const reasons = [...new Set(all.flatMap((one) => one.reasons).filter((reason) => reason.effect !== "accept").map((reason) => reason.text))];
  const name = inRow([of.material ?? say("page-material-unnamed"), of.part ?? say("page-part-unnamed"), of.lot ?? say("page-lot-unnamed")]);
  const given = (state.summary?.acts ?? []).some((act) => act.kind === "laboratory" && act.target === target && !act.undone);
  return el(
    "div",
    { id: controlId("laboratory", target), class: "per-lot" },
    el("h3", {}, of.material ?? say("page-material-unnamed"), el("span", { class: "quiet" }, ` ${of.part ?? say("page-part-unnamed")} · ${of.lot ?? say("page-lot-unnamed")}`)),
    reasons.length === 0 ? null : el("ul", { class: "reasons" }, ...reasons.map((text) => el("li", {}, el("p", {}, text)))),
    rowsGiven(LABORATORY, target, controlId("laboratory", target)),
    lazyFold(`${controlId("laboratory", target)}-new`, "fold fold-inner", false, [say(given ? "page-laboratory-another" : "page-laboratory-new")], () => [el("p", { class: "hint" }, say("page-laboratory-hint")), rowForm(LABORATORY, { target, about: name })]),
  );
}
