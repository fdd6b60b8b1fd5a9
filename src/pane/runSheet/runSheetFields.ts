import { optionBounds } from "../../runsheet/options/optionBounds";
import type { RunKind } from "../../runsheet/options/RunSheetOptions";
import { USUAL_ROUNDS } from "../../runsheet/options/usualRounds";
import { element } from "../element";
import { checkBox, choiceList, field, type Field, underEachName } from "./field";
import { type EntryName, EXTRA_LABELS, type ExtraName, FIELD_LABELS, type RunSheetForm } from "./runSheetForm";

// Steps of balances in common use, from a kitchen scale to an analytical balance; common practice, no source.
const READABILITIES = ["0.1", "0.01", "0.001", "0.0001"];

const START = {
  weighIns: String(USUAL_ROUNDS.weighIns),
  intervalMinutes: String(USUAL_ROUNDS.intervalMinutes),
  readability: "0.01",
  vessel: "lidded steel tin",
  replicates: "1",
  ovenCelsius: "",
  formula: "",
  residue: "",
} as const;
// As checkOptions has it where nothing is said.
const USUAL = { charFirings: "3", ashFirings: "2", receivers: "1", stages: "4" } as const;

const HINTS: Readonly<Record<EntryName, string>> = {
  readability: "smallest display step",
  intervalMinutes: "between weighings",
  weighIns: "rounds of weighing",
  replicates: "side by side",
  samplesAre: "averaged, or kept apart",
  charFirings: "until nothing more leaves",
  ashFirings: "until nothing more leaves",
  receivers: "that liquids are caught in",
  stages: "temperatures to weigh after",
  formula: "CuSO4·5H2O; may stay blank",
  residue: "CuSO4; may stay blank",
  ovenCelsius: "may stay blank",
  degrees: "on the sheet",
  timing: "how each round is noted",
  vessel: "its name on the sheet",
};

/** The boxes of the run-sheet form: their controls and, with label and hint, their fields. */
export interface RunSheetFields {
  readonly controls: Readonly<Record<EntryName, HTMLInputElement | HTMLSelectElement>>;
  readonly fields: Readonly<Record<EntryName, Field>>;
}

export function runSheetFields(): RunSheetFields {
  const box = (name: keyof typeof START, inputmode = "decimal"): HTMLInputElement =>
    element("input", { id: `run-${name}`, type: "text", inputmode, value: START[name], autocomplete: "off" });
  const steps = READABILITIES.map((step): [string, string] => [step, `${step} g`]);
  const controls = {
    readability: choiceList("run-readability", steps, START.readability),
    intervalMinutes: box("intervalMinutes"),
    weighIns: box("weighIns", "numeric"),
    replicates: choiceList("run-replicates", from(optionBounds.replicates), START.replicates),
    samplesAre: choiceList(
      "run-samplesAre",
      [
        ["repeats", "repeats of one material"],
        ["different", "different materials"],
      ],
      "repeats",
    ),
    charFirings: choiceList("run-charFirings", from(optionBounds.charFirings), USUAL.charFirings),
    ashFirings: choiceList("run-ashFirings", from(optionBounds.ashFirings), USUAL.ashFirings),
    receivers: choiceList("run-receivers", from(optionBounds.receivers), USUAL.receivers),
    stages: choiceList("run-stages", from(optionBounds.stages), USUAL.stages),
    formula: box("formula", "text"),
    residue: box("residue", "text"),
    ovenCelsius: box("ovenCelsius"),
    degrees: choiceList(
      "run-degrees",
      [
        ["C", "°C"],
        ["F", "°F"],
      ],
      "C",
    ),
    timing: choiceList(
      "run-timing",
      [
        ["clock", "by the clock"],
        ["minutes", "in minutes"],
      ],
      "clock",
    ),
    vessel: box("vessel", "text"),
  };
  return {
    controls,
    fields: underEachName<EntryName, HTMLInputElement | HTMLSelectElement, Field>(controls, (control, name) =>
      field(FIELD_LABELS[name], control, HINTS[name]),
    ),
  };
}

const from = ({ atLeast, atMost }: { readonly atLeast: number; readonly atMost: number }): [string, string][] =>
  Array.from({ length: atMost - atLeast + 1 }, (_, index) => [String(atLeast + index), String(atLeast + index)]);

const KINDS: readonly (readonly [kind: RunKind, label: string, about: string])[] = [
  ["drying", "Drying only", "warm the sample until its weight holds"],
  ["charring", "Drying and charring", "then heat it without air"],
  ["ashing", "Drying, charring and ashing", "then burn the char off in air"],
  ["liquids", "Charring with liquids caught", "char, liquids, water and gas, as a ledger"],
  ["staged", "Staged heating", "heat, hold, cool, weigh, and hotter again"],
  ["salt", "Salt or mineral", "hydrate, carbonate or hydroxide: its loss beside theory"],
  ["balance", "Balance check", "a check weight with its history, and corners"],
];

/** The kinds of run as a set of radio buttons. */
export function kindChoice(legend: string, start: RunKind): { block: HTMLFieldSetElement; chosen: () => RunKind } {
  const choices = KINDS.map(([kind, label, about]) => {
    const radio = element("input", { type: "radio", name: "run-kind", value: kind, id: `run-kind-${kind}`, checked: kind === start });
    return {
      kind,
      radio,
      line: element("label", { class: "choice", for: radio.id }, radio, element("span", {}, label, element("small", {}, about))),
    };
  });
  return {
    block: element("fieldset", {}, element("legend", {}, legend), ...choices.map(({ line }) => line)),
    chosen: () => choices.find(({ radio }) => radio.checked)?.kind ?? start,
  };
}

const EXTRA_HINTS: Readonly<Record<ExtraName, string>> = {
  panZeros: "corrects weighings for drift",
  temperatures: "flags a sample weighed warm",
};

/** The rows that a run sheet may have on top of the usual ones, as boxes to tick. */
export function extraColumns(): { block: HTMLElement; ticked: () => Pick<RunSheetForm, ExtraName> } {
  const box = (name: ExtraName): ReturnType<typeof checkBox> => checkBox(`run-${name}`, EXTRA_LABELS[name], EXTRA_HINTS[name]);
  const [panZeros, temperatures] = [box("panZeros"), box("temperatures")];
  return {
    block: element("fieldset", { class: "extras" }, element("legend", {}, "Extra rows"), panZeros.block, temperatures.block),
    ticked: () => ({ panZeros: panZeros.control.checked, temperatures: temperatures.control.checked }),
  };
}
