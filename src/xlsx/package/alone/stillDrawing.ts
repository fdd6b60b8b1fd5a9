import { relationshipsOf } from "../../parts/relationships";
import { cellLinks } from "../besideCells/cellLinks";
import type { EditableParts } from "../parts/EditableParts";
import { attributeOf, elementsOf, removal, withAttributes, type Element } from "../parts/markup";
import type { Edit } from "../parts/partText";
import { placeInFile } from "./placeInFile";

const LINKS: readonly string[] = ["hlinkClick", "hlinkHover"];

/**
 * Makes the shapes of a drawing keep the words that they showed of a cell which goes, and takes their links to such places out (ECMA-376 Part 1,
 * 20.5.2.29 and 21.1.2.3.5).
 * @returns how many links went
 */
export async function stillDrawing(parts: EditableParts, part: string, isGone: (formula: string) => boolean): Promise<number> {
  const text = await parts.text(part);
  if (!/ (?:textlink|cellRange)=|hlink(?:Click|Hover)/.test(text)) return 0;
  const outside = new Map((await relationshipsOf(parts, part)).map(({ id, target }) => [id, target]));
  const edits: Edit[] = [];
  let links = 0;
  const walk = (element: Element): void => {
    const place = LINKS.includes(element.name) ? placeInFile(outside.get(attributeOf(element, "id") ?? "") ?? "") : undefined;
    if (place !== undefined && isGone(place)) {
      edits.push(removal(element));
      links++;
      return;
    }
    const gone = cellLinks(element).filter((name) => isGone(element.attributes[name] ?? ""));
    if (gone.length > 0) edits.push(withAttributes(text, element, Object.fromEntries(gone.map((name) => [name, undefined]))));
    element.children.forEach(walk);
  };
  walk(elementsOf(part, text));
  await parts.edit(part, edits);
  return links;
}
