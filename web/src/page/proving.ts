// Proving reports. An instance of its own does it, so that whatever becomes of it, the inspection that is open isn't touched.

import { clearDigest, typedDigest } from "./digest-field";
import { EngineCrashed, EngineReplaced, type Engine } from "./engine";
import { focusIn } from "./elements";
import { stillHere } from "./hand";
import { rawOf, unreadableWhy } from "./help/plain";
import { inTurn, restart, told } from "./instance";
import { languages, taught } from "./languages";
import { goTo } from "./place";
import { NOTHING_TO_PROVE, change, state, watch, type GivenFile, type ProvedReport, type Proving } from "./state";
import { crashTrouble, tellTrouble, troublesOver } from "./troubles";
import { byteCount, say } from "./words";
import type { ProofView } from "../shared/door";

const SLICE = 4 * 1024 * 1024;
/** More than this can't be held beside each other in the memory of a browser's instance (our choice). */
const MOST_BYTES = 1024 * 1024 * 1024;
const ABOUT = "prove";

let making: Promise<Engine> | null = null;

export function beginProving(engine: Promise<Engine>): void {
  making = engine;
  // A failure is told by the engine of the inspection, which is made of the same parts.
  engine.catch(() => undefined);
  // What was shown is said again in the other language.
  let language = state.language;
  watch(["language"], () => {
    if (state.language === language) return;
    language = state.language;
    if (state.proving.reports.length > 0) void proveAll(false);
  });
}

/** Takes reports, and files beside them; what was proved before makes way. */
export async function takeReports(reports: { name: string; file: File }[], beside: GivenFile[], cameAsResults: boolean): Promise<void> {
  const { proving } = state;
  const fresh = reports.map(({ name, file }): ProvedReport => ({ name, bytes: file, proof: null }));
  // Files and a digest that were laid ready before any report was there are meant for it; those of another report are not.
  const first = proving.reports.length === 0;
  if (!first) clearDigest();
  change({ doorWanted: null, proving: { reports: fresh, beside: joined(first ? proving.beside : [], beside), digest: typedDigest() ?? "", cameAsResults } });
  goTo("prove");
  await proveAll(true);
}

/** The same reports, of which nothing is known yet: a verdict of before must not stand beside what was given since. */
function unproved(): ProvedReport[] {
  return state.proving.reports.map((report) => ({ ...report, proof: null }));
}

/** Takes files to be held beside the report. */
export async function takeBeside(files: GivenFile[]): Promise<void> {
  const { proving } = state;
  change({ doorWanted: null, proving: { ...proving, reports: unproved(), beside: joined(proving.beside, files) } });
  if (proving.reports.length === 0) change({ event: say("page-prove-waiting", { n: state.proving.beside.length }) });
  await proveAll(true);
}

/** A file chosen again, perhaps changed since, stands in place of the one before. */
function joined(held: GivenFile[], added: GivenFile[]): GivenFile[] {
  const names = new Set(added.map((file) => file.name));
  return [...held.filter((file) => !names.has(file.name)), ...added];
}

export async function takeDigest(digest: string): Promise<void> {
  change({ proving: { ...state.proving, reports: unproved(), digest } });
  await proveAll(true);
}

export function proveAnother(): void {
  troublesOver(ABOUT);
  clearDigest();
  change({ proving: NOTHING_TO_PROVE });
}

/** What a proof comes to, as one of the three walls beside a plumb line, and as a word. */
export function standing(proof: ProofView): { wall: "accept" | "hold" | "not_accept"; word: string } {
  if (!proof.could_be_proved) return { wall: "hold", word: "open" };
  if (proof.verdict === "differs") return { wall: "not_accept", word: "differs" };
  if (!proof.nothing_differs) return { wall: "not_accept", word: "contradicted" };
  // What a person reads in it was held against nothing, whatever was given beside it.
  if (proof.only_findings !== null) return { wall: "hold", word: "findings" };
  const digest = proof.given_digest === true;
  const word = proof.data_are_those_files ? (digest ? "both" : "files") : digest ? "digest" : "self";
  // A report that agrees with itself alone was not held against anything of the world yet.
  return { wall: word === "self" ? "hold" : "accept", word };
}

/** A file whose bytes can't be had. */
class NoBytes extends Error {
  constructor(
    readonly file: string,
    why: string,
    readonly raw = "",
  ) {
    super(why);
  }
}

function proveAll(focus: boolean): Promise<void> {
  return inTurn(async () => {
    const { proving } = state;
    if (proving.reports.length === 0 || making === null) return;
    troublesOver(ABOUT);
    const here = stillHere();
    const machine = await making;
    let gaveUp = false;
    const cancel = (): void => {
      gaveUp = true;
      machine.abandon();
    };
    try {
      await proveEach(machine, proving, cancel);
      const { reports } = state.proving;
      const [first] = reports;
      const holding = reports.filter(({ proof }) => proof?.nothing_differs === true && proof.only_findings === null).length;
      change({
        event:
          first?.proof != null && reports.length === 1
            ? say("page-prove-event", { name: first.name, word: say(`page-prove-word-${standing(first.proof).word}`), verdict: first.proof.text })
            : say("page-prove-event-several", { n: holding, of: reports.length }),
      });
    } catch (error) {
      if (gaveUp || error instanceof EngineReplaced) change({ event: say("page-prove-cancelled") });
      else if (error instanceof NoBytes) tellTrouble(noBytesTrouble(error));
      else if (error instanceof EngineCrashed) tellTrouble({ ...crashTrouble(error, say("page-prove-heading"), say("page-prove-crash-todo")), about: ABOUT });
      else throw error;
    } finally {
      // The memory of a large report is given back with its worker.
      machine.abandon();
      change({ work: null });
    }
    if (focus && here() && state.place === "prove") focusIn("prove-result-0");
  });
}

function noBytesTrouble(error: NoBytes): Parameters<typeof tellTrouble>[0] {
  return {
    key: `${ABOUT}|${error.file}`,
    about: ABOUT,
    what: say("page-trouble-unreadable-what"),
    where: error.file,
    why: error.message,
    todo: say("page-prove-unreadable-todo"),
    code: "prove unreadable",
    ...(error.raw === "" ? {} : { raw: error.raw }),
  };
}

async function proveEach(machine: Engine, proving: Proving, cancel: () => void): Promise<void> {
  const besideBytes = proving.beside.reduce((sum, file) => sum + file.bytes.size, 0);
  const largest = Math.max(...proving.reports.map((report) => report.bytes.size));
  if (besideBytes + largest > MOST_BYTES) {
    throw new NoBytes(say("page-prove-beside"), say("page-prove-too-much", { size: byteCount(besideBytes + largest), most: byteCount(MOST_BYTES) }));
  }
  await restart(machine);
  const total = proving.reports.reduce((sum, report) => sum + report.bytes.size + besideBytes, 0);
  let done = 0;
  for (const [at, report] of proving.reports.entries()) {
    const text = say("page-prove-work", { name: report.name, n: at + 1, of: proving.reports.length });
    const moved = (bytes: number): void => {
      done += bytes;
      change({ work: { text, done, total, cancel } });
    };
    moved(0);
    await machine.ask("prove_begin", {});
    await push(machine, report.name, report.bytes, moved);
    for (const file of proving.beside) {
      await machine.ask("prove_beside", { name: file.name });
      await push(machine, file.name, file.bytes, moved);
    }
    // Nobody can know how long the computing takes.
    change({ work: { text, done: 0, total: null, cancel } });
    const digest = proving.digest === "" ? null : proving.digest;
    let { proof } = await machine.ask("prove_end", { digest });
    if (proof.only_findings === "language_not_here" && (await teachLanguage(machine, proof.language ?? ""))) proof = (await machine.ask("prove_end", { digest })).proof;
    keep(report, proof);
  }
}

function keep(report: ProvedReport, proof: ProofView): void {
  change({ proving: { ...state.proving, reports: state.proving.reports.map((one) => (one.bytes === report.bytes ? { ...one, proof } : one)) } });
}

/** A report in another language can only be made again, word for word, by who knows its words. Whether the page has them. */
async function teachLanguage(machine: Engine, tag: string): Promise<boolean> {
  if (!languages().some((language) => language.tag === tag)) return false;
  await taught(tag);
  await machine.ask("teach", { tag, texts: told.languages.get(tag) ?? "" });
  return true;
}

async function push(machine: Engine, name: string, bytes: Blob, moved: (bytes: number) => void): Promise<void> {
  for (let from = 0; from < bytes.size; from += SLICE) {
    let slice: ArrayBuffer;
    try {
      slice = await bytes.slice(from, from + SLICE).arrayBuffer();
    } catch (error) {
      throw new NoBytes(name, unreadableWhy(error), rawOf(error));
    }
    const size = Math.min(SLICE, bytes.size - from);
    // Some browsers hand out what is left of a file that was cut short meanwhile, and say nothing.
    if (slice.byteLength !== size) throw new NoBytes(name, say("page-trouble-changed-why"));
    await machine.ask("prove_push", { bytes: slice }, [slice]);
    moved(size);
  }
}
