// Takes a figure the core has drawn as SVG text into the page: parsed as XML, and only the plain drawing parts of it kept.

const SVG = "http://www.w3.org/2000/svg";

const ELEMENTS = new Set([
  "svg", "g", "defs", "pattern", "clipPath", "title", "desc", "line", "rect", "path", "circle", "ellipse", "polygon", "polyline", "text", "tspan",
]);

const ATTRIBUTES = new Set([
  "viewBox", "width", "height", "role", "class", "id", "aria-label", "aria-labelledby", "aria-describedby", "aria-hidden", "focusable", "preserveAspectRatio",
  "x", "y", "x1", "y1", "x2", "y2", "dx", "dy", "cx", "cy", "r", "rx", "ry", "d", "points", "transform",
  "fill", "fill-opacity", "stroke", "stroke-width", "stroke-dasharray", "stroke-linecap", "stroke-linejoin", "opacity",
  "font-size", "font-weight", "font-family", "text-anchor", "dominant-baseline", "patternUnits", "patternTransform", "clip-path",
]);

let drawn = 0;

/** The figure, or null where the text is no drawing. */
export function figure(text: string): SVGElement | null {
  if (text === "") return null;
  const parsed = new DOMParser().parseFromString(text, "image/svg+xml");
  const root = parsed.documentElement;
  if (root.namespaceURI !== SVG || root.localName !== "svg") return null;
  drawn += 1;
  const kept = keep(root, `figure-${drawn}-`);
  return kept instanceof SVGElement ? kept : null;
}

// Several figures stand in one page, and each names its own pattern and title: the prefix keeps the names apart.
function keep(from: Element, prefix: string): Element | null {
  if (from.namespaceURI !== SVG || !ELEMENTS.has(from.localName)) return null;
  const node = document.createElementNS(SVG, from.localName);
  for (const { name, value } of from.attributes) {
    if (!ATTRIBUTES.has(name)) continue;
    if (name === "id") node.setAttribute(name, prefix + value);
    else if (name.startsWith("aria-labelled") || name.startsWith("aria-described")) {
      node.setAttribute(name, value.split(/\s+/).map((id) => prefix + id).join(" "));
    } else if (value.includes("url(")) {
      const local = /^url\(#([\w-]+)\)$/.exec(value);
      if (local !== null) node.setAttribute(name, `url(#${prefix}${local[1]})`);
    } else node.setAttribute(name, value);
  }
  for (const child of from.childNodes) {
    if (child.nodeType === Node.TEXT_NODE) node.append(child.textContent ?? "");
    else if (child.nodeType === Node.ELEMENT_NODE) {
      const inner = keep(child as Element, prefix);
      if (inner !== null) node.append(inner);
    }
  }
  return node;
}
