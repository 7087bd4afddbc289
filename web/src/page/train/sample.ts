// What a clean sample leaves possible: lot and pieces taken are moved, the number is the core's.

import { el } from "../elements";
import { say } from "../words";
import { cleanSample, newestOnly } from "./ask";

const LARGEST_LOT = 500;

export function movableSample(): HTMLElement {
  const asked = { lotSize: 100, taken: 5 };
  const told = el("p", { class: "sample-told", role: "status" });
  const slider = (id: string, label: string, value: number, take: (value: number) => void): HTMLElement => {
    const shown = el("output", { for: id }, value);
    const input = el("input", {
      id,
      type: "range",
      min: 1,
      max: LARGEST_LOT,
      step: 1,
      value,
      on: {
        input: () => {
          take(Number(input.value));
          shown.textContent = input.value;
          ask({ ...asked });
        },
      },
    });
    return el("div", { class: "ruler-field" }, el("label", { for: id }, label, " "), shown, input);
  };
  const ask = newestOnly(cleanSample, (most: number | "none", { lotSize, taken }: typeof asked) => {
    told.textContent = most === "none" ? say("page-train-sample-none") : say("page-train-sample-told", { taken, size: lotSize, n: most });
  });
  ask({ ...asked });
  return el(
    "section",
    { class: "card", "aria-labelledby": "sample-heading" },
    el("h2", { id: "sample-heading" }, say("page-train-sample")),
    el(
      "div",
      { class: "ruler-fields" },
      slider("sample-size", say("page-train-sample-size"), asked.lotSize, (value) => {
        asked.lotSize = value;
      }),
      slider("sample-taken", say("page-train-sample-taken"), asked.taken, (value) => {
        asked.taken = value;
      }),
    ),
    told,
  );
}
