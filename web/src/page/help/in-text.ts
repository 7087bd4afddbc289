// Terms within the sentences of a text: where the name of one comes first, it is the word that opens its card. Names are the
// catalogue's, so this holds in every language; what a text never names stands in a line below it.

import { el, type Child } from "../elements";
import { state } from "../state";
import { say } from "../words";
import { term } from "./term";
import type { TermId } from "./terms";

/** A word may end otherwise in a sentence: limits, Grenzwerte. More letters than these make it another word (our choice). */
const ENDING = "(?:\\p{L}{0,2}(?!\\p{L}))";

/** The ways a term is written, the fullest first: “BL, below limit” is also “below limit”. */
function names(id: TermId): string[] {
  const whole = say(`page-term-${id}`);
  return [whole, ...whole.split(/[,、，（）()]/)].map((one) => one.trim()).filter((one) => one.length > 1);
}

function pattern(name: string): RegExp {
  const plain = name.replace(/[.*+?^${}()|[\]\\]/g, "\\$&").replace(/ /g, "(?:\\p{L}{0,2}) ");
  // Japanese and Chinese put no spaces between words.
  return ["ja", "zh-Hans"].includes(state.language) ? new RegExp(plain, "iu") : new RegExp(`(?<!\\p{L})${plain}${ENDING}`, "iu");
}

interface Found {
  id: TermId;
  text: number;
  from: number;
  to: number;
}

/** The texts with their terms in them, and the terms that none of them names. */
export function withTerms(texts: string[], where: string, ids: TermId[]): { texts: Child[][]; left: TermId[] } {
  const found: Found[] = [];
  const wanted = ids.flatMap((id) => names(id).map((name) => ({ id, name }))).sort((a, b) => b.name.length - a.name.length);
  for (const { id, name } of wanted) {
    if (found.some((one) => one.id === id)) continue;
    const all = new RegExp(pattern(name), "giu");
    const first = texts
      .flatMap((text, at) => [...text.matchAll(all)].map((match) => ({ id, text: at, from: match.index, to: match.index + match[0].length })))
      .find((one) => found.every((other) => other.text !== one.text || other.to <= one.from || other.from >= one.to));
    if (first !== undefined) found.push(first);
  }
  return {
    texts: texts.map((text, at) => {
      const parts: Child[] = [];
      let from = 0;
      for (const one of found.filter((each) => each.text === at).sort((a, b) => a.from - b.from)) {
        const before = /[\p{Ps}\p{Pi}"]*$/u.exec(text.slice(from, one.from))?.[0] ?? "";
        const behind = /^\p{P}*/u.exec(text.slice(one.to))?.[0] ?? "";
        parts.push(text.slice(from, one.from - before.length), el("span", { class: "term-held" }, before, term(one.id, where, text.slice(one.from, one.to)), behind));
        from = one.to + behind.length;
      }
      return [...parts, text.slice(from)];
    }),
    left: ids.filter((id) => !found.some((one) => one.id === id)),
  };
}
