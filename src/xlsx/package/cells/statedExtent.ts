import { cellArea, rangeOf } from "../../../workbook/cellArea";
import { withAttributes, type Tag } from "../parts/markup";
import type { Edit } from "../parts/partText";
import { isBlank, type WantedCell } from "./WantedCell";

const SPAN = /^(\d+):(\d+)$/;

/** The row's own word of how far it reaches (ECMA-376 Part 1, 18.3.1.73), where it does not hold for what is put into it. */
export function spanFor({ attributes: { spans = "" } }: Tag, cells: readonly WantedCell[]): string | undefined {
  const said = spans.split(/\s+/).flatMap((span): [number, number][] => {
    const [, from, to] = SPAN.exec(span) ?? [];
    return from === undefined ? [] : [[Number(from), Number(to)]];
  });
  const columns = cells.map(({ column }) => column + 1);
  if (said.length === 0 || columns.every((column) => said.some(([from, to]) => column >= from && column <= to))) return undefined;
  const [first = 1, last = 1] = [columns[0], columns.at(-1)];
  return `${said.reduce((so, [from]) => Math.min(so, from), first)}:${said.reduce((so, [, to]) => Math.max(so, to), last)}`;
}

/** The sheet's own word of its extent, where cells are put outside of it. */
export function grown(text: string, tag: Tag, wanted: readonly WantedCell[]): Edit[] {
  const said = cellArea(tag.attributes.ref ?? "");
  const put = wanted.filter(({ content }) => !isBlank(content));
  if (said === undefined || put.length === 0) return [];
  let [top, left, bottom, right] = [said.row, said.column, said.row + said.rows - 1, said.column + said.columns - 1];
  for (const { row, column } of put)
    [top, left, bottom, right] = [Math.min(top, row), Math.min(left, column), Math.max(bottom, row), Math.max(right, column)];
  const area = { row: top, column: left, rows: bottom - top + 1, columns: right - left + 1 };
  return area.rows === said.rows && area.columns === said.columns ? [] : [withAttributes(text, tag, { ref: rangeOf(area) })];
}
