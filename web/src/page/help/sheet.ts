// A sheet over the page: the guide, the keys, the diagnostic file. The browser's own modal dialog keeps the focus in it, makes
// the page behind it unreachable, closes on Escape and gives the focus back.

import { append, byId, el, type Child } from "../elements";
import { say } from "../words";

export interface Sheet {
  root: HTMLDialogElement;
  body: HTMLElement;
  close: () => void;
}

/** Opens a sheet; one that stands open makes way. `first` has the focus, else the heading. */
export function openSheet(id: string, title: string, content: Child[], first: HTMLElement | null = null): Sheet {
  for (const other of document.querySelectorAll<HTMLDialogElement>("dialog[open]")) other.close();
  const heading = el("h2", { id: `${id}-heading`, tabindex: -1 }, title);
  const body = el("div", { class: "sheet-body" });
  const root = el("dialog", { id, class: "sheet", "aria-labelledby": heading.id });
  const close = (): void => root.close();
  append(body, content);
  root.append(el("header", { class: "sheet-head" }, heading, el("button", { type: "button", id: `${id}-close`, class: "tool", on: { click: close } }, say("page-guide-close"))), body);
  root.addEventListener("close", () => root.remove());
  // Beside the sheet stands only what dims the page: pressing there means "away with it".
  root.addEventListener("click", (event) => {
    if (event.target === root) close();
  });
  document.body.append(root);
  root.showModal();
  (first ?? heading).focus({ preventScroll: true });
  return { root, body, close };
}

/** Whether something stands over the page. */
export function sheetOpen(): boolean {
  return document.querySelector("dialog[open]") !== null;
}

/** Back on the page, at the heading of the place. */
export function focusPlace(place: string): void {
  byId(`heading-${place}`).focus();
}
