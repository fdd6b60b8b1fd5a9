import type { SettledReading, Workbook } from "./Workbook";

/** Reads a sheet twice, and looks at the calculation before and after: for workbooks in which a question costs nothing. */
export async function readTwice(workbook: Pick<Workbook, "calculation" | "readUsed">, sheet: string, asShown: boolean): Promise<SettledReading> {
  const before = await workbook.calculation();
  if (before.state !== "done" && !asShown) return { calculation: before };
  const first = await workbook.readUsed(sheet);
  const second = await workbook.readUsed(sheet);
  const calculation = await workbook.calculation();
  const isFinal = (calculation.state === "done" || asShown) && JSON.stringify(first) === JSON.stringify(second);
  return isFinal ? { calculation, reading: second } : { calculation };
}
