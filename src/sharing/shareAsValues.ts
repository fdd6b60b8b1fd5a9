import { freeSheetName, LONGEST_SHEET_NAME } from "../workbook/freeSheetName";
import type { Workbook } from "../workbook/Workbook";
import { calculationRecord } from "./calculationRecord";
import { readSheet } from "./readSheet";

export interface Shared {
  /** The name of the copy. */
  readonly copy: string;
  /** The name of the calculation record. */
  readonly record: string;
  /** Cells of the copy in which a value took the place of a cell formula. */
  readonly frozenCells: number;
}

/**
 * Copies a sheet for people without the add-in: numbers stay, cell formulas go, and a calculation record says how each
 * value came about. Everything is read before the copy is made, so that a refusal leaves nothing behind.
 * @param date the day of sharing as it is to be printed on the record
 * @throws InputProblem while a cell still calculates, or when a Retort call shows an error
 * @throws WorkbookProblem when the workbook cannot oblige
 */
export async function shareAsValues(workbook: Workbook, sheet: string, date: string): Promise<Shared> {
  const formulaCells = await readSheet(workbook, sheet);
  const areas = formulaCells.map(({ area }) => area);
  const taken = await workbook.sheetNames();
  const copy = freeSheetName(named(sheet, " values"), taken);
  const record = freeSheetName(named(sheet, " record"), taken);
  await workbook.copyWithValues(sheet, { name: copy, areas, beside: calculationRecord({ sheet, copy, date, formulaCells }, record) });
  return { copy, record, frozenCells: areas.reduce((cells, { values }) => cells + values.flat().length, 0) };
}

const named = (sheet: string, ending: string): string => `${sheet.slice(0, LONGEST_SHEET_NAME - ending.length)}${ending}`;
