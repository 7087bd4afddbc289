// The page's end of the worker: one question, one promise. The worker is a cache; the page can always make a new one.

import type { PaperFile, WrittenFile } from "../shared/door";
import type { Answers, FromWorker, QuestionKind, Questions } from "../shared/messages";
import { noteStep } from "./help/steps";

const SILENCE_MS = 5000;
export const NO_ANSWER = "the worker did not answer within five seconds";

/** The instance trapped. It has been thrown away by the time this is seen. */
export class EngineCrashed extends Error {
  constructor(
    readonly step: QuestionKind,
    readonly said: string,
  ) {
    super(said);
  }
}

/** The question belongs to a worker that was replaced on purpose. */
export class EngineReplaced extends Error {}

interface Waiting {
  kind: QuestionKind;
  settle(answer: unknown): void;
  fail(error: Error): void;
  part?: (bytes: Uint8Array) => void;
}

export class Engine {
  private worker: Worker | null = null;
  private gen = 0;
  private nextId = 1;
  private readonly waiting = new Map<number, Waiting>();

  private readonly workerUrl: string;

  constructor(
    workerText: string,
    private readonly module: WebAssembly.Module,
    private readonly bytes: () => Promise<Uint8Array>,
  ) {
    this.workerUrl = URL.createObjectURL(new Blob([workerText], { type: "text/javascript" }));
  }

  /** Throws away whatever runs and starts a fresh instance. Returns the program's version. */
  async restart(): Promise<string> {
    this.drop(new EngineReplaced("replaced"));
    this.gen += 1;
    const worker = new Worker(this.workerUrl);
    this.worker = worker;
    worker.onmessage = (event: MessageEvent<FromWorker>) => this.hear(event.data);
    worker.onerror = (event) => {
      event.preventDefault();
      if (this.worker === worker) this.crash("start", event.message || "the worker stopped without a word");
    };
    const silence = new Promise<never>((_, fail) => {
      setTimeout(() => fail(new EngineCrashed("start", NO_ANSWER)), SILENCE_MS);
    });
    const ready = this.start();
    ready.catch(() => undefined);
    silence.catch(() => undefined);
    const answer = await Promise.race([ready, silence]);
    return answer.version;
  }

  private async start(): Promise<Answers["start"]> {
    try {
      return await this.ask("start", { module: this.module });
    } catch (error) {
      // Some engines refuse to post a compiled module; the bytes always cross.
      if (error instanceof DOMException) return await this.ask("start", { bytes: await this.bytes() });
      throw error;
    }
  }

  ask<K extends QuestionKind>(kind: K, carries: Questions[K], transfer: Transferable[] = []): Promise<Answers[K]> {
    return this.put(kind, carries, transfer);
  }

  /** Asks for a file's bytes; they arrive in parts. */
  async write(file: WrittenFile | PaperFile, tag: string): Promise<Uint8Array[]> {
    const parts: Uint8Array[] = [];
    await this.put("export", { file, tag }, [], (bytes) => parts.push(bytes));
    return parts;
  }

  private put<K extends QuestionKind>(
    kind: K,
    carries: Questions[K],
    transfer: Transferable[],
    part?: (bytes: Uint8Array) => void,
  ): Promise<Answers[K]> {
    noteStep(kind);
    const worker = this.worker;
    if (worker === null) return Promise.reject(new EngineCrashed(kind, "no worker is running"));
    const id = this.nextId++;
    return new Promise<Answers[K]>((settle, fail) => {
      this.waiting.set(id, {
        kind,
        settle: settle as (answer: unknown) => void,
        fail,
        ...(part === undefined ? {} : { part }),
      });
      try {
        worker.postMessage({ ...carries, gen: this.gen, id, kind }, transfer);
      } catch (error) {
        this.waiting.delete(id);
        fail(error instanceof Error ? error : new Error(String(error)));
      }
    });
  }

  private hear(message: FromWorker): void {
    if (message.gen !== this.gen) return;
    const waiting = this.waiting.get(message.id);
    if (message.kind === "part") {
      waiting?.part?.(message.bytes);
      return;
    }
    if (message.kind === "crashed") {
      this.crash(message.step, message.text);
      return;
    }
    this.waiting.delete(message.id);
    waiting?.settle(message);
  }

  /** Gives up whatever runs: a long call inside wasm can be ended in no other way. */
  abandon(): void {
    this.drop(new EngineReplaced("abandoned"));
  }

  private crash(step: QuestionKind, said: string): void {
    this.drop(new EngineCrashed(step, said));
  }

  private drop(why: Error): void {
    this.worker?.terminate();
    this.worker = null;
    const unanswered = [...this.waiting.values()];
    this.waiting.clear();
    for (const waiting of unanswered) waiting.fail(why);
  }
}
