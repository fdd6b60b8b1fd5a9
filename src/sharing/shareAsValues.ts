import { changedWhileCopied } from "../problems/sharingProblems";
import { freeSheetName, LONGEST_SHEET_NAME } from "../workbook/freeSheetName";
import type { Workbook } from "../workbook/Workbook";
import { calculationRecord } from "./calculationRecord";
import { finalValues, holdsTheSame, type Patience } from "./finalValues";
import { formulaCellsOf } from "./formulaCells";

export interface Shared {
  /** The name of the copy. */
  readonly copy: string;
  /** The name of the calculation record. */
  readonly record: string;
  /** False where the sheet could not be read again to see whether somebody changed it while it was copied. */
  readonly checked: boolean;
  /** Cells of the copy in which a value took the place of a cell formula. */
  readonly frozenCells: number;
}

/**
 * Copies a sheet for people without the add-in: numbers stay, cell formulas go, and a calculation record says how each
 * value came about. Everything is read before the copy is made, so that a refusal leaves nothing behind.
 * @param date the day of sharing as it is to be printed on the record
 * @throws InputProblem while anything still calculates, when a Retort call shows an error, or when somebody changed the sheet meanwhile
 * @throws WorkbookProblem when the workbook cannot oblige
 */
export async function shareAsValues(workbook: Workbook, sheet: string, date: string, patience: Patience = {}): Promise<Shared> {
  const used = await finalValues(workbook, sheet, patience);
  const formulaCells = formulaCellsOf(used);
  const areas = formulaCells.map(({ area }) => area);
  const taken = await workbook.sheetNames();
  const copy = freeSheetName(named(sheet, " values"), taken);
  const record = freeSheetName(named(sheet, " record"), taken);
  await workbook.copyWithValues(sheet, { name: copy, areas, beside: calculationRecord({ sheet, copy, date, formulaCells }, record) });
  // A copy takes what stands on the sheet at that moment, while its values were read before.
  const now = await workbook.readUsed(sheet).catch(() => undefined);
  if (now !== undefined && !holdsTheSame(used, now)) throw changedWhileCopied(sheet, copy, record);
  return { copy, record, checked: now !== undefined, frozenCells: areas.reduce((cells, { values }) => cells + values.flat().length, 0) };
}

const named = (sheet: string, ending: string): string => `${sheet.slice(0, LONGEST_SHEET_NAME - ending.length)}${ending}`;
