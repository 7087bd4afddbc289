// What was done, as kinds and times alone, for the diagnostic file: which questions the worker was asked, which places were gone
// to, which troubles came up. No content of any of them passes through here.

export interface Step {
  /** Milliseconds since the page was opened. */
  at: number;
  kind: string;
  /** How often in a row. */
  times: number;
}

export interface Fault {
  at: number;
  code: string;
  /** As the program or the browser said it; it may hold data and is made clean before it is shown. */
  said: string;
}

const MOST = 300;

export const steps: Step[] = [];
export const faults: Fault[] = [];

export function noteStep(kind: string): void {
  const last = steps.at(-1);
  if (last?.kind === kind) {
    last.times += 1;
    return;
  }
  steps.push({ at: Math.round(performance.now()), kind, times: 1 });
  if (steps.length > MOST) steps.shift();
}

export function noteFault(code: string, said: string): void {
  faults.push({ at: Math.round(performance.now()), code, said });
  if (faults.length > MOST) faults.shift();
}
