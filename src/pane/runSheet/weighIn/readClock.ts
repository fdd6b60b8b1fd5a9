import { clockText } from "../../../explanation/runSheet/plainText";
import { clockProblems } from "../../../problems/runsheet/clockProblems";
import { clockTyped } from "../../../runsheet/options/clockTyped";

const MINUTES_PER_DAY = 1440;
const MINUTES_PER_HOUR = 60;
const MONTHS = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];
const DATED = /^(?:(\d{1,2}) ([a-z]{3})[a-z]*(?: (\d{4}))? |(\d{4})-(\d{1,2})-(\d{1,2}) )?(\S.*)$/i;
// Days from the spreadsheet's first date, 1899-12-30, to 1970-01-01.
const BEFORE_1970 = 25_569;
const MILLISECONDS_PER_DAY = 86_400_000;

/** In days, or what is wrong with it and what to type. */
export type ClockRead = { readonly days: number } | { readonly refused: string };

/** "9:30", "21 Nov 9:30 am", "2026-11-21 9:30" as a spreadsheet holds them. */
export function readClock(text: string, now: Date): ClockRead {
  const [, day, monthName, year, isoYear, isoMonth, isoDay, clock = ""] = DATED.exec(text) ?? [];
  const read = clockTyped(clock);
  if ("refused" in read) return read;
  const time = read.minutes / MINUTES_PER_DAY;
  if (isoYear === undefined && (day === undefined || monthName === undefined)) return { days: time };
  const days =
    isoYear === undefined
      ? dated(Number(year ?? now.getFullYear()), MONTHS.indexOf((monthName ?? "").toLowerCase()), Number(day), time)
      : dated(Number(isoYear), Number(isoMonth) - 1, Number(isoDay), time);
  return days === undefined ? { refused: clockProblems.day(text) } : { days };
}

/** "2026-11-21", "21 Nov", with a time behind it or without; undefined for anything else, a bare time too. */
export function readDay(text: string, now: Date): number | undefined {
  const timed = readClock(text, now);
  const read = "days" in timed ? timed : readClock(`${text} 0:00`, now);
  return "refused" in read || read.days < 1 ? undefined : read.days;
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
