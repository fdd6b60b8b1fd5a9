import { cellAt } from "../workbook/cellArea";
import type { CellStyle, PlannedCell } from "../workbook/SheetPlan";
import { glossary } from "./glossary";
import type { Layout } from "./layout";

/** The cell of a sample, from 1, in a row of a table that has one column for each sample. */
export const sampleColumnCell = (row: number, sample: number): string => cellAt(row - 1, sample);

/** The same row's cells of all samples, as a range. */
export const allSamples = (row: number, replicates: number): string => `${sampleColumnCell(row, 1)}:${sampleColumnCell(row, replicates)}`;

/** The cell right of everything printed where a row keeps what its printed cell for a sample, from 1, rests on. */
export const workingCell = ({ table }: Layout, row: number, sample: number): string => cellAt(row - 1, table.width + sample - 1);

/** Column headings of a table with one column for each sample, and further ones after them. */
export const columnHeadings = (row: number, first: string, replicates: number, further: readonly string[] = []): PlannedCell[] =>
  [first, ...Array.from({ length: replicates }, (_, index) => glossary.sample(index + 1)), ...further].map((content, column) => ({
    cell: cellAt(row - 1, column),
    content,
    style: "columnHeading",
  }));

/** A row of a table: its label and a cell formula for each sample, from 1. */
export const sampleRow = (
  row: number,
  label: string,
  replicates: number,
  formula: (sample: number) => string,
  look: { readonly style: CellStyle; readonly format?: string },
): PlannedCell[] => [
  { cell: cellAt(row - 1, 0), content: label, style: "label" },
  ...Array.from({ length: replicates }, (_, index) => ({ cell: sampleColumnCell(row, index + 1), formula: formula(index + 1), ...look })),
];
