import { holdsCall } from "../../sharing/findCalls";
import { FilledCells } from "../../sharing/plain/FilledCells";
import { namesOf, ReadSheets, type ReadFormula } from "../../sharing/plain/ReadSheets";
import { sourcesOf } from "../../sharing/plain/change/precedents";
import { areaNamed } from "../../workbook/areaNamed";
import type { CellReading } from "../../workbook/Workbook";
import { Refusal } from "../Refusal";
import { differsUnchanged, keptThoughChanged, type AsSaved } from "../words/refusals";
import type { Book, BookSheet } from "./Book";
import { nameOf } from "./refuseUnfinished";

interface HowCalculated {
  readonly asSaved: AsSaved;
  readonly wasCalculated: (sheet: string, cell: string) => boolean;
}

/**
 * Refuses what calculating here may have made wrong. A formula that cannot be calculated here keeps the value in the file, which holds no longer once
 * anything that it is calculated from has changed. And where nothing has changed that a formula is calculated from, but for what it gives here and
 * what the file holds, one of the two is wrong, and the file was calculated by the spreadsheet that the workbook is used in.
 * @param now the same sheets with the values of here
 * @throws Refusal naming the cells
 */
export function refuseDoubtful(before: Book, now: readonly BookSheet[], { asSaved, wasCalculated }: HowCalculated): void {
  const sheets = new ReadSheets({ sheets: before.sheets.map(({ reading }) => reading), names: before.names, tables: before.tables });
  const nameAsRead = namesOf(before.names);
  const readNow = new Map(now.map(({ name, reading }) => [name, new Map(reading.rows.flat().map((one) => [one.cell, one]))]));
  const nowAt = (sheet: string, cell: string): CellReading | undefined => readNow.get(sheet)?.get(cell);
  const changed = new Map(before.sheets.map(({ name, reading }) => [name, changedCells(reading.rows.flat(), (cell) => nowAt(name, cell))]));
  const anyChanged = [...changed.values()].some(({ count }) => count > 0);
  const inputsChanged = (formula: ReadFormula): boolean => {
    const { precedents, isUnseen } = sourcesOf(formula.reading.formula, sheets.around(formula, nameAsRead), sheets.names);
    return (isUnseen && anyChanged) || precedents.some(({ sheet, area }) => (changed.get(sheet)?.cells.count(area) ?? 0) > 0);
  };
  const isVolatile = (formula: ReadFormula): boolean =>
    sourcesOf(formula.reading.formula, sheets.around(formula, nameAsRead), sheets.names).isVolatile;
  const named = (formulas: readonly ReadFormula[]): string[] => formulas.map(({ sheet, reading }) => nameOf(sheet, reading.cell));

  const kept = sheets.formulas.filter(({ sheet, reading }) => reading.value !== null && !wasCalculated(sheet, reading.cell));
  const outdated = kept.filter((one) => before.isStale || isVolatile(one) || inputsChanged(one));
  if (outdated.length > 0) throw new Refusal(keptThoughChanged(named(outdated), asSaved));
  // A file that says itself that its values may be from before vouches for none of them.
  if (before.isStale) return;
  const differing = sheets.formulas.filter(({ sheet, reading }) => {
    const isComparable = reading.value !== null && reading.error === "" && wasCalculated(sheet, reading.cell) && !holdsCall(reading.formula);
    return isComparable && !isSame(reading, nowAt(sheet, reading.cell));
  });
  const doubtful = differing.filter((one) => !isVolatile(one) && !inputsChanged(one));
  if (doubtful.length > 0) throw new Refusal(differsUnchanged(named(doubtful), asSaved));
}

function changedCells(
  readings: readonly CellReading[],
  nowAt: (cell: string) => CellReading | undefined,
): { readonly cells: FilledCells; readonly count: number } {
  const columns = new Map<number, number[]>();
  const found = readings.filter((was) => !isSame(was, nowAt(was.cell)));
  for (const { cell } of found) {
    const { row, column } = areaNamed(cell);
    columns.set(column, [...(columns.get(column) ?? []), row]);
  }
  for (const rows of columns.values()) rows.sort((one, other) => one - other);
  return { cells: new FilledCells(columns), count: found.length };
}

// Programs round the last digits differently, and sums near 0 keep what is left of it.
const ALIKE = 1e-9;
const NOTHING = 1e-12;

/** True where both hold the same, to the digits that programs agree in. */
export function isSame(was: CellReading, now: CellReading | undefined): boolean {
  if (now === undefined) return false;
  if (typeof was.value === "number" && typeof now.value === "number")
    return Math.abs(was.value - now.value) <= Math.max(ALIKE * Math.max(Math.abs(was.value), Math.abs(now.value)), NOTHING);
  return was.error === now.error && (was.value ?? "") === (now.value ?? "") && (was.value === null) === (now.value === null);
}
