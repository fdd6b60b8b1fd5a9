import { macrosNameSheets } from "../../problems/files/packageProblems";
import { valuesBanner } from "../../problems/sharing/sharedCopyWords";
import { calculationRecord } from "../../sharing/record/calculationRecord";
import { recordName } from "../../sharing/copyNames";
import { everyFormulaCell } from "../../sharing/formulaCells";
import { takenOut, type RulesPut } from "../../sharing/plain/plainRules";
import type { FileMade, FileWanted } from "../../sharing/shareInFile";
import type { SheetPlan } from "../../workbook/SheetPlan";
import { WorkbookProblem, type RangeReading } from "../../workbook/Workbook";
import type { CellChange } from "../package/cells/CellChange";
import { WorkbookPackage } from "../package/WorkbookPackage";
import { addPlanned } from "../planned/addPlanned";
import { boxLooks } from "./boxLooks";
import { bannerPlaceIn, putBanner } from "./putBanner";
import { bookAround } from "./bookAround";
import { leaveAlone, leaveQueries, underNames } from "./leaveAlone";

export type Handed = Pick<FileMade, "content" | "cells" | "fixed" | "takenOut" | "wasSigned">;

/** A sheet that becomes a copy, and the name of the copy. */
export interface Copied {
  readonly reading: RangeReading;
  readonly copy: string;
}

/** What was made of one sheet. */
export interface ValuesMade {
  readonly sheet: string;
  readonly copy: string;
  readonly record: string;
  /** Cells in which a value took the place of a cell formula. */
  readonly formulas: number;
  /** Where the copy says what it is. */
  readonly banner: string;
}

export interface ValuesWanted {
  /** The day of sharing, as it is to be printed. */
  readonly date: string;
  /** Told of each record before it is written. */
  readonly recording?: (formulas: number) => void;
  /** Awaited between the stages of the work; throws where the user has stopped. */
  readonly between?: () => Promise<void>;
}

/**
 * A workbook file as values: these sheets and their records alone, no formula, no box to fill in, no rule for entries, and a line in view that
 * says so. Rules for colouring stay, without our functions. Everything else on the sheets stays as it was, charts and comments too.
 * @throws WorkbookProblem where the file cannot be changed so
 */
export async function valuesFile(content: Uint8Array<ArrayBuffer>, { sheets, date, between }: Omit<FileWanted, "as">): Promise<Handed> {
  const file = await WorkbookPackage.of(content);
  await between?.();
  const { made, put } = await leaveValues(file, sheets.map((reading) => ({ reading, copy: reading.sheet })), { date, ...(between && { between }) }); // prettier-ignore
  const wasSigned = await file.isSigned();
  return { content: await file.bytes(), wasSigned, cells: made.reduce((sum, { formulas }) => sum + formulas, 0), fixed: 0, takenOut: takenOut(put) };
}

/**
 * Turns an open file into copies of some of its sheets in which the file's own values stand in place of formulas, each before its calculation
 * record, and nothing else.
 * @throws WorkbookProblem where the file cannot be changed so
 */
export async function leaveValues(
  file: WorkbookPackage,
  sheets: readonly Copied[],
  { date, recording = () => undefined, between = async () => undefined }: ValuesWanted,
): Promise<{ readonly made: readonly ValuesMade[]; readonly put: RulesPut }> {
  if (await file.hasMacros()) throw new WorkbookProblem(macrosNameSheets);
  await file.noTemplate();
  const kept = sheets.map(({ reading }) => reading.sheet);
  // A copy takes no entries.
  for (const sheet of kept) await file.takeEntryRules(sheet);
  const alone = await leaveQueries(file, kept, await leaveAlone(file, kept, {}, await bookAround(file, kept)));
  await between();
  const put = underNames(alone, new Map(sheets.map(({ reading: { sheet }, copy }) => [sheet, copy])));
  await file.keepSheets(kept);
  await between();
  const printed = await boxLooks(file);
  for (const { reading } of sheets) {
    await freeze(file, reading.sheet, printed);
    await between();
  }
  await file.renameSheets(new Map(sheets.flatMap(({ reading: { sheet }, copy }) => (sheet === copy ? [] : [[sheet, copy]]))));
  const made: ValuesMade[] = [];
  const records: SheetPlan[] = [];
  const taken = (await file.sheets()).map(({ name }) => name);
  for (const { reading, copy } of sheets) {
    const { sheet } = reading;
    const [record, banner] = [recordName(sheet, taken), await bannerPlaceIn(file, copy, reading, true)];
    const formulaCells = everyFormulaCell(reading);
    recording(formulaCells.length);
    records.push(calculationRecord({ sheet, copy, date, formulaCells, rows: reading.rows, put }, record));
    await putBanner(file, copy, banner, valuesBanner(date));
    await between();
    made.push({ sheet, copy, record, formulas: formulaCells.length, banner });
  }
  // All at once: each time goes through the looks of the whole file.
  await addPlanned(file, records);
  await between();
  await file.takePivots();
  await file.forgetNamesAndPeople();
  await between();
  await file.forgetOtherSheets();
  await between();
  await file.orderSheets(made.flatMap(({ copy, record }) => [copy, record]));
  await file.unhide(made.map(({ copy }) => copy));
  if (made[0] !== undefined) await file.show(made[0].copy);
  return { made, put };
}

/** Values in place of formulas, and neither boxes nor rules for entries. */
async function freeze(file: WorkbookPackage, sheet: string, printed: ReadonlyMap<number, number>): Promise<void> {
  const changes: CellChange[] = [];
  await file.readCells(sheet, ({ cell, formulaKind, value, look }) => {
    const isFormula = formulaKind !== "none";
    const without = printed.get(look);
    if (!isFormula && without === undefined) return;
    // A blank that a formula gave is blank.
    // A what-if table would work itself out again, from a corner that holds a value by then.
    const endsTable = formulaKind === "dataTable";
    const content = isFormula ? ({ kind: "value", value: value === "" ? null : value, endsTable } as const) : ({ kind: "kept" } as const);
    changes.push({ cell, content, ...(without !== undefined && { look: without }) });
  });
  await file.changeCells(sheet, changes);
  // A table would fill its formula into the next row.
  await file.changeTableFormulas(sheet, () => undefined, true);
  await file.takeEntryRules(sheet);
}
