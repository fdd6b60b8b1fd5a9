/** Where a figure was come by. What is only remembered says so, and stands as evidence for nothing by itself. */
export type Kind = "read as printed" | "worked by hand" | "calculated outside" | "from memory" | "common practice";

/** Which figure of the answer is meant, and how it compares with the printed one. */
export interface Comparison {
  /** In a table: the row by its number from 0 or the beginning of its label, and the column from 0. */
  readonly at?: readonly [row: number | string, column: number];
  /** What to multiply ours by: 100 where the source prints per cent. */
  readonly times?: number;
  /** How far apart they may be where that is not half the last printed digit, and why. */
  readonly within?: readonly [difference: number, why: string];
}

/** One outside value that a cell function has to give. A value in words must be what the answer is, or be part of it. */
export interface Published extends Comparison {
  readonly cell: string;
  /** The digits, or the words, as the source has them. */
  readonly printed: string;
  readonly kind: Kind;
  readonly source: string;
  /** Of a value calculated outside: the script beside this file, and the name under which it prints the figure. */
  readonly calculation?: { readonly script: string; readonly figure: string };
}

/** Values of one kind from one source. */
export const published = (
  kind: Exclude<Kind, "calculated outside">,
  source: string,
  rows: readonly (readonly [cell: string, printed: string, comparison?: Comparison])[],
): Published[] => rows.map(([cell, printed, comparison]) => ({ cell, printed, kind, source, ...comparison }));

/** Values that a script in `calculations` works out apart from this program; `source` says by which formula or from which data. */
export const calculated = (
  script: string,
  source: string,
  rows: readonly (readonly [cell: string, printed: string, figure: string, comparison?: Comparison])[],
): Published[] =>
  rows.map(([cell, printed, figure, comparison]) => ({
    cell,
    printed,
    kind: "calculated outside",
    source,
    calculation: { script, figure },
    ...comparison,
  }));

/** In per cent, as most of the trade prints shares. */
export const PERCENT = { times: 100 } as const;

/** The numbers 1 to n as a column, where only the count of the values matters. */
export const firstNumbers = (n: number): string => `{${Array.from({ length: n }, (_, index) => index + 1).join("; ")}}`;
