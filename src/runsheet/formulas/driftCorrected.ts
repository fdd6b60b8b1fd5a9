import { lacksNumber, NOTHING, noNumber, when } from "../expressions/choices";
import { reckon, type Call, type Cell } from "../expressions/Expression";

/**
 * m = reading - (zero before + zero after) / 2, all in g: a weighing less the balance's zero halfway between the readings
 * before and after it, since a drift is taken to run evenly from one to the other. A zero of 0 g is a reading; where one
 * of the two is blank the weighing stands as read. Empty until weighed.
 */
export function driftCorrected(reading: Cell, before: Cell, after: Cell): Call {
  const middle = reckon(reckon(before, "+", after), "/", 2);
  return when(noNumber(reading), NOTHING, when(lacksNumber(before, after), reading, reckon(reading, "-", middle)));
}
