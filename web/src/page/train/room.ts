// The trainer's room: one place with its own views, each with an address that holds the seed too.

import { el } from "../elements";
import { addressChanged, registerAddress } from "../place";
import { change, state, watch } from "../state";
import { say } from "../words";
import { exercisesOf } from "./ask";
import { drawHome } from "./home";
import { drawLesson } from "./lesson";
import { movableRuler } from "./ruler";
import { drawSheet } from "./sheet";
import { addressOf, fromAddress, newSeed, openExercise, training } from "./training";

let drawn = false;

function drawRuler(host: HTMLElement): void {
  host.replaceChildren(
    el("header", { class: "train-head" }, el("a", { id: "train-all", class: "tool", href: addressOf("home") }, say("page-train-home"))),
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
  training.view = "home";
  draw(host);
  addressChanged("train", "replace");
  host.querySelector<HTMLElement>("#train-seed")?.focus();
  return true;
}

function draw(host: HTMLElement): void {
  if (training.seed === "") training.seed = newSeed();
  const { view } = training;
  drawn = true;
  host.dataset["view"] = view;
  if (view === "home") drawHome(host, (seed) => useSeed(host, seed));
  else if (view === "ruler") drawRuler(host);
  else if (view === "sheet") drawSheet(host);
  else drawLesson(host, view, tellRoom);
  tellRoom();
}

/** Of where one stands in the room the next action is told. */
function tellRoom(): void {
  const { view } = training;
  if (view === "home" || view === "ruler" || view === "sheet") change({ room: { view: view === "home" ? "home" : "other", exercise: 0 } });
  else change({ room: { view: "lesson", exercise: openExercise(view) } });
}

export function beginTraining(host: HTMLElement): void {
  registerAddress("train", {
    addressOf: () => (training.seed === "" ? "" : `${training.view}/${training.seed}`),
    takeAddress: (rest) => {
      const { view, seed } = fromAddress(rest);
      const moved = drawn && view !== training.view;
      training.view = view;
      if (seed !== "") training.seed = seed;
      draw(host);
      if (moved) {
        scrollTo(0, 0);
        document.getElementById("train-view")?.focus({ preventScroll: true });
      }
      return "";
    },
  });
  watch(["place"], () => {
    if (state.place !== "train") return;
    draw(host);
    // The seed is drawn on entering, and the address holds it without a step of its own.
    addressChanged("train", "replace");
  });
  watch(["language"], () => {
    if (drawn) draw(host);
  });
}
