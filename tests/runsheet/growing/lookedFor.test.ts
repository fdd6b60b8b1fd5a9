// Mending writes over something typed only where the sheet's own formulas look for a formula.
import { buildRunSheet } from "../../../src/runsheet/buildRunSheet";
import { planGrowth, type PlannedGrowth } from "../../../src/runsheet/growing/planGrowth";
import { checkOptions } from "../../../src/runsheet/options/checkOptions";
import { areaNamed } from "../../../src/workbook/areaNamed";
import { cellAt, rangeOf } from "../../../src/workbook/cellArea";
import type { RangeReading } from "../../../src/workbook/Workbook";
import { reading } from "../../sharing/MemoryWorkbook";

const options = checkOptions({ kind: "charring", weighIns: 6, intervalMinutes: 20, readability: 0.01, vessel: "tin", replicates: 3 });
const plan = buildRunSheet(options);

/** The sheet as planned, its formulas written otherwise, and something typed over two of them. */
function mended(
  formulaOf: (formula: string) => string,
  typed: Readonly<Record<string, { value?: number | string; formula?: string }>>,
): PlannedGrowth {
  const held = new Map(
    plan.cells.map(({ cell, content = null, formula }) => [cell, { value: content, formula: formula === undefined ? "" : formulaOf(formula) }]),
  );
  for (const [cell, { value = null, formula = "" }] of Object.entries(typed)) held.set(cell, { value, formula });
  const areas = [...held.keys()].map(areaNamed);
  const [rows, columns] = [Math.max(...areas.map(({ row }) => row)) + 1, Math.max(...areas.map(({ column }) => column)) + 1];
  const read: RangeReading = {
    sheet: "Run",
    range: rangeOf({ row: 0, column: 0, rows, columns }),
    rows: Array.from({ length: rows }, (_, row) =>
      Array.from({ length: columns }, (_cell, column) => reading(cellAt(row, column), held.get(cellAt(row, column)) ?? {})),
    ),
  };
  return planGrowth(read, { from: options, to: options }, true);
}

const typed = { F13: { value: 72.3 }, G13: { value: "oak" }, H13: { formula: "=84.17-31.42" } };

test("where they look, what was typed over gets its formula back", () => {
  const { formulas, unlookedFor } = mended((formula) => formula, typed);
  expect([formulas.filter((cell) => cell in typed), unlookedFor]).toEqual([["F13", "G13", "H13"], []]);
});

test("where they look a column further, as after one was put in, nothing typed is written over, and what is blank gets its formula", () => {
  const aside = (formula: string): string =>
    formula.replace(/ISFORMULA\([^()]*\)/g, (asked) => asked.replace(/\b([F-N])(?=\$?\d)/g, (at) => String.fromCharCode(at.charCodeAt(0) + 3)));
  const { formulas, unlookedFor } = mended(aside, { ...typed, F14: {} });
  expect(unlookedFor).toEqual(["F13", "G13", "H13"]);
  expect(formulas).toContain("F14");
});

test("on a sheet where no formula looks, because all were pasted over as values, they are put back", () => {
  const { formulas, unlookedFor } = mended(() => "", typed);
  expect(unlookedFor).toEqual([]);
  expect(formulas).toEqual(expect.arrayContaining(["F13", "G13", "H13", "A2"]));
});
