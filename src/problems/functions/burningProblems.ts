import { InputProblem } from "../InputProblem";
import { NoAnswer } from "../NoAnswer";
import { plainNumber, quoted } from "../quoted";

export const chargedFuel = (text: string): InputProblem =>
  new InputProblem("formula", `${quoted(text)} is an ion, and ions do not burn alone`, "Write the whole compound, such as CH3COONa.");

export const nobleGas = (element: string): InputProblem =>
  new InputProblem("formula", `${element} is a noble gas and does not burn`, "Leave it out of the formula.");

export const noEndProduct = (element: string, covered: readonly string[]): InputProblem =>
  new InputProblem("formula", `no end product of burning is settled for ${element}`, `Use ${covered.join(" ")} only.`);

export const halogenBesideMetal = (metal: string): InputProblem =>
  new InputProblem(
    "formula",
    `more halogen than hydrogen and alkali metal, so whether ${metal} ends as halide or oxide is open`,
    "Give the part that burns.",
  );

export const isotopeProducts = (symbol: string): InputProblem =>
  new InputProblem("formula", `the products of the isotope ${symbol} are not told apart here`, "Write the element itself, such as H or C.");

export const nothingBurns = (text: string): NoAnswer =>
  new NoAnswer("formula", `${quoted(text)} is an end product of burning itself, so there is no reaction to balance`);

export const oxygenAlone = (text: string): NoAnswer =>
  new NoAnswer("formula", `${quoted(text)} is oxygen alone, which feeds a fire and does not burn, so there is no reaction to balance`);

export const analysisTooLarge = (sum: number, largest: number): InputProblem =>
  new InputProblem(
    "carbon to chlorine",
    `the fractions sum to ${plainNumber(sum)}, above ${largest}`,
    "Give one basis, hydrogen and oxygen without those of moisture.",
  );

export const analysisDoesNotClose = (sum: number, smallest: number, largest: number): InputProblem =>
  new InputProblem(
    "carbon to sulfur",
    `the fractions and ash sum to ${plainNumber(sum)}, outside ${smallest} to ${largest} of the dry sample`,
    "Check the basis and the ash.",
  );

export const noComposition = (): InputProblem =>
  new InputProblem(
    "formula",
    "no composition given",
    "Give the ash-free sample's formula, or carbon, hydrogen and oxygen as fractions of the dry sample.",
  );

export const twoCompositions = (text: string, argument: string, value: number): InputProblem =>
  new InputProblem("formula", `${quoted(text)} is given and so is ${argument}, ${plainNumber(value)}`, "Give the formula or the analysis, not both.");

export const incompleteAnalysis = (argument: string): InputProblem =>
  new InputProblem(argument, "nothing here (blank or 0)", "An analysis needs carbon and hydrogen, as fractions of the dry sample.");

export const ashTwice = (product: string): InputProblem =>
  new InputProblem("ash", `weighed, but the formula leaves ${product} as well`, "Give the formula of the ash-free part, or leave the ash out.");

export const nothingTakenUp = (argument: string): InputProblem =>
  new InputProblem(
    argument,
    "this composition carries more oxygen than it needs, so burning takes up none",
    "Compare a sample that takes up oxygen.",
  );

export const noAirNeeded = (text: string): InputProblem =>
  new InputProblem("excessAir", `${quoted(text)} carries all the oxygen it needs, so there is no air to exceed`, "Leave excessAir out.");

// Notes beside an answer: nothing is wrong with the inputs.

export const SURPLUS = "The formula carries more oxygen than it needs: burning takes up none and the rest is given off.";

// Three figures tell 0.274 from 0.21 by volume.
const VOLUME_FIGURES = 3;

const byVolume = (byMass: number, volume: number): string =>
  `${plainNumber(byMass)} of oxygen by mass is ${plainNumber(volume, VOLUME_FIGURES)} by volume`;

export const enrichedAir = (byMass: number, volume: number): string =>
  `${byVolume(byMass, volume)}: enriched air, in which things catch fire more easily and burn faster and hotter.`;

export const vitiatedAir = (byMass: number, volume: number): string =>
  `${byVolume(byMass, volume)}: air short of oxygen, in which many flames go out and burning is not complete.`;

export const WATER_AND_FIRE_SULFUR =
  "Nitrogen ends as in the water trade but sulfur as in burning: for the water trade throughout, give sulfurTo as H2SO4.";

export const WATER_AND_FIRE_NITROGEN =
  "Sulfur ends as in the water trade but nitrogen as in burning: for the water trade throughout, give nitrogenTo as NH3 or HNO3.";

export const AIR_NITROGEN = "The nitrogen that comes with the air is not counted among the gases.";

export const NO_ASH_WEIGHED = "No ash weighed: taken as none.";

export const SOLIDS_OF_FORMULA = "No ash weighed: the solids are those of the formula.";

export const openAnalysis = (sum: number, smallest: number, largest: number): string =>
  `The fractions and ash sum to ${plainNumber(sum)} of the dry sample, outside ${smallest} to ${largest}: check the analysis.`;
