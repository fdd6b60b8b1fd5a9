import type { Workbook as FileWorkbook } from "exceljs";
import { quotedSheet } from "../../workbook/quotedSheet";

/** A defined name as the file library's writer takes it. */
interface FileName {
  readonly name: string;
  readonly ranges: readonly string[];
  readonly localSheetId: number;
}

/**
 * The printed area and the repeated rows of each sheet as the names that a file holds for them, taken off the sheets. The library
 * would write an apostrophe of a sheet's name as it is, and other programs refuse such a file as damaged.
 */
export function printNames(file: FileWorkbook): FileName[] {
  return file.worksheets.flatMap(({ name, pageSetup }, localSheetId): FileName[] => {
    const { printArea, printTitlesRow } = pageSetup;
    Object.assign(pageSetup, { printArea: undefined, printTitlesRow: undefined });
    const on = `${quotedSheet(name)}!`;
    // "A$1:I$98" and "1:3"; the first marks its rows as fixed already.
    const fixed = (range: string): string => range.replace(/(^|:)/g, "$1$");
    return [
      ...(printArea === undefined ? [] : [{ name: "_xlnm.Print_Area", ranges: [`${on}${fixed(printArea)}`], localSheetId }]),
      ...(printTitlesRow === undefined ? [] : [{ name: "_xlnm.Print_Titles", ranges: [`${on}${fixed(printTitlesRow)}`], localSheetId }]),
    ];
  });
}
