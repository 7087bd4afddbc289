// Which readings are selected: a mark for each reading of the inspection, so that a million are as quick as one.

export class Selection {
  private marks = new Uint8Array(0);
  private many = 0;
  /** Where a run of selected lines began. */
  anchor: number | null = null;

  get count(): number {
    return this.many;
  }

  has(reading: number): boolean {
    return this.marks[reading] === 1;
  }

  /** Forgets everything; `readings` is how many there are now. */
  reset(readings: number): void {
    this.marks = new Uint8Array(readings);
    this.many = 0;
    this.anchor = null;
  }

  clear(): void {
    this.marks.fill(0);
    this.many = 0;
  }

  set(reading: number, selected: boolean): void {
    const mark = selected ? 1 : 0;
    if (reading >= this.marks.length || this.marks[reading] === mark) return;
    this.marks[reading] = mark;
    this.many += selected ? 1 : -1;
  }

  /** Selects the readings at some places of an order, or takes them out. */
  setRange(order: Uint32Array, from: number, past: number, selected: boolean): void {
    for (let place = from; place < past; place += 1) {
      const reading = order[place];
      if (reading !== undefined) this.set(reading, selected);
    }
  }

  /** How many readings at some places of an order are selected. */
  countIn(order: Uint32Array, from: number, past: number): number {
    let found = 0;
    for (let place = from; place < past; place += 1) if (this.marks[order[place] ?? -1] === 1) found += 1;
    return found;
  }

  /** The selected readings in the order shown; those that are not shown are left out. */
  within(order: Uint32Array): Uint32Array {
    return order.filter((reading) => this.marks[reading] === 1);
  }
}
