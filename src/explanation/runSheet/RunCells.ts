import { CellProblem } from "../../cells/CellProblem";
import { balanceBlocks } from "../../runsheet/blocks/balance/planBalanceSheet";
import type { BlockCell, BoxRule } from "../../runsheet/blocks/Block";
import { everyBlock } from "../../runsheet/buildRunSheet";
import type { Cell, Range } from "../../runsheet/expressions/Expression";
import { readRunSheet } from "../../runsheet/reading/readRunSheet";
import type { BalanceSheet } from "../../runsheet/sheet/BalanceSheet";
import type { RunSheet } from "../../runsheet/sheet/RunSheet";
import { areaNamed } from "../../workbook/areaNamed";
import { cellAt, rangeOf } from "../../workbook/cellArea";
import type { InputCell } from "../../workbook/Workbook";
import type { Plain } from "./Plain";
import type { ValueAt } from "./workOut";

/** Where a run sheet of any size lies: its largest, 60 rounds of 6 samples, ends in column Y above row 300. */
export const RUN_SHEET_AREA = "A1:Z400";

/** A sheet of ours as read: what is planned in each cell, and what it holds. */
export interface PlannedCells<Kind extends RunSheet | BalanceSheet> {
  readonly sheet: Kind;
  readonly at: ValueAt;
  planned(row: number, column: number): BlockCell | undefined;
  /** The entry rule over a box. */
  ruleOver(row: number, column: number): BoxRule | undefined;
}

/** A run on samples. */
export type RunCells = PlannedCells<RunSheet>;
export type BalanceCells = PlannedCells<BalanceSheet>;
export type SheetCells = RunCells | BalanceCells;

/** @param held what RUN_SHEET_AREA holds @returns undefined where no run sheet of samples stands there */
export function runCells(sheetName: string, held: readonly (readonly InputCell[])[]): RunCells | undefined {
  const cells = sheetCells(sheetName, held);
  return cells && isOfSamples(cells) ? cells : undefined;
}

export const isOfSamples = (cells: SheetCells): cells is RunCells => cells.sheet.options.kind !== "balance";

/** The same of a run sheet of any kind, a balance check among them. */
export function sheetCells(sheetName: string, held: readonly (readonly InputCell[])[]): SheetCells | undefined {
  const rows = held.map((row, down) =>
    row.map(({ value, error }, across) => ({ cell: cellAt(down, across), value, error, formula: "", shown: "", message: "", spill: "" })),
  );
  const area = { ...areaNamed(RUN_SHEET_AREA), rows: rows.length, columns: rows[0]?.length ?? 0 };
  const read = readRunSheet({ sheet: sheetName, range: rangeOf(area), rows });
  if (read.is !== "whole" && read.is !== "balance") return undefined;
  const value = (row: number, column: number): Plain => {
    const one = held[row - 1]?.[column];
    return one === undefined || one.error === "" ? (one?.value ?? null) : new CellProblem(one.error as CellProblem["code"], "");
  };
  return read.is === "whole" ? cellsOf(read.sheet, value) : cellsOf(read.sheet, value);
}

/** @param value what stands in a cell, rows from 1 and columns from 0 */
export function cellsOf<Kind extends RunSheet | BalanceSheet>(sheet: Kind, value: (row: number, column: number) => Plain): PlannedCells<Kind> {
  const { cells, entryRules } = isBalance(sheet) ? balanceBlocks(sheet) : everyBlock(sheet);
  const key = (row: number, column: number): string => `${row},${column}`;
  const planned = new Map(cells.map((one) => [key(one.at.row, one.at.column), one]));
  // Of other cells the formulas are not read: each is taken to hold its own. Where one does not, what rests on it shows otherwise.
  const isFormula = (row: number, column: number): boolean => planned.get(key(row, column))?.formula !== undefined;
  return {
    sheet,
    at: Object.assign((row: number, column: number) => value(row, column), { isFormula }),
    planned: (row, column) => planned.get(key(row, column)),
    ruleOver: (row, column) => entryRules.find(({ over }) => covers(over, row, column)),
  };
}

const isBalance = (sheet: RunSheet | BalanceSheet): sheet is BalanceSheet => sheet.options.kind === "balance";

function covers(over: Cell | Range, row: number, column: number): boolean {
  const [from, to] = over.kind === "cell" ? [over, over] : [over.from, over.to];
  return row >= from.row && row <= to.row && column >= from.column && column <= to.column;
}

export const isBox = (planned: BlockCell | undefined): boolean => planned?.style === "runBox" || planned?.style === "runBoxStart";
