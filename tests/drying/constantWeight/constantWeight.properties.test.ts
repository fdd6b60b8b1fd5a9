import fc from "fast-check";
import { CONSTANCY_CRITERIA } from "../../../src/drying/constantWeight/constancyCriteria";
import { constancySteps, constantWeight, type ConstancyStep } from "../../../src/drying/constantWeight/constancySteps";

/** Whole milligrams as a balance shows them, in g. */
const grams = (fewest: number, most: number): fc.Arbitrary<number> => fc.integer({ min: fewest, max: most }).map((milligrams) => milligrams / 1000);
const vessel = grams(0, 60_000);

/** A run that dries at first and then wanders by a few milligrams, weighed at least a minute apart. */
const run = fc
  .record({
    vessel,
    losses: fc.array(fc.integer({ min: -3, max: 900 }), { minLength: 1, maxLength: 8 }),
    wander: fc.array(fc.integer({ min: -3, max: 12 }), { maxLength: 5 }),
    gaps: fc.array(fc.integer({ min: 1, max: 90 }), { minLength: 13, maxLength: 13 }),
    criterion: fc.constantFrom(...CONSTANCY_CRITERIA),
    interval: fc.constantFrom(0, 30, 60),
    readability: fc.constantFrom(undefined, 0.001, 0.005),
  })
  .map(({ vessel, losses, wander, gaps, criterion, interval, readability }) => {
    let left = 20_000;
    const milligrams = [left, ...[...losses, ...wander].map((loss) => (left -= loss))];
    let minute = 0;
    return {
      vessel,
      weights: milligrams.map((sample) => (sample + Math.round(vessel * 1000)) / 1000),
      times: milligrams.map((_, index) => (index === 0 ? 0 : (minute += gaps[index - 1] ?? 1))),
      criterion,
      limit: criterion === "readability" ? 2 : criterion === "absolute" ? 0.005 : 0.001,
      interval,
      readability: criterion === "readability" ? (readability ?? 0.001) : readability,
    };
  });

/** The answer, or the sentence that stands for it. */
const outcome = (compute: () => number): number | string => {
  try {
    return compute();
  } catch (thrown) {
    return (thrown as Error).message;
  }
};

test("a heavier vessel changes no verdict and no constant weight", () => {
  fc.assert(
    fc.property(run, fc.integer({ min: 1, max: 90_000 }), (given, heavier) => {
      const moved = {
        ...given,
        vessel: (Math.round(given.vessel * 1000) + heavier) / 1000,
        weights: given.weights.map((weight) => (Math.round(weight * 1000) + heavier) / 1000),
      };
      expect(constancySteps(moved)).toEqual(constancySteps(given));
      expect(outcome(() => constantWeight(moved))).toEqual(outcome(() => constantWeight(given)));
    }),
  );
});

test("the constant weight is where the unbroken run of steady verdicts begins", () => {
  fc.assert(
    fc.property(run, (given) => {
      const verdicts = constancySteps(given).map(({ verdict }) => verdict);
      const answer = outcome(() => constantWeight(given));
      if (verdicts.at(-1) === "balance too coarse") expect(answer).toContain("cannot be decided");
      else if (verdicts.at(-1) !== "steady") expect(answer).toBe(0);
      else {
        expect(verdicts.slice((answer as number) - 1).every((verdict) => verdict === "steady")).toBe(true);
        expect(verdicts[(answer as number) - 2]).not.toBe("steady");
      }
    }),
    { numRuns: 500 },
  );
});

test("a wider limit never turns a steady weighing unsteady", () => {
  fc.assert(
    fc.property(run, (given) => {
      const wider = constancySteps({ ...given, limit: 2 * given.limit });
      constancySteps(given).forEach(({ verdict }, index) => {
        if (verdict === "steady") expect(wider[index]?.verdict).toBe("steady");
      });
    }),
  );
});

test("later weighings change nothing said about earlier ones", () => {
  fc.assert(
    fc.property(run, fc.nat(), (given, cut) => {
      const kept = 1 + (cut % given.weights.length);
      expect(constancySteps({ ...given, weights: given.weights.slice(0, kept), times: given.times.slice(0, kept) })).toEqual(
        constancySteps(given).slice(0, kept),
      );
    }),
  );
});

// Two readings of one balance: what they differ by is decided beyond limit and two display steps together (ASTM D4442 method A
// takes twice the sensitivity), and up to a limit of two steps or more; between, the balance cannot tell.
test("a change is judged by every criterion and on every balance unless the limit is below two steps and the change not beyond both", () => {
  const steps = fc.constantFrom(0.0001, 0.0002, 0.001, 0.005, 0.01, 0.1, 1);
  const limits = fc.double({ min: 1e-5, max: 0.04, noNaN: true });
  fc.assert(
    fc.property(
      fc.constantFrom(...CONSTANCY_CRITERIA),
      steps,
      fc.integer({ min: -400, max: 400 }),
      limits,
      fc.integer({ min: 1, max: 600 }),
      (criterion, readability, moved, share, minutes) => {
        const weights = [5000, 3000, 3000 + moved].map((count) => Number((count * readability).toFixed(4)));
        const limit = criterion === "readability" ? 2 + 1000 * share : criterion === "absolute" ? share * 2000 * readability : share;
        const {
          change = NaN,
          limit: allowed = NaN,
          verdict,
        } = constancySteps({
          weights,
          times: [0, 1000, 1000 + minutes],
          limit,
          criterion,
          readability,
        })[2] as ConstancyStep;
        const two = 2 * readability;
        const size = Math.abs(change);
        // Away from the very edges, where binary rounding decides.
        fc.pre([allowed, allowed + two].every((edge) => Math.abs(size - edge) > 1e-8) && Math.abs(allowed - two) > 1e-8);
        const away = change > 0 ? "gain" : "not yet";
        if (size > allowed + two) expect(verdict).toBe(away);
        else if (allowed < two) expect(verdict).toBe("balance too coarse");
        else expect(verdict).toBe(size > allowed ? away : "steady");
      },
    ),
    { numRuns: 3000 },
  );
});

test("times reckoned from clock fractions to six decimals and more give the verdicts of the whole minutes they stand for", () => {
  fc.assert(
    fc.property(run, fc.integer({ min: 0, max: 700 }), fc.integer({ min: 6, max: 12 }), (given, start, decimals) => {
      const times = given.times.map(
        (minute) => (Number(((start + minute) / 1440).toFixed(decimals)) - Number((start / 1440).toFixed(decimals))) * 1440,
      );
      const verdicts = (one: typeof given): string[] => constancySteps(one).map(({ verdict }) => verdict);
      expect(verdicts({ ...given, times })).toEqual(verdicts(given));
    }),
    { numRuns: 500 },
  );
});
