// The reasons of all lots and materials, gathered: one entry for each thing there is to do, with where it applies.

import type { LotView, ReasonView, Summary } from "../../shared/door";

export interface GatheredReason {
  code: string;
  kind: ReasonView["kind"];
  remedy: string;
  /** Whether it holds anything back anywhere. */
  holds: boolean;
  /** What is said, and of which lot. */
  said: { lot: LotView; text: string; about: string }[];
  lots: LotView[];
  /** Which materials, each once however many of its substances are open. */
  materials: Set<number>;
}

/** In the order in which the core gives them: worst lot first, worst reason first. */
export function gatherReasons(summary: Summary, kind: ReasonView["kind"]): GatheredReason[] {
  const gathered = new Map<string, GatheredReason>();
  const entry = (reason: ReasonView, lot: LotView): GatheredReason => {
    const key = `${reason.code}\n${reason.remedy}`;
    let found = gathered.get(key);
    if (found === undefined) {
      found = { code: reason.code, kind: reason.kind, remedy: reason.remedy, holds: false, said: [], lots: [], materials: new Set() };
      gathered.set(key, found);
    }
    if (!found.lots.includes(lot)) found.lots.push(lot);
    if (reason.effect !== "accept") found.holds = true;
    return found;
  };
  for (const lot of worstFirst(summary.lots)) {
    for (const reason of lot.reasons) {
      if (reason.kind === kind) entry(reason, lot).said.push({ lot, text: reason.text, about: reason.about });
    }
  }
  for (const material of summary.materials) {
    const lot = summary.lots[material.lot_index];
    if (lot === undefined) continue;
    for (const reason of material.reasons) {
      if (reason.kind !== kind) continue;
      const found = entry(reason, lot);
      found.materials.add(material.index);
      // A lot's own reasons sum up its materials'; only what they leave out is said again.
      if (!found.said.some((one) => one.lot === lot)) found.said.push({ lot, text: reason.text, about: reason.about });
    }
  }
  return [...gathered.values()];
}

/** The trust of the readings that a reason is about. */
export const TRUST_OF: Record<string, string> = { trust_failed: "failed", trust_not_bracketed: "not_bracketed", trust_none: "none" };

/** An advisory reason is printed and asks nothing of anyone. */
export function isOpen(reason: GatheredReason): boolean {
  return reason.holds;
}

const BADNESS = ["accept", "hold", "not_accept"];

export function worstFirst<T extends { disposition: string }>(lots: T[]): T[] {
  return [...lots].sort((a, b) => BADNESS.indexOf(b.disposition) - BADNESS.indexOf(a.disposition));
}
