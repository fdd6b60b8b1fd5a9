import type { EntryRule, PlannedCell, SheetPlan } from "../workbook/SheetPlan";
import { together, type Block, type BlockCell, type BoxRule } from "./blocks/Block";
import { burningBlock } from "./blocks/burningBlock";
import { checksBlock } from "./blocks/checksBlock";
import { columnWidths } from "./blocks/columnWidths";
import { detailsBlock } from "./blocks/detailsBlock";
import { dryingChart } from "./blocks/dryingChart";
import { materialsBlock } from "./blocks/materialsBlock";
import { replicatesBlock } from "./blocks/replicatesBlock";
import { resultsBlock } from "./blocks/resultsBlock";
import { sampleBlock } from "./blocks/sampleBlock";
import { titleBlock } from "./blocks/titleBlock";
import { formulaText, placeOf } from "./expressions/formulaText";
import { checkOptions } from "./options/checkOptions";
import type { RunSheetOptions } from "./options/RunSheetOptions";
import { runSheet, type RunSheet } from "./sheet/RunSheet";
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
    name: sheetWords.sheetName[options.kind],
    cells: cells.map(planned),
    columnWidths: columnWidths(sheet, cells),
    entryRules: entryRules.map(ruled),
    chart: dryingChart(sheet),
    frozenRows: sheet.rows.title,
    startAt: placeOf(sheet.details.date),
  };
}

/** The blocks of a sheet from top to bottom, with formulas still as data. */
export const everyBlock = (sheet: RunSheet): Block =>
  together(
    titleBlock(sheet),
    detailsBlock(sheet),
    resultsBlock(sheet),
    checksBlock(sheet),
    replicatesBlock(sheet),
    ...sheet.samples.map((sample) => sampleBlock(sheet, sample)),
    burningBlock(sheet),
    materialsBlock(sheet),
  );

const planned = ({ at, content, formula, style, format }: BlockCell): PlannedCell => ({
  cell: placeOf(at),
  ...(content === undefined ? {} : { content }),
  ...(formula === undefined ? {} : { formula: formulaText(formula) }),
  style,
  ...(format === undefined ? {} : { format }),
});

const ruled = ({ over, ...rule }: BoxRule): EntryRule => ({ range: placeOf(over), ...rule });
