// The ruler of one outcome as a strip: where everything stands comes from the core, here it is only drawn.
//
// Above a rail hangs the reading as a plumb bob on its string, with whiskers; the undecided band stands hatched on the rail. A bound
// is a dashed line towards the end that it leaves open, a sum of which a part was not detected one between two uprights. What goes on beyond an end is cut off with a chevron there. Nothing is told
// by colour alone.

import type { StripView } from "../shared/door";
import { outcomeTone } from "./marks";

const SVG = "http://www.w3.org/2000/svg";

/** Room beside the scale for a bob that stands on its end, and for a chevron. */
const SIDE = 7;
const HEIGHT = 18;
const RAIL = 16;
const WHISKER = 4;
const HATCH = 4;

function path(name: string, d: string): SVGElement {
  const node = document.createElementNS(SVG, "path");
  node.setAttribute("class", name);
  node.setAttribute("d", d);
  return node;
}

/** Draws one strip, `width` pixels wide. The words stand beside it. */
export function stripMark(strip: StripView, outcome: string, width: number): SVGElement {
  const left = SIDE;
  const right = width - SIDE;
  const x = (perMille: number): number => Math.round((left + (perMille / 1000) * (right - left)) * 10) / 10;
  const node = document.createElementNS(SVG, "svg");
  node.setAttribute("class", `strip strip-${outcomeTone(outcome)}`);
  node.setAttribute("viewBox", `0 0 ${width} ${HEIGHT}`);
  node.setAttribute("width", String(width));
  node.setAttribute("height", String(HEIGHT));
  node.setAttribute("aria-hidden", "true");
  node.setAttribute("focusable", "false");
  // Few elements: a screenful holds hundreds of strips.
  const lines = strip.mark === "bob" ? whiskers(strip, x, left, right) : strip.mark === "between" ? between(strip, x, left, right) : bound(strip, x, left, right);
  node.append(path("strip-band", band(x(strip.low), x(strip.high), strip.open)), path("strip-lines", `${lines}M${left - 3} ${RAIL}H${right + 3}`));
  if (strip.mark === "bob") node.append(bob(x(strip.at)));
  return node;
}

// A limit without a band is a post with a crossbar.
function band(from: number, to: number, open: boolean): string {
  const top = 8;
  let d = `M${from} ${RAIL}V${top}`;
  if (to - from < 1) return `${d}m-3 0h6`;
  d += `H${to}${open ? "" : `V${RAIL}`}`;
  const tall = RAIL - top;
  for (let at = from + HATCH; at < to + tall; at += HATCH) {
    const over = Math.max(0, at - to);
    const under = Math.max(0, from - (at - tall));
    d += `M${at - over} ${top + over}L${at - tall + under} ${RAIL - under}`;
  }
  return d;
}

type Place = (perMille: number) => number;

const chevron = (at: number, y: number, by: number): string => `M${at} ${y - 3}L${at + by} ${y}L${at} ${y + 3}`;

function whiskers(strip: StripView, x: Place, left: number, right: number): string {
  return `M${x(strip.from)} ${WHISKER}H${x(strip.to)}${ends(strip, x, left, right)}`;
}

function ends(strip: StripView, x: Place, left: number, right: number): string {
  const from = x(strip.from);
  const to = x(strip.to);
  let d = strip.cut_left ? chevron(left - 2, WHISKER, -4) : `M${from} ${WHISKER - 3}V${WHISKER + 3}`;
  d += strip.cut_right ? chevron(right + 2, WHISKER, 4) : `M${to} ${WHISKER - 3}V${WHISKER + 3}`;
  return d;
}

function dashes(from: number, to: number): string {
  let d = "";
  for (let dash = from; dash < to; dash += 6) d += `M${dash} ${WHISKER}H${Math.min(to, dash + 3)}`;
  return d;
}

function between(strip: StripView, x: Place, left: number, right: number): string {
  // A log scale has no place for nothing: what may be as little as that goes on beyond the left end.
  const open = strip.cut_left && strip.at === 0;
  const low = open ? left - 2 : x(strip.at);
  const high = x(strip.until);
  const below = open ? "" : `M${x(strip.from)} ${WHISKER}H${low}M${low} 1V${RAIL}`;
  return `${below}M${high} ${WHISKER}H${x(strip.to)}M${high} 1V${RAIL}${ends(strip, x, left, right)}${dashes(low, high)}`;
}

function bound(strip: StripView, x: Place, left: number, right: number): string {
  const at = x(strip.at);
  const below = strip.mark === "below";
  const end = below ? left - 2 : right + 2;
  return `M${at} 1V${RAIL}${chevron(end, WHISKER, below ? -4 : 4)}${dashes(Math.min(at, end), Math.max(at, end))}`;
}

function bob(at: number): SVGElement {
  return path("strip-bob", `M${at - 3.5} 3.5H${at + 3.5}V7.5L${at} ${RAIL}L${at - 3.5} 7.5Z`);
}
