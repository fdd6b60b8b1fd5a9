import { firingBandCells } from "../../runsheet/formulas/firingBand";
import type { RunSheet } from "../../runsheet/sheet/RunSheet";
import { sheetWords } from "../../runsheet/words/sheetWords";
import type { ShownCells } from "../sheet/ShownCells";
import type { Line, Point } from "./Chart";

/**
 * Where the weighing after another firing as long as the latest would count as nothing lost, from the sheet's own workings, without the vessel;
 * none while no limit is in force.
 * @param place of the table among those that are drawn, from 0
 */
export function firingBand(sheet: RunSheet, place: number, sample: number, vessel: number, shown: ShownCells): Line[] {
  const { corner, at } = firingBandCells(sheet, place);
  const edge = (...corners: readonly number[]): Point[] =>
    corners.flatMap((one) => {
      const [x, y] = [shown.number(at(one)), shown.number(corner(one, sample))];
      return x === undefined || y === undefined ? [] : [{ x, y: y - vessel }];
    });
  const [points, upper] = [edge(0, 1), edge(3, 2)];
  const [from, to] = points;
  if (from === undefined || to === undefined || to.x <= from.x || (upper[0]?.y ?? from.y) <= from.y) return [];
  return [{ name: sheetWords.firingBandSeries(1), points, upper, draws: "limit", look: sample - 1 }];
}
