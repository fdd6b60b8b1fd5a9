import type { CellStyle, PlannedCell, PrintPlan, SheetPlan } from "../../workbook/SheetPlan";
import { cell, range } from "../expressions/Expression";
import { placeOf } from "../expressions/formulaText";
import { LABEL } from "../sheet/Columns";
import { columnWidths } from "../sheet/columnWidths";
import { HEAD_ROWS } from "../sheet/layout";
import { marginsOf, SCALE_PERCENT } from "../sheet/pages";
import type { Sheet } from "../sheet/RunSheet";
import { cautionLine } from "../words/cautions";
import { kindWords } from "../words/kindWords";
import { sheetWords } from "../words/sheetWords";
import { formulasMark } from "../formulasMark";
import type { Block, BlockCell } from "./Block";
import { plannedCell, plannedRule, rowHeights } from "./planned";

/** The blocks of a sheet as a plan, their formulas written out. */
export function plannedSheet(
  sheet: Sheet,
  { cells, entryRules }: Block,
  own: Required<Pick<SheetPlan, "emphasis" | "charts" | "startAt">>,
): SheetPlan {
  const written = cells.map((one) => planned(sheet, one));
  return {
    name: kindWords[sheet.options.kind].sheetName,
    cells: [...written, markedBy(sheet, written)],
    columnWidths: columnWidths(sheet.options),
    rowHeights: rowHeights(sheet.rows.heights),
    entryRules: entryRules.map(plannedRule),
    emphasis: own.emphasis,
    charts: own.charts,
    frozenRows: HEAD_ROWS,
    gridlines: false,
    print: printPlan(sheet),
    startAt: own.startAt,
  };
}

/** By which the formulas are known again as those that this version makes. */
const markedBy = ({ columns, rows }: Sheet, cells: readonly PlannedCell[]): PlannedCell => ({
  cell: placeOf(columns.working(rows.head.title, 1)),
  content: `${sheetWords.workings.formulas}${formulasMark(cells)}`,
  style: "runWorking",
});

// What the sheet works out or says beside boxes.
const RIGHT_OF_LINE: readonly CellStyle[] = ["runReckoned", "runTotalNumber", "runBeside"];

function planned({ columns }: Sheet, one: BlockCell): PlannedCell {
  // The heavy line runs along every row of hand and sheet that is no band of headings and no box.
  const isRightOfLine = one.at.column === columns.reckoned(1, 1).column && RIGHT_OF_LINE.includes(one.style);
  return { ...plannedCell(one), ...(isRightOfLine ? { heavyLeft: true as const } : {}) };
}

/** Cautions go where rows that come in above them put them; on a later page, page one tells the least of them. */
function printPlan({ rows, columns, options }: Sheet): PrintPlan {
  const isOnPageOne = rows.cautions.last < (rows.breaks[0] ?? Infinity);
  return {
    area: placeOf(range(cell(1, LABEL), cell(rows.printedTo, columns.verdict))),
    ...(rows.page.landscape ? { landscape: true as const } : {}),
    titleRows: HEAD_ROWS,
    scale: SCALE_PERCENT,
    margins: marginsOf(rows.page),
    ...(isOnPageOne ? {} : { header: sheetWords.atTheTop(cautionLine[options.kind]) }),
    footer: sheetWords.print,
    breaksBefore: rows.breaks,
  };
}
