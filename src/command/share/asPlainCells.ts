import { WHY_FIXED } from "../../problems/sharing/plainCellProblems";
import type { PlainSheets } from "../../sharing/plain/plainSheets";
import type { HeldCell, HeldCells } from "../../xlsx/handedOn/HeldCells";
import { leavePlainCells } from "../../xlsx/handedOn/plainFile";
import type { BookSheet } from "../book/Book";
import type { OpenBook } from "../book/openBook";
import { nameOnSheet } from "../../workbook/nameOnSheet";
import { packing, recording, rewriting } from "../words/refusals";
import { fileValue } from "./fileValue";
import { hasCalls } from "./sharedSheets";
import { rulesOutcome, type RulesOutcome } from "./rulesOutcome";
import { writeRecalculated } from "./writeRecalculated";

/** What was made of a workbook. */
export interface SharedAsPlainCells {
  /** Cells whose calls are now written in built-in functions, or in which a guard was put before the formula. */
  readonly rewritten: number;
  /** Cells that hold a value which says so as soon as an input changes, and why. */
  readonly fixed: readonly { readonly cell: string; readonly why: string }[];
  /** Cells that go on calculating until their answer would fill other cells than it does, and are fixed from then on. */
  readonly keepingSize: readonly string[];
  readonly records: readonly string[];
  readonly rules: RulesOutcome;
  readonly hidden: readonly string[];
}

/**
 * Writes every cell formula of the book that calls one of our functions in built-in ones, in place, and records how each value came about.
 * @param recalculated true where the values beside the formulas are ours and not those of the file
 */
export async function asPlainCells(
  book: OpenBook,
  { day, newerFunctions, recalculated }: { readonly day: string; readonly newerFunctions: boolean; readonly recalculated: boolean },
): Promise<SharedAsPlainCells> {
  const { file, sheets } = book;
  book.progress(rewriting(sheets.reduce((sum, { reading }) => sum + reading.rows.flat().filter(({ formula }) => formula !== "").length, 0)));
  if (recalculated) await writeRecalculated(book, sheets);
  const { plain, records, put } = await leavePlainCells(
    file,
    sheets.map((sheet) => ({ reading: sheet.reading, held: heldBy(sheet) })),
    {
      ...{ date: day, newerFunctions },
      recorded: sheets.filter(hasCalls).map(({ name }) => name),
      recording: (formulas) => book.progress(recording(formulas)),
    },
  );
  book.progress(packing);
  const rewritten = plain.cells.filter(({ kind }) => kind !== "fixed").length;
  return { rewritten, fixed: fixedIn(plain), keepingSize: keepingSizeIn(plain), records, rules: rulesOutcome(put), hidden: hiddenIn(plain) };
}

const fixedIn = ({ cells }: PlainSheets): SharedAsPlainCells["fixed"] =>
  cells.flatMap(({ kind, sheet, area, why }) =>
    kind === "fixed" && why !== undefined ? [{ cell: nameOnSheet(sheet, area), why: WHY_FIXED[why] }] : [],
  );

const keepingSizeIn = ({ cells }: PlainSheets): string[] =>
  cells.flatMap(({ keepsSize, sheet, area }) => (keepsSize === true ? [nameOnSheet(sheet, area)] : []));

const hiddenIn = ({ workings, flags }: PlainSheets): string[] => [
  ...(workings === undefined ? [] : [workings.name]),
  ...flags.map(({ name }) => name),
];

/** What the cells hold, what was calculated here before what the file says. */
function heldBy({ cells, reading }: BookSheet): HeldCells {
  const held = new Map<string, HeldCell>();
  for (const { cell, value, look, formulaKind } of cells) held.set(cell, { value, look, isArray: formulaKind === "array" });
  for (const row of reading.rows)
    for (const now of row) {
      const { look = 0, isArray = false } = held.get(now.cell) ?? {};
      held.set(now.cell, { value: fileValue(now), look, isArray });
    }
  return held;
}
