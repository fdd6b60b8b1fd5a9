import { ROWS_OF_A_SHEET } from "../../../workbook/cellArea";
import { BLANK, CellError, type CellValue } from "../../../inputs/CellValue";
import { isSingle, oneCell, type Cells } from "../../formula/Cells";
import { each } from "../../formula/workedOut";
import { areNextTo, certainOrder, certainTruth, type Certain } from "./certain";
import { valueOf, type Given } from "./Given";

type SureArray = (...given: readonly (Given | undefined)[]) => Certain<Cells>;

const [NOTHING, MISSING] = [new CellError("#CALC!"), new CellError("#N/A")];
const turned = (cells: Cells): Cells => (cells[0] ?? []).map((_, column) => cells.map((row) => row[column] ?? BLANK));
const whole = (given: Given | undefined, otherwise: number): Certain<number> => {
  const value = given === undefined ? otherwise : valueOf(given);
  return typeof value === "number" && Number.isInteger(value) ? value : undefined;
};
const truth = (given: Given | undefined): Certain<boolean> => {
  const value = given === undefined ? false : valueOf(given);
  return value === undefined || value instanceof CellError ? undefined : certainTruth(value);
};
/** A blank cell that an array takes along is one thing in one program and 0 in another. */
const filled = (given: Given | undefined): Cells | undefined =>
  given?.cells.every((row) => !row.includes(BLANK)) === true ? given.cells : undefined;

interface Key {
  readonly of: readonly CellValue[];
  readonly isFalling: boolean;
}

/** The places of rows in order; undefined where programs may put them in another. @param isAlone true where rows hold their keys alone, so that two next to one another may change places */
function inOrder(count: number, keys: readonly Key[], isAlone: boolean): Certain<readonly number[]> {
  let isCertain = true;
  const order = (one: number, other: number): number => {
    for (const { of, isFalling } of keys) {
      const [left, right] = [of[one] as CellValue, of[other] as CellValue];
      const found = isAlone && typeof left === "number" && typeof right === "number" && areNextTo(left, right) ? left - right : certainOrder(left, right, false); // prettier-ignore
      if (found === undefined) isCertain = false;
      else if (found !== 0) return isFalling ? -found : found;
    }
    return one - other;
  };
  const places = Array.from({ length: count }, (_, place) => place).sort(order);
  return isCertain ? places : undefined;
}

const direction = (given: Given | undefined): Certain<boolean> => {
  const found = whole(given, 1);
  return found === 1 ? false : found === -1 ? true : undefined;
};

const SORT: SureArray = (array, by, order, across) => {
  const cells = filled(array);
  const isAcross = truth(across);
  const [column, isFalling] = [whole(by, 1), direction(order)];
  if (cells === undefined || isAcross === undefined || column === undefined || isFalling === undefined) return undefined;
  const rows = isAcross ? turned(cells) : cells;
  const keys = each(rows, (row) => row[column - 1]);
  const places = keys && inOrder(rows.length, [{ of: keys, isFalling }], rows[0]?.length === 1);
  const sorted = places?.map((place) => rows[place] ?? []);
  return sorted && (isAcross ? turned(sorted) : sorted);
};

const SORTBY: SureArray = (array, ...given) => {
  const cells = filled(array);
  if (cells === undefined) return undefined;
  const isAcross = cells.length === 1 && (cells[0]?.length ?? 0) > 1;
  const rows = isAcross ? turned(cells) : cells;
  const keys: Key[] = [];
  for (let at = 0; at < given.length; at += 2) {
    const [of, isFalling] = [filled(given[at])?.flat(), direction(given[at + 1])];
    if (of?.length !== rows.length || isFalling === undefined) return undefined;
    keys.push({ of, isFalling });
  }
  const sorted = inOrder(rows.length, keys, false)?.map((place) => rows[place] ?? []);
  return sorted && (isAcross ? turned(sorted) : sorted);
};

const FILTER: SureArray = (array, include, otherwise) => {
  const cells = filled(array);
  if (cells === undefined || include === undefined) return undefined;
  const isAcross = include.cells.length === 1 && include.cells[0]?.length === cells[0]?.length && cells.length > 0 && cells[0]?.length !== 1;
  const rows = isAcross ? turned(cells) : cells;
  const wanted = each(include.cells.flat(), (value) => (value instanceof CellError ? undefined : certainTruth(value)));
  if (wanted?.length !== rows.length) return undefined;
  const found = rows.filter((_, place) => wanted[place] === true);
  if (found.length === 0) return otherwise === undefined ? oneCell(NOTHING) : otherwise.cells;
  return isAcross ? turned(found) : found;
};

const isSameRow = (one: readonly CellValue[], other: readonly CellValue[]): Certain<boolean> => {
  let isSame = true;
  for (const [place, value] of one.entries()) {
    const beside = other[place] as CellValue;
    if (typeof value !== typeof beside) isSame = false;
    else {
      const order = certainOrder(value, beside, true);
      if (order === undefined) return undefined;
      if (order !== 0) isSame = false;
    }
  }
  return isSame;
};

// Each is held against each.
const MOST_UNIQUE = 3000;

const UNIQUE: SureArray = (array, across, once) => {
  const [cells, isAcross, isOnce] = [filled(array), truth(across), truth(once)];
  if (cells === undefined || isAcross === undefined || isOnce === undefined) return undefined;
  const rows = isAcross ? turned(cells) : cells;
  if (rows.length > MOST_UNIQUE) return undefined;
  const kinds: { readonly row: readonly CellValue[]; count: number }[] = [];
  for (const row of rows) {
    let found: (typeof kinds)[number] | undefined;
    for (const kind of kinds) {
      const isSame = isSameRow(kind.row, row);
      if (isSame === undefined) return undefined;
      if (isSame) found ??= kind;
    }
    if (found === undefined) kinds.push({ row, count: 1 });
    else found.count++;
  }
  const kept = kinds.filter(({ count }) => !isOnce || count === 1).map(({ row }) => row);
  return kept.length === 0 ? oneCell(NOTHING) : isAcross ? turned(kept) : kept;
};

/** From the first on, or of a number below 0 from the last on. */
const partOf = (isTaken: boolean) => (cells: Cells, count: number): Cells => {
  if (isTaken) return count > 0 ? cells.slice(0, count) : cells.slice(count);
  return count > 0 ? cells.slice(count) : cells.slice(0, cells.length + count);
}; // prettier-ignore

const cut =
  (isTaken: boolean): SureArray =>
  (array, down, across) => {
    const cells = filled(array);
    if (cells === undefined) return undefined;
    let part = cells;
    for (const [given, isAcross] of [
      [down, false],
      [across, true],
    ] as const) {
      // prettier-ignore
      if (given === undefined) continue;
      const count = whole(given, 0);
      if (count === undefined || (count === 0 && isTaken)) return undefined;
      if (count !== 0) part = isAcross ? turned(partOf(isTaken)(turned(part), count)) : partOf(isTaken)(part, count);
      if (part.length === 0) return oneCell(NOTHING);
    }
    return part;
  };

function below(parts: readonly Cells[]): Cells {
  const columns = Math.max(...parts.map((cells) => cells[0]?.length ?? 0));
  return parts.flatMap((cells) => cells.map((row) => Array.from({ length: columns }, (_, column) => row[column] ?? MISSING)));
}

const chosen =
  (isAcross: boolean): SureArray =>
  (array, ...places) => {
    const cells = filled(array);
    const rows = cells && (isAcross ? turned(cells) : cells);
    const wanted = each(places, (given) => each(given?.cells.flat() ?? [undefined], (value) => (typeof value === "number" && Number.isInteger(value) ? value : undefined)))?.flat(); // prettier-ignore
    const found = rows && wanted && each(wanted, (place) => rows[place > 0 ? place - 1 : rows.length + place]);
    return found && (isAcross ? turned(found) : found);
  };

const inLine =
  (isAcross: boolean): SureArray =>
  (array, passedOver, byColumn) => {
    const cells = filled(array);
    const isByColumn = truth(byColumn);
    if (cells === undefined || isByColumn === undefined || whole(passedOver, 0) !== 0) return undefined;
    const values = (isByColumn ? turned(cells) : cells).flat();
    return isAcross ? [values] : values.map((value) => [value]);
  };

/** Functions that give arrays, or look at the size of one. */
export const sureArrays: Readonly<Record<string, SureArray>> = {
  ...{ SORT, SORTBY, FILTER, UNIQUE, TAKE: cut(true), DROP: cut(false), CHOOSEROWS: chosen(false), CHOOSECOLS: chosen(true) },
  ...{ TOCOL: inLine(false), TOROW: inLine(true) },
  VSTACK: (...given) => {
    const parts = each(given, filled);
    return parts && below(parts);
  },
  HSTACK: (...given) => {
    const parts = each(given, filled);
    return parts && turned(below(parts.map(turned)));
  },
  TRANSPOSE: (array) => array && turned(array.cells),
  SEQUENCE: (down, across, from, by) => {
    const [rows, columns, first, step] = [whole(down, 1), whole(across, 1), whole(from, 1), whole(by, 1)];
    if (rows === undefined || columns === undefined || first === undefined || step === undefined) return undefined;
    if (rows < 1 || columns < 1 || rows * columns > ROWS_OF_A_SHEET) return undefined;
    return Array.from({ length: rows }, (_, row) => Array.from({ length: columns }, (__, column) => first + (row * columns + column) * step));
  },
  ROWS: (array) => array && oneCell(array.cells.length),
  COLUMNS: (array) => array && oneCell(array.cells[0]?.length ?? 1),
  // A whole row or column; single cells are worked out with the other lookups.
  INDEX: (table, first, second) => {
    if (table === undefined) return undefined;
    const [down, right] = [whole(first, 0), whole(second, 0)];
    if (down === 0 && right !== undefined && right >= 1) return each(table.cells, (row) => (right > row.length ? undefined : [row[right - 1] ?? BLANK])); // prettier-ignore
    const row = down !== undefined && down >= 1 && right === 0 && second !== undefined ? table.cells[down - 1] : undefined;
    return row && [row];
  },
  // What is given where nothing is found, and whole rows; without those it is worked out with the other lookups.
  XLOOKUP: (wanted, among, taken, otherwise, kind, ...further) => {
    if (among === undefined || taken === undefined || further.length > 0 || whole(kind, 0) !== 0) return undefined;
    const [value, keys]: [Certain<CellValue>, readonly CellValue[]] = [valueOf(wanted), among.cells.flat()];
    if (value === undefined || value === BLANK || value instanceof CellError || (typeof value === "string" && /[*?~]|^$/.test(value)))
      return undefined;
    const isAcross = among.cells.length === 1 && !isSingle(among.cells);
    const rows = isAcross ? turned(taken.cells) : taken.cells;
    if (rows.length !== keys.length) return undefined;
    for (const [place, key] of keys.entries()) {
      if (typeof key !== typeof value) continue;
      const order = certainOrder(key, value, true);
      if (order === undefined) return undefined;
      if (order === 0) return isAcross ? turned([rows[place] ?? []]) : [rows[place] ?? []];
    }
    return otherwise === undefined ? oneCell(MISSING) : otherwise.cells;
  },
};
