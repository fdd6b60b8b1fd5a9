// GRUBBS, DIXON and REPLICATES on results that a display has rounded: how often they call good results bad, and that a claim on the
// rounded ones always holds of the true ones too. The samples are made up, the noise is seeded.
import fc from "fast-check";
import type { Replicate } from "../../src/confidence/countedReplicates";
import { dixonAssessment, leastDixon, mostDixon } from "../../src/confidence/dixonAssessment";
import { grubbsAssessment } from "../../src/confidence/grubbsAssessment";
import { leastGrubbs, mostGrubbs } from "../../src/confidence/grubbsBounds";
import { outlierVerdict, type OutlierQuestion } from "../../src/confidence/outlierAssessment";
import { replicateStatistics, replicateVerdict } from "../../src/confidence/replicateStatistics";
import { sampleMoments } from "../../src/numerics/sampleMoments";
import { seededNormal } from "../numerics/seededNormal";
import { seededUniform } from "../numerics/seededUniform";

const rows = (values: readonly number[]): Replicate[] => values.map((value, index) => ({ row: index + 1, value }));
const ends = (values: readonly number[]): [number, number] => [Math.min(...values), Math.max(...values)];
const areEqual = (values: readonly number[]): boolean => new Set(values).size === 1;

const TESTS = { GRUBBS: grubbsAssessment, DIXON: dixonAssessment };
type Test = keyof typeof TESTS;

const COUNTS = [3, 4, 5, 8, 12, 30];
const RATIOS = [0, 0.1, 0.2, 0.3, 0.5, 0.7, 1, 2, 3];
const STEP = 0.2;
const RUNS = 120;

interface Sample {
  readonly true: readonly number[];
  readonly shown: readonly number[];
}

/** Samples of a quantity that stands anywhere within a step of the display. */
function samples(count: number, ratio: number): Sample[] {
  const [normal, uniform] = [seededNormal(count), seededUniform(1000 * ratio + count)];
  return Array.from({ length: RUNS }, () => {
    const centre = 10 + STEP * uniform();
    const values = Array.from({ length: count }, () => centre + ratio * STEP * normal());
    return { true: values, shown: values.map((value) => Math.round(value / STEP) * STEP) };
  });
}

/** Share of samples called bad: by the values as shown, and by the verdict. */
type Rates = readonly [asShown: number, now: number];

const lines = [`false verdicts in % by scatter / step of ${RATIOS.join(", ")}: as shown | now`];
afterAll(() => {
  process.stdout.write(`${lines.join("\n")}\n`);
});
const percents = (shares: readonly number[]): string => shares.map((share) => (100 * share).toFixed(0).padStart(3)).join("");
const tableLine = (said: string, table: readonly Rates[]): string =>
  `${said.padEnd(20)}${percents(table.map(([before]) => before))} |${percents(table.map(([, now]) => now))}`;

/** Five standard errors of a share that is at most alpha. */
const chance = (alpha: number): number => 5 * Math.sqrt((alpha * (1 - alpha)) / RUNS);

const ALPHA = 0.05;
const asked: readonly (readonly [said: string, question: OutlierQuestion])[] = [
  ["step not given", { alpha: ALPHA, sides: "two" }],
  ["step given", { alpha: ALPHA, sides: "two", readability: STEP }],
  ["step given, largest", { alpha: ALPHA, sides: "largest", readability: STEP }],
];

describe.each(Object.keys(TESTS) as Test[])("%s", (name) => {
  const assess = TESTS[name];
  const claims = (values: readonly number[], question: OutlierQuestion): boolean =>
    !areEqual(values) && outlierVerdict(assess(rows(values), question)).startsWith("outlier");

  test.each(COUNTS)("of %d rounded results calls none an outlier that is none among the true values, and so keeps its alpha", (count) => {
    const table: Rates[] = [];
    for (const ratio of RATIOS) {
      const drawn = samples(count, ratio).filter(({ shown }) => !areEqual(shown));
      const before = drawn.filter(({ shown }) => assess(rows(shown), { alpha: ALPHA, sides: "two" }).isOutlier).length / RUNS;
      const shares = asked.map(([, question]) => {
        const called = drawn.filter(({ shown }) => claims(shown, question));
        for (const sample of called) expect(assess(rows(sample.true), question).isOutlier).toBe(true);
        return called.length / RUNS;
      });
      table.push([before, Math.max(...shares)]);
      for (const share of shares) expect(share).toBeLessThanOrEqual(ALPHA + chance(ALPHA));
    }
    lines.push(tableLine(`${name}, n = ${count}`, table));
  });

  test("two results that agree and a third one step off are no outlier among three, whatever the alpha", () => {
    for (const alpha of [0.01, 0.05, 0.2, 0.4])
      for (const readability of [undefined, 0.1])
        expect(outlierVerdict(assess(rows([10.1, 10.1, 10.2]), { alpha, sides: "two", readability }))).toMatch(/^cannot tell: rounded too coarsely/);
  });

  test("says which step it went by, and where it has that from", () => {
    expect(outlierVerdict(assess(rows([10.1, 10.1, 10.2]), asked[0]?.[1] as OutlierQuestion))).toBe(
      "cannot tell: rounded too coarsely, by the look of it to steps of 0.1; keep every value, and give readability if they are finer",
    );
    expect(outlierVerdict(assess(rows([10.1, 10.1, 10.2]), { alpha: 0.05, sides: "two", readability: 0.1 }))).toBe(
      "cannot tell: rounded too coarsely, to steps of 0.1; keep every value, and read finer or take more results",
    );
  });

  test("finer results have their outlier, and what the readings are said to be outweighs how they look", () => {
    const tied = [10.1, 10.1, 10.1, 10.1, 10.2];
    expect(claims(tied, { alpha: 0.05, sides: "two" })).toBe(false);
    expect(claims(tied, { alpha: 0.05, sides: "two", readability: 0.001 })).toBe(true);
    expect(claims([10.11, 10.12, 10.13, 10.12, 10.11, 11], { alpha: 0.05, sides: "two" })).toBe(true);
    expect(claims([10.11, 10.12, 10.13, 10.12, 10.11, 11], { alpha: 0.05, sides: "two", readability: 0.5 })).toBe(false);
  });

  test("a given step that leaves no outlier possible leaves the verdict at none; one that does not opens it", () => {
    const even = [10, 10.1, 10.2, 10.3, 10.4, 10.5];
    expect(outlierVerdict(assess(rows(even), { alpha: 0.05, sides: "two", readability: 0.01 }))).toBe("no outlier shown: keep every value");
    expect(outlierVerdict(assess(rows(even), { alpha: 0.05, sides: "two", readability: 1 }))).toMatch(/^cannot tell/);
    expect(outlierVerdict(assess(rows(even), { alpha: 0.05, sides: "two" }))).toBe("no outlier shown: keep every value");
  });
});

describe("how far rounding leaves the statistic open", () => {
  const grubbs = (values: readonly number[]): number => {
    const { mean, deviation } = sampleMoments(values);
    return (Math.max(...values) - mean) / deviation;
  };
  const dixon = (values: readonly number[]): number => {
    const sorted = [...values].sort((a, b) => a - b) as [number, ...number[]];
    const [second, last] = sorted.slice(-2) as [number, number];
    return (last - second) / (last - sorted[0]);
  };
  const boundsOf = {
    G: (values: readonly number[], half: number) => [leastGrubbs(values, half), mostGrubbs(values, half)] as const,
    Q: (values: readonly number[], half: number) => {
      const sorted = [...values].sort((a, b) => a - b) as [number, ...number[]];
      const [second, last] = sorted.slice(-2) as [number, number];
      return [leastDixon(last - second, last - sorted[0], half), mostDixon(last - second, last - sorted[0], half)] as const;
    },
  };
  const statisticOf = { G: grubbs, Q: dixon };
  const shown = fc.uniqueArray(fc.integer({ min: -30, max: 30 }), { minLength: 3, maxLength: 7 });
  const within = fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 7, maxLength: 7 });

  test.each(["G", "Q"] as const)("%s of no values within half a step lies outside", (name) => {
    fc.assert(
      fc.property(shown, fc.constantFrom(0.1, 0.5, 2), fc.array(within, { minLength: 5, maxLength: 5 }), (values, half, offsets) => {
        const [least, most] = boundsOf[name](values, half);
        const top = values.indexOf(Math.max(...values));
        for (const offset of offsets) {
          const real = values.map((value, index) => value + half * (offset[index] ?? 0));
          if (real.indexOf(Math.max(...real)) !== top) continue;
          expect(statisticOf[name](real)).toBeGreaterThanOrEqual(least - 1e-9);
          expect(statisticOf[name](real)).toBeLessThanOrEqual(most + 1e-9);
        }
      }),
    );
  });

  test.each(["G", "Q"] as const)("%s reaches its least at a corner of what the values may be", (name) => {
    fc.assert(
      fc.property(shown, fc.constantFrom(0.1, 0.3, 0.45), (values, half) => {
        const sorted = [...values].sort((a, b) => a - b);
        const corners = Array.from({ length: 2 ** values.length }, (_, bits) =>
          sorted.map((value, index) => value + (bits & (1 << index) ? half : -half)),
        );
        // Values farther apart than a step keep their order, so the largest stays the suspect.
        const least = Math.min(...corners.map((corner) => statisticOf[name](corner)));
        expect(boundsOf[name](values, half)[0]).toBeCloseTo(least, 9);
      }),
    );
  });

  test("G reaches its most, found here by moving one value after the other", () => {
    fc.assert(
      fc.property(shown, fc.constantFrom(0.1, 0.5), (values, half) => {
        const sorted = [...values].sort((a, b) => a - b);
        const real = sorted.map((value, index) => (index === sorted.length - 1 ? value + half : value));
        for (let pass = 0; pass < 60; pass++)
          for (let index = 0; index < real.length - 1; index++) {
            // Along one value G has a single peak: golden section.
            let [low, high] = [(sorted[index] as number) - half, (sorted[index] as number) + half];
            const at = (value: number): number => grubbs(real.map((one, place) => (place === index ? value : one)));
            for (let cut = 0; cut < 40; cut++) {
              const [left, right] = [high - 0.618 * (high - low), low + 0.618 * (high - low)];
              if (at(left) < at(right)) low = left;
              else high = right;
            }
            real[index] = (low + high) / 2;
          }
        expect(mostGrubbs(values, half)).toBeGreaterThanOrEqual(grubbs(real) - 1e-9);
        expect(mostGrubbs(values, half) - grubbs(real)).toBeLessThan(1e-4);
      }),
      { numRuns: 20 },
    );
  });

  // By hand: 0, 0, 4 within 1/2: 3.5 against 1/2 and -1/2, mean 3.5/3, deviations 2.333, -0.667, -1.667, s = 2.0817; or all others
  // equal, 2 / sqrt(3).
  test("G of 0, 0, 4 within half a step of 1, by hand", () => {
    expect(leastGrubbs([0, 0, 4], 0.5)).toBeCloseTo(7 / 3 / Math.sqrt(13 / 3), 12);
    expect(mostGrubbs([0, 0, 4], 0.5)).toBeCloseTo(2 / Math.sqrt(3), 12);
    expect(leastGrubbs([0, 1, 1], 0.5)).toBe(0);
  });

  // 0, 2, 10 within 1/2: gap 8 becomes 7 or 9 of a range of 10; 0, 1, 10: the neighbour may stand on the far end.
  test("Q by hand", () => {
    expect([leastDixon(8, 10, 0.5), mostDixon(8, 10, 0.5)]).toEqual([0.7, 0.9]);
    expect([leastDixon(9, 10, 0.5), mostDixon(9, 10, 0.5)]).toEqual([0.8, 1]);
    expect([leastDixon(1, 10, 0.6), mostDixon(9.5, 10, 0.5)]).toEqual([0, 1]);
  });
});

test.each([2, 3, 5, 10])("REPLICATES of %d rounded results calls them apart in at most one case of twenty, whatever the step", (count) => {
  const table: Rates[] = [[0, 0]];
  for (const ratio of RATIOS.slice(1)) {
    const verdicts = [undefined, STEP].map((step) =>
      samples(count, ratio).map(({ shown, true: real }) => {
        const verdict = replicateVerdict(replicateStatistics(shown, ratio * STEP, step));
        const ofTrue = replicateVerdict(replicateStatistics(real, ratio * STEP, 1e-12));
        if (verdict.startsWith("not acceptable")) expect(ofTrue).toMatch(/^not acceptable/);
        if (step !== undefined && verdict.startsWith("acceptable")) expect(ofTrue).toMatch(/^acceptable/);
        return verdict;
      }),
    );
    const shares = verdicts.map((all) => all.filter((verdict) => verdict.startsWith("not acceptable")).length / RUNS);
    const before = samples(count, ratio).filter(({ shown }) => {
      const { criticalRange } = replicateStatistics(shown, ratio * STEP);
      const [least, most] = ends(shown);
      return most - least > (criticalRange ?? 0) + 1e-9;
    }).length;
    table.push([before / RUNS, Math.max(...shares)]);
    for (const share of shares) expect(share).toBeLessThanOrEqual(0.05 + chance(0.05));
  }
  lines.push(tableLine(`REPLICATES, n = ${count}`, table));
});

test("REPLICATES says that it cannot tell where a step decides", () => {
  const verdict = (values: readonly number[], sd: number, readability?: number): string =>
    replicateVerdict(replicateStatistics(values, sd, readability));
  expect(verdict([10.1, 10.2], 0.01)).toBe(
    "cannot tell: rounded too coarsely, by the look of it to steps of 0.1; keep every value, and give readability if they are finer",
  );
  expect(verdict([10.1, 10.2], 0.01, 0.1)).toBe(
    "cannot tell: rounded too coarsely, to steps of 0.1; keep every value, and read finer or take more results",
  );
  expect(verdict([10.1, 10.2], 0.01, 0.001)).toMatch(/^not acceptable/);
  expect(verdict([10.1, 10.1], 0.01, 0.1)).toMatch(/^cannot tell/);
  expect(verdict([10.1, 10.1], 0.1, 0.1)).toMatch(/^acceptable/);
  expect(verdict([10.1, 10.2], 0.1)).toMatch(/^acceptable/);
  expect(verdict([10.1, 10.5], 0.1, 0.1)).toMatch(/^not acceptable/);
});
