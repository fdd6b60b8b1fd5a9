import { isotopicMasses } from "../isotopicMasses";

/** The symbol a nuclide goes by, "D" and "T" for those of hydrogen; undefined where its mass is not in the table. */
export function nuclideSymbol(massNumber: string, element: string): string | undefined {
  const symbol = `${massNumber}${element}`;
  const known = { "2H": "D", "3H": "T" }[symbol] ?? symbol;
  return isotopicMasses.has(known) ? known : undefined;
}
