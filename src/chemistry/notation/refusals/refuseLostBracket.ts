import { lostBracket } from "../../../problems/functions/formulaProblems";
import { canBalance } from "../../usualStates";

// A group with its own count and then how many of it, as a pasted text has them that lost its bracket: NO32 for (NO3)2.
// Cyanide is left out: CaCN2 is the cyanamide.
const GROUP_AND_COUNT = /(HCO3|HSO4|H2PO4|HPO4|NO[23]|CO3|SO[34]|PO4|ClO[34]|CrO4|MnO4|C2O4|OH|NH4)([2-6])(?!\d)/g;

/**
 * Refuses a formula that a bracket was lost from: `CaNO32`, `Al2SO43`, `NH42SO4`, `MgOH2`. It is refused where the counts as read do not
 * balance and those with the bracket do. A symbol in a bracket of its own, CaN(O)32, is taken as meant.
 * @param totals how many of each atom the whole formula has
 * @param read the totals of another text; undefined where it cannot be read
 * @throws InputProblem
 */
export function refuseLostBracket(
  { text, argument }: { readonly text: string; readonly argument: string },
  totals: ReadonlyMap<string, number>,
  charge: number,
  read: (text: string) => ReadonlyMap<string, number> | undefined,
): void {
  GROUP_AND_COUNT.lastIndex = 0;
  const found = GROUP_AND_COUNT.exec(text);
  if (found === null || canBalance(totals, charge)) return;
  const [seen, group = "", count = ""] = found;
  // Water as a ligand, and oxalate, whose carbon is between its usual states.
  if (group === "OH" && ("([{".includes(text.charAt(found.index - 1) || " ") || text.includes("C2O4"))) return;
  const withBracket = read(text.replace(GROUP_AND_COUNT, "($1)$2"));
  if (withBracket !== undefined && canBalance(withBracket, charge))
    throw lostBracket({ argument, text, index: found.index }, seen, `(${group})${count}`);
}
