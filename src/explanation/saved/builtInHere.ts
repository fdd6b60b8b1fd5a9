import type { CellValue } from "../../inputs/CellValue";
import { isSingle, type Cells } from "../formula/Cells";
import type { Surroundings } from "../formula/evaluate";
import { builtIn, type Worked } from "../runSheet/builtIns";
import { isTable, type Plain, type Table } from "../runSheet/Plain";

// Such as stand around a call, and mean the same in every spreadsheet. Others are left to the spreadsheet.
const KNOWN: readonly Worked[] = ["ROUND", "ABS", "SUM", "MIN", "MAX", "AVERAGE"];

/** The spreadsheet's functions that are worked out here, on numbers alone: in what else they count, spreadsheets differ. */
export const builtInHere: NonNullable<Surroundings["builtIn"]> = (name, given) => {
  if (name === "INDEX") return indexed(given);
  const known = KNOWN.find((one) => one === name);
  if (known === undefined || !given.flat(2).every((value) => typeof value === "number")) return undefined;
  const answer = builtIn[known](...given.map(alone));
  return isTable(answer) ? (answer as Cells) : [[answer as CellValue]];
};

const alone = (cells: Cells): Plain | Table => (isSingle(cells) ? (cells[0]?.[0] as Plain) : (cells as Table));

/** One cell of a table, or of a single row or column. */
function indexed([table, ...places]: readonly Cells[]): Cells | undefined {
  const [first, second] = places.map((place) => place[0]?.[0]);
  if (table === undefined || typeof first !== "number") return undefined;
  const isRow = second === undefined && table.length === 1;
  const [row, column] = isRow ? [1, first] : [first, second ?? 1];
  const value = typeof column === "number" ? table[row - 1]?.[column - 1] : undefined;
  return value === undefined ? undefined : [[value]];
}
