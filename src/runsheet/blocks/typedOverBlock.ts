import { cell } from "../expressions/Expression";
import { lastTypedOver, watchCells, type Watched } from "../formulas/typedOver";
import { CLOCK } from "../sheet/Columns";
import type { Sheet } from "../sheet/RunSheet";
import { sheetWords } from "../words/sheetWords";
import { calculatedAreas } from "./calculatedAreas";
import { calculatedRule } from "./entries";
import { together, working, workingLabel, type Block, type BlockCell } from "./Block";

/**
 * A sheet whose calculated cells are all watched: each under a rule that refuses whatever is typed, and counted where a spreadsheet let
 * it pass, as it does what is pasted.
 * @param totals rows above which rows are put in by hand
 */
export function watched(sheet: Sheet & Watched, block: Block, totals: readonly number[]): Block {
  const { below, head } = watchCells(sheet);
  const line = cell(sheet.rows.head.checks, 0);
  const calculated = block.cells.filter(({ formula }) => formula !== undefined);
  const isLine = ({ at }: BlockCell): boolean => at.row === line.row && at.column === line.column;
  const later = calculated.filter((one) => restsOnTheCheck(sheet, one));
  const earlier = calculated.filter((one) => !restsOnTheCheck(sheet, one));
  const ofHead = calculatedAreas([...later.filter((one) => !isLine(one)), working(below, 0)]);
  const watch: Block = {
    cells: [
      workingLabel(sheet, below.row, sheetWords.workings.typedOver),
      working(below, lastTypedOver(calculatedAreas(earlier), totals)),
      working(head, lastTypedOver(ofHead, [])),
    ],
    entryRules: [],
  };
  const every = together(block, watch);
  return together(every, { cells: [], entryRules: calculatedAreas(every.cells).map(calculatedRule) });
}

/** The check of what was typed over, the marks in the results that follow from the checks, and the lines at the top. */
function restsOnTheCheck({ rows, columns }: Sheet & Watched, { at, style }: BlockCell): boolean {
  if (at.column > columns.verdict) return false;
  const isHead = at.row <= Math.max(...Object.values(rows.head));
  return isHead || (style === "runMark" && at.column === CLOCK) || at.row === watchCells({ rows, columns }).below.row;
}
