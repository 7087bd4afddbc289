// What a person does to the inspection, one thing after the other. The page holds the files and the acts; the worker can
// be thrown away and given both again at any moment, which is also how a crash, a cancel and a re-reading are done.

import type { ActInput, ActView, Problem, Query, Summary, WrittenFile } from "../shared/door";
import { Engine, EngineCrashed, EngineReplaced } from "./engine";
import { ANY_READING, change, state, type HeldFile, type State, type Trouble } from "./state";
import { byteCount, count, say } from "./words";

const SLICE = 4 * 1024 * 1024;
const IN_FLIGHT = 4;

/** What was given besides files, in the order it was given: told again to every new instance. */
type Given =
  | { kind: "settings"; name: string; text: string }
  | { kind: "rule_book"; name: string; text: string }
  | { kind: "act"; act: ActInput };

class Cancelled extends Error {}
class CrashedOnFile extends Error {
  constructor(
    readonly file: HeldFile,
    readonly crash: EngineCrashed,
  ) {
    super(crash.said);
  }
}

let engine: Engine | null = null;
let engineReady: Promise<Engine> | null = null;
let given: Given[] = [];
let nextKey = 1;
let readFiles = new Set<number>();
let cancelWanted = false;

// ---- one thing at a time ----

let tail: Promise<unknown> = Promise.resolve();

function inTurn<T>(step: () => Promise<T>): Promise<T> {
  const turn = tail.then(step);
  tail = turn.catch(() => undefined);
  return turn;
}

// ---- the engine ----

export function begin(making: Promise<Engine>): Promise<void> {
  engineReady = making;
  return inTurn(async () => {
    try {
      engine = await making;
      change({ version: await engine.restart() });
    } catch (error) {
      engine = null;
      tellTrouble({
        key: "engine",
        what: say("page-trouble-engine-what"),
        where: say("page-trouble-engine-where"),
        why: error instanceof Error ? error.message : String(error),
        todo: say("page-trouble-engine-todo"),
      });
    }
  });
}

async function running(): Promise<Engine> {
  if (engineReady !== null && engine === null) engine = await engineReady;
  if (engine === null) throw new Error(say("page-trouble-engine-what"));
  return engine;
}

async function freshInstance(): Promise<void> {
  const machine = await running();
  await machine.restart();
  readFiles = new Set();
  for (const step of given) {
    if (step.kind === "act") await machine.ask("act", { act: step.act });
    else await machine.ask(step.kind, { name: step.name, text: step.text });
  }
}

// ---- troubles and progress ----

export function tellTrouble(trouble: Trouble): void {
  change({
    troubles: [...state.troubles.filter((old) => old.key !== trouble.key), trouble],
    event: `${trouble.what} ${trouble.where}`,
  });
}

export function forgetTrouble(key: string): void {
  change({ troubles: state.troubles.filter((trouble) => trouble.key !== key) });
}

function troubleFrom(problem: Problem, what: string, where: string): Trouble {
  const place: string[] = [where];
  if (problem.place !== "" && problem.place !== where) place.push(problem.place);
  if (problem.line !== null) place.push(say("page-at-line", { line: count(problem.line) }));
  if (problem.column !== null) place.push(say("page-at-column", { column: count(problem.column) }));
  return {
    key: `${what}|${place.join("|")}|${problem.code}`,
    what,
    where: place.join(", "),
    why: problem.text,
    todo: problem.remedy,
  };
}

function crashTrouble(crash: EngineCrashed, where: string, todo: string): Trouble {
  return {
    key: `crash|${where}|${crash.step}`,
    what: say("page-trouble-crash-what", { step: say(`page-step-${crash.step.replaceAll("_", "-")}`) }),
    where,
    why: crash.said,
    todo,
  };
}

/** Shows work while `step` runs, and takes it away whatever happens. */
async function working<T>(text: string, step: () => Promise<T>): Promise<T> {
  const machine = await running();
  change({ work: { text, done: 0, total: null, cancel: () => machine.abandon() } });
  try {
    return await step();
  } finally {
    change({ work: null });
  }
}

// ---- reading ----

const utf8 = new TextEncoder();

/** By the bytes of the name: the order in which the core lists its sources. */
function byNameBytes(a: HeldFile, b: HeldFile): number {
  const x = utf8.encode(a.name);
  const y = utf8.encode(b.name);
  for (let i = 0; i < x.length && i < y.length; i += 1) {
    const difference = (x[i] ?? 0) - (y[i] ?? 0);
    if (difference !== 0) return difference;
  }
  return x.length - y.length;
}

async function digest(bytes: Blob): Promise<string> {
  const sum = new Uint8Array(await crypto.subtle.digest("SHA-256", await bytes.arrayBuffer()));
  return Array.from(sum, (byte) => byte.toString(16).padStart(2, "0")).join("");
}

/** Joins new files to those held. Two files of one name both stay, unless they are the same file twice. */
async function joined(held: HeldFile[], added: HeldFile[]): Promise<{ files: HeldFile[]; twice: string[] }> {
  const digests = new Map<number, string>();
  const digestOf = async (file: HeldFile): Promise<string> => {
    const known = digests.get(file.key);
    if (known !== undefined) return known;
    const made = await digest(file.bytes);
    digests.set(file.key, made);
    return made;
  };
  const files = [...held];
  const twice: string[] = [];
  for (const file of added) {
    let same = false;
    for (const other of files) {
      if (other.name !== file.name || other.bytes.size !== file.bytes.size) continue;
      if ((await digestOf(other)) === (await digestOf(file))) same = true;
    }
    if (same) twice.push(file.name);
    else files.push(file);
  }
  for (const file of files) {
    if (files.some((other) => other !== file && other.name === file.name)) await digestOf(file);
  }
  files.sort((a, b) => byNameBytes(a, b) || (digests.get(a.key) ?? "").localeCompare(digests.get(b.key) ?? ""));
  return { files, twice };
}

/** Passes a file through to the worker; where its bytes can't be had, it goes on record as unreadable. */
async function pump(file: HeldFile, moved: (bytes: number) => void): Promise<void> {
  const machine = await running();
  const inFlight = new Set<Promise<unknown>>();
  let opened = false;
  for (let from = 0; from < file.bytes.size || !opened; from += SLICE) {
    if (cancelWanted) throw new Cancelled();
    let slice: ArrayBuffer;
    try {
      slice = await file.bytes.slice(from, from + SLICE).arrayBuffer();
    } catch (error) {
      const why = error instanceof Error ? error.message : String(error);
      await machine.ask("unreadable", { name: file.name, text: why });
      tellTrouble({
        key: `unreadable|${file.name}`,
        what: say("page-trouble-unreadable-what"),
        where: file.name,
        why,
        todo: say("page-trouble-unreadable-todo"),
      });
      return;
    }
    if (!opened) {
      await machine.ask("open", { name: file.name, size: file.bytes.size, inFolder: file.inFolder });
      opened = true;
    }
    while (inFlight.size >= IN_FLIGHT) await Promise.race(inFlight);
    const size = slice.byteLength;
    const chunk = machine.ask("chunk", { bytes: slice }, [slice]).then(() => {
      inFlight.delete(chunk);
      moved(size);
    });
    chunk.catch(() => undefined);
    inFlight.add(chunk);
  }
  await Promise.all(inFlight);
  await machine.ask("finish", {});
}

/** Reads what isn't read yet, or everything again. */
async function readEverything(anew: boolean): Promise<void> {
  const machine = await running();
  if (anew) {
    await machine.ask("clear", {});
    readFiles = new Set();
  }
  const todo = state.files.filter((file) => !readFiles.has(file.key));
  if (todo.length === 0) return;
  cancelWanted = false;
  const total = todo.reduce((sum, file) => sum + Math.max(file.bytes.size, 1), 0);
  let done = 0;
  const cancel = (): void => {
    cancelWanted = true;
  };
  try {
    for (const [at, file] of todo.entries()) {
      const text = say("page-work-reading", { n: at + 1, of: todo.length, name: file.name, size: byteCount(file.bytes.size) });
      change({ work: { text, done, total, cancel } });
      try {
        await pump(file, (bytes) => {
          done += bytes;
          change({ work: { text, done, total, cancel } });
        });
      } catch (error) {
        if (error instanceof EngineCrashed) throw new CrashedOnFile(file, error);
        throw error;
      }
      readFiles.add(file.key);
    }
  } finally {
    change({ work: null });
  }
}

/** Reads, going on without any file that brings the program down, and saying so. */
async function readWithoutTheBroken(anew: boolean): Promise<void> {
  let again = anew;
  for (;;) {
    try {
      await readEverything(again);
      return;
    } catch (error) {
      if (!(error instanceof CrashedOnFile)) throw error;
      await freshInstance();
      leaveOut(error.file);
      tellTrouble(crashTrouble(error.crash, error.file.name, say("page-trouble-crash-file-todo")));
      again = true;
    }
  }
}

function leaveOut(file: HeldFile): void {
  change({ files: state.files.filter((held) => held.key !== file.key) });
}

// ---- reviewing ----

async function review(): Promise<void> {
  const machine = await running();
  const summary = await working(say("page-work-reviewing"), async () => (await machine.ask("review", {})).summary);
  const query = { ...state.query };
  if (query.lot >= summary.lots.length) query.lot = -1;
  const { indices } = await machine.ask("order", { query });
  const selected = state.selected !== null && state.selected < summary.readings ? state.selected : null;
  change({ summary, query, order: indices, selected });
}

/** Takes one step; if the program goes down on the way, takes the step back, says so, and stands where it stood before. */
async function stepOrBack(what: string, step: () => Promise<void>): Promise<boolean> {
  const before = { given: [...given], files: state.files };
  try {
    await step();
    return true;
  } catch (error) {
    if (error instanceof Cancelled || error instanceof EngineReplaced) {
      change({ event: say("page-event-cancelled") });
    } else if (error instanceof EngineCrashed) {
      tellTrouble(crashTrouble(error, what, say("page-trouble-crash-step-todo")));
    } else throw error;
    given = before.given;
    change({ files: before.files });
    await standAgain();
    return false;
  }
}

async function standAgain(): Promise<void> {
  try {
    await freshInstance();
    await readWithoutTheBroken(true);
    await reviewOrNothing();
  } catch (error) {
    if (error instanceof Cancelled) {
      // Whoever doesn't want to wait for all files goes on with those that were read.
      change({ files: state.files.filter((file) => readFiles.has(file.key)) });
      await reviewOrNothing();
      return;
    }
    if (!(error instanceof EngineCrashed || error instanceof EngineReplaced)) throw error;
    putBy = asItStands();
    forgetEverything();
    if (error instanceof EngineCrashed) tellTrouble(crashTrouble(error, say("page-where-everything"), say("page-trouble-crash-all-todo")));
    await freshInstance();
  }
}

async function reviewOrNothing(): Promise<void> {
  if (state.files.length === 0) change({ summary: null, order: new Uint32Array(0), selected: null });
  else await review();
}

// ---- what a person does ----

export interface Brought {
  name: string;
  bytes: Blob;
  inFolder?: boolean;
  invented?: boolean;
}

export function addFiles(brought: Brought[]): Promise<void> {
  return inTurn(async () => {
    if (brought.length === 0) return;
    const added = brought.map((file) => ({
      key: nextKey++,
      name: file.name,
      bytes: file.bytes,
      inFolder: file.inFolder ?? false,
      invented: file.invented ?? false,
    }));
    await stepOrBack(added.map((file) => file.name).join(", "), async () => {
      const { files, twice } = await joined(state.files, added);
      // Readings are numbered through all files, so the one looked at may bear another number from here on.
      change({ files, selected: null });
      await readWithoutTheBroken(false);
      await reviewOrNothing();
      const keys = new Set(added.map((file) => file.key));
      const read = state.files.filter((file, at) => keys.has(file.key) && state.summary?.sources[at]?.read === true).length;
      const event = say("page-event-files", { n: read, of: added.length - twice.length });
      change({
        written: false,
        event: twice.length === 0 ? event : `${event} ${say("page-event-twice", { n: twice.length, names: twice.slice(0, 3).join(", ") })}`,
      });
    });
  });
}

export function removeFile(key: number): Promise<void> {
  return inTurn(async () => {
    const file = state.files.find((held) => held.key === key);
    if (file === undefined) return;
    await stepOrBack(file.name, async () => {
      leaveOut(file);
      change({ selected: null });
      await readWithoutTheBroken(true);
      await reviewOrNothing();
      change({ written: false, event: say("page-event-removed", { name: file.name }) });
    });
  });
}

/** Takes a settings file or a rule book. A bad one changes nothing and says where it is wrong. */
export function takeText(kind: "settings" | "rule_book", name: string, text: string): Promise<void> {
  return inTurn(async () => {
    await stepOrBack(name, async () => {
      const machine = await running();
      const { problems } = await machine.ask(kind, { name, text });
      if (problems.length > 0) {
        const what = say(kind === "settings" ? "page-trouble-settings-what" : "page-trouble-rules-what");
        for (const problem of problems.slice(0, 5)) tellTrouble(troubleFrom(problem, what, name));
        return;
      }
      given.push({ kind, name, text });
      // A rule book changes what readings mean, a setting can change what they are.
      if (kind === "settings") await readWithoutTheBroken(true);
      await reviewOrNothing();
      change({
        written: false,
        event: say(kind === "settings" ? "page-event-settings" : "page-event-rules", { name }),
      });
    });
  });
}

export interface Doing {
  kind: string;
  target?: string;
  value: string;
  note?: string;
}

/** Records one act and shows its effect. Returns what is wrong with it, if the core refuses it: the control says so in its place. */
export function doAct(doing: Doing): Promise<Problem | null> {
  return inTurn(async () => {
    const act: ActInput = {
      kind: doing.kind,
      target: doing.target ?? "",
      value: doing.value,
      by: state.initials,
      at: state.day,
      note: doing.note ?? "",
    };
    let refused: Problem | null = null;
    await stepOrBack(say("page-where-act", { kind: act.kind }), async () => {
      const machine = await running();
      const { answer } = await machine.ask("act", { act });
      if (answer.problem !== null) {
        refused = answer.problem;
        change({ event: `${say("page-trouble-act-what")} ${answer.problem.text} ${answer.problem.remedy}` });
        return;
      }
      given.push({ kind: "act", act });
      if (answer.reread) await readWithoutTheBroken(true);
      await reviewOrNothing();
      change({ written: false });
    });
    return refused;
  });
}

/** The newest act that still counts. */
export function lastAct(summary: Summary | null): ActView | null {
  return summary?.acts.filter((act) => !act.undone && act.kind !== "undo").at(-1) ?? null;
}

/** The newest undo that no other act has followed: taking it back brings the act back. */
export function redoable(summary: Summary | null): ActView | null {
  const acts = summary?.acts ?? [];
  const newest = lastKept(acts, (act) => act.kind !== "undo")?.number ?? 0;
  const isUndo = (number: string): boolean => acts.some((act) => act.kind === "undo" && String(act.number) === number);
  return lastKept(acts, (act) => act.kind === "undo" && !act.undone && act.number > newest && !isUndo(act.value));
}

function lastKept(acts: ActView[], keep: (act: ActView) => boolean): ActView | null {
  return acts.filter(keep).at(-1) ?? null;
}

export async function undo(number?: number): Promise<void> {
  const act = number === undefined ? lastAct(state.summary) : state.summary?.acts.find((one) => one.number === number);
  if (act === null || act === undefined) return;
  const refused = await doAct({ kind: "undo", value: String(act.number) });
  if (refused === null) change({ event: say("page-event-undone", { act: act.text }) });
}

export async function redo(): Promise<void> {
  const undoing = redoable(state.summary);
  if (undoing === null) return;
  const refused = await doAct({ kind: "undo", value: String(undoing.number) });
  if (refused === null) change({ event: say("page-event-redone") });
}

/** One whole inspection, as far as it can't be worked out again. */
interface WholeInspection {
  files: HeldFile[];
  given: Given[];
  door: State["door"];
  lesson: State["lesson"];
}

// The inspection before this one: leaving it is undone, not asked about.
let putBy: WholeInspection | null = null;

function asItStands(): WholeInspection | null {
  return state.files.length === 0 && given.length === 0 ? null : { files: state.files, given, door: state.door, lesson: state.lesson };
}

function forgetEverything(): void {
  given = [];
  change({
    files: [],
    door: null,
    lesson: null,
    summary: null,
    order: new Uint32Array(0),
    selected: null,
    troubles: [],
    written: true,
    query: { ...ANY_READING },
    event: "",
    putBy: putBy !== null,
  });
}

/** Empties the page for the next delivery. */
export function startAgain(): Promise<void> {
  return inTurn(async () => {
    putBy = asItStands() ?? putBy;
    forgetEverything();
    await freshInstance();
  });
}

/** Changes this inspection for the one before it, and the other way round. */
export function bringBack(): Promise<void> {
  return inTurn(async () => {
    if (putBy === null) return;
    const back = putBy;
    putBy = asItStands();
    forgetEverything();
    given = back.given;
    change({ files: back.files, door: back.door, lesson: back.lesson, written: false });
    await standAgain();
    change({ event: say("page-event-brought-back") });
  });
}

// ---- looking ----

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
  putBy = asItStands();
  forgetEverything();
  tellTrouble(crashTrouble(crash, where, say("page-trouble-crash-all-todo")));
}

let orderAsked = 0;

export async function showOrder(query: Query): Promise<void> {
  change({ query });
  if (state.summary === null) return;
  const asked = ++orderAsked;
  const answer = await look(say("page-where-table"), (machine) => machine.ask("order", { query }));
  // A newer filter was typed meanwhile: its answer is the one to show.
  if (answer === null || asked !== orderAsked) return;
  change({ order: answer.indices, event: say("page-event-shown", { n: answer.indices.length, of: state.summary.readings }) });
}

export async function fetchRows(indices: Uint32Array) {
  const answer = await look(say("page-where-table"), (machine) => machine.ask("window", { indices }));
  return answer?.rows ?? null;
}

export async function fetchDetail(index: number) {
  const answer = await look(say("page-where-detail"), (machine) => machine.ask("detail", { index }));
  return answer?.detail ?? null;
}

export function writeFile(file: WrittenFile): Promise<Uint8Array[] | null> {
  return look(file, (machine) => working(say("page-work-writing", { file }), () => machine.write(file)));
}

export async function settingsText(): Promise<string | null> {
  const answer = await look(say("page-where-settings"), (machine) => machine.ask("settings_text", {}));
  return answer?.text ?? null;
}
