// Controls that record an act. Each shows what counts now, who gave it, and how to take it back.

import type { ActView } from "../shared/door";
import type { Typed } from "./act-kinds";
import { el, type Child } from "./elements";
import { doAct, undo, type Doing } from "./inspection";
import { state } from "./state";
import { hasWords, say } from "./words";

/** The newest act of this kind on this target that still counts. */
export function standing(kind: string, target: string): ActView | null {
  return state.summary?.acts.filter((act) => act.kind === kind && act.target === target && !act.undone).at(-1) ?? null;
}

/** An element id that stays the same from one drawing to the next, so that focus can be given back. */
export function controlId(kind: string, target: string, value = ""): string {
  return `act-${kind}-${target}-${value}`.replace(/[^A-Za-z0-9_-]/g, (letter) => `_${letter.codePointAt(0)?.toString(16) ?? ""}_`);
}

function words(kind: string, part: string): string {
  return `page-act-${kind.replaceAll("_", "-")}-${part}`;
}

export function signature(act: ActView): string {
  // What came out of a settings file carries the file's name and nobody's initials.
  const by = act.by !== "" ? act.by : act.note !== "" ? act.note : say("page-act-no-initials");
  return act.at === "" ? by : `${by}, ${act.at}`;
}

function given(act: ActView | null, id: string): Child {
  if (act === null) return null;
  return el(
    "p",
    { class: "given" },
    el("span", {}, say("page-act-given", { signature: signature(act) })),
    el("button", { type: "button", id: `${id}-back`, class: "tool", on: { click: () => void undo(act.number) } }, say("page-act-take-back"), el("span", { class: "heard" }, ` ${act.text}`)),
  );
}

// Says what the core would not take, right where it was typed.
export function refusalLine(id: string): HTMLElement {
  return el("p", { id: `${id}-refusal`, class: "refusal", hidden: true });
}

export async function record(doing: Doing, refusal: HTMLElement): Promise<boolean> {
  const refused = await doAct(doing);
  refusal.hidden = refused === null;
  refusal.textContent = refused === null ? "" : `${refused.text} ${refused.remedy}`;
  return refused === null;
}

export interface ControlWishes {
  kind: string;
  target?: string;
  /** Says which file or lot it is about, where several controls of one kind stand together. */
  about?: string;
  /** Leaves out the explanation, where it was given once above. */
  bare?: boolean;
}

function hint(wishes: ControlWishes, id: string): Child {
  const key = words(wishes.kind, "hint");
  return wishes.bare === true || !hasWords(key) ? null : el("p", { class: "hint", id: `${id}-hint` }, say(key));
}

// What it is about stands just above for the eye; a label must say it for itself to be told from its neighbours by ear.
function label(wishes: ControlWishes): Child {
  return [say(words(wishes.kind, "label")), wishes.about === undefined ? null : el("span", { class: "heard" }, ` (${wishes.about})`)];
}

/** One of a few values: a press records it. */
export function choice(wishes: ControlWishes, values: string[], names: Record<string, string> = {}): HTMLElement {
  const target = wishes.target ?? "";
  const act = standing(wishes.kind, target);
  const group = controlId(wishes.kind, target);
  const refusal = refusalLine(group);
  return el(
    "fieldset",
    { class: "control" },
    el("legend", {}, label(wishes)),
    hint(wishes, group),
    el(
      "div",
      { class: "choices" },
      ...values.map((value) => {
        const id = controlId(wishes.kind, target, value);
        return el(
          "label",
          { class: "choice", for: id },
          el("input", {
            type: "radio",
            id,
            name: group,
            value,
            checked: act?.value === value,
            on: { change: () => void record({ kind: wishes.kind, target, value }, refusal) },
          }),
          el("span", {}, names[value] ?? valueName(wishes.kind, value)),
        );
      }),
    ),
    refusal,
    given(act, group),
  );
}

const SIGNS: Record<string, string> = { ".": "point", ",": "comma", "%": "percent" };

export function valueName(kind: string, value: string): string {
  const key = words(kind, `value-${SIGNS[value] ?? value.toLowerCase().replace(/[^a-z0-9]+/g, "-")}`);
  return hasWords(key) ? say(key) : value;
}

/** Something typed: Enter, leaving the field or the button records it; emptying it takes it back. */
export function entry(wishes: ControlWishes, type: "text" | "number" | "date", traits: Typed["traits"] = {}): HTMLElement {
  const target = wishes.target ?? "";
  const act = standing(wishes.kind, target);
  const id = controlId(wishes.kind, target);
  const refusal = refusalLine(id);
  const hinted = wishes.bare !== true && hasWords(words(wishes.kind, "hint"));
  const input = el("input", {
    id,
    type,
    value: act?.value ?? "",
    autocomplete: "off",
    inputmode: type === "number" ? "decimal" : undefined,
    "aria-describedby": hinted ? `${id}-hint ${id}-refusal` : `${id}-refusal`,
    ...traits,
  });
  const commit = (): void => {
    delete input.dataset["dirty"];
    const value = input.value.trim();
    if (value === (act?.value ?? "")) return;
    if (value === "") {
      if (act !== null) void undo(act.number);
    } else {
      void record({ kind: wishes.kind, target, value }, refusal).then((taken) => input.setAttribute("aria-invalid", String(!taken)));
    }
  };
  input.addEventListener("input", () => {
    input.dataset["dirty"] = "yes";
  });
  input.addEventListener("change", commit);
  return el(
    "form",
    {
      class: "control",
      on: {
        submit: (event) => {
          event.preventDefault();
          commit();
        },
      },
    },
    el("label", { for: id }, label(wishes)),
    el("div", { class: "entry" }, input, el("button", { type: "submit", id: `${id}-set`, class: "tool" }, say("page-act-give"), el("span", { class: "heard" }, " ", label(wishes)))),
    refusal,
    hint(wishes, id),
    given(act, id),
  );
}
