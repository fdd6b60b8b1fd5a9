import { cell, type Cell, type Expression, type Range } from "../expressions/Expression";
import type { CellStyle, EntryRule, PlannedCell } from "../../workbook/SheetPlan";
import { LABEL } from "../sheet/sampleCells";
import type { RunSheet } from "../sheet/RunSheet";

/** One part of a run sheet. */
export interface Block {
  readonly cells: readonly BlockCell[];
  readonly entryRules: readonly BoxRule[];
}

/** A planned cell whose formula is still data. */
export interface BlockCell extends Pick<PlannedCell, "content" | "format"> {
  readonly at: Cell;
  readonly formula?: Expression;
  readonly style: CellStyle;
}

/** What may be typed into a box or a column of boxes. */
export interface BoxRule extends Omit<EntryRule, "range"> {
  readonly over: Cell | Range;
}

export const NO_BLOCK: Block = { cells: [], entryRules: [] };

/** Blocks one after another, as one. */
export const together = (...blocks: readonly Block[]): Block => ({
  cells: blocks.flatMap(({ cells }) => cells),
  entryRules: blocks.flatMap(({ entryRules }) => entryRules),
});

/** Cells in which nothing is typed. */
export const ofCells = (...cells: readonly BlockCell[]): Block => ({ cells, entryRules: [] });

/** A line of text across the whole width of the sheet, in one look. */
export const band = ({ columns }: RunSheet, row: number, content: string, style: CellStyle): BlockCell[] =>
  Array.from({ length: columns.width }, (_, column) => ({ at: cell(row, column), ...(column === 0 ? { content } : {}), style }));

/** What a line is called, left of its value. */
export const label = ({ row }: Cell, content: string): BlockCell => ({ at: cell(row, LABEL), content, style: "label" });

/** Headings of a table, from the first column on. */
export const headings = (row: number, contents: readonly string[]): BlockCell[] =>
  contents.map((content, column) => ({ at: cell(row, column), content, style: "columnHeading" }));
