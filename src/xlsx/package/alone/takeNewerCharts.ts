import { relationshipsOf } from "../../parts/relationships";
import type { EditableParts } from "../parts/EditableParts";
import { attributeOf, elementsOf, removal, type Element } from "../parts/markup";
import { removeParts, unname } from "../parts/namedParts";

const ANCHORS: readonly string[] = ["twoCellAnchor", "oneCellAnchor", "absoluteAnchor"];

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
  const holds = (element: Element): boolean => going.has(attributeOf(element, "id") ?? "") && element.name === "chart" ? true : element.children.some(holds); // prettier-ignore
  const anchors = elementsOf(drawing, await parts.text(drawing)).children.filter((one) => anchorIn(one) && holds(one));
  await parts.edit(drawing, anchors.map(removal)); // prettier-ignore
  await unname(parts, drawing, new Set(going.keys()));
  const further = await Promise.all([...going.values()].map(async (part) => (await relationshipsOf(parts, part)).flatMap(({ target, isOutside }) => (isOutside ? [] : [target])))); // prettier-ignore
  await removeParts(parts, [...going.values(), ...further.flat()]);
  return going.size;
}

/** An anchor, or what chooses between anchors by what a program knows. */
const anchorIn = (element: Element): boolean => ANCHORS.includes(element.name) || (element.name === "AlternateContent" && element.children.some((one) => one.children.some(anchorIn))); // prettier-ignore

const readsGone = (element: Element, isGone: (formula: string) => boolean): boolean =>
  (element.name === "f" && isGone(element.text)) || element.children.some((child) => readsGone(child, isGone));
