import type { EditableParts } from "../parts/EditableParts";
import { dropEmptyExtensions } from "../besideCells/entryRules";
import { childNamed, childrenNamed, elementsOf, removal, type Element } from "../parts/markup";
import { withoutCells } from "../besideCells/withoutCells";

/**
 * Takes the charts out that stand in single cells ([MS-XLSX] 2.6.10) and are drawn from what goes: they hold no values of their own.
 * @returns their cells
 */
export async function takeSmallCharts(parts: EditableParts, part: string, isGone: (formula: string) => boolean): Promise<readonly string[]> {
  const text = await parts.text(part);
  if (!text.includes("sparklineGroup")) return [];
  const taken: string[] = [];
  const removed: Element[] = [];
  const readsGone = (element: Element): boolean => isGone(childNamed(element, "f")?.text ?? "");
  for (const extension of childrenNamed(elementsOf(part, withoutCells(text)), "extLst").flatMap(({ children }) => children)) {
    const lists = childrenNamed(extension, "sparklineGroups");
    const left = lists.flatMap((list) => childrenNamed(list, "sparklineGroup")).filter((group) => {
      const charts = childrenNamed(group, "sparklines").flatMap((one) => childrenNamed(one, "sparkline"));
      // Dates along the axis belong to the whole group.
      const going = readsGone(group) ? charts : charts.filter(readsGone);
      taken.push(...going.map((one) => childNamed(one, "sqref")?.text ?? ""));
      if (going.length < charts.length) removed.push(...going);
      else if (lists.length > 0) removed.push(group);
      return going.length < charts.length;
    }); // prettier-ignore
    if (lists.length > 0 && left.length === 0) removed.push(extension);
  }
  if (taken.length === 0) return [];
  const outermost = removed.filter((one) => !removed.some((other) => other !== one && other.start <= one.start && one.close.end <= other.close.end));
  await parts.edit(part, outermost.map(removal)); // prettier-ignore
  await dropEmptyExtensions(parts, part);
  return taken;
}
