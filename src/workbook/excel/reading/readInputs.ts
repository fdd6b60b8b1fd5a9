import { areaNamed } from "../../areaNamed";
import { cellArea, isWholeColumns, isWholeRows, rangeOf, wholeLines, type CellArea } from "../../cellArea";
import type { CellAddress, InputCell, InputsReading, WantedCells } from "../../Workbook";
import { excelSupports } from "../excelReady";
import { askForLook } from "./lookAtCell";
import { reading, withoutSheet } from "./readCells";

// An answer may hold 5 MB on the web ("Resource limits and performance optimization"); a cell of an input takes some 30 bytes.
export const MOST_INPUT_CELLS = 100_000;
// Below this a range is read as it is; above, only its filled part.
const FEW_CELLS = 1000;

/** Reads a cell and the inputs of its formula in one request. */
export async function readInputs(context: Excel.RequestContext, address: CellAddress, wanted: readonly WantedCells[]): Promise<InputsReading> {
  const again = askForLook(context, address);
  const most = Math.floor(MOST_INPUT_CELLS / Math.max(1, wanted.length));
  const asked = wanted.map((cells) => askForCells(context, cells, most));
  await context.sync();
  return { again: again(), ranges: asked.map((found) => found()) };
}

type Found = () => InputsReading["ranges"][number];

function askForCells(context: Excel.RequestContext, { sheet, range, spill }: WantedCells, most: number): Found {
  const worksheet = context.workbook.worksheets.getItem(sheet);
  if (spill && excelSupports("1.12")) {
    const own = worksheet.getRange(range).load(CONTENT);
    const area = worksheet.getRange(range).getSpillingToRangeOrNullObject().load(CONTENT);
    return () => inputCells(area.isNullObject ? own : area);
  }
  const area = wholeLines(range) ?? areaNamed(range);
  if (area.rows * area.columns > FEW_CELLS) return askForFilledPart(worksheet, area, most);
  const cells = worksheet.getRange(range).load(CONTENT);
  return () => inputCells(cells);
}

/** Only what is filled travels, and of that no more than `most` cells; an input that reaches further is not read at all. */
function askForFilledPart(worksheet: Excel.Worksheet, area: CellArea, most: number): Found {
  const within = isWholeRows(area)
    ? { ...area, columns: Math.min(area.columns, Math.max(1, Math.floor(most / area.rows))) }
    : { ...area, rows: Math.min(area.rows, Math.max(1, Math.floor(most / area.columns))) };
  const filled = worksheet.getRange(rangeOf(within)).getUsedRangeOrNullObject(true).load(CONTENT);
  const extent = worksheet.getRange(rangeOf(area)).getUsedRangeOrNullObject(true).load("address");
  return () => {
    const reach = extent.isNullObject ? undefined : cellArea(withoutSheet(extent.address));
    if (reach !== undefined && (lastRow(reach) > lastRow(within) || lastColumn(reach) > lastColumn(within))) return undefined;
    return placed(area, reach, filled);
  };
}

/** The filled part at its place in the whole; whole columns and rows end where they are filled. */
function placed(area: CellArea, reach: CellArea | undefined, filled: Excel.Range): InputCell[][] {
  const rows = isWholeColumns(area) ? (reach === undefined ? 1 : lastRow(reach) + 1) : area.rows;
  const columns = isWholeRows(area) ? (reach === undefined ? 1 : lastColumn(reach) + 1) : area.columns;
  const cells = Array.from({ length: rows }, () => new Array<InputCell>(columns).fill(BLANK_CELL));
  if (reach === undefined || filled.isNullObject) return cells;
  const at = areaNamed(withoutSheet(filled.address));
  inputCells(filled).forEach((line, down) => cells[at.row + down - area.row]?.splice(at.column - area.column, line.length, ...line));
  return cells;
}

const CONTENT = ["address", "values", "valueTypes", "formulas"];
const BLANK_CELL: InputCell = { value: null, error: "" };

const lastRow = ({ row, rows }: CellArea): number => row + rows - 1;
const lastColumn = ({ column, columns }: CellArea): number => column + columns - 1;

const inputCells = ({ values, valueTypes, formulas }: Excel.Range): InputCell[][] =>
  values.map((row: readonly unknown[], down) =>
    row.map((content, across) => {
      const { value, error } = reading("", content, valueTypes[down]?.[across], formulas[down]?.[across], "");
      return { value, error };
    }),
  );
