import { circles } from "../../sharing/circles";
import type { DefinedName } from "../../workbook/CellsBeside";
import { nameOnSheet } from "../../workbook/nameOnSheet";
import type { RangeReading, Workbook } from "../../workbook/Workbook";
import { calculatedFromThese } from "./calculatedFromThese";
import { notGiven, type CellNotGiven } from "./notGiven";
import type { ReadBook } from "./ReadBook";
import { sheetsNeeded } from "./sheetsNeeded";

// Each takes a request or two.
const MOST_SHEETS = 20;
const MOST_CELLS = 200_000;

export interface StaleElsewhere {
  /** Cells of other sheets that the shared ones are calculated from and that hold something else than their formulas give. */
  readonly cells: readonly CellNotGiven[];
  /** False where there is more to follow than is read. */
  readonly isAll: boolean;
}

/**
 * Follows what some sheets are calculated from to the other sheets of their workbook, at whatever distance.
 * @param names that their formulas may use
 */
export async function staleElsewhere(workbook: Workbook, shared: readonly RangeReading[], names: readonly DefinedName[]): Promise<StaleElsewhere> {
  const of = shared.map(({ sheet }) => ({ name: sheet }));
  const isShared = new Set(of.map(({ name }) => name));
  const readings = new Map(shared.map((reading) => [reading.sheet, reading]));
  const order = await workbook.sheetNames();
  const bookNow = (): ReadBook => ({
    sheets: order.map((name) => ({ name, reading: readings.get(name) ?? { sheet: name, range: "", rows: [] } })),
    ...{ names, tables: [], colouring: [] },
  });
  let [cells, isAll] = [0, true];
  for (;;) {
    const needed = sheetsNeeded(bookNow(), of);
    const ahead = order.filter((name) => needed.has(name.toLowerCase()) && !readings.has(name));
    const [next] = ahead;
    if (next === undefined) break;
    if (readings.size - isShared.size >= MOST_SHEETS || cells >= MOST_CELLS) {
      isAll = false;
      break;
    }
    const reading = await workbook.readUsed(next);
    readings.set(next, reading);
    cells += reading.rows.reduce((sum, row) => sum + row.length, 0);
  }
  const others = [...readings.keys()].filter((name) => !isShared.has(name));
  const sheets = order.flatMap((name) => readings.get(name) ?? []);
  const found = others.length === 0 ? [] : notGiven({ sheets, names }, { sheets: others });
  const around = new Set((found.length === 0 ? [] : circles(sheets, { names })).map(({ sheet, cell }) => nameOnSheet(sheet, cell)));
  const stale = found.filter(({ sheet, cell }) => !around.has(nameOnSheet(sheet, cell)));
  return { cells: calculatedFromThese(bookNow(), { sheets: [...isShared] }, stale), isAll };
}
