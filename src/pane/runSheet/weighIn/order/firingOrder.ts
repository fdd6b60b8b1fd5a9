import { joinedName } from "../../../../explanation/runSheet/cellNames";
import type { RunCells } from "../../../../explanation/runSheet/RunCells";
import { weighInWords } from "../../../../problems/runsheet/weighInWords";
import type { Cell } from "../../../../runsheet/expressions/Expression";
import { LABEL } from "../../../../runsheet/sheet/Columns";
import { FIRE_COLUMNS, type Fired, type FireColumn } from "../../../../runsheet/sheet/Weighed";
import { isRowFilled, isSteady, rowsOf } from "./howFar";
import { weighed } from "./roundsOrder";
import { isBlank, step, type Skip, type Step, type Work } from "./Step";

/** What is noted of a fire before its weighing; what was seen is written on the sheet. */
const NOTED = FIRE_COLUMNS.filter((name) => name !== "seen");

/** The firings: what is noted of each, and its weighing when cold; those begun, and while they go on the next. */
export function* firings(work: Work<RunCells>, table: Fired, inUse: readonly number[], isDone: boolean): Generator<Step> {
  for (const row of rowsOf(table)) {
    const isFilled = isRowFilled(work.cells, table, row, inUse);
    if (isDone && !isFilled) return;
    if (!isFilled) yield* noted(work, table, row, []);
    yield* weighed(work, table, row, inUse, {});
  }
}

/**
 * The stages: heat, hold, cool closed, weigh, name what left. How many there are to be only the person knows, so that from the second
 * on no more can be said.
 * @returns whether the run is over, and the vessel is to be weighed again
 */
export function* stages(work: Work<RunCells>, table: Fired, inUse: readonly number[], isBegun: boolean): Generator<Step, { isOver: boolean }> {
  const { cells, isPassed } = work;
  if (!isBegun) return { isOver: false };
  const isDone = isSteady(cells, table);
  for (const row of rowsOf(table)) {
    const isFilled = isRowFilled(cells, table, row, inUse);
    if (!isFilled && (isDone || inUse.every((sample) => isPassed(table.box(row, sample))))) return { isOver: row > table.rows.first };
    const boxes = inUse.map((sample) => table.box(row, sample));
    const skips: Skip[] = row === table.rows.first || isFilled ? [] : [{ words: weighInWords.noMoreStages, over: boxes }];
    if (!isFilled) yield* noted(work, table, row, skips);
    for (const one of weighed(work, table, row, inUse, { skips }))
      yield one.change === undefined ? one : { ...one, change: { at: one.change.at, isShare: true, said: weighInWords.left } };
    const isLatest = row === table.rows.last || !isRowFilled(cells, table, row + 1, inUse);
    if (isLatest) yield named(cells, fireOf(table, row).seen);
  }
  return { isOver: inUse.length > 0 };
}

/** What left in a stage, in the person's own words. */
function named(cells: RunCells, at: Cell): Step {
  const made = step(cells, at, { kind: "words", unit: "", isOptional: true });
  const stage = cells.planned(at.row, LABEL)?.content;
  return { ...made, name: joinedName(made.name, String(stage ?? "")) };
}

function* noted({ cells }: Work<RunCells>, table: Fired, row: number, more: readonly Skip[]): Generator<Step> {
  const fire = fireOf(table, row);
  const over = NOTED.map((name) => fire[name]).filter((at) => isBlank(cells, at));
  for (const name of NOTED)
    yield step(cells, fire[name], { isOptional: true, isOfFire: true, skips: [{ words: weighInWords.toWeighing, over }, ...more] });
}

const fireOf = (table: Fired, row: number): Readonly<Record<FireColumn, Cell>> => table.fire(table.rows.fire.first + row - table.rows.first);
