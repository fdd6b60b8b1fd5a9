import { relationshipsOf } from "../../parts/relationships";
import { appendTo, attributeOf, childrenNamed, elementsOf, escapedAttribute, removal } from "./markup";
import type { EditableParts } from "./EditableParts";

const CONTENT_TYPES = "[Content_Types].xml";
const PACKAGE = "http://schemas.openxmlformats.org/package/2006";

/** Where a part lists what it names. */
export function relationshipPart(part: string): string {
  const folder = part.slice(0, part.lastIndexOf("/") + 1);
  return `${folder}_rels/${part.slice(folder.length)}.rels`;
}

/** Makes one part name another. @returns the id that stands for it in the part */
export async function nameIn(parts: EditableParts, part: string, type: string, target: string): Promise<string> {
  const list = relationshipPart(part);
  if (!parts.has(list)) parts.put(list, `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<Relationships xmlns="${PACKAGE}/relationships"/>`);
  const text = await parts.text(list);
  const root = elementsOf(list, text);
  const taken = new Set(root.children.map((one) => attributeOf(one, "Id")));
  let number = taken.size + 1;
  while (taken.has(`rId${number}`)) number++;
  const id = `rId${number}`;
  const markup = `<${root.prefix}Relationship Id="${id}" Type="${escapedAttribute(type)}" Target="/${escapedAttribute(target)}"/>`;
  await parts.edit(list, [appendTo(text, root, markup)]);
  return id;
}

/** Makes a part no longer name what these ids stand for. */
export async function unname(parts: EditableParts, part: string, ids: ReadonlySet<string>): Promise<void> {
  const list = relationshipPart(part);
  const root = elementsOf(list, await parts.text(list));
  await parts.edit(list, root.children.filter((one) => ids.has(attributeOf(one, "Id") ?? "")).map(removal)); // prettier-ignore
}

/** Says what a new part is. */
export async function sayContentType(parts: EditableParts, part: string, type: string): Promise<void> {
  const text = await parts.text(CONTENT_TYPES);
  const root = elementsOf(CONTENT_TYPES, text);
  const markup = `<${root.prefix}Override PartName="/${escapedAttribute(part)}" ContentType="${escapedAttribute(type)}"/>`;
  await parts.edit(CONTENT_TYPES, [appendTo(text, root, markup)]);
}

/** Takes parts out of the file, with what they name and what is said of them. Who names them has to be told first. */
export async function removeParts(parts: EditableParts, names: Iterable<string>): Promise<void> {
  const gone = new Set<string>();
  for (const name of names) {
    parts.remove(name);
    parts.remove(relationshipPart(name));
    gone.add(name.toLowerCase());
  }
  const root = elementsOf(CONTENT_TYPES, await parts.text(CONTENT_TYPES));
  const isGone = (partName: string): boolean => gone.has(partName.replace(/^\//, "").toLowerCase());
  await parts.edit(CONTENT_TYPES, childrenNamed(root, "Override").filter((one) => isGone(attributeOf(one, "PartName") ?? "")).map(removal)); // prettier-ignore
}

/** Every part that can be come to from the file as a whole, in small letters. */
export async function reachable(parts: EditableParts): Promise<Set<string>> {
  const found = new Set<string>();
  const left = [""];
  for (let part = left.pop(); part !== undefined; part = left.pop()) {
    for (const { target, isOutside } of await relationshipsOf(parts, part)) {
      const key = target.toLowerCase();
      if (isOutside || found.has(key) || !parts.has(target)) continue;
      found.add(key);
      left.push(target);
    }
  }
  return found;
}

/** Takes out every part that nothing names any more once the work is done. */
export async function sweepUnreachable(parts: EditableParts, work: () => Promise<void>): Promise<void> {
  const before = await reachable(parts);
  await work();
  const after = await reachable(parts);
  await removeParts(parts, [...before].filter((one) => !after.has(one))); // prettier-ignore
}
