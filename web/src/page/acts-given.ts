// Controls that record an act. Each shows what counts now, who gave it, and how to take it back. Nothing is recorded by
// passing over it: only the button, Enter, or (for something typed) leaving the field.

import type { ActView } from "../shared/door";
import type { Typed } from "./act-kinds";
import { actText, actWords, givenBy, inForce, narrower, standing, targetName, valueName } from "./acts-in-force";
import { el, focusIn, type Child, type Traits } from "./elements";
import { stillHere } from "./hand";
import { term } from "./help/term";
import { TERM_OF_ACT } from "./help/terms";
import { doAct, undo, type Doing } from "./inspection";
import { typedNumber } from "./numbers";
import { state, watch } from "./state";
import { bracketed, hasWords, say } from "./words";

/** An element id that stays the same from one drawing to the next, so that focus can be given back. */
export function controlId(kind: string, target: string, value = ""): string {
  return `act-${kind}-${target}-${value}`.replace(/[^A-Za-z0-9_-]/g, (letter) => `_${letter.codePointAt(0)?.toString(16) ?? ""}_`);
}

/** Takes an act back, and leaves the focus where it can be given anew. */
export function takeBackButton(act: ActView, id: string, focusAfter: string): HTMLElement {
  const back = async (): Promise<void> => {
    const here = stillHere();
    await undo(act.number);
    if (here()) focusIn(focusAfter);
  };
  return el("button", { type: "button", id, class: "tool", on: { click: () => void back() } }, say("page-act-take-back"), el("span", { class: "heard" }, ` ${actText(act)}`));
}

/** What counts here, where it comes from, and, where it was given for exactly this, how to take it back. */
function counting(wishes: ControlWishes, id: string): Child {
  const target = wishes.target ?? "";
  const act = inForce(wishes.kind, [target, ...(wishes.wider ?? [])]);
  const above = target === "" ? narrower(wishes.kind) : 0;
  return [
    act === null
      ? null
      : el(
          "p",
          { class: "given" },
          el(
            "span",
            {},
            say("page-act-in-force", { value: wishes.names?.[act.value] ?? valueName(wishes.kind, act.value) }),
            " ",
            act.target === target ? null : `${act.target === "" ? say("page-act-for-all") : say("page-act-for", { about: targetName(act.target) })} `,
            givenBy(act),
          ),
          act.target === target ? takeBackButton(act, `${id}-back`, `${id}-control`) : null,
        ),
    above === 0 ? null : el("p", { class: "hint" }, say("page-act-narrower", { n: above })),
  ];
}

/** What was typed and not taken, so that it is still there to be set right however often the place is drawn. */
const refused = new Map<string, { typed: string; why: string }>();
watch(["summary"], () => {
  if (state.summary === null) refused.clear();
});

// Says what was not taken, right where it was typed.
export function refusalLine(id: string): HTMLElement {
  const why = refused.get(id)?.why ?? "";
  return el("p", { id: `${id}-refusal`, class: "refusal", hidden: why === "" }, why);
}

export function showRefusal(line: HTMLElement, why: string): void {
  line.hidden = why === "";
  line.textContent = why;
}

export async function record(doing: Doing, refusal: HTMLElement): Promise<boolean> {
  const problem = await doAct(doing);
  showRefusal(refusal, problem === null ? "" : `${problem.text} ${problem.remedy}`);
  return problem === null;
}

export interface ControlWishes {
  kind: string;
  target?: string;
  /** Wider targets whose act counts here while there is none of its own, from narrow to wide. */
  wider?: string[];
  /** Says which file or lot it is about, where several controls of one kind stand together. */
  about?: string;
  /** Leaves out the explanation, where it was given once above. */
  bare?: boolean;
  /** Tells this control from another one for the same act elsewhere on the page. */
  where?: string;
  /** Names of values that are no fixed words. */
  names?: Record<string, string>;
  /** The value in effect where nobody set one. */
  now?: string;
  /** The wider target it may be recorded for instead, so that it counts another day too. */
  remember?: string;
  /** What a list calls having none; picking that takes the act back. */
  none?: string;
  /** Where the focus goes after it was recorded, unless the person has moved on; else it stays. */
  after?: () => void;
}

function idOf(wishes: ControlWishes): string {
  const id = controlId(wishes.kind, wishes.target ?? "");
  return wishes.where === undefined ? id : `${wishes.where}-${id}`;
}

function hint(wishes: ControlWishes, id: string): Child {
  const key = actWords(wishes.kind, "hint");
  if (wishes.bare === true || !hasWords(key)) return null;
  const about = TERM_OF_ACT[wishes.kind];
  return [el("p", { class: "hint", id: `${id}-hint` }, say(key)), about === undefined ? null : el("p", { class: "hint" }, term(about, id))];
}

// What it is about stands just above for the eye; a label must say it for itself to be told from its neighbours by ear.
function label(wishes: ControlWishes): Child {
  return [say(actWords(wishes.kind, "label")), wishes.about === undefined ? null : el("span", { class: "heard" }, bracketed(wishes.about))];
}

function setButton(wishes: ControlWishes, id: string): HTMLElement {
  return el("button", { type: "submit", id: `${id}-set`, class: "tool" }, say("page-act-give"), el("span", { class: "heard" }, " ", label(wishes)));
}

/** One of a few values: picked first, and recorded by the button or Enter, so that arrow keys may pass over them. */
export function choice(wishes: ControlWishes, values: string[]): HTMLElement {
  const target = wishes.target ?? "";
  const act = standing(wishes.kind, target);
  const id = idOf(wishes);
  const refusal = refusalLine(id);
  const radios = values.map((value) =>
    el("input", {
      type: "radio",
      id: `${id}${value.replace(/[^A-Za-z0-9_-]/g, (letter) => `_${letter.codePointAt(0)?.toString(16) ?? ""}_`)}`,
      name: id,
      value,
      checked: (act?.value ?? wishes.now) === value,
    }),
  );
  const remember = wishes.remember === undefined ? null : el("input", { type: "checkbox", id: `${id}-remember` });
  let sending = false;
  const commit = async (): Promise<void> => {
    const picked = radios.find((radio) => radio.checked);
    if (sending) return;
    if (picked === undefined) {
      showRefusal(refusal, say("page-act-pick-one"));
      radios[0]?.focus();
      return;
    }
    for (const control of [...radios, remember]) delete control?.dataset["dirty"];
    const about = remember?.checked === true ? (wishes.remember ?? target) : target;
    if (picked.value === standing(wishes.kind, about)?.value) {
      showRefusal(refusal, "");
      return;
    }
    sending = true;
    const here = stillHere();
    const taken = await record({ kind: wishes.kind, target: about, value: picked.value }, refusal);
    sending = false;
    if (taken && here()) wishes.after?.();
  };
  return el(
    "form",
    {
      id: `${id}-control`,
      class: "control",
      on: {
        submit: (event) => {
          event.preventDefault();
          void commit();
        },
        change: (event) => {
          // A page that is drawn anew between tick and button must not take the tick away.
          if (remember !== null && event.target === remember) {
            remember.dataset["dirty"] = "yes";
            return;
          }
          for (const radio of radios) delete radio.dataset["dirty"];
          if (event.target instanceof HTMLInputElement) event.target.dataset["dirty"] = "yes";
        },
      },
    },
    el(
      "fieldset",
      {},
      el("legend", {}, label(wishes)),
      hint(wishes, id),
      el(
        "div",
        { class: "choices" },
        ...radios.map((radio) => el("label", { class: "choice", for: radio.id }, radio, el("span", {}, wishes.names?.[radio.value] ?? valueName(wishes.kind, radio.value)))),
        setButton(wishes, id),
      ),
      remember === null ? null : el("label", { class: "field-check", for: remember.id }, remember, el("span", {}, say("page-act-remember"))),
    ),
    refusal,
    counting(wishes, id),
  );
}

/** One of many values: picked from a list. */
export function listed(wishes: ControlWishes, values: string[]): HTMLElement {
  const target = wishes.target ?? "";
  const id = idOf(wishes);
  const refusal = refusalLine(id);
  const now = standing(wishes.kind, target)?.value ?? wishes.now ?? "";
  const known = values.includes(now) || now === "" ? values : [now, ...values];
  const all = wishes.none === undefined ? known : ["", ...known];
  const commit = (value: string): void => {
    const given = standing(wishes.kind, target);
    if (value !== "") void record({ kind: wishes.kind, target, value }, refusal);
    else if (given !== null) void undo(given.number);
  };
  return el(
    "div",
    { id: `${id}-control`, class: "control" },
    el("label", { for: id }, label(wishes)),
    pickList(
      { id, "aria-describedby": `${id}-refusal` },
      all.map((value) => ({ value, text: value === "" ? (wishes.none ?? "") : (wishes.names?.[value] ?? valueName(wishes.kind, value)) })),
      now,
      commit,
    ),
    refusal,
    hint(wishes, id),
    counting(wishes, id),
  );
}

export interface Pickable {
  value: string;
  text: string;
  /** The heading it stands under in the list. */
  group?: string;
}

/**
 * A list to pick from. Picked by hand it counts at once. Arrow keys pass over one value after the other, and each would
 * have all files read again: by keys it counts on Enter or on leaving the list.
 */
export function pickList(traits: Traits, values: Pickable[], now: string, commit: (value: string) => void): HTMLSelectElement {
  const option = (one: Pickable): HTMLOptionElement => el("option", { value: one.value, selected: one.value === now }, one.text);
  const entries: Child[] = [];
  for (const one of values) {
    if (one.group === undefined) entries.push(option(one));
    else if (!entries.some((group) => group instanceof HTMLOptGroupElement && group.label === one.group)) {
      entries.push(el("optgroup", { label: one.group }, ...values.filter((other) => other.group === one.group).map(option)));
    }
  }
  const list = el("select", traits, ...entries);
  let byKeys = false;
  let sent = now;
  const take = (): void => {
    delete list.dataset["dirty"];
    byKeys = false;
    if (list.value === sent) return;
    sent = list.value;
    commit(list.value);
  };
  list.addEventListener("pointerdown", () => {
    byKeys = false;
  });
  list.addEventListener("keydown", (event) => {
    if (event.key === "Enter" && list.dataset["dirty"] === "yes") {
      event.preventDefault();
      take();
    } else if (!["Tab", "Shift", "Enter", "Escape"].includes(event.key)) byKeys = true;
  });
  list.addEventListener("change", () => {
    if (byKeys) list.dataset["dirty"] = "yes";
    else take();
  });
  list.addEventListener("blur", () => {
    if (list.dataset["dirty"] === "yes") take();
  });
  return list;
}

function typedValue(typed: string, type: Typed["type"], kind: string): string | null {
  if (type === "text" || type === "date") return typed;
  return typedNumber(typed, type, kind === "thickness_mm" ? "mm" : kind === "relative_sigma" ? "%" : "");
}

/**
 * A date field reports a change at every key that makes some date: the year 0002 on the way to 2026. Picked from the
 * calendar a date counts at once; typed it counts on leaving the field (and on Enter, which the form hears).
 */
function onWholeDate(input: HTMLInputElement, take: () => void): void {
  let byKeys = false;
  input.addEventListener("keydown", (event) => {
    if (event.key !== "Tab" && event.key !== "Shift") byKeys = true;
  });
  input.addEventListener("pointerdown", () => {
    byKeys = false;
  });
  input.addEventListener("change", () => {
    if (!byKeys) take();
  });
  input.addEventListener("blur", () => {
    // Half a date is none yet: it neither counts nor takes back what stood there.
    if (input.isConnected && input.dataset["dirty"] === "yes" && !input.validity.badInput) take();
  });
}

/** Something typed: Enter, leaving the field or the button records it, once; emptying it takes it back. */
export function entry(wishes: ControlWishes, type: Typed["type"]): HTMLElement {
  const target = wishes.target ?? "";
  const act = standing(wishes.kind, target);
  const id = idOf(wishes);
  const refusal = refusalLine(id);
  const hinted = wishes.bare !== true && hasWords(actWords(wishes.kind, "hint"));
  const kept = refused.get(id);
  const numeric = type === "whole" || type === "decimal";
  const input = el("input", {
    id,
    type: type === "date" ? "date" : "text",
    value: kept?.typed ?? act?.value ?? "",
    autocomplete: "off",
    inputmode: type === "whole" ? "numeric" : type === "decimal" ? "decimal" : undefined,
    "aria-invalid": kept === undefined ? undefined : "true",
    "aria-describedby": hinted ? `${id}-hint ${id}-refusal` : `${id}-refusal`,
  });
  const refuse = (why: string): void => {
    refused.set(id, { typed: input.value, why });
    input.setAttribute("aria-invalid", "true");
    showRefusal(refusal, why);
  };
  // Enter and the button also make the field report a change: what is on its way is not sent again.
  let sent: string | null = null;
  const commit = async (): Promise<void> => {
    delete input.dataset["dirty"];
    const typed = input.value.trim();
    const now = standing(wishes.kind, target);
    if (typed === sent) return;
    const value = typed === "" ? "" : typedValue(typed, type, wishes.kind);
    if (value === null) {
      refuse(say(type === "whole" ? "page-act-no-whole-number" : "page-act-no-number", { typed }));
      return;
    }
    refused.delete(id);
    input.removeAttribute("aria-invalid");
    showRefusal(refusal, "");
    if (value === (now?.value ?? "")) {
      if (numeric) input.value = value;
      return;
    }
    sent = typed;
    if (value === "") {
      if (now !== null) await undo(now.number);
    } else if (!(await record({ kind: wishes.kind, target, value }, refusal))) {
      refuse(refusal.textContent ?? "");
    } else wishes.after?.();
    sent = null;
  };
  input.addEventListener("input", () => {
    input.dataset["dirty"] = "yes";
  });
  if (type === "date") onWholeDate(input, () => void commit());
  else input.addEventListener("change", () => void commit());
  return el(
    "form",
    {
      id: `${id}-control`,
      class: "control",
      on: {
        submit: (event) => {
          event.preventDefault();
          void commit();
        },
      },
    },
    el("label", { for: id }, label(wishes)),
    el("div", { class: "entry" }, input, setButton(wishes, id)),
    refusal,
    hint(wishes, id),
    counting(wishes, id),
  );
}
