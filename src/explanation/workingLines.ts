import { givenInputs } from "../cells/GivenInput";
import { readInputs } from "../cells/readInputs";
import type { CellFunction } from "../functions/cellFunction";
import type { Input } from "../inputs/Input";
import { BLANK } from "../inputs/CellValue";
import { plainNumber } from "../problems/quoted";
import { valueAt, type Position } from "./formula/Cells";
import { rawArguments, type Argument, type Worked } from "./workOut";

/**
 * The arithmetic with the numbers put in: the function's own lines, else the built-in formula it can be replaced by.
 * @param position the row and column of a spilled answer; left out where ranges stay whole
 * @param result as printed, with its unit
 */
export function workingLines(definition: CellFunction, worked: Worked, position: Position | undefined, result: string): readonly string[] {
  if (definition.working) return definition.working(readInputs(givenInputs(definition, rawArguments(worked)), position?.row, position?.column));
  if (!definition.inCells) return [];
  const texts = Object.entries(definition.inputs).map(([name, input], index) => [name, putIn(input, worked.given[index], position)]);
  return [`${definition.inCells(Object.fromEntries(texts))} = ${result}`];
}

/** An argument for the arithmetic: its single value, or its text as typed where it is a whole column. */
function putIn(input: Input<unknown>, argument: Argument | undefined, position: Position | undefined): string {
  if (argument?.cells === undefined) return "";
  const value = valueAt(argument.cells, position);
  if (input.shape === "column" || value === undefined || value === BLANK) return argument.text;
  if (typeof value === "number") return plainNumber(value);
  return typeof value === "string" ? `"${value.replaceAll('"', '""')}"` : argument.text;
}
