import type { Cell } from "../../runsheet/expressions/Expression";
import { formulaText } from "../../runsheet/expressions/formulaText";
import { cellAt } from "../../workbook/cellArea";
import type { CellReading } from "../../workbook/Workbook";
import { expressionOfFormula } from "./expressionOfFormula";
import { holdsWhatIsWorkedOut } from "./holdsWhatIsWorkedOut";
import type { SheetCells } from "./RunCells";
import { workOut } from "./workOut";

/**
 * True where a cell still holds the formula that its run sheet was made with, and not what that formula gives. False where it cannot be worked out.
 * @param areFormulas the cells of the sheet that hold formulas
 */
export function differsFromOwn(cells: SheetCells, { row, column }: Cell, reading: CellReading, areFormulas: ReadonlySet<string>): boolean {
  const planned = cells.planned(row, column)?.formula;
  const expression = planned === undefined ? undefined : expressionOfFormula(reading.formula);
  if (planned === undefined || expression === undefined) return false;
  if (JSON.stringify(expression) !== JSON.stringify(expressionOfFormula(formulaText(planned)))) return false;
  const isFormula = (at: number, across: number): boolean => areFormulas.has(cellAt(at - 1, across));
  try {
    return !holdsWhatIsWorkedOut(workOut(expression, Object.assign(cells.at.bind(undefined), { isFormula })), reading);
  } catch (thrown) {
    // What is not worked out here is left to the spreadsheet.
    if (thrown instanceof Error) return false;
    throw thrown;
  }
}
