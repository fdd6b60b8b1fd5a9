import { plainFormula } from "../../src/sharing/plain/plainFormula";
import type { Surroundings } from "../../src/sharing/plain/reading/Surroundings";

/** Nothing is known around the formula but the formula itself. */
const ALONE: Surroundings = {
  sheet: "",
  cell: "A1",
  area: "A1",
  nameOf: () => undefined,
  tableOf: () => undefined,
  spillOf: () => undefined,
};

/**
 * The cell formula with every Retort call written out in built-in functions in one cell, or undefined where one of its calls cannot be.
 * @param place what is known about the cell; left out, names and tables have no plain form
 */
export function inBuiltInFunctions(cellFormula: string, place: Surroundings = ALONE): string | undefined {
  const plain = plainFormula(cellFormula, place);
  return plain.kind === "formula" ? plain.formula : undefined;
}
