import type { AstExpression } from "@borgar/fx";
import { expressionOf } from "../explanation/formula/expressionOf";
import { everyPart } from "../explanation/formula/everyPart";
import { hasSemicolons } from "../explanation/formula/hasSemicolons";
import { nameNotes } from "../explanation/nameNotes";
import { parseReference } from "../explanation/formula/references";
import { NAMESPACE } from "../functions/catalogue";
import { formulaBeyondGrid, gridErrorNote, REFERS_TO_ITSELF } from "../problems/workbook/cellNotes";
import { semicolonsBetween } from "../problems/inputProblems";
import { findCalls } from "../sharing/findCalls";
import { nameCalled } from "../sharing/plain/formula/parts";
import { cellArea, covers } from "../workbook/cellArea";
import { isBeyondGrid, LONGEST_FORMULA, MOST_NESTED, MOST_OPERATORS } from "../workbook/grid/typing/nesting";
import type { CellAddress, CellReading } from "../workbook/Workbook";
import { isUnread, whyUnread } from "./unreadFormula";

/** The sentence on what is wrong in a cell, "" where nothing is known to be. */
export function whatIsWrong(cell: CellReading, sheet: string): string {
  if (refersToItself(cell.formula, { sheet, cell: cell.cell })) return REFERS_TO_ITSELF;
  if (cell.error === "") return "";
  if (isBeyondGrid(cell.formula)) return formulaBeyondGrid(MOST_NESTED, MOST_OPERATORS, LONGEST_FORMULA);
  const mistyped = findCalls(cell.formula).find(({ argumentTexts }) => argumentTexts.some(hasSemicolons));
  if (mistyped !== undefined) return semicolonsBetween(`${NAMESPACE}.${mistyped.name}`).message;
  if (isUnread(cell.formula) && cell.formula !== "") return whyUnread(cell.formula);
  const onNames = nameNotes(cell.formula, cell.error).join(" ");
  return cell.message || onNames || (gridErrorNote(cell.error) ?? "");
}

/** The spreadsheet's own functions that take where a cell stands, not what it holds. */
const PLACE_ONLY: readonly string[] = ["ROW", "ROWS", "COLUMN", "COLUMNS", "SHEET", "SHEETS", "AREAS"];

/**
 * True where a cell formula names its own cell, alone or within a range. The engine then works with what the cell held before,
 * without an error. A circle by way of other cells is not looked for.
 */
export function refersToItself(cellFormula: string, { sheet, cell }: CellAddress): boolean {
  const own = cellArea(cell);
  const isOwn = (text: string): boolean => {
    const reference = parseReference(text, sheet);
    const area = reference && cellArea(reference.range);
    return own !== undefined && area !== undefined && reference?.sheet.toLowerCase() === sheet.toLowerCase() && covers(area, own.row, own.column);
  };
  const takesPlace = (part: AstExpression): boolean => part.type === "CallExpression" && PLACE_ONLY.includes(nameCalled(part).toUpperCase());
  for (const part of everyPart(expressionOf(cellFormula), takesPlace)) if (part.type === "ReferenceIdentifier" && isOwn(part.value)) return true;
  return false;
}
