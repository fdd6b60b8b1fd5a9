import { element } from "./element";
import { choiceList, field, type Field } from "./field";
import { FIELD_LABELS, type FieldName } from "./runSheetForm";
import { optionBounds } from "../runsheet/options/optionBounds";

export type EntryName = Exclude<FieldName, "kind">;

// Steps of balances in common use, from a kitchen scale to an analytical balance; common practice, no source.
const READABILITIES = ["0.1", "0.01", "0.001", "0.0001"];

// A half hour between weighings is common practice, no source.
const START = { weighIns: "8", intervalMinutes: "30", readability: "0.01", vessel: "lidded steel tin", replicates: "1", ovenCelsius: "" } as const;

const HINTS: Readonly<Record<EntryName, string>> = {
  readability: "smallest display step",
  intervalMinutes: "between weighings",
  weighIns: "while drying",
  replicates: "side by side",
  ovenCelsius: "may stay blank",
  vessel: "its name on the sheet",
};

/** The boxes of the run-sheet form: their controls and, with label and hint, their fields. */
export interface RunSheetFields {
  readonly controls: Readonly<Record<EntryName, HTMLInputElement | HTMLSelectElement>>;
  readonly fields: Readonly<Record<EntryName, Field>>;
}

export function runSheetFields(): RunSheetFields {
  const box = (name: EntryName, inputmode = "decimal"): HTMLInputElement =>
    element("input", { id: `run-${name}`, type: "text", inputmode, value: START[name], autocomplete: "off" });
  const steps = READABILITIES.map((step): [string, string] => [step, `${step} g`]);
  const counts = Array.from({ length: optionBounds.replicates.atMost }, (_, index): [string, string] => [String(index + 1), String(index + 1)]);
  const controls = {
    readability: choiceList("run-readability", steps, START.readability),
    intervalMinutes: box("intervalMinutes"),
    weighIns: box("weighIns", "numeric"),
    replicates: choiceList("run-replicates", counts, START.replicates),
    ovenCelsius: box("ovenCelsius"),
    vessel: box("vessel", "text"),
  };
  const entries = Object.entries(controls) as [EntryName, HTMLInputElement | HTMLSelectElement][];
  const fields = Object.fromEntries(entries.map(([name, control]) => [name, field(FIELD_LABELS[name], control, HINTS[name])]));
  return { controls, fields: fields as Record<EntryName, Field> };
}

/** What stands in each control, by name. */
export const typedIn = <F extends string>(controls: Readonly<Record<F, { readonly value: string }>>): Record<F, string> =>
  Object.fromEntries(Object.entries<{ readonly value: string }>(controls).map(([name, { value }]) => [name, value])) as Record<F, string>;
