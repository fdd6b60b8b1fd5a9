import { relationshipsOf } from "../../parts/relationships";
import type { EditableParts } from "../parts/EditableParts";
import { removeParts, unname } from "../parts/namedParts";
import type { Outline } from "../workbookOutline";

/**
 * Takes out the order in which the formulas were last calculated (ECMA-376 Part 1, 12.3.1). Entries of cells that no longer hold a formula
 * make Excel call the file damaged; without the part it works the order out anew.
 */
export async function dropCalculationChain(parts: EditableParts, { part }: Outline): Promise<void> {
  const chains = (await relationshipsOf(parts, part)).filter(({ type }) => type === "calcChain");
  if (chains.length === 0) return;
  await unname(parts, part, new Set(chains.map(({ id }) => id)));
  await removeParts(parts, chains.map(({ target }) => target)); // prettier-ignore
}
