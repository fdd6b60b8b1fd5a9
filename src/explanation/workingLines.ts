import type { CellFunction } from "../functions/cellFunction";
import { BLANK, type CellValue } from "../inputs/CellValue";
import { plainNumber } from "../problems/quoted";

/** One argument for the arithmetic: its single value, or its text as typed where it is a whole column. */
export interface PutIn {
  readonly value: CellValue | undefined;
  readonly text: string;
}

/**
 * The arithmetic with the numbers put in: the function's own lines, else the built-in formula it can be replaced by.
 * @param read the inputs as `compute` receives them
 * @param result as printed, with its unit
 */
export function workingLines(
  definition: CellFunction,
  read: Readonly<Record<string, unknown>>,
  given: Readonly<Record<string, PutIn>>,
  result: string,
): readonly string[] {
  if (definition.working) return definition.working(read);
  if (!definition.inCells) return [];
  const texts = Object.fromEntries(Object.keys(definition.inputs).map((name) => [name, textOf(definition, name, given[name])]));
  return [`${definition.inCells(texts)} = ${result}`];
}

function textOf(definition: CellFunction, name: string, given: PutIn | undefined): string {
  if (given === undefined) return "";
  if (definition.inputs[name]?.shape === "column" || given.value === undefined || given.value === BLANK) return given.text;
  if (typeof given.value === "number") return plainNumber(given.value);
  return typeof given.value === "string" ? `"${given.value.replaceAll('"', '""')}"` : given.text;
}
