import { InputProblem } from "./InputProblem";
import { plainNumber, withUnit } from "./quoted";

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

export const moistureLooksLikePercent = (moisture: number, basis: string): InputProblem =>
  basis === "wet"
    ? new InputProblem("moisture", `${plainNumber(moisture)} is not below 1, as a wet basis must be`, "Type 35 % as 0.35 or 35%; check the basis.")
    : new InputProblem(
        "moisture",
        `${plainNumber(moisture)} on the dry basis would be ${plainNumber(100 * moisture)} %, wetter than wood gets`,
        "Type 54 % as 0.54 or 54%.",
      );
