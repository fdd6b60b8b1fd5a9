import type { RunSheetOptions } from "../options/RunSheetOptions";
import { burningWords } from "../words/burningWords";
import { cautions } from "../words/cautions";
import type { checkWords } from "../words/checkWords";
import { detailWords } from "../words/detailWords";
import { VESSEL_MATERIALS } from "../words/vesselMaterials";

export type Detail = keyof (typeof detailWords)["boxes"];
export const DETAILS = Object.keys(detailWords.boxes) as readonly Detail[];
export type Comparison = keyof (typeof burningWords)["comparison"];
export const COMPARISON = Object.keys(burningWords.comparison) as readonly Comparison[];
export type Element = keyof (typeof burningWords)["fractions"];
export const ELEMENTS = Object.keys(burningWords.fractions) as readonly Element[];
export type CheckName = keyof (typeof checkWords)["names"];

/** What is looked at on a sheet for these options, in its order. */
const checksOf = ({ kind, panZeros, temperatures }: RunSheetOptions): readonly CheckName[] => [
  ...(["tare", "order", "gain", "steady", "balance", "range", "material"] as const),
  ...(kind === "drying" ? [] : (["closure"] as const)),
  ...(panZeros ? (["zeros"] as const) : []),
  ...(temperatures ? (["warmth"] as const) : []),
];

/** Rows of one weighing outside the weigh-in table, and of the balance's zero on either side of it. */
export interface WeighingRows {
  readonly box: number;
  /** Undefined on a sheet without pan zeros. */
  readonly zeros: Readonly<Record<"before" | "after" | "corrected", number>> | undefined;
}

export type Layout = ReturnType<typeof layout>;
export type SampleRows = ReturnType<typeof sampleRows>;

/** Rows, from 1, of everything on the sheet for these options: top to bottom, with a blank row between blocks. */
export function layout(options: RunSheetOptions) {
  const rows = rowsFrom(1);
  const [title, purpose, legend] = [rows.next(), rows.next(), rows.next()];
  rows.skip();
  const details = { heading: rows.next(), boxes: rows.each(DETAILS), weighingUncertainty: rows.next() };
  rows.skip();
  const cautionRows = { heading: rows.next(), first: rows.next() };
  rows.skip(cautions[options.kind].length);
  const results = resultRows(options, rows);
  rows.skip();
  const checks = { heading: rows.next(), lines: checksOf(options).map((check) => ({ check, row: rows.next() })) };
  const replicates = options.replicates === 1 ? undefined : replicateRows(results, rows);
  const samples = Array.from({ length: options.replicates }, () => sampleRows(options, rows));
  const burning = options.kind === "drying" ? undefined : burningRows(options, rows);
  return { title, purpose, legend, details, cautions: cautionRows, results, checks, replicates, samples, burning, materials: materialRows(rows) };
}

/** A share has its line with uncertainty in the row below. */
function resultRows({ kind }: RunSheetOptions, rows: Rows) {
  const share = (): number => {
    const row = rows.next();
    rows.skip();
    return row;
  };
  return {
    heading: rows.next(),
    columnHeadings: rows.next(),
    steadySince: rows.next(),
    drying: { moistureWet: share(), moistureDry: share() },
    charring: kind === "drying" ? undefined : { volatile: share(), charYield: share() },
    ashing: kind === "ashing" ? { charYieldAshFree: share(), ash: share() } : undefined,
  };
}

/** One line for each share among the results. */
function replicateRows({ drying, charring, ashing }: ReturnType<typeof resultRows>, rows: Rows) {
  rows.skip();
  const [heading, columnHeadings, first] = [rows.next(), rows.next(), rows.next()];
  rows.skip(Object.keys({ ...drying, ...charring, ...ashing }).length - 1);
  return { heading, columnHeadings, first };
}

function sampleRows({ kind, panZeros, weighIns }: RunSheetOptions, rows: Rows) {
  const weighing = (): WeighingRows => {
    if (!panZeros) return { box: rows.next(), zeros: undefined };
    const [before, box, after, corrected] = [rows.next(), rows.next(), rows.next(), rows.next()];
    return { box, zeros: { before, after, corrected } };
  };
  rows.skip();
  const [heading, vessel, columnHeadings, first] = [rows.next(), weighing(), rows.next(), rows.next()];
  const last = rows.skip(weighIns - 1);
  return {
    ...{ heading, vessel, columnHeadings, first, last, prediction: rows.next(), dry: rows.next() },
    charring: kind === "drying" ? undefined : { ...rows.each(["kilnSet", "started", "smokeStopped", "cooled"]), char: weighing() },
    ashing: kind === "ashing" ? { furnaceSet: rows.next(), ash: weighing() } : undefined,
  };
}

/** After the comparison one line of notes a sample. */
function burningRows({ replicates }: RunSheetOptions, rows: Rows) {
  rows.skip();
  const [heading, formula] = [rows.next(), rows.next()];
  const fractions = rows.each(ELEMENTS);
  const columnHeadings = rows.next();
  const comparison = rows.each(COMPARISON);
  const firstNote = rows.next();
  rows.skip(replicates - 1);
  return { heading, formula, fractions, columnHeadings, comparison, firstNote };
}

function materialRows(rows: Rows) {
  rows.skip();
  const [heading, columnHeadings, first] = [rows.next(), rows.next(), rows.next()];
  return { heading, columnHeadings, first, last: rows.skip(VESSEL_MATERIALS.length - 1), note: rows.next() };
}

interface Rows {
  next(): number;
  /** Goes down by so many rows, one if not said, and gives the row it comes to. */
  skip(by?: number): number;
  /** A row for each name, in their order. */
  each<Name extends string>(names: readonly Name[]): Readonly<Record<Name, number>>;
}

function rowsFrom(first: number): Rows {
  let row = first - 1;
  const next = (): number => ++row;
  return {
    next,
    skip: (by = 1) => (row += by),
    // Object.fromEntries forgets which names it was given.
    each: <Name extends string>(names: readonly Name[]) => Object.fromEntries(names.map((name) => [name, next()])) as Record<Name, number>,
  };
}
