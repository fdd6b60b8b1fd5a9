import { isTypedText } from "./inCells/typedInCells";

/** One word to be met, and the text that a cell formula counts with when it is. */
export type WordCase = readonly [word: string, text: string];

/**
 * A choice in a cell formula: settled at once where the word is typed or left out, else asked of the cell. Letter case
 * and outer spaces do not matter, as in the function itself.
 */
export function wordInCells(text: string, cases: readonly WordCase[], otherwise: string): string {
  if (text === "") return otherwise;
  if (isTypedText(text)) {
    const typed = text.slice(1, -1).trim().toLowerCase();
    return cases.find(([word]) => word.toLowerCase() === typed)?.[1] ?? otherwise;
  }
  return cases.reduceRight((rest, [word, then]) => `IF(TRIM(${text})="${word}",${then},${rest})`, otherwise);
}
