import { dryingFit } from "../../../src/drying/model/dryingFit";
import { type DryingModel, dryingModels } from "../../../src/drying/model/dryingModels";
import { callLiteral } from "../../functions/call";

const newton = dryingModels.find(({ name }) => name === "Newton") as DryingModel;
const GRAMS = [10, 9.2012, 8.6609, 8.3014, 8.0583, 7.8302, 7.6721];
const points = [0, 20, 40, 60, 80, 110, 150].map((minutes, i) => ({ minutes, grams: GRAMS[i] as number }));

// Worked by fitByHand.py, which stands beside this file and shares nothing with the program.
test.each([
  ["the end fitted", undefined, { k: 0.01966289, final: 7.5463602, scatter: 0.00273684, degrees: 4, errorOfK: 7.936e-5, errorOfFinal: 0.003566 }],
  [
    "the dry sample weighed",
    7.5605,
    { k: 0.019916641, final: 7.5605, scatter: 0.00560147, degrees: 5, errorOfK: 0.0001192, errorOfFinal: undefined },
  ],
])("DRYING.FIT by Newton with %s is as worked by hand", (_name, dry, byHand) => {
  const { parameters, errors, final, finalError, scatter, degrees, count } = dryingFit(points, newton, dry);
  expect([parameters, final, scatter]).toEqual([[expect.closeTo(byHand.k, 8)], expect.closeTo(byHand.final, 6), expect.closeTo(byHand.scatter, 8)]);
  expect([count, degrees]).toEqual([7, byHand.degrees]);
  // By hand the whole fit is repeated for each moved reading, here its slopes serve: the curve's bend is 0.4 % of an error.
  expect((errors[0] as number) / byHand.errorOfK).toBeCloseTo(1, 2);
  if (byHand.errorOfFinal === undefined) expect(finalError).toBeUndefined();
  else expect((finalError as number) / byHand.errorOfFinal).toBeCloseTo(1, 2);
});

test("DRYING.FIT of a run timed from another hour is the same fit, errors included", () => {
  for (const [model, dry] of dryingModels.flatMap((law) => [[law, 7.5] as const, ...(law.endsElsewhere ? [] : [[law, undefined] as const])])) {
    if (points.length < model.parameters.length + 4) continue;
    const [near, far] = [0, 480].map((later) =>
      dryingFit(
        points.map(({ minutes, grams }) => ({ minutes: minutes + later, grams })),
        model,
        dry,
      ),
    );
    for (const what of ["parameters", "errors"] as const)
      for (const [j, value] of (near?.[what] ?? []).entries()) expect((far?.[what][j] ?? NaN) / value).toBeCloseTo(1, 6);
    expect(far?.final).toBeCloseTo(near?.final ?? NaN, 7);
  }
});

test("DRYING.FIT takes weighings as net where no vessel is given, and takes off the one that is", () => {
  const finalOf = (weights: readonly number[], rest: string): unknown =>
    (callLiteral(`=RETORT.DRYING.FIT({0;20;40;60;80;110;150}, {${weights.join(";")}}, "Newton"${rest})`) as unknown[][])[2]?.slice(0, 2);
  expect(finalOf(GRAMS, "")).toEqual(["Final sample, fitted", expect.closeTo(7.5463602, 6)]);
  const inVessel = GRAMS.map((grams) => Number((grams + 25).toFixed(4)));
  expect(finalOf(inVessel, ", 25")).toEqual(["Final sample, fitted", expect.closeTo(7.5463602, 6)]);
  expect(finalOf(inVessel, ", 25, 32.5605")).toEqual(["Final sample, given", 7.5605]);
});
