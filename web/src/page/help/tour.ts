// The tour: a few stops at real parts of the page, with an invented delivery in it. Offered, never forced; left at any moment;
// what stood open before stands open again afterwards.

import { demoDeliveries } from "../demo";
import { byId, el, focusIn } from "../elements";
import { bringBack, startAgain } from "../inspection";
import { goTo } from "../place";
import { openDelivery } from "../places/start";
import { change, state, watch, type PlaceName } from "../state";
import { say } from "../words";
import { recall, remember } from "./kept";

interface Stop {
  id: string;
  place: PlaceName;
  /** What it points at; the first of these that is there. */
  at: string[];
}

const STOPS: Stop[] = [
  { id: "steps", place: "says", at: ["#steps"] },
  { id: "came-in", place: "came-in", at: [".equation-total", "#came-in"] },
  { id: "trust", place: "trust", at: [".card-open", "#trust .card"] },
  { id: "says", place: "says", at: ["#says-lots .lot", "#says-lots"] },
  { id: "next-stop", place: "next", at: ["#next .todo", "#next"] },
  { id: "write", place: "write", at: ["#write .card", "#write"] },
];

/** A delivery with something over its limit and something missing shows more than a clean one. */
const SHOWN = "03-brass-valve";

let at = -1;
/** The stop whose card stands. */
let drawn = -1;
let target: Element | null = null;
let hadInspection = false;

export function tourUnderWay(): boolean {
  return at >= 0;
}

export async function startTour(): Promise<void> {
  remember("tour", "seen");
  drawOffer();
  if (tourUnderWay()) return;
  const deliveries = await demoDeliveries();
  const shown = deliveries.find((one) => one.folder === SHOWN) ?? deliveries[0];
  if (shown === undefined) {
    change({ event: say("page-tour-none") });
    return;
  }
  hadInspection = state.files.length > 0 || state.summary !== null;
  await openDelivery(shown);
  go(0);
}

function go(to: number): void {
  const stop = STOPS[to];
  if (stop === undefined) return;
  at = to;
  if (state.place === stop.place) {
    draw();
    return;
  }
  // The place takes the sight and the focus first, and only after that the stop does.
  goTo(stop.place);
  setTimeout(draw);
}

function draw(): void {
  const stop = STOPS[at];
  if (stop === undefined) return;
  drawn = at;
  const heading = el("h2", { id: "tour-heading", tabindex: -1 }, stop.id === "steps" ? say("page-tour-steps") : say(`page-place-${stop.place}`));
  const last = at === STOPS.length - 1;
  const button = (id: string, look: string, key: string, press: () => void): HTMLElement => el("button", { type: "button", id, class: look, on: { click: press } }, say(key));
  card()?.remove();
  document.body.append(
    el(
      "section",
      { id: "tour", class: "tour", role: "dialog", "aria-labelledby": heading.id, "aria-describedby": "tour-text" },
      el("p", { class: "quiet" }, say("page-tour-at", { n: at + 1, of: STOPS.length })),
      heading,
      el("p", { id: "tour-text" }, say(`page-tour-${stop.id}-text`)),
      el(
        "div",
        { class: "tour-tools" },
        last ? button("tour-end", "primary", "page-tour-end", () => void leave()) : button("tour-next", "primary", "page-tour-next", () => go(at + 1)),
        at === 0 ? null : button("tour-back", "tool", "page-tour-back", () => go(at - 1)),
        last ? null : button("tour-leave", "tool", "page-tour-leave", () => void leave()),
      ),
    ),
  );
  point(stop);
  heading.focus({ preventScroll: true });
}

function card(): HTMLElement | null {
  return document.getElementById("tour");
}

/** Marks what the stop is about and brings it into sight, above the card. */
function point(stop: Stop): void {
  target?.classList.remove("tour-target");
  target = stop.at.map((one) => document.querySelector(one)).find((one) => one !== null) ?? null;
  if (target === null) return;
  target.classList.add("tour-target");
  target.scrollIntoView({ block: "start", behavior: "instant" });
}

async function leave(): Promise<void> {
  at = -1;
  drawn = -1;
  target?.classList.remove("tour-target");
  target = null;
  card()?.remove();
  // Real work that stood open comes back; else the page is as empty as it was.
  if (hadInspection) await bringBack();
  else await startAgain();
  goTo("start");
  focusIn(byId("tour-offer").hidden ? "open-guide" : "tour-start");
}

// ---- the offer ----

function drawOffer(): void {
  const offer = byId("tour-offer");
  const seen = recall("tour") !== "";
  offer.hidden = seen;
  offer.replaceChildren();
  if (seen) return;
  offer.append(
    el("span", {}, say("page-tour-offer")),
    el("button", { type: "button", id: "tour-start", class: "tool", on: { click: () => void startTour() } }, say("page-tour-start")),
    el(
      "button",
      {
        type: "button",
        id: "tour-not",
        class: "tool",
        on: {
          click: () => {
            remember("tour", "seen");
            drawOffer();
            byId("heading-start").focus({ preventScroll: true });
          },
        },
      },
      say("page-tour-not"),
    ),
  );
}

export function beginTour(): void {
  drawOffer();
  watch(["language"], () => {
    drawOffer();
    if (tourUnderWay()) draw();
  });
  // The place takes the sight and the focus when it is shown; only after that the stop does.
  watch(["place"], () => {
    const stop = STOPS[at];
    if (stop?.place === state.place && drawn !== at) setTimeout(draw);
  });
  // A place that is drawn anew has lost the mark.
  watch(["summary", "offers", "photos", "papers", "place"], () => {
    // Those who draw hear of the change too, some of them later.
    setTimeout(() => {
      const stop = STOPS[at];
      if (stop !== undefined && target?.isConnected === false) point(stop);
    });
  });
  addEventListener("keydown", (event) => {
    if (event.key !== "Escape" || event.defaultPrevented || !tourUnderWay()) return;
    event.preventDefault();
    void leave();
  });
}
