import type { RangeReading } from "../../workbook/Workbook";
import { balanceBlocks } from "../blocks/balance/planBalanceSheet";
import { everyBlock } from "../buildRunSheet";
import { placeOf } from "../expressions/formulaText";
import { readRunSheet } from "./readRunSheet";

/** The cells of a run sheet that are boxes to fill in: "B7"; none of a sheet that is no run sheet, or one that was rearranged. */
export function boxesOf(reading: RangeReading): readonly string[] {
  const read = readRunSheet(reading);
  if (read.is !== "whole" && read.is !== "balance") return [];
  const { cells } = read.is === "balance" ? balanceBlocks(read.sheet) : everyBlock(read.sheet);
  return cells.flatMap(({ at, style }) => (style.startsWith("runBox") ? [placeOf(at).replaceAll("$", "")] : []));
}
