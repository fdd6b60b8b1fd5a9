import { everyFunction, NAMESPACE } from "../functions/catalogue";
import type { CellContent } from "../workbook/Workbook";
import { findCalls } from "./findCalls";
import type { FormulaCell } from "./formulaCells";
import { inBuiltInFunctions } from "./inBuiltInFunctions";

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
  /** The same cell formula without the add-in, "" where there is none. */
  readonly builtIn: string;
}

const NOT_LISTED = "Not a function of this version of Retort.";
const FILLED_DOWN = "Filled down; formula and value are those of the first cell. ";
const BUILT_IN = "Built-in functions of the spreadsheet only.";

/**
 * A line for each Retort function that a cell calls, then one for each other cell formula that shows a value: those blank
 * until an input exists explain no value on the sheet.
 */
export const recordRows = (formulaCells: readonly FormulaCell[]): RecordRow[] => [
  ...formulaCells.flatMap(rowsOfCalls),
  ...formulaCells
    .filter((cell) => cell.calls.length === 0 && firstValue(cell) !== null)
    .map((cell) => row(cell, { unit: "", about: BUILT_IN, source: "" })),
];

function rowsOfCalls(cell: FormulaCell): RecordRow[] {
  const names = new Set(cell.calls.map(({ name }) => name));
  return [...names].map((name) => {
    const definition = everyFunction.find((one) => one.name === name);
    const about = `${NAMESPACE}.${name}: ${definition?.summary ?? NOT_LISTED}`;
    return row(cell, { unit: definition?.result.unit ?? "", about, source: definition?.source ?? "" });
  });
}

function row(cell: FormulaCell, about: Pick<RecordRow, "unit" | "about" | "source">): RecordRow {
  // A spill of a call over whole ranges has no single cell in which to type it again.
  const rewritten = cell.calls.length > 0 && cell.area.range === cell.cell ? inBuiltInFunctions(cell.formula) : undefined;
  const cells = cell.filledDown ?? cell.area.range;
  const first = cell.filledDown === undefined ? "" : FILLED_DOWN;
  return {
    cells,
    label: cell.label,
    typed: asTyped(cell.formula),
    value: firstValue(cell),
    ...about,
    about: `${first}${about.about}`,
    builtIn: rewritten ?? "",
  };
}

const firstValue = ({ area }: FormulaCell): CellContent => area.values[0]?.[0] ?? null;

/** The cell formula with every Retort call under the name a person types, whatever form the workbook stores it in. */
const asTyped = (cellFormula: string): string =>
  findCalls(cellFormula).reduceRight(
    (text, { name, start, bracket }) => `${text.slice(0, start)}${NAMESPACE}.${name}${text.slice(bracket)}`,
    cellFormula,
  );
