// Which of the three doors was taken, and what that puts on record.

import { standing } from "./acts-given";
import { doAct, undo } from "./inspection";
import { change, state, type Door } from "./state";
import { say } from "./words";

export async function takeDoor(door: Door): Promise<void> {
  change({ door });
  const title = standing("title", "");
  if (door !== "ship" && title?.value === say("page-door-ship-title")) await undo(title.number);
  else await recordDoor();
}

/** The report must say by itself that it is a supplier's self-check, so that is an act like any other, seen and undone like any. */
export async function recordDoor(): Promise<void> {
  if (state.door !== "ship" || state.summary === null || standing("title", "") !== null) return;
  await doAct({ kind: "title", value: say("page-door-ship-title") });
}
