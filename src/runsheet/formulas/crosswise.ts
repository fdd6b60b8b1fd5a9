import { product, sum } from "../expressions/choices";
import { fixed, fn, is, joined, range, reckon, type Expression, type Joined, type Range } from "../expressions/Expression";
import type { RunSheet } from "../sheet/RunSheet";
import type { Weighed } from "../sheet/Weighed";

// Exchanged, two weights lie so many times nearer to those before them; a gain alone, or two, never comes to that. Own bound.
const TIMES_NEARER = 4;
// Rows of a sheet stay far below; columns of its boxes below Z.
const [ROWS, PER_ROW, PER_COLUMN, BEFORE_A] = [10_000, 10_000, 100, 64] as const;

/**
 * Where a row put in by hand, below the last, belongs to the rows after and to none of those before: the row of the total, which would hold it
 * in both, has headings below it on most sheets. And beside a text.
 */
const NOT_LOOKED_FOR = reckon(0, "-", 1);

/**
 * The first row of a table in which two samples stand crosswise, as a number that names it, 0 for none, below 0 where that cannot be
 * looked for: where |b' - a| + |a' - b|, exchanged, is less than a quarter of |a' - a| + |b' - b|, as they stand, with a and b before and a'
 * and b' after, beyond what two readings explain. Samples that only lose cannot: for them the first sum is no less than the second.
 */
export function crosswiseIn({ samples, working }: RunSheet, table: Weighed): Expression {
  const { first, total } = table.rows;
  const down = (sample: number, from: number, to: number): Range => range(fixed(table.box(from, sample)), fixed(table.box(to, sample)));
  const pairs = samples.flatMap((one) => samples.slice(one).map((other) => [one, other] as const));
  const apart = (one: Range, other: Range): Expression => fn("ABS", reckon(one, "-", other));
  const each = pairs.map(([one, other]) => {
    const [before, after] = [
      [one, other],
      [one, other],
    ].map((of, later) => of.map((sample) => down(sample, first + later, total - 1 + later)));
    const [a, b, aLater, bLater] = [...(before ?? []), ...(after ?? [])] as [Range, Range, Range, Range];
    const exchanged = sum(apart(a, bLater), apart(b, aLater), fn("N", working.explained));
    const holds = product(
      ...[a, b, aLater, bLater].map((of) => fn("ISNUMBER", of)),
      is(reckon(TIMES_NEARER, "*", exchanged), "<", sum(apart(a, aLater), apart(b, bLater))),
    );
    const columns = table.box(first, one).column * PER_COLUMN + table.box(first, other).column + PER_COLUMN + 1;
    return fn("SUMPRODUCT", fn("MAX", reckon(holds, "*", sum(reckon(reckon(ROWS, "-", fn("ROW", aLater)), "*", PER_ROW), columns))));
  });
  return fn("IFERROR", fn("MAX", 0, ...each), NOT_LOOKED_FOR);
}

/** The names of the two cells that such a number stands for. */
export function crosswiseNames(number: Expression): readonly [Joined, Joined] {
  const row = reckon(ROWS, "-", fn("INT", reckon(number, "/", PER_ROW)));
  const columns = fn("MOD", number, PER_ROW);
  const named = (column: Expression): Joined => joined(fn("CHAR", reckon(BEFORE_A, "+", column)), row);
  return [named(fn("INT", reckon(columns, "/", PER_COLUMN))), named(fn("MOD", columns, PER_COLUMN))];
}
