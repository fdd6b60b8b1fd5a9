import { isMetal } from "../../isMetal";
import { elementAt } from "../elementAt";
import { isHydrateDot } from "./hydrateDot";

// What salts and oxides end in; a decimal count of these stands last or before another of them, never before a metal.
const ENDINGS = ["N", "O", "S", "F", "Cl", "Br", "I"];
const COUNTED = /([A-Z][a-z]?)\d+$/;
// Two symbols or more: a bracket round one is there to keep it apart.
const COUNTED_GROUP = /[A-Z][^([{]*[A-Z][^([{]*[)\]}]\d+$/;
const AMOUNT_AND_BRACKETS = /^[1-9]\d*(?:[.,]\d+)?[([{]*/;
const ALREADY_AMMONIUM = /\(NH4\)\d+$/;
const BETWEEN_DIGITS = /^\d[.,]\d$/;

/**
 * True where a full stop or comma between two digits joins a salt or an oxide to what stands before it: the first in
 * `ZnCl2.2NH4Cl`, both in `NiCO3.2Ni(OH)2.4H2O`. Where any other mark of the formula can only be a decimal mark, this one is too.
 */
export const joinsSalt = (text: string, mark: number): boolean =>
  beginsSalt(text, mark) && marksBetweenDigits(text).every((at) => isHydrateDot(text, at) || beginsSalt(text, at));

const marksBetweenDigits = (text: string): number[] =>
  Array.from({ length: text.length }, (_, at) => at).filter((at) => at > 0 && BETWEEN_DIGITS.test(text.slice(at - 1, at + 2)));

function beginsSalt(text: string, mark: number): boolean {
  const before = text.slice(0, mark);
  const isCounted = COUNTED_GROUP.test(before) ? !ALREADY_AMMONIUM.test(before) : ENDINGS.includes(COUNTED.exec(before)?.[1] ?? "");
  if (!isCounted) return false;
  const after = text.slice(mark + 1);
  const amount = AMOUNT_AND_BRACKETS.exec(after)?.[0];
  if (amount === undefined) return false;
  const part = after.slice(amount.length);
  if (part.startsWith("NH4")) return true;
  const symbol = elementAt(part, 0);
  return symbol !== undefined && isMetal(symbol) && /^\d*[)\]}]?\d*[([{]*[A-Z]/.test(part.slice(symbol.length));
}
