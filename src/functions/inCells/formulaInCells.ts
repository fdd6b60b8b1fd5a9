import { atomicWeight } from "../../chemistry/atomicWeights";
import type { Formula } from "../../chemistry/Formula";
import { parseFormula } from "../../chemistry/parseFormula";
import { numberText } from "../../inputs/numberText";
import { isTypedText, typedTextOf } from "./typedInCells";

/**
 * The chemical formula that stands in a call, taken apart once and for all; undefined where a cell holds it, which built-in functions
 * cannot read.
 * @throws InputProblem for a formula that does not read
 */
export const typedFormulaOf = (text: string): Formula | undefined => (isTypedText(text) ? parseFormula(typedTextOf(text)) : undefined);

/** A molar mass written out, count times atomic weight: "(1*40.078+1*12.011+3*15.999)". */
export const molarMassInCells = (atoms: ReadonlyMap<string, number>): string =>
  `(${[...atoms].map(([symbol, count]) => `${numberText(count)}*${numberText(atomicWeight(symbol))}`).join("+")})`;

/** A text in a table of cells. */
export const label = (text: string): string => `"${text.replace(/"/g, '""')}"`;

const OXYGEN_ATOMS = 2;

/** The molar mass of O2 written out. */
export const oxygenInCells = (): string => `${OXYGEN_ATOMS}*${numberText(atomicWeight("O"))}`;
