import fc from "fast-check";
import { jStat } from "jstat";
import { propagated } from "../../confidence/propagated";
import { column } from "../call";
import { between, grams } from "./draws";
import { figureBy, law, numberBy, type Law } from "./Law";

const results = fc.array(
  fc.integer({ min: 1, max: 100_000 }).map((hundredths) => hundredths / 100),
  { minLength: 3, maxLength: 12 },
);
const unequal = results.filter((values) => Math.max(...values) - Math.min(...values) > 0.05);
const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
const mean = (values: readonly number[]): number => sum(values) / values.length;
const deviation = (values: readonly number[]): number => Math.sqrt(sum(values.map((value) => (value - mean(values)) ** 2)) / (values.length - 1));

export const confidence: readonly Law[] = [
  law("READING.U")("adds variances: s^2 of repeatability, and d^2 / 12 of rounding and a^2 / 3 of linearity, both twice when tared", (call) => {
    fc.assert(
      fc.property(between(0.0001, 0.1), between(0.0001, 0.1), between(0.0001, 0.1), fc.boolean(), (step, repeatability, linearity, tared) => {
        const times = tared ? 2 : 1;
        const variance = times * (step ** 2 / 12 + linearity ** 2 / 3) + repeatability ** 2;
        expect(numberBy(call)("READING.U", step, repeatability, linearity, tared) ** 2 / variance).toBeCloseTo(1, 12);
      }),
    );
  }),

  law("LOSSFRACTION.U")("equals the propagation with numerical derivatives (GUM, equation 10)", (call) => {
    fc.assert(
      fc.property(grams(1000, 60_000), grams(1000, 40_000), between(0.05, 0.95), between(0.0001, 0.01), (vessel, sample, loss, u) => {
        const [before, after] = [vessel + sample, vessel + sample * (1 - loss)];
        const numerical = propagated(
          (t = 0, b = 0, a = 0) => (b - a) / (b - t),
          [
            [vessel, u],
            [before, u],
            [after, u],
          ],
        );
        expect(numberBy(call)("LOSSFRACTION.U", vessel, before, after, u) / numerical).toBeCloseTo(1, 5);
      }),
    );
  }),

  law("SAMPLE.MINIMUM", "LOSSFRACTION.U")("a sample of that size has the wanted uncertainty", (call) => {
    fc.assert(
      fc.property(between(0.0001, 0.01), between(0.002, 0.05), between(0.05, 0.9), fc.constantFrom(1, 2, 3), (u, wanted, loss, k) => {
        const sample = numberBy(call)("SAMPLE.MINIMUM", u, wanted, loss, k);
        fc.pre(u < sample / 10);
        const reached = k * numberBy(call)("LOSSFRACTION.U", 25, 25 + sample, 25 + sample * (1 - loss), u);
        expect(reached / wanted).toBeCloseTo(1, 6);
      }),
    );
  }),

  law("CHANGE.SIGNIFICANT")("is a loss or a gain beyond sqrt(12 + the larger of 12 and 2 k^2) u, whichever way round", (call) => {
    fc.assert(
      fc.property(grams(10_000, 50_000), between(-8, 8), between(0.001, 0.01), fc.constantFrom(1, 2, 3), (before, steps, u, k) => {
        const most = Math.hypot(Math.sqrt(12), Math.max(Math.SQRT2 * k, Math.sqrt(12)));
        fc.pre(Math.abs(Math.abs(steps) - most) > 1e-5);
        const after = before + steps * u;
        const beyond = Math.abs(steps) > most;
        const [word, turned] = beyond ? (steps > 0 ? ["gain", "loss"] : ["loss", "gain"]) : ["not significant", "not significant"];
        expect([call("CHANGE.SIGNIFICANT", before, after, u, k), call("CHANGE.SIGNIFICANT", after, before, u, k)]).toEqual([word, turned]);
      }),
    );
  }),

  law("CHANGE.SIGNIFICANT")("with the display step given, is one beyond k sqrt(2) s and that step", (call) => {
    fc.assert(
      fc.property(grams(10_000, 50_000), between(-20, 20), between(1.5, 4), fc.constantFrom(2, 3), (before, steps, scatter, k) => {
        const step = 0.001;
        const most = k * Math.SQRT2 * scatter + 1;
        fc.pre(Math.abs(Math.abs(steps) - most) > 1e-5);
        const [after, u] = [before + steps * step, step * Math.hypot(scatter, Math.sqrt(1 / 12))];
        const word = Math.abs(steps) <= most ? "not significant" : steps > 0 ? "gain" : "loss";
        expect(call("CHANGE.SIGNIFICANT", before, after, u, k, step)).toBe(word);
      }),
    );
  }),

  law("REPLICATES")("gives mean, median, s and range of the values, 2.8 s, and the studentized range of jStat", (call) => {
    fc.assert(
      fc.property(unequal, between(0.1, 100), (values, repeatability) => {
        const figure = (label: string): number => figureBy(call)(label, 1, "REPLICATES", column(values), repeatability);
        const sorted = [...values].sort((a, b) => a - b);
        const middle = sorted.slice(Math.floor((values.length - 1) / 2), Math.floor(values.length / 2) + 1);
        expect(figure("Mean")).toBeCloseTo(mean(values), 9);
        expect(figure("Median")).toBeCloseTo(mean(middle), 9);
        expect(figure("Standard deviation") / deviation(values)).toBeCloseTo(1, 9);
        expect(figure("Relative standard deviation") / (deviation(values) / mean(values))).toBeCloseTo(1, 9);
        expect(figure("Repeatability limit") / (2.8 * repeatability)).toBeCloseTo(1, 9);
        expect(figure("Range")).toBeCloseTo((sorted.at(-1) as number) - (sorted[0] as number), 9);
        // jStat has no infinite degrees of freedom; its own digits end at about the fourth.
        const factor = jStat.tukey.inv(0.95, values.length, 1e6);
        expect(Math.abs(figure("Critical range") / (factor * repeatability) - 1)).toBeLessThan(1e-3);
      }),
      { numRuns: 30 },
    );
  }),

  law("GRUBBS")("G and its critical value follow from the moments and jStat's Student t", (call) => {
    fc.assert(
      fc.property(unequal, fc.constantFrom(0.01, 0.05, 0.1), fc.constantFrom("two", "largest", "smallest"), (values, alpha, sides) => {
        const n = values.length;
        const t = jStat.studentt.inv(1 - alpha / (sides === "two" ? 2 * n : n), n - 2);
        const critical = ((n - 1) / Math.sqrt(n)) * Math.sqrt(t ** 2 / (n - 2 + t ** 2));
        const up = Math.max(...values) - mean(values);
        const down = mean(values) - Math.min(...values);
        const furthest = sides === "two" ? Math.max(up, down) : sides === "largest" ? up : down;
        const figure = (label: string): number => figureBy(call)(label, 1, "GRUBBS", column(values), alpha, sides);
        expect(figure("G = ")).toBeCloseTo(furthest / deviation(values), 9);
        expect(figure("Critical value")).toBeCloseTo(critical, 6);
      }),
    );
  }),

  // Of three normal values r10 has the density 3 sqrt(3) / (2 pi (1 - r + r^2)), so its quantiles are tangents.
  law("DIXON")("Q is gap over range, and for three values its critical value is (1 + sqrt(3) tan(30 deg - 60 deg alpha)) / 2", (call) => {
    fc.assert(
      fc.property(unequal, fc.constantFrom(0.01, 0.05, 0.1), fc.constantFrom("two", "largest", "smallest"), (values, alpha, sides) => {
        const three = values.slice(0, 3);
        fc.pre(Math.max(...three) - Math.min(...three) > 0.05);
        const sorted = [...three].sort((a, b) => a - b) as [number, number, number];
        const [down, up] = [sorted[1] - sorted[0], sorted[2] - sorted[1]];
        const gap = sides === "two" ? Math.max(up, down) : sides === "largest" ? up : down;
        const tail = sides === "two" ? alpha / 2 : alpha;
        const figure = (label: string): number => figureBy(call)(label, 1, "DIXON", column(three), alpha, sides);
        expect(figure("Q = ")).toBeCloseTo(gap / (sorted[2] - sorted[0]), 9);
        expect(figure("Critical value")).toBeCloseTo((1 + Math.sqrt(3) * Math.tan(Math.PI / 6 - (Math.PI * tail) / 3)) / 2, 6);
      }),
    );
  }),
];
