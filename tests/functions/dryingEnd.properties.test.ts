import fc from "fast-check";
import { CellProblem, INTERNAL_ERROR, type Answer } from "../../src/cells/CellProblem";
import { answerOf, column, tableOf } from "./call";

const end = (times: readonly number[], weights: readonly number[], ...rest: unknown[]): Answer[][] =>
  tableOf("DRYING.END", column(times), column(weights), ...rest);
const value = (table: Answer[][], row: number): number => table[row]?.[1] as number;
const [FINAL, STANDARD, EXPANDED, WATER, , RATE, RATE_ERROR, HALVING] = [0, 1, 2, 3, 4, 5, 6, 7];

/** A falling-rate run with a few milligrams of scatter, at uneven intervals, that any sample might show. */
const run = fc
  .record({
    gaps: fc.array(fc.integer({ min: 20, max: 50 }), { minLength: 6, maxLength: 14 }),
    rate: fc.double({ min: 0.008, max: 0.02, noNaN: true }),
    scatter: fc.array(fc.integer({ min: -3, max: 3 }), { minLength: 15, maxLength: 15 }),
  })
  .map(({ gaps, rate, scatter }) => {
    const times = gaps.reduce((all, gap) => [...all, (all.at(-1) as number) + gap], [0]);
    const weights = times.map((t, i) => Math.round(1000 * (10 + 5 * Math.exp(-rate * t)) + (scatter[i] as number)) / 1000);
    return { times, weights };
  });
const READABILITY = 0.004;

test("DRYING.END moves by as much as every weighing is moved, and nothing else of the curve changes", () => {
  fc.assert(
    fc.property(run, fc.integer({ min: -5, max: 30 }), ({ times, weights }, shift) => {
      const before = end(times, weights, null, READABILITY);
      const after = end(
        times,
        weights.map((grams) => Number((grams + shift).toFixed(3))),
        null,
        READABILITY,
      );
      expect(value(after, FINAL as number)).toBeCloseTo(value(before, FINAL as number) + shift, 6);
      for (const row of [STANDARD, EXPANDED, WATER, RATE]) expect(value(after, row as number)).toBeCloseTo(value(before, row as number), 6);
    }),
    { numRuns: 50 },
  );
});

test("DRYING.END reads a vessel in every weighing as the same shift", () => {
  fc.assert(
    fc.property(run, ({ times, weights }) => {
      const loaded = weights.map((grams) => Number((grams + 25).toFixed(3)));
      expect(end(times, loaded, 25, READABILITY)).toEqual(end(times, weights, "tared", READABILITY));
    }),
    { numRuns: 50 },
  );
});

test("DRYING.END scales every mass with the weighings and leaves the rate", () => {
  fc.assert(
    fc.property(run, fc.constantFrom(0.1, 2, 10), ({ times, weights }, scale) => {
      const before = end(times, weights, null, READABILITY);
      const after = end(
        times,
        weights.map((grams) => grams * scale),
        null,
        READABILITY * scale,
      );
      for (const row of [FINAL, STANDARD, EXPANDED, WATER])
        expect(value(after, row as number) / value(before, row as number) / scale).toBeCloseTo(1, 5);
      expect(value(after, RATE as number) / value(before, RATE as number)).toBeCloseTo(1, 5);
    }),
    { numRuns: 50 },
  );
});

test("DRYING.END in a time unit half as long has half the rate, the same end and twice the halving time", () => {
  fc.assert(
    fc.property(run, ({ times, weights }) => {
      const before = end(times, weights, null, READABILITY);
      const after = end(
        times.map((minutes) => 2 * minutes),
        weights,
        null,
        READABILITY,
      );
      for (const row of [FINAL, STANDARD, EXPANDED, WATER]) expect(value(after, row as number)).toBeCloseTo(value(before, row as number), 7);
      for (const row of [RATE, RATE_ERROR]) expect((2 * value(after, row as number)) / value(before, row as number)).toBeCloseTo(1, 6);
      expect(value(after, HALVING as number) / value(before, HALVING as number)).toBeCloseTo(2, 6);
    }),
    { numRuns: 50 },
  );
});

test("DRYING.END does not mind when the clock started", () => {
  fc.assert(
    fc.property(run, fc.integer({ min: 1, max: 5000 }), ({ times, weights }, later) => {
      const shifted = end(
        times.map((minutes) => minutes + later),
        weights,
        null,
        READABILITY,
      );
      expect(value(shifted, FINAL as number)).toBeCloseTo(value(end(times, weights, null, READABILITY), FINAL as number), 7);
    }),
    { numRuns: 50 },
  );
});

test("DRYING.END takes blanks at the end as weighings not yet made", () => {
  fc.assert(
    fc.property(run, fc.constantFrom<unknown>(0, null, ""), ({ times, weights }, blank) => {
      const planned = answerOf("DRYING.END", column([...times, 2000, 2100]), column([...weights, blank, blank]), null, READABILITY);
      expect(planned).toEqual(end(times, weights, null, READABILITY));
    }),
    { numRuns: 50 },
  );
});

test("DRYING.END refuses a run whose weighings are given in another order", () => {
  fc.assert(
    fc.property(run, fc.integer({ min: 1, max: 4 }), ({ times, weights }, at) => {
      const swap = (values: readonly number[]): number[] => values.map((one, i) => values[i === at ? at + 1 : i === at + 1 ? at : i] ?? one);
      const swapped = answerOf("DRYING.END", column(swap(times)), column(swap(weights)), null, READABILITY);
      expect(swapped instanceof CellProblem ? swapped.message : swapped).toBe(
        `times: row ${at + 2} holds ${times[at]} min, not later than row ${at + 1}, ${times[at + 1]} min. Give rising minutes.`,
      );
    }),
    { numRuns: 50 },
  );
});

/** Runs as sheets hold them: near a drying curve, with steps, gains, blanks, words and wild values mixed in. */
const cell = fc.oneof(
  { weight: 12, arbitrary: fc.integer({ min: 8000, max: 12_000 }).map((milligrams) => milligrams / 1000) },
  { weight: 2, arbitrary: fc.double({ min: 1e-12, max: 1e12, noNaN: true }) },
  { weight: 1, arbitrary: fc.constantFrom<unknown>(0, null, "", "n/a", true, 1e300, 5e-324, NaN, { type: "Error", basicValue: "#N/A" }) },
);
const settings: fc.Arbitrary<unknown> = fc.constantFrom<unknown>(
  null,
  undefined,
  "tared",
  0.001,
  0.1,
  1e-9,
  2,
  7.5,
  "of last",
  "absolute",
  "per hour",
  "readability",
  "of total loss",
);

const model = fc.constantFrom("Newton", "Page", "modified Page", "Henderson-Pabis", "logarithmic", "two-term", "Lewis");

test.each<readonly [string, fc.Arbitrary<unknown[]>]>([
  ["DRYING.END", fc.array(settings, { minLength: 5, maxLength: 5 })],
  ["DRYING.FIT", fc.tuple(model, settings, settings)],
])("%s answers any run with finite numbers and words, or a problem of its own", (name, rest) => {
  const sorted = fc
    .array(cell, { minLength: 4, maxLength: 12 })
    .chain((cells) => fc.boolean().map((falling) => (falling ? [...cells].sort((a, b) => Number(b) - Number(a) || 0) : cells)));
  fc.assert(
    fc.property(sorted, rest, fc.integer({ min: 1, max: 60 }), (cells, more, gap) => {
      const answer = answerOf(name, column(cells.map((_, i) => i * gap)), column(cells), ...more);
      for (const one of [answer].flat(2)) {
        expect(one instanceof CellProblem ? one.message : "").not.toBe(INTERNAL_ERROR);
        expect(typeof one === "number" ? Number.isFinite(one) : typeof one === "string" || one instanceof CellProblem).toBe(true);
      }
    }),
    { numRuns: 2000 },
  );
});
