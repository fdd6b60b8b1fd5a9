import { FilledCells } from "../../sharing/plain/reading/FilledCells";
import { namesOf, ReadSheets, type ReadFormula } from "../../sharing/plain/reading/ReadSheets";
import { sourcesOf } from "../../sharing/plain/change/precedents";
import { areaNamed } from "../../workbook/areaNamed";
import type { CellReading } from "../../workbook/Workbook";
import { Refusal } from "../Refusal";
import { holdsCall } from "../../sharing/findCalls";
import { differsUnchanged, keptThoughChanged, misreadHere, notProvenHere, type AsSaved } from "../words/refusals";
import type { Book, BookSheet } from "./Book";
import type { Place } from "../../explanation/saved/calculatedFromThese";
import { provenFormulas } from "../../explanation/saved/notGiven";
import { ownFormulas } from "../../runsheet/reading/formulasNotOwn";
import { cellsOfArea } from "../../workbook/cellArea";
import { nameOnSheet } from "../../workbook/nameOnSheet";
import { NOT_LOADED, otherThanGiven } from "./doubts";

/** What was calculated here. */
export interface CalculatedHere {
  readonly asSaved: AsSaved;
  /** The names of those cells that the copy, or the explanation, is made of. */
  readonly asked: (cells: readonly Place[]) => readonly string[];
  /** False for a sheet that nothing wanted is calculated from. */
  readonly isLookedAt: (sheet: string) => boolean;
  readonly wasCalculated: (sheet: string, cell: string) => boolean;
}

/**
 * Refuses what calculating here may have made wrong. What every spreadsheet works out alike shows which of two values is right: a formula of that kind
 * is from before where the file holds another value than it gives, and is misread here where it is calculated otherwise. A formula that cannot be
 * calculated here keeps the value in the file, which holds no longer once anything that it is calculated from has changed. And where nothing has changed that a formula is calculated from, but for what it gives here and
 * what the file holds, one of the two is wrong, and the file was calculated by the spreadsheet that the workbook is used in.
 * @param now the same sheets with the values of here
 * @throws Refusal naming the cells
 */
export function refuseDoubtful(before: Book, now: readonly BookSheet[], here: CalculatedHere): void {
  const { asSaved, asked, isLookedAt, wasCalculated } = here;
  const sheets = new ReadSheets({ sheets: before.sheets.map(({ reading }) => reading), names: before.names, tables: before.tables });
  const nameAsRead = namesOf(before.names);
  const readNow = new Map(now.map(({ name, reading }) => [name, new Map(reading.rows.flat().map((one) => [one.cell, one]))]));
  const nowAt = (sheet: string, cell: string): CellReading | undefined => readNow.get(sheet)?.get(cell);
  const changed = new Map(
    before.sheets.map(({ name, reading }) => [name, changedCells(reading.rows.flat(), readNow.get(name) ?? new Map<string, CellReading>())]),
  );
  const anyChanged = [...changed.values()].some(({ count }) => count > 0);
  const inputsChanged = (formula: ReadFormula): boolean => {
    const { precedents, isUnseen } = sourcesOf(formula.reading.formula, sheets.around(formula, nameAsRead), sheets.names);
    return (isUnseen && anyChanged) || precedents.some(({ sheet, area }) => (changed.get(sheet)?.cells.count(area) ?? 0) > 0);
  };
  const isVolatile = (formula: ReadFormula): boolean =>
    sourcesOf(formula.reading.formula, sheets.around(formula, nameAsRead), sheets.names).isVolatile;
  const named = (formulas: readonly ReadFormula[]): readonly string[] => asked(formulas.map(({ sheet, reading }) => ({ sheet, cell: reading.cell })));

  const kept = sheets.formulas.filter(({ sheet, reading }) => isLookedAt(sheet) && reading.value !== null && !wasCalculated(sheet, reading.cell));
  const outdated = named(kept.filter((one) => before.isStale || isVolatile(one) || inputsChanged(one)));
  if (outdated.length > 0) throw new Refusal(keptThoughChanged(outdated, asSaved));
  refuseUnproven(before, { ...before, sheets: now }, here, (one) => before.isStale || isVolatile(one) || inputsChanged(one));
  // A file that says itself that its values may be from before vouches for none of them.
  if (before.isStale) return;
  const differing = sheets.formulas.filter(({ sheet, reading }) => {
    const isComparable = reading.value !== null && reading.error === "" && wasCalculated(sheet, reading.cell) && !holdsCall(reading.formula);
    return isComparable && !isSame(reading, nowAt(sheet, reading.cell));
  });
  const doubtful = differing.filter((one) => !isVolatile(one) && !inputsChanged(one));
  if (doubtful.length === 0) return;
  const fromBefore = new Set(otherThanGiven(before, before.sheets).map(({ sheet, cell }) => nameOnSheet(sheet, cell)));
  const unsure = named(doubtful.filter(({ sheet, reading }) => !fromBefore.has(nameOnSheet(sheet, reading.cell))));
  if (unsure.length > 0) throw new Refusal(differsUnchanged(unsure, asSaved));
}

/**
 * What the engine gives is believed only of formulas that it is known to answer as every spreadsheet does. Of any other the value in the file stands, as
 * long as nothing has changed that it is calculated from and the engine gives the same.
 * @param now the book with the values of here
 * @throws Refusal naming the cells
 */
function refuseUnproven(
  before: Book,
  now: Book,
  { asSaved, asked, wasCalculated }: CalculatedHere,
  isOutdated: (formula: ReadFormula) => boolean,
): void {
  const held = new Map(before.sheets.map(({ name, reading }) => [name, new Map(reading.rows.flat().map((one) => [one.cell, one]))]));
  const overArrays = new Set(now.sheets.flatMap(({ name, cells }) => cells.flatMap(({ cell, formulaKind, spills }) => (formulaKind === "array" || spills ? [nameOnSheet(name, cell)] : [])))); // prettier-ignore
  const sheets = new ReadSheets({ sheets: now.sheets.map(({ reading }) => reading), names: now.names, tables: now.tables });
  const isProven = provenFormulas(sheets.reading, ({ sheet, reading }) => overArrays.has(nameOnSheet(sheet, reading.cell)));
  const own = new Map(now.sheets.map(({ name, reading }) => [name, new Set(ownFormulas(reading))]));
  const found = { never: [] as Place[], outdated: [] as Place[], differing: [] as Place[] };
  for (const formula of sheets.formulas) {
    const { sheet, reading, area } = formula;
    if (!wasCalculated(sheet, reading.cell) || own.get(sheet)?.has(reading.cell) === true) continue;
    const was = held.get(sheet)?.get(reading.cell);
    const isNever = was === undefined || was.value === null || was.error === NOT_LOADED;
    const differs = !isNever && cellsOfArea(area).flat().some((cell) => !isSameAsHeld(held.get(sheet)?.get(cell), sheets.sheet(sheet)?.at(areaNamed(cell).row, areaNamed(cell).column))); // prettier-ignore
    if (!isNever && !differs && !isOutdated(formula)) continue;
    if (isProven(formula)) continue;
    found[isNever ? "never" : isOutdated(formula) ? "outdated" : "differing"].push({ sheet, cell: reading.cell });
  }
  const [never, outdated, differing] = [asked(found.never), asked(found.outdated), asked(found.differing)];
  if (never.length > 0) throw new Refusal(notProvenHere(never, false, asSaved));
  if (outdated.length > 0) throw new Refusal(notProvenHere(outdated, true, asSaved));
  if (differing.length > 0) throw new Refusal(differsUnchanged(differing, asSaved));
}

/** What a formula fills and holds nothing yet is filled here. */
const isSameAsHeld = (was: CellReading | undefined, now: CellReading | undefined): boolean =>
  (was?.value ?? null) === null || isSame(was as CellReading, now);

/** @param now the book with the values of here @throws Refusal naming cells that hold other values now than every spreadsheet gives them */
export function refuseMisread(before: Book, now: Book, { asSaved, asked, wasCalculated }: CalculatedHere): void {
  const wasAt = new Map(before.sheets.map(({ name, reading }) => [name, new Map(reading.rows.flat().map((one) => [one.cell, one]))]));
  const others = (sheet: BookSheet): CellReading[] =>
    sheet.reading.rows.flat().filter((one) => one.formula !== "" && !isSame(one, wasAt.get(sheet.name)?.get(one.cell)));
  const changed = new Set(now.sheets.flatMap((sheet) => others(sheet).map(({ cell }) => nameOnSheet(sheet.name, cell))));
  if (changed.size === 0) return;
  const misread = asked(
    otherThanGiven({ ...now, isCalculatedHere: false }, now.sheets).filter(
      ({ sheet, cell }) => wasCalculated(sheet, cell) && changed.has(nameOnSheet(sheet, cell)),
    ),
  );
  if (misread.length > 0) throw new Refusal(misreadHere(misread, asSaved));
}

function changedCells(
  readings: readonly CellReading[],
  now: ReadonlyMap<string, CellReading>,
): { readonly cells: FilledCells; readonly count: number } {
  const columns = new Map<number, number[]>();
  const known = new Set(readings.map(({ cell }) => cell));
  // Where nothing was saved that a formula fills.
  const added = [...now.values()].filter(({ cell, value }) => value !== null && !known.has(cell));
  const found = [...readings.filter((was) => !isSame(was, now.get(was.cell))), ...added];
  for (const { cell } of found) {
    const { row, column } = areaNamed(cell);
    const here = columns.get(column);
    if (here === undefined) columns.set(column, [row]);
    else here.push(row);
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
