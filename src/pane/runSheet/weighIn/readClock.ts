import { clockTyped } from "../clockTyped";
import { clockText } from "../../../explanation/runSheet/plainText";

const MINUTES_PER_DAY = 1440;
const MINUTES_PER_HOUR = 60;
const MONTHS = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];
const DATED = /^(?:(\d{1,2}) ([a-z]{3})[a-z]*(?: (\d{4}))? |(\d{4})-(\d{1,2})-(\d{1,2}) )?(\S.*)$/i;
// Days from the spreadsheet's first date, 1899-12-30, to 1970-01-01.
const BEFORE_1970 = 25_569;
const MILLISECONDS_PER_DAY = 86_400_000;

/** "9:30", "21 Nov 9:30 am", "2026-11-21 9:30" as a spreadsheet holds them, in days; undefined for anything that is no time of day. */
export function readClock(text: string, now: Date): number | undefined {
  const [, day, monthName, year, isoYear, isoMonth, isoDay, clock = ""] = DATED.exec(text) ?? [];
  const minutes = clockTyped(clock);
  if (minutes === undefined) return undefined;
  const time = minutes / MINUTES_PER_DAY;
  if (isoYear !== undefined) return dated(Number(isoYear), Number(isoMonth) - 1, Number(isoDay), time);
  if (day === undefined || monthName === undefined) return time;
  return dated(Number(year ?? now.getFullYear()), MONTHS.indexOf(monthName.toLowerCase()), Number(day), time);
}

/** "2026-11-21", "21 Nov", with a time behind it or without; undefined for anything else, a bare time too. */
export function readDay(text: string, now: Date): number | undefined {
  const days = readClock(text, now) ?? readClock(`${text} 0:00`, now);
  return days === undefined || days < 1 ? undefined : days;
}

/** "2026-11-21", with its time where it has one. */
export function dayText(days: number): string {
  const text = clockText(days);
  return Number.isInteger(days) ? (text.split(" ")[0] ?? text) : text;
}

function dated(year: number, month: number, day: number, time: number): number | undefined {
  const date = new Date(Date.UTC(year, month, day));
  const isThere = month >= 0 && date.getUTCMonth() === month && date.getUTCDate() === day;
  return isThere ? date.getTime() / MILLISECONDS_PER_DAY + BEFORE_1970 + time : undefined;
}

/** This minute by the clock on the wall, in days. */
export const clockNow = (now: Date): number => (now.getHours() * MINUTES_PER_HOUR + now.getMinutes()) / MINUTES_PER_DAY;

/** The same with its date. */
export const datedNow = (now: Date): number =>
  Date.UTC(now.getFullYear(), now.getMonth(), now.getDate()) / MILLISECONDS_PER_DAY + BEFORE_1970 + clockNow(now);
