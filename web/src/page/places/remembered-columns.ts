// What was remembered of columns from another day, what is kept for the next, and how it travels.

import type { Summary } from "../../shared/door";
import { actsOnHeadings, rememberedActs } from "../browser-store";
import { el, type Child } from "../elements";
import { canRecall, forgetRemembered, recallForgotten, saveMapping } from "../remembered";
import { state } from "../state";
import { between, say } from "../words";

/** Said where it is used: what another day's answers did to these files. */
export function rememberedColumns(summary: Summary): Child[] {
  const used = rememberedActs(summary);
  const headings = new Set(used.map((act) => act.target)).size;
  return [
    headings === 0
      ? null
      : el(
          "p",
          { class: "remembered-used" },
          el("span", {}, el("strong", {}, say("page-remembered-used", { n: headings })), between("gap"), say("page-remembered-meanings", { n: used.length })),
          el("button", { type: "button", id: "forget-columns", class: "tool", on: { click: () => void forgetRemembered() } }, say("page-remembered-forget")),
        ),
    canRecall(summary)
      ? el("p", { class: "remembered-used" }, el("span", {}, say("page-remembered-forgotten")), el("button", { type: "button", id: "recall-columns", class: "tool", on: { click: () => void recallForgotten() } }, say("page-remembered-recall")))
      : null,
  ];
}

export function keptColumns(summary: Summary): Child {
  const toSave = actsOnHeadings(summary).length;
  return el(
    "section",
    { class: "remembered", "aria-labelledby": "remembered-heading" },
    el("h2", { id: "remembered-heading" }, say("page-remembered-heading")),
    el(
      "div",
      { class: "remembered-tools" },
      toSave === 0 ? null : el("button", { type: "button", id: "save-mapping", class: "tool", on: { click: () => void saveMapping() } }, say("page-mapping-save")),
    ),
    el("p", { class: "hint" }, say(state.kept === "refused" ? "page-kept-refused" : state.kept === "nothing" ? "page-kept-nothing-hint" : "page-kept-hint")),
  );
}
