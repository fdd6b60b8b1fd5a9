import { calculationRecord } from "../../sharing/calculationRecord";
import { filledDownTogether } from "../../sharing/filledDown";
import { everyFormulaCell } from "../../sharing/formulaCells";
import { plainSheets, type PlainSheets } from "../../sharing/plain/plainSheets";
import { WHY_FIXED } from "../../problems/plainCellProblems";
import type { CellChange } from "../../xlsx/package/CellChange";
import { addPlanned } from "../../xlsx/planned/addPlanned";
import type { BookSheet } from "../book/Book";
import type { OpenBook } from "../book/openBook";
import { nameOf } from "../book/refuseUnfinished";
import { packing, recording, rewriting } from "../words/refusals";
import { recordName } from "../../sharing/copyNames";
import { fileValue } from "./fileValue";
import { putPlain } from "./putPlain";
import { hasCalls } from "./sharedSheets";

/** What was made of a workbook. */
export interface SharedAsPlainCells {
  /** Cells whose calls are now written in built-in functions, or in which a guard was put before the formula. */
  readonly rewritten: number;
  /** Cells that hold a value which says so as soon as an input changes, and why. */
  readonly fixed: readonly { readonly cell: string; readonly why: string }[];
  readonly records: readonly string[];
  readonly hidden: readonly string[];
}

/**
 * Writes every cell formula of the book that calls one of our functions in built-in ones, in place, and records how each value came about.
 * @param recalculated true where the values beside the formulas are ours and not those of the file
 */
export async function asPlainCells(
  book: OpenBook,
  { day, newerFunctions, recalculated }: { readonly day: string; readonly newerFunctions: boolean; readonly recalculated: boolean },
): Promise<SharedAsPlainCells> {
  const { file, sheets, names, tables } = book;
  const withCalls = sheets.filter(hasCalls);
  book.progress(rewriting(sheets.reduce((sum, { reading }) => sum + reading.rows.flat().filter(({ formula }) => formula !== "").length, 0)));
  const plain = plainSheets({ sheets: sheets.map(({ reading }) => reading), names, tables }, { date: day, newerFunctions });
  if (recalculated) for (const sheet of sheets) await file.changeCells(sheet.name, valuesHere(sheet));
  await putPlain(file, plain, new Map(sheets.map(({ name, reading }) => [name, new Map(reading.rows.flat().map((one) => [one.cell, one]))])));
  const records: string[] = [];
  for (const sheet of withCalls) {
    const formulaCells = everyFormulaCell(sheet.reading).filter(({ calls }) => calls.length > 0);
    book.progress(recording(formulaCells.length));
    const taken = (await file.sheets()).map(({ name }) => name);
    const name = recordName(sheet.name, taken);
    records.push(
      ...(await addPlanned(file, [
        calculationRecord({ sheet: sheet.name, copy: sheet.name, date: day, formulaCells: filledDownTogether(formulaCells) }, name),
      ])),
    );
  }
  book.progress(packing);
  return { rewritten: plain.cells.filter(({ kind }) => kind !== "fixed").length, fixed: fixedIn(plain), records, hidden: hiddenIn(plain) };
}

const fixedIn = ({ cells }: PlainSheets): SharedAsPlainCells["fixed"] =>
  cells.flatMap(({ kind, sheet, area, why }) => (kind === "fixed" && why !== undefined ? [{ cell: nameOf(sheet, area), why: WHY_FIXED[why] }] : []));

const hiddenIn = ({ workings, flags }: PlainSheets): string[] => [
  ...(workings === undefined ? [] : [workings.name]),
  ...flags.map(({ name }) => name),
];

const valuesHere = ({ reading }: BookSheet): CellChange[] =>
  reading.rows.flat().flatMap((one) => (one.formula === "" ? [] : [{ cell: one.cell, content: { kind: "recalculated", value: fileValue(one) } }]));
