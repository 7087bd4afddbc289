// What this browser keeps from one visit to the next: which meaning a person gave to the columns under certain headings.
// No measurement, no file's name. Where the browser refuses, work goes on without.

import type { ActInput, ActView, MappingActs, Summary } from "../shared/door";
import { focusIn } from "./elements";
import { keptMapping, mappingText } from "./looking";
import { undoAll } from "./inspection";
import { save } from "./save";
import { change, state, watch } from "./state";
import { say } from "./words";

const MAPPING = "plumbline.mapping";
const KEEP_NOTHING = "plumbline.keep-nothing";
const HEADER = "header:";

function stored(key: string): string {
  try {
    return localStorage.getItem(key) ?? "";
  } catch {
    return "";
  }
}

/** Writes or, with an empty text, removes; false where the browser refuses. */
function store(key: string, text: string): boolean {
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
  return say("page-remembered-note");
}

/** The acts about headings that count now. */
export function actsOnHeadings(summary: Summary): ActView[] {
  return summary.acts.filter((act) => act.target.startsWith(HEADER) && !act.undone);
}

/** Those of them that this browser remembered. */
export function rememberedActs(summary: Summary): ActView[] {
  return actsOnHeadings(summary).filter((act) => act.note === note());
}

/** What is remembered of the headings that came in, where nobody has said anything of them in this inspection. */
export async function recalled(summary: Summary, parse: (name: string, text: string) => Promise<MappingActs>): Promise<ActInput[]> {
  const text = state.kept === "nothing" ? "" : stored(MAPPING);
  if (text === "") return [];
  const spokenOf = new Set(summary.acts.map((act) => act.target));
  const wanted = new Set(
    summary.sources
      .flatMap((source) => source.blocks)
      .map((block) => `${HEADER}${block.fingerprint}`)
      .filter((target) => !spokenOf.has(target)),
  );
  if (wanted.size === 0) return [];
  const { acts } = await parse(MAPPING, text);
  return acts.filter((act) => wanted.has(act.target)).map((act) => ({ ...act, note: note() }));
}

let keptSignature = "";

function signature(summary: Summary): string {
  return JSON.stringify(actsOnHeadings(summary).map((act) => [act.target, act.kind, act.value]));
}

async function keep(): Promise<void> {
  const { summary } = state;
  if (summary === null || state.kept === "nothing" || state.door === "train") return;
  // Untouched headings leave what was kept of them another day alone.
  if (!summary.acts.some((act) => act.target.startsWith(HEADER))) return;
  const now = signature(summary);
  if (now === keptSignature) return;
  const text = await keptMapping(stored(MAPPING));
  if (text === null) return;
  keptSignature = now;
  const kept = store(MAPPING, text) ? "yes" : "refused";
  if (kept !== state.kept) change({ kept });
}

// What was removed by "keep nothing" comes back when that is taken back in the same visit.
let removed = "";

export function keepNothing(wanted: boolean): void {
  if (wanted) {
    removed = stored(MAPPING);
    store(MAPPING, "");
    store(KEEP_NOTHING, "yes");
    change({ kept: "nothing", event: say("page-kept-nothing") });
    return;
  }
  store(KEEP_NOTHING, "");
  const back = removed === "" || store(MAPPING, removed);
  keptSignature = "";
  change({ kept: back ? "yes" : "refused", event: say("page-kept-again") });
  void keep();
}

/** Whether the last thing forgotten can still be brought back. */
export function canRecall(summary: Summary): boolean {
  return state.forgotten.length > 0 && state.forgotten.every((number) => summary.acts.some((act) => act.number === number && act.kind === "undo" && !act.undone));
}

export async function forgetRemembered(): Promise<void> {
  if (state.summary === null) return;
  const numbers = rememberedActs(state.summary).map((act) => act.number);
  change({ forgotten: await undoAll(numbers, say("page-remembered-forgotten")) });
  focusIn("recall-columns");
}

export async function recallForgotten(): Promise<void> {
  const numbers = state.forgotten;
  await undoAll(numbers, say("page-remembered-back"));
  change({ forgotten: [] });
  focusIn("forget-columns");
}

export async function saveMapping(): Promise<void> {
  const text = await mappingText();
  if (text === null) return;
  save("mapping.toml", new Blob([text], { type: "application/toml" }));
  change({ event: say("page-event-written", { file: "mapping.toml" }) });
}

export function beginRemembering(): void {
  change({ kept: stored(KEEP_NOTHING) === "" ? "yes" : "nothing" });
  watch(["summary"], () => {
    if (state.summary === null) {
      keptSignature = "";
      change({ forgotten: [] });
    }
    void keep();
  });
}
