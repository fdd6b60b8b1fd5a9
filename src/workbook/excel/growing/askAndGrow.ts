import { rangeOf } from "../../cellArea";
import { areasPutIn, type SheetGrowth } from "../../SheetGrowth";
import { askForHeld, type HeldCells } from "../reading/heldCells";
import { setPage } from "../writing/pageAndEmphasis";
import { dress, setEmphases, setFormats, setRowHeights, setRules, writeContents } from "../writing/writePlan";
import { followChart } from "./followChart";
import type { Hanging } from "./growSheet";

/**
 * Queues everything that makes the sheet larger, looks first and contents last, so that cells without contents tell of a request that
 * broke off. @returns what stood there just before the contents, once the request has been answered
 */
export function askAndGrow(worksheet: Excel.Worksheet, growth: SheetGrowth, hanging: Hanging): () => HeldCells {
  const { plan, steps, begun, ended } = growth;
  writeContents(worksheet, begun === undefined ? [] : [begun]);
  for (const { above, count } of steps) worksheet.getRange(`${above}:${above + count - 1}`).insert(Excel.InsertShiftDirection.down);
  const before = askForHeld(worksheet);
  // A row put in takes looks and entry rules from the one above it, whatever they are.
  for (const area of areasPutIn(steps, plan.columnWidths.length)) {
    const rows = worksheet.getRange(rangeOf(area));
    rows.clear(Excel.ClearApplyTo.formats);
    rows.dataValidation.clear();
  }
  dress(worksheet, growth.dressed);
  setRowHeights(worksheet, plan);
  for (const old of hanging.emphasis) old.delete();
  setEmphases(worksheet, plan);
  setRules(worksheet, plan);
  if (plan.print) {
    worksheet.horizontalPageBreaks.removePageBreaks();
    setPage(worksheet, plan.print);
  }
  for (const chart of hanging.charts) followChart(worksheet, chart);
  writeContents(worksheet, growth.written);
  setFormats(worksheet, growth.dressed);
  writeContents(worksheet, ended === undefined ? [] : [ended]);
  return before;
}
