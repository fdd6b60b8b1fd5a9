import type { Decomposition } from "../../decomposition/decompose";
import { numberText } from "../../inputs/numberText";
import { molarMassInCells } from "./formulaInCells";

/** A theoretical loss written out: 1 less what the residues of one formula of the start weigh, over its own molar mass. */
export function lossInCells({ start, residues }: Decomposition): string {
  const left = residues.map(({ formula, perStart }) => `${numberText(perStart)}*${molarMassInCells(formula.atoms)}`).join("+");
  return `(1-(${left})/${molarMassInCells(start.atoms)})`;
}
