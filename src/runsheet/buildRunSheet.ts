import type { SheetPlan } from "../workbook/SheetPlan";
import { burningBlock } from "./burningBlock";
import { checkOptions } from "./checkOptions";
import { checksBlock } from "./checksBlock";
import { columnWidths } from "./columnWidths";
import { detailsBlock } from "./detailsBlock";
import { dryingChart } from "./dryingChart";
import { glossary } from "./glossary";
import { layout } from "./layout";
import { materialsBlock } from "./materialsBlock";
import { replicatesBlock } from "./replicatesBlock";
import { resultsBlock } from "./resultsBlock";
import type { RunSheetOptions } from "./RunSheetOptions";
import { sampleBlock } from "./sampleBlock";
import { titleBlock } from "./titleBlock";

/**
 * A blank run sheet: what the person at the bench fills in stands in boxes in the order of the work, everything else is
 * calculated and empty until then.
 * @throws InputProblem naming the option that cannot serve
 */
export function buildRunSheet(options: RunSheetOptions): SheetPlan {
  const checked = checkOptions(options);
  const rows = layout(checked);
  const blocks = [
    titleBlock(checked, rows),
    detailsBlock(checked, rows),
    resultsBlock(checked, rows),
    checksBlock(checked, rows),
    replicatesBlock(checked, rows),
    ...rows.samples.map((_, index) => sampleBlock(checked, rows, index + 1)),
    burningBlock(checked, rows),
    materialsBlock(rows),
  ];
  const cells = blocks.flatMap((block) => block.cells);
  return {
    name: glossary.sheetName[checked.kind],
    cells,
    columnWidths: columnWidths(checked, rows, cells),
    entryRules: blocks.flatMap(({ entryRules }) => entryRules),
    chart: dryingChart(rows),
    frozenRows: rows.title,
    startAt: `B${rows.details.date}`,
  };
}
