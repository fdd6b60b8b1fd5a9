import { WorkbookProblem, type RangeReading, type Workbook } from "../workbook/Workbook";
import { changedWhileCopied } from "../problems/workbook/workbookProblems";
import { readingSheet, writingFile } from "../problems/sharing/sharedCopyWords";
import { holdsTheSame } from "../workbook/holdsTheSame";
import type { TakenOut } from "./plain/plainRules";
import { finalValues, type Patience } from "./finalValues";
import { formulaCellsOf } from "./formulaCells";
import { goOnLater, stepTo, type Progress } from "./progress";
import type { WithErrors } from "./shareAsValues";

/** How a file holds what formulas came to: as values alone, or written in built-in functions. */
export type FileKind = "values" | "plain";

export interface FileWanted {
  readonly as: FileKind;
  /** The sheets that go into it, as they were read. */
  readonly sheets: readonly RangeReading[];
  /** The day of sharing, as it is to be printed. */
  readonly date: string;
  /** Awaited between the stages of the work; throws where the user has stopped. */
  readonly between?: () => Promise<void>;
}

export interface FileMade {
  readonly content: Uint8Array<ArrayBuffer>;
  readonly fileName: string;
  /** Formula cells that became values, or that were written in built-in functions. */
  readonly cells: number;
  /** Of a plain file, those that hold a value behind a guard. */
  readonly fixed: number;
  /** Rules and names that called us and could not stay. */
  readonly takenOut: readonly TakenOut[];
  /** True where the workbook carried a digital signature, which the file does not. */
  readonly wasSigned?: boolean;
}

export interface FileHandedOut extends FileMade {
  /** As OwnFiles.handOut says. */
  readonly whereItIs: string;
}

/** What makes a file of its own from the open workbook, where a host can. */
export interface OwnFiles {
  /** Makes the file; the workbook stays as it is, and nothing is handed out. */
  make(wanted: FileWanted): Promise<FileMade>;
  /** Hands it to the user. @returns where it is now, as a sentence; "" where that goes without saying */
  handOut(made: FileMade): Promise<string>;
}

export interface SharingInFile extends Patience, WithErrors, Progress {
  readonly as: FileKind;
  readonly sheets: readonly string[];
  readonly date: string;
}

/**
 * Shares sheets in a file of their own: as values, or as plain cells that go on calculating without the add-in.
 * @throws InputProblem while anything still calculates, or when a Retort call shows an error
 * @throws WorkbookProblem when a sheet was changed meanwhile, or on being stopped
 * @throws NoOwnFile where the workbook gives no file
 */
export async function shareInFile(workbook: Workbook, files: OwnFiles, wanted: SharingInFile): Promise<FileHandedOut> {
  const { as, sheets, date } = wanted;
  const between = (): Promise<void> => goOnLater(wanted);
  const readings: RangeReading[] = [];
  for (const [index, sheet] of sheets.entries()) {
    await stepTo(wanted, readingSheet(sheet, index + 1, sheets.length));
    const reading = await finalValues(workbook, sheet, wanted);
    await between();
    formulaCellsOf(reading, wanted.withErrors);
    readings.push(reading);
  }
  await between();
  await wanted.looked?.(readings);
  await stepTo(wanted, writingFile);
  const made = await files.make({ as, sheets: readings, date, between });
  // The file holds what stood there when it was written, which has to be what was read.
  for (const reading of readings) {
    await between();
    if (!holdsTheSame(reading, await workbook.readUsed(reading.sheet))) throw new WorkbookProblem(changedWhileCopied(reading.sheet));
  }
  await between();
  return { ...made, whereItIs: await files.handOut(made) };
}
