import { cell, fixed, range, type Cell, type Range } from "../expressions/Expression";
import type { RunSheetOptions } from "../options/RunSheetOptions";
import { layout, type Detail, type Element, type Layout } from "./layout";
import { massFormats, type MassFormats } from "./massFormats";
import { cellEach, LABEL, sampleCells, VALUE, type SampleCells } from "./sampleCells";
import { weighInColumns, type WeighInColumns } from "./weighInColumns";

/** Everything that the blocks of a run sheet share, made once: what it was asked for, how masses show, and where each cell stands. */
export interface RunSheet {
  readonly options: RunSheetOptions;
  readonly formats: MassFormats;
  readonly rows: Layout;
  readonly columns: WeighInColumns;
  /** The box of each run detail. */
  readonly details: Readonly<Record<Detail, Cell>>;
  /** Standard uncertainty of one weighing, g. */
  readonly weighingUncertainty: Cell;
  readonly samples: readonly SampleCells[];
  /** What burns: its formula, or the fractions of an analysis. Undefined for a run that ends with drying. */
  readonly composition: Composition | undefined;
  /** The list of vessel materials at the foot of the sheet. */
  readonly materials: { readonly names: Range; readonly stand: Range };
  /** The same row's cells of all samples. */
  acrossSamples(row: number): Range;
}

export interface Composition extends Readonly<Record<Element, Cell>> {
  readonly formula: Cell;
}

/** The sheet for options that serve, as checkOptions gives them. */
export function runSheet(options: RunSheetOptions): RunSheet {
  const [rows, columns] = [layout(options), weighInColumns(options)];
  const { burning, materials } = rows;
  const value = (row: number): Cell => fixed(cell(row, VALUE));
  const list = (column: number): Range => range(fixed(cell(materials.first, column)), fixed(cell(materials.last, column)));
  return {
    options,
    formats: massFormats(options),
    rows,
    columns,
    details: cellEach(rows.details.boxes, value),
    weighingUncertainty: value(rows.details.weighingUncertainty),
    samples: rows.samples.map((own, index) => sampleCells(rows, columns, own, index + 1)),
    composition: burning && { formula: value(burning.formula), ...cellEach(burning.fractions, value) },
    materials: { names: list(LABEL), stand: list(VALUE) },
    acrossSamples: (row) => range(cell(row, VALUE), cell(row, VALUE + options.replicates - 1)),
  };
}
