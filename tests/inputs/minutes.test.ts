import { BLANK } from "../../src/inputs/CellValue";
import { minutes } from "../../src/inputs/kinds/times";

const times = minutes("Time of each weighing [min].");

test("minutes takes 0 in the first row as the start", () => {
  expect(times.read([0, 30, 60], "times")).toEqual([0, 30, 60]);
});

test("minutes takes 0 and blanks after the last time as times not yet entered", () => {
  expect(times.read([0, 30, 0, BLANK], "times")).toEqual([0, 30]);
});

test("minutes refuses a 0 between later times as a gap, with its row", () => {
  expect(() => times.read([0, 0, 60], "times")).toThrow("times: row 2 is blank. Fill the gap or remove the row.");
});
