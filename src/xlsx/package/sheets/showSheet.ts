import type { EditableParts } from "../parts/EditableParts";
import { attributeOf, childNamed, readMarkup, withAttributes } from "../parts/markup";
import type { Edit } from "../parts/partText";
import { withoutCells } from "../besideCells/withoutCells";
import { workbookOutline, type ListedSheet } from "../workbookOutline";

/** Makes a sheet the one in view, and the only one chosen: sheets chosen together are changed together. */
export async function showSheet(parts: EditableParts, { name }: ListedSheet): Promise<void> {
  const { part, text, root, sheets } = await workbookOutline(parts);
  const place = sheets.findIndex((one) => one.name === name);
  const view = childNamed(root, "bookViews")?.children[0];
  const list = childNamed(root, "sheets");
  const views = `<${root.prefix}bookViews><${root.prefix}workbookView activeTab="${place}"/></${root.prefix}bookViews>`;
  if (view !== undefined) await parts.edit(part, [withAttributes(text, view, { activeTab: String(place), firstSheet: undefined })]);
  else if (list !== undefined) await parts.edit(part, [{ from: list.start, to: list.start, text: views }]);
  for (const sheet of sheets) if (sheet.kind === "worksheet") await choose(parts, sheet.part, sheet.name === name);
}

async function choose(parts: EditableParts, part: string, isChosen: boolean): Promise<void> {
  const text = await parts.text(part);
  const edits: Edit[] = [];
  readMarkup(part, withoutCells(text), {
    open: (tag) => {
      if (tag.name !== "sheetView") return;
      const said = attributeOf(tag, "tabSelected");
      if (isChosen ? said !== "1" : said !== undefined && said !== "0" && said !== "false")
        edits.push(withAttributes(text, tag, { tabSelected: isChosen ? "1" : undefined }));
    },
  });
  await parts.edit(part, edits);
}
