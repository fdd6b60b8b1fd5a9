import type { GridEngine } from "../../workbook/grid/GridEngine";
import { replaceSheets } from "../../workbook/grid/writing/GridSheet";
import { looksNotKept } from "../../problems/files/packageProblems";
import { answersDoubted } from "./answersDoubted";
import { answersInFile, UNKNOWN_FUNCTION } from "./answersInFile";
import { placeOf } from "./inPlace/heldCells";
import { OpenedFile } from "./inPlace/OpenedFile";
import { KeptFormulas } from "./kept/KeptFormulas";
import { IN_THE_PAGE, readWorkbook, type ReadWorkbook } from "./readWorkbook";

/**
 * Puts the sheets of an .xlsx file in place of the open ones and calculates them. Nothing is changed until the whole file has been read.
 * @returns what of the file is not shown or not as it was, each in words; none where everything is there
 * @throws WorkbookProblem when the content is no .xlsx file or holds too much; the open sheets then stay
 */
export async function openXlsx(engine: GridEngine, content: Uint8Array<ArrayBuffer>): Promise<readonly string[]> {
  const { findings, sheets } = await shown(engine, content);
  return [...findings.inWords(), ...answersInFile(engine, sheets)];
}

/** The same, and the file itself, to be saved again with everything in it. */
export async function openFile(
  engine: GridEngine,
  content: Uint8Array<ArrayBuffer>,
): Promise<{ readonly said: readonly string[]; readonly opened: OpenedFile }> {
  const { findings, sheets, isStale } = await shown(engine, content);
  const unknown = sheets.map(({ sheet, answers }): [string, Set<number>] => {
    const cells = answers.filter((answer) => answer.isError && answer.content === UNKNOWN_FUNCTION);
    return [sheet.name, new Set(cells.map(({ row, column }) => placeOf(row, column)))];
  });
  return {
    said: [...findings.inWords(), ...answersInFile(engine, sheets)],
    opened: OpenedFile.of(engine, content, [...findings.kept(), looksNotKept], {
      unknown: new Map(unknown),
      kept: (isMoved) => new KeptFormulas(engine, sheets, isStale, isMoved),
    }),
  };
}

async function shown(engine: GridEngine, content: Uint8Array<ArrayBuffer>): Promise<ReadWorkbook> {
  const kept = new Map<string, Set<number>>();
  for (;;) {
    const read = await readWorkbook(content, {
      ...IN_THE_PAGE,
      isKept: ({ sheet, row, column }) => kept.get(sheet)?.has(placeOf(row, column)) === true,
    });
    await replaceSheets(engine, read.sheets.map(({ sheet }) => sheet), read.names); // prettier-ignore
    // Each time round there are more of them; what is calculated from them differs no longer then.
    const doubted = answersDoubted(engine, read);
    if (doubted.size === 0) return read;
    for (const [sheet, places] of doubted) kept.set(sheet, new Set([...(kept.get(sheet) ?? []), ...places]));
  }
}
