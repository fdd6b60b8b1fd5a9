import type { RangeReading } from "../../workbook/Workbook";
import { balanceBlocks } from "../blocks/balance/planBalanceSheet";
import { everyBlock } from "../buildRunSheet";
import { LABEL } from "../sheet/Columns";
import { sheetWords } from "../words/sheetWords";
import { readRunSheet } from "./readRunSheet";

/**
 * The steps of the work on a run sheet, by the printed heading that a row stands below: "1 DRYING". What stands above the first belongs to the
 * head. Undefined for a sheet that is no run sheet, or one that was rearranged.
 * @returns the heading for a row counted from 0
 */
export function stepsOf(reading: RangeReading): ((row: number) => string) | undefined {
  const read = readRunSheet(reading);
  if (read.is !== "whole" && read.is !== "balance") return undefined;
  const { cells } = read.is === "balance" ? balanceBlocks(read.sheet) : everyBlock(read.sheet);
  const headings = cells
    .flatMap(({ at, content, style }) =>
      at.column === LABEL && typeof content === "string" && style === "runBand" ? [{ row: at.row - 1, content }] : [],
    )
    .sort((one, other) => one.row - other.row);
  return (row) => headings.reduce<string>((so, { row: from, content }) => (from <= row ? content : so), sheetWords.head);
}
