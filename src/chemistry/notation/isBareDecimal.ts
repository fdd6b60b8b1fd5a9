import { isMetal } from "../isMetal";
import { countDigit } from "./countDigit";
import { isHydrateDot } from "./isHydrateDot";

/**
 * True where a full stop and digits stand right behind a metal without a count: `Fe.947O`, a decimal without its 0. Only before a
 * hydrate's water and its like is it a hydrate dot, as in `CH3COONa.3H2O`.
 */
export function isBareDecimal(text: string, mark: number): boolean {
  if (text.charAt(mark) !== "." || !(countDigit(text.charCodeAt(mark + 1)) >= 0)) return false;
  const symbol = /[A-Z][a-z]?$/.exec(text.slice(0, mark))?.[0];
  return symbol !== undefined && isMetal(symbol) && !isHydrateDot(text, mark);
}
