import { fn, is } from "../expressions/Expression";
import { cellNumbered } from "../formulas/cellsNamed";
import { watchCells, type Watched } from "../formulas/typedOver";
import { checkWords } from "../words/checkWords";
import { step, type Check } from "./Check";

/** Whether every calculated cell that the answer rests on still holds its formula. */
export function typedOverCheck(sheet: Watched): Check {
  const found = fn("N", watchCells(sheet).below);
  return { silentWhile: is(found, "<", 0), steps: [step(is(found, ">", 0), checkWords.typedOver.found(cellNumbered(found)))] };
}
