import { CellProblem } from "../../cells/CellProblem";
import type { Plain } from "../../explanation/runSheet/Plain";
import { workOut } from "../../explanation/runSheet/workOut";
import { fn, LEFT_OUT, reckon, retort } from "../../runsheet/expressions/Expression";
import { countOf, vesselGiven } from "../../runsheet/formulas/weighings";
import type { Fired, RunSheet } from "../../runsheet/sheet/RunSheet";
import { sheetWords } from "../../runsheet/words/sheetWords";
import type { ShownCells } from "../sheet/ShownCells";
import type { Line, Point } from "./Chart";

// CONSTANTWEIGHT.STEPS gives headings in its first row, and above the first firing stands the weighing it begins from; the limit in g
// stands in this column.
const ROWS_ABOVE = 2;
const LIMIT_COLUMN = 4;

/**
 * Where the weighing after another firing as long as the latest would count as nothing lost, by the criterion that judges the firings;
 * none while no limit is in force. The sheet itself has no cells for the bands of char and ash.
 */
export function firingBand(sheet: RunSheet, table: Fired, sample: number, shown: ShownCells, points: readonly Point[], look: number): Line[] {
  const [before, latest] = points.slice(-2);
  const limit = limitInForce(sheet, table, sample, shown);
  if (latest === undefined || before === undefined || limit === undefined) return [];
  const to = latest.x + (latest.x - before.x);
  const edge = (by: number): Point[] => [latest.x, to].map((x) => ({ x, y: latest.y + by }));
  return [{ name: sheetWords.firingBandSeries(1), points: edge(-limit), upper: edge(limit), draws: "limit", look }];
}

function limitInForce(sheet: RunSheet, table: Fired, sample: number, shown: ShownCells): number | undefined {
  const { readability, criterion, limit } = sheet.settings;
  const given = [table.counted(sample), limit, criterion, table.minutes, vesselGiven(table.vessel(sample)), readability, LEFT_OUT];
  const inForce = fn("INDEX", retort("CONSTANTWEIGHT.STEPS", ...given), reckon(countOf(table, sample), "+", ROWS_ABOVE), LIMIT_COLUMN);
  const at = (row: number, column: number): Plain => {
    const reading = shown.reading({ row, column });
    return reading === undefined ? null : reading.error === "" ? reading.value : new CellProblem(reading.error as CellProblem["code"], "");
  };
  const value = workOut(inForce, at);
  return typeof value === "number" && value > 0 ? value : undefined;
}
