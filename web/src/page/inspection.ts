// What a person does to the inspection, one thing after the other. The page holds the files and the acts; the worker can
// be thrown away and given both again at any moment, which is also how a crash, a cancel and a re-reading are done.

import type { ActInput, ActView, Problem } from "../shared/door";
import { actText, actWords } from "./acts-in-force";
import { EngineCrashed, EngineReplaced } from "./engine";
import { freshInstance, inTurn, photoBytes, running, told, working, type Given } from "./instance";
import { settledAwaited } from "./keep/awaited";
import { beginCopy, copyAtHand, dropCopies, leaveCopy, saved, takeCopy, type RunningCopy } from "./keep/copy";
import { givenAfter, madeOnly, onlyActs, sameNumbers, stepBetween, stepText, withStep, type Said, type Standing, type Step } from "./keep/steps";
import { Cancelled, fileOf, freshKey, headingsRead, joined, leaveOut, readWithoutTheBroken } from "./reading";
import { HEADER, recalled } from "./browser-store";
import { NoCopy, copyOf, mediaTypeOf } from "./photo-copy";
import { ANY_READING, NOTHING_FOUND, change, state, type AwaitedFile, type HeldFile, type State } from "./state";
import { crashTrouble, tellTrouble, troubleFrom, troublesOver } from "./troubles";
import { rawOf, unreadableWhy } from "./help/plain";
import { between, hasWords, inRow, say } from "./words";

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

/** All acts so far. Without files there is no review that would hold them. */
async function actsNow(): Promise<ActView[]> {
  return state.summary?.acts ?? (await (await running()).ask("summary", {})).summary.acts;
}

async function standing(): Promise<Standing> {
  return { given: [...told.given], files: state.files, acts: (await actsNow()).length };
}

/** How everything stood before the step that is being taken. */
let since: Standing | null = null;

/**
 * A step is done: it can be taken back from here on, and it stands in the recovery copy before the page says that it was
 * taken. What a person was told is never lost.
 */
async function took(event: string | null, said: Said | null = null): Promise<void> {
  const step = since === null ? null : stepBetween(since, await standing(), said);
  if (step !== null) change({ steps: withStep(state.steps, step), undone: [] });
  await tell(event);
}

/** The same for going back and forth, which are no steps of their own. */
async function tell(event: string | null): Promise<void> {
  const before = state.copy;
  change({ written: false, savedAt: "" });
  await saved();
  if (event !== null) change({ event: withCode(event, before) });
}

/** What happened, and that a code is to be written down where this brought one. */
function withCode(event: string, before: State["copy"]): string {
  return before !== "saved" && state.copy === "saved" && !state.codeNoted ? `${event}${between("gap")}${say("page-keep-event-code")}` : event;
}

/** Takes one step; if the program goes down on the way, takes the step back, says so, and stands where it stood before. */
async function stepOrBack(what: string, step: () => Promise<void>, whole = true): Promise<boolean> {
  const before = { given: [...told.given], files: state.files, steps: state.steps, undone: state.undone };
  try {
    beginCopy();
    if (whole) since = await standing();
    await step();
    return true;
  } catch (error) {
    if (error instanceof Cancelled || error instanceof EngineReplaced) {
      change({ event: say("page-event-cancelled") });
    } else if (error instanceof EngineCrashed) {
      tellTrouble(crashTrouble(error, what, say("page-trouble-crash-step-todo")));
    } else throw error;
    told.given = before.given;
    change({ files: before.files, steps: before.steps, undone: before.undone });
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

async function addNow(broughtNow: Brought[]): Promise<void> {
  // What was waited for comes back as what it was, and is no new file.
  const { others: brought, returned } = await settledAwaited(broughtNow);
  if (brought.length === 0 && returned.length === 0) return;
  const added = brought.map((file) => ({
    key: freshKey(),
    name: file.name,
    bytes: file.bytes,
    inFolder: file.inFolder ?? false,
    invented: file.invented ?? false,
  }));
  await stepOrBack(inRow([...returned, ...added].map((file) => file.name)), async () => {
    const { files, twice } = await joined(state.files, [...returned, ...added]);
    // A file that was changed comes in beside the one it was: nobody but the person knows whether it replaces that one.
    const changed = added.map((file) => file.name).filter((name) => !twice.includes(name) && state.files.some((file) => file.name === name));
    // Readings are numbered through all files, so the one looked at may bear another number from here on.
    change({ files, selected: null });
    await readWithoutTheBroken(false);
    // Before anything is shown, or the page would show for a moment what another day's answers have set right.
    if (await recallColumns()) await readWithoutTheBroken(true);
    await reviewOrNothing();
    const keys = new Set([...returned, ...added].map((file) => file.key));
    const whole = new Set(state.summary?.sources.filter((source) => source.read).map((source) => fileOf(source)?.key));
    const read = state.files.filter((file) => keys.has(file.key) && whole.has(file.key)).length;
    const event = say("page-event-files", { n: read, of: returned.length + added.length - twice.length });
    // What was waited for was never taken out: its coming is nothing that could be taken back.
    if (since !== null) since.files = [...since.files, ...returned];
    const more = [
      twice.length === 0 ? "" : say("page-event-twice", { n: twice.length, names: inRow(twice.slice(0, 3)) }),
      changed.length === 0 ? "" : say("page-event-same-name", { names: inRow(changed.slice(0, 3)) }),
    ].filter((text) => text !== "");
    await took([event, ...more].join(between("gap")), cameIn(added));
  });
}

function cameIn(files: HeldFile[]): Said {
  return { key: "page-keep-step-files", given: { n: files.length, name: files[0]?.name ?? "" } };
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
      await took(say("page-event-removed", { name: file.name }), { key: "page-keep-step-out", given: { name: file.name } });
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
      await took(say(TAKEN[kind], { name }), { key: `page-keep-step-${kind.replace("_", "-")}`, given: { name } });
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
      await took(say("page-event-bill", { name }), { key: "page-keep-step-bill", given: { name } });
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
    // All of them are one step.
    since = await standing();
    try {
      for (const [at, one] of brought.entries()) {
        if (stop.wanted) break;
        change({ work: { text: say("page-work-photo", { n: at + 1, of: brought.length, name: one.name }), done: at, total: brought.length, cancel } });
        await stepOrBack(one.name, async () => {
          if (await takePhoto(one)) taken += 1;
          else refused.push(one);
        }, false);
      }
    } finally {
      change({ work: null });
    }
    await stepOrBack(
      say("page-photos-heading"),
      async () => {
        await reviewOrNothing();
        await took(null, { key: "page-keep-step-photos", given: { n: taken } });
      },
      false,
    );
    if (refused.length > 0) await addNow(refused);
    change({ event: say("page-event-photos", { n: taken, of: brought.length }) });
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
      await took(say("page-event-removed", { name }), { key: "page-keep-step-out", given: { name } });
    });
  });
}

export interface Doing {
  kind: string;
  target?: string;
  value: string;
  note?: string;
  /** Nobody gave it by hand: what was told last goes on standing. */
  quiet?: boolean;
}

/** What an act is called where it is given. */
function actName(kind: string): string {
  const label = actWords(kind, "label");
  return kind === "undo" ? say("page-undo") : hasWords(label) ? say(label) : kind;
}

/** Records one act and shows its effect. Returns what is wrong with it, if the core refuses it: the control says so in its place. */
export function doAct(doing: Doing): Promise<Problem | null> {
  return record(doing.kind, [doing], async () => {
    const taken = (await actsNow()).at(-1);
    await took(taken === undefined || doing.quiet === true ? null : say("page-event-taken", { act: actText(taken) }));
  });
}

/** Records several acts of one kind as one step, which `said` names, and reviews once. */
export function doActs(kind: string, doings: Omit<Doing, "kind">[], said: Said): Promise<Problem | null> {
  return record(kind, doings, () => took(say("page-event-taken", { act: say(said.key, said.given) }), said));
}

function record(kind: string, doings: Omit<Doing, "kind">[], done: () => Promise<void>): Promise<Problem | null> {
  return inTurn(async () => {
    let refused: Problem | null = null;
    await stepOrBack(say("page-where-act", { kind: actName(kind) }), async () => {
      const machine = await running();
      const before = told.given.length;
      let reread = false;
      for (const { target = "", value, note = "" } of doings) {
        const act: ActInput = { kind, target, value, by: state.initials, at: state.day, note };
        const { answer } = await machine.ask("act", { act });
        if (answer.problem !== null) {
          refused = answer.problem;
          change({ event: `${say("page-trouble-act-what")} ${answer.problem.text} ${answer.problem.remedy}` });
          break;
        }
        told.given.push({ kind: "act", act });
        reread ||= answer.reread;
      }
      if (told.given.length === before) return;
      if (reread) await readWithoutTheBroken(true);
      await reviewOrNothing();
      await done();
    });
    return refused;
  });
}

// ---- back and forth ----

/** Goes a step back, or forth again. Gives the numbers of the acts that this made. */
async function turn(step: Step, back: boolean): Promise<number[]> {
  const machine = await running();
  const given = givenAfter(told.given, step, back);
  const moved = [...step.givenIn, ...step.givenOut].map((placed) => placed.given);
  let reread = moved.some((one) => one.kind !== "photo");
  told.given = given;
  if (reread) await freshInstance();
  else {
    for (const one of moved) {
      if (one.kind !== "photo") continue;
      if (given.includes(one)) await machine.ask("photo", { name: one.name, ...photoBytes(one.copy) });
      else await machine.ask("remove_photo", { name: one.name, sha256: one.copy.sha256 });
    }
  }
  const before = await actsNow();
  const undone = new Set(before.filter((act) => act.undone).map((act) => act.number));
  let made = before.length;
  const numbers: number[] = [];
  for (const number of back ? step.acts.filter((one) => !undone.has(one)) : step.undoneBy) {
    const act: ActInput = { kind: "undo", target: "", value: String(number), by: state.initials, at: state.day, note: "" };
    const { answer } = await machine.ask("act", { act });
    if (answer.problem !== null) continue;
    told.given.push({ kind: "act", act });
    numbers.push((made += 1));
    reread ||= answer.reread;
  }
  const out = new Set(back ? step.filesIn : step.filesOut);
  const put = back ? step.filesOut : step.filesIn;
  if (out.size + put.length > 0) {
    const { files } = await joined(state.files.filter((file) => !out.has(file)), put);
    change({ files, selected: null });
  }
  if (reread || out.size > 0) await readWithoutTheBroken(true);
  else if (put.length > 0) await readWithoutTheBroken(false);
  await reviewOrNothing();
  return numbers;
}

/** Takes `step` back and says so; it can be done again after that. Gives the numbers of the acts that this made. */
async function goBack(step: Step, event: (what: string) => string | null): Promise<number[]> {
  let made: number[] = [];
  await stepOrBack(say("page-where-act", { kind: actName("undo") }), async () => {
    const what = stepText(step, await actsNow());
    made = await turn(step, true);
    const taken = { ...step, undoneBy: made };
    change({ steps: state.steps.filter((one) => one !== step), undone: made.length === 0 && madeOnly(step, step.acts) ? state.undone : [...state.undone, taken] });
    await tell(event(what));
  });
  return made;
}

async function goForth(step: Step, event: (what: string) => string | null): Promise<number[]> {
  let made: number[] = [];
  await stepOrBack(say("page-where-act", { kind: actName("undo") }), async () => {
    const what = stepText(step, await actsNow());
    made = await turn(step, false);
    change({ undone: state.undone.filter((one) => one !== step), steps: withStep(state.steps, { ...step, undoneBy: [] }) });
    await tell(event(what));
  });
  return made;
}

/** The step that made these acts and nothing else, or one as if there had been such a step. */
function stepOf(acts: number[]): Step {
  return state.steps.find((step) => madeOnly(step, acts)) ?? onlyActs(acts);
}

/** Takes several acts back, or brings several back, and reads the files again only once. Gives the numbers of the new acts. */
export function undoAll(numbers: number[]): Promise<number[]> {
  return inTurn(async () => {
    const back = state.undone.find((step) => step.undoneBy.length > 0 && sameNumbers(step.undoneBy, numbers));
    return back === undefined ? await goBack(stepOf(numbers), () => null) : await goForth(back, () => null);
  });
}

/** Takes back an act, or the newest step. */
export function undo(number?: number): Promise<void> {
  return inTurn(async () => {
    const step = number === undefined ? state.steps.at(-1) : stepOf([number]);
    if (step !== undefined) await goBack(step, (act) => say("page-event-undone", { act }));
  });
}

export function redo(): Promise<void> {
  return inTurn(async () => {
    const step = state.undone.at(-1);
    if (step !== undefined) await goForth(step, (act) => say("page-event-redone", { act }));
  });
}

/** Files that were taken out and can be put back. */
export function filesTakenOut(): HeldFile[] {
  return [...new Set(state.steps.flatMap((step) => step.filesOut))].filter((file) => !state.files.includes(file));
}

/** Puts a file back that was taken out, as the same file. */
export function putFileBack(file: HeldFile): Promise<void> {
  return inTurn(async () => {
    await stepOrBack(file.name, async () => {
      const { files } = await joined(state.files, [file]);
      change({ files, selected: null });
      await readWithoutTheBroken(false);
      await reviewOrNothing();
      await took(say("page-keep-event-put-back", { name: file.name }), { key: "page-keep-step-put-back", given: { name: file.name } });
    });
  });
}

// ---- one inspection and those before it ----

/** One whole inspection, as far as it can't be worked out again. */
export interface WholeInspection {
  files: HeldFile[];
  given: Given[];
  door: State["door"];
  lesson: State["lesson"];
  written: boolean;
  steps: Step[];
  undone: Step[];
  awaited: AwaitedFile[];
  savedAt: string;
  copy: RunningCopy | null;
  /** Whether the copy holds all of it. */
  copied: boolean;
  /** The person is done with it: that it ends with the page is what they want. */
  closed?: boolean;
}

// Leaving an inspection is undone, not asked about. Real work and training are kept apart, so that no number of training
// deliveries pushes real work out.
let workBefore: WholeInspection[] = [];
let trainingBefore: WholeInspection | null = null;

function asItStands(): WholeInspection | null {
  const { files, door, lesson, written, steps, undone, awaited, savedAt } = state;
  if (files.length === 0 && told.given.length === 0 && awaited.length === 0) return null;
  return { files, given: told.given, door, lesson, written, steps, undone, awaited, savedAt, copy: copyAtHand(), copied: state.copy === "saved" };
}

function isTraining(one: WholeInspection): boolean {
  return one.door === "train";
}

function putBy(left: WholeInspection): void {
  if (isTraining(left)) trainingBefore = left;
  else workBefore.push(left);
}

/** Leaves this inspection where it can be come back to, and stands empty. */
export function putAside(): void {
  const left = asItStands();
  if (left !== null) putBy(left);
  forgetEverything();
}

/**
 * Whether closing the page would lose something a person decided: files can be chosen again, acts can't. What stands in a
 * recovery copy is not lost, as long as the person has its code.
 */
export function losesActs(): boolean {
  const now = asItStands();
  const safe = (one: WholeInspection): boolean => one.closed === true || one.written || one.savedAt !== "" || (one.copied && state.codeNoted);
  return [...workBefore, ...(now === null ? [] : [now])].some((one) => !safe(one) && one.given.some((given) => given.kind === "act"));
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
  since = null;
  leaveCopy();
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
    steps: [],
    undone: [],
    awaited: [],
    savedAt: "",
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

/** Stands where `whole` stood; the inspection at hand must have been put by. */
async function standAs(whole: WholeInspection): Promise<void> {
  forgetEverything();
  told.given = whole.given;
  takeCopy(whole.copy);
  const { door, lesson, written, steps, undone, awaited, savedAt } = whole;
  const { files } = await joined([], whole.files);
  change({ files, door, lesson, written, steps, undone, awaited, savedAt });
  await standAgain();
  await saved();
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
    await standAs(back);
    change({ event: say("page-event-brought-back") });
  });
}

/** Takes up inspections that were kept elsewhere, the last of them at hand. Those of this page are put by, not lost. */
export function takeUp(wholes: WholeInspection[], event: () => string): Promise<void> {
  return inTurn(async () => {
    const last = wholes.at(-1);
    if (last === undefined) return;
    putAside();
    for (const one of wholes.slice(0, -1)) putBy(one);
    await standAs(last);
    change({ event: withCode(event(), "none") });
  });
}

/** Closes the inspection and removes its recovery copy. In the memory of this page it can still be come back to. */
export function closeAndRemove(): Promise<void> {
  return inTurn(async () => {
    await dropCopies([copyAtHand()]);
    const left = asItStands();
    if (left !== null) putBy({ ...left, closed: true });
    forgetEverything();
    await freshInstance();
    change({ keepOpen: false, event: say("page-keep-event-closed") });
  });
}

/** Removes every recovery copy of this visit. */
export async function dropOwnCopies(): Promise<void> {
  const before = [...workBefore, ...(trainingBefore === null ? [] : [trainingBefore])];
  await dropCopies([copyAtHand(), ...before.map((one) => one.copy)]);
  for (const one of before) {
    one.copy = null;
    one.copied = false;
  }
}

/** The inspections that are put by in this page. */
export function inspectionsPutBy(): WholeInspection[] {
  return workBefore;
}
