// Where the person is. The fragment of the address holds it (`#says/outcome=OL`: the place, and behind the slash what is looked at
// in it, in the place's own words), so the browser's own back button works.
//
// Going to a place and opening something in it is a step of its own to go back from; passing from one thing to the next of its
// kind, and typing, write over the step that stands. A place says which by `addressChanged`.

import { focusIn } from "./elements";
import { PLACES, change, state, watch, type PlaceName } from "./state";
import { say } from "./words";

/** How a place names what is looked at in it. */
export interface PlaceAddress {
  /** What stands behind the slash; "" where nothing but the place is looked at. */
  addressOf: () => string;
  /** Shows what such a text names. Gives "" or a sentence that says what of it is not here. */
  takeAddress: (rest: string) => string | Promise<string>;
}

const addresses = new Map<PlaceName, PlaceAddress>();

export function registerAddress(place: PlaceName, address: PlaceAddress): void {
  addresses.set(place, address);
}

/** Places that show nothing without an inspection. */
const WITHOUT_DATA: PlaceName[] = PLACES.filter((place) => !["came-in", "trust", "says", "next", "write"].includes(place));

function fragmentOf(place: PlaceName): string {
  const rest = addresses.get(place)?.addressOf() ?? "";
  return rest === "" ? `#${place}` : `#${place}/${rest}`;
}

function parse(fragment: string): { place: PlaceName; rest: string } | null {
  const slash = fragment.indexOf("/");
  const name = slash < 0 ? fragment : fragment.slice(0, slash);
  const place = fragment === "" ? "start" : (PLACES.find((one) => `#${one}` === name) ?? null);
  return place === null ? null : { place, rest: slash < 0 ? "" : fragment.slice(slash + 1) };
}

function write(fragment: string, how: "push" | "replace"): void {
  if (location.hash === fragment || (location.hash === "" && fragment === "#start")) return;
  // No state goes with it: browsers write that to disk too, to bring a session back.
  try {
    if (how === "push") history.pushState(null, "", fragment);
    else history.replaceState(null, "", fragment);
  } catch {
    // Some browsers take only so many of these in half a minute: the next one that is taken names everything again.
  }
}

// An address that is being shown writes none.
let taking = 0;
/** An address that came before there was anything to show. */
let waiting: { place: PlaceName; rest: string } | null = null;

/** What is looked at in the place where the person stands has changed. */
export function addressChanged(place: PlaceName, how: "push" | "replace"): void {
  if (taking === 0 && state.place === place) write(fragmentOf(place), how);
}

/** Goes to a place, and to an element in it (or its first field) if one is named. */
export function goTo(place: PlaceName, focus: string | null = null): void {
  waiting = null;
  arrivals += 1;
  write(fragmentOf(place), "push");
  show(place, focus);
}

function show(place: PlaceName, focus: string | null): void {
  const moved = place !== state.place;
  change({ place });
  for (const section of document.querySelectorAll<HTMLElement>("[data-place]")) section.hidden = section.dataset["place"] !== place;
  if (focus !== null) {
    document.getElementById(focus)?.scrollIntoView({ block: "start" });
    focusIn(focus);
    return;
  }
  if (!moved) return;
  scrollTo(0, 0);
  const heading = document.getElementById(`heading-${place}`);
  heading?.focus({ preventScroll: true });
  // On a narrow screen the head of the page alone may fill the window, and it would seem that nothing happened.
  if (heading !== null && heading.getBoundingClientRect().bottom > innerHeight) heading.scrollIntoView({ block: "start" });
}

let arrivals = 0;

async function take(place: PlaceName, rest: string): Promise<void> {
  const mine = ++arrivals;
  const address = addresses.get(place);
  if (rest === (address?.addressOf() ?? "")) return;
  let missing = say("page-address-nothing");
  if (address !== undefined) {
    taking += 1;
    try {
      missing = await address.takeAddress(rest);
    } finally {
      taking -= 1;
    }
  }
  // Somebody went on meanwhile.
  if (mine !== arrivals || state.place !== place) return;
  addressChanged(place, "replace");
  if (missing !== "") change({ event: missing });
}

/** The address was changed by the browser: back, forward, a typed one, or the one the page was opened with. */
function arrive(): void {
  const found = parse(location.hash);
  if (found === null) {
    // The skip link's, or another place within the page.
    if (document.getElementById(location.hash.slice(1)) !== null) return;
    show(state.place, null);
    write(fragmentOf(state.place), "replace");
    change({ event: say("page-address-nothing") });
    return;
  }
  const { place, rest } = found;
  show(place, null);
  waiting = null;
  if (state.summary === null && !WITHOUT_DATA.includes(place)) {
    if (rest === "") return;
    // It may still be brought back here; what is brought anew instead is told from it by the checks in the address.
    waiting = found;
    change({ event: say("page-address-no-data") });
    return;
  }
  void take(place, rest);
}

/** A link to a place goes there as the place stands; only the browser's own steps bring back how it stood. */
function linkPressed(event: MouseEvent): void {
  if (event.defaultPrevented || event.button !== 0 || event.ctrlKey || event.metaKey || event.shiftKey || event.altKey) return;
  const link = event.target instanceof Element ? event.target.closest('a[href^="#"]') : null;
  const place = PLACES.find((one) => `#${one}` === link?.getAttribute("href"));
  if (place === undefined) return;
  event.preventDefault();
  goTo(place);
}

export function beginPlaces(): void {
  addEventListener("hashchange", arrive);
  document.addEventListener("click", linkPressed);
  watch(["summary"], () => {
    if (state.summary === null || waiting === null) return;
    const { place, rest } = waiting;
    waiting = null;
    if (state.place === place) void take(place, rest);
  });
  arrive();
}
