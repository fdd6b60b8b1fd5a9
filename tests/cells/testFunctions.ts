import { cellFunction, tableFunction, type CellFunction } from "../../src/functions/cellFunction";
import { mass } from "../../src/inputs/kinds/weighings";
import { optional } from "../../src/inputs/optional";
import { NoAnswer } from "../../src/problems/NoAnswer";

const made = { result: { about: "Made for tests", unit: "" }, examples: [], source: "made for tests" } as const;

/** Functions that do what a well-behaved catalogue does not, or does only in rare cases. */
export const testFunctions: readonly CellFunction[] = [
  cellFunction({
    ...made,
    name: "TEST.NOANSWER",
    summary: "Has no answer.",
    inputs: { grams: mass("Any mass [g].") },
    compute: () => {
      throw new NoAnswer("grams", "nothing follows from one weighing", "Weigh again.");
    },
  }),
  cellFunction({
    ...made,
    name: "TEST.UNFORESEEN",
    summary: "Breaks in a way nobody foresaw.",
    inputs: { grams: mass("Any mass [g].") },
    compute: () => {
      throw new TypeError("nobody foresaw this");
    },
  }),
  cellFunction({
    ...made,
    name: "TEST.SUM",
    summary: "Adds up what is given.",
    inputs: { grams: mass("Any mass [g]."), more: optional(mass("More [g].")) },
    compute: ({ grams, more }) => grams + (more ?? 0),
  }),
  tableFunction({
    ...made,
    name: "TEST.HOLES",
    summary: "A table with values that are no numbers.",
    inputs: { grams: mass("Any mass [g].") },
    computeTable: () => [
      [1, NaN],
      [-Infinity, "text"],
    ],
  }),
  tableFunction({
    ...made,
    name: "TEST.NOTABLE",
    summary: "Has no table to give.",
    inputs: { grams: mass("Any mass [g].") },
    computeTable: () => {
      throw new NoAnswer("grams", "nothing to tabulate", "Weigh again.");
    },
  }),
];
