import { buildRunSheet } from "../runsheet/buildRunSheet";
import type { RunKind, RunSheetOptions } from "../runsheet/options/RunSheetOptions";
import type { SheetPlan } from "../workbook/SheetPlan";
import { orWrongEntry } from "./orWrongEntry";
import { readNumbers, type NumberBox } from "./readNumbers";
import type { WrongEntry } from "./WrongEntry";

export type FieldName = keyof typeof FIELD_LABELS;

export type ExtraName = keyof typeof EXTRA_LABELS;

/** The form of the Run sheet tab as typed and ticked. */
export type RunSheetForm = Readonly<Record<FieldName, string>> & Readonly<Record<ExtraName, boolean>>;

/** Either the sheet that the form asks for, or what is wrong with it. */
export type FormOutcome = { readonly options: RunSheetOptions; readonly plan: SheetPlan } | WrongEntry<FieldName>;

export const FIELD_LABELS = {
  kind: "Kind of run",
  readability: "Readability",
  intervalMinutes: "Minutes apart",
  weighIns: "Weigh-ins",
  replicates: "Samples",
  ovenCelsius: "Oven (°C)",
  vessel: "Vessel",
} as const;

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
  "oven temperature": "ovenCelsius",
};

const NUMBERS: Readonly<Record<"readability" | "intervalMinutes" | "weighIns" | "replicates" | "ovenCelsius", NumberBox>> = {
  readability: { label: FIELD_LABELS.readability, example: "0.01" },
  intervalMinutes: { label: FIELD_LABELS.intervalMinutes, example: "30" },
  weighIns: { label: FIELD_LABELS.weighIns, example: "8" },
  replicates: { label: FIELD_LABELS.replicates, example: "1" },
  ovenCelsius: { label: FIELD_LABELS.ovenCelsius },
};

/** Reads the form and plans the sheet, so that a wrong entry is known before anything is inserted. */
export function readRunSheetForm(form: RunSheetForm): FormOutcome {
  const read = readNumbers<keyof typeof NUMBERS>(NUMBERS, form);
  if ("problem" in read) return read;
  const numbers = read.numbers as Record<Exclude<keyof typeof NUMBERS, "ovenCelsius">, number>;
  const extras = { ...(form.panZeros ? { panZeros: true } : {}), ...(form.temperatures ? { temperatures: true } : {}) };
  const options: RunSheetOptions = { ...numbers, ...extras, kind: form.kind as RunKind, vessel: form.vessel };
  return orWrongEntry(() => ({ options, plan: buildRunSheet(options) }), NAMED_IN_MESSAGES);
}
