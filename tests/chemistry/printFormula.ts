import { InputProblem } from "../../src/problems/InputProblem";
import type { Formula } from "../../src/chemistry/Formula";
import { parseFormula } from "../../src/chemistry/parseFormula";

/**
 * A formula's atoms in Hill's order (carbon, hydrogen, then the alphabet; the alphabet alone without carbon) with its charge,
 * as text that reads back to the same atoms. Source of the order: E. A. Hill, J. Am. Chem. Soc. 22 (1900) 478-494.
 */
export function printFormula(formula: Pick<Formula, "atoms" | "charge">): string {
  const atoms = inHillOrder(formula.atoms);
  const charge = printCharge(formula.charge);
  const plain = atoms.map(([symbol, count]) => printSymbol(symbol) + (count === 1 ? "" : String(count))).join("") + charge;
  if (readsBack(plain, formula)) return plain;
  return (
    atoms.map(([symbol, count]) => `${/\d/.test(symbol) ? printSymbol(symbol) : `(${symbol})`}${count === 1 ? "" : String(count)}`).join("") + charge
  );
}

const printSymbol = (symbol: string): string => (/\d/.test(symbol) ? `[${symbol}]` : symbol);

function printCharge(charge: number): string {
  if (charge === 0) return "";
  const size = Math.abs(charge);
  return `^${size === 1 ? "" : size}${charge > 0 ? "+" : "-"}`;
}

function inHillOrder(atoms: ReadonlyMap<string, number>): [string, number][] {
  const letters = (symbol: string): string => symbol.replace(/\d/g, "");
  const rank = (symbol: string): number => (!atoms.has("C") ? 0 : letters(symbol) === "C" ? -2 : letters(symbol) === "H" ? -1 : 0);
  const order = (a: string, b: string): number => rank(a) - rank(b) || (letters(a) < letters(b) ? -1 : letters(a) > letters(b) ? 1 : a < b ? -1 : 1);
  return [...atoms].sort(([a], [b]) => (a === "C" ? -1 : b === "C" ? 1 : order(a, b)));
}

/** False where the plain text would be refused as a slip (H20) or read another way (C1.5H2O has a hydrate's full stop). */
function readsBack(text: string, { atoms, charge }: Pick<Formula, "atoms" | "charge">): boolean {
  try {
    const read = parseFormula(text);
    return read.charge === charge && read.atoms.size === atoms.size && [...atoms].every(([symbol, count]) => read.atoms.get(symbol) === count);
  } catch (problem) {
    if (problem instanceof InputProblem) return false;
    throw problem;
  }
}
