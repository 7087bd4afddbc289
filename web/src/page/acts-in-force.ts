// Which of the recorded acts counts where: the newest that stands on the narrowest target. Bookkeeping, no trade.

import type { ActView } from "../shared/door";
import { namesIn } from "./act-kinds";
import { state } from "./state";
import { count, hasWords, inRow, say } from "./words";

/** The newest act of this kind on exactly this target that still counts. */
export function standing(kind: string, target: string): ActView | null {
  return state.summary?.acts.filter((act) => act.kind === kind && act.target === target && !act.undone).at(-1) ?? null;
}

/** The act that counts for the first of `targets`, which go from narrow to wide. */
export function inForce(kind: string, targets: string[]): ActView | null {
  for (const target of targets) {
    const act = standing(kind, target);
    if (act !== null && act.value !== "") return act;
  }
  return null;
}

/** How many narrower targets have an act of their own, which an act for the whole inspection does not touch. */
export function narrower(kind: string): number {
  const acts = state.summary?.acts ?? [];
  return new Set(acts.filter((act) => act.kind === kind && act.target !== "" && !act.undone).map((act) => act.target)).size;
}

const SIGNS: Record<string, string> = { ".": "point", ",": "comma", "%": "percent" };

export function actWords(kind: string, part: string): string {
  return `page-act-${kind.replaceAll("_", "-")}-${part}`;
}

/** The value of an act as a person reads it. */
export function valueName(kind: string, value: string): string {
  const key = actWords(kind, `value-${SIGNS[value] ?? value.toLowerCase().replace(/[^a-z0-9]+/g, "-")}`);
  if (hasWords(key)) return say(key);
  if (kind === "relative_sigma") return say("page-percent", { value });
  if (kind === "thickness_mm") return say("page-millimetres", { value });
  return /^\d{1,12}$/.test(value) ? count(Number(value)) : value;
}

/** Headings go by a file that has them; a fingerprint says nothing to a person. */
function tableWithHeadings(fingerprint: string): string {
  const known = state.summary?.sources.find((source) => source.blocks.some((block) => block.fingerprint === fingerprint));
  return known?.name ?? fingerprint;
}

/** What an act speaks about, in words; empty for the whole inspection. */
export function targetName(target: string): string {
  const { kind, names } = namesIn(target);
  const [first = "", second = "", third = "", fourth = ""] = names;
  const or = (name: string): string => (name === "" ? say("page-target-unnamed") : name);
  switch (kind) {
    case "source":
      return say("page-target-file", { name: first });
    case "lot":
      return first + second === "" ? say("page-target-lot-unnamed") : say("page-target-lot", { lot: or(second), supplier: or(first) });
    case "part":
      return say("page-target-part", { part: or(first) });
    case "material":
      return say("page-target-material", { part: or(first), material: or(second) });
    case "lot_material":
      return say("page-target-lot-material", { supplier: or(first), lot: or(second), part: or(third), material: or(fourth) });
    case "reading":
      return say("page-target-reading", { name: first, line: count(Number(second)) });
    case "header":
      return say("page-target-header", { name: tableWithHeadings(first) });
    default:
      return "";
  }
}

/** An act in words, with what it speaks about. */
export function actText(act: ActView): string {
  const about = targetName(act.target);
  return about === "" ? act.text : say("page-act-about", { act: act.text, about });
}

/** Whose act it is: a person's initials, or the settings file it came from. */
export function signature(act: ActView): string {
  // What came out of a settings file carries the file's name and nobody's initials.
  const by = act.by !== "" ? act.by : act.note !== "" ? act.note : say("page-act-no-initials");
  return act.at === "" ? by : inRow([by, act.at]);
}

export function givenBy(act: ActView): string {
  return act.by === "" && act.note === "" && act.at === "" ? say("page-act-given-unsigned") : say("page-act-given", { signature: signature(act) });
}
