// A fold whose content is made when it is opened: a folder of thousands of files has one for each of them, and a table of
// eighty columns has hundreds of controls.

import { append, el, type Child } from "../elements";
import { say } from "../words";

// What a person opened or closed; it outlives every drawing.
const chosen = new Map<string, boolean>();

export function lazyFold(id: string, look: string, open: boolean, summary: Child[], content: () => Child[]): HTMLDetailsElement {
  const isOpen = chosen.get(id) ?? open;
  const fold = el("details", { id, class: look, open: isOpen }, el("summary", {}, ...summary));
  let made = isOpen;
  if (made) append(fold, content());
  fold.addEventListener("toggle", () => {
    chosen.set(id, fold.open);
    if (!fold.open || made) return;
    made = true;
    append(fold, content());
  });
  return fold;
}

function turnFold(id: string, open: boolean): void {
  chosen.set(id, open);
  const fold = document.getElementById(id);
  if (fold instanceof HTMLDetailsElement) fold.open = open;
}

/** Opens a fold for whoever is led into it. */
export function openFold(id: string): void {
  turnFold(id, true);
}

/** Closes a fold whose form has done its work. */
export function closeFold(id: string): void {
  turnFold(id, false);
}

/** What has to be asked for: a word of waiting stands there until the answer comes. */
export function askedFor<T>(ask: () => Promise<T | null>, show: (answer: T) => Child[]): HTMLElement {
  const host = el("div", { class: "asked-for", "aria-busy": "true" }, el("p", { class: "quiet" }, say("page-asked-for")));
  void ask().then((answer) => {
    host.replaceChildren();
    host.removeAttribute("aria-busy");
    // Nothing comes where the findings were replaced meanwhile (all this is drawn anew then) or the program went down (it says so).
    append(host, answer === null ? [el("p", { class: "quiet" }, say("page-asked-for-nothing"))] : show(answer));
  });
  return host;
}
