import { quoted } from "../quoted";

/** What a clock time is, wherever one is asked for. */
export const CLOCK_SHAPE = "hours 0 to 23, a colon, minutes 00 to 59";
const TYPE_IT = `Type ${CLOCK_SHAPE}: 9:30.`;

/** What is wrong with a text where a clock time is wanted, and what to type. */
export const clockProblems = {
  hours: (typed: string): string => `${quoted(typed)} is no clock time: hours go from 0 to 23. ${TYPE_IT}`,
  endOfDay: (typed: string): string => `${quoted(typed)} is no clock time: hours go from 0 to 23. Type midnight as 0:00, with a date as 0:01.`,
  minutes: (typed: string): string => `${quoted(typed)} is no clock time: minutes go from 00 to 59. ${TYPE_IT}`,
  /** For "9:3", which some read as 9:03 and others as 9:30. */
  oneFigure: (typed: string, readings: readonly string[]): string =>
    `${quoted(typed)} has one figure for the minutes. Type two: ${readings.join(" or ")}.`,
  /** @param meant the time that the same figures make with a colon, "" where they make none */
  bare: (typed: string, meant: string): string =>
    `${quoted(typed)} is a bare number, no clock time. ${meant === "" ? TYPE_IT : `Type ${meant} if you mean that.`}`,
  halves: (typed: string): string => `${quoted(typed)} contradicts itself: am and pm go with hours from 1 to 12. Type it without: 9:30, 21:30.`,
  seconds: (typed: string, meant: string): string => `${quoted(typed)} has seconds. Type it without: ${meant}.`,
  day: (typed: string): string => `${quoted(typed)} names no day that there is. Type it so: 21 Nov 9:30.`,
  none: (typed: string): string => `${quoted(typed)} is no clock time. ${TYPE_IT}`,
} as const;
