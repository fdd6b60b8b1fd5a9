import { decimalOrDot } from "../../../problems/functions/formulaProblems";
import { isMetal } from "../../isMetal";
import { usualStates } from "../../usualStates";
import { countDigit, isCapital, isSmallLetter, skipSpaces } from "../characters";
import { elementAt } from "../elementAt";
import type { Reading } from "../Reading";
import { hydrateDots } from "./hydrateDot";

// Anions of a fixed shape: half an oxygen more makes none of them, so that a decimal behind one is a dot that lost what follows.
const ANIONS = ["SO4", "SO3", "S2O3", "S2O5", "S2O8", "NO3", "NO2", "CO3", "C2O4", "PO4", "ClO4", "ClO3", "CrO4", "Cr2O7", "MnO4"];
const LONGEST_ANION = 5;
// Metal, count, nonmetal, count, up to the mark: Al2O3, FeCl3. The longest such part is short.
const BINARY = /(?:^|[^A-Za-z0-9)\]}])([A-Z][a-z]?)(\d{0,2})(O|S|F|Cl|Br|I)(\d{0,2})$/;
const LONGEST_BINARY = 10;

/**
 * Refuses a full stop or comma that would be read as a decimal mark although a whole salt stands before it and more of a formula
 * behind it: the first in `Al2O3.4SiO2H2O`, that in `CaSO4.2H`. A count in brackets, `Al2(O3.4)`, is taken as meant.
 * @param end the index after the decimals
 * @throws InputProblem
 */
export function refuseDoubtfulDecimal(reading: Reading, mark: number, end: number): void {
  const { text } = reading;
  const next = skipSpaces(text, end);
  // Told apart later, as a digit 0 for the letter O.
  if (text.startsWith("H20", next)) return;
  const isOver = next === text.length;
  const goesOn = isCapital(text.charCodeAt(next)) || (!isOver && `${hydrateDots}([{`.includes(text.charAt(next)));
  const isDoubtful = ((isOver || goesOn) && endsInAnion(text, mark)) || (goesOn && (isHalfWater(reading, next) || endsInBinary(text, mark)));
  if (isDoubtful) throw decimalOrDot(reading.spot(mark), text.charAt(mark));
}

/** True where a hydrogen is the last thing in the text, and a metal stands before the mark: water typed halfway. */
const isHalfWater = ({ text, atoms }: Reading, at: number): boolean =>
  text.charAt(at) === "H" && at === text.length - 1 && atoms.symbol.slice(0, atoms.length).some(isMetal);

function endsInAnion(text: string, mark: number): boolean {
  const tail = plainDigits(text.slice(Math.max(0, mark - LONGEST_ANION), mark));
  return ANIONS.some((anion) => {
    const at = mark - anion.length;
    return tail.endsWith(anion) && at > 0 && /[A-Za-z0-9)\]}₀-₉]/.test(text.charAt(at - 1)) && endsInCation(text, at);
  });
}

/** True where a metal, hydrogen or the bracket of a cation such as (NH4)2 ends at an index. */
function endsInCation(text: string, end: number): boolean {
  let at = end - 1;
  while (countDigit(text.charCodeAt(at)) >= 0) at--;
  if (at >= 0 && ")]}".includes(text.charAt(at))) return true;
  const start = isSmallLetter(text.charCodeAt(at)) ? at - 1 : at;
  const symbol = elementAt(text, start);
  return symbol !== undefined && (symbol === "H" || isMetal(symbol)) && !isCarbonHydrogen(text, start);
}

/** True for the hydrogen of CH, CH2, C6H7: not a cation. */
function isCarbonHydrogen(text: string, at: number): boolean {
  let before = at - 1;
  while (countDigit(text.charCodeAt(before)) >= 0) before--;
  return text.charAt(at) === "H" && text.charAt(before) === "C";
}

function endsInBinary(text: string, mark: number): boolean {
  const part = plainDigits(text.slice(Math.max(0, mark - LONGEST_BINARY), mark));
  const [, metal = "", metals = "", anion = "", anions = ""] = BINARY.exec(part) ?? [];
  if (metal === "" || !isMetal(metal) || elementAt(metal, 0) !== metal) return false;
  const negative = (anion === "O" || anion === "S" ? 2 : 1) * Number(anions || 1);
  return usualStates(metal)?.some((state) => state * Number(metals || 1) === negative) ?? false;
}

const plainDigits = (text: string): string => text.replace(/[₀-₉]/g, (digit) => String(countDigit(digit.charCodeAt(0))));
