import {
  caretAlone,
  chargeTooLarge,
  isotopeByHyphen,
  massNumberOfTracer,
  moreAfterCharge,
  multipliedIon,
  reactionOrArithmetic,
  stateNotLast,
  superscriptAlone,
} from "../../problems/functions/formulaProblems";
import { chargeSign, countDigit, skipSpaces, superscriptDigit } from "./characters";
import { isNuclide, isTracer } from "./nuclides";
import type { Reading } from "./Reading";
import { unreadableCharacter } from "./refusals/unreadableCharacter";
import { stateSymbol } from "./stateSymbol";

/**
 * Reads a charge and a state, if any, to the end of the text.
 * @returns the charge in units of the elementary charge
 * @throws InputProblem where anything else follows, or an amount multiplies an ion
 */
export function readChargeAndState(reading: Reading): number {
  const { text, argument } = reading;
  if (reading.at === text.length) return 0;
  refuseIsotopeByHyphen(reading);
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

/** `C-14`, `He-3`: the name of an isotope, where `O-2` is a charge behind its sign. */
function refuseIsotopeByHyphen(reading: Reading): void {
  if (reading.atoms.length !== 1) return;
  const [seen, element = "", digits = ""] = /^\s*([A-Z][a-z]?)[-‐‑–](\d{1,3})\s*$/.exec(reading.text) ?? [];
  if (seen === undefined || seen.trim() === "H-1") return;
  const spot = reading.spot(reading.text.indexOf(element));
  if (isTracer(digits, element)) throw massNumberOfTracer(spot, digits, element);
  if (isNuclide(digits, element)) throw isotopeByHyphen(spot, seen.trim(), digits + element);
}

function multipliedFormula(reading: Reading): Error {
  const { text, firstAmountEnd } = reading;
  const seen = text.slice(0, firstAmountEnd).trimStart();
  return multipliedIon(reading.spot(firstAmountEnd - seen.length), seen);
}

interface Charge {
  /** In units of the elementary charge. */
  readonly charge: number;
  /** The index after it. */
  readonly end: number;
}

// `^2-`, `²⁻`, ` 2-`, `^{2-}`: a size of at most two digits, then the sign.
const SIZE_FIRST = 2;
// Beyond the largest oxide cluster anyone has weighed; a limit of sense, chosen here.
const LARGEST_CHARGE = 99;

/**
 * The charge at an index, in any of its written forms: `^2-`, ` 2-`, `²⁻`, `+`, `--`, `-2`, `^{2-}`. It stands last but for a state symbol.
 * @returns undefined where nothing at the index begins one
 * @throws InputProblem where a caret or superscript leads nowhere, where more follows, and for a size no ion has
 */
function readCharge(argument: string, text: string, from: number): Charge | undefined {
  const at = skipSpaces(text, from);
  const spot = { argument, text, index: at };
  const caret = text.charAt(at) === "^";
  const wrapped = caret && (text.charAt(at + 1) === "{" || text.charAt(at + 1) === "(");
  const sizeAt = at + (caret ? 1 : 0) + (wrapped ? 1 : 0);
  const size = sizeFrom(text, sizeAt);
  const signAt = sizeAt + size.length;
  const sign = chargeSign(text.charAt(signAt));
  if (sign === 0) {
    if (caret) throw caretAlone(spot);
    if (superscriptDigit(text.charAt(at)) >= 0) throw superscriptAlone(spot, size);
    return undefined;
  }
  let end = signAt + 1;
  if (size === "") while (chargeSign(text.charAt(end)) === sign) end++;
  const sizeAfter = size === "" && end === signAt + 1 ? sizeFrom(text, end) : "";
  const signs = end - signAt;
  end += sizeAfter.length;
  if (wrapped) {
    if (!"})".includes(text.charAt(end)) || end === text.length) throw caretAlone(spot);
    end++;
  }
  refuseMore(argument, text, signAt, end);
  const written = size === "" && sizeAfter === "" ? signs : valueOf(size + sizeAfter);
  if (written === 0 || written > LARGEST_CHARGE || size.length > SIZE_FIRST || sizeAfter.length > 1) throw chargeTooLarge(spot, text.slice(at, end));
  return { charge: sign * written, end };
}

function refuseMore(argument: string, text: string, signAt: number, end: number): void {
  const rest = skipSpaces(text, end);
  if (text.slice(rest).trim() === "" || stateSymbol(text, rest) !== undefined) return;
  const spot = { argument, text, index: signAt };
  const seen = text.slice(signAt, signAt + 1);
  throw text.charAt(rest) === ">" ? reactionOrArithmetic(spot, `${seen}>`) : moreAfterCharge(spot, seen);
}

const valueOfDigit = (character: string): number => Math.max(superscriptDigit(character), countDigit(character.charCodeAt(0)));

const valueOf = (digits: string): number => Number(Array.from(digits, valueOfDigit).join(""));

function sizeFrom(text: string, at: number): string {
  let end = at;
  while (valueOfDigit(text.charAt(end)) >= 0) end++;
  return text.slice(at, end);
}
