import { Command, InvalidArgumentError, Option } from "commander";
import { RUN_KINDS, SAMPLES_ARE, type CarriedPlan, type RunSheetOptions } from "../../runsheet/options/RunSheetOptions";
import { clockTyped } from "../../runsheet/options/clockTyped";
import { USUAL_ROUNDS } from "../../runsheet/options/usualRounds";
import { WrongUsage } from "../Refusal";
import { notANumber, planIncomplete, sheetHelp } from "../words/sheetCommandWords";
import { optionTyped } from "./optionTyped";

/** What was typed, by the names of its options. */
export interface TypedOptions
  extends Omit<RunSheetOptions, "plan" | "intervalMinutes" | "ovenCelsius" | "cautionsAfter" | "addedSample">, Partial<CarriedPlan> {
  readonly interval: number;
  readonly oven?: number;
}

const number = (text: string): number => {
  const read = /^[+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:e[+-]?\d+)?$/i.test(text.trim()) ? Number(text) : NaN;
  if (!Number.isFinite(read)) throw new InvalidArgumentError(notANumber);
  return read;
};

/** Every option of a run sheet; what is left out is as in the pane. */
export const withSheetOptions = (command: Command): Command =>
  command
    .addOption(new Option("--kind <kind>", sheetHelp.kind).choices(RUN_KINDS).makeOptionMandatory())
    .option("--weigh-ins <count>", sheetHelp.weighIns, number, USUAL_ROUNDS.weighIns)
    .option("--interval <minutes>", sheetHelp.interval, number, USUAL_ROUNDS.intervalMinutes)
    .option("--readability <grams>", sheetHelp.readability, number, 0.01)
    .option("--vessel <name>", sheetHelp.vessel, "")
    .option("--replicates <count>", sheetHelp.replicates, number, 1)
    .option("--oven <celsius>", sheetHelp.oven, number)
    .option("--pan-zeros", sheetHelp.panZeros)
    .option("--temperatures", sheetHelp.temperatures)
    .option("--char-firings <count>", sheetHelp.charFirings, number)
    .option("--ash-firings <count>", sheetHelp.ashFirings, number)
    .option("--receivers <count>", sheetHelp.receivers, number)
    .option("--stages <count>", sheetHelp.stages, number)
    .option("--formula <formula>", sheetHelp.formula)
    .option("--residue <formula>", sheetHelp.residue)
    .addOption(new Option("--samples-are <what>", sheetHelp.samplesAre).choices(SAMPLES_ARE))
    .addOption(new Option("--degrees <unit>", sheetHelp.degrees).choices(["C", "F"]))
    .addOption(new Option("--timing <how>", sheetHelp.timing).choices(["clock", "minutes"]))
    .option("--moist-grams <grams>", sheetHelp.moistGrams, number)
    .option("--dry-grams <grams>", sheetHelp.dryGrams, number)
    .option("--wanted-uncertainty <fraction>", sheetHelp.wantedUncertainty, number)
    .option("--repeatability <grams>", sheetHelp.repeatability, number)
    .option("--method-scatter <fraction>", sheetHelp.methodScatter, number)
    .option("--vessel-material <name>", sheetHelp.vesselMaterial)
    .option("--kiln-set-point <degrees>", sheetHelp.kilnSetPoint, number)
    .option("--heating-rate <degrees>", sheetHelp.heatingRate, number)
    .option("--hold-minutes <minutes>", sheetHelp.holdMinutes, number)
    .option("--cooling-hours <hours>", sheetHelp.coolingHours, number)
    .option("--expected-loss <fraction>", sheetHelp.expectedLoss, number)
    .option("--molar-mass <grams>", sheetHelp.molarMass, number)
    .option("--expected-moisture <fraction>", sheetHelp.expectedMoisture, number)
    .option("--drying-hours <hours>", sheetHelp.dryingHours, number)
    .option("--bulk-density <density>", sheetHelp.bulkDensity, number)
    .option("--begin-at <time>", sheetHelp.beginAt, clock);

const clock = (text: string): number => {
  const read = clockTyped(text);
  if ("refused" in read) throw new InvalidArgumentError(read.refused);
  return read.minutes;
};

/** The names of what a plan hands on. */
export const PLANNED = [
  ...(["moistGrams", "dryGrams", "wantedUncertainty", "repeatability", "methodScatter", "vesselMaterial", "kilnSetPoint"] as const),
  ...(["heatingRate", "holdMinutes", "coolingHours", "expectedLoss", "molarMass"] as const),
  ...(["expectedMoisture", "dryingHours", "bulkDensity", "beginAt"] as const),
] as const satisfies readonly (keyof CarriedPlan)[];

/** @throws WrongUsage where a plan lacks one of the two figures that every plan has */
export function runSheetOptions(typed: TypedOptions): RunSheetOptions {
  const { interval, oven, ...others } = typed;
  const isPlanned = (name: string): boolean => (PLANNED as readonly string[]).includes(name);
  const entries = Object.entries(others).filter(([, value]) => value !== undefined);
  const carried = entries.filter(([name]) => isPlanned(name));
  const asked = Object.fromEntries(entries.filter(([name]) => !isPlanned(name))) as unknown as Omit<RunSheetOptions, "intervalMinutes">;
  const [first] = carried;
  const isWhole = typed.moistGrams !== undefined && typed.wantedUncertainty !== undefined;
  if (first !== undefined && !isWhole) throw new WrongUsage(planIncomplete(optionTyped(first[0])));
  const plan = isWhole ? (Object.fromEntries(carried) as unknown as CarriedPlan) : undefined;
  return given({ ...asked, intervalMinutes: interval, ovenCelsius: oven, plan });
}

/** Without what was left out. */
function given<T extends object>(options: { [Name in keyof T]: T[Name] | undefined }): T {
  return Object.fromEntries(Object.entries(options).filter(([, value]) => value !== undefined)) as T;
}
