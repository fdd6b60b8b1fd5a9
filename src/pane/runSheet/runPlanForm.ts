import { plainNumber } from "../../problems/quoted";
import { heatingRateMissingInForm, kilnTemperatureMissing, outOfBoundsInForm } from "../../problems/paneProblems";
import { has } from "../../runsheet/kinds";
import { inDegrees } from "../../runsheet/options/degrees";
import { optionBounds } from "../../runsheet/options/optionBounds";
import type { CarriedPlan, SamplesAre } from "../../runsheet/options/RunSheetOptions";
import { planRun, type RunPlan, type RunWanted } from "../../runsheet/planning/planRun";
import { PLAN_FIELDS, type PlanFieldName } from "./planFieldName";
import { asDegrees, inCelsius, ovenLabel, type Degrees } from "./degreesTyped";
import { type NumberBox, readNumbers } from "./readNumbers";
import { readPercents } from "./runPlanPercents";
import { readClock } from "./runPlanClock";
import { unitDoubted, withoutUnits } from "./runPlanUnits";
import { FIELD_LABELS, type RunSheetForm } from "./runSheetForm";
import { orWrongEntry, type WrongEntry } from "./WrongEntry";

type SharedName = "readability" | "intervalMinutes" | "kind" | "replicates" | "samplesAre" | "charFirings" | "ovenCelsius" | "degrees";

/** The planning boxes as typed, with what they share with the run-sheet form. */
export type RunPlanForm = Readonly<Record<PlanFieldName, string>> & Pick<RunSheetForm, SharedName>;

/** A plan, with what it hands on to the sheet. */
export interface PlanMade {
  readonly wanted: RunWanted;
  readonly plan: RunPlan;
  readonly carried: CarriedPlan;
  readonly degrees: "C" | "F";
  /** Minutes after midnight; undefined where it is not said. */
  readonly beginAt: number | undefined;
}

/** Either a plan, or what is in its way. */
export type PlanOutcome = PlanMade | WrongEntry<PlanFieldName>;

/** Every box names its unit; temperatures are in the degrees of the sheet. */
export const planLabels = (degrees: "C" | "F"): Readonly<Record<PlanFieldName, string>> => ({
  wantedUncertainty: "Uncertainty (± %)",
  expectedMoisture: "Expected moisture (%)",
  expectedLoss: "Expected loss (%)",
  dryingHours: "Drying time (h)",
  kiln: `Kiln (°${degrees})`,
  heatingRate: `Heating (°${degrees}/min)`,
  holdMinutes: "Hold (min)",
  coolingHours: "Cooling (h)",
  repeatability: "Repeatability (g)",
  methodScatter: "Scatter of samples (%)",
  bulkDensity: "Bulk density (g/mL)",
  molarMass: "Vapour (g/mol)",
  vesselMaterial: "Vessel made of",
  beginAt: "Begin at (h:mm)",
});

/** Where the kiln starts from, °C. */
export const START_CELSIUS = 20;

/** What the messages of the plan call each box. */
const NAMED_IN_MESSAGES: Readonly<Record<string, PlanFieldName>> = {
  "drying time": "dryingHours",
  "kiln temperature": "kiln",
  "heating rate": "heatingRate",
  hold: "holdMinutes",
  cooling: "coolingHours",
  repeatability: "repeatability",
  "scatter between samples": "methodScatter",
  "bulk density": "bulkDensity",
  "mean molar mass": "molarMass",
};

/** What the form shows beside each box that the messages of the plan name. */
const labelsOf = (labels: Readonly<Record<PlanFieldName, string>>, degrees: Degrees): Readonly<Record<string, string>> => ({
  ...Object.fromEntries(Object.entries(NAMED_IN_MESSAGES).map(([name, field]) => [name, labels[field]])),
  "wanted uncertainty": labels.wantedUncertainty,
  "expected moisture": labels.expectedMoisture,
  "expected loss": labels.expectedLoss,
  interval: FIELD_LABELS.intervalMinutes,
  readability: FIELD_LABELS.readability,
  replicates: FIELD_LABELS.replicates,
  "char firings": FIELD_LABELS.charFirings,
  "oven temperature": ovenLabel(degrees),
});

const boxes = (labels: Readonly<Record<PlanFieldName, string>>, degrees: Degrees) =>
  ({
    readability: { label: FIELD_LABELS.readability, example: "0.01" },
    intervalMinutes: { label: FIELD_LABELS.intervalMinutes, example: "20" },
    replicates: { label: FIELD_LABELS.replicates, example: "1" },
    charFirings: { label: FIELD_LABELS.charFirings, example: "3" },
    ovenCelsius: { label: ovenLabel(degrees) },
    dryingHours: { label: labels.dryingHours, example: "3" },
    kiln: { label: labels.kiln },
    heatingRate: { label: labels.heatingRate },
    holdMinutes: { label: labels.holdMinutes },
    coolingHours: { label: labels.coolingHours },
    repeatability: { label: labels.repeatability },
    bulkDensity: { label: labels.bulkDensity },
    molarMass: { label: labels.molarMass },
  }) satisfies Record<string, NumberBox>;

const NOT_HEATED = { expectedLoss: "", kiln: "", heatingRate: "", holdMinutes: "", coolingHours: "", molarMass: "", charFirings: "1" } as const;

/** Reads the planning boxes and plans the run. The kiln's boxes count only for a run that goes on after drying. */
export function readRunPlanForm(given: RunPlanForm): PlanOutcome {
  const form = withoutUnits(has(given.kind, "charring") ? given : { ...given, ...NOT_HEATED });
  const areRepeats = form.replicates !== "1" && form.samplesAre === "repeats";
  const degrees = asDegrees(form.degrees);
  const labels = planLabels(degrees);
  const percents = readPercents(labels, areRepeats ? form : { ...form, methodScatter: "" });
  if ("problem" in percents) return percents;
  const read = readNumbers(boxes(labels, degrees), form);
  if ("problem" in read) return { problem: read.problem, field: isPlanField(read.field) ? read.field : undefined };
  const hoursDoubted = unitDoubted(["dryingHours", "coolingHours"], labels, degrees, given, read.numbers);
  if (hoursDoubted !== undefined) return hoursDoubted;
  const beginAt = readClock(labels.beginAt, form.beginAt);
  if (typeof beginAt === "object") return beginAt;
  const { kiln, heatingRate, replicates, ovenCelsius: oven, ...others } = read.numbers;
  const kilnProblem = kilnProblemOf(labels, degrees, read.numbers);
  if (kilnProblem !== undefined) return kilnProblem;
  const doubted = unitDoubted(["heatingRate", "holdMinutes", "repeatability"], labels, degrees, given, read.numbers);
  if (doubted !== undefined) return doubted;
  const wanted: RunWanted = {
    ...others,
    ...percents,
    kind: form.kind,
    samples: replicates,
    samplesAre: form.samplesAre as SamplesAre,
    startCelsius: START_CELSIUS,
    ...(oven === undefined ? {} : { ovenCelsius: inCelsius(oven, degrees) }),
    ...(kiln === undefined ? {} : { kilnCelsius: inCelsius(kiln, degrees) }),
    ...(heatingRate === undefined ? {} : { celsiusPerMinute: degrees === "C" ? heatingRate : heatingRate / FAHRENHEIT_PER_CELSIUS }),
    ...(form.vesselMaterial === "" ? {} : { vesselMaterial: form.vesselMaterial }),
  };
  return orWrongEntry(
    () => {
      const plan = planRun(wanted);
      return { wanted, plan, carried: carriedOf(wanted, plan, { kiln, heatingRate, beginAt }), degrees, beginAt };
    },
    NAMED_IN_MESSAGES,
    labelsOf(labels, degrees),
  );
}

interface KilnNumbers {
  readonly kiln?: number;
  readonly heatingRate?: number;
  readonly holdMinutes?: number;
  readonly coolingHours?: number;
}

/** What the kiln's boxes lack, or exceed in degrees Fahrenheit, which the plan's own messages do not speak. */
function kilnProblemOf(
  labels: Readonly<Record<PlanFieldName, string>>,
  degrees: "C" | "F",
  { kiln, heatingRate, holdMinutes, coolingHours }: KilnNumbers,
): WrongEntry<PlanFieldName> | undefined {
  if (kiln === undefined)
    return (heatingRate ?? holdMinutes ?? coolingHours) === undefined ? undefined : { problem: kilnTemperatureMissing(labels.kiln), field: "kiln" };
  if (degrees === "C") return undefined;
  const { atLeast, atMost } = inDegrees(optionBounds.kiln, degrees);
  if (kiln < atLeast || kiln > atMost) return { problem: outOfBoundsInForm(labels.kiln, kiln, atLeast, atMost, "°F"), field: "kiln" };
  if (heatingRate === undefined) return { problem: heatingRateMissingInForm(labels.heatingRate), field: "heatingRate" };
  const [least, most] = FAHRENHEIT_RATES;
  if (heatingRate >= least && heatingRate <= most) return undefined;
  return { problem: outOfBoundsInForm(labels.heatingRate, heatingRate, least, most, "°F/min"), field: "heatingRate" };
}

const FAHRENHEIT_PER_CELSIUS = 1.8;
// As the plan's bounds of 0.01 and 1000 °C/min.
const FAHRENHEIT_RATES = [0.018, 1800] as const;

interface NotInThePlan {
  /** As typed, in the degrees of the sheet. */
  readonly kiln: number | undefined;
  readonly heatingRate: number | undefined;
  readonly beginAt: number | undefined;
}

/** All that was typed: what the kiln's boxes hold counts only with a kiln. */
function carriedOf(wanted: RunWanted, plan: RunPlan, { kiln, heatingRate, beginAt }: NotInThePlan): CarriedPlan {
  const { kind, wantedUncertainty, repeatability, methodScatter, vesselMaterial, dryingHours, moisture, bulkDensity } = wanted;
  const { expectedLoss, molarMass, holdMinutes, coolingHours } = wanted;
  return {
    moistGrams: plan.moistGrams,
    wantedUncertainty,
    dryingHours,
    expectedMoisture: moisture,
    ...given({
      dryGrams: has(kind, "charring") ? Number(plainNumber(plan.dryGrams)) : undefined,
      ...{ repeatability, methodScatter, vesselMaterial, bulkDensity, beginAt },
      ...{ kilnSetPoint: kiln, heatingRate, holdMinutes, coolingHours, expectedLoss, molarMass },
    }),
  };
}

/** Without what is not known. */
const given = <T extends object>(known: { [Name in keyof T]: T[Name] | undefined }): T =>
  Object.fromEntries(Object.entries(known).filter(([, value]) => value !== undefined)) as T;

const isPlanField = (field: string): field is PlanFieldName => (PLAN_FIELDS as readonly string[]).includes(field);
