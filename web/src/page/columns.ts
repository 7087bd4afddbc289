// The columns of the table of readings. Two things that belong together share one column, one above the other.

import type { CellView, RowView } from "../shared/door";
import { el, type Child } from "./elements";
import type { Column } from "./grid";
import { outcomeTone } from "./marks";
import { outcomeCell, substanceName } from "./outcomes";
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

function outcome(id: string, heading: string, sort: string | null, pick: (row: RowView) => CellView | undefined): Column {
  return {
    id,
    heading,
    sort,
    unit: "mg/kg",
    // Nine columns fit a 1280 px window.
    width: 132,
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

export function readingColumns(withHalogens: boolean, narrow: boolean): Column[] {
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
  if (withHalogens) {
    columns.push(
      ...HALOGENS.map((symbol, at) =>
        outcome(`halogen-${symbol}`, symbol === "total" ? substanceName(symbol) : say("page-column-halogen", { symbol }), symbol, (row) => row.halogens[at]),
      ),
    );
  }
  columns.push(
    { id: "part", heading: say("page-column-part"), sort: "part", width: 160, cell: (row) => two(row.part, [row.material]) },
    { id: "lot", heading: say("page-column-lot"), sort: "lot", width: 150, cell: (row) => two(row.lot, [row.supplier]) },
    { id: "class", heading: say("page-column-class"), sort: "class", width: 132, cell: (row) => two(row.class_text, [hasFrom(row.class_from)]) },
    { id: "file", heading: say("page-column-file"), sort: "file", width: 170, cell: (row) => two(row.source, [say("page-at-line", { line: count(row.line) })]) },
    { id: "trust", heading: say("page-column-trust"), sort: null, width: 130, cell: (row) => two(row.trust_text, []) },
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
  return SUBSTANCES.includes(sort) || sort === "Cl" ? say("page-order-value", { symbol: sort }) : say(`page-order-${sort}`);
}
