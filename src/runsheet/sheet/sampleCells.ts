import { cell, fixed, range, type Cell, type Range } from "../expressions/Expression";
import type { Comparison, Layout, SampleRows, WeighingRows } from "./layout";
import type { WeighInColumns } from "./weighInColumns";

/** Columns of a line that is a label and its value; in tables the samples stand from the second on. */
export const LABEL = 0;
export const VALUE = 1;

/** One weighing outside the weigh-in table. */
export interface Weighing {
  readonly box: Cell;
  /** Undefined on a sheet without pan zeros. */
  readonly zeros: Readonly<Record<"before" | "after" | "corrected", Cell>> | undefined;
  /** What counts, g: the box itself, or the mass corrected for drift. */
  readonly mass: Cell;
}

/** The cells of one sample, as cell formulas refer to them. */
export interface SampleCells {
  /** From 1. */
  readonly number: number;
  readonly rows: SampleRows;
  readonly emptyVessel: Weighing;
  /** The empty vessel, g. */
  readonly vessel: Cell;
  /** The first weigh-in, g with the vessel. */
  readonly moist: Cell;
  /** The last weigh-in of a steady run, g with the vessel. */
  readonly dry: Cell;
  readonly prediction: Cell;
  /** The count that the prediction rests on. */
  readonly weighingsLeft: Cell;
  readonly steadySince: Cell;
  readonly shares: Readonly<Record<"moistureWet" | "moistureDry", Cell>>;
  /** Undefined for a run that ends with drying. */
  readonly charring: Charring | undefined;
  /** Undefined for a run that ends with charring. */
  readonly ashing: Ashing | undefined;
  /** A column of the weigh-in table from the first row to the given one, or to its end. */
  weighIns(column: number, to?: number): Range;
  /** Right of everything printed, the cell where a row of results or checks keeps what its printed cell for this sample rests on. */
  working(row: number): Cell;
}

export interface Charring extends Readonly<Record<"kilnSet" | "started" | "smokeStopped" | "cooled", Cell>> {
  readonly weighing: Weighing;
  /** g with the vessel. */
  readonly char: Cell;
  readonly shares: Readonly<Record<"volatile" | "charYield", Cell>>;
  readonly comparison: Readonly<Record<Comparison, Cell>>;
  /** The line of notes on the comparison. */
  readonly note: Cell;
}

export interface Ashing {
  readonly furnaceSet: Cell;
  readonly weighing: Weighing;
  /** g with the vessel. */
  readonly ash: Cell;
  readonly shares: Readonly<Record<"charYieldAshFree" | "ash", Cell>>;
}

/** @param number of the sample, from 1 */
export function sampleCells(layout: Layout, columns: WeighInColumns, rows: SampleRows, number: number): SampleCells {
  const { results, burning } = layout;
  const own = (row: number): Cell => cell(row, VALUE + number - 1);
  const emptyVessel = weighing(rows.vessel);
  return {
    number,
    rows,
    emptyVessel,
    vessel: fixed(emptyVessel.mass),
    moist: cell(rows.first, columns.gross),
    dry: cell(rows.dry, VALUE),
    prediction: cell(rows.prediction, VALUE),
    weighingsLeft: cell(rows.prediction, columns.width),
    steadySince: own(results.steadySince),
    shares: cellEach(results.drying, own),
    charring: rows.charring && results.charring && burning && charringCells(rows.charring, results.charring, burning, own, number),
    ashing: rows.ashing && results.ashing && ashingCells(rows.ashing, results.ashing, own),
    weighIns: (column, to = rows.last) => range(fixed(cell(rows.first, column), "row"), cell(to, column)),
    working: (row) => cell(row, columns.width + number - 1),
  };
}

function charringCells(
  { char, ...record }: NonNullable<SampleRows["charring"]>,
  shares: NonNullable<Layout["results"]["charring"]>,
  burning: NonNullable<Layout["burning"]>,
  own: (row: number) => Cell,
  number: number,
): Charring {
  const weighed = weighing(char);
  return {
    ...cellEach(record, valueCell),
    weighing: weighed,
    char: weighed.mass,
    shares: cellEach(shares, own),
    comparison: cellEach(burning.comparison, own),
    note: cell(burning.firstNote + number - 1, LABEL),
  };
}

function ashingCells(
  { furnaceSet, ash }: NonNullable<SampleRows["ashing"]>,
  shares: NonNullable<Layout["results"]["ashing"]>,
  own: (row: number) => Cell,
): Ashing {
  const weighed = weighing(ash);
  return { furnaceSet: valueCell(furnaceSet), weighing: weighed, ash: weighed.mass, shares: cellEach(shares, own) };
}

function weighing({ box, zeros }: WeighingRows): Weighing {
  const corrected = zeros && cellEach(zeros, valueCell);
  return { box: valueCell(box), zeros: corrected, mass: corrected?.corrected ?? valueCell(box) };
}

const valueCell = (row: number): Cell => cell(row, VALUE);

/** A cell for each named row. */
export const cellEach = <Name extends string>(rows: Readonly<Record<Name, number>>, at: (row: number) => Cell): Readonly<Record<Name, Cell>> =>
  // Object.fromEntries forgets which names it was given.
  Object.fromEntries(Object.entries<number>(rows).map(([name, row]) => [name, at(row)])) as Record<Name, Cell>;
