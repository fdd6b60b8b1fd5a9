import { sentenceAbout } from "./ArgumentProblem";
import { quoted, withUnit } from "./quoted";

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Words for weighing in from the pane. */
export const weighInWords = {
  heading: "Weigh in",
  clock: "Time of it",
  minute: "Minute of it",
  now: (time: string): string => `now: ${time}`,
  typeIt: "type it",
  enter: "Enter",
  clockEnter: (name: string): string => `${capital(name.split(",")[0] ?? name)}: now`,
  allTheSame: "Enter it all the same",
  pass: "Leave this box blank",
  takeBack: "Take the last one back",
  sound: "Sound when the next round is due",
  wholeScreen: "Whole screen",
  backToSheet: "Back to the sheet",
  box: (name: string, cell: string): string => `${capital(name)} (${cell})`,
  done: "Nothing is left to weigh on this sheet.",
  entered: (name: string, value: number | string, unit: string, cell: string, time: string): string =>
    `${capital(name)}: ${typeof value === "number" ? withUnit(value, unit) : value}${time === "" ? "" : ` at ${time}`}, in ${cell}.`,
  clockEntered: (name: string, time: string, cell: string): string => `${capital(name)}: ${time}, in ${cell}.`,
  /** @param grams to the decimals of the balance; below 0 for a gain */
  lost: (grams: string): string => (grams.startsWith("-") ? `Gained ${grams.slice(1)} g.` : `Lost ${grams} g.`),
  says: (verdict: string): string => `The sheet says: ${verdict}.`,
  takenBack: (name: string, cell: string): string => `${capital(name)}, ${cell}: taken back. Correct it and press Enter.`,
  clockLeft: (problem: string): string => `The reading stands, but its time could not be written: ${problem}`,
  due: (remaining: string): string => `Next round due in ${remaining}`,
  overdue: (since: string): string => `Next round due since ${since}`,
  isDue: "The next round is due.",
  doubted: (finding: string): string => `Before it is entered: ${finding}`,
  blank: (name: string): string => sentenceAbout(capital(name), "nothing here", "Type what the balance shows."),
  noNumber: (typed: string): string => `${quoted(typed)} is not a number. Type digits, such as 51.21.`,
  /** @param refusal what the sheet says of the box */
  unit: (unit: string, refusal: string): string => `Leave out the unit, ${quoted(unit)}. ${refusal}`,
  /** For "1,440", which some read as 1440 and others as 1.44. */
  twoWays: (typed: string): string => `${quoted(typed)} can be read in two ways. Type ${typed.replace(",", "")} or ${typed.replace(",", ".")}.`,
  noTime: "Type the time with a colon: 9:30. Left blank, it is now.",
  noMinute: "Type the minutes since round 1: when that was is not known in this window.",
} as const;
