import { isCapital } from "./isCapital";
import { nothingHere } from "./nothingHere";
import { readAmount } from "./readAmount";
import type { Reading } from "./Reading";
import { readLoneIsotope } from "./readLoneIsotope";
import { readUnits } from "./readUnits";

const BRACKET_OPENS = 0x28;

/**
 * Reads an amount, if any, and the symbols and brackets it multiplies.
 * @param dot the index of the hydrate dot before them
 * @throws InputProblem
 */
export function readComponent(reading: Reading, dot: number | undefined): void {
  const { atoms, at: start } = reading;
  const first = atoms.length;
  const code = reading.text.charCodeAt(start);
  // Most parts begin with a symbol or a bracket; only the others can begin with an amount.
  const amount = isCapital(code) || code === BRACKET_OPENS ? undefined : readAmount(reading, start, "amount");
  if (amount !== undefined) {
    const standsFirst = dot === undefined && reading.depth === 0;
    if (standsFirst && readLoneIsotope(reading, amount.end)) return;
    reading.at = amount.end;
    reading.skipSpaces();
    if (standsFirst) reading.firstAmountEnd = amount.end;
  }
  readUnits(reading);
  if (atoms.length === first) throw nothingHere(reading, start, dot);
  if (amount !== undefined) atoms.multiply(first, amount.value);
}
