import type { CellAddress } from "../../workbook/Workbook";
import type { SheetPlan } from "../../workbook/SheetPlan";
import { demoKiln } from "./orchardKiln";
import { demoRun } from "./orchardRun";
import { demoSalts } from "./saltsClass";

/** What the local workbook opens on. The places and all weighings are invented. */
export const demo: readonly SheetPlan[] = [demoKiln, demoRun, demoSalts];

export const opensAt: CellAddress = { sheet: demoKiln.name, cell: demoKiln.startAt };
