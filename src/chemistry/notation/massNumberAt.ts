import { countDigit } from "./countDigit";
import { isCapital } from "./isCapital";
import { superscriptDigit } from "./superscriptDigit";

export interface MassNumber {
  readonly digits: string;
  /** The index of the symbol right behind it. */
  readonly symbolAt: number;
}

/** The mass number at an index, as in `^13C` or `¹³C`; undefined where the digits lead to no symbol. */
export function massNumberAt(text: string, index: number): MassNumber | undefined {
  const caret = text.charAt(index) === "^";
  let digits = "";
  let place = caret ? index + 1 : index;
  for (; place < text.length; place++) {
    const digit = caret ? countDigit(text.charCodeAt(place)) : superscriptDigit(text.charAt(place));
    if (digit < 0) break;
    digits += digit;
  }
  return digits !== "" && isCapital(text.charCodeAt(place)) ? { digits, symbolAt: place } : undefined;
}
