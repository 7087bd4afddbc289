// Which acts the page offers and the values each may take: the vocabulary of crates/core/contract.md, no rule among it.

export interface Choosable {
  kind: string;
  values: string[];
  /** What counts where nobody chose. */
  now?: string;
}

export interface Typed {
  kind: string;
  /** A number is typed as text: a number field would silently drop what one half of the world writes with a comma. */
  type: "text" | "date" | "whole" | "decimal";
}

const CLASS: Choosable = { kind: "class", values: ["polymer", "metal", "composite", "plated"] };
const SIGMA_MULTIPLE: Choosable = { kind: "sigma_multiple", values: ["1", "1.96", "2", "3"] };
const UNIT: Choosable = { kind: "unit_of_measure", values: ["mg/kg", "ppm", "%", "g/kg", "ug/kg"] };
const DECIMAL_MARK: Choosable = { kind: "decimal_mark", values: [".", ","] };
const ERROR_COLUMN: Choosable = { kind: "detection_in_error_column", values: ["limit", "one_error"] };

const DATE_ORDER: Choosable = { kind: "date_order", values: ["ymd", "dmy", "mdy"] };

/** The act that answers each question a file can leave open. */
export const ANSWERS_TO: Record<string, Choosable> = {
  sigma_multiple_not_stated: SIGMA_MULTIPLE,
  unit_not_stated: UNIT,
  decimal_mark_unclear: DECIMAL_MARK,
  date_order_unclear: DATE_ORDER,
  class_not_stated: CLASS,
};

/** What a person can correct about how a file was read. */
export const ACTS_ABOUT_A_FILE: Choosable[] = [UNIT, SIGMA_MULTIPLE, DECIMAL_MARK, ERROR_COLUMN, DATE_ORDER, CLASS];

/** The act that answers what a notice speaks about. */
export const SETTLES_NOTICE: Record<string, string> = {
  unit_not_stated: "unit_of_measure",
  mark_unclear: "decimal_mark",
  multiple_not_stated: "sigma_multiple",
  limit_in_error_column: "detection_in_error_column",
  date_order_unclear: "date_order",
  encoding_inferred: "text_encoding",
  other_sheets: "sheet",
};

const WEIGHT = ["holding", "advisory"];

/** Of 8 and 9 an exemption may cover one half: the halves stand beside the whole. */
export const CATEGORY: Choosable = { kind: "category", values: ["1", "2", "3", "4", "5", "6", "7", "8ivd", "8o", "8", "9i", "9o", "9", "10", "11"] };

/** The question of starred exemptions. */
export const MOUTHING: Choosable = { kind: "mouthing", values: ["cannot", "can", "release_shown"] };

export const RENEWALS = ["pending", "refused", "not_filed"];

const REPEATS: Choosable = { kind: "repeats", values: ["same_spot", "same_id", "never"], now: "same_spot" };
const UNCERTAINTY_HOLDS: Choosable = { kind: "uncertainty_holds", values: ["repeatability", "everything"], now: "repeatability" };

/** Anodes of X-ray tubes; which one, its maker's papers say. */
const TUBE: Choosable = { kind: "tube_anode", values: ["Rh", "Ag", "W", "Au", "Ta", "Cr", "Mo", "Pd"] };
const BRACKET: Choosable = { kind: "bracket", values: ["before_and_after", "before", "per_shift"], now: "before_and_after" };
const CHECK_RULE: Choosable = { kind: "check_rule", values: ["zeta", "en"], now: "zeta" };
/** What one reading is, whatever its name says. */
export const MARK: Choosable = { kind: "mark", values: ["product", "check", "blank"] };

/** One kind of evidence: the reasons that speak of it and the acts that give it. */
export interface Evidence {
  id: "trust" | "sampling" | "materials" | "thickness" | "class" | "sigma" | "claims" | "cr6" | "doubtful" | "books" | "halogens" | "files" | "laboratory" | "holds";
  reasons: string[];
  /** Acts about the whole inspection only. */
  acts: (Choosable | Typed)[];
  /** Acts given lot by lot; one for the whole inspection counts where a lot has none of its own. */
  perLot: Typed[];
  /** The act given material by material, likewise. */
  perMaterial: Choosable | Typed | null;
  /** The act given file by file, likewise. */
  perFile: Choosable | null;
}

const NOTHING = { acts: [], perLot: [], perMaterial: null, perFile: null };

export const EVIDENCE: Evidence[] = [
  { ...NOTHING, id: "trust", reasons: ["trust_failed", "trust_not_bracketed", "trust_none", "trust_not_certified", "trust_not_judged", "check_times_differ", "checks_far_apart", "mark_not_taken"], acts: [{ kind: "check_samples", type: "text" }, { kind: "blank_samples", type: "text" }, CHECK_RULE, BRACKET, { kind: "shift_starts", type: "text" }, { kind: "trust", values: WEIGHT }] },
  {
    ...NOTHING,
    id: "sampling",
    reasons: ["sampling_none", "lot_size_too_small", "lot_size_missing", "sampling_too_few", "units_not_stated"],
    acts: [{ kind: "sampling", values: WEIGHT }],
    perLot: [{ kind: "lot_size", type: "whole" }, { kind: "units_to_take", type: "whole" }],
  },
  { ...NOTHING, id: "materials", reasons: ["bill_of_materials_none", "material_not_measured", "material_not_listed", "material_changed", "change_not_compared"], acts: [{ kind: "materials", values: WEIGHT }] },
  { ...NOTHING, id: "thickness", reasons: ["thickness_not_stated"], perMaterial: { kind: "thickness_mm", type: "decimal" } },
  { ...NOTHING, id: "class", reasons: ["class_unknown", "class_contested", "layer_among_classes"], perMaterial: CLASS },
  { ...NOTHING, id: "sigma", reasons: ["multiple_not_stated"], perFile: SIGMA_MULTIPLE, acts: [{ kind: "relative_sigma", type: "decimal" }, REPEATS, UNCERTAINTY_HOLDS] },
  { ...NOTHING, id: "claims", reasons: ["claim_open"] },
  { ...NOTHING, id: "cr6", reasons: ["cr6_no_report", "cr6_other_class"] },
  { ...NOTHING, id: "doubtful", reasons: ["calibration_doubtful", "overlap_unresolved", "over_may_be_overlap"], acts: [TUBE] },
  { ...NOTHING, id: "laboratory", reasons: ["lab_no_uncertainty", "lab_not_traceable", "lab_group_missing", "lab_not_placed"] },
  { ...NOTHING, id: "holds", reasons: ["set_aside", "lifted", "lift_not_allowed", "lift_not_countersigned", "lift_not_needed", "hold_overdue", "quarantine_exceeds_lot"] },
  { ...NOTHING, id: "books", reasons: ["book_not_loaded", "book_differs", "book_not_in_use"] },
  { ...NOTHING, id: "halogens", reasons: ["halogen_book_not_loaded"] },
  { ...NOTHING, id: "files", reasons: ["file_not_read", "rows_refused"] },
];

export const CLASSES = CLASS.values;

export function lotMaterialTarget(of: { supplier: string | null; lot: string | null; part: string | null; material: string | null }): string {
  return `lot_material:${[of.supplier, of.lot, of.part, of.material].map((name) => escaped(name ?? "")).join("|")}`;
}

export function readingTarget(source: string, line: number): string {
  return `reading:${escaped(source)}|${line}`;
}

/** A `|` parts the names in a target or a list, so one inside a name stands behind a `\`. */
export function escaped(name: string): string {
  return name.replaceAll("\\", "\\\\").replaceAll("|", "\\|");
}

export function sourceTarget(name: string): string {
  return `source:${escaped(name)}`;
}

export function headerTarget(fingerprint: string): string {
  return `header:${escaped(fingerprint)}`;
}

export function lotTarget(lot: { supplier: string | null; lot: string | null }): string {
  return `lot:${escaped(lot.supplier ?? "")}|${escaped(lot.lot ?? "")}`;
}

export function partTarget(part: string): string {
  return `part:${escaped(part)}`;
}

export function materialTarget(of: { part: string | null; material: string | null }): string {
  return `material:${escaped(of.part ?? "")}|${escaped(of.material ?? "")}`;
}

/** Takes pieces apart; a mark inside a piece stands behind a `\`. */
function pieces(text: string, mark: string): string[] {
  const found = [""];
  for (let at = 0; at < text.length; at += 1) {
    const letter = text.charAt(at);
    if (letter === mark) found.push("");
    else {
      if (letter === "\\") at += 1;
      found[found.length - 1] += text.charAt(at);
    }
  }
  return found;
}

/** The names in a target, without the marks that keep them apart. */
export function namesIn(target: string): { kind: string; names: string[] } {
  const colon = target.indexOf(":");
  if (colon < 0) return { kind: "inspection", names: [] };
  return { kind: target.slice(0, colon), names: pieces(target.slice(colon + 1), "|") };
}

/** The names in a value that is a list of them. */
export function listedNames(value: string): string[] {
  return value === "" ? [] : pieces(value, "|");
}

/** The value of an act that holds several named fields; empty ones are left out. */
export function joinedFields(fields: Record<string, string>): string {
  return Object.entries(fields)
    .filter(([, value]) => value !== "")
    .map(([name, value]) => `${name}=${value.replaceAll("\\", "\\\\").replaceAll(";", "\\;")}`)
    .join(";");
}

export function fieldsIn(value: string): Record<string, string> {
  const fields: Record<string, string> = {};
  for (const piece of pieces(value, ";")) {
    const equals = piece.indexOf("=");
    if (equals > 0) fields[piece.slice(0, equals).trim()] = piece.slice(equals + 1).trim();
  }
  return fields;
}
