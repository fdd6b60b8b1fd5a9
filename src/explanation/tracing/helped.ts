import { oneCell, type Cells, onlyValue } from "../formula/Cells";
import type { Arguments, At, UnderWay, Valued } from "./Traced";

/** Functions that call a LAMBDA for each cell, row or column. */
export type Helped = (trace: UnderWay, given: Arguments, at: At) => Valued | undefined;

/** The values of all arguments and the LAMBDA, which is the last. */
function takenApart(trace: UnderWay, given: Arguments, at: At) {
  const values = given.map((one) => (one === null ? undefined : trace.value(one, { ...at, isByCell: false })));
  const lambda = values.at(-1)?.lambda;
  const before = values.slice(0, -1);
  if (lambda === undefined || !before.every((value) => value !== undefined)) return undefined;
  return { before, lambda, written: given.map((one) => trace.written(one, at)) };
}

/** A block made of single values; undefined as soon as one is not known. */
const block = (rows: readonly (readonly (Valued | undefined)[])[]): Valued | undefined => {
  const cells = rows.map((row) => row.map((value) => onlyValue(value?.cells)));
  return cells.every((row) => row.every((value) => value !== undefined)) ? { cells: cells as Cells } : undefined;
};

export const HELPED: Readonly<Record<string, Helped>> = {
  MAP: (trace, given, at) => {
    const parts = takenApart(trace, given, at);
    const first = parts?.before[0]?.cells;
    if (parts === undefined || first === undefined) return undefined;
    return block(
      first.map((row, down) =>
        row.map((_, across) => {
          const cells = parts.before.map(({ cells: of }): Valued | undefined => {
            const value = of[down]?.[across];
            return value === undefined ? undefined : { cells: oneCell(value) };
          });
          return trace.applied(parts.lambda, cells, parts.written.map((text) => eachOf(text, down, across, row.length)), { ...at, isByCell: true }); // prettier-ignore
        }),
      ),
    );
  },
  BYROW: (trace, given, at) => {
    const parts = takenApart(trace, given, at);
    const table = parts?.before[0]?.cells;
    if (parts === undefined || table === undefined) return undefined;
    const of = (row: Cells[number], down: number): Valued | undefined =>
      trace.applied(parts.lambda, [{ cells: [row] }], [rowOf(parts.written[0] ?? "", down)], { ...at, isByCell: false });
    return block(table.map((row, down) => [of(row, down)]));
  },
  REDUCE: (trace, given, at) => {
    const parts = takenApart(trace, given, at);
    const [start, over] = parts?.before ?? [];
    if (parts === undefined || start === undefined || over === undefined) return undefined;
    let so: Valued | undefined = start;
    for (const [index, value] of over.cells.flat().entries())
      so =
        so &&
        trace.applied(parts.lambda, [so, { cells: oneCell(value) }], ["", eachOf(parts.written[1] ?? "", index, 0, 1)], { ...at, isByCell: false });
    return so;
  },
};

const rowOf = (text: string, row: number): string => `row ${row + 1} of ${text}`;
const eachOf = (text: string, row: number, column: number, columns: number): string =>
  columns === 1 ? rowOf(text, row) : `row ${row + 1}, column ${column + 1} of ${text}`;
