import { clockTyped } from "../../../src/runsheet/options/clockTyped";

const minutes = (hours: number, more = 0): number => hours * 60 + more;

test.each([
  ["9:30", minutes(9, 30)],
  ["09:30", minutes(9, 30)],
  ["23:59", minutes(23, 59)],
  ["9:30am", minutes(9, 30)],
  ["9:30 AM", minutes(9, 30)],
  ["9:30 a.m.", minutes(9, 30)],
  ["9:30pm", minutes(21, 30)],
  ["9.30am", minutes(9, 30)],
  ["9.30 p.m.", minutes(21, 30)],
  ["930am", minutes(9, 30)],
  ["0930 am", minutes(9, 30)],
  ["1230pm", minutes(12, 30)],
  ["9am", minutes(9)],
  ["12 am", 0],
  ["12:05 pm", minutes(12, 5)],
  ["13:30 pm", minutes(13, 30)],
  ["9h30", minutes(9, 30)],
  ["9 h 30", minutes(9, 30)],
  ["21H05", minutes(21, 5)],
  ["9h", minutes(9)],
  ["9:30 h", minutes(9, 30)],
])("clockTyped(%j) is %d minutes after midnight", (text, after) => expect(clockTyped(text)).toEqual({ minutes: after }));

const TYPE = "Type hours 0 to 23, a colon, minutes 00 to 59: 9:30.";
const hours = (typed: string): string => `"${typed}" is no clock time: hours go from 0 to 23. ${TYPE}`;
const minutesGo = (typed: string): string => `"${typed}" is no clock time: minutes go from 00 to 59. ${TYPE}`;
const bare = (typed: string, meant = ""): string =>
  `"${typed}" is a bare number, no clock time. ${meant === "" ? TYPE : `Type ${meant} if you mean that.`}`;
const oneFigure = (typed: string, ...readings: string[]): string => `"${typed}" has one figure for the minutes. Type two: ${readings.join(" or ")}.`;
const halves = (typed: string): string => `"${typed}" contradicts itself: am and pm go with hours from 1 to 12. Type it without: 9:30, 21:30.`;

test.each([
  ["9.30", bare("9.30", "9:30")],
  ["9.75", bare("9.75")],
  ["9.3", bare("9.3")],
  ["9,30", bare("9,30")],
  ["930", bare("930", "9:30")],
  ["0930", bare("0930", "9:30")],
  ["975", bare("975")],
  ["2430", bare("2430")],
  ["2130", bare("2130", "21:30")],
  ["9", bare("9")],
  ["93000", bare("93000")],
  ["24:00", '"24:00" is no clock time: hours go from 0 to 23. Type midnight as 0:00, with a date as 0:01.'],
  ["24h", '"24h" is no clock time: hours go from 0 to 23. Type midnight as 0:00, with a date as 0:01.'],
  ["24:10", hours("24:10")],
  ["25:10", hours("25:10")],
  ["25h10", hours("25h10")],
  ["99:99", hours("99:99")],
  ["25:3", hours("25:3")],
  ["9:60", minutesGo("9:60")],
  ["9:75", minutesGo("9:75")],
  ["9h60", minutesGo("9h60")],
  ["9:75 pm", minutesGo("9:75 pm")],
  ["9:3", oneFigure("9:3", "9:03", "9:30")],
  ["9:3 pm", oneFigure("9:3 pm", "9:03", "9:30")],
  ["9h3", oneFigure("9h3", "9:03", "9:30")],
  ["9:0", oneFigure("9:0", "9:00")],
  ["9:7", oneFigure("9:7", "9:07")],
  ["13:30am", halves("13:30am")],
  ["0:30pm", halves("0:30pm")],
  ["9:30:15", '"9:30:15" has seconds. Type it without: 9:30.'],
  ["9.30 h", `"9.30 h" is no clock time. ${TYPE}`],
  ["half nine", `"half nine" is no clock time. ${TYPE}`],
  ["9:30 x", `"9:30 x" is no clock time. ${TYPE}`],
])("clockTyped(%j) is refused: %s", (text, refused) => expect(clockTyped(text)).toEqual({ refused }));

test("nothing is no clock time", () => expect(clockTyped("")).toHaveProperty("refused"));
