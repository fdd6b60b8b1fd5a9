import { InputProblem } from "../InputProblem";
import { NoAnswer } from "../NoAnswer";
import { plainNumber, quoted } from "../quoted";

export const chargedSolid = (argument: string, text: string): InputProblem =>
  new InputProblem(argument, `${quoted(text)} is an ion, and no ion is weighed alone`, "Write the whole salt, such as CaCO3.");

export const noSolid = (argument: string, text: string): InputProblem =>
  new InputProblem(argument, `${quoted(text)} lacks a formula beside a plus sign`, 'Join solids as in "CaCO3 + MgO".');

export const elementFromNowhere = (argument: string, symbol: string, start: string): InputProblem =>
  new InputProblem(argument, `it holds ${symbol}, and ${quoted(start)} has none`, "Check for swapped cells; only oxygen can come from the air.");

export const elementVanishes = (argument: string, symbol: string, start: string): InputProblem =>
  new InputProblem(
    argument,
    `the ${symbol} of ${quoted(start)} is not in it`,
    `Write all that is left, such as "CaO + MgO", or name ${symbol} in leaves.`,
  );

export const leavesNothingOf = (symbol: string, start: string): InputProblem =>
  new InputProblem("leaves", `it holds ${symbol}, and ${quoted(start)} has none`, "Name what leaves the start, or leave the argument out.");

export const doesNotFit = (argument: string, first: string, other: string, start: string): InputProblem =>
  new InputProblem(
    argument,
    `no multiple of it keeps both the ${first} and the ${other} of ${quoted(start)}`,
    "Check the counts, or write every solid that is left, joined by plus signs.",
  );

export const moreThanStart = (argument: string, symbol: string, start: string): InputProblem =>
  new InputProblem(argument, `it would hold more ${symbol} than ${quoted(start)} can give`, "Check for swapped cells and the counts.");

export const shareOfSolidsOpen = (argument: string): InputProblem =>
  new InputProblem(
    argument,
    "the elements that stay do not settle how much of each solid forms",
    "Leave gases out; give solids that differ in a metal, or one at a time.",
  );

export const solidNotFormed = (argument: string, text: string): InputProblem =>
  new InputProblem(argument, `no ${quoted(text)} would form`, "Leave it out, or check the counts.");

// Notes beside an answer: nothing is wrong with the inputs.

const OXYGEN_FIGURES = 6;
const atoms = (oxygen: number): string => `${plainNumber(Math.abs(oxygen), OXYGEN_FIGURES)} O`;

/** What the oxygen balance of one formula of the start means. */
export function oxygenInWords(oxygen: number, start: string): string {
  if (oxygen === 0) return "balanced: the gases that leave need the oxygen that leaves, and none is taken up";
  return oxygen < 0
    ? `takes up ${atoms(oxygen)} from the air for each ${start}, or a poorer gas (CO, NH3, H2) leaves; the loss is the same`
    : `${atoms(oxygen)} more than the gases need leave for each ${start}: as O2, or in SO3 or NO2; the loss is the same`;
}

export const GAINS = "a gain: the residue weighs more than the start by the oxygen it takes up, so the loss is below 0";

export const NOTHING_LEAVES = "nothing leaves: start and residue weigh the same";

// Of what a measured loss says.

export const LOSS_FIGURES = 4;
const share = (value: number): string => plainNumber(value, LOSS_FIGURES);

export const nothingIsLost = (start: string, residue: string): InputProblem =>
  new InputProblem(
    "residue",
    `${quoted(start)} loses nothing on its way to ${quoted(residue)}, so no loss tells how pure it is`,
    "Check both formulas.",
  );

export const uNeeded = (): InputProblem =>
  new InputProblem("u", "nothing here (blank or 0)", "Give the standard uncertainty of the loss, such as 0.002.");

export const hydrateForAnhydrous = (text: string): InputProblem =>
  new InputProblem("anhydrous", `${quoted(text)} holds its water already`, "Give the salt without it, such as CuSO4.");

export const productLosesMore = (productLoss: number, rawLoss: number): InputProblem =>
  new InputProblem(
    "productLoss",
    `${plainNumber(productLoss)} is more than rawLoss, ${plainNumber(rawLoss)}`,
    "Check for swapped cells, or a product that took up water or CO2.",
  );

export const nothingWouldStay = (rawLoss: number): InputProblem =>
  new InputProblem("rawLoss", `${plainNumber(rawLoss)} would leave no product`, "Type 1 % as 0.01 or 1%.");

export const lossesAlike = (start1: string, start2: string, loss: number): InputProblem =>
  new InputProblem(
    "start2",
    `${quoted(start1)} and ${quoted(start2)} both lose ${share(loss)}`,
    "No loss can tell them apart: use another reaction.",
  );

export const lossOutsideBoth = (loss: number, least: number, most: number): InputProblem =>
  new InputProblem(
    "loss",
    `${plainNumber(loss)} lies outside ${share(least)} to ${share(most)}, what the two lose alone`,
    "Check formulas, moisture and a third substance, or give u.",
  );

export const ONLY_ONE_LOSES = "holds only if nothing else in the sample loses or gains mass";

export const purityAboveOne = (purity: number): string =>
  `above 1 (${share(purity)}): more left than the pure substance can lose; look for moisture, another carbonate or hydrate, organic matter, spitting`;

export const purityNotToldFromOne = (purity: number): string => `not told from pure: ${share(purity)} and 1 lie within 2 u; ${ONLY_ONE_LOSES}`;

export const purityBelowOne = (purity: number): string => `${share(purity)} of the dry sample; ${ONLY_ONE_LOSES}`;

export const mixtureIllConditioned = (difference: number): string =>
  `ill-conditioned: the two losses differ by only ${share(difference)}, so an error of 0.001 in the loss is ${share(0.001 / difference)} in the share`;

export const MIXTURE_HOLDS = "holds only if the sample is made of these two alone, dry";

// Verdicts on the water of a hydrate.

export const NO_HYDRATE_VERDICT = "no verdict without u: give the standard uncertainty of one weighing";

export const hydrateFits = (formula: string, others: readonly string[]): string =>
  `${formula} within 2 u${others.length === 0 ? "" : `; ${others.join(", ")} lie within 2 u too`}; adsorbed water counts as crystal water`;

export const NO_WATER_TOLD = "no water told from none within 2 u";

export const hydrateOpen = (fitting: readonly string[]): string => `cannot tell: ${fitting.join(", ")} all lie within 2 u; weigh more sample`;

export const hydrateBetween = (below: number, above: number): string =>
  `between ${below} and ${above}: no whole number, half or third within 2 u; heat again until nothing more leaves, or the sample had lost or taken up water`;

export const noStepsListed = (text: string): NoAnswer =>
  new NoAnswer(
    "formula",
    `no steps are listed for ${quoted(text)}`,
    "Use THEORETICALLOSS with what is left; the reference page names what is listed.",
  );
