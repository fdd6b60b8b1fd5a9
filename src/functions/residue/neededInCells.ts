import { isTypedNumber, isTypedText } from "../inCells/typedInCells";
import { operand } from "../operand";

// Shown in place of the message that only the function itself can give.
const MISSING = "NA()";

/**
 * A share that a cell formula cannot do without: the number as typed, else what the cell holds, which must be above 0.
 * @param words for 0, such as "none"
 */
export function neededInCells(text: string, ...words: readonly string[]): string {
  if (text === "") return MISSING;
  if (isTypedText(text)) return "0";
  if (isTypedNumber(text)) return text;
  const number = `IF(${operand(text)}>0,${operand(text)},${MISSING})`;
  return words.reduce((otherwise, word) => `IF(TRIM(${text})="${word}",0,${otherwise})`, number);
}
