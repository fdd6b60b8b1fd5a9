import type { CellInput, Inputs, Read } from "../inputs/Input";
import type { RefusalInCells } from "./inCells/RefusalInCells";
import type { TableInCells, Workings } from "./inCells/Workings";

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
   * Absent where that is impossible: then a shared sheet gets the value. What the readers refuse is asked before it, of their own rules.
   */
  readonly inCells?: (text: Readonly<Record<keyof I, string>>) => string;
  /** What else the function refuses, about inputs that are each right in themselves: asked in this order before `inCells` answers. */
  readonly refusesInCells?: (text: Readonly<Record<keyof I, string>>) => readonly RefusalInCells[];
  /**
   * The same as `inCells` for a form that takes more than one cell: one text, or for a table one for each of its cells. Undefined for
   * arguments for which there is none, such as a formula that does not stand in the call itself. Column inputs are its own to check.
   */
  readonly inManyCells?: (text: Readonly<Record<keyof I, string>>, workings: Workings) => string | TableInCells | undefined;
  /** True where `inManyCells` puts steps that name the arguments onto the sheet of workings, though no input is a column. */
  readonly hasStepsInCells?: true;
  /** Why there is neither: a sentence of `problems/plainCellProblems`. */
  readonly fixedBecause?: string;
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

/** What was read for each input, under its name, where nobody knows any longer which function it is for. */
type AnyRead = Readonly<Record<string, unknown>>;

interface AnyDefinition extends Omit<Definition<Inputs>, "working" | "inCells" | "refusesInCells" | "inManyCells"> {
  readonly working?: (read: AnyRead) => readonly string[];
  readonly inCells?: (text: Readonly<Record<string, string>>) => string;
  readonly refusesInCells?: (text: Readonly<Record<string, string>>) => readonly RefusalInCells[];
  readonly inManyCells?: (text: Readonly<Record<string, string>>, workings: Workings) => string | TableInCells | undefined;
}

/** A function that gives one value. */
export interface ValueFunction extends AnyDefinition {
  readonly gives: "value";
  readonly compute: (read: AnyRead) => Shown;
}

/** A function that gives a table. */
export interface TableFunction extends AnyDefinition {
  readonly gives: "table";
  readonly computeTable: (read: AnyRead) => readonly (readonly Shown[])[];
}

/** One cell function as the rest of the program sees it; `gives` tells the two apart. */
export type CellFunction = ValueFunction | TableFunction;

/** A value function of single cells, which therefore takes ranges row by row. */
export interface RangeFunction extends ValueFunction {
  readonly inputs: Readonly<Record<string, CellInput<unknown>>>;
}

/** Defines a function that gives one value. */
export const cellFunction = <const I extends Inputs>(definition: ValueDefinition<I>): CellFunction => catalogued({ ...definition, gives: "value" });

/** Defines a function that gives a table. */
export const tableFunction = <const I extends Inputs>(definition: TableDefinition<I>): CellFunction => catalogued({ ...definition, gives: "table" });

/**
 * The one cast of the catalogue. A list of functions cannot say of each what its inputs read to, so the types of `read`
 * are given up here; `cells/readInputs` keeps the promise, reading every input under its own name with its own reader.
 */
const catalogued = <I extends Inputs>(
  definition: (ValueDefinition<I> & { gives: "value" }) | (TableDefinition<I> & { gives: "table" }),
): CellFunction => definition as CellFunction;

/** True where ranges are taken row by row: one value out, and no input that is a column in itself. */
export function takesRanges(definition: CellFunction): definition is RangeFunction {
  return definition.gives === "value" && Object.keys(definition.inputs).every((name) => definition.inputs[name]?.shape === "cell");
}
