import { parseFormula } from "../../chemistry/parseFormula";
import { decompose } from "../../decomposition/decompose";
import type { RunSheetOptions } from "./RunSheetOptions";

/**
 * Formulas of a salt that are given can be read, and the residue can come from the start; a blank one is filled in on the sheet.
 * @throws InputProblem naming the formula or the residue
 */
export function heldToChemistry({ formula, residue }: RunSheetOptions): void {
  if (formula !== undefined) parseFormula(formula, "formula");
  if (residue !== undefined && formula === undefined) parseFormula(residue, "residue");
  if (formula !== undefined && residue !== undefined) decompose(formula, residue, undefined, { start: "formula", residue: "residue" });
}
