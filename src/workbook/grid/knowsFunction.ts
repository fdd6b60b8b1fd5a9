import { IFunctionService } from "@univerjs/engine-formula";
import type { GridEngine } from "./GridEngine";

/** Tells whether the engine has a function, ours among them, by its name in capitals. */
export function knowsFunction({ injector }: Pick<GridEngine, "injector">): (name: string) => boolean {
  const functions = injector.get(IFunctionService);
  return (name) => functions.hasExecutor(name);
}
