// Raw rows for looking at, fetched when a person looks. What came for an earlier review stays in sight until the new rows come.

import type { BlockView, PreviewView, SourceView } from "../shared/door";
import { fetchPreview } from "./looking";
import { change, state, watch } from "./state";

interface Held {
  preview: PreviewView | null;
  rows: number;
  /** Asked for, or come, for the review that is shown. */
  fresh: boolean;
}

const held = new Map<string, Held>();
watch(["summary"], () => {
  if (state.summary === null) held.clear();
  for (const one of held.values()) one.fresh = false;
});

/** The first rows of a table, or null until they have come; then everything that shows them is drawn again. */
export function previewOf(source: SourceView, block: Pick<BlockView, "index" | "fingerprint">, rows: number): PreviewView | null {
  const key = `${source.sha256}|${source.name}|${block.index}|${block.fingerprint}`;
  const known = held.get(key) ?? { preview: null, rows: 0, fresh: false };
  held.set(key, known);
  if (!known.fresh || known.rows < rows) {
    known.fresh = true;
    known.rows = rows;
    void fetchPreview(source.index, block.index, rows).then((preview) => {
      // The same rows again need no drawing.
      if (preview === null || JSON.stringify(preview) === JSON.stringify(known.preview)) return;
      known.preview = preview;
      change({ previews: state.previews + 1 });
    });
  }
  return known.preview;
}
