import { cellArea, cellAt, cellsOfArea } from "../../workbook/cellArea";
import { slideFormula } from "../../workbook/slideFormula";
import type { RangeReading, Workbook } from "../../workbook/Workbook";
import { RECORD_TITLE, SHEET_LABEL } from "./calculationRecord";
import { FILLED_DOWN } from "./recordRows";

// How records are named, numbered ones too.
const RECORD_NAME = / record( \(\d+\))?$/i;

/**
 * The cell formulas of a sheet by cell, as its calculation records in the workbook list them. A cell that two records give differently is left out:
 * which of them holds cannot be told.
 */
export async function recordedFormulas(workbook: Workbook, sheet: string): Promise<ReadonlyMap<string, string>> {
  const found = new Map<string, string>();
  const doubtful = new Set<string>();
  for (const name of (await workbook.sheetNames()).filter((one) => RECORD_NAME.test(one)))
    for (const [cell, formula] of formulasIn(await workbook.readUsed(name), sheet)) {
      if ((found.get(cell) ?? formula) !== formula) doubtful.add(cell);
      found.set(cell, formula);
    }
  for (const cell of doubtful) found.delete(cell);
  return found;
}

/** @param sheet whose record it has to be */
export function formulasIn({ rows }: Pick<RangeReading, "rows">, sheet: string): ReadonlyMap<string, string> {
  const lines = rows.map((row) => row.map(({ value }) => String(value ?? "")));
  const isItsRecord = lines[0]?.[0] === RECORD_TITLE && lines.some(([label, value]) => label === SHEET_LABEL && value === sheet);
  if (!isItsRecord) return new Map();
  const entries: { cells: string; typed: string; about: string }[] = [];
  for (const [cells = "", , typed = "", , , about = ""] of lines) {
    const last = entries.at(-1);
    if (cellArea(cells) !== undefined && typed.startsWith("=")) entries.push({ cells, typed, about });
    // A long formula goes on in the next rows.
    else if (cells === "" && typed !== "" && last !== undefined) last.typed += typed;
  }
  return new Map(entries.flatMap(({ cells, typed, about }) => formulasOf(cells, typed, about.startsWith(FILLED_DOWN))));
}

function formulasOf(cells: string, typed: string, isFilledDown: boolean): [string, string][] {
  const area = cellArea(cells);
  if (area === undefined) return [];
  if (!isFilledDown) return [[cellAt(area.row, area.column), typed]];
  return cellsOfArea(area).map(([cell = ""], down) => [cell, slideFormula(typed, { rows: down, columns: 0 }, new Set())]);
}
