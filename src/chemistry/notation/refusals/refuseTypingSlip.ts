import { capitalsMixedUp, oneForL, oneForLOfThallium, zeroForO, type Spot } from "../../../problems/functions/formulaProblems";
import type { AtomsInText } from "../Reading";
import { hydrateDots } from "../hydrates/hydrateDot";
import { isCapital } from "../characters";
import type { Reading } from "../Reading";

/** Two capitals that make no bond anyone writes but are easily typed for one element. A bracket, (C)I, keeps them apart. */
const MIXED_UP: ReadonlyMap<string, readonly [reading: string, meant: string]> = new Map([
  ["CI", ["carbon and iodine", "Cl with a small L for chlorine"]],
  ["CU", ["carbon and uranium", "Cu for copper"]],
  ["SI", ["sulfur and iodine", "Si for silicon"]],
  ["TI", ["tritium and iodine", "Ti for titanium, Tl for thallium"]],
]);

const DIGIT_ZERO = 0x30;
const DIGIT_ONE = 0x31;

// Carbon binds four hydrogens, and no formula in use holds more for each other atom (CH4, NH4+, BH4-); ions may add two.
const HYDROGENS_PER_ATOM = 4;
const HYDROGENS_OVER = 2;

/**
 * Refuses a formula that reads, but almost certainly says something else than was meant: "NaCI", "NaC1", "H20", "Fe203".
 * An atom in a bracket of its own is taken as meant.
 * @param totals how many of each atom the whole formula has
 * @throws InputProblem
 */
export function refuseTypingSlip(reading: Reading, totals: ReadonlyMap<string, number>): void {
  const { text, atoms } = reading;
  for (let index = 0; index < atoms.length; index++) {
    if (atoms.countAt[index] === atoms.end[index]) refuseMixedUp(reading, index);
    else if (isThallium(text, atoms, index)) throw oneForLOfThallium(reading.spot(atoms.at[index] as number));
    else if (isOneForL(text, atoms, index)) throw oneForL(...placeOf(reading, index));
    else if (holdsZero(text, atoms, index) && isZeroForO(text, atoms, index, totals))
      throw zeroForO(...placeOf(reading, index), atoms.symbol[index] as string);
  }
}

/** Where an atom stands, and its symbol and count as typed. */
function placeOf(reading: Reading, index: number): [spot: Spot, seen: string] {
  const at = reading.atoms.at[index] as number;
  return [reading.spot(at), reading.text.slice(at, reading.atoms.end[index])];
}

function refuseMixedUp(reading: Reading, index: number): void {
  const { symbol, at, end } = reading.atoms;
  const next = index + 1 < reading.atoms.length ? symbol[index + 1] : undefined;
  if ((next !== "I" && next !== "U") || at[index + 1] !== end[index]) return;
  const seen = (symbol[index] as string) + next;
  const pair = MIXED_UP.get(seen);
  const start = at[index] as number;
  // Carbon tetraiodide is written CI4, and has nothing before it.
  if (pair !== undefined && (start > 0 || seen !== "CI")) throw capitalsMixedUp(reading.spot(start), seen, ...pair);
}

/** T1 before more, with a count that nobody writes: T1Cl for TlCl. */
const isThallium = (text: string, atoms: AtomsInText, index: number): boolean =>
  atoms.symbol[index] === "T" && text.slice(atoms.countAt[index], atoms.end[index]) === "1";

/** C1 or C12 that ends a formula or bracket, right behind another symbol: chloride typed with the digit 1. */
function isOneForL(text: string, atoms: AtomsInText, index: number): boolean {
  if (index === 0 || atoms.symbol[index] !== "C" || text.charCodeAt(atoms.countAt[index] as number) !== DIGIT_ONE) return false;
  const end = atoms.end[index] as number;
  if (isCapital(text.charCodeAt(end))) return false;
  const at = atoms.at[index] as number;
  const attached = atoms.end[index - 1] === at || /[)\]}\d]/.test(text.charAt(at - 1));
  return attached && !/[a-z([{.,]/.test(text.charAt(end));
}

/** True where a digit 0 stands behind the first digit of the atom's count. */
function holdsZero(text: string, atoms: AtomsInText, index: number): boolean {
  const end = atoms.end[index] as number;
  for (let place = (atoms.countAt[index] as number) + 1; place < end; place++) if (text.charCodeAt(place) === DIGIT_ZERO) return true;
  return false;
}

function isZeroForO(text: string, atoms: AtomsInText, index: number, totals: ReadonlyMap<string, number>): boolean {
  const symbol = atoms.symbol[index];
  const at = atoms.at[index] as number;
  const end = atoms.end[index] as number;
  const digits = (): string => text.slice(atoms.countAt[index], end);
  if (symbol === "H" && isWaterOfFullStop(text, at, end)) return true;
  if (symbol === "H" && isOverfull(totals)) return /^[1-9]\d*$/.test(digits());
  const hasNeighbour = (index > 0 && atoms.end[index - 1] === at) || (index + 1 < atoms.length && atoms.at[index + 1] === end);
  if (symbol !== "C" && !hasNeighbour && standsAlone(text, at, end)) return /^[1-9]\d*$/.test(digits());
  if (symbol === "H" || totals.has("O") || (symbol === "C" && totals.has("H"))) return false;
  return /^[1-9]0[1-9]$/.test(digits());
}

/** H20 that ends the formula behind a full stop between digits, read as a decimal since no H2O follows it: "CuSO4.5H20". */
const isWaterOfFullStop = (text: string, at: number, end: number): boolean =>
  text.slice(at, end) === "H20" && isBehindDecimal(text, at) && ENDS_PART.test(text.slice(end));

function isBehindDecimal(text: string, at: number): boolean {
  let mark = at - 1;
  while (/\d/.test(text.charAt(mark))) mark--;
  return mark < at - 1 && /\d[.,]/.test(text.slice(Math.max(0, mark - 1), mark + 1));
}

/** True where there is more hydrogen than all the other atoms could hold. */
function isOverfull(totals: ReadonlyMap<string, number>): boolean {
  let others = 0;
  totals.forEach((count, symbol) => {
    if (symbol !== "H") others += count;
  });
  return (totals.get("H") ?? 0) > HYDROGENS_PER_ATOM * others + HYDROGENS_OVER;
}

/** True where the symbol and its count are all there is between dots and ends: "H20", "·5H20". */
const standsAlone = (text: string, at: number, end: number): boolean => beginsPart(text, at) && ENDS_PART.test(text.slice(end));

/** True where nothing but an amount stands between an index and the start or a dot. */
function beginsPart(text: string, at: number): boolean {
  let place = at - 1;
  let dots = 0;
  for (; /[\s\d.,½]/.test(text.charAt(place)); place--) if (text.charAt(place) === ".") dots++;
  return dots > 0 || place < 0 || hydrateDots.includes(text.charAt(place));
}

const ENDS_PART = new RegExp(`^\\s*(?:$|[${hydrateDots.replace(".", "")}]|\\((?:s|l|g|aq)\\))`);
