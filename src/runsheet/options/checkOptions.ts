import {
  formulaTooLong,
  oneCheckWeight,
  runOptionNotWhole,
  unknownKindOfRun,
  unknownRunOption,
  vesselNameTooLong,
} from "../../problems/runsheet/runSheetProblems";
import { sheetWords } from "../words/sheetWords";
import { checkPlan } from "./checkPlan";
import { bounded, optionBounds, type OptionBounds } from "./optionBounds";
import { RUN_KINDS, SAMPLES_ARE, type CheckedOptions, type RunKind, type RunSheetOptions } from "./RunSheetOptions";
import { has } from "../kinds";

const LONGEST_VESSEL_NAME = 60;
// What the line of the answer has room for beside its figures.
const LONGEST_FORMULA = 30;
// Two re-firings show that nothing more leaves where the first took nearly everything; common practice, no source.
const USUAL_CHAR_FIRINGS = 3;
const USUAL_ASH_FIRINGS = 2;
// One receiver and four stages: own choices, no source.
const USUAL_RECEIVERS = 1;
const USUAL_STAGES = 4;
const DEGREES = ["C", "F"] as const;
const TIMINGS = ["clock", "minutes"] as const;

/**
 * The options as the sheet can use them, with all that was left out; a vessel without a name is called "vessel".
 * @throws InputProblem naming the first option that cannot serve
 */
export function checkOptions(options: RunSheetOptions): CheckedOptions {
  if (!RUN_KINDS.includes(options.kind)) throw unknownKindOfRun(String(options.kind), RUN_KINDS);
  const { charFirings = USUAL_CHAR_FIRINGS, ashFirings = USUAL_ASH_FIRINGS } = options;
  const { panZeros = false, temperatures = false, samplesAre = "repeats", degrees = "C", timing = "clock" } = options;
  whole(optionBounds.weighIns, options.weighIns);
  whole(optionBounds.replicates, options.replicates);
  if (options.kind === "balance" && options.replicates !== 1) throw oneCheckWeight(options.replicates);
  whole(optionBounds.charFirings, charFirings);
  whole(optionBounds.ashFirings, ashFirings);
  const { receivers, stages, formula, residue, ...asked } = options;
  const ofKind = { ...counted(asked.kind, receivers, stages), ...compounds(asked.kind, { formula, residue }) };
  bounded(optionBounds.interval, options.intervalMinutes);
  bounded(optionBounds.readability, options.readability);
  if (options.ovenCelsius !== undefined) bounded(optionBounds.oven, options.ovenCelsius);
  oneOf("samples", samplesAre, SAMPLES_ARE);
  oneOf("degrees", degrees, DEGREES);
  oneOf("timing", timing, TIMINGS);
  checkPlan(options.plan, degrees);
  const vessel = options.vessel.trim();
  if (vessel.length > LONGEST_VESSEL_NAME) throw vesselNameTooLong(vessel.length, LONGEST_VESSEL_NAME);
  const said = { panZeros, temperatures, charFirings, ashFirings, samplesAre, degrees, timing };
  return { ...asked, ...said, ...ofKind, vessel: vessel === "" ? sheetWords.unnamedVessel : vessel };
}

/** Receivers or stages, where the kind of run has any; a count that another kind would ignore is still held to its bounds. */
function counted(kind: RunKind, receivers = USUAL_RECEIVERS, stages = USUAL_STAGES): Pick<CheckedOptions, "receivers" | "stages"> {
  whole(optionBounds.receivers, receivers);
  whole(optionBounds.stages, stages);
  return { ...(kind === "liquids" ? { receivers } : {}), ...(kind === "staged" ? { stages } : {}) };
}

/**
 * The formulas of a salt or mineral, or what burns of a sample that is compared with an open fire; another kind has no use for them. Whether they
 * can be read is told on the sheet.
 */
function compounds(kind: RunKind, given: Readonly<Record<"formula" | "residue", string | undefined>>): Pick<CheckedOptions, "formula" | "residue"> {
  return Object.fromEntries(
    Object.entries(given).flatMap(([name, text = ""]) => {
      if (!has(kind, "compound") && !(has(kind, "openFire") && name === "formula")) return [];
      const formula = text.trim();
      if (formula.length > LONGEST_FORMULA) throw formulaTooLong(name, formula.length, LONGEST_FORMULA);
      return formula === "" ? [] : [[name, formula]];
    }),
  );
}

function oneOf(name: string, value: string, words: readonly string[]): void {
  if (!words.includes(value)) throw unknownRunOption(name, value, words);
}

function whole(bounds: OptionBounds, value: number): void {
  const { name, atLeast, atMost } = bounds;
  if (Number.isFinite(value) && !Number.isInteger(value))
    throw runOptionNotWhole(name, value, Math.min(atMost, Math.max(atLeast, Math.round(value))));
  bounded(bounds, value);
}
