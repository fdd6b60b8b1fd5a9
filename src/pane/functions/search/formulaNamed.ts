import { parseFormula } from "../../../chemistry/parseFormula";
import { everySubstance } from "../substances/everySubstance";
import type { Substance } from "../substances/Substance";

// Symbols with counts, brackets and hydrate dots, as a formula is typed; a lone symbol or a word of capitals is none.
const LOOKS_TYPED = /^(?=.*[\da-z)\]])(?:[A-Z][a-z]?|[\d()[\]·•*.½])+$/u;
const FEWEST_ELEMENTS = 2;

const SHORTEST_IN_SMALL = 3; // "no" and "co" are words

const inSmallLetters = (formula: string): string => formula.toLowerCase().replace(/[·•*.]/g, "");

/** By the formula in small letters, as whoever will not press Shift types it; of several by one formula the first stands for all. */
const byTyping: ReadonlyMap<string, Substance> = new Map([...everySubstance].reverse().map((each) => [inSmallLetters(each.formula), each]));

/** The substance that one word of a search is the formula of, in capitals or not; undefined for any other word. */
export function formulaNamed(word: string): Substance | undefined {
  const known = /\d|[A-Z]/.test(word) || word.length >= SHORTEST_IN_SMALL ? byTyping.get(inSmallLetters(word)) : undefined;
  if (known !== undefined) return known;
  if (!LOOKS_TYPED.test(word)) return undefined;
  try {
    const { atoms } = parseFormula(word);
    if (atoms.size < FEWEST_ELEMENTS) return undefined;
    const anhydrous = /^(.+)[·•*.]\d*H2O$/u.exec(word)?.[1];
    return anhydrous === undefined ? { formula: word, kind: "other", en: word } : { formula: word, kind: "hydrate", residue: anhydrous, en: word };
  } catch {
    return undefined;
  }
}
