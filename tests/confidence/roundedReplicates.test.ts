// GRUBBS, DIXON and REPLICATES on results that a display has rounded: how often they call good results bad. Of three and four results
// every display is gone through with its exact chance; of more, samples are made up with seeded noise.
import fc from "fast-check";
import type { Replicate } from "../../src/confidence/countedReplicates";
import { dixonAssessment, mostDixon, reducedDixon } from "../../src/confidence/dixonAssessment";
import { grubbsAssessment } from "../../src/confidence/grubbsAssessment";
import { mostGrubbs, reducedGrubbs } from "../../src/confidence/grubbsRounded";
import { outlierVerdict, type OutlierQuestion } from "../../src/confidence/outlierAssessment";
import { replicateStatistics, replicateVerdict } from "../../src/confidence/replicateStatistics";
import { normalProbability } from "../../src/numerics/normalProbability";
import { sampleMoments } from "../../src/numerics/sampleMoments";
import { seededNormal } from "../numerics/seededNormal";
import { seededUniform } from "../numerics/seededUniform";

const rows = (values: readonly number[]): Replicate[] => values.map((value, index) => ({ row: index + 1, value }));
const ends = (values: readonly number[]): [number, number] => [Math.min(...values), Math.max(...values)];
const areEqual = (values: readonly number[]): boolean => new Set(values).size === 1;

const TESTS = { GRUBBS: grubbsAssessment, DIXON: dixonAssessment };
type Test = keyof typeof TESTS;

const COUNTS = [5, 8, 12, 30];
const RATIOS = [0, 0.1, 0.2, 0.3, 0.5, 0.7, 1, 2, 3];
const STEP = 0.2;
const RUNS = 300;

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

/** Every display of so many readings of one quantity, in steps and whatever their order, with its chance. */
function everyDisplay(count: number, at: number, scatter: number): readonly (readonly [shown: number[], chance: number])[] {
  const reach = Math.ceil(4.5 * scatter) + 1;
  const below = (border: number): number => normalProbability((border - at) / Math.max(scatter, 1e-9));
  const chances = Array.from({ length: 2 * reach + 1 }, (_, index) => below(index - reach + 0.5) - below(index - reach - 0.5));
  const from = (least: number, left: number): [number[], number][] => {
    if (left === 0) return [[[], 1]];
    return chances.flatMap((chance, index) =>
      index < least || chance < 1e-7
        ? []
        : Array.from({ length: left }, (_, more) => more + 1).flatMap((times) =>
            from(index + 1, left - times).map(([others, share]): [number[], number] => [
              [...Array<number>(times).fill(index - reach), ...others],
              share * chance ** times * binomial(left, times),
            ]),
          ),
    );
  };
  return from(0, count);
}

const binomial = (of: number, chosen: number): number =>
  Array.from({ length: chosen }, (_, index) => (of - index) / (index + 1)).reduce((product, factor) => product * factor, 1);

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

  test.each(COUNTS)("of %d good results that are rounded it calls one an outlier in no more than alpha of samples", (count) => {
    const table: Rates[] = [];
    for (const ratio of RATIOS) {
      const drawn = samples(count, ratio).filter(({ shown }) => !areEqual(shown));
      const before = drawn.filter(({ shown }) => assess(rows(shown), { alpha: ALPHA, sides: "two" }).isOutlier).length / RUNS;
      const shares = asked.map(([, question]) => drawn.filter(({ shown }) => claims(shown, question)).length / RUNS);
      table.push([before, Math.max(...shares)]);
      for (const share of shares) expect(share).toBeLessThanOrEqual(ALPHA + chance(ALPHA));
    }
    lines.push(tableLine(`${name}, n = ${count}`, table));
  });

  test.each([
    [3, 0.05],
    [4, 0.05],
    [4, 0.01],
  ])("of %d it does so at alpha %d, exactly, wherever the quantity stands within its step", (count, alpha) => {
    // Of four results the displays of a wide scatter are too many to go through.
    const table = RATIOS.filter((ratio) => count === 3 || ratio <= 1).map((ratio): Rates => {
      const worst = [0, 0.25, 0.4, 0.5].map((at) => {
        let [before, now] = [0, 0];
        for (const [shown, share] of everyDisplay(count, at, ratio)) {
          if (areEqual(shown) || !assess(rows(shown), { alpha, sides: "two" }).isOutlier) continue;
          before += share;
          if (claims(shown, { alpha, sides: "two", readability: 1 }) || claims(shown, { alpha, sides: "two" })) now += share;
        }
        expect(now).toBeLessThanOrEqual(alpha);
        return [before, now] as const;
      });
      return [Math.max(...worst.map(([before]) => before)), Math.max(...worst.map(([, now]) => now))];
    });
    lines.push(tableLine(`${name}, n = ${count}, ${alpha}`, table));
  });

  test("still sees in most samples an outlier of ten results that lies eight scatters off, on a step as large as the scatter", () => {
    const seen = samples(10, 1).filter(({ true: [first = 0, ...others] }) => {
      const shown = [first + 8 * STEP, ...others].map((value) => Math.round(value / STEP) * STEP);
      return claims(shown, { alpha: ALPHA, sides: "two" });
    });
    expect(seen.length / RUNS).toBeGreaterThan(0.9);
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
  const mostOf = {
    G: mostGrubbs,
    Q: (values: readonly number[], step: number) => {
      const sorted = [...values].sort((a, b) => a - b) as [number, ...number[]];
      const [second, last] = sorted.slice(-2) as [number, number];
      return mostDixon(last - second, last - sorted[0], step);
    },
  };
  const statisticOf = { G: grubbs, Q: dixon };
  const shown = fc.uniqueArray(fc.integer({ min: -30, max: 30 }), { minLength: 3, maxLength: 7 });
  const within = fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 7, maxLength: 7 });

  test.each(["G", "Q"] as const)("%s of no values within half a step is above its most", (name) => {
    fc.assert(
      fc.property(shown, fc.constantFrom(0.1, 0.5, 2), fc.array(within, { minLength: 5, maxLength: 5 }), (values, half, offsets) => {
        const most = mostOf[name](values, 2 * half);
        const top = values.indexOf(Math.max(...values));
        for (const offset of offsets) {
          const real = values.map((value, index) => value + half * (offset[index] ?? 0));
          if (real.indexOf(Math.max(...real)) !== top) continue;
          expect(statisticOf[name](real)).toBeLessThanOrEqual(most + 1e-9);
        }
      }),
    );
  });

  test("G reaches its most, found here by moving one value after the other", () => {
    fc.assert(
      fc.property(shown, fc.constantFrom(0.1, 0.5), (values, half) => {
        const sorted = [...values].sort((a, b) => a - b);
        const real = sorted.map((value, index) => (index === sorted.length - 1 ? value + half : value));
        for (let pass = 0; pass < 30; pass++)
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
        expect(mostGrubbs(values, 2 * half)).toBeGreaterThanOrEqual(grubbs(real) - 1e-9);
        expect(mostGrubbs(values, 2 * half) - grubbs(real)).toBeLessThan(1e-4);
      }),
      { numRuns: 10 },
    );
  });

  // 0, 0, 4 on a step of 1: 3.5 off the mean of the others, their squares 2 / 12: r^2 = 73.5, G^2 = (4/9) 2 r^2 / (1 + (2/3) r^2) =
  // 65.333 / 50. 0, 3, 9, 12: the others' mean is 4, squares 16 + 1 + 25 + 3/12, r^2 = 56.25 / 42.25. At most all others are equal.
  test("G by hand", () => {
    expect(reducedGrubbs([0, 0, 4], 1)).toBeCloseTo(Math.sqrt(65.33333333333333 / 50), 12);
    const rSquared = 56.25 / 42.25;
    expect(reducedGrubbs([0, 3, 12, 9], 1)).toBeCloseTo(Math.sqrt(((9 / 16) * 3 * rSquared) / (1 + 0.75 * rSquared)), 12);
    expect([reducedGrubbs([0, 0, 1], 1), reducedGrubbs([0, 0, 1.99], 1)]).toEqual([0, 0]);
    expect(reducedGrubbs([10.1, 10.1, 10.3], 0.1)).toBeGreaterThan(0);
    expect(mostGrubbs([0, 0, 4], 1)).toBeCloseTo(2 / Math.sqrt(3), 12);
    expect(mostGrubbs([0, 1, 4], 1)).toBeCloseTo(2 / Math.sqrt(3), 12);
    expect(mostGrubbs([0, 1.01, 4], 1)).toBeLessThan(2 / Math.sqrt(3));
  });

  // 0, 2, 10 on a step of 1: (8 - 1/2) / (10 + 1/2), at most 9 / 10; 0, 1, 10: the neighbour may stand on the far end.
  test("Q by hand", () => {
    expect(reducedDixon(8, 10, 1)).toBeCloseTo(7.5 / 10.5, 12);
    expect([mostDixon(8, 10, 1), mostDixon(9, 10, 1), mostDixon(9.5, 10, 1)]).toEqual([0.9, 1, 1]);
    expect([reducedDixon(1, 10, 1), reducedDixon(1.99, 10, 1)]).toEqual([0, 0]);
    expect(reducedDixon(10.3 - 10.1, 0.4, 0.1)).toBeCloseTo(1 / 3, 9);
  });
});

// Famous worked examples, the first three from print as in the published values: rounded to two to four figures, they keep their verdicts.
test.each([
  ["nine coins (Harvey, example 4.22)", [3.067, 3.049, 3.039, 2.514, 3.048, 3.079, 3.094, 3.109, 3.102], "two"],
  ["ten assays (USP <1010>)", [100.3, 100.2, 100.1, 100, 100, 100, 99.9, 99.7, 99.5, 95.7], "two"],
  [
    "eight mass-spectrometer readings (NIST/SEMATECH e-Handbook 1.3.5.17.1, from memory)",
    [199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57],
    "two",
  ],
  ["ten strengths of wire, all even (Grubbs 1969, from memory)", [568, 570, 570, 570, 572, 572, 572, 578, 584, 596], "largest"],
  [
    "ten values with Q = 0.455 (a much copied example, from memory)",
    [0.189, 0.167, 0.187, 0.183, 0.186, 0.182, 0.181, 0.184, 0.181, 0.177],
    "smallest",
  ],
] as const)("%s: an outlier still", (_, values, sides) => {
  expect(outlierVerdict(grubbsAssessment(rows(values), { alpha: 0.05, sides }))).toMatch(/^outlier/);
  if (values[0] !== 568) expect(outlierVerdict(dixonAssessment(rows(values), { alpha: 0.05, sides }))).toMatch(/^outlier/);
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
