import { nothingBurns, oxygenAlone } from "../../problems/functions/burningProblems";
import { plainNumber } from "../../problems/quoted";
import type { Formula } from "../Formula";
import { burnReaction } from "./burnReaction";
import { ROUNDING_RESIDUE } from "./roundingResidue";

type Term = readonly [coefficient: number, text: string];

/**
 * The balanced reaction of complete burning, a fuel + b O2 → c CO2 + d H2O and so on: in smallest whole numbers when the formula's counts
 * are whole, else for one formula unit with decimals. Oxygen given off stands last on the right. The coefficients are those of burnReaction
 * times one scale, not a solved system of equations: the products are settled, so each coefficient follows from its element alone.
 * @throws InputProblem as burnReaction; NoAnswer when the formula is an end product itself, or oxygen alone
 */
export function burnEquation(formula: Formula): string {
  const { oxygen, products } = burnReaction(formula);
  const isProductAlready = products.length === 1 && Math.abs(oxygen) <= ROUNDING_RESIDUE;
  if (products.length === 0) throw oxygenAlone(formula.text);
  if (isProductAlready) throw nothingBurns(formula.text);
  const scale = scaleOf(formula, [oxygen, ...products.map(({ moles }) => moles)]);
  const oxygenTerm: Term = [Math.abs(oxygen) * scale, "O2"];
  const left: Term[] = [[scale, formula.text.trim()], ...(oxygen > ROUNDING_RESIDUE ? [oxygenTerm] : [])];
  const right: Term[] = [...products.map(({ moles, text }): Term => [moles * scale, text]), ...(oxygen < -ROUNDING_RESIDUE ? [oxygenTerm] : [])];
  return `${side(left)} → ${side(right)}`;
}

/**
 * How many formula units give the smallest whole numbers; 1 where the formula's own counts are not whole. For whole
 * counts every coefficient is a multiple of 1/4 (O2 by its hydrogen, P4O10 by its phosphorus), exact in binary.
 */
function scaleOf(formula: Formula, coefficients: readonly number[]): number {
  if (![...formula.atoms.values()].every(Number.isInteger)) return 1;
  return 1 / coefficients.reduce((common, coefficient) => greatestCommonDivisor(common, Math.abs(coefficient)), 1);
}

const greatestCommonDivisor = (a: number, b: number): number => (b === 0 ? a : greatestCommonDivisor(b, a % b));

const side = (terms: readonly Term[]): string => terms.map(term).join(" + ");

const term = ([coefficient, text]: Term): string => {
  const shown = plainNumber(coefficient);
  return shown === "1" ? text : `${shown} ${/^\d/.test(text) ? `(${text})` : text}`;
};
