// The filters above the table: what is typed counts as it is typed. Everything they hold is in the query.

import type { Query, Summary } from "../shared/door";
import { showRefusal } from "./acts-given";
import { ORDERS, orderName } from "./columns";
import { el } from "./elements";
import { showOrder } from "./looking";
import { typedNumber } from "./numbers";
import { lotName, substanceName } from "./outcomes";
import { ANY_READING, state } from "./state";
import { say } from "./words";

const TYPING_MS = 220;
const MOST_SUGGESTED = 300;

/** What is typed into a field of its own. */
const TYPED = ["sample", "part", "lot_name", "supplier"] as const;
export const GROUPS = ["part", "lot", "supplier"];

/** What the margin takes, in sigmas: the core reads tenths from 0.1 to 5. */
const LEAST_MARGIN = 0.1;
const MOST_MARGIN = 5;

/** Whether anything is left out. */
export function narrowed(query: Query): boolean {
  return filtersOf(query).some((key) => query[key] !== ANY_READING[key]);
}

/** The parts of a query that leave readings out. */
function filtersOf(query: Query): (keyof Query)[] {
  return (Object.keys(query) as (keyof Query)[]).filter((key) => !["sort", "descending", "group"].includes(key));
}

export class Filters {
  readonly root: HTMLFormElement;
  private readonly text = el("input", { id: "filter-text", type: "search", autocomplete: "off", "data-say-placeholder": "page-filter-text-where", "aria-keyshortcuts": "/" });
  private readonly substance = el("select", { id: "filter-substance" });
  private readonly outcome = el("select", { id: "filter-outcome" });
  private readonly trust = el("select", { id: "filter-trust" });
  private readonly sort = el("select", { id: "filter-sort" });
  private readonly group = el("select", { id: "filter-group" });
  private readonly margin = el("input", { id: "filter-margin", type: "text", inputmode: "decimal", autocomplete: "off", "aria-describedby": "filter-margin-refusal filter-margin-why" });
  private readonly marginRefusal = el("p", { id: "filter-margin-refusal", class: "refusal", hidden: true });
  private readonly typed = Object.fromEntries(
    TYPED.map((name) => [name, el("input", { id: `filter-${name.replace("_", "-")}`, type: "search", autocomplete: "off", list: `known-${name}` })]),
  ) as Record<(typeof TYPED)[number], HTMLInputElement>;
  private readonly known = Object.fromEntries(TYPED.map((name) => [name, el("datalist", { id: `known-${name}` })])) as Record<(typeof TYPED)[number], HTMLDataListElement>;
  private readonly direction = el("button", { type: "button", id: "filter-direction", class: "tool", on: { click: () => this.ask({ descending: !state.query.descending }) } });
  private readonly clear = el("button", { type: "button", id: "filter-clear", class: "tool", on: { click: () => this.clearAll() }, "data-say": "page-filter-clear" });
  private readonly back = el("button", { type: "button", id: "filter-back", class: "tool", hidden: true, on: { click: () => this.giveBack() }, "data-say": "page-grid-filters-back" });
  private readonly oneLot = el("button", { type: "button", id: "filter-one-lot", class: "tool one-lot", hidden: true, on: { click: () => this.ask({ lot: -1 }) } });
  private readonly more = el("span", { class: "fold-count" });
  private readonly fold: HTMLDetailsElement;
  /** The filters that were taken away, until others are set. */
  private cleared: Query | null = null;
  private typing = 0;

  constructor() {
    const field = (label: string, control: HTMLElement, ...rest: (HTMLElement | null)[]): HTMLElement =>
      el("div", { class: "field" }, el("label", { for: control.id, "data-say": label }), control, ...rest);
    this.fold = el(
      "details",
      { id: "more-filters", class: "more-filters" },
      el("summary", {}, el("span", { "data-say": "page-grid-more-filters" }), " ", this.more),
      el(
        "div",
        { class: "filters" },
        ...TYPED.map((name) => field(`page-grid-filter-${name.replace("_", "-")}`, this.typed[name], this.known[name])),
        field("page-column-trust", this.trust),
        field("page-grid-filter-margin", this.margin),
      ),
      this.marginRefusal,
      el("p", { id: "filter-margin-why", class: "quiet", "data-say": "page-grid-margin-why" }),
    );
    this.root = el(
      "form",
      { class: "filter-form", role: "search", "data-say-label": "page-filters", on: { submit: (event) => event.preventDefault() } },
      el(
        "div",
        { class: "filters" },
        field("page-filter-text", this.text),
        field("page-filter-substance", this.substance),
        field("page-filter-outcome", this.outcome),
        field("page-grid-group-by", this.group),
        field("page-filter-sort", this.sort),
        this.direction,
        this.oneLot,
        this.clear,
        this.back,
      ),
      this.fold,
    );
    this.listen();
  }

  private listen(): void {
    this.text.addEventListener("input", () => this.soon({ text: this.text.value }));
    for (const name of TYPED) this.typed[name].addEventListener("input", () => this.soon({ [name]: this.typed[name].value }));
    this.margin.addEventListener("input", () => this.marginTyped());
    // A substance alone picks no reading out, so it brings those with most of it to the top.
    this.substance.addEventListener("change", () => {
      const by = this.substance.value;
      const order = by === "" ? { sort: "worst", descending: false } : state.query.outcome === "" ? { sort: by, descending: true } : {};
      this.ask({ substance: by, ...order });
    });
    this.outcome.addEventListener("change", () => this.ask({ outcome: this.outcome.value }));
    this.trust.addEventListener("change", () => this.ask({ trust: this.trust.value }));
    this.group.addEventListener("change", () => this.ask({ group: this.group.value }));
    this.sort.addEventListener("change", () => this.ask({ sort: this.sort.value, descending: false }));
  }

  private waiting: Partial<Query> = {};

  // Two fields typed in one after the other within the wait both count.
  private soon(patch: Partial<Query>): void {
    Object.assign(this.waiting, patch);
    clearTimeout(this.typing);
    this.typing = window.setTimeout(() => this.ask({}), TYPING_MS);
  }

  private ask(patch: Partial<Query>): void {
    clearTimeout(this.typing);
    const query = { ...state.query, ...this.waiting, ...patch };
    this.waiting = {};
    if (narrowed(query)) this.cleared = null;
    void showOrder(query);
  }

  private marginTyped(): void {
    const typed = this.margin.value.trim();
    const number = typed === "" ? "" : typedNumber(typed, "decimal");
    const fits = number === "" || (number !== null && Number(number) >= LEAST_MARGIN && Number(number) <= MOST_MARGIN && /^\d+(\.\d)?$/.test(number));
    this.margin.setAttribute("aria-invalid", String(!fits));
    showRefusal(this.marginRefusal, fits ? "" : say("page-grid-margin-refused", { typed }));
    if (fits) this.soon({ margin: number });
  }

  private clearAll(): void {
    const before = { ...state.query };
    for (const input of [this.text, this.margin, ...Object.values(this.typed)]) input.value = "";
    this.margin.setAttribute("aria-invalid", "false");
    showRefusal(this.marginRefusal, "");
    this.waiting = {};
    const { sort, descending, group } = state.query;
    this.ask({ ...ANY_READING, sort, descending, group });
    this.cleared = before;
    this.show();
    this.back.focus();
  }

  private giveBack(): void {
    if (this.cleared === null) return;
    const { sort, descending, group } = state.query;
    const before = { ...this.cleared, sort, descending, group };
    this.cleared = null;
    this.ask(before);
    this.show();
    this.clear.focus();
  }

  private show(): void {
    this.clear.hidden = !narrowed(state.query);
    this.back.hidden = this.cleared === null;
  }

  /** Shows a query that may have come from elsewhere. */
  draw(summary: Summary): void {
    const { query } = state;
    // What is being typed is newer than the query.
    const write = (input: HTMLInputElement, value: string): void => {
      if (document.activeElement !== input) input.value = value;
    };
    write(this.text, query.text);
    for (const name of TYPED) write(this.typed[name], query[name]);
    if (document.activeElement !== this.margin) this.margin.value = query.margin;
    this.substance.value = query.substance;
    this.outcome.value = query.outcome;
    this.trust.value = query.trust;
    this.group.value = query.group;
    this.sort.value = query.sort;
    this.direction.textContent = say(`page-filter-${query.descending ? "descending" : "ascending"}${query.sort === "worst" ? "-worst" : ""}`);
    const lot = summary.lots[query.lot];
    this.oneLot.hidden = lot === undefined;
    if (lot !== undefined) this.oneLot.textContent = say("page-grid-one-lot", { lot: lotName(lot) });
    const used = [...TYPED.map((name) => query[name]), query.trust, query.margin].filter((value) => value !== "").length;
    this.more.textContent = used === 0 ? "" : say("page-grid-more-used", { n: used });
    if (used > 0 && !this.drawnOnce) this.fold.open = true;
    this.drawnOnce = true;
    this.show();
  }

  private drawnOnce = false;

  /** What there is to choose from changes with the findings. */
  fill(summary: Summary): void {
    this.drawnOnce = false;
    this.cleared = null;
    const any = (): HTMLElement => el("option", { value: "" }, say("page-filter-any"));
    this.substance.replaceChildren(any(), ...summary.outcome_counts.map((row) => el("option", { value: row.substance }, substanceName(row.substance))));
    const outcomes = new Map<string, string>();
    for (const row of summary.outcome_counts) {
      for (const one of row.counts) outcomes.set(one.outcome, one.short === one.text ? one.text : `${one.short} \u2013 ${one.text}`);
    }
    this.outcome.replaceChildren(any(), el("option", { value: "open" }, say("page-filter-open")), ...[...outcomes].map(([code, words]) => el("option", { value: code }, words)));
    this.trust.replaceChildren(any(), ...summary.trusts.map(([code, words]) => el("option", { value: code }, words)));
    this.group.replaceChildren(el("option", { value: "" }, say("page-grid-group-none")), ...GROUPS.map((group) => el("option", { value: group }, say(`page-grid-group-${group}`))));
    this.sort.replaceChildren(...[...ORDERS, ...summary.other_elements].map((order) => el("option", { value: order }, orderName(order))));
    suggest(this.known.lot_name, summary.lots.map((lot) => lot.lot));
    suggest(this.known.supplier, summary.lots.map((lot) => lot.supplier));
    suggest(this.known.part, summary.parts.map((part) => part.part));
  }
}

function suggest(list: HTMLDataListElement, names: (string | null)[]): void {
  const different = new Set(names.filter((name): name is string => name !== null));
  list.replaceChildren(...[...different].slice(0, MOST_SUGGESTED).map((name) => el("option", { value: name })));
}
