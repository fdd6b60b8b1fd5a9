// A text in a cell formula holds 255 characters at most (Excel specifications and limits); quotation marks count twice.
const LONGEST_TEXT = 120;

/** A text of any length in a cell formula, in pieces joined by &. */
export function textInCells(text: string): string {
  const characters = Array.from(text);
  const pieces: string[] = [];
  for (let from = 0; from < characters.length; from += LONGEST_TEXT) pieces.push(characters.slice(from, from + LONGEST_TEXT).join(""));
  return pieces.length === 0 ? '""' : pieces.map((piece) => `"${piece.replace(/"/g, '""')}"`).join("&");
}

/** A number rounded to so many significant figures, in a cell formula. @param cell one operand, written several times */
export const significantInCells = (cell: string, figures: number): string => `IF(${cell}=0,0,ROUND(${cell},${figures - 1}-INT(LOG10(ABS(${cell})))))`;

/**
 * A sentence about several values, with those of cells put in their places.
 * @param values each as it prints in the sentence, in order, and what stands there instead
 */
export function filledInCells(sentence: string, values: readonly (readonly [printed: string, cell: string])[]): string {
  let [rest, text] = [sentence, ""];
  for (const [printed, cell] of values) {
    const at = rest.indexOf(printed);
    text += `${at > 0 ? `${textInCells(rest.slice(0, at))}&` : ""}${cell}&`;
    rest = rest.slice(at + printed.length);
  }
  return rest === "" ? text.slice(0, -1) : `${text}${textInCells(rest)}`;
}

/**
 * A sentence about a value, with the value of a cell put in its place; undefined where it does not stand in it exactly once.
 * @param sentence as it reads for a value that prints as `printed`
 * @param cell what stands there instead
 */
export function sentenceInCells(sentence: string, printed: string, cell: string): string | undefined {
  const [before, after, ...more] = sentence.split(printed);
  if (before === undefined || after === undefined || more.length > 0) return undefined;
  return `${textInCells(before)}&${cell}&${textInCells(after)}`;
}
