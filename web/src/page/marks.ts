// Small drawings that carry a verdict by where things stand, so that none depends on colour.
//
// An outcome is a miniature of the ruler: a rail, the limit's band in its middle, and a plumb bob hanging left of it,
// on it, or right of it. A disposition is a wall beside a plumb line: true, not yet known, or leaning.

const SVG = "http://www.w3.org/2000/svg";

function draw(tag: string, traits: Record<string, string>, ...children: SVGElement[]): SVGElement {
  const node = document.createElementNS(SVG, tag);
  for (const [name, value] of Object.entries(traits)) node.setAttribute(name, value);
  node.append(...children);
  return node;
}

function frame(name: string, width: number, height: number, ...children: SVGElement[]): SVGElement {
  return draw(
    "svg",
    { class: `mark ${name}`, viewBox: `0 0 ${width} ${height}`, width: String(width), height: String(height), "aria-hidden": "true", focusable: "false" },
    ...children,
  );
}

const OUTCOMES: Record<string, string> = {
  BL: "below",
  X: "undecided",
  OL: "over",
  not_applicable: "apart",
  not_measured: "absent",
};

/** The name that colours and shapes go by; everything that isn't an answer is "open". */
export function outcomeTone(outcome: string): string {
  return OUTCOMES[outcome] ?? "open";
}

function bob(x: number): SVGElement[] {
  return [
    draw("path", { class: "mark-string", d: `M${x} 3V8` }),
    draw("path", { class: "mark-bob", d: `M${x - 3.5} 8H${x + 3.5}L${x} 15.5Z` }),
  ];
}

export function outcomeMark(outcome: string): SVGElement {
  const tone = outcomeTone(outcome);
  const rail = draw("path", { class: "mark-rail", d: "M1 3H27" });
  const band = draw("rect", { class: "mark-band", x: "10", y: "1", width: "8", height: "4" });
  const name = `mark-${tone}`;
  switch (tone) {
    case "below":
      return frame(name, 28, 17, rail, band, ...bob(5));
    case "over":
      return frame(name, 28, 17, rail, band, ...bob(23));
    case "absent":
      return frame(name, 28, 17, rail, band);
    case "apart":
      return frame(name, 28, 17, draw("path", { class: "mark-rail", d: "M9 8H19" }));
    default:
      return frame(name, 28, 17, rail, band, ...bob(14));
  }
}

/** How far a column's meaning can be trusted: a bob on a whole rail, one on a broken rail, a question mark. */
export function confidenceMark(confidence: string): SVGElement {
  const dot = (x: number): SVGElement[] => [draw("path", { class: "mark-string", d: `M${x} 1V8` }), draw("path", { class: "mark-bob", d: `M${x - 4} 8H${x + 4}L${x} 16Z` })];
  const name = `mark-${confidence}`;
  if (confidence === "sure") return frame(name, 20, 17, draw("path", { class: "mark-rail", d: "M3 2H17" }), ...dot(10));
  if (confidence === "likely") return frame(name, 20, 17, draw("path", { class: "mark-rail mark-unknown", d: "M3 2H17" }), ...dot(10));
  return frame(name, 20, 17, draw("path", { class: "mark-look", d: "M6 6A4 4 0 1 1 10 10V12" }), draw("path", { class: "mark-look", d: "M10 15V16.5" }));
}

/** A triangle with a stroke: something to look at, which has decided nothing. */
export function cautionMark(): SVGElement {
  return frame("mark-caution", 18, 17, draw("path", { class: "mark-rail", d: "M9 1.5L17 15.5H1Z" }), draw("path", { class: "mark-rail", d: "M9 6V11M9 12.5V14" }));
}

export function dispositionTone(disposition: string): string {
  if (disposition === "accept") return "below";
  return disposition === "not_accept" ? "over" : "undecided";
}

export function dispositionMark(disposition: string): SVGElement {
  const line = [
    draw("path", { class: "mark-string", d: "M15 1V13" }),
    draw("path", { class: "mark-bob", d: "M11 13H19L15 21Z" }),
  ];
  const name = `mark-${dispositionTone(disposition)}`;
  if (disposition === "accept") return frame(name, 24, 22, draw("path", { class: "mark-wall", d: "M6 1V21" }), ...line);
  if (disposition === "not_accept") return frame(name, 24, 22, draw("path", { class: "mark-wall", d: "M3 1L11 21" }), ...line);
  return frame(name, 24, 22, draw("path", { class: "mark-wall mark-unknown", d: "M6 1V21" }), ...line);
}
