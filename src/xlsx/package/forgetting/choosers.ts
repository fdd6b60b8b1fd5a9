import { relationshipsOf } from "../../parts/relationships";
import { dropEmptyExtensions } from "../besideCells/entryRules";
import { withoutCells } from "../besideCells/withoutCells";
import type { EditableParts } from "../parts/EditableParts";
import { attributeOf, childrenNamed, elementsOf, elementsThat, removal, type Element } from "../parts/markup";
import { removeParts, unname } from "../parts/namedParts";
import { takeAnchors } from "../parts/takeAnchors";
import { workbookOutline, type ListedSheet, type Outline } from "../workbookOutline";

/** What a workbook keeps of a chooser of rows, and what a sheet lists of it ([MS-XLSX], parts of slicers and timelines). */
const CACHES: readonly string[] = ["slicerCache", "timelineCache"];
const LISTS: readonly string[] = ["slicer", "timeline"];
/** How a drawing shows one ([MS-ODRAWXML], slicers and time slicers). */
const SHOWN: readonly string[] = ["slicer", "timeslicer"];

/**
 * Takes out what chooses rows (slicers and timelines) of pivot tables or tables that are not all on these sheets any more, with all that the file keeps
 * of it: such a chooser would be damaged, and would tell of what is gone.
 * @returns the sheets on which one stood, each as often as one did
 */
export async function takeChoosers(parts: EditableParts, kept: readonly ListedSheet[]): Promise<readonly ListedSheet[]> {
  const outline = await workbookOutline(parts);
  const caches = (await relationshipsOf(parts, outline.part)).filter(({ type }) => CACHES.includes(type));
  if (caches.length === 0) return [];
  const there = await choosable(parts, kept);
  const [ids, gone] = [new Set<string>(), [] as string[]];
  const staying = new Set<string>();
  for (const { id, target } of caches) {
    const root = parts.has(target) ? elementsOf(target, await parts.text(target)) : undefined;
    if (root !== undefined && isAllThere(root, there)) staying.add(attributeOf(root, "name") ?? "");
    else {
      ids.add(id);
      gone.push(target);
    }
  }
  if (ids.size === 0) return [];
  const stood: ListedSheet[] = [];
  for (const sheet of kept) stood.push(...Array<ListedSheet>(await takeFromSheet(parts, sheet.part, staying)).fill(sheet));
  await takeFromExtensions(parts, outline.part, ids);
  await unname(parts, outline.part, ids);
  await removeParts(parts, gone);
  return stood;
}

/** Pivot tables by the number of their sheet and their name, and tables by their number. */
async function choosable(parts: EditableParts, kept: readonly ListedSheet[]): Promise<ReadonlySet<string>> {
  const found = new Set<string>();
  for (const { part, element } of kept)
    for (const { type, target } of await relationshipsOf(parts, part)) {
      if ((type !== "pivotTable" && type !== "table") || !parts.has(target)) continue;
      const root = elementsOf(target, await parts.text(target));
      found.add(type === "table" ? keyOfTable(root, "id") : `pivot ${attributeOf(element, "sheetId") ?? ""} ${attributeOf(root, "name") ?? ""}`);
    }
  return found;
}

const keyOfTable = (element: Element, attribute: string): string => `table ${attributeOf(element, attribute) ?? ""}`;

/** One that names nothing has nothing left to choose from. */
function isAllThere(root: Element, there: ReadonlySet<string>): boolean {
  const named = elementsThat(root, ({ name }) => name === "pivotTable" || name === "tableSlicerCache").map((one) =>
    one.name === "pivotTable" ? `pivot ${attributeOf(one, "tabId") ?? ""} ${attributeOf(one, "name") ?? ""}` : keyOfTable(one, "tableId"),
  );
  return named.length > 0 && named.every((one) => there.has(one));
}

/** @param staying names of the caches that stay @returns how many choosers went */
async function takeFromSheet(parts: EditableParts, sheet: string, staying: ReadonlySet<string>): Promise<number> {
  const related = await relationshipsOf(parts, sheet);
  const [lists, names] = [new Set<string>(), new Set<string>()];
  const empty: string[] = [];
  for (const { id, target } of related.filter(({ type, target: part }) => LISTS.includes(type) && parts.has(part))) {
    const { children } = elementsOf(target, await parts.text(target));
    const gone = children.filter((one) => LISTS.includes(one.name) && !staying.has(attributeOf(one, "cache") ?? ""));
    for (const one of gone) names.add(attributeOf(one, "name") ?? "");
    if (gone.length < children.length) await parts.edit(target, gone.map(removal));
    else {
      lists.add(id);
      empty.push(target);
    }
  }
  if (lists.size > 0) {
    await takeFromExtensions(parts, sheet, lists);
    await unname(parts, sheet, lists);
    await removeParts(parts, empty);
  }
  for (const { target } of related.filter(({ type, target: part }) => type === "drawing" && parts.has(part)))
    await takeAnchors(parts, target, ({ name, attributes }) => SHOWN.includes(name) && names.has(attributeOf({ attributes }, "name") ?? ""));
  return names.size;
}

/** Takes out of the extensions of a part what names these; a whole extension where nothing else is in it. */
export async function takeFromExtensions(parts: EditableParts, part: string, ids: ReadonlySet<string>): Promise<void> {
  const isNaming = (one: Element): boolean => ids.has(attributeOf(one, "id") ?? "") && one.children.length === 0;
  const extensions = childrenNamed(elementsOf(part, withoutCells(await parts.text(part))), "extLst").flatMap(({ children }) => children);
  const gone = extensions.flatMap((extension) => {
    const [naming, all] = [elementsThat(extension, isNaming), elementsThat(extension, ({ children }) => children.length === 0)];
    return naming.length > 0 && naming.length === all.length ? [extension] : naming;
  });
  await parts.edit(part, gone.map(removal)); // prettier-ignore
  await dropEmptyExtensions(parts, part);
}

/** What the extensions of the workbook name. */
export const namedInExtensions = ({ root }: Outline): ReadonlySet<string> =>
  new Set(childrenNamed(root, "extLst").flatMap((list) => elementsThat(list, () => true)).flatMap((one) => attributeOf(one, "id") ?? [])); // prettier-ignore

export async function hasChoosers(parts: EditableParts): Promise<boolean> {
  const { part } = await workbookOutline(parts);
  return (await relationshipsOf(parts, part)).some(({ type }) => CACHES.includes(type));
}
