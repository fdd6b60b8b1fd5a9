import {
  aWord,
  foreignLetter,
  groupAbbreviation,
  lineBreak,
  listOfElements,
  markForDot,
  neverOpened,
  noElement,
  noElementInThisCase,
  percentSign,
  reactionOrArithmetic,
  slashInAmount,
  smallFirstLetter,
  smallLOfAluminium,
  timesSign,
  unknownAmount,
  unreadable,
} from "../../../problems/functions/formulaProblems";
import type { InputProblem } from "../../../problems/InputProblem";
import { elementAt } from "../elementAt";
import { isHydrateDot } from "../hydrates/hydrateDot";
import { lookAlike } from "./lookAlike";
import { skipSpaces } from "../characters";

// Longer runs of small letters are words: no symbol has more than one.
const LETTERS_OF_A_WORD = 4;
const UNKNOWNS = "xyznm";

const GROUPS: ReadonlyMap<string, string> = new Map([
  ["Me", "CH3"],
  ["Et", "C2H5"],
  ["Ph", "C6H5"],
  ["Bu", "C4H9"],
  ["Bn", "C7H7"],
]);

/** The problem with the character at an index, where no rule of the notation can go on. */
export function unreadableCharacter(argument: string, text: string, index: number): InputProblem {
  const spot = { argument, text, index };
  const character = String.fromCodePoint(text.codePointAt(index) ?? 0);
  if (/[A-Z]/.test(character)) return notASymbol(argument, text, index);
  if (/[a-z]/.test(character)) return smallLetters(argument, text, index);
  const foreign = lookAlike(character);
  if (foreign !== undefined) return foreignLetter(spot, character, foreign.script, foreign.latin);
  if (character === "%") return percentSign(spot);
  if (character === "/" && /\d\/\d/.test(text.slice(Math.max(0, index - 1), index + 2))) return slashInAmount(spot);
  if (character === "×") return timesSign(spot, character);
  if (character === ",") return isHydrateDot(text, index) ? markForDot(spot, character) : listOfElements(spot, character);
  if (/[\r\n\u2028\u2029]/.test(character)) return lineBreak(spot);
  if (/[)\]}₎）]/.test(character)) return neverOpened(spot, character);
  if (/[=→⇌⟶+\-−/]/.test(character)) return reactionOrArithmetic(spot, character);
  // Taken out, it would join the amount of water to the count before it.
  if (character.length === 1 && /[\d)\]}₀-₉]\s*$/.test(text.slice(Math.max(0, index - 2), index)) && isHydrateDot(text, index))
    return markForDot(spot, character);
  return unreadable(spot, character);
}

/** A capital that begins no element, or an element with small letters left over. */
function notASymbol(argument: string, text: string, index: number): InputProblem {
  const spot = { argument, text, index };
  const letters = /^[A-Z][a-z]*/.exec(text.slice(index))?.[0] ?? "";
  if (letters.length >= LETTERS_OF_A_WORD && !endsInSmallElement(text, index, letters)) return aWord(spot, letters);
  if (letters === "A" && /[1I]/.test(text.charAt(index + 1))) return smallLOfAluminium(spot, letters);
  const group = GROUPS.get(letters);
  if (group !== undefined) return groupAbbreviation(spot, letters, group);
  const symbol = elementAt(text, index);
  if (symbol !== undefined && !(letters.length === 2 && elementAt(letters.toUpperCase(), 1) !== undefined)) {
    return smallLetters(argument, text, index + symbol.length);
  }
  return mixedCase(text, index, letters) ? noElementInThisCase(spot, letters) : noElement(spot, letters);
}

/** True for a symbol with another behind it that lost its capital: "Nacl", where a word such as "Iron" would be meant otherwise. */
function endsInSmallElement(text: string, index: number, letters: string): boolean {
  const rest = letters.slice(elementAt(text, index)?.length ?? letters.length);
  const capitalised = rest.charAt(0).toUpperCase() + rest.slice(1);
  return rest !== "" && elementAt(capitalised, 0) === capitalised;
}

/** True where other capitals would make elements of it: "A" in "CACO3", "Oh". */
function mixedCase(text: string, index: number, letters: string): boolean {
  if (letters.length > 1) return elementAt(letters.toUpperCase(), 0) !== undefined && elementAt(letters.toUpperCase(), 1) !== undefined;
  const asSecond = text.slice(Math.max(0, index - 1), index) + letters.toLowerCase();
  const asFirst = letters + text.charAt(index + 1).toLowerCase();
  return [asSecond, asFirst].some((symbol) => symbol.length === 2 && elementAt(symbol, 0) === symbol);
}

function smallLetters(argument: string, text: string, index: number): InputProblem {
  const spot = { argument, text, index };
  const letters = /^[a-z]+/.exec(text.slice(index))?.[0] ?? "";
  const after = text.charAt(skipSpaces(text, index + 1));
  if (letters === "x" && /\s/.test(text.charAt(index - 1)) && /[\d½]/.test(after)) return timesSign(spot, letters);
  if (letters.length === 1 && UNKNOWNS.includes(letters)) return unknownAmount(spot, letters);
  const aloneInText = text.trim() === letters;
  return aloneInText && letters.length >= LETTERS_OF_A_WORD ? aWord(spot, letters) : smallFirstLetter(spot, letters);
}
