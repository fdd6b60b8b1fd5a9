import { cautions } from "./cautions";
import {
  checksOf,
  COMPARISON,
  COMPOSITION,
  DETAILS,
  heatingRecordOf,
  resultsOf,
  sharesOf,
  type Check,
  type Comparison,
  type Composition,
  type Detail,
  type HeatingRecord,
  type Result,
  type Share,
  type Weighed,
} from "./quantities";
import type { RunSheetOptions } from "./RunSheetOptions";
import { tableColumns, type TableColumns } from "./tableColumns";
import { VESSEL_MATERIALS } from "./vesselMaterials";

/** Rows, from 1, of the comparison with open burning. */
export interface BurningRows {
  readonly heading: number;
  readonly composition: Readonly<Record<Composition, number>>;
  readonly columnHeadings: number;
  readonly comparison: Readonly<Record<Comparison, number>>;
  /** One line of notes a sample. */
  readonly firstNote: number;
}

/** Rows, from 1, of one weighing outside the weigh-in table: the balance's zero on either side of it, and what follows. */
export interface ZeroRows {
  readonly before: number;
  readonly after: number;
  readonly corrected: number;
}

/** Rows, from 1, of the block of one sample. */
export interface SampleRows {
  readonly heading: number;
  readonly vessel: number;
  readonly columnHeadings: number;
  /** First and last weigh-in. */
  readonly first: number;
  readonly last: number;
  readonly prediction: number;
  readonly dry: number;
  /** Empty for a run that ends with drying. */
  readonly heating: ReadonlyMap<HeatingRecord, number>;
  /** Empty on a sheet without pan zeros. */
  readonly zeros: ReadonlyMap<Weighed, ZeroRows>;
}

/** Rows, from 1, of the judgement of replicates. */
export interface ReplicateRows {
  readonly heading: number;
  readonly columnHeadings: number;
  readonly shares: ReadonlyMap<Share, number>;
}

/** Rows, from 1, of the list of vessel materials. */
export interface MaterialRows {
  readonly heading: number;
  readonly columnHeadings: number;
  readonly first: number;
  readonly last: number;
  readonly note: number;
}

/** Where everything stands on a run sheet: rows from 1, and the columns of its weigh-in tables. */
export interface Layout {
  readonly table: TableColumns;
  readonly title: number;
  readonly purpose: number;
  readonly legend: number;
  readonly detailsHeading: number;
  readonly details: Readonly<Record<Detail, number>>;
  readonly weighingUncertainty: number;
  readonly cautionsHeading: number;
  readonly firstCaution: number;
  readonly resultsHeading: number;
  readonly resultColumns: number;
  /** A share has its line with uncertainty in the row below. */
  readonly results: ReadonlyMap<Result, number>;
  readonly checksHeading: number;
  readonly checks: ReadonlyMap<Check, number>;
  /** Undefined for one sample. */
  readonly replicates: ReplicateRows | undefined;
  readonly samples: readonly SampleRows[];
  /** Undefined for a run that ends with drying. */
  readonly burning: BurningRows | undefined;
  readonly materials: MaterialRows;
}

/** Where everything stands on the sheet for these options, top to bottom with a blank row between blocks. */
export function layout(options: RunSheetOptions): Layout {
  const rows = rowsFrom(1);
  const [title, purpose, legend] = [rows.next(), rows.next(), rows.next()];
  rows.skip();
  const detailsHeading = rows.next();
  const details = rowEach(DETAILS, rows);
  const weighingUncertainty = rows.next();
  rows.skip();
  const cautionsHeading = rows.next();
  const [firstCaution] = cautions[options.kind].map(() => rows.next()) as [number];
  rows.skip();
  const [resultsHeading, resultColumns] = [rows.next(), rows.next()];
  const results = new Map(resultsOf(options).map((result) => [result, resultRow(result, rows)]));
  rows.skip();
  const checksHeading = rows.next();
  const checks = new Map(checksOf(options).map((check) => [check, rows.next()]));
  const replicates = options.replicates === 1 ? undefined : replicateRows(options, rows);
  const samples = Array.from({ length: options.replicates }, () => sampleRows(options, rows));
  const burning = options.kind === "drying" ? undefined : burningRows(options, rows);
  return {
    table: tableColumns(options),
    ...{ title, purpose, legend, detailsHeading, details, weighingUncertainty, cautionsHeading, firstCaution },
    ...{ resultsHeading, resultColumns, results, checksHeading, checks, replicates, samples, burning },
    materials: materialRows(rows),
  };
}

function resultRow(result: Result, rows: Rows): number {
  const row = rows.next();
  if (result !== "steadySince") rows.skip();
  return row;
}

function replicateRows(options: RunSheetOptions, rows: Rows): ReplicateRows {
  rows.skip();
  const [heading, columnHeadings] = [rows.next(), rows.next()];
  return { heading, columnHeadings, shares: new Map(sharesOf(options).map((share) => [share, rows.next()])) };
}

function burningRows({ replicates }: RunSheetOptions, rows: Rows): BurningRows {
  rows.skip();
  const heading = rows.next();
  const composition = rowEach(COMPOSITION, rows);
  const columnHeadings = rows.next();
  const comparison = rowEach(COMPARISON, rows);
  const [firstNote] = Array.from({ length: replicates }, () => rows.next()) as [number];
  return { heading, composition, columnHeadings, comparison, firstNote };
}

function materialRows(rows: Rows): MaterialRows {
  rows.skip();
  const [heading, columnHeadings, first] = [rows.next(), rows.next(), rows.next()];
  const last = VESSEL_MATERIALS.slice(1).reduce(() => rows.next(), first);
  return { heading, columnHeadings, first, last, note: rows.next() };
}

const rowEach = <K extends string>(names: readonly K[], rows: Rows): Record<K, number> =>
  Object.fromEntries(names.map((name) => [name, rows.next()])) as Record<K, number>;

function sampleRows(options: RunSheetOptions, rows: Rows): SampleRows {
  const zeros = new Map<Weighed, ZeroRows>();
  const weighed = (what: Weighed): number => {
    if (!options.panZeros) return rows.next();
    const [before, row, after, corrected] = [rows.next(), rows.next(), rows.next(), rows.next()];
    zeros.set(what, { before, after, corrected });
    return row;
  };
  rows.skip();
  const [heading, vessel, columnHeadings] = [rows.next(), weighed("vessel"), rows.next()];
  const weighIns = Array.from({ length: options.weighIns }, () => rows.next());
  const [prediction, dry] = [rows.next(), rows.next()];
  const heating = new Map(heatingRecordOf(options).map((record) => [record, record === "char" || record === "ash" ? weighed(record) : rows.next()]));
  return { heading, vessel, columnHeadings, first: weighIns[0] as number, last: weighIns.at(-1) as number, prediction, dry, heating, zeros };
}

interface Rows {
  next(): number;
  skip(): void;
}

function rowsFrom(first: number): Rows {
  let row = first - 1;
  return { next: () => ++row, skip: () => void row++ };
}
