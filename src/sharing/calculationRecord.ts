import { EDITION } from "../chemistry/atomicWeights";
import { cellAt } from "../workbook/cellArea";
import type { CellStyle, PlannedCell, SheetPlan } from "../workbook/SheetPlan";
import type { CellContent } from "../workbook/Workbook";
import type { FormulaCell } from "./formulaCells";
import { recordRows, type RecordRow } from "./recordRows";

/** What a calculation record is about. */
export interface SharedCopy {
  /** The sheet that was shared. */
  readonly sheet: string;
  /** The copy that holds its values. */
  readonly copy: string;
  /** The day of sharing, as it is to be printed. */
  readonly date: string;
  readonly formulaCells: readonly FormulaCell[];
}

/** Put in place by the build, from package.json. */
declare const RETORT_VERSION: string | undefined;

/** The version of this add-in, "0.1.0"; outside a build, the words that say so. */
export const VERSION: string = typeof RETORT_VERSION === "string" ? RETORT_VERSION : "unreleased source";

const COLUMNS = [
  "Cell",
  "On the sheet",
  "Cell formula as typed",
  "Value",
  "Unit of the function",
  "What the function is",
  "Its source",
  "With built-in functions only",
];
// Formulas of a run sheet fill some twenty lines; a row holds about twenty-five.
const COLUMN_WIDTHS = [18, 26, 60, 22, 14, 42, 42, 60];

/**
 * The sheet that goes with a shared copy: how each value came about, in words and in cell formulas kept as text, so
 * that a colleague without the add-in can check it.
 * @param name of the new sheet
 */
export function calculationRecord(shared: SharedCopy, name: string): SheetPlan {
  const lines = [...heading(shared), ...recordRows(shared.formulaCells).map(line)];
  return {
    name,
    cells: lines.flatMap((contents, row) => contents.flatMap((content, column) => plannedCell(content, row, column))),
    columnWidths: COLUMN_WIDTHS,
    entryRules: [],
    frozenRows: 1,
    startAt: "A1",
  };
}

type Content = readonly [CellContent, CellStyle];

const heading = ({ sheet, copy, date }: SharedCopy): Content[][] => [
  [["Calculation record", "title"]],
  [[`How the values on "${copy}" came about. They were calculated on "${sheet}" and do not change any more.`, "note"]],
  [
    ["Shared on", "label"],
    [date, "computed"],
  ],
  [
    ["Add-in", "label"],
    [`Retort ${VERSION}`, "computed"],
  ],
  [
    ["Atomic weights", "label"],
    [EDITION, "computed"],
  ],
  [[`To check by hand: put the numbers on "${copy}" into the arithmetic below, or type the last column into a blank cell of that sheet.`, "note"]],
  [["A sheet may show a value rounded; it was calculated with all its digits.", "note"]],
  [],
  COLUMNS.map((column) => [column, "columnHeading"]),
];

const line = (row: RecordRow): Content[] =>
  [row.cells, row.label, row.typed, row.value, row.unit, row.about, row.source, row.builtIn].map((content) => [content, "recorded"]);

function plannedCell([content, style]: Content, row: number, column: number): PlannedCell[] {
  return content === null || content === "" ? [] : [{ cell: cellAt(row, column), content, style }];
}
