import { notA } from "../problems/inputProblems";
import { filledCell } from "./filledCell";
import type { CellInput } from "./Input";

const ADVICE = "Type a chemical formula such as CaCO3.";

/** A chemical formula as text, not yet parsed. A 0 from the host is a blank cell; any other number is not a formula. */
export const formulaText = (about: string): CellInput<string> =>
  filledCell(about, ADVICE, (value, place) => {
    if (typeof value !== "string") throw notA(place, value, "a chemical formula", ADVICE);
    return value;
  });
