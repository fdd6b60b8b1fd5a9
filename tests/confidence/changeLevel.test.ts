// How often CHANGE.SIGNIFICANT calls an unchanged load changed, by adding up the exact probabilities of all displayed pairs, and how
// large a change has to be to be seen. Nothing is drawn at random.
import { changeVerdict, falseChange } from "../../src/confidence/changeVerdict";
import { readingUncertainty } from "../../src/confidence/readingUncertainty";
import { normalProbability } from "../../src/numerics/normalProbability";

type Chances = readonly number[];

// Chances beyond this many scatters are below 1e-11.
const FARTHEST = 7;
// A load that scatters by less shows the same as one that scatters by this much, but for which side of a border it falls.
const LEAST_SCATTER = 1e-9;

/** The chances of the displays -reach to reach, in steps, of a load at `at` that scatters by `scatter` steps. */
function displayed(at: number, scatter: number): Chances {
  const reach = Math.ceil(FARTHEST * scatter) + Math.floor(Math.abs(at)) + 3;
  const below = (border: number): number => normalProbability((border - at) / Math.max(scatter, LEAST_SCATTER));
  return Array.from({ length: 2 * reach + 1 }, (_, index) => below(index - reach + 0.5) - below(index - reach - 0.5));
}

/** The chances of the sum of two independent counts, each centred. */
function sumOf(one: Chances, other: Chances): Chances {
  const sum = new Array<number>(one.length + other.length - 1).fill(0);
  one.forEach((p, i) => {
    if (p > 0) other.forEach((q, j) => (sum[i + j] = (sum[i + j] as number) + p * q));
  });
  return sum;
}

const differenceOf = (one: Chances, other: Chances): Chances => sumOf(one, [...other].reverse());

/** The sum of n readings; their mean is on a grid of steps / n. */
const repeated = (one: Chances, n: number): Chances => Array.from({ length: n - 1 }, () => one).reduce(sumOf, one);

const span = (from: number, to: number, step: number): number[] =>
  Array.from({ length: Math.round((to - from) / step) + 1 }, (_, index) => from + index * step);

const mixed = (all: readonly Chances[]): Chances =>
  (all[0] ?? []).map((_, index) => all.reduce((sum, one) => sum + (one[index] ?? 0), 0) / all.length);

/** A way of weighing: what is displayed of one load at each of its positions within a step, by the scatter of one weighing in steps. */
interface Weighing {
  readonly tared: boolean;
  readonly positions: (scatter: number) => Chances[];
}

const ZEROS = span(-0.475, 0.475, 0.05);

const WEIGHINGS: Readonly<Record<string, Weighing>> = {
  "one reading": { tared: false, positions: (scatter) => span(0, 0.5, 0.02).map((at) => displayed(at, scatter)) },
  // Zeroed anew each time: the zero stands anywhere within the step that shows as 0.
  "zeroed, any zero": {
    tared: true,
    positions: (scatter) => span(0, 0.5, 0.05).map((at) => mixed(ZEROS.map((zero) => displayed(at + zero, scatter)))),
  },
  // A mass by difference, where the vessel stands at one place of its step each time, and both displays scatter.
  "difference of two displays": {
    tared: true,
    positions: (scatter) =>
      span(-0.5, 0.5, 0.125).flatMap((zero) =>
        span(0, 0.5, 0.125).map((at) => differenceOf(displayed(at + zero, scatter / Math.SQRT2), displayed(zero, scatter / Math.SQRT2))),
      ),
  },
};

const STEP = 0.01;
const BEFORE = 35;
const RATIOS = [0, 0.01, 0.03, ...span(0.05, 1, 0.05), 0.289, 0.48, ...span(1.25, 3, 0.25)].sort((a, b) => a - b);

interface Setting {
  readonly k: number;
  readonly n: number;
  readonly isStepGiven: boolean;
}

const uncertainty = (tared: boolean, scatter: number, n: number): number =>
  readingUncertainty({ readability: STEP, repeatability: (scatter * STEP) / Math.sqrt(n), tared });

/** Whether a displayed change of so many nths of a step is called a loss or a gain. */
function calledChanged(of: number, u: number, { k, n, isStepGiven }: Setting): boolean {
  return changeVerdict(BEFORE, BEFORE + (of / n) * STEP, u, k, isStepGiven ? STEP : undefined).verdict !== "not significant";
}

/** Share of pairs called changed. */
function calledShare(differences: Chances, isCalled: (nths: number) => boolean): number {
  const middle = (differences.length - 1) / 2;
  return differences.reduce((sum, chance, index) => (chance > 0 && isCalled(index - middle) ? sum + chance : sum), 0);
}

function worstShare({ tared, positions }: Weighing, scatter: number, setting: Setting): number {
  const u = uncertainty(tared, scatter, setting.n);
  const called = new Map<number, boolean>();
  const isCalled = (nths: number): boolean => {
    const known = called.get(nths) ?? calledChanged(nths, u, setting);
    called.set(nths, known);
    return known;
  };
  return Math.max(
    ...positions(scatter).map((one) => {
      const mean = repeated(one, setting.n);
      return calledShare(differenceOf(mean, mean), isCalled);
    }),
  );
}

const lines: string[] = [];
afterAll(() => {
  process.stdout.write(`${lines.join("\n")}\n`);
});

const percent = (share: number): string => `${(100 * share).toFixed(2)} %`;

describe.each([
  [1, 1],
  [2, 1],
  [3, 1],
  [2, 2],
  [2, 4],
])("at k = %d, means of %d", (k, n) => {
  test.each(Object.keys(WEIGHINGS))("an unchanged load is called changed no more often than stated: %s", (name) => {
    const weighing = WEIGHINGS[name] as Weighing;
    const ratios = n === 1 ? RATIOS : [0, 0.1, 0.289, 0.48, 0.7, 1, 3];
    for (const isStepGiven of [false, true]) {
      const shares = ratios.map((scatter) => worstShare(weighing, scatter, { k, n, isStepGiven }));
      const worst = Math.max(...shares);
      lines.push(
        `k = ${k}, ${n === 1 ? "single" : `mean of ${n}`}, ${name}, step ${isStepGiven ? "given" : "not given"}: at most ${percent(worst)} of ${percent(falseChange(k))}, at scatter / step ${ratios[shares.indexOf(worst)]}`,
      );
      expect(worst).toBeLessThanOrEqual(falseChange(k) + 1e-9);
    }
  });
});

test("losses and gains are called alike", () => {
  const one = displayed(0.2, 0.8);
  const u = uncertainty(false, 0.8, 1);
  const setting = { k: 1, n: 1, isStepGiven: true };
  const [losses, gains] = [-1, 1].map((sign) => calledShare(differenceOf(one, one), (nths) => sign * nths > 0 && calledChanged(nths, u, setting)));
  expect(losses).toBeGreaterThan(0.01);
  expect(losses).toBeCloseTo(gains as number, 12);
});

test("k sqrt(2) u would not do: with a fifth of a step of scatter it calls every second unchanged load on a border changed", () => {
  const scatter = 0.2;
  const limit = 2 * Math.SQRT2 * uncertainty(false, scatter, 1);
  const shares = span(0, 0.5, 0.02).map((at) =>
    calledShare(differenceOf(displayed(at, scatter), displayed(at, scatter)), (nths) => Math.abs(nths) * STEP > limit),
  );
  expect(Math.max(...shares)).toBeCloseTo(0.5, 2);
  expect(shares.reduce((sum, share) => sum + share, 0) / shares.length).toBeCloseTo(0.22, 1);
});

/** The smallest loss, in steps, that is called in 95 of 100 pairs wherever the load stands within a step. */
function smallestSeen(scatter: number, isCalled: (nths: number) => boolean): number {
  const positions = span(0, 0.9, 0.1);
  const isSeen = (loss: number): boolean =>
    positions.every((at) => calledShare(differenceOf(displayed(at, scatter), displayed(at + loss, scatter)), isCalled) >= 0.95);
  let loss = 0;
  while (!isSeen(loss)) loss += 0.1;
  return loss;
}

// Loss in steps seen in 95 of 100 pairs: by k sqrt(2) u, with the step not given, and with it given. Knowing the step costs one.
test.each([
  [0, 1.1, 2.1, 2.1],
  [0.25, 2.4, 2.4, 2.4],
  [0.5, 2.8, 3.8, 3.8],
  [1, 4.9, 7.9, 5.9],
  [2, 10.2, 14.2, 11.2],
  [3, 15.5, 21.5, 16.5],
])("with a scatter of %d steps the smallest loss that is seen went from %d to %d, %d with the step given", (scatter, ...expected) => {
  const u = uncertainty(false, scatter, 1);
  const seen = [
    smallestSeen(scatter, (nths) => Math.abs(nths) * STEP > 2 * Math.SQRT2 * u + 1e-12),
    smallestSeen(scatter, (nths) => calledChanged(nths, u, { k: 2, n: 1, isStepGiven: false })),
    smallestSeen(scatter, (nths) => calledChanged(nths, u, { k: 2, n: 1, isStepGiven: true })),
  ];
  expect(seen.map((loss) => Number(loss.toFixed(1)))).toEqual(expected);
});
