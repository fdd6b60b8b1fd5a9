import { relationshipsOf } from "../../parts/relationships";
import type { EditableParts } from "../parts/EditableParts";
import { attributeOf, elementsOf, elementsThat, removal } from "../parts/markup";
import { unname } from "../parts/namedParts";
import { workbookOutline } from "../workbookOutline";

/** Takes those out of a file's list of people who comment on no sheet of it and are not spoken to on one ([MS-XLSX], threaded comments). */
export async function forgetPeopleWithoutComments(parts: EditableParts): Promise<void> {
  const { part, sheets } = await workbookOutline(parts);
  const there = new Set<string>();
  for (const sheet of sheets)
    for (const { type, target } of await relationshipsOf(parts, sheet.part)) {
      if (type !== "threadedComment" || !parts.has(target)) continue;
      const said = elementsOf(target, await parts.text(target));
      for (const one of elementsThat(said, () => true)) for (const name of ["personId", "mentionpersonId"]) there.add(attributeOf(one, name) ?? "");
    }
  for (const { id, type, target } of await relationshipsOf(parts, part)) {
    if (type !== "person" || !parts.has(target)) continue;
    const { children } = elementsOf(target, await parts.text(target));
    const gone = children.filter((one) => one.name !== "person" || !there.has(attributeOf(one, "id") ?? ""));
    if (gone.length === children.length) await unname(parts, part, new Set([id]));
    else await parts.edit(target, gone.map(removal));
  }
}
