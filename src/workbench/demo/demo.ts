import type { CellAddress } from "../../workbook/Workbook";
import type { SheetPlan } from "../../workbook/SheetPlan";
import { demoKiln } from "./orchardKiln";
import { demoSalts } from "./saltsClass";

/** What the local workbook opens on; the run sheet of orchardRun.ts comes with the grid. The places and all weighings are invented. */
export const demo: readonly SheetPlan[] = [demoKiln, demoSalts];

export const opensAt: CellAddress = { sheet: demoKiln.name, cell: demoKiln.startAt };
