import { reportHtml } from "../../src/report/reportHtml";
import { buildRunSheet } from "../../src/runsheet/buildRunSheet";
import { areaNamed } from "../../src/workbook/areaNamed";
import { cellAt, rangeOf } from "../../src/workbook/cellArea";
import { reading } from "../sharing/MemoryWorkbook";
import { EXTRAS } from "./reported";

test("a run sheet with a column put in gets no report of its run: what happened is told, and its calculations are listed", () => {
  const plan = buildRunSheet({ kind: "charring", weighIns: 3, intervalMinutes: 20, readability: 0.01, vessel: "tin", replicates: 3 });
  const cells = plan.cells.map(({ cell, content = null, formula = "" }) => {
    const { row, column } = areaNamed(cell);
    const at = cellAt(row, column >= 3 ? column + 1 : column);
    return { row, ...reading(at, { value: content, formula, shown: String(content ?? "") }) };
  });
  const last = Math.max(...cells.map(({ row }) => row));
  const rows = Array.from({ length: last + 1 }, (_, at) => cells.filter(({ row }) => row === at));
  const range = rangeOf({ row: 0, column: 0, rows: last + 1, columns: 20 });
  const html = reportHtml({ sheet: "Run", range, rows }, EXTRAS);
  expect(html).toContain(
    "A column, or cells, of this run sheet were put in, taken out or moved: &quot;Retort run sheet 1, made with&quot; belongs in O1 and stands in P1. Undo that. To leave a sample out, clear its boxes; notes have rows of their own. Till then the report lists the calculations of the sheet one by one.",
  );
});
