import { append, attributeOf, readMarkup, tagWith, withoutEnd, type Tag } from "../parts/markup";
import type { Edit } from "../parts/partText";

/**
 * The change of a sheet's part that gives columns other widths; everything else that is said of columns stays (ECMA-376 Part 1, 18.3.1.13).
 * @param widths in characters, by the column's place from 0
 */
export function widthEdits(part: string, text: string, widths: ReadonlyMap<number, number>): Edit[] {
  const columns: { readonly tag: Tag; readonly from: number; readonly to: number }[] = [];
  let list: { readonly tag: Tag; end: number } | undefined;
  let sheetData: Tag | undefined;
  readMarkup(part, text, {
    open: (tag, depth) => {
      if (depth === 1 && tag.name === "cols") list = { tag, end: tag.end };
      if (depth === 1 && tag.name === "sheetData") sheetData = tag;
      if (depth === 2 && tag.name === "col")
        columns.push({ tag, from: Number(attributeOf(tag, "min")) - 1, to: Number(attributeOf(tag, "max")) - 1 });
    },
    close: (name, { end }, depth) => {
      if (depth === 1 && name === "cols" && list !== undefined) list.end = end;
    },
  });
  if (widths.size === 0 || sheetData === undefined) return [];
  const x = sheetData.prefix;
  const given = (from: number, to: number, width?: number): Record<string, string> => ({
    ...{ min: String(from + 1), max: String(to + 1) },
    ...(width === undefined ? {} : { width: String(width), customWidth: "1" }),
  });
  // Each said run of columns falls into pieces at the columns that change.
  const pieces = columns.flatMap(({ tag, from, to }) => {
    const changed = [...widths.keys()].filter((column) => column >= from && column <= to).sort((one, other) => one - other);
    let next = from;
    const split: { readonly from: number; readonly markup: string }[] = [];
    for (const column of [...changed, to + 1]) {
      if (column > next) split.push({ from: next, markup: tagWith(text, tag, given(next, column - 1)) });
      if (column <= to) split.push({ from: column, markup: tagWith(text, tag, given(column, column, widths.get(column))) });
      next = column + 1;
    }
    return split;
  });
  const isSaid = (column: number): boolean => columns.some(({ from, to }) => column >= from && column <= to);
  for (const [column, width] of widths) {
    if (!isSaid(column))
      pieces.push({ from: column, markup: tagWith(`<${x}col/>`, { start: 0, end: `<${x}col/>`.length }, given(column, column, width)) });
  }
  const inOrder = pieces.sort((one, other) => one.from - other.from).map(({ markup }) => `${withoutEnd(markup)}/>`).join(""); // prettier-ignore
  if (list === undefined) return [{ from: sheetData.start, to: sheetData.start, text: `<${x}cols>${inOrder}</${x}cols>` }];
  if (list.tag.isEmpty) return [append(text, list.tag, list.end, inOrder)];
  return [{ from: list.tag.end, to: text.lastIndexOf("<", list.end - 1), text: inOrder }];
}
