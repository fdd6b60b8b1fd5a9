import { isTypedNumber, isTypedText } from "./inCells/typedInCells";

/**
 * 1 in a cell formula where a number is given, else 0; a blank cell is none. No truth values, which a spreadsheet never finds equal to 0 or 1.
 * @param isZeroGiven true where a 0 is a value
 */
export function isGivenInCells(text: string, isZeroGiven = false): string {
  if (text === "" || isTypedText(text)) return "0";
  if (isTypedNumber(text)) return isZeroGiven || Number(text) !== 0 ? "1" : "0";
  return `IF(ISNUMBER(${text}),${isZeroGiven ? "1" : `IF(${text}=0,0,1)`},0)`;
}

/**
 * A number in a cell formula that may be left out, blank, 0, or a word for nothing ("none", "tared"), with the value it then
 * counts as. ISNUMBER works on each cell of a range; N() would look at the first alone.
 */
export function numberInCells(text: string, otherwise: number): string {
  if (text === "" || isTypedText(text)) return String(otherwise);
  if (isTypedNumber(text)) return Number(text) === 0 ? String(otherwise) : text;
  const number = otherwise === 0 ? text : `IF(${text}=0,${otherwise},${text})`;
  return `IF(ISNUMBER(${text}),${number},${otherwise})`;
}
