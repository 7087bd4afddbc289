// Right and wrong by shape: a tick in a full square, a cross in an open ring.

const SVG = "http://www.w3.org/2000/svg";

export function verdictMark(right: boolean): SVGElement {
  const node = document.createElementNS(SVG, "svg");
  for (const [name, value] of Object.entries({ class: `mark verdict ${right ? "verdict-right" : "verdict-wrong"}`, viewBox: "0 0 24 24", width: "24", height: "24", "aria-hidden": "true", focusable: "false" })) node.setAttribute(name, value);
  const paths = right ? [["verdict-ground", "M2 2H22V22H2Z"], ["verdict-line", "M6 12.5L10.5 17L18 7.5"]] : [["verdict-ground", "M12 2A10 10 0 1 0 12 22A10 10 0 1 0 12 2Z"], ["verdict-line", "M8 8L16 16M16 8L8 16"]];
  for (const [name = "", d = ""] of paths) {
    const path = document.createElementNS(SVG, "path");
    path.setAttribute("class", name);
    path.setAttribute("d", d);
    node.append(path);
  }
  return node;
}
