// A table of any length: fixed row height, only the rows in sight (and the one with the focus) exist.
//
// Browsers cap the height of an element (some make it zero), so the spacer never grows past SPACER_CAP. Past that, the
// scroll bar stands for a larger height: wheel, touch and keys still move by real pixels; only dragging the bar leaps.
//
// Rows are drawn once a frame, no longer than BUDGET_MS of it and no more than BUDGET_ROWS, whose style and layout the browser works out
// afterwards: what is left over follows in the next frame. A row that leaves the
// sight is used again for one that comes in. A row stays where it was put, counted from an anchor row; what moves is the body that
// holds them all, as one layer: a browser then paints only the rows that are new.

import type { OrderView, RowView } from "../shared/door";
import { append, el, type Child } from "./elements";
import { beginHeadings, settleHeadings } from "./grid-headings";
import { Lines, type Line } from "./grid-lines";
import { layOnPaper } from "./grid-paper";
import { Selection } from "./grid-selection";
import type { TermId } from "./help/terms";

export const ROW_HEIGHT = 44;
const SPACER_CAP = 8_000_000;
const OVERSCAN = 6;
const KEPT_ROWS = 6000;
const SETTLE_MS = 150;
const BUDGET_MS = 6;
const BUDGET_ROWS = 5;
/** Rows asked for beyond the sight, in the direction it moves. */
const AHEAD = 60;
const MOST_SPARE = 80;
/** Rows between the anchor and the sight before the anchor is moved: offsets stay small enough for every engine. */
const FAR = 2000;

export interface Column {
  id: string;
  /** What stands above it, in one line. */
  heading: string;
  /** The unit of what stands below. */
  unit?: string;
  /** The term it stands for. */
  term?: TermId;
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
  /** What stands in the head of a group. `row` is its first reading, once it is there. */
  head(lines: Lines, group: number, row: RowView | undefined): Child;
  /** More or fewer readings are selected than before. */
  selected(count: number): void;
  /** A group was folded or unfolded. */
  folded(): void;
  copy(): void;
}

export class Grid {
  readonly root: HTMLElement;
  readonly selection = new Selection();
  private readonly scroller: HTMLElement;
  private readonly headRow: HTMLElement;
  private readonly spacer: HTMLElement;
  private readonly body: HTMLElement;
  private columns: Column[] = [];
  private shown: Lines = new Lines({ indices: new Uint32Array(0), starts: new Uint32Array(0), worst: new Uint8Array(0), keys: new Uint32Array(0), outcomes: [] }, new Set());
  private readonly kept = new Map<number, RowView>();
  private readonly live = new Map<number, HTMLElement>();
  private readonly spare: HTMLElement[] = [];
  private virtualTop = 0;
  private lastTop = 0;
  private lastScroll = 0;
  private active = { row: 0, column: 0 };
  private picked: number | null = null;
  private fetching = false;
  private settle = 0;
  private generation = 0;
  private drawing = 0;
  private anchor = 0;
  /** Height of the scroller without its headings: asking the browser in the middle of a frame makes it lay out twice. */
  private sight = ROW_HEIGHT;

  constructor(private readonly wishes: GridWishes) {
    this.headRow = el("div", { role: "row", class: "grid-row grid-headings", "aria-rowindex": 1 });
    this.body = el("div", { role: "rowgroup", class: "grid-body" });
    this.spacer = el("div", { class: "grid-spacer" }, this.body);
    this.scroller = el("div", { class: "grid-scroll" }, el("div", { role: "rowgroup", class: "grid-head" }, this.headRow), this.spacer);
    this.root = el("div", { role: "grid", class: "grid", "aria-multiselectable": "true", "data-say-label": wishes.label }, this.scroller);
    this.scroller.addEventListener("scroll", () => this.scrolled(), { passive: true });
    this.scroller.addEventListener("wheel", (event) => this.wheeled(event), { passive: false });
    beginHeadings(this.headRow);
    this.body.addEventListener("keydown", (event) => this.pressed(event));
    // With Shift held, a press would mark text instead of rows.
    this.body.addEventListener("mousedown", (event) => {
      if (event.shiftKey) event.preventDefault();
    });
    this.body.addEventListener("click", (event) => this.clicked(event, "pressed"));
    this.body.addEventListener("dblclick", (event) => this.clicked(event, "entered"));
    new ResizeObserver(() => {
      this.sight = Math.max(ROW_HEIGHT, this.scroller.clientHeight - ROW_HEIGHT);
      this.render();
    }).observe(this.scroller);
  }

  get lines(): Lines {
    return this.shown;
  }

  /** Makes ready for printing, and says what will not be on paper. */
  onPaper(): string {
    return layOnPaper(this.root, this.columns, this.shown.length);
  }

  setColumns(columns: Column[], sort: string, descending: boolean): void {
    this.columns = columns;
    const template = columns.map((column) => `${column.width}px`).join(" ");
    const width = columns.reduce((sum, column) => sum + column.width, 0);
    this.root.style.setProperty("--grid-columns", template);
    this.root.style.setProperty("--grid-width", `${width}px`);
    this.root.setAttribute("aria-colcount", String(columns.length));
    const focused = document.activeElement instanceof HTMLElement ? document.activeElement.dataset["head"] : undefined;
    const within = this.headRow.contains(document.activeElement);
    this.headRow.replaceChildren(...columns.map((column) => this.heading(column, sort, descending)));
    if (within && focused !== undefined) this.headRow.querySelector<HTMLElement>(`[data-head="${CSS.escape(focused)}"]`)?.focus();
    settleHeadings(this.headRow);
    this.active.column = Math.max(0, Math.min(this.active.column, columns.length - 1));
    this.spare.length = 0;
    this.forgetElements(false);
    this.render();
  }

  private heading(column: Column, sort: string, descending: boolean): HTMLElement {
    const by = column.sort;
    const unit = column.unit === undefined ? null : el("span", { class: "grid-unit" }, column.unit);
    const named = el("span", { class: "grid-named" }, el("span", { class: "grid-name" }, column.heading), unit);
    if (by === null) return el("div", { role: "columnheader", class: "grid-cell grid-unsorted", "data-head": column.id, "data-term": column.term }, named);
    const here = by === sort;
    return el(
      "div",
      { role: "columnheader", class: "grid-cell", "data-term": column.term, "aria-sort": here ? (descending ? "descending" : "ascending") : "none" },
      el(
        "button",
        { type: "button", class: "grid-sort", "data-sort": column.id, "data-head": column.id, [column.term === undefined ? "title" : "aria-description"]: this.wishes.sortLabel(column), on: { click: () => this.wishes.sort(by) } },
        named,
        el("span", { class: "grid-arrow", "aria-hidden": "true" }, here ? (descending ? "▼" : "▲") : ""),
      ),
    );
  }

  /** The reading of the line with the focus; null on a head. */
  activeReading(): number | null {
    const line = this.shown.at(this.active.row);
    return line?.kind === "reading" ? line.reading : null;
  }

  /** New readings, or the same in another order. `fresh` drops what was fetched and selected, because the findings changed. */
  setFound(found: OrderView, unfolded: Set<number>, readings: number, fresh: boolean): void {
    this.generation += 1;
    this.shown = new Lines(found, unfolded);
    if (fresh) {
      this.kept.clear();
      this.selection.reset(readings);
    } else if (this.selection.count > 0) {
      // What is selected is what can be seen: a reading that a filter took away is no longer meant.
      const still = this.selection.within(found.indices);
      this.selection.clear();
      for (const reading of still) this.selection.set(reading, true);
    }
    this.selection.anchor = null;
    // A tree of groups is not a plain grid: assistive technology then tells levels and what is unfolded.
    this.root.setAttribute("role", this.shown.grouped ? "treegrid" : "grid");
    this.active.row = 0;
    this.linesChanged(true);
    this.goTo(0);
    this.wishes.selected(this.selection.count);
  }

  /** What was fetched lacks something that is shown now. */
  forgetRows(): void {
    this.generation += 1;
    this.kept.clear();
    this.forgetElements(true);
    this.render();
  }

  private linesChanged(recycle: boolean): void {
    this.root.setAttribute("aria-rowcount", String(this.shown.length + 1));
    this.spacer.style.height = `${this.height()}px`;
    this.forgetElements(recycle);
  }

  setPicked(index: number | null): void {
    this.picked = index;
    this.paintAll();
  }

  foldAll(open: boolean): void {
    const line = this.shown.at(this.active.row);
    const group = line?.group ?? 0;
    this.shown.foldAll(open);
    this.active.row = this.shown.head(group);
    this.selection.anchor = null;
    this.linesChanged(true);
    this.reveal(this.active.row);
    this.wishes.folded();
  }

  private fold(group: number, open: boolean): void {
    if (this.shown.isOpen(group) === open) return;
    this.shown.fold(group, open);
    this.active.row = this.shown.head(group);
    this.selection.anchor = null;
    this.linesChanged(true);
    this.goTo(this.virtualTop);
    this.reveal(this.active.row);
    this.focusActive();
    this.wishes.folded();
  }

  /** Brings the reading at `place` (0-based, in the order shown) into sight and gives it the focus; its group is unfolded. */
  focusPlace(place: number): void {
    if (this.shown.grouped && this.shown.order.length > 0) {
      const group = this.shown.groupOf(place);
      if (!this.shown.isOpen(group)) this.fold(group, true);
    }
    this.focusRow(this.shown.lineOf(place));
  }

  /** Brings a line (0-based) into sight and gives it the focus. */
  focusRow(at: number): void {
    if (this.shown.length === 0) return;
    this.active.row = Math.max(0, Math.min(at, this.shown.length - 1));
    this.reveal(this.active.row);
    this.focusActive();
  }

  private forgetElements(recycle: boolean): void {
    const hadFocus = this.body.contains(document.activeElement);
    for (const [at, node] of this.live) this.drop(at, node, recycle);
    if (hadFocus) queueMicrotask(() => this.focusActive());
  }

  private drop(at: number, node: HTMLElement, recycle: boolean): void {
    node.remove();
    this.live.delete(at);
    if (recycle && this.spare.length < MOST_SPARE && node.dataset["kind"] === "reading") this.spare.push(node);
  }

  // ---- where we are ----

  private wholeHeight(): number {
    return this.shown.length * ROW_HEIGHT;
  }

  private height(): number {
    return Math.min(this.wholeHeight(), SPACER_CAP);
  }

  private virtualEnd(): number {
    return Math.max(0, this.wholeHeight() - this.sight);
  }

  private scrollEnd(): number {
    return Math.max(0, this.height() - this.sight);
  }

  private scaled(): boolean {
    return this.wholeHeight() > SPACER_CAP;
  }

  private goTo(top: number): void {
    this.moveTo(top);
    this.render();
  }

  private moveTo(top: number): void {
    this.virtualTop = Math.max(0, Math.min(top, this.virtualEnd()));
    this.alignBar();
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
    // A cell that stays in place while others slide is a layer of its own, in every row: only once they have slid.
    this.scroller.classList.toggle("grid-slid", this.scroller.scrollLeft > 0);
    if (now === this.lastScroll) return this.renderSoon();
    if (!this.scaled()) this.virtualTop = now;
    else {
      const moved = now - this.lastScroll;
      const leap = Math.abs(moved) > this.sight * 3;
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
    this.renderSoon();
  }

  private wheeled(event: WheelEvent): void {
    if (!this.scaled() || event.ctrlKey || event.shiftKey || Math.abs(event.deltaY) <= Math.abs(event.deltaX)) return;
    event.preventDefault();
    const unit = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? ROW_HEIGHT : event.deltaMode === WheelEvent.DOM_DELTA_PAGE ? this.sight : 1;
    this.moveTo(this.virtualTop + event.deltaY * unit);
    this.renderSoon();
  }

  private reveal(row: number): void {
    const top = row * ROW_HEIGHT;
    if (top < this.virtualTop) this.goTo(top);
    else if (top + ROW_HEIGHT > this.virtualTop + this.sight) this.goTo(top + ROW_HEIGHT - this.sight);
    else this.render();
  }

  // ---- rows ----

  /** Several events of one frame draw once. */
  private renderSoon(): void {
    if (this.drawing !== 0) return;
    this.drawing = requestAnimationFrame(() => {
      this.drawing = 0;
      this.render();
    });
  }

  private render(): void {
    // Asked before anything is written, so that nothing has to be laid out for the answer.
    const scrolledTo = this.scroller.scrollTop;
    const first = Math.max(0, Math.floor(this.virtualTop / ROW_HEIGHT) - OVERSCAN);
    const last = Math.min(this.shown.length - 1, Math.ceil((this.virtualTop + this.sight) / ROW_HEIGHT) + OVERSCAN);
    for (const [at, node] of this.live) {
      if ((at < first || at > last) && at !== this.active.row) this.drop(at, node, true);
    }
    if (this.shown.length === 0) return;
    if (Math.abs(first - this.anchor) > FAR) this.moveAnchor(first);
    const base = scrolledTo - this.virtualTop;
    const origin = base + this.anchor * ROW_HEIGHT;
    this.body.style.transform = `translateY(${origin}px)`;
    const place = (at: number, out: boolean): void => {
      let node = this.live.get(at);
      if (node === undefined) {
        node = this.makeRow(at);
        node.style.top = this.topOf(at);
        node.style.transform = "";
        node.classList.remove("grid-parked");
        // In the order of the table, which is the order that a screen reader walks.
        const next = this.live.get(at + 1);
        const before = this.live.get(at - 1);
        if (next !== undefined) next.before(node);
        else if (before !== undefined) before.after(node);
        else this.body.append(node);
        this.live.set(at, node);
      }
      const parked = node.classList.contains("grid-parked");
      if (out) {
        // The focused row stays alive out of sight; a huge offset would be dropped by some engines, so it waits just outside.
        const offset = at < first ? scrolledTo - ROW_HEIGHT * 4 : scrolledTo + this.sight + ROW_HEIGHT;
        node.style.top = "0";
        node.style.transform = `translateY(${Math.max(-ROW_HEIGHT, offset) - origin}px)`;
        if (!parked) node.classList.add("grid-parked");
      } else if (parked) {
        node.style.top = this.topOf(at);
        node.style.transform = "";
        node.classList.remove("grid-parked");
      }
    };
    for (let at = first; at <= last; at += 1) place(at, false);
    if (this.active.row < first || this.active.row > last) place(this.active.row, true);
    this.fillSome();
    const downwards = this.virtualTop >= this.lastTop;
    this.lastTop = this.virtualTop;
    void this.fetchMissing(first, last, downwards);
  }

  private topOf(at: number): string {
    return `${(at - this.anchor) * ROW_HEIGHT}px`;
  }

  private moveAnchor(to: number): void {
    this.anchor = to;
    for (const [at, node] of this.live) {
      if (!node.classList.contains("grid-parked")) node.style.top = this.topOf(at);
    }
  }

  private makeRow(at: number): HTMLElement {
    const line = this.shown.at(at);
    if (line === null || line.kind === "head") {
      const node = el("div", { role: "row", class: "grid-row grid-group", "aria-rowindex": at + 2, "aria-level": 1, "data-at": at, "data-kind": "head", "data-full": "no" });
      node.append(el("div", { role: "gridcell", class: "grid-cell", "aria-colspan": this.columns.length, tabindex: at === this.active.row ? 0 : -1 }));
      if (line !== null) this.fillHead(line.group, node);
      this.paint(at, node);
      return node;
    }
    const node = this.spare.pop() ?? this.emptyRow();
    node.setAttribute("aria-rowindex", String(at + 2));
    node.dataset["at"] = String(at);
    node.dataset["full"] = "no";
    if (this.shown.grouped) node.setAttribute("aria-level", "2");
    else node.removeAttribute("aria-level");
    const cells = node.children;
    for (let c = 0; c < cells.length; c += 1) {
      const cell = cells[c] as HTMLElement;
      const tab = at === this.active.row && c === this.active.column ? "0" : "-1";
      if (cell.getAttribute("tabindex") !== tab) cell.setAttribute("tabindex", tab);
      if (cell.className !== "grid-cell") cell.className = "grid-cell";
      cell.textContent = c === 0 ? "\u2026" : "";
    }
    this.paint(at, node);
    return node;
  }

  private emptyRow(): HTMLElement {
    return el("div", { role: "row", class: "grid-row", "data-kind": "reading" }, ...this.columns.map(() => el("div", { role: "gridcell", class: "grid-cell" })));
  }

  /** Fills rows that are there, as many as the frame has time for; the others in the next. */
  private fillSome(): void {
    const end = performance.now() + BUDGET_MS;
    const inSight = (at: number): boolean => at * ROW_HEIGHT >= this.virtualTop - ROW_HEIGHT && at * ROW_HEIGHT <= this.virtualTop + this.sight;
    const waiting = [...this.live].filter(([, node]) => node.dataset["full"] !== "yes");
    let filled = 0;
    for (const [at, node] of [...waiting.filter(([at]) => inSight(at)), ...waiting.filter(([at]) => !inSight(at))]) {
      const line = this.shown.at(at);
      if (line === null) continue;
      const row = this.kept.get(this.readingOf(line));
      if (row === undefined) continue;
      if (line.kind === "head") this.fillHead(line.group, node);
      else this.fillRow(node, row);
      filled += 1;
      if (filled >= BUDGET_ROWS || performance.now() > end) return this.renderSoon();
    }
  }

  /** The reading that a line tells of: of a head, the first of its group. */
  private readingOf(line: Line): number {
    return line.kind === "head" ? this.shown.firstOf(line.group) : line.reading;
  }

  private fillRow(node: HTMLElement, row: RowView): void {
    const cells = node.children;
    for (let c = 0; c < cells.length; c += 1) {
      const cell = cells[c] as HTMLElement;
      const column = this.columns[c];
      if (column === undefined) continue;
      const tone = column.tone?.(row);
      if (tone !== undefined) cell.className = `grid-cell tone-${tone}`;
      cell.textContent = "";
      append(cell, [column.cell(row)]);
    }
    node.dataset["full"] = "yes";
  }

  private fillHead(group: number, node: HTMLElement): void {
    const row = this.kept.get(this.shown.firstOf(group));
    const cell = node.firstElementChild;
    if (!(cell instanceof HTMLElement)) return;
    cell.textContent = "";
    append(cell, [this.wishes.head(this.shown, group, row)]);
    node.setAttribute("aria-expanded", String(this.shown.isOpen(group)));
    node.dataset["full"] = row === undefined ? "no" : "yes";
  }

  private paintAll(): void {
    for (const [at, node] of this.live) this.paint(at, node);
  }

  private paint(at: number, node: HTMLElement): void {
    const line = this.shown.at(at);
    if (line === null) return;
    let selected = false;
    if (this.selection.count > 0) {
      const { from, past } = this.placesOf(line, true);
      selected = this.selection.countIn(this.shown.order, from, past) === past - from;
    }
    node.setAttribute("aria-selected", String(selected));
    if (line.kind === "reading" && line.reading === this.picked) node.setAttribute("aria-current", "true");
    else node.removeAttribute("aria-current");
  }

  private async fetchMissing(first: number, last: number, downwards: boolean): Promise<void> {
    if (this.fetching) return;
    const missing = this.missing(first, last);
    if (missing.length === 0) return;
    // Rows that come into sight next are fetched on the same way.
    const ahead = downwards ? this.missing(last + 1, last + AHEAD) : this.missing(first - AHEAD, first - 1);
    this.fetching = true;
    const generation = this.generation;
    let rows: RowView[] | null = null;
    try {
      rows = await this.wishes.fetch(Uint32Array.from([...missing, ...ahead]));
    } finally {
      this.fetching = false;
    }
    // Findings that changed while these rows were on their way: they tell of the old ones.
    if (rows === null || generation !== this.generation) {
      if (generation !== this.generation) this.renderSoon();
      return;
    }
    if (this.kept.size > KEPT_ROWS) this.kept.clear();
    for (const row of rows) this.kept.set(row.index, row);
    this.renderSoon();
  }

  private missing(first: number, last: number): number[] {
    const found: number[] = [];
    for (let at = Math.max(0, first); at <= Math.min(last, this.shown.length - 1); at += 1) {
      const line = this.shown.at(at);
      if (line === null) continue;
      const reading = this.readingOf(line);
      if (!this.kept.has(reading)) found.push(reading);
    }
    return found;
  }

  // ---- selecting ----

  /** The places in the order that a line stands for: of a head all of its group, or none where `whole` is false and it is unfolded. */
  private placesOf(line: Line, whole: boolean): { from: number; past: number } {
    if (line.kind === "reading") return { from: line.place, past: line.place + 1 };
    const range = this.shown.range(line.group);
    return whole || !this.shown.isOpen(line.group) ? range : { from: range.from, past: range.from };
  }

  private selectionChanged(): void {
    this.paintAll();
    this.wishes.selected(this.selection.count);
  }

  private toggle(at: number): void {
    const line = this.shown.at(at);
    if (line === null) return;
    const { from, past } = this.placesOf(line, true);
    const all = this.selection.countIn(this.shown.order, from, past) === past - from;
    this.selection.setRange(this.shown.order, from, past, !all);
    this.selection.anchor = at;
    this.selectionChanged();
  }

  /** Selects every line from the anchor to this one, and nothing else. */
  private extendTo(at: number): void {
    const anchor = this.selection.anchor ?? at;
    this.selection.anchor = anchor;
    const upper = this.shown.at(Math.min(anchor, at));
    const lower = this.shown.at(Math.max(anchor, at));
    if (upper === null || lower === null) return;
    this.selection.clear();
    this.selection.setRange(this.shown.order, this.placesOf(upper, false).from, this.placesOf(lower, false).past, true);
    this.selectionChanged();
  }

  selectAll(): void {
    this.selection.setRange(this.shown.order, 0, this.shown.order.length, true);
    this.selectionChanged();
  }

  clearSelection(): void {
    this.selection.clear();
    this.selection.anchor = null;
    this.selectionChanged();
  }

  // ---- hands ----

  private focusActive(): void {
    const node = this.live.get(this.active.row);
    const cell = node?.dataset["kind"] === "head" ? node.firstElementChild : node?.children[this.active.column];
    if (cell instanceof HTMLElement) {
      for (const old of this.body.querySelectorAll('[role="gridcell"][tabindex="0"]')) old.setAttribute("tabindex", "-1");
      cell.setAttribute("tabindex", "0");
      cell.focus({ preventScroll: true });
      if (node?.dataset["kind"] !== "head") this.revealColumn(cell);
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
    if (event.altKey) return;
    const held = event.ctrlKey || event.metaKey;
    const done = held && !event.shiftKey && this.pressedHeld(event.key) ? true : this.pressedToMove(event) || (!held && this.pressedAlone(event.key));
    if (done) event.preventDefault();
  }

  private pressedHeld(key: string): boolean {
    if (key === "a" || key === "A") this.selectAll();
    else if (key === "c" || key === "C") this.wishes.copy();
    else if (key === " ") this.toggle(this.active.row);
    else return false;
    return true;
  }

  private pressedToMove(event: KeyboardEvent): boolean {
    const page = Math.max(1, Math.floor(this.sight / ROW_HEIGHT) - 1);
    const rows: Record<string, number> = {
      ArrowDown: this.active.row + 1,
      ArrowUp: this.active.row - 1,
      PageDown: this.active.row + page,
      PageUp: this.active.row - page,
      Home: 0,
      End: this.shown.length - 1,
    };
    const row = rows[event.key];
    if (row === undefined) return false;
    if (event.shiftKey) this.selection.anchor ??= this.active.row;
    this.focusRow(row);
    if (event.shiftKey) this.extendTo(this.active.row);
    else this.selection.anchor = null;
    const line = this.shown.at(this.active.row);
    if (this.picked !== null && !event.shiftKey && line?.kind === "reading") this.wishes.pick(line.reading, "passed");
    return true;
  }

  private pressedAlone(key: string): boolean {
    const line = this.shown.at(this.active.row);
    if (line === null) return false;
    if (key === " ") this.toggle(this.active.row);
    else if (key === "Escape" && this.selection.count > 0) this.clearSelection();
    else if (key === "Enter") {
      if (line.kind === "head") this.fold(line.group, !this.shown.isOpen(line.group));
      else this.wishes.pick(line.reading, "entered");
    } else if (key === "ArrowRight" || key === "ArrowLeft") this.sideways(line, key === "ArrowRight");
    else return false;
    return true;
  }

  private sideways(line: Line, right: boolean): void {
    if (line.kind === "head") {
      if (right && this.shown.isOpen(line.group)) this.focusRow(this.active.row + 1);
      else this.fold(line.group, right);
      return;
    }
    if (!right && this.active.column === 0 && line.group >= 0) return this.focusRow(this.shown.head(line.group));
    this.active.column = Math.max(0, Math.min(this.active.column + (right ? 1 : -1), this.columns.length - 1));
    this.focusActive();
  }

  private clicked(event: MouseEvent, how: "pressed" | "entered"): void {
    const cell = (event.target as Element).closest<HTMLElement>('[role="gridcell"]');
    const row = cell?.parentElement;
    const at = Number(row?.dataset["at"]);
    const line = this.shown.at(at);
    if (cell == null || row == null || line === null) return;
    const before = this.active.row;
    this.active = { row: at, column: line.kind === "head" ? this.active.column : [...row.children].indexOf(cell) };
    this.focusActive();
    if (event.shiftKey) {
      this.selection.anchor ??= before;
      return this.extendTo(at);
    }
    if (event.ctrlKey || event.metaKey) {
      if (how === "pressed") this.toggle(at);
      return;
    }
    this.selection.anchor = at;
    if (line.kind === "head") {
      if (how === "pressed") this.fold(line.group, !this.shown.isOpen(line.group));
      return;
    }
    this.wishes.pick(line.reading, how);
  }
}
