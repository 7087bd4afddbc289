// Every key of the page in one list: what it is called, what it does, and, where it is heard here, what is done. The sheet is
// drawn from this list and the listener goes by it, so that neither knows a key the other does not.

import { el, type Child } from "../elements";
import { redo, undo } from "../inspection";
import { goTo } from "../place";
import { state, type PlaceName } from "../state";
import { say } from "../words";
import { recall, remember } from "./kept";
import { openSheet, sheetOpen } from "./sheet";

export type KeyGroup = "anywhere" | "table" | "cards" | "photo";

export interface Key {
  id: string;
  group: KeyGroup;
  /** The caps to press, one list for each way; a name of the catalogue (`page-keycap-…`) or the sign itself. */
  caps: () => string[][];
  words: () => string;
  /** A letter or sign without Ctrl or Alt: it can be switched off (WCAG 2.1, 2.1.4). */
  single?: boolean;
  /** Absent where the control that has the focus hears it itself. */
  fits?: (event: KeyboardEvent) => boolean;
  /** Whether there is anything to do here and now. */
  here?: () => boolean;
  run?: () => void;
  /** Heard in a text field too, since it types nothing. */
  inFields?: boolean;
}

const registry: Key[] = [];

/** Adds keys to the list. One that stands in it already makes way. */
export function registerKeys(...keys: Key[]): void {
  for (const key of keys) {
    const at = registry.findIndex((one) => one.id === key.id);
    if (at < 0) registry.push(key);
    else registry[at] = key;
  }
}

export function registeredKeys(): readonly Key[] {
  return registry;
}

const cap = (name: string): string => say(`page-keycap-${name}`);
const held = (): string => (MAC ? "⌘" : cap("ctrl"));
const withCtrl = (event: KeyboardEvent): boolean => event.ctrlKey !== event.metaKey && !event.altKey;
const plain = (event: KeyboardEvent): boolean => !event.ctrlKey && !event.metaKey && !event.altKey;

// Alt and a digit change the browser's own tabs on Linux and nothing on other systems.
const MAC = /mac|iphone|ipad/i.test(navigator.platform);
const TABS_BY_ALT = /linux|x11|cros/i.test(navigator.platform) && !/android/i.test(navigator.userAgent);
const STEPS: PlaceName[] = ["came-in", "trust", "says", "next", "write"];

const altAnd = (digit: number): string[] => (TABS_BY_ALT ? ["Alt", cap("shift"), String(digit)] : ["Alt", String(digit)]);
// By the place of the key on the board: with Shift or Alt the letter it makes is another one.
const altDigit = (event: KeyboardEvent, digit: number): boolean => event.altKey && !event.ctrlKey && !event.metaKey && event.shiftKey === TABS_BY_ALT && event.code === `Digit${digit}`;

function placeKeys(): Key[] {
  return STEPS.map((place, at) => ({
    id: `place-${place}`,
    group: "anywhere",
    caps: () => [altAnd(at + 1)],
    words: () => say("page-key-place", { place: say(`page-place-${place}`) }),
    fits: (event) => altDigit(event, at + 1),
    run: () => goTo(place, `heading-${place}`),
  }));
}

/** Declares a key that the control which has the focus hears itself. */
function heard(id: string, group: KeyGroup, words: string, ...caps: string[][]): Key {
  return { id, group, caps: () => caps.map((ways) => ways.map((one) => (one === "ctrl" ? held() : /^[a-z-]+$/.test(one) ? cap(one) : one))), words: () => say(words) };
}

export function beginKeys(openGuide: () => void): void {
  registerKeys(
    { id: "guide", group: "anywhere", caps: () => [["F1"]], words: () => say("page-key-guide"), fits: (event) => event.key === "F1" && plain(event) && !event.shiftKey, run: openGuide, inFields: true },
    { id: "keys", group: "anywhere", caps: () => [["?"]], words: () => say("page-key-keys"), single: true, fits: (event) => event.key === "?" && plain(event), run: openKeys },
    ...placeKeys(),
    {
      id: "next",
      group: "anywhere",
      caps: () => [altAnd(0)],
      words: () => say("page-key-next"),
      fits: (event) => altDigit(event, 0),
      run: () => document.getElementById("next-go")?.focus(),
      inFields: true,
    },
    {
      id: "filter",
      group: "anywhere",
      caps: () => [["/"]],
      words: () => say("page-key-filter"),
      single: true,
      fits: (event) => event.key === "/" && plain(event),
      here: () => state.place === "says" && filterField() !== null,
      run: () => {
        const field = filterField();
        field?.focus();
        if (field instanceof HTMLInputElement) field.select();
        field?.scrollIntoView({ block: "center" });
      },
    },
    {
      id: "undo",
      group: "anywhere",
      caps: () => [[held(), "Z"]],
      words: () => say("page-undo"),
      fits: (event) => withCtrl(event) && !event.shiftKey && event.key.toLowerCase() === "z",
      run: () => void undo(),
    },
    {
      id: "redo",
      group: "anywhere",
      caps: () => [[held(), "Y"], [held(), cap("shift"), "Z"]],
      words: () => say("page-redo"),
      fits: (event) => withCtrl(event) && event.key.toLowerCase() === (event.shiftKey ? "z" : "y"),
      run: () => void redo(),
    },
    heard("close", "anywhere", "page-key-close", ["escape"]),
    // grid-headings.ts hears these, and grid.ts those after them.
    heard("heads", "table", "page-key-heads", ["←"], ["→"]),
    heard("head-sort", "table", "page-key-head-sort", ["enter"]),
    heard("head-term", "table", "page-key-head-term", ["F2"]),
    heard("rows", "table", "page-key-rows", ["↑"], ["↓"]),
    heard("cells", "table", "page-key-cells", ["←"], ["→"]),
    heard("screens", "table", "page-key-screens", ["pgup"], ["pgdn"]),
    heard("ends", "table", "page-key-ends", ["home"], ["end"]),
    heard("open", "table", "page-key-open", ["enter"]),
    heard("fold", "table", "page-key-fold", ["←"], ["→"]),
    heard("select", "table", "page-key-select", ["shift", "↑"], ["shift", "↓"]),
    heard("select-one", "table", "page-key-select-one", ["space"]),
    heard("select-all", "table", "page-key-select-all", ["ctrl", "A"]),
    heard("copy", "table", "page-key-copy", ["ctrl", "C"]),
    heard("select-none", "table", "page-key-select-none", ["escape"]),
    // acts-given.ts hears these.
    heard("pick", "cards", "page-key-pick", ["↑"], ["↓"]),
    heard("take", "cards", "page-key-take", ["enter"]),
    // photo-spot.ts hears these.
    heard("spot", "photo", "page-key-spot", ["↑"], ["↓"], ["←"], ["→"]),
    heard("spot-take", "photo", "page-key-spot-take", ["enter"]),
  );
  addEventListener("keydown", (event) => {
    if (event.defaultPrevented || event.isComposing || event.repeat || sheetOpen()) return;
    const typing = isTyping(event.target);
    const key = registry.find((one) => one.fits?.(event) === true && (one.here?.() ?? true));
    if (key?.run === undefined || (typing && key.inFields !== true) || (key.single === true && !singleKeys())) return;
    event.preventDefault();
    key.run();
  });
}

function filterField(): HTMLElement | null {
  const field = document.getElementById("filter-text");
  return field !== null && field.closest("[hidden]") === null ? field : null;
}

const NO_TEXT = ["checkbox", "radio", "button", "file", "submit", "range", "color"];

function isTyping(target: EventTarget | null): boolean {
  if (!(target instanceof HTMLElement)) return false;
  if (target.isContentEditable || target instanceof HTMLTextAreaElement || target instanceof HTMLSelectElement) return true;
  return target instanceof HTMLInputElement && !NO_TEXT.includes(target.type);
}

function singleKeys(): boolean {
  return recall("single-keys") !== "off";
}

// ---- the sheet ----

const GROUPS: KeyGroup[] = ["anywhere", "table", "cards", "photo"];

function capsShown(ways: string[][]): Child[] {
  return ways.flatMap((caps, at) => [at === 0 ? null : " ", el("span", { class: "key-way" }, ...caps.flatMap((one, of) => [of === 0 ? null : " + ", el("kbd", {}, one)]))]);
}

export function keysTable(): HTMLElement {
  return el(
    "div",
    { class: "keys" },
    ...GROUPS.map((group) => [
      el("h3", {}, say(`page-keys-${group}`)),
      el(
        "table",
        { class: "keys-table" },
        el("thead", {}, el("tr", {}, el("th", { scope: "col" }, say("page-keys-key")), el("th", { scope: "col" }, say("page-keys-what")))),
        el("tbody", {}, ...registry.filter((key) => key.group === group).map((key) => el("tr", { "data-key": key.id }, el("td", {}, ...capsShown(key.caps())), el("td", {}, key.words())))),
      ),
    ]),
  );
}

export function openKeys(): void {
  const single = registry.filter((key) => key.single === true).flatMap((key) => key.caps().flat()).join("  ");
  const choice = el("input", { type: "checkbox", id: "single-keys", checked: singleKeys(), "aria-describedby": "single-keys-hint" });
  choice.addEventListener("change", () => remember("single-keys", choice.checked ? "on" : "off"));
  openSheet("keys", say("page-keys-heading"), [
    keysTable(),
    el("div", { class: "field-check" }, choice, el("label", { for: choice.id }, say("page-keys-single", { keys: single }))),
    el("p", { id: "single-keys-hint", class: "hint" }, say("page-keys-single-hint")),
  ]);
}
