import { countDigit } from "../characters";

const CAPITAL_I = 0x49;
const CAPITAL_V = 0x56;
const ROMAN = /[([{](?:I{1,3}|IV|VI{0,3})[)\]}]/y;
// "(V)": a letter between its brackets.
const ONE_LETTER = 3;

/**
 * An oxidation state in Roman numerals that opens at an index: "(III)" in Fe(III), "(I)" in Cu(I)Cl; undefined where none does.
 * A single letter counts only right behind a symbol and without a count: elsewhere (I) and (V) are iodine and vanadium.
 */
export function oxidationState(text: string, at: number): string | undefined {
  const code = text.charCodeAt(at + 1);
  if (code !== CAPITAL_I && code !== CAPITAL_V) return undefined;
  ROMAN.lastIndex = at;
  const seen = ROMAN.exec(text)?.[0];
  if (seen === undefined || seen.length > ONE_LETTER) return seen;
  const isCounted = countDigit(text.charCodeAt(at + ONE_LETTER)) >= 0;
  return !isCounted && at > 0 && /[A-Za-z]/.test(text.charAt(at - 1)) ? seen : undefined;
}

// FeII, CrVI, AsIII: the whole text, for a metal's iodide has a count, FeI2. TiV and NbV are alloys.
const BEHIND_SYMBOL = /^\s*[A-Z][a-z](I{2,3}|IV|VI{1,3})\s*$/;

/** The oxidation state that a text of one symbol ends in without brackets; undefined where it has none. */
export const bareOxidationState = (text: string): string | undefined => BEHIND_SYMBOL.exec(text)?.[1];
