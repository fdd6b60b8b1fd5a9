import { parseA1Range } from "@borgar/fx";
import { BLANK, CellError, type CellValue } from "../../inputs/CellValue";
import type { CellReading, RangeReading, Workbook } from "../../workbook/Workbook";
import type { Cells } from "./Cells";
import { referenceKey, type RangeReference } from "./references";

/** The values of every range, under referenceKey. */
export type ReadCells = ReadonlyMap<string, Cells>;

/** Reads each distinct range once. @throws WorkbookProblem */
export async function readReferences(workbook: Workbook, references: readonly RangeReference[]): Promise<ReadCells> {
  const distinct = new Map(references.map((reference) => [referenceKey(reference), reference]));
  const read = [...distinct].map(async ([key, reference]) => [key, await readReference(workbook, reference)] as const);
  return new Map(await Promise.all(read));
}

async function readReference(workbook: Workbook, { sheet, range, spill }: RangeReference): Promise<Cells> {
  if (!spill) return isWholeLine(range) ? wholeLine(await workbook.readUsed(sheet), range) : valuesOf(await workbook.read(sheet, range));
  const anchor = await workbook.read(sheet, range);
  const area = anchor.rows[0]?.[0]?.spill ?? "";
  return area === "" ? valuesOf(anchor) : valuesOf(await workbook.read(sheet, area));
}

const isWholeLine = (range: string): boolean => !/\d/.test(range) || !/[A-Z]/i.test(range);

const valuesOf = (reading: RangeReading): Cells => reading.rows.map((row) => row.map(valueOf));

const valueOf = ({ value, error }: CellReading): CellValue => (error === "" ? (value ?? BLANK) : new CellError(error));

/** Whole columns or rows ("B:B", "3:9"), as far as the sheet is used. */
function wholeLine(used: RangeReading, range: string): Cells {
  const wanted = parseA1Range(range);
  const filled = used.range === "" ? undefined : parseA1Range(used.range);
  if (wanted === undefined || filled === undefined) return [[BLANK]];
  const top = wanted.top ?? 0;
  const left = wanted.left ?? 0;
  const rows = span(top, wanted.bottom ?? filled.bottom);
  const columns = span(left, wanted.right ?? filled.right);
  const cellAt = (row: number, column: number): CellReading | undefined => used.rows[row - (filled.top ?? 0)]?.[column - (filled.left ?? 0)];
  return rows.map((row) => columns.map((column) => valueOrBlank(cellAt(row, column))));
}

const valueOrBlank = (cell: CellReading | undefined): CellValue => (cell === undefined ? BLANK : valueOf(cell));

const span = (first: number, last: number | null | undefined): number[] =>
  Array.from({ length: Math.max(1, (last ?? first) - first + 1) }, (_, step) => first + step);
