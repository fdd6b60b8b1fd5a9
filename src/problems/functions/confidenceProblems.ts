import { InputProblem } from "../InputProblem";
import { NoAnswer } from "../NoAnswer";
import { counted, SIZE_FIGURES, withUnit } from "../quoted";

export const zeroUnclear = (row: number): InputProblem =>
  new InputProblem(
    "values",
    `row ${row} is 0 or an empty cell, which look alike here`,
    `Give "count" as zeros if 0 was found, "skip" if the cell is empty.`,
  );

export const replicateGap = (row: number): InputProblem =>
  new InputProblem("values", `row ${row} is blank`, `Fill the gap, or give "skip" as zeros to pass over empty cells.`);

export const noReplicates = (): InputProblem => new InputProblem("values", "nothing here (blank or 0)", "Give the replicate results.");

export const tooFewReplicates = (): NoAnswer => new NoAnswer("values", "one result has no scatter", "Take at least two replicates.");

export const tooFewForOutlier = (count: number, fewest: number): NoAnswer =>
  new NoAnswer("values", `${counted(count, "value")} cannot show an outlier; it takes ${fewest}`, "Take more replicates.");

export const tooManyForDixon = (count: number, most: number): NoAnswer =>
  new NoAnswer("values", `${count} values are more than the ${most} that Dixon's ratio r10 serves`, "Use GRUBBS.");

export const allValuesEqual = (count: number): NoAnswer => new NoAnswer("values", `all ${count} values are equal, so none stands out`);

export const readingTooCoarse = (u: number, sample: number): NoAnswer =>
  new NoAnswer(
    "u",
    `${withUnit(u, "g")} is more than a tenth of the sample, ${withUnit(sample, "g")}, so the loss is not known`,
    "Check the grams, or take more sample.",
  );

export const uncertaintyAboveWeighing = (u: number, before: number): InputProblem =>
  new InputProblem("u", `${withUnit(u, "g")} is not below the weighing itself, before, ${withUnit(before, "g")}`, "Give grams: 1.5 mg is 0.0015.");

export const uncertaintyBelowRounding = (u: number, readability: number, rounding: number): InputProblem =>
  new InputProblem(
    "u",
    `${withUnit(u, "g")} is below the ${withUnit(rounding, "g", SIZE_FIGURES)} that rounding to readability, ${withUnit(readability, "g")}, makes alone`,
    "Give what READING.U gives for this balance.",
  );
