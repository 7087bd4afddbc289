// How an outcome, a disposition and a place in a file are written wherever they stand.

import type { Disposition, LotView, OutcomeMark } from "../shared/door";
import { el } from "./elements";
import { cautionMark, dispositionMark, outcomeMark, outcomeTone } from "./marks";
import { count, inRow, say } from "./words";

/** Drawing, code and words of one outcome. */
export function outcomeTag(of: Pick<OutcomeMark, "outcome" | "short" | "text">): HTMLElement {
  // Where the short form is a piece of the words, the words alone say it all.
  const inShort = of.text.includes(of.short) ? of.text : of.short;
  const inWords = inShort === of.text ? "" : of.text;
  return el(
    "span",
    { class: `outcome tone-${outcomeTone(of.outcome)}` },
    outcomeMark(of.outcome),
    el("strong", {}, inShort),
    inWords === "" ? null : el("span", { class: "outcome-words" }, inWords),
  );
}

export function dispositionTag(disposition: Disposition, text: string): HTMLElement {
  return el("span", { class: `disposition disposition-${disposition}` }, dispositionMark(disposition), el("strong", {}, text));
}

/** Sign and word in front of what is doubtful. */
export function cautionTag(): HTMLElement {
  return el("strong", { class: "caution-tag" }, cautionMark(), say("page-caution"));
}

export function inFile(line: number | null, column: number | null, heading: string | null): string {
  const parts: string[] = [];
  if (line !== null) parts.push(say("page-at-line", { line: count(line) }));
  if (column !== null) {
    parts.push(
      heading === null ? say("page-at-column", { column: count(column) }) : say("page-at-column-headed", { column: count(column), heading }),
    );
  }
  return inRow(parts);
}

/** The name a lot goes by where it stands in a list. */
export function lotName(lot: { lot: string | null; supplier: string | null; source: string | null }): string {
  if (lot.lot !== null) return lot.lot;
  return lot.source === null ? say("page-lot-unnamed") : say("page-lot-of-source", { source: lot.source });
}

/** Elements go by their symbol; the sum of the halogens has a name. */
export function substanceName(substance: string): string {
  return substance === "total" ? say("page-column-halogen-total") : substance;
}

export function namesOf(lots: LotView[]): string {
  const names = inRow(lots.slice(0, 4).map(lotName));
  return lots.length > 4 ? say("page-and-more", { names, n: lots.length - 4 }) : names;
}
