import { InputProblem } from "../InputProblem";
import { listed, plainNumber, quoted, withUnit } from "../quoted";

export const unknownKindOfRun = (kind: string, kinds: readonly string[]): InputProblem =>
  new InputProblem("kind of run", `${quoted(kind)} is not one of ${listed(kinds)}`);

/** A word that an option of a run sheet does not know. */
export const unknownRunOption = (option: string, value: string, words: readonly string[]): InputProblem =>
  new InputProblem(option, `${quoted(value)} is not one of ${listed(words)}`);

/** @param unit "" for a plain count */
export const runOptionOutOfBounds = (option: string, value: number, atLeast: number, atMost: number, unit: string): InputProblem =>
  new InputProblem(
    option,
    `${shownValue(value, unit)} is not between ${plainNumber(atLeast)} and ${withUnit(atMost, unit)}`,
    "Give a number in between.",
  );

export const runOptionNotWhole = (option: string, value: number, nearest: number): InputProblem =>
  new InputProblem(option, `${shownValue(value, "")} is not a whole number`, `Give one such as ${nearest}.`);

export const oneCheckWeight = (replicates: number): InputProblem =>
  new InputProblem("replicates", `${quoted(replicates)} samples, but a balance check has one check weight a sheet`, "Give 1.");

export const vesselNameTooLong = (length: number, longest: number): InputProblem =>
  new InputProblem("vessel", `a name of ${length} characters is longer than the ${longest} that fit on the sheet`, "Shorten it.");

/** @param name "formula" or "residue" */
export const formulaTooLong = (name: string, length: number, longest: number): InputProblem =>
  new InputProblem(name, `a formula of ${length} characters is longer than the ${longest} that fit on the sheet`, "Shorten it.");

/** A number field left empty reads as NaN. */
const shownValue = (value: number, unit: string): string => (Number.isFinite(value) ? withUnit(value, unit) : "nothing");

export const tooManyWeighIns = (interval: number, hours: number, weighIns: number, most: number): InputProblem =>
  new InputProblem(
    "interval",
    `every ${withUnit(interval, "min")} for ${withUnit(hours, "h")} makes ${weighIns} weigh-ins, more than the ${most} of a run sheet`,
    "Take a longer interval.",
  );

export const heatingRateMissing = (): InputProblem =>
  new InputProblem("heating rate", "nothing here, though a kiln temperature is given", "Give degrees Celsius per minute.");

/** @param enough repeats that would leave room; undefined: a sheet has not so many */
export const scatterTooWide = (samples: number, enough: number | undefined): InputProblem =>
  new InputProblem(
    "scatter between samples",
    `alone it is more than ${samples} samples can average to the wanted uncertainty`,
    enough === undefined ? "Allow a wider uncertainty." : `Take ${enough} samples, or allow a wider uncertainty.`,
  );

/** @param leftOut run sheets that cannot be gathered, and why */
export const noRunsToGather = (leftOut: readonly { readonly sheet: string; readonly why: string }[]): string =>
  leftOut.length === 0
    ? "No run sheet is in this workbook yet. Insert one above, weigh a run, then gather."
    : `No run sheet can be gathered: ${leftOut.map(({ sheet, why }) => `${quoted(sheet)}, ${why}`).join("; ")}.`;
