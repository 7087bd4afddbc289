// The head of a group of readings: what it is, how many it holds, the worst of them, and what became of it where it is a lot.

import type { RowView } from "../shared/door";
import { el, type Child } from "./elements";
import type { Lines } from "./grid-lines";
import { dispositionTag, lotName, outcomeTag } from "./outcomes";
import { state } from "./state";
import { count, say } from "./words";

export function groupHead(lines: Lines, group: number, row: RowView | undefined): Child {
  const n = lines.count(group);
  const worst = lines.found.outcomes[lines.found.worst[group] ?? -1];
  const lot = state.query.group === "lot" ? state.summary?.lots[lines.found.keys[group] ?? -1] : undefined;
  return el(
    "span",
    { class: "group-head" },
    el("span", { class: "group-fold", "aria-hidden": "true" }, lines.isOpen(group) ? "▾" : "▸"),
    el("strong", { class: "group-name" }, nameOf(row, lot)),
    lot?.supplier == null ? null : el("span", { class: "group-count group-of" }, lot.supplier),
    el("span", { class: "group-count" }, say("page-grid-group-count", { n, shown: count(n) })),
    worst === undefined ? null : el("span", { class: "group-worst" }, el("span", { class: "group-worst-word" }, say("page-grid-group-worst")), outcomeTag(worst)),
    lot === undefined ? null : dispositionTag(lot.disposition, lot.disposition_text),
  );
}

function nameOf(row: RowView | undefined, lot: Parameters<typeof lotName>[0] | undefined): string {
  if (state.query.group === "lot") return lot === undefined ? say("page-grid-group-checks") : lotName(lot);
  if (row === undefined) return "\u2026";
  if (state.query.group === "part") return row.part ?? say("page-part-unnamed");
  return row.supplier ?? say("page-grid-group-no-supplier");
}
