// The way back and forth: what each step of a person changed, so that every one of them can be taken back, one after the
// other. What became acts is taken back by acts, since the list of acts only grows; files, photographs, rule books and
// histories are no acts, and are taken out or put back.

import type { ActView } from "../../shared/door";
import { actText } from "../acts-in-force";
import type { Given } from "../instance";
import type { HeldFile } from "../state";
import { say } from "../words";

/** Something given, and where in the order it stood. */
export interface Placed {
  at: number;
  given: Given;
}

/** A key of the catalogue and what goes into it. */
export interface Said {
  key: string;
  given: Record<string, string | number>;
}

/** One step. Never changed once it is made: what becomes of it is another. */
export interface Step {
  /** What it was, where the acts don't say it by themselves. */
  said: Said | null;
  /** The numbers of the acts it made. */
  acts: number[];
  /** The numbers of the undo acts that took it back, while it is taken back. */
  undoneBy: number[];
  filesIn: HeldFile[];
  filesOut: HeldFile[];
  givenIn: Placed[];
  givenOut: Placed[];
}

/** What a step may change. */
export interface Standing {
  given: Given[];
  files: HeldFile[];
  /** How many acts there are. */
  acts: number;
}

/** The most steps that can be gone back (our choice: more than anybody does in a day). */
const MOST_STEPS = 2000;

const MOVED_BY_HAND = new Set(["rule_book", "history", "photo"]);

function missingFrom(some: Given[], others: Given[]): Placed[] {
  const there = new Set(others);
  return some.flatMap((given, at) => (there.has(given) || !MOVED_BY_HAND.has(given.kind) ? [] : [{ at, given }]));
}

/** What was changed between two moments; null where nothing was. */
export function stepBetween(before: Standing, now: Standing, said: Said | null): Step | null {
  const step: Step = {
    said,
    acts: Array.from({ length: Math.max(0, now.acts - before.acts) }, (_, at) => before.acts + 1 + at),
    undoneBy: [],
    filesIn: now.files.filter((file) => !before.files.includes(file)),
    filesOut: before.files.filter((file) => !now.files.includes(file)),
    givenIn: missingFrom(now.given, before.given),
    givenOut: missingFrom(before.given, now.given),
  };
  return [step.acts, step.filesIn, step.filesOut, step.givenIn, step.givenOut].every((changed) => changed.length === 0) ? null : step;
}

export function withStep(steps: Step[], step: Step): Step[] {
  return [...steps, step].slice(-MOST_STEPS);
}

/** A step that made nothing but these acts. */
export function onlyActs(acts: number[]): Step {
  return { said: null, acts, undoneBy: [], filesIn: [], filesOut: [], givenIn: [], givenOut: [] };
}

export function madeOnly(step: Step, acts: number[]): boolean {
  const nothingElse = [step.filesIn, step.filesOut, step.givenIn, step.givenOut].every((changed) => changed.length === 0);
  return nothingElse && sameNumbers(step.acts, acts);
}

export function sameNumbers(some: number[], others: number[]): boolean {
  return some.length === others.length && some.every((number, at) => number === others[at]);
}

/** The list of what was given after a step is gone back (or forth again). */
export function givenAfter(given: Given[], step: Step, back: boolean): Given[] {
  const out = new Set((back ? step.givenIn : step.givenOut).map((placed) => placed.given));
  const after = given.filter((one) => !out.has(one));
  for (const { at, given: one } of back ? step.givenOut : step.givenIn) after.splice(at, 0, one);
  return after;
}

/** What a step was, in words. */
export function stepText(step: Step, acts: ActView[]): string {
  if (step.said !== null) return say(step.said.key, step.said.given);
  const [first] = step.acts.map((number) => acts.find((act) => act.number === number)).filter((act) => act !== undefined);
  if (first === undefined) return "";
  return step.acts.length === 1 ? actText(first) : say("page-keep-step-and-more", { act: actText(first), n: step.acts.length - 1 });
}
