import { clockProblems } from "../../problems/runsheet/clockProblems";

const MINUTES_PER_HOUR = 60;
const HOURS = 24;
const NOON = 12;
const CLOCK = /^(\d{1,2}?)(?:(:|\.|\s?h\s?)?(\d{2}))?\s?(h)?\s?(?:(a|p)\.?m\.?)?$/i;

/** Minutes after midnight of a clock time as typed, or what is wrong with it and what to type. */
export type ClockTyped = { readonly minutes: number } | { readonly refused: string };

/**
 * A clock time as people type it: "9:30", "9:30am", "9.30 p.m.", "930 pm", "9h30", "9 am". Whatever can be read otherwise is refused: a bare 9.30,
 * 930 or 0930 may be a number, so only a colon, an h, or am and pm make a time of figures, and 9:3 may be 9:03 or 9:30.
 */
export function clockTyped(typed: string): ClockTyped {
  const text = typed.trim();
  const [, hourFigures, mark = "", minuteFigures, lastH, half] = CLOCK.exec(text) ?? [];
  if (hourFigures === undefined) return { refused: otherwise(text) };
  const byColonOrH = mark === ":" || mark.trim().toLowerCase() === "h";
  // "9:30 h" has its minutes, "9 h" has none; "9.30 h" may be hours.
  const isHours = lastH !== undefined && (minuteFigures === undefined || mark === ":");
  if (lastH !== undefined && !isHours) return { refused: clockProblems.none(text) };
  const [hours, minutes] = [Number(hourFigures), Number(minuteFigures ?? 0)];
  if (!byColonOrH && !isHours && half === undefined)
    return { refused: clockProblems.bare(text, minuteFigures === undefined ? "" : asClock(hours, minutes)) };
  if (hours === HOURS && minutes === 0 && half === undefined) return { refused: clockProblems.endOfDay(text) };
  if (hours >= HOURS) return { refused: clockProblems.hours(text) };
  if (minutes >= MINUTES_PER_HOUR) return { refused: clockProblems.minutes(text) };
  const ofDay = hoursOf(hours, half?.toLowerCase());
  return ofDay === undefined ? { refused: clockProblems.halves(text) } : { minutes: ofDay * MINUTES_PER_HOUR + minutes };
}

/** 12 am is midnight, 12 pm noon; 13:30 pm says twice what it is, and 13:30 am contradicts itself. */
function hoursOf(hours: number, half: string | undefined): number | undefined {
  if (half === "a") return hours > NOON ? undefined : hours % NOON;
  if (half === "p") return hours === 0 ? undefined : hours < NOON ? hours + NOON : hours;
  return hours;
}

const ONE_FIGURE = /^(\d{1,2})(?::|\s?h\s?)(\d)\s?(?:[ap]\.?m\.?)?$/i;
const WITH_SECONDS = /^(\d{1,2}):(\d{2}):\d{2}(?:\.\d+)?$/;
const BARE = /^\d+(?:[.,]\d*)?$/;
const TENS = 10;

/** What is wrong with a text that has not the form of a clock time. */
function otherwise(text: string): string {
  const [, hour = "", figure] = ONE_FIGURE.exec(text) ?? [];
  if (figure !== undefined) {
    const minutes = Number(figure);
    const both = [asClock(Number(hour), minutes), asClock(Number(hour), minutes * TENS)].filter((one) => one !== "");
    return both.length === 0 ? clockProblems.hours(text) : clockProblems.oneFigure(text, [...new Set(both)]);
  }
  const [, hours, minutes] = WITH_SECONDS.exec(text) ?? [];
  const meant = hours === undefined ? "" : asClock(Number(hours), Number(minutes));
  if (meant !== "") return clockProblems.seconds(text, meant);
  return BARE.test(text) ? clockProblems.bare(text, "") : clockProblems.none(text);
}

/** "9:05" of hours and minutes that make a time of day, "" where they make none. */
const asClock = (hours: number, minutes: number): string =>
  hours < HOURS && minutes < MINUTES_PER_HOUR ? `${hours}:${String(minutes).padStart(2, "0")}` : "";
