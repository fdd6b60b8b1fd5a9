import { relationshipsOf } from "../../parts/relationships";
import type { EditableParts } from "../parts/EditableParts";
import { attributeOf, childNamed, childrenNamed, removal } from "../parts/markup";
import { reachable, removeParts, unname } from "../parts/namedParts";
import { workbookOutline } from "../workbookOutline";

/** What chooses rows of a pivot table stands on a sheet beside it and would be damaged without it. */
const CHOOSERS: readonly string[] = ["slicerCache", "timelineCache"];

export async function hasChoosers(parts: EditableParts): Promise<boolean> {
  const { part } = await workbookOutline(parts);
  return (await relationshipsOf(parts, part)).some(({ type }) => CHOOSERS.includes(type));
}

/** Takes the pivot tables of sheets out and leaves the values they show; the data behind them may be another sheet's. */
export async function takePivots(parts: EditableParts, sheetParts: readonly string[]): Promise<void> {
  if (await hasChoosers(parts)) return;
  for (const sheet of sheetParts) {
    const pivots = (await relationshipsOf(parts, sheet)).filter(({ type }) => type === "pivotTable");
    if (pivots.length > 0) await unname(parts, sheet, new Set(pivots.map(({ id }) => id)));
  }
  await forgetPivotData(parts);
}

/** Takes out the data that the file keeps for pivot tables which are no longer there. */
export async function forgetPivotData(parts: EditableParts): Promise<void> {
  const { part, root, sheets } = await workbookOutline(parts);
  const list = childNamed(root, "pivotCaches");
  if (list === undefined || (await hasChoosers(parts))) return;
  const used = new Set<string>();
  for (const sheet of sheets)
    for (const pivot of (await relationshipsOf(parts, sheet.part)).filter(({ type }) => type === "pivotTable"))
      for (const { target } of await relationshipsOf(parts, pivot.target)) used.add(target.toLowerCase());
  const related = new Map((await relationshipsOf(parts, part)).map(({ id, target }) => [id, target.toLowerCase()]));
  const caches = childrenNamed(list, "pivotCache");
  const unused = caches.filter((one) => !used.has(related.get(attributeOf(one, "id") ?? "") ?? ""));
  if (unused.length === 0) return;
  const before = await reachable(parts);
  await parts.edit(part, unused.length === caches.length ? [removal(list)] : unused.map(removal));
  await unname(parts, part, new Set(unused.map((one) => attributeOf(one, "id") ?? "")));
  const after = await reachable(parts);
  await removeParts(parts, [...before].filter((one) => !after.has(one))); // prettier-ignore
}
