import { CALLS_NO_FUNCTION } from "../problems/cellNotes";
import type { CellReading } from "../workbook/Workbook";

/**
 * One sentence on what kind of cell this is.
 * @param callCount calls of functions that the catalogue has
 * @param unknownCount calls in our namespace of functions that it does not have
 */
export function openingOf({ cell, formula, value, error }: CellReading, callCount: number, unknownCount: number, anchor: string | undefined): string {
  if (anchor !== undefined) return `${cell} is filled by the formula in ${anchor}.${callCount === 0 ? " No Retort function is in it." : ""}`;
  if (callCount === 1) return `${cell} calls a Retort function.`;
  if (callCount > 1) return `${cell} makes ${callCount} Retort calls.`;
  if (unknownCount > 0) return `${cell} ${CALLS_NO_FUNCTION}`;
  if (formula !== "" && error === "#NAME?") return `${cell} holds a formula; no Retort function is in it.`;
  if (formula !== "") return `${cell} holds a formula of the spreadsheet's own functions; no Retort function is in it.`;
  if (value === null) return `${cell} is blank.`;
  return `${cell} holds ${typeof value === "number" ? "a number" : typeof value === "boolean" ? "TRUE or FALSE" : "text"} that was typed in, not a formula.`;
}
