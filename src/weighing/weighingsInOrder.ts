import { gainedOnHeating, lighterThanVessel } from "../problems/functions/weighingProblems";
import { roundingSlack } from "./roundingSlack";

/**
 * Holds the order that heating forces on three weighings of one vessel: the loaded vessel is heaviest, then the
 * vessel with what is left, then the vessel itself.
 * @param weighings g, under the names the user knows them by: vessel, then the loaded vessel, then the heated one
 * @throws InputProblem naming the weighing that is out of order
 */
export function weighingsInOrder(weighings: Readonly<Record<string, number>>): void {
  // Keys, not entries: an engine keeps the keys of a record, and making its entries takes three times as long as all the rest.
  const [vessel, loaded, heated] = Object.keys(weighings) as [string, string, string];
  const [empty, before, after] = [weighings[vessel] as number, weighings[loaded] as number, weighings[heated] as number];
  if (before - empty <= roundingSlack) throw lighterThanVessel([loaded, before], [vessel, empty]);
  if (after > before) throw gainedOnHeating([heated, after], [loaded, before]);
  if (after < empty) throw lighterThanVessel([heated, after], [vessel, empty]);
}

/**
 * Holds the order vessel < dry <= moist that drying forces on the weighings of one vessel. Drying, unlike heating to
 * char, always leaves something: an empty vessel after drying means a wrong cell.
 * @throws InputProblem naming the weighing, in g, that is out of order
 */
export function driedInOrder(vessel: number, moist: number, dry: number): void {
  weighingsInOrder({ vessel, moist, dry });
  if (dry - vessel <= roundingSlack) throw lighterThanVessel(["dry", dry], ["vessel", vessel]);
}
