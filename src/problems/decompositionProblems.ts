import { InputProblem } from "./InputProblem";
import { plainNumber, quoted } from "./quoted";

export const chargedSolid = (argument: string, text: string): InputProblem =>
  new InputProblem(argument, `${quoted(text)} is an ion, and no ion is weighed alone`, "Write the whole salt, such as CaCO3.");

export const noSolid = (argument: string, text: string): InputProblem =>
  new InputProblem(argument, `${quoted(text)} lacks a formula beside a plus sign`, 'Join solids as in "CaCO3 + MgO".');

export const elementFromNowhere = (symbol: string, start: string): InputProblem =>
  new InputProblem("residue", `it holds ${symbol}, and ${quoted(start)} has none`, "Check for swapped cells; only oxygen can come from the air.");

export const elementVanishes = (symbol: string, start: string): InputProblem =>
  new InputProblem(
    "residue",
    `the ${symbol} of ${quoted(start)} is not in it`,
    `Write all that is left, such as "CaO + MgO", or name ${symbol} in leaves.`,
  );

export const leavesNothingOf = (symbol: string, start: string): InputProblem =>
  new InputProblem("leaves", `it holds ${symbol}, and ${quoted(start)} has none`, "Name what leaves the start, or leave the argument out.");

export const doesNotFit = (first: string, other: string, start: string): InputProblem =>
  new InputProblem(
    "residue",
    `no multiple of it keeps both the ${first} and the ${other} of ${quoted(start)}`,
    "Check the counts, or write every solid that is left, joined by plus signs.",
  );

export const moreThanStart = (symbol: string, start: string): InputProblem =>
  new InputProblem("residue", `it would hold more ${symbol} than ${quoted(start)} can give`, "Check for swapped cells and the counts.");

export const shareOfSolidsOpen = (): InputProblem =>
  new InputProblem(
    "residue",
    "the elements that stay do not settle how much of each solid forms",
    "Give solids that differ in a metal, or work out one at a time.",
  );

export const solidNotFormed = (text: string): InputProblem =>
  new InputProblem("residue", `no ${quoted(text)} would form`, "Leave it out, or check the counts.");

// Notes beside an answer: nothing is wrong with the inputs.

const atoms = (oxygen: number): string => `${plainNumber(Math.abs(oxygen), OXYGEN_FIGURES)} O`;
const OXYGEN_FIGURES = 6;

/** What the oxygen balance of one formula of the start means. */
export function oxygenInWords(oxygen: number, start: string): string {
  if (oxygen === 0) return "balanced: the gases that leave need the oxygen that leaves, and none is taken up";
  return oxygen < 0
    ? `takes up ${atoms(oxygen)} from the air for each ${start}, or a poorer gas (CO, NH3, H2) leaves; the loss is the same`
    : `${atoms(oxygen)} more than the gases need leave for each ${start}: as O2, or in SO3 or NO2; the loss is the same`;
}

export const GAINS = "a gain: the residue weighs more than the start by the oxygen it takes up, so the loss is below 0";

export const NOTHING_LEAVES = "nothing leaves: start and residue weigh the same";
