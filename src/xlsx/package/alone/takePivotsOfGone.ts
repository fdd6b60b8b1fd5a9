import { relationshipsOf } from "../../parts/relationships";
import { tablesIn } from "../namesAndTables";
import type { EditableParts } from "../parts/EditableParts";
import { attributeOf, childNamed, elementsOf } from "../parts/markup";
import { unname } from "../parts/namedParts";
import { pivotSources } from "../forgetting/pivotSources";

/** A pivot table that goes; the values that it shows stay in the cells. */
export interface PivotTaken {
  readonly area: string;
  /** True where its data come through a connection of the workbook. */
  readonly isConnected: boolean;
}

/**
 * Takes the pivot tables out whose data stand on what goes, be they named by a sheet, a name or a table, or come through a connection.
 * @param isStaying tells the sheets that stay
 */
export async function takePivotsOfGone(
  parts: EditableParts,
  sheet: string,
  isGone: (formula: string) => boolean,
  isStaying: (sheet: string) => boolean,
): Promise<readonly PivotTaken[]> {
  const pivots = (await relationshipsOf(parts, sheet)).filter(({ type, target }) => type === "pivotTable" && parts.has(target));
  if (pivots.length === 0) return [];
  const isSourceGone = await goneSources(parts, isGone, isStaying);
  const [taken, ids]: [PivotTaken[], Set<string>] = [[], new Set()];
  for (const { id, target } of pivots) {
    const cache = (await relationshipsOf(parts, target)).find(({ type, target: part }) => type === "pivotCacheDefinition" && parts.has(part));
    const { inFile, isConnected } = cache === undefined ? { inFile: [], isConnected: false } : await pivotSources(parts, cache.target);
    if (!isConnected && !inFile.some(isSourceGone)) continue;
    const location = childNamed(elementsOf(target, await parts.text(target)), "location");
    taken.push({ area: (location && attributeOf(location, "ref")) ?? "", isConnected });
    ids.add(id);
  }
  if (ids.size > 0) await unname(parts, sheet, ids);
  return taken;
}

/** Tells the cells, names and tables that go, as a pivot table names its data. */
export async function goneSources(
  parts: EditableParts,
  isGone: (formula: string) => boolean,
  isStaying: (sheet: string) => boolean,
): Promise<(source: string) => boolean> {
  const goingTables = new Set((await tablesIn(parts)).flatMap((table) => (isStaying(table.sheet) ? [] : [table.name.toLowerCase()])));
  return (source) => isGone(source) || goingTables.has(source.toLowerCase());
}
