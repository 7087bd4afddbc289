// Asking the worker for what is shown or taken away: questions that change nothing.

import type { AheadView, ChecksView, DetailView, IdTemplateView, PaperFile, PapersView, PreviewView, Query, RowView, ShelfBook, WorstView, WrittenFile } from "../shared/door";
import { EngineCrashed, EngineReplaced, type Engine } from "./engine";
import { putAside, standAgain } from "./inspection";
import { inTurn, running, working } from "./instance";
import { change, state } from "./state";
import { crashTrouble, tellTrouble } from "./troubles";
import { say } from "./words";

// Looking again at what brought the program down would bring it down again, and so on without end.
const MOST_CRASHES_LOOKING = 2;
let crashesLooking = 0;

/** Asks the engine something that changes nothing; after a crash everything is stood up again and null comes back. */
function look<T>(where: string, question: (machine: Engine) => Promise<T>): Promise<T | null> {
  const about = state.summary;
  return inTurn(async () => {
    // Reading indices belong to the summary they were taken from; while waiting, that may have been replaced.
    if (state.summary !== about || about === null) return null;
    const machine = await running();
    try {
      const answer = await question(machine);
      crashesLooking = 0;
      return answer;
    } catch (error) {
      if (error instanceof EngineReplaced) change({ event: say("page-event-cancelled") });
      else if (error instanceof EngineCrashed) giveUpLooking(error, where);
      else throw error;
      await standAgain();
      return null;
    }
  });
}

function giveUpLooking(crash: EngineCrashed, where: string): void {
  change({ selected: null });
  crashesLooking += 1;
  if (crashesLooking < MOST_CRASHES_LOOKING) {
    tellTrouble(crashTrouble(crash, where, say("page-trouble-crash-look-todo")));
    return;
  }
  crashesLooking = 0;
  putAside();
  tellTrouble(crashTrouble(crash, where, say("page-trouble-crash-all-todo")));
}

let orderAsked = 0;

export async function showOrder(query: Query): Promise<void> {
  change({ query });
  if (state.summary === null) return;
  const asked = ++orderAsked;
  // A newer filter was typed meanwhile: its answer is the one to show, and this one is not even asked for.
  const answer = await look(say("page-where-table"), async (machine) => (asked === orderAsked ? machine.ask("order", { query }) : null));
  if (answer === null || asked !== orderAsked) return;
  const { found } = answer;
  change({ order: found.indices, found, event: say("page-event-shown", { n: found.indices.length, of: state.summary.readings }) });
}

export async function fetchRows(indices: Uint32Array, others: string[]): Promise<RowView[] | null> {
  const answer = await look(say("page-where-table"), (machine) => machine.ask("window", { indices, others }));
  return answer?.rows ?? null;
}

/** Readings as text between tabs. */
export async function fetchCopied(indices: Uint32Array, columns: string[], heads: boolean): Promise<Uint8Array[] | null> {
  const answer = await look(say("page-where-table"), (machine) => machine.ask("copied", { indices, columns, heads }));
  return answer?.bytes ?? null;
}

export async function fetchDetail(index: number): Promise<DetailView | null> {
  const answer = await look(say("page-where-detail"), (machine) => machine.ask("detail", { index }));
  return answer?.detail ?? null;
}

/** What lies ahead of one lot; only asked for when a person wants to see it. */
export async function fetchAhead(lot: number): Promise<AheadView | null> {
  const answer = await look(say("page-where-ahead"), (machine) => machine.ask("ahead", { lot }));
  return answer?.ahead ?? null;
}

/** The readings that show the worst of each material of a lot, with their rulers. */
export async function fetchWorst(lot: number): Promise<WorstView[] | null> {
  const answer = await look(say("page-where-table"), (machine) => machine.ask("worst", { lot }));
  return answer?.worst ?? null;
}

/** Check readings, control charts and suppliers; only asked for when a person wants to see them. */
export async function fetchChecks(): Promise<ChecksView | null> {
  const answer = await look(say("page-where-checks"), (machine) => machine.ask("checks", {}));
  return answer?.checks ?? null;
}

export async function fetchShelf(): Promise<ShelfBook[] | null> {
  const answer = await look(say("page-where-books"), (machine) => machine.ask("shelf", {}));
  return answer?.books ?? null;
}

/** Which papers for others there are for these findings. */
export async function fetchPapers(): Promise<PapersView | null> {
  const answer = await look(say("page-where-papers"), (machine) => machine.ask("papers", {}));
  return answer?.papers ?? null;
}

export async function fetchExplained(book: string): Promise<string[] | null> {
  const answer = await look(say("page-where-books"), (machine) => machine.ask("explained", { book }));
  return answer?.lines ?? null;
}

export async function fetchPreview(source: number, block: number, rows: number): Promise<PreviewView | null> {
  const answer = await look(say("page-where-preview"), (machine) => machine.ask("preview", { source, block, rows }));
  return answer?.preview ?? null;
}

export async function fetchIdTemplate(example: string, named: string[], ids: string[]): Promise<IdTemplateView | null> {
  const answer = await look(say("page-where-preview"), (machine) => machine.ask("id_template", { example, named, ids }));
  return answer?.template ?? null;
}

export async function mappingText(): Promise<string | null> {
  const answer = await look(say("page-where-mapping"), (machine) => machine.ask("mapping_text", {}));
  return answer?.text ?? null;
}

/** What is kept for another day, brought up to date. */
export async function keptMapping(before: string): Promise<string | null> {
  const answer = await look(say("page-where-mapping"), (machine) => machine.ask("kept_mapping", { before }));
  return answer?.text ?? null;
}

/** A file's bytes; a report in the language `tag`, which the core has been taught. */
export function writeFile(file: WrittenFile | PaperFile, tag: string): Promise<Uint8Array[] | null> {
  return look(file, (machine) => working(say("page-work-writing", { file }), () => machine.write(file, tag)));
}

export async function settingsText(): Promise<string | null> {
  const answer = await look(say("page-where-settings"), (machine) => machine.ask("settings_text", {}));
  return answer?.text ?? null;
}
