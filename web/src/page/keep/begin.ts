// Where keeping begins.

import { inTurn } from "../instance";
import { rescueWith } from "../reading";
import { beginSaving, bytesKept } from "./copy";
import { beginFound } from "./found";
import { beginPanel } from "./panel";
import { beginLeave } from "./leave";

export function beginKeeping(): void {
  beginSaving(inTurn);
  rescueWith(bytesKept);
  beginLeave();
  beginPanel();
  beginFound();
}
