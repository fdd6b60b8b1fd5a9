import { notAClockInForm } from "../../problems/paneProblems";
import { clockTyped } from "../../runsheet/options/clockTyped";
import { clockOfDay } from "../../runsheet/planning/clockOfDay";
import type { WrongEntry } from "./WrongEntry";

const MINUTES_IN_A_DAY = 1440;

/** Minutes after midnight of "9:30"; undefined for a blank box. */
export function readClock(label: string, typed: string): number | undefined | WrongEntry<"beginAt"> {
  const text = typed.trim();
  if (text === "") return undefined;
  const read = clockTyped(text);
  return "minutes" in read ? read.minutes : { problem: notAClockInForm(label, read.refused), field: "beginAt" };
}

/** "16:29", and how many days later where that is another day: "16:29, 1 day later". */
export function clockAfter(beginAt: number, minutes: number): string {
  const at = Math.round(beginAt + minutes);
  const [day, rest] = [Math.floor(at / MINUTES_IN_A_DAY), at % MINUTES_IN_A_DAY];
  return day === 0 ? clockOfDay(rest) : `${clockOfDay(rest)}, ${day} day${day === 1 ? "" : "s"} later`;
}
