import { massNumberInCount, massNumberOfTracer } from "../../../problems/functions/formulaProblems";
import { isMetal } from "../../isMetal";
import { isTracer, massNumbersOf } from "../nuclides";
import type { Reading } from "../Reading";
import { canBalance, rangeOf, stateSum, type StateSum } from "../../usualStates";

// Rings and chains of one nonmetal end at eight atoms (S8); above that only carbon goes on, with its hydrogens.
const LARGEST_RING = 12;
// Hydrocarbons hold a hydrogen for three carbons and more; what holds fewer is no chain of carbon.
const CARBONS_PER_HYDROGEN = 3;
const FEW_ELEMENTS = 3;
// Waters, ammonias and methyls, and an ion's own.
const HYDROGENS_ON_O = 2;
const HYDROGENS_ON_C_OR_N = 4;
const HYDROGENS_OVER = 2;

// The elements with a nuclide of one digit, hydrogen apart: 2H2O and H3 are counts.
const LIGHT: readonly string[] = ["He", "Li", "Be"];

// C12 names a chain of carbon far more often than the nuclide.
const CHAIN_OF_TWELVE = 12;

/**
 * Refuses a count that holds a mass number typed without its bracket, where the count makes a sum of oxidation states that no compound has
 * and the isotope mends it: `K15NO3`, `H218O`, `U235F6`, `H2O18`. A symbol in a bracket of its own, (K)15, is taken as meant.
 * @param totals how many of each atom the whole formula has
 * @throws InputProblem
 */
export function refuseMassNumber(reading: Reading, totals: ReadonlyMap<string, number>, charge: number): void {
  const { text, atoms } = reading;
  let sum: StateSum | undefined;
  let isOrganic: boolean | undefined;
  for (let index = 0; index < atoms.length; index++) {
    const from = atoms.countAt[index] as number;
    const end = atoms.end[index] as number;
    if (end === from) continue;
    const symbol = atoms.symbol[index] as string;
    const next = index + 1 < atoms.length && atoms.at[index + 1] === end ? (atoms.symbol[index + 1] as string) : "";
    if (end - from === 1 && !LIGHT.includes(symbol) && !LIGHT.includes(next)) continue;
    // Most of what has counts of two digits, kept free of the tables.
    isOrganic ??= isOrdinaryOrganic(totals);
    if (isOrganic) return;
    const own = wholeCount(text, from, end);
    const mass = own === undefined ? undefined : massNumberIn(symbol, own, next);
    if (own === undefined || mass === undefined) continue;
    if (symbol === "H" && canHold(totals.get("H") as number, totals)) continue;
    sum ??= stateSum(totals);
    const digits = String(mass.number);
    const meant = digits.length === end - from ? 1 : Math.floor(own / 10 ** digits.length);
    const factor = (atoms.count[index] as number) / own;
    if (!isMended(mass, symbol, totals, sum, charge, (own - meant) * factor)) continue;
    const place = reading.spot(end - digits.length);
    if (isTracer(digits, mass.symbol)) throw massNumberOfTracer(place, digits, mass.symbol);
    throw massNumberInCount(place, digits, mass.symbol, text.slice(atoms.at[index], end), symbol);
  }
}

// The smallest mass number of two digits.
const SMALLEST = 10;

/** Carbon with as many hydrogens as it usually has, and of anything else too few for a mass number. */
function isOrdinaryOrganic(totals: ReadonlyMap<string, number>): boolean {
  const [carbons, hydrogens] = [totals.get("C") ?? 0, totals.get("H") ?? 0];
  if (carbons === 0 || hydrogens * CARBONS_PER_HYDROGEN < carbons || !canHold(hydrogens, totals)) return false;
  let few = true;
  totals.forEach((count, symbol) => {
    if (count >= SMALLEST && symbol !== "C" && symbol !== "H") few = false;
  });
  return few;
}

interface MassNumber {
  readonly number: number;
  /** The element it is an isotope of: the next symbol, or the one that the count stands behind. */
  readonly symbol: string;
}

const DIGIT_ZERO = 0x30;
const DIGIT_NINE = 0x39;

/** The count in plain digits between two indices; undefined where it has any other character. */
function wholeCount(text: string, from: number, end: number): number | undefined {
  let count = 0;
  for (let at = from; at < end; at++) {
    const code = text.charCodeAt(at);
    if (code < DIGIT_ZERO || code > DIGIT_NINE) return undefined;
    count = count * 10 + code - DIGIT_ZERO;
  }
  return count;
}

// A count of three digits that is a mass number of its own symbol says so in all its digits: Cs137Cl, whose 37 would be chlorine's.
const THREE_DIGITS = 100;

/** The last digits of a count that are a mass number of the symbol right behind them; else all of them, of the symbol before them. */
function massNumberIn(symbol: string, count: number, next: string): MassNumber | undefined {
  if (count >= THREE_DIGITS && massNumbersOf(symbol).includes(count)) return { number: count, symbol };
  if (next !== "" && next !== "H") {
    for (const number of massNumbersOf(next)) if (count % (number < 10 ? 10 : number < 100 ? 100 : 1000) === number) return { number, symbol: next };
  }
  return symbol !== "H" && massNumbersOf(symbol).includes(count) ? { number: count, symbol } : undefined;
}

/** Whether the formula has no usual sum of states as read, and has one with so many atoms of a symbol fewer. */
function isMended(mass: MassNumber, symbol: string, totals: ReadonlyMap<string, number>, sum: StateSum, charge: number, fewer: number): boolean {
  const total = totals.get(symbol) as number;
  if (totals.size === 1) return fewer === total - 1 && symbol === mass.symbol && mass.number !== CHAIN_OF_TWELVE && charge === 0;
  // C43H66N12O12S2 and its like: of so many elements, carbon and hydrogen among them, any count can be one.
  if (mass.symbol === symbol && totals.has("C") && totals.has("H") && totals.size > FEW_ELEMENTS) return false;
  const [low, high] = rangeOf(symbol, totals);
  const least = sum.least - fewer * low;
  const most = sum.most - fewer * high;
  if (!(least <= charge && most >= charge)) return false;
  const isUsual = sum.least <= charge && sum.most >= charge;
  if (!isUsual) return isSalt(mass, totals);
  return isLoneRing(symbol, total, totals) && canBalance(new Map([...totals, [symbol, total - fewer]]), charge);
}

/** Alloys and borides have no states to add up; a tin or iron count of theirs is a count. */
const isSalt = (mass: MassNumber, totals: ReadonlyMap<string, number>): boolean =>
  !isMetal(mass.symbol) || ["O", "F", "Cl", "Br", "I", "S", "N"].some((anion) => totals.has(anion));

/** True where the other atoms can hold so many hydrogens, as in Cl2H18O9Zr, an oxychloride with its waters in Hill's order. */
const canHold = (hydrogens: number, totals: ReadonlyMap<string, number>): boolean =>
  hydrogens <= HYDROGENS_ON_O * (totals.get("O") ?? 0) + HYDROGENS_ON_C_OR_N * ((totals.get("C") ?? 0) + (totals.get("N") ?? 0)) + HYDROGENS_OVER;

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
