import { notA } from "../../problems/inputProblems";
import { filledCell } from "../filledCell";
import type { CellInput } from "../Input";

const WHAT_LEAVES = "what leaves";
const TYPE_WHAT_LEAVES = 'Type formulas parted by commas, such as "Hg, CO2".';

/** Formulas of what leaves, parted by commas, as text, not yet parsed. */
export const leavingText = (about: string): CellInput<string> => ({
  ...filledCell(about, WHAT_LEAVES, TYPE_WHAT_LEAVES, (value, place) => {
    if (typeof value !== "string") throw notA(place, value, WHAT_LEAVES, TYPE_WHAT_LEAVES);
    return value;
  }),
  takes: { kind: "text" },
});
