import { massNumberOfTracer, massNumberOrAmount, noNuclide } from "../../problems/functions/formulaProblems";
import { countDigit, isCapital, isSmallLetter, superscriptDigit } from "./characters";
import { readAmount } from "./counts/readAmount";
import { readCount } from "./counts/readCount";
import { elementAt } from "./elementAt";
import { formulaNotes } from "./formulaNotes";
import { isTracer, nuclideSymbol } from "./nuclides";
import type { Reading } from "./Reading";
import { unreadableCharacter } from "./refusals/unreadableCharacter";

interface MassNumber {
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
  reading.symbolAt = mass.symbolAt;
  const count = readCount(reading, undefined, atoms.length);
  atoms.add(symbol, count, start, end, reading.at);
}

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
  if (symbol === undefined && isTracer(digits, element)) throw massNumberOfTracer(reading.spot(start), digits, element);
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

/**
 * Refuses a mass number that a bracket begins with, as in `(15NH4)2SO4`: fifteen ammonium ions would be written behind the bracket.
 * @param digitsEnd the index after the number that the bracket begins with
 * @throws InputProblem
 */
export function refuseIsotopeInBracket(reading: Reading, digitsEnd: number): void {
  const { text, at: start } = reading;
  const element = elementAt(text, digitsEnd);
  const digits = text.slice(start, digitsEnd);
  if (element === undefined || element === "H" || isSmallLetter(text.charCodeAt(digitsEnd + element.length))) return;
  if (isTracer(digits, element)) throw massNumberOfTracer(reading.spot(start), digits, element);
  if (nuclideSymbol(digits, element) !== undefined) throw massNumberOrAmount(reading.spot(start), digits, element);
}
