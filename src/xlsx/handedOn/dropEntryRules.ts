import type { EditableParts } from "../package/EditableParts";
import { readMarkup, type Tag } from "../package/markup";
import type { Edit } from "../package/partText";

/**
 * Takes the rules for entries out of a sheet's part, with their prompts and lists: those of the format, and those of its later version, which
 * stand in an extension (ECMA-376 Part 1, 18.3.1.33; [MS-XLSX] 2.3.1).
 */
export async function dropEntryRules(parts: EditableParts, part: string): Promise<void> {
  const text = await parts.text(part);
  const edits: Edit[] = [];
  const open: (Tag & { holdsRules?: boolean })[] = [];
  readMarkup(part, text, {
    open: (tag) => {
      const extension = open.find(({ name }) => name === "ext");
      if (tag.name === "dataValidations" && extension !== undefined) extension.holdsRules = true;
      open.push({ ...tag });
    },
    close: (name, close) => {
      const tag = open.pop();
      if (tag === undefined) return;
      const isRules = name === "dataValidations" && open.length === 1;
      if (isRules || (name === "ext" && tag.holdsRules === true)) edits.push({ from: tag.start, to: close.end, text: "" });
    },
  });
  await parts.edit(part, edits);
}
