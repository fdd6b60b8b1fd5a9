import type { CellContent, RangeReading } from "../../workbook/Workbook";
import { placeOf } from "../expressions/formulaText";
import { cell, type Cell } from "../expressions/Expression";
import { readRunSheet } from "../reading/readRunSheet";
import { CLOCK } from "../sheet/Columns";
import type { RunSheet } from "../sheet/RunSheet";

// Fewer numbers of one sample, its vessel among them, may be alike by chance on a coarse balance; own bound.
const FEWEST_ALIKE = 3;

/** What was noted of a run: its kind, the day and the times, and what each sample weighed, each told with where it belongs. */
interface Noted {
  readonly sheet: string;
  readonly kind: string;
  readonly day: CellContent;
  readonly items: ReadonlySet<string>;
}

/**
 * Run sheets whose weighings all stand on another one too, with the name of that other, as after a sample was added, which carries all
 * weighings over to a new sheet. Of two that hold the same the earlier is kept, else the one that holds more.
 */
export function heldAgain(sheets: readonly RangeReading[]): ReadonlyMap<string, string> {
  const noted = sheets.flatMap((reading) => notedOn(reading) ?? []);
  const isLess = (one: Noted, index: number, other: Noted, at: number): boolean =>
    index !== at && isWithin(one, other) && (!isWithin(other, one) || at < index);
  const isLeast = (one: Noted, index: number): boolean => noted.some((other, at) => isLess(one, index, other, at));
  return new Map(
    noted.flatMap((one, index): (readonly [string, string])[] => {
      const other = noted.find((of, at) => isLess(one, index, of, at) && !isLeast(of, at));
      return other === undefined ? [] : [[one.sheet, other.sheet]];
    }),
  );
}

const isWithin = (one: Noted, other: Noted): boolean =>
  one.kind === other.kind && (one.day === "" || one.day === other.day) && [...one.items].every((item) => other.items.has(item));

/** Undefined where too little was weighed, or the sheet cannot be read. */
function notedOn(reading: RangeReading): Noted | undefined {
  const read = readRunSheet(reading);
  if (read.is !== "whole") return undefined;
  const held = new Map(reading.rows.flat().map(({ cell: at, value }) => [at, value]));
  const holds = (at: Cell): CellContent => held.get(placeOf(at).replaceAll("$", "")) ?? "";
  const weighings = weighingsOf(read.sheet).flatMap(([place, at]) => (holds(at) === "" ? [] : [`${place}: ${String(holds(at))}`]));
  if (weighings.length < FEWEST_ALIKE) return undefined;
  const { drying, setup, options } = read.sheet;
  const times = rowsOf(drying.rows).flatMap((row, round) =>
    holds(cell(row, CLOCK)) === "" ? [] : [`time ${round}: ${String(holds(cell(row, CLOCK)))}`],
  );
  return { sheet: reading.sheet, kind: options.kind, day: holds(setup.date), items: new Set([...weighings, ...times]) };
}

const rowsOf = ({ first, total }: { readonly first: number; readonly total: number }): number[] =>
  Array.from({ length: total - first }, (_, index) => first + index);

/** Every box that a weight of a sample is typed into, with what it is. */
function weighingsOf({ samples, drying, fired, end, columns, rows }: RunSheet): (readonly [place: string, at: Cell])[] {
  return samples.flatMap((sample) => [
    [`${sample} vessel`, columns.box(rows.drying.vessel, sample)] as const,
    ...[drying, ...fired].flatMap((table, phase) =>
      rowsOf(table.rows).map((row, index) => [`${sample} ${phase} ${index}`, table.box(row, sample)] as const),
    ),
    ...(end === undefined ? [] : [[`${sample} end`, end.vessel(sample)] as const]),
  ]);
}
