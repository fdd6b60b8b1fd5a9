import { isMetal } from "../../isMetal";
import { countDigit, isCapital, isSmallLetter } from "../characters";
import { elementAt } from "../elementAt";
import { isHydrateDot } from "./hydrateDot";

// What salts and oxides end in; a decimal count of these stands last or before another of them, never before a metal.
const ENDINGS = ["N", "O", "S", "F", "Cl", "Br", "I"];
const AMOUNT_AND_BRACKETS = /[1-9]\d*(?:[.,]\d+)?[([{]*/y;
const MORE_THAN_A_SYMBOL = /\d*(?:[)\]}]\d*)?[([{]*[A-Z]/y;
const AMMONIUM = "(NH4)";

// Whether every mark of one text joins: asked once a text, however many marks it has.
let known = "";
let allJoin = false;

/**
 * True where a full stop or comma between two digits joins a salt or an oxide to what stands before it: the first in
 * `ZnCl2.2NH4Cl`, both in `NiCO3.2Ni(OH)2.4H2O`. Where any other mark of the formula can only be a decimal mark, this one is too.
 */
export function joinsSalt(text: string, mark: number): boolean {
  if (!beginsSalt(text, mark)) return false;
  if (text !== known) {
    known = text;
    allJoin = everyMarkJoins(text);
  }
  return allJoin;
}

function everyMarkJoins(text: string): boolean {
  for (let at = 1; at < text.length; at++) {
    const isMark = (text.charAt(at) === "." || text.charAt(at) === ",") && isPlainDigit(text, at - 1) && isPlainDigit(text, at + 1);
    if (isMark && !isHydrateDot(text, at) && !beginsSalt(text, at)) return false;
  }
  return true;
}

const isPlainDigit = (text: string, at: number): boolean => /\d/.test(text.charAt(at));

function beginsSalt(text: string, mark: number): boolean {
  if (!endsInCounted(text, mark)) return false;
  AMOUNT_AND_BRACKETS.lastIndex = mark + 1;
  if (!AMOUNT_AND_BRACKETS.test(text)) return false;
  const part = AMOUNT_AND_BRACKETS.lastIndex;
  if (text.startsWith("NH4", part)) return true;
  const symbol = elementAt(text, part);
  if (symbol === undefined || !isMetal(symbol)) return false;
  MORE_THAN_A_SYMBOL.lastIndex = part + symbol.length;
  return MORE_THAN_A_SYMBOL.test(text);
}

/** True where a counted group of two symbols or more, or a counted symbol that salts end in, stands right before an index. */
function endsInCounted(text: string, end: number): boolean {
  let at = end - 1;
  while (countDigit(text.charCodeAt(at)) >= 0) at--;
  if (at === end - 1) return false;
  if (")]}".includes(text.charAt(at)) && at >= 0) return isGroupOfTwo(text, at) && !text.endsWith(AMMONIUM, at + 1);
  const start = isSmallLetter(text.charCodeAt(at)) ? at - 1 : at;
  return ENDINGS.includes(text.slice(start, at + 1));
}

/** Two symbols or more: a bracket round one is there to keep it apart. */
function isGroupOfTwo(text: string, close: number): boolean {
  let capitals = 0;
  for (let at = close - 1; at >= 0 && capitals < 2 && !"([{".includes(text.charAt(at)); at--) if (isCapital(text.charCodeAt(at))) capitals++;
  return capitals === 2;
}
