import { buildRunSheet } from "../../runsheet/buildRunSheet";
import type { RunSheetOptions } from "../../runsheet/options/RunSheetOptions";
import type { Workbook } from "../../workbook/Workbook";

/** Builds a blank run sheet and adds it. @returns what to say of it */
export async function insertRunSheet(workbook: Workbook, options: RunSheetOptions): Promise<string> {
  const plan = buildRunSheet(options);
  const sheet = await workbook.addSheet(plan);
  return `Inserted as a new sheet, "${sheet}". Start at cell ${plan.startAt}.`;
}
