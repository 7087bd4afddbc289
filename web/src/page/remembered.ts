// Keeps what a person said of columns for another day as soon as it is said, forgets it at a press, and hands it out as a file.

import type { Summary } from "../shared/door";
import { HEADER, KEEP_NOTHING, MAPPING, actsOnHeadings, rememberedActs, store, stored } from "./browser-store";
import { focusIn } from "./elements";
import { dropOwnCopies, undoAll } from "./inspection";
import { inTurn } from "./instance";
import { saved } from "./keep/copy";
import { stillHere } from "./hand";
import { keepLanguage } from "./languages";
import { keptMapping, mappingText } from "./looking";
import { save } from "./save";
import { change, state, watch } from "./state";
import { keepTheme } from "./theme";
import { rawOf } from "./help/plain";
import { tellTrouble } from "./troubles";
import { say } from "./words";

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

export async function keepNothing(wanted: boolean): Promise<void> {
  if (wanted) {
    removed = stored(MAPPING);
    store(MAPPING, "");
    store(KEEP_NOTHING, "yes");
    keepLanguage(false);
    keepTheme(false);
    change({ kept: "nothing" });
    await inTurn(async () => {
      try {
        await dropOwnCopies();
        change({ event: say("page-kept-nothing") });
      } catch (error) {
        tellTrouble({ key: "leave", about: "leave", what: say("page-keep-not-removed-what"), where: say("page-keep-found-where"), why: say("page-keep-browser-why"), raw: rawOf(error), todo: say("page-keep-not-removed-todo") });
      }
    });
    return;
  }
  store(KEEP_NOTHING, "");
  keepLanguage(true);
  keepTheme(true);
  const back = removed === "" || store(MAPPING, removed);
  keptSignature = "";
  change({ kept: back ? "yes" : "refused" });
  await inTurn(saved);
  change({ event: say("page-kept-again") });
  void keep();
}

/** Whether the last thing forgotten can still be brought back. */
export function canRecall(summary: Summary): boolean {
  return state.forgotten.length > 0 && state.forgotten.every((number) => summary.acts.some((act) => act.number === number && act.kind === "undo" && !act.undone));
}

export async function forgetRemembered(): Promise<void> {
  if (state.summary === null) return;
  const here = stillHere();
  const numbers = rememberedActs(state.summary).map((act) => act.number);
  const forgotten = await undoAll(numbers);
  if (forgotten.length === 0) return;
  // Said last: whoever hears it finds everything in its place.
  change({ forgotten, event: say("page-remembered-forgotten") });
  if (here()) focusIn("recall-columns");
}

export async function recallForgotten(): Promise<void> {
  const here = stillHere();
  if ((await undoAll(state.forgotten)).length === 0) return;
  change({ event: say("page-remembered-back") });
  if (here()) focusIn("forget-columns");
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
