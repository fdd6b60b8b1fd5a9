import type { Injector } from "@univerjs/core";
import {
  BaseReferenceObject,
  BaseValueObject,
  BooleanValueObject,
  IFunctionService,
  NumberValueObject,
  StringValueObject,
  type ArrayValueObject,
} from "@univerjs/engine-formula";

type Given = BaseValueObject | BaseReferenceObject;

interface Executor {
  calculate(...given: readonly Given[]): Given;
}

/** Mends what single functions of engine 0.25.1 give otherwise than every other spreadsheet. */
export function mendFunctions(injector: Injector): void {
  const functions = injector.get(IFunctionService);
  const mend = (name: string, mended: (original: Executor["calculate"]) => Executor["calculate"]): void => {
    const found = functions.getExecutor(name) as unknown as Executor | null | undefined;
    if (typeof found?.calculate !== "function") throw new Error(`the engine has no ${name} to mend`);
    found.calculate = mended(found.calculate.bind(found));
  };
  for (const name of ["MINIFS", "MAXIFS"]) mend(name, zeroForNone);
  mend("N", cellByCell);
  for (const [name, places] of Object.entries(OF_TEXTS)) mend(name, numbersAsTexts(places));
}

const isValue = (given: Given | undefined): given is BaseValueObject => given?.isReferenceObject() === false;
const isArray = (given: BaseValueObject): given is ArrayValueObject => given.isArray();

/** Where nothing fits, MINIFS and MAXIFS give an empty list, which a cell shows as an empty text. */
const zeroForNone: (original: Executor["calculate"]) => Executor["calculate"] =
  (original) =>
  (...given) => {
    const found = original(...given);
    if (!isValue(found) || found.isError() || found.isNumber()) return found;
    if (isArray(found) && found.getRowCount() * found.getColumnCount() > 1) return found.mapValue((one) => (one.isArray() || one.isString() ? NumberValueObject.create(0) : one)); // prettier-ignore
    const only = isArray(found) ? found.get(0, 0) : found;
    return only?.isNumber() === true || only?.isError() === true ? only : NumberValueObject.create(0);
  };

/** N looks at the first value of a list alone. */
const cellByCell: (original: Executor["calculate"]) => Executor["calculate"] =
  (original) =>
  (...given) => {
    const [value] = given;
    return isValue(value) && isArray(value) ? value.mapValue((one) => original(one) as BaseValueObject) : original(...given);
  };

/** Functions of texts, with the places of those; & is CONCATENATE. */
const OF_TEXTS: Readonly<Record<string, readonly number[] | "all">> = {
  ...{ CONCATENATE: "all", CONCAT: "all", TEXTJOIN: "all" },
  ...{ LEN: [0], LEFT: [0], RIGHT: [0], MID: [0], TRIM: [0], UPPER: [0], LOWER: [0], REPT: [0] },
  ...{ EXACT: [0, 1], FIND: [0, 1], SEARCH: [0, 1], SUBSTITUTE: [0, 1, 2], REPLACE: [0, 3] },
};

/** Some of them write 17 figures of a number, some 12, and some write it as its cell shows it; a cell has 15. */
const numbersAsTexts =
  (places: readonly number[] | "all"): ((original: Executor["calculate"]) => Executor["calculate"]) =>
  (original) =>
  (...given) =>
    original(...given.map((one, place) => (isValue(one) && (places === "all" || places.includes(place)) ? asText(one) : one)));

function asText(value: BaseValueObject): BaseValueObject {
  if (isArray(value)) return value.mapValue(asText);
  return value.isNumber() ? StringValueObject.create(numberAsText(Number(value.getValue()))) : value;
}

// As many figures as a cell holds (Excel specifications and limits).
const FIGURES = 15;

/** A number as it stands in a text. */
export const numberAsText = (value: number): string =>
  String(Number(value.toPrecision(FIGURES))).replace(/e([+-])(\d+)$/, (_, sign: string, digits: string) => `E${sign}${digits.padStart(2, "0")}`);

let isMended = false;

/** Mends two defects of engine 0.25.1: TRUE<>1 is FALSE, though so is TRUE=1, and an empty text is none beside a blank cell. */
export function compareAsSpreadsheets(): void {
  if (isMended) return;
  isMended = true;
  const truths = BooleanValueObject.prototype as unknown as { _compareString(operator: string): boolean };
  if (typeof truths._compareString !== "function") throw new Error("the engine compares truths in another way");
  const compared = truths._compareString.bind(truths);
  truths._compareString = (operator) => operator === "<>" || compared(operator);
  const texts = StringValueObject.prototype;
  const { compare } = texts;
  texts.compare = function (this: StringValueObject, other, ...further) {
    return compare.call(this, other.isNull() ? StringValueObject.create("") : other, ...further);
  };
}

let areApart = false;

/**
 * Mends a defect of engine 0.25.1: LOOKUP, SUMIF and AVERAGEIF make the range that they take values from as large as the one that they look through,
 * and what they enlarge is kept for the text of the reference. After =LOOKUP(2,B1:B6,A1), =SUM(A1) is the sum of six cells in every workbook that is
 * open. Gives every reference an area of its own.
 */
export function keepAreasApart(): void {
  if (areApart) return;
  areApart = true;
  const cells = BaseReferenceObject.prototype;
  const set = cells.setRangeData;
  cells.setRangeData = function (this: BaseReferenceObject, area) {
    set.call(this, { ...area });
  };
}
