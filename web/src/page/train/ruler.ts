// A ruler that can be moved: by dragging bob and whisker, by sliders, by typing. What each place means is the core's to say.

import type { ScaleView, WhatIf, WhatIfView } from "../../shared/door";
import { el } from "../elements";
import { figure } from "../figures";
import { outcomeTag } from "../outcomes";
import { say } from "../words";
import { newestOnly, whatIf } from "./ask";
import { workingOf } from "./told";
import { onRuler, training, type LessonName } from "./training";

const CLASSES = ["polymer", "metal", "composite", "plated", "unknown"];
const SUBSTANCES = ["Cd", "Pb", "Hg", "Cr", "Br"];
const KINDS = ["number", "below", "none"] as const;
type Kind = (typeof KINDS)[number];

const STEPS = 1000;
/** A whisker is about a tenth of what it hangs on. */
const SIGMA_DECADES = 1;
const BARE = "n.d.";

function kindOf({ written }: WhatIf): Kind {
  if (written === BARE) return "none";
  return written.startsWith("<") ? "below" : "number";
}

function numberOf({ written }: WhatIf): string {
  return written.replace(/^<\s*/, "");
}

/** Three digits are as fine as a finger is. */
function rounded(value: number): string {
  return String(Number(value.toPrecision(3)));
}

function valueAt(share: number, from: number, to: number): string {
  return rounded(10 ** (from + share * (to - from)));
}

function shareOf(value: string, from: number, to: number): number {
  const share = (Math.log10(Number(value)) - from) / (to - from);
  return Number.isFinite(share) ? Math.min(1, Math.max(0, share)) : 0;
}

interface Moved {
  slider: HTMLInputElement;
  typed: HTMLInputElement;
  box: HTMLElement;
}

function moved(id: string, label: string, slide: string, typedBy: () => void, slidBy: () => void): Moved {
  const typed = el("input", { id, type: "number", min: 0, step: "any", inputmode: "decimal", autocomplete: "off", on: { input: typedBy } });
  const slider = el("input", { id: `${id}-slide`, type: "range", min: 0, max: STEPS, step: 1, "aria-label": slide, on: { input: slidBy } });
  return { slider, typed, box: el("div", { class: "ruler-field" }, el("label", { for: id }, label), el("div", { class: "entry" }, typed), slider) };
}

/** `id` tells one ruler from another; what stands on it is kept while the page is open. */
export function movableRuler(id: LessonName | "ruler"): HTMLElement {
  let now = onRuler(id);
  let view: WhatIfView | null = null;
  let heard = "";
  const pick = (name: string, label: string, choices: [string, string][], chosen: string, take: (value: string) => void): [HTMLSelectElement, HTMLElement] => {
    const select = el(
      "select",
      { id: `move-${id}-${name}`, on: { change: () => take(select.value) } },
      ...choices.map(([value, text]) => el("option", { value, selected: value === chosen }, text)),
    );
    return [select, el("div", { class: "form-field" }, el("label", { for: select.id }, label), select)];
  };
  const [, classField] = pick("class", say("page-train-class"), CLASSES.map((one) => [one, say(`page-train-class-${one}`)]), now.class, (value) => set({ class: value }));
  const [, substanceField] = pick("substance", say("page-train-substance"), SUBSTANCES.map((one) => [one, say(`page-train-substance-${one.toLowerCase()}`)]), now.substance, (value) => set({ substance: value }));
  const [, kindField] = pick("kind", say("page-train-kind"), KINDS.map((one) => [one, say(`page-train-kind-${one}`)]), kindOf(now), (value) => {
    const number = numberOf(now) === BARE ? "100" : numberOf(now);
    set({ written: value === "none" ? BARE : value === "below" ? `< ${number}` : number });
  });
  const value = moved(`move-${id}-value`, say("page-train-value"), say("page-train-slide-value"), () => setValue(value.typed.value), () => setValue(valueAt(Number(value.slider.value) / STEPS, ...ends())));
  const sigma = moved(`move-${id}-sigma`, say("page-train-sigma"), say("page-train-slide-sigma"), () => set({ sigma: sigma.typed.value }), () => set({ sigma: valueAt(Number(sigma.slider.value) / STEPS, ...sigmaEnds()) }));
  const detection = el("input", { id: `move-${id}-detection`, type: "number", min: 0, step: "any", inputmode: "decimal", autocomplete: "off", value: now.detection, on: { input: () => set({ detection: detection.value }) } });
  const detectionField = el("div", { class: "form-field" }, el("label", { for: detection.id }, say("page-train-limit")), detection);
  const drawing = el("div", { class: "figure-frame ruler-drawing" });
  const bobGrip = el("span", { class: "grip grip-bob", "aria-hidden": "true" });
  const whiskerGrip = el("span", { class: "grip grip-whisker", "aria-hidden": "true" });
  const pad = el("div", { class: "ruler-pad" }, bobGrip, drawing, whiskerGrip);
  const none = el("p", { class: "hint" }, say("page-train-ruler-none"));
  const outcome = el("div", { class: "ruler-outcome" });
  const why = el("p", {});
  const judgedAs = el("p", { class: "hint" });
  const live = el("p", { id: `move-${id}-heard`, class: "heard", role: "status" });
  const steps = el("div", { class: "ruler-steps" });

  const ends = (): [number, number] => [view?.range.from ?? 0, view?.range.to ?? 4];
  const sigmaEnds = (): [number, number] => {
    const [from, to] = ends();
    return [from - SIGMA_DECADES, to - SIGMA_DECADES];
  };

  const ask = newestOnly(whatIf, (answer: WhatIfView, asked: WhatIf) => {
    view = answer;
    const svg = figure(answer.finding.ruler);
    drawing.replaceChildren(...(svg === null ? [] : [svg]));
    pad.hidden = svg === null;
    none.hidden = svg !== null;
    outcome.replaceChildren(outcomeTag(answer.finding));
    why.textContent = answer.why;
    judgedAs.textContent = answer.judged_as;
    steps.replaceChildren();
    steps.append(...el("div", {}, workingOf(answer.finding)).childNodes);
    // Read out only when the words change: a dragged ruler would never stop talking.
    const text = say("page-train-now", { outcome: answer.finding.text });
    if (heard !== "" && heard !== text) live.textContent = text;
    heard = text;
    // What was moved meanwhile is where the hand is; the answer that shows it is under way.
    if (asked === now) placeControls();
  });

  function set(patch: Partial<WhatIf>): void {
    now = { ...now, ...patch };
    training.rulers.set(id, now);
    placeControls();
    ask(now);
  }

  function setValue(text: string): void {
    set({ written: kindOf(now) === "below" ? `< ${text}` : text });
  }

  function place(one: Moved, text: string, [from, to]: [number, number]): void {
    if (document.activeElement !== one.typed) one.typed.value = text;
    if (document.activeElement !== one.slider || text !== valueAt(Number(one.slider.value) / STEPS, from, to)) one.slider.value = String(Math.round(shareOf(text, from, to) * STEPS));
    one.slider.setAttribute("aria-valuetext", say("page-train-slid", { value: text }));
  }

  function placeControls(): void {
    const kind = kindOf(now);
    value.box.hidden = kind === "none";
    sigma.box.hidden = kind !== "number";
    detectionField.hidden = !(now.class === "composite" && now.substance === "Cd" && kind === "number");
    const label = value.box.querySelector("label");
    if (label !== null) label.textContent = say(kind === "below" ? "page-train-limit" : "page-train-value");
    value.slider.setAttribute("aria-label", say(kind === "below" ? "page-train-slide-limit" : "page-train-slide-value"));
    place(value, numberOf(now), ends());
    place(sigma, now.sigma, sigmaEnds());
    whiskerGrip.hidden = kind !== "number";
    const scale = view?.scale ?? null;
    if (scale === null) return;
    bobGrip.style.left = `${100 * onScale(Number(numberOf(now)), scale)}%`;
    whiskerGrip.style.left = `${100 * onScale(whiskerEnd(), scale)}%`;
  }

  const whiskerEnd = (): number => Number(numberOf(now)) + (view?.factor ?? 0) * Number(now.sigma);

  // ---- dragging ----

  let dragging: "bob" | "whisker" | null = null;

  const sharedAt = (event: PointerEvent): number => {
    const box = pad.getBoundingClientRect();
    return (event.clientX - box.left) / box.width;
  };

  function near(event: PointerEvent): "bob" | "whisker" {
    if (event.target === bobGrip || kindOf(now) !== "number") return "bob";
    if (event.target === whiskerGrip) return "whisker";
    const scale = view?.scale;
    if (scale == null) return "bob";
    const at = sharedAt(event);
    const toBob = Math.abs(at - onScale(Number(numberOf(now)), scale));
    const toEnd = Math.abs(at - onScale(whiskerEnd(), scale));
    return toEnd < toBob && toEnd < 0.06 ? "whisker" : "bob";
  }

  function drag(event: PointerEvent): void {
    const scale = view?.scale;
    if (dragging === null || scale == null) return;
    const along = Math.min(1, Math.max(0, (sharedAt(event) - scale.left) / (scale.right - scale.left)));
    // The last piece before the right end would make the scale grow under the hand.
    const top = scale.to - 0.2;
    const there = 10 ** Math.min(top, scale.from + along * (scale.to - scale.from));
    if (dragging === "bob") setValue(rounded(there));
    else {
      const sigmas = (there - Number(numberOf(now))) / (view?.factor ?? 1);
      set({ sigma: rounded(Math.max(sigmas, 10 ** sigmaEnds()[0])) });
    }
  }

  pad.addEventListener("pointerdown", (event) => {
    if (event.button !== 0) return;
    dragging = near(event);
    pad.setPointerCapture(event.pointerId);
    event.preventDefault();
    pad.classList.add("ruler-held");
    // A press on the grip is not yet a move: it must not jump to the pointer.
    if (event.target !== bobGrip && event.target !== whiskerGrip) drag(event);
  });
  pad.addEventListener("pointermove", drag);
  for (const end of ["pointerup", "pointercancel"] as const) {
    pad.addEventListener(end, () => {
      dragging = null;
      pad.classList.remove("ruler-held");
    });
  }

  placeControls();
  ask(now);
  return el(
    "div",
    { class: "movable", role: "group", "aria-label": say("page-train-ruler-figure") },
    el("div", { class: "form-fields" }, classField, substanceField, kindField, detectionField),
    pad,
    none,
    el("div", { class: "ruler-fields" }, value.box, sigma.box),
    outcome,
    why,
    judgedAs,
    live,
    el("details", { id: `move-${id}-steps`, class: "fold fold-inner" }, el("summary", {}, say("page-detail-working")), steps),
  );
}

function onScale(value: number, scale: ScaleView): number {
  const share = value <= 0 ? 0 : (Math.log10(value) - scale.from) / (scale.to - scale.from);
  return Math.min(scale.right, Math.max(scale.left, scale.left + share * (scale.right - scale.left)));
}
