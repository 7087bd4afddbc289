// Inspections come back: from an inspection file, or from the recovery copies of this browser.

import { takeUp, type WholeInspection } from "../inspection";
import { rawOf, unreadableWhy } from "../help/plain";
import { goTo } from "../place";
import { change, state, type AwaitedFile, type HeldFile } from "../state";
import { tellTrouble, troublesOver } from "../troubles";
import { between, inRow, say } from "../words";
import { isThatFile } from "./awaited";
import { openCopy, type RunningCopy } from "./copy";
import { copiesFound, type CopyHead } from "./copy-store";
import { isInspectionFile, lessonOf, NotOpened, openedInspection } from "./file";
import type { Whole } from "./whole";

async function wholeInspection(whole: Whole, awaited: AwaitedFile[], copy: RunningCopy | null, savedAt: string): Promise<WholeInspection> {
  const { given, files, steps, undone, about } = whole;
  const missing = new Set(awaited.map((one) => one.file));
  return {
    given,
    files: files.filter((file) => !missing.has(file)),
    steps,
    undone,
    awaited,
    door: about.door,
    lesson: await lessonOf(about.lesson),
    written: about.written,
    savedAt,
    copy,
    copied: copy !== null,
  };
}

function takeAbout(whole: Whole): void {
  const { initials, day } = whole.about;
  if (initials !== "") change({ initials });
  if (day !== "") change({ day });
}

// ---- from an inspection file ----

export interface Found {
  name: string;
  file: File;
  inFolder: boolean;
}

/** Parts what came into inspection files and the rest. Only those named one by one: what else lies in a folder is nobody's word. */
export async function inspectionsAmong(found: Found[]): Promise<{ inspections: Found[]; others: Found[] }> {
  const inspections: Found[] = [];
  const others: Found[] = [];
  for (const one of found) (!one.inFolder && (await isInspectionFile(one.file).catch(() => false)) ? inspections : others).push(one);
  return { inspections, others };
}

/**
 * Opens an inspection file. What came beside it is held against the files it names: the same bytes are nothing new, other
 * bytes under the same name are told. Gives what is left of what came beside it.
 */
export async function openInspectionFile({ name, file }: Found, beside: Found[]): Promise<Found[]> {
  const about = `inspection:${name}`;
  troublesOver(about);
  try {
    const opened = await openedInspection(file);
    const left: Found[] = [];
    const changed: string[] = [];
    const awaited = [...opened.awaited];
    for (const one of beside) {
      const named = opened.whole.files.filter((held) => held.name === one.name || held.name.endsWith(`/${one.name}`));
      if (named.length === 0) {
        left.push(one);
        continue;
      }
      const meant = await sameAmong(one.file, named, awaited, opened.digests);
      if (meant === null) changed.push(one.name);
      else {
        const at = awaited.findIndex((waiting) => waiting.file === meant);
        if (at >= 0) {
          meant.bytes = one.file;
          awaited.splice(at, 1);
        }
      }
    }
    const whole = await wholeInspection(opened.whole, awaited, null, timeNow());
    takeAbout(opened.whole);
    change({ doorWanted: null });
    await takeUp([whole], () => [say("page-keep-event-opened", { name }), changed.length === 0 ? "" : say("page-keep-event-changed", { n: changed.length, names: inRow(changed) }), awaited.length === 0 ? "" : say("page-keep-event-awaited", { n: awaited.length })].filter((line) => line !== "").join(between("gap")));
    goTo(opened.whole.about.place === "start" ? "came-in" : opened.whole.about.place);
    for (const one of changed) {
      tellTrouble({ key: `changed|${one}`, about, what: say("page-keep-changed-what"), where: one, why: say("page-keep-changed-why"), todo: say("page-keep-changed-todo") });
    }
    const acts = state.summary?.acts.length ?? null;
    if (opened.acts !== null && acts !== null && acts !== opened.acts) {
      tellTrouble({ key: `acts|${name}`, about, what: say("page-keep-acts-what"), where: name, why: say("page-keep-acts-why", { n: acts, of: opened.acts }), todo: say("page-keep-acts-todo") });
    }
    return left;
  } catch (error) {
    tellTrouble({ key: about, about, what: say("page-keep-not-opened-what"), where: whereOf(name, error), why: whyOf(error), todo: todoOf(error), ...(error instanceof NotOpened ? {} : { raw: rawOf(error) }) });
    return [];
  }
}

async function sameAmong(file: File, named: HeldFile[], awaited: AwaitedFile[], digests: Map<HeldFile, string>): Promise<HeldFile | null> {
  for (const held of named) {
    const waiting = awaited.find((one) => one.file === held);
    if (await isThatFile(file, waiting ?? { size: held.bytes.size, sha256: digests.get(held) ?? "" })) return held;
  }
  return null;
}

function whereOf(name: string, error: unknown): string {
  if (!(error instanceof NotOpened) || error.why !== "damaged") return name;
  const part = error.part === "list" || error.part === "head" ? say(`page-keep-part-${error.part}`) : say("page-keep-part-file", { name: error.part });
  return inRow([name, part]);
}

function whyOf(error: unknown): string {
  if (error instanceof NotOpened) return say(`page-keep-not-opened-${error.why}-why`, { schema: error.part });
  return unreadableWhy(error);
}

function todoOf(error: unknown): string {
  return say(error instanceof NotOpened ? `page-keep-not-opened-${error.why}-todo` : "page-trouble-unreadable-todo");
}

/** The time of the clock, as the language writes it. */
export function timeNow(): string {
  return new Intl.DateTimeFormat(state.language, { hour: "2-digit", minute: "2-digit", hourCycle: "h23" }).format(new Date());
}

// ---- from recovery copies ----

/** Looks which copies lie in this browser that are not of this visit. */
export async function lookForCopies(own: () => string[]): Promise<void> {
  try {
    const ids = new Set(own());
    change({ leftovers: (await copiesFound()).filter((head) => !ids.has(head.id)) });
  } catch {
    // Where the browser refuses its storage, there is nothing to bring back, and saving says that it is refused.
    change({ leftovers: [] });
  }
}

/** Brings back every copy that this code opens, the newest of them at hand. Gives how many there were. */
export async function bringBackCopies(code: string): Promise<number> {
  const found: { head: CopyHead; inspection: WholeInspection; whole: Whole; lost: number }[] = [];
  // Oldest first: the newest is to be at hand.
  for (const head of [...state.leftovers].reverse()) {
    const opened = await openCopy(head, code);
    if (opened === null) continue;
    found.push({ head, inspection: await wholeInspection(opened.whole, opened.awaited, opened.copy, ""), whole: opened.whole, lost: opened.lost });
  }
  const newest = found.at(-1);
  if (newest === undefined) return 0;
  // The person has it: they have just typed it.
  change({ code, codeNoted: true });
  takeAbout(newest.whole);
  await takeUp(
    found.map((one) => one.inspection),
    () => [say("page-keep-event-recovered", { n: found.length }), state.awaited.length === 0 ? "" : say("page-keep-event-awaited", { n: state.awaited.length })].filter((line) => line !== "").join(between("gap")),
  );
  goTo(newest.whole.about.place === "start" ? "came-in" : newest.whole.about.place);
  for (const { head, lost } of found) {
    if (lost === 0) continue;
    tellTrouble({
      key: `copy|${head.id}`,
      about: "",
      what: say("page-keep-lost-what"),
      where: say("page-keep-lost-where", { when: whenSaved(head) }),
      why: say("page-keep-lost-why", { n: lost }),
      todo: say("page-keep-lost-todo"),
    });
  }
  return found.length;
}

export function whenSaved(head: CopyHead): string {
  return new Intl.DateTimeFormat(state.language, { dateStyle: "medium", timeStyle: "short", hourCycle: "h23" }).format(new Date(head.saved));
}

