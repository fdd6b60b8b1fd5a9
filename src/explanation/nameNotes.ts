import { tokenize, tokenTypes } from "@borgar/fx";
import { NAMESPACE } from "../functions/catalogue";
import { gridErrorNote, noSuchFunction } from "../problems/cellNotes";
import { catalogueName } from "../sharing/catalogueName";
import { findCalls } from "../sharing/findCalls";
import { definitionOf } from "./definitionOf";
import { nearestFunctions } from "./nearestFunctions";

const UNKNOWN_NAME = "#NAME?";

/**
 * What is wrong with the names in a cell formula: functions that this version does not have, with the nearest it has; else, in
 * a cell that shows #NAME?, that a name is not known. Empty where the names are right, so that only loading can be at fault.
 * @param error the code the cell shows, "" for none
 */
export function nameNotes(cellFormula: string, error: string): string[] {
  const found = findCalls(cellFormula).map(({ name }) => `${NAMESPACE}.${name}`);
  const ours = found.filter((name) => definitionOf(name) === undefined);
  const meant = error === UNKNOWN_NAME ? outsideNamespace(cellFormula) : [];
  const unknown = [...new Set([...ours, ...meant])].map((name) => noSuchFunction(name, nearestFunctions(name)));
  if (unknown.length > 0 || error !== UNKNOWN_NAME) return unknown;
  const hasOtherNames = found.length === 0 || tokenize(cellFormula).some(({ type }) => type === tokenTypes.REF_NAMED);
  return hasOtherNames && cellFormula !== "" ? [gridErrorNote(error)].filter((note) => note !== undefined) : [];
}

/** Functions called without the namespace, or with it misspelt, whose names are near one of ours. */
const outsideNamespace = (cellFormula: string): string[] =>
  tokenize(cellFormula)
    .filter(({ type, value }) => type === tokenTypes.FUNCTION && catalogueName(value) === undefined && nearestFunctions(value).length > 0)
    .map(({ value }) => value.toUpperCase());
