import type { Amount } from "./Amount";
import { formulaNotes } from "./formulaNotes";
import type { Reading } from "./Reading";

// One digit over one digit, a formula behind it; 11/2 is left alone, since 1 1/2 is often so typed.
const FRACTION = /([1-9])\/([2-9])(?=\s*[A-Z([{])/y;

/** An amount typed with a slash at an index, as in `CaSO4·1/2H2O`, read with a note; undefined where none stands there. */
export function readTypedFraction(reading: Reading, at: number): Amount | undefined {
  const { text } = reading;
  if (text.charAt(at + 1) !== "/") return undefined;
  FRACTION.lastIndex = at;
  const [seen, above, below] = FRACTION.exec(text) ?? [];
  if (seen === undefined) return undefined;
  reading.note(formulaNotes.fraction(text, at, seen));
  return { value: Number(above) / Number(below), end: at + seen.length };
}
