// What is looked at inside the places, as it stands in the address: `#says/outcome=OL&lot=2.91c4&reading=12.0.14.07fe`.
//
// The address lands in the history of a computer that may be borrowed, and browsers write both it and the state that goes with
// it to disk. So it holds nothing but indices, codes of ours, and short checks by which an address of other files is noticed:
// sixteen bits, from which no file and no name can be worked out. What a person typed to find something by (names of lots and of
// suppliers) stands in a table in memory, and the address holds only its number there. The numbers begin at another one in every
// visit, so that one of an earlier visit names nothing. Back and forward bring typed filters back within a visit; after a
// reload they are gone, and the page says so.

import type { Query, Summary } from "../shared/door";
import { controlId } from "./acts-given";
import { ORDERS } from "./columns";
import { byId, focusIn } from "./elements";
import { fetchRows, showOrder } from "./looking";
import { addressChanged, registerAddress } from "./place";
import { openFold } from "./places/lazy-fold";
import { ANY_READING, change, state, watch } from "./state";
import { say } from "./words";

// ---- pieces ----

function joined(pieces: Record<string, string>): string {
  return Object.entries(pieces)
    .map(([name, value]) => `${name}=${encodeURIComponent(value)}`)
    .join("&");
}

function apart(rest: string): Record<string, string> {
  const found: Record<string, string> = {};
  for (const piece of rest.split("&")) {
    const equals = piece.indexOf("=");
    if (equals <= 0) continue;
    try {
      found[piece.slice(0, equals)] = decodeURIComponent(piece.slice(equals + 1));
    } catch {
      // Cut off in the middle of a letter: it names nothing.
      found[piece.slice(0, equals)] = "";
    }
  }
  return found;
}

/** Sixteen bits of a text (FNV-1a, folded). */
export function check(text: string): string {
  let sum = 0x811c9dc5;
  for (let at = 0; at < text.length; at += 1) sum = Math.imul(sum ^ text.charCodeAt(at), 0x01000193);
  return ((sum ^ (sum >>> 16)) & 0xffff).toString(16).padStart(4, "0");
}

/** A check of all files: lots are counted through all of them, so another file may move them. */
function checkOfFiles(summary: Summary): string {
  return check(summary.sources.map((source) => source.sha256).join());
}

function whole(text: string | undefined): number | null {
  return text !== undefined && /^\d{1,9}$/.test(text) ? Number(text) : null;
}

// ---- what was typed ----

const firstNumber = crypto.getRandomValues(new Uint32Array(1))[0] ?? 0;
const typedTexts: string[] = [];

function numberOf(texts: Record<string, string>): string {
  const text = JSON.stringify(texts);
  const known = typedTexts.indexOf(text);
  return String((firstNumber % 1_000_000) + (known >= 0 ? known : typedTexts.push(text) - 1));
}

function textsOf(number: string | undefined): Record<string, string> | null {
  const at = (whole(number) ?? -1) - (firstNumber % 1_000_000);
  const text = typedTexts[at];
  return text === undefined ? null : (JSON.parse(text) as Record<string, string>);
}

// ---- what does it say ----

/** Texts of a query that are one of a few codes of ours. Any other text of it counts as typed by a person. */
const CODED: Record<string, (value: string, summary: Summary) => boolean> = {
  substance: (value, summary) => summary.outcome_counts.some((row) => row.substance === value),
  outcome: (value, summary) => value === "open" || summary.outcome_counts.some((row) => row.counts.some((one) => one.outcome === value)),
  trust: (value, summary) => summary.trusts.some(([code]) => code === value),
  sort: (value) => ORDERS.includes(value),
  group: (value) => /^[a-z_]{1,20}$/.test(value),
  margin: (value) => /^\d(\.\d{1,2})?$/.test(value),
};

/** The reading looked at, and by what it is told from another of the same number. */
let reading: { index: number; place: string } | null = null;

function queryPieces(query: Query, summary: Summary): Record<string, string> {
  const pieces: Record<string, string> = {};
  const typed: Record<string, string> = {};
  for (const [name, value] of Object.entries(query) as [keyof Query, string | number | boolean][]) {
    if (value === ANY_READING[name]) continue;
    if (typeof value === "boolean") pieces[name] = value ? "1" : "0";
    else if (name === "lot") pieces[name] = `${value}.${checkOfFiles(summary)}`;
    else if (typeof value === "number") pieces[name] = String(value);
    else if (CODED[name]?.(value, summary) === true) pieces[name] = value;
    else typed[name] = value;
  }
  if (Object.keys(typed).length > 0) pieces["typed"] = numberOf(typed);
  return pieces;
}

function saysAddress(): string {
  const { summary, query, selected } = state;
  if (summary === null) return "";
  const pieces = queryPieces(query, summary);
  if (reading !== null && reading.index === selected) pieces["reading"] = reading.place;
  return joined(pieces);
}

interface Understood {
  query: Query;
  /** Why not everything in it could be shown; empty where it could. */
  missing: string;
}

/** The query an address names; what it names that is not here is left out and told. */
function queryOf(pieces: Record<string, string>, summary: Summary): Understood {
  const query: Record<string, string | number | boolean> = { ...ANY_READING };
  let missing = "";
  for (const [name, any] of Object.entries(ANY_READING)) {
    const value = pieces[name];
    if (value === undefined) continue;
    const [digits, of] = value.split(".");
    const number = whole(digits);
    if (typeof any === "boolean") query[name] = value === "1";
    else if (name === "lot" && number !== null && of === checkOfFiles(summary) && summary.lots[number] !== undefined) query[name] = number;
    else if (typeof any === "number" && name !== "lot" && number !== null) query[name] = number;
    else if (typeof any === "string" && CODED[name]?.(value, summary) === true) query[name] = value;
    else missing = say("page-address-nothing");
  }
  const typed = pieces["typed"] === undefined ? {} : textsOf(pieces["typed"]);
  for (const [name, text] of Object.entries(typed ?? {})) if (typeof query[name] === "string") query[name] = text;
  if (typed === null && missing === "") missing = say("page-address-typed-gone");
  return { query: query as unknown as Query, missing };
}

function sameQuery(one: Query, other: Query): boolean {
  return (Object.keys(ANY_READING) as (keyof Query)[]).every((name) => one[name] === other[name]);
}

/** Where a reading lies: its number, its file's, its line, and a check of the file. */
async function placeOf(index: number): Promise<string | null> {
  const { summary } = state;
  const row = (await fetchRows(Uint32Array.of(index), []))?.[0];
  if (row === undefined || summary === null || state.summary !== summary) return null;
  // Two files may bear one name: the reading lies in the one whose readings its number falls among.
  let first = 0;
  for (const source of summary.sources) {
    if (index < first + source.readings) return source.name === row.source ? `${index}.${source.index}.${row.line}.${check(source.sha256)}` : null;
    first += source.readings;
  }
  return null;
}

async function takeReading(place: string): Promise<boolean> {
  const index = whole(place.split(".")[0]);
  if (index === null || index >= (state.summary?.readings ?? 0) || (await placeOf(index)) !== place) return false;
  reading = { index, place };
  change({ selected: index });
  return true;
}

async function takeSays(rest: string): Promise<string> {
  const { summary } = state;
  if (summary === null) return say("page-address-no-data");
  const pieces = apart(rest);
  const { query, missing } = queryOf(pieces, summary);
  if (!sameQuery(query, state.query)) await showOrder(query);
  const wanted = pieces["reading"];
  if (wanted === undefined) {
    if (state.selected !== null) change({ selected: null });
    return missing;
  }
  if (reading?.place === wanted && state.selected === reading.index) return missing;
  if (await takeReading(wanted)) return missing;
  if (state.selected !== null) change({ selected: null });
  return say("page-address-nothing");
}

// Passing over readings by the arrow keys opens one after the other: none of them is a step to go back to.
const PASSING = ["ArrowUp", "ArrowDown", "PageUp", "PageDown", "Home", "End"];
const SETTLED_MS = 200;

function watchSays(): void {
  let passing = false;
  addEventListener("keydown", (event) => {
    passing = PASSING.includes(event.key);
  }, true);
  addEventListener("pointerdown", () => {
    passing = false;
  }, true);
  let drawnFor: Summary | null = null;
  watch(["query", "summary"], () => {
    const fresh = state.summary !== drawnFor;
    drawnFor = state.summary;
    // Another review moved what is numbered; nobody went anywhere.
    if (fresh) reading = null;
    const field = document.activeElement;
    const typing = field instanceof HTMLInputElement && ["text", "search", "number"].includes(field.type);
    addressChanged("says", fresh || typing ? "replace" : "push");
    if (fresh && state.selected !== null) void note(state.selected, "replace");
  });
  let settling = 0;
  watch(["selected"], () => {
    const { selected } = state;
    clearTimeout(settling);
    if (selected === (reading?.index ?? null)) return;
    if (selected === null) {
      reading = null;
      addressChanged("says", "push");
      return;
    }
    const how = passing && reading !== null ? "replace" : "push";
    settling = window.setTimeout(() => void note(selected, how), SETTLED_MS);
  });
}

async function note(index: number, how: "push" | "replace"): Promise<void> {
  const place = await placeOf(index);
  if (place === null || state.selected !== index) return;
  reading = { index, place };
  addressChanged("says", how);
}

// ---- what came in ----

let file: { index: number; check: string } | null = null;

function fileFold(index: number): string | null {
  const source = state.summary?.sources[index];
  return source === undefined ? null : controlId("source", source.name, String(source.index));
}

function cameInAddress(): string {
  return file === null ? "" : joined({ file: `${file.index}.${file.check}` });
}

function takeCameIn(rest: string): string {
  const [digits, of] = (apart(rest)["file"] ?? "").split(".");
  const index = whole(digits);
  const source = index === null ? undefined : state.summary?.sources[index];
  file = null;
  if (rest === "") return "";
  if (index === null || source === undefined || check(source.sha256) !== of) return say("page-address-nothing");
  file = { index, check: of };
  const fold = fileFold(index) ?? "";
  openFold(fold);
  const summary = document.getElementById(fold)?.querySelector("summary");
  summary?.scrollIntoView({ block: "start" });
  summary?.focus({ preventScroll: true });
  return "";
}

function watchCameIn(): void {
  watch(["summary"], () => {
    const source = file === null ? undefined : state.summary?.sources[file.index];
    if (file !== null && (source === undefined || check(source.sha256) !== file.check)) file = null;
    addressChanged("came-in", "replace");
  });
  byId("came-in").addEventListener("click", (event) => {
    const head = event.target instanceof Element ? event.target.closest("details.source > summary") : null;
    const fold = head?.parentElement;
    if (!(fold instanceof HTMLDetailsElement)) return;
    const source = state.summary?.sources.find((one) => fileFold(one.index) === fold.id);
    if (source === undefined) return;
    const opens = !fold.open;
    if (!opens && file?.index !== source.index) return;
    file = opens ? { index: source.index, check: check(source.sha256) } : null;
    addressChanged("came-in", "push");
  });
}

// ---- what next ----

// The lot that somebody went on to from here: coming back leads to it again.
let lot: { index: number; check: string } | null = null;

function takeNext(rest: string): string {
  const [digits, of] = (apart(rest)["lot"] ?? "").split(".");
  const index = whole(digits);
  lot = null;
  if (rest === "") return "";
  const { summary } = state;
  if (index === null || summary === null || of !== checkOfFiles(summary) || summary.lots[index] === undefined) return say("page-address-nothing");
  lot = { index, check: of };
  const button = document.querySelector<HTMLElement>(`#next [data-lot="${index}"]`);
  if (button !== null) {
    button.id ||= "next-lot-left";
    focusIn(button.id);
  }
  return "";
}

function watchNext(): void {
  watch(["summary"], () => {
    if (lot !== null && (state.summary === null || lot.check !== checkOfFiles(state.summary))) lot = null;
    addressChanged("next", "replace");
  });
  // Before the button's own handler, which goes on to another place.
  byId("next").addEventListener(
    "click",
    (event) => {
      const button = event.target instanceof Element ? event.target.closest<HTMLElement>("[data-lot]") : null;
      const index = whole(button?.dataset["lot"]);
      if (index === null || state.summary === null) return;
      lot = { index, check: checkOfFiles(state.summary) };
      addressChanged("next", "replace");
    },
    true,
  );
}

export function beginAddresses(): void {
  registerAddress("says", { addressOf: saysAddress, takeAddress: takeSays });
  registerAddress("came-in", { addressOf: cameInAddress, takeAddress: takeCameIn });
  registerAddress("next", { addressOf: () => (lot === null ? "" : joined({ lot: `${lot.index}.${lot.check}` })), takeAddress: takeNext });
  watchSays();
  watchCameIn();
  watchNext();
}
