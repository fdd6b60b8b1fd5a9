import { placeWhere, product, sum } from "../expressions/choices";
import { fixed, fn, is, range, type Cell, type Expression } from "../expressions/Expression";
import type { RunSheet } from "../sheet/RunSheet";
import { checkWords } from "../words/checkWords";
import type { Sought } from "./Check";

// Rounds from the first, and firings of each table, that are compared one by one; what is left at the end is besides.
const [ROUNDS, FIRINGS] = [3, 2] as const;
// Columns of run sheets' tables stay below Z.
const BEFORE_A = 64;

/**
 * A column that repeats another one in its vessel, its rounds, its firings and all that is left: copied more likely than weighed. Column by
 * column against those so many places to the right, so that six samples take five comparisons and not fifteen.
 */
export function copied(sheet: RunSheet): Sought[] {
  const { samples, drying, fired, columns, rows } = sheet;
  if (samples.length < 2) return [];
  const boxes = (first: number, last: number, most: number) => Array.from({ length: Math.min(most, last - first + 1) }, (_, index) => first + index);
  const compared: ((sample: number) => Cell)[] = [
    (sample) => columns.box(rows.drying.vessel, sample),
    ...boxes(drying.rows.first, drying.rows.last, ROUNDS).map((row) => (sample: number) => drying.box(row, sample)),
    drying.net,
    ...fired.flatMap((table) => [
      ...boxes(table.rows.first, table.rows.last, FIRINGS).map((row) => (sample: number) => table.box(row, sample)),
      table.net,
    ]),
  ];
  const from = (at: (sample: number) => Cell, first: number, last: number) => range(fixed(at(first)), fixed(at(last)));
  // Each comparison stands once: the letter is an error while no column repeats another.
  const letters = samples.slice(1).map((_, index): Expression => {
    const [places, last] = [index + 1, samples.length];
    const left = (at: (sample: number) => Cell) => from(at, 1, last - places);
    const right = (at: (sample: number) => Cell) => from(at, 1 + places, last);
    const isAlike = product(fn("ISNUMBER", left(drying.net)), ...compared.map((at) => is(left(at), "=", right(at))));
    return fn("CHAR", sum(BEFORE_A + columns.box(1, 1 + places).column, placeWhere(isAlike)));
  });
  const letter = letters.reduceRight((next, one) => fn("IFERROR", one, next), fn("NA"));
  return [{ says: checkWords.agree.copied(letter) }];
}
