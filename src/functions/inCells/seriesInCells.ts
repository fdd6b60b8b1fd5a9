import type { Bound, NumberRule } from "../../inputs/NumberRule";
import { rowRefused } from "../../problems/sharing/plainCellProblems";
import { refusal } from "./problemInCells";
import { isNumberInCells, refusedNumberInCells } from "../../inputs/refusedInCells";

/** True, in a cell, where a cell of a series holds anything; a 0 counts as nothing where the rule says so. */
export const isFilledInCells = (cell: string, isZeroBlank: boolean): string =>
  `IF(ISERROR(${cell}),1,IF(${isNumberInCells(cell)},${isZeroBlank ? `IF(${cell}=0,0,1)` : "1"},IF(TRIM(${cell})="",0,1)))`;

/**
 * One cell of a series as its reader takes it: the number, "" beyond the last that is filled, an error cell's own error, and #VALUE! for a
 * gap, for what is no number, and for a number out of bounds.
 * @param filledFrom how many cells from this one on are filled
 * @param isZeroBlank true where a 0 is a blank cell
 * @param answer what stands there for a good number
 */
export function seriesCell(cell: string, filledFrom: string, rule: NumberRule, isZeroBlank: boolean, row: number, answer: string): string {
  const refused = refusedNumberInCells(rule.bounds ?? ([] as readonly Bound[]), cell, isZeroBlank);
  const good = `IF(${refused},${refusal(rowRefused(row))},${answer})`;
  return `IF(${filledFrom}=0,"",IF(ISERROR(${cell}),${cell},IF(${isNumberInCells(cell)},${good},${refusal(rowRefused(row))})))`;
}
