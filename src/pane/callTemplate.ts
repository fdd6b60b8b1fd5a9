import type { CellFunction } from "../functions/cellFunction";

const REFERENCE = /\b\$?[A-Z]{1,3}\$?\d+\b/;

/** The cell formula to start from: the function's example, one that refers to no cells where there is such a one. */
export function callTemplate({ examples, name }: CellFunction): string {
  const withoutText = (cell: string): string => cell.replace(/"[^"]*"/g, "");
  const chosen = examples.find(({ cell }) => !REFERENCE.test(withoutText(cell))) ?? examples[0];
  if (chosen === undefined) throw new Error(`${name} has no example`);
  return chosen.cell;
}
