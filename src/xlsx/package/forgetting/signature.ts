import { relationshipsOf, type Relationship } from "../../parts/relationships";
import type { PartSource } from "../../parts/FileParts";
import type { EditableParts } from "../parts/EditableParts";
import { sweepUnreachable, unname } from "../parts/namedParts";

/** What names the signatures of a file (ECMA-376 Part 2, 10.4.2). */
const signedBy = async (parts: PartSource): Promise<readonly Relationship[]> =>
  (await relationshipsOf(parts, "")).filter(({ type, target }) => type === "origin" && parts.has(target));

/** True for a file with a digital signature over its parts; that of macros alone is another. */
export const isSigned = async (parts: PartSource): Promise<boolean> => (await signedBy(parts)).length > 0;

/** Takes the signatures of a file out: they no longer hold once a part is another, and programs then warn of a file that was tampered with. */
export async function dropSignatures(parts: EditableParts): Promise<void> {
  const origins = await signedBy(parts);
  if (origins.length === 0) return;
  await sweepUnreachable(parts, () => unname(parts, "", new Set(origins.map(({ id }) => id))));
}
