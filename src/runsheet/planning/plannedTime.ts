import { heatingRateMissing, tooManyWeighIns } from "../../problems/runsheet/runSheetProblems";
import { bounded, optionBounds } from "../options/optionBounds";

export interface TimeWanted {
  readonly intervalMinutes: number;
  /** Hours until the sample is expected to be dry. */
  readonly dryingHours: number;
  /** Left out for a run that ends with drying. */
  readonly kilnCelsius?: number;
  readonly celsiusPerMinute?: number;
  /** Left out: no hold. */
  readonly holdMinutes?: number;
  /** Hours from the end of the programme until the vessel is cold enough to open; left out: not known. */
  readonly coolingHours?: number;
  /** Left out: 20 °C. */
  readonly startCelsius?: number;
  /** Times that the char is fired. Left out: once. */
  readonly charFirings?: number;
}

export interface PlannedTime {
  /** The moist weighing, one after each interval until dry, and one more that confirms it. */
  readonly weighIns: number;
  readonly dryingMinutes: number;
  /** Heating and hold of one firing, without cooling; undefined without a kiln temperature. */
  readonly programmeMinutes: number | undefined;
  /** Drying, and every firing of the char with its cooling; undefined where the cooling is not known. */
  readonly totalMinutes: number | undefined;
}

export const MINUTES_PER_HOUR = 60;
const ROOM_CELSIUS = 20;
// Hours typed as decimals may miss a whole number of intervals by binary rounding alone.
const ROUNDING = 1e-9;
// The start may be a cold shed.
const START = { name: "start temperature", atLeast: -40, atMost: 1800, unit: "°C" };

/** @throws InputProblem naming the entry that cannot serve */
export function plannedTime(wanted: TimeWanted): PlannedTime {
  const { weighIns, dryingMinutes } = drying(wanted);
  const programmeMinutes = programme(wanted);
  const { coolingHours, charFirings = 1 } = wanted;
  if (coolingHours !== undefined) bounded(optionBounds.coolingHours, coolingHours);
  const isKnown = programmeMinutes !== undefined && coolingHours !== undefined;
  const firing = isKnown ? programmeMinutes + coolingHours * MINUTES_PER_HOUR : undefined;
  return { weighIns, dryingMinutes, programmeMinutes, totalMinutes: firing === undefined ? undefined : dryingMinutes + charFirings * firing };
}

function drying({ intervalMinutes, dryingHours }: TimeWanted): Pick<PlannedTime, "weighIns" | "dryingMinutes"> {
  bounded(optionBounds.interval, intervalMinutes);
  bounded(optionBounds.dryingHours, dryingHours);
  const untilDry = Math.max(1, Math.ceil((dryingHours * MINUTES_PER_HOUR) / intervalMinutes - ROUNDING));
  const weighIns = 1 + untilDry + 1;
  const most = optionBounds.weighIns.atMost;
  if (weighIns > most) throw tooManyWeighIns(intervalMinutes, dryingHours, weighIns, most);
  return { weighIns, dryingMinutes: (weighIns - 1) * intervalMinutes };
}

function programme({ kilnCelsius, celsiusPerMinute, holdMinutes = 0, startCelsius = ROOM_CELSIUS }: TimeWanted): number | undefined {
  if (kilnCelsius === undefined) return undefined;
  bounded(optionBounds.kiln, kilnCelsius);
  if (celsiusPerMinute === undefined) throw heatingRateMissing();
  bounded(optionBounds.heatingRate, celsiusPerMinute);
  bounded(optionBounds.holdMinutes, holdMinutes);
  bounded(START, startCelsius);
  return Math.abs(kilnCelsius - startCelsius) / celsiusPerMinute + holdMinutes;
}
