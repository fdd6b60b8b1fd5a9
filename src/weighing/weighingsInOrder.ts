import { gainedOnHeating, lighterThanVessel } from "../problems/weighingProblems";
import { roundingSlack } from "./roundingSlack";

type Weighing = readonly [name: string, grams: number];

/**
 * Holds the order that heating forces on three weighings of one vessel: the loaded vessel is heaviest, then the
 * vessel with what is left, then the vessel itself.
 * @param weighings g, under the names the user knows them by: vessel, then the loaded vessel, then the heated one
 * @throws InputProblem naming the weighing that is out of order
 */
export function weighingsInOrder(weighings: Readonly<Record<string, number>>): void {
  // Keys, not entries: an engine keeps the keys of a record, and making its entries takes three times as long as all the rest.
  const [vessel, loaded, heated] = Object.keys(weighings).map((name): Weighing => [name, weighings[name] as number]) as [
    Weighing,
    Weighing,
    Weighing,
  ];
  if (loaded[1] - vessel[1] <= roundingSlack) throw lighterThanVessel(loaded, vessel);
  if (heated[1] > loaded[1]) throw gainedOnHeating(heated, loaded);
  if (heated[1] < vessel[1]) throw lighterThanVessel(heated, vessel);
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
