import { runOptionNotWhole } from "../../problems/runsheet/runSheetProblems";
import { bounded, optionBounds } from "./optionBounds";
import type { CarriedPlan } from "./RunSheetOptions";

const FAHRENHEIT_PER_CELSIUS = 1.8;
const RATIO = { C: 1, F: FAHRENHEIT_PER_CELSIUS } as const;

const NAMES = ["dryingHours", "expectedMoisture", "bulkDensity", "expectedLoss", "molarMass", "holdMinutes", "coolingHours", "beginAt"] as const;

/**
 * Holds what a plan knew beside its masses to what can be planned.
 * @throws InputProblem naming the first that cannot be
 */
export function checkPlan(plan: CarriedPlan | undefined, degrees: "C" | "F"): void {
  if (plan === undefined) return;
  for (const name of NAMES) {
    const value = plan[name];
    if (value !== undefined) bounded(optionBounds[name], value);
  }
  const { heatingRate, beginAt } = plan;
  if (beginAt !== undefined && !Number.isInteger(beginAt)) throw runOptionNotWhole(optionBounds.beginAt.name, beginAt, Math.floor(beginAt));
  if (heatingRate === undefined) return;
  const { atLeast, atMost } = optionBounds.heatingRate;
  bounded({ ...optionBounds.heatingRate, atLeast: atLeast * RATIO[degrees], atMost: atMost * RATIO[degrees], unit: `°${degrees}/min` }, heatingRate);
}
