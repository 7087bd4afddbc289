// Light, dark, or as the system has it. A choice is kept for another day only where this browser may keep anything.

import { store, stored } from "./browser-store";
import { byId } from "./elements";
import { state } from "./state";

const THEME = "plumbline.theme";
const THEMES = ["system", "light", "dark"] as const;
type Theme = (typeof THEMES)[number];

let chosen: Theme = "system";

function use(theme: Theme): void {
  chosen = theme;
  if (theme === "system") delete document.documentElement.dataset["theme"];
  else document.documentElement.dataset["theme"] = theme;
}

/** Keeps the choice for another day, or forgets it. */
export function keepTheme(wanted: boolean): void {
  store(THEME, wanted && chosen !== "system" ? chosen : "");
}

/** Before anything is shown, so that nothing flashes. */
export function useKeptTheme(): void {
  use(THEMES.find((theme) => theme === stored(THEME)) ?? "system");
}

export function beginTheme(): void {
  const list = byId<HTMLSelectElement>("theme");
  list.value = chosen;
  list.addEventListener("change", () => {
    use(THEMES.find((theme) => theme === list.value) ?? "system");
    if (state.kept !== "nothing") keepTheme(true);
  });
}
