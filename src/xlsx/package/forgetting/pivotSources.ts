import { quotedSheet } from "../../../workbook/quotedSheet";
import type { EditableParts } from "../parts/EditableParts";
import { attributeOf, childNamed, elementsOf, elementsThat, type Element } from "../parts/markup";

/** What the data that a file keeps for pivot tables are made from (ECMA-376 Part 1, 18.10.1.7, 18.10.1.79 and 18.10.1.95). */
export interface PivotSources {
  /** Cells, names and tables of this file; none for data of another file. */
  readonly inFile: readonly string[];
  /** True where they come through a connection, which may be one to this file too. */
  readonly isConnected: boolean;
}

/** @param cache the part that says what the data are */
export async function pivotSources(parts: EditableParts, cache: string): Promise<PivotSources> {
  const from = childNamed(elementsOf(cache, await parts.text(cache)), "cacheSource");
  if (from === undefined) return { inFile: [], isConnected: false };
  const sources = elementsThat(from, ({ name }) => name === "worksheetSource" || name === "rangeSet");
  const kind = attributeOf(from, "type") ?? "worksheet";
  return { inFile: sources.flatMap(inFile), isConnected: attributeOf(from, "connectionId") !== undefined || kind === "external" };
}

function inFile(source: Element): string[] {
  if (attributeOf(source, "id") !== undefined) return [];
  const [sheet, ref, name] = ["sheet", "ref", "name"].map((one) => attributeOf(source, one));
  if (sheet !== undefined) return [`${quotedSheet(sheet)}!${ref ?? "A1"}`];
  return name === undefined ? [] : [name];
}
