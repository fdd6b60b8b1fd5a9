import { relationshipsOf } from "../../parts/relationships";
import type { EditableParts } from "../parts/EditableParts";
import { attributeOf, childNamed, childrenNamed, elementsOf, removal } from "../parts/markup";
import { withoutCells } from "../besideCells/withoutCells";
import { placeInFile } from "./placeInFile";

/**
 * Takes the links of a sheet out that lead to a place which goes; what their cells show stays.
 * @param isGone of a place as links name it, "Tray!A1"
 * @returns their cells
 */
export async function takeLinks(parts: EditableParts, part: string, isGone: (place: string) => boolean): Promise<readonly string[]> {
  const text = await parts.text(part);
  if (!/<(?:\w+:)?hyperlink[ >]/.test(text)) return [];
  const list = childNamed(elementsOf(part, withoutCells(text)), "hyperlinks");
  if (list === undefined) return [];
  const outside = new Map((await relationshipsOf(parts, part)).map(({ id, target }) => [id, target]));
  const links = childrenNamed(list, "hyperlink");
  const gone = links.filter((link) => {
    const id = attributeOf(link, "id");
    const place = id === undefined ? (attributeOf(link, "location") ?? "").replace(/^#/, "") : placeInFile(outside.get(id) ?? "");
    return place !== undefined && place !== "" && isGone(place);
  });
  await parts.edit(part, gone.length === links.length ? [removal(list)] : gone.map(removal));
  return gone.map((link) => attributeOf(link, "ref") ?? "");
}
