// What this browser keeps from one visit to the next: which meaning a person gave to the columns under certain headings.
// No measurement, no file's name. Where the browser refuses, work goes on without.

import type { ActInput, ActView, MappingActs, Summary } from "../shared/door";
import { state } from "./state";
import { sayForTheRecord } from "./words";

export const MAPPING = "plumbline.mapping";
export const KEEP_NOTHING = "plumbline.keep-nothing";
export const HEADER = "header:";

export function stored(key: string): string {
  try {
    return localStorage.getItem(key) ?? "";
  } catch {
    return "";
  }
}

/** Writes or, with an empty text, removes; false where the browser refuses. */
export function store(key: string, text: string): boolean {
  try {
    if (text === "") localStorage.removeItem(key);
    else localStorage.setItem(key, text);
    return true;
  } catch {
    return false;
  }
}

// Headings and meanings stand in findings too, so they are named in the note as coming from here.
function note(): string {
  return sayForTheRecord("page-remembered-note");
}

/** The acts about headings that count now. */
export function actsOnHeadings(summary: Summary): ActView[] {
  return summary.acts.filter((act) => act.target.startsWith(HEADER) && !act.undone);
}

/** Those of them that this browser remembered. */
export function rememberedActs(summary: Summary): ActView[] {
  return actsOnHeadings(summary).filter((act) => act.note === note());
}

/** What is remembered of these headings. */
export async function recalled(fingerprints: string[], parse: (name: string, text: string) => Promise<MappingActs>): Promise<ActInput[]> {
  const text = state.kept === "nothing" ? "" : stored(MAPPING);
  if (text === "" || !fingerprints.some((fingerprint) => text.includes(fingerprint))) return [];
  const wanted = new Set(fingerprints.map((fingerprint) => `${HEADER}${fingerprint}`));
  const { acts } = await parse(MAPPING, text);
  return acts.filter((act) => wanted.has(act.target)).map((act) => ({ ...act, note: note() }));
}
