// The trainer's questions to the worker. They touch no inspection; a crash is told and everything is stood up again.

import type { ExerciseView, InventedDelivery, SolvedView, WhatIf, WhatIfView } from "../../shared/door";
import { EngineCrashed, EngineReplaced, type Engine } from "../engine";
import { standAgain } from "../inspection";
import { inTurn, running } from "../instance";
import { state } from "../state";
import { crashTrouble, tellTrouble } from "../troubles";
import { say } from "../words";
import type { LessonName } from "./training";

function put<T>(question: (machine: Engine) => Promise<T>): Promise<T | null> {
  return inTurn(async () => {
    try {
      return await question(await running());
    } catch (error) {
      if (error instanceof EngineCrashed) tellTrouble(crashTrouble(error, say("page-train-where"), say("page-trouble-crash-look-todo")));
      else if (!(error instanceof EngineReplaced)) throw error;
      await standAgain();
      return null;
    }
  });
}

export async function whatIf(asked: WhatIf): Promise<WhatIfView | null> {
  return (await put((machine) => machine.ask("what_if", { asked })))?.view ?? null;
}

/** "wrong": the seed is no such number. null: the program went down. */
export async function exercisesOf(lesson: LessonName, seed: string, count: number): Promise<ExerciseView[] | "wrong" | null> {
  const answer = await put((machine) => machine.ask("exercises", { lesson, seed, count }));
  return answer === null ? null : (answer.list ?? "wrong");
}

export async function solve(lesson: LessonName, seed: string, number: number, answer: string): Promise<SolvedView | null> {
  return (await put((machine) => machine.ask("solved", { lesson, seed, number, answer })))?.view ?? null;
}

export async function inventedDelivery(seed: string): Promise<InventedDelivery | null> {
  return (await put((machine) => machine.ask("invented_delivery", { seed })))?.delivery ?? null;
}

/** How many of a lot may be over a limit when none of so many was; "none": more were taken than there are. */
export async function cleanSample(asked: { lotSize: number; taken: number }): Promise<number | "none" | null> {
  const answer = await put((machine) => machine.ask("clean_sample", asked));
  return answer === null ? null : (answer.most ?? "none");
}

/** Asks one question at a time and always the newest: what was asked meanwhile and is no longer wanted is left out. */
export function newestOnly<Question, Answer>(ask: (question: Question) => Promise<Answer | null>, show: (answer: Answer, question: Question) => void): (question: Question) => void {
  let waiting: { question: Question } | null = null;
  let busy = false;
  const run = async (): Promise<void> => {
    busy = true;
    try {
      while (waiting !== null) {
        const { question } = waiting;
        waiting = null;
        const { language } = state;
        const answer = await ask(question);
        if (answer !== null && language === state.language) show(answer, question);
      }
    } finally {
      busy = false;
    }
  };
  return (question) => {
    waiting = { question };
    if (!busy) void run();
  };
}
