// A photograph on which a person marks where the measurement was made: by a tap, or by arrow keys and Enter.

import type { PhotoJoin, PhotoView } from "../shared/door";
import { el } from "./elements";
import { told } from "./instance";
import { say } from "./words";

const STEP = 10;
const FINE_STEP = 1;
const WHOLE = 1000;
/** The highest a picture stands beside a reading. */
const HIGHEST_REM = 24;

const addresses = new Map<string, string>();

/** The copy of a photograph as something an image can show; empty where it is gone. */
export function addressOf(photo: Pick<PhotoView, "name" | "sha256">): string {
  const key = `${photo.sha256}|${photo.name}`;
  const known = addresses.get(key);
  if (known !== undefined) return known;
  for (const given of told.given) {
    if (given.kind !== "photo" || given.name !== photo.name || given.copy.sha256 !== photo.sha256) continue;
    const address = URL.createObjectURL(new Blob([given.copy.bytes as BlobPart], { type: "image/jpeg" }));
    addresses.set(key, address);
    return address;
  }
  return "";
}

/** The frame of a picture: as large as there is room, never higher than a screen. */
export function framed(photo: PhotoView, frame: HTMLElement): HTMLElement {
  frame.style.width = `min(100%, ${(HIGHEST_REM * photo.width) / photo.height}rem)`;
  frame.style.aspectRatio = `${photo.width} / ${photo.height}`;
  return frame;
}

interface Place {
  x: number;
  y: number;
}

/** Where the spot is, in words. */
export function spotText(at: Place): string {
  return say("page-photo-spot", { x: at.x / 10, y: at.y / 10 });
}

// The pad that had the focus when a spot was recorded: the detail is drawn anew then, and the focus goes back to it.
let giveBack = "";

/** The picture as one large button. `record` is called with the spot. */
export function spotPad(photo: PhotoView, join: PhotoJoin, id: string, record: (at: Place) => void): HTMLElement {
  const recorded: Place | null = join.x === null || join.y === null ? null : { x: join.x, y: join.y };
  let at: Place = recorded ?? { x: WHOLE / 2, y: WHOLE / 2 };
  let moved = false;
  const mark = el("span", { class: "spot-mark", hidden: recorded === null, "aria-hidden": "true" });
  const saying = el("p", { class: "quiet", "aria-live": "polite" }, recorded === null ? say("page-photo-no-spot") : spotText(recorded));
  const show = (place: Place): void => {
    mark.hidden = false;
    mark.style.left = `${place.x / 10}%`;
    mark.style.top = `${place.y / 10}%`;
  };
  if (recorded !== null) show(recorded);
  const pad = el(
    "button",
    {
      type: "button",
      id,
      class: "shot-pad",
      "aria-label": say("page-photo-pad", { file: photo.name, spot: recorded === null ? say("page-photo-no-spot") : spotText(recorded) }),
      "aria-describedby": `${id}-keys`,
      on: {
        click: (event) => {
          const box = pad.getBoundingClientRect();
          // A press of Enter is a click of no pointer: it records where the arrow keys have brought the mark.
          if (event.detail === 0) {
            if (!moved) {
              saying.textContent = say("page-photo-move-first");
              return;
            }
          } else {
            const part = (from: number, size: number): number => Math.min(WHOLE, Math.max(0, Math.round((WHOLE * from) / size)));
            at = { x: part(event.clientX - box.left, box.width), y: part(event.clientY - box.top, box.height) };
            show(at);
          }
          giveBack = id;
          record(at);
        },
        keydown: (event) => {
          const step = event.shiftKey ? FINE_STEP : STEP;
          const by: Record<string, [number, number]> = { ArrowLeft: [-step, 0], ArrowRight: [step, 0], ArrowUp: [0, -step], ArrowDown: [0, step] };
          const way = by[event.key];
          if (way !== undefined) {
            event.preventDefault();
            const within = (number: number): number => Math.min(WHOLE, Math.max(0, number));
            at = { x: within(at.x + way[0]), y: within(at.y + way[1]) };
            moved = true;
            show(at);
            saying.textContent = say("page-photo-press-enter", { spot: spotText(at) });
          } else if (event.key === "Escape" && moved) {
            event.stopPropagation();
            moved = false;
            at = recorded ?? { x: WHOLE / 2, y: WHOLE / 2 };
            mark.hidden = recorded === null;
            if (recorded !== null) show(recorded);
            saying.textContent = recorded === null ? say("page-photo-no-spot") : spotText(recorded);
          }
        },
      },
    },
    el("img", { src: addressOf(photo), alt: "", draggable: "false" }),
    mark,
  );
  framed(photo, pad);
  if (giveBack === id) {
    // It stands on the page only after whoever asked for it has put it there.
    queueMicrotask(() => {
      if (pad.isConnected) {
        giveBack = "";
        pad.focus({ preventScroll: true });
      }
    });
  }
  return el("div", { class: "shot" }, pad, saying, el("p", { id: `${id}-keys`, class: "hint" }, say("page-photo-keys")));
}
