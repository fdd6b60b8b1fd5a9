import type { ValueFunction } from "../functions/cellFunction";
import { BLANK, type CellValue } from "../inputs/CellValue";
import type { CellInput } from "../inputs/Input";
import { shapesDoNotFit } from "../problems/inputProblems";
import type { Answer } from "./CellProblem";
import type { NamedCell } from "./functionInputs";
import { withGrids, type Given } from "./GivenInput";
import { cellFor, ROWS_OF_A_SHEET } from "./Grid";
import { answerToRow } from "./oneRow";

/**
 * A function of single cells over whole ranges: one answer for each row and column. Arguments of one cell, one row or
 * one column serve all. A row with none of its required cells filled gives ""; a row that cannot be computed gives
 * its own problem and the rest stand.
 * @throws InputProblem when two ranges have different sizes
 */
export function overRanges(definition: ValueFunction, inputs: readonly NamedCell[], raw: readonly unknown[]): Answer[][] {
  const given = withGrids(inputs, raw);
  const { rows, columns } = commonShape(given);
  const awaited = given.flatMap(requiredRange);
  const answers = new Array<Answer[]>(rows);
  const cells = new Array<CellValue>(given.length);
  for (let row = 0; row < rows; row++) {
    // Of its full length from the start: an array that grows keeps room for sixteen more, in every row of a long column.
    const line = new Array<Answer>(columns);
    for (let column = 0; column < columns; column++) {
      for (let index = 0; index < given.length; index++) {
        const grid = given[index]?.grid;
        cells[index] = grid === undefined ? BLANK : cellFor(grid, row, column);
      }
      line[column] = isUnfilled(awaited, cells) ? "" : answerToRow(definition, inputs, cells);
    }
    answers[row] = line;
  }
  return answers;
}

type GivenCell = Given<CellInput<unknown>>;

interface AwaitedCell {
  readonly input: CellInput<unknown>;
  /** Its place in a row. */
  readonly index: number;
}

/** A required argument that is a range. */
const requiredRange = ({ input, grid }: GivenCell, index: number): AwaitedCell[] =>
  !input.optional && grid !== undefined && (grid.rows > 1 || grid.columns > 1) ? [{ input, index }] : [];

/**
 * True where nothing has been entered in a row yet: one required cell at least is blank, and the others are blank or 0,
 * which is how hosts hand blank cells over to inputs for which 0 is a real value.
 */
function isUnfilled(awaited: readonly AwaitedCell[], cells: readonly CellValue[]): boolean {
  let blanks = 0;
  for (const { input, index } of awaited) {
    const value = cells[index] as CellValue;
    if (input.isBlank(value)) blanks++;
    else if (value !== 0) return false;
  }
  return blanks > 0;
}

function commonShape(given: readonly GivenCell[]): { rows: number; columns: number } {
  const ranges = given.flatMap(({ name, grid }) => (grid === undefined ? [] : [{ argument: name, grid, rows: grid.rows, columns: grid.columns }]));
  const widest = (side: "rows" | "columns"): number => Math.max(1, ...ranges.map((range) => range[side]));
  const shape = { rows: widest("rows"), columns: widest("columns") };
  for (const side of ["rows", "columns"] as const) {
    const largest = ranges.find((range) => range[side] === shape[side]);
    const misfit = ranges.find((range) => range[side] !== 1 && range[side] !== shape[side]);
    if (largest !== undefined && misfit !== undefined) throw shapesDoNotFit(largest, misfit);
  }
  // Whole columns are answered as far down as any of them is filled.
  const rows = shape.rows < ROWS_OF_A_SHEET ? shape.rows : Math.max(...ranges.map(({ grid }) => grid.filledRows()));
  return { rows, columns: shape.columns };
}
