import { massNumberInCount, massNumberOfTracer } from "../../../problems/formulaProblems";
import { isMetal } from "../../isMetal";
import { isNuclide, isTracer } from "../nuclides";
import type { Reading } from "../Reading";
import { canBalance, rangeOf, stateSum, type StateSum } from "../../usualStates";

// Rings and chains of one nonmetal end at eight atoms (S8); above that only carbon goes on, with its hydrogens.
const LARGEST_RING = 12;
// Hydrocarbons hold a hydrogen for three carbons and more; what holds fewer is no chain of carbon.
const CARBONS_PER_HYDROGEN = 3;
const FEW_ELEMENTS = 3;
// Waters, ammonias and methyls, and an ion's own.
const HYDROGENS_HELD: readonly (readonly [symbol: string, hydrogens: number])[] = [
  ["O", 2],
  ["C", 4],
  ["N", 4],
];
const HYDROGENS_OVER = 2;

// The elements with a nuclide of one digit, hydrogen apart: 2H2O and H3 are counts.
const LIGHT: readonly string[] = ["He", "Li", "Be"];

// C12 names a chain of carbon far more often than the nuclide.
const CHAIN_OF_TWELVE = "12";

/**
 * Refuses a count that holds a mass number typed without its bracket, where the count makes a sum of oxidation states that no compound has
 * and the isotope mends it: `K15NO3`, `H218O`, `U235F6`, `H2O18`. A symbol in a bracket of its own, (K)15, is taken as meant.
 * @param totals how many of each atom the whole formula has
 * @throws InputProblem
 */
export function refuseMassNumber(reading: Reading, totals: ReadonlyMap<string, number>, charge: number): void {
  const { text, atoms } = reading;
  let sum: StateSum | undefined;
  for (let index = 0; index < atoms.length; index++) {
    const [from, end] = [atoms.countAt[index] as number, atoms.end[index] as number];
    if (end === from) continue;
    const symbol = atoms.symbol[index] as string;
    const next = index + 1 < atoms.length && atoms.at[index + 1] === end ? (atoms.symbol[index + 1] as string) : undefined;
    if (end - from === 1 && !LIGHT.includes(symbol) && !LIGHT.includes(next ?? "")) continue;
    const digits = text.slice(from, end);
    const mass = massNumberIn(symbol, digits, next);
    if (mass === undefined) continue;
    sum ??= stateSum(totals);
    const meant = Number(digits.slice(0, digits.length - mass.digits.length) || 1);
    const factor = (atoms.count[index] as number) / Number(digits);
    if (!isMended(mass, symbol, totals, sum, charge, (Number(digits) - meant) * factor)) continue;
    const place = reading.spot(end - mass.digits.length);
    if (isTracer(mass.digits, mass.symbol)) throw massNumberOfTracer(place, mass.digits, mass.symbol);
    throw massNumberInCount(place, mass.digits, mass.symbol, symbol + digits, symbol);
  }
}

interface MassNumber {
  readonly digits: string;
  /** The element it is an isotope of: the next symbol, or the one that the count stands behind. */
  readonly symbol: string;
}

/** The last digits of a count that are a mass number of the symbol right behind them; else all of them, of the symbol before them. */
function massNumberIn(symbol: string, digits: string, next: string | undefined): MassNumber | undefined {
  if (!/^[1-9]\d*$/.test(digits)) return undefined;
  for (const length of next === undefined || next === "H" ? [] : [3, 2, 1]) {
    const mass = digits.slice(-length);
    const before = digits.slice(0, -length);
    if (mass.length === length && !before.startsWith("0") && isAnyNuclide(mass, next as string)) return { digits: mass, symbol: next as string };
  }
  return symbol !== "H" && isAnyNuclide(digits, symbol) ? { digits, symbol } : undefined;
}

const isAnyNuclide = (mass: string, symbol: string): boolean => isNuclide(mass, symbol) || isTracer(mass, symbol);

/** Whether the formula has no usual sum of states as read, and has one with so many atoms of a symbol fewer. */
function isMended(mass: MassNumber, symbol: string, totals: ReadonlyMap<string, number>, sum: StateSum, charge: number, fewer: number): boolean {
  const total = totals.get(symbol) as number;
  if (totals.size === 1) return fewer === total - 1 && symbol === mass.symbol && mass.digits !== CHAIN_OF_TWELVE && charge === 0;
  const [low, high] = rangeOf(symbol, totals);
  const least = sum.least - fewer * low;
  const most = sum.most - fewer * high;
  if (!(least <= charge && most >= charge)) return false;
  const isUsual = sum.least <= charge && sum.most >= charge;
  if (!isUsual) return isSalt(mass, totals) && !(symbol === "H" && canHold(total, totals));
  return isLoneRing(symbol, total, totals) && canBalance(new Map([...totals, [symbol, total - fewer]]), charge);
}

/** Alloys and borides have no states to add up; a tin or iron count of theirs is a count. */
const isSalt = (mass: MassNumber, totals: ReadonlyMap<string, number>): boolean =>
  !isMetal(mass.symbol) || ["O", "F", "Cl", "Br", "I", "S", "N"].some((anion) => totals.has(anion));

/** True where the other atoms can hold so many hydrogens, as in Cl2H18O9Zr, an oxychloride with its waters in Hill's order. */
const canHold = (hydrogens: number, totals: ReadonlyMap<string, number>): boolean =>
  hydrogens <= HYDROGENS_HELD.reduce((sum, [symbol, each]) => sum + each * (totals.get(symbol) ?? 0), HYDROGENS_OVER);

const HALOGENS: readonly string[] = ["F", "Cl", "Br", "I"];

/** Few elements, as in a labelled gas or alcohol: C13H4N4O9 is a compound of thirteen carbons. */
const isSimple = (totals: ReadonlyMap<string, number>): boolean => !totals.has("H") || totals.size <= FEW_ELEMENTS;

/** More atoms of one nonmetal than any ring has, and not the hydrogens of a chain of carbon. */
function isLoneRing(symbol: string, count: number, totals: ReadonlyMap<string, number>): boolean {
  if (isMetal(symbol) || count <= LARGEST_RING || symbol === "O" || symbol === "H") return false;
  const hydrogens = (totals.get("H") ?? 0) + (totals.get("D") ?? 0);
  if (symbol === "C") return hydrogens * CARBONS_PER_HYDROGEN < count && !HALOGENS.some((halogen) => totals.has(halogen)) && isSimple(totals);
  return !totals.has("C") || !totals.has("H");
}
