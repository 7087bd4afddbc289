// Selected readings as text between tabs: on the clipboard where the browser lets it, else as a file.
//
// The text is made by the core, piece by piece. A browser lets a page write to the clipboard only shortly after a press, and some
// never do for a page opened from a disk: so it is tried at once with a promise of the text, then in the old way, and at last
// the text waits beside a button for another press.

import { el } from "./elements";
import { fetchCopied } from "./looking";
import { save } from "./save";
import { change } from "./state";
import { count, say } from "./words";

const PIECE = 20_000;
const FILE = "readings.tsv";

export class Copying {
  readonly root: HTMLElement;
  private readonly told = el("p", { id: "copy-told", "aria-live": "polite" });
  private readonly again = el("button", { type: "button", id: "copy-again", class: "tool", hidden: true, on: { click: () => void this.pressedAgain() }, "data-say": "page-grid-copy-again" });
  private readonly file = el("button", { type: "button", id: "copy-file", class: "tool", hidden: true, on: { click: () => this.saved() }, "data-say": "page-grid-copy-file" });
  private parts: Uint8Array[] = [];
  private stopped = false;
  private asked = 0;

  constructor() {
    this.root = el("div", { class: "copying" }, this.told, this.again, this.file);
  }

  /** Says nothing more and holds nothing any longer. */
  clear(): void {
    this.asked += 1;
    this.parts = [];
    this.told.textContent = "";
    this.offer(false);
  }

  /** Must be called from a press or a key. */
  async copy(indices: Uint32Array, columns: string[]): Promise<void> {
    if (indices.length === 0) return;
    this.clear();
    const asked = this.asked;
    const text = this.gather(indices, columns);
    const there = await onClipboard(text);
    const got = await text.catch(() => null);
    if (asked !== this.asked) return;
    if (got === null) {
      this.tell(say("page-grid-copy-stopped"));
      return;
    }
    if (there || inTheOldWay(got)) {
      this.parts = [];
      this.tell(say("page-grid-copied", { n: indices.length, shown: count(indices.length) }));
      return;
    }
    this.tell(say("page-grid-copy-refused"));
    this.offer(true);
  }

  private tell(text: string): void {
    this.told.textContent = text;
  }

  private offer(shown: boolean): void {
    this.again.hidden = !shown;
    this.file.hidden = !shown;
  }

  private async gather(indices: Uint32Array, columns: string[]): Promise<string> {
    const decoder = new TextDecoder();
    const parts: Uint8Array[] = [];
    let text = "";
    this.stopped = false;
    const long = indices.length > PIECE;
    try {
      for (let from = 0; from < indices.length; from += PIECE) {
        if (long) change({ work: { text: say("page-grid-copying"), done: from, total: indices.length, cancel: () => (this.stopped = true) } });
        const bytes = await fetchCopied(indices.slice(from, from + PIECE), columns, from === 0);
        if (bytes === null || this.stopped) throw new Error("stopped");
        for (const piece of bytes) {
          parts.push(piece);
          text += decoder.decode(piece, { stream: true });
        }
      }
    } finally {
      if (long) change({ work: null });
    }
    this.parts = parts;
    return text + decoder.decode();
  }

  private async pressedAgain(): Promise<void> {
    const blob = new Blob(this.parts as BlobPart[]);
    const text = await blob.text();
    if ((await onClipboard(Promise.resolve(text))) || inTheOldWay(text)) {
      this.clear();
      this.tell(say("page-grid-copied-now"));
    } else this.tell(say("page-grid-copy-refused"));
  }

  private saved(): void {
    save(FILE, new Blob(this.parts as BlobPart[], { type: "text/tab-separated-values" }));
    this.tell(say("page-grid-copy-saved", { file: FILE }));
  }
}

async function onClipboard(text: Promise<string>): Promise<boolean> {
  try {
    const blob = text.then((whole) => new Blob([whole], { type: "text/plain" }));
    // Where the text never comes, the clipboard is told so, and nobody else waits for it.
    blob.catch(() => undefined);
    await navigator.clipboard.write([new ClipboardItem({ "text/plain": blob })]);
    return true;
  } catch {
    return false;
  }
}

// Deprecated, and the only way where a page from a disk is refused the other.
function inTheOldWay(text: string): boolean {
  const focused = document.activeElement;
  const field = el("textarea", { class: "heard", "aria-hidden": "true", tabindex: -1, readonly: true });
  field.value = text;
  document.body.append(field);
  field.select();
  let done = false;
  try {
    done = document.execCommand("copy");
  } catch {
    done = false;
  }
  field.remove();
  if (focused instanceof HTMLElement) focused.focus({ preventScroll: true });
  return done;
}
