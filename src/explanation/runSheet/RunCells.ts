import { CellProblem } from "../../cells/CellProblem";
import type { BlockCell, BoxRule } from "../../runsheet/blocks/Block";
import { balanceBlocks } from "../../runsheet/blocks/balance/planBalanceSheet";
import { everyBlock } from "../../runsheet/buildRunSheet";
import type { Cell, Range } from "../../runsheet/expressions/Expression";
import { readRunSheet, type ReadRunSheet } from "../../runsheet/reading/readRunSheet";
import type { BalanceSheet } from "../../runsheet/sheet/BalanceSheet";
import type { RunSheet } from "../../runsheet/sheet/RunSheet";
import { areaNamed } from "../../workbook/areaNamed";
import { cellAt, rangeOf } from "../../workbook/cellArea";
import type { InputCell } from "../../workbook/Workbook";
import type { Plain } from "./Plain";
import type { ValueAt } from "./workOut";

/** Where a run sheet of any size lies: its largest, 60 rounds of 6 samples, ends in column Y above row 300. */
export const RUN_SHEET_AREA = "A1:Z400";

/** A run sheet as read: what is planned in each cell, and what it holds. */
export interface RunCells<Of extends RunSheet | BalanceSheet = RunSheet> {
  readonly sheet: Of;
  readonly at: ValueAt;
  planned(row: number, column: number): BlockCell | undefined;
  /** The entry rule over a box. */
  ruleOver(row: number, column: number): BoxRule | undefined;
}

/** The same of a sheet of any kind. */
export type AnyRunCells = RunCells<RunSheet | BalanceSheet>;

/** @param held what RUN_SHEET_AREA holds @returns undefined where no run sheet that weighs samples stands there */
export function runCells(sheetName: string, held: readonly (readonly InputCell[])[]): RunCells | undefined {
  const read = readHeld(sheetName, held);
  return read.is === "whole" ? cellsOf(read.sheet, valueIn(held)) : undefined;
}

/** The same for a sheet of any kind, a balance check too. */
export function anyRunCells(sheetName: string, held: readonly (readonly InputCell[])[]): AnyRunCells | undefined {
  const read = readHeld(sheetName, held);
  return read.is === "whole" || read.is === "balance" ? cellsOf<RunSheet | BalanceSheet>(read.sheet, valueIn(held)) : undefined;
}

function readHeld(sheetName: string, held: readonly (readonly InputCell[])[]): ReadRunSheet {
  const rows = held.map((row, down) =>
    row.map(({ value, error }, across) => ({ cell: cellAt(down, across), value, error, formula: "", shown: "", message: "", spill: "" })),
  );
  const area = { ...areaNamed(RUN_SHEET_AREA), rows: rows.length, columns: rows[0]?.length ?? 0 };
  return readRunSheet({ sheet: sheetName, range: rangeOf(area), rows });
}

const valueIn =
  (held: readonly (readonly InputCell[])[]) =>
  (row: number, column: number): Plain => {
    const one = held[row - 1]?.[column];
    return one === undefined || one.error === "" ? (one?.value ?? null) : new CellProblem(one.error as CellProblem["code"], "");
  };

/** @param value what stands in a cell, rows from 1 and columns from 0 */
export function cellsOf<Of extends RunSheet | BalanceSheet>(sheet: Of, value: (row: number, column: number) => Plain): RunCells<Of> {
  const { cells, entryRules } = isOfSamples(sheet) ? everyBlock(sheet) : balanceBlocks(sheet as BalanceSheet);
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

const isOfSamples = (sheet: RunSheet | BalanceSheet): sheet is RunSheet => sheet.options.kind !== "balance";

function covers(over: Cell | Range, row: number, column: number): boolean {
  const [from, to] = over.kind === "cell" ? [over, over] : [over.from, over.to];
  return row >= from.row && row <= to.row && column >= from.column && column <= to.column;
}

export const isBox = (planned: BlockCell | undefined): boolean => planned?.style === "runBox" || planned?.style === "runBoxStart";
