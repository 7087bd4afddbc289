// The inspection file, written when a person asks for it and opened like any other file: crates/core/contract.md has its form.
// Every part is squeezed and held against a digest by itself, so that damage is found and named by the part it is in.

import { demoDeliveries } from "../demo";
import { freshKey } from "../reading";
import { state, type AwaitedFile, type HeldFile } from "../state";
import { LARGEST_FILE, wholeNow } from "./copy";
import { bytesDigest } from "../digest";
import { Ledger, NotPlain, count, list, object, text, type FilePlain, type Whole } from "./whole";

const FAMILY = "plumbline.inspection/";
const VERSION = 1;
const SCHEMA = `${FAMILY}${VERSION}`;
/** The first line, and the second with how long the list of parts is and its digest: both short. */
const LEAD = 256;
/** No list of parts is longer: what says so is damaged. */
const LONGEST_LIST = 64 * 1024 * 1024;
/** What a part may come to when it is unpacked: the largest file kept, with room for the head. Sizes that are stated may lie. */
const LARGEST_PART = 4 * LARGEST_FILE;

interface Part {
  /** Bytes in the file. */
  stored: number;
  /** Bytes when unpacked. */
  size: number;
  sha256: string;
}

const utf8 = new TextEncoder();

async function squeezed(bytes: Blob): Promise<Blob> {
  return new Response(bytes.stream().pipeThrough(new CompressionStream("deflate-raw"))).blob();
}

/** Unpacks, and stops where more comes out than was stated. */
async function unsqueezed(bytes: Blob, size: number): Promise<Uint8Array<ArrayBuffer> | null> {
  if (size > LARGEST_PART) return null;
  const out = new Uint8Array(size);
  let at = 0;
  try {
    const reader = bytes.stream().pipeThrough(new DecompressionStream("deflate-raw")).getReader();
    for (;;) {
      const { done, value } = await reader.read();
      if (done) break;
      if (at + value.length > size) {
        await reader.cancel();
        return null;
      }
      out.set(value, at);
      at += value.length;
    }
  } catch {
    return null;
  }
  return at === size ? out : null;
}

// ---- writing ----

/** The inspection at hand as a file. Files over the bound go in by name, size and digest. */
export async function inspectionFile(digestOf: (file: HeldFile) => Promise<string>): Promise<Blob> {
  const whole = wholeNow();
  const bodies: Blob[] = [];
  const parts: Part[] = [];
  const addPart = async (bytes: Blob): Promise<{ number: number; sha256: string }> => {
    const sha256 = await bytesDigest(await bytes.arrayBuffer());
    const stored = await squeezed(bytes);
    bodies.push(stored);
    parts.push({ stored: stored.size, size: bytes.size, sha256 });
    return { number: parts.length, sha256 };
  };
  const plain = new Map<HeldFile, FilePlain>();
  const ledger = new Ledger();
  for (const file of ledger.unknownFiles(whole)) {
    const awaited = state.awaited.find((one) => one.file === file);
    const about = { name: file.name, size: awaited?.size ?? file.bytes.size, in_folder: file.inFolder, invented: file.invented };
    // A file that can't be read any more (a stick pulled) is told by what is known of it.
    const part = awaited !== undefined || file.bytes.size > LARGEST_FILE ? null : await addPart(file.bytes).catch(() => null);
    plain.set(file, { ...about, sha256: part?.sha256 ?? awaited?.sha256 ?? (await digestOf(file).catch(() => "")), part: part?.number ?? null });
  }
  const inside: Uint8Array[] = [];
  const first = parts.length + 1;
  const changes = ledger.changes(whole, (file) => plain.get(file) as FilePlain, (bytes) => first + inside.push(bytes) - 1);
  for (const bytes of inside) await addPart(new Blob([bytes as Uint8Array<ArrayBuffer>]));
  const head = new Blob([JSON.stringify({ schema: SCHEMA, program: state.version, acts: state.summary?.acts.length ?? null, ...changes?.record })]);
  const headStored = await squeezed(head);
  const listed: Part[] = [{ stored: headStored.size, size: head.size, sha256: await bytesDigest(await head.arrayBuffer()) }, ...parts];
  const listText = utf8.encode(`${JSON.stringify({ parts: listed })}\n`);
  const lead = `${SCHEMA}\n${listText.length} ${await bytesDigest(listText)}\n`;
  return new Blob([lead, listText, headStored, ...bodies], { type: "application/octet-stream" });
}

// ---- opening ----

/** Whether it is an inspection file, of whatever version, whatever it is called. */
export async function isInspectionFile(file: Blob): Promise<boolean> {
  return (await file.slice(0, FAMILY.length).text()) === FAMILY;
}

/** Why a file could not be opened: newer (its version), damaged (which part: "list", "head", or a name), foreign (not what this program writes). */
export class NotOpened extends Error {
  constructor(
    readonly why: "newer" | "damaged" | "foreign",
    readonly part: string,
  ) {
    super(`${why}: ${part}`);
  }
}

export interface OpenedFile {
  whole: Whole;
  awaited: AwaitedFile[];
  /** The digest of every file in it, by the file. */
  digests: Map<HeldFile, string>;
  /** How many acts it had; null where nobody had counted. */
  acts: number | null;
}

export async function openedInspection(file: Blob): Promise<OpenedFile> {
  const start = await file.slice(0, LEAD).text();
  const [schema = "", second = ""] = start.split("\n", 2);
  const version = /^\/?(\d+)$/.exec(schema.slice(FAMILY.length))?.[1];
  if (version === undefined) throw new NotOpened("damaged", "list");
  if (Number(version) !== VERSION) throw new NotOpened("newer", schema);
  const lead = /^(\d{1,12}) ([0-9a-f]{64})$/.exec(second);
  const from = schema.length + second.length + 2;
  const length = Number(lead?.[1] ?? 0);
  if (lead === null || length > LONGEST_LIST) throw new NotOpened("damaged", "list");
  const listBytes = new Uint8Array(await file.slice(from, from + length).arrayBuffer());
  if ((await bytesDigest(listBytes)) !== lead[2]) throw new NotOpened("damaged", "list");
  try {
    return await openedParts(file, from + length, listBytes);
  } catch (error) {
    // The digests are right, so it was written like this, and not by this program.
    if (error instanceof NotPlain || error instanceof SyntaxError) throw new NotOpened("foreign", error.message);
    throw error;
  }
}

async function openedParts(file: Blob, from: number, listBytes: Uint8Array<ArrayBuffer>): Promise<OpenedFile> {
  let at = from;
  const parts = list(object(JSON.parse(new TextDecoder().decode(listBytes)))["parts"]).map((one): Part & { at: number } => {
    const plain = object(one);
    const part = { stored: count(plain["stored"]), size: count(plain["size"]), sha256: text(plain["sha256"]), at };
    at += part.stored;
    return part;
  });
  const unpacked = async (number: number, name: string): Promise<Uint8Array<ArrayBuffer>> => {
    const part = parts[number];
    if (part === undefined) throw new NotPlain(`part ${number}`);
    const bytes = await unsqueezed(file.slice(part.at, part.at + part.stored), part.size);
    if (bytes === null || (await bytesDigest(bytes)) !== part.sha256) throw new NotOpened("damaged", name);
    return bytes;
  };
  const head = object(JSON.parse(new TextDecoder().decode(await unpacked(0, "head"))));
  // All parts are unpacked and checked before any is used.
  const bytes = new Map<number, Uint8Array<ArrayBuffer>>();
  for (const plain of [...list(head["filed"]), ...list(head["givens"])].map(object)) {
    if (typeof plain["part"] === "number") bytes.set(plain["part"], await unpacked(plain["part"], text(plain["name"])));
  }
  const bytesOf = (part: number): Uint8Array<ArrayBuffer> => {
    const found = bytes.get(part);
    if (found === undefined) throw new NotPlain(`part ${part}`);
    return found;
  };
  const awaited: AwaitedFile[] = [];
  const digests = new Map<HeldFile, string>();
  const ledger = new Ledger();
  ledger.apply(head, bytesOf, (plain) => {
    const held: HeldFile = { key: freshKey(), name: plain.name, bytes: new Blob(plain.part === null ? [] : [bytesOf(plain.part)]), inFolder: plain.in_folder, invented: plain.invented };
    digests.set(held, plain.sha256);
    if (plain.part === null) awaited.push({ file: held, size: plain.size, sha256: plain.sha256 });
    return held;
  });
  const whole = ledger.whole();
  return { whole, awaited: awaited.filter((one) => whole.files.includes(one.file)), digests, acts: typeof head["acts"] === "number" ? head["acts"] : null };
}

/** The training delivery of this folder. */
export async function lessonOf(folder: string): Promise<Awaited<ReturnType<typeof demoDeliveries>>[number] | null> {
  return folder === "" ? null : ((await demoDeliveries()).find((one) => one.folder === folder) ?? null);
}

