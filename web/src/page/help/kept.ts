// What help remembers of a person from one visit to the next (that the tour was offered, that the picture was seen, whether
// single keys work): three words, no data, and only where this computer may keep things.

import { KEEP_NOTHING, store, stored } from "../browser-store";
import { state, watch } from "../state";

const NAMES = ["tour", "ruler", "single-keys"] as const;
export type Remembered = (typeof NAMES)[number];

const thisVisit = new Map<Remembered, string>();
const key = (name: Remembered): string => `plumbline.help.${name}`;

function mayKeep(): boolean {
  return state.kept !== "nothing" && stored(KEEP_NOTHING) === "";
}

export function recall(name: Remembered): string {
  return thisVisit.get(name) ?? stored(key(name));
}

export function remember(name: Remembered, word: string): void {
  thisVisit.set(name, word);
  if (mayKeep()) store(key(name), word);
}

export function beginKept(): void {
  watch(["kept"], () => {
    if (!mayKeep()) for (const name of NAMES) store(key(name), "");
  });
}
