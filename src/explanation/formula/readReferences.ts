import { BLANK, CellError, type CellValue } from "../../inputs/CellValue";
import type { InputCell, InputsReading } from "../../workbook/Workbook";
import type { Cells } from "./Cells";
import type { Surroundings } from "./evaluate";
import { parseReference, referenceKey, type RangeReference } from "./references";

/** The values of every range, under referenceKey; a range too large to be read is missing. */
export type ReadCells = ReadonlyMap<string, Cells>;

export const distinctReferences = (references: readonly RangeReference[]): RangeReference[] => [
  ...new Map(references.map((reference) => [referenceKey(reference), reference])).values(),
];

/**
 * The values of the references as a host hands them over. Whole columns (or rows) are taken as far as any of them is filled, so
 * that they belong to each other row by row.
 * @param ranges what was read of each reference
 */
export function cellsOfReferences(references: readonly RangeReference[], ranges: InputsReading["ranges"]): ReadCells {
  const read = references.flatMap((reference, index) => {
    const cells = ranges[index]?.map((row) => row.map(valueOf));
    return cells === undefined ? [] : [{ reference, cells }];
  });
  const longest = (isLine: (range: string) => boolean, length: (cells: Cells) => number): number =>
    Math.max(0, ...read.filter(({ reference }) => isLine(reference.range)).map(({ cells }) => length(cells)));
  const rows = longest(isWholeColumns, (cells) => cells.length);
  const columns = longest(isWholeRows, (cells) => cells[0]?.length ?? 0);
  return new Map(
    read.map(({ reference, cells }) => {
      const { range } = reference;
      return [referenceKey(reference), isWholeColumns(range) ? lengthened(cells, rows) : isWholeRows(range) ? widened(cells, columns) : cells];
    }),
  );
}

/** Looks references up among what was read. @param homeSheet the sheet meant where a reference names none */
export const referredAmong =
  (cells: ReadCells, homeSheet: string): Surroundings["referred"] =>
  (text, spill) => {
    const reference = parseReference(text, homeSheet);
    return reference === undefined ? undefined : cells.get(referenceKey({ ...reference, spill }));
  };

const isWholeColumns = (range: string): boolean => !/\d/.test(range);
const isWholeRows = (range: string): boolean => !/[A-Z]/i.test(range);

const valueOf = ({ value, error }: InputCell): CellValue => (error === "" ? (value ?? BLANK) : new CellError(error));

const lengthened = (cells: Cells, rows: number): Cells => [
  ...cells,
  ...Array.from({ length: Math.max(0, rows - cells.length) }, () => new Array<CellValue>(cells[0]?.length ?? 1).fill(BLANK)),
];

const widened = (cells: Cells, columns: number): Cells =>
  cells.map((row) => [...row, ...new Array<CellValue>(Math.max(0, columns - row.length)).fill(BLANK)]);
