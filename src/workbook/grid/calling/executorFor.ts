import {
  ArrayValueObject,
  BaseFunction,
  BooleanValueObject,
  ErrorValueObject,
  NullValueObject,
  NumberValueObject,
  StringValueObject,
  type BaseReferenceObject,
  type BaseValueObject,
  type ErrorType,
} from "@univerjs/engine-formula";
import { cellAt } from "../../cellArea";
import type { ErrorMessages } from "./ErrorMessages";
import { GridError, type GridValue, type HostFunction } from "./HostFunction";

/**
 * The engine's class for one custom function. It speaks the engine's own value objects, so that blanks, errors,
 * TRUE and text such as "{1,2}" or "5%" arrive and leave unchanged; the engine's simpler registration changes them.
 */
export function executorFor(host: HostFunction, messages: ErrorMessages, sheetName: (sheetId: string) => string): typeof BaseFunction {
  return class extends BaseFunction {
    override calculate(...variants: (BaseValueObject | BaseReferenceObject)[]): BaseValueObject {
      const sheetId = this.subUnitId ?? "";
      const result = host.call(variants.map(given), `${sheetName(sheetId)}!${cellAt(this.row, this.column)}`);
      messages.record(sheetId, { row: this.row, column: this.column }, result);
      return result.length === 1 && result[0]?.length === 1 ? valueObject(result[0][0] ?? null) : arrayObject(result);
    }
  };
}

function given(variant: BaseValueObject | BaseReferenceObject): GridValue[][] | undefined {
  if (variant.isError()) return [[gridValue(variant as BaseValueObject)]];
  const value = variant as BaseValueObject;
  if (value.isArray()) return (value as ArrayValueObject).getArrayValue().map((row) => row.map((cell) => gridValue(cell)));
  // An argument left empty between commas arrives as a bare null; a blank cell arrives inside an array.
  return value.isNull() ? undefined : [[gridValue(value)]];
}

function gridValue(value: BaseValueObject | null | undefined | void): GridValue {
  if (value === null || value === undefined || value.isNull()) return null;
  if (value.isError()) return new GridError((value as ErrorValueObject).getErrorType());
  const plain = value.getValue();
  return typeof plain === "bigint" ? Number(plain) : plain;
}

function valueObject(value: GridValue): BaseValueObject {
  if (value === null) return NullValueObject.create();
  if (value instanceof GridError) return ErrorValueObject.create(value.code as ErrorType);
  if (typeof value === "number") return NumberValueObject.create(value);
  return typeof value === "boolean" ? BooleanValueObject.create(value) : StringValueObject.create(value);
}

const arrayObject = (rows: GridValue[][]): ArrayValueObject =>
  ArrayValueObject.create({
    calculateValueList: rows.map((row) => row.map(valueObject)),
    rowCount: rows.length,
    columnCount: rows[0]?.length ?? 0,
    unitId: "",
    sheetId: "",
    row: -1,
    column: -1,
  });
