import { clockTyped } from "../../../src/pane/runSheet/clockTyped";

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
])("clockTyped(%j) is %d minutes after midnight", (text, after) => expect(clockTyped(text)).toBe(after));

test.each(["9.30", "9,30", "930", "0930", "9", "9.30 h", "24:00", "9:60", "9:5", "9:30:15", "13:30am", "0:30pm", "25h10", "9h60", "half nine", "9:30 x", ""])(
  "clockTyped(%j) is none, for it can be read otherwise or not at all",
  (text) => expect(clockTyped(text)).toBeUndefined(),
); // prettier-ignore
