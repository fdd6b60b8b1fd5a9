import { buildRunSheet } from "../../../src/runsheet/buildRunSheet";
import { checkOptions } from "../../../src/runsheet/options/checkOptions";
import { RUN_KINDS } from "../../../src/runsheet/options/RunSheetOptions";
import { readRunSheet } from "../../../src/runsheet/reading/readRunSheet";
import { balanceLayout, layout } from "../../../src/runsheet/sheet/layout";
import { isSameFormula } from "../../../src/workbook/SheetGrowth";
import { slideFormula } from "../../../src/workbook/slideFormula";
import type { CellReading } from "../../../src/workbook/Workbook";
import { withRowsMoved } from "../../host/moveRows";

jest.setTimeout(60_000);

const usual = { intervalMinutes: 20, readability: 0.01, vessel: "tin", replicates: 2, weighIns: 4 } as const;

// What only the search for samples crosswise asks.
const CROSSWISE = "*(4*(ABS(";

interface Held {
  readonly formula?: string;
  readonly content?: string | number | boolean;
}

/** A copy of a row put in below it, as a spreadsheet does: references to what moves follow, and the copy's relative ones slide by a row. */
function copyIn(cells: ReadonlyMap<string, Held>, row: number): Map<string, Held> {
  const rowOf = (cell: string): number => Number(cell.replace(/\D/g, ""));
  const at = (cell: string, now: number): string => cell.replace(/\d+/, String(now));
  const moved = new Map(
    [...cells].map(([cell, held]) => [
      at(cell, rowOf(cell) > row ? rowOf(cell) + 1 : rowOf(cell)),
      held.formula === undefined ? held : { formula: withRowsMoved(held.formula, true, "Run", row, 1) },
    ]),
  );
  for (const [cell, held] of [...moved].filter(([one]) => rowOf(one) === row))
    moved.set(at(cell, row + 1), held.formula === undefined ? held : { formula: slideFormula(held.formula, { rows: 1, columns: 0 }, new Set()) });
  return moved;
}

/** Rows that are asked one by one whether they were deleted cannot count one that somebody put in, and may take out again. */
const rowsOnce = (formula: string): string => formula.replace(/ROWS\([^(),]*\)(?:\+ROWS\([^(),]*\))+/, "ROWS()");

/** Formulas of a sheet that are not those of the plan, and the place of each. */
function differences(cells: ReadonlyMap<string, Held>, plan: ReturnType<typeof buildRunSheet>): string[] {
  return plan.cells.flatMap(({ cell, formula }) => {
    const held = cells.get(cell)?.formula ?? "";
    // Cells that are asked one by one, for a spreadsheet that takes no areas, cannot count one more; the areas beside them do.
    const isByCells = formula?.includes("AND(ISFORMULA(") === true && formula.includes('"","') && !formula.includes("typed over");
    // Rows before and after cannot both reach to the total, below which stand headings: where their counts differ the check says that it did
    // not look for samples crosswise (tests/runsheet/checks/checks.test.ts), till the pane takes the row up.
    const isCrosswise = formula?.includes(CROSSWISE) === true && formula.endsWith(",0-1)") && held.endsWith(",0-1)");
    return formula === undefined || isByCells || isCrosswise || isSameFormula(rowsOnce(held), rowsOnce(formula))
      ? []
      : [`${cell}: ${held} for ${formula}`];
  });
}

describe.each(RUN_KINDS)("%s: a copy of the last row above the total, put in by hand", (kind) => {
  const options = checkOptions({ ...usual, kind, ...(kind === "balance" && { replicates: 1 }) });
  const plan = buildRunSheet(options);
  const rows = layout(options);
  const { last } = kind === "balance" ? balanceLayout(options).rounds : rows.drying;
  const made: ReadonlyMap<string, Held> = new Map(plan.cells.map(({ cell, formula, content }) => [cell, { ...(formula && { formula }), ...(content !== undefined && { content }) }])); // prettier-ignore
  const cautionsAfter = rows.order[rows.order.indexOf("cautions") - 1];
  const larger = (more: object) => buildRunSheet({ ...options, ...more, ...(cautionsAfter && { cautionsAfter }) });

  test("makes every formula that of a sheet with a round more", () => {
    expect(differences(made, plan)).toEqual([]);
    const once = copyIn(made, last);
    expect(differences(once, larger({ weighIns: 5 }))).toEqual([]);
    expect(differences(copyIn(once, last + 1), larger({ weighIns: 6 }))).toEqual([]);
  });

  test("is read as a sheet with that round", () => {
    const cells = [...copyIn(made, last)].map(([cell, { formula = "", content = null }]): CellReading => ({
      cell,
      formula,
      value: content,
      shown: "",
      error: "",
      message: "",
      spill: "",
    }));
    const first = cells.filter(({ cell }) => /^[A-Z]+1$/.test(cell));
    const others = cells.filter(({ cell }) => !/^[A-Z]+1$/.test(cell));
    const read = readRunSheet({ sheet: "Run", range: "A1:Z200", rows: [first, others] });
    expect((read.is === "whole" || read.is === "balance") && read.sheet.options.weighIns).toBe(5);
  });
});
