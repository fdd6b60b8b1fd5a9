import { gainedOnHeating, lighterThanVessel, nothingLeft } from "../problems/functions/weighingProblems";
import { roundingSlack } from "../weighing/roundingSlack";
import { weighingsInOrder } from "../weighing/weighingsInOrder";

/**
 * Char yield: char per gram of dry sample, (char - vessel) / (dry - vessel). With the ash weighed as well, the ash-free
 * yield (char - ash) / (dry - ash), in which the vessel cancels: the ash is taken to have been in the sample from the
 * start, so it leaves both sides. A fraction between 0 and 1; follows from the definition.
 * @param vessel empty vessel, g (0 when the weighings are net)
 * @param dry vessel with the dry sample, g
 * @param char vessel with the char, cooled, g
 * @param ash vessel with the ash of that char, cooled, g
 * @throws InputProblem when the weighings are not in the order vessel <= ash <= char <= dry, ash < dry, vessel < dry
 */
export function charYield(vessel: number, dry: number, char: number, ash?: number): number {
  weighingsInOrder({ vessel, dry, char });
  if (ash === undefined) return (char - vessel) / (dry - vessel);
  if (ash < vessel) throw lighterThanVessel(["ash", ash], ["vessel", vessel]);
  if (ash > char) throw gainedOnHeating(["ash", ash], ["char", char]);
  if (dry - ash <= roundingSlack) throw nothingLeft(["ash", ash], ["dry", dry]);
  return (char - ash) / (dry - ash);
}
