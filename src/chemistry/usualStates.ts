import { elementOf } from "./elementOf";
import { isMetal } from "./isMetal";
import { onFirstUse } from "./onFirstUse";

// The oxidation states that weighed compounds usually hold, lowest first. Source: tables of common oxidation states in
// general chemistry texts, from memory. What is not listed can hold any.
const LISTED: readonly (readonly [states: readonly number[], symbols: string])[] = [
  [[1], "Li Na K Rb Cs Ag"],
  [[2], "Be Mg Ca Sr Ba Ra Zn Cd"],
  [[3], "Al Ga Sc Y La Nd Gd Dy Ho Er Tm Lu"],
  [[4], "Zr Hf Th"],
  [[1, 2], "Cu Hg"],
  [[1, 3], "In Tl Au"],
  [[2, 3], "Fe Ni Sm Eu Yb"],
  [[2, 3, 4], "Co Ti"],
  [[3, 4], "Ce Pr Tb"],
  [[2, 4], "Sn Pb Pd Pt Ge"],
  [[3, 5], "Bi Sb"],
  [[2, 3, 4, 5], "V"],
  [[4, 5], "Nb"],
  [[5], "Ta"],
  [[2, 3, 6], "Cr"],
  [[2, 3, 4, 5, 6], "Mo W"],
  [[2, 3, 4, 6, 7], "Mn"],
  [[3, 4, 8], "Os Ru"],
  [[1, 3, 4], "Rh Ir"],
  [[3, 4, 5, 6], "U"],
  [[1], "H"],
  [[-3, 3], "B"],
  [[-4, 2, 4], "C"],
  [[-4, 4], "Si"],
  [[-3, 3, 5], "N P As"],
  [[-2], "O"],
  [[-2, 4, 6], "S Se Te"],
  [[-1], "F"],
  [[-1, 1, 3, 5, 7], "Cl Br I"],
];

const states = onFirstUse(() => new Map(LISTED.flatMap(([list, symbols]) => symbols.split(" ").map((symbol) => [symbol, list] as const))));

export const usualStates = (symbol: string): readonly number[] | undefined => states().get(elementOf(symbol));

/** How far the oxidation states of a formula's atoms can add up; at its ends also carbon bound to carbon and the peroxides. */
export interface StateSum {
  readonly least: number;
  readonly most: number;
}

/**
 * The least and the most that the oxidation states of all atoms can add up to. Hydrogen is +1 beside oxygen and nitrogen, and can be
 * a hydride of metals and their like; nitrogen without oxygen is -3, with carbon up to 0.
 */
export function stateSum(atoms: ReadonlyMap<string, number>): StateSum {
  let [least, most] = [0, 0];
  atoms.forEach((count, symbol) => {
    const [low, high] = rangeOf(symbol, atoms);
    least += count * low;
    most += count * high;
  });
  return { least, most };
}

const HYDRIDE_FORMERS: readonly string[] = ["B", "Si", "Ge", "P", "As"];

const canBeHydride = (among: ReadonlyMap<string, number>): boolean =>
  !among.has("O") && !among.has("N") && [...among.keys()].some((symbol) => isMetal(symbol) || HYDRIDE_FORMERS.includes(symbol));

/** The lowest and the highest usual oxidation state of a symbol in the company of the others. */
export function rangeOf(symbol: string, among: ReadonlyMap<string, number>): readonly [low: number, high: number] {
  const element = elementOf(symbol);
  if (element === "H") return [canBeHydride(among) ? -1 : 1, 1];
  if (element === "N" && !among.has("O")) return [-3, among.has("C") ? 0 : -3];
  const list = states().get(element);
  return list === undefined ? [-Infinity, Infinity] : [list[0] as number, list.at(-1) as number];
}

// Typed counts are decimals at times; 0.1 + 0.2 is not quite 0.3.
const ROUNDING = 1e-9;

/** True where one usual state for each nonmetal, and any mean between the usual states of each metal, add up to the charge. */
export function canBalance(atoms: ReadonlyMap<string, number>, charge: number): boolean {
  let sums: readonly number[] = [0];
  let [least, most] = [0, 0];
  for (const [symbol, count] of atoms) {
    const list = usualStates(symbol);
    if (list === undefined) return false;
    if (isMetal(symbol)) {
      least += count * (list[0] as number);
      most += count * (list.at(-1) as number);
    } else sums = [...new Set(sums.flatMap((sum) => list.map((state) => sum + count * state)))];
    if (sums.length > MANY) return false;
  }
  return sums.some((sum) => sum + least <= charge + ROUNDING && sum + most >= charge - ROUNDING);
}

// Far more than any salt has; bounds the work for a text with every nonmetal in it.
const MANY = 2000;
