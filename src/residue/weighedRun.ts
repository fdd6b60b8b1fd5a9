import { gainedOnHeating } from "../problems/functions/weighingProblems";
import { weighingsInOrder } from "../weighing/weighingsInOrder";

/** Net masses of one run, g; ash is 0 when none was weighed. */
export interface WeighedRun {
  readonly dry: number;
  readonly char: number;
  readonly ash: number;
}

/**
 * The run without its vessel.
 * @param vessel, dry, char, ash weighings with the vessel, g
 * @throws InputProblem when the weighings are not in the order vessel <= ash <= char <= dry, vessel < dry
 */
export function weighedRun(vessel: number, dry: number, char: number, ash: number = vessel): WeighedRun {
  weighingsInOrder({ vessel, dry, char });
  weighingsInOrder({ vessel, dry, ash });
  if (ash > char) throw gainedOnHeating(["ash", ash], ["char", char]);
  return { dry: dry - vessel, char: char - vessel, ash: ash - vessel };
}
