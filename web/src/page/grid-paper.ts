// The table on paper. A column that does not fit a sheet is left out whole and named, instead of being cut at the sheet's edge;
// so are the rows that were not in sight.

import type { Column } from "./grid";
import { between, inRow, say } from "./words";

// At most so many pixels of the screen's columns share the width of a sheet, whichever sheet it is: with more, their numbers would
// be too small to read. (Our choice: the sample and every outcome fit.)
const ROOM = 1400;

/** Lays out what is there for a sheet, and says what is not on it. `lines` is how many the whole table has. */
export function layOnPaper(root: HTMLElement, columns: readonly Column[], lines: number): string {
  let width = 0;
  const fitting = columns.filter((column) => (width += column.width) <= ROOM);
  root.style.setProperty("--paper-columns", fitting.map((column) => `minmax(0, ${column.width}fr)`).join(" "));
  const rows = [...root.querySelectorAll<HTMLElement>(".grid-row")];
  for (const row of rows) {
    for (const [at, cell] of [...row.children].entries()) cell.classList.toggle("off-paper", at >= fitting.length && row.dataset["kind"] !== "head");
  }
  const told: string[] = [];
  const shown = rows.filter((row) => row.dataset["at"] !== undefined && !row.classList.contains("grid-parked")).map((row) => Number(row.dataset["at"]));
  if (shown.length < lines) told.push(say("page-grid-paper-rows", { from: Math.min(...shown) + 1, to: Math.max(...shown) + 1, n: lines }));
  if (fitting.length < columns.length) told.push(say("page-grid-paper-columns", { names: inRow(columns.slice(fitting.length).map((column) => column.heading)) }));
  if (told.length > 0) told.push(say("page-grid-paper-all"));
  return told.join(between("gap"));
}
