import { isTypedNumber, isTypedText } from "./inCells/typedInCells";

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
