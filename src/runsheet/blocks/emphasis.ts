import type { Emphasis } from "../../workbook/SheetPlan";
import { any } from "../expressions/choices";
import { cell, fixed, fn, is, range, type Cell } from "../expressions/Expression";
import { formulaText, placeOf } from "../expressions/formulaText";
import { CLOCK, LABEL } from "../sheet/Columns";
import type { RunSheet } from "../sheet/RunSheet";

/** What stands out beyond its words: failed checks and what they put in doubt, and the next row to fill in. */
export function emphasisOf(sheet: RunSheet): readonly Emphasis[] {
  const { rows, columns, drying, charring, ashing, working } = sheet;
  const { head, results, checks } = rows;
  const begins = (at: Cell) => any(is(fn("LEFT", at, 1), "=", "▲"), is(fn("LEFT", at, 1), "=", "?"));
  const failed = (from: Cell, to: Cell, at: Cell): Emphasis => ({
    range: placeOf(range(from, to)),
    condition: formulaText(begins({ ...at, fixed: "nothing" })),
    look: "failed",
  });
  const whole = (row: number): Emphasis => ({
    range: placeOf(range(cell(row, LABEL), cell(row, columns.verdict))),
    condition: formulaText(begins(fixed(cell(row, LABEL)))),
    look: "failed",
  });
  const [firstCheck, lastCheck] = [checks.lines[0]?.row ?? 0, checks.lines.at(-1)?.row ?? 0];
  const shares = Object.values(results.shares);
  const [firstShare, lastShare] = [Math.min(...shares), Math.max(...shares)];
  const tables = [drying, charring, ashing].flatMap((table) => (table === undefined ? [] : [table.rows]));
  const next = (first: number, last: number): Emphasis => ({
    range: placeOf(range(cell(first, LABEL), columns.box(last, sheet.options.replicates))),
    condition: formulaText(is(working.next, "=", fn("ROW"))),
    look: "next",
  });
  return [
    whole(head.answer),
    whole(head.checks),
    failed(cell(firstShare, CLOCK), cell(lastShare, CLOCK), cell(firstShare, CLOCK)),
    failed(cell(firstShare, columns.verdict), cell(lastShare, columns.verdict), cell(firstShare, columns.verdict)),
    failed(cell(firstCheck, CLOCK), cell(lastCheck, CLOCK), cell(firstCheck, CLOCK)),
    next(rows.drying.vessel, rows.drying.last),
    ...tables.slice(1).map(({ first, last }) => next(first, last)),
  ];
}
