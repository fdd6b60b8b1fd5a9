import { dryingFit } from "../../../src/drying/model/dryingFit";
import { type DryingModel, dryingModels } from "../../../src/drying/model/dryingModels";
import { studentTCentral } from "../../../src/numerics/studentTQuantile";
import { seededNormal } from "../../numerics/seededNormal";
import { every } from "../simulatedRun";

const RUNS = 1000;
const doubt = (share: number): number => 3 * Math.sqrt((share * (1 - share)) / RUNS);
const named = (name: string): DryingModel => dryingModels.find((model) => model.name === name) as DryingModel;

const FINAL = 8;
const FIRST = 12;
const NOISE = 0.002;

// Every reading is uncertain alike: the first, which sets where MR is 1 (so each true law begins there), and the dry one
// where it is weighed.
test.each([
  ["Newton", [0.01], false],
  ["Newton", [0.01], true],
  ["Page", [0.02, 0.85], false],
  ["Page", [0.02, 0.85], true],
  ["modified Page", [0.01, 1.2], false],
  ["Henderson-Pabis", [1, 0.01], true],
  ["logarithmic", [0.95, 0.01, 0.05], true],
  ["two-term", [0.6, 0.03, 0.4, 0.006], true],
] as const)(
  "DRYING.FIT's standard errors cover the true %s parameters %j as often as they say, dry sample weighed: %s",
  (name, truth, dryWeighed) => {
    const model = named(name);
    const normal = seededNormal(40);
    const times = every(20, 16);
    const covered = truth.map(() => 0);
    let degrees = 0;
    for (let run = 0; run < RUNS; run++) {
      const points = times.map((minutes) => ({ minutes, grams: FINAL + (FIRST - FINAL) * model.ratio(truth, minutes) + NOISE * normal() }));
      const fit = dryingFit(points, model, dryWeighed ? FINAL + NOISE * normal() : undefined);
      degrees = fit.degrees;
      for (const [j, value] of truth.entries())
        if (Math.abs((fit.parameters[j] as number) - value) <= (fit.errors[j] as number)) covered[j] = (covered[j] as number) + 1;
    }
    const stated = studentTCentral(Math.atan(1 / Math.sqrt(degrees)), degrees);
    for (const count of covered) expect(Math.abs(count / RUNS - stated)).toBeLessThan(doubt(stated));
  },
);
