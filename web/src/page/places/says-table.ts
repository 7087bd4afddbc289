// What does it say, reading by reading: the filters, the table, and the one reading that is looked at closely.

import type { Summary } from "../../shared/door";
import { showRefusal } from "../acts-given";
import { readingColumns } from "../columns";
import { detailContent, readingTitle } from "../detail";
import { append, el, type Child } from "../elements";
import { Grid } from "../grid";
import { SettingAside } from "../grid-aside";
import { ColumnChoice } from "../grid-columns";
import { Copying } from "../grid-copy";
import { Filters } from "../grid-filters";
import { groupHead } from "../grid-heads";
import { fetchDetail, fetchRows, showOrder } from "../looking";
import { typedNumber } from "../numbers";
import { change, state, watch } from "../state";
import { count, say, sayMarkup } from "../words";

const LOOKING_MS = 120;

export function makeSaysTable(host: HTMLElement): void {
  /** The elements whose values the rows carry, beyond those that are judged. */
  let asked: string[] = [];
  /** The groups a person unfolded, by their keys, as long as the grouping stays. */
  let unfolded = new Set<number>();
  let groupedBy = "";

  const grid = new Grid({
    label: "page-readings-label",
    sortLabel: (column) => say("page-sort-by", { column: column.heading }),
    fetch: (indices) => fetchRows(indices, asked),
    sort: (by) => {
      const same = state.query.sort === by;
      void showOrder({ ...state.query, sort: by, descending: same ? !state.query.descending : false });
    },
    pick: (index, how) => look(index, how),
    head: (lines, group, row): Child => groupHead(lines, group, row),
    selected: (n) => drawSelection(n),
    folded: () => undefined,
    copy: () => void copy(),
  });

  const narrow = matchMedia("(max-width: 40rem)");
  narrow.addEventListener("change", columnsAgain);

  // ---- filters ----
  const filters = new Filters();
  const columns = new ColumnChoice(columnsAgain);
  const shown = el("p", { id: "readings-shown", class: "readings-shown" });
  const goto = el("input", { id: "go-to-row", type: "text", inputmode: "numeric", autocomplete: "off", "aria-describedby": "go-to-row-refusal" });
  const noSuchRow = el("p", { id: "go-to-row-refusal", class: "refusal", hidden: true });

  function goToRow(): void {
    const typed = typedNumber(goto.value, "whole");
    const row = typed === null ? 0 : Number(typed);
    const there = row >= 1 && row <= state.order.length;
    goto.setAttribute("aria-invalid", String(!there));
    showRefusal(noSuchRow, there ? "" : say("page-no-such-row", { typed: goto.value, of: state.order.length }));
    if (!there) return;
    grid.root.scrollIntoView({ block: "nearest" });
    grid.focusPlace(row - 1);
  }
  const jump = el(
    "form",
    {
      class: "jump",
      on: {
        submit: (event) => {
          event.preventDefault();
          goToRow();
        },
      },
    },
    el("label", { for: "go-to-row", "data-say": "page-go-to-row" }),
    goto,
    el("button", { type: "submit", class: "tool", "data-say": "page-go" }),
  );

  // ---- what is selected ----
  const copying = new Copying();
  const aside = new SettingAside(
    () => grid.selection.within(state.order),
    () => {
      grid.clearSelection();
      allButton.focus();
    },
  );
  const selected = el("p", { id: "readings-selected", class: "readings-selected", "aria-live": "polite" });
  const copyButton = el("button", { type: "button", id: "selection-copy", class: "tool", on: { click: () => void copy() }, "data-say": "page-grid-copy" });
  const noneButton = el("button", {
    type: "button",
    id: "selection-none",
    class: "tool",
    on: {
      click: () => {
        grid.clearSelection();
        allButton.focus();
      },
    },
    "data-say": "page-grid-select-none",
  });
  const allButton = el("button", { type: "button", id: "selection-all", class: "tool", on: { click: () => grid.selectAll() }, "data-say": "page-grid-select-all" });
  function drawSelection(n: number): void {
    copying.clear();
    selected.textContent = n === 0 ? "" : say("page-grid-selected", { n, shown: count(n) });
    copyButton.hidden = n === 0;
    noneButton.hidden = n === 0;
    aside.offer(n > 0);
  }
  function copy(): Promise<void> {
    const chosen = grid.selection.within(state.order);
    // With nothing selected, the row with the focus is meant.
    const here = grid.activeReading();
    const indices = chosen.length > 0 || here === null ? chosen : Uint32Array.of(here);
    return copying.copy(indices, shownColumns);
  }

  // ---- groups ----
  const folds = el(
    "div",
    { class: "folds", hidden: true },
    el("button", { type: "button", id: "fold-all", class: "tool", on: { click: () => grid.foldAll(false) }, "data-say": "page-grid-fold-all" }),
    el("button", { type: "button", id: "unfold-all", class: "tool", on: { click: () => grid.foldAll(true) }, "data-say": "page-grid-unfold-all" }),
  );

  // ---- the reading looked at ----
  const heading = el("h2", { id: "detail-heading", tabindex: -1 });
  const close = el("button", { type: "button", id: "detail-close", class: "tool", on: { click: () => leave() }, "data-say": "page-detail-close" });
  const content = el("div", { class: "detail-content" });
  const panel = el("section", { id: "detail", class: "detail", hidden: true, "aria-labelledby": "detail-heading" }, el("header", { class: "detail-head" }, heading, close), content);
  panel.addEventListener("keydown", (event) => {
    if (event.key === "Escape") leave();
  });

  let looking = 0;
  let lookedAt: number | null = null;
  let wantFocus = false;
  let wantSight = false;
  function look(index: number, how: "passed" | "pressed" | "entered"): void {
    wantFocus = how === "entered";
    wantSight = how !== "passed";
    lookedAt = index;
    change({ selected: index });
    grid.setPicked(index);
    clearTimeout(looking);
    looking = window.setTimeout(() => void showDetail(index), LOOKING_MS);
  }
  async function showDetail(index: number): Promise<void> {
    const detail = await fetchDetail(index);
    if (detail === null || state.selected !== index) return;
    heading.textContent = readingTitle(detail);
    content.replaceChildren();
    append(content, detailContent(detail, (other) => look(other, "entered")));
    const opened = panel.hidden;
    panel.hidden = false;
    split.classList.add("split-open");
    if (opened) panel.scrollTop = 0;
    if (wantFocus) heading.focus({ preventScroll: true });
    // On a narrow screen it opens below the table, where nobody would notice it.
    if (wantSight && panel.offsetTop > grid.root.offsetTop) panel.scrollIntoView({ block: "start" });
    wantFocus = false;
    wantSight = false;
  }
  function leave(): void {
    const inside = panel.contains(document.activeElement);
    const index = state.selected;
    shut();
    const at = index === null ? -1 : state.order.indexOf(index);
    if (inside) grid.focusPlace(Math.max(0, at));
  }
  function shut(): void {
    lookedAt = null;
    panel.hidden = true;
    split.classList.remove("split-open");
    change({ selected: null });
    grid.setPicked(null);
  }

  // An address that is gone back to opens and shuts readings too.
  watch(["selected"], () => {
    if (state.selected === lookedAt) return;
    if (state.selected === null) shut();
    else look(state.selected, "pressed");
  });

  const split = el("div", { class: "split" }, grid.root, panel);
  const paper = el("p", { id: "readings-paper", class: "on-paper" });
  addEventListener("beforeprint", () => {
    paper.textContent = grid.onPaper();
  });
  const empty = el("p", { class: "empty", hidden: true, "data-say": "page-readings-none" });
  const all = el(
    "div",
    { hidden: true },
    el("h2", { id: "readings-heading", tabindex: -1, "data-say": "page-readings-heading" }),
    el("div", { id: "legend-home" }),
    filters.root,
    el("div", { class: "under-filters" }, shown, folds, columns.root, jump),
    noSuchRow,
    empty,
    paper,
    split,
    el("div", { class: "under-filters selecting" }, selected, copyButton, allButton, noneButton, copying.root),
    aside.root,
    el("p", { class: "quiet", "data-say": "page-readings-keys" }),
    el("p", { class: "quiet", "data-say": "page-grid-keys" }),
  );
  sayMarkup(all);
  host.append(all);
  drawSelection(0);

  // ---- what changes ----
  let shownColumns: string[] = [];
  function columnsAgain(): void {
    const others = state.summary?.other_elements ?? [];
    const wanted = others.filter((symbol) => columns.isShown(`element-${symbol}`));
    const chosen = columns.of(readingColumns(others, wanted, narrow.matches));
    shownColumns = chosen.map((column) => column.id);
    const more = wanted.some((symbol) => !asked.includes(symbol));
    const other = wanted.join() !== asked.join();
    asked = wanted;
    grid.setColumns(chosen, state.query.sort, state.query.descending);
    // The rows that were fetched carry other values, or lack some.
    if (more || other) grid.forgetRows();
  }
  let drawnFor: Summary | null = null;
  watch(["summary", "query", "order"], () => {
    const { summary, query } = state;
    all.hidden = summary === null || summary.readings === 0;
    if (summary === null) {
      drawnFor = null;
      return;
    }
    const fresh = drawnFor !== summary;
    drawnFor = summary;
    if (fresh) filters.fill(summary);
    filters.draw(summary);
    shown.textContent = say("page-shown", { n: state.order.length, shown: count(state.order.length), of: count(summary.readings) });
    folds.hidden = query.group === "";
    empty.hidden = state.order.length > 0;
    split.hidden = state.order.length === 0;
    if (fresh || query.group !== groupedBy) unfolded = new Set();
    groupedBy = query.group;
    columnsAgain();
    if (fresh || drawnOrder !== state.order) {
      drawnOrder = state.order;
      grid.setFound(state.found, unfolded, summary.readings, fresh);
    }
    if (fresh) {
      if (state.selected === null) shut();
      else void showDetail(state.selected);
    }
  });
  let drawnOrder: Uint32Array | null = null;
}
