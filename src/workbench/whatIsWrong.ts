import { hasSemicolons } from "../explanation/hasSemicolons";
import { nameNotes } from "../explanation/nameNotes";
import { NAMESPACE } from "../functions/catalogue";
import { gridErrorNote, REFERS_TO_ITSELF } from "../problems/cellNotes";
import { semicolonsBetween } from "../problems/inputProblems";
import { findCalls } from "../sharing/findCalls";
import type { CellReading } from "../workbook/Workbook";
import { refersToItself } from "./refersToItself";

/** The sentence on what is wrong in a cell, "" where nothing is known to be. */
export function whatIsWrong(cell: CellReading, sheet: string): string {
  if (refersToItself(cell.formula, { sheet, cell: cell.cell })) return REFERS_TO_ITSELF;
  if (cell.error === "") return "";
  const mistyped = findCalls(cell.formula).find(({ argumentTexts }) => argumentTexts.some(hasSemicolons));
  if (mistyped !== undefined) return semicolonsBetween(`${NAMESPACE}.${mistyped.name}`).message;
  const onNames = nameNotes(cell.formula, cell.error).join(" ");
  return cell.message || onNames || (gridErrorNote(cell.error) ?? "");
}
