import { isSingle, oneCell, valueAt, type Cells } from "../formula/Cells";
import type { Given, SureFunction } from "../saved/sure/Given";
import { sureLookups } from "../saved/sure/sureLookups";
import { sureNumbers } from "../saved/sure/sureNumbers";
import { sureTexts } from "../saved/sure/sureTexts";
import { NO_SUCH_CELL } from "../formula/operators";

const FUNCTIONS: ReadonlyMap<string, SureFunction> = new Map(Object.entries({ ...sureNumbers, ...sureTexts, ...sureLookups }));

/** Functions of one value that go over the cells of a range one by one. */
const BY_CELL: ReadonlySet<string> = new Set([
  ...["ABS", "SIGN", "SQRT", "EXP", "LN", "LOG", "LOG10", "POWER", "ROUND", "ROUNDUP", "ROUNDDOWN", "TRUNC", "INT", "MOD"],
  ...["NOT", "ISNUMBER", "ISTEXT", "ISBLANK", "ISERROR", "ISERR", "ISNA", "TEXT", "LEN", "LEFT", "RIGHT", "MID", "TRIM", "UPPER", "LOWER"],
]);

export const goesByCell = (name: string): boolean => BY_CELL.has(name);

/** What a function of the spreadsheet gives, as far as every spreadsheet gives the same; undefined where only the spreadsheet can tell. */
export function builtIn(name: string, given: readonly Given[]): Cells | undefined {
  const of = FUNCTIONS.get(name);
  if (of === undefined) return undefined;
  if (!goesByCell(name) || given.every(({ cells }) => isSingle(cells))) {
    const answer = of(...given);
    return answer === undefined ? undefined : oneCell(answer);
  }
  const rows = Math.max(...given.map(({ cells }) => cells.length));
  const columns = Math.max(...given.map(({ cells }) => cells[0]?.length ?? 1));
  const answers = Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (__, column) =>
      of(...given.map((one) => ({ ...one, cells: oneCell(valueAt(one.cells, { row, column }) ?? NO_SUCH_CELL) }))),
    ),
  );
  return answers.every((row) => row.every((value) => value !== undefined)) ? (answers as Cells) : undefined;
}
