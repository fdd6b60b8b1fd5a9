import { cell } from "../../runsheet/expressions/Expression";
import { sheetWords } from "../../runsheet/words/sheetWords";
import { areaNamed } from "../../workbook/areaNamed";
import { cellsOfArea } from "../../workbook/cellArea";
import type { CellReading, RangeReading } from "../../workbook/Workbook";
import { differsFromOwn } from "../runSheet/differsFromOwn";
import { RUN_SHEET_AREA, sheetCells } from "../runSheet/RunCells";

/** Cells of a run sheet that hold something else than the formula gives with which the sheet was made; none on any other sheet. */
export function runCellsNotGiven({ sheet, rows }: RangeReading): readonly string[] {
  const readings = new Map((isMarked(rows) ? rows.flat() : []).map((one) => [one.cell, one]));
  if (readings.size === 0) return [];
  const held = cellsOfArea(areaNamed(RUN_SHEET_AREA)).map((row) => row.map((name) => heldIn(readings.get(name))));
  const cells = sheetCells(sheet, held);
  if (cells === undefined) return [];
  const areFormulas = new Set([...readings.values()].filter(({ formula }) => formula !== "").map((one) => one.cell));
  return [...areFormulas].filter((name) => {
    const { row, column } = areaNamed(name);
    const reading = readings.get(name);
    return reading !== undefined && reading.error === "" && differsFromOwn(cells, cell(row + 1, column), reading, areFormulas);
  });
}

const isMarked = (rows: RangeReading["rows"]): boolean =>
  rows[0]?.some(({ value }) => typeof value === "string" && value.startsWith(sheetWords.workings.madeWith)) === true;

const heldIn = (reading: CellReading | undefined): Pick<CellReading, "value" | "error"> =>
  reading === undefined ? { value: null, error: "" } : { value: reading.value, error: reading.error };
