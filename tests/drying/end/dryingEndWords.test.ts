import { endOfDrying, type DryingEnd } from "../../../src/drying/end/endOfDrying";
import { dryingEndTable } from "../../../src/functions/drying/dryingEndWords";

const run = { times: [0, 30, 60, 90, 120, 150, 180], weights: [10, 9.2, 8.8, 8.6, 8.5, 8.45, 8.425], readability: 0.001 };
const end = endOfDrying(run);
const rowOf = (label: string, changed: Partial<DryingEnd> = {}): unknown =>
  dryingEndTable({ ...end, ...changed }).find(([first]) => first === label)?.[1];
const verdict = (changed: Partial<DryingEnd>): unknown => rowOf("Verdict", changed);
const crossCheck = (changed: Partial<DryingEnd>): unknown => rowOf("Cross-check", changed);

test("the verdict calls two weighings to spare few, and three enough", () => {
  const few = "Few weighings carry the curve";
  expect(verdict({ fit: { ...end.fit, degrees: 2 } })).toContain(few);
  expect(verdict({ fit: { ...end.fit, degrees: 3 } })).not.toContain(few);
});

// A balance that repeats to one step explains sqrt((1 + 1/6) / (1/6)) = sqrt 7 of its roundings; three times that is 7.937.
test("the verdict doubts a scatter beyond 7.937 times what the balance's roundings explain", () => {
  const doubt = "more than the balance explains: the end is in doubt.";
  expect(verdict({ excess: 7.93 })).not.toContain(doubt);
  expect(verdict({ excess: 7.94 })).toContain(doubt);
  expect(verdict({ excess: undefined })).not.toContain(doubt);
});

test.each<readonly [DryingEnd["weighingsLeft"], string]>([
  [0, "Constant at the last weighing by 0.001 (of last), with about 0.025 g of water still to go by the curve."],
  [1, "Not constant yet: about 0.025 g of water still in it. About one more weighing, 30 min apart, until 0.001 (of last) is met."],
  [2, "Not constant yet: about 0.025 g of water still in it. About 2 more weighings, 30 min apart, until 0.001 (of last) is met."],
  ["too many", "Not constant yet: about 0.025 g of water still in it, and the interval is too short to reach 0.001 (of last). Weigh less often."],
  [
    "balance too coarse",
    "Not constant yet: about 0.025 g of water still in it. By then 0.001 (of last) is below two display steps, which this balance cannot decide.",
  ],
])("the verdict with %s weighings to go is %j", (weighingsLeft, words) => {
  expect(verdict({ weighingsLeft })).toBe(`${words} A prediction, not the dry weight: that is what you weigh once it is constant.`);
});

// Both ends are uncertain: 4 and 3 combine to 5 (the coverage factor is 2, the gain 1.5, one weighing 1).
test("the cross-check agrees within the root sum square of both 95 % uncertainties, and not beyond", () => {
  const at = (apart: number): Partial<DryingEnd> => ({
    uncertainty: { standard: 2, expanded: 4 },
    weighingDeviation: 1,
    fit: { ...end.fit, final: 100 },
    threePoint: { final: 100 + apart, ratio: 0.5, gain: 1.5 },
  });
  for (const apart of [4.99, -4.99]) expect(crossCheck(at(apart))).toBe("The three-point extrapolation agrees within the 95 % uncertainties.");
  for (const apart of [5.01, -5.01])
    expect(crossCheck(at(apart))).toBe(
      "The three-point extrapolation is 5 g off, more than the 95 % uncertainties explain: weigh on before relying on either.",
    );
});

test("the table shows the halving time of the water, the counts and the interval to a tenth of a minute", () => {
  expect(rowOf("Time in which the water halves")).toBe(30);
  expect(dryingEndTable({ ...end, interval: 29.96, made: 9 }).filter(([label]) => /^(More|Weighings)/.test(String(label)))).toEqual([
    ["More weighings until constant", 2, "every 30 min"],
    ["Weighings on the falling rate", 7, "of 9"],
  ]);
});
