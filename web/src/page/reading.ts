// Files into the worker: in slices, a few under way at a time, with progress; and on without any file that breaks.

import { EngineCrashed } from "./engine";
import { rawOf, unreadableWhy } from "./help/plain";
import { freshInstance, running, told } from "./instance";
import { fileDigest } from "./digest";
import type { SourceView } from "../shared/door";
import { change, state, type HeldFile } from "./state";
import { crashTrouble, tellTrouble, troublesOver } from "./troubles";
import { byteCount, say } from "./words";

const SLICE = 4 * 1024 * 1024;
const IN_FLIGHT = 4;

/** The person gave up waiting. */
export class Cancelled extends Error {}

class CrashedOnFile extends Error {
  constructor(
    readonly file: HeldFile,
    readonly crash: EngineCrashed,
  ) {
    super(crash.said);
  }
}

let cancelWanted = false;

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

let nextKey = 1;

/** A number of its own for a file that the page takes in hand. */
export function freshKey(): number {
  return nextKey++;
}

/** Joins new files to those held. Two files of one name both stay, unless they are the same file twice. */
export async function joined(held: HeldFile[], added: HeldFile[]): Promise<{ files: HeldFile[]; twice: string[] }> {
  const digests = new Map<number, string>();
  const digestOf = async (file: HeldFile): Promise<string> => {
    const known = digests.get(file.key);
    if (known !== undefined) return known;
    const made = await fileDigest(file.bytes).catch(async (error: unknown) => {
      if (await rescued(file)) return fileDigest(file.bytes);
      throw error;
    });
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

/** Where a file's bytes can be had besides where it came from: whoever keeps a copy says so. */
let kept: (file: HeldFile) => Promise<Blob | null> = async () => null;

export function rescueWith(from: (file: HeldFile) => Promise<Blob | null>): void {
  kept = from;
}

/** A stick that is pulled takes the files with it; what came in from it goes on from the copy. Whether it does. */
async function rescued(file: HeldFile): Promise<boolean> {
  const bytes = await kept(file);
  if (bytes === null) return false;
  file.bytes = bytes;
  tellTrouble({
    key: `kept|${file.name}`,
    about: `kept:${file.name}`,
    what: say("page-trouble-kept-what"),
    where: file.name,
    why: say("page-trouble-kept-why"),
    todo: say("page-trouble-kept-todo"),
    code: "kept",
  });
  return true;
}

// A file can hold several tables, so where a source came from is noted when it is read.
const cameFrom = new Map<string, number>();
const fingerprints = new Map<number, string[]>();

function nameAndDigest(source: Pick<SourceView, "name" | "sha256">): string {
  return `${source.sha256}|${source.name}`;
}

/** The file a source was read from. */
export function fileOf(source: Pick<SourceView, "name" | "sha256">): HeldFile | null {
  const key = cameFrom.get(nameAndDigest(source));
  return state.files.find((file) => file.key === key) ?? null;
}

/** The headings of all tables in the files held, by their fingerprints. */
export function headingsRead(): Set<string> {
  return new Set(state.files.flatMap((file) => fingerprints.get(file.key) ?? []));
}

/** Passes a file through to the worker; where its bytes can't be had, it goes on record as unreadable. */
async function pump(file: HeldFile, moved: (bytes: number) => void): Promise<void> {
  const machine = await running();
  const inFlight = new Set<Promise<unknown>>();
  let opened = false;
  // Bytes that went through before a stick was pulled are the same in the copy, so reading goes on where it stood.
  const sliceFrom = (from: number): Promise<ArrayBuffer> => file.bytes.slice(from, from + SLICE).arrayBuffer();
  const whole = (slice: ArrayBuffer, from: number): boolean => slice.byteLength === Math.min(SLICE, file.bytes.size - from);
  for (let from = 0; from < file.bytes.size || !opened; from += SLICE) {
    if (cancelWanted) throw new Cancelled();
    let slice: ArrayBuffer;
    try {
      slice = await sliceFrom(from);
    } catch (error) {
      if (!(await rescued(file))) return await goOnWithout(file, unreadableWhy(error), error);
      slice = await sliceFrom(from);
    }
    // Some browsers hand out what is left of a file that was cut short meanwhile, and say nothing.
    if (!whole(slice, from)) {
      if (!(await rescued(file))) return await goOnWithout(file, say("page-trouble-changed-why"));
      slice = await sliceFrom(from);
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
  const { views } = await machine.ask("finish", {});
  for (const view of views) cameFrom.set(nameAndDigest(view), file.key);
  fingerprints.set(file.key, views.flatMap((view) => view.blocks.map((block) => block.fingerprint)));
  troublesOver(`file:${file.name}`);
}

async function goOnWithout(file: HeldFile, why: string, error: unknown = null): Promise<void> {
  const machine = await running();
  await machine.ask("unreadable", { name: file.name, text: error instanceof Error ? error.message : why });
  cameFrom.set(nameAndDigest({ name: file.name, sha256: "" }), file.key);
  tellTrouble({
    key: `unreadable|${file.name}`,
    about: `file:${file.name}`,
    what: say("page-trouble-unreadable-what"),
    where: file.name,
    why,
    todo: say("page-trouble-unreadable-todo"),
    code: "unreadable",
    ...(error === null ? {} : { raw: rawOf(error) }),
  });
}

/** Reads what isn't read yet, or everything again. */
async function readEverything(anew: boolean): Promise<void> {
  const machine = await running();
  if (anew) {
    await machine.ask("clear", {});
    told.read = new Set();
  }
  const todo = state.files.filter((file) => !told.read.has(file.key));
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
      told.read.add(file.key);
    }
  } finally {
    change({ work: null });
  }
}

/** Reads, going on without any file that brings the program down, and saying so. */
export async function readWithoutTheBroken(anew: boolean): Promise<void> {
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

export function leaveOut(file: HeldFile): void {
  change({ files: state.files.filter((held) => held.key !== file.key) });
}
