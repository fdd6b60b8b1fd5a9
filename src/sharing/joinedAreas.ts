import { areaNamed } from "../workbook/areaNamed";
import { rangeOf, type CellArea } from "../workbook/cellArea";
import type { CellContent, FrozenArea } from "../workbook/Workbook";

interface Block extends CellArea {
  readonly values: CellContent[][];
}

/**
 * Areas of single cells that stand beside or below one another, joined to blocks without a gap, so that a host is told of few areas. What a spill
 * fills stays an area of its own: it goes as a whole. Takes time in proportion to the cells.
 */
export function joinedAreas(areas: readonly FrozenArea[]): FrozenArea[] {
  const whole: FrozenArea[] = [];
  const byRow = new Map<number, Block[]>();
  for (const area of areas) {
    const { row, column, rows, columns } = areaNamed(area.range);
    if (rows * columns > 1) {
      whole.push(area);
      continue;
    }
    const cell: Block = { row, column, rows, columns, values: [[area.values[0]?.[0] ?? null]] };
    const inRow = byRow.get(row);
    if (inRow === undefined) byRow.set(row, [cell]);
    else inRow.push(cell);
  }
  const blocks: Block[] = [];
  let above = new Map<string, Block>();
  for (const row of [...byRow.keys()].sort((one, other) => one - other)) {
    const here = new Map<string, Block>();
    for (const run of runsIn(byRow.get(row) ?? [])) {
      const key = `${run.column} ${run.columns}`;
      const upper = above.get(key);
      if (upper === undefined || upper.row + upper.rows !== row) {
        here.set(key, run);
        continue;
      }
      upper.values.push(...run.values);
      here.set(key, { ...upper, rows: upper.rows + 1 });
      above.delete(key);
    }
    blocks.push(...above.values());
    above = here;
  }
  blocks.push(...above.values());
  return [...whole, ...blocks.map(({ values, ...area }) => ({ range: rangeOf(area), values }))];
}

/** The cells of one row, those beside one another together. */
function runsIn(cells: readonly Block[]): Block[] {
  const runs: Block[] = [];
  for (const cell of [...cells].sort((one, other) => one.column - other.column)) {
    const last = runs.at(-1);
    if (last === undefined || last.column + last.columns !== cell.column) {
      runs.push(cell);
      continue;
    }
    last.values[0]?.push(cell.values[0]?.[0] ?? null);
    runs[runs.length - 1] = { ...last, columns: last.columns + 1 };
  }
  return runs;
}
