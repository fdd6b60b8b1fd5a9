import { wrappedLines } from "./wrappedLines";

// Widths of letters beside a digit, rounded up, as the horizontal metrics of Carlito give them, which are those of Calibri, the file format's default.
const WIDTHS: readonly (readonly [letters: RegExp, width: number])[] = [
  [/[ 'ijlI,.:;]/g, 0.53],
  [/[()\-[\]{}ftrJ!`]/g, 0.69],
  [/[szcLxvy"/\\]/g, 0.89],
  [/[DHGNUOQ%&w]/g, 1.41],
  [/[mMW@]/g, 1.76],
  [/[A-Z]/g, 1.14],
  // Digits, signs of arithmetic and the other small letters.
  [/[\u0020-\u007e]/g, 1.04],
  // What the font may lack.
  [/[^\u0020-\u007e]/g, 1.3],
];
// Programs set letters to whole pixels of their own.
const ROOM = 0.97;

/** Lines that a text takes in a column that is so many digits wide. */
export function drawnLines(text: string, width: number): number {
  if (text.length <= 1) return 1;
  let [left, total] = [text, 0];
  for (const [letters, each] of WIDTHS) {
    const before = left.length;
    left = left.replace(letters, "");
    total += (before - left.length) * each;
  }
  return wrappedLines(text, Math.max(1, Math.floor((ROOM * width * text.length) / total)));
}
