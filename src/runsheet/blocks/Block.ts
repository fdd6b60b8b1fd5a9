import type { CellStyle, EntryRule, PlannedCell } from "../../workbook/SheetPlan";
import { cell, type Cell, type Expression, type Range } from "../expressions/Expression";
import type { Sheet } from "../sheet/RunSheet";

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

export type Allowed = Exclude<EntryRule["allow"], { readonly kind: "condition" }> | { readonly kind: "condition"; readonly condition: Expression };

/** What may be typed into a box or a rectangle of boxes; a condition is that of the first of them. */
export interface BoxRule extends Omit<EntryRule, "range" | "allow"> {
  readonly over: Cell | Range;
  readonly allow: Allowed;
}

/** Blocks one after another, as one. */
export const together = (...blocks: readonly Block[]): Block => ({
  cells: blocks.flatMap(({ cells }) => cells),
  entryRules: blocks.flatMap(({ entryRules }) => entryRules),
});

/** Cells in which nothing is typed. */
export const ofCells = (...cells: readonly BlockCell[]): Block => ({ cells, entryRules: [] });

/** A line across the printed width in one look, with words in some of its columns. */
export const band = ({ columns }: Sheet, row: number, style: CellStyle, words: Readonly<Record<number, string>>): BlockCell[] =>
  Array.from({ length: columns.width }, (_, column) => {
    const content = words[column];
    return { at: cell(row, column), ...(content === undefined ? {} : { content }), style };
  });

export const calculated = (at: Cell, formula: Expression, style: CellStyle = "runReckoned", format?: string): BlockCell => ({
  at,
  formula,
  style,
  ...(format === undefined ? {} : { format }),
});

/** A number right of everything printed. */
export const working = (at: Cell, formula: Expression, format?: string): BlockCell => calculated(at, formula, "runWorking", format);

/** What the workings of a row are. */
export const workingLabel = ({ columns }: Sheet, row: number, content: string): BlockCell => ({
  at: cell(row, columns.workingLabel),
  content,
  style: "runWorkingHeading",
});

/** Headings over the samples' columns: boxes, then what is reckoned. */
export const overSamples = (
  { samples, columns }: Sheet,
  boxes: (sample: number) => string,
  reckoned: (sample: number) => string,
): Readonly<Record<number, string>> =>
  Object.fromEntries(
    samples.flatMap((sample) => [
      [columns.box(1, sample).column, boxes(sample)],
      [columns.reckoned(1, sample).column, reckoned(sample)],
    ]),
  );
