import { plainNumber } from "../../problems/quoted";
import type { CarriedPlan } from "../options/RunSheetOptions";
import { clockOfDay } from "../planning/clockOfDay";

const PERCENT = 100;
const percent = (fraction: number): string => `${plainNumber(PERCENT * fraction)} %`;

type Said<Name extends keyof CarriedPlan> = Readonly<Record<Name, (value: number, degrees: "C" | "F") => string>>;

/** What a plan knew that no box of the sheet holds: of the sample and its drying, and of the fire. Each is a line of its own, so that it prints. */
const SAMPLE: Said<"beginAt" | "dryingHours" | "expectedMoisture" | "bulkDensity"> = {
  beginAt: (minutes) => `begin at ${clockOfDay(minutes)}`,
  dryingHours: (hours) => `dry after ${plainNumber(hours)} h`,
  expectedMoisture: (fraction) => `water ${percent(fraction)} of the moist weight`,
  bulkDensity: (density) => `bulk density ${plainNumber(density)} g/mL`,
};
const FIRE: Said<"heatingRate" | "holdMinutes" | "expectedLoss" | "molarMass"> = {
  heatingRate: (rate, degrees) => `heating ${plainNumber(rate)} °${degrees}/min`,
  holdMinutes: (minutes) => `hold ${plainNumber(minutes)} min`,
  expectedLoss: (fraction) => `vapour ${percent(fraction)} of the dry weight`,
  molarMass: (mass) => `vapour of ${plainNumber(mass)} g/mol`,
};

/** "Planned: begin at 9:00; dry after 3 h; water 50 % of the moist weight.", a line for each that the plan knew anything of. */
export function plannedLines(plan: CarriedPlan | undefined, degrees: "C" | "F"): readonly string[] {
  const told = <Name extends keyof CarriedPlan>(words: Said<Name>): string[] =>
    (Object.keys(words) as Name[]).flatMap((name) => {
      const value = plan?.[name];
      return typeof value === "number" ? [words[name](value, degrees)] : [];
    });
  return [told(SAMPLE), told(FIRE)].filter((parts) => parts.length > 0).map((parts) => `Planned: ${parts.join("; ")}.`);
}
