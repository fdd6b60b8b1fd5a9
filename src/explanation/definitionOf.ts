import type { CellFunction } from "../functions/cellFunction";
import { everyFunction } from "../functions/catalogue";
import { catalogueName } from "../sharing/catalogueName";

/** The cell function that a name in a cell formula calls, in typed or stored form; undefined for any other function. */
export function definitionOf(callee: string): CellFunction | undefined {
  const name = catalogueName(callee);
  return everyFunction.find((definition) => definition.name === name);
}
