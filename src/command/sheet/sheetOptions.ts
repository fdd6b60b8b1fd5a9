import { Command, InvalidArgumentError, Option } from "commander";
import { RUN_KINDS, SAMPLES_ARE, type CarriedPlan, type RunSheetOptions } from "../../runsheet/options/RunSheetOptions";
import { notANumber, sheetHelp } from "../words/sheetCommandWords";

/** What was typed, by the names of its options. */
export interface TypedOptions extends Omit<RunSheetOptions, "plan" | "intervalMinutes" | "ovenCelsius" | "cautionsAfter"> {
  readonly interval: number;
  readonly oven?: number;
  readonly moistGrams?: number;
  readonly dryGrams?: number;
  readonly wantedUncertainty?: number;
  readonly repeatability?: number;
  readonly methodScatter?: number;
  readonly vesselMaterial?: string;
  readonly kilnSetPoint?: number;
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
    .option("--weigh-ins <count>", sheetHelp.weighIns, number, 12)
    .option("--interval <minutes>", sheetHelp.interval, number, 30)
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
    .option("--kiln-set-point <degrees>", sheetHelp.kilnSetPoint, number);

/** Boxes of a plan are filled only where the two of them that every plan has are given. */
export function runSheetOptions(typed: TypedOptions): RunSheetOptions {
  const { interval, oven, moistGrams, dryGrams, wantedUncertainty, repeatability, methodScatter, vesselMaterial, kilnSetPoint, ...asked } = typed;
  const plan: CarriedPlan | undefined =
    moistGrams === undefined || wantedUncertainty === undefined
      ? undefined
      : given({ moistGrams, dryGrams, wantedUncertainty, repeatability, methodScatter, vesselMaterial, kilnSetPoint });
  return given({ ...asked, intervalMinutes: interval, ovenCelsius: oven, plan });
}

/** Without what was left out. */
function given<T extends object>(options: { [Name in keyof T]: T[Name] | undefined }): T {
  return Object.fromEntries(Object.entries(options).filter(([, value]) => value !== undefined)) as T;
}
