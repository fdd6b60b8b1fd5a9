import { tokenize, tokenTypes } from "@borgar/fx";
import { cellArea, cellAt, rangeOf, type CellArea } from "../../src/workbook/cellArea";
import type { BookState } from "./BookState";
import type { SheetState } from "./SheetState";

/** Puts whole rows in above a row, from 0, and moves everything that stands or hangs below, as Excel does. */
export function putRowsIn(book: BookState, sheet: SheetState, above: number, count: number): void {
  const moved = (row: number): number => (row >= above ? row + count : row);
  moveCells(sheet.cells, moved);
  moveCells(sheet.looks, moved);
  // A row put in looks like the one above it.
  for (const [cell, look] of [...sheet.looks]) {
    const { row, column } = cellArea(cell) ?? { row: -1, column: 0 };
    if (row === above - 1) for (let index = 0; index < count; index++) sheet.looks.set(cellAt(above + index, column), { ...look });
  }
  const heights = [...sheet.rowHeights];
  sheet.rowHeights.clear();
  for (const [row, height] of heights) sheet.rowHeights.set(moved(row), height);
  sheet.pageBreaks.splice(0, sheet.pageBreaks.length, ...sheet.pageBreaks.map((cell) => stretched(cell, above, count)));
  for (const one of [...sheet.conditionalFormats, ...sheet.entryRules]) Object.assign(one, { range: stretched(one.range, above, count) });
  const formula = (text: string, of = sheet): string => withRowsMoved(text, of === sheet, sheet.name, above, count);
  for (const one of sheet.conditionalFormats) if (one.formula !== undefined) one.formula = formula(one.formula);
  for (const one of sheet.entryRules) {
    const rule = one.rule as { custom?: { formula: string } } | undefined;
    if (rule?.custom !== undefined) one.rule = { custom: { formula: formula(rule.custom.formula) } };
  }
  for (const chart of sheet.charts) {
    if (chart.over !== undefined) chart.over = stretched(chart.over, above, count);
    for (const series of chart.series)
      Object.assign(series, Object.fromEntries((["x", "y"] as const).map((axis) => [axis, series[axis] && formula(series[axis])])));
  }
  for (const other of book.sheets)
    for (const cell of other.cells.values()) if (cell.formula !== undefined) cell.formula = formula(cell.formula, other);
  book.events.push({ kind: "changed", sheet, range: `A${above + 1}` });
}

function moveCells(cells: Map<string, object>, moved: (row: number) => number): void {
  const all = [...cells];
  cells.clear();
  for (const [cell, held] of all) {
    const { row, column } = cellArea(cell) ?? { row: 0, column: 0 };
    cells.set(cellAt(moved(row), column), held);
  }
}

/** A range grows where rows come in between its first and its last. */
function stretched(range: string, above: number, count: number): string {
  const area = cellArea(range);
  return area === undefined ? range : rangeOf(stretchedArea(area, above, count));
}

const stretchedArea = (area: CellArea, above: number, count: number): CellArea => {
  const [first, last] = [area.row, area.row + area.rows - 1].map((row) => (row >= above ? row + count : row)) as [number, number];
  return { ...area, row: first, rows: last - first + 1 };
};

/** A formula as it reads after rows came in on a sheet. @param isOnSheet whether it stands on that sheet itself */
export function withRowsMoved(formula: string, isOnSheet: boolean, sheet: string, above: number, count: number): string {
  const hasSign = formula.startsWith("=");
  const text = tokenize(hasSign ? formula : `=${formula}`)
    .map(({ type, value }) => {
      if (type !== tokenTypes.REF_RANGE) return value;
      const start = value.lastIndexOf("!") + 1;
      const named = value
        .slice(0, start - 1)
        .replace(/^'|'$/g, "")
        .replaceAll("''", "'");
      if (start === 0 ? !isOnSheet : named !== sheet) return value;
      return (
        value.slice(0, start) +
        value
          .slice(start)
          .replace(/(\$?)(\d+)/g, (_held, fixed: string, row: string) => `${fixed}${Number(row) - 1 >= above ? Number(row) + count : row}`)
      );
    })
    .join("");
  return hasSign ? text : text.slice(1);
}
