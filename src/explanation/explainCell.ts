import type { AstExpression } from "@borgar/fx";
import { NAMESPACE } from "../functions/catalogue";
import type { CellValue } from "../inputs/CellValue";
import {
  calculatedByRun,
  callPassedOver,
  callsByName,
  choiceMade,
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
import { isSingle, type BlankForm, type Cells, type Position } from "./formula/Cells";
import { isTooDeep } from "./formula/everyPart";
import { expressionOf, givesTheValue } from "./formula/expressionOf";
import { cellsOfReferences } from "./formula/readReferences";
import { finalReading, formulaOf, type FinalReading, type Pause } from "./finalReading";
import { nameNotes } from "./nameNotes";
import { explainRunCell } from "./runSheet/explainRunCell";
import { sheetCells, RUN_SHEET_AREA } from "./runSheet/RunCells";
import { isRounded } from "./saved/isAsSaved";
import { argumentsOf, timeOf, tracesOf, type InputsAround, type Trace } from "./tracing/callsTraced";
import { putInFormula } from "./tracing/putInFormula";
import { fateKey, type Source } from "./tracing/Traced";
import { namesUsed, NO_NAMES, type NamesKnown } from "./tracing/namesUsed";
import { agrees } from "./workOut";

/** What of a workbook an explanation asks; without what stands beside its cells, defined names stay what only the spreadsheet knows. */
type Asked = Pick<Workbook, "readInputs"> & Partial<Pick<Workbook, "cellsBeside">>;

/** What stands in a cell, in words; looks at it first. @throws WorkbookProblem when the workbook cannot be read */
export async function explainCell(workbook: Asked & Pick<Workbook, "look">, address?: CellAddress, pause?: Pause): Promise<CellExplanation> {
  return explainLook(workbook, await workbook.look(address), pause);
}

/**
 * What stands in a cell, in words, with every Retort call in it worked out again from the inputs, unless what the cell shows is
 * not final.
 * @throws WorkbookProblem when the workbook cannot be read
 */
export async function explainLook(workbook: Asked, look: CellLook, pause?: Pause): Promise<CellExplanation> {
  const { value, error, isFromBefore, circle } = look.reading;
  const nothingRead = { look, references: [], ranges: [], notes: [] };
  const untold = isFromBefore === true ? FROM_BEFORE : circle === undefined ? undefined : restsOnCircle(circle);
  if (untold !== undefined) return { ...explanation(nothingRead, NO_NAMES), calls: [], ways: [], notes: [untold] };
  const names = await namesUsed(workbook, formulaOf(look), look.address.sheet);
  const found = [{ formula: formulaOf(look) }, ...names.sources].flatMap(({ formula }) => findCalls(formula));
  const run = runSheetAround(look);
  if (found.length === 0 && (run === undefined || (formulaOf(look) === "" && value === null && error === "")))
    return explanation(nothingRead, NO_NAMES);
  const { refusal, ...reading } = await finalReading(workbook, look, pause, run, names.references);
  const explained = explanation(reading, names);
  if (found.length === 0 && explained.ofRun === undefined) return explained;
  return refusal === undefined ? explained : { ...explanation({ ...reading, around: undefined }, names), calls: [], ways: [], notes: [refusal] };
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
function explanation({ look, references, ranges, notes: more, around: area }: FinalReading, names: NamesKnown): CellExplanation {
  const { address, reading, anchor } = look;
  const cellFormula = formulaOf(look);
  const found = findCalls(cellFormula);
  const known = found.filter(({ name }) => definitionOf(`${NAMESPACE}.${name}`) !== undefined).map((call): PlacedCall => ({ call, source: HERE }));
  const position = anchor === undefined ? { row: 0, column: 0 } : placeFrom(anchor.cell, reading.cell);
  const whole = expressionOf(cellFormula);
  const around = { cells: cellsOfReferences(references, ranges), homeSheet: address.sheet, position };
  const byName = names.sources.flatMap((source) => findCalls(source.formula).map((call): PlacedCall => ({ call, source })));
  const traces = found.length + byName.length === 0 ? [] : tracesOf(cellFormula, whole, around, names);
  const inCell: FormulaInCell = { cellFormula, whole, reading, traces, around };
  // Of calls in names those are told that this formula makes.
  const made = byName.filter(({ call, source }) => likelyTrace(inCell)?.traced.fates.has(fateKey(source, call.end)) === true);
  const run = area === undefined ? undefined : sheetCells(address.sheet, area);
  const ofRun = run && explainRunCell(run, reading);
  return {
    address,
    opening:
      ofRun === undefined || reading.formula === ""
        ? known.length === 0 && made.length > 0
          ? callsByName(reading.cell, [...new Set(made.map(({ source }) => source.name))])
          : openingOf(reading, known.length, found.length - known.length, anchor?.cell)
        : calculatedByRun(reading.cell, ofRun.ofRun.name),
    cellFormula,
    shown: reading.shown,
    // A run sheet tells its own choices and arithmetic in words.
    ways: ofRun === undefined ? (likelyTrace(inCell)?.traced.choices.map(choiceMade) ?? []) : [],
    around: ofRun === undefined ? aroundCalls(inCell) : "",
    calls: [...known, ...made].slice(0, MOST_EXPLAINED).flatMap((call) => explained(call, inCell)),
    ...(ofRun === undefined ? {} : { ofRun: ofRun.ofRun }),
    notes: [
      ...more,
      ...(ofRun?.notes ?? []),
      ...(known.length > MOST_EXPLAINED ? [firstCallsOnly(MOST_EXPLAINED, known.length)] : []),
      ...notes(found.length + made.length, inCell, ofRun !== undefined),
    ],
  };
}

function placeFrom(anchor: string, cell: string): Position {
  const [first, here] = [cellArea(anchor), cellArea(cell)];
  return first === undefined || here === undefined ? { row: 0, column: 0 } : { row: here.row - first.row, column: here.column - first.column };
}

/** A call of ours and the formula that it stands in. */
interface PlacedCall {
  readonly call: RetortCall;
  readonly source: Source;
}

const HERE: Source = { name: "", formula: "" };

interface FormulaInCell {
  readonly cellFormula: string;
  readonly whole: AstExpression | undefined;
  readonly reading: CellReading;
  /** The formula worked out, for each form of a blank cell; none of one that cannot be read or is nested too deeply. */
  readonly traces: readonly Trace[];
  readonly around: InputsAround;
}

/** What the whole cell formula gives in the selected cell, for each form of a blank cell; none where only the spreadsheet can tell. */
const workedIn = ({ traces, around }: FormulaInCell): readonly CellValue[] =>
  traces.map(({ traced: { value } }) => value && valueIn(value, around.position)).filter((value) => value !== undefined);

const valueIn = (cells: Cells, { row, column }: Position): CellValue | undefined => cells[row]?.[column];

/** The form of a blank cell that agrees with what the cell shows, the usual one where none does or both do. */
const likelyTrace = ({ traces, reading, around }: FormulaInCell): Trace | undefined =>
  traces.find(({ traced: { value } }) => value !== undefined && agrees(valueIn(value, around.position), reading)) ?? traces[0];

/** The formula with the numbers put in, where more stands in it than a call of ours; "" where the cell shows otherwise. */
function aroundCalls(inCell: FormulaInCell): string {
  const { whole, cellFormula, reading, around } = inCell;
  const likely = likelyTrace(inCell);
  const value = likely?.traced.value && valueIn(likely.traced.value, around.position);
  if (whole === undefined || likely === undefined || value === undefined || !agrees(value, reading)) return "";
  return putInFormula(whole, cellFormula, likely.traced, value);
}

const isEmpty = ({ value, error }: CellReading): boolean => (value ?? "") === "" && error === "";

function explained({ call, source }: PlacedCall, inCell: FormulaInCell): CallExplanation[] {
  const definition = definitionOf(`${NAMESPACE}.${call.name}`);
  if (definition === undefined) return [];
  const { whole, reading, around } = inCell;
  const likely = likelyTrace(inCell);
  const fate = likely?.traced.fates.get(fateKey(source, call.end));
  const waiting = isEmpty(reading) && (fate?.passedOver !== undefined || workedIn(inCell).length === 0);
  const isShown = !waiting && fate?.passedOver === undefined && source.name === "" && givesTheValue(whole, call.start, call.end);
  const number = timeOf(fate?.made.length ?? 0, likely?.traced.value, around.position);
  const given = (blankAs: BlankForm) =>
    argumentsOf(
      call,
      inCell.traces.find((one) => one.blankAs === blankAs)?.traced.fates.get(fateKey(source, call.end))?.made[number],
      around,
      blankAs,
    );
  const { value } = likely?.traced ?? {};
  return [
    explainCall({
      definition,
      argumentTexts: call.argumentTexts,
      homeSheet: around.homeSheet,
      position: around.position,
      given,
      blankAs: likely?.blankAs ?? 0,
      waiting,
      // What gives one value in the end has taken every row together.
      isByCell: fate === undefined || (fate.isByCell && !(value !== undefined && isSingle(value))),
      ...(fate?.passedOver && { passedOver: callPassedOver(fate.passedOver) }),
      ...(source.name !== "" && { inName: source.name }),
      ...(fate !== undefined && fate.made.length > 1 && { time: { number: number + 1, gave: fate.made.map(({ answer }) => answer) } }),
      ...(isShown ? { shownIn: reading } : {}),
    }),
  ];
}

function notes(calls: number, inCell: FormulaInCell, isOfRun: boolean): string[] {
  const { cellFormula, whole, reading } = inCell;
  const onNames = nameNotes(cellFormula, reading.error);
  const hostNote = hostErrorNote(reading.error);
  if (hostNote !== undefined) return onNames.length > 0 && reading.error === "#NAME?" ? onNames : [...onNames, hostNote];
  if (calls === 0) return onNames;
  const worked = workedIn(inCell);
  if (worked.length > 0 && !worked.some((value) => agrees(value, reading) || (reading.error === "" && isRounded(value, reading.value))))
    return [...onNames, differsFromCell(reading.shown || "nothing")];
  if (whole !== undefined && isTooDeep(whole)) return [...onNames, NESTED_TOO_DEEPLY];
  // A run sheet names the very boxes that are waited for.
  const isPassedOver = [...(likelyTrace(inCell)?.traced.fates.values() ?? [])].some(({ passedOver }) => passedOver !== undefined);
  const waiting = isEmpty(reading) && (isPassedOver || worked.length === 0);
  return waiting && !isOfRun ? [...onNames, WAITS_FOR_INPUTS] : onNames;
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
