import type { RangeFunction } from "../functions/cellFunction";
import type { CellInput } from "../inputs/Input";
import { shapesDoNotFit } from "../problems/inputProblems";
import { leaving, problemOf, type Answer } from "./CellProblem";
import type { GivenInput } from "./GivenInput";
import { ROWS_OF_A_SHEET, type Grid } from "./Grid";
import { cellFor, readInputs } from "./readInputs";

/**
 * A function of single cells over whole ranges: one answer for each row and column. Arguments of one cell, one row or
 * one column serve all. A row with none of its required cells filled gives ""; a row that cannot be computed gives
 * its own problem and the rest stand.
 * @throws InputProblem when two ranges have different sizes
 */
export function overRanges(definition: RangeFunction, given: readonly GivenInput[]): Answer[][] {
  if (given.every(isOneCell)) return [[answerAt(definition, given, 0, 0)]];
  const { rows, columns } = commonShape(given);
  const awaited = given.flatMap(requiredRange);
  const answers = new Array<Answer[]>(rows);
  for (let row = 0; row < rows; row++) {
    // Of its full length from the start: an array that grows keeps room for sixteen more, in every row of a long column.
    const line = new Array<Answer>(columns);
    for (let column = 0; column < columns; column++) line[column] = isUnfilled(awaited, row, column) ? "" : answerAt(definition, given, row, column);
    answers[row] = line;
  }
  return answers;
}

const isOneCell = ({ grid }: GivenInput): boolean => grid === undefined || (grid.rows === 1 && grid.columns === 1);

function answerAt(definition: RangeFunction, given: readonly GivenInput[], row: number, column: number): Answer {
  try {
    return leaving(definition.compute(readInputs(given, row, column)));
  } catch (thrown) {
    return problemOf(thrown);
  }
}

interface AwaitedRange {
  readonly input: CellInput<unknown>;
  readonly grid: Grid;
}

/** A required argument that is a range. */
const requiredRange = ({ input, grid }: GivenInput): AwaitedRange[] =>
  input.shape === "cell" && !input.optional && grid !== undefined && (grid.rows > 1 || grid.columns > 1) ? [{ input, grid }] : [];

/**
 * True where nothing has been entered in a row yet: one required cell at least is blank, and the others are blank or 0,
 * which is how hosts hand blank cells over to inputs for which 0 is a real value.
 */
function isUnfilled(awaited: readonly AwaitedRange[], row: number, column: number): boolean {
  let blanks = 0;
  for (const { input, grid } of awaited) {
    const value = cellFor(grid, row, column);
    if (input.isBlank(value)) blanks++;
    else if (value !== 0) return false;
  }
  return blanks > 0;
}

function commonShape(given: readonly GivenInput[]): { rows: number; columns: number } {
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
