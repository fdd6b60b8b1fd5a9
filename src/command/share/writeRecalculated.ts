import { areaNamed } from "../../workbook/areaNamed";
import { cellsOfArea } from "../../workbook/cellArea";
import type { CellChange } from "../../xlsx/package/cells/CellChange";
import type { BookSheet } from "../book/Book";
import type { OpenBook } from "../book/openBook";
import { fileValue } from "./fileValue";

/** Puts what was calculated here beside the formulas of the file. */
export async function writeRecalculated({ file }: OpenBook, sheets: readonly BookSheet[]): Promise<void> {
  for (const sheet of sheets) await file.changeCells(sheet.name, valuesHere(sheet));
}

function valuesHere({ reading, cells: inFile }: BookSheet): CellChange[] {
  const cells = reading.rows.flat();
  const fillsOf = new Map(
    inFile.flatMap(({ cell, fills, spills, formula }) => (spills ? [[cell, { fills: fills.replaceAll("$", ""), formula }]] : [])),
  );
  const filled = new Set(
    cells.flatMap(({ cell, spill }) => [spill, fillsOf.get(cell)?.fills ?? ""].flatMap((range) => (range === "" ? [] : cellsOfArea(areaNamed(range)).flat()))), // prettier-ignore
  );
  return cells
    .filter(({ cell, formula }) => formula !== "" || filled.has(cell))
    .map((one): CellChange => {
      const value = fileValue(one);
      const before = fillsOf.get(one.cell);
      const array = one.spill === "" ? one.cell : one.spill;
      if (before === undefined || before.fills === array) return { cell: one.cell, content: { kind: "recalculated", value } };
      return { cell: one.cell, content: { kind: "formula", formula: before.formula, value, array, spills: true } };
    });
}
