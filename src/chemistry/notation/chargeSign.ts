const PLUS = "+⁺＋";
const MINUS = "-−–‐‑⁻－﹣";

/** 1 or -1 for a sign in any of its forms (plain, superscript, dash), 0 for any other character. */
export function chargeSign(character: string): -1 | 0 | 1 {
  if (character === "") return 0;
  if (PLUS.includes(character)) return 1;
  return MINUS.includes(character) ? -1 : 0;
}
