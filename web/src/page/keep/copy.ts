// The recovery copy of the inspection at hand: every step stands in it, encrypted, before the page says that it was done.

import { told } from "../instance";
import { fileOf, freshKey } from "../reading";
import { change, state, watch, type HeldFile } from "../state";
import { freshSalt, ITERATIONS, keyOf, seal, unseal } from "./cipher";
import { freshCode } from "./code";
import { append, readCopy, removeCopies, StoreFailed, type CopyHead, type StoredCopy } from "./copy-store";
import { fileDigest, hexadecimal } from "../digest";
import { Ledger, packed, unpacked, type About, type FilePlain, type Whole } from "./whole";

/**
 * Larger files are not copied: name, size and digest are, and the file itself is asked for again. Our own choice: this much is
 * encrypted and written in a few seconds, while a larger one holds up the person and fills the disk of a borrowed computer.
 */
export const LARGEST_FILE = 64 * 1024 * 1024;
const LARGEST_COPY = 256 * 1024 * 1024;
/** The bytes of a file go into records of this size, so that none has to be held whole twice. */
const CHUNK = 4 * 1024 * 1024;
/** No more than this waits to be written in one go. */
const IN_ONE_GO = 16 * 1024 * 1024;

/** First byte of a record: what it holds. */
const CHANGES = 1;
const BYTES = 2;

/** A copy that is being written. */
export interface RunningCopy {
  id: string;
  salt: Uint8Array<ArrayBuffer>;
  iterations: number;
  key: Promise<CryptoKey>;
  /** The number of the next record. */
  next: number;
  ledger: Ledger;
  /** The number under which the bytes of the next file go. */
  nextPart: number;
  /** Files whose bytes are in it, by that number. */
  parts: Map<HeldFile, number>;
  bytes: number;
  /** Whether anything of it was written. */
  begun: boolean;
}

let copy: RunningCopy | null = null;

function freshCopy(): RunningCopy {
  const salt = freshSalt();
  if (state.code === "") change({ code: freshCode() });
  const id = hexadecimal(crypto.getRandomValues(new Uint8Array(12)));
  const key = keyOf(state.code, salt, ITERATIONS);
  // Told where it is awaited.
  key.catch(() => undefined);
  return { id, salt, iterations: ITERATIONS, key, next: 0, ledger: new Ledger(), nextPart: 0, parts: new Map(), bytes: 0, begun: false };
}

/** Training is invented, and whoever wants nothing kept gets no copy. */
function wanted(): boolean {
  return state.kept !== "nothing" && state.door !== "train";
}

/** Has the key made while the step goes on, so that nobody waits for it. */
export function beginCopy(): void {
  if (wanted()) copy ??= freshCopy();
}

/** Hands the copy over to whoever puts the inspection by. */
export function leaveCopy(): RunningCopy | null {
  const left = copy;
  copy = null;
  change({ copy: "none" });
  return left;
}

export function takeCopy(taken: RunningCopy | null): void {
  copy = taken;
}

/** The id of the copy at hand, if any of it was written. */
export function copyId(one = copy): string | null {
  return one?.begun === true ? one.id : null;
}

/** Removes what was written of these copies; what goes on after that begins a new one. */
export async function dropCopies(copies: (RunningCopy | null)[]): Promise<void> {
  const ids = copies.map((one) => copyId(one)).filter((id) => id !== null);
  if (copies.includes(copy)) leaveCopy();
  if (ids.length > 0) await removeCopies(ids);
}

export function copyAtHand(): RunningCopy | null {
  return copy;
}

// ---- saving ----

export function aboutNow(): About {
  const { door, lesson, initials, day, place, written } = state;
  return { door, lesson: lesson?.folder ?? "", initials, day, place, written };
}

/** The inspection at hand; files that are waited for belong to it. */
export function wholeNow(): Whole {
  return { given: told.given, files: [...state.files, ...state.awaited.map((one) => one.file)], steps: state.steps, undone: state.undone, about: aboutNow() };
}

/** Brings the copy up to date. Where it can't be written, the page says so and the work goes on. */
export async function saved(): Promise<void> {
  if (!wanted() || (told.given.length === 0 && state.files.length === 0 && state.awaited.length === 0 && copyId() === null)) return;
  try {
    try {
      await write(true);
    } catch (error) {
      if (!(error instanceof StoreFailed)) throw error;
      if (error.fault === "full") {
        // Files are what takes room: without their bytes the acts may still find some.
        await write(false);
      } else if (error.fault === "gone" || error.fault === "taken") {
        copy = freshCopy();
        await write(true);
      } else throw error;
    }
    // The first thing that is kept brings the code with it, which has to be written down.
    if (state.copy !== "saved") change({ copy: "saved", copyFault: "", keepOpen: state.keepOpen || !state.codeNoted });
  } catch (error) {
    const fault = error instanceof StoreFailed && error.fault === "full" ? "full" : "refused";
    console.warn(error instanceof Error ? error.message : String(error));
    if (state.copy !== "unsaved" || state.copyFault !== fault) change({ copy: "unsaved", copyFault: fault, keepOpen: true });
  }
}

async function write(withBytes: boolean): Promise<void> {
  copy ??= freshCopy();
  const at = copy;
  const key = await at.key;
  const whole = wholeNow();
  const waiting: Uint8Array<ArrayBuffer>[] = [];
  let waitingBytes = 0;
  const flush = async (): Promise<void> => {
    if (waiting.length === 0) return;
    const next = at.next + waiting.length;
    const tally = await seal(key, `${at.id}|tally`, utf8.encode(JSON.stringify({ records: next })));
    const head: CopyHead = { id: at.id, salt: at.salt, iterations: at.iterations, saved: Date.now(), records: next, files: whole.files.length, tally };
    await append(head, at.next, waiting);
    at.next = next;
    at.begun = true;
    waiting.length = 0;
    waitingBytes = 0;
  };
  const add = async (record: Uint8Array<ArrayBuffer>): Promise<void> => {
    waiting.push(await seal(key, placeOf(at.id, at.next + waiting.length), record));
    waitingBytes += record.length;
  };

  const plain = new Map<HeldFile, FilePlain>();
  const parts = new Map<HeldFile, number>();
  for (const file of at.ledger.unknownFiles(whole)) {
    const about = { name: file.name, size: file.bytes.size, sha256: "", in_folder: file.inFolder, invented: file.invented };
    const known = at.parts.get(file) ?? null;
    const awaited = state.awaited.find((one) => one.file === file);
    let part = known;
    if (awaited !== undefined) plain.set(file, { ...about, size: awaited.size, sha256: awaited.sha256, part: null });
    else {
      if (part === null && withBytes && file.bytes.size <= LARGEST_FILE && at.bytes + file.bytes.size <= LARGEST_COPY) {
        part = at.nextPart;
        const whole = await bytesOf(file);
        if (whole === null) part = null;
        else {
          at.nextPart += 1;
          for (let from = 0; from < whole.length; from += CHUNK) {
            await add(chunkRecord(part, whole.subarray(from, from + CHUNK)));
            if (waitingBytes >= IN_ONE_GO) await flush();
          }
          parts.set(file, part);
          at.bytes += whole.length;
        }
      }
      plain.set(file, { ...about, sha256: part === null ? await digestOf(file) : "", part });
    }
  }

  const made: Uint8Array[] = [];
  const changes = at.ledger.changes(
    whole,
    (file) => plain.get(file) ?? { name: file.name, size: file.bytes.size, sha256: "", in_folder: file.inFolder, invented: file.invented, part: null },
    (bytes) => made.push(bytes) - 1,
  );
  if (changes !== null) {
    const body = packed(changes.record, made);
    const record = new Uint8Array(1 + body.length);
    record[0] = CHANGES;
    record.set(body, 1);
    await add(record);
  }
  await flush();
  changes?.commit();
  for (const [file, part] of parts) at.parts.set(file, part);
}

const utf8 = new TextEncoder();

function placeOf(id: string, number: number): string {
  return `${id}|${number}`;
}

function chunkRecord(part: number, bytes: Uint8Array): Uint8Array<ArrayBuffer> {
  const record = new Uint8Array(5 + bytes.length);
  record[0] = BYTES;
  new DataView(record.buffer).setUint32(1, part);
  record.set(bytes, 5);
  return record;
}

/** Null where the bytes can't be had any more: that is told where the file is read. */
async function bytesOf(file: HeldFile): Promise<Uint8Array | null> {
  try {
    const bytes = new Uint8Array(await file.bytes.arrayBuffer());
    return bytes.length === file.bytes.size ? bytes : null;
  } catch {
    return null;
  }
}

/** A file's bytes as they came in, from the copy; null where it does not hold them. */
export async function bytesKept(file: HeldFile): Promise<Blob | null> {
  const part = copy?.parts.get(file);
  if (copy === null || part === undefined || copyId() === null) return null;
  const stored = await readCopy(copy.id).catch(() => null);
  if (stored === null) return null;
  const key = await copy.key;
  const chunks: Uint8Array<ArrayBuffer>[] = [];
  for (const [at, sealed] of stored.records.entries()) {
    const record = await unseal(key, placeOf(copy.id, stored.numbers[at] ?? -1), sealed);
    if (record?.[0] === BYTES && new DataView(record.buffer).getUint32(1) === part) chunks.push(record.subarray(5));
  }
  const bytes = new Blob(chunks);
  return bytes.size === file.bytes.size ? bytes : null;
}

/** By the core's own count where it has one: it has read the whole file already. */
async function digestOf(file: HeldFile): Promise<string> {
  const source = state.summary?.sources.find((one) => one.name === file.name && one.container === null && one.sha256 !== "" && fileOf(one)?.key === file.key);
  return source?.sha256 ?? (await fileDigest(file.bytes).catch(() => ""));
}

// ---- what changes without a step ----

let waiting = 0;

/** Where a person is and whose initials they typed is saved a moment later: it is typed letter by letter. */
export function beginSaving(inTurn: (step: () => Promise<void>) => Promise<void>): void {
  watch(["initials", "day", "place", "written"], () => {
    if (copyId() === null) return;
    clearTimeout(waiting);
    waiting = window.setTimeout(() => void inTurn(saved), 400);
  });
}

// ---- opening ----

/** What came of opening a copy. `lost`: how many records at its end could not be used, because one was changed or is missing. */
export interface OpenedCopy {
  whole: Whole;
  awaited: { file: HeldFile; size: number; sha256: string }[];
  lost: number;
  /** To go on with; null where the copy is damaged and a new one has to be begun. */
  copy: RunningCopy | null;
}

/** Opens a copy with a code; null where the code is another's. */
export async function openCopy(head: CopyHead, code: string): Promise<OpenedCopy | null> {
  const key = await keyOf(code, head.salt, head.iterations);
  const tally = await unseal(key, `${head.id}|tally`, head.tally);
  const stored = await readCopy(head.id);
  if (stored === null) return null;
  if (tally === null && (stored.records[0] === undefined || (await unseal(key, placeOf(head.id, stored.numbers[0] ?? 0), stored.records[0])) === null)) return null;
  return replayed(stored, key, tally);
}

async function replayed(stored: StoredCopy, key: CryptoKey, tally: Uint8Array | null): Promise<OpenedCopy> {
  const { head, numbers, records } = stored;
  const ledger = new Ledger();
  const chunks = new Map<number, Uint8Array<ArrayBuffer>[]>();
  const parts = new Map<HeldFile, number>();
  const awaited: OpenedCopy["awaited"] = [];
  let good = 0;
  let bytes = 0;
  for (const [at, sealed] of records.entries()) {
    // A record that is missing leaves a gap in the numbers; one that was moved or doubled does not open at its number.
    if (numbers[at] !== at) break;
    const record = await unseal(key, placeOf(head.id, at), sealed);
    if (record === null) break;
    if (record[0] === BYTES) {
      const part = new DataView(record.buffer).getUint32(1);
      const chunk = record.subarray(5);
      chunks.set(part, [...(chunks.get(part) ?? []), chunk]);
      bytes += chunk.length;
    } else {
      const { record: changes, part } = unpacked(record.slice(1));
      ledger.apply(changes, part, (plain) => {
        const file: HeldFile = { key: freshKey(), name: plain.name, bytes: new Blob(plain.part === null ? [] : (chunks.get(plain.part) ?? [])), inFolder: plain.in_folder, invented: plain.invented };
        if (plain.part === null) awaited.push({ file, size: plain.size, sha256: plain.sha256 });
        else parts.set(file, plain.part);
        return file;
      });
    }
    good = at + 1;
  }
  const expected = tally === null ? head.records : Number((JSON.parse(new TextDecoder().decode(tally)) as { records: unknown }).records);
  const lost = Math.max(0, Math.max(expected, records.length) - good);
  const whole = ledger.whole();
  const damaged = lost > 0 || tally === null;
  return {
    whole,
    awaited: awaited.filter((one) => whole.files.includes(one.file)),
    lost: damaged ? Math.max(lost, 1) : 0,
    copy: damaged
      ? null
      : { id: head.id, salt: head.salt, iterations: head.iterations, key: Promise.resolve(key), next: good, ledger, nextPart: Math.max(-1, ...chunks.keys()) + 1, parts, bytes, begun: true },
  };
}
