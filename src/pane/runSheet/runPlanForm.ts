import { kilnTemperatureMissing, outOfBoundsInForm } from "../../problems/paneProblems";
import { planRun, type RunPlan, type RunWanted } from "../../runsheet/planning/planRun";
import { type NumberBox, readNumbers } from "./readNumbers";
import { FIELD_LABELS, type RunSheetForm } from "./runSheetForm";
import { orWrongEntry, type WrongEntry } from "./WrongEntry";

export type PlanFieldName = keyof typeof PLAN_LABELS;

/** The planning boxes as typed, with what they share with the run-sheet form. */
export type RunPlanForm = Readonly<Record<PlanFieldName, string>> & Pick<RunSheetForm, "readability" | "intervalMinutes" | "kind">;

/** Either a plan, or what is in its way. */
export type PlanOutcome = { readonly wanted: RunWanted; readonly plan: RunPlan } | WrongEntry<PlanFieldName>;

export const PLAN_LABELS = {
  wantedUncertainty: "Uncertainty (± %)",
  expectedLoss: "Expected loss (%)",
  dryingHours: "Drying time (h)",
  kilnCelsius: "Kiln (°C)",
  celsiusPerMinute: "Heating (°C/min)",
  holdMinutes: "Hold (min)",
} as const;

/** Where the kiln starts from, °C. */
export const START_CELSIUS = 20;

/** What the messages of the plan call each box. */
const NAMED_IN_MESSAGES: Readonly<Record<string, PlanFieldName>> = {
  "drying time": "dryingHours",
  "kiln temperature": "kilnCelsius",
  "heating rate": "celsiusPerMinute",
  hold: "holdMinutes",
};

const BOXES = {
  readability: { label: FIELD_LABELS.readability, example: "0.01" },
  intervalMinutes: { label: FIELD_LABELS.intervalMinutes, example: "20" },
  wantedUncertainty: { label: PLAN_LABELS.wantedUncertainty, example: "0.5" },
  expectedLoss: { label: PLAN_LABELS.expectedLoss },
  dryingHours: { label: PLAN_LABELS.dryingHours, example: "3" },
  kilnCelsius: { label: PLAN_LABELS.kilnCelsius },
  celsiusPerMinute: { label: PLAN_LABELS.celsiusPerMinute },
  holdMinutes: { label: PLAN_LABELS.holdMinutes },
} satisfies Record<string, NumberBox>;

const NO_KILN = { kilnCelsius: "", celsiusPerMinute: "", holdMinutes: "" };

const PERCENT = 100;
// As planRun's bounds, in percent: its own message would quote a fraction that nobody typed.
const PERCENT_BOUNDS = { wantedUncertainty: [0.001, 10], expectedLoss: [0, 100] } as const;
// Planned for the loss that asks for the largest sample.
const ANY_LOSS = 0;

/** Reads the planning boxes and plans the run. The kiln's boxes count only for a run that goes on after drying. */
export function readRunPlanForm(form: RunPlanForm): PlanOutcome {
  const read = readNumbers(BOXES, form.kind === "drying" ? { ...form, ...NO_KILN } : form);
  if ("problem" in read) return { problem: read.problem, field: isPlanField(read.field) ? read.field : undefined };
  const { kilnCelsius, celsiusPerMinute, holdMinutes } = read.numbers;
  if (kilnCelsius === undefined && (celsiusPerMinute ?? holdMinutes) !== undefined)
    return { problem: kilnTemperatureMissing(PLAN_LABELS.kilnCelsius), field: "kilnCelsius" };
  const { wantedUncertainty, expectedLoss = ANY_LOSS, ...others } = read.numbers;
  for (const { field, value } of [
    { field: "wantedUncertainty", value: wantedUncertainty },
    { field: "expectedLoss", value: expectedLoss },
  ] as const) {
    const [atLeast, atMost] = PERCENT_BOUNDS[field];
    if (value < atLeast || value > atMost) return { problem: outOfBoundsInForm(PLAN_LABELS[field], value, atLeast, atMost, "%"), field };
  }
  const shares = { wantedUncertainty: wantedUncertainty / PERCENT, expectedLoss: expectedLoss / PERCENT };
  const wanted: RunWanted = { ...others, ...shares, startCelsius: START_CELSIUS };
  return orWrongEntry(() => ({ wanted, plan: planRun(wanted) }), NAMED_IN_MESSAGES);
}

const isPlanField = (field: string): field is PlanFieldName => field in PLAN_LABELS;
