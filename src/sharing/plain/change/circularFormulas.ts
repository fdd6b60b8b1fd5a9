import { overlap, type CellArea } from "../../../workbook/cellArea";
import { FilledCells } from "../reading/FilledCells";
import type { ReadFormula, ReadSheets } from "../reading/ReadSheets";
import type { FormulaSources, Precedent } from "./FormulaSources";
import { StackIndex } from "./StackIndex";

/** Formulas that are calculated from one another in a circle, or one from itself. */
export type Circle = readonly ReadFormula[];

interface Visit {
  readonly formula: ReadFormula;
  readonly index: number;
  readonly precedents: readonly Precedent[];
  at: number;
  lowest: number;
  isOwn: boolean;
}

/**
 * Every circle of formulas: Tarjan, SIAM J. Comput. 1 (1972) 146, with ranges as edges. Cells not yet visited are taken from a range one by one,
 * and of those that may still be in a circle the range tells the first alone, so that all takes time in proportion to formulas and ranges,
 * however many cells these hold. Loops, because a column of running sums is as deep as it is long.
 */
export function circularFormulas(sheets: ReadSheets, sources: readonly FormulaSources[]): readonly Circle[] {
  const unseen = new Map(sheets.names.map((name) => [name, new FilledCells(formulaRows(sheets, name))]));
  const open = new Map(sheets.names.map((name) => [name, new StackIndex(sheets.sheet(name)?.rows ?? 1)]));
  const [circles, stack, visits]: [Circle[], ReadFormula[], Visit[]] = [[], [], []];
  const seen = new Set<number>();
  let next = 0;
  const enter = (formula: ReadFormula): void => {
    const { sheet, area } = formula;
    eachCell(area, (row, column) => open.get(sheet)?.put(row, column, next));
    seen.add(formula.id);
    stack.push(formula);
    visits.push({ formula, index: next, precedents: sources[formula.id]?.precedents ?? [], at: 0, lowest: next, isOwn: false });
    next++;
  };
  const leave = ({ formula, index, lowest, isOwn }: Visit): void => {
    const above = visits.at(-1);
    if (above !== undefined) above.lowest = Math.min(above.lowest, lowest);
    if (lowest < index) return;
    const first = stack.lastIndexOf(formula);
    const together = stack.splice(first);
    for (const { sheet, area } of together) eachCell(area, (row, column) => open.get(sheet)?.take(row, column));
    if (together.length > 1 || isOwn) circles.push(together);
  };
  for (const formula of sheets.formulas) {
    if (seen.has(formula.id)) continue;
    enter(formula);
    for (let visit = visits.at(-1); visit !== undefined; visit = visits.at(-1)) {
      const precedent = visit.precedents[visit.at];
      if (precedent === undefined) {
        visits.pop();
        leave(visit);
        continue;
      }
      const { sheet, area } = precedent;
      const cell = unseen.get(sheet)?.takeOne(area);
      if (cell === undefined) {
        visit.lowest = Math.min(visit.lowest, open.get(sheet)?.least(area) ?? Infinity);
        visit.isOwn ||= sheet === visit.formula.sheet && overlap(area, visit.formula.area);
        visit.at++;
        continue;
      }
      const found = sheets.sheet(sheet)?.formulaAt(cell.row, cell.column);
      if (found !== undefined && !seen.has(found.id)) enter(found);
    }
  }
  return circles;
}

/** Every cell that a formula or its spill fills. */
function formulaRows(sheets: ReadSheets, sheet: string): ReadonlyMap<number, readonly number[]> {
  const columns = new Map<number, number[]>();
  for (const formula of sheets.formulas)
    if (formula.sheet === sheet)
      eachCell(formula.area, (row, column) => {
        const rows = columns.get(column);
        if (rows === undefined) columns.set(column, [row]);
        else rows.push(row);
      });
  for (const rows of columns.values()) rows.sort((a, b) => a - b);
  return columns;
}

function eachCell({ row, column, rows, columns }: CellArea, visitor: (row: number, column: number) => void): void {
  for (let down = 0; down < rows; down++) for (let across = 0; across < columns; across++) visitor(row + down, column + across);
}

// More pieces are looked at together as one that may have changed.
const MOST_PIECES = 200;

/**
 * What a circle is calculated from, but for its own cells.
 * @returns undefined where it lies scattered over what it is calculated from
 */
export function sourcesOutside(circle: Circle, sources: readonly FormulaSources[]): readonly Precedent[] | undefined {
  let pieces = circle.flatMap(({ id }) => sources[id]?.precedents ?? []);
  for (const { sheet, area } of circle) {
    pieces = pieces.flatMap((piece) => (piece.sheet === sheet ? without(piece.area, area).map((left) => ({ sheet, area: left })) : [piece]));
    if (pieces.length > MOST_PIECES) return undefined;
  }
  return pieces;
}

/** An area less another: above, below, left and right of it. */
function without(area: CellArea, taken: CellArea): readonly CellArea[] {
  if (!overlap(area, taken)) return [area];
  const [bottom, right] = [area.row + area.rows, area.column + area.columns];
  const [top, left] = [Math.max(area.row, taken.row), Math.max(area.column, taken.column)];
  const [end, side] = [Math.min(bottom, taken.row + taken.rows), Math.min(right, taken.column + taken.columns)];
  return [
    { ...area, rows: top - area.row },
    { ...area, row: end, rows: bottom - end },
    { row: top, rows: end - top, column: area.column, columns: left - area.column },
    { row: top, rows: end - top, column: side, columns: right - side },
  ].filter(({ rows, columns }) => rows > 0 && columns > 0);
}
