import { BLANK, CellError, type CellValue } from "../../../inputs/CellValue";
import { certainOrder, certainSum, type Certain } from "./certain";
import { valueOf, valuesOf, type Given, type SureFunction } from "./Given";

// Signs that stand for others where a text is looked for.
const WILD = /[*?~]/;

/** The place of the first value equal to one, from 0, -1 for none; undefined where programs may differ. */
function placeOf(wanted: CellValue, among: readonly CellValue[]): Certain<number> {
  if (wanted === BLANK || wanted instanceof CellError || (typeof wanted === "string" && (WILD.test(wanted) || wanted === ""))) return undefined;
  for (const [place, value] of among.entries()) {
    if (typeof value !== typeof wanted) continue;
    const order = certainOrder(value, wanted, true);
    if (order === undefined) return undefined;
    if (order === 0) return place;
  }
  return -1;
}

const MISSING = new CellError("#N/A");
const isOff = (given: Given | undefined): boolean => [false, 0].includes(valueOf(given) as never);
const whole = (given: Given | undefined): Certain<number> => {
  const value = valueOf(given);
  return typeof value === "number" && Number.isInteger(value) && value >= 1 ? value : undefined;
};

/** Looks for a value and takes what stands beside it. @param lines the lines that are looked through, each with what stands beside its value */
function beside(wanted: Given | undefined, lines: readonly (readonly CellValue[])[], place: Certain<number>): Certain<CellValue> {
  const value = valueOf(wanted);
  const found = value === undefined ? undefined : placeOf(value, lines.map(([first = BLANK]) => first)); // prettier-ignore
  if (value instanceof CellError) return value;
  return found === undefined || place === undefined ? undefined : found === -1 ? MISSING : lines[found]?.[place - 1];
}

const crosswise = ({ cells }: Given): readonly (readonly CellValue[])[] =>
  (cells[0] ?? []).map((_, column) => cells.map((row) => row[column] ?? BLANK));

/** True for a cell that fits a criterion such as ">=5", 5 or "char"; undefined for others. */
function criterionOf(given: Given | undefined): ((value: CellValue) => Certain<boolean>) | undefined {
  const wanted = valueOf(given);
  if (typeof wanted === "number") return (value) => fits(value, "=", wanted);
  if (typeof wanted !== "string") return undefined;
  const [, sign = "=", number] = /^(<=|>=|<|>|=)?(-?\d+(?:\.\d+)?)$/.exec(wanted) ?? [];
  if (number !== undefined) return (value) => fits(value, sign, Number(number));
  if (wanted === "" || WILD.test(wanted) || /^[<>=]/.test(wanted)) return undefined;
  // A word that a language takes for a truth, a day or a number is compared with those.
  return /^[a-z][a-z ]+$/i.test(wanted) && !/^(true|false)$/i.test(wanted)
    ? (value) => (typeof value === "string" ? certainOrder(value, wanted, true) === 0 : false)
    : undefined;
}

function fits(value: CellValue, sign: string, wanted: number): Certain<boolean> {
  // A text that reads as a number fits in some programs.
  if (typeof value === "string") return /\d/.test(value) ? undefined : false;
  if (typeof value !== "number") return value === BLANK || value instanceof CellError ? false : undefined;
  const order = certainOrder(value, wanted, false);
  if (order === undefined) return undefined;
  return { "=": order === 0, "<": order < 0, ">": order > 0, "<=": order <= 0, ">=": order >= 0 }[sign];
}

/** Which cells fit every criterion. @param pairs ranges of one size, each before its criterion */
function fitting(pairs: readonly (Given | undefined)[]): Certain<readonly boolean[]> {
  let all: boolean[] | undefined;
  for (let at = 0; at < pairs.length; at += 2) {
    const [range, criterion] = [pairs[at], criterionOf(pairs[at + 1])];
    const found = range !== undefined && criterion !== undefined ? valuesOf(range).map(criterion) : [undefined];
    if (!found.every((one) => one !== undefined) || (all !== undefined && all.length !== found.length)) return undefined;
    all = all?.map((so, place) => so && found[place] === true) ?? found;
  }
  return all;
}

/** The numbers of a range whose cells fit. */
function chosen(range: Given | undefined, fit: Certain<readonly boolean[]>): Certain<readonly number[]> {
  const values = range === undefined ? [] : valuesOf(range);
  if (fit === undefined || values.length !== fit.length) return undefined;
  const taken = values.filter((_, place) => fit[place] === true);
  if (taken.some((value) => typeof value === "boolean" || value instanceof CellError)) return undefined;
  return taken.filter((value) => typeof value === "number");
}

const sumOf = (numbers: Certain<readonly number[]>): Certain<number> => numbers && certainSum(numbers);

function meanOf(numbers: Certain<readonly number[]>): Certain<number | CellError> {
  const sum = sumOf(numbers);
  return numbers?.length === 0 ? new CellError("#DIV/0!") : sum === undefined || numbers === undefined ? undefined : sum / numbers.length;
}

export const sureLookups: Readonly<Record<string, SureFunction>> = {
  INDEX: (table, first, second) => {
    const [down, right] = [whole(first), second === undefined ? 1 : whole(second)];
    const only = valueOf(table);
    if (only instanceof CellError && down !== undefined && right !== undefined) return only;
    if (table === undefined || down === undefined || right === undefined) return undefined;
    const isRow = second === undefined && table.cells.length === 1;
    return isRow ? table.cells[0]?.[down - 1] : table.cells[down - 1]?.[right - 1];
  },
  MATCH: (wanted, among, kind) => {
    const value = valueOf(wanted);
    const found = among === undefined || value === undefined || !isOff(kind) ? undefined : placeOf(value, valuesOf(among));
    if (value instanceof CellError) return value;
    return found === undefined ? undefined : found === -1 ? MISSING : found + 1;
  },
  VLOOKUP: (wanted, table, column, kind) => (table !== undefined && isOff(kind) ? beside(wanted, table.cells, whole(column)) : undefined),
  HLOOKUP: (wanted, table, row, kind) => (table !== undefined && isOff(kind) ? beside(wanted, crosswise(table), whole(row)) : undefined),
  XLOOKUP: (wanted, among, taken, ...further) => {
    if (among === undefined || taken === undefined || further.length > 0) return undefined;
    const [keys, values] = [valuesOf(among), valuesOf(taken)];
    return keys.length === values.length ? beside(wanted, keys.map((key, place) => [key, values[place] ?? BLANK]), 2) : undefined; // prettier-ignore
  },
  COUNTIF: (range, criterion) => fitting([range, criterion])?.filter(Boolean).length,
  COUNTIFS: (...pairs) => fitting(pairs)?.filter(Boolean).length,
  SUMIF: (range, criterion, taken = range) => sumOf(chosen(taken, fitting([range, criterion]))),
  SUMIFS: (taken, ...pairs) => sumOf(chosen(taken, fitting(pairs))),
  AVERAGEIF: (range, criterion, taken = range) => meanOf(chosen(taken, fitting([range, criterion]))),
  AVERAGEIFS: (taken, ...pairs) => meanOf(chosen(taken, fitting(pairs))),
};
