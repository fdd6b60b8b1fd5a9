import { caseSlip } from "../../../problems/functions/formulaProblems";
import { isMetal } from "../../isMetal";
import { elementNames } from "../../elementNames";
import { canBalance, stateSum } from "../../usualStates";
import type { AtomsInText, Reading } from "../Reading";

interface Pair {
  /** The metals that may stand beside it where two capitals are meant; alloys hold others. Left out where only it alone is a slip. */
  readonly beside?: string;
  /** The oxidation state of carbon in what is meant; undefined without carbon. */
  readonly carbon?: number;
  /** Counts that make an anion of the two capitals, for an element that nobody can weigh. */
  readonly anions?: RegExp;
}

const ALKALI = "Li Na K Rb Cs";
// Metals whose carbonates are weighed. Alloys of cobalt with titanium, tungsten, platinum, samarium and their like stay alloys.
const CARBONATES = `${ALKALI} Mg Ca Sr Ba Al Mn Fe Co Ni Cu Zn Ag Cd Hg Tl Pb Bi Y La Ce Pr Nd Gd Tb Dy Er Th`;
const ANY = "*";

const PAIRS: ReadonlyMap<string, Pair> = new Map<string, Pair>([
  ["Co", { beside: CARBONATES, carbon: 4 }],
  ["Cs", { beside: "", carbon: 4 }],
  ["Hf", { beside: ALKALI }],
  ["Ho", { beside: ALKALI }],
  ["Sc", { beside: ALKALI, carbon: 4 }],
  ["Bi", {}],
  ["Ni", {}],
  ["No", { beside: ANY, anions: /^[23]$/ }],
  ["Po", { beside: ANY, anions: /^[34]$/ }],
  ["Cn", { beside: ANY, carbon: 2, anions: /^$/ }],
  ["Nh", { beside: ANY, anions: /^[2-6]$/ }],
  ["Hs", { beside: ANY, anions: /^O?$/ }],
  ["Bh", { beside: ANY, anions: /^4$/ }],
]);
const ALONE: readonly string[] = ["Co2", "Co3", "Cs2", "Bi3", "Ni3"];
const CARBONYL = /^\s*(?:(?:Fe|Ru|Os)\(Co\)5|Ni\(Co\)4|(?:V|Cr|Mo|W)\(Co\)6|(?:Mn|Re)2\(Co\)10|Fe2\(Co\)9)\s*$/;
const UREA_OR_ACETONE = /^\s*(?:Co\((?:NH2|CH3)\)2|\((?:NH2|CH3|C2H5)\)2Co)\s*$/;
// What can stand behind a carbonyl, by its first symbol and the one after: CH3CoOH, HCoONa, CH3CoCH3, CH3CoNH2.
const BEHIND_CARBONYL: ReadonlyMap<string, readonly string[]> = new Map([
  ["O", ["H", "C", "Na", "K", "Li", "N"]],
  ["C", ["H"]],
  ["N", ["H"]],
]);

/**
 * Refuses a symbol of two letters where two capitals were meant: `CaCo3`, `Co2`, `KNo3`, `KScN`. It is refused where the formula with the
 * metal has more positive charge than its anions can carry and the one with the two capitals balances.
 * A symbol in a bracket of its own, Ca(Co)3, is taken as meant.
 * @throws InputProblem naming both readings
 */
export function refuseCaseSlip(reading: Reading, totals: ReadonlyMap<string, number>, charge: number): void {
  const { text, atoms } = reading;
  for (let index = 0; index < atoms.length; index++) {
    const symbol = atoms.symbol[index] as string;
    if (symbol.length === 1) continue;
    const pair = PAIRS.get(symbol);
    if (pair === undefined) continue;
    const [at, countAt, end] = [atoms.at[index] as number, atoms.countAt[index] as number, atoms.end[index] as number];
    const isCarbonyl = symbol === "Co" && (CARBONYL.test(text) || UREA_OR_ACETONE.test(text));
    const isOwnBracket = at > 0 && "([{".includes(text.charAt(at - 1)) && ")]}".includes(text.charAt(end)) && countAt === end;
    if (isOwnBracket && !isCarbonyl) continue;
    const digits = text.slice(countAt, end);
    if (isCarbonyl || isSlip(pair, symbol, digits, index, reading, totals, charge)) {
      throw caseSlip(reading.spot(at), symbol, digits, namesOf(symbol), isOwnBracket ? "[]" : "()");
    }
  }
}

function namesOf(symbol: string): readonly [metal: string, first: string, second: string] {
  const nameOf = (name: string): string => elementNames().get(name) as string;
  return [nameOf(symbol), nameOf(symbol.charAt(0)), nameOf(symbol.charAt(1).toUpperCase())];
}

function isSlip(
  pair: Pair,
  symbol: string,
  digits: string,
  index: number,
  reading: Reading,
  totals: ReadonlyMap<string, number>,
  charge: number,
): boolean {
  const { atoms } = reading;
  if ((atoms.length === 1 && (charge === 0 || digits === "")) || pair.beside === undefined)
    return atoms.length === 1 && ALONE.includes(symbol + digits);
  if (pair.anions !== undefined && index > 0 && pair.anions.test(digits)) return true;
  if (symbol === "Co" && isInCarbonChain(index, reading)) return true;
  const isFirst = index === 0 && symbol !== "Ho" && pair.anions === undefined;
  if ((isFirst && totals.size > 1) || !/^\d*$/.test(digits) || (symbol === "Sc" && atoms.symbol[index + 1] !== "N")) return false;
  if (!hasOnlyMetals(pair.beside, symbol, totals)) return false;
  if (pair.beside !== ANY && stateSum(totals).least <= charge) return false;
  const own = Number(digits || 1);
  return balancesAsTwo(pair, symbol, own, sameSlips(atoms, symbol, index) / own, totals, charge);
}

/** How many atoms the symbol makes wherever it stands with the same count: one who types Co3 for CO3 does so throughout. */
function sameSlips(atoms: AtomsInText, symbol: string, index: number): number {
  const lengthOf = (at: number): number => (atoms.end[at] as number) - (atoms.countAt[at] as number);
  let sum = 0;
  for (let other = 0; other < atoms.length; other++) {
    if (atoms.symbol[other] === symbol && lengthOf(other) === lengthOf(index)) sum += atoms.count[other] as number;
  }
  return sum;
}

/** Co between the hydrogens of a carbon and what carbonyls bind: CH3CoOH. Cobalt hydroxide oxide, HCoO2, is none, nor is C63H88CoN14O14P. */
function isInCarbonChain(index: number, { text, atoms }: Reading): boolean {
  const [at, end] = [atoms.at[index], atoms.end[index] as number];
  const hydrogens = text.slice(Math.max(0, (at as number) - 1), at);
  if (index === 0 || atoms.symbol[index - 1] !== "H" || atoms.end[index - 1] !== at || atoms.countAt[index] !== end) return false;
  if (atoms.at[index + 1] !== end || atoms.countAt[index + 1] !== atoms.end[index + 1]) return false;
  const next = atoms.symbol[index + 1] as string;
  if (next === "Cl") return /[35]$/.test(hydrogens);
  const after = atoms.at[index + 2] === atoms.end[index + 1] ? (atoms.symbol[index + 2] as string) : "";
  return next === "H" || (BEHIND_CARBONYL.get(next)?.includes(after) ?? false);
}

function hasOnlyMetals(beside: string, symbol: string, totals: ReadonlyMap<string, number>): boolean {
  const allowed = beside.split(" ");
  return beside === ANY || [...totals.keys()].every((other) => other === symbol || !isMetal(other) || allowed.includes(other));
}

/** Whether the formula with the two capitals balances, their carbon in its own state. */
function balancesAsTwo(pair: Pair, symbol: string, own: number, factor: number, totals: ReadonlyMap<string, number>, charge: number): boolean {
  const meant = new Map(totals);
  const add = (name: string, count: number): unknown => meant.set(name, (meant.get(name) ?? 0) + count);
  add(symbol, -own * factor);
  if (meant.get(symbol) === 0) meant.delete(symbol);
  const [first, second] = [symbol.charAt(0), symbol.charAt(1).toUpperCase()];
  add(second, own * factor);
  if (pair.carbon !== undefined && first === "C") return canBalance(meant, charge - pair.carbon * factor);
  if (pair.carbon !== undefined && second === "C") {
    add("C", -own * factor);
    if (meant.get("C") === 0) meant.delete("C");
    add(first, factor);
    return canBalance(meant, charge - pair.carbon * own * factor);
  }
  add(first, factor);
  return canBalance(meant, charge);
}
