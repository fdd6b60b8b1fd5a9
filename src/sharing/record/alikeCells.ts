import { cellArea, rangeOf, type CellArea } from "../../workbook/cellArea";
import type { FormulaCell } from "../formulaCells";
import { movingToo, partsOf, type Parts } from "./movedFormula";

/** Cells side by side, or one below the other, whose formulas are that of the first moved along. */
export interface AlikeCells {
  /** "F13:F16" */
  readonly range: string;
  readonly first: FormulaCell;
  /** Row by row. */
  readonly cells: readonly FormulaCell[];
  /** References of the first formula that move along though "$" holds them: "$C$12". */
  readonly movingToo: readonly string[];
}

interface Block {
  area: CellArea;
  readonly parts: Parts;
  readonly kind: string;
  cells: FormulaCell[];
  moving: ReadonlySet<string> | undefined;
}

/**
 * Formula cells with those together whose formulas are alike, first down the columns, then across; in the order of their first cells. Takes time in
 * proportion to the formulas.
 * @param kindOf what else has to be the same
 */
export function alikeCells(formulaCells: readonly FormulaCell[], kindOf: (cell: FormulaCell) => string): AlikeCells[] {
  const blocks: Block[] = [];
  const above = new Map<number, Block>();
  for (const cell of formulaCells) {
    const area = cellArea(cell.cell) ?? { row: 0, column: 0, rows: 1, columns: 1 };
    const block: Block = { area, parts: partsOf(cell.formula), kind: kindOf(cell), cells: [cell], moving: undefined };
    // What fills several cells stands by itself.
    const isSingle = cell.area.range === cell.cell;
    const open = isSingle ? above.get(area.column) : undefined;
    if (open !== undefined && joins(open, block, { rows: 1, columns: 0 })) {
      open.area = { ...open.area, rows: open.area.rows + 1 };
      continue;
    }
    blocks.push(block);
    if (isSingle) above.set(area.column, block);
    else above.delete(area.column);
  }
  return across(blocks).map(({ area, cells, moving }) => {
    const [first] = cells as [FormulaCell];
    return { range: cells.length === 1 ? first.area.range : rangeOf(area), first, cells, movingToo: [...(moving ?? [])] };
  });
}

/** Columns of one height side by side. Where "$" holds what moves along, only rows of single cells are joined, so that it is told which way it moves. */
function across(blocks: readonly Block[]): Block[] {
  const left = new Map<string, Block>();
  const found: Block[] = [];
  const inOrder = [...blocks].sort((one, other) => one.area.column - other.area.column);
  const gone = new Set<Block>();
  for (const block of inOrder) {
    const { row, rows, column } = block.area;
    const open = left.get(`${row}:${rows}:${column}`);
    const isAlike = open !== undefined && ((block.moving?.size ?? 0) + (open.moving?.size ?? 0) === 0 || rows === 1);
    if (isAlike && joins(open, block, { rows: 0, columns: 1 })) {
      open.area = { ...open.area, columns: open.area.columns + 1 };
      gone.add(block);
      left.set(`${row}:${rows}:${column + 1}`, open);
    } else left.set(`${row}:${rows}:${column + 1}`, block);
  }
  for (const block of blocks) if (!gone.has(block)) found.push(block);
  for (const { area, cells } of found) if (area.rows > 1 && area.columns > 1) cells.sort(byRow);
  return found;
}

const byRow = (one: FormulaCell, other: FormulaCell): number => {
  const [a, b] = [cellArea(one.cell), cellArea(other.cell)];
  return (a?.row ?? 0) - (b?.row ?? 0) || (a?.column ?? 0) - (b?.column ?? 0);
};

/** Takes the other block in where it begins just beyond this one and its formula is this one's moved. */
function joins(open: Block, other: Block, step: { readonly rows: number; readonly columns: number }): boolean {
  const { row, column, rows, columns } = open.area;
  const by = { rows: step.rows * rows, columns: step.columns * columns };
  if (other.area.row !== row + by.rows || other.area.column !== column + by.columns || other.kind !== open.kind) return false;
  if ([open, other].some(({ cells }) => cells[0]?.area.range !== cells[0]?.cell)) return false;
  const moving = movingToo(open.parts, other.parts, by);
  if (moving === undefined || (open.moving !== undefined && !isSame(open.moving, moving))) return false;
  if (rows > 1 && columns === 1 && step.columns === 1 && moving.size > 0) return false;
  open.moving = moving;
  for (const cell of other.cells) open.cells.push(cell);
  return true;
}

const isSame = (one: ReadonlySet<string>, other: ReadonlySet<string>): boolean =>
  one.size === other.size && [...one].every((text) => other.has(text));
