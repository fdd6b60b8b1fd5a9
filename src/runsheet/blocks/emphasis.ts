import type { Emphasis } from "../../workbook/SheetPlan";
import { any } from "../expressions/choices";
import { cell, fixed, fn, is, range, type Cell } from "../expressions/Expression";
import { formulaText, placeOf } from "../expressions/formulaText";
import { CLOCK, LABEL } from "../sheet/Columns";
import type { RunSheet, Sheet } from "../sheet/RunSheet";

const begins = (at: Cell) => any(is(fn("LEFT", at, 1), "=", "▲"), is(fn("LEFT", at, 1), "=", "?"));

/** Cells that begin with the mark of a failed check. */
export const failedAt = (from: Cell, to: Cell): Emphasis => ({
  range: placeOf(range(from, to)),
  condition: formulaText(begins({ ...from, fixed: "nothing" })),
  look: "failed",
});

/** A line of the head that does. */
export const failedRow = ({ columns }: Sheet, row: number): Emphasis => ({
  range: placeOf(range(cell(row, LABEL), cell(row, columns.verdict))),
  condition: formulaText(begins(fixed(cell(row, LABEL)))),
  look: "failed",
});

/** What stands out beyond its words: failed checks and what they put in doubt, and the next row to fill in. */
export function emphasisOf(sheet: RunSheet): readonly Emphasis[] {
  const { rows, columns, tables: every, caught, working } = sheet;
  const { head, results, checks } = rows;
  const [firstCheck, lastCheck] = [checks.lines[0]?.row ?? 0, checks.lines.at(-1)?.row ?? 0];
  const shares = Object.values(results.shares);
  const [firstShare, lastShare] = [Math.min(...shares), Math.max(...shares)];
  const tables = every.map((table) => table.rows);
  const next = (first: number, last: number): Emphasis => ({
    range: placeOf(range(cell(first, LABEL), columns.box(last, sheet.options.replicates))),
    condition: formulaText(is(working.next, "=", fn("ROW"))),
    look: "next",
  });
  return [
    failedRow(sheet, head.answer),
    failedRow(sheet, head.checks),
    failedAt(cell(firstShare, CLOCK), cell(lastShare, CLOCK)),
    failedAt(cell(firstShare, columns.verdict), cell(lastShare, columns.verdict)),
    failedAt(cell(firstCheck, CLOCK), cell(lastCheck, CLOCK)),
    next(rows.drying.vessel, rows.drying.last),
    ...tables.slice(1).map(({ first, last }) => next(first, last)),
    ...(caught === undefined ? [] : [next(caught.rows.before.first, caught.rows.before.last), next(caught.rows.first, caught.rows.last)]),
  ];
}
