import fc from "fast-check";
import { dryingFit } from "../../../src/drying/model/dryingFit";
import { dryingModels } from "../../../src/drying/model/dryingModels";
import { every } from "../simulatedRun";

const TRUTHS: Readonly<Record<string, readonly number[]>> = {
  Newton: [0.012],
  Page: [0.03, 0.8],
  "modified Page": [0.012, 1.3],
  "Henderson-Pabis": [0.96, 0.012],
  logarithmic: [0.9, 0.012, 0.06],
  "two-term": [0.65, 0.03, 0.35, 0.006],
};
const each = dryingModels.map((model) => [model.name, model] as const);
const truthOf = (name: string): readonly number[] => TRUTHS[name] as readonly number[];

test.each(each)("the slopes of %s are those of its ratio, by central differences", (name, model) => {
  const varied = fc.tuple(...truthOf(name).map((value) => fc.double({ min: value / 2, max: value * 2, noNaN: true })));
  fc.assert(
    fc.property(varied, fc.double({ min: 0, max: 400, noNaN: true }), (parameters, t) => {
      for (const [j, value] of parameters.entries()) {
        const step = 1e-5 * value;
        const moved = (by: number): number =>
          model.ratio(
            parameters.map((one, i) => (i === j ? one + by : one)),
            t,
          );
        expect(model.slopes(parameters, t)[j]).toBeCloseTo((moved(step) - moved(-step)) / (2 * step), 5);
      }
    }),
  );
});

// Worked with 30-digit decimals by modelPoints.py, which stands beside this file.
test.each<readonly [string, readonly number[], number, number]>([
  ["Newton", [0.012], 25, 0.740818220682],
  ["Newton", [0.012], 180, 0.115325121038],
  ["Page", [0.03, 0.8], 25, 0.674368102736],
  ["Page", [0.03, 0.8], 180, 0.147881239104],
  ["modified Page", [0.012, 1.3], 25, 0.811351753667],
  ["modified Page", [0.012, 1.3], 180, 0.065783626459],
  ["Henderson-Pabis", [0.96, 0.012], 0, 0.96],
  ["Henderson-Pabis", [0.96, 0.012], 180, 0.110712116197],
  ["logarithmic", [0.9, 0.012, 0.06], 0, 0.96],
  ["logarithmic", [0.9, 0.012, 0.06], 180, 0.163792608934],
  ["two-term", [0.65, 0.03, 0.35, 0.006], 25, 0.60828605103],
  ["two-term", [0.65, 0.03, 0.35, 0.006], 180, 0.121794211588],
])("the law of %s with parameters %j at %s min has a moisture ratio of %s", (name, parameters, t, ratio) => {
  expect(dryingModels.find((model) => model.name === name)?.ratio(parameters, t)).toBeCloseTo(ratio, 11);
});

// What the table of DRYING.FIT prints beside its numbers.
test.each(
  Object.entries({
    Newton: ["MR = exp(-k t)", "k 1/min"],
    Page: ["MR = exp(-k t^n)", "k min^-n, n "],
    "modified Page": ["MR = exp(-(k t)^n)", "k 1/min, n "],
    "Henderson-Pabis": ["MR = a exp(-k t)", "a , k 1/min"],
    logarithmic: ["MR = a exp(-k t) + c", "a , k 1/min, c "],
    "two-term": ["MR = a exp(-k t) + b exp(-g t)", "a , k 1/min, b , g 1/min"],
  }),
)("%s is printed as the law %j", (name, [law, units]) => {
  const model = dryingModels.find((known) => known.name === name);
  expect([model?.law, model?.parameters.map(({ name: letter, unit }) => `${letter} ${unit}`).join(", ")]).toEqual([law, units]);
});

test.each(each.filter(([, { startsAtOne }]) => startsAtOne))("%s begins at a moisture ratio of 1", (name, model) => {
  expect(model.ratio(truthOf(name), 0)).toBe(1);
});

const times = every(25, 14);

test.each(each)("DRYING.FIT finds the parameters of an exact %s curve when the dry sample is given", (name, model) => {
  const truth = truthOf(name);
  // MR is counted from the first weighing, so where the law does not begin at 1 the first weighing stands apart from it.
  const points = times.map((minutes) => ({ minutes, grams: 7 + 4 * model.ratio(truth, minutes) }));
  const first = model.ratio(truth, 0);
  const scaled = truth.map((value, j) => (["a", "b", "c"].includes(model.parameters[j]?.name ?? "") ? value / first : value));
  const fit = dryingFit(points, model, 7);
  for (const [j, value] of scaled.entries()) expect((fit.parameters[j] as number) / value).toBeCloseTo(1, 7);
  expect(fit.scatter).toBeLessThan(1e-9);
});

test.each(each.filter(([, { endsElsewhere }]) => !endsElsewhere))(
  "DRYING.FIT finds the end of an exact %s curve when no dry sample is given",
  (name, model) => {
    const points = times.map((minutes) => ({ minutes, grams: 7 + 4 * model.ratio(truthOf(name), minutes) }));
    expect(dryingFit(points, model).final).toBeCloseTo(7, 7);
  },
);

test("DRYING.FIT by Page meets Newton where the exponent is 1", () => {
  const [newton, page] = dryingModels as [(typeof dryingModels)[0], (typeof dryingModels)[0]];
  const points = times.map((minutes) => ({ minutes, grams: 7 + 4 * Math.exp(-0.01 * minutes) }));
  expect(dryingFit(points, page).parameters).toEqual([expect.closeTo(0.01, 9), expect.closeTo(1, 9)]);
  expect(dryingFit(points, newton).parameters).toEqual([expect.closeTo(0.01, 11)]);
});

test.each([
  ["Newton", undefined, 5],
  ["Newton", 7, 4],
  ["Page", undefined, 6],
  ["Henderson-Pabis", undefined, 5],
  ["logarithmic", 7, 5],
  ["two-term", undefined, 7],
] as const)("DRYING.FIT by %s, dry sample %s, takes %s weighings and refuses one fewer", (name, dry, fewest) => {
  const model = dryingModels.find((known) => known.name === name) as (typeof dryingModels)[0];
  const unknowns = model.parameters.length + (dry === undefined ? 1 : 0);
  // The curve with some strays, so that no standard error is 0.
  const points = every(40, fewest).map((minutes, i) => ({ minutes, grams: 7 + 4 * model.ratio(truthOf(name), minutes) + (i % 2) * 1e-4 }));
  expect(dryingFit(points, model, dry)).toMatchObject({ count: fewest, degrees: 2 });
  expect(() => dryingFit(points.slice(1), model, dry)).toThrow(
    `weights: ${fewest - 1} weighings cannot carry the ${unknowns} unknowns of ${name}; it takes ${fewest}. Weigh more often.`,
  );
});
