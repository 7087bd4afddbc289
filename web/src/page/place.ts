// Where the person is. The fragment of the address holds it, so the browser's own back button works.

import { focusIn } from "./elements";
import { PLACES, change, state, type PlaceName } from "./state";

let focusNext: string | null = null;

// What follows a slash is the place's own: where in it, of which seed.
function placeOf(fragment: string): PlaceName | null {
  const [name] = fragment.split("/");
  return PLACES.find((place) => `#${place}` === name) ?? null;
}

/** Goes to a place, and to an element in it (or its first field) if one is named. */
export function goTo(place: PlaceName, focus: string | null = null): void {
  focusNext = focus;
  if (location.hash === `#${place}`) arrive();
  else location.hash = place;
}

function arrive(): void {
  const place = placeOf(location.hash) ?? (location.hash === "" ? "start" : null);
  // Any other fragment (the skip link's) is a place within the page, not one of ours.
  if (place === null) return;
  const moved = place !== state.place;
  change({ place });
  for (const section of document.querySelectorAll<HTMLElement>("[data-place]")) section.hidden = section.dataset["place"] !== place;
  const wanted = focusNext;
  focusNext = null;
  if (wanted !== null) {
    document.getElementById(wanted)?.scrollIntoView({ block: "start" });
    focusIn(wanted);
    return;
  }
  if (!moved) return;
  scrollTo(0, 0);
  document.getElementById(`heading-${place}`)?.focus({ preventScroll: true });
}

export function beginPlaces(): void {
  addEventListener("hashchange", arrive);
  arrive();
}
