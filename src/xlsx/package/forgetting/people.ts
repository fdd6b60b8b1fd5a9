import { relationshipsOf } from "../../parts/relationships";
import type { EditableParts } from "../parts/EditableParts";
import { childNamed, elementsOf, removal, type Element } from "../parts/markup";
import { workbookOutline } from "../workbookOutline";

/** Who made the file, and for whom (ECMA-376 Part 1, 22.2; Part 2, 8.2); what it is about, and when it was made, stays. */
const ABOUT_PEOPLE: readonly string[] = ["creator", "lastModifiedBy", "Company", "Manager", "HyperlinkBase"];
const PROPERTIES: readonly string[] = ["core-properties", "extended-properties"];

/** Takes out of a file who made it, and in which folder of whose machine: whoever hands on a copy of a sheet hands on the sheet. */
export async function forgetPeople(parts: EditableParts): Promise<void> {
  for (const { type, target } of await relationshipsOf(parts, "")) {
    if (!PROPERTIES.includes(type) || !parts.has(target)) continue;
    const { children } = elementsOf(target, await parts.text(target));
    await parts.edit(target, children.filter(({ name }) => ABOUT_PEOPLE.includes(name)).map(removal)); // prettier-ignore
  }
  const { part, root } = await workbookOutline(parts);
  const saidBy = [childNamed(root, "fileSharing"), root.children.find((one) => one.name === "AlternateContent" && holds(one, "absPath"))];
  await parts.edit(part, saidBy.flatMap((one) => (one === undefined ? [] : [removal(one)]))); // prettier-ignore
}

const holds = (element: Element, name: string): boolean => element.name === name || element.children.some((child) => holds(child, name));
