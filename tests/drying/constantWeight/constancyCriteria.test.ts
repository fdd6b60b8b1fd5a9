import { CONSTANCY_CRITERIA, limitInForce, type ConstancyCriterion } from "../../../src/drying/constantWeight/constancyCriteria";
import { constancySteps, type ConstancyRun } from "../../../src/drying/constantWeight/constancySteps";

const SHARES = CONSTANCY_CRITERIA.filter((criterion) => criterion !== "absolute" && criterion !== "readability");
const last = (run: ConstancyRun): string | undefined => constancySteps(run).at(-1)?.verdict;

// EN 322 and EN 13183-1: 0.1 % of the mass.
test("the limit is 0.001 of last where none is given, and needed for every other criterion", () => {
  expect(limitInForce("of last", undefined, 10)).toBe(0.001);
  for (const criterion of CONSTANCY_CRITERIA.filter((other) => other !== "of last"))
    expect(() => limitInForce(criterion, undefined, 10, 0.001)).toThrow(`limit: left out, blank or 0, but "${criterion}" has no usual limit.`);
});

// Standard Methods 2540 (from memory): 4 % of the previous weighing.
test.each(SHARES)("a limit %s may be 4 %% and no more", (criterion) => {
  expect(limitInForce(criterion, 0.04, 10)).toBe(0.04);
  expect(() => limitInForce(criterion, 0.0401, 10)).toThrow("is above 0.04");
});

test("an absolute limit may be 4 % of the first sample and no more", () => {
  expect(limitInForce("absolute", 0.4, 10)).toBe(0.4);
  expect(() => limitInForce("absolute", 0.401, 10)).toThrow(
    "limit: 0.401 g is more than 4 % of the first sample, 10 g. Give grams: 0.5 mg is 0.0005.",
  );
});

test("an absolute limit of 1 mg is taken however small the sample, and 1.01 mg is not", () => {
  expect(limitInForce("absolute", 0.001, 0.003)).toBe(0.001);
  expect(() => limitInForce("absolute", 0.00101, 0.003)).toThrow("limit: 0.00101 g is more than 4 % of the first sample, 0.003 g.");
});

test("a limit in display steps is two or more, and may come to 4 % of the first sample", () => {
  expect(limitInForce("readability", 2, 10, 0.001)).toBe(2);
  expect(() => limitInForce("readability", 1.99, 10, 0.001)).toThrow("limit: 1.99 steps is below 2 display steps");
  expect(limitInForce("readability", 4, 10, 0.1)).toBe(4);
  expect(() => limitInForce("readability", 4.01, 10, 0.1)).toThrow("Check that readability is in grams, or take more sample.");
});

// 10 g taken, 9 g left, half an hour after 9.01 g.
test.each<readonly [ConstancyCriterion, number, number]>([
  ["absolute", 0.01, 0.01],
  ["of last", 0.001, 0.009],
  ["of initial", 0.001, 0.01],
  ["of total loss", 0.01, 0.01],
  ["per gram", 0.001, 0.01],
  ["per hour", 0.002, 0.009],
  ["readability", 4, 0.01],
])("%s %s allows %s g between 9.01 g and 9 g of the 10 g taken, half an hour apart on a balance of 2.5 mg", (criterion, limit, grams) => {
  const steps = constancySteps({ weights: [10, 9.01, 9], times: [0, 30, 60], criterion, limit, readability: 0.0025 });
  expect(steps.at(-1)?.limit).toBeCloseTo(grams, 12);
});

test("a limit met exactly counts as met in either direction, and one passed by two nanograms does not", () => {
  const absolute = { limit: 0.01, criterion: "absolute" } as const;
  expect(last({ ...absolute, weights: [10, 9.3, 9.29] })).toBe("steady");
  expect(last({ ...absolute, weights: [10, 9.3, 9.29 - 2e-9] })).toBe("not yet");
  expect(last({ ...absolute, weights: [10, 9.29, 9.3] })).toBe("steady");
  expect(last({ ...absolute, weights: [10, 9.29, 9.3 + 2e-9] })).toBe("gain");
});

test("a weighing between two that agree may stray by the limit, not by two nanograms more", () => {
  const hourly = { times: [0, 30, 60], interval: 60, limit: 0.01, criterion: "absolute" } as const;
  expect(last({ ...hourly, weights: [9, 8.99, 9] })).toBe("steady");
  expect(last({ ...hourly, weights: [9, 8.99 - 2e-9, 9] })).toBe("not yet");
  expect(last({ ...hourly, weights: [9, 9.01 + 2e-9, 9] })).toBe("not yet");
});

// Clocks are read to the second, and a time of day to six decimals is right to 0.04 s: half a second, 0.00833 min.
test("an interval of an hour is reached 0.49 s early, not 0.51 s: less than a clock shows", () => {
  const run = { weights: [10, 9.999], interval: 60 };
  expect(last({ ...run, times: [0, 60 - 0.49 / 60] })).toBe("steady");
  expect(last({ ...run, times: [0, 60 - 0.51 / 60] })).toBe("too soon to tell");
});

// 9:00, 9:30 and 10:00 as spreadsheets hand them over, exact and to six decimals, in minutes of the day.
test.each([
  ["exact", [9 / 24, 9.5 / 24, 10 / 24]],
  ["to six decimals", [0.375, 0.395833, 0.416667]],
  ["of a day in 2026, to ten decimals", [46_000.375, 46_000.3958333333, 46_000.4166666667].map((day) => day - 46_000)],
])("an interval of half an hour is reached by clock times %s, and a limit per hour met exactly by them counts as met", (_name, days) => {
  const times = days.map((day) => day * 1440);
  expect(last({ weights: [10, 9.5, 9.499], times, interval: 30 })).toBe("steady");
  // 0.001 per hour of 10 g in half an hour is 5 mg.
  expect(last({ weights: [10.5, 10.005, 10], times, limit: 0.001, criterion: "per hour" })).toBe("steady");
  expect(last({ weights: [10.5, 10.00501, 10], times, limit: 0.001, criterion: "per hour" })).toBe("not yet");
});

test("a limit of two display steps can be decided, one a little smaller cannot", () => {
  const run = { weights: [10, 9.999], criterion: "absolute" } as const;
  expect(last({ ...run, limit: 0.002, readability: 0.001 })).toBe("steady");
  expect(last({ ...run, limit: 0.00199, readability: 0.001 })).toBe("balance too coarse");
});

const LIMIT_OF_ONE_MILLIGRAM = { "of total loss": 0.002, "per hour": 0.001 / 9.5 / 0.5, absolute: 0.001 };

// The limit so far is 0.2 % of the 0.5 g lost, 1 mg, where two steps are 4 mg: a change is decided beyond 5 mg.
test.each(["of total loss", "per hour", "absolute"] as const)(
  "a coarse balance still decides by %s a change beyond limit and two steps together",
  (criterion) => {
    const run = { times: [0, 30, 60], criterion, limit: LIMIT_OF_ONE_MILLIGRAM[criterion], readability: 0.002 };
    expect(last({ ...run, weights: [10, 9.506, 9.5] })).toBe("not yet");
    expect(last({ ...run, weights: [10, 9.504, 9.5] })).toBe("balance too coarse");
  },
);

test("a loss of nothing is too soon to tell by the total loss alone", () => {
  expect(last({ weights: [10, 10], criterion: "of total loss", limit: 0.002 })).toBe("too soon to tell");
  expect(last({ weights: [10, 10 - 2e-9], criterion: "of total loss", limit: 0.002 })).toBe("not yet");
  expect(last({ weights: [10, 10], criterion: "absolute", limit: 0 })).toBe("steady");
  expect(last({ weights: [10, 10.5], criterion: "of total loss", limit: 0.002 })).toBe("gain");
});
