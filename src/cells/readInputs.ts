import { BLANK, CellError, type CellValue } from "../inputs/CellValue";
import { notOneCell, notOneColumn } from "../problems/inputProblems";
import { PassedError } from "../problems/PassedError";
import type { NamedCell } from "./functionInputs";
import type { GivenInput } from "./GivenInput";
import { cellFor, ROWS_OF_A_SHEET, type Grid } from "./Grid";

/**
 * Every input of a row of single cells read, under its name.
 * @param cells in the order of the inputs
 * @throws InputProblem | PassedError from the first input that cannot be read
 */
export function readRow(inputs: readonly NamedCell[], cells: readonly CellValue[]): Record<string, unknown> {
  for (let index = 0; index < inputs.length; index++) passErrorOn(cells[index] as CellValue, (inputs[index] as NamedCell).name);
  const read: Record<string, unknown> = {};
  for (let index = 0; index < inputs.length; index++) {
    const { name, input } = inputs[index] as NamedCell;
    read[name] = input.read(cells[index] as CellValue, name);
  }
  return read;
}

/** An error in any single-cell argument is the answer, before anything is said about the others. */
function passErrorOn(value: CellValue, argument: string): void {
  if (value instanceof CellError) throw new PassedError(value.code, argument);
}

/**
 * The same for arguments that may be columns or ranges.
 * @param row, column which cell of each range to take, a single row or column serving all; left out where every cell
 *   input must be one cell
 */
export function readInputs(given: readonly GivenInput[], row?: number, column?: number): Record<string, unknown> {
  for (const { name, input, grid } of given)
    if (input.shape === "cell" && grid !== undefined) passErrorOn(cellFor(grid, row ?? 0, column ?? 0), name);
  const read: Record<string, unknown> = {};
  for (const one of given) read[one.name] = readInput(one, row, column);
  return read;
}

function readInput({ name, input, grid }: GivenInput, row?: number, column?: number): unknown {
  if (input.shape === "column") return input.read(grid === undefined ? [] : lineOf(grid, name), name);
  if (grid === undefined) return input.read(BLANK, name);
  if (row === undefined || column === undefined) return input.read(onlyCellOf(grid, name), name);
  return input.read(cellFor(grid, row, column), name);
}

function lineOf(grid: Grid, name: string): CellValue[] {
  if (grid.rows > 1 && grid.columns > 1) throw notOneColumn(name, grid.rows, grid.columns);
  const isColumn = grid.columns === 1;
  const length = isColumn ? (grid.rows < ROWS_OF_A_SHEET ? grid.rows : grid.filledRows()) : grid.columns;
  // A loop: Array.from takes several times as long for the few cells of most series.
  const cells = new Array<CellValue>(length);
  for (let index = 0; index < length; index++) cells[index] = isColumn ? grid.cell(index, 0) : grid.cell(0, index);
  return cells;
}

function onlyCellOf(grid: Grid, name: string): CellValue {
  if (grid.rows > 1 || grid.columns > 1) throw notOneCell(name, grid.rows, grid.columns);
  return grid.cell(0, 0);
}
