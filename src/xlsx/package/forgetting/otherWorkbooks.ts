import { tokenize, tokenTypes } from "@borgar/fx";
import type { EditableParts } from "../parts/EditableParts";
import { attributeOf, childNamed, childrenNamed, removal } from "../parts/markup";
import { holdsFormulas, mendFormulas } from "../besideCells/mendFormulas";
import { reachable, removeParts, unname } from "../parts/namedParts";
import { workbookOutline } from "../workbookOutline";

/**
 * Takes the links to other workbooks out of the file, with the cells of theirs that it keeps, where nothing reads one any more. Formulas count them,
 * so that all go or none.
 */
export async function forgetOtherWorkbooks(parts: EditableParts): Promise<void> {
  const { part, root } = await workbookOutline(parts);
  const list = childNamed(root, "externalReferences");
  if (list === undefined) return;
  const before = await reachable(parts);
  for (const one of before) if (holdsFormulas(one) && (await readsAnother(parts, one))) return;
  if (await readsAnother(parts, part)) return;
  await parts.edit(part, [removal(list)]);
  await unname(parts, part, new Set(childrenNamed(list, "externalReference").map((one) => attributeOf(one, "id") ?? "")));
  const after = await reachable(parts);
  await removeParts(parts, [...before].filter((one) => !after.has(one))); // prettier-ignore
}

async function readsAnother(parts: EditableParts, part: string): Promise<boolean> {
  let reads = false;
  await mendFormulas(parts, part, (formula) => {
    reads ||= tokenize(`=${formula}`).some(({ type, value }) => type !== tokenTypes.STRING && /\[\d+\]/.test(value));
    return formula;
  });
  return reads;
}
