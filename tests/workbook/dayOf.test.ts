import { footDays } from "../../src/problems/workbook/printWords";
import { dayOf } from "../../src/workbook/dayOf";
import { withDay } from "../../src/workbook/SheetPlan";

test("a day is written in the order that no country reads otherwise", () => {
  expect(dayOf(new Date(2026, 10, 26))).toBe("2026-11-26");
  expect(dayOf(new Date(2027, 0, 3, 23, 59))).toBe("2027-01-03");
});

test("the foot of a page says what its day is of, and leaves no day to the program that prints", () => {
  const day = "2026-11-26";
  expect([footDays.printed(day), footDays.saved(day), footDays.setUp(day)]).toEqual([
    "printed 2026-11-26",
    "file saved 2026-11-26",
    "set up 2026-11-26",
  ]);
  expect(withDay("&10&A, &D, page &P", footDays.printed(day))).toBe("&10&A, printed 2026-11-26, page &P");
});
