import { everyFunction, NAMESPACE } from "../../functions/catalogue";
import { NOT_LISTED } from "../../problems/sharing/recordWords";
import type { CellContent, RangeReading } from "../../workbook/Workbook";
import type { FormulaCell } from "../formulaCells";
import { RecordedForms } from "./RecordedForms";
import { FAMILIES, familyOf, firstValue, isRecorded } from "./recordEntries";

/** One line of a calculation record. */
export interface RecordRow {
  /** "B7", or the area of a spill: "B7:C12". */
  readonly cells: string;
  /** What the sheet calls the cell, or "". */
  readonly label: string;
  readonly typed: string;
  /** The value of the cell, or of the first cell of a spill; null is blank. */
  readonly value: CellContent;
  readonly unit: string;
  readonly about: string;
  readonly source: string;
  /** The same cell formula without the add-in, or why there is none; "" where it calls none of our functions. */
  readonly builtIn: string;
  /** Where programs older than arrays everywhere give another value unless the form is entered with Ctrl+Shift+Enter. */
  readonly enteredAs?: "array";
}

/** Begins what is said of a formula that stands for a whole column of cells. */
export const FILLED_DOWN = "Filled down; formula and value are those of the first cell. ";
const BUILT_IN = "Built-in functions of the spreadsheet only.";

/**
 * A line for each Retort function that a cell calls, and one for each other cell formula that shows a value, for scripts and terminals. On a run sheet
 * step by step, as the work goes; elsewhere by families in the order of the catalogue.
 */
export function recordRows(formulaCells: readonly FormulaCell[], rows: RangeReading["rows"]): readonly RecordRow[] {
  const forms = new RecordedForms(rows);
  const lines = formulaCells.filter(isRecorded).flatMap((cell) => rowsOf(cell, forms).map((row) => ({ ...row, heading: cell.step ?? row.family })));
  const isRunSheet = formulaCells.some(({ step }) => step !== undefined);
  const headings = isRunSheet ? [...new Set(lines.map(({ heading }) => heading))] : FAMILIES;
  return headings.flatMap((heading) => lines.flatMap((line) => (line.heading === heading ? [line.row] : [])));
}

interface FamilyRow {
  readonly family: string;
  readonly row: RecordRow;
}

function rowsOf(cell: FormulaCell, forms: RecordedForms): FamilyRow[] {
  if (cell.calls.length === 0) return [{ family: familyOf(undefined), row: rowOf(cell, { unit: "", about: BUILT_IN, source: "" }, forms) }];
  return namesIn(cell).map((name) => ({ family: familyOf(name), row: rowOf(cell, { ...aboutFunction(name), about: `${NAMESPACE}.${name}: ${aboutFunction(name).about}` }, forms) })); // prettier-ignore
}

const byName: ReadonlyMap<string, (typeof everyFunction)[number]> = new Map(everyFunction.map((one) => [one.name, one]));

/** The functions of ours that a cell calls, each once. */
export const namesIn = ({ calls }: Pick<FormulaCell, "calls">): string[] => [...new Set(calls.map(({ name }) => name))];

/** What a function is, and the unit of its answer. */
export function aboutFunction(name: string): Pick<RecordRow, "unit" | "about" | "source"> {
  const definition = byName.get(name);
  return { unit: definition?.result.unit ?? "", about: definition?.summary ?? NOT_LISTED, source: definition?.source ?? "" };
}

function rowOf(cell: FormulaCell, { unit, about, source }: Pick<RecordRow, "unit" | "about" | "source">, forms: RecordedForms): RecordRow {
  const { text: builtIn, isArray } = forms.builtIn(cell);
  return {
    ...{ cells: cell.filledDown ?? cell.area.range, label: cell.label, typed: forms.typed(cell), value: firstValue(cell) },
    ...{ unit, about: `${cell.filledDown === undefined ? "" : FILLED_DOWN}${about}`, source, builtIn, ...(isArray && { enteredAs: "array" }) },
  };
}
