import { relationshipsOf } from "../../parts/relationships";
import type { EditableParts } from "../parts/EditableParts";
import { attributeOf, childrenNamed, elementsOf, elementsThat, removal, withAttributes } from "../parts/markup";
import { unname } from "../parts/namedParts";
import type { Edit } from "../parts/partText";

/** Single cells of an XML map (ECMA-376 Part 1, 12.3.22). */
const MAPPED = "tableSingleCells";

/**
 * Makes the data of queries and XML maps on a sheet data like any others: a connection tells of places and of sheets that nobody is to be told of
 * (ECMA-376 Part 1, 18.12 and 18.13).
 * @returns the areas that were filled so; "" for one that is named nowhere
 */
export async function takeQueries(parts: EditableParts, sheet: string): Promise<readonly string[]> {
  const related = await relationshipsOf(parts, sheet);
  const taken: string[] = [];
  const ids = new Set<string>();
  for (const { id, type } of related) {
    if (type !== "queryTable" && type !== MAPPED) continue;
    taken.push("");
    ids.add(id);
  }
  if (ids.size > 0) await unname(parts, sheet, ids);
  for (const { target } of related.filter(({ type, target: part }) => type === "table" && parts.has(part))) {
    const area = await takeFromTable(parts, target);
    if (area !== undefined) taken.push(area);
  }
  return taken;
}

async function takeFromTable(parts: EditableParts, table: string): Promise<string | undefined> {
  const queries = new Set((await relationshipsOf(parts, table)).filter(({ type }) => type === "queryTable").map(({ id }) => id));
  const text = await parts.text(table);
  const root = elementsOf(table, text);
  const edits: Edit[] =
    elementsThat(root, ({ attributes }) => "queryTableFieldId" in attributes || "tableType" in attributes || "connectionId" in attributes) // prettier-ignore
      .map((one) => withAttributes(text, one, { queryTableFieldId: undefined, tableType: undefined, connectionId: undefined }));
  edits.push(...elementsThat(root, () => true).flatMap((one) => childrenNamed(one, "xmlColumnPr").map(removal)));
  if (queries.size === 0 && edits.length === 0) return undefined;
  await parts.edit(table, edits);
  if (queries.size > 0) await unname(parts, table, queries);
  return attributeOf(root, "ref") ?? "";
}
