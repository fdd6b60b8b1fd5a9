import { lighterThanVessel } from "../problems/weighingProblems";
import { roundingSlack } from "./roundingSlack";
import { weighingsInOrder } from "./weighingsInOrder";

/**
 * Holds the order vessel < dry <= moist that drying forces on the weighings of one vessel. Drying, unlike heating to
 * char, always leaves something: an empty vessel after drying means a wrong cell.
 * @throws InputProblem naming the weighing, in g, that is out of order
 */
export function driedInOrder(vessel: number, moist: number, dry: number): void {
  weighingsInOrder({ vessel, moist, dry });
  if (dry - vessel <= roundingSlack) throw lighterThanVessel(["dry", dry], ["vessel", vessel]);
}
