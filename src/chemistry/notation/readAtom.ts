import { elementAt } from "./elementAt";
import { isSmallLetter } from "./isSmallLetter";
import { readCount } from "./readCount";
import type { Reading } from "./Reading";
import { unreadableCharacter } from "./unreadableCharacter";

/**
 * Reads an element's symbol and its count.
 * @throws InputProblem where the capital begins no element, or small letters are left over
 */
export function readAtom(reading: Reading): void {
  const { text, atoms, at: start } = reading;
  const symbol = elementAt(text, start);
  const end = start + (symbol?.length ?? 0);
  if (symbol === undefined || isSmallLetter(text.charCodeAt(end))) throw unreadableCharacter(reading.argument, text, start);
  reading.at = end;
  const count = readCount(reading, undefined, atoms.length);
  atoms.add(symbol, count, start, end, reading.at);
}
