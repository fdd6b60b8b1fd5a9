import { cellArea, wholeLines, type CellArea } from "../../../workbook/cellArea";
import type { OutOfView } from "../../../workbook/OutOfView";
import { isOn } from "../../parts/readXml";
import type { EditableParts } from "../parts/EditableParts";
import { attributeOf, readMarkup } from "../parts/markup";

/** Rows and columns that are hidden, by hand, by a filter or by having no height or width, and merged cells. */
export async function outOfView(parts: EditableParts, part: string): Promise<OutOfView> {
  const rows = new Map<number, boolean>();
  const columns: { readonly first: number; readonly last: number }[] = [];
  const merged: CellArea[] = [];
  let isHiddenUsually = false;
  let row = -1;
  readMarkup(part, await parts.text(part), {
    open: (tag) => {
      const said = (name: string): string | undefined => attributeOf(tag, name);
      if (tag.name === "sheetFormatPr") isHiddenUsually = isOn(said("zeroHeight"));
      if (tag.name === "row") {
        row = said("r") === undefined ? row + 1 : Number(said("r")) - 1;
        rows.set(row, isOn(said("hidden")) || Number(said("ht") ?? 1) === 0);
      }
      if (tag.name === "col" && (isOn(said("hidden")) || Number(said("width") ?? 1) === 0))
        columns.push({ first: Number(said("min")) - 1, last: Number(said("max")) - 1 });
      if (tag.name === "mergeCell") merged.push(...[cellArea(said("ref") ?? "") ?? wholeLines(said("ref") ?? "")].flatMap((area) => area ?? []));
    },
  });
  return {
    hasRow: (place) => rows.get(place) ?? isHiddenUsually,
    hasColumn: (place) => columns.some(({ first, last }) => place >= first && place <= last),
    merged,
  };
}
