import { CellProblem } from "../../../src/cells/CellProblem";
import { everyBlock } from "../../../src/runsheet/buildRunSheet";
import { expressionOfFormula } from "../../../src/explanation/runSheet/expressionOfFormula";
import { workOut } from "../../../src/explanation/runSheet/workOut";
import type { Plain } from "../../../src/explanation/runSheet/Plain";
import { cell, type Cell } from "../../../src/runsheet/expressions/Expression";
import { formulaText, placeOf } from "../../../src/runsheet/expressions/formulaText";
import { branchWithoutCalls } from "../../../src/sharing/plain/change/branchWithoutCalls";
import { areaNamed } from "../../../src/workbook/areaNamed";
import { cellAt } from "../../../src/workbook/cellArea";
import type { CellReading, RangeReading } from "../../../src/workbook/Workbook";
import type { PlainSheets } from "../../../src/sharing/plain/plainSheets";
import type { PlainRun } from "../../runsheet/plainRun";

export const SHEET = "Run";

/** A run sheet worked out without a spreadsheet, as a workbook would read it. */
export function readingOf(run: PlainRun): RangeReading {
  const { cells } = everyBlock(run.sheet);
  const reading = (at: Cell, formula: string): CellReading => {
    const value = run.value(at);
    const error = value instanceof CellProblem ? value.code : "";
    return {
      cell: placeOf({ ...at, fixed: "nothing" }),
      formula,
      value: value instanceof CellProblem ? null : value,
      shown: "",
      error,
      message: "",
      spill: "",
    };
  };
  const rows = cells.map(({ at, formula }) => reading(at, formula === undefined ? "" : formulaText(formula)));
  const clocks = run.sheet.tables.flatMap(({ rows: { first, last } }) =>
    Array.from({ length: last - first + 1 }, (_, index) => cell(first + index, 1)),
  );
  const typed = clocks.filter((at) => !rows.some((one) => one.cell === placeOf(at))).map((at) => reading(at, ""));
  return { sheet: SHEET, range: "A1:Z300", rows: [[...rows, ...typed]] };
}

/**
 * Which cells say that they are fixed once some inputs have changed, by the formulas of the flags: each is the largest of others, made 2
 * where any of them is above 0, or where any of them is 2, or 1 where besides its own cell has changed.
 * @param hasChanged whether a cell shows something else, or what it gives where none of our functions is asked is something else
 */
export function staleAfter({ flags, cells }: PlainSheets, hasChanged: (cell: string, isWithoutCalls?: boolean) => boolean): ReadonlySet<string> {
  const formulas = new Map(flags.flatMap((sheet) => sheet.cells.map(({ cell: at, content }) => [at, String(content)] as const)));
  const known = new Map<string, number>();
  const flagOf = (at: string): number => {
    const before = known.get(at);
    if (before !== undefined) return before;
    known.set(at, 0);
    const formula = formulas.get(at) ?? "";
    const refs = [...formula.matchAll(/'Run changes'!([A-Z]+\d+(?::[A-Z]+\d+)?)/g)].flatMap(([, one = ""]) => within(one));
    const isLeaf = refs.length === 0 && /^=IF\(IF\(/.test(formula);
    const largest = Math.max(0, ...refs.map(flagOf));
    const flag = isLeaf
      ? Number(hasChanged(at))
      : formula.includes(")=1,IF(")
        ? largest === 1
          ? 2 * Number(hasChanged(at, true))
          : largest
        : formula.includes(")>0,2,")
          ? 2 * Number(largest > 0)
          : formula.endsWith(")=2,2,0)")
            ? 2 * Number(largest === 2)
            : formula.includes(")>0,IF(")
              ? Number(largest > 0 && hasChanged(at))
              : largest;
    known.set(at, flag);
    return flag;
  };
  return new Set(cells.filter(({ cell: at }) => flagOf(at) === 2).map(({ cell: at }) => at));
}

/** What a formula of the sheet gives where none of our functions is asked, #N/A where one is. */
export function givesWithoutCalls(run: PlainRun, name: string, formula: string): Plain {
  const nothing = (): undefined => undefined;
  const text = branchWithoutCalls(formula, { sheet: SHEET, cell: name, area: name, nameOf: nothing, tableOf: nothing, spillOf: nothing }, {});
  return workOut(expressionOfFormula(`=${text?.replaceAll(`${SHEET}!`, "") ?? "NA()"}`), (row, column) => run.value(cell(row, column)));
}

function within(area: string): string[] {
  const { row, column, rows, columns } = areaNamed(area);
  return Array.from({ length: rows * columns }, (_, index) => cellAt(row + Math.floor(index / columns), column + (index % columns)));
}

export const isSameValue = (one: Plain, other: Plain): boolean =>
  one instanceof CellProblem || other instanceof CellProblem
    ? one instanceof CellProblem && other instanceof CellProblem && one.code === other.code
    : (one ?? "") === (other ?? "");
