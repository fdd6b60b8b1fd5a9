import { relationshipsOf } from "../../parts/relationships";
import type { EditableParts } from "../parts/EditableParts";
import { attributeOf, elementsOf, type Element } from "../parts/markup";
import { removeParts, unname } from "../parts/namedParts";
import { takeAnchors } from "../parts/takeAnchors";

/**
 * Takes charts of later versions of the format out of a drawing ([MS-ODRAWXML] 2.24, such as waterfalls and boxes) that are drawn from what goes: they
 * may hold no values of their own.
 * @returns how many went
 */
export async function takeNewerCharts(parts: EditableParts, drawing: string, isGone: (formula: string) => boolean): Promise<number> {
  const going = new Map<string, string>();
  for (const { id, type, target } of await relationshipsOf(parts, drawing))
    if (type === "chartEx" && parts.has(target) && readsGone(elementsOf(target, await parts.text(target)), isGone)) going.set(id, target);
  if (going.size === 0) return 0;
  await takeAnchors(parts, drawing, (element) => element.name === "chart" && going.has(attributeOf(element, "id") ?? ""));
  await unname(parts, drawing, new Set(going.keys()));
  const further = await Promise.all([...going.values()].map(async (part) => (await relationshipsOf(parts, part)).flatMap(({ target, isOutside }) => (isOutside ? [] : [target])))); // prettier-ignore
  await removeParts(parts, [...going.values(), ...further.flat()]);
  return going.size;
}

const readsGone = (element: Element, isGone: (formula: string) => boolean): boolean =>
  (element.name === "f" && isGone(element.text)) || element.children.some((child) => readsGone(child, isGone));
