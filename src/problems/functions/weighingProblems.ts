import { InputProblem } from "../InputProblem";
import { plainNumber, withUnit } from "../quoted";

/** A weighing under the argument name the user knows it by, in grams. */
export type NamedMass = readonly [argument: string, grams: number];

export const lighterThanVessel = ([loaded, loadedMass]: NamedMass, [vessel, vesselMass]: NamedMass): InputProblem =>
  new InputProblem(
    loaded,
    `${withUnit(loadedMass, "g")} is not more than ${vessel}, ${withUnit(vesselMass, "g")}`,
    "Check for swapped cells or a different vessel.",
  );

export const gainedOnHeating = ([heated, heatedMass]: NamedMass, [loaded, loadedMass]: NamedMass): InputProblem =>
  new InputProblem(
    heated,
    `${withUnit(heatedMass, "g")} is more than ${loaded}, ${withUnit(loadedMass, "g")}`,
    "Check for swapped cells or regained moisture.",
  );

export const nothingLeft = ([heated, heatedMass]: NamedMass, [loaded, loadedMass]: NamedMass): InputProblem =>
  new InputProblem(
    heated,
    `${withUnit(heatedMass, "g")} is the same as ${loaded}, ${withUnit(loadedMass, "g")}, so nothing burnt away`,
    "Check for a repeated cell.",
  );

// Three figures tell 98.2 from 99.9 % of water.
const WATER_FIGURES = 3;

/** Water in the moist sample, percent, from grams of water per gram dry. */
const waterPercent = (moisture: number): string => plainNumber((100 * moisture) / (1 + moisture), WATER_FIGURES);

/** Said of a moisture on the dry basis that fruit, sludge and peat have and wood has not. */
export const veryWet = (moisture: number): string =>
  `${plainNumber(moisture)} g of water per g dry is ${waterPercent(moisture)} % water, as in fruit, sludge or peat. ` +
  `If ${plainNumber(moisture)} % was meant, type ${plainNumber(moisture / 100)} or ${plainNumber(moisture)}%.`;

export const moistureLooksLikePercent = (moisture: number, basis: string): InputProblem =>
  basis === "wet"
    ? new InputProblem("moisture", `${plainNumber(moisture)} is not below 1, as a wet basis must be`, "Type 35 % as 0.35 or 35%; check the basis.")
    : new InputProblem(
        "moisture",
        `${plainNumber(moisture)} on the dry basis would be ${waterPercent(moisture)} % water, a liquid`,
        `Type ${plainNumber(moisture)} % as ${plainNumber(moisture / 100)} or ${plainNumber(moisture)}%; give a liquid on the wet basis.`,
      );
