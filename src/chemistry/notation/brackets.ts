import { chargeInBracket, emptyBracket, notClosed, stateNotLast, wrongBracket } from "../../problems/functions/formulaProblems";
import type { InputProblem } from "../../problems/InputProblem";
import { chargeSign, superscriptDigit } from "./characters";
import type { Reading } from "./Reading";
import { unreadableCharacter } from "./refusals/unreadableCharacter";
import { stateSymbol } from "./stateSymbol";

// Opening brackets, plain, subscript and full-width; each has its partner at the same index below.
const OPENING = "([{₍（";
const CLOSING = ")]}₎）";
// The first of each, and by far the most frequent, is told without a search.
const ROUND_OPENS = OPENING.charCodeAt(0);
const ROUND_CLOSES = CLOSING.charCodeAt(0);

/** Which kind of bracket a character code opens; -1 for none. */
export const openingKind = (code: number): number => (code === ROUND_OPENS ? 0 : OPENING.indexOf(String.fromCharCode(code)));

/** Which kind of bracket a character code closes; -1 for none. */
export const closingKind = (code: number): number => (code === ROUND_CLOSES ? 0 : CLOSING.indexOf(String.fromCharCode(code)));

/**
 * Lets the reading stand where something can follow the bracket at an index.
 * @throws InputProblem where a bracket closes there at once
 */
export function refuseEmptyGroup(reading: Reading, open: number): void {
  const { text, at } = reading;
  const kind = closingKind(text.charCodeAt(at));
  if (at >= text.length || kind < 0) return;
  const [opening, closing] = [text.charAt(open), text.charAt(at)];
  if (kind !== openingKind(text.charCodeAt(open))) throw wrongBracket(reading.spot(at), closing, opening);
  throw emptyBracket(reading.spot(open), opening + closing);
}

/**
 * Reads the partner of the bracket at an index.
 * @throws InputProblem where something else stands in its place
 */
export function closeGroup(reading: Reading, open: number): void {
  const { text } = reading;
  reading.skipSpaces();
  const { at } = reading;
  if (at >= text.length) throw notClosed(reading.spot(open), text.charAt(open));
  const kind = closingKind(text.charCodeAt(at));
  if (kind < 0) throw unreadableInBracket(reading, text.charAt(at));
  if (kind !== openingKind(text.charCodeAt(open))) throw wrongBracket(reading.spot(at), text.charAt(at), text.charAt(open));
  reading.at++;
}

function unreadableInBracket(reading: Reading, character: string): InputProblem {
  const { argument, text, at } = reading;
  const state = stateSymbol(text, at);
  if (state !== undefined) return stateNotLast(reading.spot(at), state);
  const isCharge = character === "^" || chargeSign(character) !== 0 || superscriptDigit(character) >= 0;
  return isCharge ? chargeInBracket(reading.spot(at), character) : unreadableCharacter(argument, text, at);
}
