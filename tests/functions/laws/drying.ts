import fc from "fast-check";
import { levenbergMarquardt } from "ml-levenberg-marquardt";
import { asTable, column } from "../call";
import { between, grams, milligrams } from "./draws";
import { figureBy, law, numberBy, type Law } from "./Law";

const weighed = fc.record({ vessel: grams(1, 60_000), dry: grams(100, 40_000), water: grams(1, 40_000) });

/** A run that dries at first and then wanders by a few milligrams. */
const run = fc
  .record({
    losses: fc.array(fc.integer({ min: 10, max: 900 }), { minLength: 1, maxLength: 6 }),
    wander: fc.array(fc.integer({ min: -3, max: 3 }), { maxLength: 6 }),
  })
  .map(({ losses, wander }) => {
    let left = 10_000;
    return [left, ...[...losses, ...wander].map((loss) => (left -= loss))].map((milligram) => milligram / 1000);
  });

/** Exact falling-rate weighings to a microgram, with what they were made from. */
const exact = fc
  .record({ final: between(5, 20), water: between(2, 8), rate: between(0.01, 0.03), gap: fc.integer({ min: 15, max: 40 }) })
  .map(({ final, water, rate, gap }) => {
    const times = Array.from({ length: 8 }, (_, index) => index * gap);
    return { final, water, rate, times, weights: times.map((t) => Number((final + water * Math.exp(-rate * t)).toFixed(6))) };
  });

export const drying: readonly Law[] = [
  law(
    "MOISTURE.WET",
    "MOISTURE.DRY",
    "MOISTURE.CONVERT",
  )("the two moistures of one pair of weighings convert into each other", (call) => {
    const number = numberBy(call);
    fc.assert(
      fc.property(weighed, ({ vessel, dry, water }) => {
        const pair = [vessel, milligrams(vessel + dry + water), milligrams(vessel + dry)];
        const [wet, onDry] = [number("MOISTURE.WET", ...pair), number("MOISTURE.DRY", ...pair)];
        expect(wet).toBeCloseTo(water / (dry + water), 9);
        expect(onDry / (water / dry)).toBeCloseTo(1, 6);
        // Above 400 % the dry basis is refused as a percentage typed for a fraction.
        fc.pre(onDry <= 4);
        expect(number("MOISTURE.CONVERT", wet, "wet", "dry") / onDry).toBeCloseTo(1, 6);
        expect(number("MOISTURE.CONVERT", onDry, "dry", "wet")).toBeCloseTo(wet, 9);
      }),
    );
  }),

  law("CONSTANTWEIGHT", "CONSTANTWEIGHT.STEPS")(
    "is the weighing where the last unbroken run of steady verdicts begins, 0 if there is none",
    (call) => {
      fc.assert(
        fc.property(run, (weights) => {
          const steps = asTable(call("CONSTANTWEIGHT.STEPS", column(weights), 0.001, "of last"), "steps").slice(1);
          const firstOfLastRun = steps.length - [...steps].reverse().findIndex((row) => row[4] !== "steady") + 1;
          const reached = steps.at(-1)?.[4] === "steady" ? firstOfLastRun : 0;
          expect(numberBy(call)("CONSTANTWEIGHT", column(weights), 0.001, "of last")).toBe(reached);
          steps.forEach(([weighing, sample, change, limit], index) => {
            expect(weighing).toBe(index + 1);
            expect(sample).toBeCloseTo(weights[index] as number, 9);
            if (index === 0) return;
            expect(change).toBeCloseTo((weights[index] as number) - (weights[index - 1] as number), 9);
            expect(limit).toBeCloseTo(0.001 * (weights[index] as number), 9);
          });
        }),
        { numRuns: 300 },
      );
    },
  ),

  law("DRYING.END")("finds the end, the rate and the water left of an exact falling-rate curve", (call) => {
    fc.assert(
      fc.property(exact, ({ final, water, rate, times, weights }) => {
        const figure = (label: string): number => figureBy(call)(label, 1, "DRYING.END", column(times), column(weights), null, 0.0001);
        expect(figure("Predicted final sample")).toBeCloseTo(final, 4);
        expect(figure("Rate constant") / rate).toBeCloseTo(1, 3);
        expect(figure("Water still in the sample") / (water * Math.exp(-rate * (times.at(-1) as number)))).toBeCloseTo(1, 2);
        expect(figure("Time in which the water halves") * rate).toBeCloseTo(Math.LN2, 3);
      }),
      { numRuns: 50 },
    );
  }),

  law("DRYING.END", "DRYING.FIT")("and Newton's law by DRYING.FIT and by ml-levenberg-marquardt end where it does", (call) => {
    // Made up: two rates, so that no single one fits exactly.
    const times = [0, 20, 40, 60, 90, 120, 150, 180];
    const weights = times.map((t) => Number((8 + 4 * (0.9 * Math.exp(-0.02 * t) + 0.1 * Math.exp(-0.012 * t))).toFixed(3)));
    const fitted = levenbergMarquardt(
      { x: times, y: weights },
      ([final = 0, water = 0, rate = 0]) =>
        (t) =>
          final + water * Math.exp(-rate * t),
      { initialValues: [7.5, 4.5, 0.015], gradientDifference: 1e-6, maxIterations: 500, errorTolerance: 1e-14, damping: 0.001 },
    );
    const [final = NaN, , rate = NaN] = fitted.parameterValues;
    expect(figureBy(call)("Predicted final sample", 1, "DRYING.END", column(times), column(weights), null, 0.001)).toBeCloseTo(final, 4);
    expect(figureBy(call)("Rate constant", 1, "DRYING.END", column(times), column(weights), null, 0.001) / rate).toBeCloseTo(1, 3);
    // Its first sample is taken as exact, so it is near by and not the same.
    expect(Math.abs(figureBy(call)("Final sample", 1, "DRYING.FIT", column(times), column(weights), "Newton") - final)).toBeLessThan(0.01);
  }),

  law("DRYING.FIT")("finds the parameters of an exact curve of Newton's and of Page's law once the dry sample is given", (call) => {
    fc.assert(
      fc.property(between(0.005, 0.03), between(0.7, 1.3), (rate, exponent) => {
        const times = Array.from({ length: 10 }, (_, index) => 20 * index);
        const by = (ratio: (t: number) => number): number[] => times.map((t) => Number((8 + 4 * ratio(t)).toFixed(9)));
        const fit = (label: string, weights: number[], model: string): number =>
          figureBy(call)(label, 1, "DRYING.FIT", column(times), column(weights), model, null, 8);
        expect(
          fit(
            "k",
            by((t) => Math.exp(-rate * t)),
            "Newton",
          ) / rate,
        ).toBeCloseTo(1, 6);
        const page = by((t) => Math.exp(-((rate * t) ** exponent)));
        expect(fit("k", page, "modified Page") / rate).toBeCloseTo(1, 5);
        expect(fit("n", page, "modified Page")).toBeCloseTo(exponent, 5);
        expect(fit("k", page, "Page") / rate ** exponent).toBeCloseTo(1, 5);
      }),
      { numRuns: 50 },
    );
  }),
];
