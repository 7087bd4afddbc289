// Forms of several fields that are sent as a whole and recorded as one act. What was typed and not sent yet survives
// every drawing of its place.

import { record, refusalLine, showRefusal } from "./acts-given";
import { byId, el, type Child } from "./elements";
import { stillHere } from "./hand";
import { type Doing } from "./inspection";
import { change, state } from "./state";
import { say } from "./words";

/** What stands in the way of recording, and the field it is about. */
export interface NotYet {
  why: string;
  field?: HTMLElement;
}

export interface FormWishes {
  id: string;
  button: string;
  /** Tells this button from its like elsewhere, for ears. */
  heard: string;
  read: () => Doing | NotYet;
  /** Told whether the person is still here: who has moved on keeps the focus. */
  after?: (here: boolean) => void;
}

type Field = HTMLInputElement | HTMLSelectElement;

function fieldsOf(form: HTMLElement): Field[] {
  return [...form.querySelectorAll<Field>("input[id], select[id]")];
}

export function actForm(wishes: FormWishes, ...children: Child[]): HTMLElement {
  const refusal = refusalLine(wishes.id);
  let sending = false;
  const send = async (form: HTMLElement): Promise<void> => {
    if (sending) return;
    for (const field of fieldsOf(form)) field.removeAttribute("aria-invalid");
    const doing = wishes.read();
    if ("why" in doing) {
      showRefusal(refusal, doing.why);
      doing.field?.setAttribute("aria-invalid", "true");
      doing.field?.focus();
      return;
    }
    sending = true;
    const dirty = fieldsOf(form).filter((field) => field.dataset["dirty"] === "yes");
    for (const field of dirty) delete field.dataset["dirty"];
    const here = stillHere();
    const taken = await record(doing, refusal);
    sending = false;
    if (taken) wishes.after?.(here());
    else for (const field of dirty) field.dataset["dirty"] = "yes";
  };
  const form = el(
    "form",
    {
      id: wishes.id,
      class: "act-form",
      on: {
        submit: (event) => {
          event.preventDefault();
          void send(form);
        },
        input: (event) => markDirty(event.target),
        change: (event) => markDirty(event.target),
      },
    },
    ...children,
    el("div", { class: "form-send" }, el("button", { type: "submit", id: `${wishes.id}-send`, class: "second" }, wishes.button, el("span", { class: "heard" }, ` ${wishes.heard}`))),
    refusal,
  );
  return form;
}

function markDirty(field: EventTarget | null): void {
  if ((field instanceof HTMLInputElement || field instanceof HTMLSelectElement) && field.dataset["shared"] !== "yes") field.dataset["dirty"] = "yes";
}

/** A control with its label above and what explains it below. */
export function field(label: string, control: Field, hint = ""): HTMLElement {
  const hintId = `${control.id}-hint`;
  if (hint !== "") control.setAttribute("aria-describedby", hintId);
  return el("div", { class: "form-field" }, el("label", { for: control.id }, label), control, hint === "" ? null : el("p", { class: "hint", id: hintId }, hint));
}

export function textInput(id: string, value: string, type: "text" | "date" = "text"): HTMLInputElement {
  return el("input", { id, type, value, autocomplete: "off" });
}

/** The initials put on every act, once more where they are needed: what is typed here counts there too. */
export function initialsInput(id: string): HTMLInputElement {
  const input = textInput(id, state.initials);
  input.maxLength = 12;
  input.dataset["shared"] = "yes";
  input.addEventListener("input", () => {
    byId<HTMLInputElement>("who-initials").value = input.value;
    change({ initials: input.value.trim() });
  });
  return input;
}

/** Whose act it would be is part of what is asked: without initials it is not sent. */
export function noInitials(input: HTMLInputElement): NotYet | null {
  input.value = state.initials;
  return state.initials === "" ? { why: say("page-form-no-initials"), field: input } : null;
}
