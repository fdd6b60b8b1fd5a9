import { freeSheetName } from "../../workbook/freeSheetName";
import type { SheetPlan } from "../../workbook/SheetPlan";
import { addCharts } from "../charts/addCharts";
import { putRepeats, withoutRepeats } from "./manyCells";
import { plannedFile, type ForPlans } from "./plannedFile";
import { WorkbookPackage } from "../package/WorkbookPackage";

/** Adds planned sheets behind the last one of a file, charts and all. @returns their names there; one that is taken is numbered */
export async function addPlanned(file: WorkbookPackage, plans: readonly SheetPlan[], around: ForPlans = {}): Promise<readonly string[]> {
  const taken = (await file.sheets()).map(({ name }) => name);
  const before = taken.length;
  for (const { name } of plans) taken.push(freeSheetName(name, taken));
  // What a sheet prints stands in a name that holds the sheet's own, so the names come first.
  const named = plans.map((plan, index) => ({ ...plan, name: taken[before + index] ?? plan.name }));
  const written = named.map((plan) => ({ plan, ...withoutRepeats(plan) }));
  if (named.length > 0) await file.addSheetsOf(await plannedFile(written.map(({ short }) => short), around)); // prettier-ignore
  for (const { plan, left } of written) await putRepeats(file, plan, left, around);
  for (const { name, charts } of named) await addCharts(file, name, charts ?? []);
  return named.map(({ name }) => name);
}

/** Planned sheets as a whole new file, charts and all. */
export async function newFileOf(plans: readonly SheetPlan[], around: ForPlans = {}): Promise<Uint8Array<ArrayBuffer>> {
  const written = plans.map((plan) => ({ plan, ...withoutRepeats(plan) }));
  const file = await WorkbookPackage.of(await plannedFile(written.map(({ short }) => short), around)); // prettier-ignore
  for (const { plan, left } of written) await putRepeats(file, plan, left, around);
  for (const { name, charts } of plans) await addCharts(file, name, charts ?? []);
  return file.bytes();
}
