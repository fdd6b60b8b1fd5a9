import fc from "fast-check";
import { published } from "../../published/Published";
import { column } from "../call";
import type { FunctionEvidence } from "../evidenceFiles";
import { between } from "../laws/draws";
import { law, numberBy } from "../laws/Law";

export const evidence: FunctionEvidence = {
  name: "SCHEDULE.TIME",
  answer: ["Time of the schedule", "min"],
  published: published("worked by hand", "85 / 5 + 120 + 495 / 3 + 60 = 17 + 120 + 165 + 60; 580 / 100 h = 348 min, and 60 more", [
    ['=RETORT.SCHEDULE.TIME({20; 105; 600}, {5; 3}, {120; 60}, "per minute")', "362"],
    ['=RETORT.SCHEDULE.TIME({20; 105; 600}, {0; 5; 3}, {0; 120; 60}, "per minute")', "362"],
    ['=RETORT.SCHEDULE.TIME({20; 600}, {100}, {60}, "per hour")', "408"],
    ['=RETORT.SCHEDULE.TIME({20; 600}, {100}, {60}, "per minute")', "65.8"],
    ['=RETORT.SCHEDULE.TIME({20; 600; 100}, {100; 50}, {60; 0}, "per hour")', "1008"],
    ['=RETORT.SCHEDULE.TIME({68; 1112}, {180}, {60}, "per hour")', "408"],
  ]),
  laws: [
    law("SCHEDULE.TIME")("is the same backwards, longer by each hold, sixty times longer per hour, and adds up over parts", (call) => {
      const time = numberBy(call);
      fc.assert(
        fc.property(
          between(20, 200),
          between(210, 600),
          between(610, 1200),
          between(1, 20),
          between(1, 20),
          between(1, 600),
          (low, mid, high, first, second, hold) => {
            const [up, rates, holds] = [column([low, mid, high]), column([first, second]), column([hold, 0])];
            const whole = time("SCHEDULE.TIME", up, rates, holds, "per minute");
            expect(whole).toBeCloseTo((mid - low) / first + (high - mid) / second + hold, 6);
            expect(time("SCHEDULE.TIME", column([high, mid, low]), column([second, first]), holds, "per minute")).toBeCloseTo(whole, 6);
            expect(time("SCHEDULE.TIME", up, rates, null, "per hour")).toBeCloseTo(60 * (whole - hold), 4);
            expect(time("SCHEDULE.TIME", up, column([null, first, second]), column([null, hold, null]), "per minute")).toBeCloseTo(whole, 6);
          },
        ),
      );
    }),
  ],
  refusals: [
    [
      "=RETORT.SCHEDULE.TIME({20; 600}, {100}, {60})",
      '#VALUE! rateUnit: nothing here (blank or 0). Type one of "per hour", "per minute".',
      "rate per hour or per minute",
    ],
    ['=RETORT.SCHEDULE.TIME({20; 600}, {100}, {60}, "fast")', '#VALUE! rateUnit: "fast" is not one of "per hour", "per minute".'],
    [
      '=RETORT.SCHEDULE.TIME({20; "hot"}, {100}, {60}, "per hour")',
      '#VALUE! temperatures: row 2 holds "hot", not a temperature in order. Clear the cell or give a temperature.',
    ],
    [
      '=RETORT.SCHEDULE.TIME({20}, {100}, {60}, "per hour")',
      "#VALUE! temperatures: one temperature is no step. Give the start first, then each temperature to be reached.",
    ],
    [
      '=RETORT.SCHEDULE.TIME({20; 600; 20}, {100}, {60}, "per hour")',
      "#VALUE! rates: no rate for the step from 600 to 20. Give one rate for each step.",
    ],
    [
      '=RETORT.SCHEDULE.TIME({20; 600}, {100; 50}, {60}, "per hour")',
      "#VALUE! rates: 2 cells filled for 1 step between temperatures. Give one for each step; the first temperature is the start.",
    ],
    [
      '=RETORT.SCHEDULE.TIME({20; 600}, {100}, {10; 20; 30}, "per hour")',
      "#VALUE! holds: 3 cells filled for 1 step between temperatures. Give one for each step; the first temperature is the start.",
    ],
    [
      '=RETORT.SCHEDULE.TIME({20; 600; 20}, {100; -50}, {60}, "per hour")',
      "#VALUE! rates: row 2 holds -50, below zero. Give a number above 0; the temperatures say whether it is up or down.",
    ],
    ['=RETORT.SCHEDULE.TIME({20; 600}, {100}, {-60}, "per hour")', "#VALUE! holds: row 1 holds -60 min, below zero. Give minutes, 0 for none."],
    [
      '=RETORT.SCHEDULE.TIME({20; 600}, {100}, {0.0416666}, "per hour")',
      "#VALUE! holds: row 1 holds 0.0416666 min, below 1 min and looks like a clock time. Give minutes, 0 for none.",
      "clock times or dates for minutes",
    ],
    ['=RETORT.SCHEDULE.TIME({20; 0; 600}, {100; 50}, {60}, "per hour")', "#VALUE! temperatures: row 2 is blank. Fill the gap or remove the row."],
    ['=RETORT.SCHEDULE.TIME({20; 600; 700}, {100; 0; 50}, {60}, "per hour")', "#VALUE! rates: row 2 is blank. Fill the gap or remove the row."],
  ],
};
