import { areaNamed } from "../../workbook/areaNamed";
import { cellsOfArea } from "../../workbook/cellArea";
import type { CellChange } from "../../xlsx/package/CellChange";
import type { BookSheet } from "../book/Book";
import type { OpenBook } from "../book/openBook";
import { fileValue } from "./fileValue";

/** Puts what was calculated here beside the formulas of the file. */
export async function writeRecalculated({ file }: OpenBook, sheets: readonly BookSheet[]): Promise<void> {
  for (const sheet of sheets) await file.changeCells(sheet.name, valuesHere(sheet));
}

function valuesHere({ reading }: BookSheet): CellChange[] {
  const cells = reading.rows.flat();
  const filled = new Set(cells.flatMap(({ spill }) => (spill === "" ? [] : cellsOfArea(areaNamed(spill)).flat())));
  return cells
    .filter(({ cell, formula }) => formula !== "" || filled.has(cell))
    .map((one) => ({ cell: one.cell, content: { kind: "recalculated", value: fileValue(one) } }));
}
