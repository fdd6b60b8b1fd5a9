import { checkTimes } from "../../src/drying/weighingSeries";

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
