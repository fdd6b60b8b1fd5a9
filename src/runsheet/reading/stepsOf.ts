import { areaNamed } from "../../workbook/areaNamed";
import type { RangeReading } from "../../workbook/Workbook";
import { balanceBlocks } from "../blocks/balance/planBalanceSheet";
import { buildRunSheet, everyBlock } from "../buildRunSheet";
import { LABEL } from "../sheet/Columns";
import { sheetWords } from "../words/sheetWords";
import { readRunSheet } from "./readRunSheet";

/** Where the cells of a run sheet belong. Rows and columns count from 0. */
export interface RunSteps {
  /** The printed heading that a row stands below: "1 DRYING". What stands above the first belongs to the head. */
  headingOf(row: number): string;
  /** True for a column that is printed; beyond stand the workings. */
  isPrinted(column: number): boolean;
}

/** The steps of the work on a run sheet; undefined for a sheet that is no run sheet, or one that was rearranged. */
export function stepsOf(reading: RangeReading): RunSteps | undefined {
  const read = readRunSheet(reading);
  if (read.is !== "whole" && read.is !== "balance") return undefined;
  const { cells } = read.is === "balance" ? balanceBlocks(read.sheet) : everyBlock(read.sheet);
  const headings = cells
    .flatMap(({ at, content, style }) =>
      at.column === LABEL && typeof content === "string" && style === "runBand" ? [{ row: at.row - 1, content }] : [],
    )
    .sort((one, other) => one.row - other.row);
  const printed = areaNamed(buildRunSheet(read.sheet.options).print?.area ?? "A1");
  return {
    headingOf: (row) => headings.reduce<string>((so, { row: from, content }) => (from <= row ? content : so), sheetWords.head),
    isPrinted: (column) => column < printed.column + printed.columns,
  };
}
