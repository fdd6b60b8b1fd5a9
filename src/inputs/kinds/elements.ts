import { notA } from "../../problems/inputProblems";
import { filledCell } from "../filledCell";
import type { CellInput } from "../Input";

const AN_ELEMENT = "an element";
const TYPE_AN_ELEMENT = "Type a symbol such as Ca.";

/** The symbol or name of an element as text. A 0 from the host is a blank cell; any other number is no element. */
export const elementText = (about: string): CellInput<string> => ({
  ...filledCell(about, AN_ELEMENT, TYPE_AN_ELEMENT, (value, place) => {
    if (typeof value !== "string") throw notA(place, value, AN_ELEMENT, TYPE_AN_ELEMENT);
    return value;
  }),
  takes: { kind: "text" },
});
