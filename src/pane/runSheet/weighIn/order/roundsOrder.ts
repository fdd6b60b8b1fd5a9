import type { RunCells } from "../../../../explanation/runSheet/RunCells";
import { weighInWords } from "../../../../problems/runsheet/weighInWords";
import { cell } from "../../../../runsheet/expressions/Expression";
import { STRIP_COLUMNS, stripCell } from "../../../../runsheet/formulas/strip";
import { CLOCK } from "../../../../runsheet/sheet/Columns";
import type { StripRows } from "../../../../runsheet/sheet/layout";
import type { Weighed } from "../../../../runsheet/sheet/Weighed";
import { isRowFilled, rowsOf } from "./howFar";
import { step, type Step, type Work } from "./Step";

/** Rounds while drying: those begun, and while it goes on the next. */
export function* roundsWhileDrying(work: Work<RunCells>, inUse: readonly number[], isDone: boolean): Generator<Step> {
  const { cells } = work;
  const { drying, options } = cells.sheet;
  for (const row of rowsOf(drying)) {
    if (isDone && !isRowFilled(cells, drying, row, inUse)) return;
    const clock = cell(row, CLOCK);
    yield* weighed(work, drying, row, inUse, { clock }, function* (place, strip) {
      if (options.temperatures)
        for (const column of ["room", "warmth"] as const) yield step(cells, stripCell(strip.first + place, column), { isOptional: true });
    });
  }
}

/**
 * The boxes of one row, sample by sample, with the balance's zeros about them.
 * @param beside what is read after the weighings, before the last zero
 */
export function* weighed(
  work: Work<RunCells>,
  table: Weighed,
  row: number,
  inUse: readonly number[],
  more: Partial<Step>,
  beside?: (place: number, strip: StripRows) => Generator<Step>,
): Generator<Step> {
  const { cells } = work;
  const { first, last, strip, total } = table.rows;
  const place = row - first;
  // What was read beside a row that has others below it is left as it is.
  const isPast = row < last && isRowFilled(cells, table, row + 1, inUse);
  const { clock, ...rest } = more;
  const timed = isPast || clock === undefined ? rest : { ...rest, clock };
  if (!isPast && !isRowFilled(cells, table, row, inUse)) yield* zeros(work, strip, place, "before");
  for (const sample of inUse) {
    const lost = { at: table.lost(row, sample), said: weighInWords.lost };
    yield step(cells, table.box(row, sample), { change: lost, total, ...timed });
  }
  if (isPast || strip === undefined) return;
  if (beside !== undefined) yield* beside(place, strip);
  yield* zeros(work, strip, place, "after");
}

function* zeros({ cells }: Work<RunCells>, strip: StripRows | undefined, place: number, when: "before" | "after"): Generator<Step> {
  if (!cells.sheet.options.panZeros || strip === undefined) return;
  yield step(cells, cell(strip.first + place, STRIP_COLUMNS[when]), { isOptional: true });
}
