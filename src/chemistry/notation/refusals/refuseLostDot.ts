import { lostDot } from "../../../problems/functions/formulaProblems";
import { canBalance } from "../../usualStates";

// An anion's or group's own count of one digit, then the amount of water, at the end: O45H2O, Cl26H2O, )24H2O.
const COUNT_AND_WATER = /([A-Z][a-z]?|[)\]}])([2-9])([1-9]\d?)(H2O)(?:\([a-z]{1,2}\))?\s*$/;
const IN_ITS_OWN_BRACKET = /[([{][A-Z][a-z]?[)\]}]$/;

/**
 * Refuses a count that a hydrate dot was lost from, as copying loses it: `CuSO45H2O`, `MgCl26H2O`. It is refused where the counts as read do
 * not balance and those with the dot do. A symbol in a bracket of its own, CuS(O)45H2O, is taken as meant.
 * @param totals how many of each atom the whole formula has
 * @param read the totals of another text; undefined where it cannot be read
 * @throws InputProblem
 */
export function refuseLostDot(
  { text, argument }: { readonly text: string; readonly argument: string },
  totals: ReadonlyMap<string, number>,
  charge: number,
  read: (text: string) => ReadonlyMap<string, number> | undefined,
): void {
  if (!text.includes("H2O", 1)) return;
  const found = COUNT_AND_WATER.exec(text);
  if (found === null) return;
  const [, before = "", count = "", amount = "", water = ""] = found;
  const split = found.index + before.length + count.length;
  if (IN_ITS_OWN_BRACKET.test(text.slice(0, split - count.length)) || canBalance(totals, charge)) return;
  const withDot = read(`${text.slice(0, split)}·${text.slice(split)}`);
  if (withDot !== undefined && canBalance(withDot, charge)) throw lostDot({ argument, text, index: split }, amount + water);
}
