// A balance check worked out by hand, and the sheet's own formulas worked out on plain values. The readings are invented.
import { seededNormal } from "../../numerics/seededNormal";
import { seededUniform } from "../../numerics/seededUniform";
import { cell } from "../../../src/runsheet/expressions/Expression";
import type { Performance } from "../../../src/runsheet/sheet/balanceRows";
import { plainBalance, type PlainBalance } from "./plainBalance";

const found = (run: PlainBalance, name: Performance) => run.value(run.sheet.finding(name).value);

/** A 200 g weight known to ± 0.01 g, ten rounds in all: mean 200.008 g. */
const READINGS = [200.01, 200, 200.02, 200.01, 200, 200.01, 200, 200.01, 200.01, 200.01];

function orchard(readings: readonly number[] = READINGS): PlainBalance {
  const run = plainBalance();
  run.type(run.sheet.setup.value, 200);
  run.type(run.sheet.setup.known, 0.01);
  run.rounds(readings, [0, 0, 0.01]);
  return run;
}

describe("A balance check, worked out by hand", () => {
  const run = orchard();

  it("gives how far the balance is off its check weight, with its ± at 95 %, and the scatter", () => {
    // deviations from 200.008: six of 0.002, three of -0.008, one of 0.012: sum of squares 24 + 192 + 144 = 360 e-6, / 9 = 40 e-6
    expect(found(run, "bias")).toBeCloseTo(0.008, 9);
    expect(found(run, "scatter")).toBeCloseTo(Math.sqrt(40e-6), 9);
    // t(9) 2.262157 (any table): t s / sqrt(10) = 2.262157 * 0.00632456 / 3.162278 = 0.00452431; rounding 2 * 0.01 sqrt(2 / 12) = 0.00816497;
    // weight 0.01: sqrt(20.4694e-6 + 66.6667e-6 + 100e-6) = 0.0136798
    expect(run.value(run.sheet.finding("bias").plusMinus)).toBeCloseTo(0.0136798, 6);
    expect(run.value(run.sheet.finding("bias").says)).toBe("within its ±");
  });

  it("gives the largest corner against the centre before and after, and what run sheets may take as repeatability", () => {
    run.corners({ centre: 70, frontLeft: 70.01, frontRight: 70, backLeft: 69.97, backRight: 70.01, centreAgain: 70.01 });
    // centre (70.00 + 70.01) / 2 = 70.005; back left 69.97 - 70.005
    expect(found(run, "corner")).toBeCloseTo(-0.035, 9);
    // sqrt(40e-6 + 0.035^2 / 12) = sqrt(40e-6 + 102.083e-6) = 0.0119199
    expect(found(run, "forRuns")).toBeCloseTo(0.0119199, 6);
    expect(found(run, "zero")).toBe(0.01);
  });

  it("begins with the verdict, and tells the figure for run sheets", () => {
    const fine = orchard();
    expect(fine.head()).toEqual([
      "► Full: add a round (task pane), or insert a copy of row 22 below it",
      "In order: the balance shows 0.008 g more than the weight's value, ± 0.014 g (95 %), mean of 10 rounds.",
      "✓ Checks: 8 in order, 1 with nothing to look at yet.",
      "The ± covers the scatter of the rounds, rounding and the weight's own ±: for this load on these days, not for others.",
      "For run sheets on this balance: Repeatability 0.006 g (scatter and corners), balance step 0.01 g: type both in their settings.",
    ]);
    fine.type(fine.sheet.setup.known, null);
    expect(fine.head()[3]).toBe(
      "The ± covers the scatter of the rounds and rounding; the weight is taken as exact. For this load on these days, not for others.",
    );
  });

  it("judges a round by those before it, from the sixth on, by what is to be expected of one more and no less than one and two steps", () => {
    // of the first five: 200.01, 200, 200.02, 200.01, 200: mean 200.008, s 0.0083666; Student t for 4 degrees of freedom 2.776445
    // (tables, 95 %) and 6.618269 (1 in 370), times sqrt(1 + 1/5) = 1.0954451: 3.0414432 s = 0.0254466, 7.2499749 s = 0.0606577
    const sixth = (reading: number) => {
      const begun = orchard([...READINGS.slice(0, 5), reading]);
      const { apart, expected, says } = begun.sheet.round(begun.sheet.rows.rounds.first + 5);
      return [begun.value(apart), begun.value(expected), begun.value(says)];
    };
    // More than 2 s = 0.0167 g off is nothing to look at: of six rounds that scatter alike one in seven is.
    expect(sixth(200.03)).toEqual([expect.closeTo(0.022, 9), expect.closeTo(0.0254466, 6), "in order"]);
    expect(sixth(199.98)).toEqual([expect.closeTo(-0.028, 9), expect.closeTo(0.0254466, 6), "look again: 1 in 20 is"]);
    expect(sixth(199.95)).toEqual([expect.closeTo(-0.058, 9), expect.closeTo(0.0254466, 6), "look again: 1 in 20 is"]);
    expect(sixth(199.94)).toEqual([expect.closeTo(-0.068, 9), expect.closeTo(0.0254466, 6), "? look again: 1 in 370 is"]);
    const says = [0, 4].map((index) => run.value(run.sheet.round(run.sheet.rows.rounds.first + index).says));
    expect(says).toEqual(["begins the history", "begins the history"]);
    const still = (reading: number) => {
      const begun = orchard([200, 200, 200, 200, 200, reading]);
      return begun.value(begun.sheet.round(begun.sheet.rows.rounds.first + 5).says);
    };
    expect([200.01, 200.02, 200.03].map(still)).toEqual(["in order", "look again: 1 in 20 is", "? look again: 1 in 370 is"]);
  });

  it("looks again at one round in twenty where nothing is wrong, from the sixth round on", () => {
    const [RUNS, FIVE] = [400, 5];
    const normal = seededNormal(77);
    let [judged, beyond] = [0, 0];
    const run = plainBalance({ weighIns: 10, readability: 0.0001 });
    run.type(run.sheet.setup.value, 200);
    for (let done = 0; done < RUNS; done++) {
      run.rounds(Array.from({ length: 10 }, () => 200 + 0.01 * normal()));
      for (let index = FIVE; index < 10; index++) {
        judged += 1;
        if (String(run.value(run.sheet.round(run.sheet.rows.rounds.first + index).says)).includes("look again")) beyond += 1;
      }
    }
    // 2000 rounds, not quite independent within a history: 5 % by 0.7 %, three times that.
    expect(judged).toBe(RUNS * 5);
    expect(Math.abs(beyond / judged - 0.05)).toBeLessThan(0.02);
  });

  it("says where it stands from the first round on", () => {
    const heads = [0, 1, 2, 3, 5, 6].map((count) => orchard(READINGS.slice(0, count)).head()[1]);
    expect(heads).toEqual([
      "No answer yet: nothing has been weighed.",
      "One round weighed: no answer yet.",
      "Two rounds weighed: no answer yet, since two that read alike can hide their scatter.",
      // 200.01, 200, 200.02: s = 0.01; 4.302653 * 0.01 / sqrt(3) = 0.0248414; with 0.00816497 and 0.01 0.0279981
      expect.stringMatching(/^Begun: the balance shows 0\.010 g more than the weight's value, ± 0\.028 g .* Judged from round 6 on\.$/),
      expect.stringMatching(/^Begun: .* mean of 5 rounds\. Judged from round 6 on\.$/),
      expect.stringMatching(/^In order: .* mean of 6 rounds\.$/),
    ]);
    expect(orchard(READINGS.slice(0, 2)).head()[0]).toBe("► Next: round 3, on its day, row 15; corners once, row 25");
    expect(orchard([]).head()[4]).toBe("For run sheets on this balance a figure is told here from round 6 on, unless the answer above is marked.");
    const unvalued = plainBalance();
    unvalued.rounds([200.01, 200.01]);
    expect(unvalued.head()[1]).toBe("No answer yet: type what the check weight weighs, row 9.");
  });

  it("gives a ± that covers from three rounds on, and none before", () => {
    const alike = orchard([200.01, 200.01]);
    expect([alike.value(alike.sheet.finding("bias").plusMinus), alike.check("bias")[0]]).toEqual(["", "· not yet"]);
    const [normal, uniform] = [seededNormal(31), seededUniform(32)];
    const three = plainBalance({ weighIns: 3, readability: 0.01 });
    three.type(three.sheet.setup.value, 200);
    let covered = 0;
    // The scatter at which two rounds cover least, 1.5 display steps.
    for (let once = 0; once < 400; once++) {
      const truth = 0.01 * (uniform() - 0.5);
      three.rounds(Array.from({ length: 3 }, () => Math.round((200 + truth + 0.015 * normal()) * 100) / 100));
      const { value, plusMinus } = three.sheet.finding("bias");
      if (Math.abs(Number(three.value(value)) - truth) <= Number(three.value(plusMinus))) covered++;
    }
    expect(covered).toBeGreaterThanOrEqual(380);
  });

  it("draws the readings between mean - 2 s and mean + 2 s, and at the weight's value while nothing is weighed", () => {
    const lines = (of: PlainBalance) => of.sheet.working.limits.map(({ at, low, mean, high }) => [at, low, mean, high].map((one) => of.value(one)));
    const s = Math.sqrt(40e-6);
    expect(lines(run)).toEqual([1, 10].map((at) => [at, 200.008 - 2 * s, 200.008, 200.008 + 2 * s].map((one) => expect.closeTo(one, 9))));
    expect(lines(orchard([]))).toEqual([1, 10].map((at) => [at, 199.99, 200, 200.01].map((one) => expect.closeTo(one, 9))));
  });

  it("withholds what the rounds find where a reading is of another weight", () => {
    const other = orchard([200.01, 100.02]);
    expect(other.head()[1]).toBe("▲ Answer withheld: a reading cannot be of this weight. Put right what the next line names.");
    expect((["bias", "scatter", "forRuns"] as const).map((name) => found(other, name))).toEqual(["withheld", "withheld", "withheld"]);
    expect(other.value(cell(other.sheet.finding("bias").trust.row, 1))).toBe("▲ check 4");
  });
});
