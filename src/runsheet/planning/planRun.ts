import { readingUncertainty } from "../../confidence/readingUncertainty";
import { smallestSample } from "../../confidence/smallestSample";
import { heatingRateMissing, tooManyWeighIns } from "../../problems/runSheetProblems";
import { bounded, optionBounds } from "../options/optionBounds";

/** What is known and wanted before a run. */
export interface RunWanted {
  /** Smallest display step of the balance, g. */
  readonly readability: number;
  /** Expanded uncertainty (k = 2) that the loss fraction may have, as a fraction. */
  readonly wantedUncertainty: number;
  /** Share of the sample that will be lost, fraction. */
  readonly expectedLoss: number;
  readonly intervalMinutes: number;
  /** Hours until the sample is expected to be dry. */
  readonly dryingHours: number;
  /** Left out for a run that ends with drying. */
  readonly kilnCelsius?: number;
  readonly celsiusPerMinute?: number;
  /** Left out: no hold. */
  readonly holdMinutes?: number;
  /** Left out: 20 °C. */
  readonly startCelsius?: number;
}

export interface RunPlan {
  /** By rounding of the balance alone, at zero and at the load; what its repeatability adds is not in it. */
  readonly smallestSampleGrams: number;
  /** The moist weighing, one after each interval until dry, and one more that confirms it. */
  readonly weighIns: number;
  readonly dryingMinutes: number;
  /** Heating and hold, without cooling; undefined without a kiln temperature. */
  readonly programmeMinutes: number | undefined;
}

const MINUTES_PER_HOUR = 60;
const ROOM_CELSIUS = 20;
// Hours typed as decimals may miss a whole number of intervals by binary rounding alone.
const ROUNDING = 1e-9;
const LOSS = { name: "expected loss", atLeast: 0, atMost: 1, unit: "" };
// Up to thirty days.
const DRYING = { name: "drying time", atLeast: 0, atMost: 720, unit: "h" };
// The start may be a cold shed.
const START = { name: "start temperature", atLeast: -40, atMost: 1800, unit: "°C" };
const RATE = { name: "heating rate", atLeast: 0.01, atMost: 1000, unit: "°C/min" };
const HOLD = { name: "hold", atLeast: 0, atMost: 43_200, unit: "min" };

/**
 * The smallest sample, the weigh-ins and the time that a run wants.
 * @throws InputProblem naming the entry that cannot serve
 */
export function planRun(wanted: RunWanted): RunPlan {
  bounded(optionBounds.readability, wanted.readability);
  bounded(optionBounds.wanted, wanted.wantedUncertainty);
  bounded(LOSS, wanted.expectedLoss);
  const u = readingUncertainty({ readability: wanted.readability, tared: true });
  return {
    smallestSampleGrams: smallestSample(u, wanted.wantedUncertainty, wanted.expectedLoss),
    ...drying(wanted),
    programmeMinutes: programmeMinutes(wanted),
  };
}

function drying({ intervalMinutes, dryingHours }: RunWanted): Pick<RunPlan, "weighIns" | "dryingMinutes"> {
  bounded(optionBounds.interval, intervalMinutes);
  bounded(DRYING, dryingHours);
  const untilDry = Math.max(1, Math.ceil((dryingHours * MINUTES_PER_HOUR) / intervalMinutes - ROUNDING));
  const weighIns = 1 + untilDry + 1;
  const most = optionBounds.weighIns.atMost;
  if (weighIns > most) throw tooManyWeighIns(intervalMinutes, dryingHours, weighIns, most);
  return { weighIns, dryingMinutes: (weighIns - 1) * intervalMinutes };
}

function programmeMinutes({ kilnCelsius, celsiusPerMinute, holdMinutes = 0, startCelsius = ROOM_CELSIUS }: RunWanted): number | undefined {
  if (kilnCelsius === undefined) return undefined;
  bounded(optionBounds.kiln, kilnCelsius);
  if (celsiusPerMinute === undefined) throw heatingRateMissing();
  bounded(RATE, celsiusPerMinute);
  bounded(HOLD, holdMinutes);
  bounded(START, startCelsius);
  return Math.abs(kilnCelsius - startCelsius) / celsiusPerMinute + holdMinutes;
}
