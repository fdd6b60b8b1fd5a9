// Columns and cells of a run sheet put in, taken out and moved: no such sheet is read as the one that was made.
import { buildRunSheet } from "../../../src/runsheet/buildRunSheet";
import { checkOptions } from "../../../src/runsheet/options/checkOptions";
import { RUN_KINDS, type RunSheetOptions } from "../../../src/runsheet/options/RunSheetOptions";
import { movedAside } from "../../../src/runsheet/reading/movedAside";
import { readRunSheet, type ReadRunSheet } from "../../../src/runsheet/reading/readRunSheet";
import { rewordedSheet } from "../../../src/runsheet/growing/rewordedSheet";
import { columns } from "../../../src/runsheet/sheet/Columns";
import { areaNamed } from "../../../src/workbook/areaNamed";
import { cellAt, rangeOf } from "../../../src/workbook/cellArea";
import type { SheetPlan } from "../../../src/workbook/SheetPlan";
import type { RangeReading } from "../../../src/workbook/Workbook";
import { reading as cellReading } from "../../sharing/MemoryWorkbook";

interface Held {
  readonly row: number;
  readonly column: number;
  readonly value?: string | number | boolean;
  readonly formula?: string;
}
/** Where a cell goes; undefined for one that is taken out. */
type Move = (at: Held) => { readonly row?: number; readonly column?: number } | undefined;

const held = ({ cells }: SheetPlan): Held[] =>
  cells.map(({ cell, content, formula }) => ({ ...areaNamed(cell), ...(content !== undefined && { value: content }), ...(formula && { formula }) }));

function readingOf(cells: readonly Held[]): RangeReading {
  const [rows, wide] = [Math.max(...cells.map(({ row }) => row)) + 1, Math.max(...cells.map(({ column }) => column)) + 1];
  const all = new Map(cells.map((one) => [cellAt(one.row, one.column), one]));
  const read = Array.from({ length: rows }, (_, row) =>
    Array.from({ length: wide }, (_cell, column) => {
      const { value = null, formula = "" } = all.get(cellAt(row, column)) ?? {};
      return cellReading(cellAt(row, column), { value, formula });
    }),
  );
  return { sheet: "Run", range: rangeOf({ row: 0, column: 0, rows, columns: wide }), rows: read };
}

const after = (plan: SheetPlan, ...moves: readonly Move[]): Held[] =>
  moves.reduce<Held[]>(
    (cells, move) =>
      cells.flatMap((one) => {
        const to = move(one);
        return to === undefined ? [] : [{ ...one, ...to }];
      }),
    held(plan),
  );

const putIn =
  (at: number, count = 1): Move =>
  ({ column }) => ({ column: column >= at ? column + count : column });
const takenOut =
  (at: number, count = 1): Move =>
  ({ column }) =>
    column >= at && column < at + count ? undefined : { column: column >= at ? column - count : column };
/** A column cut and put in before another, as whole columns are moved. */
const movedTo =
  (from: number, before: number): Move =>
  ({ column }) => {
    if (column === from) return { column: before > from ? before - 1 : before };
    const without = column > from ? column - 1 : column;
    const to = before > from ? before - 1 : before;
    return { column: without >= to ? without + 1 : without };
  };

const usual: RunSheetOptions = { kind: "charring", weighIns: 6, intervalMinutes: 20, readability: 0.01, vessel: "tin", replicates: 3 };
const every: readonly (readonly [string, RunSheetOptions])[] = RUN_KINDS.flatMap((kind) =>
  (kind === "charring" ? [1, 3, 6] : [kind === "balance" ? 1 : 3]).map(
    (replicates) => [`${kind}, samples: ${replicates}`, { ...usual, kind, replicates }] as const,
  ),
);

const stands = (read: ReadRunSheet): string | undefined => (read.is === "rearranged" ? read.stands : undefined);

describe.each(every)("%s", (_, options) => {
  const plan = buildRunSheet(options);
  const { width, elapsed } = columns(checkOptions(options));
  const each = Array.from({ length: elapsed + 1 }, (_column, at) => at);
  /** Neither said to have columns moved, nor refused because column A is another. */
  const isTaken = (reading: RangeReading): boolean => {
    const read = readRunSheet(reading);
    if (read.is !== "rearranged") return true;
    const reworded = read.stands === undefined ? rewordedSheet(reading) : undefined;
    return reworded !== undefined && movedAside(reading, reworded) === undefined;
  };
  const unnoticed = (moves: readonly (readonly [string, Held[]])[]): string[] =>
    moves.filter(([, cells]) => isTaken(readingOf(cells))).map(([said]) => said);

  test("a column, or several, put in or taken out anywhere is noticed, before A and right of the print too", () => {
    expect(stands(readRunSheet(readingOf(after(plan))))).toBeUndefined();
    const put = each.flatMap((at) => [1, 2].map((count) => [`put in ${count} at ${at}`, after(plan, putIn(at, count))] as const));
    const out = each.flatMap((at) => (at === elapsed ? [] : [[`taken out ${at}`, after(plan, takenOut(at))] as const]));
    expect(unnoticed([...put, ...out])).toEqual([]);
  });

  test("so is a column put in and another taken out, and one that was moved, unless nothing printed stood there", () => {
    const printed = new Set(held(plan).flatMap(({ column, value }) => (typeof value === "string" && column < width ? [column] : [])));
    const both = each.flatMap((at) =>
      each
        // Without its record a sheet says nothing of what it was.
        .filter(
          (out) =>
            out !== at &&
            out !== elapsed &&
            (at + out) % 4 === 1 &&
            [...printed].some((column) => (at > out ? column > out && column < at : column >= at && column < out)),
        )
        .map((out) => [`put in at ${at}, taken out ${out}`, after(plan, putIn(at), takenOut(out < at ? out : out + 1))] as const),
    );
    expect(both.length).toBeGreaterThan(10);
    expect(unnoticed(both)).toEqual([]);
    const moved = [...printed].flatMap((from) =>
      [...printed]
        .filter((to) => to > from + 1 && (to + from) % 3 === 0)
        .map((to) => [`moved ${from} before ${to}`, after(plan, movedTo(from, to))] as const),
    );
    expect(unnoticed(moved)).toEqual([]);
  });

  test("so are cells of a row pushed aside from a box on", () => {
    const rows = new Set(held(plan).flatMap(({ row, column, formula }) => (formula !== undefined && column < width && row > 5 ? [row] : [])));
    const boxed = plan.cells.flatMap(({ cell, style }) => (style?.startsWith("runBox") === true ? [areaNamed(cell)] : []));
    const pushed = [...rows].flatMap((row) =>
      [1, -1].flatMap((by) => {
        const from = boxed.find((box) => box.row === row)?.column;
        const aside: Move = (at) => {
          if (from === undefined || at.row !== row || at.column < from) return {};
          return by === -1 && at.column === from ? undefined : { column: at.column + by };
        };
        return from === undefined ? [] : [[`row ${row + 1} by ${by}`, after(plan, aside)] as const];
      }),
    );
    expect(pushed.length).toBeGreaterThan(10);
    expect(unnoticed(pushed)).toEqual([]);
  });

  test("headings in a person's own words are none of it, exchanged or one called as another too", () => {
    const boxed = new Set(plan.cells.flatMap(({ cell, style }) => (style?.startsWith("runBox") === true ? [cell] : [])));
    const labels = held(plan).filter(
      ({ row, column, value }) =>
        typeof value === "string" && value !== "" && column > 0 && column < width && row > 5 && !boxed.has(cellAt(row, column)),
    );
    const called = (name: (of: string) => string): Held[] =>
      held(plan).map((one) =>
        labels.some(({ row, column }) => row === one.row && column === one.column) ? { ...one, value: name(String(one.value)) } : one,
      );
    expect(movedAside(readingOf(called((of) => `own words for ${of}`)), checkOptions(options))).toBeUndefined();
    for (const label of labels) {
      const others = labels.filter(({ row, value }) => row === label.row && value !== label.value).slice(0, 2);
      for (const other of others) {
        const renamed = held(plan).map((one) => (one.row === label.row && one.column === label.column ? { ...one, value: other.value ?? "" } : one));
        expect(movedAside(readingOf(renamed), checkOptions(options))).toBeUndefined();
        const exchanged = renamed.map((one) => (one.row === other.row && one.column === other.column ? { ...one, value: label.value ?? "" } : one));
        expect(movedAside(readingOf(exchanged), checkOptions(options))).toBeUndefined();
      }
    }
  });
});

test("it is told what stands where, and where it belongs", () => {
  const plan = buildRunSheet(usual);
  const read = (...moves: Move[]): ReadRunSheet => readRunSheet(readingOf(after(plan, ...moves)));
  expect(read(putIn(3))).toEqual({ is: "rearranged", missing: "Retort run sheet 1, made with", cell: "O1", stands: "P1" });
  expect(read(putIn(3), takenOut(10))).toEqual({ is: "rearranged", missing: "Sample 2", cell: "D6", stands: "E6" });
  expect(read((at) => (at.row === 13 && at.column > 1 ? { column: at.column + 1 } : {}))).toEqual({
    is: "rearranged",
    missing: "",
    cell: "I14",
    stands: "J14",
  });
});

test("cells of a column pushed down or up are noticed by the headings among them", () => {
  const plan = buildRunSheet(usual);
  for (const by of [1, -1, 3]) {
    const pushed = after(plan, ({ row, column }) => (column === 2 && row >= 13 ? { row: row + by } : {}));
    expect(stands(readRunSheet(readingOf(pushed)))).toBe(`C${19 + by}`);
  }
});

test("a row put in above the sheet is noticed by its record", () => {
  const read = readRunSheet(readingOf(after(buildRunSheet(usual), ({ row }) => ({ row: row + 1 }))));
  expect(read).toEqual({ is: "rearranged", missing: "Retort run sheet 1, made with", cell: "O1", stands: "O2" });
});
