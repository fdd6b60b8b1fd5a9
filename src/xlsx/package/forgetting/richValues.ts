import { relationshipsOf } from "../../parts/relationships";
import type { EditableParts } from "../parts/EditableParts";
import { attributeOf, childNamed, childrenNamed, elementsOf, elementsThat, removal, withAttributes, type Element } from "../parts/markup";
import { unname } from "../parts/namedParts";
import type { Edit } from "../parts/partText";
import { workbookOutline } from "../workbookOutline";
import { blankRichValues } from "./blankRichValues";

/** What a workbook names of values that are more than a number or a text ([MS-XLSX], rich values): records, and pictures in cells. */
const OF_RICH_VALUES = /^(?:rd|richStyles$|richValueRel$)/;
const RICH = "XLRICHVALUE";
const CUBE = "XLMDX";

/** Forgets the records, the pictures in cells and the members of cubes that no cell of the file shows any more (ECMA-376 Part 1, 18.9). */
export async function forgetRichValues(parts: EditableParts): Promise<void> {
  const { part, sheets } = await workbookOutline(parts);
  const related = await relationshipsOf(parts, part);
  const metadata = related.find(({ type, target }) => type === "sheetMetadata" && parts.has(target));
  const shown = new Set<number>();
  for (const { part: sheet, kind } of sheets)
    if (kind === "worksheet") for (const [, value] of (await parts.text(sheet)).matchAll(/ vm="(\d+)"/g)) shown.add(Number(value));
  const used = metadata === undefined ? { rich: new Set<number>(), cube: new Set<number>() } : await usedIn(parts, metadata.target, shown);
  if (metadata !== undefined) {
    if (shown.size === 0 && (await forgetValueMetadata(parts, metadata.target))) await unname(parts, part, new Set([metadata.id]));
    else await blankStrings(parts, metadata.target, used.cube);
  }
  const rich = related.filter(({ type }) => OF_RICH_VALUES.test(type));
  if (rich.length === 0) return;
  if (used.rich.size === 0) await unname(parts, part, new Set(rich.map(({ id }) => id)));
  else await blankRichValues(parts, new Map(rich.map(({ type, target }) => [type, target])), used.rich);
}

/** Which records and which members of cubes are behind values of cells. @param shown places from 1 */
async function usedIn(parts: EditableParts, metadata: string, shown: ReadonlySet<number>): Promise<{ rich: Set<number>; cube: Set<number> }> {
  const root = elementsOf(metadata, await parts.text(metadata));
  const types = (childNamed(root, "metadataTypes")?.children ?? []).map((one) => attributeOf(one, "name") ?? "");
  const records = childrenNamed(root, "futureMetadata").find((one) => attributeOf(one, "name") === RICH)?.children ?? [];
  const found = { rich: new Set<number>(), cube: new Set<number>() };
  for (const [place, value] of (childNamed(root, "valueMetadata")?.children ?? []).entries()) {
    if (!shown.has(place + 1)) continue;
    for (const one of value.children) {
      const [type, at] = [types[Number(attributeOf(one, "t")) - 1], Number(attributeOf(one, "v"))];
      if (type === CUBE) found.cube.add(at);
      const record = records[at];
      if (type === RICH && record !== undefined)
        for (const held of elementsThat(record, ({ name }) => name === "rvb")) found.rich.add(Number(attributeOf(held, "i")));
    }
  }
  return found;
}

/** Takes out all that is said of values. @returns true where nothing is left to be said */
async function forgetValueMetadata(parts: EditableParts, metadata: string): Promise<boolean> {
  const { children, ...root } = elementsOf(metadata, await parts.text(metadata));
  const isOfValues = (one: Element): boolean =>
    ["metadataStrings", "mdxMetadata", "valueMetadata"].includes(one.name) || (one.name === "futureMetadata" && attributeOf(one, "name") === RICH);
  await parts.edit(metadata, children.filter(isOfValues).map(removal)); // prettier-ignore
  return childNamed({ ...root, children }, "cellMetadata") === undefined;
}

/** Blanks the strings that no used member of a cube is made of. */
async function blankStrings(parts: EditableParts, metadata: string, used: ReadonlySet<number>): Promise<void> {
  const text = await parts.text(metadata);
  const root = elementsOf(metadata, text);
  const members = (childNamed(root, "mdxMetadata")?.children ?? []).filter((_, place) => used.has(place));
  const named = new Set(members.flatMap((one) => elementsThat(one, () => true)).flatMap(({ attributes }) => Object.values(attributes).map(Number)));
  const strings = childNamed(root, "metadataStrings")?.children ?? [];
  const edits: Edit[] = strings.flatMap((one, place) => (named.has(place) ? [] : [withAttributes(text, one, { v: "" })]));
  await parts.edit(metadata, edits);
}
