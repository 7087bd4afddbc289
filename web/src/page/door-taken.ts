// Which of the three doors was taken, and what that puts on record.

import { standing } from "./acts-in-force";
import { doAct, startAgain, undo } from "./inspection";
import { change, state, watch, type Door } from "./state";
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
  await doAct({ kind: "title", value: say("page-door-ship-title"), quiet: true });
  recorded = standing("title", "")?.number ?? null;
}

// The act that tells of the door, and whether the door was changed by it, so that taking it back changes the door back.
let recorded: number | null = null;
let changedBy: number | null = null;

/** Goes on with what is open behind the other of the two doors that review a delivery. Nothing is left or lost. */
export async function changeDoor(to: "inspect" | "ship"): Promise<void> {
  if (state.door === to) return;
  const title = state.summary?.acts.find((act) => act.number === recorded && !act.undone) ?? null;
  const before = recorded;
  changedBy = null;
  change({ door: to });
  if (to === "ship") {
    await recordDoor();
    changedBy = recorded === before ? null : recorded;
  } else if (title !== null) {
    await undo(title.number);
    changedBy = title.number;
  }
  change({ event: say(`page-event-door-${to}`) });
}

export function beginDoors(): void {
  watch(["summary"], () => {
    const { summary, door } = state;
    if (summary === null) {
      recorded = null;
      changedBy = null;
      return;
    }
    const act = summary.acts.find((one) => one.number === changedBy && one.kind === "title");
    if (act === undefined || door === "train") return;
    const follows: Door = act.undone ? "inspect" : "ship";
    if (door !== follows) change({ door: follows });
  });
}

export function wantDoor(door: Door): void {
  change({ doorWanted: door });
}
