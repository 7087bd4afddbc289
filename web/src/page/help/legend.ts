// The picture of the ruler, with its names on it, and the three ways a bob can hang. Drawn in the shapes and the classes of the
// rulers that the core draws, so that it is the same picture; it holds no value of any limit.

import { el, type Child } from "../elements";
import { outcomeMark } from "../marks";
import { lazyFold } from "../places/lazy-fold";
import { between, say } from "../words";
import { recall, remember } from "./kept";
import { wordsHere } from "./term";
import type { TermId } from "./terms";

const SVG = "http://www.w3.org/2000/svg";

function draw(tag: string, traits: Record<string, string | number>, text = ""): SVGElement {
  const node = document.createElementNS(SVG, tag);
  for (const [name, value] of Object.entries(traits)) node.setAttribute(name, String(value));
  node.textContent = text;
  return node;
}

const line = (x1: number, y1: number, x2: number, y2: number, name: string): SVGElement => draw("line", { class: name, x1, y1, x2, y2, stroke: "currentColor" });
const label = (x: number, y: number, anchor: string, key: string): SVGElement => draw("text", { class: "legend-label", x, y, "text-anchor": anchor }, say(key));

const BAND = { from: 192, to: 264, top: 66, bottom: 94 };
const BOB = 84;
const REACH = 38;

function rulerNamed(): SVGElement {
  const svg = draw("svg", { class: "ruler ruler-BL legend-ruler", viewBox: "0 0 340 146", role: "img", "aria-label": say("page-ruler-alt") });
  const hatches: SVGElement[] = [];
  for (let x = BAND.from + 6; x < BAND.to + 28; x += 6) {
    const over = Math.max(0, x - BAND.to);
    const short = Math.max(0, BAND.from - (x - 28));
    hatches.push(line(x - over, BAND.top + over, x - 28 + short, BAND.bottom - short, "ruler-hatch"));
  }
  svg.append(
    draw("rect", { class: "ruler-band", x: BAND.from, y: BAND.top, width: BAND.to - BAND.from, height: BAND.bottom - BAND.top, fill: "none", stroke: "currentColor" }),
    ...hatches,
    line(8, BAND.bottom, 332, BAND.bottom, "ruler-axis"),
    line(BOB, 22, BOB, 46, "legend-string"),
    line(BOB - REACH, 60, BOB + REACH, 60, "legend-whisker"),
    line(BOB - REACH, 55, BOB - REACH, 65, "legend-whisker"),
    line(BOB + REACH, 55, BOB + REACH, 65, "legend-whisker"),
    draw("path", { class: "ruler-bob", d: `M${BOB - 4} 46h8v6q4 6 0 14l-4 28l-4-28q-4-8 0-14z`, fill: "currentColor", stroke: "Canvas" }),
    line(BOB + REACH + 3, 54, 136, 38, "legend-leader"),
    label(4, 14, "start", "page-ruler-bob"),
    label(336, 34, "end", "page-ruler-whiskers"),
    label(4, 114, "start", "page-ruler-left"),
    label((BAND.from + BAND.to) / 2, 58, "middle", "page-ruler-band"),
    label(336, 114, "end", "page-ruler-right"),
    label(170, 138, "middle", "page-ruler-rail"),
  );
  return svg;
}

const WAYS: { outcome: string; tone: string; key: string; term: TermId }[] = [
  { outcome: "BL", tone: "below", key: "page-ruler-below", term: "bl" },
  { outcome: "X", tone: "undecided", key: "page-ruler-undecided", term: "x" },
  { outcome: "OL", tone: "over", key: "page-ruler-over", term: "ol" },
];

/** The picture and the three ways. */
export function legend(): Child[] {
  return [
    el(
      "div",
      { class: "legend" },
      el("div", { class: "legend-figure" }, rulerNamed()),
      el(
        "ul",
        { class: "legend-ways" },
        ...WAYS.map((way) => el("li", { class: `legend-way tone-${way.tone}` }, outcomeMark(way.outcome), el("span", {}, el("strong", {}, say(`page-term-${way.term}`)), el("br"), say(way.key)))),
      ),
      el("p", { class: "quiet" }, say("page-ruler-why"), between("gap"), say("page-ruler-others")),
    ),
  ];
}

/** The same picture, folded away where rulers stand and the table is not at hand. */
export function legendNear(where: string): HTMLElement {
  return lazyFold(`legend-${where}`, "fold fold-inner", false, [say("page-ruler-heading")], legend);
}

/** The picture above the table of readings: open until it was closed once. */
export function legendFold(): HTMLElement {
  const fold = el(
    "details",
    { id: "legend", class: "fold", open: recall("ruler") === "" },
    el("summary", {}, say("page-ruler-heading")),
    ...legend(),
    wordsHere("legend", ["band", "sigma", "margin", "class", "trust", "halogens"]),
  );
  fold.addEventListener("toggle", () => {
    if (!fold.open) remember("ruler", "seen");
  });
  return fold;
}
