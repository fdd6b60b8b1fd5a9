import { notA } from "../problems/inputProblems";
import { filledCell } from "./filledCell";
import type { CellInput } from "./Input";

const ADVICE = "Type TRUE or FALSE, or leave the argument out.";

/** TRUE or FALSE. A 0 from the host is a blank cell; any other number is refused. */
export const truth = (about: string): CellInput<boolean> =>
  filledCell(about, ADVICE, (value, place) => {
    if (typeof value !== "boolean") throw notA(place, value, "TRUE or FALSE", ADVICE);
    return value;
  });
