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
