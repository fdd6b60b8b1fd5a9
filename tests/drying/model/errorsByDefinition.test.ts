import { dryingFit } from "../../../src/drying/model/dryingFit";
import { dryingModels } from "../../../src/drying/model/dryingModels";
import { seededNormal } from "../../numerics/seededNormal";
import { every } from "../simulatedRun";
import { errorsByDefinition } from "./errorsByDefinition";

// 8 + 4 (0.7 exp(-0.03 t) + 0.3 exp(-0.006 t)) g with 2 mg of scatter.
function points(count: number) {
  const normal = seededNormal(count);
  return every(300 / count, count).map((minutes) => ({
    minutes,
    grams: 8 + 4 * (0.7 * Math.exp(-0.03 * minutes) + 0.3 * Math.exp(-0.006 * minutes)) + 0.002 * normal(),
  }));
}

test.each(
  dryingModels.flatMap((model) =>
    [12, 60].flatMap((count) =>
      (model.endsElsewhere ? [8] : [8, undefined]).map((dry) => [model.name, count, dry === undefined ? "fitted" : "weighed", dry, model] as const),
    ),
  ),
)(
  "DRYING.FIT's standard errors by %s from %s weighings, end %s, are those of the law of propagation written out",
  (_name, count, _end, dry, model) => {
    const run = points(count);
    const fit = dryingFit(run, model, dry);
    const ours = [...fit.errors, ...(fit.finalError === undefined ? [] : [fit.finalError])];
    const written = errorsByDefinition(fit, run);
    expect(ours).toHaveLength(written.length);
    for (const [j, error] of written.entries()) expect((ours[j] as number) / error).toBeCloseTo(1, 8);
  },
);
