/** A rectangle of cells; rows and columns count from 0. */
export interface CellArea {
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

const LETTERS = 26;
const LETTER_BEFORE_A = "A".charCodeAt(0) - 1;
const CORNER = String.raw`\$?([A-Z]{1,3})\$?([1-9]\d{0,6})`;
const RANGE = new RegExp(`^${CORNER}(?::${CORNER})?$`, "i");

/** The area of "B7", "A1:C3" or "$A$1:$C$3", in whichever order the corners come; undefined for anything else. */
export function cellArea(range: string): CellArea | undefined {
  const single = singleCell(range);
  if (single !== undefined) return single;
  const [, firstLetters, firstNumber, lastLetters = firstLetters, lastNumber = firstNumber] = RANGE.exec(range) ?? [];
  if (firstLetters === undefined || lastLetters === undefined) return undefined;
  const [column, lastColumn] = inOrder(columnOf(firstLetters), columnOf(lastLetters));
  const [row, lastRow] = inOrder(Number(firstNumber) - 1, Number(lastNumber) - 1);
  return { row, column, rows: lastRow - row + 1, columns: lastColumn - column + 1 };
}

const [LETTER_A, LETTER_Z, DIGIT_0, DIGIT_9] = [..."AZ09"].map((character) => character.charCodeAt(0)) as [number, number, number, number];
const MOST_LETTERS = 3;
const MOST_DIGITS = 7;

/** The area of a cell in its plainest spelling, "B7", which long books ask for more often than for anything else. */
function singleCell(range: string): CellArea | undefined {
  let [at, column, row] = [0, 0, 0];
  for (let code = range.charCodeAt(0); code >= LETTER_A && code <= LETTER_Z; code = range.charCodeAt(++at))
    column = column * LETTERS + code - LETTER_BEFORE_A;
  const digits = range.length - at;
  if (at === 0 || at > MOST_LETTERS || digits < 1 || digits > MOST_DIGITS || range.charCodeAt(at) === DIGIT_0) return undefined;
  for (; at < range.length; at++) {
    const code = range.charCodeAt(at);
    if (!(code >= DIGIT_0 && code <= DIGIT_9)) return undefined;
    row = row * TEN + code - DIGIT_0;
  }
  return { row: row - 1, column: column - 1, rows: 1, columns: 1 };
}

const TEN = 10;

// Excel specifications and limits, "Total number of rows and columns on a worksheet".
export const ROWS_OF_A_SHEET = 1_048_576;
export const COLUMNS_OF_A_SHEET = 16_384;
const COLUMNS = /^\$?([A-Z]{1,3}):\$?([A-Z]{1,3})$/i;
const ROWS = /^\$?(\d+):\$?(\d+)$/;

/** The area of whole columns "B:C" or whole rows "3:9"; undefined for anything else. */
export function wholeLines(range: string): CellArea | undefined {
  const [, left, right] = COLUMNS.exec(range) ?? [];
  if (left !== undefined) return cellArea(`${left}1:${right}${ROWS_OF_A_SHEET}`);
  const [, top, bottom] = ROWS.exec(range) ?? [];
  return top === undefined ? undefined : cellArea(`A${top}:${lettersOf(COLUMNS_OF_A_SHEET - 1)}${bottom}`);
}

export const isWholeColumns = ({ rows }: CellArea): boolean => rows === ROWS_OF_A_SHEET;
export const isWholeRows = ({ columns }: CellArea): boolean => columns === COLUMNS_OF_A_SHEET;

/** "B7" or "A1:C3". */
export function rangeOf({ row, column, rows, columns }: CellArea): string {
  const first = cellAt(row, column);
  return rows * columns === 1 ? first : `${first}:${cellAt(row + rows - 1, column + columns - 1)}`;
}

/** The cell in a row and column counted from 0: (6, 1) is "B7". */
export const cellAt = (row: number, column: number): string => `${lettersOf(column)}${row + 1}`;

/** The names of an area's cells, row by row. */
export const cellsOfArea = ({ row, column, rows, columns }: CellArea): string[][] =>
  Array.from({ length: rows }, (_, down) => Array.from({ length: columns }, (_cell, across) => cellAt(row + down, column + across)));

export const covers = (area: CellArea, row: number, column: number): boolean =>
  row >= area.row && row < area.row + area.rows && column >= area.column && column < area.column + area.columns;

/** Whether two areas have a cell in common. */
export const overlap = (one: CellArea, other: CellArea): boolean =>
  one.row < other.row + other.rows &&
  other.row < one.row + one.rows &&
  one.column < other.column + other.columns &&
  other.column < one.column + one.columns;

/** Column letters counted from 0: 0 is "A", 26 is "AA". */
export function lettersOf(column: number): string {
  const known = KNOWN_LETTERS[column];
  if (known !== undefined) return known;
  let letters = "";
  for (let rest = column + 1; rest > 0; rest = Math.floor((rest - 1) / LETTERS)) {
    letters = String.fromCharCode(LETTER_BEFORE_A + 1 + ((rest - 1) % LETTERS)) + letters;
  }
  if (letters.length === 1 || letters.length === 2) KNOWN_LETTERS[column] = letters;
  return letters;
}

/** Of columns asked for before, those that most books use. */
const KNOWN_LETTERS: string[] = [];

export function columnOf(letters: string): number {
  const capitals = letters.toUpperCase();
  let column = 0;
  for (let at = 0; at < capitals.length; at++) column = column * LETTERS + capitals.charCodeAt(at) - LETTER_BEFORE_A;
  return column - 1;
}

const inOrder = (one: number, other: number): [number, number] => (one <= other ? [one, other] : [other, one]);
