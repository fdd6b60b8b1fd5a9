// How often a sample is named that stands apart, where all are of one normal population, and that a stray one is. Seeded.
import { dixonCritical } from "../../../src/confidence/dixonAssessment";
import { seededNormal } from "../../numerics/seededNormal";
import { plainRun, type PlainRun } from "../plainRun";

const NAMED = /sample (\d) apart at 95 %/;
const RUNS = 150;

const dried = (replicates: number): PlainRun => {
  const run = plainRun({ kind: "drying", replicates, samplesAre: "repeats", readability: 0.001, weighIns: 3 });
  for (const sample of run.sheet.samples) run.vessel(40, sample);
  return run;
};

const named = (run: PlainRun, shares: readonly number[]): string | undefined => {
  for (const [index, share] of shares.entries()) {
    const dry = Math.round(1000 * (70 - 30 * share)) / 1000;
    run.weigh([70, dry, dry], index + 1);
  }
  return NAMED.exec(String(run.check("agree")[1]))?.[1];
};

test("the critical ratios are those in print", () => {
  // Rorabacher, Anal. Chem. 63 (1991) 139, two-sided 95 %; old tables stray from the integral by up to 0.003.
  for (const [n, printed] of [
    [3, 0.97],
    [4, 0.829],
    [5, 0.71],
    [6, 0.625],
  ] as const)
    expect(Math.abs(dixonCritical(n, 1 / 40) - printed)).toBeLessThanOrEqual(0.003);
});

test.each([3, 4, 5, 6])("of %i samples of one population one is named about once in twenty", (replicates) => {
  const normal = seededNormal(90 + replicates);
  const run = dried(replicates);
  let found = 0;
  for (let once = 0; once < RUNS; once++) {
    const shares = Array.from({ length: replicates }, () => 0.3 + 0.03 * normal());
    if (named(run, shares) !== undefined) found++;
  }
  // 5 % of 150 are 7.5, with a standard deviation of 2.7.
  expect(found).toBeLessThanOrEqual(15);
});

test("a stray one is named, and not where weighing explains the range", () => {
  const run = dried(6);
  expect(named(run, [0.3, 0.301, 0.302, 0.299, 0.36, 0.3005])).toBe("5");
  // One step of the balance is 0.0033 %.
  expect(named(run, [0.3, 0.3, 0.3, 0.3, 0.30003, 0.3])).toBeUndefined();
});
