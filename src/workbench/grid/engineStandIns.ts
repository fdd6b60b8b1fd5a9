// What the build puts in the place of three packages that the grid's engine loads with its first line and this page has no use for: together
// 260 kB gzipped, and tables of 460 kB that are worked through before anything else happens.

// cjk-regex: which characters are Chinese, Japanese or Korean. Browsers know the properties it spells out. Blocks: Unicode 15, Blocks.txt.
const SCRIPTS = String.raw`\p{Script=Han}\p{Script=Katakana}\p{Script=Hiragana}\p{Script=Hangul}\p{Script=Bopomofo}`;
const LETTERS = String.raw`(?=[\p{Lo}\p{Nl}\p{So}\p{Lm}])[${SCRIPTS}]`;
const BLOCKS = String.raw`\u2ff0-\u303f\u30a0-\u30ff\u3190-\u319f\u31c0-\u31ef\u3200-\u33ff\ufe10-\ufe1f\ufe30-\ufe6f\uff00-\uffef`;
const PUNCTUATION = `(?!${LETTERS})[${BLOCKS}]`;

const charset = (pattern: string) => (): { toRegExp(): RegExp } => ({ toRegExp: () => new RegExp(pattern, "u") });
export const letters = charset(LETTERS);
export const punctuations = charset(PUNCTUATION);
export const all = charset(`${LETTERS}|${PUNCTUATION}`);

/** opentype.js: reads font files. The engine asks only where it was given some, and this page gives none. */
export function parse(): never {
  throw new Error("this page has no font files to read");
}

/** franc-min: guesses a text's language, to hyphenate it. "und", undetermined, leaves words whole; cells are not hyphenated anyway. */
export const franc = (): string => "und";
