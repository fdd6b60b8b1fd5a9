import { noNuclide } from "../../problems/formulaProblems";
import { elementAt } from "./elementAt";
import { isCapital } from "./isCapital";
import { nuclideSymbol } from "./nuclideSymbol";
import { readAmount } from "./readAmount";
import type { Reading } from "./Reading";

/**
 * Reads a mass number and a symbol alone in a bracket, `[13C]`, `[13C6]`, `(2H)`, up to the closing bracket.
 * @returns false, with nothing read, where the bracket holds anything else
 * @throws InputProblem for a nuclide in square brackets whose mass is not in the table
 */
export function readBracketedIsotope(reading: Reading, opening: string): boolean {
  const { text, atoms, at: start } = reading;
  if (isCapital(text.charCodeAt(start))) return false;
  const found = /^(\d+)([A-Z][a-z]?)(\d*)(?=[)\]}])/.exec(text.slice(start));
  const [seen, digits, element, count] = found ?? [];
  if (seen === undefined || digits === undefined || element === undefined || elementAt(element, 0) !== element) return false;
  if (count !== "" && opening !== "[") return false;
  const symbol = nuclideSymbol(digits, element);
  if (symbol === undefined) {
    if (opening === "[" && count === "") throw noNuclide(reading.spot(start), seen);
    return false;
  }
  const end = start + digits.length + element.length;
  const amount = readAmount(reading, end, "count");
  reading.at = amount?.end ?? end;
  atoms.add(symbol, amount?.value ?? 1, end - element.length, end, reading.at);
  return true;
}
