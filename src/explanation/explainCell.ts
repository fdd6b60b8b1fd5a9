import type { AstExpression } from "@borgar/fx";
import { NAMESPACE } from "../functions/catalogue";
import type { CellValue } from "../inputs/CellValue";
import {
  calculatedByRun,
  CALLS_NO_FUNCTION,
  differsFromCell,
  firstCallsOnly,
  FROM_BEFORE,
  hostErrorNote,
  NESTED_TOO_DEEPLY,
  restsOnCircle,
  WAITS_FOR_INPUTS,
} from "../problems/workbook/cellNotes";
import { findCalls, type RetortCall } from "../sharing/findCalls";
import { cellArea } from "../workbook/cellArea";
import type { CellAddress, CellLook, CellReading, WantedCells, Workbook } from "../workbook/Workbook";
import type { CallExplanation, CellExplanation } from "./CellExplanation";
import { explainCall } from "./explainCall";
import { definitionOf } from "./formula/calledFunction";
import type { Position } from "./formula/Cells";
import { isTooDeep } from "./formula/everyPart";
import { evaluate, type Surroundings } from "./formula/evaluate";
import { expressionOf, givesTheValue } from "./formula/expressionOf";
import { cellsOfReferences, referredAmong } from "./formula/readReferences";
import { finalReading, formulaOf, type FinalReading, type Pause } from "./finalReading";
import { nameNotes } from "./nameNotes";
import { explainRunCell } from "./runSheet/explainRunCell";
import { sheetCells, RUN_SHEET_AREA } from "./runSheet/RunCells";
import { isRounded } from "./saved/isAsSaved";
import { agrees, type CallInCell } from "./workOut";

/** What stands in a cell, in words; looks at it first. @throws WorkbookProblem when the workbook cannot be read */
export async function explainCell(workbook: Pick<Workbook, "look" | "readInputs">, address?: CellAddress, pause?: Pause): Promise<CellExplanation> {
  return explainLook(workbook, await workbook.look(address), pause);
}

/**
 * What stands in a cell, in words, with every Retort call in it worked out again from the inputs, unless what the cell shows is
 * not final.
 * @throws WorkbookProblem when the workbook cannot be read
 */
export async function explainLook(workbook: Pick<Workbook, "readInputs">, look: CellLook, pause?: Pause): Promise<CellExplanation> {
  const { value, error, isFromBefore, circle } = look.reading;
  if (isFromBefore === true) return { ...explanation({ look, references: [], ranges: [], notes: [] }), calls: [], notes: [FROM_BEFORE] };
  if (circle !== undefined) return { ...explanation({ look, references: [], ranges: [], notes: [] }), calls: [], notes: [restsOnCircle(circle)] };
  const found = findCalls(formulaOf(look));
  const run = runSheetAround(look);
  if (found.length === 0 && (run === undefined || (formulaOf(look) === "" && value === null && error === "")))
    return explanation({ look, references: [], ranges: [], notes: [] });
  const { refusal, ...reading } = await finalReading(workbook, look, pause, run);
  const explained = explanation(reading);
  if (found.length === 0 && explained.ofRun === undefined) return explained;
  return refusal === undefined ? explained : { ...explanation({ ...reading, around: undefined }), calls: [], notes: [refusal] };
}

/** What is read to see whether the cell is one of a run sheet: nothing where none can lie. */
function runSheetAround({ address, anchor }: CellLook): WantedCells | undefined {
  const [here, whole] = [cellArea(address.cell), cellArea(RUN_SHEET_AREA)];
  const isOutside = here === undefined || whole === undefined || here.row >= whole.rows || here.column >= whole.columns;
  return isOutside || anchor !== undefined ? undefined : { sheet: address.sheet, range: RUN_SHEET_AREA, spill: false };
}

// More than anybody reads; and each call is worked out together with every call inside it.
const MOST_EXPLAINED = 50;

/** A cell with its inputs, read once and for all. */
function explanation({ look, references, ranges, notes: more, around: area }: FinalReading): CellExplanation {
  const { address, reading, anchor } = look;
  const cellFormula = formulaOf(look);
  const found = findCalls(cellFormula);
  const known = found.filter(({ name }) => definitionOf(`${NAMESPACE}.${name}`) !== undefined);
  const position = anchor === undefined ? { row: 0, column: 0 } : placeFrom(anchor.cell, reading.cell);
  const around = { cells: cellsOfReferences(references, ranges), homeSheet: address.sheet, position };
  const whole = expressionOf(cellFormula);
  const worked = ([0, null] as const)
    .map((blankAs) => valueHere(whole, { referred: referredAmong(around.cells, address.sheet), position, blankAs }))
    .filter((value) => value !== undefined);
  const run = area === undefined ? undefined : sheetCells(address.sheet, area);
  const ofRun = run && explainRunCell(run, reading);
  const inCell: FormulaInCell = { cellFormula, whole, reading, worked, waiting: isEmpty(reading) && worked.length === 0, around };
  return {
    address,
    opening:
      ofRun === undefined || reading.formula === ""
        ? openingOf(reading, known.length, found.length - known.length, anchor?.cell)
        : calculatedByRun(reading.cell, ofRun.ofRun.name),
    cellFormula,
    shown: reading.shown,
    calls: known.slice(0, MOST_EXPLAINED).flatMap((call) => explained(call, inCell)),
    ...(ofRun === undefined ? {} : { ofRun: ofRun.ofRun }),
    notes: [
      ...more,
      ...(ofRun?.notes ?? []),
      ...(known.length > MOST_EXPLAINED ? [firstCallsOnly(MOST_EXPLAINED, known.length)] : []),
      ...notes(found, inCell, ofRun !== undefined),
    ],
  };
}

function placeFrom(anchor: string, cell: string): Position {
  const [first, here] = [cellArea(anchor), cellArea(cell)];
  return first === undefined || here === undefined ? { row: 0, column: 0 } : { row: here.row - first.row, column: here.column - first.column };
}

interface FormulaInCell {
  readonly cellFormula: string;
  readonly whole: AstExpression | undefined;
  readonly reading: CellReading;
  /** What the whole cell formula gives, for each form of a blank cell; none where only the spreadsheet can tell. */
  readonly worked: readonly CellValue[];
  /** True where the cell shows nothing because its formula tests for inputs first. */
  readonly waiting: boolean;
  readonly around: Pick<CallInCell, "cells" | "homeSheet" | "position">;
}

const isEmpty = ({ value, error }: CellReading): boolean => (value ?? "") === "" && error === "";

function explained(call: RetortCall, { whole, reading, waiting, around }: FormulaInCell): CallExplanation[] {
  const definition = definitionOf(`${NAMESPACE}.${call.name}`);
  if (definition === undefined) return [];
  const shownIn = !waiting && givesTheValue(whole, call.start, call.end) ? { shownIn: reading } : {};
  return [explainCall({ ...around, definition, argumentTexts: call.argumentTexts, waiting, ...shownIn })];
}

function notes(found: readonly RetortCall[], { cellFormula, whole, reading, worked, waiting }: FormulaInCell, isOfRun: boolean): string[] {
  const onNames = nameNotes(cellFormula, reading.error);
  const hostNote = hostErrorNote(reading.error);
  if (hostNote !== undefined) return onNames.length > 0 && reading.error === "#NAME?" ? onNames : [...onNames, hostNote];
  if (found.length === 0) return onNames;
  if (worked.length > 0 && !worked.some((value) => agrees(value, reading) || (reading.error === "" && isRounded(value, reading.value))))
    return [...onNames, differsFromCell(reading.shown || "nothing")];
  if (whole !== undefined && isTooDeep(whole)) return [...onNames, NESTED_TOO_DEEPLY];
  // A run sheet names the very boxes that are waited for.
  return waiting && !isOfRun ? [...onNames, WAITS_FOR_INPUTS] : onNames;
}

/** What the whole cell formula gives in the selected cell, or undefined where only the spreadsheet can tell. */
function valueHere(whole: AstExpression | undefined, around: Surroundings & { readonly position: Position }): CellValue | undefined {
  const value = whole && evaluate(whole, around);
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
  if (error !== "") return `${cell} holds the error ${error} that was typed in, not a formula.`;
  return `${cell} holds ${typeof value === "number" ? "a number" : typeof value === "boolean" ? "TRUE or FALSE" : "text"} that was typed in, not a formula.`;
}
