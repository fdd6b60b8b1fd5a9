import { column, rowCounted, type RowCounted } from "../../inputs/column";
import { vesselMass, weighing } from "../../inputs/kinds/weighings";
import { omittable } from "../../inputs/optional";
import { timesOfAnotherSize } from "../../problems/functions/constancyProblems";

/** The weighings of a run as DRYING.END and DRYING.FIT take them. */
export const seriesWeights = rowCounted(column("Weighings in the order taken [g]: with the vessel if vessel is given, else sample alone.", weighing));

/** The vessel that stands in every weighing of a series. */
export const seriesVessel = omittable(vesselMass('Empty vessel [g], or "tared".'), "the weighings are net");

/**
 * Holds two columns to one size, blanks at their ends included.
 * @throws InputProblem when they differ
 */
export function checkSameRows(times: RowCounted<unknown>, weights: RowCounted<unknown>): void {
  if (times.rows !== weights.rows) throw timesOfAnotherSize(times.rows, weights.rows);
}
