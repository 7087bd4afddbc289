// Which columns the table shows. The choice lives as long as the page is open; nothing of it is kept on the computer.

import { FIXED_COLUMN, otherElement } from "./columns";
import { el } from "./elements";
import type { Column } from "./grid";
import { wordsHere } from "./help/term";
import { isTerm } from "./help/terms";
import { say } from "./words";

export class ColumnChoice {
  readonly root: HTMLDetailsElement;
  private readonly list = el("div", { class: "column-list" });
  /** What the headings mean: in the table itself they sort when they are pressed. */
  private readonly words = el("div", {});
  private readonly asAtFirst = el("button", { type: "button", id: "columns-as-at-first", class: "tool", on: { click: () => this.reset() }, "data-say": "page-grid-columns-first" });
  /** What a person said of columns; the others stand as at first. */
  private readonly said = new Map<string, boolean>();
  private all: Column[] = [];

  constructor(private readonly changed: () => void) {
    this.root = el(
      "details",
      { id: "columns", class: "columns" },
      el("summary", { "data-say": "page-grid-columns" }),
      el("fieldset", {}, el("legend", { "data-say": "page-grid-columns-which" }), this.list),
      this.words,
      this.asAtFirst,
    );
    this.root.addEventListener("keydown", (event) => {
      if (event.key !== "Escape" || !this.root.open) return;
      event.stopPropagation();
      this.root.open = false;
      this.root.querySelector("summary")?.focus();
    });
  }

  /** The chosen ones of all columns, in their order. */
  of(all: Column[]): Column[] {
    if (all.map((column) => column.id).join() !== this.all.map((column) => column.id).join()) this.draw(all);
    this.all = all;
    return all.filter((column) => this.isShown(column.id));
  }

  isShown(id: string): boolean {
    // What no outcome speaks of is only shown when somebody asks for it.
    return id === FIXED_COLUMN || (this.said.get(id) ?? otherElement(id) === null);
  }

  /** Draws the boxes anew, in the language of now. */
  draw(all: Column[]): void {
    this.words.replaceChildren(wordsHere("columns", [...new Set(all.map((column) => column.term))].filter(isTerm)));
    this.list.replaceChildren(
      ...all
        .filter((column) => column.id !== FIXED_COLUMN)
        .map((column) => {
          const id = `column-shown-${column.id}`;
          const box = el("input", { id, type: "checkbox", checked: this.isShown(column.id) });
          box.addEventListener("change", () => {
            this.said.set(column.id, box.checked);
            this.changed();
          });
          const name = otherElement(column.id) === null ? column.heading : say("page-grid-column-element", { symbol: column.heading });
          return el("div", { class: "field-check" }, box, el("label", { for: id }, name));
        }),
    );
  }

  private reset(): void {
    this.said.clear();
    this.draw(this.all);
    this.changed();
  }
}
