import type { CellLook } from "./Workbook";

/** True where a look at the selected cell tells its watcher something new: another cell or content, or that the calculation is over. */
export const isNews = (told: CellLook, now: CellLook): boolean =>
  contentsOf(told) !== contentsOf(now) || (told.calculation.state !== "done" && now.calculation.state === "done");

const contentsOf = ({ address, reading, anchor }: CellLook): string => JSON.stringify([address, reading, anchor]);
