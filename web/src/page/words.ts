// The page's own words, from the same kind of catalogue the core reads.

import { FluentBundle, FluentNumber, FluentResource, type FluentVariable } from "@fluent/bundle";
import pageWords from "../../../crates/words/en/page.ftl";

const bundle = new FluentBundle("en", { useIsolating: false });
const faults = bundle.addResource(new FluentResource(pageWords));
for (const fault of faults) console.error(fault);

const grouped = new Intl.NumberFormat("en", { useGrouping: true });

/** A count for reading: digits in threes, parted by a thin space, since a comma is a decimal mark to half the world. */
export function count(n: number): string {
  return grouped.format(n).replaceAll(",", "\u202f");
}

/** Chooses plural forms like any number, and is written like every other count of the page. */
class Count extends FluentNumber {
  override toString(): string {
    return count(this.value);
  }
}

/** One sentence of the catalogue. A missing key shows itself instead of leaving a hole. */
export function say(key: string, given: Record<string, string | number> = {}): string {
  const message = bundle.getMessage(key);
  if (message?.value == null) {
    console.error(`no words for ${key}`);
    return key;
  }
  const values: Record<string, FluentVariable> = {};
  for (const [name, value] of Object.entries(given)) values[name] = typeof value === "number" ? new Count(value) : value;
  const errors: Error[] = [];
  const text = bundle.formatPattern(message.value, values, errors);
  for (const error of errors) console.error(key, error);
  return text;
}

export function hasWords(key: string): boolean {
  return bundle.hasMessage(key);
}

export function byteCount(n: number): string {
  if (n < 1024) return say("page-bytes", { n: count(n) });
  if (n < 1024 * 1024) return say("page-kib", { n: count(Math.round(n / 1024)) });
  return say("page-mib", { n: (n / (1024 * 1024)).toFixed(1) });
}

/** Fills the words of the markup that stands in index.html. */
export function sayMarkup(root: ParentNode): void {
  for (const node of root.querySelectorAll<HTMLElement>("[data-say]")) {
    node.textContent = say(node.dataset["say"] ?? "");
  }
  for (const node of root.querySelectorAll<HTMLElement>("[data-say-label]")) {
    node.setAttribute("aria-label", say(node.dataset["sayLabel"] ?? ""));
  }
}
