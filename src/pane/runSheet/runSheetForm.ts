import { checkOptions } from "../../runsheet/options/checkOptions";
import { heldToChemistry } from "../../runsheet/options/heldToChemistry";
import type { RunKind, RunSheetOptions } from "../../runsheet/options/RunSheetOptions";
import { asDegrees, inCelsius, ovenLabel, ovenProblem } from "./degreesTyped";
import { durationText } from "./durationText";
import { type NumberBox, readNumbers } from "./readNumbers";
import { orWrongEntry, type WrongEntry } from "./WrongEntry";

export type FieldName = keyof typeof FIELD_LABELS;

/** The boxes to type or choose in; the kind of run has buttons of its own. */
export type EntryName = Exclude<FieldName, "kind">;

export type ExtraName = keyof typeof EXTRA_LABELS;

/** The form of the Run sheet tab as typed and ticked. */
export type RunSheetForm = Readonly<Record<EntryName, string>> & Readonly<Record<ExtraName, boolean>> & { readonly kind: RunKind };

/** Either what the form asks of a sheet, or what is wrong with it. */
export type FormOutcome = { readonly options: RunSheetOptions } | WrongEntry<FieldName>;

export const FIELD_LABELS = {
  kind: "Kind of run",
  readability: "Readability",
  intervalMinutes: "Minutes apart",
  weighIns: "Weigh-ins",
  replicates: "Samples",
  samplesAre: "Which are",
  charFirings: "Char firings",
  ashFirings: "Ash firings",
  receivers: "Receivers",
  stages: "Stages",
  formula: "Formula",
  residue: "What stays",
  ovenCelsius: "Oven (°C)",
  degrees: "Temperatures",
  timing: "Rounds timed",
  vessel: "Vessel",
} as const;

/** What the firings of a salt or mineral are called. */
export const HEATINGS = "Heatings";

export const EXTRA_LABELS = {
  panZeros: "Pan zero before and after",
  temperatures: "Room and sample temperature",
} as const;

/** What the messages about run-sheet options call each field. */
const NAMED_IN_MESSAGES: Readonly<Record<string, FieldName>> = {
  "kind of run": "kind",
  "weigh-ins": "weighIns",
  interval: "intervalMinutes",
  readability: "readability",
  vessel: "vessel",
  replicates: "replicates",
  samples: "samplesAre",
  "char firings": "charFirings",
  "ash firings": "ashFirings",
  receivers: "receivers",
  stages: "stages",
  formula: "formula",
  residue: "residue",
  degrees: "degrees",
  timing: "timing",
  "oven temperature": "ovenCelsius",
};

const NUMBERS = {
  readability: { label: FIELD_LABELS.readability, example: "0.01" },
  intervalMinutes: { label: FIELD_LABELS.intervalMinutes, example: "20" },
  weighIns: { label: FIELD_LABELS.weighIns, example: "8" },
  replicates: { label: FIELD_LABELS.replicates, example: "1" },
  charFirings: { label: FIELD_LABELS.charFirings, example: "3" },
  ashFirings: { label: FIELD_LABELS.ashFirings, example: "2" },
  receivers: { label: FIELD_LABELS.receivers, example: "1" },
  stages: { label: FIELD_LABELS.stages, example: "4" },
  ovenCelsius: { label: FIELD_LABELS.ovenCelsius },
} satisfies Record<string, NumberBox>;

/** What the form hides for a balance check, which has one check weight and rounds on days of their own. */
const UNASKED_OF_A_BALANCE = { replicates: "1", intervalMinutes: "1440", ovenCelsius: "", vessel: "", panZeros: false, temperatures: false } as const;

/** Reads the form and holds it to what a sheet can be made for, at each key press; the sheet itself is built when it is inserted. */
export function readRunSheetForm(form: RunSheetForm): FormOutcome {
  const asked = form.kind === "balance" ? { ...form, ...UNASKED_OF_A_BALANCE } : form;
  const degrees = asDegrees(form.degrees);
  const read = readNumbers({ ...NUMBERS, ovenCelsius: { label: ovenLabel(degrees) } }, asked);
  if ("problem" in read) return read;
  const { ovenCelsius: oven, ...numbers } = read.numbers;
  const tooHot = ovenProblem(oven, degrees);
  if (tooHot !== undefined) return tooHot;
  const extras = { ...(asked.panZeros ? { panZeros: true } : {}), ...(asked.temperatures ? { temperatures: true } : {}) };
  // What is chosen from lists is held to its words by checkOptions.
  const chosen = { samplesAre: form.samplesAre, degrees: form.degrees, timing: form.timing } as Pick<
    RunSheetOptions,
    "samplesAre" | "degrees" | "timing"
  >;
  const compound = form.kind === "salt" ? { formula: form.formula, residue: form.residue } : {};
  const options: RunSheetOptions = {
    ...numbers,
    ...(oven === undefined ? {} : { ovenCelsius: inCelsius(oven, degrees) }),
    ...extras,
    ...chosen,
    ...compound,
    kind: form.kind,
    vessel: asked.vessel,
  };
  return orWrongEntry(() => {
    const checked = checkOptions(options);
    heldToChemistry(checked);
    return { options: checked };
  }, NAMED_IN_MESSAGES);
}

/** What the sheet will hold, or that an entry is in the way, in one sentence. */
export function planText(outcome: FormOutcome): string {
  if ("problem" in outcome) return outcome.field === undefined || outcome.field === "kind" ? outcome.problem : "Mend the marked entry to go on.";
  const { kind, weighIns, intervalMinutes, replicates } = outcome.options;
  if (kind === "balance") return `${weighIns} rounds of one check weight, each on its day, and the corners of the pan once.`;
  const samples = replicates === 1 ? "one sample" : `${replicates} samples`;
  return `${weighIns} weigh-ins of ${samples}, ${durationText(intervalMinutes)} apart: ${durationText((weighIns - 1) * intervalMinutes)} from first to last.`;
}
