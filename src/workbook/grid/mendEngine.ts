import type { Injector } from "@univerjs/core";
import { IFunctionService, NumberValueObject, ValueObjectFactory, type ArrayValueObject, type BaseValueObject } from "@univerjs/engine-formula";

const NUMBER = /^\s*(\d+(\.\d*)?|\.\d+)(e[+-]?\d+)?\s*$/i;

let isMended = false;

/**
 * Mends a defect of engine 0.25.1: numbers in a cell formula that are not written the shortest way, such as 1.0, 0.10
 * and 1E-3, are read as text, so that =A1>=1.0 is FALSE for 1. Only numbers in formulas come with a second argument;
 * the text of cells does not. Inside an array constant, {1.0,2}, they are still text.
 */
export function readNumberLiterals(): void {
  if (isMended) return;
  isMended = true;
  const factory = ValueObjectFactory as { create: (typeof ValueObjectFactory)["create"] };
  const original = factory.create;
  factory.create = (raw, ignoresPattern) =>
    typeof raw === "string" && ignoresPattern !== undefined && NUMBER.test(raw)
      ? NumberValueObject.create(Number(raw))
      : original.call(ValueObjectFactory, raw, ignoresPattern);
}

const SORT = "SORT";

/**
 * Mends a defect of engine 0.25.1: SORT reorders the cached cells of its range in place, and every other formula on
 * that range then sees them reordered. Gives it a copy.
 */
export function sortACopy(injector: Injector): void {
  const sort = injector.get(IFunctionService).getExecutor(SORT);
  if (sort === undefined || sort === null) throw new Error("the engine has no SORT to mend");
  const original = sort.calculate.bind(sort);
  sort.calculate = (first, ...others) => original(isArray(first) ? first.mapValue((value) => value) : first, ...others);
}

const isArray = (value: unknown): value is ArrayValueObject => (value as BaseValueObject).isArray();
