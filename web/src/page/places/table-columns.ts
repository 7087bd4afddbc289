// What each column of a table was taken for: shown over the table's own first rows, and changed there.

import type { BlockView, ChoicesView, ColumnView, SourceView } from "../../shared/door";
import { controlId, pickList, record, refusalLine, takeBackButton, type Pickable } from "../acts-given";
import { headerTarget } from "../act-kinds";
import { valueName } from "../acts-in-force";
import { append, el, focusIn, redraw, type Child } from "../elements";
import { confidenceMark } from "../marks";
import { showPreview } from "../previews";
import { state, watch } from "../state";
import { between, bracketed, count, inRow, say } from "../words";
import { idPattern } from "./id-pattern";

const FEW_ROWS = 8;
const MORE_ROWS = 50;

const rowsWanted = new Map<string, number>();

/** A meaning being put together that says too little yet to be recorded. */
interface Draft {
  role: string;
  of: string;
  unit: string;
  multiple: string;
}
const drafts = new Map<string, Draft>();
watch(["summary"], () => drafts.clear());

const RELATIVE = "relative";
const MEASURED = ["value", "uncertainty", "detection_limit"];

export function tablesOf(source: SourceView): Child[] {
  return [
    ...source.blocks.map((block) => tableOf(source, block, source.blocks.length > 1)),
    source.blocks_left_out > 0 ? el("p", { class: "quiet" }, say("page-blocks-left-out", { n: source.blocks_left_out })) : null,
  ];
}

/** The columns of a file of which nothing was made, or not for certain. */
export function columnsToLookAt(source: SourceView): ColumnView[] {
  return source.blocks.flatMap(toLookAt);
}

function toLookAt(block: BlockView): ColumnView[] {
  return block.columns.filter((column) => column.confidence === "look" && column.heading.trim() !== "");
}

export function columnId(source: SourceView, block: BlockView, column: ColumnView): string {
  return controlId("column", `${source.index}-${block.index}`, String(column.column));
}

function tableOf(source: SourceView, block: BlockView, severalTables: boolean): HTMLElement {
  const id = controlId("table", `${source.index}`, String(block.index));
  const lines = inRow(block.header_lines.map(count));
  const named = say("page-table-name", { name: source.name, line: count(block.header_lines[0] ?? 0) });
  const look = toLookAt(block);
  const rows = el("tbody");
  const under = el("div", { class: "under-rows" });
  const show = (): void => {
    const wanted = rowsWanted.get(id) ?? FEW_ROWS;
    showPreview(source, block, wanted, rows, (preview) => {
      redraw(
        rows,
        ...preview.rows
          .slice(0, wanted)
          .map((row, at) => el("tr", {}, el("th", { scope: "row" }, row.line === null ? count(at + 1) : count(row.line)), ...row.cells.map((cell) => el("td", {}, cell)))),
      );
      redraw(
        under,
        preview.rows_kept <= FEW_ROWS ? null : moreRows(id, wanted, preview.rows_kept, show),
        idPattern(source, block, preview),
      );
    });
  };
  show();
  const others = sameHeadings(source, block);
  return el(
    "section",
    { class: "table-meaning", "aria-label": named },
    severalTables ? el("h3", {}, say("page-table-heading", { line: count(block.header_lines[0] ?? 0) })) : null,
    el(
      "p",
      { class: "quiet" },
      say("page-table-layout", { layout: block.layout_text }),
      between("gap"),
      say("page-table-lines", { n: block.headers, lines: block.headers > block.header_lines.length ? `${lines} \u2026` : lines }),
      others === 0 ? null : [between("gap"), say("page-table-others", { n: others })],
    ),
    look.length === 0
      ? null
      : el(
          "div",
          { class: "look-list" },
          el("p", {}, el("strong", {}, say("page-columns-look", { n: look.length }))),
          el(
            "ul",
            {},
            ...look.map((column) =>
              el("li", {}, el("button", { type: "button", class: "tool", on: { click: () => leadTo(columnId(source, block, column)) } }, `${column.column} ${column.heading}`)),
            ),
          ),
        ),
    el(
      "div",
      { id, class: "table-scroll mapping-scroll", tabindex: 0, role: "group", "aria-label": say("page-columns-caption", { name: named }) },
      el(
        "table",
        { class: "mapping" },
        el("caption", {}, say("page-columns-caption", { name: named })),
        el(
          "thead",
          {},
          el(
            "tr",
            { class: "mapping-meanings" },
            el("th", { scope: "row" }, say("page-columns-as")),
            ...block.columns.map((column) => el("td", { class: `meaning meaning-${column.confidence}` }, meaning(source, block, column))),
          ),
          el(
            "tr",
            {},
            el("th", { scope: "col" }, say("page-columns-line")),
            ...block.columns.map((column) => el("th", { scope: "col" }, el("span", { class: "quiet" }, column.column), " ", column.heading.trim() === "" ? el("em", {}, say("page-columns-unheaded")) : column.heading)),
          ),
        ),
        rows,
      ),
    ),
    under,
  );
}

function moreRows(id: string, wanted: number, kept: number, show: () => void): HTMLElement {
  const press = (): void => {
    rowsWanted.set(id, wanted === FEW_ROWS ? MORE_ROWS : FEW_ROWS);
    show();
  };
  return el(
    "button",
    { type: "button", id: `${id}-rows`, class: "tool", on: { click: press } },
    wanted === FEW_ROWS ? say("page-columns-more-rows", { n: Math.min(MORE_ROWS, kept) }) : say("page-columns-fewer-rows", { n: FEW_ROWS }),
  );
}

function leadTo(id: string): void {
  const list = document.getElementById(`${id}-role`);
  list?.scrollIntoView({ block: "center", inline: "center" });
  focusIn(`${id}-role`);
}

/** How many other files have the same headings: they obey as well. */
function sameHeadings(source: SourceView, block: BlockView): number {
  return (state.summary?.sources ?? []).filter((other) => other.index !== source.index && other.blocks.some((one) => one.fingerprint === block.fingerprint)).length;
}

// ---- one column ----

function draftOf(column: ColumnView): Draft {
  return {
    role: column.role,
    of: column.oxide ?? column.element ?? "",
    unit: column.relative ? RELATIVE : (column.unit ?? ""),
    multiple: column.sigma_multiple ?? "",
  };
}

/** The role as a mapping file writes it. */
function inWords(draft: Draft): string {
  if (!MEASURED.includes(draft.role)) return draft.role;
  const multiple = draft.role === "uncertainty" && draft.multiple !== "" ? `k=${draft.multiple}` : "";
  const unit = draft.unit === RELATIVE && draft.role !== "uncertainty" ? "" : draft.unit;
  return [draft.role, draft.of, unit, multiple].filter((word) => word !== "").join(" ");
}

function meaning(source: SourceView, block: BlockView, column: ColumnView): Child {
  const { choices } = state;
  if (choices === null) return null;
  const id = columnId(source, block, column);
  const host = el("div", { id, class: "meaning-form" });
  fill(host, block, column, choices);
  return host;
}

function fill(host: HTMLElement, block: BlockView, column: ColumnView, choices: ChoicesView): void {
  const { id } = host;
  const target = headerTarget(block.fingerprint);
  const refusal = refusalLine(id);
  const about = say("page-columns-about", { column: column.column, heading: column.heading });
  // In a long table each row names its element; anywhere else a measured column must say which it is of.
  const anyElement = block.layout === "long";
  const take = (part: Partial<Draft>): void => {
    const next = { ...(drafts.get(id) ?? draftOf(column)), ...part };
    drafts.set(id, next);
    if (MEASURED.includes(next.role) && next.of === "" && !anyElement) {
      redraw(host, ...parts(next));
      // The column has grown wider, perhaps out of sight.
      host.scrollIntoView({ block: "nearest", inline: "nearest" });
      focusIn(`${id}-of`);
      return;
    }
    void record({ kind: "column_role", target, value: `${column.column}|${inWords(next)}` }, refusal);
  };
  const list = (part: keyof Draft, now: Draft, label: string, values: Pickable[]): Child =>
    el(
      "div",
      { class: `meaning-part meaning-${part}` },
      // The row says "Taken as" for the eye.
      el("label", { for: `${id}-${part}`, class: part === "role" ? "heard" : undefined }, label, el("span", { class: "heard" }, bracketed(about))),
      pickList({ id: `${id}-${part}`, "aria-describedby": `${id}-why ${id}-refusal` }, values, now[part], (value) => take({ [part]: value })),
    );
  const parts = (now: Draft): Child[] => {
    const measured = MEASURED.includes(now.role);
    const unfinished = measured && now.of === "" && !anyElement;
    return [
      el("p", { class: `confidence confidence-${column.confidence}` }, confidenceMark(column.confidence), el("strong", {}, column.confidence_text)),
      list("role", now, say("page-columns-as"), choices.roles.map((role) => ({ value: role.code, text: role.text, group: say(`page-role-group-${role.group.replaceAll("_", "-")}`) }))),
      measured ? list("of", now, say("page-columns-element"), elementsToPick(choices, now.of, anyElement)) : null,
      measured ? list("unit", now, say("page-columns-unit"), unitsToPick(choices, now.role, block.set_unit)) : null,
      now.role === "uncertainty" ? list("multiple", now, say("page-columns-sigma"), multiplesToPick(choices, now.multiple, block.stated_multiple)) : null,
      unfinished ? el("p", { class: "refusal" }, say("page-columns-which-element")) : null,
      refusal,
      el("p", { id: `${id}-why`, class: "quiet" }, column.why),
      takenBack(block, column, id),
      column.confidence === "look" && column.heading.trim() !== "" && !unfinished
        ? el("button", { type: "button", id: `${id}-right`, class: "tool", on: { click: () => take({}) } }, say("page-columns-right"), el("span", { class: "heard" }, ` ${about}`))
        : null,
    ];
  };
  append(host, parts(drafts.get(id) ?? draftOf(column)));
}

/** A column set by hand says who did it, and is given back to what was found with one press. */
function takenBack(block: BlockView, column: ColumnView, id: string): Child {
  const target = headerTarget(block.fingerprint);
  const act = state.summary?.acts.filter((one) => one.kind === "column_role" && one.target === target && !one.undone && one.value.startsWith(`${column.column}|`)).at(-1);
  return act === undefined ? null : takeBackButton(act, `${id}-back`, `${id}-role`);
}

function elementsToPick(choices: ChoicesView, now: string, any: boolean): Pickable[] {
  const of = (list: string[], group: string): Pickable[] => list.map((symbol) => ({ value: symbol, text: symbol, group: say(group) }));
  const screened = choices.elements.slice(0, 6);
  const oxides = now === "" || choices.elements.includes(now) || choices.oxides.includes(now) ? choices.oxides : [now, ...choices.oxides];
  return [
    ...(any || now === "" ? [{ value: "", text: say(any ? "page-columns-element-in-row" : "page-columns-element-none") }] : []),
    ...of(screened, "page-elements-screened"),
    ...of(choices.elements.slice(6), "page-elements-other"),
    ...of(oxides, "page-elements-oxides"),
  ];
}

function unitsToPick(choices: ChoicesView, role: string, elsewhere: string | null): Pickable[] {
  const units = choices.units.map((unit) => ({ value: unit, text: valueName("unit_of_measure", unit) }));
  return [
    { value: "", text: role !== "value" ? say("page-columns-unit-as-value") : elsewhere === null ? say("page-columns-unit-none") : say("page-columns-elsewhere", { value: valueName("unit_of_measure", elsewhere) }) },
    ...units,
    ...(role === "uncertainty" ? [{ value: RELATIVE, text: say("page-columns-relative") }] : []),
  ];
}

function multiplesToPick(choices: ChoicesView, now: string, elsewhere: string | null): Pickable[] {
  const all = now === "" || choices.multiples.includes(now) ? choices.multiples : [now, ...choices.multiples];
  const none = elsewhere === null ? say("page-columns-sigma-none") : say("page-columns-elsewhere", { value: valueName("sigma_multiple", elsewhere) });
  return [{ value: "", text: none }, ...all.map((multiple) => ({ value: multiple, text: valueName("sigma_multiple", multiple) }))];
}

// ---- evidence for a question ----

const MOST_COLUMNS = 6;

/** What a person needs to see to answer a question: the numbers it is about, as they are written. */
export function evidenceFor(code: string, source: SourceView, lead: string): Child {
  const wanted = ASKED_ABOUT[code];
  if (wanted === undefined) return null;
  const host = el("div");
  const texts = new Map<string, string>();
  for (const block of source.blocks) {
    const columns = block.columns.filter((column) => wanted.column(column, block));
    if (columns.length === 0) continue;
    showPreview(source, block, FEW_ROWS, host, (preview) => {
      for (const column of columns) {
        const cells = preview.columns[block.columns.indexOf(column)];
        const text = cells === undefined ? "" : wanted.text(cells);
        if (text !== "") texts.set(`${block.index}|${column.column}|${column.heading}`, text);
      }
      redraw(host, ...evidenceList(lead, texts));
    });
  }
  return host;
}

function evidenceList(lead: string, texts: Map<string, string>): Child[] {
  if (texts.size === 0) return [];
  const first = [...texts].slice(0, MOST_COLUMNS);
  return [
    el("p", { class: "quiet" }, lead),
    el("ul", { class: "evidence-list" }, ...first.map(([key, text]) => el("li", {}, el("strong", {}, key.split("|").slice(2).join("|")), " ", text))),
    texts.size === first.length ? null : el("p", { class: "quiet" }, say("page-evidence-more", { n: texts.size - first.length })),
  ];
}

interface Looked {
  column: (column: ColumnView, block: BlockView) => boolean;
  text: (cells: { numbers: number; lowest: string; highest: string; unclear: string[]; examples: string[] }) => string;
}

const range: Looked["text"] = (cells) => (cells.numbers === 0 ? "" : say("page-evidence-range", { n: cells.numbers, lowest: cells.lowest, highest: cells.highest }));
const written: Looked["text"] = (cells) => (cells.examples.length === 0 ? "" : say("page-evidence-written", { list: cells.examples.join("   ") }));

const ASKED_ABOUT: Record<string, Looked> = {
  unit_not_stated: { column: (column, block) => column.role === "value" && column.unit === null && block.set_unit === null, text: range },
  sigma_multiple_not_stated: { column: (column, block) => column.role === "uncertainty" && column.sigma_multiple === null && block.stated_multiple === null, text: range },
  decimal_mark_unclear: { column: (column) => MEASURED.includes(column.role), text: (cells) => (cells.unclear.length === 0 ? "" : say("page-evidence-written", { list: cells.unclear.join("   ") })) },
  date_order_unclear: { column: (column) => column.role === "time", text: written },
};
