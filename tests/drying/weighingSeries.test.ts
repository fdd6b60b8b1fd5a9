import { checkTimes, netSamples } from "../../src/drying/weighingSeries";

test("netSamples clears the rounding of binary subtraction", () => {
  expect(netSamples([35, 33.893], 25)).toEqual([10, 8.893]);
});

test("netSamples lets a sample regain up to a tenth of its first weighing", () => {
  expect(netSamples([35, 36], 25)).toEqual([10, 11]);
  expect(() => netSamples([35, 36.001], 25)).toThrow(
    "weights: row 2 holds 36.001 g, far above row 1, 35 g. Check for a wrong cell, a slipped decimal or another vessel.",
  );
});

test("checkTimes takes a run that began two weeks before its first weighing, but not a spreadsheet date", () => {
  expect(() => checkTimes([10, 9], [20160, 20190])).not.toThrow();
  expect(() => checkTimes([10, 9], [46000, 46001])).toThrow(
    "times: row 1 holds 46000 min, which looks like a date. Give minutes since the start: (time - start) * 1440.",
  );
});

test("checkTimes takes weighings half a minute apart once the run has lasted a minute", () => {
  expect(() => checkTimes([10, 9, 8], [0, 0.5, 1])).not.toThrow();
});

test("checkTimes takes any time for a first weighing alone", () => {
  expect(() => checkTimes([10], [0.4])).not.toThrow();
});
