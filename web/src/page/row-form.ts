// Acts whose value holds several named fields: a form for a new one, and those that were given, each with its way back.

import type { ActView } from "../shared/door";
import { controlId } from "./acts-given";
import { fieldsIn, joinedFields } from "./act-kinds";
import { actText, actWords, givenBy } from "./acts-in-force";
import { el, focusIn, type Child } from "./elements";
import { actForm, field, initialsInput, noInitials, textInput, type NotYet } from "./forms";
import { stillHere } from "./hand";
import { undoAll, type Doing } from "./inspection";
import { typedNumber } from "./numbers";
import { change, state } from "./state";
import { hasWords, inRow, say } from "./words";

export interface RowField {
  name: string;
  /** An amount is a number in mg/kg; a result may also lie below one (`<5`). */
  type: "text" | "date" | "whole" | "decimal" | "amount" | "result";
  /** What it may be; a list to pick from. */
  values?: string[];
  /** What stands there to begin with. */
  now?: string;
  needed?: boolean;
  /** Only asked for where another field has this value. */
  when?: [string, string];
  /** It says something of another field, and is left out where that is empty. */
  of?: string;
}

export interface Row {
  kind: string;
  fields: RowField[];
  /** Fields that are not asked for: the place says them. */
  said?: Record<string, string>;
  /** Whoever does it puts initials to it. */
  signed?: boolean;
  /** A later one takes the place of an earlier one; else each stands for itself. */
  once?: boolean;
}

interface RowWishes {
  target: string;
  /** Tells this form from its like elsewhere, for ears and for its id. */
  about: string;
  where?: string;
  /** What stands in fields to begin with here. */
  now?: Record<string, string>;
}

const UNIT = "mg/kg";

function words(kind: string, name: string): string {
  return actWords(kind, `field-${name}`);
}

function valueText(kind: string, name: string, value: string): string {
  const key = `${words(kind, name)}-${value.toLowerCase().replace(/[^a-z0-9]+/g, "-")}`;
  return hasWords(key) ? say(key) : value;
}

/** The value to record, `null` where what was typed is none. */
function read(of: RowField, typed: string): string | null {
  if (typed === "" || of.values !== undefined) return typed;
  switch (of.type) {
    case "whole":
    case "decimal":
      return typedNumber(typed, of.type, "%");
    case "amount": {
      const number = typedNumber(typed, "decimal", UNIT);
      return number === null ? null : `${number} ${UNIT}`;
    }
    case "result": {
      const below = typed.startsWith("<");
      const number = typedNumber(below ? typed.slice(1) : typed, "decimal", UNIT);
      return number === null ? null : `${below ? "<" : ""}${number} ${UNIT}`;
    }
    default:
      return typed;
  }
}

export function rowForm(row: Row, wishes: RowWishes): HTMLElement {
  const id = `${wishes.where ?? "row"}-${controlId(row.kind, wishes.target, wishes.about)}`;
  const inputs = row.fields.map((of) => {
    const now = wishes.now?.[of.name] ?? of.now ?? "";
    const name = `${id}-${of.name}`;
    const control =
      of.values === undefined
        ? textInput(name, now, of.type === "date" ? "date" : "text")
        : el("select", { id: name }, el("option", { value: "" }, say("page-row-pick")), ...of.values.map((value) => el("option", { value, selected: value === now }, valueText(row.kind, of.name, value))));
    if (of.type === "decimal" || of.type === "amount") control.setAttribute("inputmode", "decimal");
    if (of.type === "whole") control.setAttribute("inputmode", "numeric");
    const hint = `${words(row.kind, of.name)}-hint`;
    return { of, control, box: field(say(words(row.kind, of.name)), control, hasWords(hint) ? say(hint) : "") };
  });
  // Where some of it stands there already, one goes on at the first that does not.
  const first = inputs.find((one) => one.of.needed === true && one.control.value === "");
  if (first !== undefined) first.box.dataset["missing"] = "yes";
  const own = row.signed === true ? initialsInput(`${id}-own`) : null;
  const asked = (of: RowField): boolean => of.when === undefined || inputs.some((one) => one.of.name === of.when?.[0] && one.control.value === of.when[1]);
  const show = (): void => {
    for (const one of inputs) one.box.hidden = !asked(one.of);
  };
  show();
  for (const one of inputs) one.control.addEventListener("change", show);
  const readAll = (): Doing | NotYet => {
    const fields: Record<string, string> = { ...row.said };
    for (const { of, control } of inputs) {
      if (!asked(of)) continue;
      const typed = control.value.trim();
      const value = read(of, typed);
      if (value === null) return { why: say(of.type === "whole" ? "page-act-no-whole-number" : "page-act-no-number", { typed }), field: control };
      if (value === "" && of.needed === true) return { why: say("page-row-needed", { field: say(words(row.kind, of.name)) }), field: control };
      fields[of.name] = value;
    }
    for (const { of } of inputs) if (of.of !== undefined && (fields[of.of] ?? "") === "") delete fields[of.name];
    const [first] = inputs;
    if (first !== undefined && inputs.every((one) => (fields[one.of.name] ?? "") === "")) return { why: say("page-row-empty"), field: first.control };
    if (own !== null) {
      const unsigned = noInitials(own);
      if (unsigned !== null) return unsigned;
      fields["by"] = state.initials;
      if ((fields["second"] ?? "").toLowerCase() === state.initials.toLowerCase()) return { why: say("page-claim-same-person"), field: inputs.find((one) => one.of.name === "second")?.control ?? own };
    }
    return { kind: row.kind, target: wishes.target, value: joinedFields(fields) };
  };
  const heard = inRow([say(actWords(row.kind, "label")), wishes.about]);
  return actForm(
    { id, button: say(row.signed === true ? "page-holds-lift-send" : row.once === true ? "page-act-give" : "page-row-add"), heard, read: readAll, after: (here) => void (here && focusIn(id)) },
    el("div", { class: "form-fields" }, ...inputs.map((one) => one.box), own === null ? null : field(say("page-who-initials"), own)),
  );
}

/** Those that stand on a target, newest last; where only one counts, that one, and taking it back leaves none. */
export function rowsGiven({ kind, said, once }: Pick<Row, "kind" | "said" | "once">, target: string, focusAfter: string): Child {
  const fits = (value: string): boolean => {
    const fields = fieldsIn(value);
    return Object.entries(said ?? {}).every(([name, expected]) => (fields[name] ?? "") === expected);
  };
  const acts = (state.summary?.acts ?? []).filter((act) => act.kind === kind && act.target === target && !act.undone && fits(act.value));
  const shown = once === true ? acts.slice(-1) : acts;
  if (shown.length === 0) return null;
  const back = async (act: ActView): Promise<void> => {
    const here = stillHere();
    const numbers = once === true ? acts.map((one) => one.number) : [act.number];
    if ((await undoAll(numbers)).length === 0) return;
    change({ event: say("page-event-undone", { act: actText(act) }) });
    if (here()) focusIn(focusAfter);
  };
  return el(
    "ul",
    { class: "acts rows-given" },
    ...shown.map((act) =>
      el(
        "li",
        { class: "act" },
        el("span", { class: "act-text" }, act.text),
        el("span", { class: "quiet" }, givenBy(act)),
        el(
          "button",
          { type: "button", id: controlId(`${kind}-back`, target, String(act.number)), class: "tool", on: { click: () => void back(act) } },
          say("page-act-take-back"),
          el("span", { class: "heard" }, ` ${act.text}`),
        ),
      ),
    ),
  );
}
