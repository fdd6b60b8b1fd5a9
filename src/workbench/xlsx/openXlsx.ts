import type { GridEngine } from "../../workbook/grid/GridEngine";
import { replaceSheets } from "../../workbook/grid/GridSheet";
import { answersInFile } from "./answersInFile";
import { readWorkbook } from "./readWorkbook";

/**
 * Puts the sheets of an .xlsx file in place of the open ones and calculates them. Nothing is changed until the whole file has been read.
 * @returns what of the file is not shown or not as it was, each in words; none where everything is there
 * @throws WorkbookProblem when the content is no .xlsx file or holds too much; the open sheets then stay
 */
export async function openXlsx(engine: GridEngine, content: Uint8Array<ArrayBuffer>): Promise<readonly string[]> {
  const { sheets, names, findings } = await readWorkbook(content);
  await replaceSheets(
    engine,
    sheets.map(({ sheet }) => sheet),
    names,
  );
  return [...findings.inWords(), ...answersInFile(engine, sheets)];
}
