import { InputProblem } from "../InputProblem";
import { plainNumber, SIZE_FIGURES, withUnit } from "../quoted";

export const sumOfAnalysis = (sum: number, least: number, most: number, withoutAsh: boolean): InputProblem =>
  new InputProblem(
    "carbon to ash",
    `the fractions sum to ${plainNumber(sum)}, outside ${least} to ${most} of the dry sample`,
    withoutAsh ? "Give the ash as well, and one dry basis." : "Give one dry basis.",
  );

export const sumOfProximate = (sum: number, least: number, most: number): InputProblem =>
  new InputProblem(
    "fixedCarbon to ash",
    `the fractions sum to ${plainNumber(sum)}, outside ${least} to ${most}`,
    "Give all three on the dry basis, where they make 1.",
  );

export const sharesAboveDry = (sum: number): InputProblem =>
  new InputProblem("hydrogen to nitrogen", `the fractions sum to ${plainNumber(sum)}, above 1`, "Give those of the dry sample.");

export const moreHydrogenThanHeat = (higherDry: number, hydrogen: number): InputProblem =>
  new InputProblem(
    "higherDry",
    `${withUnit(higherDry, "MJ/kg")} is less than the water from hydrogen of ${plainNumber(hydrogen)} takes away`,
    "Check both, dry and in MJ/kg.",
  );

export const frozenWater = (from: number): InputProblem =>
  new InputProblem(
    "from",
    `${withUnit(from, "°C")} is below 0 °C, where the water is ice`,
    "Give where the water is liquid; thawing is not counted.",
  );

export const notHeated = (to: number, from: number): InputProblem =>
  new InputProblem("to", `${withUnit(to, "°C")} is not above from, ${withUnit(from, "°C")}`, "Check for swapped cells.");

export const dryingTooHot = (to: number, hottest: number): InputProblem =>
  new InputProblem("to", `${withUnit(to, "°C")} is above ${withUnit(hottest, "°C")}, where wood chars`, "Give the temperature of the drying oven.");

export const waterGone = (from: number): InputProblem =>
  new InputProblem("from", `${withUnit(from, "°C")} is not below 100 °C, where the water has gone already`, "Give the temperature before drying.");

export const vesselHeatMissing = (vesselMass: number): InputProblem =>
  new InputProblem(
    "vesselHeat",
    `left out, but vesselMass is ${withUnit(vesselMass, "g")}`,
    "Give kJ/(kg K): steel about 0.49, aluminium 0.90, glass and fired clay 0.8 (from memory).",
  );

export const vesselMassMissing = (vesselHeat: number): InputProblem =>
  new InputProblem("vesselMass", `left out, but vesselHeat is ${withUnit(vesselHeat, "kJ/(kg K)")}`, "Give both, or neither.");

/** An element beyond a range, as the second row names it; per cents, because the correlation is published in them. */
interface Beyond {
  readonly share: string;
  readonly percent: number;
  readonly least: number;
  readonly most: number;
}

/** A share beyond its range. */
export const beyondInWords = ({ share, percent, least, most }: Beyond): string =>
  `${share} ${plainNumber(percent, SIZE_FIGURES + 1)} % is not in ${least} to ${most} %`;

const REMEMBERED = "coefficients from memory, stated error not known here";
const MADE_FOR_COAL = "; made for coal, about 12 % low for wood";

/** How far a correlation is off by its authors' account. */
export const statedError = (percent: number | undefined, isForCoal = false): string =>
  `${percent === undefined ? REMEMBERED : `stated average absolute error ${plainNumber(percent)} %`}${isForCoal ? MADE_FOR_COAL : ""}`;

/** The second row: whose correlation, how far it is off by its own account, and whether the sample lies inside its range. */
export function correlationRow(name: string, error: string, outside: readonly Beyond[] | undefined, sum: number | undefined): string {
  const where =
    outside === undefined
      ? "its range is not known here, so whether the sample lies inside is open"
      : outside.length === 0
        ? "the sample lies inside its range"
        : `the sample lies OUTSIDE its range: ${outside.map(beyondInWords).join(", ")}`;
  return `${name}: ${error}; ${where}${sum === undefined ? "" : `; the fractions sum to ${plainNumber(sum, SIZE_FIGURES + 1)}, so look at the analysis again`}.`;
}

/** The second row of a net value. */
export const netRow = (moisture: number, atZero: number, isBelowZero: boolean): string =>
  `Net at constant pressure, ${moisture === 0 ? "of the dry sample" : `as fired with moisture ${plainNumber(moisture)} (wet basis)`}; ` +
  `ISO 18125 form, from memory, with no range of its own: its error is that of higherDry; 0 at a moisture of ${plainNumber(atZero, SIZE_FIGURES)}` +
  `${isBelowZero ? "; below zero: evaporating the water takes more than the fuel gives" : ""}.`;

export const LEAST_HEAT = "the least that must be put in: no sorption heat, no air, no losses of the oven; ovens take several times that";
