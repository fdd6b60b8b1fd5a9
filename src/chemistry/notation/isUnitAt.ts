import { openingKind } from "./bracketKinds";
import { isCapital } from "./isCapital";
import { massNumberAt } from "./massNumberAt";
import { stateSymbol } from "./stateSymbol";
import { superscriptDigit } from "./superscriptDigit";

const BRACKET_CLOSES = 0x29;

/** True where a symbol, a bracket that is no state, or a mass number with its symbol begins at an index. */
export function isUnitAt(text: string, index: number): boolean {
  const code = text.charCodeAt(index);
  if (isCapital(code)) return true;
  // What most rows of symbols end in, kept free of a search.
  if (index >= text.length || code === BRACKET_CLOSES) return false;
  if (openingKind(code) >= 0) return stateSymbol(text, index) === undefined;
  const character = text.charAt(index);
  return (character === "^" || superscriptDigit(character) >= 0) && massNumberAt(text, index) !== undefined;
}
