import { NAMESPACE } from "../functions/catalogue";
import type { CellValue } from "../inputs/CellValue";
import { CALLS_NO_FUNCTION, differsFromCell, hostErrorNote, WAITS_FOR_INPUTS } from "../problems/cellNotes";
import { findCalls, type RetortCall } from "../sharing/findCalls";
import type { CellAddress, CellReading, Workbook } from "../workbook/Workbook";
import type { CallExplanation, CellExplanation } from "./CellExplanation";
import { explainCall } from "./explainCall";
import { definitionOf } from "./formula/calledFunction";
import type { Position } from "./formula/Cells";
import { evaluate, type Surroundings } from "./formula/evaluate";
import { expressionOf, givesTheValue } from "./formula/expressionOf";
import { readReferences } from "./formula/readReferences";
import { referencesIn } from "./formula/references";
import { nameNotes } from "./nameNotes";
import { spillAnchor } from "./spillAnchor";
import { agrees, type CallInCell } from "./workOut";

/**
 * What stands in a cell, in words, with every Retort call in it worked out again from the inputs.
 * Reads the cell, then each range its formula refers to once.
 * @throws WorkbookProblem when the workbook cannot be read
 */
export async function explainCell(workbook: Workbook, address: CellAddress): Promise<CellExplanation> {
  const reading = await readCell(workbook, address);
  const place = reading.formula === "" && reading.value !== null ? await spillAnchor(workbook, address) : undefined;
  const cellFormula = place?.anchor.formula ?? reading.formula;
  const found = findCalls(cellFormula);
  const known = found.filter(({ name }) => definitionOf(`${NAMESPACE}.${name}`) !== undefined);
  const cells = await readReferences(workbook, found.length === 0 ? [] : referencesIn(expressionOf(cellFormula), address.sheet));
  const around = { cells, homeSheet: address.sheet, position: place?.position ?? { row: 0, column: 0 } };
  const worked = ([0, null] as const).map((blankAs) => valueHere(cellFormula, { ...around, blankAs })).filter((value) => value !== undefined);
  const inCell: FormulaInCell = { cellFormula, reading, worked, waiting: isEmpty(reading) && worked.length === 0, around };
  return {
    address,
    opening: openingOf(reading, known.length, found.length - known.length, place?.anchor.cell),
    cellFormula,
    shown: reading.shown,
    calls: found.flatMap((call) => explained(call, inCell)),
    notes: notes(found, inCell),
  };
}

interface FormulaInCell {
  readonly cellFormula: string;
  readonly reading: CellReading;
  /** What the whole cell formula gives, for each form of a blank cell; none where only the spreadsheet can tell. */
  readonly worked: readonly CellValue[];
  /** True where the cell shows nothing because its formula tests for inputs first. */
  readonly waiting: boolean;
  readonly around: Pick<CallInCell, "cells" | "homeSheet" | "position">;
}

const isEmpty = ({ value, error }: CellReading): boolean => (value ?? "") === "" && error === "";

async function readCell(workbook: Workbook, { sheet, cell }: CellAddress): Promise<CellReading> {
  const nothing: CellReading = { cell, formula: "", value: null, shown: "", error: "", message: "", spill: "" };
  return (await workbook.read(sheet, cell)).rows[0]?.[0] ?? nothing;
}

function explained(call: RetortCall, { cellFormula, reading, waiting, around }: FormulaInCell): CallExplanation[] {
  const definition = definitionOf(`${NAMESPACE}.${call.name}`);
  if (definition === undefined) return [];
  const shownIn = !waiting && givesTheValue(expressionOf(cellFormula), call.start, call.end) ? { shownIn: reading } : {};
  return [explainCall({ ...around, definition, argumentTexts: call.argumentTexts, waiting, ...shownIn })];
}

function notes(found: readonly RetortCall[], { cellFormula, reading, worked, waiting }: FormulaInCell): string[] {
  const onNames = nameNotes(cellFormula, reading.error);
  const hostNote = hostErrorNote(reading.error);
  if (hostNote !== undefined) return onNames.length > 0 && reading.error === "#NAME?" ? onNames : [...onNames, hostNote];
  if (found.length === 0) return onNames;
  if (worked.length > 0 && !worked.some((value) => agrees(value, reading))) return [...onNames, differsFromCell(reading.shown || "nothing")];
  return waiting ? [...onNames, WAITS_FOR_INPUTS] : onNames;
}

/** What the whole cell formula gives in the selected cell, or undefined where only the spreadsheet can tell. */
function valueHere(cellFormula: string, around: Surroundings & { readonly position: Position }): CellValue | undefined {
  const expression = expressionOf(cellFormula);
  const value = expression && evaluate(expression, around);
  return value?.[around.position.row]?.[around.position.column];
}

/**
 * One sentence on what kind of cell this is.
 * @param callCount calls of functions that the catalogue has
 * @param unknownCount calls in our namespace of functions that it does not have
 */
function openingOf({ cell, formula, value, error }: CellReading, callCount: number, unknownCount: number, anchor: string | undefined): string {
  if (anchor !== undefined) return `${cell} is filled by the formula in ${anchor}.${callCount === 0 ? " No Retort function is in it." : ""}`;
  if (callCount === 1) return `${cell} calls a Retort function.`;
  if (callCount > 1) return `${cell} makes ${callCount} Retort calls.`;
  if (unknownCount > 0) return `${cell} ${CALLS_NO_FUNCTION}`;
  if (formula !== "" && error === "#NAME?") return `${cell} holds a formula; no Retort function is in it.`;
  if (formula !== "") return `${cell} holds a formula of the spreadsheet's own functions; no Retort function is in it.`;
  if (value === null) return `${cell} is blank.`;
  return `${cell} holds ${typeof value === "number" ? "a number" : typeof value === "boolean" ? "TRUE or FALSE" : "text"} that was typed in, not a formula.`;
}
