import { all, any, isNumber, NOTHING, sum, when, type Condition } from "../../expressions/choices";
import { cell, fixed, fn, is, joined, range, reckon, type Cell, type Expression, type Range } from "../../expressions/Expression";
import { nameOf } from "../../expressions/formulaText";
import { LABEL, type Columns } from "../../sheet/Columns";
import { checkWords, MARKS } from "../../words/checkWords";
import { headWords } from "../../words/headWords";
import { cellNumbered, numberOf } from "../cellsNamed";

const words = checkWords.typedOver;

/** What a sheet needs to say where it watches its own formulas. */
export interface Watched {
  readonly columns: Columns;
  readonly rows: {
    readonly head: Readonly<Record<"answer" | "checks", number>>;
    readonly checks: { readonly lines: readonly { readonly row: number }[] };
  };
}

/** How many cells are named; the others are counted. */
const NAMED = 3;
/** Blocks of cells asked one by one stand in so many cells at most, within the columns that names of cells take. */
export const MOST_LOTS = 3;
/** What is told of them, and in which order, stands in so many cells. */
export const WATCH_CELLS = 6 + MOST_LOTS;

/**
 * Beside the last check, all that it tells of what was typed over: how many calculated cells hold no formula of those that the answer is
 * calculated from, and of the others; the first of them, as numbers that name cells, 0 for none; the names of those of the head and of
 * these cells, which the line of the checks tells, since nothing may rest on itself; and the blocks in which one is missing, for a
 * spreadsheet that asks single cells alone, those of the answer first.
 */
export function watchCells({ columns, rows }: Watched) {
  const row = rows.checks.lines.at(-1)?.row ?? 0;
  const at = (place: number): Cell => fixed(columns.working(row, place));
  return {
    row,
    feeding: at(1),
    others: at(2),
    first: [at(3), at(4), at(5)] as const,
    head: at(6),
    lots: Array.from({ length: MOST_LOTS }, (_, index) => at(7 + index)),
  };
}

/** In place of the count of cells typed over: where a row of boxes was deleted, and where a column was put in, moved or taken out. */
export const REARRANGED = { row: 1_000_000, columns: 2_000_000 } as const;

/**
 * What is told where the sheet was rearranged, else the count. References follow what they name: one to a deleted row is an error, and a
 * column that stands elsewhere has another number. Rows put in by hand change neither.
 * @param heading a row without formulas, as nothing may rest on itself @param width of the sheet with its workings @param rows of boxes
 */
export function unlessRearranged(heading: number, width: number, rows: readonly number[], count: Expression): Expression {
  // Over two columns, so that one that is taken out leaves the row where it is.
  const line = (row: number): Expression => fn("ROWS", range(cell(row, LABEL), cell(row, LABEL + 1)));
  const inPlace = Array.from({ length: width }, (_, column) => is(fn("COLUMN", fixed(cell(heading, column))), "=", column + 1));
  return when(
    fn("ISERROR", sum(...[heading, ...rows].map(line))),
    REARRANGED.row,
    when(is(fn("IFERROR", all(...inPlace), false), "=", false), REARRANGED.columns, count),
  );
}

/** Whether the sheet was rearranged; also where what tells it was taken out itself. */
export const isRearranged = (sheet: Watched): Condition => fn("IFERROR", is(watchCells(sheet).feeding, ">=", REARRANGED.row), true);

const rearrangedSays = (sheet: Watched): Expression =>
  fn("IFERROR", when(is(watchCells(sheet).feeding, "=", REARRANGED.row), words.row, words.columns), words.columns);

/**
 * How many cells of some areas hold no formula. ISFORMULA of an area is an error in Gnumeric, which takes single cells alone.
 * @param ends rows of totals: where an area stands above one, it reaches down to it, so that a row put in above the total belongs to it
 * @param otherwise what is told where the spreadsheet cannot say so of areas
 */
export const withoutFormula = (areas: readonly Range[], ends: readonly number[], otherwise: Expression): Expression =>
  fn("IFERROR", fn("SUM", 0, ...areas.map((area) => fn("SUMPRODUCT", looked(area, ends).isWithout))), otherwise);

/** The number of the first of them, row by row, that comes after another; 0 where there is none. @param before 0 for the very first */
export function firstWithoutFormula(areas: readonly Range[], ends: readonly number[], before: Expression): Expression {
  const largest = areas.map((area) => {
    const { isWithout, block } = looked(area, ends);
    const fromEnd = reckon(PAST_ALL, "-", numberOf(block));
    const isAfter = before === 0 ? [] : [is(reckon(numberOf(block), "-", before), ">", 0)];
    return fn(
      "SUMPRODUCT",
      fn(
        "MAX",
        [fromEnd, ...isAfter].reduce<Expression>((so, factor) => reckon(so, "*", factor), isWithout),
      ),
    );
  });
  return fn("IFERROR", fn("MOD", reckon(PAST_ALL, "-", fn("MAX", 0, ...largest)), PAST_ALL), 0);
}

// No sheet has ten thousand rows.
const PAST_ALL = 1_000_000;

/** Cell by cell of an area, 1 where no formula stands; and where it reaches to. */
function looked({ from, to }: Range, ends: readonly number[]): { readonly isWithout: Expression; readonly block: Cell | Range } {
  const isOpen = ends.includes(to.row + 1);
  const end = fixed(cell(isOpen ? to.row + 1 : to.row, to.column));
  const isOne = from.row === end.row && from.column === end.column;
  const block = isOne ? end : range(fixed(from), end);
  const isWithout = reckon(1, "-", fn("ISFORMULA", block));
  // By a division, 1 over 0 in the last row: the local workbook's engine compares an array of rows with the cells that stand in them.
  const isAbove = isNumber(reckon(1, "/", reckon(fn("ROW", end), "-", fn("ROW", block))));
  return { isWithout: isOpen ? reckon(isWithout, "*", isAbove) : isWithout, block };
}

/** The names of the cells that hold no formula, each behind a comma. */
export const namesWithoutFormula = (cells: readonly Cell[]): Expression =>
  joined(...cells.map((at) => when(fn("ISFORMULA", fixed(at)), NOTHING, joined(",", nameOf(fixed(at))))));

/** The names of the areas in which a cell holds none, asked cell by cell, each behind a comma. */
export const areasWithoutFormula = (areas: readonly Range[]): Expression => (areas.length === 0 ? NOTHING : joined(...areas.map(unlessWhole)));

function unlessWhole({ from, to }: Range): Expression {
  const cells: Cell[] = [];
  for (let row = from.row; row <= to.row; row++) for (let column = from.column; column <= to.column; column++) cells.push(cell(row, column));
  const [first, last] = [nameOf(from), nameOf(to)];
  return when(all(...cells.map((at) => fn("ISFORMULA", at))), NOTHING, cells.length === 1 ? joined(",", first) : joined(",", first, ":", last));
}

/** How many names a list holds in which each stands behind a comma. */
const countOf = (names: Expression): Expression => reckon(fn("LEN", names), "-", fn("LEN", fn("SUBSTITUTE", names, COMMA, "")));
const [COMMA, CUT] = [",", "|"] as const;

/** The first few names of such a list, and how many more there are. */
function fewOf(names: Expression): Expression {
  const more = reckon(countOf(names), "-", NAMED);
  const few = fn("MID", names, 2, reckon(fn("FIND", CUT, fn("SUBSTITUTE", names, COMMA, CUT, NAMED + 1)), "-", 2));
  const spaced = (list: Expression): Expression => fn("SUBSTITUTE", list, COMMA, `${COMMA} `);
  return when(is(more, ">", 0), joined(spaced(few), words.more(more)), spaced(fn("MID", names, 2, fn("LEN", names))));
}

/** What was typed over of all but the head, without its mark. */
export function typedOverSays(sheet: Watched): Expression {
  const { feeding, others, first, lots } = watchCells(sheet);
  const [one, two, three] = first;
  const count = reckon(fn("N", feeding), "+", fn("N", others));
  const next = (at: Cell): Expression => when(is(fn("N", at), ">", 0), joined(`${COMMA} `, cellNumbered(at)), NOTHING);
  const further = when(is(count, ">", NAMED), words.more(reckon(count, "-", NAMED)), NOTHING);
  const named = when(is(count, "=", 1), words.one(cellNumbered(one)), words.several(joined(cellNumbered(one), next(two), next(three), further)));
  return when(is(fn("N", one), ">", 0), named, words.within(fewOf(joined(...lots))));
}

/** The line of the checks, which first tells what was typed over of the lines above and below it. */
export function watchingTheHead(sheet: Watched, line: Expression): Expression {
  const { head } = watchCells(sheet);
  const answer = fixed(cell(sheet.rows.head.answer, LABEL));
  const says = when(is(countOf(head), "=", 1), words.one(fn("MID", head, 2, fn("LEN", head))), words.several(fewOf(head)));
  const mark = when(fn("ISFORMULA", answer), MARKS.doubt, MARKS.contradiction);
  const told = when(is(fn("LEFT", head, 1), "=", COMMA), joined(mark, says), line);
  return when(isRearranged(sheet), joined(MARKS.contradiction, rearrangedSays(sheet)), told);
}

/** The next step, which first tells whether the line of the checks was typed over, or what that watches by. */
export function watchingTheChecks(sheet: Watched, step: Expression): Expression {
  const [line, watch] = [fixed(cell(sheet.rows.head.checks, LABEL)), watchCells(sheet).head];
  const holds = (at: Cell): Condition => fn("ISFORMULA", at);
  const one = words.one(when(holds(line), nameOf(watch), nameOf(line)));
  const both = words.several(joined(nameOf(line), `${COMMA} `, nameOf(watch)));
  const told = when(all(holds(line), holds(watch)), step, joined(MARKS.doubt, when(any(holds(line), holds(watch)), one, both)));
  return when(isRearranged(sheet), headWords.next.mend, told);
}
