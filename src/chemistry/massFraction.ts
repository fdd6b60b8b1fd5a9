import { partNotKnown } from "../problems/functions/compoundProblems";
import type { Formula } from "./Formula";
import { molarMass } from "./molarMass";
import { parseFormula } from "./parseFormula";

/** The groups whose share of a compound the trade asks for. */
export const GROUPS: readonly string[] = ["H2O", "OH", "CO3", "HCO3", "SO4", "NO3", "PO4", "NH4", "SiO2"];

/** How much of a compound is one part of it. */
export interface PartShare {
  readonly formula: Formula;
  readonly part: Formula;
  /** Atoms of the part; of an element one, since all of its atoms count. */
  readonly needed: ReadonlyMap<string, number>;
  /** How often the compound could hold the part by each of the part's atoms: `["H", 10, 2]` is 10 / 2. */
  readonly byAtom: readonly (readonly [symbol: string, held: number, needed: number])[];
  /** The least of these. */
  readonly count: number;
  /** g per g of the compound. */
  readonly fraction: number;
}

/**
 * Share of a compound's mass that is one element or one group: count M(part) / M(compound). A group is counted by its scarcest atom, 2 of SO4
 * in alum by its sulfur, because a formula does not say which atoms belong together; the count may be a decimal, and hydroxide counts as water
 * where water is asked for. Follows from the definition.
 * @throws InputProblem for a part that is neither an element nor one of GROUPS, and as parseFormula
 */
export function massFraction(formulaText: string, partText: string): PartShare {
  const formula = parseFormula(formulaText, "formula");
  const part = parseFormula(partText, "part");
  if (part.atoms.size > 1 && !GROUPS.some((group) => isSame(parseFormula(group), part))) throw partNotKnown(partText, GROUPS);
  // Of an element all atoms count: O2 asks for the same share as O.
  const needed = part.atoms.size > 1 ? part.atoms : new Map([...part.atoms.keys()].map((symbol) => [symbol, 1]));
  const byAtom = [...needed].map(([symbol, count]) => [symbol, formula.atoms.get(symbol) ?? 0, count] as const);
  const count = Math.min(...byAtom.map(([, held, one]) => held / one));
  return { formula, part, needed, byAtom, count, fraction: (count * molarMass({ atoms: needed }, "part")) / molarMass(formula, "formula") };
}

const isSame = (one: Formula, other: Formula): boolean =>
  one.atoms.size === other.atoms.size && [...one.atoms].every(([symbol, count]) => other.atoms.get(symbol) === count);
