import {
  amountOfNothing,
  nothingAfterDot,
  nothingBeforeDot,
  nothingToRead,
  numberNotFormula,
  stateNotLast,
} from "../../../problems/functions/formulaProblems";
import type { InputProblem } from "../../../problems/InputProblem";
import { closingKind } from "../brackets";
import { hydrateDots } from "../hydrates/hydrateDot";
import type { Reading } from "../Reading";
import { stateSymbol } from "../stateSymbol";
import { unreadableCharacter } from "./unreadableCharacter";

// A number as typed, groups of digits and all, before any power of ten.
const NUMBER = /^[-+]?[\d.,\s]*$/;
const POWER_OF_TEN = /[eE][-+]?\d+$/;

/**
 * The problem with a part of a formula that has no symbol in it; the reading stands behind the part's amount, if it has one.
 * @param start the index where the part begins
 * @param dot the index of the hydrate dot before it
 */
export function nothingHere(reading: Reading, start: number, dot: number | undefined): InputProblem {
  const { text, at } = reading;
  if (isNumber(text)) return numberNotFormula(reading.spot(start));
  const character = text.charAt(at);
  const isOver = character === "" || hydrateDots.includes(character) || closingKind(text.charCodeAt(at)) >= 0;
  if (at > start && isOver) return amountOfNothing(reading.spot(start), text.slice(start, at).trim());
  if (dot !== undefined && isOver) return nothingAfterDot(reading.spot(dot), text.charAt(dot));
  const state = stateSymbol(text, at);
  if (state !== undefined && reading.depth > 0) return stateNotLast(reading.spot(at), state);
  if (character === "" || state !== undefined) return nothingToRead(reading.spot(start));
  return hydrateDots.includes(character) ? nothingBeforeDot(reading.spot(at), character) : unreadableCharacter(reading.argument, text, at);
}

function isNumber(text: string): boolean {
  const digits = text.trim().replace(POWER_OF_TEN, "").trimEnd();
  return /\d[.,]?$/.test(digits.slice(-2)) && NUMBER.test(digits);
}
