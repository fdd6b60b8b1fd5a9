import { noNuclide } from "../../problems/formulaProblems";
import { elementAt } from "./elementAt";
import { isSmallLetter } from "./isSmallLetter";
import { massNumberAt } from "./massNumberAt";
import { nuclideSymbol } from "./nuclideSymbol";
import { readCount } from "./readCount";
import type { Reading } from "./Reading";
import { unreadableCharacter } from "./unreadableCharacter";

/**
 * Reads a mass number written high, its symbol and its count: `^13C2`, `¹³C`.
 * @throws InputProblem for no element, or a nuclide whose mass is not in the table
 */
export function readIsotope(reading: Reading): void {
  const { text, atoms, at: start } = reading;
  const mass = massNumberAt(text, start);
  const element = mass && elementAt(text, mass.symbolAt);
  if (mass === undefined || element === undefined || isSmallLetter(text.charCodeAt(mass.symbolAt + element.length))) {
    throw unreadableCharacter(reading.argument, text, mass?.symbolAt ?? start);
  }
  const symbol = nuclideSymbol(mass.digits, element);
  if (symbol === undefined) throw noNuclide(reading.spot(start), mass.digits + element);
  const end = mass.symbolAt + element.length;
  reading.at = end;
  const count = readCount(reading, undefined, atoms.length);
  atoms.add(symbol, count, start, end, reading.at);
}
