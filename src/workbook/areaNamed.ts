import { notACellRange, valuesDoNotFit } from "../problems/workbook/workbookProblems";
import { cellArea, type CellArea } from "./cellArea";
import { WorkbookProblem, type FrozenArea } from "./Workbook";

/** The area of "B7" or "A1:C3". @throws WorkbookProblem when the text names no cell or range */
export function areaNamed(range: string): CellArea {
  const area = cellArea(range);
  if (area === undefined) throw new WorkbookProblem(notACellRange(range));
  return area;
}

/** The area that values are to fill. @throws WorkbookProblem when they are not of its size, or it is no range */
export function areaToFill({ range, values }: FrozenArea): CellArea {
  const area = areaNamed(range);
  if (values.length !== area.rows || values.some((row) => row.length !== area.columns)) throw new WorkbookProblem(valuesDoNotFit(range));
  return area;
}
