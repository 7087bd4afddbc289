// A term where it stands: a word with a dotted line that says what it is. Pointing at it for a moment shows the card; Enter, a
// click or a tap shows it and goes into it. Escape closes it, and so does going elsewhere. One card at a time.
//
// The card is an element of its own in the window's coordinates, not a browser popover: the oldest browsers this page is for
// have none. Within a sheet it stands in the sheet, since everything outside of that is out of reach.

import { el, type Child } from "../elements";
import { watch } from "../state";
import { between, say } from "../words";
import { TERMS, isTerm, type TermId } from "./terms";

const SHOW_MS = 500;
const HIDE_MS = 350;
const GAP = 8;

/** The word, or what is `shown` in its place; `where` keeps the ids of one page apart. */
export function term(id: TermId, where: string, ...shown: Child[]): HTMLElement {
  return el(
    "button",
    { type: "button", id: `term-${where}-${id}`, class: "term-word", "data-term": id, "aria-expanded": "false", "aria-haspopup": "dialog" },
    ...(shown.length === 0 ? [say(`page-term-${id}`)] : shown),
  );
}

/** One quiet line of terms for a place or a section. */
export function wordsHere(where: string, ids: TermId[]): HTMLElement {
  return el("p", { class: "words-here" }, el("span", { class: "quiet" }, say("page-words-here"), between("colon").trimEnd()), ...ids.map((id) => [" ", term(id, where)]));
}

export function sourceOf(id: TermId): string {
  return say(`page-from-${TERMS[id]}`);
}

interface Open {
  card: HTMLElement;
  word: HTMLElement;
  /** Opened on purpose: it stays until it is closed or left. */
  kept: boolean;
}

let open: Open | null = null;
let timer = 0;

function wordAt(target: EventTarget | null): HTMLElement | null {
  return target instanceof Element ? target.closest<HTMLElement>(".term-word") : null;
}

/** What shows a card to a pointer that rests on it: a word, or the head of a column, which does something else when pressed. */
function restedOn(target: EventTarget | null): HTMLElement | null {
  return target instanceof Element ? target.closest<HTMLElement>(".term-word, [role=columnheader][data-term]") : null;
}

/** What has the focus where a card belongs. */
function holder(word: HTMLElement): HTMLElement {
  return word.querySelector("button") ?? word;
}

function told(word: HTMLElement, expanded: boolean): void {
  if (word.classList.contains("term-word")) word.setAttribute("aria-expanded", String(expanded));
}

let guide: (id: TermId) => void = () => undefined;

/** Shows the card of the term that an element stands for, and goes into it. */
export function termCard(word: HTMLElement | null): boolean {
  if (word === null || !isTerm(word.dataset["term"])) return false;
  show(word, true);
  return true;
}

function inCard(target: EventTarget | null): boolean {
  return open !== null && target instanceof Node && open.card.contains(target);
}

function show(word: HTMLElement, kept: boolean): void {
  clearTimeout(timer);
  const id = word.dataset["term"];
  if (!isTerm(id)) return;
  if (open?.word !== word) {
    hide(false);
    const card = el(
      "div",
      { id: "term-card", class: "term-card", role: "dialog", tabindex: -1, "aria-labelledby": "term-card-name", "aria-describedby": "term-card-is" },
      el("p", { id: "term-card-name", class: "term-card-name" }, say(`page-term-${id}`)),
      el("p", { id: "term-card-is" }, say(`page-term-${id}-is`)),
      el("p", { class: "quiet" }, say("page-term-source"), between("gap"), sourceOf(id)),
      el(
        "div",
        { class: "term-card-tools" },
        word.closest("#guide") === null
          ? el(
              "button",
              {
                type: "button",
                class: "tool",
                on: {
                  click: () => {
                    hide(true);
                    guide(id);
                  },
                },
              },
              say("page-term-guide"),
            )
          : null,
        el("button", { type: "button", id: "term-card-close", class: "tool", on: { click: () => hide(true) } }, say("page-term-close")),
      ),
    );
    (word.closest("dialog") ?? document.body).append(card);
    told(word, true);
    open = { card, word, kept };
    put();
  }
  if (!kept) return;
  open.kept = true;
  open.card.focus({ preventScroll: true });
}

/** Closes the card; `back` gives the focus back to the word if it is in the card. */
function hide(back: boolean): void {
  clearTimeout(timer);
  if (open === null) return;
  const { card, word } = open;
  const had = card.contains(document.activeElement);
  open = null;
  told(word, false);
  card.remove();
  if (!back || !had) return;
  const again = word.isConnected ? word : document.getElementById(word.id);
  if (again !== null) holder(again).focus({ preventScroll: true });
}

/** Beside the word, wholly within the window. Where the word is gone or out of sight, so is the card. */
function put(): void {
  if (open === null) return;
  if (!open.word.isConnected) {
    const again = document.getElementById(open.word.id);
    if (again === null) return hide(false);
    told(again, true);
    open.word = again;
  }
  const { card, word } = open;
  const at = word.getBoundingClientRect();
  if (at.bottom < 0 || at.top > innerHeight || at.width === 0) return hide(true);
  const above = at.top - 2 * GAP;
  const below = innerHeight - at.bottom - 2 * GAP;
  card.style.maxHeight = `${Math.max(above, below, 96)}px`;
  const { width, height } = card.getBoundingClientRect();
  const under = height <= below || below >= above;
  // The word's padding for fingers is no part of the text: the card stands close to the letters, so that a mouse can cross.
  card.style.top = `${Math.max(GAP, Math.min(under ? at.bottom : at.top - height, innerHeight - height - GAP))}px`;
  card.style.left = `${Math.max(GAP, Math.min(at.left, document.documentElement.clientWidth - width - GAP))}px`;
}

export function beginTerms(toGuide: (id: TermId) => void): void {
  guide = toGuide;
  document.addEventListener("click", (event) => {
    const word = wordAt(event.target);
    if (word === null) {
      if (!inCard(event.target)) hide(false);
      return;
    }
    // In a form the word must send nothing, and in the head of a fold it must not fold.
    event.preventDefault();
    if (open?.word === word && open.kept) hide(true);
    else show(word, true);
  });
  document.addEventListener("pointerover", (event) => {
    if (event.pointerType !== "mouse") return;
    const word = restedOn(event.target);
    if (word === null && !inCard(event.target)) return;
    clearTimeout(timer);
    if (word !== null && open?.kept !== true) timer = window.setTimeout(() => show(word, false), SHOW_MS);
  });
  document.addEventListener("pointerout", (event) => {
    if (event.pointerType !== "mouse" || (restedOn(event.target) === null && !inCard(event.target))) return;
    clearTimeout(timer);
    if (open !== null && !open.kept) timer = window.setTimeout(() => hide(false), HIDE_MS);
  });
  document.addEventListener("focusout", (event) => {
    if (open?.kept !== true || !inCard(event.target)) return;
    // Leaving the card by Tab goes on from the word, as if the card stood right behind it.
    if (event.relatedTarget !== null && !inCard(event.relatedTarget)) hide(false);
  });
  document.addEventListener(
    "keydown",
    (event) => {
      if (open === null) return;
      if (event.key === "Escape") {
        // Only the card: what stands open behind it stays.
        event.preventDefault();
        event.stopPropagation();
        hide(true);
      } else if (event.key === "Tab" && inCard(event.target)) {
        const fields = [...open.card.querySelectorAll<HTMLElement>("button")];
        const last = event.shiftKey ? fields[0] : fields.at(-1);
        if (document.activeElement !== last && !(event.shiftKey && document.activeElement === open.card)) return;
        const { word } = open;
        hide(false);
        // From here the browser goes on to what follows or precedes the word.
        holder(word).focus({ preventScroll: true });
        if (event.shiftKey) event.preventDefault();
      }
    },
    true,
  );
  addEventListener("scroll", (event) => {
    if (!inCard(event.target)) put();
  }, { capture: true, passive: true });
  addEventListener("resize", put);
  watch(["place"], () => hide(false));
}
