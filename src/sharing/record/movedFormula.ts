import { columnOf, lettersOf } from "../../workbook/cellArea";
import type { Slide } from "../../workbook/slideFormula";

/** A cell as a formula refers to it, and where it stands, counted from 0. */
interface Reference {
  readonly text: string;
  readonly row: number;
  readonly column: number;
  /** True where "$" holds it. */
  readonly holdsRow: boolean;
  readonly holdsColumn: boolean;
}

/** A formula in the order of its parts: references to cells, and the text between them. */
export type Parts = readonly (string | Reference)[];

// Texts and quoted sheet names first, so that nothing in them is taken for a cell; then a cell that is no function, sheet or longer name.
const PART = /"(?:[^"]|"")*"|'(?:[^']|'')*'|(?<![\w.$\\?])(\$?)([A-Z]{1,3})(\$?)([1-9]\d{0,6})(?![\w.(!])/g;

export function partsOf(formula: string): Parts {
  const parts: (string | Reference)[] = [];
  let from = 0;
  for (const { 0: text, 1: column, 2: letters, 3: row, 4: number, index } of formula.matchAll(PART)) {
    if (letters === undefined) continue;
    parts.push(formula.slice(from, index), {
      ...{ text, row: Number(number) - 1, column: columnOf(letters) },
      ...{ holdsRow: row === "$", holdsColumn: column === "$" },
    });
    from = index + text.length;
  }
  parts.push(formula.slice(from));
  return parts;
}

/** What a formula is elsewhere: references without "$" move along, and of the others those that are named. */
export const movedFormula = (formula: string, by: Slide, movingToo: ReadonlySet<string>): string =>
  partsOf(formula)
    .map((part) => (typeof part === "string" ? part : textOf(placed(part, by, movingToo.has(part.text)), part)))
    .join("");

/**
 * The references held by "$" that move along all the same, where the other formula is the first one moved; undefined where it is another formula.
 * A run sheet holds the cells of its samples so.
 */
export function movingToo(first: Parts, other: Parts, by: Slide): ReadonlySet<string> | undefined {
  if (first.length !== other.length) return undefined;
  const moving = new Map<string, boolean>();
  for (const [index, part] of first.entries()) {
    const now = other[index];
    if (typeof part === "string" || typeof now !== "object") {
      if (part !== now) return undefined;
      continue;
    }
    if (now.holdsRow !== part.holdsRow || now.holdsColumn !== part.holdsColumn) return undefined;
    const [left, along] = [placed(part, by, false), placed(part, by, true)];
    const [isLeft, isAlong] = [isAt(now, left), isAt(now, along)];
    if (!isLeft && !isAlong) return undefined;
    if (isLeft && isAlong) continue;
    if ((moving.get(part.text) ?? isAlong) !== isAlong) return undefined;
    moving.set(part.text, isAlong);
  }
  return new Set([...moving].flatMap(([text, isAlong]) => (isAlong ? [text] : [])));
}

type Place = Pick<Reference, "row" | "column">;

const isAt = (one: Place, other: Place): boolean => one.row === other.row && one.column === other.column;

const placed = ({ row, column, holdsRow, holdsColumn }: Reference, by: Slide, isMoving: boolean): Place => ({
  row: holdsRow && !isMoving ? row : row + by.rows,
  column: holdsColumn && !isMoving ? column : column + by.columns,
});

const textOf = ({ row, column }: Place, { holdsRow, holdsColumn }: Reference): string =>
  `${holdsColumn ? "$" : ""}${lettersOf(column)}${holdsRow ? "$" : ""}${row + 1}`;
