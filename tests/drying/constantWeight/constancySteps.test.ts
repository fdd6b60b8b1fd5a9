import { type ConstancyRun, constancySteps } from "../../../src/drying/constantWeight/constancySteps";

const verdicts = (run: ConstancyRun): string[] => constancySteps(run).map(({ verdict }) => verdict);
const halfHourly = [0, 30, 60, 90, 120];

test("constancySteps compares neighbours when no interval is set", () => {
  const steps = constancySteps({ weights: [35, 34.2, 33.95], vessel: 25, limit: 0.01, criterion: "absolute" });
  expect(steps).toEqual([
    { weighing: 1, sample: 10, verdict: "first" },
    { weighing: 2, sample: 9.2, comparedWith: 1, change: -0.8, limit: 0.01, verdict: "not yet" },
    { weighing: 3, sample: 8.95, comparedWith: 2, change: -0.25, limit: 0.01, verdict: "not yet" },
  ]);
});

test("constancySteps with an interval compares with the latest weighing at least that much earlier", () => {
  const steps = constancySteps({ weights: [10, 9.99, 9.98, 9.97, 9.96], times: halfHourly, interval: 60 });
  expect(steps.map(({ comparedWith }) => comparedWith)).toEqual([undefined, undefined, 1, 2, 3]);
});

test("constancySteps with an interval reaches past several weighings where they were taken closer together", () => {
  const steps = constancySteps({ weights: [10, 9.5, 9.4, 9.3, 9.2], times: [0, 60, 70, 80, 125], interval: 60 });
  expect(steps.map(({ comparedWith }) => comparedWith)).toEqual([undefined, 1, 1, 1, 2]);
});

test("constancySteps says too soon to tell until a weighing old enough exists, however steady the neighbours", () => {
  expect(verdicts({ weights: [10, 9.999, 9.999], times: [0, 30, 45], interval: 60 })).toEqual(["first", "too soon to tell", "too soon to tell"]);
});

test("constancySteps takes 59.9999999 min computed from clock times for the hour it stands for", () => {
  expect(verdicts({ weights: [10, 9.999], times: [0, 59.9999999], interval: 60 })).toEqual(["first", "steady"]);
});

test("constancySteps by the half hour passes a slow loss that an hour's interval catches", () => {
  const weights = [10, 9.992, 9.984];
  expect(verdicts({ weights, times: [0, 30, 60] })).toEqual(["first", "steady", "steady"]);
  expect(verdicts({ weights, times: [0, 30, 60], interval: 60 })).toEqual(["first", "too soon to tell", "not yet"]);
});

test("constancySteps does not accept two ends that agree while a weighing between them strayed beyond the limit", () => {
  expect(verdicts({ weights: [9, 8.95, 9], times: [0, 30, 60], interval: 60 }).at(-1)).toBe("not yet");
  expect(verdicts({ weights: [9, 8.995, 9], times: [0, 30, 60], interval: 60 }).at(-1)).toBe("steady");
});

test("constancySteps calls a rise beyond the limit a gain, and one within it steady", () => {
  expect(verdicts({ weights: [10, 9, 9.02, 9.025] })).toEqual(["first", "not yet", "gain", "steady"]);
});

test.each([
  ["0.3 to 0.29", [0.3, 0.29]],
  ["35.3 to 35.29 with a 25 g vessel", [35.3, 35.29]],
])("constancySteps counts a limit of 0.01 g met exactly as met: %s", (_name, weights) => {
  const vessel = weights[0] === 35.3 ? 25 : undefined;
  expect(verdicts({ weights: [...weights, ...weights.slice(1)], vessel, limit: 0.01, criterion: "absolute", readability: 0.005 }).slice(1)).toEqual([
    "steady",
    "steady",
  ]);
});

test("constancySteps measures per hour over the time that passed", () => {
  const run = { weights: [10, 9.98], limit: 0.001, criterion: "per hour" } as const;
  expect(constancySteps({ ...run, times: [0, 60] })[1]).toMatchObject({ verdict: "not yet" });
  expect(constancySteps({ ...run, times: [0, 180] })[1]).toMatchObject({ verdict: "steady" });
});

test.each([
  ["absolute", 0.01, 0.01],
  ["of last", 0.001, 0.008],
  ["of initial", 0.001, 0.01],
  ["of total loss", 0.001, 0.002],
  ["per gram", 0.001, 0.01],
  ["per hour", 0.001, 0.004],
  ["readability", 3, 0.003],
] as const)("constancySteps %s takes a limit of %s as %s g when 10 g has become 8 g in half an hour", (criterion, limit, grams) => {
  const steps = constancySteps({ weights: [10, 8], times: [0, 30], limit, criterion, readability: 0.001 });
  expect(steps[1]?.limit).toBeCloseTo(grams, 12);
});

// The limit is some 9 mg, where two steps are 20 mg: changes of 0.8, 0.25 and 0.05 g are beyond both together, 10 mg is not.
test("constancySteps finds the balance too coarse where two display steps exceed the limit and the change is not beyond both", () => {
  const weights = [10, 9.2, 8.95, 8.9, 8.89];
  expect(verdicts({ weights, readability: 0.01 })).toEqual(["first", "not yet", "not yet", "not yet", "balance too coarse"]);
  expect(verdicts({ weights, readability: 0.001 })).toEqual(["first", "not yet", "not yet", "not yet", "not yet"]);
});

test("constancySteps calls a gain of 191 display steps a gain, whatever the limit, and two ends that agree not steady after such a stray", () => {
  const run = { limit: 0.0005, criterion: "absolute", readability: 0.001 } as const;
  expect(verdicts({ ...run, weights: [10, 9.809, 10] })).toEqual(["first", "not yet", "gain"]);
  expect(verdicts({ ...run, weights: [10, 9.809, 10], times: [0, 30, 60], interval: 60 }).at(-1)).toBe("not yet");
});

test("constancySteps accepts a limit of exactly two display steps", () => {
  expect(verdicts({ weights: [10, 9.9, 9.899], limit: 2, criterion: "readability", readability: 0.001 })).toEqual(["first", "not yet", "steady"]);
});

test("constancySteps of total loss judges a large change although the balance is too coarse for the limit so far", () => {
  const run = { weights: [10, 9.2, 9.19], limit: 0.002, criterion: "of total loss", readability: 0.001 } as const;
  expect(verdicts(run)).toEqual(["first", "not yet", "not yet"]);
  expect(verdicts({ ...run, weights: [10, 9.2, 9.199] })).toEqual(["first", "not yet", "balance too coarse"]);
});

test("constancySteps of total loss cannot tell before anything is lost", () => {
  expect(verdicts({ weights: [10, 10, 9], limit: 0.002, criterion: "of total loss" })).toEqual(["first", "too soon to tell", "not yet"]);
});

test("constancySteps ignores times planned after the last weighing", () => {
  const run = { weights: [10, 9.2, 9.199], interval: 60 };
  expect(constancySteps({ ...run, times: [0, 60, 120, 180, 240] })).toEqual(constancySteps({ ...run, times: [0, 60, 120] }));
});
