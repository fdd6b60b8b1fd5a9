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

// Day 36526 of a spreadsheet's calendar is 1 January 2000.
test("checkTimes takes a first time of 36525 min and refuses 36526 as a date", () => {
  expect(() => checkTimes([10, 9], [36525, 36600])).not.toThrow();
  expect(() => checkTimes([10, 9], [36526, 36600])).toThrow("times: row 1 holds 36526 min, which looks like a date");
});

test("checkTimes takes a run of one minute and refuses a shorter one as clock times", () => {
  expect(() => checkTimes([10, 9], [5, 6])).not.toThrow();
  expect(() => checkTimes([10, 9], [5, 5.99])).toThrow("times: the whole run lasts 0.99 min, which looks like clock times");
});

test("checkTimes wants each time later than the one before, equal ones refused", () => {
  expect(() => checkTimes([10, 9, 8], [0, 30, 30])).toThrow("times: row 3 holds 30 min, not later than row 2, 30 min. Give rising minutes.");
  expect(() => checkTimes([10, 9, 8], [0, 30])).toThrow("times: row 3 is blank, but weights holds 8 g there.");
});

test("netSamples takes a sample of two nanograms for a sample and one of half a nanogram for none", () => {
  expect(netSamples([25 + 2e-9], 25)).toEqual([2e-9]);
  expect(() => netSamples([25 + 5e-10], 25)).toThrow("weights: row 1 holds 25.0000000005 g, not more than vessel, 25 g.");
});

test("netSamples names the row that grew, though the first rows are in order", () => {
  expect(() => netSamples([10, 9, 11.1], 0)).toThrow("weights: row 3 holds 11.1 g, far above row 1, 10 g.");
});
