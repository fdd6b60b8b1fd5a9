import { outsideFormula } from "../problems/functions/balanceProblems";
import { cipmAirDensity } from "./cipmAirDensity";
import { oimlAirDensity } from "./oimlAirDensity";

export const AIR_FORMULAS = ["CIPM-2007", "OIML"] as const;
export type AirFormula = (typeof AIR_FORMULAS)[number];

type Span = readonly [least: number, most: number];
/** Where each formula holds: degC, Pa, fraction. CIPM-2007 as printed; OIML R 111-1 from memory. */
export const AIR_RANGES: Readonly<Record<AirFormula, { temperature: Span; pressure: Span; humidity: Span }>> = {
  "CIPM-2007": { temperature: [15, 27], pressure: [60_000, 110_000], humidity: [0, 1] },
  OIML: { temperature: [10, 30], pressure: [90_000, 110_000], humidity: [0, 0.8] },
};

const UNITS = { temperature: "°C", pressure: "Pa", humidity: "" } as const;
export const AIR_STATE = ["temperature", "pressure", "humidity"] as const;

/**
 * Density of the air at the balance, kg/m3. CIPM-2007 unless the simplified formula of OIML R 111-1 is asked for, which
 * reaches further in temperature.
 * @param temperature degC
 * @param pressure Pa
 * @param humidity relative, fraction
 * @throws InputProblem when one of them is outside the range of the formula
 */
export function airDensity(temperature: number, pressure: number, humidity: number, formula: AirFormula = "CIPM-2007"): number {
  const given = { temperature, pressure, humidity };
  for (const argument of AIR_STATE) {
    if (isOutside(given[argument], AIR_RANGES[formula][argument]))
      throw outsideFormula(argument, given[argument], UNITS[argument], AIR_RANGES[formula][argument], formula, advice(given, formula));
  }
  return (formula === "OIML" ? oimlAirDensity : cipmAirDensity)(temperature, pressure, humidity);
}

const isOutside = (value: number, [least, most]: Span): boolean => value < least || value > most;

/** Names the other formula only where it holds for all three. */
function advice(given: Readonly<Record<keyof typeof UNITS, number>>, formula: AirFormula): string {
  const other = formula === "OIML" ? "CIPM-2007" : "OIML";
  const holds = AIR_STATE.every((argument) => !isOutside(given[argument], AIR_RANGES[other][argument]));
  return holds ? `Give "${other}".` : "Check the unit; neither formula reaches this.";
}
