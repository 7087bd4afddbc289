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

// Drawn on whole pixels at its own size: the bob is the largest thing in it, because where it hangs is what is said.
function bob(x: number): SVGElement[] {
  return [
    draw("path", { class: "mark-string", d: `M${x} 4V8` }),
    draw("path", { class: "mark-bob", d: `M${x - 5} 8.5H${x + 5}L${x} 18Z` }),
  ];
}

export function outcomeMark(outcome: string): SVGElement {
  const tone = outcomeTone(outcome);
  const rail = draw("path", { class: "mark-rail", d: "M0 4H32" });
  const band = draw("rect", { class: "mark-band", x: "11", y: "1", width: "10", height: "6" });
  const name = `mark-${tone}`;
  switch (tone) {
    case "below":
      return frame(name, 32, 20, rail, band, ...bob(5));
    case "over":
      return frame(name, 32, 20, rail, band, ...bob(27));
    case "absent":
      return frame(name, 32, 20, rail, band);
    case "apart":
      return frame(name, 32, 20, draw("path", { class: "mark-rail", d: "M10 10H22" }));
    default:
      return frame(name, 32, 20, rail, band, ...bob(16));
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
    draw("path", { class: "mark-string", d: "M20 1V12" }),
    draw("path", { class: "mark-bob", d: "M15 12.5H25L20 24Z" }),
  ];
  const name = `mark-${dispositionTone(disposition)}`;
  if (disposition === "accept") return frame(name, 28, 26, draw("path", { class: "mark-wall", d: "M7 1V25" }), ...line);
  if (disposition === "not_accept") return frame(name, 28, 26, draw("path", { class: "mark-wall", d: "M3 1L12 25" }), ...line);
  return frame(name, 28, 26, draw("path", { class: "mark-wall mark-unknown", d: "M7 1V25" }), ...line);
}
