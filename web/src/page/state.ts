// The one state of the page, and who wants to hear when a piece of it changes.

import type { ChoicesView, OffersView, OrderView, PapersView, PhotosView, ProofView, Query, Summary } from "../shared/door";
import type { Delivery } from "./demo";
import type { CopyHead, StoreFault } from "./keep/copy-store";
import type { Step } from "./keep/steps";

export type Door = "inspect" | "ship" | "train";

export const PLACES = ["start", "came-in", "trust", "says", "next", "write", "prove", "train"] as const;
export type PlaceName = (typeof PLACES)[number];

/** A file the page holds. Its bytes are read again whenever the inspection is rebuilt. */
export interface HeldFile {
  key: number;
  name: string;
  bytes: Blob;
  /** Found by walking a folder: a file that is no table was not meant to be read. */
  inFolder: boolean;
  invented: boolean;
}

/** A file given to prove a report: no part of the inspection. */
export interface GivenFile {
  name: string;
  bytes: File;
  inFolder: boolean;
}

/** A report that is proved, and what came of it; `null` while that is not known. */
export interface ProvedReport {
  name: string;
  bytes: File;
  proof: ProofView | null;
}

/** A file of the inspection whose bytes were not kept with it, and by what it is known when it comes. */
export interface AwaitedFile {
  file: HeldFile;
  size: number;
  /** "" where nobody could work it out. */
  sha256: string;
}

/** What is being proved. */
export interface Proving {
  reports: ProvedReport[];
  beside: GivenFile[];
  /** From signed paper: 64 digits, or empty. */
  digest: string;
  /** The files beside it came in as results, and may have been meant as such. */
  cameAsResults: boolean;
}

/** Something that went wrong, told as what, where, why and what to do. */
export interface Trouble {
  key: string;
  /** What the next success of goes to show that this is over; "" for what no success undoes. */
  about: string;
  what: string;
  where: string;
  why: string;
  todo: string;
  /** A word of a fixed list, for the diagnostic file. */
  code?: string;
  /** What the program or the browser itself said, for whoever helps. */
  raw?: string;
  /** The program's own fault: a diagnostic file is offered. */
  fault?: boolean;
}

/** Work under way. `total` is null where nobody can know how long it takes. */
export interface Work {
  text: string;
  done: number;
  total: number | null;
  cancel: () => void;
}

export interface State {
  door: Door | null;
  place: PlaceName;
  /** The training delivery that is open. */
  lesson: Delivery | null;
  /** What is looked at in the trainer's room, and the first exercise there without an answer; 0 where none is. */
  room: { view: "home" | "lesson" | "other"; exercise: number };
  version: string;
  /** The language of the page. */
  language: string;
  /** The language reports are written in; "" for that of the page. */
  reportLanguage: string;
  files: HeldFile[];
  /** What a person may say a column, a file or a table is; null until the program has started. */
  choices: ChoicesView | null;
  summary: Summary | null;
  /** What the review lets a person be offered; changes with `summary`. */
  offers: OffersView | null;
  /** The photographs and what they show; changes with `summary`. */
  photos: PhotosView | null;
  /** Reports to be proved; the inspection knows nothing of them. */
  proving: Proving;
  /** Which papers for others there are for a summary; `null` until somebody wants to take some away. */
  papers: { of: Summary; view: PapersView } | null;
  /** The findings whose self-check sheet was taken away or opened. */
  sheetOf: Summary | null;
  work: Work | null;
  troubles: Trouble[];
  /** The last thing that happened, for the status region. */
  event: string;
  initials: string;
  day: string;
  query: Query;
  /** Reading indices in the order shown. */
  order: Uint32Array;
  /** The same with its groups; changes with `order`. */
  found: OrderView;
  selected: number | null;
  /** What this browser keeps of columns changed, or why it cannot. */
  kept: "yes" | "nothing" | "refused";
  /** The undo acts of the last forgetting of remembered columns, by which it can be taken back. */
  forgotten: number[];
  /** Whether there is an earlier inspection to come back to. */
  putBy: boolean;
  /** The door whose files or rule book are being chosen at this moment; it is taken when they come. */
  doorWanted: Door | null;
  /** Whether everything shown has been written to a file since it last changed. */
  written: boolean;
  /** What can be taken back, and what was taken back and can be done again; newest last. */
  steps: Step[];
  undone: Step[];
  /** Files that have to be chosen again. */
  awaited: AwaitedFile[];
  /** When the inspection file was saved that holds all of this; "" where none does. */
  savedAt: string;
  /** The recovery code of this visit; here and nowhere else. */
  code: string;
  /** Whether the person said that they have written it down. */
  codeNoted: boolean;
  /** Whether the inspection stands in its recovery copy; none: nothing to keep, or none is wanted. */
  copy: "none" | "saved" | "unsaved";
  copyFault: StoreFault | "";
  /** Whether the panel of keeping is open. */
  keepOpen: boolean;
  /** Recovery copies that lie in this browser and are not of this visit, newest first. */
  leftovers: CopyHead[];
}

export const ANY_READING: Query = {
  text: "",
  part: "",
  lot_name: "",
  supplier: "",
  sample: "",
  substance: "",
  outcome: "",
  trust: "",
  margin: "",
  lot: -1,
  group: "",
  sort: "worst",
  descending: false,
};

export const NOTHING_FOUND: OrderView = { indices: new Uint32Array(0), starts: new Uint32Array(0), worst: new Uint8Array(0), keys: new Uint32Array(0), outcomes: [] };

export const NOTHING_TO_PROVE: Proving = { reports: [], beside: [], digest: "", cameAsResults: false };

export const state: State = {
  door: null,
  place: "start",
  lesson: null,
  room: { view: "home", exercise: 0 },
  version: "",
  language: "en",
  reportLanguage: "",
  files: [],
  choices: null,
  summary: null,
  offers: null,
  photos: null,
  proving: NOTHING_TO_PROVE,
  papers: null,
  sheetOf: null,
  work: null,
  troubles: [],
  event: "",
  initials: "",
  day: "",
  query: { ...ANY_READING },
  order: new Uint32Array(0),
  found: NOTHING_FOUND,
  selected: null,
  kept: "yes",
  forgotten: [],
  putBy: false,
  doorWanted: null,
  written: true,
  steps: [],
  undone: [],
  awaited: [],
  savedAt: "",
  code: "",
  codeNoted: false,
  copy: "none",
  copyFault: "",
  keepOpen: false,
  leftovers: [],
};

type Key = keyof State;
const listeners: { keys: Set<Key>; hear: () => void }[] = [];

/** Calls `hear` whenever one of `keys` was changed. */
export function watch(keys: Key[], hear: () => void): void {
  listeners.push({ keys: new Set(keys), hear });
}

export function change(patch: Partial<State>): void {
  Object.assign(state, patch);
  const keys = Object.keys(patch) as Key[];
  for (const listener of listeners) {
    if (keys.some((key) => listener.keys.has(key))) listener.hear();
  }
}
