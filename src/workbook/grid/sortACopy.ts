import type { Injector } from "@univerjs/core";
import { IFunctionService, type ArrayValueObject, type BaseValueObject } from "@univerjs/engine-formula";

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
