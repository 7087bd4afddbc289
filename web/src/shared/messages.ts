// The messages between the page and its worker. Each carries the generation it belongs to: a worker that was replaced
// may still have answers under way, and those must not be taken for answers about the new inspection.

import type {
  ActAnswer,
  ActInput,
  AheadView,
  ChecksView,
  ChoicesView,
  DetailView,
  ExerciseView,
  IdTemplateView,
  InventedDelivery,
  MappingActs,
  OffersView,
  OrderView,
  PhotoRefusal,
  PhotosView,
  PreviewView,
  Problem,
  ProofView,
  Query,
  RowView,
  PaperFile,
  PapersView,
  ShelfBook,
  SolvedView,
  SourceView,
  Summary,
  WhatIf,
  WhatIfView,
  WrittenFile,
  WorstView,
} from "./door";

/** Every question the page can put, with what it carries. */
export interface Questions {
  start: { module: WebAssembly.Module } | { bytes: Uint8Array };
  open: { name: string; size: number; inFolder: boolean };
  chunk: { bytes: ArrayBuffer };
  finish: object;
  unreadable: { name: string; text: string };
  clear: object;
  settings: { name: string; text: string };
  rule_book: { name: string; text: string };
  mapping: { name: string; text: string };
  history: { name: string; text: string };
  bill: { name: string; bytes: Uint8Array };
  photo: { name: string; sha256: string; mediaType: string; width: number; height: number; copy: Uint8Array };
  remove_photo: { name: string; sha256: string };
  photos: object;
  mapping_acts: { name: string; text: string };
  mapping_text: object;
  kept_mapping: { before: string };
  choices: object;
  id_template: { example: string; named: string[]; ids: string[] };
  preview: { source: number; block: number; rows: number };
  act: { act: ActInput };
  review: object;
  summary: object;
  teach: { tag: string; texts: string };
  speak: { tag: string };
  offers: object;
  order: { query: Query };
  window: { indices: Uint32Array; others: string[] };
  /** Readings as text between tabs; with heads before the first of several pieces. */
  copied: { indices: Uint32Array; columns: string[]; heads: boolean };
  detail: { index: number };
  ahead: { lot: number };
  worst: { lot: number };
  checks: object;
  shelf: object;
  papers: object;
  explained: { book: string };
  export: { file: WrittenFile | PaperFile; tag: string };
  settings_text: object;
  /** Begins a report that is held against what it carries. The inspection is not touched. */
  prove_begin: object;
  /** Begins a file beside it: the bytes that come from now on are its. */
  prove_beside: { name: string };
  prove_push: { bytes: ArrayBuffer };
  /** digest: from signed paper; null where none was typed. */
  prove_end: { digest: string | null };
  /** The trainer's questions touch no inspection. A seed is a whole number in decimal digits, up to 64 bits. */
  what_if: { asked: WhatIf };
  exercises: { lesson: string; seed: string; count: number };
  solved: { lesson: string; seed: string; number: number; answer: string };
  invented_delivery: { seed: string };
  clean_sample: { lotSize: number; taken: number };
  /** Gives up the file being read: the rest of its bytes are not coming. */
  cancel: object;
}

/** The answer to each question. */
export interface Answers {
  start: { kind: "ready"; version: string };
  open: { kind: "ack" };
  chunk: { kind: "ack" };
  finish: { kind: "sources"; views: SourceView[] };
  unreadable: { kind: "ack" };
  clear: { kind: "ack" };
  settings: { kind: "problems"; problems: Problem[] };
  rule_book: { kind: "problems"; problems: Problem[] };
  mapping: { kind: "problems"; problems: Problem[] };
  history: { kind: "problems"; problems: Problem[] };
  bill: { kind: "problems"; problems: Problem[] };
  photo: { kind: "photo"; refused: PhotoRefusal | null };
  remove_photo: { kind: "ack" };
  photos: { kind: "photos"; photos: PhotosView };
  mapping_acts: { kind: "mapping_acts"; found: MappingActs };
  mapping_text: { kind: "mapping_text"; text: string };
  kept_mapping: { kind: "mapping_text"; text: string };
  choices: { kind: "choices"; choices: ChoicesView };
  id_template: { kind: "id_template"; template: IdTemplateView };
  preview: { kind: "preview"; preview: PreviewView };
  act: { kind: "acted"; answer: ActAnswer };
  review: { kind: "summary"; summary: Summary };
  summary: { kind: "summary"; summary: Summary };
  teach: { kind: "ack" };
  speak: { kind: "ack" };
  offers: { kind: "offers"; offers: OffersView };
  order: { kind: "order"; found: OrderView };
  window: { kind: "window"; rows: RowView[] };
  copied: { kind: "copied"; bytes: Uint8Array[] };
  detail: { kind: "detail"; detail: DetailView };
  ahead: { kind: "ahead"; ahead: AheadView };
  worst: { kind: "worst"; worst: WorstView[] };
  checks: { kind: "checks"; checks: ChecksView };
  shelf: { kind: "shelf"; books: ShelfBook[] };
  papers: { kind: "papers"; papers: PapersView };
  explained: { kind: "explained"; lines: string[] };
  export: { kind: "exported"; file: WrittenFile | PaperFile };
  settings_text: { kind: "settings_text"; text: string };
  prove_begin: { kind: "ack" };
  prove_beside: { kind: "ack" };
  prove_push: { kind: "ack" };
  prove_end: { kind: "proof"; proof: ProofView };
  what_if: { kind: "what_if"; view: WhatIfView };
  /** null: the seed is no such number. */
  exercises: { kind: "exercises"; list: ExerciseView[] | null };
  solved: { kind: "solved"; view: SolvedView };
  invented_delivery: { kind: "invented_delivery"; delivery: InventedDelivery | null };
  /** null: more were taken than there are. */
  clean_sample: { kind: "clean_sample"; most: number | null };
  cancel: { kind: "ack" };
}

export type QuestionKind = keyof Questions;

export type ToWorker = {
  [K in QuestionKind]: { gen: number; id: number; kind: K } & Questions[K];
}[QuestionKind];

/** Comes between an export question and its answer, once for each run of bytes. */
export interface Part {
  kind: "part";
  file: WrittenFile | PaperFile;
  bytes: Uint8Array;
}

/** The instance is dead and will not be called again. */
export interface Crash {
  kind: "crashed";
  step: QuestionKind;
  text: string;
}

export type FromWorker = { gen: number; id: number } & (Answers[QuestionKind] | Part | Crash);
