import { relationshipsOf } from "../../parts/relationships";
import type { EditableParts } from "../parts/EditableParts";
import { appendTo, attributeOf, childNamed, childrenNamed, elementsOf, withAttributes, type Element } from "../parts/markup";
import { nameIn, sayContentType } from "../parts/namedParts";
import type { Edit } from "../parts/partText";
import { inStrict, relationshipType, SPREADSHEET, type Outline } from "../workbookOutline";

// [MS-XLSX] 2.2.4.1 and 2.6.206: the kind of mark, the extension that holds it, and what a spilling formula's says.
const KIND = "XLDAPR";
const EXTENSION = "{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}";
const ARRAYS = "http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray";
const COPIED =
  'copy="1" pasteAll="1" pasteValues="1" merge="1" splitFirst="1" rowColShift="1" clearFormats="1" clearComments="1" assign="1" coerce="1" cellMeta="1"';
const USUAL_PLACE = "xl/metadata.xml";
const CONTENT_TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheetMetadata+xml";

/** The number by which a cell says that its formula spills, as newer programs do; the file's metadata get what they lack for it. */
export async function spillMark(parts: EditableParts, outline: Outline): Promise<number> {
  const known = (await relationshipsOf(parts, outline.part)).find(({ type }) => type === "sheetMetadata")?.target;
  if (known === undefined) {
    const part = parts.has(USUAL_PLACE) ? parts.freeName("xl/metadata", ".xml") : USUAL_PLACE;
    const markup = `<metadata xmlns="${SPREADSHEET}" xmlns:xda="${ARRAYS}">${typesMarkup("")}${futureMarkup("")}${cellsMarkup("", 1)}</metadata>`;
    parts.put(part, `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n${outline.isStrict ? inStrict(markup) : markup}`);
    await nameIn(parts, outline.part, relationshipType(outline, "sheetMetadata"), part);
    await sayContentType(parts, part, CONTENT_TYPE);
    return 1;
  }
  const text = await parts.text(known);
  const root = elementsOf(known, text);
  const standing = markIn(root);
  if (standing !== undefined) return standing;
  await parts.edit(known, withMark(text, root));
  return markIn(elementsOf(known, await parts.text(known))) ?? 1;
}

/** Cells name their mark by its place among the marks of cells, counted from 1. */
function markIn(root: Element): number | undefined {
  const types = childNamed(root, "metadataTypes");
  const kind = types === undefined ? 0 : childrenNamed(types, "metadataType").findIndex((one) => attributeOf(one, "name") === KIND) + 1;
  const marks = childNamed(root, "cellMetadata");
  if (kind === 0 || marks === undefined) return undefined;
  // Any mark of this kind is one of a spilling formula; the same kind with another property has not been seen.
  const place = childrenNamed(marks, "bk").findIndex((one) => one.children.some((rc) => attributeOf(rc, "t") === String(kind)));
  return place === -1 ? undefined : place + 1;
}

const typesMarkup = (x: string): string => `<${x}metadataTypes count="1">${typeMarkup(x)}</${x}metadataTypes>`;
const typeMarkup = (x: string): string => `<${x}metadataType name="${KIND}" minSupportedVersion="120000" ${COPIED}/>`;
const futureMarkup = (x: string): string =>
  `<${x}futureMetadata name="${KIND}" count="1"><${x}bk><${x}extLst><${x}ext xmlns:xda="${ARRAYS}" uri="${EXTENSION}"><xda:dynamicArrayProperties fDynamic="1" fCollapsed="0"/></${x}ext></${x}extLst></${x}bk></${x}futureMetadata>`;
const cellsMarkup = (x: string, kind: number): string => `<${x}cellMetadata count="1">${cellMarkup(x, kind)}</${x}cellMetadata>`;
const cellMarkup = (x: string, kind: number): string => `<${x}bk><${x}rc t="${kind}" v="0"/></${x}bk>`;

/** The parts of the metadata in the order the format wants them (ECMA-376 Part 1, 18.9.10). */
const ORDER = ["metadataTypes", "metadataStrings", "mdxMetadata", "futureMetadata", "cellMetadata", "valueMetadata", "extLst"];

function withMark(text: string, root: Element): Edit[] {
  const x = root.prefix;
  const [types, cells] = [childNamed(root, "metadataTypes"), childNamed(root, "cellMetadata")];
  const kinds = types === undefined ? [] : childrenNamed(types, "metadataType");
  const known = kinds.findIndex((one) => attributeOf(one, "name") === KIND) + 1;
  const kind = known === 0 ? kinds.length + 1 : known;
  const grown = (list: Element, markup: string): Edit[] => [
    withAttributes(text, list, { count: String(list.children.length + 1) }),
    appendTo(text, { ...list, isEmpty: false }, markup),
  ];
  const placed = (name: string, markup: string): Edit => {
    const after = root.children.filter((child) => ORDER.indexOf(child.name) > -1 && ORDER.indexOf(child.name) <= ORDER.indexOf(name)).at(-1);
    const at = after?.close.end ?? root.end;
    return { from: at, to: at, text: markup };
  };
  return [
    ...(known > 0 ? [] : types === undefined ? [placed("metadataTypes", typesMarkup(x))] : grown(types, typeMarkup(x))),
    ...(known > 0 ? [] : [placed("futureMetadata", futureMarkup(x))]),
    ...(cells === undefined ? [placed("cellMetadata", cellsMarkup(x, kind))] : grown(cells, cellMarkup(x, kind))),
  ];
}
