import { areaNamed } from "../workbook/areaNamed";
import { cellArea, cellAt, cellsOfArea, COLUMNS_OF_A_SHEET, covers, rangeOf, ROWS_OF_A_SHEET } from "../workbook/cellArea";
import { FIRST_SCREEN, type OutOfView } from "../workbook/OutOfView";
import type { CellReading, RangeReading } from "../workbook/Workbook";
import { bannerCell } from "./bannerCell";

const UNSEEN = " ";

/**
 * Where a banner stands on a sheet, of which the reading may leave blank cells out: where bannerCell has it, were what nobody sees filled, and else
 * in the first blank cell of the first screen.
 */
export function bannerPlace(reading: RangeReading, isStill: boolean, unseen: OutOfView): string {
  const isUnseen = (row: number, column: number): boolean =>
    unseen.hasRow(row) || unseen.hasColumn(column) || unseen.merged.some((area) => covers(area, row, column));
  const wished = bannerCell(inView(reading, isUnseen), isStill);
  const place = cellArea(wished);
  // Where it takes the place of something on a run sheet, that stands in view.
  const holds = reading.rows.some((row) => row.some((one) => one.cell === wished && (one.formula !== "" || (one.value ?? "") !== "")));
  const fits = place !== undefined && place.column < COLUMNS_OF_A_SHEET && (holds || !isUnseen(place.row, place.column));
  if (fits) return wished;
  return firstFree(reading, isUnseen) ?? wished;
}

/** The first blank cell that is seen, row by row, where none near the top is. */
function firstFree({ rows }: Pick<RangeReading, "rows">, isUnseen: (row: number, column: number) => boolean): string | undefined {
  const taken = new Set<string>();
  let last = 0;
  for (const { cell, spill } of rows.flat()) {
    taken.add(cell);
    last = Math.max(last, cellArea(cell)?.row ?? 0);
    if (spill !== "") for (const one of cellsOfArea(areaNamed(spill)).flat()) taken.add(one);
  }
  for (let row = 0; row < Math.min(last + 2, ROWS_OF_A_SHEET); row++)
    for (let column = 0; column < FIRST_SCREEN.columns; column++)
      if (!isUnseen(row, column) && !taken.has(cellAt(row, column))) return cellAt(row, column);
  return undefined;
}

/** The top of a sheet with every cell of it, blank ones too. What nobody sees there is as good as filled. */
function inView({ rows }: RangeReading, isUnseen: (row: number, column: number) => boolean): Pick<RangeReading, "range" | "rows"> {
  const found = new Map<string, CellReading>();
  let [first, last, columns] = [Number.POSITIVE_INFINITY, 0, 0];
  const note = (row: number, column: number): void =>
    void ([first, last, columns] = [Math.min(first, row), Math.max(last, row), Math.max(columns, column + 1)]);
  for (const line of rows)
    for (const reading of line) {
      const place = cellArea(reading.cell);
      if (place === undefined || (reading.formula === "" && (reading.value === null || reading.value === ""))) continue;
      note(place.row, place.column);
      if (place.row < FIRST_SCREEN.rows) found.set(reading.cell, reading);
    }
  if (columns === 0 && !isUnseen(0, 0)) return { range: "", rows: [] };
  for (let row = 0; row < FIRST_SCREEN.rows; row++)
    for (let column = 0; column < Math.max(columns, FIRST_SCREEN.columns); column++) {
      const cell = cellAt(row, column);
      if (!isUnseen(row, column) || found.has(cell)) continue;
      note(row, column);
      found.set(cell, { ...blank(cell), value: UNSEEN, shown: UNSEEN });
    }
  const shown = Math.max(FIRST_SCREEN.rows, first + 1);
  return {
    range: rangeOf({ row: first, column: 0, rows: Math.max(last + 1, shown) - first, columns }),
    rows: [
      ...Array.from({ length: shown - first }, (_, down) =>
        Array.from({ length: columns }, (_, column) => found.get(cellAt(first + down, column)) ?? blank(cellAt(first + down, column))),
      ),
      // Formulas further down may refer to what is in view.
      ...rows.filter(([start]) => (cellArea(start?.cell ?? "")?.row ?? 0) >= shown),
    ],
  };
}

const blank = (cell: string): CellReading => ({ cell, formula: "", value: null, shown: "", error: "", message: "", spill: "" });
