// What a person does to the inspection, one thing after the other. The page holds the files and the acts; the worker can
// be thrown away and given both again at any moment, which is also how a crash, a cancel and a re-reading are done.

import type { ActInput, ActView, Problem, Summary } from "../shared/door";
import { actText, actWords } from "./acts-in-force";
import { EngineCrashed, EngineReplaced } from "./engine";
import { freshInstance, inTurn, photoBytes, running, told, working, type Given } from "./instance";
import { Cancelled, fileOf, headingsRead, joined, leaveOut, readWithoutTheBroken } from "./reading";
import { HEADER, recalled } from "./browser-store";
import { NoCopy, copyOf, mediaTypeOf } from "./photo-copy";
import { ANY_READING, NOTHING_FOUND, change, state, type HeldFile, type State } from "./state";
import { crashTrouble, tellTrouble, troubleFrom, troublesOver } from "./troubles";
import { rawOf, unreadableWhy } from "./help/plain";
import { hasWords, say } from "./words";

let nextKey = 1;

// ---- reviewing ----

async function review(): Promise<void> {
  const machine = await running();
  const summary = await working(say("page-work-reviewing"), async () => (await machine.ask("review", {})).summary);
  const query = { ...state.query };
  if (query.lot >= summary.lots.length) query.lot = -1;
  const { offers } = await machine.ask("offers", {});
  const { photos } = await machine.ask("photos", {});
  const { found } = await machine.ask("order", { query });
  const selected = state.selected !== null && state.selected < summary.readings ? state.selected : null;
  change({ summary, offers, photos, query, order: found.indices, found, selected });
}

/** Takes one step; if the program goes down on the way, takes the step back, says so, and stands where it stood before. */
async function stepOrBack(what: string, step: () => Promise<void>): Promise<boolean> {
  const before = { given: [...told.given], files: state.files };
  try {
    await step();
    return true;
  } catch (error) {
    if (error instanceof Cancelled || error instanceof EngineReplaced) {
      change({ event: say("page-event-cancelled") });
    } else if (error instanceof EngineCrashed) {
      tellTrouble(crashTrouble(error, what, say("page-trouble-crash-step-todo")));
    } else throw error;
    told.given = before.given;
    change({ files: before.files });
    await standAgain();
    return false;
  }
}

/** Brings everything back into a new instance after the old one went down. */
export async function standAgain(): Promise<void> {
  try {
    await freshInstance();
    await readWithoutTheBroken(true);
    await reviewOrNothing();
  } catch (error) {
    if (error instanceof Cancelled) {
      // Whoever doesn't want to wait for all files goes on with those that were read.
      change({ files: state.files.filter((file) => told.read.has(file.key)) });
      await reviewOrNothing();
      return;
    }
    if (!(error instanceof EngineCrashed || error instanceof EngineReplaced)) throw error;
    putAside();
    if (error instanceof EngineCrashed) tellTrouble(crashTrouble(error, say("page-where-everything"), say("page-trouble-crash-all-todo")));
    await freshInstance();
  }
}

async function reviewOrNothing(): Promise<void> {
  if (state.files.length === 0) change({ summary: null, offers: null, photos: null, order: new Uint32Array(0), selected: null });
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
  return inTurn(() => addNow(brought));
}

async function addNow(brought: Brought[]): Promise<void> {
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
    // Before anything is shown, or the page would show for a moment what another day's answers have set right.
    if (await recallColumns()) await readWithoutTheBroken(true);
    await reviewOrNothing();
    const keys = new Set(added.map((file) => file.key));
    const whole = new Set(state.summary?.sources.filter((source) => source.read).map((source) => fileOf(source)?.key));
    const read = state.files.filter((file) => keys.has(file.key) && whole.has(file.key)).length;
    const event = say("page-event-files", { n: read, of: added.length - twice.length });
    change({
      written: false,
      event: twice.length === 0 ? event : `${event} ${say("page-event-twice", { n: twice.length, names: twice.slice(0, 3).join(", ") })}`,
    });
  });
}

/** Puts on record what this browser remembers of the headings that came in and nobody has spoken of yet. */
async function recallColumns(): Promise<boolean> {
  if (state.door === "train") return false;
  const machine = await running();
  const spokenOf = (fingerprint: string): boolean =>
    told.given.some((given) => (given.kind === "act" ? given.act.target === `${HEADER}${fingerprint}` : "text" in given && given.kind !== "rule_book" && given.text.includes(fingerprint)));
  const open = [...headingsRead()].filter((fingerprint) => !spokenOf(fingerprint));
  const acts = await recalled(open, async (name, text) => (await machine.ask("mapping_acts", { name, text })).found);
  for (const act of acts) {
    const { answer } = await machine.ask("act", { act });
    if (answer.problem === null) told.given.push({ kind: "act", act });
  }
  return acts.length > 0;
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

const NOT_TAKEN = { settings: "page-trouble-settings-what", rule_book: "page-trouble-rules-what", mapping: "page-trouble-mapping-what", history: "page-trouble-history-what" };
const TAKEN = { settings: "page-event-settings", rule_book: "page-event-rules", mapping: "page-event-mapping", history: "page-event-history" };

export type TextKind = keyof typeof TAKEN;

/** Takes a settings file, a rule book or a mapping file. A bad one changes nothing and says where it is wrong. */
export function takeText(kind: TextKind, name: string, text: string): Promise<void> {
  return inTurn(async () => {
    await stepOrBack(name, async () => {
      const machine = await running();
      const { problems } = await machine.ask(kind, { name, text });
      if (problems.length > 0) {
        const what = say(NOT_TAKEN[kind]);
        troublesOver(kind);
        for (const problem of problems.slice(0, 5)) tellTrouble(troubleFrom(kind, problem, what, name));
        return;
      }
      troublesOver(kind);
      told.given.push({ kind, name, text });
      // A rule book changes what readings mean, a setting or a mapping can change what they are.
      if (kind === "settings" || kind === "mapping") await readWithoutTheBroken(true);
      await reviewOrNothing();
      change({
        written: false,
        event: say(TAKEN[kind], { name }),
      });
    });
  });
}

/** Takes a bill of materials, a table of any kind that results may be: each part becomes an act. */
export function takeBill(name: string, bytes: Uint8Array): Promise<void> {
  return inTurn(async () => {
    await stepOrBack(name, async () => {
      const machine = await running();
      const { problems } = await machine.ask("bill", { name, bytes });
      troublesOver("bill");
      if (problems.length > 0) {
        for (const problem of problems.slice(0, 5)) tellTrouble(troubleFrom("bill", problem, say("page-trouble-bill-what"), name));
        return;
      }
      told.given.push({ kind: "bill", name, bytes });
      await reviewOrNothing();
      change({ written: false, event: say("page-event-bill", { name }) });
    });
  });
}

/**
 * Takes photographs, one after the other, since each is large until its copy is made. A file that only calls itself a
 * picture is listed with the other files, as the command line lists it. Gives how many those were.
 */
export function takePhotos(brought: Brought[]): Promise<number> {
  return inTurn(async () => {
    const refused: Brought[] = [];
    if (brought.length === 0) return 0;
    const stop = { wanted: false };
    const cancel = (): void => {
      stop.wanted = true;
    };
    let taken = 0;
    try {
      for (const [at, one] of brought.entries()) {
        if (stop.wanted) break;
        change({ work: { text: say("page-work-photo", { n: at + 1, of: brought.length, name: one.name }), done: at, total: brought.length, cancel } });
        await stepOrBack(one.name, async () => {
          if (await takePhoto(one)) taken += 1;
          else refused.push(one);
        });
      }
    } finally {
      change({ work: null });
    }
    if (refused.length > 0) await addNow(refused);
    else await stepOrBack(say("page-photos-heading"), reviewOrNothing);
    change({ written: false, event: say("page-event-photos", { n: taken, of: brought.length }) });
    return refused.length;
  });
}

async function takePhoto({ name, bytes }: Brought): Promise<boolean> {
  const machine = await running();
  const tell = (why: string, todo: string, raw = ""): boolean => {
    tellTrouble({ key: `photo|${name}`, about: `photo:${name}`, what: say("page-trouble-photo-what"), where: name, why, todo, code: "photo", ...(raw === "" ? {} : { raw }) });
    return false;
  };
  try {
    const mediaType = await mediaTypeOf(bytes);
    if (mediaType === null) return tell(say("page-trouble-photo-kind-why"), say("page-trouble-photo-kind-todo"));
    const copy = await copyOf(bytes, mediaType);
    if (told.given.some((given) => given.kind === "photo" && given.name === name && given.copy.sha256 === copy.sha256)) return true;
    const { refused } = await machine.ask("photo", { name, ...photoBytes(copy) });
    if (refused !== null) return tell(refused.text, refused.remedy);
    told.given = [...told.given, { kind: "photo", name, copy }];
    troublesOver(`photo:${name}`);
    return true;
  } catch (error) {
    if (error instanceof NoCopy) return tell(say(`page-trouble-photo-${error.why}-why`), say(`page-trouble-photo-${error.why}-todo`), error.said);
    if (error instanceof EngineCrashed || error instanceof EngineReplaced) throw error;
    return tell(unreadableWhy(error), say("page-trouble-unreadable-todo"), rawOf(error));
  }
}

/** Takes a photograph out. What was said of it stays on record, and counts again once it is chosen again. */
export function removePhoto(name: string, sha256: string): Promise<void> {
  return inTurn(async () => {
    await stepOrBack(name, async () => {
      const machine = await running();
      await machine.ask("remove_photo", { name, sha256 });
      told.given = told.given.filter((given) => given.kind !== "photo" || given.name !== name || given.copy.sha256 !== sha256);
      await reviewOrNothing();
      change({ written: false, event: say("page-event-removed", { name }) });
    });
  });
}

export interface Doing {
  kind: string;
  target?: string;
  value: string;
  note?: string;
}

/** What an act is called where it is given. */
function actName(kind: string): string {
  const label = actWords(kind, "label");
  return kind === "undo" ? say("page-undo") : hasWords(label) ? say(label) : kind;
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
    await stepOrBack(say("page-where-act", { kind: actName(act.kind) }), async () => {
      const machine = await running();
      const { answer } = await machine.ask("act", { act });
      if (answer.problem !== null) {
        refused = answer.problem;
        change({ event: `${say("page-trouble-act-what")} ${answer.problem.text} ${answer.problem.remedy}` });
        return;
      }
      told.given.push({ kind: "act", act });
      if (answer.reread) await readWithoutTheBroken(true);
      await reviewOrNothing();
      const taken = state.summary?.acts.at(-1);
      change({ written: false, event: taken === undefined ? state.event : say("page-event-taken", { act: actText(taken) }) });
    });
    return refused;
  });
}

/** Takes several acts back, or brings several back, and reads the files again only once. Gives the numbers of the new acts. */
export function undoAll(numbers: number[]): Promise<number[]> {
  return inTurn(async () => {
    let made: number[] = [];
    await stepOrBack(say("page-where-act", { kind: actName("undo") }), async () => {
      const machine = await running();
      const before = state.summary?.acts.length ?? 0;
      let reread = false;
      for (const number of numbers) {
        const act: ActInput = { kind: "undo", target: "", value: String(number), by: state.initials, at: state.day, note: "" };
        const { answer } = await machine.ask("act", { act });
        if (answer.problem !== null) continue;
        told.given.push({ kind: "act", act });
        reread ||= answer.reread;
      }
      if (reread) await readWithoutTheBroken(true);
      await reviewOrNothing();
      made = (state.summary?.acts ?? []).slice(before).map((act) => act.number);
      change({ written: false });
    });
    return made;
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
  if (refused === null) change({ event: say("page-event-undone", { act: actText(act) }) });
}

export async function redo(): Promise<void> {
  const undoing = redoable(state.summary);
  if (undoing === null) return;
  const act = state.summary?.acts.find((one) => String(one.number) === undoing.value);
  const refused = await doAct({ kind: "undo", value: String(undoing.number) });
  if (refused === null) change({ event: say("page-event-redone", { act: act === undefined ? "" : actText(act) }) });
}

// ---- one inspection and those before it ----

/** One whole inspection, as far as it can't be worked out again. */
interface WholeInspection {
  files: HeldFile[];
  given: Given[];
  door: State["door"];
  lesson: State["lesson"];
  written: boolean;
}

// Leaving an inspection is undone, not asked about. Real work and training are kept apart, so that no number of training
// deliveries pushes real work out.
let workBefore: WholeInspection[] = [];
let trainingBefore: WholeInspection | null = null;

function asItStands(): WholeInspection | null {
  return state.files.length === 0 && told.given.length === 0 ? null : { files: state.files, given: told.given, door: state.door, lesson: state.lesson, written: state.written };
}

function isTraining(one: WholeInspection): boolean {
  return one.door === "train";
}

/** Leaves this inspection where it can be come back to, and stands empty. */
export function putAside(): void {
  const left = asItStands();
  if (left !== null) {
    if (isTraining(left)) trainingBefore = left;
    else workBefore.push(left);
  }
  forgetEverything();
}

/** Whether closing the page would lose something a person decided: files can be chosen again, acts can't. */
export function losesActs(): boolean {
  const now = asItStands();
  return [...workBefore, ...(now === null ? [] : [now])].some((one) => !one.written && one.given.some((given) => given.kind === "act"));
}

/** The inspection to come back to: real work before training. */
function takeBefore(): WholeInspection | null {
  const work = workBefore.pop();
  if (work !== undefined) return work;
  const training = trainingBefore;
  trainingBefore = null;
  return training;
}

function forgetEverything(): void {
  told.given = [];
  change({
    files: [],
    door: null,
    lesson: null,
    summary: null,
    offers: null,
    photos: null,
    order: new Uint32Array(0),
    found: NOTHING_FOUND,
    selected: null,
    troubles: [],
    written: true,
    query: { ...ANY_READING },
    event: "",
    putBy: workBefore.length > 0 || trainingBefore !== null,
  });
}

/** Empties the page for the next delivery. */
export function startAgain(): Promise<void> {
  return inTurn(async () => {
    putAside();
    await freshInstance();
  });
}

/** Changes this inspection for the one before it, and the other way round. */
export function bringBack(): Promise<void> {
  return inTurn(async () => {
    const left = asItStands();
    const back = takeBefore();
    if (back === null) return;
    if (left !== null) {
      // What is left goes to the far end, so that pressing again and again comes round to every one.
      if (isTraining(left)) trainingBefore = left;
      else workBefore = [left, ...workBefore];
    }
    forgetEverything();
    told.given = back.given;
    change({ files: back.files, door: back.door, lesson: back.lesson, written: back.written });
    await standAgain();
    change({ event: say("page-event-brought-back") });
  });
}
