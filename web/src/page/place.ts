// Where the person is. The fragment of the address holds it, so the browser's own back button works.

import { PLACES, change, state, type PlaceName } from "./state";

let focusNext: string | null = null;

function placeOf(fragment: string): PlaceName | null {
  return PLACES.find((place) => `#${place}` === fragment) ?? null;
}

/** Goes to a place, and to an element in it if one is named. */
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
  const target = document.getElementById(focusNext ?? `heading-${place}`);
  const wanted = focusNext !== null;
  focusNext = null;
  if (!moved && !wanted) return;
  if (!wanted) scrollTo(0, 0);
  target?.focus({ preventScroll: !wanted });
  if (wanted) target?.scrollIntoView({ block: "start" });
}

export function beginPlaces(): void {
  addEventListener("hashchange", arrive);
  arrive();
}
