/** How many rows or columns an answer may take, and how many it takes now. */
export interface Measure {
  readonly least: number;
  /** Infinity where no formula tells. */
  readonly most: number;
  /** How many by now, in built-in functions and for a cell of any sheet. */
  readonly now: string;
  /** True where it is one but for a place of 0, which hardly anybody tells on purpose: no cells are kept free for that. */
  readonly isSeldom?: boolean;
}

/** The rows and columns of an answer. */
export interface Extent {
  readonly rows: Measure;
  readonly columns: Measure;
}

export const always = (count: number): Measure => ({ least: count, most: count, now: String(count) });

export const isAlways = ({ least, most }: Measure): boolean => least === most;

export const extentOfSize = ({ rows, columns }: { readonly rows: number; readonly columns: number }): Extent => ({
  rows: always(rows),
  columns: always(columns),
});

export const isFixedExtent = ({ rows, columns }: Extent): boolean => isAlways(rows) && isAlways(columns);

/** What an operation on each cell makes of several: a single row, column or value serves every place of the largest. */
export const common = (extents: readonly Extent[]): Extent => ({
  rows: largest(extents.map(({ rows }) => rows)),
  columns: largest(extents.map(({ columns }) => columns)),
});

function largest(measures: readonly Measure[]): Measure {
  const least = Math.max(1, ...measures.map((one) => one.least));
  const most = Math.max(1, ...measures.map((one) => one.most));
  if (least === most) return always(least);
  const several = measures.filter((one) => one.most > 1);
  const asked = [...new Set(several.map(({ now }) => now))];
  const isSeldom = several.every((one) => one.isSeldom === true);
  return { least, most, now: asked.length === 1 ? (asked[0] as string) : `MAX(${asked.join(",")})`, ...(isSeldom && { isSeldom }) };
}

/** One of several, which the text made of what each takes decides. */
export const oneOf = (extents: readonly Extent[], decide: (now: readonly string[]) => string): Extent => ({
  rows: decided(extents.map(({ rows }) => rows), decide), // prettier-ignore
  columns: decided(extents.map(({ columns }) => columns), decide), // prettier-ignore
});

function decided(measures: readonly Measure[], decide: (now: readonly string[]) => string): Measure {
  const [least, most] = [Math.min(...measures.map((one) => one.least)), Math.max(...measures.map((one) => one.most))];
  return least === most ? always(least) : { least, most, now: decide(measures.map(({ now }) => now)) };
}
