import { downloadedAsLarge, downloadedInstead, fileBroken, fileCodeOutOfReach, fileOlder, openedAsWorkbook } from "../problems/files/ownFileWords";
import type { FileMade, FileWanted, OwnFiles } from "../sharing/shareInFile";
import { fileNameFor } from "../sharing/fileNameFor";
import { HOST } from "../workbook/excel/excelProblem";
import { openAsWorkbook } from "../workbook/excel/file/openAsWorkbook";
import { wholeFile } from "../workbook/excel/file/wholeFile";
import { NoOwnFile } from "../workbook/NoOwnFile";
import { WorkbookProblem } from "../workbook/Workbook";

// On the web the file follows what is typed some moments later.
const MOST_TRIES = 3;
const BETWEEN_TRIES = 2000;

/**
 * Files of their own from the workbook that is open in Excel, opened as new workbooks; where Excel does not say that it opened one, also given as
 * a download.
 * @param pause lets some time pass between tries; tests let none pass
 * @param download hands a file to the browser
 */
export const ownFiles = (
  download: (fileName: string, content: Uint8Array<ArrayBuffer>) => void,
  pause: (milliseconds: number) => Promise<void> = waited,
): OwnFiles => ({
  make: async (wanted: FileWanted): Promise<FileMade> => {
    const { valuesFile, plainFile, otherThanRead } = await fileCode();
    const content = await freshFile(wanted, otherThanRead, pause);
    const handed = await (wanted.as === "values" ? valuesFile : plainFile)(content, wanted).catch(noFile);
    return { ...handed, fileName: fileNameFor(wanted) };
  },
  handOut: async ({ fileName, content }: FileMade): Promise<string> => {
    const opening = await openAsWorkbook(content);
    if (opening === "opened") return openedAsWorkbook(fileName);
    download(fileName, content);
    return opening === "too large" ? downloadedAsLarge(HOST, fileName) : downloadedInstead(HOST, fileName);
  },
});

/** What a file is not good for, a damaged one or one with macros, the workbook may be; a defect of ours stays one. */
function noFile(problem: unknown): never {
  if (problem instanceof WorkbookProblem) throw new NoOwnFile(problem.message);
  throw problem instanceof Error && problem.name === "DamagedFile" ? new NoOwnFile(fileBroken(HOST)) : problem;
}

/** @throws NoOwnFile where Excel hands no file over, or one that is older than what it shows */
async function freshFile(
  { sheets }: FileWanted,
  otherThanRead: FileCode["otherThanRead"],
  pause: (milliseconds: number) => Promise<void>,
): Promise<Uint8Array<ArrayBuffer>> {
  for (let tries = 1; ; tries++) {
    const content = await wholeFile();
    const other = await otherThanRead(content, sheets).catch(noFile);
    if (other === undefined) return content;
    if (tries === MOST_TRIES) throw new NoOwnFile(fileOlder(other.sheet, other.cell));
    await pause(BETWEEN_TRIES);
  }
}

type FileCode = Pick<typeof import("../xlsx/handedOn/valuesFile"), "valuesFile"> &
  Pick<typeof import("../xlsx/handedOn/plainFile"), "plainFile"> &
  Pick<typeof import("../xlsx/handedOn/holdsWhatWasRead"), "otherThanRead">;

/** What reads and writes files: large, and fetched when somebody shares. */
async function fileCode(): Promise<FileCode> {
  try {
    const [{ valuesFile }, { plainFile }, { otherThanRead }, { fileLibrary }] = await Promise.all([
      import(/* webpackChunkName: "xlsx" */ "../xlsx/handedOn/valuesFile"),
      import(/* webpackChunkName: "xlsx" */ "../xlsx/handedOn/plainFile"),
      import(/* webpackChunkName: "xlsx" */ "../xlsx/handedOn/holdsWhatWasRead"),
      import(/* webpackChunkName: "xlsx" */ "../xlsx/fileLibrary"),
    ]);
    await fileLibrary();
    return { valuesFile, plainFile, otherThanRead };
  } catch {
    throw new NoOwnFile(fileCodeOutOfReach);
  }
}

const waited = (milliseconds: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, milliseconds));
