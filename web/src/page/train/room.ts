// The trainer's room: one place with its own views, each with an address that holds the seed too.

import { el } from "../elements";
import { state, watch } from "../state";
import { say } from "../words";
import { exercisesOf } from "./ask";
import { drawHome } from "./home";
import { drawLesson } from "./lesson";
import { movableRuler } from "./ruler";
import { drawSheet } from "./sheet";
import { addressOf, fromAddress, newSeed, training, type View } from "./training";

let shown: { view: View; seed: string; language: string } | null = null;

/** Puts the seed in the address without a step to go back to. */
function settle(view: View): void {
  if (location.hash === addressOf(view)) return;
  try {
    history.replaceState(history.state, "", addressOf(view));
  } catch {
    // A browser that refuses this for pages from a disk shows the seed on the page all the same.
  }
}

function drawRuler(host: HTMLElement): void {
  host.replaceChildren(
    el("header", { class: "train-head" }, el("a", { class: "tool", href: addressOf("home") }, say("page-train-home"))),
    el("h2", { id: "train-view", class: "train-title", tabindex: -1 }, say("page-train-ruler")),
    el("p", {}, say("page-train-ruler-lead")),
    el("div", { class: "card" }, movableRuler("ruler")),
  );
}

/** `use` says whether a typed seed was taken: the core knows what a seed is. */
async function useSeed(host: HTMLElement, seed: string): Promise<boolean> {
  const made = await exercisesOf("band", seed, 1);
  if (made === "wrong" || made === null) return false;
  training.seed = seed;
  settle("home");
  draw(host);
  host.querySelector<HTMLElement>("#train-seed")?.focus();
  return true;
}

function draw(host: HTMLElement): void {
  const there = fromAddress();
  if (there === null) return;
  if (there.seed !== "") training.seed = there.seed;
  if (training.seed === "") training.seed = newSeed();
  const { view } = there;
  settle(view);
  shown = { view, seed: training.seed, language: state.language };
  host.dataset["view"] = view;
  if (view === "home") drawHome(host, (seed) => useSeed(host, seed));
  else if (view === "ruler") drawRuler(host);
  else if (view === "sheet") drawSheet(host);
  else drawLesson(host, view);
}

export function beginTraining(host: HTMLElement): void {
  const arrive = (): void => {
    const there = fromAddress();
    if (there === null) {
      shown = null;
      return;
    }
    const moved = shown !== null && shown.view !== there.view;
    draw(host);
    if (!moved) return;
    scrollTo(0, 0);
    document.getElementById("train-view")?.focus({ preventScroll: true });
  };
  addEventListener("hashchange", arrive);
  watch(["language"], () => {
    if (shown !== null) draw(host);
  });
  arrive();
}
