import { wrappedLines } from "./wrappedLines";

// Widths of letters beside a digit, rounded up, as the horizontal metrics of Carlito give them, which are those of Calibri, the file format's default.
const WIDTHS: readonly (readonly [letters: RegExp, width: number])[] = [
  [/[ 'ijlI,.:;]/, 0.53],
  [/[()\-[\]{}ftrJ!`]/, 0.69],
  [/[szcLxvy"/\\]/, 0.89],
  [/[DHGNUOQ%&w]/, 1.41],
  [/[mMW@]/, 1.76],
  [/[A-Z]/, 1.14],
  // Digits, signs of arithmetic and the other small letters.
  [/[\u0020-\u007e]/, 1.04],
  // What the font may lack.
  [/[^\u0020-\u007e]/, 1.3],
];
const LETTERS = 128;
/** The place in the list above of each letter that it may tell apart; a long sheet asks for millions. */
const KINDS = Uint8Array.from({ length: LETTERS }, (_, code) => WIDTHS.findIndex(([letters]) => letters.test(String.fromCharCode(code))));
const LACKED = WIDTHS.length - 1;
// Programs set letters to whole pixels of their own.
const ROOM = 0.97;

/** Lines that a text takes in a column that is so many digits wide. */
export function drawnLines(text: string, width: number): number {
  if (text.length <= 1) return 1;
  const counts = new Uint32Array(WIDTHS.length);
  for (let at = 0; at < text.length; at++) {
    const kind = KINDS[text.charCodeAt(at)] ?? LACKED;
    counts[kind] = (counts[kind] as number) + 1;
  }
  const total = WIDTHS.reduce((sum, [, each], kind) => sum + (counts[kind] as number) * each, 0);
  return wrappedLines(text, Math.max(1, Math.floor((ROOM * width * text.length) / total)));
}
