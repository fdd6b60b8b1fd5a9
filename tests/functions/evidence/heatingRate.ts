import fc from "fast-check";
import { jStat } from "jstat";
import { seededNormal } from "../../numerics/seededNormal";
import { calculated, published } from "../../published/Published";
import { column } from "../call";
import type { FunctionEvidence } from "../evidenceFiles";
import { between } from "../laws/draws";
import { figureBy, law } from "../laws/Law";

const KILN = "=RETORT.HEATINGRATE({0; 10; 20; 30; 40; 50}, {20; 50.2; 80.1; 109.8; 140.3; 169.9}, 3)";
const RUNS = 400;

export const evidence: FunctionEvidence = {
  name: "HEATINGRATE",
  answer: ["One quantity a row, with its value and unit", ""],
  published: [
    ...calculated("furnace.mjs", "normal equations of the least-squares line in sums of squares", [
      [KILN, "2.99857143", "slope of six readings", { at: [1, 1] }],
    ]),
    ...calculated("furnace.mjs", "s / sqrt of the sum of squares about the mean time", [
      [KILN, "0.0049487166", "standard error of the slope", { at: [2, 1] }],
    ]),
    ...published("worked by hand", "20, 20 and 20 degC at 0, 10 and 20 min: rounding to 1 degC, 1 / sqrt 12 = 0.288675, over sqrt 200 = 0.0204124", [
      ["=RETORT.HEATINGRATE({0; 10; 20}, {20; 20; 20})", "0.0204124", { at: [2, 1] }],
      ["=RETORT.HEATINGRATE({0; 1; 2}, {20; 23; 26}, 3)", "cannot tell", { at: [9, 1] }],
    ]),
    ...published(
      "worked by hand",
      "times 0 to 2, temperatures 0.5, 1.5, 3.5: slope 1.5, residuals 1/6, -1/3, 1/6, s = sqrt(1/6), u = s / sqrt 2 = 0.288675, t(1) = 12.7062",
      [
        ["=RETORT.HEATINGRATE({0; 1; 2}, {0.5; 1.5; 3.5})", "1.5", { at: [1, 1] }],
        ["=RETORT.HEATINGRATE({0; 1; 2}, {0.5; 1.5; 3.5})", "0.288675", { at: [2, 1] }],
        ["=RETORT.HEATINGRATE({0; 1; 2}, {0.5; 1.5; 3.5})", "3.66797", { at: [3, 1] }],
        ["=RETORT.HEATINGRATE({0; 10; 20; 30; 40; 50}, {600; 500; 400; 300; 200; 100}, 10)", "within 5 % of the set rate", { at: [9, 1] }],
        ["=RETORT.HEATINGRATE({0; 10; 20; 30}, {20; 60; 100; 140}, 3)", "faster than the set rate by more than 5 %", { at: [9, 1] }],
        ["=RETORT.HEATINGRATE({0; 10; 20; 30}, {20; 40; 60; 80}, 3)", "slower than the set rate by more than 5 %", { at: [9, 1] }],
        ["=RETORT.HEATINGRATE({0; 10; 20; 30}, {20; 49; 81; 110}, 3)", "cannot tell", { at: [9, 1] }],
        ["=RETORT.HEATINGRATE({0; 10; 20; 30; 40; 50}, {20; 60; 95; 120; 140; 150}, 3)", "uneven", { at: [9, 1] }],
      ],
    ),
  ],
  laws: [
    law("HEATINGRATE")("is the slope of any straight run, and scales with the unit of temperature", (call) => {
      fc.assert(
        fc.property(between(0.2, 10), between(20, 100), fc.integer({ min: 6, max: 30 }), (rate, start, count) => {
          const times = Array.from({ length: count }, (_, index) => 7 * index);
          const kiln = times.map((time) => start + rate * time);
          const figure = (label: string, temperatures: readonly number[]): number =>
            figureBy(call)(label, 1, "HEATINGRATE", column(times), column(temperatures), rate);
          expect(figure("Rate of the first half", kiln)).toBeCloseTo(rate, 8);
          expect(figure("Deviation", kiln)).toBeCloseTo(0, 8);
          expect(
            figureBy(call)("Rate of the second", 1, "HEATINGRATE", column(times), column(kiln.map((celsius) => 32 + 1.8 * celsius))),
          ).toBeCloseTo(1.8 * rate, 7);
        }),
      );
    }),
    law("HEATINGRATE")("covers the true rate in 95 of 100 runs, with scatter drawn at random (Monte Carlo, seeded), and its t is jStat's", (call) => {
      const normal = seededNormal(20_280_611);
      const times = Array.from({ length: 8 }, (_, index) => 10 * index);
      let covered = 0;
      for (let run = 0; run < RUNS; run++) {
        const readings = column(times.map((time) => 20 + 3 * time + 2 * normal()));
        const figure = (label: string): number => figureBy(call)(label, 1, "HEATINGRATE", column(times), readings, 3);
        expect(figure("its 95 %") / figure("its standard")).toBeCloseTo(jStat.studentt.inv(0.975, 6), 6);
        if (Math.abs(3 * figure("Deviation from")) <= figure("its 95 %")) covered++;
      }
      // 380 of 400 are expected, with a standard deviation of 4.4.
      expect(Math.abs(covered - 0.95 * RUNS)).toBeLessThan(14);
    }),
  ],
  refusals: [
    ["=RETORT.HEATINGRATE(, {20; 50; 80})", "#VALUE! times: nothing here (blank or 0). Give minutes."],
    ['=RETORT.HEATINGRATE({0; "ten"; 20}, {20; 50; 80})', '#VALUE! times: row 2 holds "ten", not a time in minutes. Clear the cell or give minutes.'],
    [
      "=RETORT.HEATINGRATE({0.4; 0.41; 0.42}, {20; 50; 80})",
      "#VALUE! times: the last is 0.42 min, and they look like clock times or dates. Give minutes since the start: (time - first time) x 1440.",
      "clock times or dates for minutes",
    ],
    [
      "=RETORT.HEATINGRATE({46000.4; 46000.41; 46000.42}, {20; 50; 80})",
      "#VALUE! times: the last is 46000.42 min, and they look like clock times or dates. Give minutes since the start: (time - first time) x 1440.",
    ],
    [
      "=RETORT.HEATINGRATE({20; 10; 1}, {80; 50; 20})",
      "#VALUE! times: row 2 holds 10 min, before the 20 min above it. Give minutes since the start, in order; past midnight add 1440.",
      "rows out of order",
    ],
    ["=RETORT.HEATINGRATE({0; 10; 10}, {80; 50; 20})", "#VALUE! times: row 3 holds 10 min again. Remove one of the two rows."],
    ["=RETORT.HEATINGRATE({0; 10; 20}, {20; 50})", "#VALUE! temperatures: 2 readings beside 3 times. Give one temperature for each time."],
    ["=RETORT.HEATINGRATE({0; 10}, {20; 50})", "#N/A times: 2 readings cannot show how sure a rate is; it takes 3. Read more often."],
    [
      "=RETORT.HEATINGRATE({0; 10; 20}, {20; 50; 80}, 3, 60, 100)",
      "#N/A from: 1 reading between from and to; it takes 3. Widen the window or read more often.",
    ],
    ["=RETORT.HEATINGRATE({0; 10; 20}, {20; 50; 80}, 3, 100, 60)", "#VALUE! to: 60 is not above from, 100. Give the lower temperature as from."],
  ],
};
