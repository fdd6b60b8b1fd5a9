import type { Injector } from "@univerjs/core";
import { UpdateFormulaController } from "@univerjs/sheets-formula";

/** Formulas by workbook, sheet, row and column, as the engine keeps them. */
type Formulas = Readonly<Record<string, Readonly<Record<string, Rows | null | undefined>> | null | undefined>>;
type Rows = Readonly<Record<number, Readonly<Record<number, { readonly f?: string } | null | undefined>> | null | undefined>>;

interface Move {
  readonly type: number;
  readonly unitId: string;
  readonly sheetId: string;
}

/** The one step of the engine's controller that is taken over; private there. */
interface Controller {
  _getFormulaReferenceMoveInfo(formulas: Formulas, names: unknown, move: Move): unknown;
}

/** Whether the formula of a cell, counted from 0, will be written anew once rows were put in. */
export type IsWritten = (row: number, column: number) => boolean;

/** What moves the references of formulas when cells move. */
export interface MovedReferences {
  /** Does the work, which moves cells of a sheet, and leaves as they are the references of formulas that will be written anew. */
  without(sheetId: string, isWritten: IsWritten, work: () => void): void;
}

// As in the engine's FormulaReferenceMoveType (0.25.1): rows and columns put in and taken out; a sheet renamed, and removed.
const LINES: readonly number[] = [3, 4, 5, 6];
const SHEETS: readonly number[] = [11, 12];

/**
 * Mends a cost of engine 0.25.1: when rows are put in or a sheet is renamed, it takes apart every formula of the workbook to see which references
 * move. Gives it those that can: of the sheet itself where its rows or columns move, and of any sheet where they name a sheet.
 */
export function moveReferences(injector: Injector): MovedReferences {
  const controller = injector.get(UpdateFormulaController) as unknown as Controller;
  if (typeof controller._getFormulaReferenceMoveInfo !== "function") throw new Error("the engine moves no references");
  const original = controller._getFormulaReferenceMoveInfo.bind(controller);
  let left: { readonly sheetId: string; readonly isWritten: IsWritten } | undefined;
  controller._getFormulaReferenceMoveInfo = (formulas, names, move) => {
    const { type, unitId, sheetId } = move;
    if (![...LINES, ...SHEETS].includes(type)) return original(formulas, names, move);
    const isOwn = (unit: string, sheet: string): boolean => LINES.includes(type) && unit === unitId && sheet === sheetId;
    return original(
      mapped(formulas, (rows, unit, sheet) => {
        if (!isOwn(unit, sheet)) return only(rows, ({ f = "" }) => f.includes("!"));
        return left?.sheetId === sheet ? only(rows, (_formula, row, column) => left?.isWritten(row, column) === false) : rows;
      }),
      names,
      move,
    );
  };
  return {
    without: (sheetId, isWritten, work) => {
      left = { sheetId, isWritten };
      try {
        work();
      } finally {
        left = undefined;
      }
    },
  };
}

const mapped = (formulas: Formulas, of: (rows: Rows, unit: string, sheet: string) => Rows): Formulas =>
  Object.fromEntries(
    Object.entries(formulas).map(([unit, sheets]) => [
      unit,
      Object.fromEntries(Object.entries(sheets ?? {}).map(([sheet, rows]) => [sheet, of(rows ?? {}, unit, sheet)])),
    ]),
  );

function only(rows: Rows, isKept: (formula: { readonly f?: string }, row: number, column: number) => boolean): Rows {
  const kept: Record<number, Record<number, { readonly f?: string }>> = {};
  for (const [row, cells] of Object.entries(rows))
    for (const [column, formula] of Object.entries(cells ?? {}))
      if (formula && isKept(formula, Number(row), Number(column))) (kept[Number(row)] ??= {})[Number(column)] = formula;
  return kept;
}
