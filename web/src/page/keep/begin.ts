// Where keeping begins.

import { inTurn } from "../instance";
import { beginSaving } from "./copy";
import { beginFound } from "./found";
import { beginPanel } from "./panel";
import { beginLeave } from "./leave";

export function beginKeeping(): void {
  beginSaving(inTurn);
  beginLeave();
  beginPanel();
  beginFound();
}
