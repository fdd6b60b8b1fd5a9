import type { CellStyle, EntryRule, PlannedCell, PrintPlan, RowHeight, SheetPlan } from "../../workbook/SheetPlan";
import { cell, range } from "../expressions/Expression";
import { formulaText, placeOf } from "../expressions/formulaText";
import { LABEL } from "../sheet/Columns";
import { HEAD_ROWS } from "../sheet/layout";
import { MARGINS, SCALE_PERCENT } from "../sheet/pages";
import type { Sheet } from "../sheet/RunSheet";
import { kindWords } from "../words/kindWords";
import { sheetWords } from "../words/sheetWords";
import type { Block, BlockCell, BoxRule } from "./Block";
import { columnWidths } from "./columnWidths";

/** The blocks of a sheet as a plan, their formulas written out. */
export function plannedSheet(
  sheet: Sheet,
  { cells, entryRules }: Block,
  own: Required<Pick<SheetPlan, "emphasis" | "charts" | "startAt">>,
): SheetPlan {
  return {
    name: kindWords[sheet.options.kind].sheetName,
    cells: cells.map((one) => planned(sheet, one)),
    columnWidths: columnWidths(sheet),
    rowHeights: rowHeights(sheet.rows.heights),
    entryRules: entryRules.map(ruled),
    emphasis: own.emphasis,
    charts: own.charts,
    frozenRows: HEAD_ROWS,
    gridlines: false,
    print: printPlan(sheet),
    startAt: own.startAt,
  };
}

// What the sheet works out or says beside boxes.
const RIGHT_OF_LINE: readonly CellStyle[] = ["runReckoned", "runTotalNumber", "runBeside"];

function planned({ columns }: Sheet, { at, content, formula, style, format }: BlockCell): PlannedCell {
  // The heavy line runs along every row of hand and sheet that is no band of headings and no box.
  const isRightOfLine = at.column === columns.reckoned(1, 1).column && RIGHT_OF_LINE.includes(style);
  return {
    cell: placeOf(at),
    ...(content === undefined ? {} : { content }),
    ...(formula === undefined ? {} : { formula: formulaText(formula) }),
    style,
    ...(format === undefined ? {} : { format }),
    ...(isRightOfLine ? { heavyLeft: true as const } : {}),
  };
}

const ruled = ({ over, allow, ...rule }: BoxRule): EntryRule => ({
  range: placeOf(over),
  allow: allow.kind === "condition" ? { kind: "condition", condition: formulaText(allow.condition) } : allow,
  ...rule,
});

/** Rows of one height one after another, together. */
function rowHeights(heights: readonly number[]): RowHeight[] {
  return heights.reduce<RowHeight[]>((so, height, index) => {
    const last = so.at(-1);
    if (last?.height === height) return [...so.slice(0, -1), { ...last, to: index + 1 }];
    return [...so, { from: index + 1, to: index + 1, height }];
  }, []);
}

function printPlan({ rows, columns }: Sheet): PrintPlan {
  return {
    area: placeOf(range(cell(1, LABEL), cell(rows.last, columns.verdict))),
    titleRows: HEAD_ROWS,
    scale: SCALE_PERCENT,
    margins: MARGINS,
    footer: sheetWords.print,
    breaksBefore: rows.breaks,
  };
}
