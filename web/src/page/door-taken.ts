// Which of the three doors was taken, and what that puts on record.

import { standing } from "./acts-in-force";
import { doAct, startAgain } from "./inspection";
import { change, state, type Door } from "./state";
import { say } from "./words";

/**
 * Goes through the door that was pressed, now that what was chosen there has come. Another kind of work than the one that
 * stands open is a new inspection; the one before can be come back to.
 */
export async function goThroughDoor(bringsResults: boolean): Promise<void> {
  const door = state.doorWanted ?? state.door ?? "inspect";
  const real = state.doorWanted === null && bringsResults && state.door === "train" ? "inspect" : door;
  change({ doorWanted: null });
  if (real !== state.door && state.files.length > 0) await startAgain();
  change({ door: real });
}

/** The report must say by itself that it is a supplier's self-check, so that is an act like any other, seen and undone like any. */
export async function recordDoor(): Promise<void> {
  if (state.door !== "ship" || state.summary === null || standing("title", "") !== null) return;
  await doAct({ kind: "title", value: say("page-door-ship-title") });
}

export function wantDoor(door: Door): void {
  change({ doorWanted: door });
}
