// A table of any length: fixed row height, only the rows in sight (and the one with the focus) exist.
//
// Browsers cap the height of an element (some make it zero), so the spacer never grows past SPACER_CAP. Past that, the
// scroll bar stands for a larger height: wheel, touch and keys still move by real pixels; only dragging the bar leaps.

import type { RowView } from "../shared/door";
import { el, type Child } from "./elements";

export const ROW_HEIGHT = 44;
const SPACER_CAP = 8_000_000;
const OVERSCAN = 6;
const KEPT_ROWS = 4000;
const SETTLE_MS = 150;

export interface Column {
  id: string;
  heading: string;
  /** The unit of what stands below. */
  unit?: string;
  /** What the heading sorts by; null where it can't. */
  sort: string | null;
  width: number;
  cell(row: RowView): Child;
  tone?(row: RowView): string;
}

export interface GridWishes {
  /** Key of what the table is called. */
  label: string;
  sortLabel(column: Column): string;
  fetch(indices: Uint32Array): Promise<RowView[] | null>;
  sort(by: string): void;
  /** A reading was picked: by passing over it, by pressing on it, or to go into it. */
  pick(index: number, how: "passed" | "pressed" | "entered"): void;
}

export class Grid {
  readonly root: HTMLElement;
  private readonly scroller: HTMLElement;
  private readonly headRow: HTMLElement;
  private readonly body: HTMLElement;
  private columns: Column[] = [];
  private order = new Uint32Array(0);
  private readonly kept = new Map<number, RowView>();
  private readonly live = new Map<number, HTMLElement>();
  private virtualTop = 0;
  private lastScroll = 0;
  private active = { row: 0, column: 0 };
  private picked: number | null = null;
  private fetching = false;
  private settle = 0;
  private generation = 0;

  constructor(private readonly wishes: GridWishes) {
    this.headRow = el("div", { role: "row", class: "grid-row grid-headings", "aria-rowindex": 1 });
    this.body = el("div", { role: "rowgroup", class: "grid-body" });
    this.scroller = el("div", { class: "grid-scroll" }, el("div", { role: "rowgroup", class: "grid-head" }, this.headRow), this.body);
    this.root = el("div", { role: "grid", class: "grid", "data-say-label": wishes.label }, this.scroller);
    this.scroller.addEventListener("scroll", () => this.scrolled(), { passive: true });
    this.scroller.addEventListener("wheel", (event) => this.wheeled(event), { passive: false });
    this.body.addEventListener("keydown", (event) => this.pressed(event));
    this.body.addEventListener("click", (event) => this.clicked(event, "pressed"));
    this.body.addEventListener("dblclick", (event) => this.clicked(event, "entered"));
    new ResizeObserver(() => this.render()).observe(this.scroller);
  }

  setColumns(columns: Column[], sort: string, descending: boolean): void {
    this.columns = columns;
    const template = columns.map((column) => `${column.width}px`).join(" ");
    const width = columns.reduce((sum, column) => sum + column.width, 0);
    this.root.style.setProperty("--grid-columns", template);
    this.root.style.setProperty("--grid-width", `${width}px`);
    this.root.setAttribute("aria-colcount", String(columns.length));
    const focused = document.activeElement instanceof HTMLElement ? document.activeElement.dataset["sort"] : undefined;
    const within = this.headRow.contains(document.activeElement);
    this.headRow.replaceChildren(
      ...columns.map((column) => {
        const by = column.sort;
        if (by === null) return el("div", { role: "columnheader", class: "grid-cell grid-unsorted" }, column.heading, column.unit === undefined ? null : el("span", { class: "grid-unit" }, column.unit));
        const here = by === sort;
        return el(
          "div",
          { role: "columnheader", class: "grid-cell", "aria-sort": here ? (descending ? "descending" : "ascending") : "none" },
          el(
            "button",
            { type: "button", class: "grid-sort", "data-sort": column.id, title: this.wishes.sortLabel(column), on: { click: () => this.wishes.sort(by) } },
            column.heading,
            column.unit === undefined ? null : el("span", { class: "grid-unit" }, column.unit),
            el("span", { class: "grid-arrow", "aria-hidden": "true" }, here ? (descending ? "▼" : "▲") : ""),
          ),
        );
      }),
    );
    if (within && focused !== undefined) this.headRow.querySelector<HTMLElement>(`[data-sort="${CSS.escape(focused)}"]`)?.focus();
    this.active.column = Math.min(this.active.column, columns.length - 1);
    this.forgetElements();
    this.render();
  }

  /** New readings, or the same in another order. `fresh` drops what was fetched, because the findings changed. */
  setOrder(order: Uint32Array, fresh: boolean): void {
    this.generation += 1;
    this.order = order as Uint32Array<ArrayBuffer>;
    if (fresh) this.kept.clear();
    this.root.setAttribute("aria-rowcount", String(order.length + 1));
    this.body.style.height = `${this.spacer()}px`;
    this.active.row = 0;
    this.forgetElements();
    this.goTo(0);
  }

  setPicked(index: number | null): void {
    this.picked = index;
    for (const [at, node] of this.live) this.paintPicked(at, node);
  }

  /** Brings the row at `at` (0-based, in the order shown) into sight and gives it the focus. */
  focusRow(at: number): void {
    if (this.order.length === 0) return;
    this.active.row = Math.max(0, Math.min(at, this.order.length - 1));
    this.reveal(this.active.row);
    this.focusActive();
  }

  private forgetElements(): void {
    const hadFocus = this.body.contains(document.activeElement);
    for (const node of this.live.values()) node.remove();
    this.live.clear();
    if (hadFocus) queueMicrotask(() => this.focusActive());
  }

  // ---- where we are ----

  private wholeHeight(): number {
    return this.order.length * ROW_HEIGHT;
  }

  private spacer(): number {
    return Math.min(this.wholeHeight(), SPACER_CAP);
  }

  private sight(): number {
    return Math.max(ROW_HEIGHT, this.scroller.clientHeight - ROW_HEIGHT);
  }

  private virtualEnd(): number {
    return Math.max(0, this.wholeHeight() - this.sight());
  }

  private scrollEnd(): number {
    return Math.max(0, this.spacer() - this.sight());
  }

  private scaled(): boolean {
    return this.wholeHeight() > SPACER_CAP;
  }

  private goTo(top: number): void {
    this.virtualTop = Math.max(0, Math.min(top, this.virtualEnd()));
    this.alignBar();
    this.render();
  }

  private alignBar(): void {
    const end = this.virtualEnd();
    const at = this.scaled() && end > 0 ? (this.virtualTop / end) * this.scrollEnd() : this.virtualTop;
    this.scroller.scrollTop = at;
    // The browser rounds; what it kept is what the next scroll event is measured from.
    this.lastScroll = this.scroller.scrollTop;
  }

  private scrolled(): void {
    const now = this.scroller.scrollTop;
    if (now === this.lastScroll) return this.render();
    if (!this.scaled()) this.virtualTop = now;
    else {
      const moved = now - this.lastScroll;
      const leap = Math.abs(moved) > this.sight() * 3;
      const end = this.scrollEnd();
      this.virtualTop = leap && end > 0 ? (now / end) * this.virtualEnd() : this.virtualTop + moved;
      this.virtualTop = Math.max(0, Math.min(this.virtualTop, this.virtualEnd()));
      // Moving by real pixels lets the bar drift from the place it stands for; it is set right once the hand rests.
      clearTimeout(this.settle);
      this.settle = window.setTimeout(() => {
        this.alignBar();
        this.render();
      }, SETTLE_MS);
    }
    this.lastScroll = now;
    this.render();
  }

  private wheeled(event: WheelEvent): void {
    if (!this.scaled() || event.ctrlKey || event.shiftKey || Math.abs(event.deltaY) <= Math.abs(event.deltaX)) return;
    event.preventDefault();
    const unit = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? ROW_HEIGHT : event.deltaMode === WheelEvent.DOM_DELTA_PAGE ? this.sight() : 1;
    this.goTo(this.virtualTop + event.deltaY * unit);
  }

  private reveal(row: number): void {
    const top = row * ROW_HEIGHT;
    if (top < this.virtualTop) this.goTo(top);
    else if (top + ROW_HEIGHT > this.virtualTop + this.sight()) this.goTo(top + ROW_HEIGHT - this.sight());
    else this.render();
  }

  // ---- rows ----

  private render(): void {
    const first = Math.max(0, Math.floor(this.virtualTop / ROW_HEIGHT) - OVERSCAN);
    const last = Math.min(this.order.length - 1, Math.ceil((this.virtualTop + this.sight()) / ROW_HEIGHT) + OVERSCAN);
    for (const [at, node] of this.live) {
      if ((at < first || at > last) && at !== this.active.row) {
        node.remove();
        this.live.delete(at);
      }
    }
    if (this.order.length === 0) return;
    const base = this.scroller.scrollTop - this.virtualTop;
    const place = (at: number, out: boolean): void => {
      let node = this.live.get(at);
      if (node === undefined) {
        node = this.makeRow(at);
        this.live.set(at, node);
        this.body.append(node);
      }
      // The focused row stays alive out of sight; a huge offset would be dropped by some engines, so it waits just outside.
      const offset = out ? (at < first ? this.scroller.scrollTop - ROW_HEIGHT * 4 : this.scroller.scrollTop + this.sight() + ROW_HEIGHT) : base + at * ROW_HEIGHT;
      node.style.transform = `translateY(${Math.max(-ROW_HEIGHT, offset)}px)`;
      node.classList.toggle("grid-parked", out);
    };
    for (let at = first; at <= last; at += 1) place(at, false);
    if (this.active.row < first || this.active.row > last) place(this.active.row, true);
    void this.fetchMissing(first, last);
  }

  private makeRow(at: number): HTMLElement {
    const row = this.kept.get(this.order[at] ?? -1);
    const node = el("div", { role: "row", class: "grid-row", "aria-rowindex": at + 2, "data-at": at });
    this.fillRow(at, node, row);
    return node;
  }

  private fillRow(at: number, node: HTMLElement, row: RowView | undefined): void {
    const hadFocus = node.contains(document.activeElement);
    node.replaceChildren(
      ...this.columns.map((column, c) => {
        const tone = row === undefined ? undefined : column.tone?.(row);
        return el(
          "div",
          {
            role: "gridcell",
            class: tone === undefined ? "grid-cell" : `grid-cell tone-${tone}`,
            tabindex: at === this.active.row && c === this.active.column ? 0 : -1,
          },
          row === undefined ? "\u2026" : column.cell(row),
        );
      }),
    );
    node.dataset["full"] = row === undefined ? "no" : "yes";
    this.paintPicked(at, node);
    if (hadFocus) (node.children[this.active.column] as HTMLElement | undefined)?.focus({ preventScroll: true });
  }

  private paintPicked(at: number, node: HTMLElement): void {
    node.setAttribute("aria-selected", this.picked !== null && this.order[at] === this.picked ? "true" : "false");
  }

  private async fetchMissing(first: number, last: number): Promise<void> {
    if (this.fetching) return;
    const missing: number[] = [];
    for (let at = first; at <= last; at += 1) {
      const index = this.order[at];
      if (index !== undefined && !this.kept.has(index)) missing.push(index);
    }
    if (missing.length === 0) return;
    this.fetching = true;
    const generation = this.generation;
    let rows: RowView[] | null = null;
    try {
      rows = await this.wishes.fetch(Uint32Array.from(missing));
    } finally {
      this.fetching = false;
    }
    // Findings that changed while these rows were on their way: they tell of the old ones.
    if (rows === null || generation !== this.generation) return this.renderSoon(generation);
    if (this.kept.size > KEPT_ROWS) this.kept.clear();
    for (const row of rows) this.kept.set(row.index, row);
    for (const [at, node] of this.live) {
      const row = this.kept.get(this.order[at] ?? -1);
      if (row !== undefined && node.dataset["full"] === "no") this.fillRow(at, node, row);
    }
    this.render();
  }

  private renderSoon(generation: number): void {
    if (generation !== this.generation) requestAnimationFrame(() => this.render());
  }

  // ---- hands ----

  private focusActive(): void {
    const cell = this.live.get(this.active.row)?.children[this.active.column];
    if (cell instanceof HTMLElement) {
      for (const old of this.body.querySelectorAll('[tabindex="0"]')) old.setAttribute("tabindex", "-1");
      cell.setAttribute("tabindex", "0");
      cell.focus({ preventScroll: true });
      this.revealColumn(cell);
    }
  }

  // The first column stays in place while the others slide under it, so "in sight" starts at its right edge.
  private revealColumn(cell: HTMLElement): void {
    if (this.active.column === 0) return;
    const fixed = this.columns[0]?.width ?? 0;
    const left = cell.offsetLeft - fixed;
    const right = cell.offsetLeft + cell.offsetWidth;
    if (left < this.scroller.scrollLeft) this.scroller.scrollLeft = left;
    else if (right > this.scroller.scrollLeft + this.scroller.clientWidth) this.scroller.scrollLeft = right - this.scroller.clientWidth;
  }

  private pressed(event: KeyboardEvent): void {
    if (event.altKey || event.metaKey) return;
    const page = Math.max(1, Math.floor(this.sight() / ROW_HEIGHT) - 1);
    const rows: Record<string, number> = {
      ArrowDown: this.active.row + 1,
      ArrowUp: this.active.row - 1,
      PageDown: this.active.row + page,
      PageUp: this.active.row - page,
      Home: 0,
      End: this.order.length - 1,
    };
    const row = rows[event.key];
    if (row !== undefined) {
      event.preventDefault();
      this.focusRow(row);
      const index = this.order[this.active.row];
      if (this.picked !== null && index !== undefined) this.wishes.pick(index, "passed");
      return;
    }
    if (event.key === "ArrowRight" || event.key === "ArrowLeft") {
      event.preventDefault();
      const by = event.key === "ArrowRight" ? 1 : -1;
      this.active.column = Math.max(0, Math.min(this.active.column + by, this.columns.length - 1));
      this.focusActive();
      return;
    }
    if (event.key === "Enter" || event.key === " ") {
      event.preventDefault();
      const index = this.order[this.active.row];
      if (index !== undefined) this.wishes.pick(index, event.key === "Enter" ? "entered" : "pressed");
    }
  }

  private clicked(event: MouseEvent, how: "pressed" | "entered"): void {
    const cell = (event.target as Element).closest<HTMLElement>('[role="gridcell"]');
    const row = cell?.parentElement;
    const at = Number(row?.dataset["at"]);
    const index = this.order[at];
    if (cell == null || row == null || index === undefined) return;
    this.active = { row: at, column: [...row.children].indexOf(cell) };
    this.focusActive();
    this.wishes.pick(index, how);
  }
}
