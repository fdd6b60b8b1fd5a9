import { massNumberOrAmount } from "../../problems/formulaProblems";
import { elementAt } from "./elementAt";
import { formulaNotes } from "./formulaNotes";
import { isSmallLetter } from "./isSmallLetter";
import { nuclideSymbol } from "./nuclideSymbol";
import type { Reading } from "./Reading";

/**
 * Reads `2H` as all there is: an isotope. `2H2O` is an amount.
 * @param digitsEnd the index after the number that the formula begins with
 * @returns false, with nothing read, where the number is an amount
 * @throws InputProblem for `13CO2`, which cannot be told from 13 CO2
 */
export function readLoneIsotope(reading: Reading, digitsEnd: number): boolean {
  const { text, atoms, at: start } = reading;
  const element = elementAt(text, digitsEnd);
  if (element === undefined) return false;
  const end = digitsEnd + element.length;
  if (isSmallLetter(text.charCodeAt(end))) return false;
  const digits = text.slice(start, digitsEnd);
  const symbol = nuclideSymbol(digits, element);
  if (symbol === undefined) return false;
  if (text.slice(end).trim() === "") {
    reading.note(formulaNotes.isotope(digits + element, element, digits));
    reading.at = end;
    atoms.add(symbol, 1, digitsEnd, end, end);
    return true;
  }
  if (element !== "H") throw massNumberOrAmount(reading.spot(start), digits, element);
  return false;
}
