import type { CellValue } from "../../../inputs/CellValue";
import type { Part } from "../formula/parts";
import { namedFormula } from "../writing/named";
import type { Scope } from "../writing/Scope";
import { settledValue } from "./settledValue";

/** The value of a defined name that stands for one, typed into the name itself: 2, "CaCO3", TRUE; undefined for any other part. */
export function constantNamed(part: Part, scope: Scope): CellValue | undefined {
  if (part?.type !== "ReferenceIdentifier" || part.kind !== "name" || scope.variables.has(part.value.toLowerCase())) return undefined;
  const named = namedFormula(scope.tree.textOf(part), scope);
  return constantNamed(named.tree.root, named) ?? settledValue(named.tree.root, named);
}
