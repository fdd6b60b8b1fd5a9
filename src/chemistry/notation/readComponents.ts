import {
  bareDecimal,
  nestedTooDeep,
  notClosed,
  numberApart,
  oxidationStateGiven,
  percentSign,
  spaceInside,
  twoFullStops,
} from "../../problems/functions/formulaProblems";
import { closeGroup, openingKind, refuseEmptyGroup } from "./brackets";
import { chargeSign, countDigit, isCapital, isSmallLetter, isSpace, skipSpaces, superscriptDigit } from "./characters";
import { readAmount } from "./counts/readAmount";
import { readCount } from "./counts/readCount";
import { elementAt } from "./elementAt";
import { formulaNotes } from "./formulaNotes";
import { hydrateDots, isBareDecimal, isBehindDecimals } from "./hydrates/hydrateDot";
import { massNumberAt, readBracketedIsotope, readIsotope, readLoneIsotope, refuseIsotopeInBracket } from "./isotopes";
import type { Reading } from "./Reading";
import { nothingHere } from "./refusals/nothingHere";
import { oxidationState } from "./refusals/oxidationState";
import { unreadableCharacter } from "./refusals/unreadableCharacter";
import { stateSymbol } from "./stateSymbol";

// The whole recursion of the notation stands in this file:
//   components = component { hydrate-dot component }
//   component  = [amount] unit { unit }
//   unit       = symbol [count] | mass-number symbol [count] | bracket components partner [count]

const BRACKET_OPENS = 0x28;
const BRACKET_CLOSES = 0x29;
// Deeper than any compound is written; a limit of sense, chosen here.
const DEEPEST = 20;

/**
 * Reads parts joined by hydrate dots, `CuSO4` and `5H2O`, up to what can be neither.
 * @throws InputProblem
 */
export function readComponents(reading: Reading): void {
  const { text } = reading;
  readComponent(reading, undefined);
  for (;;) {
    const dot = skipSpaces(text, reading.at);
    // What most parts end in, kept free of a search.
    if (dot === text.length || text.charCodeAt(dot) === BRACKET_CLOSES || !hydrateDots.includes(text.charAt(dot))) return;
    if (isBareDecimal(text, dot)) throw bareDecimal(reading.spot(dot), /^\.[\d₀-₉]+/.exec(text.slice(dot))?.[0] ?? ".");
    if (text.charAt(dot) === "." && isBehindDecimals(text, dot)) throw twoFullStops(reading.spot(dot));
    if (text.charAt(dot) === ".") reading.note(formulaNotes.hydrateDot(reading.characterAt(dot)));
    if (text.charAt(dot) === "*") reading.note(formulaNotes.hydrateDot(reading.characterAt(dot), "*"));
    reading.at = skipSpaces(text, dot + 1);
    readComponent(reading, dot);
  }
}

/**
 * Reads an amount, if any, and the symbols and brackets it multiplies.
 * @param dot the index of the hydrate dot before them
 * @throws InputProblem
 */
function readComponent(reading: Reading, dot: number | undefined): void {
  const { atoms, at: start } = reading;
  const first = atoms.length;
  const code = reading.text.charCodeAt(start);
  // Most parts begin with a symbol or a bracket; only the others can begin with an amount.
  const amount = isCapital(code) || code === BRACKET_OPENS ? undefined : readAmount(reading, start, "amount");
  if (amount !== undefined) {
    const standsFirst = dot === undefined && reading.depth === 0;
    if (standsFirst && readLoneIsotope(reading, amount.end)) return;
    if (dot === undefined && !standsFirst) refuseIsotopeInBracket(reading, amount.end);
    reading.at = amount.end;
    reading.skipSpaces();
    if (standsFirst) reading.firstAmountEnd = amount.end;
  }
  readUnits(reading);
  if (atoms.length === first) throw nothingHere(reading, start, dot);
  if (amount !== undefined) atoms.multiply(first, amount.value);
}

/**
 * Reads symbols and brackets in a row. Spaces may stand between single ones (C6 H12 O6), as in Hill's order.
 * @throws InputProblem
 */
function readUnits(reading: Reading): void {
  const { text } = reading;
  let sinceSpace = 0;
  let space = -1;
  for (;;) {
    const code = text.charCodeAt(reading.at);
    const isSymbol = isCapital(code);
    if (!isSymbol && isSpace(code)) {
      const next = skipSpaces(text, reading.at);
      if (!isUnitAt(text, next)) return refuseNumberApart(reading, next);
      if (sinceSpace !== 1) throw spaceInside(reading.spot(reading.at));
      space = reading.at;
      sinceSpace = 0;
      reading.at = next;
      continue;
    }
    if (!isSymbol && !isUnitAt(text, reading.at)) return;
    if (space >= 0 && sinceSpace > 0) throw spaceInside(reading.spot(space));
    if (isSymbol) readAtom(reading);
    else if (openingKind(code) >= 0) readGroup(reading);
    else readIsotope(reading);
    sinceSpace++;
  }
}

function refuseNumberApart(reading: Reading, index: number): void {
  const { text } = reading;
  const amount = countDigit(text.charCodeAt(index)) >= 0 ? /^[\d.,]+/.exec(text.slice(index))?.[0] : undefined;
  if (amount === undefined) return;
  const next = skipSpaces(text, index + amount.length);
  if (text.charAt(next) === "%") throw percentSign(reading.spot(next));
  if (chargeSign(text.charAt(next)) === 0) throw numberApart(reading.spot(index), amount);
}

/** True where a symbol, a bracket that is no state, or a mass number with its symbol begins at an index. */
function isUnitAt(text: string, index: number): boolean {
  const code = text.charCodeAt(index);
  if (isCapital(code)) return true;
  // What most rows of symbols end in, kept free of a search.
  if (index >= text.length || code === BRACKET_CLOSES) return false;
  if (openingKind(code) >= 0) return stateSymbol(text, index) === undefined;
  const character = text.charAt(index);
  return (character === "^" || superscriptDigit(character) >= 0) && massNumberAt(text, index) !== undefined;
}

/**
 * Reads an element's symbol and its count.
 * @throws InputProblem where the capital begins no element, or small letters are left over
 */
function readAtom(reading: Reading): void {
  const { text, atoms, at: start } = reading;
  const symbol = elementAt(text, start);
  const end = start + (symbol?.length ?? 0);
  if (symbol === undefined || isSmallLetter(text.charCodeAt(end))) throw unreadableCharacter(reading.argument, text, start);
  reading.at = end;
  reading.symbolAt = start;
  const count = readCount(reading, undefined, atoms.length);
  atoms.add(symbol, count, start, end, reading.at);
}

/**
 * Reads a bracket, what is in it, its partner and its count.
 * @throws InputProblem
 */
function readGroup(reading: Reading): void {
  const { text, atoms, at: open } = reading;
  const opening = text.charAt(open);
  const first = atoms.length;
  const state = oxidationState(text, open);
  if (state !== undefined) throw oxidationStateGiven(reading.spot(open), state);
  if (reading.depth === DEEPEST) throw nestedTooDeep(reading.spot(open), opening, DEEPEST);
  reading.depth++;
  reading.at++;
  reading.skipSpaces();
  if (reading.at >= text.length) throw notClosed(reading.spot(open), opening);
  if (!readBracketedIsotope(reading, opening)) {
    refuseEmptyGroup(reading, open);
    readComponents(reading);
  }
  closeGroup(reading, open);
  reading.depth--;
  const count = readCount(reading, opening, first);
  if (count !== 1) atoms.multiply(first, count);
}
