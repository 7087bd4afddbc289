// The page's own words, from the same kind of catalogue the core reads. No text is said while a module loads: it would keep
// the language of that moment.

import { FluentBundle, FluentNumber, FluentResource, type FluentVariable } from "@fluent/bundle";
import gridWords from "../../../crates/words/en/page-grid.ftl";
import helpWords from "../../../crates/words/en/page-help.ftl";
import keepWords from "../../../crates/words/en/page-keep.ftl";
import trainWords from "../../../crates/words/en/page-train.ftl";
import waysWords from "../../../crates/words/en/page-ways.ftl";
import pageWords from "../../../crates/words/en/page.ftl";

export const ENGLISH = "en";

interface Spoken {
  tag: string;
  bundle: FluentBundle;
  grouped: Intl.NumberFormat;
  tenths: Intl.NumberFormat;
}

function spokenBy(tag: string, texts: string): Spoken {
  const bundle = new FluentBundle(tag, { useIsolating: false });
  for (const fault of bundle.addResource(new FluentResource(texts))) console.error(fault);
  return {
    tag,
    bundle,
    grouped: new Intl.NumberFormat(tag, { useGrouping: true }),
    tenths: new Intl.NumberFormat(tag, { useGrouping: false, minimumFractionDigits: 1, maximumFractionDigits: 1 }),
  };
}

const english = spokenBy(ENGLISH, [pageWords, gridWords, helpWords, keepWords, trainWords, waysWords].join("\n"));
let spoken = english;

/** The language all is said in from now on; its texts in Project Fluent, none for English. */
export function useLanguage(tag: string, texts: string): void {
  spoken = tag === ENGLISH ? english : spokenBy(tag, texts);
  document.documentElement.lang = tag;
}

export function languageTag(): string {
  return spoken.tag;
}

/** A count for reading: digits in groups, parted by a thin space, since comma and point are decimal signs to half the world. */
export function count(n: number): string {
  return spoken.grouped.formatToParts(n).map((part) => (part.type === "group" ? "\u202f" : part.value)).join("");
}

/** Chooses plural forms like any number, and is written like every other count of the page. */
class Count extends FluentNumber {
  override toString(): string {
    return count(this.value);
  }
}

/** One sentence of the catalogue. A missing key shows itself instead of leaving a hole. */
export function say(key: string, given: Record<string, string | number> = {}): string {
  return saidBy(spoken, key, given);
}

/** What goes on record by itself is English in every language, like all that findings say. */
export function sayForTheRecord(key: string, given: Record<string, string> = {}): string {
  return saidBy(english, key, given);
}

function saidBy({ bundle }: Spoken, key: string, given: Record<string, string | number>): string {
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

/** What stands between texts: things in a row, longer pieces, what a text is about and the text, a few words and a sentence, sentences. */
export function between(kind: "list" | "series" | "colon" | "stop" | "gap"): string {
  return say(`page-join-${kind}`);
}

/** Things in a row. */
export function inRow(texts: readonly string[]): string {
  return texts.join(between("list"));
}

/** What adds to the word before it, in brackets. */
export function bracketed(text: string): string {
  return say("page-join-brackets", { text });
}

export function hasWords(key: string): boolean {
  return spoken.bundle.hasMessage(key);
}

export function byteCount(n: number): string {
  if (n < 1024) return say("page-bytes", { n: count(n) });
  if (n < 1024 * 1024) return say("page-kib", { n: count(Math.round(n / 1024)) });
  return say("page-mib", { n: spoken.tenths.format(n / (1024 * 1024)) });
}

/** Fills the words of markup that is made once: that of index.html, and what is drawn once and kept. */
export function sayMarkup(root: ParentNode): void {
  for (const node of root.querySelectorAll<HTMLElement>("[data-say]")) {
    node.textContent = say(node.dataset["say"] ?? "");
  }
  for (const [data, attribute] of [["say-label", "aria-label"], ["say-placeholder", "placeholder"]] as const) {
    for (const node of root.querySelectorAll(`[data-${data}]`)) node.setAttribute(attribute, say(node.getAttribute(`data-${data}`) ?? ""));
  }
}
