import type { Formula } from "../../../../src/chemistry/Formula";
import { molarMass } from "../../../../src/chemistry/molarMass";
import { molarMassOf } from "../../../../src/chemistry/molarMassOf";
import { plainFormula } from "../../../../src/chemistry/notation/plain/plainFormula";
import { readFormula } from "../../../../src/chemistry/notation/readFormula";

// Numbers are told with as many digits as tell them from any other.
const told = ({ atoms, charge, notes }: Formula, mass: number): string => JSON.stringify([[...atoms], charge, notes, mass]);

function fullReading(text: string): string {
  try {
    const formula = readFormula(text, "formula");
    return told(formula, molarMass(formula));
  } catch (problem) {
    return String(problem);
  }
}

/**
 * Reads a text by scanning it and, where the scan takes it, with the full reader too; what the scan leaves is the full reader's alone.
 * @returns whether the scan took the text, and where the two disagree: in atoms, their order, counts, charge, notes, mass or refusal, to the last bit
 */
export function readTwice(text: string): { readonly isPlain: boolean; readonly apart?: string } {
  const plain = plainFormula(text);
  if (plain === undefined) return { isPlain: false };
  const scanned = told(plain, molarMassOf(text));
  const full = fullReading(text);
  return scanned === full ? { isPlain: true } : { isPlain: true, apart: `${text} is ${scanned} for ${full}` };
}
