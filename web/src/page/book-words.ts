// Words of the rule books are data with a source: they stand in the language they were written in.

import { el } from "./elements";
import { told } from "./instance";
import { ENGLISH } from "./words";

/** The books that come with the program are English; what a person's own book speaks nobody knows. */
export function bookLanguage(): string {
  return told.given.some((given) => given.kind === "rule_book") ? "" : ENGLISH;
}

/** A text of a rule book as it stands, with its language for those who hear it. */
export function ofBook(text: string): HTMLElement {
  return el("span", { lang: bookLanguage() }, text);
}
