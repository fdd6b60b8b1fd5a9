import { CellValueType, type ICellData, type Injector, type Nullable } from "@univerjs/core";
import {
  BaseReferenceObject,
  ErrorType,
  ErrorValueObject,
  IFormulaRuntimeService,
  IFunctionService,
  NumberValueObject,
  type ArrayValueObject,
  type BaseValueObject,
} from "@univerjs/engine-formula";

const GIVES_TEXT = '=""';
let keepsEmptyTexts = false;

/**
 * Mends a defect of engine 0.25.1: an empty text that a formula gives is a blank cell to what reads it in the same calculation, and a text from the next
 * one on, so that =B8=0 is TRUE or FALSE by chance. It is a text at once, as in any spreadsheet.
 */
export function keepEmptyTexts(): void {
  if (keepsEmptyTexts) return;
  keepsEmptyTexts = true;
  const cells = BaseReferenceObject.prototype;
  const find = cells.getCellData;
  cells.getCellData = function (this: BaseReferenceObject, row, column) {
    const cell: Nullable<ICellData> = find.call(this, row, column);
    if (!cell || cell.v !== "" || cell.t !== CellValueType.STRING || cell.f || cell.si || cell.p) return cell;
    // What was typed is not worked out: an empty text there is a blank cell.
    if (this.getCurrentActiveSheetData()?.cellData.getValue(row, column) === cell) return cell;
    // The engine takes an empty text without a formula for a blank cell.
    return { ...cell, f: GIVES_TEXT };
  };
}

interface Runtime {
  setRuntimeData(result: BaseValueObject | BaseReferenceObject): void;
}

/**
 * Mends a defect of engine 0.25.1: IF, IFERROR and CHOOSE that lead to a blank cell, or to an argument left empty, give no value at all, where
 * spreadsheets give 0, as the engine itself does for =A1.
 */
export function giveZeroForBlank(injector: Injector): void {
  const runtime = injector.get(IFormulaRuntimeService) as unknown as Runtime;
  const set = runtime.setRuntimeData.bind(runtime);
  runtime.setRuntimeData = (result) => set(isBlank(result) ? NumberValueObject.create(0) : result);
}

function isBlank(result: BaseValueObject | BaseReferenceObject): boolean {
  if (result.isReferenceObject() || result.isError()) return false;
  const value = result as BaseValueObject;
  if (!value.isArray()) return value.isNull();
  const array = value as BaseValueObject & {
    getRowCount(): number;
    getColumnCount(): number;
    get(row: number, column: number): BaseValueObject | null;
  };
  return array.getRowCount() === 1 && array.getColumnCount() === 1 && (array.get(0, 0)?.isNull() ?? true);
}

/** The step of the engine's IF that decides; private there. */
interface Condition {
  _handleSingleObject(condition: BaseValueObject, ifTrue: BaseValueObject, ifFalse: BaseValueObject): BaseValueObject;
}

/** Mends a defect of engine 0.25.1: IF takes any text for TRUE. Only the words TRUE and FALSE are conditions, and other texts #VALUE!. */
export function refuseTextConditions(injector: Injector): void {
  const branch = injector.get(IFunctionService).getExecutor("IF") as unknown as Condition | null | undefined;
  if (typeof branch?._handleSingleObject !== "function") throw new Error("the engine has no IF to mend");
  const decide = branch._handleSingleObject.bind(branch);
  branch._handleSingleObject = (condition, ifTrue, ifFalse) => {
    if (!condition.isString()) return decide(condition, ifTrue, ifFalse);
    const word = String(condition.getValue()).toUpperCase();
    if (word === "TRUE") return ifTrue;
    return word === "FALSE" ? ifFalse : ErrorValueObject.create(ErrorType.VALUE);
  };
}

const HYPERLINK = "HYPERLINK";

/**
 * Mends a defect of engine 0.25.1: a HYPERLINK over a number, TRUE or a blank cell is a text, which sums leave out and files keep as a text. It gives
 * what is shown, as any spreadsheet does; the page draws no link over it then.
 */
export function linkNumbers(injector: Injector): void {
  const link = injector.get(IFunctionService).getExecutor(HYPERLINK);
  if (link === undefined || link === null) throw new Error("the engine has no HYPERLINK to mend");
  const original = link.calculate.bind(link);
  link.calculate = (address, shown, ...others) => {
    const given = original(address, shown as BaseValueObject, ...others);
    if (shown === undefined || (given as BaseValueObject).isError()) return given;
    const first = firstOf(shown as BaseValueObject);
    if (first === undefined || first.isNull()) return NumberValueObject.create(0);
    return first.isNumber() || first.isBoolean() ? first : given;
  };
}

const firstOf = (value: BaseValueObject): BaseValueObject | undefined =>
  value.isArray() ? ((value as ArrayValueObject).get(0, 0) ?? undefined) : value;
