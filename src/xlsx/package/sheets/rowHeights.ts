import { append, readMarkup, withAttributes, type Tag } from "../parts/markup";
import type { Edit } from "../parts/partText";

/**
 * The change of a sheet's part that gives rows other heights; everything else that is said of them stays (ECMA-376 Part 1, 18.3.1.73).
 * @param heights in points, by the row's place from 0
 */
export function heightEdits(part: string, text: string, heights: ReadonlyMap<number, number>): Edit[] {
  if (heights.size === 0) return [];
  const left = [...heights].sort(([one], [other]) => one - other);
  const edits: Edit[] = [];
  let sheetData: Tag | undefined;
  let isIn = false;
  let before = -1;
  const rowsBefore = (row: number): string => {
    const rows: string[] = [];
    for (let [first] = left; first !== undefined && first[0] < row; [first] = left) {
      rows.push(`<${sheetData?.prefix ?? ""}row r="${first[0] + 1}" ht="${first[1]}" customHeight="1"/>`);
      left.shift();
    }
    return rows.join("");
  };
  readMarkup(part, text, {
    open: (tag, depth) => {
      if (depth === 1) isIn = tag.name === "sheetData";
      if (depth === 1 && isIn) sheetData = tag;
      if (depth !== 2 || !isIn || tag.name !== "row") return;
      const row = tag.attributes.r === undefined ? before + 1 : Number(tag.attributes.r) - 1;
      before = row;
      const rows = rowsBefore(row);
      if (rows !== "") edits.push({ from: tag.start, to: tag.start, text: rows });
      if (left[0]?.[0] === row) edits.push(withAttributes(text, tag, { ht: String(left.shift()?.[1]), customHeight: "1" }));
    },
    close: (_name, { start }, depth) => {
      if (depth !== 1 || !isIn || sheetData === undefined) return;
      const rows = rowsBefore(Infinity);
      if (rows !== "") edits.push(append(text, sheetData, start, rows));
      isIn = false;
    },
  });
  return edits;
}
