// The headings of the table are one stop of Tab: arrows go from one to the next, as between the cells below them. A heading
// that stands for a term shows its card to a pointer that rests on it, and to a key; pressing it sorts, and nothing else.

import { termCard } from "./help/term";

const heads = (row: HTMLElement): HTMLElement[] => [...row.children].map((head) => head.querySelector<HTMLElement>("button") ?? (head as HTMLElement));

/** Which heading Tab comes to: the one that had the focus last, else the first. */
export function settleHeadings(row: HTMLElement): void {
  const all = heads(row);
  const stop = all.find((head) => head.dataset["head"] === row.dataset["stop"]) ?? all[0];
  for (const head of all) head.tabIndex = head === stop ? 0 : -1;
}

export function beginHeadings(row: HTMLElement): void {
  row.addEventListener("focusin", (event) => {
    const head = heads(row).find((one) => one === event.target);
    if (head === undefined) return;
    row.dataset["stop"] = head.dataset["head"];
    settleHeadings(row);
  });
  row.addEventListener("keydown", (event) => {
    if (event.altKey || event.ctrlKey || event.metaKey || event.shiftKey) return;
    const all = heads(row);
    const at = all.indexOf(event.target as HTMLElement);
    if (at < 0) return;
    const to: Record<string, number> = { ArrowRight: at + 1, ArrowLeft: at - 1, Home: 0, End: all.length - 1 };
    const next = to[event.key];
    if (next !== undefined) all[Math.max(0, Math.min(next, all.length - 1))]?.focus();
    else if (event.key !== "F2" || !termCard(all[at]?.closest<HTMLElement>("[role=columnheader]") ?? null)) return;
    event.preventDefault();
  });
}
