// The room's first view: what to do next, the lessons with their progress, the seed, the ruler, and deliveries to review.

import type { Delivery } from "../demo";
import { el } from "../elements";
import { deliveryButtons, openDelivery } from "../places/start";
import { say } from "../words";
import { inventedDelivery } from "./ask";
import { lessonTitle, nextStep, progressText } from "./lesson";
import { LESSONS, addressOf, newSeed, progressOf, training, AT_FIRST } from "./training";
import { verdictMark } from "./verdict";

/** Opens the delivery of the seed like any other; an inspection that is open is put by. */
async function openFresh(): Promise<void> {
  const { seed } = training;
  const made = await inventedDelivery(seed);
  if (made === null) return;
  const delivery: Delivery = {
    folder: `invented-${seed}`,
    title: say("page-train-fresh-title", { seed }),
    story: [say("page-train-fresh-story", { seed })],
    settings: made.settings,
    history: null,
    results: [made.results],
    fresh: true,
  };
  await openDelivery(delivery);
}

function seedForm(use: (seed: string) => Promise<boolean>): HTMLElement {
  const refusal = el("p", { id: "train-seed-refusal", class: "refusal", role: "alert", hidden: true }, say("page-train-seed-wrong"));
  const input = el("input", { id: "train-seed", type: "text", inputmode: "numeric", maxlength: 20, autocomplete: "off", value: training.seed, "aria-describedby": "train-seed-hint train-seed-refusal" });
  const send = async (seed: string): Promise<void> => {
    const taken = await use(seed);
    refusal.hidden = taken;
    if (taken) input.removeAttribute("aria-invalid");
    else {
      input.setAttribute("aria-invalid", "true");
      input.focus();
    }
  };
  return el(
    "form",
    {
      class: "train-seed",
      on: {
        submit: (event) => {
          event.preventDefault();
          void send(input.value.trim());
        },
      },
    },
    el("label", { for: input.id }, say("page-train-seed")),
    el(
      "div",
      { class: "entry" },
      input,
      el("button", { type: "submit", id: "train-seed-use", class: "tool" }, say("page-train-seed-use")),
      el("button", { type: "button", id: "train-seed-new", class: "tool", on: { click: () => void send(newSeed()) } }, say("page-train-seed-new")),
    ),
    el("p", { id: "train-seed-hint", class: "hint" }, say("page-train-seed-hint")),
    refusal,
  );
}

export function drawHome(host: HTMLElement, use: (seed: string) => Promise<boolean>): void {
  host.replaceChildren(
    el("p", { class: "lead", id: "train-view", tabindex: -1 }, say("page-train-lead")),
    el("div", { class: "train-next" }, nextStep(), el("a", { id: "train-ruler", class: "second", href: addressOf("ruler") }, say("page-train-ruler")), el("a", { id: "train-sheet", class: "tool", href: addressOf("sheet") }, say("page-train-sheet"))),
    el("h2", {}, say("page-train-lessons")),
    el(
      "ol",
      { class: "train-track" },
      ...LESSONS.map((lesson) =>
        el(
          "li",
          {},
          el(
            "a",
            { id: `lesson-${lesson}`, class: "train-stop", href: addressOf(lesson) },
            el("strong", {}, lessonTitle(lesson)),
            el("span", { class: "quiet" }, progressOf(lesson).done >= AT_FIRST ? verdictMark(true) : null, " ", progressText(lesson)),
          ),
        ),
      ),
    ),
    seedForm(use),
    el("section", { class: "card", "aria-labelledby": "train-fresh" }, el("h2", { id: "train-fresh" }, say("page-train-fresh")), el("p", {}, say("page-train-fresh-hint")), el("div", {}, el("button", { type: "button", id: "train-fresh-open", class: "second", on: { click: () => void openFresh() } }, say("page-train-fresh-open")))),
    el("section", { class: "card", "aria-labelledby": "train-deliveries" }, el("h2", { id: "train-deliveries" }, say("page-train-deliveries")), el("p", { class: "hint" }, say("page-train-deliveries-hint", { back: say("page-bring-back") })), deliveryButtons()),
  );
}
