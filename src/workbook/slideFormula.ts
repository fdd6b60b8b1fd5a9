import { tokenize, tokenTypes, type Token } from "@borgar/fx";
import { columnOf, COLUMNS_OF_A_SHEET, lettersOf, ROWS_OF_A_SHEET } from "./cellArea";

/** How far a cell formula moves; down and to the right are positive. */
export interface Slide {
  readonly rows: number;
  readonly columns: number;
}

const NO_SUCH_CELL = "#REF!";

/**
 * A cell formula as it reads when filled into a cell that many rows and columns away: references move along, except where "$" holds
 * them; one that would leave the sheet becomes #REF!. Texts, functions, sheet names, names and columns of tables stay.
 * @param formula with or without its "="
 * @param names the workbook's defined names in capitals: only they tell a name such as TIN1 from the cell in column TIN
 */
export function slideFormula(formula: string, by: Slide, names: ReadonlySet<string>): string {
  const hasSign = formula.startsWith("=");
  const tokens = tokenize(hasSign ? formula : `=${formula}`);
  const slid = tokens
    .map(({ type, value }, index) =>
      isReference(type) && !isFirstSheet(tokens.slice(index + 1, index + 3)) ? slideReference(value, by, names) : value,
    )
    .join("");
  return hasSign ? slid : slid.slice(1);
}

const isReference = (type: string): boolean => type === tokenTypes.REF_RANGE || type === tokenTypes.REF_BEAM;

/** True for the first of several sheets where its name reads like a cell, by what follows it: Run1 in Run1:Run3!A1. */
const isFirstSheet = ([colon, last]: readonly Token[]): boolean =>
  colon?.value === ":" && last !== undefined && isReference(last.type) && last.value.includes("!");

function slideReference(reference: string, by: Slide, names: ReadonlySet<string>): string {
  // What stands behind the sheet's name holds no "!" itself.
  const start = reference.lastIndexOf("!") + 1;
  const cells = reference.slice(start);
  if (names.has(cells.toUpperCase())) return reference;
  let isOnSheet = true;
  const moved = (index: number, most: number): number => {
    isOnSheet &&= index >= 0 && index < most;
    return index;
  };
  const slid = cells
    .replace(/(\$?)([A-Z]+)/gi, (held: string, fixed: string, letters: string) =>
      fixed === "" ? lettersOf(moved(columnOf(letters) + by.columns, COLUMNS_OF_A_SHEET)) : held,
    )
    .replace(/(\$?)(\d+)/g, (held: string, fixed: string, row: string) =>
      fixed === "" ? String(moved(Number(row) - 1 + by.rows, ROWS_OF_A_SHEET) + 1) : held,
    );
  return reference.slice(0, start) + (isOnSheet ? slid : NO_SUCH_CELL);
}
