import type { Formula } from "../chemistry/Formula";
import { molarMass } from "../chemistry/molarMass";
import { elementFromNowhere, elementVanishes, leavesNothingOf } from "../problems/functions/decompositionProblems";
import { residueCounts, SAME_COUNT, stays } from "./residueCounts";
import { gasesOf, solid, solidsOf } from "./solidsOf";

/** One solid of a residue, and how much of it one formula of the start leaves [mol/mol]. */
export interface Residue {
  readonly formula: Formula;
  readonly perStart: number;
}

/** A solid that is heated and what is left of it. */
export interface Decomposition {
  readonly start: Formula;
  readonly residues: readonly Residue[];
  /** Atoms in the residues, for one formula of the start, by symbol. */
  readonly kept: ReadonlyMap<string, number>;
  /** What was named as leaving. */
  readonly leaves: readonly Formula[];
  /** Atoms that leave, for one formula of the start; of oxygen below 0 where it is taken up. None that are 0. */
  readonly gone: ReadonlyMap<string, number>;
  /** Share of the start's mass that leaves, net of oxygen taken up; below 0 for a gain. */
  readonly loss: number;
}

/** What messages call the two formulas: functions of two decompositions number them. */
export interface FormulaNames {
  readonly start: string;
  readonly residue: string;
}

const NAMES: FormulaNames = { start: "start", residue: "residue" };

/**
 * What a solid loses on heating to a stated residue: 1 - n M(residue) / M(start), summed over the solids of the residue, n such that every
 * element that stays is conserved (`residueCounts`). Right whatever gas leaves and whether or not oxygen is taken up, because only solids are
 * weighed. Source: conservation of each element; atomic weights as atomicWeight.
 * @param residueText one solid, or several joined by plus signs
 * @param leavesText elements that leave though they stay in most decompositions, as formulas parted by commas; undefined for none
 * @throws InputProblem for an element that the start does not hold (oxygen apart, which the air gives), for one that stays and is not in the
 *   residue, for counts that do not fit, and as parseFormula
 */
export function decompose(startText: string, residueText: string, leavesText?: string, names = NAMES): Decomposition {
  const start = solid(startText, names.start);
  const solids = solidsOf(residueText, names.residue);
  const leaves = leavesText === undefined ? [] : gasesOf(leavesText, "leaves");
  const leaving = new Set(leaves.flatMap(({ atoms }) => [...atoms.keys()]));
  for (const symbol of leaving) if (symbol !== "O" && !start.atoms.has(symbol)) throw leavesNothingOf(symbol, startText);
  const formed = new Set(solids.flatMap(({ atoms }) => [...atoms.keys()]));
  for (const symbol of formed) if (symbol !== "O" && !start.atoms.has(symbol)) throw elementFromNowhere(names.residue, symbol, startText);
  const staying = [...start.atoms.keys()].filter((symbol) => stays(symbol) && !leaving.has(symbol));
  for (const symbol of staying) if (!formed.has(symbol)) throw elementVanishes(names.residue, symbol, startText);
  const counts = residueCounts(start, solids, staying, names.residue);
  const residues = solids.map((formula, index) => ({ formula, perStart: counts[index] as number }));
  const kept = new Map<string, number>();
  for (const { formula, perStart } of residues)
    formula.atoms.forEach((count, symbol) => kept.set(symbol, (kept.get(symbol) ?? 0) + perStart * count));
  const gone = new Map<string, number>();
  for (const symbol of [...start.atoms.keys(), "O"]) {
    const left = (start.atoms.get(symbol) ?? 0) - (kept.get(symbol) ?? 0);
    if (Math.abs(left) > SAME_COUNT) gone.set(symbol, left);
  }
  const mass = residues.reduce((sum, { formula, perStart }) => sum + perStart * molarMass(formula, names.residue), 0);
  return { start, residues, kept, leaves, gone, loss: 1 - mass / molarMass(start, names.start) };
}
