import { multipliedIon, stateNotLast } from "../../problems/formulaProblems";
import { readCharge } from "./readCharge";
import type { Reading } from "./Reading";
import { stateSymbol } from "./stateSymbol";
import { unreadableCharacter } from "./unreadableCharacter";

/**
 * Reads a charge and a state, if any, to the end of the text.
 * @returns the charge in units of the elementary charge
 * @throws InputProblem where anything else follows, or an amount multiplies an ion
 */
export function readEnding(reading: Reading): number {
  const { text, argument } = reading;
  if (reading.at === text.length) return 0;
  const charge = readCharge(argument, text, reading.at);
  if (charge !== undefined) {
    if (reading.firstAmountEnd > 0) throw multipliedFormula(reading);
    reading.at = charge.end;
  }
  reading.skipSpaces();
  const state = stateSymbol(text, reading.at);
  if (text.slice(reading.at + (state?.length ?? 0)).trim() === "") return charge?.charge ?? 0;
  throw state === undefined ? unreadableCharacter(argument, text, reading.at) : stateNotLast(reading.spot(reading.at), state);
}

function multipliedFormula(reading: Reading): Error {
  const { text, firstAmountEnd } = reading;
  const seen = text.slice(0, firstAmountEnd).trimStart();
  return multipliedIon(reading.spot(firstAmountEnd - seen.length), seen);
}
