import { relationshipsOf } from "../../parts/relationships";
import { tablesIn } from "../namesAndTables";
import { quotedSheet } from "../../../workbook/quotedSheet";
import type { EditableParts } from "../parts/EditableParts";
import { attributeOf, childNamed, elementsOf } from "../parts/markup";
import { unname } from "../parts/namedParts";
import { hasChoosers } from "../forgetting/pivots";

/**
 * Takes the pivot tables out whose data stand on what goes, be they named by a sheet, a name or a table (ECMA-376 Part 1, 18.10.1.95); the values that
 * they show stay in the cells.
 * @param isStaying tells the sheets that stay
 * @returns where they stood
 */
export async function takePivotsOfGone(
  parts: EditableParts,
  sheet: string,
  isGone: (formula: string) => boolean,
  isStaying: (sheet: string) => boolean,
): Promise<readonly string[]> {
  const pivots = (await relationshipsOf(parts, sheet)).filter(({ type, target }) => type === "pivotTable" && parts.has(target));
  if (pivots.length === 0 || (await hasChoosers(parts))) return [];
  const goingTables = new Set((await tablesIn(parts)).flatMap((table) => (isStaying(table.sheet) ? [] : [table.name.toLowerCase()])));
  const [taken, ids]: [string[], Set<string>] = [[], new Set()];
  for (const { id, target } of pivots) {
    const source = await sourceOf(parts, target);
    if (source === undefined || !(isGone(source) || goingTables.has(source.toLowerCase()))) continue;
    const location = childNamed(elementsOf(target, await parts.text(target)), "location");
    taken.push((location && attributeOf(location, "ref")) ?? "");
    ids.add(id);
  }
  if (ids.size > 0) await unname(parts, sheet, ids);
  return taken;
}

/** The cells, the name or the table that a pivot table is made from; undefined for data of another file. */
async function sourceOf(parts: EditableParts, pivot: string): Promise<string | undefined> {
  const cache = (await relationshipsOf(parts, pivot)).find(({ type, target }) => type === "pivotCacheDefinition" && parts.has(target));
  if (cache === undefined) return undefined;
  const from = childNamed(elementsOf(cache.target, await parts.text(cache.target)), "cacheSource");
  const source = from && childNamed(from, "worksheetSource");
  if (source === undefined || attributeOf(source, "id") !== undefined) return undefined;
  const [sheet, ref, name] = ["sheet", "ref", "name"].map((one) => attributeOf(source, one));
  return sheet !== undefined ? `${quotedSheet(sheet)}!${ref ?? "A1"}` : name;
}
