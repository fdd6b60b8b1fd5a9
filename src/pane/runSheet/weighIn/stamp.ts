import { isOfSamples, type BalanceCells, type RunCells, type SheetCells } from "../../../explanation/runSheet/RunCells";
import { weighInWords } from "../../../problems/runsheet/weighInWords";
import type { Cell } from "../../../runsheet/expressions/Expression";
import { CLOCK } from "../../../runsheet/sheet/Columns";
import { isAnyFilled, isKnownDry } from "./order/howFar";
import { clockNow, datedNow, readClock, readDay } from "./readClock";

const MINUTES_PER_DAY = 1440;
const MILLISECONDS_PER_MINUTE = 60_000;

/**
 * What goes into the clock box of a row for a reading made now; undefined where only the person can tell.
 * @param begun the moment of minute 0 of a run in minutes, where it is known: its sheet does not say
 */
export function stampNow(cells: SheetCells, row: number, now: Date, begun: number | undefined): number | undefined {
  if (!isOfSamples(cells)) return dayNow(cells, row, now);
  const { sheet, at } = cells;
  const { first } = sheet.rows.drying;
  const start = at(first, CLOCK);
  if (sheet.options.timing === "minutes") {
    if (row === first) return 0;
    return begun === undefined ? undefined : Math.round((now.getTime() - begun) / MILLISECONDS_PER_MINUTE);
  }
  const isDated = (typeof start === "number" && start >= 1) || (row > first && isAnotherDay(cells, now));
  return isDated ? datedNow(now) : clockNow(now);
}

/** Whether it is another day than that of round 1, as far as the sheet has a date. */
function isAnotherDay({ sheet, at }: RunCells, now: Date): boolean {
  const day = at(sheet.setup.date.row, sheet.setup.date.column);
  return typeof day === "number" && Math.floor(datedNow(now)) !== Math.floor(day);
}

/**
 * What goes into a clock box of a firing now, whatever the rounds are timed by: with its date where the time before it in the row has one, or
 * round 1, or it is the first of its row and of another day. So the times of one firing can be told from one another, past midnight too.
 */
export function stampOfFire(cells: RunCells, box: Cell, now: Date): number {
  const { sheet, at } = cells;
  const start = at(sheet.rows.drying.first, CLOCK);
  const table = sheet.fired.find(({ rows: { fire } }) => box.row >= fire.first && box.row <= fire.last);
  const { lit, quiet } = table?.fire(box.row) ?? {};
  const before = [lit, quiet].flatMap((one) => (one === undefined || one.column >= box.column ? [] : [at(one.row, one.column)]));
  const latest = before.filter((one) => typeof one === "number").at(-1);
  const isByClock = sheet.options.timing === "clock";
  const isDated = (isByClock && typeof start === "number" && start >= 1) || (latest === undefined ? isAnotherDay(cells, now) : latest >= 1);
  return isDated ? datedNow(now) : clockNow(now);
}

/** The day of a round of a balance check, with its time where a round before it is of the same day. */
function dayNow({ sheet, at }: BalanceCells, row: number, now: Date): number {
  const [dated, { first }] = [datedNow(now), sheet.rows.rounds];
  const isSameDay = Array.from({ length: row - first }, (_, index) => at(first + index, CLOCK)).some(
    (day) => typeof day === "number" && Math.floor(day) === Math.floor(dated),
  );
  return isSameDay ? dated : Math.floor(dated);
}

/** The time, or of a balance check the day, as typed beside a reading; or why it is none. */
export function typedStamp(cells: SheetCells, text: string, now: Date): number | { readonly refused: string } {
  if (!isOfSamples(cells)) return readDay(text, now) ?? { refused: weighInWords.noDay };
  const time = readClock(text, now);
  if (cells.sheet.options.timing === "clock") return "days" in time ? time.days : { refused: weighInWords.noTime(time.refused) };
  const minutes = Number(text.replace(",", "."));
  if (text !== "" && Number.isFinite(minutes)) return minutes;
  return { refused: "days" in time ? weighInWords.clockForMinutes(text) : weighInWords.noMinute };
}

/** When the next round is due, as a moment; undefined where it cannot be told, or nothing more is to be weighed while drying. */
export function dueAt(cells: RunCells, now: Date, begun: number | undefined): number | undefined {
  const { sheet, at } = cells;
  const { first, last } = sheet.rows.drying;
  const interval = at(sheet.settings.interval.row, sheet.settings.interval.column);
  const isFired = sheet.fired.some((table) => sheet.samples.some((sample) => isAnyFilled(cells, table, sample)));
  if (typeof interval !== "number" || isFired || isKnownDry(cells)) return undefined;
  const clocks = Array.from({ length: last - first + 1 }, (_, index) => at(first + index, CLOCK)).filter((one) => typeof one === "number");
  const latest = clocks.at(-1);
  if (latest === undefined || clocks.length === last - first + 1) return undefined;
  if (sheet.options.timing === "minutes") return begun === undefined ? undefined : begun + (latest + interval) * MILLISECONDS_PER_MINUTE;
  return minutesAfter(latest, interval, now);
}

/** The moment so many minutes after a time of a clock box. */
function minutesAfter(clock: number, minutes: number, now: Date): number {
  // Of bare clock times the nearest is meant, before now or after.
  const daysAgo = clock >= 1 ? datedNow(now) - clock : clockNow(now) - clock - Math.round(clockNow(now) - clock);
  const minute = Math.floor(now.getTime() / MILLISECONDS_PER_MINUTE);
  return (minute + minutes - Math.round(daysAgo * MINUTES_PER_DAY)) * MILLISECONDS_PER_MINUTE;
}

/** When a vessel whose vent went quiet has stayed closed as long as is set; undefined where none is cooling. */
export function openedFrom({ sheet, at }: RunCells, now: Date): number | undefined {
  const { closed } = sheet.settings;
  // A run that ends with drying has no such setting.
  if (sheet.fired.length === 0) return undefined;
  const minutes = at(closed.row, closed.column);
  if (typeof minutes !== "number") return undefined;
  for (const { rows, fire } of sheet.fired)
    for (let row = rows.fire.last; row >= rows.fire.first; row--) {
      const { quiet, opened } = fire(row);
      const [since, until] = [at(quiet.row, quiet.column), at(opened.row, opened.column)];
      const box = rows.first + row - rows.fire.first;
      const isWeighed = sheet.samples.some((sample) => at(box, sheet.columns.box(box, sample).column) !== null);
      if (typeof since === "number" && until === null && !isWeighed) return minutesAfter(since, minutes, now);
    }
  return undefined;
}

/** The moment of minute 0, from the minutes that were put beside a reading made now. */
export const begunAt = (minutes: number, now: Date): number => now.getTime() - minutes * MILLISECONDS_PER_MINUTE;
