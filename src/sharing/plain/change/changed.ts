import { textInCells } from "../../../functions/inCells/sentenceInCells";
import { numberText } from "../../../inputs/numberText";
import type { CellReading } from "../../../workbook/Workbook";
import { MARK, type KeptPiece } from "../WorkingsSheet";

// 15 figures of a number stand in a formula; a spreadsheet keeps 17.
const SAME = "1E-14";

/** Characters that a formula takes in; with each of them doubled it still has room. */
export const LONGEST_IN_FORMULA = 2000;

/** Keeps a text that is too long for a formula. */
export type KeepText = (text: string) => readonly KeptPiece[];

/**
 * A condition, of IF and comparisons alone: the cell holds something else than it did.
 * @param keep where long texts are compared; without it they stand in the condition
 */
export function changed(cell: string, was: CellReading | undefined, keep?: KeepText): string {
  const value = was?.value ?? null;
  if (was !== undefined && was.error !== "") return `IF(ISERROR(${cell}),ERROR.TYPE(${cell})<>${ERROR_NUMBERS[was.error] ?? 3},TRUE)`;
  if (typeof value === "number") return `IF(ISNUMBER(${cell}),ABS(${cell}-${numberIn(value)})>${SAME}*ABS(${numberIn(value)}),TRUE)`;
  if (typeof value === "boolean") return `IF(ISLOGICAL(${cell}),${cell}<>${value ? "TRUE" : "FALSE"},TRUE)`;
  if (value === null || value === "") return `IF(ISERROR(${cell}),TRUE,${cell}<>"")`;
  if (keep !== undefined && value.length > LONGEST_IN_FORMULA) {
    const isSame = keep(value).map(({ reference, start, length }) => `EXACT("${MARK}"&MID(${cell},${start + 1},${length}),${reference})`);
    return `IF(ISTEXT(${cell}),NOT(AND(LEN(${cell})=${value.length},${isSame.join(",")})),TRUE)`;
  }
  return `IF(ISTEXT(${cell}),NOT(EXACT(${cell},${textInCells(value)})),TRUE)`;
}

const numberIn = (value: number): string => (value < 0 ? `(${numberText(value)})` : numberText(value));

/** As ERROR.TYPE counts them; a formula and a file may hold no others. */
export const ERROR_NUMBERS: Readonly<Record<string, number>> = {
  ...{ "#NULL!": 1, "#DIV/0!": 2, "#VALUE!": 3, "#REF!": 4, "#NAME?": 5, "#NUM!": 6, "#N/A": 7 },
};
