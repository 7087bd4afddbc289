// The lines of a table: its readings, with a head above each group. A folded group shows its head alone.

import type { OrderView } from "../shared/door";

/** What stands on a line: a reading, or the head of a group. */
export type Line = { kind: "reading"; reading: number; place: number; group: number } | { kind: "head"; group: number };

export interface GroupRange {
  from: number;
  /** One past its last reading. */
  past: number;
}

export class Lines {
  readonly order: Uint32Array;
  readonly groups: number;
  private readonly open: Uint8Array;
  /** The line of each head, and one past the last line. */
  private readonly tops: Uint32Array;

  constructor(
    readonly found: OrderView,
    /** Keys of groups that are unfolded. */
    private readonly unfolded: Set<number>,
  ) {
    this.order = found.indices;
    this.groups = found.starts.length;
    this.open = new Uint8Array(this.groups);
    this.tops = new Uint32Array(this.groups + 1);
    for (let group = 0; group < this.groups; group += 1) this.open[group] = unfolded.has(this.keyOf(group)) ? 1 : 0;
    this.place();
  }

  private keyOf(group: number): number {
    return this.found.keys[group] ?? -1;
  }

  private place(): void {
    let line = 0;
    for (let group = 0; group < this.groups; group += 1) {
      this.tops[group] = line;
      line += 1;
      if (this.open[group] === 1) line += this.count(group);
    }
    this.tops[this.groups] = line;
  }

  get grouped(): boolean {
    return this.groups > 0;
  }

  get length(): number {
    return this.grouped ? (this.tops[this.groups] ?? 0) : this.order.length;
  }

  range(group: number): GroupRange {
    return { from: this.found.starts[group] ?? 0, past: this.found.starts[group + 1] ?? this.order.length };
  }

  count(group: number): number {
    const { from, past } = this.range(group);
    return past - from;
  }

  isOpen(group: number): boolean {
    return this.open[group] === 1;
  }

  head(group: number): number {
    return this.tops[group] ?? 0;
  }

  at(line: number): Line | null {
    if (line < 0 || line >= this.length) return null;
    if (!this.grouped) return { kind: "reading", reading: this.order[line] ?? 0, place: line, group: -1 };
    const group = last(this.tops, this.groups, line);
    if (this.tops[group] === line) return { kind: "head", group };
    const place = this.range(group).from + line - this.head(group) - 1;
    return { kind: "reading", reading: this.order[place] ?? 0, place, group };
  }

  /** The line of a reading by its place in the order; that of its group's head where it is folded. */
  lineOf(place: number): number {
    if (!this.grouped) return place;
    const group = this.groupOf(place);
    return this.isOpen(group) ? this.head(group) + 1 + place - this.range(group).from : this.head(group);
  }

  groupOf(place: number): number {
    return last(this.found.starts, this.groups, place);
  }

  /** The first reading of a group tells its name. */
  firstOf(group: number): number {
    return this.order[this.range(group).from] ?? 0;
  }

  fold(group: number, open: boolean): void {
    this.open[group] = open ? 1 : 0;
    if (open) this.unfolded.add(this.keyOf(group));
    else this.unfolded.delete(this.keyOf(group));
    this.place();
  }

  foldAll(open: boolean): void {
    this.open.fill(open ? 1 : 0);
    this.unfolded.clear();
    if (open) for (const key of this.found.keys) this.unfolded.add(key);
    this.place();
  }
}

/** The last of the first `many` rising numbers that is not above `wanted`. */
function last(rising: Uint32Array, many: number, wanted: number): number {
  let low = 0;
  let high = many - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((rising[middle] ?? 0) <= wanted) low = middle;
    else high = middle - 1;
  }
  return low;
}
