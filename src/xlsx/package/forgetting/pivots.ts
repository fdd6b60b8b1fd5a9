import { relationshipsOf } from "../../parts/relationships";
import type { EditableParts } from "../parts/EditableParts";
import { attributeOf, childNamed, childrenNamed, removal } from "../parts/markup";
import { sweepUnreachable, unname } from "../parts/namedParts";
import { workbookOutline, type ListedSheet } from "../workbookOutline";
import { hasChoosers, namedInExtensions, takeChoosers, takeFromExtensions } from "./choosers";
import { pivotSources } from "./pivotSources";

/** Takes the pivot tables of sheets out and leaves the values they show, with what chooses their rows; the data behind them may be another sheet's. */
export async function takePivots(parts: EditableParts, sheets: readonly ListedSheet[]): Promise<void> {
  for (const { part } of sheets) {
    const pivots = (await relationshipsOf(parts, part)).filter(({ type }) => type === "pivotTable");
    if (pivots.length > 0) await unname(parts, part, new Set(pivots.map(({ id }) => id)));
  }
  await takeChoosers(parts, sheets);
  await forgetPivotData(parts);
}

/**
 * Takes out the data that the file keeps for pivot tables and choosers which are no longer there.
 * @param isGone tells the cells, names and tables that go: data of theirs goes in any case
 */
export async function forgetPivotData(parts: EditableParts, isGone: (source: string) => boolean = () => false): Promise<void> {
  const outline = await workbookOutline(parts);
  const { part, root, sheets } = outline;
  const caches = (await relationshipsOf(parts, part)).filter(({ type }) => type === "pivotCacheDefinition");
  if (caches.length === 0) return;
  const used = new Set<string>();
  for (const sheet of sheets)
    for (const pivot of (await relationshipsOf(parts, sheet.part)).filter(({ type }) => type === "pivotTable"))
      for (const { target } of await relationshipsOf(parts, pivot.target)) used.add(target.toLowerCase());
  // A chooser may have data of its own.
  const chosen = (await hasChoosers(parts)) ? namedInExtensions(outline) : new Set<string>();
  const unused = new Set<string>();
  for (const { id, target } of caches) {
    if (used.has(target.toLowerCase())) continue;
    const reads = chosen.has(id) && parts.has(target) ? (await pivotSources(parts, target)).inFile : undefined;
    if (reads === undefined || reads.some(isGone)) unused.add(id);
  }
  if (unused.size === 0) return;
  const list = childNamed(root, "pivotCaches");
  const listed = list === undefined ? [] : childrenNamed(list, "pivotCache");
  const going = listed.filter((one) => unused.has(attributeOf(one, "id") ?? ""));
  await parts.edit(part, list !== undefined && going.length === listed.length ? [removal(list)] : going.map(removal));
  await takeFromExtensions(parts, part, unused);
  await sweepUnreachable(parts, () => unname(parts, part, unused));
}
