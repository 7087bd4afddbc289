// The terms of the trade and of this page, in the order a newcomer meets them, and the source each stands under. The words are
// the catalogue's: `page-term-…` the term, `page-term-…-is` what it is, `page-from-…` the source.

export const TERMS = {
  screening: "scope",
  xrf: "scope",
  reading: "own",
  lot: "habit",
  limit: "annex-ii",
  band: "bands",
  "action-level": "action",
  sigma: "gum",
  repeatability: "action",
  margin: "own",
  bl: "bands",
  x: "bands",
  ol: "bands",
  "not-measured": "own",
  "no-uncertainty": "own",
  "detection-limit": "detection",
  "detection-too-high": "own",
  "not-capable": "own",
  "not-applicable": "bands",
  class: "bands",
  homogeneous: "homogeneous",
  composite: "bands",
  plated: "own",
  halogens: "halogens",
  accept: "disposition",
  hold: "own",
  "not-accept": "disposition",
  evidence: "own",
  trust: "own",
  check: "check",
  certified: "score",
  bracketed: "bracket",
  blank: "habit",
  chart: "chart",
  plan: "plan",
  "acceptance-number": "zero",
  exemption: "exemptions",
  placing: "placing",
  category: "categories",
  "next-step": "own",
  reference: "reference",
  "decision-rule": "decision",
  "guard-band": "guard",
  probability: "probability",
  caution: "own",
  declaration: "declaration",
  act: "own",
  book: "own",
  digest: "digest",
} as const;

export type TermId = keyof typeof TERMS;

export const TERM_IDS = Object.keys(TERMS) as TermId[];

export function isTerm(id: string | undefined): id is TermId {
  return id !== undefined && id in TERMS;
}

/** The term for an outcome or a disposition, by its code. */
export function termOfCode(code: string): TermId | null {
  const id = code.toLowerCase().replaceAll("_", "-");
  return isTerm(id) ? id : null;
}

/** The term a control is about, by the kind of act it records. */
export const TERM_OF_ACT: Partial<Record<string, TermId>> = {
  class: "class",
  sigma_multiple: "sigma",
  check_samples: "check",
  blank_samples: "blank",
  bracket: "bracketed",
  check_rule: "certified",
  lot_size: "lot",
  units_to_take: "acceptance-number",
  uncertainty_holds: "probability",
  placing_date: "placing",
  category: "category",
};

/** The term a card of evidence is about. */
export const TERM_OF_EVIDENCE: Partial<Record<string, TermId>> = {
  trust: "check",
  sampling: "plan",
  materials: "homogeneous",
  class: "class",
  sigma: "repeatability",
  halogens: "halogens",
  claims: "exemption",
  doubtful: "caution",
  books: "book",
  laboratory: "reference",
  holds: "hold",
};
