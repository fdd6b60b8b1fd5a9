import { sentenceAbout } from "../ArgumentProblem";
import { quoted, withUnit } from "../quoted";

const isBelow = (figures: string): boolean => figures.startsWith("-");
const withoutSign = (figures: string): string => figures.replace("-", "");

const off = (grams: string, what: string): string =>
  Number(grams) === 0 ? `As ${what}.` : `${withoutSign(grams)} g ${isBelow(grams) ? "below" : "above"} ${what}.`;

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Words for weighing in from the pane. */
export const weighInWords = {
  heading: "Weigh in",
  clock: "Time of it",
  minute: "Minute of it",
  day: "Day of it",
  now: (time: string): string => `now: ${time}`,
  today: (day: string): string => `today: ${day}`,
  typeIt: "type it",
  enter: "Enter",
  clockEnter: (name: string): string => `${capital(name.split(",")[0] ?? name)}: now`,
  allTheSame: "Enter it all the same",
  pass: "Leave this box blank",
  toWeighing: "Straight to the weighing",
  noMoreStages: "No more stages",
  noCorners: "No corners this time",
  noLedger: "Leave gas, water and ± blank",
  takeBack: "Take the last one back",
  sound: "Sound when the next round is due",
  wholeScreen: "Whole screen",
  backToSheet: "Back to the sheet",
  box: (name: string, cell: string): string => `${capital(name)} (${cell})`,
  done: "Nothing is left to weigh on this sheet.",
  /** @param isClock false where the time is a day */
  entered: (name: string, value: number | string, unit: string, cell: string, time: string, isClock: boolean): string =>
    `${capital(name)}: ${typeof value === "number" ? withUnit(value, unit) : value}${time === "" ? "" : ` ${isClock ? "at" : "on"} ${time}`}, in ${cell}.`,
  clockEntered: (name: string, time: string, cell: string): string => `${capital(name)}: ${time}, in ${cell}.`,
  /** @param grams to the decimals of the balance; below 0 for a gain */
  lost: (grams: string): string => `${isBelow(grams) ? "Gained" : "Lost"} ${withoutSign(grams)} g.`,
  left: (percent: string): string => `Left: ${percent} % of the dry sample.`,
  caught: (grams: string): string => `${isBelow(grams) ? "Lighter by" : "Caught"} ${withoutSign(grams)} g.`,
  lighterAfterFire: (grams: string): string =>
    `it is ${withoutSign(grams)} g lighter than before the fire. Weigh it again, and look which part it is.`,
  offWeight: (grams: string): string => off(grams, "the weight's value"),
  offCentre: (grams: string): string => off(grams, "the centre"),
  says: (verdict: string): string => `The sheet says: ${verdict}.`,
  takenBack: (name: string, cell: string): string => `${capital(name)}, ${cell}: taken back. Correct it and press Enter.`,
  takenOut: (name: string, cell: string): string => `${capital(name)}, ${cell}: taken back. Another box before it is blank, and comes first.`,
  askedAgain: (name: string, cell: string): string => `${capital(name)}, ${cell}: not left blank after all.`,
  clockLeft: (problem: string): string => `The reading stands, but its time could not be written: ${problem}`,
  due: (remaining: string): string => `Next round due in ${remaining}`,
  overdue: (since: string): string => `Next round overdue by ${since}`,
  isDue: "The next round is due.",
  /** Of a vessel that cools closed. */
  opening: {
    due: (remaining: string): string => `Keep it closed for another ${remaining}`,
    overdue: (since: string): string => `Closed ${since} longer than is set: open it if it is cold`,
    isDue: "The vessel has been closed for as long as is set. Open it once it is cold.",
  },
  doubted: (finding: string): string => `Before it is entered: ${finding}`,
  kilograms: (grams: number, step: number): string =>
    `${withUnit(grams, "g")} has more figures than this balance shows, ${withUnit(step, "g")}: kilograms typed? Type grams.`,
  milligrams: (grams: number, step: number): string =>
    `${withUnit(grams, "g")} is too much for a balance that shows ${withUnit(step, "g")}: milligrams typed? Type grams.`,
  blank: (name: string): string => sentenceAbout(capital(name), "nothing here", "Type what the balance shows."),
  noNumber: (typed: string): string => `${quoted(typed)} is not a number. Type digits, such as 51.21.`,
  /** @param refusal what the sheet says of the box */
  unit: (unit: string, refusal: string): string => `Leave out the unit, ${quoted(unit)}. ${refusal}`,
  /** For "1,440", which some read as 1440 and others as 1.44. */
  twoWays: (typed: string): string => `${quoted(typed)} can be read in two ways. Type ${typed.replace(",", "")} or ${typed.replace(",", ".")}.`,
  /** @param why what clockProblems says of what was typed */
  noTime: (why: string): string => `${why} Left blank, it is now.`,
  blankWords: (name: string): string => sentenceAbout(capital(name), "nothing here", "Type a word or two, or leave the box blank."),
  noDay: "Type the day as 21 Nov 2026 or 2026-11-21. Left blank, it is today.",
  clockForMinutes: (typed: string): string =>
    `${quoted(typed)} is a clock time, and this sheet counts minutes. Type the minutes since round 1, such as 30.`,
  noMinute: "Type the minutes since round 1: when that was is not known in this window.",
} as const;
