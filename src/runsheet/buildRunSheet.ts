import type { CellStyle, EntryRule, PlannedCell, PrintPlan, RowHeight, SheetPlan } from "../workbook/SheetPlan";
import { together, type Block, type BlockCell, type BoxRule } from "./blocks/Block";
import { calculatedAreas } from "./blocks/calculatedAreas";
import { cautionsBlock } from "./blocks/cautionsBlock";
import { checksBlock } from "./blocks/checksBlock";
import { columnWidths } from "./blocks/columnWidths";
import { curvesBlock, runCharts } from "./blocks/curvesBlock";
import { dryingBlock } from "./blocks/dryingBlock";
import { emphasisOf } from "./blocks/emphasis";
import { endBlock } from "./blocks/endBlock";
import { calculatedRule } from "./blocks/entries";
import { firingBlock } from "./blocks/firingBlock";
import { headBlock } from "./blocks/headBlock";
import { materialsBlock } from "./blocks/materialsBlock";
import { openFireBlock } from "./blocks/openFireBlock";
import { resultsBlock } from "./blocks/resultsBlock";
import { settingsBlock } from "./blocks/settingsBlock";
import { setupBlock } from "./blocks/setupBlock";
import { cell, range } from "./expressions/Expression";
import { formulaText, placeOf } from "./expressions/formulaText";
import { KINDS, type BlockName } from "./kinds";
import { checkOptions } from "./options/checkOptions";
import type { RunSheetOptions } from "./options/RunSheetOptions";
import { LABEL } from "./sheet/Columns";
import { HEAD_ROWS } from "./sheet/layout";
import { MARGINS, SCALE_PERCENT } from "./sheet/pages";
import { runSheet, type RunSheet } from "./sheet/RunSheet";
import { kindWords } from "./words/kindWords";
import { sheetWords } from "./words/sheetWords";

/**
 * A blank run sheet: what the person at the bench fills in stands in boxes in the order of the work, everything else is
 * calculated and empty until then.
 * @throws InputProblem naming the option that cannot serve
 */
export function buildRunSheet(options: RunSheetOptions): SheetPlan {
  const sheet = runSheet(checkOptions(options));
  const { cells, entryRules } = everyBlock(sheet);
  return {
    name: kindWords[sheet.options.kind].sheetName,
    cells: cells.map((one) => planned(sheet, one)),
    columnWidths: columnWidths(sheet),
    rowHeights: rowHeights(sheet.rows.heights),
    entryRules: entryRules.map(ruled),
    emphasis: emphasisOf(sheet),
    charts: runCharts(sheet),
    frozenRows: HEAD_ROWS,
    gridlines: false,
    print: printPlan(sheet),
    startAt: placeOf(sheet.columns.box(sheet.rows.drying.vessel, 1)),
  };
}

/** Blocks whose formulas are held against being typed over. */
const GUARDED: readonly BlockName[] = ["drying", "charring", "ashing", "end", "results"];

/** The blocks of a sheet with formulas still as data, each calculated cell under a rule that refuses whatever is typed. */
export function everyBlock(sheet: RunSheet): Block {
  const { width } = sheet.columns;
  const names = KINDS[sheet.options.kind].filter((name) => name !== "checks");
  const made = names.map((name, index) => ({ name, block: BLOCKS[name](sheet, phaseNumber(names, index)) }));
  const guarded = made.filter(({ name }) => GUARDED.includes(name)).flatMap(({ block }) => calculatedAreas(block.cells, width));
  const every = together(headBlock(sheet), ...made.map(({ block }) => block), checksBlock(sheet, guarded));
  return together(every, { cells: [], entryRules: calculatedAreas(every.cells, width).map(calculatedRule) });
}

const BLOCKS: Readonly<Record<Exclude<BlockName, "checks">, (sheet: RunSheet, number: number) => Block>> = {
  setup: setupBlock,
  drying: dryingBlock,
  charring: (sheet, number) => (sheet.charring === undefined ? together() : firingBlock(sheet, sheet.charring, "charring", number)),
  ashing: (sheet, number) => (sheet.ashing === undefined ? together() : firingBlock(sheet, sheet.ashing, "ashing", number)),
  end: endBlock,
  cautions: cautionsBlock,
  results: resultsBlock,
  settings: settingsBlock,
  openFire: (sheet) => (sheet.composition === undefined ? together() : openFireBlock(sheet, sheet.composition)),
  curves: curvesBlock,
  materials: materialsBlock,
};

/** Phases of the work are numbered from 1; the set-up before them is not. */
const phaseNumber = (names: readonly BlockName[], index: number): number => names.slice(0, index + 1).filter((name) => name !== "setup").length;

// What the sheet works out or says beside boxes.
const RIGHT_OF_LINE: readonly CellStyle[] = ["runReckoned", "runTotalNumber", "runBeside"];

function planned({ columns }: RunSheet, { at, content, formula, style, format }: BlockCell): PlannedCell {
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

function printPlan({ rows, columns }: RunSheet): PrintPlan {
  return {
    area: placeOf(range(cell(1, LABEL), cell(rows.last, columns.verdict))),
    titleRows: HEAD_ROWS,
    scale: SCALE_PERCENT,
    margins: MARGINS,
    footer: sheetWords.print,
    breaksBefore: rows.breaks,
  };
}
