import type { DryingEnd } from "../../drying/DryingEnd";
import { inShort } from "./inShort";

/** What the three-point extrapolation says of the curve, or why there is none. */
export function threePointWords({ threePoint, fit, uncertainty, weighingDeviation }: DryingEnd): string {
  if (threePoint === "intervals unequal") return "No three-point extrapolation: no three weighings that end with the last have equal intervals.";
  if (typeof threePoint === "string") return `No three-point extrapolation: ${threePoint}.`;
  const apart = Math.abs(threePoint.final - fit.final);
  const coverage = uncertainty.expanded / uncertainty.standard;
  return apart <= Math.hypot(uncertainty.expanded, coverage * threePoint.gain * weighingDeviation)
    ? "The three-point extrapolation agrees within the 95 % uncertainties."
    : `The three-point extrapolation is ${inShort(apart)} g off, more than the 95 % uncertainties explain: weigh on before relying on either.`;
}
