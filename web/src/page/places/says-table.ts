// What does it say, reading by reading: the filters, the table, and the one reading that is looked at closely.

import type { Query, Summary } from "../../shared/door";
import { showRefusal } from "../acts-given";
import { ORDERS, orderName, readingColumns } from "../columns";
import { detailContent, readingTitle } from "../detail";
import { append, el } from "../elements";
import { Grid } from "../grid";
import { fetchDetail, fetchRows, showOrder } from "../looking";
import { typedNumber } from "../numbers";
import { lotName, substanceName } from "../outcomes";
import { ANY_READING, change, state, watch } from "../state";
import { count, say, sayMarkup } from "../words";

const TYPING_MS = 220;
const LOOKING_MS = 120;

export function makeSaysTable(host: HTMLElement): void {
  const grid = new Grid({
    label: "page-readings-label",
    sortLabel: (column) => say("page-sort-by", { column: column.heading }),
    fetch: fetchRows,
    sort: (by) => {
      const same = state.query.sort === by;
      void showOrder({ ...state.query, sort: by, descending: same ? !state.query.descending : false });
    },
    pick: (index, how) => look(index, how),
  });

  const narrow = matchMedia("(max-width: 40rem)");
  narrow.addEventListener("change", columnsAgain);

  // ---- filters ----
  const text = el("input", { id: "filter-text", type: "search", autocomplete: "off", "data-say-placeholder": "page-filter-text-where" });
  const substance = el("select", { id: "filter-substance" });
  const outcome = el("select", { id: "filter-outcome" });
  const lot = el("select", { id: "filter-lot" });
  const sort = el("select", { id: "filter-sort" });
  const halogens = el("input", { id: "filter-halogens", type: "checkbox", checked: true });
  const shown = el("p", { id: "readings-shown", class: "readings-shown" });
  const direction = el("button", { type: "button", id: "filter-direction", class: "tool", on: { click: () => void showOrder({ ...state.query, descending: !state.query.descending }) } });
  const clear = el("button", { type: "button", id: "filter-clear", class: "tool", on: { click: () => void showOrder({ ...ANY_READING, sort: state.query.sort, descending: state.query.descending }) }, "data-say": "page-filter-clear" });
  const goto = el("input", { id: "go-to-row", type: "text", inputmode: "numeric", autocomplete: "off", "aria-describedby": "go-to-row-refusal" });
  const noSuchRow = el("p", { id: "go-to-row-refusal", class: "refusal", hidden: true });

  let typing = 0;
  text.addEventListener("input", () => {
    clearTimeout(typing);
    typing = window.setTimeout(() => void showOrder({ ...state.query, text: text.value }), TYPING_MS);
  });
  // A substance alone picks no reading out, so it brings those with most of it to the top.
  substance.addEventListener("change", () => {
    const by = substance.value;
    const order = by === "" ? { sort: "worst", descending: false } : state.query.outcome === "" ? { sort: by, descending: true } : {};
    void showOrder({ ...state.query, substance: by, ...order });
  });
  outcome.addEventListener("change", () => void showOrder({ ...state.query, outcome: outcome.value }));
  lot.addEventListener("change", () => void showOrder({ ...state.query, lot: Number(lot.value) }));
  sort.addEventListener("change", () => void showOrder({ ...state.query, sort: sort.value, descending: false }));
  halogens.addEventListener("change", columnsAgain);

  const field = (label: string, control: HTMLElement): HTMLElement => el("div", { class: "field" }, el("label", { for: control.id, "data-say": label }), control);
  const filters = el(
    "form",
    { class: "filters", role: "search", "data-say-label": "page-filters", on: { submit: (event) => event.preventDefault() } },
    field("page-filter-text", text),
    field("page-filter-substance", substance),
    field("page-filter-outcome", outcome),
    field("page-filter-lot", lot),
    field("page-filter-sort", sort),
    direction,
    clear,
  );
  function goToRow(): void {
    const typed = typedNumber(goto.value, "whole");
    const row = typed === null ? 0 : Number(typed);
    const there = row >= 1 && row <= state.order.length;
    goto.setAttribute("aria-invalid", String(!there));
    showRefusal(noSuchRow, there ? "" : say("page-no-such-row", { typed: goto.value, of: state.order.length }));
    if (!there) return;
    grid.root.scrollIntoView({ block: "nearest" });
    grid.focusRow(row - 1);
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

  // ---- the reading looked at ----
  const heading = el("h2", { id: "detail-heading", tabindex: -1 });
  const close = el("button", { type: "button", id: "detail-close", class: "tool", on: { click: () => leave() }, "data-say": "page-detail-close" });
  const content = el("div", { class: "detail-content" });
  const panel = el("section", { id: "detail", class: "detail", hidden: true, "aria-labelledby": "detail-heading" }, el("header", { class: "detail-head" }, heading, close), content);
  panel.addEventListener("keydown", (event) => {
    if (event.key === "Escape") leave();
  });

  let looking = 0;
  let wantFocus = false;
  let wantSight = false;
  function look(index: number, how: "passed" | "pressed" | "entered"): void {
    wantFocus = how === "entered";
    wantSight = how !== "passed";
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
    if (inside) grid.focusRow(Math.max(0, at));
  }
  function shut(): void {
    panel.hidden = true;
    split.classList.remove("split-open");
    change({ selected: null });
    grid.setPicked(null);
  }

  const split = el("div", { class: "split" }, grid.root, panel);
  const empty = el("p", { class: "empty", hidden: true, "data-say": "page-readings-none" });
  const all = el(
    "div",
    { hidden: true },
    el("h2", { id: "readings-heading", tabindex: -1, "data-say": "page-readings-heading" }),
    el("div", { id: "legend-home" }),
    filters,
    el("div", { class: "under-filters" }, shown, el("div", { class: "field-check" }, halogens, el("label", { for: "filter-halogens", "data-say": "page-filter-halogens" })), jump),
    noSuchRow,
    empty,
    split,
    el("p", { class: "quiet", "data-say": "page-readings-keys" }),
  );
  sayMarkup(all);
  host.append(all);

  // ---- what changes ----
  function columnsAgain(): void {
    grid.setColumns(readingColumns(halogens.checked, narrow.matches), state.query.sort, state.query.descending);
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
    if (fresh) fillChoices(summary);
    text.value = document.activeElement === text ? text.value : query.text;
    substance.value = query.substance;
    outcome.value = query.outcome;
    lot.value = String(query.lot);
    sort.value = query.sort;
    direction.textContent = say(`page-filter-${query.descending ? "descending" : "ascending"}${query.sort === "worst" ? "-worst" : ""}`);
    shown.textContent = say("page-shown", { n: state.order.length, shown: count(state.order.length), of: count(summary.readings) });
    clear.hidden = !narrowed(query);
    empty.hidden = state.order.length > 0;
    split.hidden = state.order.length === 0;
    columnsAgain();
    if (fresh || drawnOrder !== state.order) {
      drawnOrder = state.order;
      grid.setOrder(state.order, fresh);
    }
    if (fresh) {
      if (state.selected === null) shut();
      else void showDetail(state.selected);
    }
  });
  let drawnOrder: Uint32Array | null = null;

  function fillChoices(summary: Summary): void {
    const substances = summary.outcome_counts.map((row) => row.substance);
    substance.replaceChildren(
      el("option", { value: "" }, say("page-filter-any")),
      ...substances.map((symbol) => el("option", { value: symbol }, substanceName(symbol))),
    );
    const outcomes = new Map<string, string>();
    for (const row of summary.outcome_counts) {
      for (const one of row.counts) outcomes.set(one.outcome, one.short === one.text ? one.text : `${one.short} \u2013 ${one.text}`);
    }
    outcome.replaceChildren(
      el("option", { value: "" }, say("page-filter-any")),
      el("option", { value: "open" }, say("page-filter-open")),
      ...[...outcomes].map(([code, words]) => el("option", { value: code }, words)),
    );
    sort.replaceChildren(...ORDERS.map((order) => el("option", { value: order }, orderName(order))));
    lot.replaceChildren(
      el("option", { value: "-1" }, say("page-filter-any")),
      ...summary.lots.map((one) => el("option", { value: String(one.index) }, one.supplier === null ? lotName(one) : `${lotName(one)}, ${one.supplier}`)),
    );
  }
}

function narrowed(query: Query): boolean {
  return query.text !== "" || query.substance !== "" || query.outcome !== "" || query.lot !== -1;
}
