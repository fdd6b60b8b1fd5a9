import type { RunCells } from "../../../explanation/runSheet/RunCells";
import { CLOCK } from "../../../runsheet/sheet/Columns";
import { clockNow, datedNow, readClock } from "./readClock";

const MINUTES_PER_DAY = 1440;
const MILLISECONDS_PER_MINUTE = 60_000;

/**
 * What goes into the clock box of a row for a reading made now; undefined where only the person can tell.
 * @param begun the moment of minute 0 of a run in minutes, where it is known: its sheet does not say
 */
export function stampNow(cells: RunCells, row: number, now: Date, begun: number | undefined): number | undefined {
  const { sheet, at } = cells;
  const { first } = sheet.rows.drying;
  const start = at(first, CLOCK);
  if (sheet.options.timing === "minutes") {
    if (row === first) return 0;
    return begun === undefined ? undefined : Math.round((now.getTime() - begun) / MILLISECONDS_PER_MINUTE);
  }
  const day = at(sheet.setup.date.row, sheet.setup.date.column);
  const isAnotherDay = typeof day === "number" && Math.floor(datedNow(now)) !== Math.floor(day);
  const isDated = (typeof start === "number" && start >= 1) || (row > first && isAnotherDay);
  return isDated ? datedNow(now) : clockNow(now);
}

/** The time of a clock box as typed beside a reading. */
export function typedStamp(cells: RunCells, text: string, now: Date): number | undefined {
  if (cells.sheet.options.timing === "clock") return readClock(text, now);
  const minutes = Number(text.replace(",", "."));
  return text === "" || !Number.isFinite(minutes) ? undefined : minutes;
}

/** When the next round is due, as a moment; undefined where it cannot be told, or nothing more is to be weighed while drying. */
export function dueAt(cells: RunCells, now: Date, begun: number | undefined): number | undefined {
  const { sheet, at } = cells;
  const { first, last } = sheet.rows.drying;
  const interval = at(sheet.settings.interval.row, sheet.settings.interval.column);
  const { allSteady } = sheet.drying;
  if (typeof interval !== "number" || Number(at(allSteady.row, allSteady.column)) > 0) return undefined;
  const clocks = Array.from({ length: last - first + 1 }, (_, index) => at(first + index, CLOCK)).filter((one) => typeof one === "number");
  const latest = clocks.at(-1);
  if (latest === undefined || clocks.length === last - first + 1) return undefined;
  if (sheet.options.timing === "minutes") return begun === undefined ? undefined : begun + (latest + interval) * MILLISECONDS_PER_MINUTE;
  // Of bare clock times the nearest is meant, before now or after.
  const daysAgo = latest >= 1 ? datedNow(now) - latest : clockNow(now) - latest - Math.round(clockNow(now) - latest);
  const minute = Math.floor(now.getTime() / MILLISECONDS_PER_MINUTE);
  return (minute + interval - Math.round(daysAgo * MINUTES_PER_DAY)) * MILLISECONDS_PER_MINUTE;
}

/** The moment of minute 0, from the minutes that were put beside a reading made now. */
export const begunAt = (minutes: number, now: Date): number => now.getTime() - minutes * MILLISECONDS_PER_MINUTE;
