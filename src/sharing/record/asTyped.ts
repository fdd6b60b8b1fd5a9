import { NAMESPACE } from "../../functions/catalogue";
import { findCalls } from "../findCalls";

/** The cell formula with every Retort call under the name a person types, whatever form the workbook stores it in. */
export const asTyped = (cellFormula: string): string =>
  findCalls(cellFormula).reduceRight(
    (text, { name, start, bracket }) => `${text.slice(0, start)}${NAMESPACE}.${name}${text.slice(bracket)}`,
    cellFormula,
  );
