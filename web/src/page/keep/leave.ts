// "Leave nothing on this computer": one choice for all that this page would keep.

import { byId } from "../elements";
import { keepNothing } from "../remembered";
import { state, watch } from "../state";
import { say } from "../words";

export function beginLeave(): void {
  const box = byId<HTMLInputElement>("keep-nothing");
  box.addEventListener("change", () => void keepNothing(box.checked));
  watch(["kept", "language"], draw);
  draw();
}

function draw(): void {
  byId<HTMLInputElement>("keep-nothing").checked = state.kept === "nothing";
  byId("leave-hint").textContent = say(state.kept === "nothing" ? "page-keep-leave-on" : "page-keep-leave-off");
}
