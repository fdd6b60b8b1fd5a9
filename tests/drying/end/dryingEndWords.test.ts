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

test("the verdict doubts a scatter that the balance does not explain", () => {
  const doubt = "more than the balance explains: the end is in doubt.";
  expect(verdict({ scattersTooMuch: false })).not.toContain(doubt);
  expect(verdict({ scattersTooMuch: true, scatter: 0.0123 })).toContain(`The weighings scatter by 0.012 g about the curve, ${doubt}`);
});

const PREDICTION = "A prediction, not the dry weight: that is what you weigh once it is constant.";
const own = { standard: 0.001, expanded: 0.002 };

test("the verdict names a slower tail where the weighings show one, and counts the weighings to come as the least", () => {
  expect(verdict({ slowerTail: true, weighingsLeft: 2, final: 8.4, lowest: 8.31234, curveUncertainty: own })).toBe(
    "Not constant yet: about 0.025 g of water still in it. At least 2 more weighings, 30 min apart, until 0.001 (of last) is met. " +
      `The last weighings fall more slowly than the first promise: a slower tail, and the end may be as low as 8.312 g. ${PREDICTION}`,
  );
});

test("the verdict says how low a tail that cannot be ruled out may bring the end, and nothing where the curve's own uncertainty says as much", () => {
  const tail = "These weighings cannot rule out a slower tail, with which the end may be as low as";
  const with3mg = { slowerTail: false, weighingsLeft: 2, final: 8.4, curveUncertainty: own, lowest: 8.39654321 } as const;
  expect(verdict(with3mg)).toContain(`until 0.001 (of last) is met. ${tail} 8.3965 g. ${PREDICTION}`);
  expect(verdict({ ...with3mg, lowest: 5.0649 })).toContain(`${tail} 5.1 g.`);
  expect(verdict({ ...with3mg, final: 123, lowest: 96.5 })).toContain(`${tail} 97 g.`);
  expect(verdict({ ...with3mg, lowest: 8.3981 })).not.toContain("slower tail");
});

test("the verdict calls water below the display step less than the weighings show, and water from it on by its size", () => {
  const less = "with less water than the 0.001 g that the weighings show still to go by the curve.";
  expect(verdict({ weighingsLeft: 0, waterLeft: 1e-8 })).toContain(`Constant at the last weighing by 0.001 (of last), ${less}`);
  expect(verdict({ weighingsLeft: 0, waterLeft: 0.000999 })).toContain(less);
  expect(verdict({ weighingsLeft: 0, waterLeft: 0.001 })).toContain("with about 0.001 g of water still to go by the curve.");
  expect(verdict({ weighingsLeft: 1, waterLeft: 0 })).toContain("Not constant yet: less water than the 0.001 g that the weighings show still in it.");
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
  expect(verdict({ weighingsLeft, lowest: end.final })).toBe(`${words} ${PREDICTION}`);
});

// Both ends are uncertain: 4 and 3 combine to 5 (the coverage factor is 2, the gain 1.5, one weighing 1).
test("the cross-check agrees within the root sum square of both 95 % uncertainties, and not beyond", () => {
  const at = (apart: number): Partial<DryingEnd> => ({
    curveUncertainty: { standard: 2, expanded: 4 },
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
