import { calculatesWhenAsked, keepsChanging, staysPending, workbookCalculating } from "../problems/sharingProblems";
import { cellArea, covers } from "../workbook/cellArea";
import type { RangeReading, Workbook } from "../workbook/Workbook";

export interface Patience {
  /** True where the user goes on with the values shown, though the workbook says that something waits to be calculated. */
  readonly asShown?: boolean;
  /** Lets some time pass; tests let none pass. */
  readonly pause?: (milliseconds: number) => Promise<void>;
}

const BETWEEN_LOOKS = 500;
const MOST_LOOKS = 10;

/**
 * Everything on a sheet, once the calculation is over: read twice, alike both times, with nothing to calculate before and after.
 * While something is, a host goes on showing the values from before.
 * @throws InputProblem when that does not come about within some seconds
 */
export async function finalValues(workbook: Workbook, sheet: string, { asShown = false, pause = waited }: Patience = {}): Promise<RangeReading> {
  for (let looks = 1; ; looks++) {
    const before = await workbook.calculation();
    if (before.state === "done" || asShown) {
      const first = await workbook.readUsed(sheet);
      const second = await workbook.readUsed(sheet);
      const after = await workbook.calculation();
      if ((after.state === "done" || asShown) && JSON.stringify(first) === JSON.stringify(second)) return second;
    }
    const { state, manual } = await workbook.calculation();
    if (state === "pending" && manual && !asShown) throw calculatesWhenAsked(sheet);
    if (looks >= MOST_LOOKS) {
      if (state === "calculating") throw workbookCalculating(sheet);
      throw state === "pending" && !asShown ? staysPending(sheet) : keepsChanging(sheet);
    }
    await pause(BETWEEN_LOOKS);
  }
}

/** True where the same things stand on a sheet, typed or as formulas; what formulas come to may differ. */
export const holdsTheSame = (one: RangeReading, other: RangeReading): boolean => JSON.stringify(typedInto(one)) === JSON.stringify(typedInto(other));

function typedInto({ rows }: RangeReading): unknown[] {
  const cells = rows.flat();
  const spills = cells.flatMap(({ spill }) => cellArea(spill) ?? []);
  return cells.flatMap(({ cell, formula, value }) => {
    if (formula !== "") return [[cell, formula]];
    const at = cellArea(cell);
    const isFilled = at !== undefined && spills.some((area) => covers(area, at.row, at.column));
    return value === null || isFilled ? [] : [[cell, value]];
  });
}

const waited = (milliseconds: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, milliseconds));
