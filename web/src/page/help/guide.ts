// The guide: short chapters, the picture of the ruler and all terms, in the page and without a network, searched as one types.
// Searched by pieces of words, since Japanese and Chinese put no spaces between theirs.

import { el, type Child } from "../elements";
import { goTo } from "../place";
import type { PlaceName } from "../state";
import { between, say } from "../words";
import { diagnosticButton } from "./diagnostic";
import { keysTable, openKeys } from "./keys";
import { legend } from "./legend";
import { openSheet } from "./sheet";
import { sourceOf } from "./term";
import { TERM_IDS, type TermId } from "./terms";
import { startTour } from "./tour";

interface Chapter {
  id: string;
  /** The place it speaks of, and what in it. */
  place: PlaceName | null;
  focus?: string;
  more?: () => Child[];
}

const CHAPTERS: Chapter[] = [
  { id: "bring", place: "start", focus: "bring" },
  { id: "columns", place: "came-in" },
  { id: "trust", place: "trust" },
  { id: "ruler", place: "says", more: legend },
  { id: "materials", place: "trust", focus: "evidence-materials" },
  { id: "exemptions", place: "trust", focus: "evidence-claims" },
  { id: "halogens", place: "trust", focus: "evidence-halogens" },
  { id: "next", place: "next" },
  { id: "report", place: "write" },
  { id: "prove", place: "prove" },
  { id: "keep", place: "start", focus: "leave" },
  { id: "wrong", place: null, more: () => [diagnosticButton("guide-diagnostic")] },
  { id: "safety", place: null },
  { id: "law", place: null },
];

/** The text in pieces, those that were searched for marked. */
function marked(text: string, wanted: string[]): Child[] {
  const low = text.toLowerCase();
  // Some letters grow when they are made small; then places in one text are none in the other.
  if (wanted.length === 0 || low.length !== text.length) return [text];
  const inside = new Array<boolean>(text.length).fill(false);
  for (const piece of wanted) {
    for (let at = low.indexOf(piece); at >= 0; at = low.indexOf(piece, at + 1)) inside.fill(true, at, at + piece.length);
  }
  const parts: Child[] = [];
  let from = 0;
  for (let to = 1; to <= text.length; to += 1) {
    if (to < text.length && inside[to] === inside[from]) continue;
    const part = text.slice(from, to);
    parts.push(inside[from] === true ? el("mark", {}, part) : part);
    from = to;
  }
  return parts;
}

function paragraphs(id: string): string[] {
  return say(`page-guide-${id}-text`).split("\n").map((one) => one.trim()).filter((one) => one !== "");
}

function has(texts: string[], wanted: string[]): boolean {
  const all = texts.join("\n").toLowerCase();
  return wanted.every((piece) => all.includes(piece));
}

interface Found {
  nodes: Child[];
  n: number;
}

function chapters(wanted: string[], leave: () => void): Found {
  const found = CHAPTERS.filter((one) => has([say(`page-guide-${one.id}`), ...paragraphs(one.id)], wanted));
  return {
    n: found.length,
    nodes: found.map((one) => {
      const { place } = one;
      return el(
        "details",
        { id: `guide-${one.id}`, class: "fold", open: wanted.length > 0 },
        el("summary", {}, el("span", {}, ...marked(say(`page-guide-${one.id}`), wanted))),
        el("div", { class: "guide-text" }, ...paragraphs(one.id).map((text) => el("p", {}, ...marked(text, wanted)))),
        ...(one.more?.() ?? []),
        place === null
          ? null
          : el(
              "button",
              {
                type: "button",
                class: "tool",
                on: {
                  click: () => {
                    leave();
                    goTo(place, document.getElementById(one.focus ?? "") === null ? null : (one.focus ?? null));
                  },
                },
              },
              say("page-guide-go"),
              el("span", { class: "heard" }, ` ${say(`page-guide-${one.id}`)}`),
            ),
      );
    }),
  };
}

function words(wanted: string[], open: boolean): Found {
  const found = TERM_IDS.filter((id) => has([say(`page-term-${id}`), say(`page-term-${id}-is`), sourceOf(id)], wanted));
  const list = el(
    "dl",
    { class: "guide-words" },
    ...found.map((id) =>
      el(
        "div",
        { id: `guide-word-${id}`, class: "guide-word", tabindex: -1 },
        el("dt", {}, ...marked(say(`page-term-${id}`), wanted)),
        el("dd", {}, ...marked(say(`page-term-${id}-is`), wanted)),
        el("dd", { class: "quiet" }, say("page-term-source"), between("gap"), ...marked(sourceOf(id), wanted)),
      ),
    ),
  );
  return { n: found.length, nodes: found.length === 0 ? [] : [el("details", { id: "guide-words", class: "fold", open: open || wanted.length > 0 }, el("summary", {}, say("page-guide-words")), list)] };
}

/** Opens the guide, at a term if one is named. */
export function openGuide(at: TermId | null = null): void {
  const search = el("input", { id: "guide-search", type: "search", autocomplete: "off", spellcheck: "false" });
  const found = el("p", { id: "guide-found", class: "quiet", "aria-live": "polite" });
  const results = el("div", { id: "guide-results", class: "guide-results" });
  const sheet = openSheet(
    "guide",
    say("page-guide"),
    [
      el("div", { class: "guide-search", role: "search" }, el("label", { for: search.id }, say("page-guide-search")), search, found),
      el(
        "div",
        { class: "guide-tools" },
        el("button", { type: "button", id: "guide-tour", class: "tool", on: { click: () => { sheet.close(); void startTour(); } } }, say("page-guide-tour")),
        el("button", { type: "button", id: "guide-keys", class: "tool", on: { click: openKeys } }, say("page-guide-keys")),
      ),
      results,
    ],
    // A finger that opens the guide wants to read; a keyboard that comes up would hide half of it.
    at !== null || matchMedia("(pointer: coarse)").matches ? null : search,
  );
  const draw = (): void => {
    const wanted = search.value.normalize("NFKC").toLowerCase().split(/\s+/).filter((piece) => piece !== "");
    const [told, terms] = [chapters(wanted, sheet.close), words(wanted, at !== null)];
    const keys = wanted.length === 0 || has([keysTable().textContent ?? ""], wanted);
    results.replaceChildren();
    for (const node of [...told.nodes, ...terms.nodes]) if (node instanceof Node) results.append(node);
    if (wanted.length > 0 && keys) {
      results.append(el("details", { id: "guide-keys-found", class: "fold", open: true }, el("summary", {}, say("page-guide-keys")), keysTable()));
    }
    found.textContent = wanted.length === 0 ? "" : say("page-guide-found", { n: told.n + terms.n + (keys ? 1 : 0) });
  };
  search.addEventListener("input", draw);
  // Some browsers only empty a search field on Escape; the list of keys says that it closes what is open.
  search.addEventListener("keydown", (event) => {
    if (event.key !== "Escape" || event.isComposing) return;
    event.preventDefault();
    sheet.close();
  });
  draw();
  if (at === null) return;
  const word = document.getElementById(`guide-word-${at}`);
  word?.scrollIntoView({ block: "center" });
  word?.focus({ preventScroll: true });
}
