import type { Inputs, Read } from "../inputs/Input";

/** What a cell can show. Text that must look empty is "". */
export type Shown = number | string | boolean;

/** One worked example, run as a test: the cell formula as typed and what the cell (or each spilled cell) shows. */
export interface Example {
  readonly cell: string;
  readonly gives: Shown | readonly (readonly Shown[])[];
  /** What the example shows, when the call alone does not say it. */
  readonly about?: string;
}

/** What the function hands back: its name, and its unit as printed after the value ("" for text and tables). */
export interface Result {
  readonly about: string;
  readonly unit: string;
}

interface Definition<I extends Inputs> {
  /** As typed after the namespace, in capitals: "MOISTURE.WET". A promise to saved workbooks; never changes. */
  readonly name: string;
  /** One sentence with the unit of the result, at most 250 characters. */
  readonly summary: string;
  /** In the order typed. New inputs only at the end, optional. */
  readonly inputs: I;
  readonly result: Result;
  /** The steps of the arithmetic with the numbers put in, one line each, for the pane's explanation. */
  readonly working?: (read: Read<I>) => readonly string[];
  /**
   * The same computation with built-in spreadsheet functions only, given the text of each argument ("" when left out).
   * Absent where that is impossible: then a shared sheet gets the value.
   */
  readonly inCells?: (text: Readonly<Record<keyof I, string>>) => string;
  readonly examples: readonly Example[];
  /** Standards, papers or handbooks the computation follows; "from memory" or "common practice, no source" where so. */
  readonly source: string;
  /** Said wherever the function is offered, when the work it is for can hurt someone. */
  readonly caution?: string;
}

interface ValueDefinition<I extends Inputs> extends Definition<I> {
  /** One value. With cell inputs only, the function also takes whole ranges and spills. */
  readonly compute: (read: Read<I>) => Shown;
}

interface TableDefinition<I extends Inputs> extends Definition<I> {
  /** A rectangle of cells that spills from the formula's cell. */
  readonly computeTable: (read: Read<I>) => readonly (readonly Shown[])[];
}

/** One cell function as the rest of the program sees it. */
export interface CellFunction extends Omit<Definition<Inputs>, "working" | "inCells"> {
  readonly working?: (read: Readonly<Record<string, unknown>>) => readonly string[];
  readonly inCells?: (text: Readonly<Record<string, string>>) => string;
  readonly compute?: (read: Readonly<Record<string, unknown>>) => Shown;
  readonly computeTable?: (read: Readonly<Record<string, unknown>>) => readonly (readonly Shown[])[];
}

/** Defines a function that gives one value. */
export function cellFunction<const I extends Inputs>(definition: ValueDefinition<I>): CellFunction {
  return definition as unknown as CellFunction;
}

/** Defines a function that gives a table. */
export function tableFunction<const I extends Inputs>(definition: TableDefinition<I>): CellFunction {
  return definition as unknown as CellFunction;
}

/** True where ranges are taken row by row: one value out, and no input that is a column in itself. */
export const takesRanges = (definition: CellFunction): boolean =>
  definition.compute !== undefined && Object.values(definition.inputs).every((input) => input.shape === "cell");
