import { showsDate } from "../../../src/workbench/xlsx/reading/numberFormats";

test.each([
  ["yyyy-mm-dd", true],
  ["mm:ss", false],
  ["[h]:mm", false],
  ["[mm]:ss", false],
  ["[s]", false],
  ["h:mm AM/PM", false],
  ["mmm", true],
  ["m", true],
  ["General", false],
  ['0.00 "days"', false],
  ["0.00 \\d", false],
  ["_d0*d", false],
  ["[Red]0.0", false],
  ['d "days', true],
  ['0 "days', false],
  ["0 [Red", false],
])("showsDate(%p) is %p", (format, shows) => {
  expect(showsDate(format)).toBe(shows);
});

test("a format of open brackets and quotes is decided at once", () => {
  const began = performance.now();
  expect(showsDate('["'.repeat(500_000))).toBe(false);
  expect(performance.now() - began).toBeLessThan(2000);
});
