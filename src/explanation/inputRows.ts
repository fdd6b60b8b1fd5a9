import { parseA1Range, toCol } from "@borgar/fx";
import type { CellFunction } from "../functions/cellFunction";
import { aboutInput } from "../inputs/aboutInput";
import type { CellValue } from "../inputs/CellValue";
import type { Input } from "../inputs/Input";
import { isNothing } from "../inputs/number";
import { AS_LEFT_OUT, LEFT_OUT, WORKED_OUT_IN_CELL, type InputRow } from "./CellExplanation";
import { isSingle, valueAt, type Position } from "./formula/Cells";
import { parseReference, type RangeReference } from "./formula/references";
import { STANDS_FOR } from "./tracing/Traced";
import { columnText, valueText } from "./valueText";
import { isUnknown, type Argument } from "./workOut";

/**
 * Every input of a call with its value and where it came from.
 * @param position the row of each range to show; left out where ranges stay whole
 * @param named the argument that a problem names
 */
export function inputRows(
  definition: CellFunction,
  given: readonly Argument[],
  homeSheet: string,
  position: Position | undefined,
  named: string | undefined,
): InputRow[] {
  return Object.entries(definition.inputs).map(([name, input], index) => ({
    name,
    about: aboutInput(input),
    ...(input.detail === undefined ? {} : { detail: input.detail }),
    value: shownValue(input, given[index], position),
    from: origin(given[index], homeSheet, input.shape === "cell" ? position : undefined),
    atFault: name === named,
  }));
}

/** `""` is how an argument is left out before another. */
const isLeftOut = (argument: Argument | undefined): argument is undefined =>
  argument === undefined || argument.text === "" || (argument.expression?.type === "Literal" && argument.expression.value === "");

function shownValue(input: Input<unknown>, argument: Argument | undefined, position: Position | undefined): string {
  if (isLeftOut(argument)) return LEFT_OUT;
  if (isUnknown(argument) || argument.cells === undefined) return WORKED_OUT_IN_CELL;
  const { cells } = argument;
  const single = isSingle(cells);
  if (!single && (input.shape === "column" || position === undefined)) return columnText(cells, input.unit);
  const value = valueAt(cells, position);
  if (value === undefined) return "no such cell";
  return `${valueText(value, input.unit)}${countsAsLeftOut(input, value) ? AS_LEFT_OUT : ""}`;
}

/** True for a blank cell, or a 0 where 0 cannot be meant, in an optional input. */
function countsAsLeftOut(input: Input<unknown>, value: CellValue): boolean {
  if (input.shape === "column" || !input.optional) return false;
  return value === 0 ? input.zero === "nothing" || input.zero === "none" : isNothing(value) && input.zero !== "refused";
}

function origin(argument: Argument | undefined, homeSheet: string, position: Position | undefined): string {
  if (isLeftOut(argument)) return "";
  const { expression, text, named, place } = argument;
  if (expression?.type === "Literal") return "typed in the formula";
  const isPlace = expression?.type === "ReferenceIdentifier" && named === undefined;
  const reference = place ?? (isPlace ? parseReference(expression.value, homeSheet) : undefined);
  if (reference === undefined || reference.spill) return named ?? text;
  const range = position === undefined ? reference.range : cellIn(reference.range, position);
  const at = reference.sheet.toLowerCase() === homeSheet.toLowerCase() ? range : `${reference.sheet}!${range}`;
  if (named !== undefined) return namedAt(named, reference, at, homeSheet);
  return isPlace ? at : `${at}, by ${text}`;
}

/** "vessel = B5": of a name that stands for cells the very cell, without a sheet that is this one. */
function namedAt(named: string, { sheet, range }: RangeReference, at: string, homeSheet: string): string {
  const mark = named.lastIndexOf(STANDS_FOR);
  const meant = parseReference(named.slice(mark + STANDS_FOR.length), homeSheet);
  const isSame = meant?.range === range && meant.sheet.toLowerCase() === sheet.toLowerCase();
  return isSame ? `${named.slice(0, mark)}${STANDS_FOR}${at}` : `${named}, here ${at}`;
}

/** The one cell of a range that serves a row and column of the answer. */
function cellIn(range: string, { row, column }: Position): string {
  const parsed = parseA1Range(range);
  if (parsed === undefined) return range;
  const top = parsed.top ?? 0;
  const left = parsed.left ?? 0;
  const line = parsed.bottom === top ? top : top + row;
  return `${toCol(parsed.right === left ? left : left + column)}${line + 1}`;
}
