// Whose act it is and when: typed once, put on every act that follows. The page reads no clock unless asked.

import { byId } from "../elements";
import { change, state, watch } from "../state";

export function today(): string {
  const now = new Date();
  const two = (n: number): string => String(n).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

export function beginWho(): void {
  const initials = byId<HTMLInputElement>("who-initials");
  const day = byId<HTMLInputElement>("who-day");
  initials.addEventListener("input", () => change({ initials: initials.value.trim() }));
  day.addEventListener("change", () => change({ day: day.value }));
  byId("who-today").addEventListener("click", () => {
    day.value = today();
    change({ day: day.value });
  });
  // An inspection that is brought back has its own.
  watch(["initials", "day"], () => {
    if (initials.value.trim() !== state.initials) initials.value = state.initials;
    if (day.value !== state.day) day.value = state.day;
  });
  watch(["summary"], () => {
    byId("who").hidden = state.summary === null;
  });
}
