// Raw rows for looking at, fetched when a person looks. What came for an earlier review stays in sight until the new rows
// come, and then only what shows them is drawn again: a button pressed at that moment must still be there.

import type { BlockView, PreviewView, SourceView } from "../shared/door";
import { fetchPreview } from "./looking";
import { state, watch } from "./state";

interface Held {
  preview: PreviewView | null;
  rows: number;
  /** Asked for, or come, for the review that is shown. */
  fresh: boolean;
  /** Who wants to hear when the rows come. */
  waiting: { host: HTMLElement; show: (preview: PreviewView) => void }[];
}

const held = new Map<string, Held>();
watch(["summary"], () => {
  if (state.summary === null) held.clear();
  for (const one of held.values()) {
    one.fresh = false;
    one.waiting = [];
  }
});

/** Shows the first rows of a table in `host`: at once what is there, and again when others come, while `host` is on the page. */
export function showPreview(source: SourceView, block: Pick<BlockView, "index" | "fingerprint">, rows: number, host: HTMLElement, show: (preview: PreviewView) => void): void {
  const key = `${source.sha256}|${source.name}|${block.index}|${block.fingerprint}`;
  const known = held.get(key) ?? { preview: null, rows: 0, fresh: false, waiting: [] };
  held.set(key, known);
  if (known.preview !== null) show(known.preview);
  known.waiting = known.waiting.filter((one) => one.host !== host);
  known.waiting.push({ host, show });
  if (known.fresh && known.rows >= rows) return;
  known.fresh = true;
  known.rows = rows;
  void fetchPreview(source.index, block.index, rows).then((preview) => {
    // The same rows again need no drawing.
    if (preview === null || JSON.stringify(preview) === JSON.stringify(known.preview)) return;
    known.preview = preview;
    for (const one of known.waiting) if (one.host.isConnected) one.show(preview);
  });
}
