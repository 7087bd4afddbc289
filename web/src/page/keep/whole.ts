// A whole inspection as plain data: what a recovery copy and an inspection file hold of it. Both are lists of changes: each
// record says what is new since the one before, and the record of a file says everything at once.

import type { ActInput } from "../../shared/door";
import type { Given } from "../instance";
import type { Door, HeldFile, PlaceName } from "../state";
import type { Placed, Said, Step } from "./steps";

/** What else a person would miss. */
export interface About {
  door: Door | null;
  /** The folder of the training delivery; "" for none. */
  lesson: string;
  initials: string;
  day: string;
  place: PlaceName;
  /** Whether all that is shown was written to a file that was taken away. */
  written: boolean;
}

export interface Whole {
  given: Given[];
  files: HeldFile[];
  steps: Step[];
  undone: Step[];
  about: About;
}

/** A file as it is told; its bytes are elsewhere, or nowhere. */
export interface FilePlain {
  name: string;
  size: number;
  /** Of its bytes; "" where a copy keeps them and needs none, or where nobody could work it out. */
  sha256: string;
  in_folder: boolean;
  invented: boolean;
  /** By which number its bytes are found; null where only this is kept of it. */
  part: number | null;
}

/** The first `keep` stay, and these come behind them. */
interface Change<T> {
  keep: number;
  push: T[];
}

type GivenPlain =
  | { kind: "settings" | "rule_book" | "mapping" | "history"; name: string; text: string }
  | { kind: "bill"; name: string; part: number }
  | { kind: "photo"; name: string; sha256: string; media_type: string; width: number; height: number; part: number }
  | { kind: "act"; act: ActInput };

interface StepPlain {
  said: Said | null;
  acts: number[];
  undone_by: number[];
  files_in: number[];
  files_out: number[];
  given_in: [number, number][];
  given_out: [number, number][];
}

export interface Changes {
  /** What was given and was not known before; numbered from 0 through all records. */
  givens: GivenPlain[];
  /** The same for files. */
  filed: FilePlain[];
  /** By number: what counts, in its order. */
  given?: Change<number>;
  files?: Change<number>;
  steps?: Change<StepPlain>;
  undone?: Change<StepPlain>;
  about?: About;
}

/** It is not what this program writes. */
export class NotPlain extends Error {}

function changeOf<T>(old: T[], now: T[]): Change<T> | null {
  let keep = 0;
  while (keep < old.length && keep < now.length && old[keep] === now[keep]) keep += 1;
  return keep === old.length && keep === now.length ? null : { keep, push: now.slice(keep) };
}

/** What was told so far: to say only what is new, and to understand what only says what is new. */
export class Ledger {
  private readonly givens: Given[] = [];
  private readonly filed: HeldFile[] = [];
  private readonly numberOf = new Map<Given | HeldFile, number>();
  private given: Given[] = [];
  private files: HeldFile[] = [];
  private steps: Step[] = [];
  private undone: Step[] = [];
  private about = "";

  /** Files of which it was not told yet. */
  unknownFiles(whole: Whole): HeldFile[] {
    const inSteps = [...whole.steps, ...whole.undone].flatMap((step) => [...step.filesIn, ...step.filesOut]);
    return [...new Set([...whole.files, ...inSteps])].filter((file) => !this.numberOf.has(file));
  }

  /**
   * What is new; null where nothing is. `commit` takes note that it was told: what could not be written is told again.
   * `part` takes bytes and gives the number by which they are found again.
   */
  changes(whole: Whole, fileAs: (file: HeldFile) => FilePlain, part: (bytes: Uint8Array) => number): { record: Changes; commit: () => void } | null {
    const steps = changeOf(this.steps, whole.steps);
    const undone = changeOf(this.undone, whole.undone);
    const inSteps = [...(steps?.push ?? []), ...(undone?.push ?? [])].flatMap((step) => [...step.givenIn, ...step.givenOut]).map((placed) => placed.given);
    const newGivens = [...new Set([...whole.given, ...inSteps])].filter((given) => !this.numberOf.has(given));
    const newFiles = this.unknownFiles(whole);
    const numbers = new Map<Given | HeldFile, number>();
    newGivens.forEach((given, at) => numbers.set(given, this.givens.length + at));
    newFiles.forEach((file, at) => numbers.set(file, this.filed.length + at));
    const number = (one: Given | HeldFile): number => numbers.get(one) ?? this.numberOf.get(one) ?? -1;
    const placed = (some: Placed[]): [number, number][] => some.map(({ at, given }) => [at, number(given)]);
    const plainStep = (step: Step): StepPlain => ({
      said: step.said,
      acts: step.acts,
      undone_by: step.undoneBy,
      files_in: step.filesIn.map(number),
      files_out: step.filesOut.map(number),
      given_in: placed(step.givenIn),
      given_out: placed(step.givenOut),
    });
    const given = changeOf(this.given, whole.given);
    const files = changeOf(this.files, whole.files);
    const about = JSON.stringify(whole.about);
    if (newGivens.length + newFiles.length === 0 && given === null && files === null && steps === null && undone === null && about === this.about) return null;
    const record: Changes = { givens: newGivens.map((one) => givenPlain(one, part)), filed: newFiles.map(fileAs) };
    if (given !== null) record.given = { keep: given.keep, push: given.push.map(number) };
    if (files !== null) record.files = { keep: files.keep, push: files.push.map(number) };
    if (steps !== null) record.steps = { keep: steps.keep, push: steps.push.map(plainStep) };
    if (undone !== null) record.undone = { keep: undone.keep, push: undone.push.map(plainStep) };
    if (about !== this.about) record.about = whole.about;
    const commit = (): void => {
      for (const [one, at] of numbers) this.numberOf.set(one, at);
      this.givens.push(...newGivens);
      this.filed.push(...newFiles);
      this.given = [...whole.given];
      this.files = [...whole.files];
      this.steps = [...whole.steps];
      this.undone = [...whole.undone];
      this.about = about;
    };
    return { record, commit };
  }

  /** Takes what was told. `part` gives the bytes of this number, `file` makes a file of what is told of it. */
  apply(record: unknown, part: (number: number) => Uint8Array, file: (plain: FilePlain) => HeldFile): void {
    const told = object(record);
    for (const plain of list(told["givens"])) {
      const given = givenOf(plain, part);
      this.numberOf.set(given, this.givens.length);
      this.givens.push(given);
    }
    for (const plain of list(told["filed"])) {
      const made = file(fileOf(plain));
      this.numberOf.set(made, this.filed.length);
      this.filed.push(made);
    }
    this.given = changed(this.given, told["given"], (one) => this.oneOf(this.givens, one));
    this.files = changed(this.files, told["files"], (one) => this.oneOf(this.filed, one));
    const step = (one: unknown): Step => this.stepOf(object(one));
    this.steps = changed(this.steps, told["steps"], step);
    this.undone = changed(this.undone, told["undone"], step);
    if (told["about"] !== undefined) this.about = JSON.stringify(aboutOf(object(told["about"])));
  }

  whole(): Whole {
    const about = this.about === "" ? aboutOf({}) : aboutOf(object(JSON.parse(this.about)));
    return { given: [...this.given], files: [...this.files], steps: [...this.steps], undone: [...this.undone], about };
  }

  private oneOf<T>(all: T[], at: unknown): T {
    const one = all[count(at)];
    if (one === undefined) throw new NotPlain(`number ${String(at)}`);
    return one;
  }

  private stepOf(plain: Record<string, unknown>): Step {
    const placed = (some: unknown): Placed[] =>
      list(some).map((pair) => {
        const [at, given] = list(pair);
        return { at: count(at), given: this.oneOf(this.givens, given) };
      });
    const files = (some: unknown): HeldFile[] => list(some).map((at) => this.oneOf(this.filed, at));
    return {
      said: plain["said"] === null ? null : saidOf(object(plain["said"])),
      acts: list(plain["acts"]).map(count),
      undoneBy: list(plain["undone_by"]).map(count),
      filesIn: files(plain["files_in"]),
      filesOut: files(plain["files_out"]),
      givenIn: placed(plain["given_in"]),
      givenOut: placed(plain["given_out"]),
    };
  }
}

function changed<T>(old: T[], told: unknown, one: (plain: unknown) => T): T[] {
  if (told === undefined) return old;
  const change = object(told);
  return [...old.slice(0, count(change["keep"])), ...list(change["push"]).map(one)];
}

function givenPlain(given: Given, part: (bytes: Uint8Array) => number): GivenPlain {
  switch (given.kind) {
    case "bill":
      return { kind: given.kind, name: given.name, part: part(given.bytes) };
    case "photo": {
      const { sha256, mediaType, width, height, bytes } = given.copy;
      return { kind: given.kind, name: given.name, sha256, media_type: mediaType, width, height, part: part(bytes) };
    }
    case "act":
      return { kind: given.kind, act: given.act };
    default:
      return { kind: given.kind, name: given.name, text: given.text };
  }
}

// ---- reading what may have been written by anybody ----

export function object(value: unknown): Record<string, unknown> {
  if (typeof value !== "object" || value === null || Array.isArray(value)) throw new NotPlain("an object");
  return value as Record<string, unknown>;
}

export function list(value: unknown): unknown[] {
  if (!Array.isArray(value)) throw new NotPlain("a list");
  return value;
}

export function text(value: unknown): string {
  if (typeof value !== "string") throw new NotPlain("a text");
  return value;
}

export function count(value: unknown): number {
  if (typeof value !== "number" || !Number.isSafeInteger(value) || value < 0) throw new NotPlain("a number");
  return value;
}

function givenOf(value: unknown, part: (number: number) => Uint8Array): Given {
  const plain = object(value);
  const kind = text(plain["kind"]);
  if (kind === "act") {
    const act = object(plain["act"]);
    return { kind, act: { kind: text(act["kind"]), target: text(act["target"]), value: text(act["value"]), by: text(act["by"]), at: text(act["at"]), note: text(act["note"]) } };
  }
  const name = text(plain["name"]);
  if (kind === "bill") return { kind, name, bytes: part(count(plain["part"])) };
  if (kind === "photo") {
    const copy = { sha256: text(plain["sha256"]), mediaType: text(plain["media_type"]), width: count(plain["width"]), height: count(plain["height"]), bytes: part(count(plain["part"])) };
    return { kind, name, copy };
  }
  if (kind === "settings" || kind === "rule_book" || kind === "mapping" || kind === "history") return { kind, name, text: text(plain["text"]) };
  throw new NotPlain(kind);
}

function fileOf(value: unknown): FilePlain {
  const plain = object(value);
  return { name: text(plain["name"]), size: count(plain["size"]), sha256: text(plain["sha256"]), in_folder: plain["in_folder"] === true, invented: plain["invented"] === true, part: plain["part"] === null ? null : count(plain["part"]) };
}

function saidOf(plain: Record<string, unknown>): Said {
  const given: Said["given"] = {};
  for (const [name, value] of Object.entries(object(plain["given"]))) given[name] = typeof value === "number" ? value : text(value);
  return { key: text(plain["key"]), given };
}

const DOORS: readonly Door[] = ["inspect", "ship", "train"];
const PLACES_KEPT: readonly PlaceName[] = ["start", "came-in", "trust", "says", "next", "write"];

function aboutOf(plain: Record<string, unknown>): About {
  const or = (value: unknown): string => (typeof value === "string" ? value : "");
  return {
    door: DOORS.find((door) => door === plain["door"]) ?? null,
    lesson: or(plain["lesson"]),
    initials: or(plain["initials"]),
    day: or(plain["day"]),
    place: PLACES_KEPT.find((place) => place === plain["place"]) ?? "came-in",
    written: plain["written"] === true,
  };
}

// ---- a record with its bytes ----

const utf8 = new TextEncoder();

/** A length, that many bytes of JSON, and the parts it names behind it. */
export function packed(record: Changes, parts: Uint8Array[]): Uint8Array<ArrayBuffer> {
  const json = utf8.encode(JSON.stringify({ record, sizes: parts.map((part) => part.length) }));
  const bytes = new Uint8Array(4 + json.length + parts.reduce((sum, part) => sum + part.length, 0));
  new DataView(bytes.buffer).setUint32(0, json.length);
  bytes.set(json, 4);
  let at = 4 + json.length;
  for (const part of parts) {
    bytes.set(part, at);
    at += part.length;
  }
  return bytes;
}

export function unpacked(bytes: Uint8Array): { record: unknown; part: (number: number) => Uint8Array } {
  const length = new DataView(bytes.buffer, bytes.byteOffset).getUint32(0);
  const told = object(JSON.parse(new TextDecoder().decode(bytes.subarray(4, 4 + length))));
  const sizes = list(told["sizes"]).map(count);
  let at = 4 + length;
  const parts = sizes.map((size) => {
    const part = bytes.slice(at, at + size);
    at += size;
    return part;
  });
  return {
    record: told["record"],
    part: (number) => {
      const part = parts[number];
      if (part === undefined) throw new NotPlain(`part ${number}`);
      return part;
    },
  };
}
