// The instance that runs now, what it was told besides files, and the rule that only one thing is done at a time.

import type { ActInput } from "../shared/door";
import type { Engine } from "./engine";
import { rawOf } from "./help/plain";
import type { PhotoCopy } from "./photo-copy";
import { change } from "./state";
import { tellTrouble } from "./troubles";
import { ENGLISH, say } from "./words";

/** What was given besides files, in the order it was given: told again to every new instance. */
export type Given =
  | { kind: "settings"; name: string; text: string }
  | { kind: "rule_book"; name: string; text: string }
  | { kind: "mapping"; name: string; text: string }
  | { kind: "history"; name: string; text: string }
  | { kind: "bill"; name: string; bytes: Uint8Array }
  | { kind: "photo"; name: string; copy: PhotoCopy }
  | { kind: "act"; act: ActInput };

let engine: Engine | null = null;
let engineReady: Promise<Engine> | null = null;

/** What every new instance has to be told again, and which of the files the running one has read. */
export const told: { given: Given[]; read: Set<number>; languages: Map<string, string>; spoken: string } = {
  given: [],
  read: new Set(),
  languages: new Map(),
  spoken: ENGLISH,
};

let tail: Promise<unknown> = Promise.resolve();

/** Does a step when all steps before it are done. */
export function inTurn<T>(step: () => Promise<T>): Promise<T> {
  const turn = tail.then(step);
  tail = turn.catch(() => undefined);
  return turn;
}

/** A new instance that speaks the language of the page and knows every language that was wanted so far. Gives the program's version. */
export async function restart(machine: Engine): Promise<string> {
  const version = await machine.restart();
  for (const [tag, texts] of told.languages) await machine.ask("teach", { tag, texts });
  if (told.spoken !== ENGLISH) await machine.ask("speak", { tag: told.spoken });
  return version;
}

export async function teach(tag: string, texts: string): Promise<void> {
  await (await running()).ask("teach", { tag, texts });
  told.languages.set(tag, texts);
}

export function begin(making: Promise<Engine>): Promise<void> {
  engineReady = making;
  return inTurn(async () => {
    try {
      engine = await making;
      change({ version: await restart(engine) });
      change({ choices: (await engine.ask("choices", {})).choices });
    } catch (error) {
      engine = null;
      tellTrouble({
        key: "engine",
        about: "",
        what: say("page-trouble-engine-what"),
        where: say("page-trouble-engine-where"),
        why: say("page-trouble-engine-why"),
        todo: say("page-trouble-engine-todo"),
        code: "engine",
        raw: rawOf(error),
        fault: true,
      });
    }
  });
}

export async function running(): Promise<Engine> {
  if (engineReady !== null && engine === null) engine = await engineReady;
  if (engine === null) throw new Error(say("page-trouble-engine-what"));
  return engine;
}

/** A copy as it crosses to the worker. */
export function photoBytes({ bytes, ...about }: PhotoCopy): Omit<PhotoCopy, "bytes"> & { copy: Uint8Array } {
  return { ...about, copy: bytes };
}

/** A new instance that has been told everything but the files. */
export async function freshInstance(): Promise<void> {
  const machine = await running();
  await restart(machine);
  told.read = new Set();
  for (const step of told.given) {
    if (step.kind === "act") await machine.ask("act", { act: step.act });
    else if (step.kind === "photo") await machine.ask("photo", { name: step.name, ...photoBytes(step.copy) });
    else if (step.kind === "bill") await machine.ask("bill", { name: step.name, bytes: step.bytes });
    else await machine.ask(step.kind, { name: step.name, text: step.text });
  }
}

/** Shows work while `step` runs, and takes it away whatever happens. */
export async function working<T>(text: string, step: () => Promise<T>): Promise<T> {
  const machine = await running();
  change({ work: { text, done: 0, total: null, cancel: () => machine.abandon() } });
  try {
    return await step();
  } finally {
    change({ work: null });
  }
}
