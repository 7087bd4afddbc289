// Numbers as people type them: with a comma or a point. What is sent has a point.

const WHOLE = /^\d+$/;
const DECIMAL = /^(?:\d+(?:[.,]\d+)?|[.,]\d+)$/;

/** The number with a point, or null where it is none that can only be read one way. */
export function typedNumber(text: string, kind: "whole" | "decimal", unit = ""): string | null {
  let bare = text.trim();
  if (unit !== "" && bare.endsWith(unit)) bare = bare.slice(0, -unit.length).trim();
  if (kind === "whole") return WHOLE.test(bare) ? bare.replace(/^0+(?=\d)/, "") : null;
  if (!DECIMAL.test(bare)) return null;
  const pointed = bare.replace(",", ".");
  return pointed.startsWith(".") ? `0${pointed}` : pointed;
}
