import { uncertaintyTooFine } from "../problems/functions/reportingProblems";

// GUM (JCGM 100:2008) 7.2.6: the uncertainty to at most two significant digits, the value to the same place.
export const DIGITS = 2;
// What a double holds of a decimal.
const FIGURES = 15;
// An uncertainty in the last two of them would be printed from binary rounding; so would decimals beyond the fifteenth.
export const FINEST_SHARE = 1e-13;
export const FINEST = 1e-13;

/** A result as it is printed, and the steps to it. */
export interface Reported {
  /** k u before rounding. */
  readonly expanded: number;
  /** Decimal places of both; below 0 for tens and hundreds. */
  readonly places: number;
  readonly value: string;
  readonly uncertainty: string;
}

/**
 * A decimal rounded to a place, a half away from zero, as ROUND does: of the digits that are seen, not of the binary number behind them, in which
 * 0.345 lies below its half.
 */
export function roundedTo(value: number, places: number): number {
  const [digits = "0", exponent = "0"] = Math.abs(value)
    .toExponential(FIGURES - 1)
    .split("e");
  const whole = Math.round(Number(`${digits}e${Number(exponent) + places}`));
  return Math.sign(value) * Number(`${whole}e${-places}`);
}

const placesOf = (value: number): number => DIGITS - 1 - Number(value.toExponential(FIGURES - 1).split("e")[1]);

const printed = (value: number, places: number): string => roundedTo(value, places).toFixed(Math.max(0, places));

/**
 * A value with its uncertainty as GUM 7.2.6 has results printed: the uncertainty to two significant digits, the value to the same decimal place.
 * @param u standard uncertainty, in the unit of the value
 * @param k coverage factor; u is printed as it is without one
 * @throws InputProblem for an uncertainty finer than a spreadsheet's number holds
 */
export function reported(value: number, u: number, k = 1): Reported {
  const expanded = k * u;
  if (u < FINEST || u < FINEST_SHARE * Math.abs(value)) throw uncertaintyTooFine(u, value);
  // 0.0996 rounds to 0.10, which is two digits one place higher up.
  const places = placesOf(roundedTo(expanded, placesOf(expanded)));
  const shown = printed(value, places);
  return { expanded, places, value: /[1-9]/.test(shown) ? shown : shown.replace("-", ""), uncertainty: printed(expanded, places) };
}
