import { cellArea, type CellArea } from "../../cellArea";
import type { PlannedCell } from "../../SheetPlan";
import { cellEntry } from "./cellEntry";
import { CELLS_A_REQUEST, rowBands } from "../inRequests";

/** What goes into a rectangle of cells in one write; null leaves a cell as it is. */
export interface CellBlock {
  readonly area: CellArea;
  readonly entries: (string | number | boolean | null)[][];
}

/** The planned contents in few writes: one for each run of rows that follow each other without a gap. */
export function cellBlocks(cells: readonly PlannedCell[]): CellBlock[] {
  const filled = cells.flatMap((planned) => {
    const entry = planned.formula ?? (planned.content === undefined ? undefined : cellEntry(planned.content));
    const at = cellArea(planned.cell);
    return entry === undefined || at === undefined ? [] : [{ row: at.row, column: at.column, entry }];
  });
  const entries = new Map(filled.map(({ row, column, entry }) => [`${row} ${column}`, entry]));
  return runsOfRows(filled).flatMap((run) =>
    rowBands(run, CELLS_A_REQUEST).map((area) => ({
      area,
      entries: Array.from({ length: area.rows }, (_row, down) =>
        Array.from({ length: area.columns }, (_column, across) => entries.get(`${area.row + down} ${area.column + across}`) ?? null),
      ),
    })),
  );
}

function runsOfRows(cells: readonly { readonly row: number; readonly column: number }[]): CellArea[] {
  const runs: { first: number; last: number; left: number; right: number }[] = [];
  for (const { row, column } of [...cells].sort((one, other) => one.row - other.row)) {
    const run = runs.at(-1);
    if (run === undefined || row > run.last + 1) runs.push({ first: row, last: row, left: column, right: column });
    else Object.assign(run, { last: row, left: Math.min(run.left, column), right: Math.max(run.right, column) });
  }
  return runs.map(({ first, last, left, right }) => ({ row: first, column: left, rows: last - first + 1, columns: right - left + 1 }));
}
