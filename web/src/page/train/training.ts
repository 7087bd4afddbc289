// Where a trainee is and what was answered. Kept while the page is open and nowhere else; the address holds place and seed.

import type { WhatIf } from "../../shared/door";

/** The lessons in order, with the delivery of the demo data that each looks at and the reading its ruler begins with. */
export const LESSONS = ["band", "sigma", "element", "censored", "material", "exemption", "trust", "sampling"] as const;
export type LessonName = (typeof LESSONS)[number];

/** The demo delivery that shows a lesson, by how its folder begins. */
export const SHOWN_BY: Record<LessonName, string> = {
  band: "02",
  sigma: "06",
  element: "04",
  censored: "05",
  material: "11",
  exemption: "03",
  trust: "07",
  sampling: "09",
};

function reading(material: string, substance: string, written: string, sigma: string): WhatIf {
  return { class: material, substance, written, sigma, detection: "", thickness: "" };
}

const FIRST: Record<LessonName | "ruler", WhatIf> = {
  band: reading("polymer", "Pb", "400", "20"),
  sigma: reading("polymer", "Cd", "40", "4"),
  element: reading("polymer", "Br", "120", "10"),
  censored: reading("polymer", "Pb", "< 200", ""),
  material: reading("metal", "Pb", "450", "20"),
  exemption: reading("metal", "Pb", "27000", "200"),
  trust: reading("polymer", "Cd", "5", "30"),
  sampling: reading("polymer", "Cd", "90", "5"),
  ruler: reading("polymer", "Pb", "640", "20"),
};

/** Exercises a lesson begins with. */
export const AT_FIRST = 3;

interface Training {
  view: View;
  seed: string;
  /** How many exercises of a lesson are on show, by seed and lesson. */
  shown: Map<string, number>;
  /** The answer given and whether it was right, by seed, lesson and number. */
  answers: Map<string, { answer: string; correct: boolean }>;
  /** What stands on each ruler. */
  rulers: Map<string, WhatIf>;
  trainee: string;
}

export const training: Training = { view: "home", seed: "", shown: new Map(), answers: new Map(), rulers: new Map(), trainee: "" };

export type View = LessonName | "home" | "ruler" | "sheet";

/** What an address within the room names. */
export function fromAddress(rest: string): { view: View; seed: string } {
  const [view = "", seed = ""] = rest.split("/");
  const known = [...LESSONS, "ruler", "sheet"] as const;
  return { view: known.find((one) => one === view) ?? "home", seed: decodeURIComponentOr(seed) };
}

function decodeURIComponentOr(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}

export function addressOf(view: View): string {
  return `#train/${view}/${training.seed}`;
}

/** Six digits are enough to be told apart and few enough to be copied from paper. */
export function newSeed(): string {
  const [drawn = 0] = crypto.getRandomValues(new Uint32Array(1));
  return String(100_000 + (drawn % 900_000));
}

export function shownOf(lesson: LessonName): number {
  return training.shown.get(`${training.seed}/${lesson}`) ?? AT_FIRST;
}

export function showMore(lesson: LessonName): void {
  training.shown.set(`${training.seed}/${lesson}`, shownOf(lesson) + 1);
}

function keyOf(lesson: LessonName, number: number): string {
  return `${training.seed}/${lesson}/${number}`;
}

export function answerOf(lesson: LessonName, number: number): { answer: string; correct: boolean } | undefined {
  return training.answers.get(keyOf(lesson, number));
}

export function keepAnswer(lesson: LessonName, number: number, answer: string, correct: boolean): void {
  training.answers.set(keyOf(lesson, number), { answer, correct });
}

export interface Progress {
  done: number;
  right: number;
  of: number;
}

export function progressOf(lesson: LessonName): Progress {
  const of = shownOf(lesson);
  const given = Array.from({ length: of }, (_, at) => answerOf(lesson, at + 1)).filter((one) => one !== undefined);
  return { done: given.length, right: given.filter((one) => one.correct).length, of };
}

/** The first exercise of a lesson without an answer; 0 where all on show have one. */
export function openExercise(lesson: LessonName): number {
  return Array.from({ length: shownOf(lesson) }, (_, at) => at + 1).find((n) => answerOf(lesson, n) === undefined) ?? 0;
}

/** The first lesson with an exercise that is still open; null where all are answered. */
export function nextLesson(): LessonName | null {
  return LESSONS.find((lesson) => progressOf(lesson).done < AT_FIRST) ?? null;
}

export function onRuler(id: LessonName | "ruler"): WhatIf {
  return training.rulers.get(id) ?? FIRST[id];
}
