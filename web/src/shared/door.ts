// What the wasm door gives and takes, as crates/wasm declares it. The page shows these views; it never works one out itself.

export interface NoticeView {
  line: number | null;
  column: number | null;
  heading: string | null;
  code: string;
  text: string;
  remedy: string;
  rows: number;
}

export type Confidence = "sure" | "likely" | "look";

export interface ColumnView {
  column: number;
  heading: string;
  role: string;
  role_text: string;
  /** The role as a mapping file writes it. */
  role_words: string;
  element: string | null;
  /** The oxide its numbers are mass fractions of, where they are no mass fractions of the element. */
  oxide: string | null;
  unit: string | null;
  /** Percent of the value itself. */
  relative: boolean;
  sigma_multiple: string | null;
  confidence: Confidence;
  confidence_text: string;
  /** A code; `why` says it in words. */
  evidence: string;
  why: string;
}

/** A table in a file, with every line its headings stand on. */
export interface BlockView {
  index: number;
  headers: number;
  /** The first few. */
  header_lines: number[];
  fingerprint: string;
  layout: string;
  layout_text: string;
  /** The unit for values whose column states none. */
  set_unit: string | null;
  stated_multiple: string | null;
  decimal_mark: string | null;
  columns: ColumnView[];
}

/** The archive a file was packed in. */
export interface ContainerView {
  name: string;
  sha256: string;
  bytes: number;
}

export interface SheetView {
  name: string;
  hidden: boolean;
  rows: number;
  columns: number;
  element_columns: number;
  read: boolean;
  /** It promises a table that was not read, and nobody said that it is not wanted. */
  passed_over: boolean;
}

/** A line above the table. */
export interface StatedView {
  line: number;
  key: string;
  value: string;
  used_as: string | null;
  used_text: string;
}

export interface PreviewRow {
  /** Null in a table on its side, where a row shown is a column of the file. */
  line: number | null;
  cells: string[];
}

/** What stands in a column, as far as its rows were kept for looking at. */
export interface CellsView {
  numbers: number;
  /** As written; empty where there is no number. */
  lowest: string;
  highest: string;
  /** Numbers whose comma or point may be either mark. */
  unclear: string[];
  examples: string[];
}

export interface PreviewView {
  rows: PreviewRow[];
  rows_kept: number;
  columns: CellsView[];
}

export interface RoleChoice {
  code: string;
  text: string;
  group: string;
}

/** What a person may say a column, a file or a table is. */
export interface ChoicesView {
  roles: RoleChoice[];
  /** Those of the limits first. */
  elements: string[];
  oxides: string[];
  units: string[];
  multiples: string[];
  encodings: string[];
}

/** How an id is cut; null where the template doesn't fit it without a guess. */
export interface IdCut {
  id: string;
  pieces: { role_text: string; piece: string }[] | null;
}

export interface IdTemplateView {
  /** The example, cut at every separator. */
  pieces: string[];
  /** Empty where the pieces named make no template. */
  pattern: string;
  problem: string;
  cuts: IdCut[];
}

export interface MappingActs {
  acts: ActInput[];
  problems: Problem[];
}

export interface NeedView {
  code: string;
  text: string;
  /** How many readings it is about; 0 where it isn't counted. */
  count: number;
}

export interface SourceView {
  index: number;
  name: string;
  sha256: string;
  bytes: number;
  read: boolean;
  problem: string | null;
  problem_code: string | null;
  rows_in: number;
  rows_used: number;
  rows_check: number;
  rows_duplicate: number;
  rows_set_aside: number;
  rows_refused: number;
  readings: number;
  set_aside: { reason: string; rows: number }[];
  refusals: NoticeView[];
  refusals_left_out: number;
  notices: NoticeView[];
  notices_left_out: number;
  container: ContainerView | null;
  /** Empty for a workbook. */
  encoding: string;
  encoding_known_by: string;
  encoding_text: string;
  sheets: SheetView[];
  stated: StatedView[];
  blocks: BlockView[];
  blocks_left_out: number;
  needs: NeedView[];
}

export interface ReasonView {
  code: string;
  kind: "outcome" | "evidence";
  /** What it does to the disposition; "accept" for one that is only printed. */
  effect: Disposition;
  /** The substance, halogen or name it is about; empty where none. */
  about: string;
  /** Whether two people may lift it. */
  liftable: boolean;
  text: string;
  remedy: string;
}

export type Disposition = "accept" | "hold" | "not_accept";

export interface LotView {
  index: number;
  lot: string | null;
  supplier: string | null;
  source: string | null;
  disposition: Disposition;
  disposition_text: string;
  readings: number;
  materials: number;
  reasons: ReasonView[];
  not_assessed: string[];
}

export interface OutcomeMark {
  substance: string;
  outcome: string;
  short: string;
  text: string;
}

export interface MaterialView {
  index: number;
  lot_index: number;
  part: string | null;
  material: string | null;
  lot: string | null;
  supplier: string | null;
  class: string;
  class_text: string;
  disposition: Disposition;
  disposition_text: string;
  readings: number;
  outcomes: OutcomeMark[];
  reasons: ReasonView[];
}

export interface PartView {
  part: string | null;
  lot: string | null;
  lot_index: number;
  disposition: Disposition;
  disposition_text: string;
  reasons: ReasonView[];
}

export interface RuleBookView {
  id: string;
  title: string;
  edition: string;
  sha256: string;
  source: string;
  confidence: string;
  /** It holds halogen limits, so an inspection may name it for them. */
  has_halogens: boolean;
}

export interface RowTotals {
  rows_in: number;
  rows_used: number;
  rows_check: number;
  rows_duplicate: number;
  rows_set_aside: number;
  rows_refused: number;
}

export interface OutcomeCount {
  outcome: string;
  short: string;
  text: string;
  count: number;
}

export interface Summary {
  program: { name: string; version: string };
  rule_books: RuleBookView[];
  readings: number;
  totals: RowTotals;
  adds_up: boolean;
  /** How many readings and lots, and how the lots stand. */
  line_counts: string;
  /** What the readings say. */
  line_says: string;
  /** What evidence is missing for an accept. */
  line_evidence: string;
  outcome_counts: { substance: string; counts: OutcomeCount[] }[];
  /** Code and words of what the checks may say of a reading, from worst to best. */
  trusts: [string, string][];
  sources: SourceView[];
  lots: LotView[];
  /** The first 2000. */
  parts: PartView[];
  parts_total: number;
  /** The first 2000. */
  materials: MaterialView[];
  materials_total: number;
  acts: ActView[];
  cautions: string[];
  /** In the order of their days. */
  expiries: ExpiryView[];
  /** Symbols of elements that some file has a column for and that no outcome speaks of. */
  other_elements: string[];
}

/** A day on which an exemption expires that something here rests on, or may. */
export interface ExpiryView {
  day: string;
  /** The day as the language writes it. */
  day_text: string;
  claimed: boolean;
  text: string;
}

// ---- What a person can be offered (crates/wasm/src/offers.rs) ----

/** A book of limits that the inspection may go by. */
export interface BookOffer {
  id: string;
  title: string;
  /** Edition and days; how its values are known and what it holds; its digest. Empty for a book that isn't here. */
  about: string[];
  /** Something in it is from memory. */
  from_memory: boolean;
  note: string;
  named: boolean;
  /** Its file was loaded: it counts whether it is named or not. */
  loaded: boolean;
  problem: "" | "not_loaded" | "differs";
  /** What a person has to answer before a limit is known to apply, row by row. */
  questions: { row: string; text: string }[];
}

export interface CodeText {
  code: string;
  text: string;
}

/** One row of the exemptions in force: an entry has one for each set of product categories. */
export interface ExemptionView {
  entry: string;
  substance: string;
  scope: string;
  limit: string;
  /** Codes of the categories it covers, "all", or empty where they were not found. */
  categories: string;
  from: string | null;
  expires: string | null;
  found: boolean;
  not_filed: boolean;
  /** Asks whether a child could mouth the part. */
  starred: boolean;
  groups: CodeText[];
  source: string;
  confidence: string;
  from_memory: boolean;
  note: string;
}

/** An entry that nobody claimed and that may cover. */
export interface EntryOffer {
  /** Index in `exemptions`. */
  row: number;
  number: string;
  exceeded: boolean;
  questions: string[];
}

/** A substance that is over limit or undecided, with the entries that may cover it. */
export interface SubstanceOffer {
  substance: string;
  /** A reading is over limit; else one is undecided. */
  over: boolean;
  text: string;
  entries: EntryOffer[];
}

export interface ClaimView {
  entry: string;
  substance: string;
  /** Index in `exemptions`; null where no book has the entry. */
  row: number | null;
  group: string;
  evidence: string;
  by: string;
  second: string;
  state: "covered" | "open" | "exceeded" | "expired" | "not_covered" | "not_needed";
  state_text: string;
  number: string;
  /** What is still open, or why it can't cover. */
  why: CodeText[];
}

/** A result for chromium(VI) by area; empty where no book judges it. */
export interface Cr6View {
  result: string;
  text: string;
}

/** A material, whatever its lots, with what may be said of it. */
export interface MaterialOffer {
  part: string | null;
  material: string | null;
  classes: string[];
  substances: SubstanceOffer[];
  claims: ClaimView[];
  /** A metal or a layer whose chromium is open: a result by area may settle it. */
  cr6_open: boolean;
  cr6: Cr6View[];
}

/** A row for the site's table, worked out from repeats of a check sample. */
export interface SiteOffer {
  /** The value of the act that takes it over. */
  value: string;
  sample: string;
  instrument: string | null;
  element: string;
  class: string;
  class_text: string;
  readings: number;
  /** How many of them are records of the history. */
  earlier: number;
  mean: string;
  sigma: string;
  seconds: string | null;
  /** The mean lies near the limit. */
  near: boolean;
}

/** A bill of materials learned from an accepted lot, and the act that takes it over. */
export interface BillOffer {
  part: string;
  supplier: string;
  lot: string;
  day: string;
  materials: string[];
  target: string;
  value: string;
}

export interface OffersView {
  books: BookOffer[];
  exemptions: ExemptionView[];
  /** How the number of an exemption is decided. */
  guard: string;
  /** The first 300. */
  materials: MaterialOffer[];
  materials_left_out: number;
  site_rows: SiteOffer[];
  /** Bills of materials as earlier accepted lots had them. */
  bills: BillOffer[];
}

// ---- Readings ----

/** What the table shows: flat, so that it can stand in an address. "" is "any" everywhere. */
export interface Query {
  /** Words, each part of any text that names the reading, or of the file's name. */
  text: string;
  part: string;
  lot_name: string;
  supplier: string;
  /** Of sample, unit or spot. */
  sample: string;
  /** "" for any, else a symbol or "total". */
  substance: string;
  /** "" for any, an outcome code, or "open". */
  outcome: string;
  /** "" for any, or a trust's code. */
  trust: string;
  /** How many sigmas, 0.1 to 5, a value may lie from an edge of its band or from its limit. */
  margin: string;
  /** -1 for any. */
  lot: number;
  /** "part", "lot" or "supplier"; "" for no groups. */
  group: string;
  sort: string;
  descending: boolean;
}

/** The readings that answer a query. Without groups, the arrays of groups are empty. */
export interface OrderView {
  /** Readings in the order shown, groups one after the other. */
  indices: Uint32Array;
  /** Where each group begins among them. */
  starts: Uint32Array;
  /** The worst outcome in each, as a place in `outcomes`. */
  worst: Uint8Array;
  /** What tells each from the others: the lot, where the groups are lots; 4294967295 for readings that are in none. */
  keys: Uint32Array;
  outcomes: OutcomeMark[];
}

/** The ruler of an outcome as positions, per mille along the strip from left to right. */
export interface StripView {
  /** "bob" for a value, "below" or "above" for a bound, "between" for a sum that is known from end to end. */
  mark: string;
  at: number;
  /** The upper end of "between"; else the same as `at`. */
  until: number;
  /** The ends of the whiskers of three sigma; of a bound, how far it points. */
  from: number;
  to: number;
  low: number;
  high: number;
  /** The band is open upwards. */
  open: boolean;
  /** What is drawn goes on beyond this end of the scale. */
  cut_left: boolean;
  cut_right: boolean;
}

export interface CellView {
  substance: string;
  outcome: string;
  short: string;
  text: string;
  value: string;
  reason: string;
  /** null where there is no number, or no band. */
  strip: StripView | null;
}

export interface RowView {
  index: number;
  source: string;
  line: number;
  id: string | null;
  unit: string | null;
  spot: string | null;
  part: string | null;
  material: string | null;
  lot: string | null;
  supplier: string | null;
  class: string;
  class_text: string;
  class_from: string;
  /** That of its worst element; "check" for a check reading, "aside" for one that a person set aside. */
  trust: string;
  trust_text: string;
  /** Cd Pb Hg Cr Br, in that order. */
  cells: CellView[];
  /** Cl Br total, in that order. */
  halogens: CellView[];
  /** What stands under the other elements that were asked for, in their order; "" where there is no column. */
  others: string[];
}

/** One step of the working: its kind heads it. */
export interface StepView {
  kind: string;
  text: string;
}

export interface RuleSaysView {
  rule: string;
  /** A statement code; `text` says it in words. */
  statement: string;
  text: string;
  risk: string;
}

/** The chance that the true value lies within the legal limit, and what other decision rules would say. */
export interface ChancesView {
  within: string;
  /** What the chance leaves out; empty where it counts everything. */
  counts: string;
  rules: RuleSaysView[];
}

export interface FindingView {
  substance: string;
  name: string;
  outcome: string;
  short: string;
  text: string;
  reason_text: string;
  next_step: string;
  /** The figure as SVG text, drawn by the core. */
  ruler: string;
  /** What physics makes doubtful. */
  cautions: string[];
  steps: StepView[];
  chances: ChancesView | null;
}

export interface CompositionView {
  text: string;
  /** It contradicts the class that was stated, or the measuring mode. */
  doubtful: boolean;
  /** A class code, where the class is open; empty where there is nothing to take over. */
  suggests: string;
  suggests_text: string;
}

export interface RepeatReading {
  index: number;
  id: string | null;
  line: number;
}

export interface RepeatedView {
  element: string;
  /** A code of how the repeats were put together; `text` says it in words. */
  how: string;
  /** What is judged; empty where each repeat stands for itself. */
  value: string;
  text: string;
}

export interface RepeatsView {
  readings: RepeatReading[];
  elements: RepeatedView[];
}

export interface DetailView {
  row: RowView;
  lot_index: number;
  instrument: string | null;
  time: string | null;
  seconds: string | null;
  composition: CompositionView | null;
  findings: FindingView[];
  /** The limits of the books that are named or loaded: `substance` is the row, `name` the book. */
  limits: FindingView[];
  repeats: RepeatsView | null;
  other_elements: { symbol: string; text: string }[];
}

export interface StatementCount {
  text: string;
  readings: number;
}

export interface RuleRow {
  rule: string;
  within: number;
  between: StatementCount[];
  beyond: number;
}

export interface RulesTable {
  substance: string;
  name: string;
  /** In mg/kg, as text. */
  limit: string;
  rows: RuleRow[];
  not_applicable: number;
}

export interface SpotsView {
  element: string;
  differ: boolean;
  text: string;
}

/** An exemption that may cover a material, and that nobody claimed. */
export interface CandidateView {
  substance: string;
  entry: string;
  scope: string;
  bound: string;
  number: string;
  confidence: string;
  questions: string[];
}

export interface MaterialAhead {
  part: string | null;
  material: string | null;
  class_text: string;
  spots: SpotsView[];
  candidates: CandidateView[];
}

/** The reading that shows the worst of a material for a substance, with its ruler. */
export interface WorstView {
  /** MaterialView.index. */
  material: number;
  substance: string;
  /** Value and name of the reading. */
  value: string;
  strip: StripView;
}

/** What the sampling plan of a lot asks for and proves. */
export interface SamplingView {
  text: string[];
  /** The pieces to take, where a seed was given. */
  list: string;
  /** The operating characteristic. */
  svg: string;
}

/** What lies ahead of one lot, worked out when asked. */
export interface AheadView {
  sampling: SamplingView | null;
  /** What measuring longer would settle. */
  plan: string[];
  rules: RulesTable[];
  /** Those of which there is something to say; the first 100. */
  materials: MaterialAhead[];
  materials_left_out: number;
}

/** Which papers there are for others; a notice by the name of its file. */
export interface PapersView {
  /** Lots that the self-check sheet speaks of. */
  self_check: number;
  samples: number;
  notices: PaperNotice[];
  without_supplier: number;
  labels: number;
}

export interface PaperNotice {
  supplier: string;
  lots: number;
  file: NoticeFile;
}

export interface ShelfBook {
  id: string;
  title: string;
  edition: string;
  jurisdiction: string;
  days: string;
  confidence: string;
  sha256: string;
  in_force: boolean;
}

export interface ActInput {
  kind: string;
  target: string;
  value: string;
  by: string;
  at: string;
  note: string;
}

export interface ActView {
  number: number;
  kind: string;
  target: string;
  value: string;
  by: string;
  at: string;
  note: string;
  undone: boolean;
  text: string;
}

export interface Problem {
  place: string;
  line: number | null;
  column: number | null;
  code: string;
  text: string;
  remedy: string;
}

export interface ActAnswer {
  reread: boolean;
  problem: Problem | null;
}

/** One element of one check reading. */
export interface CheckedElement {
  element: string;
  found: string;
  certified: string;
  score: string;
  verdict: string;
  verdict_text: string;
  good: boolean;
}

/** One check reading. */
export interface CheckView {
  index: number;
  sample: string;
  kind: string;
  when: string;
  instrument: string | null;
  elements: CheckedElement[];
}

export interface ChartView {
  title: string;
  svg: string;
  text: string[];
}

export interface SupplierView {
  supplier: string | null;
  part: string | null;
  text: string[];
}

/** Whether the readings can be trusted, and what is known of the suppliers. */
export interface ChecksView {
  checks: CheckView[];
  checks_left_out: number;
  charts: ChartView[];
  charts_left_out: number;
  suppliers: SupplierView[];
  suppliers_left_out: number;
  history: string;
}

// ---- Photographs (crates/wasm/src/photos.rs) ----

/** What a photograph is said to show, and the spot on it in thousandths of width and height. */
export interface PhotoJoin {
  target: string;
  /** The file as the act names it. */
  file: string;
  /** The reading; null for a material, or where there is no such reading. */
  index: number | null;
  about: string;
  x: number | null;
  y: number | null;
}

/** A reading that a photograph may show. Nothing is recorded by an offer. */
export interface PhotoOffer {
  index: number;
  target: string;
  about: string;
}

export interface PhotoView {
  name: string;
  sha256: string;
  /** Pixels of the copy. */
  width: number;
  height: number;
  joined: PhotoJoin[];
  /** The first 20; none where it is joined already. */
  offered: PhotoOffer[];
  offered_more: number;
  offered_from: "" | "column" | "name" | "within";
  /** Several readings may be meant, and nothing says which. */
  ambiguous: boolean;
}

/** A photograph that an act names and that can't be shown. */
export interface PhotoMissing {
  target: string;
  file: string;
  about: string;
  text: string;
  remedy: string;
}

export interface PhotosView {
  photos: PhotoView[];
  missing: PhotoMissing[];
}

/** Why a photograph was not taken. */
export interface PhotoRefusal {
  code: string;
  text: string;
  remedy: string;
}

export type WrittenFile = "findings.json" | "findings.csv" | "report.html" | "report-one-page.html" | "report-annex.html" | "history.txt";
export type NoticeFile = `supplier-notice-${string}.html`;
export type PaperFile = "findings.xlsx" | "self-check.html" | "laboratory-request.html" | "labels.html" | NoticeFile;

/** A place where a report is not what its data give. */
export interface ProofPlace {
  kind: "text" | "missing" | "extra" | "markup" | "style" | "active" | "picture" | "changed" | "part_missing" | "not_usable" | "written_otherwise" | "finding" | "text_changed" | "digest_not_printed";
  /** Section, row and column, or the part of what the report carries; the name of the line of a `finding`. */
  place: string;
  /** What stands in the report, and what its data give; empty for nothing. */
  says: string;
  gives: string;
  /** All of it in one sentence. */
  text: string;
}

export interface ProofFile {
  /** `stranger`: given, and not named by the report. */
  state: "matched" | "other_bytes" | "not_given" | "nothing_read" | "stranger";
  name: string;
  text: string;
}

/** A report held against what it carries. Every text is for people; the codes stand in contract.md, *proof*. */
export interface ProofView {
  verdict: "agrees" | "line_ends" | "findings_agree" | "differs" | "files_needed" | "evidence_missing" | "not_a_report";
  /** Why only its findings were compared; with "language_not_here", teach `language` and ask again. */
  only_findings: "other_version" | "language_not_here" | null;
  /** The language of the report. */
  language: string | null;
  /** Name and version of the program that made it; empty where nothing says so. */
  program: string;
  /** Nothing that was compared is another, and nothing that was given beside it says otherwise. Where `only_findings` is set, what a person reads in it was not compared. */
  nothing_differs: boolean;
  could_be_proved: boolean;
  /** The verdict in one line. */
  text: string;
  /** Where it is another, the first hundred. */
  places: ProofPlace[];
  /** How many more places there are, in words; empty where there is none. */
  more: string;
  /** What was shown and what was not, a sentence a line. */
  shows: string[];
  /** The files it names and what became of each, then those given for nothing. */
  files: ProofFile[];
  /** Every file the findings rest on was given, byte for byte. */
  data_are_those_files: boolean;
  /** null where no digest was given or none could be computed. */
  given_digest: boolean | null;
  digest: string | null;
}

// ---- the trainer: all invented, no inspection is touched ----

/** One reading, each piece as it would stand in a cell of a file: mg/kg, one sigma, mm; empty where there is none. */
export interface WhatIf {
  class: string;
  substance: string;
  written: string;
  sigma: string;
  detection: string;
  thickness: string;
}

/** A log scale in decades (exponents of ten, mg/kg), and where its ends stand as shares of the drawing's width. */
export interface ScaleView {
  from: number;
  to: number;
  left: number;
  right: number;
}

export interface WhatIfView {
  finding: FindingView;
  /** The scale of the finding's ruler. */
  scale: ScaleView | null;
  /** The scale round the band alone, for controls that must not move while they are moved. */
  range: ScaleView;
  /** How many sigma the whiskers stand for. */
  factor: number;
  /** In which class and who said so: what is measured may contradict what the file states. */
  judged_as: string;
  why: string;
  /** Document and clause. */
  source: string;
}

export interface AskedReading extends WhatIf {
  class_text: string;
  name: string;
  /** The rule it is judged by, with its source. */
  rule: string;
}

export interface AskedLot {
  /** sample, unit, material, then a symbol for each substance. */
  headings: string[];
  rows: string[][];
  /** Each worded by the page, with its arguments. */
  facts: { code: string; arguments: [string, string][] }[];
}

/** An exercise asks of a reading or of a lot. Its answer is not in it. */
export interface ExerciseView {
  number: number;
  choices: { code: string; text: string }[];
  reading: AskedReading | null;
  lot: AskedLot | null;
}

export interface SolvedView {
  correct: boolean;
  right: string;
  right_text: string;
  why: string;
  /** Document and clause; empty for a lot. */
  source: string;
  finding: FindingView | null;
  /** Why a lot ends as it does, worst first. */
  reasons: string[];
}

export interface InventedDelivery {
  results: { name: string; text: string };
  settings: { name: string; text: string };
}

export interface Session {
  version(): string;
  /** The texts of a language, in Project Fluent. */
  teach(tag: string, texts: string): void;
  /** Says everything in this language from now on. */
  speak(tag: string): void;
  /** in_folder: found by walking a folder, so a file that is no table is only skipped. */
  open(name: string, in_folder?: boolean): void;
  /** Records a file that the page could not read. */
  unreadable(name: string, text: string): void;
  push(bytes: Uint8Array): void;
  /** A view for each table found: an archive holds several. */
  finish(): SourceView[];
  clear_sources(): void;
  /** Begins a report that is to be proved; the inspection is not touched. */
  prove_begin(): void;
  /** Begins a source file beside it: the bytes pushed from now on are its. */
  prove_beside(name: string): void;
  prove_push(bytes: Uint8Array): void;
  /** digest: from signed paper, as a person typed it. May be asked again after more files, or when a language was taught. */
  prove_end(digest?: string): ProofView;
  /** Forgets the report and the files beside it. */
  prove_clear(): void;
  settings(name: string, text: string): Problem[];
  rule_book(name: string, text: string): Problem[];
  mapping(name: string, text: string): Problem[];
  /** What earlier inspections found: united with what was given before. */
  history(name: string, text: string): Problem[];
  /** A bill of materials: each part becomes an act. */
  bill(name: string, bytes: Uint8Array): Problem[];
  /** What a mapping file holds, without recording it. */
  mapping_acts(name: string, text: string): MappingActs;
  /** Takes a copy of a photograph: digest, kind and size are those of the file as it was given. */
  photo(name: string, sha256: string, media_type: string, width: number, height: number, copy: Uint8Array): PhotoRefusal | null;
  remove_photo(name: string, sha256: string): void;
  photos(): PhotosView;
  mapping_text(): string;
  /** What a browser keeps for another day; empty for nothing. */
  kept_mapping(before: string): string;
  choices(): ChoicesView;
  id_template(example: string, named: string[], ids: string[]): IdTemplateView;
  preview(source: number, block: number, rows: number): PreviewView;
  act(act: ActInput): ActAnswer;
  review(): Summary;
  /** The summary of the last review again, in the language spoken now. */
  summary(): Summary;
  offers(): OffersView;
  order(query: Query): OrderView;
  rows(indices: Uint32Array, others: string[]): RowView[];
  /** Readings as text between tabs, to put into a spreadsheet. */
  copied(indices: Uint32Array, columns: string[], heads: boolean, sink: (bytes: Uint8Array) => void): void;
  detail(index: number): DetailView;
  ahead(lot: number): AheadView;
  worst(lot: number): WorstView[];
  checks(): ChecksView;
  shelf(): ShelfBook[];
  papers(): PapersView;
  /** A rule book row by row; empty where there is no such book. */
  explained(book: string): string[];
  /** The report is written in the language `tag`. */
  write(kind: WrittenFile | PaperFile, tag: string, sink: (bytes: Uint8Array) => void): void;
  settings_text(): string;
  what_if(asked: WhatIf): WhatIfView;
  exercises(lesson: string, seed: string, count: number): ExerciseView[] | null;
  solved(lesson: string, seed: string, number: number, answer: string): SolvedView;
  invented_delivery(seed: string): InventedDelivery | null;
  /** How many pieces of a lot may be over a limit, at 95 % confidence, when so many were measured and none was. */
  clean_sample(lot_size: number, taken: number): number | null;
}
