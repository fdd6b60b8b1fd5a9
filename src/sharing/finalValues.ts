import { calculatesWhenAsked, fromBefore, keepsChanging, staysPending, workbookCalculating } from "../problems/sharing/sharingProblems";
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
    const { calculation, reading } = await workbook.readSettled(sheet, asShown);
    if (reading !== undefined) return calculated(reading);
    const { state, manual } = calculation;
    if (state === "pending" && manual && !asShown) throw calculatesWhenAsked(sheet);
    if (looks >= MOST_LOOKS) {
      if (state === "calculating") throw workbookCalculating(sheet);
      throw state === "pending" && !asShown ? staysPending(sheet) : keepsChanging(sheet);
    }
    await pause(BETWEEN_LOOKS);
  }
}

/** @throws InputProblem where the workbook cannot calculate what it shows */
function calculated(reading: RangeReading): RangeReading {
  const cells = reading.rows.flat().filter(({ isFromBefore }) => isFromBefore === true);
  if (cells.length > 0) throw fromBefore(reading.sheet, cells);
  return reading;
}

const waited = (milliseconds: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, milliseconds));
