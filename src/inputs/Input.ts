import type { CellValue } from "./CellValue";

interface Described {
  /** One line with the unit, at most 128 characters, shown in the host's argument help, the pane and the reference pages. */
  readonly about: string;
  /** What more there is to say than the host's one line holds; shown in the pane and on the reference page. */
  readonly detail?: string;
  /** The kind of thing it takes, as a message names it, with its article: "a weighing", "a fraction". */
  readonly called: string;
  /** The unit, as printed after a value; "" where there is none. */
  readonly unit: string;
  readonly optional: boolean;
  /** The accepted words, for inputs that are a choice. */
  readonly choices?: readonly string[];
}

/** An input that is one cell. A function made only of these takes whole ranges, row by row. */
export interface CellInput<T> extends Described {
  readonly shape: "cell";
  /** True where the cell holds nothing that could be meant as this input. */
  isBlank(value: CellValue): boolean;
  /** @throws InputProblem naming `argument` when the value cannot serve */
  read(value: CellValue, argument: string): T;
}

/** An input that is a whole column of cells, such as a series of weighings. */
export interface ColumnInput<T> extends Described {
  readonly shape: "column";
  /** @throws InputProblem naming `argument` and the row (from 1) when a value cannot serve */
  read(cells: readonly CellValue[], argument: string): T;
}

export type Input<T> = CellInput<T> | ColumnInput<T>;

/** The inputs of one cell function, in the order they are typed. */
export type Inputs = Readonly<Record<string, Input<unknown>>>;

/** What `compute` receives: the type each input reads to. */
export type Read<I extends Inputs> = { readonly [K in keyof I]: I[K] extends Input<infer T> ? T : never };
