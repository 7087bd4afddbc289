// Which acts the page offers and the values each may take: the vocabulary of crates/core/contract.md, no rule among it.

export interface Choosable {
  kind: string;
  values: string[];
}

export interface Typed {
  kind: string;
  type: "text" | "number" | "date";
  traits?: { min?: string; max?: string; step?: string };
}

const CLASS: Choosable = { kind: "class", values: ["polymer", "metal", "composite", "plated"] };
const SIGMA_MULTIPLE: Choosable = { kind: "sigma_multiple", values: ["1", "2", "3"] };
const UNIT: Choosable = { kind: "unit_of_measure", values: ["mg/kg", "ppm", "%", "g/kg", "ug/kg"] };
const DECIMAL_MARK: Choosable = { kind: "decimal_mark", values: [".", ","] };
const ERROR_COLUMN: Choosable = { kind: "detection_in_error_column", values: ["limit", "one_error"] };

/** The act that answers each question a file can leave open. */
export const ANSWERS_TO: Record<string, Choosable> = {
  sigma_multiple_not_stated: SIGMA_MULTIPLE,
  unit_not_stated: UNIT,
  decimal_mark_unclear: DECIMAL_MARK,
  class_not_stated: CLASS,
};

/** What a person can correct about how a file was read. */
export const ACTS_ABOUT_A_FILE: Choosable[] = [UNIT, SIGMA_MULTIPLE, DECIMAL_MARK, ERROR_COLUMN, CLASS];

const WEIGHT = ["holding", "advisory"];
const WHOLE: Typed["traits"] = { min: "1", step: "1" };

/** One kind of evidence: the reasons that speak of it and the acts that give it. */
export interface Evidence {
  id: "trust" | "sampling" | "materials" | "thickness" | "class" | "sigma" | "halogens";
  reasons: string[];
  acts: (Choosable | Typed)[];
  /** Acts that can be given for one lot. */
  perLot: Typed[];
}

const LOT_SIZE: Typed = { kind: "lot_size", type: "number", traits: WHOLE };
const UNITS_TO_TAKE: Typed = { kind: "units_to_take", type: "number", traits: WHOLE };

export const EVIDENCE: Evidence[] = [
  { id: "trust", reasons: ["trust_none"], acts: [{ kind: "check_samples", type: "text" }, { kind: "trust", values: WEIGHT }], perLot: [] },
  {
    id: "sampling",
    reasons: ["sampling_none", "sampling_too_few"],
    acts: [LOT_SIZE, UNITS_TO_TAKE, { kind: "sampling", values: WEIGHT }],
    perLot: [LOT_SIZE, UNITS_TO_TAKE],
  },
  { id: "materials", reasons: ["bill_of_materials_none", "material_not_measured"], acts: [{ kind: "materials", values: WEIGHT }], perLot: [] },
  {
    id: "thickness",
    reasons: ["thickness_not_stated"],
    acts: [{ kind: "thickness_mm", type: "number", traits: { min: "0.001", step: "any" } }],
    perLot: [],
  },
  { id: "class", reasons: ["class_unknown"], acts: [CLASS], perLot: [] },
  { id: "sigma", reasons: ["multiple_not_stated"], acts: [SIGMA_MULTIPLE], perLot: [] },
  { id: "halogens", reasons: ["halogen_book_not_loaded"], acts: [], perLot: [] },
];

export const CLASSES = CLASS.values;

/** A `|` parts the names in a target or a list, so one inside a name stands behind a `\`. */
export function escaped(name: string): string {
  return name.replaceAll("\\", "\\\\").replaceAll("|", "\\|");
}

export function sourceTarget(name: string): string {
  return `source:${escaped(name)}`;
}

export function lotTarget(lot: { supplier: string | null; lot: string | null }): string {
  return `lot:${escaped(lot.supplier ?? "")}|${escaped(lot.lot ?? "")}`;
}

export function partTarget(part: string): string {
  return `part:${escaped(part)}`;
}
