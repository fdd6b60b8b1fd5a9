import { KNOWN_STEPS, SOLID_NAMES, type KnownStep } from "../chemistry/decompositionSteps";
import type { Formula } from "../chemistry/Formula";
import { onFirstUse } from "../chemistry/onFirstUse";
import { parseFormula } from "../chemistry/parseFormula";
import { noStepsListed } from "../problems/functions/decompositionProblems";
import { decompose, type Decomposition } from "./decompose";
import { SAME_COUNT } from "./residueCounts";
import { solid } from "./solidsOf";

/** One step of a decomposition, its losses as fractions. */
export interface Step {
  readonly from: string;
  readonly to: string;
  readonly leaves: string;
  /** Of the mass of what was first put in. */
  readonly lossOfOriginal: number;
  /** Of the mass at the beginning of this step. */
  readonly lossOfStep: number;
  /** Left of what was first put in, after this step. */
  readonly left: number;
  /** From what was first put in to what is left. */
  readonly decomposition: Decomposition;
  /** A range with its source, or "". */
  readonly temperature: string;
}

/** A chain from one of its solids on. */
interface Chain {
  readonly start: string;
  readonly atoms: Formula["atoms"];
  readonly steps: readonly KnownStep[];
}

/** Every chain from each of its single solids on; whole chains first, so that limestone is not taken for what an oxalate left. */
const chains = onFirstUse((): readonly Chain[] => {
  const from = (start: string, steps: readonly KnownStep[]): Chain => ({ start, atoms: parseFormula(start).atoms, steps });
  const whole = KNOWN_STEPS.map(({ start, steps }) => from(start, steps));
  const later = KNOWN_STEPS.flatMap(({ steps }) =>
    steps.slice(0, -1).flatMap(([residue], index) => (residue.includes("+") ? [] : [from(residue, steps.slice(index + 1))])),
  );
  return [...whole, ...later];
});

/**
 * The steps in which a listed solid decomposes: each loss as THEORETICALLOSS finds it, of the original mass and of the mass at the beginning
 * of the step, which is the figure of many books and another number. The solid is found by its composition, however it is written, or by name.
 * @throws InputProblem as parseFormula
 * @throws NoAnswer for a solid that is not listed
 */
export function decompositionSteps(text: string): readonly Step[] {
  const named = SOLID_NAMES[text.trim().toLowerCase()];
  const typed = named === undefined ? solid(text, "formula") : parseFormula(named);
  const chain = chains().find(({ atoms }) => isSameSolid(atoms, typed.atoms));
  if (chain === undefined) throw noStepsListed(text);
  let before = chain.start;
  let left = 1;
  return chain.steps.map(([residue, leaves, temperature = ""]) => {
    const decomposition = decompose(chain.start, residue);
    const after = 1 - decomposition.loss;
    const step = {
      from: before,
      to: residue,
      leaves,
      lossOfOriginal: left - after,
      lossOfStep: 1 - after / left,
      left: after,
      temperature,
      decomposition,
    };
    [before, left] = [residue, after];
    return step;
  });
}

/** True for the same elements in the same proportion: Al4Si4O10(OH)8 is Al2Si2O5(OH)4. */
function isSameSolid(one: Formula["atoms"], other: Formula["atoms"]): boolean {
  if (one.size !== other.size) return false;
  const ratios = [...one].map(([symbol, count]) => (other.get(symbol) ?? 0) / count);
  const [first = 0] = ratios;
  return first > 0 && ratios.every((ratio) => Math.abs(ratio - first) <= SAME_COUNT * first);
}
