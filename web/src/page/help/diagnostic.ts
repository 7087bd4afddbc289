// A file for whoever mends the program: what the browser is, how much was open, what was done and what went wrong, and nothing of
// the data. Names, headings, cells, digests, settings and typed texts never come near it; it is shown whole before it is saved.

import { el } from "../elements";
import { told } from "../instance";
import { save } from "../save";
import { state } from "../state";
import { say } from "../words";
import { scrubbed } from "./scrub";
import { openSheet } from "./sheet";
import { faults, steps } from "./steps";

const FILE = "plumbline-diagnostic.json";

/** Endings that say what kind of file it is; any other may be a piece of a name. */
const ENDINGS = ["csv", "tsv", "txt", "xlsx", "xls", "ods", "zip", "toml", "json", "html", "jpg", "jpeg", "png"];

function ending(name: string): string {
  const found = /\.([a-z0-9]+)$/i.exec(name)?.[1]?.toLowerCase() ?? "";
  return ENDINGS.includes(found) ? found : "other";
}

/** How often each word comes up. Only for words of fixed lists. */
function tally(words: string[]): Record<string, number> {
  const counts: Record<string, number> = {};
  for (const word of [...words].sort()) counts[word] = (counts[word] ?? 0) + 1;
  return counts;
}

function features(): Record<string, boolean> {
  let storage = true;
  try {
    void localStorage.length;
  } catch {
    storage = false;
  }
  return {
    webassembly: typeof WebAssembly === "object",
    worker: typeof Worker === "function",
    decompression: typeof DecompressionStream === "function",
    digest: globalThis.crypto?.subtle !== undefined,
    storage,
    databases: typeof indexedDB === "object",
    save_picker: "showSaveFilePicker" in globalThis,
    dialog: typeof HTMLDialogElement === "function",
    from_a_disk: location.protocol === "file:",
    dark: matchMedia("(prefers-color-scheme: dark)").matches,
    forced_colours: matchMedia("(forced-colors: active)").matches,
    reduced_motion: matchMedia("(prefers-reduced-motion: reduce)").matches,
    coarse_pointer: matchMedia("(pointer: coarse)").matches,
  };
}

export function diagnosticText(): string {
  const { summary } = state;
  const content = {
    schema: "plumbline.diagnostic/1",
    program: state.version,
    open_for_seconds: Math.round(performance.now() / 1000),
    browser: {
      agent: navigator.userAgent,
      languages: [...navigator.languages],
      processors: navigator.hardwareConcurrency,
      window: [innerWidth, innerHeight, devicePixelRatio],
      features: features(),
    },
    page: { language: state.language, place: state.place, door: state.door, keeps: state.kept },
    files: state.files.map((file) => ({ bytes: file.bytes.size, ending: ending(file.name), in_folder: file.inFolder, invented: file.invented })),
    given: tally(told.given.map((one) => one.kind)),
    review:
      summary === null
        ? null
        : {
            sources: summary.sources.map((source) => ({
              read: source.read,
              rows: [source.rows_in, source.rows_used, source.rows_check, source.rows_duplicate, source.rows_set_aside, source.rows_refused],
              tables: source.blocks.map((block) => ({ columns: block.columns.length, roles: tally(block.columns.map((column) => column.role)) })),
              notices: tally(source.notices.map((notice) => notice.code)),
              refusals: tally(source.refusals.map((refusal) => refusal.code)),
            })),
            adds_up: summary.adds_up,
            readings: summary.readings,
            materials: summary.materials.length,
            parts: summary.parts.length,
            lots: tally(summary.lots.map((lot) => lot.disposition)),
            reasons: tally(summary.lots.flatMap((lot) => lot.reasons.map((reason) => reason.code))),
            rule_books: summary.rule_books.length,
            acts: tally(summary.acts.map((act) => act.kind)),
          },
    troubles: faults.map((fault) => ({ at_ms: fault.at, code: fault.code, said: scrubbed(fault.said) })),
    steps: steps.map((step) => [step.at, step.kind, step.times]),
  };
  return `${JSON.stringify(content, null, 1)}\n`;
}

/** Shows what the file will hold, and saves it if the person wants it. */
export function openDiagnostic(): void {
  const text = diagnosticText();
  const write = el("button", { type: "button", id: "diagnostic-write", class: "primary", on: { click: () => save(FILE, new Blob([text], { type: "application/json" })) } }, say("page-diagnostic-write"));
  openSheet("diagnostic", say("page-diagnostic"), [
    el("p", {}, say("page-diagnostic-look")),
    el("div", {}, write),
    el("pre", { id: "diagnostic-text", class: "diagnostic-text", tabindex: 0, role: "group", "aria-label": say("page-diagnostic-text") }, text),
  ]);
}

export function diagnosticButton(id: string): HTMLElement {
  return el("button", { type: "button", id, class: "tool", on: { click: openDiagnostic } }, say("page-diagnostic-save"));
}
