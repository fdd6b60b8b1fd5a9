const SPACE = 0x20;
const TAB = 0x09;
// No-break, figure, thin, hair and zero-width spaces, the word joiner and the byte-order mark: what pasted text brings along.
const OTHER_SPACES = /[\u00a0\u00ad\u2000-\u200b\u202f\u205f\u2060\u3000\ufeff]/;

/** True for a space of any width; a line break is none. */
export const isSpace = (code: number): boolean => code === SPACE || code === TAB || (code >= 0xa0 && OTHER_SPACES.test(String.fromCharCode(code)));

/** The first index from `at` on that holds no space. */
export function skipSpaces(text: string, at: number): number {
  let index = at;
  while (isSpace(text.charCodeAt(index))) index++;
  return index;
}
