import { notA } from "../../problems/inputProblems";
import { PassedError } from "../../problems/PassedError";
import { BLANK, CellError } from "../CellValue";
import { filledCell } from "../filledCell";
import type { CellInput } from "../Input";
import { isNothing } from "../number";

const A_FORMULA = "a chemical formula";
const TYPE_A_FORMULA = "Type a chemical formula such as CaCO3.";

/** A chemical formula as text, not yet parsed. A 0 from the host is a blank cell; any other number is not a formula. */
export const formulaText = (about: string): CellInput<string> => ({
  ...filledCell(about, A_FORMULA, TYPE_A_FORMULA, (value, place) => {
    if (typeof value !== "string") throw notA(place, value, A_FORMULA, TYPE_A_FORMULA);
    return value;
  }),
  takes: { kind: "text" },
});

const A_TRUTH = "TRUE or FALSE";
const TYPE_A_TRUTH = "Type TRUE or FALSE, or leave the argument out.";

/** TRUE or FALSE. A 0 from the host is a blank cell; any other number is refused. */
export const truth = (about: string): CellInput<boolean> => ({
  ...filledCell(about, A_TRUTH, TYPE_A_TRUTH, (value, place) => {
    if (typeof value !== "boolean") throw notA(place, value, A_TRUTH, TYPE_A_TRUTH);
    return value;
  }),
  takes: { kind: "truth" },
});

/**
 * Whatever the cell holds, undefined for nothing, for a function that answers every slip in words. Only an error cell
 * is refused. A 0 is handed on: whether it can be a value, the function must say.
 */
export const asGiven = (about: string, choices?: readonly string[]): CellInput<number | string | boolean | undefined> => ({
  shape: "cell",
  takes: { kind: "anything" },
  about,
  called: "a word or a number",
  unit: "",
  optional: false,
  zero: "in words",
  ...(choices === undefined ? {} : { choices }),
  isBlank: (value) => isNothing(value) || value === 0,
  read: (value, argument) => {
    if (value instanceof CellError) throw new PassedError(value.code, argument);
    return value === BLANK || isNothing(value) ? undefined : value;
  },
});
