import { relationshipsOf } from "../../parts/relationships";
import type { EditableParts } from "../parts/EditableParts";
import { attributeOf, elementsOf, removal, withAttributes, type Element } from "../parts/markup";
import { relationshipPart, unname } from "../parts/namedParts";
import type { Edit } from "../parts/partText";

/** A key whose number is the place of a picture begins so ([MS-XLSX], rich value structures). */
const PICTURE = "_rvRel:";
/** Kinds of keys: another record, an array, a text; one left out is a number. */
const [RECORD, ARRAY, TEXT] = ["r", "a", "s"];

/**
 * Blanks the records that no cell shows, nor a record or array which one shows: their places are counted, so that they stay. Pictures of theirs go.
 * @param partOf the part of each kind
 */
export async function blankRichValues(parts: EditableParts, partOf: ReadonlyMap<string, string>, shown: ReadonlySet<number>): Promise<void> {
  const open = async (kind: string): Promise<{ part: string; text: string; items: Element[] }> => {
    const part = partOf.get(kind) ?? "";
    if (!parts.has(part)) return { part, text: "", items: [] };
    const text = await parts.text(part);
    return { part, text, items: elementsOf(part, text).children };
  };
  const [values, structures, arrays] = [await open("rdRichValue"), await open("rdRichValueStructure"), await open("rdArray")];
  const keysOf = (value: Element): Element[] => structures.items[Number(attributeOf(value, "s") ?? 0)]?.children ?? [];
  const [used, usedArrays, usedStructures, pictures] = [new Set<number>(), new Set<number>(), new Set<number>(), new Set<number>()];
  const left = [...shown];
  for (let place = left.pop(); place !== undefined; place = left.pop()) {
    const value = values.items[place];
    if (value === undefined || used.has(place)) continue;
    used.add(place);
    usedStructures.add(Number(attributeOf(value, "s") ?? 0));
    for (const [at, key] of keysOf(value).entries()) {
      const [kind, held] = [attributeOf(key, "t"), Number(value.children[at]?.text ?? "")];
      if (kind === RECORD) left.push(held);
      if ((attributeOf(key, "n") ?? "").startsWith(PICTURE)) pictures.add(held);
      if (kind !== ARRAY) continue;
      usedArrays.add(held);
      for (const one of arrays.items[held]?.children ?? []) if (attributeOf(one, "t") === RECORD) left.push(Number(one.text));
    }
  }
  const blanked = (one: Element, kind: string | undefined): Edit[] =>
    one.isEmpty || kind === ARRAY || kind === "spb" || kind === "e" ? [] : [{ from: one.end, to: one.close.start, text: kind === TEXT ? "" : "0" }];
  const unused = (items: readonly Element[], of: ReadonlySet<number>): Element[] => items.filter((_, place) => !of.has(place));
  await parts.edit(values.part, unused(values.items, used).flatMap((value) => value.children.flatMap((one, at) => blanked(one, attributeOf(keysOf(value)[at] ?? value, "t"))))); // prettier-ignore
  await parts.edit(arrays.part, unused(arrays.items, usedArrays).flatMap(({ children }) => children.flatMap((one) => blanked(one, attributeOf(one, "t"))))); // prettier-ignore
  const namesOf = (of: Element): Edit[] => [
    withAttributes(structures.text, of, { t: "_" }),
    ...of.children.map((key, at) => withAttributes(structures.text, key, { n: `k${at}` })),
  ];
  await parts.edit(structures.part, unused(structures.items, usedStructures).flatMap(namesOf)); // prettier-ignore
  await forgetPictures(parts, partOf.get("richValueRel") ?? "", pictures);
}

/** Pictures that none shows become one that some record shows, since they are counted; where none does, there are none. */
async function forgetPictures(parts: EditableParts, part: string, used: ReadonlySet<number>): Promise<void> {
  if (!parts.has(part)) return;
  const listed = elementsOf(part, await parts.text(part)).children;
  const idAt = (place: number): string => attributeOf(listed[place] ?? listed[0] ?? NONE, "id") ?? "";
  const [first] = used;
  if (first === undefined || listed[first] === undefined) {
    await unname(parts, part, new Set((await relationshipsOf(parts, part)).map(({ id }) => id)));
    return parts.edit(part, listed.map(removal)); // prettier-ignore
  }
  const staying = new Set([...used].map(idAt));
  const list = relationshipPart(part);
  const text = await parts.text(list);
  const related = elementsOf(list, text).children;
  const target = related.find((one) => attributeOf(one, "Id") === idAt(first))?.attributes.Target;
  await parts.edit(list, related.filter((one) => !staying.has(attributeOf(one, "Id") ?? "")).map((one) => withAttributes(text, one, { Target: target }))); // prettier-ignore
}

const NONE = { attributes: {} };
