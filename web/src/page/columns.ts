// The columns of the table of readings. Two things that belong together share one column, one above the other.

import type { CellView, RowView } from "../shared/door";
import { el, type Child } from "./elements";
import type { Column } from "./grid";
import { stripMark } from "./grid-strip";
import { outcomeMark, outcomeTone } from "./marks";
import { substanceName } from "./outcomes";
import { count, say } from "./words";

function two(upper: string | null, lower: (string | null)[]): Child {
  const beneath = lower.filter((part) => part !== null && part !== "").join(" \u00b7 ");
  return el(
    "div",
    { class: "cell-two", title: [upper, beneath].filter((part) => part !== null && part !== "").join("\n") },
    el("span", { class: "cell-upper" }, upper ?? "\u2014"),
    el("span", { class: "cell-lower" }, beneath),
  );
}

// Nine columns fit a 1280 px window.
const OUTCOME_WIDTH = 132;
// A sum has more digits.
const TOTAL_WIDTH = 156;
const STRIP_WIDTH = OUTCOME_WIDTH - 2 * 8;
// A word in place of a code leaves no room for the number beside it, so the strip makes it below.
const CODE_LENGTH = 3;
const STRIP_BESIDE_WIDTH = 52;

// The heading of the column says both once; in every cell they would push the number out of sight.
const UNIT_OF_THE_TABLE = " mg/kg";
const SIGMA_OF_THE_TABLE = / ?[(（]1[sσ][)）]/;

/** An outcome in a cell: its code, its number, and the ruler they are read off. The words are there for ears and on pointing. */
function outcomeCell(cell: CellView): HTMLElement {
  const code = el("strong", {}, cell.short);
  const words = cell.short === cell.text ? null : el("span", { class: "heard" }, ` ${cell.text}`);
  const value = el("span", { class: "outcome-value" }, cell.value.replace(UNIT_OF_THE_TABLE, "").replace(SIGMA_OF_THE_TABLE, ""));
  const title = `${cell.text} \u00b7 ${cell.value}`;
  const long = cell.short.length > CODE_LENGTH;
  const strip = cell.strip === null ? outcomeMark(cell.outcome) : stripMark(cell.strip, cell.outcome, long ? STRIP_BESIDE_WIDTH : STRIP_WIDTH);
  // A mark that only says which way stands with the code, and leaves the line below to the number.
  if (cell.strip === null && !long) return el("div", { class: "outcome-cell", title }, el("span", { class: "outcome-line" }, strip, code, words), value);
  return long
    ? el("div", { class: "outcome-cell", title }, el("span", { class: "outcome-line" }, code, words), el("span", { class: "outcome-line" }, strip, value))
    : el("div", { class: "outcome-cell", title }, el("span", { class: "outcome-line outcome-apart" }, code, words, value), strip);
}

function outcome(id: string, heading: string, sort: string | null, pick: (row: RowView) => CellView | undefined): Column {
  return {
    id,
    heading,
    sort,
    unit: "mg/kg \u00b1 1s",
    term: id.startsWith("halogen-") ? "halogens" : "sigma",
    width: id === "halogen-total" ? TOTAL_WIDTH : OUTCOME_WIDTH,
    cell: (row) => {
      const cell = pick(row);
      return cell === undefined ? null : outcomeCell(cell);
    },
    tone: (row) => outcomeTone(pick(row)?.outcome ?? ""),
  };
}

// The order of RowView.cells and RowView.halogens.
const SUBSTANCES = ["Cd", "Pb", "Hg", "Cr", "Br"];
const HALOGENS = ["Cl", "Br", "total"];

/** The column that stays in place while the others slide: it is always there. */
export const FIXED_COLUMN = "id";

/** The symbol of an element's column, or null for any other column. */
export function otherElement(id: string): string | null {
  return id.startsWith(OTHER) ? id.slice(OTHER.length) : null;
}

const OTHER = "element-";

/** Every column there is. `others` are the elements that no outcome speaks of; `asked` those whose values the rows carry. */
export function readingColumns(others: string[], asked: string[], narrow: boolean): Column[] {
  const columns: Column[] = [
    {
      id: "id",
      heading: say("page-column-sample"),
      sort: "id",
      // It stays in place while the others slide, so on a small screen it must leave them room.
      width: narrow ? 108 : 148,
      cell: (row) =>
        two(row.id ?? say("page-line-name", { line: count(row.line) }), [
          row.unit === null ? null : say("page-unit-name", { unit: row.unit }),
          row.spot === null ? null : say("page-spot-name", { spot: row.spot }),
        ]),
    },
    ...SUBSTANCES.map((symbol, at) => outcome(symbol, symbol, symbol, (row) => row.cells[at])),
  ];
  columns.push(
    ...HALOGENS.map((symbol, at) =>
      outcome(`halogen-${symbol}`, symbol === "total" ? substanceName(symbol) : say("page-column-halogen", { symbol }), symbol, (row) => row.halogens[at]),
    ),
    { id: "part", heading: say("page-column-part"), term: "homogeneous", sort: "part", width: 160, cell: (row) => two(row.part, [row.material]) },
    { id: "lot", heading: say("page-column-lot"), term: "lot", sort: "lot", width: 150, cell: (row) => two(row.lot, [row.supplier]) },
    { id: "class", heading: say("page-column-class"), term: "class", sort: "class", width: 132, cell: (row) => two(row.class_text, [hasFrom(row.class_from)]) },
    { id: "file", heading: say("page-column-file"), sort: "file", width: 170, cell: (row) => two(row.source, [say("page-at-line", { line: count(row.line) })]) },
    { id: "trust", heading: say("page-column-trust"), term: "trust", sort: null, width: 130, cell: (row) => two(row.trust_text, []) },
    ...others.map((symbol) => ({
      id: OTHER + symbol,
      heading: symbol,
      sort: symbol,
      width: 132,
      cell: (row: RowView) => el("span", { class: "other-value" }, row.others[asked.indexOf(symbol)] ?? ""),
    })),
  );
  return columns;
}

function hasFrom(code: string): string {
  return say(`page-class-from-${code.replaceAll("_", "-")}`);
}

/** What the order can be chosen by, beyond the headings. */
export const ORDERS = ["worst", "file", "id", "part", "material", "lot", "supplier", "class", ...SUBSTANCES, "Cl", "total"];

export function orderName(sort: string): string {
  if (sort === "total") return say("page-order-value", { symbol: substanceName(sort) });
  // Besides the named orders there are only elements.
  return ORDERS.indexOf(sort) < 0 || SUBSTANCES.includes(sort) || sort === "Cl" ? say("page-order-value", { symbol: sort }) : say(`page-order-${sort}`);
}
