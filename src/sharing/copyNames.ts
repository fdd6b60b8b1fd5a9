import { freeNameBeside } from "../workbook/freeSheetName";

/** A free name for the copy of a sheet as values, which is taken from then on. */
export const valuesName = (sheet: string, taken: string[]): string => takenName(sheet, " values", taken);

/** A free name for the copy of a sheet as plain cells, which is taken from then on. */
export const plainName = (sheet: string, taken: string[]): string => takenName(sheet, " plain cells", taken);

/** A free name for the record of a sheet, which is taken from then on. */
export const recordName = (sheet: string, taken: string[]): string => takenName(sheet, " record", taken);

function takenName(sheet: string, ending: string, taken: string[]): string {
  const name = freeNameBeside(sheet, ending, taken);
  taken.push(name);
  return name;
}
