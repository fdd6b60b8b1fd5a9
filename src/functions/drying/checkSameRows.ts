import type { RowCounted } from "../../inputs/column";
import { timesOfAnotherSize } from "../../problems/constancyProblems";

/**
 * Holds two columns to one size, blanks at their ends included.
 * @throws InputProblem when they differ
 */
export function checkSameRows(times: RowCounted<unknown>, weights: RowCounted<unknown>): void {
  if (times.rows !== weights.rows) throw timesOfAnotherSize(times.rows, weights.rows);
}
