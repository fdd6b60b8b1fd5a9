import fc from "fast-check";
import { changeVerdict } from "../../src/confidence/changeVerdict";
import { commonTareFactor, lossUncertainty, separateTaringFactor } from "../../src/confidence/lossUncertainty";
import { readingUncertainty } from "../../src/confidence/readingUncertainty";
import { smallestSample } from "../../src/confidence/smallestSample";
import { sampleMoments } from "../../src/numerics/sampleMoments";
import { seededNormal } from "../numerics/seededNormal";
import { seededUniform } from "../numerics/seededUniform";
import { propagated } from "./propagated";

const RUNS = 40_000;
// Five standard errors of a standard deviation estimated from so many runs.
const CHANCE = 5 / Math.sqrt(2 * RUNS);

const spreadOf = (run: (index: number) => number): number => sampleMoments(Array.from({ length: RUNS }, (_, index) => run(index))).deviation;

const weighing = fc.tuple(
  fc.double({ min: 5, max: 100, noNaN: true }),
  fc.double({ min: 1, max: 50, noNaN: true }),
  fc.double({ min: 0.01, max: 0.99, noNaN: true }),
  fc.double({ min: 1e-5, max: 0.01, noNaN: true }),
);

test.each([
  ["rounding alone", 0.01, 0, 0, false],
  ["rounding, a tared mass", 0.01, 0, 0, true],
  ["all three", 0.01, 0.008, 0.015, false],
  ["all three, a tared mass", 0.01, 0.008, 0.015, true],
])("READING.U is the spread of a simulated balance: %s", (_, readability, repeatability, linearity, tared) => {
  const normal = seededNormal(1);
  const uniform = seededUniform(2);
  const display = (grams: number): number => Math.round((grams + linearity * (2 * uniform() - 1)) / readability) * readability;
  const spread = spreadOf(() => {
    const zero = tared ? uniform() : 0;
    const load = 10 + uniform();
    const shownZero = tared ? display(zero) : 0;
    return display(zero + load + repeatability * normal()) - shownZero - load;
  });
  expect(Math.abs(spread / readingUncertainty({ readability, repeatability, linearity, tared }) - 1)).toBeLessThan(CHANCE);
});

test.each([0, 0.05, 0.3, 0.5, 0.9, 1])(
  "LOSSFRACTION.U at a loss of %d is the spread of simulated weighings with one empty-vessel weighing",
  (loss) => {
    const normal = seededNormal(3);
    const [vessel, sample, u] = [25, 10, 0.01];
    const read = (grams: number): number => grams + u * normal();
    const spread = spreadOf(() => {
      const [m0, m1, m2] = [read(vessel), read(vessel + sample), read(vessel + sample * (1 - loss))] as const;
      return (m1 - m2) / (m1 - m0);
    });
    expect(Math.abs(spread / lossUncertainty(vessel, vessel + sample, vessel + sample * (1 - loss), u).commonTare - 1)).toBeLessThan(CHANCE);
  },
);

test.each([
  [0, 0],
  [0.3, 0],
  [0.9, 0],
  [0, 0.01],
  [0.3, 0.01],
  [0.9, 0.01],
  [0.3, 0.03],
])("LOSSFRACTION.U with separate taring at a loss of %d, READING.U of a scatter of %d g, is the spread of simulated net masses", (loss, scatter) => {
  const [normal, uniform] = [seededNormal(4), seededUniform(40)];
  const [sample, step] = [10, 0.01];
  const u = readingUncertainty({ readability: step, repeatability: scatter, tared: true });
  // The zero stands anywhere within the step that shows as 0, the load anywhere within its own; the whole weighing scatters once.
  const net = (grams: number): number => Math.round((grams + scatter * normal()) / step + uniform() - 0.5) * step;
  const spread = spreadOf(() => {
    const [load, left] = [sample + uniform() * step, sample * (1 - loss) + uniform() * step] as const;
    const [before, after] = [net(load), net(left)] as const;
    return (before - after) / before - (load - left) / load;
  });
  expect(Math.abs(spread / lossUncertainty(0, sample, sample * (1 - loss), u).separateTaring - 1)).toBeLessThan(CHANCE);
});

// One u serves all three: READING.U, tared where the balance is zeroed before each weighing. The scatter is that of whole weighings.
test.each([
  ["net masses, each zeroed", "tared", true],
  ["three weighings, each zeroed", 25.003, true],
  ["three weighings of one zeroing", 25.003, false],
])("READING.U into LOSSFRACTION.U covers the truth at k = 2 in 95 of 100 runs: %s", (_, vessel, tared) => {
  const [normal, uniform] = [seededNormal(8), seededUniform(80)];
  const [step, loss] = [0.01, 0.3];
  for (const scatter of [0.003, 0.007, 0.01, 0.03]) {
    const u = readingUncertainty({ readability: step, repeatability: scatter, tared });
    const read = (grams: number): number => Math.round((grams + scatter * normal()) / step + (tared ? uniform() - 0.5 : 0)) * step;
    let covered = 0;
    const runs = 10_000;
    for (let run = 0; run < runs; run++) {
      const empty = vessel === "tared" ? 0 : Number(vessel) + uniform() * step;
      const sample = 10 + uniform();
      const left = sample * (1 - loss);
      const shown = [vessel === "tared" ? 0 : read(empty), read(empty + sample), read(empty + left)] as const;
      const { loss: found, commonTare, separateTaring } = lossUncertainty(...shown, u);
      if (Math.abs(found - loss) <= 2 * (vessel === "tared" ? separateTaring : commonTare)) covered++;
    }
    // 95.45 % of a normal distribution; 10,000 runs scatter by 0.2 %, and roundings alone are a little less spread out than that.
    expect(covered / runs).toBeGreaterThan(0.947);
    expect(covered / runs).toBeLessThan(0.97);
  }
});

test("at the coarsest balance that LOSSFRACTION.U accepts, k = 2 still covers the truth in 94 of 100 simulated runs", () => {
  const normal = seededNormal(5);
  const [loss, u] = [0.3, 0.1];
  const limit = 2 * lossUncertainty(1, 2, 2 - loss, u).commonTare;
  let covered = 0;
  for (let run = 0; run < RUNS; run++) {
    const [m0, m1, m2] = [1 + u * normal(), 2 + u * normal(), 2 - loss + u * normal()] as const;
    if (Math.abs((m1 - m2) / (m1 - m0) - loss) < limit) covered++;
  }
  expect(covered / RUNS).toBeGreaterThan(0.94);
  expect(covered / RUNS).toBeLessThan(0.955);
});

test("LOSSFRACTION.U equals the propagation with numerical derivatives, with one empty-vessel weighing and with separate taring", () => {
  fc.assert(
    fc.property(weighing, ([vessel, sample, loss, u]) => {
      const [before, after] = [vessel + sample, vessel + sample * (1 - loss)] as const;
      const common = propagated(
        (m0 = 0, m1 = 0, m2 = 0) => (m1 - m2) / (m1 - m0),
        [
          [vessel, u],
          [before, u],
          [after, u],
        ],
      );
      expect(lossUncertainty(vessel, before, after, u).commonTare / common).toBeCloseTo(1, 4);
      const separate = propagated(
        (m1 = 0, m2 = 0) => (m1 - m2) / m1,
        [
          [sample, u],
          [sample * (1 - loss), u],
        ],
      );
      expect(lossUncertainty(vessel, before, after, u).separateTaring / separate).toBeCloseTo(1, 4);
    }),
  );
});

test("LOSSFRACTION.U does not change when the balance's scale is off, and the vessel's weight plays no part", () => {
  fc.assert(
    fc.property(weighing, fc.double({ min: 0.5, max: 2, noNaN: true }), ([vessel, sample, loss, u], scale) => {
      const plain = lossUncertainty(vessel, vessel + sample, vessel + sample * (1 - loss), u).commonTare;
      const scaled = lossUncertainty(scale * vessel, scale * (vessel + sample), scale * (vessel + sample * (1 - loss)), scale * u).commonTare;
      const heavier = lossUncertainty(2 * vessel, 2 * vessel + sample, 2 * vessel + sample * (1 - loss), u).commonTare;
      expect(scaled / plain).toBeCloseTo(1, 9);
      expect(heavier / plain).toBeCloseTo(1, 9);
    }),
  );
});

// GUM 5.2.2: net masses by difference from one weighing of the vessel, u each, have u^2 in common. With that covariance the two
// net masses give what the three weighings give: (1-w)^2 2u^2 + 2u^2 - 2 (1-w) u^2, over the sample squared.
test("the common vessel weighing is a correlation of the net masses, and leaving it out would overstate the uncertainty", () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (loss) => {
      const left = 1 - loss;
      expect(commonTareFactor(loss) ** 2).toBeCloseTo(2 * left ** 2 + 2 - 2 * left, 12);
      expect(commonTareFactor(loss) ** 2).toBeLessThanOrEqual(2 * separateTaringFactor(loss) ** 2 + 1e-12);
    }),
  );
});

test("two zeroed net masses know the loss as well as three zeroed weighings where nothing is lost, and better where something is", () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (loss) => {
      expect(separateTaringFactor(loss)).toBeLessThanOrEqual(commonTareFactor(loss));
    }),
  );
  expect(separateTaringFactor(0)).toBe(commonTareFactor(0));
  expect(separateTaringFactor(1)).toBe(1);
});

test("a sample of the size that SAMPLE.MINIMUM asks for has the wanted uncertainty", () => {
  fc.assert(
    fc.property(weighing, fc.double({ min: 0.001, max: 0.1, noNaN: true }), ([vessel, , loss, u], wanted) => {
      const sample = smallestSample(u, wanted, loss, 2);
      expect((2 * lossUncertainty(vessel, vessel + sample, vessel + sample * (1 - loss), u).commonTare) / wanted).toBeCloseTo(1, 6);
    }),
  );
});

test("SAMPLE.MINIMUM with the loss left out serves every loss, and doubles when the uncertainty wanted is halved", () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (loss) => {
      expect(smallestSample(0.01, 0.005)).toBeGreaterThanOrEqual(smallestSample(0.01, 0.005, loss));
    }),
  );
  expect(smallestSample(0.01, 0.0025, 0.3) / smallestSample(0.01, 0.005, 0.3)).toBeCloseTo(2, 14);
});

test("CHANGE.SIGNIFICANT calls an unchanged load on a fine display changed in about one pair of twenty, in either direction alike", () => {
  const normal = seededNormal(6);
  const verdicts = Array.from({ length: RUNS }, () => changeVerdict(35 + 0.01 * normal(), 35 + 0.01 * normal(), 0.01, 2, 1e-6).verdict);
  const share = (verdict: string): number => verdicts.filter((one) => one === verdict).length / RUNS;
  // Two normal deviates beyond two standard deviations: 0.0455.
  expect(Math.abs(share("loss") - 0.02275)).toBeLessThan(0.003);
  expect(Math.abs(share("gain") - 0.02275)).toBeLessThan(0.003);
});

test("CHANGE.SIGNIFICANT turned round says gain for loss", () => {
  fc.assert(
    fc.property(fc.double({ min: 1, max: 50, noNaN: true }), fc.double({ min: 1, max: 50, noNaN: true }), (before, after) => {
      const turned = { loss: "gain", gain: "loss", "not significant": "not significant" };
      expect(changeVerdict(after, before, 0.01).verdict).toBe(turned[changeVerdict(before, after, 0.01).verdict]);
    }),
  );
});
