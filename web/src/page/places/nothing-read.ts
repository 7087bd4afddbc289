// Files came in and no reading came out of them: every place says so and where to look, instead of an empty answer.

import type { Summary } from "../../shared/door";
import { el } from "../elements";
import { say } from "../words";

/** What there is to say of it in one sentence; null where there are readings. */
export function nothingReadText(summary: Summary): string | null {
  if (summary.readings > 0) return null;
  return say(summary.sources.some((source) => source.read) ? "page-no-readings" : "page-no-file-read");
}

export function nothingRead(summary: Summary): HTMLElement | null {
  const text = nothingReadText(summary);
  return text === null ? null : el("p", { class: "lead nothing-read" }, text, " ", el("a", { href: "#came-in" }, say("page-look-at-came-in")));
}
