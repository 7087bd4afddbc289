// The one thing to do next. A pure function of what the inspection is found to lack, so that the same state always leads to the same
// control, and nothing here decides anything of the trade: reasons and their words are the core's.
//
// The order (our own choice): what comes in, before what is asked of it; what only has to be said, before what has to be measured;
// who ends a hold, once nothing about the lot can be given any more; who measured; and then what is taken away.
//   0 what can be brought back after a crash
//   1 bring results (a supplier: the customer's rule book first)
//   2 files that were not read            3 what files leave open        4 columns nobody is sure of      5 rows refused
//   6 evidence: which samples are checks (until that is said, they pass for product), class, sigma, thickness, materials, sampling, checks, doubtful readings, claims, chromium by area, laboratory,
//     books, halogens, holds; a supplier's own claim where an entry may fit; then what only other readings settle
//   7 lots that stay held or not accepted: who ends it, by when
//   8 the head of the report              9 the self-check sheet (a supplier's), the report
//  10 what was put off, in the same order 11 the next delivery
// A training delivery leads on to the next one instead, and the trainer's room to its next lesson.
//
// Whatever is put off stands behind everything else and is counted; put off once more, it is left. So every thing comes up at most
// twice while nothing changes, and there is no going round.

import type { OffersView, ReasonView, Summary } from "../shared/door";
import { EVIDENCE, lotTarget, materialTarget, type Evidence } from "./act-kinds";
import { gatherReasons, isOpen, worstFirst, type GatheredReason } from "./places/reasons";
import type { Door, PlaceName } from "./state";

/** All that the next action depends on. */
export interface Situation {
  door: Door | null;
  summary: Summary | null;
  offers: OffersView | null;
  /** A rule book was given as a file. */
  bookGiven: boolean;
  /** Files that were not read, and files with rows refused; `fold` is what has to be opened to see more of them. */
  unread: FileAsked[];
  refused: FileAsked[];
  /** Questions of files without an answer. */
  questions: { code: string; files: number; text: string }[];
  /** Columns nobody is sure of, file by file. */
  columns: { name: string; columns: number; folds: string[]; focus: string }[];
  /** What the head of the report lacks. */
  fields: string[];
  /** Everything shown was written to a file. */
  written: boolean;
  sheetTaken: boolean;
  /** Whether a lesson is open, and another comes after it; fresh: a delivery that was drawn from a seed, which has no place among them. */
  lesson: "none" | "more" | "last" | "fresh";
  /** Recovery copies that are not of this visit. */
  found: number;
  /** Where the person stands in the trainer's room, if there; `exercise` is the first that is open, 0 for none. */
  room: { view: "home" | "lesson" | "other"; exercise: number } | null;
}

export interface FileAsked {
  name: string;
  rows: number;
  fold: string;
  focus: string;
}

export interface NextAction {
  /** The same for the same thing, whatever its words. */
  id: string;
  /** The words of the button and of the line that says why: a text of the catalogue with its arguments, or what the core said. */
  text: Said;
  why: Said | string;
  /** Null: where the person stands. */
  place: PlaceName | null;
  /** Folds to open, from the outside in. */
  folds: string[];
  /** The control that settles it, or what it stands in. */
  focus: string;
  /** Where nothing of that kind is on the page: what tells why. */
  otherwise: string;
  /** Whether it can be put off. */
  mayWait: boolean;
}

export interface Said {
  key: string;
  with?: Record<string, string | number>;
}

export interface Next {
  action: NextAction;
  /** How many things that still want a person were put off. */
  waiting: number;
}

/** Names the control of an act as the page does. */
export type IdOf = (kind: string, target: string, more?: string) => string;

/** What was put off, by id: once, or twice and left. */
export type PutOff = ReadonlyMap<string, number>;

const said = (key: string, args?: Record<string, string | number>): Said => (args === undefined ? { key } : { key, with: args });

function action(id: string, key: string, why: Said | string, place: PlaceName | null, focus: string, more: Partial<NextAction> & { with?: Record<string, string | number> } = {}): NextAction {
  return { id, text: said(`page-do-${key}`, more.with), why, place, focus, otherwise: more.otherwise ?? (place === null ? "" : `heading-${place}`), folds: more.folds ?? [], mayWait: more.mayWait ?? true };
}

// ---- what came in ----

function cameIn(of: Situation): NextAction[] {
  const nothing = of.summary === null || of.summary.sources.length === 0;
  const place = nothing ? "start" : "came-in";
  const found: NextAction[] = of.summary === null && of.found > 0 ? [{ ...action("found", "bring", said("page-keep-found-what", { n: of.found }), "start", "found-code"), text: said("page-keep-bring-back") }] : [];
  const book = of.door === "ship" && !of.bookGiven ? [action("book", "book", said("page-do-book-why"), place, "rule-book-file")] : [];
  if (nothing) return [...found, ...book, action("bring", "bring", said(of.door === "ship" ? "page-do-bring-why-ship" : "page-do-bring-why"), place, "result-files", { mayWait: false })];
  return [
    ...book,
    ...of.unread.map((file) => action(`unread:${file.name}`, "unread", said("page-do-unread-why", { name: file.name }), "came-in", file.focus, { folds: [file.fold], with: { name: file.name } })),
    ...of.questions.map((one) => classBegun(one.code, of.summary) ?? action(`question:${one.code}`, `question-${one.code.replaceAll("_", "-")}`, one.text === "" ? said("page-do-question-why") : one.text, "came-in", `question-${one.code}`)),
    ...of.columns.map((file) => action(`columns:${file.name}`, "columns", said("page-do-columns-why", { name: file.name }), "came-in", file.focus, { folds: file.folds, with: { n: file.columns } })),
    ...of.refused.map((file) => action(`refused:${file.name}`, "refused", said("page-do-refused-why", { name: file.name }), "came-in", file.focus, { folds: [file.fold], with: { n: file.rows, name: file.name } })),
  ];
}

/** Once one material has a class of its own, the others are asked beside it. */
function classBegun(code: string, summary: Summary | null): NextAction | null {
  const begun = code === "class_not_stated" && summary?.acts.some((act) => act.kind === "class" && !act.undone && act.target.startsWith("material:")) === true;
  return begun ? action(`question:${code}`, "evidence-class", said("page-do-question-why"), "trust", "evidence-class") : null;
}

// ---- what is missing ----

const IN_ORDER: Evidence["id"][] = ["class", "sigma", "thickness", "materials", "sampling", "trust", "doubtful", "claims", "cr6", "laboratory", "books", "halogens", "holds"];

const CHECK_SAMPLES = "act-check_samples--";
export const RESULTS = "result-files";

/** What only other readings settle: they are brought where results are. */
export const MEASURED_AGAIN = ["trust_failed", "trust_not_bracketed", "checks_far_apart", "sampling_too_few", "material_not_measured"];

/** Where a reason of a kind of evidence is settled, if not at the first field of its card. */
const AT: Record<string, { focus: string; folds?: string[] }> = {
  bill_of_materials_none: { focus: "parts-given" },
  material_not_listed: { focus: "parts-given" },
};

/** Evidence that is given lot by lot, field by field: the first that is empty. */
const LOT_BY_LOT = ["sampling_none", "lot_size_missing"];

function given(summary: Summary, kind: string, target: string): boolean {
  return summary.acts.some((act) => act.kind === kind && !act.undone && act.value !== "" && (act.target === target || act.target === ""));
}

function sampling(name: string, reason: GatheredReason, summary: Summary, idOf: IdOf): NextAction | null {
  for (const lot of worstFirst(reason.lots)) {
    const kind = ["lot_size", "units_to_take"].find((one) => !given(summary, one, lotTarget(lot)));
    if (kind === undefined) continue;
    return action(name, `evidence-${kind.replaceAll("_", "-")}`, reason.said.find((one) => one.lot === lot)?.text ?? reason.remedy, "trust", idOf(kind, lotTarget(lot)), {
      otherwise: "evidence-sampling",
      with: { lot: lot.lot ?? "", named: lot.lot === null ? "no" : "yes" },
    });
  }
  return null;
}

function evidence(of: Situation, idOf: IdOf): NextAction[] {
  const { summary } = of;
  if (summary === null) return [];
  const open = gatherReasons(summary, "evidence").filter(isOpen);
  const all = IN_ORDER.flatMap((id) => {
    const card = EVIDENCE.find((one) => one.id === id);
    return open.filter((reason) => card?.reasons.includes(reason.code) === true).map((reason) => (LOT_BY_LOT.includes(reason.code) ? sampling(`evidence:${reason.code}`, reason, summary, idOf) : null) ?? missing(id, reason, of, summary));
  });
  const rank = (one: NextAction): number => (one.focus === CHECK_SAMPLES ? 0 : one.focus === RESULTS ? 3 : 1);
  return [...all.map((one) => ({ one, at: rank(one) })), ...claims(of, idOf).map((one) => ({ one, at: 2 }))].sort((a, b) => a.at - b.at).map(({ one }) => one);
}

/** Over its limit, and an entry may fit that nobody claimed: a supplier finds that out before shipping. */
function claims({ door, offers }: Situation, idOf: IdOf): NextAction[] {
  if (door !== "ship" || offers === null) return [];
  return offers.materials.flatMap((of) =>
    of.substances
      .filter((one) => one.over && one.entries.some((entry) => !entry.exceeded) && !of.claims.some((claim) => claim.substance === one.substance))
      .map((one) => {
        const id = idOf("claim", materialTarget(of), one.substance);
        return action(`claim:${id}`, "claim", said("page-do-claim-why", { substance: one.substance, material: of.material ?? "" }), "trust", `${id}-form-entry`, { folds: ["claims-materials", `${id}-fold`], otherwise: "evidence-claims" });
      }),
  );
}

function missing(id: Evidence["id"], reason: GatheredReason, { offers }: Situation, summary: Summary): NextAction {
  const why = reason.said[0]?.text ?? reason.remedy;
  const name = `evidence:${reason.code}`;
  if (MEASURED_AGAIN.includes(reason.code)) {
    const again = reason.code === "checks_far_apart" ? "trust_not_bracketed" : reason.code;
    return action(name, `again-${again.replaceAll("_", "-")}`, why, "came-in", RESULTS);
  }
  // With no check named, the first thing is to name one. With some, none of them fits what was measured: no certificate helps there, only
  // another check. A certificate is asked for where a check that fits lacks it.
  if (reason.code === "trust_none" && summary.totals.rows_check === 0 && !given(summary, "check_samples", "")) return action(name, "evidence-trust", why, "trust", CHECK_SAMPLES, { otherwise: "evidence-trust" });
  if (reason.code === "trust_none") return action(name, "again-trust-none", why, "came-in", RESULTS);
  // What a check reading itself lacks stands in its file, not in its certificate.
  if (reason.code === "trust_not_certified" && /, (no_uncertainty|unit_unknown|day_unknown)$/.test(reason.said[0]?.about ?? "")) return action(name, "again-check", why, "came-in", RESULTS);
  if (["trust_not_certified", "trust_not_judged"].includes(reason.code)) return action(name, "evidence-certificate", why, "trust", "certificates-new", { folds: ["certificates"], otherwise: "evidence-trust" });
  // Any other class would leave it as it is.
  if (reason.code === "layer_among_classes") return action(name, "evidence-layer", why, "trust", "evidence-class");
  const at = AT[reason.code] ?? { focus: reason.code === "claim_open" ? claimField(offers) : `evidence-${id}` };
  return action(name, `evidence-${id}`, why, "trust", at.focus, { folds: at.folds ?? [], otherwise: `evidence-${id}` });
}

/** Some questions of a claim are answered for all claims at once. */
function claimField(offers: OffersView | null): string {
  const asked = offers?.materials.flatMap((one) => one.claims.filter((claim) => claim.state === "open").flatMap((claim) => claim.why.map((why) => why.code))) ?? [];
  if (asked.includes("category_not_stated")) return "trust-act-category--";
  return asked.includes("placing_date_not_stated") ? "trust-act-placing_date--" : "evidence-claims";
}

// ---- lots that stay open ----

/** Lots beyond these have no form on the page of their own. */
const MOST_LOTS = 60;

function stays(reasons: ReadonlyArray<ReasonView>): string {
  return reasons.find((reason) => reason.effect !== "accept")?.text ?? "";
}

function lots(of: Situation, idOf: IdOf): NextAction[] {
  const { summary } = of;
  if (summary === null || of.door === "ship") return [];
  const targets = new Set<string>();
  const open = worstFirst(summary.lots)
    .filter((lot) => lot.disposition !== "accept" && !targets.has(lotTarget(lot)) && targets.add(lotTarget(lot)))
    .slice(0, MOST_LOTS)
    .filter((lot) => !summary.acts.some((act) => act.kind === "hold_ends" && act.target === lotTarget(lot) && !act.undone));
  return open.map((lot) => {
    const fold = `${idOf("holds", lotTarget(lot))}-ends`;
    return action(`lot:${lotTarget(lot)}`, `lot-${lot.disposition.replaceAll("_", "-")}`, stays(lot.reasons), "trust", fold, {
      folds: ["holds-lots", fold],
      otherwise: "evidence-holds",
      with: { lot: lot.lot ?? "", named: lot.lot === null ? "no" : "yes", n: open.length },
    });
  });
}

// ---- what is taken away ----

function fields(of: Situation, idOf: IdOf): NextAction[] {
  const given = (kind: string): Partial<NextAction> & { focus: string } => {
    const form = `${idOf("stated", "", kind)}-form`;
    return kind === "customer" ? { focus: form, folds: [form] } : { focus: idOf(kind, "") };
  };
  return of.fields.map((kind) => action(`field:${kind}`, `field-${kind.replaceAll("_", "-")}`, said("page-do-field-why"), "write", given(kind).focus, { folds: given(kind).folds ?? [] }));
}

function take(of: Situation): NextAction[] {
  const sheet = of.door === "ship" && !of.sheetTaken ? [action("sheet", "sheet", said("page-do-sheet-why"), "write", "save-self-check-html", { mayWait: false })] : [];
  return of.written ? sheet : [...sheet, action("report", "report", said("page-do-report-why"), "write", "save-report-html", { mayWait: false })];
}

function inRoom({ view, exercise }: NonNullable<Situation["room"]>): NextAction {
  if (view === "home") return action("room", "room", said("page-do-room-why"), "train", "train-next", { mayWait: false });
  if (view === "lesson" && exercise > 0) return action(`exercise:${exercise}`, "exercise", said("page-do-exercise-why"), "train", `exercise-${exercise}`, { mayWait: false, with: { n: exercise } });
  return view === "lesson" ? action("after", "after", said("page-do-after-why"), "train", "train-after", { mayWait: false }) : action("lessons", "lessons", said("page-do-room-why"), "train", "train-all", { mayWait: false });
}

/**
 * The next action, and how many are put off.
 *
 * `idOf` names the control of an act as the page does.
 */
export function nextAction(of: Situation, putOff: PutOff, idOf: IdOf): Next {
  if (of.room !== null) return { action: inRoom(of.room), waiting: 0 };
  if (of.lesson === "fresh") return { action: action("fresh", "fresh", said("page-do-fresh-why"), "train", "train-fresh-open", { mayWait: false }), waiting: 0 };
  if (of.lesson !== "none") {
    const more = of.lesson === "more";
    return { action: action("lesson", more ? "lesson" : "lesson-last", said(more ? "page-do-lesson-why" : "page-do-lesson-last-why"), more ? null : "start", more ? "lesson-next" : "doors", { mayWait: false }), waiting: 0 };
  }
  const read = of.summary !== null && of.summary.readings > 0;
  const wanted = [...cameIn(of), ...(read ? [...evidence(of, idOf), ...lots(of, idOf), ...fields(of, idOf)] : [])];
  const times = (one: NextAction): number => (one.mayWait ? (putOff.get(one.id) ?? 0) : 0);
  const waiting = wanted.filter((one) => times(one) > 0).length;
  const first = wanted.find((one) => times(one) === 0) ?? (read ? take(of)[0] : undefined) ?? wanted.find((one) => times(one) === 1);
  if (first !== undefined) return { action: first, waiting };
  const again = read ? action("again", "again", waiting > 0 ? said("page-do-again-why-left", { n: waiting }) : said("page-do-again-why"), null, "start-again", { mayWait: false }) : action("bring", "bring", said("page-do-bring-why"), "came-in", "result-files", { mayWait: false });
  return { action: again, waiting };
}
