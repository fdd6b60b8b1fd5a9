import type { CellValue } from "./CellValue";
import type { NumberRule } from "./NumberRule";

/**
 * What a 0 is to an input. Most hosts hand a blank cell over as 0, so this is also what a blank cell is; how it is said stands in
 * `problems/blankCells`.
 *
 * - "nothing": 0 cannot be meant, so it is nothing given.
 * - "none": 0 says that there is none of it, which leaving out says too.
 * - "value": 0 is a value like any other.
 * - "refused": leaving out would change the meaning without a word, so a 0 does not count as that.
 * - "in words": the function answers it in words.
 * - "first row": in a column, 0 can be meant in the first row alone.
 * - "asked": in a column, another input says what a 0 is.
 */
export type Zero = "nothing" | "none" | "value" | "refused" | "in words" | "first row" | "asked";

interface Described {
  /**
   * What it is, with the unit; `aboutInput` adds what a blank cell does, and both together are at most 128 characters, shown in the
   * host's argument help, the pane and the reference pages.
   */
  readonly about: string;
  /** What more there is to say than the host's one line holds; shown in the pane and on the reference page. */
  readonly detail?: string;
  /** The kind of thing it takes, as a message names it, with its article: "a weighing", "a fraction". */
  readonly called: string;
  /** The unit, as printed after a value; "" where there is none. */
  readonly unit: string;
  readonly optional: boolean;
  readonly zero: Zero;
  /** What happens when it is left out, as it follows "Left out: "; for optional inputs. */
  readonly leftOut?: string;
  /** The accepted words, for inputs that are a choice. */
  readonly choices?: readonly string[];
}

/**
 * What a reader takes, as data: from it `guardInCells` writes a condition that refuses in a cell what `read` refuses. What a blank cell
 * and a 0 do is asked of `read` itself.
 *
 * - "number": a number that keeps the rule, or the word that reads as 0.
 * - "choice": one of the words.
 * - "truth": TRUE or FALSE.
 * - "text": text that only the program can read on, such as a chemical formula; a cell formula can take it where it is typed.
 * - "anything": the function answers every slip in words, so that its own form does too.
 */
export type Takes =
  | { readonly kind: "number"; readonly rule: NumberRule; readonly word?: string }
  | { readonly kind: "choice"; readonly words: readonly string[] }
  | { readonly kind: "truth" | "text" | "anything" };

/** An input that is one cell. A function made only of these takes whole ranges, row by row. */
export interface CellInput<T> extends Described {
  readonly shape: "cell";
  /** Left out where no cell formula can say it: then calls are shared as their values. */
  readonly takes?: Takes;
  /** True where the cell holds nothing that could be meant as this input. */
  isBlank(value: CellValue): boolean;
  /** @throws InputProblem naming `argument` when the value cannot serve */
  read(value: CellValue, argument: string): T;
}

/** An input that is a whole column of cells, such as a series of weighings. */
export interface ColumnInput<T> extends Described {
  readonly shape: "column";
  /** What each cell of it must be, where the column is numbers. */
  readonly each?: NumberRule;
  /** @throws InputProblem naming `argument` and the row (from 1) when a value cannot serve */
  read(cells: readonly CellValue[], argument: string): T;
}

export type Input<T> = CellInput<T> | ColumnInput<T>;

/** The inputs of one cell function, in the order they are typed. */
export type Inputs = Readonly<Record<string, Input<unknown>>>;

/** What `compute` receives: the type each input reads to. */
export type Read<I extends Inputs> = { readonly [K in keyof I]: I[K] extends Input<infer T> ? T : never };
