import { chargeInBracket, notClosed, stateNotLast, wrongBracket } from "../../problems/formulaProblems";
import type { InputProblem } from "../../problems/InputProblem";
import { closingKind, openingKind } from "./bracketKinds";
import { chargeSign } from "./chargeSign";
import type { Reading } from "./Reading";
import { stateSymbol } from "./stateSymbol";
import { superscriptDigit } from "./superscriptDigit";
import { unreadableCharacter } from "./unreadableCharacter";

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
