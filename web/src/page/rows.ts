// The forms of acts that hold several fields: the vocabulary of crates/core/contract.md, no rule among it.

import { CLASSES } from "./act-kinds";
import { type Row } from "./row-form";

const ELEMENTS = ["Cd", "Pb", "Hg", "Cr", "Br", "Cl"];

/** The AQLs that head the columns of the tables. */
const AQLS = ["0.010", "0.015", "0.025", "0.040", "0.065", "0.10", "0.15", "0.25", "0.40", "0.65", "1.0", "1.5", "2.5", "4.0", "6.5", "10", "15", "25", "40", "65", "100", "150", "250", "400", "650", "1000"];

export const CERTIFICATE: Row = {
  kind: "certificate",
  fields: [
    { name: "sample", type: "text", needed: true },
    { name: "element", type: "text", values: ELEMENTS, needed: true },
    { name: "value", type: "amount", needed: true },
    { name: "u", type: "amount", needed: true },
    { name: "k", type: "decimal", now: "2", needed: true },
    { name: "id", type: "text", needed: true },
    { name: "expires", type: "date" },
    { name: "class", type: "text", values: CLASSES },
  ],
};

export const SAMPLING_PLAN: Row = {
  kind: "sampling_plan",
  once: true,
  fields: [
    { name: "rule", type: "text", values: ["zero_acceptance", "single"], needed: true },
    { name: "confidence", type: "decimal", now: "95", needed: true, when: ["rule", "zero_acceptance"] },
    { name: "share", type: "decimal", now: "5", needed: true, when: ["rule", "zero_acceptance"] },
    { name: "level", type: "text", values: ["S-1", "S-2", "S-3", "S-4", "I", "II", "III"], now: "II", when: ["rule", "single"] },
    { name: "severity", type: "text", values: ["normal", "tightened", "reduced"], now: "normal", when: ["rule", "single"] },
    { name: "aql", type: "text", values: AQLS, needed: true, when: ["rule", "single"] },
    { name: "seed", type: "whole" },
  ],
};

export const LABORATORY: Row = {
  kind: "laboratory",
  fields: [
    { name: "analyte", type: "text", values: ["Cd", "Pb", "Hg", "Cr6", "Cr", "PBB", "PBDE", "Br", "Cl"], needed: true },
    { name: "value", type: "result", needed: true },
    { name: "u", type: "amount" },
    { name: "k", type: "decimal", now: "2", of: "u" },
    { name: "method", type: "text" },
    { name: "laboratory", type: "text" },
    { name: "report", type: "text" },
    { name: "date", type: "date" },
  ],
};

export const HOLD_ENDS: Row = {
  kind: "hold_ends",
  once: true,
  fields: [
    { name: "who", type: "text" },
    { name: "until", type: "date" },
    { name: "quarantined", type: "whole" },
    { name: "place", type: "text" },
  ],
};

export const CONTROL_CHART: Row = {
  kind: "control_chart",
  once: true,
  fields: [
    { name: "limits", type: "text", values: ["baseline", "certificate"] },
    { name: "points", type: "whole" },
    { name: "rules", type: "text", values: ["western_electric", "nelson"] },
  ],
};

/** Whether a limit applies: which one stands beside the form. */
export function limitAnswer(book: string, row: string): Row {
  return { kind: "limit_answer", once: true, said: { book, row }, fields: [{ name: "answer", type: "text", values: ["yes", "no"], needed: true }] };
}

/** Two people lift one hold: what it is stands beside the form. */
export function lift(reason: string, about: string): Row {
  return {
    kind: "lift",
    said: { reason, about },
    signed: true,
    fields: [
      { name: "why", type: "text", needed: true },
      { name: "second", type: "text", needed: true },
    ],
  };
}
