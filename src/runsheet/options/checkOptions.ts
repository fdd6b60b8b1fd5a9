import { runOptionNotWhole, unknownKindOfRun, vesselNameTooLong } from "../../problems/runSheetProblems";
import { sheetWords } from "../words/sheetWords";
import { bounded, optionBounds, type OptionBounds } from "./optionBounds";
import { RUN_KINDS, type RunSheetOptions } from "./RunSheetOptions";

const LONGEST_VESSEL_NAME = 60;

/**
 * The options as the sheet can use them: a vessel without a name is called "vessel".
 * @throws InputProblem naming the first option that cannot serve
 */
export function checkOptions(options: RunSheetOptions): RunSheetOptions {
  if (!RUN_KINDS.includes(options.kind)) throw unknownKindOfRun(String(options.kind), RUN_KINDS);
  whole(optionBounds.weighIns, options.weighIns);
  whole(optionBounds.replicates, options.replicates);
  bounded(optionBounds.interval, options.intervalMinutes);
  bounded(optionBounds.readability, options.readability);
  if (options.ovenCelsius !== undefined) bounded(optionBounds.oven, options.ovenCelsius);
  const vessel = options.vessel.trim();
  if (vessel.length > LONGEST_VESSEL_NAME) throw vesselNameTooLong(vessel.length, LONGEST_VESSEL_NAME);
  return { ...options, vessel: vessel === "" ? sheetWords.unnamedVessel : vessel };
}

function whole(bounds: OptionBounds, value: number): void {
  const { name, atLeast, atMost } = bounds;
  if (Number.isFinite(value) && !Number.isInteger(value))
    throw runOptionNotWhole(name, value, Math.min(atMost, Math.max(atLeast, Math.round(value))));
  bounded(bounds, value);
}
