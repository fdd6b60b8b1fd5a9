import { hoursOrMinutes } from "../../problems/paneProblems";

const SIGNED = /^(.*\d)\s?(?:h|hours?)$/i;
// Longer times are planned for, and are minutes more often; own bound, no source.
const MOST_HOURS = 24;

/** Hours as typed, with their unit or without it. */
export const withoutHours = (typed: string): string => SIGNED.exec(typed.trim())?.[1] ?? typed;

/** What is asked of so many hours that minutes may be meant; undefined where they are typed with their unit, as of what needs no question. */
export const minutesDoubted = (label: string, typed: string, hours: number | undefined): string | undefined =>
  hours !== undefined && hours > MOST_HOURS && !SIGNED.test(typed.trim()) ? hoursOrMinutes(label, hours) : undefined;
