// The recovery code: made by the page, held by the person. The page keeps it in memory as long as it is open and writes it
// down nowhere, so that whoever finds the copy does not find the code beside it.

/** Digits and capitals of which no two look or sound alike: no 0 O, 1 I L, 5 S, 8 B, 2 Z, U V. Our own choice. */
const SIGNS = "234679ACDEFGHJKMNPQRTWXY";
/** Twelve of 24 signs are 55 bits: with the work that each guess costs (cipher.ts) out of reach, and still quickly written down. */
export const CODE_SIGNS = 12;
const GROUP = 4;
/** The largest multiple of the number of signs within a byte: bytes from there on would favour the first signs. */
const FAIR = 256 - (256 % SIGNS.length);

export function freshCode(): string {
  let code = "";
  while (code.length < CODE_SIGNS) {
    for (const byte of crypto.getRandomValues(new Uint8Array(CODE_SIGNS))) {
      if (byte < FAIR && code.length < CODE_SIGNS) code += SIGNS[byte % SIGNS.length] ?? "";
    }
  }
  return code;
}

/** As it is shown and written down: ABCD-EFGH-JKMN. */
export function grouped(code: string): string {
  return (code.match(new RegExp(`.{1,${GROUP}}`, "g")) ?? []).join("-");
}

/** What a person typed, as a code; or the first sign that no code has, or how many signs there are. */
export type Typed = { code: string } | { odd: string } | { signs: number };

export function typedCode(typed: string): Typed {
  // NFKC: in Japanese and Chinese, letters may be typed in their full width.
  const signs = [...typed.normalize("NFKC").toUpperCase().replace(/[\s\p{Pd}\u30fc]/gu, "")];
  const odd = signs.find((sign) => !SIGNS.includes(sign));
  if (odd !== undefined) return { odd };
  return signs.length === CODE_SIGNS ? { code: signs.join("") } : { signs: signs.length };
}
